<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>panside::FilePick</name>
    <message>
        <source>Folders and files</source>
        <translation>Dossiers et fichiers</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Plus haut</translation>
    </message>
    <message>
        <source>My folder</source>
        <translation>Mon dossier</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
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
        <source>Write it here</source>
        <translation>L'écrire ici</translation>
    </message>
    <message>
        <source>Take this folder</source>
        <translation>Prendre ce dossier</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Le prendre</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Write over it</source>
        <translation>Écrire par-dessus</translation>
    </message>
    <message>
        <source>%1 cannot be looked into.</source>
        <translation>On ne peut pas ouvrir %1.</translation>
    </message>
    <message>
        <source>Nothing of the kind is in this folder.</source>
        <translation>Rien de tel dans ce dossier.</translation>
    </message>
    <message>
        <source>Type a name, or leave with Escape.</source>
        <translation>Saisissez un nom, ou quittez avec Échap.</translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 est déjà là.</translation>
    </message>
    <message>
        <source>Choose a file first.</source>
        <translation>Choisissez d'abord un fichier.</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retour arr.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Entrée</translation>
    </message>
</context>
</TS>
