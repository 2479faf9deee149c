<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Start</name>
    <message>
        <source>Which language?</source>
        <translation>Quelle langue?</translation>
    </message>
    <message>
        <source>Each of these questions can be left out, and answered later under F7.</source>
        <translation>On peut passer chacune de ces questions et y répondre plus tard, sous F7.</translation>
    </message>
    <message>
        <source>In which units do you boil?</source>
        <translation>Dans quelles unités bouillez-vous?</translation>
    </message>
    <message>
        <source>All that is typed and shown is in these. Nothing that was kept changes with them.</source>
        <translation>Tout ce qui est saisi et affiché l'est dans ces unités. Rien de ce qui fut gardé n'en change.</translation>
    </message>
    <message>
        <source>Where is the syrup sold?</source>
        <translation>Où le sirop est-il vendu?</translation>
    </message>
    <message>
        <source>Its law says how dense syrup must be. What is known of it here is advice: the inspector decides.</source>
        <translation>La loi du lieu dit quelle densité il faut. Ce qu'on en sait ici est un conseil : l'inspecteur décide.</translation>
    </message>
    <message>
        <source>How far above sea level is the sugarhouse?</source>
        <translation>À quelle altitude est la cabane?</translation>
    </message>
    <message>
        <source>The higher the sugarhouse, the cooler water and syrup boil. Without the elevation only a water check or a barometer tells how hot.</source>
        <translation>Plus la cabane est haute, moins l'eau et le sirop bouillent chaud. Sans l'altitude, seuls un essai à l'eau bouillante ou un baromètre le disent.</translation>
    </message>
    <message>
        <source>How large are the pans?</source>
        <translation>Quelle est la grandeur des casseroles?</translation>
    </message>
    <message>
        <source>Length times width of each. Without them nothing can say how fast you boil, or how much sap must be kept back.</source>
        <translation>Longueur fois largeur de chacune. Sans elles, rien ne dit à quelle vitesse vous bouillez, ni combien d'eau d'érable il faut réserver.</translation>
    </message>
    <message>
        <source>Who reads the syrup pan?</source>
        <translation>Qui lit la casserole à sirop?</translation>
    </message>
    <message>
        <source>A probe on a wire is read each second. By hand you type what a thermometer shows: every few minutes at first, more often near the draw.</source>
        <translation>Une sonde à fil est lue chaque seconde. À la main, vous tapez ce que montre un thermomètre : toutes les deux ou trois minutes d'abord, plus souvent près de la coulée.</translation>
    </message>
    <message>
        <source>°F, gallons, feet, pounds</source>
        <translation>°F, gallons, pieds, livres</translation>
    </message>
    <message>
        <source>°C, liters, meters, kilograms</source>
        <translation>°C, litres, mètres, kilogrammes</translation>
    </message>
    <message>
        <source>I do, and type it in</source>
        <translation>Moi : je tape la lecture</translation>
    </message>
    <message>
        <source>A probe: find its wire</source>
        <translation>Une sonde : trouver son fil</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>le lieu</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>l'altitude</translation>
    </message>
    <message>
        <source>the pans</source>
        <translation>les casseroles</translation>
    </message>
</context>
<context>
    <name>panside::StartScreen</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Passer</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
</context>
<context>
    <name>panside::PlacePick</name>
    <message>
        <source>its first letters</source>
        <translation>premières lettres</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>more</source>
        <translation>suite</translation>
    </message>
    <message>
        <source>No place is called so. Is it %1?</source>
        <translation>Aucun lieu ne s'appelle ainsi. Est-ce %1?</translation>
    </message>
    <message>
        <source>From: %1.</source>
        <translation>Source : %1.</translation>
    </message>
    <message>
        <source>Left out, the density wanted is 66.9 °Brix, and no law is asked.</source>
        <translation>Sans lieu, la densité voulue est 66,9 °Brix, et aucune loi n'est consultée.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>US</source>
        <translation>États-Unis</translation>
    </message>
    <message>
        <source>California</source>
        <translation>Californie</translation>
    </message>
    <message>
        <source>District of Columbia</source>
        <translation>District de Columbia</translation>
    </message>
    <message>
        <source>Florida</source>
        <translation>Floride</translation>
    </message>
    <message>
        <source>Georgia</source>
        <translation>Géorgie</translation>
    </message>
    <message>
        <source>Hawaii</source>
        <translation>Hawaï</translation>
    </message>
    <message>
        <source>Louisiana</source>
        <translation>Louisiane</translation>
    </message>
    <message>
        <source>New Mexico</source>
        <translation>Nouveau-Mexique</translation>
    </message>
    <message>
        <source>North Carolina</source>
        <translation>Caroline du Nord</translation>
    </message>
    <message>
        <source>North Dakota</source>
        <translation>Dakota du Nord</translation>
    </message>
    <message>
        <source>Pennsylvania</source>
        <translation>Pennsylvanie</translation>
    </message>
    <message>
        <source>South Carolina</source>
        <translation>Caroline du Sud</translation>
    </message>
    <message>
        <source>South Dakota</source>
        <translation>Dakota du Sud</translation>
    </message>
    <message>
        <source>Virginia</source>
        <translation>Virginie</translation>
    </message>
    <message>
        <source>West Virginia</source>
        <translation>Virginie-Occidentale</translation>
    </message>
    <message>
        <source>British Columbia</source>
        <translation>Colombie-Britannique</translation>
    </message>
    <message>
        <source>New Brunswick</source>
        <translation>Nouveau-Brunswick</translation>
    </message>
    <message>
        <source>Newfoundland and Labrador</source>
        <translation>Terre-Neuve-et-Labrador</translation>
    </message>
    <message>
        <source>Northwest Territories</source>
        <translation>Territoires du Nord-Ouest</translation>
    </message>
    <message>
        <source>Nova Scotia</source>
        <translation>Nouvelle-Écosse</translation>
    </message>
    <message>
        <source>Prince Edward Island</source>
        <translation>Île-du-Prince-Édouard</translation>
    </message>
    <message>
        <source>Quebec</source>
        <translation>Québec</translation>
    </message>
    <message>
        <source>%1 (%2 by its own chart)</source>
        <translation>%1 (%2 d'après sa propre table)</translation>
    </message>
    <message>
        <source>at least %1 and at most %2, stated at %3.</source>
        <translation>au moins %1 et au plus %2, à %3.</translation>
    </message>
    <message>
        <source>at least %1, stated at %2; no most is known.</source>
        <translation>au moins %1, à %2; on ne connaît pas de maximum.</translation>
    </message>
    <message>
        <source>%1 (read only as quoted)</source>
        <translation>%1 (lu seulement comme cité)</translation>
    </message>
</context>
<context>
    <name>Screens</name>
    <message>
        <source>First questions</source>
        <translation>Premières questions</translation>
    </message>
    <message>
        <source>Alarms</source>
        <translation>Alarmes</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>What pays</source>
        <translation>Ce qui paie</translation>
    </message>
    <message>
        <source>Forecast kept</source>
        <translation>Prévision tenue</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Left out: %1. F7, then 2, asks again.</source>
        <translation>Passé : %1. F7, puis 2, le redemande.</translation>
    </message>
    <message>
        <source>No place is set: F7, then 2, asks where the syrup is sold.</source>
        <translation>Aucun lieu n'est donné : F7, puis 2, demande où le sirop est vendu.</translation>
    </message>
</context>
<context>
    <name>panside::SoundScreen</name>
    <message>
        <source>The frame of an alarm stands still</source>
        <translation>Le cadre d'une alarme reste immobile</translation>
    </message>
    <message>
        <source>The frame of an alarm flashes</source>
        <translation>Le cadre d'une alarme clignote</translation>
    </message>
</context>
</TS>
