<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Said</name>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>Sap</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Boil</source>
        <translation>Bouillée</translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation>Sirop</translation>
    </message>
    <message>
        <source>Nights</source>
        <translation>Nuits</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Rig</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
</context>
<context>
    <name>Screens</name>
    <message>
        <source>Tank and wood</source>
        <translation>Bassin et bois</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Fire and wood</source>
        <translation>Feu et bois</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Relève</translation>
    </message>
    <message>
        <source>Nights</source>
        <translation>Nuits</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation>Du papier</translation>
    </message>
    <message>
        <source>From files</source>
        <translation>De fichiers</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La saison</translation>
    </message>
    <message>
        <source>Pans and fire</source>
        <translation>Casseroles et feu</translation>
    </message>
    <message>
        <source>Probes</source>
        <translation>Sondes</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Son</translation>
    </message>
    <message>
        <source>Back-ups</source>
        <translation>Copies</translation>
    </message>
    <message>
        <source>Sums of the trade</source>
        <translation>Calculs du métier</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Toutes les touches</translation>
    </message>
    <message>
        <source>Before the fire</source>
        <translation>Avant le feu</translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>Nothing is lit. Flood the pans before you light.</source>
        <translation>Rien n'est allumé. Noyez les casseroles avant d'allumer.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Draw now, then fire</source>
        <translation>Coulez, puis chauffez</translation>
    </message>
    <message>
        <source>Draw now</source>
        <translation>Coulez maintenant</translation>
    </message>
    <message>
        <source>Fire now</source>
        <translation>Chauffez maintenant</translation>
    </message>
    <message>
        <source>look: by the last reading, or the climb since, it is syrup</source>
        <translation>regarder : du sirop, selon la dernière lecture ou la montée depuis</translation>
    </message>
    <message>
        <source>open the draw</source>
        <translation>ouvrir la coulée</translation>
    </message>
    <message>
        <source>check the density</source>
        <translation>vérifier la densité</translation>
    </message>
    <message>
        <source>fire in %1</source>
        <translation>bois dans %1</translation>
    </message>
    <message>
        <source>fire in %1 (%2)</source>
        <translation>bois dans %1 (%2)</translation>
    </message>
    <message>
        <source>draw in %1</source>
        <translation>coulée dans %1</translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation>ensuite : %1</translation>
    </message>
    <message>
        <source>Over, nothing to do: %1</source>
        <translation>Passé, rien à faire : %1</translation>
    </message>
</context>
<context>
    <name>AlarmWords</name>
    <message>
        <source>look at the pan|open the feed|have cold sap at hand</source>
        <translation>regarder la casserole|ouvrir l'arrivée|garder de l'eau froide à portée</translation>
    </message>
    <message>
        <source>shut the draft|look at roof jack and rafters|do not fire</source>
        <translation>fermer le tirage|voir le collet du toit et les chevrons|ne pas mettre de bois</translation>
    </message>
    <message>
        <source>stop the pump|stand clear|let the pressure off before you open the press</source>
        <translation>arrêter la pompe|s'écarter|laisser tomber la pression avant d'ouvrir la presse</translation>
    </message>
    <message>
        <source>watch the pan itself|look at plug, cable and box</source>
        <translation>surveiller la casserole même|voir fiche, câble et boîte</translation>
    </message>
    <message>
        <source>write on paper|look at the disk: full or pulled out</source>
        <translation>écrire sur papier|voir le disque : plein ou retiré</translation>
    </message>
    <message>
        <source>open the draw|check the density</source>
        <translation>ouvrir la coulée|vérifier la densité</translation>
    </message>
    <message>
        <source>close the draw|check the density</source>
        <translation>fermer la coulée|vérifier la densité</translation>
    </message>
    <message>
        <source>fire, gloves on|or press Fired if it is done</source>
        <translation>mettre du bois, gants mis|ou appuyer sur Bois mis si c'est fait</translation>
    </message>
    <message>
        <source>bring sap|or stop firing while it still covers the pans</source>
        <translation>amener de l'eau d'érable|ou cesser de chauffer tant qu'il en reste pour couvrir</translation>
    </message>
    <message>
        <source>trust the hydrometer|look at the probe and its box</source>
        <translation>se fier au densimètre|voir la sonde et sa boîte</translation>
    </message>
    <message>
        <source>trust the hydrometer|see where the probe sits</source>
        <translation>se fier au densimètre|voir où est la sonde</translation>
    </message>
</context>
<context>
    <name>Cards</name>
    <message>
        <source>under</source>
        <translation>moins de</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>under 2 min</source>
        <translation>moins de 2 min</translation>
    </message>
</context>
<context>
    <name>DrawCard</name>
    <message>
        <source>pan %1</source>
        <translation>casserole %1</translation>
    </message>
    <message>
        <source>%1, open at %2</source>
        <translation>%1, ouvrir à %2</translation>
    </message>
    <message>
        <source>the target is known to ± %1</source>
        <translation>la cible est connue à ± %1</translation>
    </message>
    <message>
        <source>by eye and hydrometer</source>
        <translation>à l'œil et au densimètre</translation>
    </message>
    <message>
        <source>close now</source>
        <translation>fermer</translation>
    </message>
    <message>
        <source>keep shut</source>
        <translation>laisser fermé</translation>
    </message>
    <message>
        <source>The draw was opened</source>
        <translation>La coulée est ouverte</translation>
    </message>
</context>
<context>
    <name>FireCard</name>
    <message>
        <source>every %1: boil sags after %2</source>
        <translation>toutes les %1 : baisse après %2</translation>
    </message>
    <message>
        <source>THE FIRE GOES DOWN: FIRE NOW</source>
        <translation>LE FEU BAISSE : CHAUFFEZ</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>late by %1</source>
        <translation>en retard de %1</translation>
    </message>
    <message>
        <source>a minute</source>
        <translation>une minute</translation>
    </message>
    <message>
        <source>stop firing</source>
        <translation>cesser de chauffer</translation>
    </message>
    <message>
        <source>close the draw first</source>
        <translation>fermer d'abord la coulée</translation>
    </message>
    <message>
        <source>do not fire</source>
        <translation>pas de bois</translation>
    </message>
    <message>
        <source>Wood went in all the same</source>
        <translation>Bois mis quand même</translation>
    </message>
</context>
<context>
    <name>LastLoadCard</name>
    <message>
        <source>SAP TO FLOOD WITH</source>
        <translation>EAU D'ÉRABLE POUR NOYER</translation>
    </message>
</context>
<context>
    <name>Fuel</name>
    <message>
        <source>boil sags %1 after loading; call moved to %2</source>
        <translation>l'ébullition baisse %1 après la charge; appel déplacé à %2</translation>
    </message>
    <message>
        <source>; %1 stood in them from the night before</source>
        <translation>; %1 y restait de la nuit d'avant</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>The draw is open and the fire is lit. Close the draw and stop firing first: when the shift is over, nothing is watched.</source>
        <translation>La coulée est ouverte et le feu allumé. Fermez la coulée et cessez de chauffer d'abord : le quart fini, plus rien n'est surveillé.</translation>
    </message>
    <message>
        <source>The draw is open. Close it first: when the shift is over, nothing is watched.</source>
        <translation>La coulée est ouverte. Fermez-la d'abord : le quart fini, plus rien n'est surveillé.</translation>
    </message>
    <message>
        <source>The fire is lit. Stop firing first, and stay until the pans are still: when the shift is over, nothing is watched.</source>
        <translation>Le feu est allumé. Cessez de chauffer d'abord et restez jusqu'à ce que rien ne bouille : le quart fini, plus rien n'est surveillé.</translation>
    </message>
</context>
<context>
    <name>Slip</name>
    <message>
        <source>sap</source>
        <translation>eau d'érable</translation>
    </message>
    <message>
        <source>Sap of %1 is unusual. Did you mean %2?</source>
        <translation>Une eau d'érable à %1 est inhabituelle. Vouliez-vous dire %2?</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>godet</translation>
    </message>
    <message>
        <source>boiling water</source>
        <translation>eau bouillante</translation>
    </message>
    <message>
        <source>%1: %2 is not possible. Did you mean another unit?</source>
        <translation>%1 : %2 est impossible. Vouliez-vous une autre unité?</translation>
    </message>
    <message>
        <source>%1: %2 is not possible. Look at the digits.</source>
        <translation>%1 : %2 est impossible. Voyez les chiffres.</translation>
    </message>
    <message>
        <source>%1: %2 is unusual. Did you mean another unit?</source>
        <translation>%1 : %2 est inhabituel. Vouliez-vous une autre unité?</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>C'est %1</translation>
    </message>
</context>
<context>
    <name>panside::EntrySheet</name>
    <message>
        <source>End it all the same</source>
        <translation>Finir quand même</translation>
    </message>
</context>
<context>
    <name>panside::WaterSheet</name>
    <message>
        <source>at your elevation about %1 is likely</source>
        <translation>à votre altitude, environ %1 est probable</translation>
    </message>
    <message>
        <source>the last check said %1</source>
        <translation>le dernier essai a donné %1</translation>
    </message>
    <message>
        <source>%1: is this water, or the sap in the pan?</source>
        <translation>%1 : est-ce de l'eau, ou l'eau d'érable de la casserole?</translation>
    </message>
    <message>
        <source>%1 is not likely for boiling water here.</source>
        <translation>%1 est peu probable pour de l'eau bouillante ici.</translation>
    </message>
    <message>
        <source>If you keep it, every rise is counted from %1. Too hot, and syrup is drawn too heavy; too cold, and it is too light.</source>
        <translation>Si vous le gardez, toute hausse se compte à partir de %1. Trop chaud, le sirop sort trop lourd; trop froid, trop léger.</translation>
    </message>
    <message>
        <source>It is water: keep %1</source>
        <translation>C'est de l'eau : garder %1</translation>
    </message>
</context>
<context>
    <name>panside::SentenceBar</name>
    <message>
        <source>Board</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
<context>
    <name>panside::Foot</name>
    <message>
        <source>Undo: %1</source>
        <translation>Annuler : %1</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Far view</source>
        <translation>De loin</translation>
    </message>
</context>
<context>
    <name>panside::KeyMap</name>
    <message>
        <source>Open, close the draw</source>
        <translation>Ouvrir, fermer la coulée</translation>
    </message>
    <message>
        <source>%1: %2, then</source>
        <translation>%1 : %2, puis</translation>
    </message>
    <message>
        <source>At the pan. A C D F S U Z mean the same on every screen.</source>
        <translation>À la casserole. A C D F S U Z disent la même chose sur chaque écran.</translation>
    </message>
</context>
<context>
    <name>panside::Board</name>
    <message>
        <source>The night is being read.</source>
        <translation>Lecture de la nuit en cours.</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>coulée</translation>
    </message>
    <message>
        <source>fire</source>
        <translation>bois</translation>
    </message>
    <message>
        <source>last load</source>
        <translation>dernière charge</translation>
    </message>
</context>
<context>
    <name>panside::Console</name>
    <message>
        <source>There is nothing here yet: %1.</source>
        <translation>Il n'y a encore rien ici : %1.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>There is no alarm that nobody has seen.</source>
        <translation>Aucune alarme n'attend d'être vue.</translation>
    </message>
    <message>
        <source>Put aside for an alarm: %1. %2 opens it again.</source>
        <translation>Mis de côté pour une alarme : %1. %2 le rouvre.</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Gardé : %1</translation>
    </message>
    <message>
        <source>rehearsal</source>
        <translation>simulation</translation>
    </message>
    <message>
        <source>Panside, rehearsal</source>
        <translation>Panside, simulation</translation>
    </message>
</context>
<context>
    <name>Chain</name>
    <message>
        <source>there is one; hear it with H</source>
        <translation>il y en a un; écoutez-le avec H</translation>
    </message>
</context>
</TS>
