<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>RiseChart</name>
    <message>
        <source>load</source>
        <translation>charge</translation>
    </message>
    <message>
        <source>lit</source>
        <translation>allumé</translation>
    </message>
    <message>
        <source>check</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>sap in</source>
        <translation>eau d'érable</translation>
    </message>
    <message>
        <source>pan swapped</source>
        <translation>casserole changée</translation>
    </message>
    <message>
        <source>defoamer</source>
        <translation>anti-mousse</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>équipe</translation>
    </message>
    <message>
        <source>stopped firing</source>
        <translation>chauffe arrêtée</translation>
    </message>
</context>
<context>
    <name>panside::RiseChart</name>
    <message>
        <source>now is %1 on</source>
        <translation>maintenant : %1 plus loin</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>no forecast</source>
        <translation>rien n'est prévu</translation>
    </message>
    <message>
        <source>the draw closes in %1 or later</source>
        <translation>la coulée se ferme dans %1 ou plus</translation>
    </message>
    <message>
        <source>the draw comes in %1 or later</source>
        <translation>la coulée vient dans %1 ou plus</translation>
    </message>
    <message>
        <source>the draw closes in %1 to %2</source>
        <translation>la coulée se ferme dans %1 à %2</translation>
    </message>
    <message>
        <source>the draw comes in %1 to %2</source>
        <translation>la coulée vient dans %1 à %2</translation>
    </message>
    <message>
        <source>The curve of the boil</source>
        <translation>La courbe de la bouillée</translation>
    </message>
    <message>
        <source>Nobody read the syrup pan in this shift: there is no curve.</source>
        <translation>Personne n'a lu la casserole à sirop pendant ce quart : il n'y a pas de courbe.</translation>
    </message>
</context>
</TS>
