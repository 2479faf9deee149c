<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Screens</name>
    <message>
        <source>Look in</source>
        <translation>Coup d'œil</translation>
    </message>
</context>
<context>
    <name>LookIn</name>
    <message>
        <source>Sap tank: not read</source>
        <translation>Bassin d'eau : pas de lecture</translation>
    </message>
    <message>
        <source>Sap tank: %1, for %2</source>
        <translation>Bassin d'eau : %1, pour %2</translation>
    </message>
    <message>
        <source>Sap tank: %1</source>
        <translation>Bassin d'eau : %1</translation>
    </message>
    <message>
        <source>Touch here once: then this phone can call you</source>
        <translation>Touchez ici une fois : ce téléphone pourra alors vous appeler</translation>
    </message>
    <message>
        <source>This phone calls while this page is open</source>
        <translation>Ce téléphone appelle tant que cette page est ouverte</translation>
    </message>
    <message>
        <source>Mute this phone</source>
        <translation>Faire taire ce téléphone</translation>
    </message>
    <message>
        <source>No word from the console. Go and look at the pan.</source>
        <translation>Rien de la console. Allez voir la casserole.</translation>
    </message>
    <message>
        <source>last heard %1 ago</source>
        <translation>dernière nouvelle il y a %1</translation>
    </message>
    <message>
        <source>This phone may switch its screen off: set it to stay on.</source>
        <translation>Ce téléphone peut éteindre son écran : réglez-le pour qu'il reste allumé.</translation>
    </message>
    <message>
        <source>A look in, not a guard: a phone that is locked or in a pocket cannot call. Somebody stays with a lit fire.</source>
        <translation>Un coup d'œil, pas un gardien : un téléphone verrouillé ou en poche ne peut pas appeler. Quelqu'un reste près d'un feu allumé.</translation>
    </message>
    <message>
        <source>light or dark</source>
        <translation>clair ou sombre</translation>
    </message>
    <message>
        <source>Rise above boiling water, %1</source>
        <translation>Hausse au-dessus de l'eau bouillante, %1</translation>
    </message>
    <message>
        <source>rehearsal</source>
        <translation>simulation</translation>
    </message>
    <message>
        <source>It is not running: %1 is not an address of this machine now. Join the house's network, or press Other address.</source>
        <translation>Le coup d'œil ne marche pas : %1 n'est pas une adresse de cette machine en ce moment. Joignez le réseau de la maison, ou appuyez sur Autre adresse.</translation>
    </message>
    <message>
        <source>It is not running: another program uses port %1 of this machine. Is Panside open twice?</source>
        <translation>Le coup d'œil ne marche pas : un autre programme utilise le port %1 de cette machine. Panside est-il ouvert deux fois?</translation>
    </message>
    <message>
        <source>It is off: this machine shows nothing to anybody.</source>
        <translation>C'est éteint : cette machine ne montre rien à personne.</translation>
    </message>
    <message>
        <source>Point the phone's camera at the code, on the house's own network. Phones looking in now: %1.</source>
        <translation>Visez le code avec l'appareil photo du téléphone, sur le réseau de la maison. Téléphones qui regardent : %1.</translation>
    </message>
    <message>
        <source>A look in from the woodpile</source>
        <translation>Un coup d'œil depuis le tas de bois</translation>
    </message>
    <message>
        <source>A phone shows what the board shows, and calls with the same alarms while the page is open. Nothing can be changed from there. It is a look in, not a guard: a phone that is locked or out of reach of the network cannot call. Somebody stays with a lit fire.</source>
        <translation>Un téléphone montre ce que montre le tableau et appelle avec les mêmes alarmes tant que la page est ouverte. Rien ne peut être changé de là. C'est un coup d'œil, pas un gardien : un téléphone verrouillé ou hors de portée du réseau ne peut pas appeler. Quelqu'un reste près d'un feu allumé.</translation>
    </message>
    <message>
        <source>Anyone with the address and its key can look in; a new key shuts the old ones out. It is plain HTTP: anyone who can listen on the house's network can read it. Nothing leaves the house.</source>
        <translation>Qui a l'adresse avec sa clé peut regarder; une nouvelle clé ferme la porte aux anciennes. C'est du HTTP simple : qui peut écouter sur le réseau de la maison peut le lire. Rien ne sort de la maison.</translation>
    </message>
    <message>
        <source>Switch it off</source>
        <translation>Éteindre</translation>
    </message>
    <message>
        <source>Switch it on</source>
        <translation>Allumer</translation>
    </message>
    <message>
        <source>New key</source>
        <translation>Nouvelle clé</translation>
    </message>
    <message>
        <source>Other address</source>
        <translation>Autre adresse</translation>
    </message>
</context>
</TS>
