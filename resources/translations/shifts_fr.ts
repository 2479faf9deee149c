<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Keeping</name>
    <message>
        <source>Checking the journal …</source>
        <translation>Le journal est en cours d'examen…</translation>
    </message>
    <message>
        <source>It has not been checked yet.</source>
        <translation>Il n'a pas encore été examiné.</translation>
    </message>
    <message>
        <source>The journal is sound.</source>
        <translation>Le journal est sain.</translation>
    </message>
    <message>
        <source>The journal is damaged. Restore a back-up, or save what can be read. Neither throws anything away.</source>
        <translation>Le journal est abîmé. Remettez une copie, ou sauvez ce qui se lit encore. Ni l'un ni l'autre ne jette rien.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>No folder has been chosen yet: nothing is backed up. Choose one, best on a stick or another disk.</source>
        <translation>Aucun dossier n'est choisi : rien n'est copié. Choisissez-en un, de préférence sur une clé ou un autre disque.</translation>
    </message>
    <message>
        <source>They go to %1, after every shift and whenever you say so. Each is read back from the disk and checked.</source>
        <translation>Elles vont dans %1, après chaque quart et quand vous le dites. Chacune est relue du disque et vérifiée.</translation>
    </message>
    <message>
        <source>None is there.</source>
        <translation>Il n'y en a aucune.</translation>
    </message>
    <message>
        <source>and %1 older ones</source>
        <translation>et %1 plus anciennes</translation>
    </message>
    <message>
        <source>What restoring this back-up would do</source>
        <translation>Ce que ferait la remise de cette copie</translation>
    </message>
    <message>
        <source>These shifts are in the journal only. They would be gone from it:</source>
        <translation>Ces quarts ne sont que dans le journal. Ils n'y seraient plus :</translation>
    </message>
    <message>
        <source>These shifts have other entries in the back-up. They would become as they are there:</source>
        <translation>Ces quarts ont d'autres entrées dans la copie. Ils deviendraient comme là :</translation>
    </message>
    <message>
        <source>These shifts are in the back-up only. They would come back:</source>
        <translation>Ces quarts ne sont que dans la copie. Ils reviendraient :</translation>
    </message>
    <message>
        <source>Shifts that are the same in both: %1.</source>
        <translation>Quarts pareils dans les deux : %1.</translation>
    </message>
    <message>
        <source>The journal as it is now is kept beside the new one; nothing is thrown away.</source>
        <translation>Le journal tel qu'il est reste à côté du nouveau; rien n'est jeté.</translation>
    </message>
    <message>
        <source>Saved facts: %1, readings: %2. Shifts of which nothing is missing: %3.</source>
        <translation>Faits sauvés : %1, lectures : %2. Quarts auxquels rien ne manque : %3.</translation>
    </message>
    <message>
        <source>A part of the file could not be read at all: there may have been shifts that left no trace.</source>
        <translation>Une partie du fichier n'a pas pu être lue : il a pu y avoir des quarts dont rien ne parle.</translation>
    </message>
    <message>
        <source>Shifts of which something was lost:</source>
        <translation>Quarts dont quelque chose est perdu :</translation>
    </message>
    <message>
        <source>%1: lost facts: %2, readings: %3, and on pages that cannot be read as many more: %4</source>
        <translation>%1 : faits perdus : %2, lectures : %3, et sur des pages illisibles, en plus : %4</translation>
    </message>
    <message>
        <source>What could be saved</source>
        <translation>Ce qui a pu être sauvé</translation>
    </message>
    <message>
        <source>It is in %1. If you put it in the journal's place, the damaged file is kept beside it.</source>
        <translation>Cela se trouve dans %1. Mis à la place du journal, le fichier abîmé reste à côté.</translation>
    </message>
    <message>
        <source>The journal</source>
        <translation>Le journal</translation>
    </message>
    <message>
        <source>Back-ups</source>
        <translation>Copies de sûreté</translation>
    </message>
    <message>
        <source>The ten newest are kept, the last one of each day for sixty days, and the last of each year for good; others are removed.</source>
        <translation>On garde les dix plus récentes, la dernière de chaque jour pendant soixante jours et la dernière de chaque année pour toujours; les autres sont retirées.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Put it in place</source>
        <translation>Mettre en place</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Laisser tel quel</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Choisir le dossier</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Copier maintenant</translation>
    </message>
    <message>
        <source>Restore one</source>
        <translation>Remettre une copie</translation>
    </message>
    <message>
        <source>Check all of it</source>
        <translation>Tout examiner</translation>
    </message>
    <message>
        <source>Save what can be read</source>
        <translation>Sauver ce qui se lit</translation>
    </message>
</context>
<context>
    <name>Handover</name>
    <message>
        <source>%1, %2 ago</source>
        <translation>%1, il y a %2</translation>
    </message>
    <message>
        <source>perhaps never</source>
        <translation>peut-être jamais</translation>
    </message>
    <message>
        <source>in %1 (%2 to %3)</source>
        <translation>dans %1 (%2 à %3)</translation>
    </message>
    <message>
        <source>For the next crew</source>
        <translation>Pour l'équipe suivante</translation>
    </message>
    <message>
        <source>No shift is going on, and none went before.</source>
        <translation>Aucun quart n'est en cours, et aucun n'a précédé.</translation>
    </message>
    <message>
        <source>shift going on since</source>
        <translation>quart en cours depuis</translation>
    </message>
    <message>
        <source>the last shift began</source>
        <translation>le dernier quart a commencé</translation>
    </message>
    <message>
        <source>on the shift</source>
        <translation>au quart</translation>
    </message>
    <message>
        <source>nobody signed on</source>
        <translation>personne ne s'est inscrit</translation>
    </message>
    <message>
        <source>What to watch</source>
        <translation>À surveiller</translation>
    </message>
    <message>
        <source>No alarm is on.</source>
        <translation>Aucune alarme.</translation>
    </message>
    <message>
        <source>OPEN since %1</source>
        <translation>OUVERTE depuis %1</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>OUVERTE</translation>
    </message>
    <message>
        <source>shut; the next draw %1</source>
        <translation>fermée; la prochaine coulée %1</translation>
    </message>
    <message>
        <source>shut; too early to say when the next draw comes</source>
        <translation>fermée; trop tôt pour dire quand vient la prochaine coulée</translation>
    </message>
    <message>
        <source>not lit in this shift</source>
        <translation>pas allumé pendant ce quart</translation>
    </message>
    <message>
        <source>no more wood since %1; it burns out: stay with it</source>
        <translation>plus de bois depuis %1; il s'éteint : restez auprès</translation>
    </message>
    <message>
        <source>last fired %1</source>
        <translation>dernière charge de bois %1</translation>
    </message>
    <message>
        <source>next in %1</source>
        <translation>la prochaine dans %1</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>en retard de %1</translation>
    </message>
    <message>
        <source>every %1</source>
        <translation>toutes les %1</translation>
    </message>
    <message>
        <source>%1's turn</source>
        <translation>au tour de %1</translation>
    </message>
    <message>
        <source>%1 in the feed tank (%2)</source>
        <translation>%1 dans le bassin (%2)</translation>
    </message>
    <message>
        <source>lasts %1</source>
        <translation>dure %1</translation>
    </message>
    <message>
        <source>keep %1 back for the shutdown</source>
        <translation>gardez %1 pour l'arrêt</translation>
    </message>
    <message>
        <source>not entered: look into the tank</source>
        <translation>non entré : regardez dans le bassin</translation>
    </message>
    <message>
        <source>not read: look into the pans</source>
        <translation>pas lues : regardez dans les casseroles</translation>
    </message>
    <message>
        <source>draw-off</source>
        <translation>sortie de sirop</translation>
    </message>
    <message>
        <source>fire</source>
        <translation>feu</translation>
    </message>
    <message>
        <source>the last load</source>
        <translation>la dernière charge</translation>
    </message>
    <message>
        <source>How things are</source>
        <translation>Où l'on en est</translation>
    </message>
    <message>
        <source>sap</source>
        <translation>eau d'érable</translation>
    </message>
    <message>
        <source>depths</source>
        <translation>profondeurs</translation>
    </message>
    <message>
        <source>The log shows no switch of pan or side.</source>
        <translation>Le registre ne montre aucun changement de casserole ni de côté.</translation>
    </message>
    <message>
        <source>Last switched %1 (%2 ago)%3; draws since: %4.</source>
        <translation>Dernier changement %1 (il y a %2)%3; coulées depuis : %4.</translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation>, par %1</translation>
    </message>
    <message>
        <source>Which side</source>
        <translation>Quel côté</translation>
    </message>
    <message>
        <source>open the draw at</source>
        <translation>ouvrir la coulée à</translation>
    </message>
    <message>
        <source>known to</source>
        <translation>connue à</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>d'après</translation>
    </message>
    <message>
        <source>no hydrometer check yet: make one</source>
        <translation>aucune vérification au densimètre : faites-en une</translation>
    </message>
    <message>
        <source>checks: %1, the last %2</source>
        <translation>vérifications : %1, la dernière %2</translation>
    </message>
    <message>
        <source>checks: %1</source>
        <translation>vérifications : %1</translation>
    </message>
    <message>
        <source>crept up since the first checks</source>
        <translation>montée depuis les premières vérifications</translation>
    </message>
    <message>
        <source>(niter? look at the pan)</source>
        <translation>(pierre de sucre? regardez la casserole)</translation>
    </message>
    <message>
        <source>checks not believed</source>
        <translation>vérifications non crues</translation>
    </message>
    <message>
        <source>water boils at</source>
        <translation>l'eau bout à</translation>
    </message>
    <message>
        <source>%1, checked %2 ago</source>
        <translation>%1, vérifié il y a %2</translation>
    </message>
    <message>
        <source>The target</source>
        <translation>La cible</translation>
    </message>
    <message>
        <source>draws measured: %1 of %2</source>
        <translation>coulées mesurées : %1 sur %2</translation>
    </message>
    <message>
        <source>draws: %1</source>
        <translation>coulées : %1</translation>
    </message>
    <message>
        <source>(nobody said where to)</source>
        <translation>(personne n'a dit où)</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>la dernière %1</translation>
    </message>
    <message>
        <source>What each drum holds</source>
        <translation>Ce que tient chaque baril</translation>
    </message>
    <message>
        <source>Nothing has been drawn.</source>
        <translation>Rien n'a été coulé.</translation>
    </message>
    <message>
        <source>As drawn in the last two weeks. What was emptied or packed since is not in the log: look before you fill.</source>
        <translation>Selon les coulées des deux dernières semaines. Ce qui a été vidé ou conditionné depuis n'est pas au registre : regardez avant de remplir.</translation>
    </message>
    <message>
        <source>Notes of this shift</source>
        <translation>Notes de ce quart</translation>
    </message>
    <message>
        <source>draws %1</source>
        <translation>coulées %1</translation>
    </message>
    <message>
        <source>firings %1</source>
        <translation>charges %1</translation>
    </message>
    <message>
        <source>syrup %1</source>
        <translation>sirop %1</translation>
    </message>
    <message>
        <source>sap in %1</source>
        <translation>eau reçue %1</translation>
    </message>
    <message>
        <source>wood %1</source>
        <translation>bois %1</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>Jusqu'ici</translation>
    </message>
    <message>
        <source>Before the other one goes: look into both pans, at the fire and up at the roof, together. This page advises; the instruments on the pan and the hydrometer come first.</source>
        <translation>Avant que l'autre parte : regardez ensemble les deux casseroles, le feu et le toit. Cette page conseille; les instruments de la casserole et le densimètre passent d'abord.</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Write beside the time what was done then.</source>
        <translation>Écrivez à côté de l'heure ce qui a été fait alors.</translation>
    </message>
    <message>
        <source>fire lit</source>
        <translation>feu allumé</translation>
    </message>
    <message>
        <source>fired</source>
        <translation>bois mis</translation>
    </message>
    <message>
        <source>draw opened</source>
        <translation>coulée ouverte</translation>
    </message>
    <message>
        <source>draw closed</source>
        <translation>coulée fermée</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>coulé</translation>
    </message>
    <message>
        <source>hydrometer</source>
        <translation>densimètre</translation>
    </message>
    <message>
        <source>refractometer</source>
        <translation>réfractomètre</translation>
    </message>
    <message>
        <source>water boiled</source>
        <translation>l'eau a bouilli</translation>
    </message>
    <message>
        <source>sap in</source>
        <translation>eau reçue</translation>
    </message>
    <message>
        <source>pan swapped</source>
        <translation>casserole changée</translation>
    </message>
    <message>
        <source>defoamer</source>
        <translation>antimousse</translation>
    </message>
    <message>
        <source>comes on</source>
        <translation>prend le quart</translation>
    </message>
    <message>
        <source>firing stopped</source>
        <translation>fin de chauffe</translation>
    </message>
    <message>
        <source>end of shift</source>
        <translation>fin de quart</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>allumé</translation>
    </message>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>sap</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>check</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>swapped</source>
        <translation>changée</translation>
    </message>
    <message>
        <source>“%1” is not a time. Write it as 9:40p, 940 or 21:40.</source>
        <translation>« %1 » n'est pas une heure. Écrivez 9:40p, 940, 21:40 ou 21h40.</translation>
    </message>
    <message>
        <source>There was no %1 that night: clocks went forward over it. Write what the clock showed after that.</source>
        <translation>Il n'y a pas eu de %1 cette nuit-là : on avançait l'heure. Écrivez ce que l'horloge montrait ensuite.</translation>
    </message>
    <message>
        <source>“%1” is not something a log records. Choose one of those offered, or write it as a note.</source>
        <translation>« %1 » n'est pas de ce qu'un registre note. Choisissez parmi ce qui est offert, ou faites-en une note.</translation>
    </message>
    <message>
        <source>“%1” is not a number. Write a number and its unit, as in 2.5 gal.</source>
        <translation>« %1 » n'est pas un nombre. Écrivez un nombre et son unité, comme 2,5 gal.</translation>
    </message>
    <message>
        <source>Beside a check goes the temperature of the cup, as in 205 F; “%1” is not one.</source>
        <translation>À côté d'une mesure va la température du godet, comme 205 F; « %1 » n'en est pas une.</translation>
    </message>
    <message>
        <source>Nothing goes here beside “%1”. Write it as a note in a row of its own.</source>
        <translation>Rien ne va ici à côté de « %1 ». Faites-en une note sur sa propre ligne.</translation>
    </message>
    <message>
        <source>gathered</source>
        <translation>récolté</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>échelle</translation>
    </message>
</context>
<context>
    <name>panside::PaperScreen</name>
    <message>
        <source>The log begins on (year-month-day)</source>
        <translation>Début du registre (année-mois-jour)</translation>
    </message>
    <message>
        <source>by the clock of</source>
        <translation>à l'heure de</translation>
    </message>
    <message>
        <source>Keep it as a shift</source>
        <translation>Garder comme quart</translation>
    </message>
    <message>
        <source>Take the row out</source>
        <translation>Ôter la ligne</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>more</source>
        <translation>de plus</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>will be written as</source>
        <translation>sera noté</translation>
    </message>
    <message>
        <source>“%1” is not a date. Write it as 2026-03-14.</source>
        <translation>« %1 » n'est pas une date. Écrivez 2026-03-14.</translation>
    </message>
    <message>
        <source>“%1” is not a time zone. Write one like America/New_York.</source>
        <translation>« %1 » n'est pas un fuseau. Écrivez-le comme America/Toronto.</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>pas encore : %1</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Ligne %1 : %2</translation>
    </message>
    <message>
        <source>There is no row yet. Begin with the time.</source>
        <translation>Il n'y a pas encore de ligne. Commencez par l'heure.</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>The journal is damaged. %1 shows what can be done.</source>
        <translation>Le journal est abîmé. %1 montre ce qu'on peut faire.</translation>
    </message>
    <message>
        <source>Where back-ups go</source>
        <translation>Où vont les copies</translation>
    </message>
    <message>
        <source>Stopped. The back-ups made before are as they were.</source>
        <translation>Arrêté. Les copies d'avant sont comme elles étaient.</translation>
    </message>
    <message>
        <source>Backed up and read back: %1.</source>
        <translation>Copié et relu : %1.</translation>
    </message>
    <message>
        <source>Backed up and read back: %1. Older ones removed by the rule: %2.</source>
        <translation>Copié et relu : %1. Anciennes retirées selon la règle : %2.</translation>
    </message>
    <message>
        <source>Which back-up</source>
        <translation>Quelle copie</translation>
    </message>
    <message>
        <source>A shift is going on. End it first, so that nothing of it is lost.</source>
        <translation>Un quart est en cours. Finissez-le d'abord, pour n'en rien perdre.</translation>
    </message>
    <message>
        <source>It is in place. What was there before is kept as %1.</source>
        <translation>C'est en place. Ce qui y était reste sous %1.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Write a PDF</source>
        <translation>Écrire un PDF</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Relève</translation>
    </message>
    <message>
        <source>Write the hand-over page</source>
        <translation>Écrire la page de relève</translation>
    </message>
    <message>
        <source>Paper log</source>
        <translation>Registre papier</translation>
    </message>
    <message>
        <source>Paper log: kept in the day book.</source>
        <translation>Cahier : noté au livre de jour.</translation>
    </message>
    <message>
        <source>Paper log: %1</source>
        <translation>Registre papier : %1</translation>
    </message>
    <message>
        <source>This console may not write in the journal.</source>
        <translation>Cette console ne peut pas écrire dans le journal.</translation>
    </message>
    <message>
        <source>No printer is set up on this machine. Write a PDF, and print that elsewhere.</source>
        <translation>Aucune imprimante n'est réglée sur cet ordinateur. Écrivez un PDF et imprimez-le ailleurs.</translation>
    </message>
    <message>
        <source>Which printer?</source>
        <translation>Quelle imprimante?</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>Envoyé à %1.</translation>
    </message>
    <message>
        <source>%1 takes nothing.</source>
        <translation>%1 ne prend rien.</translation>
    </message>
</context>
</TS>
