<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Rehearsal</name>
    <message>
        <source>the pan probe went out</source>
        <translation>la sonde de la casserole s'est tue</translation>
    </message>
    <message>
        <source>the feed was shut: a bucket of sap (S) frees the float</source>
        <translation>l'arrivée était fermée : un seau d'eau d'érable (S) libère le flotteur</translation>
    </message>
    <message>
        <source>the crew forgot loads</source>
        <translation>l'équipe a oublié des charges</translation>
    </message>
    <message>
        <source>the probe stood in foam</source>
        <translation>la sonde était dans la mousse</translation>
    </message>
    <message>
        <source>a front passed: the mark moved with the weather</source>
        <translation>un front est passé : le repère a bougé avec le temps</translation>
    </message>
    <message>
        <source>the crew no longer drew: the whole pan turns to syrup</source>
        <translation>l'équipe ne coulait plus : toute la casserole tourne au sirop</translation>
    </message>
    <message>
        <source>missed, the pan far over its mark: %1</source>
        <translation>manquées, la casserole loin au-dessus du repère : %1</translation>
    </message>
    <message>
        <source>late by more than a minute: %1</source>
        <translation>en retard de plus d'une minute : %1</translation>
    </message>
    <message>
        <source>too early, false: %1</source>
        <translation>trop tôt, fausses : %1</translation>
    </message>
    <message>
        <source>alarms that nobody saw for two minutes: %1</source>
        <translation>alarmes que personne n'a vues pendant deux minutes : %1</translation>
    </message>
    <message>
        <source>density: %1 on average, the worst draw %2 off</source>
        <translation>densité : %1 en moyenne, la pire coulée à %2 près</translation>
    </message>
    <message>
        <source>wood: %1 for each %2 of water boiled off</source>
        <translation>bois : %1 pour %2 d'eau évaporée</translation>
    </message>
    <message>
        <source>The rehearsal is over.</source>
        <translation>La simulation est finie.</translation>
    </message>
    <message>
        <source>A lesson: things go wrong</source>
        <translation>Une leçon : des choses vont mal</translation>
    </message>
    <message>
        <source>A made-up boil</source>
        <translation>Une bouillée inventée</translation>
    </message>
    <message>
        <source>Pans, fire, weather, crew and all the nights before are made up (evening %1). Nothing of it is kept.</source>
        <translation>Casseroles, feu, temps, équipe et toutes les nuits d'avant sont inventés (soirée %1). Rien n'en est gardé.</translation>
    </message>
    <message>
        <source>You are the crew: fire, draw, check, stop.</source>
        <translation>Vous êtes l'équipe : chauffez, coulez, vérifiez, arrêtez.</translation>
    </message>
    <message>
        <source>The made-up crew fires and draws. What you do is done in the pan as well.</source>
        <translation>L'équipe inventée chauffe et coule. Ce que vous faites se fait aussi dans la casserole.</translation>
    </message>
    <message>
        <source>What went wrong:</source>
        <translation>Ce qui a mal tourné :</translation>
    </message>
    <message>
        <source>It lasts an hour and a half. What goes wrong is said at the end.</source>
        <translation>Elle dure une heure et demie. Ce qui va mal est dit à la fin.</translation>
    </message>
    <message>
        <source>Since you came:</source>
        <translation>Depuis votre arrivée :</translation>
    </message>
    <message>
        <source>Done last:</source>
        <translation>Fait en dernier :</translation>
    </message>
    <message>
        <source>1 draw</source>
        <translation>1 coulée</translation>
    </message>
    <message numerus="yes">
        <source>%n draws</source>
        <translation><numerusform>%n coulée</numerusform><numerusform>%n coulées</numerusform></translation>
    </message>
    <message>
        <source>Probe out</source>
        <translation>Sonde muette</translation>
    </message>
    <message>
        <source>Feed shut</source>
        <translation>Arrivée fermée</translation>
    </message>
    <message>
        <source>Load forgotten</source>
        <translation>Charge oubliée</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Mousse</translation>
    </message>
    <message>
        <source>Front passing</source>
        <translation>Front qui passe</translation>
    </message>
    <message>
        <source>Whole pan to syrup</source>
        <translation>Toute la casserole en sirop</translation>
    </message>
    <message>
        <source>You teach: throw something in</source>
        <translation>Vous enseignez : provoquez un ennui</translation>
    </message>
    <message>
        <source>The others look away while you press. It begins at once; go back to the board and say nothing. The first one makes a lesson of the evening: an hour and a half, a score at the end, and the same again has the same go wrong at the same minute.</source>
        <translation>Les autres regardent ailleurs pendant que vous appuyez. Cela commence tout de suite; revenez au tableau et ne dites rien. Le premier ennui fait de la soirée une leçon : une heure et demie, un bilan à la fin, et la même soirée recommencée a les mêmes ennuis à la même minute.</translation>
    </message>
    <message>
        <source>The pan turns whole when nobody draws: let the made-up crew work for that, or keep your own people from the draw.</source>
        <translation>Toute la casserole tourne en sirop quand personne ne coule : laissez pour cela travailler l'équipe inventée, ou tenez les vôtres loin de la coulée.</translation>
    </message>
</context>
<context>
    <name>Screens</name>
    <message>
        <source>Rehearsal</source>
        <translation>Simulation</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Another evening</source>
        <translation>Une autre soirée</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>La même encore</translation>
    </message>
    <message>
        <source>A lesson</source>
        <translation>Une leçon</translation>
    </message>
    <message>
        <source>Let the crew work</source>
        <translation>Laisser faire l'équipe</translation>
    </message>
    <message>
        <source>Take the crew's part</source>
        <translation>Prendre la place de l'équipe</translation>
    </message>
    <message>
        <source>Now: %1.</source>
        <translation>En cours : %1.</translation>
    </message>
    <message>
        <source>Teach</source>
        <translation>Enseigner</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Assez</translation>
    </message>
</context>
<context>
    <name>panside::Console</name>
    <message>
        <source>Rehearsal, a made-up boil. Last: %1</source>
        <translation>Simulation, bouillée inventée. En dernier : %1</translation>
    </message>
</context>
</TS>
