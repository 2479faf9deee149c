<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name>Season</name>
    <message>
        <source>%1 (going on)</source>
        <translation>%1 (en cours)</translation>
    </message>
    <message>
        <source>Season %1</source>
        <translation>Saison %1</translation>
    </message>
    <message>
        <source>All seasons</source>
        <translation>Toutes les saisons</translation>
    </message>
    <message>
        <source>%1 of %2, those with &quot;%3&quot;</source>
        <translation>%1 sur %2, celles avec « %3 »</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>quart</translation>
    </message>
    <message>
        <source>together</source>
        <translation>ensemble</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>équipe</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>heures</translation>
    </message>
    <message>
        <source>sap in</source>
        <translation>eau reçue</translation>
    </message>
    <message>
        <source>sap boiled</source>
        <translation>eau bouillie</translation>
    </message>
    <message>
        <source>its sugar</source>
        <translation>son sucre</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>coulées</translation>
    </message>
    <message>
        <source>in the band</source>
        <translation>dans la bande</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>bois</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>charges</translation>
    </message>
    <message>
        <source>boiled off</source>
        <translation>évaporé</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>rendement</translation>
    </message>
    <message>
        <source>syrup a cord</source>
        <translation>sirop par corde</translation>
    </message>
    <message>
        <source>alarms</source>
        <translation>alarmes</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>densités</translation>
    </message>
    <message>
        <source>fired every</source>
        <translation>chauffe chaque</translation>
    </message>
    <message>
        <source>a load</source>
        <translation>une charge</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>pan depth</source>
        <translation>niveau</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>cheminée</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>kinds of wood</source>
        <translation>essences</translation>
    </message>
    <message>
        <source>which alarms</source>
        <translation>quelles alarmes</translation>
    </message>
    <message>
        <source>No draw of these shifts was predicted and then came, so nothing can be said of the forecast yet.</source>
        <translation>Aucune coulée de ces quarts n'a été annoncée puis venue : rien ne peut encore être dit de la prévision.</translation>
    </message>
    <message>
        <source>between the early and the late end: %1 % promised</source>
        <translation>entre le début et la fin : %1 % promis</translation>
    </message>
    <message>
        <source>before the early end: %1 % promised</source>
        <translation>avant le début : %1 % promis</translation>
    </message>
    <message>
        <source>before the middle: %1 % promised</source>
        <translation>avant le milieu : %1 % promis</translation>
    </message>
    <message>
        <source>before the late end: %1 % promised</source>
        <translation>avant la fin : %1 % promis</translation>
    </message>
    <message>
        <source>%1 %, between %2 and %3</source>
        <translation>%1 %, entre %2 et %3</translation>
    </message>
    <message>
        <source>1 shift</source>
        <translation>1 quart</translation>
    </message>
    <message>
        <source>%1 shifts</source>
        <translation>%1 quarts</translation>
    </message>
</context>
<context>
    <name>Tuning</name>
    <message>
        <source>%1 %, between %2 and %3</source>
        <translation>%1 %, entre %2 et %3</translation>
    </message>
    <message>
        <source>smaller and more often: %1 sooner, the wood an hour the same</source>
        <translation>moins à la fois et plus souvent : %1 plus tôt, autant de bois à l'heure</translation>
    </message>
    <message>
        <source>firing %1 sooner, the load the same</source>
        <translation>chauffer %1 plus tôt, même charge</translation>
    </message>
    <message>
        <source>%1 less a load, as often</source>
        <translation>%1 de moins par charge, aussi souvent</translation>
    </message>
    <message>
        <source>wood drier by %1 points of moisture</source>
        <translation>bois plus sec de %1 points d'humidité</translation>
    </message>
    <message>
        <source>syrup pan %1 deeper</source>
        <translation>casserole à sirop plus pleine de %1</translation>
    </message>
    <message>
        <source>stack %1 hotter</source>
        <translation>cheminée plus chaude de %1</translation>
    </message>
    <message>
        <source>sap %1 sweeter</source>
        <translation>eau plus sucrée de %1</translation>
    </message>
    <message>
        <source>air pressure %1 higher</source>
        <translation>pression plus haute de %1</translation>
    </message>
    <message>
        <source>%1 days later in the season</source>
        <translation>%1 jours plus tard dans la saison</translation>
    </message>
    <message>
        <source>%1 for other wood</source>
        <translation>%1 au lieu d'un autre bois</translation>
    </message>
    <message>
        <source>%1 on the crew</source>
        <translation>%1 dans l'équipe</translation>
    </message>
    <message>
        <source>smaller and more often</source>
        <translation>moins à la fois et plus souvent</translation>
    </message>
    <message>
        <source>the firing interval</source>
        <translation>l'intervalle de chauffe</translation>
    </message>
    <message>
        <source>the load</source>
        <translation>la charge</translation>
    </message>
    <message>
        <source>the wood&apos;s moisture</source>
        <translation>l'humidité du bois</translation>
    </message>
    <message>
        <source>the depth of the pan</source>
        <translation>le niveau de la casserole</translation>
    </message>
    <message>
        <source>the stack&apos;s temperature</source>
        <translation>la température de la cheminée</translation>
    </message>
    <message>
        <source>the sap&apos;s sugar</source>
        <translation>le sucre de l'eau</translation>
    </message>
    <message>
        <source>the air pressure</source>
        <translation>la pression de l'air</translation>
    </message>
    <message>
        <source>how late in the season</source>
        <translation>l'avancée de la saison</translation>
    </message>
    <message>
        <source>These changed together, so which of them did what is not known: %1. All at once, by one usual swing: %2: %3.</source>
        <translation>Ceci a varié ensemble, on ne peut donc dire ce que chacun a fait : %1. Tout à la fois, d'un écart habituel : %2 : %3.</translation>
    </message>
    <message>
        <source>Known on too few nights to be judged: %1.</source>
        <translation>Connu trop peu de nuits pour être jugé : %1.</translation>
    </message>
    <message>
        <source>Much the same every night, so it tells nothing: %1.</source>
        <translation>Presque pareil chaque nuit, cela n'apprend donc rien : %1.</translation>
    </message>
    <message>
        <source>No comparison can be named yet: boil some nights first, and do one thing differently on some of them.</source>
        <translation>Aucune comparaison ne peut encore être nommée : bouillez d'abord quelques nuits, et changez une seule chose à certaines d'entre elles.</translation>
    </message>
    <message>
        <source>Nothing that a crew can choose is still open.</source>
        <translation>Rien de ce qu'une équipe peut choisir n'est encore en question.</translation>
    </message>
    <message>
        <source>It would take more than 20 such pairs of nights to show a difference of 5 %: nights vary too much.</source>
        <translation>Il faudrait plus de 20 paires de nuits pour montrer une différence de 5 % : les nuits varient trop.</translation>
    </message>
    <message>
        <source>To learn the most: one night with %1, one night without, all else alike.</source>
        <translation>Pour en apprendre le plus : une nuit avec %1, une nuit sans, tout le reste pareil.</translation>
    </message>
    <message>
        <source>more with it</source>
        <translation>plus avec</translation>
    </message>
    <message>
        <source>less with it</source>
        <translation>moins avec</translation>
    </message>
    <message>
        <source>hardly matters</source>
        <translation>ne change guère</translation>
    </message>
    <message>
        <source>too little to tell</source>
        <translation>trop peu pour le dire</translation>
    </message>
    <message>
        <source>changed with others</source>
        <translation>a varié avec d'autres</translation>
    </message>
    <message>
        <source>What changes the evaporation</source>
        <translation>Ce qui change l'évaporation</translation>
    </message>
    <message>
        <source>What changes the syrup a cord gives</source>
        <translation>Ce qui change le sirop que donne une corde</translation>
    </message>
    <message>
        <source> of %1 that know it</source>
        <translation> sur %1 qui la connaissent</translation>
    </message>
    <message>
        <source>: too little to tell anything. Six are the fewest.</source>
        <translation> : trop peu pour dire quoi que ce soit. Il en faut au moins six.</translation>
    </message>
    <message>
        <source>. A night varies by %1 % for reasons not seen here.</source>
        <translation>. Une nuit s'écarte de %1 % pour des raisons qu'on ne voit pas ici.</translation>
    </message>
    <message>
        <source>What changed together is no proof of what did it. Nothing here is worth a low pan or an overfired arch.</source>
        <translation>Ce qui va ensemble ne prouve pas ce qui l'a causé. Rien ici ne vaut une casserole basse ou un foyer surchauffé.</translation>
    </message>
    <message>
        <source>One such pair of nights would show a difference of 5 %.</source>
        <translation>Une telle paire de nuits montrerait une différence de 5 %.</translation>
    </message>
    <message>
        <source>About %1 such pairs of nights would show a difference of 5 %.</source>
        <translation>Environ %1 telles paires de nuits montreraient une différence de 5 %.</translation>
    </message>
    <message>
        <source>It rests on no night</source>
        <translation>Cela ne repose sur aucune nuit</translation>
    </message>
    <message>
        <source>It rests on 1 night</source>
        <translation>Cela repose sur 1 nuit</translation>
    </message>
    <message>
        <source>It rests on %1 nights</source>
        <translation>Cela repose sur %1 nuits</translation>
    </message>
</context>
<context>
    <name>panside::SeasonScreen</name>
    <message>
        <source>Open the shift</source>
        <translation>Ouvrir le quart</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marquer</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Côte à côte</translation>
    </message>
    <message>
        <source>Sort by column</source>
        <translation>Trier par colonne</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtrer</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
    <message>
        <source>Other season</source>
        <translation>Autre saison</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>No shift yet. The first entry of a boil begins one.</source>
        <translation>Pas encore de quart. La première entrée d'une bouillée en ouvre un.</translation>
    </message>
    <message>
        <source>By syrup a cord</source>
        <translation>Par sirop à la corde</translation>
    </message>
    <message>
        <source>By evaporation</source>
        <translation>Par évaporation</translation>
    </message>
    <message>
        <source>Two are marked: B lays their accounts side by side.</source>
        <translation>Deux sont marquées : B met leurs comptes côte à côte.</translation>
    </message>
    <message>
        <source>One more is needed to lay two side by side.</source>
        <translation>Il en faut une autre pour en mettre deux côte à côte.</translation>
    </message>
    <message>
        <source>Mark two shifts first, with Space.</source>
        <translation>Marquez d'abord deux quarts, avec Espace.</translation>
    </message>
</context>
<context>
    <name>panside::SeasonTableLeaf</name>
    <message>
        <source>Filter</source>
        <translation>Filtrer</translation>
    </message>
    <message>
        <source>a name, a wood, an alarm, a date</source>
        <translation>un nom, un bois, une alarme, une date</translation>
    </message>
    <message numerus="yes">
        <source>%n still being worked out</source>
        <translation>
            <numerusform>%n encore en calcul</numerusform>
            <numerusform>%n encore en calcul</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>panside::BesideLeaf</name>
    <message>
        <source>Two shifts side by side</source>
        <translation>Deux quarts côte à côte</translation>
    </message>
    <message>
        <source>the second less the first</source>
        <translation>la seconde moins la première</translation>
    </message>
</context>
<context>
    <name>panside::CalibrationLeaf</name>
    <message>
        <source>Was the forecast right? Draws so far: %1. The ring shows what was promised, the bar what came, with the margin that so many draws leave (95 %).</source>
        <translation>La prévision disait-elle vrai? Coulées jusqu'ici : %1. L'anneau montre ce qui était promis, la barre ce qui est venu, avec la marge que permet ce nombre de coulées (95 %).</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>still going on</source>
        <translation>encore en cours</translation>
    </message>
    <message>
        <source>Draws, checks and notes</source>
        <translation>Coulées, vérifications et notes</translation>
    </message>
    <message>
        <source>Figures are as entered and as read by the probes; &quot;≥&quot; means that not all was measured, a dash that it is not known. They take the place of no weighed or licensed measurement. The hydrometer decides what is syrup; local codes and inspectors come first.</source>
        <translation>Les chiffres sont tels qu'entrés et lus par les sondes; « ≥ » veut dire que tout n'a pas été mesuré, un tiret que ce n'est pas connu. Ils ne remplacent aucune mesure pesée ou homologuée. Le densimètre décide de ce qui est sirop; les règles et inspecteurs du lieu passent d'abord.</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>quart</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>équipe</translation>
    </message>
    <message>
        <source>together</source>
        <translation>ensemble</translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Compte</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>who</source>
        <translation>qui</translation>
    </message>
    <message>
        <source>Was the forecast right?</source>
        <translation>La prévision disait-elle vrai?</translation>
    </message>
    <message numerus="yes">
        <source>and %n more, in the shift&apos;s log</source>
        <translation>
            <numerusform>et %n autre, dans le journal du quart</numerusform>
            <numerusform>et %n autres, dans le journal du quart</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>The season on paper</source>
        <translation>La saison sur papier</translation>
    </message>
</context>
</TS>
