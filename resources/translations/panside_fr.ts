<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name>CheckWords</name>
    <message>
        <source> Too hot for a refractometer: let the sample cool, or use a glass.</source>
        <translation> Trop chaud pour un réfractomètre : laissez refroidir l'échantillon, ou prenez un densimètre.</translation>
    </message>
    <message>
        <source> Take the cup's temperature: it counts for more.</source>
        <translation> Prenez la température du godet : la mesure comptera davantage.</translation>
    </message>
    <message>
        <source> Was that Baumé?</source>
        <translation> Était-ce en Baumé?</translation>
    </message>
    <message>
        <source> Is the glass made for a hot cup?</source>
        <translation> Le densimètre est-il gradué pour un godet chaud?</translation>
    </message>
    <message>
        <source>perhaps too light to sell</source>
        <translation>peut-être trop léger pour la vente</translation>
    </message>
    <message>
        <source>%1? %2</source>
        <translation>%1? %2</translation>
    </message>
    <message>
        <source>too light to sell</source>
        <translation>trop léger pour la vente</translation>
    </message>
    <message>
        <source>light</source>
        <translation>léger</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>lourd</translation>
    </message>
    <message>
        <source>too heavy, it may crystallize</source>
        <translation>trop lourd, il peut cristalliser</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à point</translation>
    </message>
    <message>
        <source>Far off: kept, the target stays. Check once more.</source>
        <translation>Bien loin : gardée, la cible reste. Mesurez encore une fois.</translation>
    </message>
    <message>
        <source>Kept; no reading to compare it with.</source>
        <translation>Gardée; aucune lecture à lui comparer.</translation>
    </message>
    <message>
        <source>Open at %1, as before.</source>
        <translation>Ouvrir à %1, comme avant.</translation>
    </message>
    <message>
        <source>Open at %1 now, %2 higher.</source>
        <translation>Ouvrir à %1, soit %2 de plus.</translation>
    </message>
    <message>
        <source>Open at %1 now, %2 lower.</source>
        <translation>Ouvrir à %1, soit %2 de moins.</translation>
    </message>
    <message>
        <source>That check cannot be syrup: wrong unit or digit? Kept; correct it.</source>
        <translation>Cette mesure ne peut pas être du sirop : mauvaise unité, mauvais chiffre? Gardée; corrigez-la.</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1 : %2. %3</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>Hand over</source>
        <translation>Relève</translation>
    </message>
    <message>
        <source>Back-ups</source>
        <translation>Copies de sûreté</translation>
    </message>
    <message>
        <source>Paper log</source>
        <translation>Registre papier</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Open the draw</source>
        <translation>Ouvrir la coulée</translation>
    </message>
    <message>
        <source>the draw-off was opened</source>
        <translation>la coulée a été ouverte</translation>
    </message>
    <message>
        <source>Close the draw</source>
        <translation>Fermer la coulée</translation>
    </message>
    <message>
        <source>the draw-off was closed; then how much came</source>
        <translation>la coulée a été fermée; puis combien il en est venu</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Densité</translation>
    </message>
    <message>
        <source>what hydrometer and cup thermometer show</source>
        <translation>ce que montrent le densimètre et le thermomètre du godet</translation>
    </message>
    <message>
        <source>Fired</source>
        <translation>Bois mis</translation>
    </message>
    <message>
        <source>a load of wood went in</source>
        <translation>une charge de bois est entrée</translation>
    </message>
    <message>
        <source>Fire lit</source>
        <translation>Feu allumé</translation>
    </message>
    <message>
        <source>the fire was lit</source>
        <translation>le feu a été allumé</translation>
    </message>
    <message>
        <source>Sap in</source>
        <translation>Eau reçue</translation>
    </message>
    <message>
        <source>sap came into the tank</source>
        <translation>de l'eau d'érable est arrivée au bassin</translation>
    </message>
    <message>
        <source>Stop firing</source>
        <translation>Fin de chauffe</translation>
    </message>
    <message>
        <source>no more wood; the fire may burn out</source>
        <translation>plus de bois; le feu peut s'éteindre</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>the alarm in the bar was seen</source>
        <translation>l'alarme de la barre a été vue</translation>
    </message>
    <message>
        <source>Shelve</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>put the alarm off for a while</source>
        <translation>mettre l'alarme de côté un moment</translation>
    </message>
    <message>
        <source>Water check</source>
        <translation>Eau bouillante</translation>
    </message>
    <message>
        <source>the probe stands in plain boiling water</source>
        <translation>la sonde est dans l'eau pure qui bout</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>type in a reading</source>
        <translation>taper une lecture</translation>
    </message>
    <message>
        <source>Pan swapped</source>
        <translation>Casserole changée</translation>
    </message>
    <message>
        <source>another syrup pan, or the flow reversed</source>
        <translation>autre casserole à sirop, ou sens inversé</translation>
    </message>
    <message>
        <source>Defoamer</source>
        <translation>Antimousse</translation>
    </message>
    <message>
        <source>drops of defoamer went in</source>
        <translation>des gouttes d'antimousse ont été mises</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>a note for the log</source>
        <translation>une note pour le registre</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>who comes on, who leaves</source>
        <translation>qui arrive, qui part</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>take back what was entered last</source>
        <translation>reprendre la dernière entrée</translation>
    </message>
    <message>
        <source>End of shift</source>
        <translation>Fin du quart</translation>
    </message>
    <message>
        <source>the shift is over; the next entry begins another</source>
        <translation>le quart est fini; la prochaine entrée en ouvre un autre</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Reckoner</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Probes</source>
        <translation>Sondes</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>Day or night</source>
        <translation>Jour ou nuit</translation>
    </message>
    <message>
        <source>light for a bright room, dim for the dark</source>
        <translation>clair pour une pièce éclairée, tamisé pour le noir</translation>
    </message>
    <message>
        <source>Far view</source>
        <translation>De loin</translation>
    </message>
    <message>
        <source>only the sentence and the three numbers</source>
        <translation>seulement la phrase et les trois nombres</translation>
    </message>
    <message>
        <source>Fire and fuel</source>
        <translation>Feu et bois</translation>
    </message>
</context>
<context>
    <name>AlarmWords</name>
    <message>
        <source>a probe</source>
        <translation>une sonde</translation>
    </message>
    <message>
        <source>The syrup pan is about to scorch</source>
        <translation>La casserole à sirop va brûler</translation>
    </message>
    <message>
        <source>The syrup pan is scorching</source>
        <translation>La casserole à sirop brûle</translation>
    </message>
    <message>
        <source>The syrup pan scorches in %1</source>
        <translation>La casserole à sirop brûle dans %1</translation>
    </message>
    <message>
        <source>Sap for %1 more</source>
        <translation>Eau d'érable pour encore %1</translation>
    </message>
    <message>
        <source>Sap is running short</source>
        <translation>L'eau d'érable tire à sa fin</translation>
    </message>
    <message>
        <source>scorch risk</source>
        <translation>risque de brûler</translation>
    </message>
    <message>
        <source>syrup pan low</source>
        <translation>casserole à sirop basse</translation>
    </message>
    <message>
        <source>stack hot</source>
        <translation>cheminée trop chaude</translation>
    </message>
    <message>
        <source>filter pressure high</source>
        <translation>pression du filtre trop haute</translation>
    </message>
    <message>
        <source>probe silent</source>
        <translation>sonde muette</translation>
    </message>
    <message>
        <source>nothing can be kept</source>
        <translation>rien ne peut être gardé</translation>
    </message>
    <message>
        <source>over the target</source>
        <translation>au-dessus de la cible</translation>
    </message>
    <message>
        <source>draw still open</source>
        <translation>coulée encore ouverte</translation>
    </message>
    <message>
        <source>firing overdue</source>
        <translation>charge de bois en retard</translation>
    </message>
    <message>
        <source>sap low</source>
        <translation>eau d'érable basse</translation>
    </message>
    <message>
        <source>last load</source>
        <translation>dernière charge</translation>
    </message>
    <message>
        <source>probe stuck</source>
        <translation>sonde figée</translation>
    </message>
    <message>
        <source>reading not believable</source>
        <translation>lecture peu croyable</translation>
    </message>
    <message>
        <source>clock moved</source>
        <translation>horloge déplacée</translation>
    </message>
    <message>
        <source>The syrup pan is half empty</source>
        <translation>La casserole à sirop est à moitié vide</translation>
    </message>
    <message>
        <source>The stack is hotter than it should be</source>
        <translation>La cheminée est plus chaude qu'elle ne devrait</translation>
    </message>
    <message>
        <source>Filter press over its limit</source>
        <translation>Filtre-presse au-dessus de sa limite</translation>
    </message>
    <message>
        <source>No reading: %1</source>
        <translation>Aucune lecture : %1</translation>
    </message>
    <message>
        <source>The log cannot be kept</source>
        <translation>Le registre ne peut être gardé</translation>
    </message>
    <message>
        <source>Over the target, draw shut</source>
        <translation>Au-dessus de la cible, coulée fermée</translation>
    </message>
    <message>
        <source>Draw open, syrup too light</source>
        <translation>Coulée ouverte, sirop trop léger</translation>
    </message>
    <message>
        <source>The fire needs wood</source>
        <translation>Le feu veut du bois</translation>
    </message>
    <message>
        <source>The next load should be the last</source>
        <translation>La prochaine charge devrait être la dernière</translation>
    </message>
    <message>
        <source>Not moving: %1</source>
        <translation>Ne bouge plus : %1</translation>
    </message>
    <message>
        <source>Not believable: %1</source>
        <translation>Peu croyable : %1</translation>
    </message>
    <message>
        <source>The computer's clock was moved</source>
        <translation>L'horloge de l'ordinateur a été déplacée</translation>
    </message>
    <message>
        <source>flood the pan with sap from the side|close the draw|damp the fire</source>
        <translation>noyer d'eau d'érable, par le côté|fermer la coulée|étouffer le feu</translation>
    </message>
    <message>
        <source>flood the pan with sap from the side|keep the draw shut|damp the fire</source>
        <translation>noyer d'eau d'érable, par le côté|garder la coulée fermée|étouffer le feu</translation>
    </message>
    <message>
        <source>keep drawing|let thin sap in at the draw end, from the side</source>
        <translation>continuer de couler|eau d'érable près de la coulée, par le côté</translation>
    </message>
    <message>
        <source>open the draw|let thin sap in at the draw end, from the side</source>
        <translation>ouvrir la coulée|eau d'érable près de la coulée, par le côté</translation>
    </message>
    <message>
        <source>look how deep the pan is; if it is low, close the draw|let sap in from the side|damp the fire</source>
        <translation>voir le niveau : s'il est bas, fermer la coulée|noyer d'eau d'érable, par le côté|étouffer le feu</translation>
    </message>
    <message>
        <source>look how deep the pan is; if it is low, keep the draw shut|let sap in from the side|damp the fire</source>
        <translation>voir le niveau : s'il est bas, laisser la coulée fermée|noyer d'eau d'érable, par le côté|étouffer le feu</translation>
    </message>
    <message>
        <source>keep the sap that is left to cover the pans</source>
        <translation>garder l'eau d'érable qui reste pour couvrir les casseroles</translation>
    </message>
    <message>
        <source>nothing to do: intervals did not jump</source>
        <translation>rien à faire : les durées n'ont pas sauté</translation>
    </message>
    <message>
        <source>urgent</source>
        <translation>urgent</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bientôt</translation>
    </message>
    <message>
        <source>to know</source>
        <translation>à savoir</translation>
    </message>
    <message>
        <source>over</source>
        <translation>fini</translation>
    </message>
    <message>
        <source>not yet seen</source>
        <translation>pas encore vue</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vue</translation>
    </message>
    <message>
        <source>gone, not yet seen</source>
        <translation>passée, pas encore vue</translation>
    </message>
    <message>
        <source>shelved</source>
        <translation>écartée</translation>
    </message>
</context>
<context>
    <name>Cards</name>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>%1 %2 or more</source>
        <translation>%1 %2 ou plus</translation>
    </message>
    <message>
        <source>about %1 %2</source>
        <translation>environ %1 %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2 %3</translation>
    </message>
</context>
<context>
    <name>DrawCard</name>
    <message numerus="yes">
        <source>%n checks, the last %1 ago</source>
        <translation><numerusform>%n vérification, la dernière il y a %1</numerusform><numerusform>%n vérifications, la dernière il y a %1</numerusform></translation>
    </message>
    <message>
        <source>rise %1 of %2</source>
        <translation>hausse %1 de %2</translation>
    </message>
    <message>
        <source>open at %1</source>
        <translation>couler à %1</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>one check, %1 ago</source>
        <translation>une vérification, il y a %1</translation>
    </message>
    <message>
        <source>no density check yet</source>
        <translation>densité pas encore vérifiée</translation>
    </message>
    <message>
        <source>DRAWING, CLOSE IT</source>
        <translation>COULÉE, FERMEZ-LA</translation>
    </message>
    <message>
        <source>DRAWING, WATCH THE RISE</source>
        <translation>COULÉE, SUIVEZ LA HAUSSE</translation>
    </message>
    <message>
        <source>DRAWING, CLOSE IN</source>
        <translation>COULÉE, FERMER DANS</translation>
    </message>
    <message>
        <source>TO THE DRAW</source>
        <translation>AVANT LA COULÉE</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>pan probe %1</source>
        <translation>sonde %1</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>Nothing that is drawn off reads so low. Is a digit missing?</source>
        <translation>Rien de ce qu'on coule ne se lit si bas. Manque-t-il un chiffre?</translation>
    </message>
    <message>
        <source>%1 is unusual at your elevation, where about %2 is usual. Weather reports give the pressure at sea level: if this is one, it means %3 here.</source>
        <translation>%1 est rare à votre altitude, où %2 environ est courant. La météo annonce la pression au niveau de la mer : si c'en est une, elle vaut %3 ici.</translation>
    </message>
    <message>
        <source>A barometer here shows it: keep %1</source>
        <translation>Un baromètre d'ici le montre : garder %1</translation>
    </message>
    <message>
        <source>It is a weather report: %1 here</source>
        <translation>C'est la météo : %1 ici</translation>
    </message>
    <message>
        <source>How hot was the cup? Type it and press Enter. Enter alone keeps the check as it was read, and it counts for less.</source>
        <translation>Quelle était la température du godet? Tapez-la, puis Entrée. Entrée seule garde la mesure comme lue, et elle compte moins.</translation>
    </message>
    <message>
        <source>How warm was the sample? Type it and press Enter. Enter alone keeps the check as it was read, and it counts for less.</source>
        <translation>Quelle était la température de l'échantillon? Tapez-la, puis Entrée. Entrée seule garde la mesure comme lue, et elle compte moins.</translation>
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
        <source>comes on</source>
        <translation>arrive</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>part</translation>
    </message>
    <message>
        <source>volume drawn, if known</source>
        <translation>volume coulé, si connu</translation>
    </message>
    <message>
        <source>into</source>
        <translation>dans</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>cup temperature</source>
        <translation>température du godet</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>échelle</translation>
    </message>
    <message>
        <source>with</source>
        <translation>avec</translation>
    </message>
    <message>
        <source>made for</source>
        <translation>fait pour</translation>
    </message>
    <message>
        <source>wood, if weighed</source>
        <translation>bois, si pesé</translation>
    </message>
    <message>
        <source>kind of wood</source>
        <translation>sorte de bois</translation>
    </message>
    <message>
        <source>which fire</source>
        <translation>quel feu</translation>
    </message>
    <message>
        <source>fire, if several</source>
        <translation>feu, si plusieurs</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>sugar, if known</source>
        <translation>sucre, si connu</translation>
    </message>
    <message>
        <source>from where</source>
        <translation>d'où</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarme</translation>
    </message>
    <message>
        <source>for</source>
        <translation>pendant</translation>
    </message>
    <message>
        <source>water boils at, on this probe</source>
        <translation>l'eau bout à, sur cette sonde</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>drops</source>
        <translation>gouttes</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>Type how many minutes, from 1 to 240.</source>
        <translation>Tapez combien de minutes, de 1 à 240.</translation>
    </message>
    <message>
        <source>There is no alarm that this would change.</source>
        <translation>Aucune alarme que cela changerait.</translation>
    </message>
    <message>
        <source>%1: type it, or leave with Escape.</source>
        <translation>%1 : tapez-le, ou quittez avec Échap.</translation>
    </message>
</context>
<context>
    <name>FactWords</name>
    <message numerus="yes">
        <source>defoamer, %n drops</source>
        <translation><numerusform>antimousse, %n goutte</numerusform><numerusform>antimousse, %n gouttes</numerusform></translation>
    </message>
    <message>
        <source>fired, noticed from the stack</source>
        <translation>bois mis, vu à la cheminée</translation>
    </message>
    <message>
        <source>no load, though the stack looked like one</source>
        <translation>pas de bois mis, malgré ce que montrait la cheminée</translation>
    </message>
    <message>
        <source>fired</source>
        <translation>bois mis</translation>
    </message>
    <message>
        <source>draw closed</source>
        <translation>coulée fermée</translation>
    </message>
    <message>
        <source>cup %1</source>
        <translation>godet %1</translation>
    </message>
    <message>
        <source>hydrometer %1</source>
        <translation>densimètre %1</translation>
    </message>
    <message>
        <source>refractometer %1</source>
        <translation>réfractomètre %1</translation>
    </message>
    <message>
        <source>sap in, %1</source>
        <translation>eau reçue, %1</translation>
    </message>
    <message>
        <source>%1 comes on</source>
        <translation>%1 arrive</translation>
    </message>
    <message>
        <source>%1 leaves</source>
        <translation>%1 part</translation>
    </message>
    <message>
        <source>%1 comes on, %2 leaves</source>
        <translation>%1 arrive, %2 part</translation>
    </message>
    <message>
        <source>defoamer</source>
        <translation>antimousse</translation>
    </message>
    <message>
        <source>defoamer, one drop</source>
        <translation>antimousse, une goutte</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>fire lit</source>
        <translation>feu allumé</translation>
    </message>
    <message>
        <source>draw opened</source>
        <translation>coulée ouverte</translation>
    </message>
    <message>
        <source>water boiled at %1</source>
        <translation>l'eau bouillait à %1</translation>
    </message>
    <message>
        <source>pan swapped</source>
        <translation>casserole changée</translation>
    </message>
    <message>
        <source>firing stopped</source>
        <translation>fin de chauffe</translation>
    </message>
    <message>
        <source>end of shift</source>
        <translation>fin du quart</translation>
    </message>
    <message>
        <source>alarm seen: %1</source>
        <translation>alarme vue : %1</translation>
    </message>
    <message>
        <source>alarm shelved for %1: %2</source>
        <translation>alarme écartée pendant %1 : %2</translation>
    </message>
    <message>
        <source>clock moved back by %1</source>
        <translation>horloge reculée de %1</translation>
    </message>
    <message>
        <source>clock moved on by %1</source>
        <translation>horloge avancée de %1</translation>
    </message>
    <message>
        <source>note: %1</source>
        <translation>note : %1</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 réglé</translation>
    </message>
</context>
<context>
    <name>FaultWords</name>
    <message>
        <source>row</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a number and degC or degF, as in 98.9degC</source>
        <translation>un nombre et degC ou degF, comme 98.9degC</translation>
    </message>
    <message>
        <source>a number of %1</source>
        <translation>un nombre de %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>a reading or an event</source>
        <translation>une mesure ou un événement</translation>
    </message>
    <message>
        <source>name=ALARM</source>
        <translation>name=ALARME</translation>
    </message>
    <message>
        <source>key=SETTING</source>
        <translation>key=RÉGLAGE</translation>
    </message>
    <message>
        <source>by=NAME or off=NAME</source>
        <translation>by=NOM ou off=NOM</translation>
    </message>
    <message>
        <source>key=value, each key once, with ; between</source>
        <translation>clé=valeur, chaque clé une fois, avec; entre elles</translation>
    </message>
    <message>
        <source>a time as in %1, or choose another form</source>
        <translation>une heure comme %1, ou choisissez une autre forme</translation>
    </message>
    <message>
        <source>a time as in %1</source>
        <translation>une heure comme %1</translation>
    </message>
    <message>
        <source>a time that clocks did not go forward over, or choose the zone of its clock</source>
        <translation>une heure que le passage à l'heure d'été n'a pas sautée, ou choisissez le fuseau de son horloge</translation>
    </message>
    <message>
        <source>one row a line, each under a million characters</source>
        <translation>une ligne par mesure, chacune de moins d'un million de caractères</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>the row is longer than %3 bytes, so what follows was not read. End each row with a line end, and close each quote.</source>
        <translation>la ligne dépasse %3 octets, la suite n'a donc pas été lue. Finissez chaque ligne par une fin de ligne et fermez chaque guillemet.</translation>
    </message>
    <message>
        <source>%2 is more than %3 days from another row. A log is one shift: put this row right, or into a log of its own.</source>
        <translation>%2 est à plus de %3 jours d'une autre ligne. Un registre est un seul quart : corrigez cette ligne, ou mettez-la dans un registre à elle.</translation>
    </message>
    <message>
        <source>Did you mean %1?</source>
        <translation>Vouliez-vous dire %1?</translation>
    </message>
    <message>
        <source>%1 is missing from the detail. Write %3.</source>
        <translation>%1 manque dans le détail. Écrivez %3.</translation>
    </message>
    <message>
        <source>the first line is &quot;%2&quot;. A shift log begins with the line time,what,value,unit,detail.</source>
        <translation>la première ligne est « %2 ». Un registre commence par la ligne time,what,value,unit,detail.</translation>
    </message>
    <message>
        <source>the text is not UTF-8. Save it as UTF-8 and try again.</source>
        <translation>le texte n'est pas en UTF-8. Enregistrez-le en UTF-8 et réessayez.</translation>
    </message>
    <message>
        <source>the row has %2 field, not five. Write time,what,value,unit,detail, with nothing between the commas where there is nothing to say.</source>
        <translation>la ligne a %2 champ, pas cinq. Écrivez time,what,value,unit,detail, sans rien entre les virgules là où il n'y a rien à dire.</translation>
    </message>
    <message>
        <source>the row has %2 fields, not five. Write time,what,value,unit,detail, with nothing between the commas where there is nothing to say.</source>
        <translation>la ligne a %2 champs, pas cinq. Écrivez time,what,value,unit,detail, sans rien entre les virgules là où il n'y a rien à dire.</translation>
    </message>
    <message>
        <source>a double quote does not close, or stands where none may. Put the whole field in double quotes and double those inside it.</source>
        <translation>un guillemet n'est pas fermé, ou se trouve là où il ne peut être. Mettez le champ entier entre guillemets et doublez ceux du dedans.</translation>
    </message>
    <message>
        <source>the time is missing. Write %3.</source>
        <translation>l'heure manque. Écrivez %3.</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is not a time. Write %3, with at most six decimals.</source>
        <translation>« %2 » n'est pas une heure. Écrivez %3, avec six décimales au plus.</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; is not a number. Write digits with a point, as in 210.5, or leave the field empty where the row needs none.</source>
        <translation>%1 « %2 » n'est pas un nombre. Écrivez des chiffres avec un point, comme 210.5, ou laissez le champ vide là où il n'en faut pas.</translation>
    </message>
    <message>
        <source>%1 %2 is not a whole number. Write how many there are.</source>
        <translation>%1 %2 n'est pas un nombre entier. Écrivez combien il y en a.</translation>
    </message>
    <message>
        <source>%1 &quot;%2&quot; holds its unit. Write %3.</source>
        <translation>%1 « %2 » contient son unité. Écrivez %3.</translation>
    </message>
    <message>
        <source>%1 as the value and %2 as the unit</source>
        <translation>%1 comme valeur et %2 comme unité</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>the number has no unit. Write %3.</source>
        <translation>le nombre n'a pas d'unité. Écrivez %3.</translation>
    </message>
    <message>
        <source>unit &quot;%2&quot; is not known. Write %3.</source>
        <translation>l'unité « %2 » n'est pas connue. Écrivez %3.</translation>
    </message>
    <message>
        <source>unit &quot;%2&quot; cannot stand here. Write %3.</source>
        <translation>l'unité « %2 » ne va pas ici. Écrivez %3.</translation>
    </message>
    <message>
        <source>unit &quot;%2&quot; stands where no unit belongs. Leave it empty.</source>
        <translation>l'unité « %2 » est là où il n'en faut pas. Laissez le champ vide.</translation>
    </message>
    <message>
        <source>the %1 is missing. Write %3.</source>
        <translation>il manque : %1. Écrivez %3.</translation>
    </message>
    <message>
        <source>value &quot;%2&quot; stands where none belongs. Leave it empty.</source>
        <translation>la valeur « %2 » est là où il n'en faut pas. Laissez le champ vide.</translation>
    </message>
    <message>
        <source>%1 %2 cannot be: it must be %3.</source>
        <translation>%1 %2 est impossible : ce doit être %3.</translation>
    </message>
    <message>
        <source>detail &quot;%2&quot; cannot be read. Write %3.</source>
        <translation>le détail « %2 » ne se lit pas. Écrivez %3.</translation>
    </message>
    <message>
        <source>%1=&quot;%2&quot; cannot be read. Write %3.</source>
        <translation>%1=« %2 » ne se lit pas. Écrivez %3.</translation>
    </message>
    <message>
        <source>%1=&quot;%2 cells&quot; cannot be read. Write %3 cells or more, as they are mapped.</source>
        <translation>%1=« %2 cases » ne se lit pas. Écrivez %3 cases ou plus, comme elles ont été désignées.</translation>
    </message>
    <message>
        <source>the setting in &quot;%2&quot; is not known; kept, and without effect.</source>
        <translation>le réglage de « %2 » n'est pas connu; gardé, et sans effet.</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is not known; kept, and without effect.</source>
        <translation>« %2 » n'est pas connu; gardé, et sans effet.</translation>
    </message>
    <message>
        <source>there is no row in it.</source>
        <translation>il n'y a aucune ligne.</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is one more than the %3 names of probes that a log may have. Leave out what names no probe.</source>
        <translation>« %2 » est un de plus que les %3 noms de sondes qu'un registre peut avoir. Ôtez ce qui ne nomme pas de sonde.</translation>
    </message>
    <message>
        <source>&quot;%2&quot; is not known here; kept, and without effect.</source>
        <translation>« %2 » n'est pas connu ici; gardé, et sans effet.</translation>
    </message>
    <message>
        <source>there is no alarm &quot;%2&quot;; kept, and without effect.</source>
        <translation>il n'y a pas d'alarme « %2 »; gardé, et sans effet.</translation>
    </message>
    <message>
        <source>%1=&quot;%2&quot; is none of the words for it (%3); kept as it stands.</source>
        <translation>%1=« %2 » n'est pas un de ses mots (%3); gardé tel quel.</translation>
    </message>
    <message>
        <source>there is no place &quot;%2&quot;. Write a state or province in English, or US or Canada. Did you mean %3?</source>
        <translation>il n'y a pas de lieu « %2 ». Écrivez un État ou une province en anglais, ou US ou Canada. Vouliez-vous dire %3?</translation>
    </message>
    <message>
        <source>%1=&quot;%2&quot; is the vessel it comes from. Name two vessels.</source>
        <translation>%1=« %2 » est le récipient d'où cela vient. Nommez deux récipients.</translation>
    </message>
    <message>
        <source>%1=&quot;%2&quot; is a vessel nobody named. Did you mean &quot;%3&quot;? If not, name it in a vessel row.</source>
        <translation>%1=« %2 » est un récipient que personne n'a nommé. Vouliez-vous dire « %3 »? Sinon, nommez-le dans une ligne vessel.</translation>
    </message>
    <message>
        <source>%1=&quot;%2&quot; is a vessel nobody named. Name it in a vessel row.</source>
        <translation>%1=« %2 » est un récipient que personne n'a nommé. Nommez-le dans une ligne vessel.</translation>
    </message>
    <message>
        <source>lot &quot;%2&quot; is a code twice: it stands for another vessel or another day. The next free code is &quot;%3&quot;.</source>
        <translation>le lot « %2 » est un code en double : il désigne un autre récipient ou un autre jour. Le prochain code libre est « %3 ».</translation>
    </message>
    <message>
        <source>%3 %2 cannot be true; kept, and not believed.</source>
        <translation>%3 %2 ne peut être vrai; gardé sans être cru.</translation>
    </message>
    <message>
        <source>this draw is told twice; kept, and counted once.</source>
        <translation>cette coulée est dite deux fois; gardée, et comptée une fois.</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>%1 or %2 or %3</source>
        <translation>%1 ou %2 ou %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 à %2 %3</translation>
    </message>
</context>
<context>
    <name>FireCard</name>
    <message>
        <source>%1 overdue too</source>
        <translation>%1 en retard aussi</translation>
    </message>
    <message>
        <source>then %1 in %2</source>
        <translation>puis %1 dans %2</translation>
    </message>
    <message numerus="yes">
        <source>%n loads</source>
        <translation><numerusform>%n charge de bois</numerusform><numerusform>%n charges de bois</numerusform></translation>
    </message>
    <message>
        <source>turn: %1</source>
        <translation>tour : %1</translation>
    </message>
    <message>
        <source>every %1, learned tonight</source>
        <translation>toutes les %1, appris ce soir</translation>
    </message>
    <message>
        <source>every %1</source>
        <translation>toutes les %1</translation>
    </message>
    <message>
        <source>one load</source>
        <translation>une charge de bois</translation>
    </message>
    <message>
        <source>the last %1 ago</source>
        <translation>la dernière il y a %1</translation>
    </message>
    <message>
        <source>TO THE NEXT FIRING</source>
        <translation>AVANT LA PROCHAINE CHARGE DE BOIS</translation>
    </message>
    <message>
        <source>firing stopped</source>
        <translation>fin de chauffe</translation>
    </message>
    <message>
        <source>fire not lit</source>
        <translation>feu pas allumé</translation>
    </message>
</context>
<context>
    <name>LastLoadCard</name>
    <message>
        <source>sap for %1</source>
        <translation>eau d'érable pour %1</translation>
    </message>
    <message>
        <source>boils off %1</source>
        <translation>évapore %1</translation>
    </message>
    <message>
        <source>boils off %1, %2 % of the wood's heat</source>
        <translation>évapore %1, %2 % de la chaleur du bois</translation>
    </message>
    <message>
        <source>sap in %1</source>
        <translation>eau reçue %1</translation>
    </message>
    <message>
        <source>syrup %1</source>
        <translation>sirop %1</translation>
    </message>
    <message>
        <source>TO THE LAST LOAD</source>
        <translation>AVANT LA DERNIÈRE CHARGE DE BOIS</translation>
    </message>
    <message>
        <source>FIRING STOPPED, WATCH THE PANS</source>
        <translation>FIN DE CHAUFFE, SURVEILLEZ</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>il y a %1</translation>
    </message>
    <message>
        <source>keep %1 back to cover the pans</source>
        <translation>gardez %1 pour couvrir les casseroles</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Boiling syrup and steam burn at once and deeply. Keep children and visitors back.</source>
        <translation>Le sirop bouillant et la vapeur brûlent tout de suite et à fond. Tenez enfants et visiteurs à l'écart.</translation>
    </message>
    <message>
        <source>A dry pan burns within minutes and can set the house on fire. Somebody stays with a lit fire, always; keep sap and an extinguisher at hand, and look up at the roof.</source>
        <translation>Une casserole à sec brûle en quelques minutes et peut mettre le feu à la cabane. Quelqu'un reste toujours près d'un feu allumé; gardez de l'eau d'érable et un extincteur à portée, et regardez le toit.</translation>
    </message>
    <message>
        <source>Flue gas in a closed house kills without a smell (carbon monoxide). Keep it open, and hang a detector.</source>
        <translation>Les gaz de combustion dans une cabane fermée tuent sans odeur (monoxyde de carbone). Gardez-la ouverte et posez un détecteur.</translation>
    </message>
    <message>
        <source>Old solder and galvanized or terne gear can put lead into syrup. Find out what yours is.</source>
        <translation>La vieille soudure et l'équipement galvanisé ou étamé au plomb peuvent mettre du plomb dans le sirop. Sachez ce qu'est le vôtre.</translation>
    </message>
    <message>
        <source>Syrup packed too cool grows mold. Measure in the bottle, and follow what your food law says.</source>
        <translation>Le sirop embouteillé trop froid moisit. Mesurez dans la bouteille et suivez la loi des aliments de chez vous.</translation>
    </message>
    <message>
        <source>A defoamer made of milk, or of another food that people cannot have, is an allergen: it belongs on the label.</source>
        <translation>Un antimousse fait de lait, ou d'un autre aliment que des gens ne peuvent prendre, est un allergène : il va sur l'étiquette.</translation>
    </message>
    <message>
        <source>Before the first fire</source>
        <translation>Avant le premier feu</translation>
    </message>
    <message>
        <source>Panside advises. It controls nothing, and it can be wrong: a probe may lie, a forecast may miss. The instruments on the pan, the hydrometer, licensed inspectors and local codes come first.</source>
        <translation>Panside conseille. Il ne commande rien et peut se tromper : une sonde peut mentir, une prévision manquer. Les instruments de la casserole, le densimètre, les inspecteurs reconnus et les codes locaux passent d'abord.</translation>
    </message>
    <message>
        <source>You find this page again under F1, then 2.</source>
        <translation>Cette page se retrouve sous F1, puis 2.</translation>
    </message>
</context>
<context>
    <name>Probes</name>
    <message>
        <source>not used</source>
        <translation>pas utilisé</translation>
    </message>
</context>
<context>
    <name>ReadingWords</name>
    <message>
        <source>syrup pan</source>
        <translation>casserole à sirop</translation>
    </message>
    <message>
        <source>flue pan</source>
        <translation>casserole à plis</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>cheminée</translation>
    </message>
    <message>
        <source>sap feed</source>
        <translation>arrivée d'eau d'érable</translation>
    </message>
    <message>
        <source>outside air</source>
        <translation>air dehors</translation>
    </message>
    <message>
        <source>barometer</source>
        <translation>baromètre</translation>
    </message>
    <message>
        <source>reported pressure</source>
        <translation>pression annoncée</translation>
    </message>
    <message>
        <source>syrup pan level</source>
        <translation>niveau, casserole à sirop</translation>
    </message>
    <message>
        <source>flue pan level</source>
        <translation>niveau, casserole à plis</translation>
    </message>
    <message>
        <source>sap tank</source>
        <translation>bassin d'eau d'érable</translation>
    </message>
    <message>
        <source>sap flow</source>
        <translation>débit d'eau d'érable</translation>
    </message>
    <message>
        <source>filter press</source>
        <translation>filtre-presse</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bonne</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation>en doute</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>absente</translation>
    </message>
    <message>
        <source>silent for %1</source>
        <translation>muette depuis %1</translation>
    </message>
    <message>
        <source>stuck for %1</source>
        <translation>figée depuis %1</translation>
    </message>
    <message>
        <source>jumping</source>
        <translation>sautille</translation>
    </message>
    <message>
        <source>cannot be true</source>
        <translation>impossible</translation>
    </message>
    <message>
        <source>changes too fast</source>
        <translation>change trop vite</translation>
    </message>
    <message>
        <source>in steam or foam</source>
        <translation>dans la vapeur ou la mousse</translation>
    </message>
    <message>
        <source>°F or °C? The unit looks wrong.</source>
        <translation>°F ou °C? L'unité semble fausse.</translation>
    </message>
    <message>
        <source>out of the pan, or wet?</source>
        <translation>hors de la casserole, ou mouillée?</translation>
    </message>
    <message>
        <source>reduced to sea level?</source>
        <translation>ramenée au niveau de la mer?</translation>
    </message>
    <message>
        <source>no such weather: unit or height?</source>
        <translation>aucun temps pareil : unité ou altitude?</translation>
    </message>
    <message>
        <source>plugs exchanged?</source>
        <translation>fiches interverties?</translation>
    </message>
    <message>
        <source>too near boiling water</source>
        <translation>trop près de l'eau bouillante</translation>
    </message>
    <message>
        <source>no sap runs in</source>
        <translation>aucune eau d’érable n’arrive</translation>
    </message>
    <message>
        <source>more than the pans can boil: a leak?</source>
        <translation>plus que les casseroles ne peuvent bouillir : une fuite?</translation>
    </message>
    <message>
        <source>touching the pan?</source>
        <translation>touche la casserole?</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>pas encore lue</translation>
    </message>
    <message>
        <source>water check in doubt: check again</source>
        <translation>essai à l'eau bouillante en doute : à refaire</translation>
    </message>
    <message>
        <source>no barometer: by the water check</source>
        <translation>pas de baromètre : selon l'eau bouillante</translation>
    </message>
    <message>
        <source>no barometer: do a water check (%1)</source>
        <translation>pas de baromètre : essai à l'eau bouillante (%1)</translation>
    </message>
    <message>
        <source>elevation not set (%1)</source>
        <translation>altitude non réglée (%1)</translation>
    </message>
    <message>
        <source>no pan reading</source>
        <translation>aucune lecture de la casserole</translation>
    </message>
    <message>
        <source>pan reading in doubt</source>
        <translation>lecture de la casserole en doute</translation>
    </message>
    <message>
        <source>too early to say</source>
        <translation>trop tôt pour dire</translation>
    </message>
    <message>
        <source>the fire is dying</source>
        <translation>le feu s'éteint</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>coulée ouverte</translation>
    </message>
    <message>
        <source>draw shut</source>
        <translation>coulée fermée</translation>
    </message>
    <message>
        <source>fire not lit</source>
        <translation>feu pas allumé</translation>
    </message>
    <message>
        <source>too few draws yet</source>
        <translation>trop peu de coulées encore</translation>
    </message>
    <message>
        <source>firing stopped</source>
        <translation>fin de chauffe</translation>
    </message>
    <message>
        <source>sap tank not read</source>
        <translation>bassin pas lu</translation>
    </message>
    <message>
        <source>not watched long enough</source>
        <translation>pas observé assez longtemps</translation>
    </message>
    <message>
        <source>tank rises, no sap entered</source>
        <translation>le bassin monte, rien d'entré</translation>
    </message>
    <message>
        <source>weight of a load not set</source>
        <translation>poids d'une charge non réglé</translation>
    </message>
    <message>
        <source>pan size not set</source>
        <translation>taille des casseroles non réglée</translation>
    </message>
    <message>
        <source>sugar of the sap not known</source>
        <translation>sucre de l'eau d'érable inconnu</translation>
    </message>
    <message>
        <source>not boiling</source>
        <translation>ne bout pas</translation>
    </message>
    <message>
        <source>the shift is over</source>
        <translation>le quart est fini</translation>
    </message>
    <message>
        <source>may never get there</source>
        <translation>pourrait ne jamais arriver</translation>
    </message>
</context>
<context>
    <name>Review</name>
    <message>
        <source>%1 of %2 measured: %3</source>
        <translation>%1 de %2 mesurées : %3</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>%1 (going on)</source>
        <translation>%1 (en cours)</translation>
    </message>
    <message>
        <source>1 draw</source>
        <translation>1 coulée</translation>
    </message>
    <message numerus="yes">
        <source>%n draws</source>
        <translation><numerusform>%n coulée</numerusform><numerusform>%n coulées</numerusform></translation>
    </message>
    <message>
        <source>1 load</source>
        <translation>1 charge</translation>
    </message>
    <message numerus="yes">
        <source>%n loads</source>
        <translation><numerusform>%n charge</numerusform><numerusform>%n charges</numerusform></translation>
    </message>
    <message>
        <source>syrup %1</source>
        <translation>sirop %1</translation>
    </message>
    <message>
        <source>sap %1</source>
        <translation>eau %1</translation>
    </message>
</context>
<context>
    <name>Rig</name>
    <message>
        <source>stack, at most</source>
        <translation>cheminée, au plus</translation>
    </message>
    <message>
        <source>from one draw to the next, as shifts before went</source>
        <translation>d’une coulée à la suivante, d’après les quarts passés</translation>
    </message>
    <message>
        <source>a Brix at the draw-off takes, as shifts before went</source>
        <translation>temps par Brix à la sortie, d’après les quarts passés</translation>
    </message>
    <message>
        <source>hottest the stack has run</source>
        <translation>le plus chaud que la cheminée ait été vue</translation>
    </message>
    <message>
        <source>density wanted</source>
        <translation>densité voulue</translation>
    </message>
    <message>
        <source>legal minimum</source>
        <translation>minimum légal</translation>
    </message>
    <message>
        <source>too heavy</source>
        <translation>trop lourd</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>flue pan, area</source>
        <translation>casserole à plis, surface</translation>
    </message>
    <message>
        <source>syrup pan, area</source>
        <translation>casserole à sirop, surface</translation>
    </message>
    <message>
        <source>running depth</source>
        <translation>niveau de marche</translation>
    </message>
    <message>
        <source>feed tank holds</source>
        <translation>le bassin contient</translation>
    </message>
    <message>
        <source>a usual load of wood</source>
        <translation>une charge ordinaire</translation>
    </message>
    <message>
        <source>moisture of the wood, wet basis</source>
        <translation>humidité du bois, base humide</translation>
    </message>
    <message>
        <source>fire every</source>
        <translation>mettre du bois toutes les</translation>
    </message>
    <message>
        <source>fire burns out in</source>
        <translation>le feu s'éteint en</translation>
    </message>
    <message>
        <source>filter press, at most</source>
        <translation>filtre-presse, au plus</translation>
    </message>
    <message>
        <source>barometer reads too high by</source>
        <translation>le baromètre marque trop haut de</translation>
    </message>
    <message>
        <source>pan probe reads too high by</source>
        <translation>la sonde marque trop haut de</translation>
    </message>
    <message>
        <source>that error is known to within</source>
        <translation>marge de cette erreur</translation>
    </message>
    <message>
        <source>learned; %1 until then</source>
        <translation>appris; %1 d'ici là</translation>
    </message>
    <message>
        <source>no alarm</source>
        <translation>pas d'alarme</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>d'ordinaire %1</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>where the syrup is sold</source>
        <translation>où le sirop est vendu</translation>
    </message>
    <message>
        <source>how lot codes are made</source>
        <translation>comment se font les codes de lot</translation>
    </message>
    <message>
        <source>coolest when capped</source>
        <translation>le plus froid au bouchage</translation>
    </message>
    <message>
        <source>records are kept for</source>
        <translation>les registres sont gardés</translation>
    </message>
    <message>
        <source>a tank calls when so much is left</source>
        <translation>un bassin appelle quand il reste</translation>
    </message>
    <message>
        <source>whom it calls</source>
        <translation>qui il appelle</translation>
    </message>
    <message>
        <source>15 min before it runs over</source>
        <translation>15 min avant qu'il déborde</translation>
    </message>
    <message>
        <source>nobody is named</source>
        <translation>personne n'est nommé</translation>
    </message>
    <message>
        <source>sugar left in the pans</source>
        <translation>sucre laissé dans les casseroles</translation>
    </message>
</context>
<context>
    <name>RiseChart</name>
    <message>
        <source>stack %1</source>
        <translation>cheminée %1</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>cheminée</translation>
    </message>
    <message>
        <source>boils off %1</source>
        <translation>évapore %1</translation>
    </message>
    <message>
        <source>boils off –</source>
        <translation>évapore –</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>also: %1</source>
        <translation>aussi : %1</translation>
    </message>
    <message>
        <source>shelved: %1</source>
        <translation>écartées : %1</translation>
    </message>
    <message>
        <source>The shift is over.</source>
        <translation>Le quart est fini.</translation>
    </message>
    <message>
        <source>Burning out: stay until the pans are still.</source>
        <translation>Le feu s'éteint : restez jusqu'à ce que rien ne bouille.</translation>
    </message>
    <message>
        <source>Drawing. Nothing is wrong.</source>
        <translation>La coulée est ouverte. Rien d'anormal.</translation>
    </message>
    <message>
        <source>No probe in the pan: type readings in, watch the pan.</source>
        <translation>Pas de sonde : tapez les lectures, surveillez la casserole.</translation>
    </message>
    <message>
        <source>Readings by hand. Nothing is wrong by the last one.</source>
        <translation>Lectures à la main. Rien d'anormal à la dernière.</translation>
    </message>
    <message>
        <source>Pan probe %1: watch the pan itself.</source>
        <translation>Sonde %1 : surveillez la casserole même.</translation>
    </message>
    <message>
        <source>The target has crept up: niter? Look at the pan.</source>
        <translation>La cible a monté : pierre de sucre? Regardez la casserole.</translation>
    </message>
    <message>
        <source>A calm boil. Nothing is wrong.</source>
        <translation>Tout est calme. Rien d'anormal.</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>d</source>
        <translation>j</translation>
    </message>
</context>
<context>
    <name>panside::Console</name>
    <message>
        <source>Not kept: %1</source>
        <translation>Pas gardé : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Panside</source>
        <translation>Panside</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Je l'ai lu</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>This key does nothing here.</source>
        <translation>Cette touche ne fait rien ici.</translation>
    </message>
    <message>
        <source>Not on the disk yet: %1. Trying again each second.</source>
        <translation>Pas encore sur le disque : %1. Nouvel essai chaque seconde.</translation>
    </message>
    <message>
        <source>Taken back: %1.</source>
        <translation>Repris : %1.</translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation>Il n'y a rien à reprendre.</translation>
    </message>
    <message>
        <source>The clock says %1, before the last entry of the journal (%2). Is it right?</source>
        <translation>L'horloge dit %1, avant la dernière entrée du journal (%2). Est-elle juste?</translation>
    </message>
    <message>
        <source>Rehearsal: a made-up boil. Nothing of it is kept.</source>
        <translation>Simulation : une bouillée inventée. Rien n'en est gardé.</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Not kept: %1</source>
        <translation>Pas gardé : %1</translation>
    </message>
    <message>
        <source>probe file</source>
        <translation>fichier de sondes</translation>
    </message>
    <message>
        <source>Kept in %1.</source>
        <translation>Gardé dans %1.</translation>
    </message>
    <message>
        <source>Export the shift</source>
        <translation>Écrire le registre du quart</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit : %1</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 n'a pu être écrit.</translation>
    </message>
</context>
<context>
    <name>panside::EntrySheet</name>
    <message>
        <source>Keep it without</source>
        <translation>Garder sans</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message numerus="yes">
        <source>%n min earlier</source>
        <translation><numerusform>%n min plus tôt</numerusform><numerusform>%n min plus tôt</numerusform></translation>
    </message>
    <message>
        <source>next</source>
        <translation>suivant</translation>
    </message>
</context>
<context>
    <name>panside::ProbesScreen</name>
    <message>
        <source>Keep this</source>
        <translation>Garder ceci</translation>
    </message>
    <message>
        <source>Leave this port out</source>
        <translation>Ne pas lire ce port</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Ports</source>
        <translation>Ports</translation>
    </message>
    <message>
        <source>%1, %2 (in the file)</source>
        <translation>%1, %2 (au fichier)</translation>
    </message>
    <message>
        <source>No serial port is plugged in. Plug the probe in and look again; readings can be typed in without one.</source>
        <translation>Aucun port série n'est branché. Branchez la sonde et regardez encore; on peut taper les lectures sans elle.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder encore</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 bauds</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>colonnes</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>paires</translation>
    </message>
    <message>
        <source>JSON objects</source>
        <translation>objets JSON</translation>
    </message>
    <message>
        <source>Nothing is asked for yet. Add a register, as the instrument's manual numbers it.</source>
        <translation>Rien n'est encore demandé. Ajoutez un registre, au numéro que donne le manuel de l'appareil.</translation>
    </message>
    <message>
        <source>kind of line: %1, detected</source>
        <translation>sorte de ligne : %1, trouvée</translation>
    </message>
    <message>
        <source>kind of line: detected by itself</source>
        <translation>sorte de ligne : trouvée toute seule</translation>
    </message>
    <message>
        <source>checksum demanded</source>
        <translation>somme de contrôle exigée</translation>
    </message>
    <message>
        <source>checksum if there is one</source>
        <translation>somme de contrôle s'il y en a une</translation>
    </message>
    <message>
        <source>Listening to %1 …</source>
        <translation>À l'écoute de %1 …</translation>
    </message>
    <message>
        <source>Choose the port that the probe is plugged into.</source>
        <translation>Choisissez le port où la sonde est branchée.</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>No shift yet. The first entry of a boil begins one.</source>
        <translation>Pas encore de quart. La première entrée d'une bouillée en ouvre un.</translation>
    </message>
</context>
<context>
    <name>panside::RigScreen</name>
    <message>
        <source>The rig and the day's choices</source>
        <translation>L'installation et les choix du jour</translation>
    </message>
    <message>
        <source>°F, gal, in, lb</source>
        <translation>°F, gal, po, lb</translation>
    </message>
    <message>
        <source>°C, L, mm, kg</source>
        <translation>°C, L, mm, kg</translation>
    </message>
    <message>
        <source>Light: day</source>
        <translation>Lumière : jour</translation>
    </message>
    <message>
        <source>Light: night</source>
        <translation>Lumière : nuit</translation>
    </message>
</context>
<context>
    <name>panside::RiseChart</name>
    <message>
        <source>rise above boiling water, %1</source>
        <translation>hausse au-dessus de l'eau bouillante, %1</translation>
    </message>
    <message>
        <source>water boils at %1</source>
        <translation>l'eau bout à %1</translation>
    </message>
    <message>
        <source>checked %1 ago</source>
        <translation>vérifié il y a %1</translation>
    </message>
    <message>
        <source>nothing was read</source>
        <translation>rien n'a été lu</translation>
    </message>
    <message>
        <source>pan %1</source>
        <translation>casserole %1</translation>
    </message>
    <message>
        <source>rise %1</source>
        <translation>hausse %1</translation>
    </message>
    <message>
        <source>stack %1</source>
        <translation>cheminée %1</translation>
    </message>
</context>
<context>
    <name>Program</name>
    <message>
        <source>This could not be done: %1. The boil goes on.</source>
        <translation>Cela n'a pu être fait : %1. La bouillée continue.</translation>
    </message>
    <message>
        <source>This could not be done. The boil goes on.</source>
        <translation>Cela n'a pu être fait. La bouillée continue.</translation>
    </message>
</context>
<context>
    <name>JournalWords</name>
    <message>
        <source>a fact of the shift %1</source>
        <translation>un fait du quart %1</translation>
    </message>
    <message>
        <source>a withdrawal of the shift %1</source>
        <translation>un retrait du quart %1</translation>
    </message>
    <message>
        <source>an opening or closing of the shift %1</source>
        <translation>une ouverture ou une fermeture du quart %1</translation>
    </message>
    <message>
        <source>the shift %1 in the list of shifts</source>
        <translation>le quart %1 dans la liste des quarts</translation>
    </message>
    <message>
        <source>a setting for shifts to come: %1</source>
        <translation>un réglage pour les quarts à venir : %1</translation>
    </message>
    <message>
        <source>figures worked out of the shift %1; they are counted again when they are shown</source>
        <translation>des chiffres tirés du quart %1; ils sont recomptés dès qu'on les montre</translation>
    </message>
    <message>
        <source>readings of the shift %1</source>
        <translation>des mesures du quart %1</translation>
    </message>
    <message>
        <source>the disk does not give back what was written</source>
        <translation>le disque ne rend pas ce qui a été écrit</translation>
    </message>
    <message>
        <source>the copy cannot be opened</source>
        <translation>la copie ne s'ouvre pas</translation>
    </message>
    <message>
        <source>the file may not be written</source>
        <translation>il est interdit d'écrire dans le fichier</translation>
    </message>
    <message>
        <source>its folder may not be written: %1</source>
        <translation>il est interdit d'écrire dans son dossier : %1</translation>
    </message>
    <message>
        <source>another journal lies in its place</source>
        <translation>un autre journal est à sa place</translation>
    </message>
    <message>
        <source>it was opened to read</source>
        <translation>il a été ouvert en lecture</translation>
    </message>
    <message>
        <source>it is there already; name a new file</source>
        <translation>il est déjà là; nommez un nouveau fichier</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>c'est un dossier</translation>
    </message>
    <message>
        <source>process unknown</source>
        <translation>processus inconnu</translation>
    </message>
    <message>
        <source>process %1</source>
        <translation>processus %1</translation>
    </message>
    <message>
        <source>its form is %1, this program knows forms up to %2</source>
        <translation>sa forme est la %1, ce programme connaît les formes jusqu'à %2</translation>
    </message>
    <message>
        <source>there is no journal here. Check the path.</source>
        <translation>il n'y a pas de journal ici. Vérifiez le chemin.</translation>
    </message>
    <message>
        <source>the folder cannot be made%1. Choose another place for the journal.</source>
        <translation>le dossier ne peut être créé%1. Choisissez un autre endroit pour le journal.</translation>
    </message>
    <message>
        <source>permission is missing%1. Ask the owner of the file, or choose another place.</source>
        <translation>la permission manque%1. Demandez au propriétaire du fichier, ou choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>this is not a journal but some other file; it was left as it is. Check the path.</source>
        <translation>ce n'est pas un journal mais un autre fichier; il est resté tel quel. Vérifiez le chemin.</translation>
    </message>
    <message>
        <source>this database belongs to another program; it was left as it is. Check the path.</source>
        <translation>cette base de données est celle d'un autre programme; elle est restée telle quelle. Vérifiez le chemin.</translation>
    </message>
    <message>
        <source>this journal was written by a later version of Panside%1; it was left as it is. Install that version, or open another journal.</source>
        <translation>ce journal vient d'une version plus récente de Panside%1; il est resté tel quel. Installez cette version, ou ouvrez un autre journal.</translation>
    </message>
    <message>
        <source>another console is writing in this journal%1; here it can only be read. Close the other one to write.</source>
        <translation>une autre console écrit dans ce journal%1; ici on peut seulement le lire. Fermez l'autre pour écrire.</translation>
    </message>
    <message>
        <source>another program holds this journal locked. Close that program; it is tried again by itself.</source>
        <translation>un autre programme tient ce journal verrouillé. Fermez ce programme; l'essai reprend de lui-même.</translation>
    </message>
    <message>
        <source>the disk is full. Make room; what was not yet kept is held in memory and tried again.</source>
        <translation>le disque est plein. Faites de la place; ce qui n'est pas encore gardé reste en mémoire, et l'essai reprend.</translation>
    </message>
    <message>
        <source>this journal can only be read%1. Give the right to write, or choose another place.</source>
        <translation>ce journal ne peut qu'être lu%1. Donnez le droit d'écrire, ou choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>the journal is damaged%1. Salvage what can be read into a new file, or restore a back-up.</source>
        <translation>le journal est abîmé%1. Récupérez ce qui se lit dans un nouveau fichier, ou reprenez une copie.</translation>
    </message>
    <message>
        <source>the journal has vanished. Put the disk or stick back; what was not yet kept is held in memory.</source>
        <translation>le journal a disparu. Remettez le disque ou la clé; ce qui n'est pas encore gardé reste en mémoire.</translation>
    </message>
    <message>
        <source>the disk refuses to write%1. Check the disk; back up to another place.</source>
        <translation>le disque refuse d'écrire%1. Vérifiez le disque; faites une copie ailleurs.</translation>
    </message>
    <message>
        <source>the journal cannot be read%1. Check the disk and the path.</source>
        <translation>le journal ne se lit pas%1. Vérifiez le disque et le chemin.</translation>
    </message>
    <message>
        <source>there is no shift %1 in this journal. Look at the list of its shifts.</source>
        <translation>il n'y a pas de quart %1 dans ce journal. Voyez la liste de ses quarts.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>missing rows, %1 of the shift %2</source>
        <translation>des lignes manquantes, %1 du quart %2</translation>
    </message>
    <message>
        <source>missing rows, %1 of the list of shifts or of settings for shifts to come</source>
        <translation>des lignes manquantes, %1 de la liste des quarts ou des réglages pour les quarts à venir</translation>
    </message>
    <message>
        <source>rows that were not kept here, %1 of the shift %2</source>
        <translation>des lignes qui n'ont pas été gardées ici, %1 du quart %2</translation>
    </message>
    <message>
        <source>rows that were not kept here, %1 of the list of shifts or of settings for shifts to come</source>
        <translation>des lignes qui n'ont pas été gardées ici, %1 de la liste des quarts ou des réglages pour les quarts à venir</translation>
    </message>
    <message>
        <source>rows that are not as they were kept of the shift %1</source>
        <translation>des lignes du quart %1 qui ne sont pas comme elles ont été gardées</translation>
    </message>
    <message>
        <source>rows that are not as they were kept of the list of shifts or of settings for shifts to come</source>
        <translation>des lignes de la liste des quarts ou des réglages pour les quarts à venir qui ne sont pas comme elles ont été gardées</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>The journal is being restored.</source>
        <translation>Le journal est en train d'être remis.</translation>
    </message>
    <message>
        <source>Its time is in the future. Write the time it happened, or leave the time empty for now.</source>
        <translation>Son heure est dans le futur. Écrivez l'heure où c'est arrivé, ou laissez l'heure vide pour maintenant.</translation>
    </message>
    <message>
        <source>Its time is more than a day before this shift began. Import it as a log of its own.</source>
        <translation>Son heure est plus d'un jour avant le début de ce quart. Importez-le comme un registre à part.</translation>
    </message>
    <message>
        <source>Its time is within the shift that has ended. Take back its end first.</source>
        <translation>Son heure est dans le quart qui est fini. Reprenez d'abord sa fin.</translation>
    </message>
</context>
<context>
    <name>panside::AcrossView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>panside::Page</name>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
</context>
<context>
    <name>panside::FormSheet</name>
    <message>
        <source>It happened</source>
        <translation>C'était</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
</TS>
