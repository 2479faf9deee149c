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
        <translation>corrigé à %1 : %2, %3</translation>
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
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
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
        <source>Esc</source>
        <translation>Échap</translation>
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
        <translation>chiffre</translation>
    </message>
    <message>
        <source>more</source>
        <translation>précision</translation>
    </message>
    <message>
        <source>This can only be taken back: no row of paper tells it.</source>
        <translation>Ceci ne peut qu'être retiré : aucune ligne sur papier ne le dit.</translation>
    </message>
    <message>
        <source>It was put right already: correct what stands instead of it.</source>
        <translation>C'est déjà corrigé : corrigez ce qui le remplace.</translation>
    </message>
    <message>
        <source>will be written: %1</source>
        <translation>sera écrit : %1</translation>
    </message>
    <message>
        <source>not yet: %1</source>
        <translation>pas encore : %1</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n'a été changé.</translation>
    </message>
    <message>
        <source>Once more, and it counts no longer: %1, %2.</source>
        <translation>Encore une fois, et cela ne compte plus : %1, %2.</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>Correct an entry</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Nobody entered anything in this shift.</source>
        <translation>Personne n'a rien inscrit dans cette veille.</translation>
    </message>
    <message>
        <source>Open a shift first.</source>
        <translation>Ouvrez d'abord une veille.</translation>
    </message>
</context>
<context>
    <name>panside::Console</name>
    <message>
        <source>Not on the disk yet. It is tried again each second.</source>
        <translation>Pas encore sur le disque. Un nouvel essai se fait chaque seconde.</translation>
    </message>
    <message>
        <source>Corrected. What stood there before stays to be read.</source>
        <translation>Corrigé. Ce qui y était reste lisible.</translation>
    </message>
    <message>
        <source>Taken back. What stood there stays to be read.</source>
        <translation>Retiré. Ce qui y était reste lisible.</translation>
    </message>
</context>
</TS>
