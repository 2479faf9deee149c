<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Screens</name>
    <message>
        <source>Manual</source>
        <translation>Manuel</translation>
    </message>
</context>
<context>
    <name>panside::ManualScreen</name>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>The manual was not found beside the program: %1. Install it, or read it on another machine; every key is on the page of all keys.</source>
        <translation>Le manuel n'est pas à côté du programme : %1. Installez-le, ou lisez-le sur une autre machine; chaque touche est sur la page de toutes les touches.</translation>
    </message>
    <message>
        <source>No page has all these words.</source>
        <translation>Aucune page n'a tous ces mots.</translation>
    </message>
</context>
</TS>
