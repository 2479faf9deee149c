<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>LedgerPaper</name>
    <message>
        <source>held</source>
        <translation>retenu</translation>
    </message>
    <message>
        <source>milk: belongs on the label</source>
        <translation>lait : à mettre sur l'étiquette</translation>
    </message>
    <message>
        <source>lead over the limit</source>
        <translation>plomb au-dessus de la limite</translation>
    </message>
    <message>
        <source>ropy sap</source>
        <translation>eau filante</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>conditionné</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>size</source>
        <translation>format</translation>
    </message>
    <message>
        <source>made</source>
        <translation>faits</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>cassés</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendus</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>retournés</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation>détruits</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>°Brix</source>
        <translation>°Brix</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>coolest when capped</source>
        <translation>le plus froid au bouchage</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>found</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>Buyers</source>
        <translation>Acheteurs</translation>
    </message>
    <message>
        <source>buyer</source>
        <translation>acheteur</translation>
    </message>
    <message>
        <source>first</source>
        <translation>première fois</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de quoi</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>result</source>
        <translation>résultat</translation>
    </message>
    <message>
        <source>The place and its limits</source>
        <translation>Le lieu et ses limites</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>No place was set: the federal rule of the US stands here.</source>
        <translation>Aucun lieu n'a été choisi : la règle fédérale des États-Unis figure ici.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>least °Brix</source>
        <translation>°Brix minimal</translation>
    </message>
    <message>
        <source>most °Brix</source>
        <translation>°Brix maximal</translation>
    </message>
    <message>
        <source>lot code</source>
        <translation>code de lot</translation>
    </message>
    <message>
        <source>lead, ppb</source>
        <translation>plomb, ppb</translation>
    </message>
    <message>
        <source>Filter runs</source>
        <translation>Filtrations</translation>
    </message>
    <message>
        <source>to</source>
        <translation>vers</translation>
    </message>
    <message>
        <source>through</source>
        <translation>passé</translation>
    </message>
    <message>
        <source>aid</source>
        <translation>adjuvant</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Récipients</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>récipient</translation>
    </message>
    <message>
        <source>material</source>
        <translation>matériau</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomb</translation>
    </message>
    <message>
        <source>holds now</source>
        <translation>contient</translation>
    </message>
    <message>
        <source>sugar, kg</source>
        <translation>sucre, kg</translation>
    </message>
    <message>
        <source>nothing written, not measured since</source>
        <translation>rien d'écrit, pas mesuré depuis</translation>
    </message>
    <message>
        <source>the pans</source>
        <translation>les casseroles</translation>
    </message>
    <message>
        <source>Against foam</source>
        <translation>Contre la mousse</translation>
    </message>
    <message>
        <source>Sugar of the season, kg</source>
        <translation>Sucre de la saison, kg</translation>
    </message>
    <message>
        <source>gathered</source>
        <translation>récolté</translation>
    </message>
    <message>
        <source>bought</source>
        <translation>acheté</translation>
    </message>
    <message>
        <source>sold in bulk</source>
        <translation>vendu en vrac</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>perdu : %1</translation>
    </message>
    <message>
        <source>in the vessels</source>
        <translation>dans les récipients</translation>
    </message>
    <message>
        <source>drawn or bought with no vessel named</source>
        <translation>coulé ou acheté sans récipient nommé</translation>
    </message>
    <message>
        <source>in the pans</source>
        <translation>dans les casseroles</translation>
    </message>
    <message>
        <source>does not close</source>
        <translation>écart inexpliqué</translation>
    </message>
    <message>
        <source>This is advice: the inspector decides. No scale here is legal for trade.</source>
        <translation>C'est un conseil : l'inspecteur décide. Aucune balance d'ici n'est légale pour la vente.</translation>
    </message>
    <message>
        <source>A gap in the book stays a gap: what nobody wrote is shown as missing.</source>
        <translation>Une lacune du cahier reste une lacune : ce que personne n'a noté est montré comme tel.</translation>
    </message>
    <message>
        <source>The inspector's book</source>
        <translation>Le cahier de l'inspecteur</translation>
    </message>
    <message>
        <source>Lots held, come back or destroyed</source>
        <translation>Lots retenus, retournés ou détruits</translation>
    </message>
    <message>
        <source>Graded</source>
        <translation>Classé</translation>
    </message>
    <message>
        <source>Cleaned</source>
        <translation>Nettoyé</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Analysé</translation>
    </message>
    <message>
        <source>Recall of lot %1</source>
        <translation>Rappel du lot %1</translation>
    </message>
    <message>
        <source>What it came from</source>
        <translation>D'où il vient</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>share of its sugar</source>
        <translation>part de son sucre</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnue</translation>
    </message>
</context>
</TS>
