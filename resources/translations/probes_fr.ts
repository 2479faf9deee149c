<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Probes</name>
    <message>
        <source>slave %1, holding %2</source>
        <translation>esclave %1, maintien %2</translation>
    </message>
    <message>
        <source>slave %1, input %2</source>
        <translation>esclave %1, entrée %2</translation>
    </message>
    <message>
        <source>takes over when %1 fails</source>
        <translation>prend la relève si %1 manque</translation>
    </message>
    <message>
        <source>the first</source>
        <translation>la première</translation>
    </message>
    <message>
        <source>The %1 reads %2: that looks like %3.</source>
        <translation>%1 : on lit %2, ce qui ressemble à des %3.</translation>
    </message>
    <message>
        <source>Read it in %1</source>
        <translation>Lire en %1</translation>
    </message>
    <message>
        <source>The %1 reads %2 and the %3 %4: are the two swapped?</source>
        <translation>%1 : %2, et %3 : %4. Les deux sont-elles interverties?</translation>
    </message>
    <message>
        <source>Swap them</source>
        <translation>Les échanger</translation>
    </message>
    <message>
        <source>Field “%1” looks like the %2, in %3.</source>
        <translation>Le champ « %1 » ressemble à : %2, en %3.</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>L'utiliser</translation>
    </message>
    <message>
        <source>3, holding registers</source>
        <translation>3, registres de maintien</translation>
    </message>
    <message>
        <source>4, input registers</source>
        <translation>4, registres d'entrée</translation>
    </message>
    <message>
        <source>whole, 16 bit, signed</source>
        <translation>entier, 16 bits, signé</translation>
    </message>
    <message>
        <source>whole, 16 bit</source>
        <translation>entier, 16 bits</translation>
    </message>
    <message>
        <source>whole, 32 bit, signed</source>
        <translation>entier, 32 bits, signé</translation>
    </message>
    <message>
        <source>whole, 32 bit</source>
        <translation>entier, 32 bits</translation>
    </message>
    <message>
        <source>decimal, 32 bit</source>
        <translation>décimal, 32 bits</translation>
    </message>
    <message>
        <source>high word first</source>
        <translation>mot fort d'abord</translation>
    </message>
    <message>
        <source>low word first</source>
        <translation>mot faible d'abord</translation>
    </message>
    <message>
        <source>at a fixed temperature</source>
        <translation>à température fixe</translation>
    </message>
    <message>
        <source>slave (1 to 247)</source>
        <translation>esclave (1 à 247)</translation>
    </message>
    <message>
        <source>function</source>
        <translation>fonction</translation>
    </message>
    <message>
        <source>register, from 0</source>
        <translation>registre, depuis 0</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>words</source>
        <translation>mots</translation>
    </message>
    <message>
        <source>times (0.1 for tenths)</source>
        <translation>fois (0,1 pour des dixièmes)</translation>
    </message>
    <message>
        <source>the wire's other end</source>
        <translation>l'autre bout du fil</translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation>sa température</translation>
    </message>
    <message>
        <source>add to what is read</source>
        <translation>à ajouter à la lecture</translation>
    </message>
    <message>
        <source>its name, if it needs one</source>
        <translation>son nom, s'il en faut un</translation>
    </message>
    <message>
        <source>Times 0 would make every reading 0. Write 1, or 0.1 for tenths.</source>
        <translation>Fois 0 rendrait toute lecture nulle. Écrivez 1, ou 0,1 pour des dixièmes.</translation>
    </message>
    <message>
        <source>“%1” does not fit here. Write a number from %2 to %3.</source>
        <translation>« %1 » ne peut être ici. Écrivez un nombre de %2 à %3.</translation>
    </message>
    <message>
        <source>“%1” does not fit here. Write a whole number.</source>
        <translation>« %1 » ne peut être ici. Écrivez un nombre entier.</translation>
    </message>
</context>
<context>
    <name>panside::ProbesScreen</name>
    <message>
        <source>not used</source>
        <translation>pas utilisé</translation>
    </message>
    <message>
        <source>What is “%1”?</source>
        <translation>Qu'est-ce que « %1 »?</translation>
    </message>
    <message>
        <source>In which unit does “%1” come?</source>
        <translation>En quelle unité vient « %1 »?</translation>
    </message>
    <message>
        <source>Test the whole chain</source>
        <translation>Essayer toute la chaîne</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Add a register</source>
        <translation>Ajouter un registre</translation>
    </message>
    <message>
        <source>Ins</source>
        <translation>Inser</translation>
    </message>
    <message>
        <source>No, leave it</source>
        <translation>Non, laisser</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>O</translation>
    </message>
    <message>
        <source>offset, register and the rest</source>
        <translation>décalage, registre et le reste</translation>
    </message>
    <message>
        <source>Modbus RTU</source>
        <translation>Modbus RTU</translation>
    </message>
    <message>
        <source>lines of text</source>
        <translation>lignes de texte</translation>
    </message>
    <message>
        <source>every %1 s</source>
        <translation>toutes les %1 s</translation>
    </message>
</context>
<context>
    <name>panside::ChoiceGrid</name>
    <message>
        <source>Leave as it is</source>
        <translation>Laisser ainsi</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
<context>
    <name>panside::FieldSheet</name>
    <message>
        <source>Done</source>
        <translation>Fini</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Take this register out</source>
        <translation>Retirer ce registre</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
</context>
<context>
    <name>panside::ChainView</name>
    <message>
        <source>Back to the set-up</source>
        <translation>Retour aux réglages</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
<context>
    <name>panside::Pad</name>
    <message>
        <source>next</source>
        <translation>suivant</translation>
    </message>
</context>
<context>
    <name>Chain</name>
    <message>
        <source>kept on the disk</source>
        <translation>gardé sur le disque</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>loudspeaker</source>
        <translation>haut-parleur</translation>
    </message>
    <message>
        <source>none: alarms only show on the screen</source>
        <translation>aucun : les alarmes ne se voient qu'à l'écran</translation>
    </message>
    <message>
        <source>no probe: point at its field, or type readings in</source>
        <translation>pas de sonde : montrez son champ, ou tapez les lectures</translation>
    </message>
    <message>
        <source>none: do a water check, or type in the reported pressure</source>
        <translation>aucun : faites un essai à l'eau bouillante, ou tapez la pression annoncée</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>tapé</translation>
    </message>
    <message>
        <source>the port is being opened</source>
        <translation>le port s'ouvre</translation>
    </message>
    <message>
        <source>stopped: silent for %1</source>
        <translation>arrêtée : muette depuis %1</translation>
    </message>
    <message>
        <source>arrives, but cannot be true: wrong field or unit?</source>
        <translation>reçue, mais impossible : mauvais champ ou mauvaise unité?</translation>
    </message>
    <message>
        <source>arrives, but is %1: %2</source>
        <translation>reçue, mais %1 : %2</translation>
    </message>
    <message>
        <source>arrives, good; in use for the first</source>
        <translation>reçue, bonne; remplace la première</translation>
    </message>
    <message>
        <source>arrives, good</source>
        <translation>reçue, bonne</translation>
    </message>
    <message>
        <source>arrives, good; on standby</source>
        <translation>reçue, bonne; prête à la relève</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>il y a %1</translation>
    </message>
    <message>
        <source>The whole chain works, from each probe to the disk and the ear.</source>
        <translation>Toute la chaîne marche, de chaque sonde au disque et à l'oreille.</translation>
    </message>
    <message numerus="yes">
        <source>%n to look at; the rest works.</source>
        <translation>
            <numerusform>%n point à voir; le reste marche.</numerusform>
            <numerusform>%n points à voir; le reste marche.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PortWords</name>
    <message>
        <source>not opened yet.</source>
        <translation>pas encore ouvert.</translation>
    </message>
    <message>
        <source>there is no port %1. Plug the probe in, or choose another port; reading begins by itself.</source>
        <translation>il n'y a pas de port %1. Branchez la sonde, ou choisissez un autre port; la lecture commence d'elle-même.</translation>
    </message>
    <message>
        <source>you may not open %1: it belongs to the group %2. Run `sudo adduser $USER %2`, log out and in.</source>
        <translation>vous ne pouvez ouvrir %1 : il est au groupe %2. Lancez `sudo adduser $USER %2`, sortez de la session et rentrez.</translation>
    </message>
    <message>
        <source>another program has %1 open. Close it; reading begins by itself.</source>
        <translation>un autre programme tient %1. Fermez-le; la lecture commence d'elle-même.</translation>
    </message>
    <message>
        <source>%1 is not a serial port. Choose another one.</source>
        <translation>%1 n'est pas un port série. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>%1 does not open: %2. It is tried again by itself.</source>
        <translation>%1 ne s'ouvre pas : %2. L'essai reprend de lui-même.</translation>
    </message>
    <message>
        <source>%1 went away. Check plug and power; reading goes on by itself when it is back.</source>
        <translation>%1 a disparu. Voyez la prise et le courant; la lecture reprend d'elle-même à son retour.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>open; nothing received yet.</source>
        <translation>ouvert; rien reçu encore.</translation>
    </message>
    <message>
        <source>reading.</source>
        <translation>lecture en cours.</translation>
    </message>
    <message>
        <source>open, but nothing received for 10 s. Check the probe's power and cable.</source>
        <translation>ouvert, mais rien reçu depuis 10 s. Voyez le courant et le câble de la sonde.</translation>
    </message>
    <message>
        <source>what arrives is not text. Wrong speed? Set the speed (baud) that the probe uses.</source>
        <translation>ce qui vient n'est pas du texte. Mauvaise vitesse? Réglez celle de la sonde (bauds).</translation>
    </message>
    <message>
        <source>letters arrive, but no line end. Have the probe end each line with a line feed (LF, or CR and LF).</source>
        <translation>des lettres viennent, mais pas de fin de ligne. Faites finir chaque ligne de la sonde par un saut de ligne (LF, ou CR et LF).</translation>
    </message>
    <message>
        <source>the instrument refuses: %1. Check function and register in its manual.</source>
        <translation>l'instrument refuse : %1. Voyez fonction et registre dans son manuel.</translation>
    </message>
    <message>
        <source>answered %1</source>
        <translation>réponses %1</translation>
    </message>
    <message>
        <source>no answer %1</source>
        <translation>sans réponse %1</translation>
    </message>
    <message>
        <source>garbled %1</source>
        <translation>brouillées %1</translation>
    </message>
    <message>
        <source>too slow for this pace %1</source>
        <translation>trop lent pour ce rythme %1</translation>
    </message>
    <message>
        <source>no answer</source>
        <translation>pas de réponse</translation>
    </message>
    <message>
        <source>garbled answer</source>
        <translation>réponse brouillée</translation>
    </message>
    <message>
        <source>illegal function</source>
        <translation>fonction non admise</translation>
    </message>
    <message>
        <source>illegal data address</source>
        <translation>adresse non admise</translation>
    </message>
    <message>
        <source>illegal data value</source>
        <translation>valeur non admise</translation>
    </message>
    <message>
        <source>server device failure</source>
        <translation>instrument en défaut</translation>
    </message>
    <message>
        <source>acknowledge</source>
        <translation>reçu, en cours</translation>
    </message>
    <message>
        <source>server device busy</source>
        <translation>instrument occupé</translation>
    </message>
    <message>
        <source>memory parity error</source>
        <translation>erreur de mémoire</translation>
    </message>
    <message>
        <source>gateway path unavailable</source>
        <translation>passerelle sans chemin</translation>
    </message>
    <message>
        <source>gateway target device failed to respond</source>
        <translation>pas de réponse derrière la passerelle</translation>
    </message>
    <message>
        <source>unknown exception</source>
        <translation>exception inconnue</translation>
    </message>
    <message>
        <source>the line has no such field</source>
        <translation>la ligne n'a pas ce champ</translation>
    </message>
    <message>
        <source>the probe gives no number for it</source>
        <translation>la sonde n'en donne aucun nombre</translation>
    </message>
    <message>
        <source>the instrument did not answer</source>
        <translation>l'instrument n'a pas répondu</translation>
    </message>
    <message>
        <source>the thermocouple's junction temperature is missing</source>
        <translation>la température de la jonction du thermocouple manque</translation>
    </message>
    <message>
        <source>outside what this sensor can give: open, shorted or reversed?</source>
        <translation>hors de ce que ce capteur peut donner : ouvert, court-circuité ou inversé?</translation>
    </message>
    <message>
        <source>colder than anything can be: wrong unit or field?</source>
        <translation>plus froid que tout : mauvaise unité ou mauvais champ?</translation>
    </message>
    <message>
        <source>no line end came</source>
        <translation>aucune fin de ligne</translation>
    </message>
    <message>
        <source>not text: noise on the line, or another speed than the probe's</source>
        <translation>pas du texte : du bruit, ou une autre vitesse que celle de la sonde</translation>
    </message>
    <message>
        <source>the checksum does not fit</source>
        <translation>la somme de contrôle ne concorde pas</translation>
    </message>
    <message>
        <source>no checksum, and the probe file demands one</source>
        <translation>pas de somme de contrôle, et le fichier de sondes en exige une</translation>
    </message>
    <message>
        <source>cut off or garbled</source>
        <translation>coupée ou brouillée</translation>
    </message>
    <message>
        <source>neither columns, nor pairs, nor a JSON object</source>
        <translation>ni colonnes, ni paires, ni objet JSON</translation>
    </message>
    <message>
        <source>numbers are written with a comma; have the probe write points</source>
        <translation>les nombres ont une virgule; que la sonde écrive des points</translation>
    </message>
    <message>
        <source>joined midway, or with a different number of columns than the line before</source>
        <translation>prise en route, ou avec un autre nombre de colonnes que la ligne d'avant</translation>
    </message>
    <message>
        <source>one name is there twice</source>
        <translation>un nom y est deux fois</translation>
    </message>
    <message>
        <source>a different number of columns than this port's lines had, so which is which is not known: look at the instrument, then at the probes' set-up</source>
        <translation>un autre nombre de colonnes que les lignes de ce port, on ne peut donc dire laquelle est laquelle : voyez l'instrument, puis le réglage des sondes</translation>
    </message>
    <message>
        <source>more than 64 fields</source>
        <translation>plus de 64 champs</translation>
    </message>
    <message>
        <source>no answer (%1). Check address, speed, parity and the two wires.</source>
        <translation>pas de réponse (%1). Voyez adresse, vitesse, parité et les deux fils.</translation>
    </message>
    <message>
        <source>no line can be believed; most of them: %2 (as in &quot;%1&quot;).</source>
        <translation>aucune ligne n'est croyable; la plupart : %2 (comme « %1 »).</translation>
    </message>
    <message>
        <source>slave %1: answer of another length</source>
        <translation>esclave %1 : réponse d'une autre longueur</translation>
    </message>
    <message>
        <source>slave %1, function %2, register %3: %4</source>
        <translation>esclave %1, fonction %2, registre %3 : %4</translation>
    </message>
    <message>
        <source>%2 (exception %1)</source>
        <translation>%2 (exception %1)</translation>
    </message>
</context>
<context>
    <name>panside::WaterSheet</name>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Type it in</source>
        <translation>Taper</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>%1 too low</source>
        <translation>%1 trop bas</translation>
    </message>
    <message>
        <source>%1 too high</source>
        <translation>%1 trop haut</translation>
    </message>
    <message>
        <source>reads %1 · varies by %2 · watched for %3 of %4 s</source>
        <translation>lit %1 · varie de %2 · suivie %3 s sur %4</translation>
    </message>
    <message>
        <source> · today this probe should read %1</source>
        <translation> · aujourd'hui cette sonde devrait lire %1</translation>
    </message>
    <message>
        <source>Keep it all the same</source>
        <translation>Garder quand même</translation>
    </message>
    <message>
        <source>Kept all the same, it counts when a second check says so too.</source>
        <translation>Gardé quand même, il compte quand un second essai dit pareil.</translation>
    </message>
    <message>
        <source>Waiting for the probe.</source>
        <translation>On attend la sonde.</translation>
    </message>
    <message>
        <source>Stand it in plain water at a rolling boil, as deep as in the pan, not touching the metal. Mind the steam.</source>
        <translation>Plongez-la dans de l'eau pure à gros bouillons, aussi profond que dans la casserole, sans toucher le métal. Gare à la vapeur.</translation>
    </message>
    <message>
        <source>Watching whether the reading is steady.</source>
        <translation>On regarde si la lecture reste stable.</translation>
    </message>
    <message>
        <source>Leave the probe in plain water at a rolling boil, not touching the metal.</source>
        <translation>Laissez la sonde dans l'eau pure à gros bouillons, sans toucher le métal.</translation>
    </message>
    <message>
        <source>Still warming by %1 a minute.</source>
        <translation>Chauffe encore de %1 par minute.</translation>
    </message>
    <message>
        <source>Cooling by %1 a minute.</source>
        <translation>Refroidit de %1 par minute.</translation>
    </message>
    <message>
        <source>Wait for a rolling boil; the check goes on by itself.</source>
        <translation>Attendez de gros bouillons; l'essai continue tout seul.</translation>
    </message>
    <message>
        <source>The reading is not steady: it varies by %1.</source>
        <translation>La lecture n'est pas stable : elle varie de %1.</translation>
    </message>
    <message>
        <source>Put the probe deeper, away from the metal, and keep it still.</source>
        <translation>Mettez la sonde plus profond, loin du métal, et ne la bougez plus.</translation>
    </message>
    <message>
        <source>The water boils; the probe reads %1.</source>
        <translation>L'eau bout; la sonde lit %1.</translation>
    </message>
    <message>
        <source>Keeping it teaches the console what this probe reads too high.</source>
        <translation>Gardé, l'essai apprend à la console ce que cette sonde lit de trop.</translation>
    </message>
    <message>
        <source>The water does not boil: %1.</source>
        <translation>L'eau ne bout pas : %1.</translation>
    </message>
    <message>
        <source>The water does not boil: nowhere does it boil so cold.</source>
        <translation>L'eau ne bout pas : nulle part elle ne bout si froid.</translation>
    </message>
    <message>
        <source>Bring it to a rolling boil.</source>
        <translation>Amenez-la à gros bouillons.</translation>
    </message>
    <message>
        <source>The probe reads %1: not deep enough, or the water only simmers.</source>
        <translation>La sonde lit %1 : pas assez profonde, ou l'eau ne fait que frémir.</translation>
    </message>
    <message>
        <source>Put it as deep as in the pan, at a rolling boil.</source>
        <translation>Mettez-la aussi profond que dans la casserole, à gros bouillons.</translation>
    </message>
    <message>
        <source>The probe reads %1: this is not plain water, or it touches the metal.</source>
        <translation>La sonde lit %1 : ce n'est pas de l'eau pure, ou elle touche le métal.</translation>
    </message>
    <message>
        <source>Water does not boil so hot: this is not plain water, or the probe touches the metal.</source>
        <translation>L'eau ne bout pas si chaud : ce n'est pas de l'eau pure, ou la sonde touche le métal.</translation>
    </message>
    <message>
        <source>Take clean water, and keep the probe off the bottom.</source>
        <translation>Prenez de l'eau propre, la sonde loin du fond.</translation>
    </message>
    <message>
        <source>Water boils at %1 on this probe.</source>
        <translation>L'eau bout à %1 sur cette sonde.</translation>
    </message>
    <message>
        <source>There is no barometer: keeping it makes this the day's boiling point. It changes with the weather; check again every few hours.</source>
        <translation>Il n'y a pas de baromètre : gardé, ce sera le point d'ébullition du jour. Il change avec le temps qu'il fait; refaites l'essai toutes les quelques heures.</translation>
    </message>
</context>
<context>
    <name>panside::SoundScreen</name>
    <message>
        <source>How loud the alarms are</source>
        <translation>Le volume des alarmes</translation>
    </message>
    <message>
        <source>Softer</source>
        <translation>Moins fort</translation>
    </message>
    <message>
        <source>Louder</source>
        <translation>Plus fort</translation>
    </message>
    <message>
        <source>Hear each at its loudest, with the blower and the pans going:</source>
        <translation>Écoutez chacune au plus fort, la soufflerie et les casseroles en marche :</translation>
    </message>
    <message>
        <source>High: act at once</source>
        <translation>Haute : agir tout de suite</translation>
    </message>
    <message>
        <source>Medium: act soon</source>
        <translation>Moyenne : agir bientôt</translation>
    </message>
    <message>
        <source>Low: good to know</source>
        <translation>Basse : bon à savoir</translation>
    </message>
    <message>
        <source>A call is soft at first and rises to this until somebody says it was seen. The frame flashes as well.</source>
        <translation>L'appel commence doucement et monte jusque-là tant que personne ne dit l'avoir vu. Le cadre clignote aussi.</translation>
    </message>
    <message>
        <source>There is no loudspeaker here: alarms only show, and the frame flashes. Plug one in; it is found by itself.</source>
        <translation>Il n'y a pas de haut-parleur ici : les alarmes se voient seulement, et le cadre clignote. Branchez-en un; il est trouvé tout seul.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>This system has no voice to speak with</source>
        <translation>Ce système n'a pas de voix pour parler</translation>
    </message>
    <message>
        <source>A new alarm is also spoken</source>
        <translation>Une nouvelle alarme est aussi dite</translation>
    </message>
    <message>
        <source>Alarms are not spoken</source>
        <translation>Les alarmes ne sont pas dites</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Nothing to keep yet: say of one field at least what it reads.</source>
        <translation>Rien à garder encore : dites d'un champ au moins ce qu'il lit.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
</context>
<context>
    <name>ProbeFaultWords</name>
    <message>
        <source>a text in quotes</source>
        <translation>un texte entre guillemets</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true ou false, sans guillemets</translation>
    </message>
    <message>
        <source>a number from %1 to %2</source>
        <translation>un nombre de %1 à %2</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>un nombre entier de %1 à %2</translation>
    </message>
    <message>
        <source>a number without quotes</source>
        <translation>un nombre sans guillemets</translation>
    </message>
    <message>
        <source>a heading [[%1]] before each of them</source>
        <translation>un titre [[%1]] devant chacun</translation>
    </message>
    <message>
        <source>it is not a file</source>
        <translation>ce n'est pas un fichier</translation>
    </message>
    <message>
        <source>it cannot be opened; may you read it?</source>
        <translation>il ne s'ouvre pas; avez-vous le droit de le lire?</translation>
    </message>
    <message>
        <source>a column's number from 1, or the name in the line, as in is = &quot;syrup&quot;</source>
        <translation>le numéro d'une colonne à partir de 1, ou le nom qui est dans la ligne, comme is = "syrup"</translation>
    </message>
    <message>
        <source>the number of a column, from 1 to 64</source>
        <translation>le numéro d'une colonne, de 1 à 64</translation>
    </message>
    <message>
        <source>the name that stands in the line</source>
        <translation>le nom qui est dans la ligne</translation>
    </message>
    <message>
        <source>the address set at the device, as in slave = 1</source>
        <translation>l'adresse réglée sur l'appareil, comme slave = 1</translation>
    </message>
    <message>
        <source>3 for holding registers, 4 for input registers</source>
        <translation>3 pour les registres de maintien, 4 pour les registres d'entrée</translation>
    </message>
    <message>
        <source>the address as sent on the line, from 0</source>
        <translation>l'adresse telle qu'elle passe sur la ligne, à partir de 0</translation>
    </message>
    <message>
        <source>at most 65534 for a number of two registers</source>
        <translation>65534 au plus pour un nombre de deux registres</translation>
    </message>
    <message>
        <source>anything but 0, which would make every reading 0</source>
        <translation>autre chose que 0, qui ferait 0 de chaque lecture</translation>
    </message>
    <message>
        <source>the wire's letter, as in thermocouple = &quot;K&quot;</source>
        <translation>la lettre du fil, comme thermocouple = "K"</translation>
    </message>
    <message>
        <source>a temperature, as in junction = &quot;25degC&quot;, or the name of the field that reads it</source>
        <translation>une température, comme junction = "25degC", ou le nom du champ qui la lit</translation>
    </message>
    <message>
        <source>a temperature, as in &quot;25degC&quot;, or a field's name</source>
        <translation>une température, comme "25degC", ou le nom d'un champ</translation>
    </message>
    <message>
        <source>a temperature from -40degC to 125degC</source>
        <translation>une température de -40degC à 125degC</translation>
    </message>
    <message>
        <source>a temperature, or the `is` of another [[port.field]] of this port</source>
        <translation>une température, ou le `is` d'un autre [[port.field]] de ce port</translation>
    </message>
    <message>
        <source>another field than the thermocouple itself</source>
        <translation>un autre champ que le thermocouple lui-même</translation>
    </message>
    <message>
        <source>the port's path, as in device = &quot;/dev/ttyUSB0&quot;</source>
        <translation>le chemin du port, comme device = "/dev/ttyUSB0"</translation>
    </message>
    <message>
        <source>the port's path, as in &quot;/dev/ttyUSB0&quot;</source>
        <translation>le chemin du port, comme "/dev/ttyUSB0"</translation>
    </message>
    <message>
        <source>a short name without ; or quotes, and not &quot;hand&quot;</source>
        <translation>un nom court sans; ni guillemets, et qui ne soit pas "hand"</translation>
    </message>
    <message>
        <source>at least one heading [[port.field]] under the port, or nothing would be read</source>
        <translation>au moins un titre [[port.field]] sous le port, sans quoi rien ne serait lu</translation>
    </message>
    <message>
        <source>one [[port]] for each device</source>
        <translation>un seul [[port]] par appareil</translation>
    </message>
    <message>
        <source>one [[port.field]] for each field of a port</source>
        <translation>un seul [[port.field]] par champ d'un port</translation>
    </message>
    <message>
        <source>a name of its own for each port</source>
        <translation>un nom différent pour chaque port</translation>
    </message>
    <message>
        <source>a name of its own, since another port is called &quot;%1&quot;</source>
        <translation>un autre nom, car un autre port s'appelle "%1"</translation>
    </message>
    <message>
        <source>a short name without ; | and quotes, and not &quot;hand&quot;</source>
        <translation>un nom court sans; ni | ni guillemets, et qui ne soit pas "hand"</translation>
    </message>
    <message>
        <source>a [[column]] for each reading, with is, reads and unit</source>
        <translation>un [[column]] par lecture, avec is, reads et unit</translation>
    </message>
    <message>
        <source>a column's name in the heading, or its number from 1</source>
        <translation>le nom d'une colonne dans le titre, ou son numéro à partir de 1</translation>
    </message>
    <message>
        <source>%1, as in the table, or a number from 1</source>
        <translation>%1, comme dans le tableau, ou un numéro à partir de 1</translation>
    </message>
    <message>
        <source>its number from 1: the heading has the name twice</source>
        <translation>son numéro à partir de 1 : le titre a deux fois ce nom</translation>
    </message>
    <message>
        <source>a zone's name as in &quot;America/New_York&quot;</source>
        <translation>le nom d'un fuseau, comme "America/New_York"</translation>
    </message>
    <message>
        <source>another reading: one column is to read each</source>
        <translation>une autre lecture : une seule colonne doit lire chacune</translation>
    </message>
    <message>
        <source>the probe file cannot be read: %3. Name a probe file that is there.</source>
        <translation>le fichier de sondes ne peut être lu : %3. Nommez un fichier de sondes qui existe.</translation>
    </message>
    <message>
        <source>this is not TOML: %2.</source>
        <translation>ceci n'est pas du TOML : %2.</translation>
    </message>
    <message>
        <source>"%1" is not a key that is known here. Possible here: %3.</source>
        <translation>"%1" n'est pas une clé connue ici. Ce qui peut y être : %3.</translation>
    </message>
    <message>
        <source>%1 is missing. Write %3.</source>
        <translation>%1 manque. Écrivez %3.</translation>
    </message>
    <message>
        <source>%1 cannot be &quot;%2&quot;. Write %3.</source>
        <translation>%1 ne peut être "%2". Écrivez %3.</translation>
    </message>
    <message>
        <source>%1 "%2" is there twice. Write %3.</source>
        <translation>%1 "%2" y est deux fois. Écrivez %3.</translation>
    </message>
    <message>
        <source>%1 means nothing here: it goes with %3. Take it out, or change that.</source>
        <translation>%1 ne veut rien dire ici : cela va avec %3. Ôtez-le, ou changez l'autre.</translation>
    </message>
    <message>
        <source>no port is named. Write a heading [[port]] and under it the port's device.</source>
        <translation>aucun port n'est nommé. Écrivez un titre [[port]] et dessous le device du port.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
</context>
</TS>
