<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Fuel</name>
    <message>
        <source>tank less draws</source>
        <translation>bassin moins les coulées</translation>
    </message>
    <message>
        <source>tank alone</source>
        <translation>bassin seul</translation>
    </message>
    <message>
        <source>draws and sugar</source>
        <translation>coulées et sucre</translation>
    </message>
    <message>
        <source>heat of the wood</source>
        <translation>chaleur du bois</translation>
    </message>
    <message>
        <source>The tank falls faster than the wood can boil: look for a leak, a wrong tank shape, or loads heavier than entered.</source>
        <translation>Le bassin baisse plus vite que le bois ne peut bouillir : cherchez une fuite, une forme de bassin erronée, ou des charges plus lourdes que notées.</translation>
    </message>
    <message>
        <source>The tank falls slower than the wood should boil: sap came in that was not entered, the tank shape is wrong, or the wood is wetter or lighter than entered.</source>
        <translation>Le bassin baisse moins vite que le bois ne devrait bouillir : eau d'érable arrivée sans être notée, forme de bassin erronée, ou bois plus humide ou plus léger que noté.</translation>
    </message>
    <message>
        <source>More syrup than the sap's sugar allows: measure the sap's sugar and the draws again.</source>
        <translation>Plus de sirop que le sucre de l'eau ne le permet : mesurez de nouveau le sucre de l'eau et les coulées.</translation>
    </message>
    <message>
        <source>Less syrup than the sap's sugar promises: measure the sap's sugar again, or a draw was not entered.</source>
        <translation>Moins de sirop que le sucre de l'eau ne promet : mesurez de nouveau le sucre de l'eau, ou une coulée n'a pas été notée.</translation>
    </message>
    <message>
        <source>The tank rises and no sap was entered: enter it, or look at the gauge.</source>
        <translation>Le bassin monte et aucune arrivée n'est notée : notez-la, ou regardez la jauge.</translation>
    </message>
    <message>
        <source>the load is catching</source>
        <translation>la charge prend</translation>
    </message>
    <message>
        <source>the fire burns well</source>
        <translation>le feu brûle bien</translation>
    </message>
    <message>
        <source>the fire is low: a load sets it right</source>
        <translation>le feu est bas : une charge suffit</translation>
    </message>
    <message>
        <source>the fire is dying: small dry wood first, then a load</source>
        <translation>le feu s'éteint : petit bois sec d'abord, puis une charge</translation>
    </message>
    <message>
        <source>fire every %1</source>
        <translation>mettre du bois toutes les %1</translation>
    </message>
    <message>
        <source>call moved to %1, by the rhythm of the last loads</source>
        <translation>rappel déplacé à %1, selon le rythme des dernières charges</translation>
    </message>
    <message>
        <source>overdue by %1</source>
        <translation>en retard de %1</translation>
    </message>
    <message>
        <source>wood %1 MJ in %2</source>
        <translation>bois %1 MJ en %2</translation>
    </message>
    <message>
        <source>into the sap</source>
        <translation>dans l'eau d'érable</translation>
    </message>
    <message>
        <source>up the stack</source>
        <translation>par la cheminée</translation>
    </message>
    <message>
        <source>the rest and the error</source>
        <translation>le reste et l'erreur</translation>
    </message>
    <message>
        <source>boiled off, together</source>
        <translation>eau évaporée, le tout</translation>
    </message>
    <message>
        <source>wood so far</source>
        <translation>bois jusqu'ici</translation>
    </message>
    <message>
        <source>cords an hour</source>
        <translation>cordes à l'heure</translation>
    </message>
    <message>
        <source>syrup a full cord</source>
        <translation>sirop par corde pleine</translation>
    </message>
    <message>
        <source>syrup still in the tank</source>
        <translation>sirop encore au bassin</translation>
    </message>
    <message>
        <source>Firing has stopped, the arch is hot: watch the pans for %1 more, never let one run dry. A last look at roof, fire and pans in %2.</source>
        <translation>On ne chauffe plus, le foyer est chaud : surveillez les casseroles encore %1, n'en laissez aucune à sec. Dernier coup d'œil au toit, au feu et aux casseroles dans %2.</translation>
    </message>
    <message>
        <source>A last look at roof, fire and pans in %1. The arch stays hot for hours.</source>
        <translation>Dernier coup d'œil au toit, au feu et aux casseroles dans %1. Le foyer reste chaud des heures.</translation>
    </message>
    <message>
        <source>Take the last look now: roof, fire, pans.</source>
        <translation>Faites le dernier tour maintenant : toit, feu, casseroles.</translation>
    </message>
    <message>
        <source>Gloves and a face shield at the door. Keep the house open: flue gas kills without a smell. Look up at the roof. Local codes and the fire marshal come first.</source>
        <translation>Gants et visière à la porte. Gardez la cabane ouverte : les gaz de combustion tuent sans odeur. Regardez le toit. Les règlements locaux et le service d'incendie priment.</translation>
    </message>
    <message>
        <source>the last hour</source>
        <translation>la dernière heure</translation>
    </message>
    <message>
        <source>the shift so far</source>
        <translation>le quart jusqu'ici</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>chaleur</translation>
    </message>
    <message>
        <source>firing has stopped</source>
        <translation>on ne chauffe plus</translation>
    </message>
    <message>
        <source>the end of the boil needs tank level, pan areas, running depth and a lit fire</source>
        <translation>la fin de l'ébullition demande le niveau du bassin, la surface des casseroles, la profondeur de marche et un feu allumé</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>charges</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>cheminée</translation>
    </message>
    <message>
        <source>water boiled off</source>
        <translation>eau évaporée</translation>
    </message>
    <message>
        <source>sugar in, out, in the pans</source>
        <translation>sucre entré, sorti, là</translation>
    </message>
    <message>
        <source>what the wood cost</source>
        <translation>coût du bois</translation>
    </message>
    <message>
        <source>not known: no journal to count from</source>
        <translation>inconnu : aucun journal d'où compter</translation>
    </message>
    <message>
        <source>left of the pile</source>
        <translation>bois empilé qui reste</translation>
    </message>
    <message>
        <source>%1, %2 a %3 of syrup</source>
        <translation>%1, %2 par %3 de sirop</translation>
    </message>
    <message numerus="yes">
        <source>%1 cords</source>
        <translation><numerusform>%1 corde</numerusform><numerusform>%1 cordes</numerusform></translation>
    </message>
    <message>
        <source>, for %1</source>
        <translation>, pour %1</translation>
    </message>
    <message numerus="yes">
        <source>, %1 nights like this</source>
        <translation><numerusform>, %1 nuit comme celle-ci</numerusform><numerusform>, %1 nuits comme celle-ci</numerusform></translation>
    </message>
    <message>
        <source>%1's turn</source>
        <translation>au tour de %1</translation>
    </message>
    <message>
        <source>An estimate, and advice: the person at the pans decides. Never let a pan run dry while the arch is hot.</source>
        <translation>Une estimation, un conseil : qui se tient aux casseroles décide. Ne laissez jamais une casserole à sec tant que le foyer est chaud.</translation>
    </message>
</context>
<context>
    <name>panside::FuelScreen</name>
    <message>
        <source>Fire and fuel</source>
        <translation>Feu et bois</translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>End of the boil</source>
        <translation>Fin de l'ébullition</translation>
    </message>
    <message>
        <source>Less sap</source>
        <translation>Moins d'eau</translation>
    </message>
    <message>
        <source>More sap</source>
        <translation>Plus d'eau</translation>
    </message>
    <message>
        <source>Softer fire</source>
        <translation>Feu plus doux</translation>
    </message>
    <message>
        <source>Harder fire</source>
        <translation>Feu plus vif</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>rien ne change</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 plus tard</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <translation>%1 plus tôt</translation>
    </message>
    <message>
        <source>last load %1, %2; keep back %3</source>
        <translation>dernière charge %1, %2; garder %3</translation>
    </message>
    <message>
        <source>%1 less sap</source>
        <translation>%1 d'eau d'érable en moins</translation>
    </message>
    <message>
        <source>%1 more sap</source>
        <translation>%1 d'eau d'érable en plus</translation>
    </message>
    <message>
        <source>fired %1 % softer</source>
        <translation>feu plus doux de %1 %</translation>
    </message>
    <message>
        <source>fired %1 % harder</source>
        <translation>feu plus vif de %1 %</translation>
    </message>
    <message>
        <source>sap in the tank</source>
        <translation>eau d'érable au bassin</translation>
    </message>
    <message>
        <source>leaves it, an hour</source>
        <translation>en sort, à l'heure</translation>
    </message>
    <message>
        <source>last load</source>
        <translation>dernière charge</translation>
    </message>
    <message>
        <source>keep back for the pans</source>
        <translation>à garder pour les casseroles</translation>
    </message>
    <message>
        <source>fire burnt out</source>
        <translation>feu éteint</translation>
    </message>
    <message>
        <source>tank empty, if you fire on</source>
        <translation>bassin vide, si l'on chauffe encore</translation>
    </message>
    <message>
        <source>syrup still in the tank</source>
        <translation>sirop encore au bassin</translation>
    </message>
    <message>
        <source>all syrup, if nobody draws</source>
        <translation>tout en sirop, si personne ne coule</translation>
    </message>
    <message>
        <source>in about %1</source>
        <translation>dans environ %1</translation>
    </message>
    <message>
        <source>The next load is the last, or one too many.</source>
        <translation>La prochaine charge est la dernière, ou une de trop.</translation>
    </message>
    <message>
        <source>The last load in %1, at %2</source>
        <translation>Dernière charge dans %1, à %2</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>comme à présent</translation>
    </message>
    <message>
        <source>more than the tank holds</source>
        <translation>plus que le bassin ne contient</translation>
    </message>
    <message>
        <source>last load %1</source>
        <translation>dernière charge %1</translation>
    </message>
    <message>
        <source>burnt out %1</source>
        <translation>éteint %1</translation>
    </message>
    <message>
        <source>tank empty %1, if you fire on</source>
        <translation>bassin vide %1, si l'on chauffe encore</translation>
    </message>
    <message>
        <source>keep back %1</source>
        <translation>garder %1</translation>
    </message>
</context>
<context>
    <name>LastLoadCard</name>
    <message>
        <source>the arch stays hot %1 more: never a dry pan</source>
        <translation>le foyer reste chaud %1 : jamais une casserole à sec</translation>
    </message>
    <message>
        <source>last look at roof, fire, pans in %1</source>
        <translation>dernier tour (toit, feu, casseroles) dans %1</translation>
    </message>
    <message>
        <source>take the last look now: roof, fire, pans</source>
        <translation>dernier tour maintenant : toit, feu, casseroles</translation>
    </message>
</context>
<context>
    <name>FireWords</name>
    <message>
        <source>evaporator</source>
        <translation>évaporateur</translation>
    </message>
</context>
</TS>
