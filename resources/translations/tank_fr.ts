<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>Tank and woodpile</source>
        <translation>Bassin et bois</translation>
    </message>
</context>
<context>
    <name>Tank</name>
    <message>
        <source>round, standing</source>
        <translation>rond, debout</translation>
    </message>
    <message>
        <source>round, lying</source>
        <translation>rond, couché</translation>
    </message>
    <message>
        <source>box</source>
        <translation>rectangulaire</translation>
    </message>
    <message>
        <source>by a table of marks</source>
        <translation>par une table de repères</translation>
    </message>
    <message>
        <source>across</source>
        <translation>diamètre</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>stick</source>
        <translation>bûche</translation>
    </message>
    <message>
        <source>The table needs two marks or more, depth and volume, both rising: 10 100; 20 260</source>
        <translation>La table veut au moins deux repères, profondeur et volume, tous deux croissants : 10 100; 20 260</translation>
    </message>
    <message>
        <source>Type every measure of the tank as a number above 0, at most 20 m (65 ft).</source>
        <translation>Tapez chaque mesure du bassin comme un nombre au-dessus de 0, au plus 20 m (65 pi).</translation>
    </message>
    <message>
        <source>Type length, height and stick of the pile, each a number above 0.</source>
        <translation>Tapez longueur, hauteur et bûche de la pile, chacune un nombre au-dessus de 0.</translation>
    </message>
    <message>
        <source>That pile is not possible: sticks are 4 to 79 in (100 to 2000 mm) long, and it holds at most 500 cords.</source>
        <translation>Cette pile est impossible : les bûches ont de 100 à 2000 mm (4 à 79 po), et elle contient au plus 500 cordes.</translation>
    </message>
    <message>
        <source>Type the price of a full cord as a number, or leave it empty.</source>
        <translation>Tapez le prix d'une corde pleine comme un nombre, ou laissez vide.</translation>
    </message>
    <message>
        <source>Enter the tank's shape first.</source>
        <translation>Entrez d'abord la forme du bassin.</translation>
    </message>
    <message>
        <source>The depth must be a number, 0 or more.</source>
        <translation>La profondeur doit être un nombre, 0 ou plus.</translation>
    </message>
    <message>
        <source>The tank is only %1 deep: dip again, or put its shape right.</source>
        <translation>Le bassin n'a que %1 de profondeur : jaugez de nouveau, ou corrigez sa forme.</translation>
    </message>
    <message>
        <source>%1 in the tank, of %2</source>
        <translation>%1 au bassin, sur %2</translation>
    </message>
    <message>
        <source>%1 more than read before, and no sap was entered since: enter the sap, dip again, or keep it as it is.</source>
        <translation>%1 de plus qu'à la dernière lecture, et aucune arrivée n'est notée depuis : notez-la, jaugez de nouveau, ou gardez tel quel.</translation>
    </message>
</context>
<context>
    <name>panside::TankScreen</name>
    <message>
        <source>Tank and woodpile</source>
        <translation>Bassin et bois</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Jauge</translation>
    </message>
    <message>
        <source>depth of sap in the tank</source>
        <translation>profondeur d'eau au bassin</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Bassin</translation>
    </message>
    <message>
        <source>depth and volume of each mark (%1)</source>
        <translation>profondeur et volume de chaque repère (%1)</translation>
    </message>
    <message>
        <source>%1 deep, holds %2</source>
        <translation>%1 de profondeur, contient %2</translation>
    </message>
    <message>
        <source>Woodpile</source>
        <translation>Bois empilé</translation>
    </message>
    <message>
        <source>price of a full cord</source>
        <translation>prix d'une corde pleine</translation>
    </message>
    <message>
        <source>%1 full cords when it was measured</source>
        <translation>%1 cordes pleines à la mesure</translation>
    </message>
    <message>
        <source>Real tanks bulge and lean: the volume is good to about 3 %. Keep off the rim of a tank and off a wet ladder.</source>
        <translation>Un vrai bassin se bombe et penche : le volume est juste à 3 % près. Ne montez pas sur le bord d'un bassin ni sur une échelle mouillée.</translation>
    </message>
</context>
<context>
    <name>SapWords</name>
    <message>
        <source>The feed tank is full: look that it does not run over.</source>
        <translation>Le bassin est plein : veillez à ce qu'il ne déborde pas.</translation>
    </message>
    <message>
        <source>The feed tank is full in %1: look that it does not run over.</source>
        <translation>Le bassin est plein dans %1 : veillez à ce qu'il ne déborde pas.</translation>
    </message>
    <message>
        <source>The oldest sap in it came in %1 ago or earlier.</source>
        <translation>L'eau la plus vieille y est depuis %1 ou plus.</translation>
    </message>
    <message>
        <source>The oldest sap in it came in %1 ago.</source>
        <translation>L'eau la plus vieille y est depuis %1.</translation>
    </message>
    <message>
        <source>Some came in at %1: above %2 sap spoils fast.</source>
        <translation>Une part est arrivée à %1 : au-dessus de %2, l'eau d'érable s'altère vite.</translation>
    </message>
    <message>
        <source>Smell it and boil it first; the syrup may come darker.</source>
        <translation>Sentez-la et bouillez-la d'abord; le sirop peut être plus foncé.</translation>
    </message>
</context>
</TS>
