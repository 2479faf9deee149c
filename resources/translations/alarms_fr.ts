<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AlarmReview</name>
    <message>
        <source>by nobody</source>
        <translation>par personne</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>comes and goes</source>
        <translation>va et vient</translation>
    </message>
    <message>
        <source>lasted too long</source>
        <translation>trop longue</translation>
    </message>
    <message>
        <source>to the end</source>
        <translation>jusqu'à la fin</translation>
    </message>
    <message>
        <source>shelved</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>%1: %2, longest %3</source>
        <translation>%1 : %2, la plus longue %3</translation>
    </message>
    <message>
        <source>once</source>
        <translation>une fois</translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%n fois</numerusform>
            <numerusform>%n fois</numerusform>
        </translation>
    </message>
    <message>
        <source>came and went %1 times, three or more in a minute, from %2</source>
        <translation>venue et repartie %1 fois, trois ou plus par minute, dès %2</translation>
    </message>
    <message>
        <source>lasted longer than %1: %2</source>
        <translation>a duré plus de %1 : %2</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarme</translation>
    </message>
    <message>
        <source>how urgent</source>
        <translation>urgence</translation>
    </message>
    <message>
        <source>times</source>
        <translation>fois</translation>
    </message>
    <message>
        <source>time in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>seen after</source>
        <translation>vue après</translation>
    </message>
    <message>
        <source>what is wrong</source>
        <translation>à redire</translation>
    </message>
    <message>
        <source>There was no alarm in this shift.</source>
        <translation>Aucune alarme pendant ce quart.</translation>
    </message>
    <message>
        <source>1 alarm</source>
        <translation>1 alarme</translation>
    </message>
    <message numerus="yes">
        <source>%n alarms</source>
        <translation>
            <numerusform>%n alarme</numerusform>
            <numerusform>%n alarmes</numerusform>
        </translation>
    </message>
    <message>
        <source>1 urgent</source>
        <translation>1 urgente</translation>
    </message>
    <message numerus="yes">
        <source>%n urgent</source>
        <translation>
            <numerusform>%n urgente</numerusform>
            <numerusform>%n urgentes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 an hour, more than one person can answer</source>
        <translation>%1 par heure, plus qu'une personne ne peut en traiter</translation>
    </message>
    <message>
        <source>%1 an hour</source>
        <translation>%1 par heure</translation>
    </message>
    <message>
        <source>most in ten minutes: %1, from %2</source>
        <translation>au plus fort : %1 en dix minutes, dès %2</translation>
    </message>
    <message>
        <source>%1 (a flood)</source>
        <translation>%1 (une avalanche)</translation>
    </message>
</context>
<context>
    <name>panside::AlarmsPane</name>
    <message>
        <source>When it was on</source>
        <translation>Quand elle était active</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Working out the alarms …</source>
        <translation>Les alarmes sont en cours de calcul.</translation>
    </message>
    <message>
        <source>%1, %2 of %3: %4</source>
        <translation>%1, %2 sur %3 : %4</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>Alarms</source>
        <translation>Alarmes</translation>
    </message>
</context>
<context>
    <name>panside::RiseChart</name>
    <message>
        <source>alarm: %1, %2</source>
        <translation>alarme : %1, %2</translation>
    </message>
    <message>
        <source>alarms: %1</source>
        <translation>alarmes : %1</translation>
    </message>
</context>
<context>
    <name>RiseChart</name>
    <message>
        <source>alarms</source>
        <translation>alarmes</translation>
    </message>
</context>
<context>
    <name>AlarmWords</name>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>de %1 à %2, %3</translation>
    </message>
    <message>
        <source>%1 to the end, %2</source>
        <translation>de %1 à la fin, %2</translation>
    </message>
    <message>
        <source>seen after %1</source>
        <translation>vue après %1</translation>
    </message>
    <message>
        <source>seen after %1 by %2</source>
        <translation>vue après %1 par %2</translation>
    </message>
    <message>
        <source>not seen by anybody</source>
        <translation>vue par personne</translation>
    </message>
    <message>
        <source>shelved %1 to %2</source>
        <translation>écartée de %1 à %2</translation>
    </message>
    <message>
        <source>shelved %1 to %2 by %3</source>
        <translation>écartée de %1 à %2 par %3</translation>
    </message>
    <message>
        <source>The feed tank</source>
        <translation>Le bassin d'arrivée</translation>
    </message>
    <message>
        <source>%1: full to the rim</source>
        <translation>%1 : plein à ras bord</translation>
    </message>
    <message>
        <source>%1: runs over in %2</source>
        <translation>%1 : déborde dans %2</translation>
    </message>
    <message>
        <source>%1. Call %2</source>
        <translation>%1. Appelez %2</translation>
    </message>
    <message>
        <source>shut it off or pump it on|dip it where the book is wrong</source>
        <translation>coupez l'arrivée ou pompez plus loin|jaugez si le cahier se trompe</translation>
    </message>
    <message>
        <source>tank runs over</source>
        <translation>bassin qui déborde</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>%1 %2: %3×, %4, at most %5</source>
        <translation>%1 %2 : %3×, %4, au plus %5</translation>
    </message>
</context>
<context>
    <name>GroundWords</name>
    <message>
        <source>%3 is at %1 and falling: the bottom is bare in %2</source>
        <translation>%3 : %1, et cela baisse : le fond est à nu dans %2</translation>
    </message>
    <message>
        <source>no sap has run in for %1 while the fire burns; what is in the pans lasts %2 more</source>
        <translation>rien n'est entré depuis %1 alors que le feu brûle; ce qui reste dans les casseroles dure encore %2</translation>
    </message>
    <message>
        <source>%3 is at %1, and %2 is usual: the pan is not short of sap, it has turned to syrup</source>
        <translation>%3 : %1, d'ordinaire %2 : la casserole ne manque pas d'eau d'érable, elle a tourné au sirop</translation>
    </message>
    <message>
        <source>the sugar is back at the mark far sooner than usual, as in a pan that runs empty</source>
        <translation>le sucre est revenu au repère bien plus tôt que d'ordinaire, comme dans une casserole qui se vide</translation>
    </message>
    <message>
        <source>%1 over boiling water and climbing; 75 brix is at %2</source>
        <translation>%1 au-dessus de l'eau bouillante, et cela monte; 75 brix se trouvent à %2</translation>
    </message>
    <message>
        <source>%1 over boiling water, past 75 brix at %2</source>
        <translation>%1 au-dessus de l'eau bouillante, au-delà de 75 brix à %2</translation>
    </message>
    <message>
        <source>it was on when the readings stopped, and nothing shows that it is over</source>
        <translation>elle était active quand les lectures ont cessé, et rien ne montre que c'est fini</translation>
    </message>
    <message>
        <source>the syrup pan is at %1; half of its running depth is %2</source>
        <translation>la casserole à sirop est à %1, la moitié de sa hauteur de marche est %2</translation>
    </message>
    <message>
        <source>flue gas at %1, the limit that was set is %2</source>
        <translation>fumée à %1, la limite réglée est %2</translation>
    </message>
    <message>
        <source>flue gas at %1; %2 is well over the hottest this rig has run</source>
        <translation>fumée à %1; %2 est bien au-dessus du plus chaud jamais vu sur cette installation</translation>
    </message>
    <message>
        <source>flue gas at %1, over %2; how hot this rig runs is not known yet</source>
        <translation>fumée à %1, plus de %2; on ne sait pas encore à quelle chaleur marche cette installation</translation>
    </message>
    <message>
        <source>the filter press is at %1, its limit is %2</source>
        <translation>le filtre-presse est à %1, sa limite est %2</translation>
    </message>
    <message>
        <source>%3: nothing read for %1; %2 is the longest it should take</source>
        <translation>%3 : rien lu depuis %1; %2 est le plus long qui soit normal</translation>
    </message>
    <message>
        <source>%1 over boiling water, the target is at %2</source>
        <translation>%1 au-dessus de l'eau bouillante, la cible est à %2</translation>
    </message>
    <message>
        <source>by no more than the uncertainty of the target, %1</source>
        <translation>de pas plus que le doute sur la cible, %1</translation>
    </message>
    <message>
        <source>%1 over boiling water, and nothing should be drawn under %2</source>
        <translation>%1 au-dessus de l'eau bouillante, et il ne faut plus couler sous %2</translation>
    </message>
    <message>
        <source>%1 after the call to fire; a crew usually varies by %2</source>
        <translation>%1 après l'appel à chauffer; l'écart habituel d'une équipe est %2</translation>
    </message>
    <message>
        <source>the stack is down to %1; its average with a fed fire is %2</source>
        <translation>la cheminée est tombée à %1, sa moyenne avec un feu nourri est %2</translation>
    </message>
    <message>
        <source>%1 of sap left, and it takes %2 to cover the pans while the fire burns out</source>
        <translation>il reste %1 d'eau d'érable, et il en faut %2 pour couvrir les casseroles pendant que le feu s'éteint</translation>
    </message>
    <message>
        <source>sap for %1 more; the size of the pans is not known, so %2 is assumed for what they need</source>
        <translation>eau d'érable pour %1 encore; la taille des casseroles n'est pas connue, %2 est supposé</translation>
    </message>
    <message>
        <source>the last load is due in %1, the load after the next would come in %2</source>
        <translation>la dernière charge est pour dans %1, celle d'après la prochaine viendrait dans %2</translation>
    </message>
    <message>
        <source>%3: not one last digit moved for %1</source>
        <translation>%3 : pas un dernier chiffre n'a bougé depuis %1</translation>
    </message>
    <message>
        <source>%3: outside what can be</source>
        <translation>%3 : hors de ce qui est possible</translation>
    </message>
    <message>
        <source>%3: changed faster than it can</source>
        <translation>%3 : a changé plus vite que cela ne se peut</translation>
    </message>
    <message>
        <source>the clock of the computer was moved %1 ago</source>
        <translation>l'horloge de l'ordinateur a été changée il y a %1</translation>
    </message>
    <message>
        <source>what is entered and read cannot be kept</source>
        <translation>ce qui est saisi et lu ne peut pas être gardé</translation>
    </message>
    <message>
        <source>the last check is far from what was expected: it is kept, and counts when a second one agrees</source>
        <translation>la dernière vérification est loin de ce qui était attendu : elle est gardée, et compte quand une seconde la confirme</translation>
    </message>
    <message>
        <source>from %1 over boiling water to the target at %2</source>
        <translation>de %1 au-dessus de l'eau bouillante à la cible, à %2</translation>
    </message>
    <message>
        <source>by its checks the pan reads %1 too high, give or take %2</source>
        <translation>la casserole se lit %1 trop haut d'après ses vérifications, à %2 près</translation>
    </message>
    <message>
        <source>every %1, the rhythm of this fire and crew</source>
        <translation>toutes les %1, au rythme de ce feu et de cette équipe</translation>
    </message>
    <message>
        <source>this is no longer so; the alarm ends once that has lasted</source>
        <translation>ce n'est plus le cas, et l'alarme cesse quand cela aura duré</translation>
    </message>
    <message>
        <source>%1 left to the rim, and it calls at %2</source>
        <translation>%1 jusqu'au bord, et il appelle à %2</translation>
    </message>
    <message>
        <source>it fills, and runs over in %1</source>
        <translation>il se remplit et déborde dans %1</translation>
    </message>
    <message>
        <source>it stands over its rim by %1</source>
        <translation>il dépasse son bord de %1</translation>
    </message>
    <message>
        <source>the tank: %1</source>
        <translation>le bassin : %1</translation>
    </message>
    <message>
        <source>call %1</source>
        <translation>appelez %1</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>boiling water</source>
        <translation>eau bouillante</translation>
    </message>
    <message>
        <source>degrees over boiling water</source>
        <translation>degrés au-dessus de l'eau bouillante</translation>
    </message>
    <message>
        <source>the target</source>
        <translation>la cible</translation>
    </message>
    <message>
        <source>sugar at the draw-off</source>
        <translation>sucre à la coulée</translation>
    </message>
    <message>
        <source>time to the draw</source>
        <translation>temps jusqu'à la coulée</translation>
    </message>
    <message>
        <source>time to shut the draw</source>
        <translation>temps avant de fermer la coulée</translation>
    </message>
    <message>
        <source>the next firing</source>
        <translation>la prochaine charge</translation>
    </message>
    <message>
        <source>sap to keep back</source>
        <translation>eau d'érable à garder</translation>
    </message>
    <message>
        <source>the last load</source>
        <translation>la dernière charge</translation>
    </message>
    <message>
        <source>what boils off</source>
        <translation>ce qui s'évapore</translation>
    </message>
    <message>
        <source>how long the sap lasts</source>
        <translation>combien de temps dure l'eau d'érable</translation>
    </message>
    <message>
        <source>share of the wood's heat</source>
        <translation>part de la chaleur du bois</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi?</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>Why?</source>
        <translation>Pourquoi?</translation>
    </message>
    <message>
        <source>why an alarm is on, a reading is in doubt, a figure is what it is</source>
        <translation>pourquoi une alarme est là, une lecture est en doute, un chiffre est ce qu'il est</translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>The syrup pan stands far over its running depth: a float stuck open?</source>
        <translation>La casserole à sirop est bien au-dessus de sa hauteur de marche : un flotteur resté ouvert?</translation>
    </message>
</context>
<context>
    <name>ReadingWords</name>
    <message>
        <source>over 78 brix: sweeter than the tables reach</source>
        <translation>plus de 78 brix : plus sucré que les tables ne vont</translation>
    </message>
    <message>
        <source>far over its running depth: a float stuck open?</source>
        <translation>bien au-dessus de sa hauteur de marche : un flotteur resté ouvert?</translation>
    </message>
</context>
</TS>
