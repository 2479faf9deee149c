<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>DrawCard</name>
    <message>
        <source>a check now would halve the ±</source>
        <translation>une vérification réduirait le ± de moitié</translation>
    </message>
    <message>
        <source>a check now would make it ± %1</source>
        <translation>une vérification donnerait ± %1</translation>
    </message>
</context>
<context>
    <name>DrawScores</name>
    <message>
        <source>one draw predicted</source>
        <translation>une coulée prévue</translation>
    </message>
    <message numerus="yes">
        <source>%n draws predicted</source>
        <translation><numerusform>%n coulée prévue</numerusform><numerusform>%n coulées prévues</numerusform></translation>
    </message>
    <message>
        <source>inside the range %1 % of the wait (80 is the aim)</source>
        <translation>dans la fourchette %1 % de l'attente (80 est visé)</translation>
    </message>
    <message>
        <source>off by %1 min ten minutes before, %2 five, %3 two</source>
        <translation>écart de %1 min dix minutes avant, %2 cinq, %3 deux</translation>
    </message>
    <message>
        <source>%1: %2 min, inside %3 %</source>
        <translation>%1 : %2 min, dedans %3 %</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>No draw was predicted in it.</source>
        <translation>Aucune coulée n'y a été prévue.</translation>
    </message>
</context>
</TS>
