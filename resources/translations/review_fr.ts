<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Review</name>
    <message>
        <source>entered at %1</source>
        <translation>inscrit à %1</translation>
    </message>
    <message>
        <source>corrected at %1: %2, %3</source>
        <translation>corrigé à %1 : %2, %3</translation>
    </message>
    <message>
        <source>taken back at %1</source>
        <translation>retiré à %1</translation>
    </message>
</context>
<context>
    <name>panside::EntriesPane</name>
    <message>
        <source>Correct it</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Keep the correction</source>
        <translation>Garder la correction</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>time</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>inscription</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>later</source>
        <translation>plus tard</translation>
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
        <translation>précision</translation>
    </message>
    <message>
        <source>This can only be taken back: there is no paper row for it.</source>
        <translation>Ceci ne peut qu'être retiré : aucune ligne sur papier ne le dit.</translation>
    </message>
    <message>
        <source>It was already corrected: correct the entry that replaced it.</source>
        <translation>C'est déjà corrigé : corrigez ce qui le remplace.</translation>
    </message>
    <message>
        <source>will be written: %1</source>
        <translation>sera écrit : %1</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>pas encore : %1</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n'a été changé.</translation>
    </message>
    <message>
        <source>Once more, and it no longer counts: %1, %2.</source>
        <translation>Encore une fois, et cela ne compte plus : %1, %2.</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>Nobody entered anything in this shift.</source>
        <translation>Personne n'a rien inscrit dans ce quart.</translation>
    </message>
    <message>
        <source>Open a shift first.</source>
        <translation>Ouvrez d'abord un quart.</translation>
    </message>
    <message>
        <source>%1 is overlaid. %2.</source>
        <translation>%1 est superposé. %2.</translation>
    </message>
    <message>
        <source>%1 has no such moment. Choose another with L.</source>
        <translation>%1 n'a pas ce moment. Choisissez-en un autre avec L.</translation>
    </message>
    <message>
        <source>From fire lit</source>
        <translation>Dès le feu allumé</translation>
    </message>
    <message>
        <source>From first boil</source>
        <translation>Dès la première ébullition</translation>
    </message>
    <message>
        <source>From the last draw</source>
        <translation>Dès la dernière coulée</translation>
    </message>
    <message>
        <source>Not drawn, as it has no such moment: %1.</source>
        <translation>Pas dessiné, faute d'un tel moment : %1.</translation>
    </message>
</context>
<context>
    <name>panside::ShiftsPane</name>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Overlay</source>
        <translation>Superposer</translation>
    </message>
    <message>
        <source>Write its log</source>
        <translation>Écrire son registre</translation>
    </message>
    <message>
        <source>Past forecasts</source>
        <translation>Prévisions passées</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Not on the disk yet. Trying again each second.</source>
        <translation>Pas encore sur le disque. Un nouvel essai se fait chaque seconde.</translation>
    </message>
    <message>
        <source>Corrected. The old entry can still be read.</source>
        <translation>Corrigé. L'ancienne entrée reste lisible.</translation>
    </message>
    <message>
        <source>Taken back. The old entry can still be read.</source>
        <translation>Retiré. L'ancienne entrée reste lisible.</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>The fire was lit at %1, and the last entry is of %2.</source>
        <translation>Le feu a été allumé à %1, et la dernière inscription est de %2.</translation>
    </message>
    <message>
        <source>Nobody said when the fire was lit; the shift runs from %1 to %2.</source>
        <translation>Personne n'a dit quand le feu a été allumé; le quart va de %1 à %2.</translation>
    </message>
    <message>
        <source>At the pans: %1.</source>
        <translation>Aux casseroles : %1.</translation>
    </message>
    <message>
        <source>%1 of sap at %2 came in</source>
        <translation>%1 d'eau d'érable à %2 sont entrés</translation>
    </message>
    <message>
        <source>%1 of sap came in, its sugar unknown</source>
        <translation>%1 d'eau d'érable sont entrés, leur sucre inconnu</translation>
    </message>
    <message>
        <source>the pans boiled off %1</source>
        <translation>les casseroles ont évaporé %1</translation>
    </message>
    <message>
        <source>Nothing was drawn off.</source>
        <translation>Rien n'a été coulé.</translation>
    </message>
    <message>
        <source>One draw</source>
        <translation>Une coulée</translation>
    </message>
    <message>
        <source>%1 draws</source>
        <translation>%1 coulées</translation>
    </message>
    <message>
        <source>, none of them measured</source>
        <translation>, sans mesure</translation>
    </message>
    <message>
        <source> gave at least %1 of syrup: not all were measured</source>
        <translation>, au moins %1 de sirop : toutes n'ont pas été mesurées</translation>
    </message>
    <message>
        <source> gave %1 of syrup</source>
        <translation>, %1 de sirop</translation>
    </message>
    <message>
        <source>; in the band, by the probe: %1 of %2</source>
        <translation>; dans la bande, selon la sonde : %1 sur %2</translation>
    </message>
    <message>
        <source>One load of wood</source>
        <translation>Une charge de bois</translation>
    </message>
    <message>
        <source>%1 loads of wood</source>
        <translation>%1 charges de bois</translation>
    </message>
    <message>
        <source>, at least %1</source>
        <translation>, au moins %1</translation>
    </message>
    <message>
        <source>, one every %1</source>
        <translation>, une toutes les %1</translation>
    </message>
    <message>
        <source>; %1 of their heat went into the sap</source>
        <translation>; %1 de leur chaleur est passée dans l'eau d'érable</translation>
    </message>
    <message>
        <source>Ten minutes before a draw the forecast was usually off by %1 min.</source>
        <translation>Dix minutes avant une coulée, la prévision se trompait d'ordinaire de %1 min.</translation>
    </message>
    <message>
        <source>There was no alarm.</source>
        <translation>Aucune alarme.</translation>
    </message>
    <message>
        <source>Alarms: %1.</source>
        <translation>Alarmes : %1.</translation>
    </message>
</context>
</TS>
