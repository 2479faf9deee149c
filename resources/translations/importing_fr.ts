<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Import</name>
    <message>
        <source>not a shift log: its first line is not the heading of one. If it is another logger's table, say with M what its columns are.</source>
        <translation>pas un registre de quart : sa première ligne n'en est pas l'en-tête. Si c'est le tableau d'un autre enregistreur, dites avec M ce que sont ses colonnes.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>being read …</source>
        <translation>en lecture…</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>pas commencé</translation>
    </message>
    <message>
        <source>Cells without a reading, left out: %1.</source>
        <translation>Cases sans lecture, laissées de côté : %1.</translation>
    </message>
    <message>
        <source>Taken, and worth a look:</source>
        <translation>Pris, et à regarder :</translation>
    </message>
    <message>
        <source>Shifts added: %1. Facts in them: %2. There already: %3. Refused: %4.</source>
        <translation>Quarts ajoutés : %1. Faits dedans : %2. Déjà là : %3. Refusés : %4.</translation>
    </message>
    <message>
        <source>Stopped: what was added before stays; nothing of the one being read is in the journal.</source>
        <translation>Arrêté : ce qui était déjà ajouté reste, rien de celui en lecture n'est dans le journal.</translation>
    </message>
    <message>
        <source>added as shift %1; facts: %2</source>
        <translation>ajouté comme quart %1; faits : %2</translation>
    </message>
    <message>
        <source>there already as shift %1; nothing was added</source>
        <translation>déjà là comme quart %1; rien n'a été ajouté</translation>
    </message>
    <message>
        <source>refused, nothing of it was taken. Faults: %1</source>
        <translation>refusé, rien n'en a été pris. Fautes : %1</translation>
    </message>
    <message>
        <source>refused: a shift that begins at the same time, %1, has other entries (%2 there, %3 in the log). Only you can tell which is right: read it into another journal to compare.</source>
        <translation>refusé : un quart qui commence au même moment, %1, tient d'autres faits (%2 là, %3 ici). Vous seul savez lequel est juste : lisez-le dans un autre journal pour comparer.</translation>
    </message>
    <message>
        <source>refused: two shifts in one log. One ends %1, and %2 a fire is lit again. Split the log between the two.</source>
        <translation>refusé : deux quarts en un seul registre. L'un finit %1, et %2 un feu est rallumé. Séparez-le entre les deux.</translation>
    </message>
    <message>
        <source>stopped; nothing of it was taken</source>
        <translation>arrêté; rien n'en a été pris</translation>
    </message>
    <message>
        <source>refused: it cannot be read to its end. See whether the stick is still in; nothing of it was taken</source>
        <translation>refusé : il ne se lit pas jusqu'au bout. Voyez si la clé est encore en place; rien n'en a été pris</translation>
    </message>
    <message>
        <source>Logs read in</source>
        <translation>Registres lus</translation>
    </message>
    <message>
        <source>This console only watches: another one writes in the journal. Read the logs in there.</source>
        <translation>Cette console ne fait que regarder : une autre écrit dans le journal. Lisez-y les registres.</translation>
    </message>
    <message>
        <source>Choose one log or more. Each becomes a whole shift, or is refused as a whole; one that is already there adds nothing. Another logger's table is read too, once you have said what its columns are.</source>
        <translation>Choisissez un ou plusieurs registres. Chacun devient un quart entier, ou est refusé en entier; celui qui est déjà là n'ajoute rien. Le tableau d'un autre enregistreur se lit aussi, une fois dit ce que sont ses colonnes.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Choose the logs</source>
        <translation>Choisir les registres</translation>
    </message>
    <message>
        <source>Say what its columns are</source>
        <translation>Dire ses colonnes</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>rien à garder</translation>
    </message>
    <message>
        <source>the time</source>
        <translation>l'heure</translation>
    </message>
    <message>
        <source>the date alone</source>
        <translation>la date seule</translation>
    </message>
    <message>
        <source>seconds since 1970 (%1)</source>
        <translation>secondes depuis 1970 (%1)</translation>
    </message>
    <message>
        <source>milliseconds since 1970 (%1)</source>
        <translation>millisecondes depuis 1970 (%1)</translation>
    </message>
    <message>
        <source>Say which column is the time.</source>
        <translation>Dites quelle colonne est l'heure.</translation>
    </message>
    <message>
        <source>Say of one column at least what it reads, and in which unit.</source>
        <translation>Dites d'une colonne au moins ce qu'elle mesure, et dans quelle unité.</translation>
    </message>
    <message>
        <source>Two columns are said to read the same: %1. Keep one of them.</source>
        <translation>Deux colonnes mesureraient la même chose : %1. Gardez-en une.</translation>
    </message>
    <message>
        <source>“%1” is not a time zone. Write one like America/New_York.</source>
        <translation>« %1 » n'est pas un fuseau horaire. Écrivez-en un comme America/Toronto.</translation>
    </message>
    <message>
        <source>There is no reading in the first rows.</source>
        <translation>Aucune lecture dans les premières lignes.</translation>
    </message>
</context>
<context>
    <name>panside::MapScreen</name>
    <message>
        <source>Keep this and read it in</source>
        <translation>Garder et lire</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser</translation>
    </message>
    <message>
        <source>its times look like</source>
        <translation>ses heures s'écrivent comme</translation>
    </message>
    <message>
        <source>time zone of its clock</source>
        <translation>fuseau de son horloge</translation>
    </message>
    <message>
        <source>name of the probe</source>
        <translation>nom de la sonde</translation>
    </message>
    <message>
        <source>column</source>
        <translation>colonne</translation>
    </message>
    <message>
        <source>first values</source>
        <translation>premières valeurs</translation>
    </message>
    <message>
        <source>is</source>
        <translation>est</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>commas between</source>
        <translation>virgules entre</translation>
    </message>
    <message>
        <source>semicolons between</source>
        <translation>points-virgules entre</translation>
    </message>
    <message>
        <source>tabs between</source>
        <translation>tabulations entre</translation>
    </message>
    <message>
        <source>bars between</source>
        <translation>barres entre</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>point décimal</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>virgule décimale</translation>
    </message>
    <message>
        <source>%1: what its columns are</source>
        <translation>%1 : ce que sont ses colonnes</translation>
    </message>
    <message>
        <source>The first row becomes: %1</source>
        <translation>La première ligne devient : %1</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>pas encore : %1</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Read logs in</source>
        <translation>Lire des registres</translation>
    </message>
    <message>
        <source>cannot be read. See whether the stick is still in, and who may read the file.</source>
        <translation>ne se lit pas. Voyez si la clé est encore en place, et qui peut lire le fichier.</translation>
    </message>
</context>
</TS>
