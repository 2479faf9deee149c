<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>reckon</name>
    <message>
        <source>Tonight</source>
        <translation>Ce soir</translation>
    </message>
    <message>
        <source>%1 h, %2 to %3 h</source>
        <translation>%1 h, de %2 à %3 h</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 L, %2 to %3 L (%4 gal, %5 to %6 gal)</source>
        <translation>%1 L, de %2 à %3 L (%4 gal, de %5 à %6 gal)</translation>
    </message>
    <message>
        <source>%1 cord, %2 to %3</source>
        <translation>%1 corde, de %2 à %3</translation>
    </message>
    <message>
        <source>%1 cord</source>
        <translation>%1 corde</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>all of the boil</source>
        <translation>toute la bouillée</translation>
    </message>
    <message>
        <source>that is no time of day. Write hours and minutes, as in %1.</source>
        <translation>ce n'est pas une heure. Écrire heures et minutes, comme %1.</translation>
    </message>
    <message>
        <source>syrup is meant here, not sap, as in %1.</source>
        <translation>il s'agit ici du sirop, non de l'eau d'érable, comme %1.</translation>
    </message>
    <message>
        <source>no sap stands anywhere. Tell what does, as in %1.</source>
        <translation>il n'y a d'eau d'érable nulle part. Dire ce qu'il y a, comme %1.</translation>
    </message>
    <message>
        <source>nothing is known of this rig yet: no night with a fire and a tank that was read. Tell what it boils off, as in %1.</source>
        <translation>on ne sait encore rien de cet évaporateur : aucune nuit avec un feu et un bassin lu. Dire ce qu'il évapore, comme %1.</translation>
    </message>
    <message>
        <source>all of it must cover the pans while the fire burns out: about %1 L. Do not light for it.</source>
        <translation>il faut le tout pour couvrir les casseroles pendant que le feu s'éteint : environ %1 L. Ne pas allumer pour cela.</translation>
    </message>
    <message>
        <source>Learned from %1 nights of this rig: %2 L/h of water (%3 L/h to %4 L/h), and %5 min to warm up.</source>
        <translation>Appris de %1 nuits de cet évaporateur : %2 L/h d'eau (de %3 L/h à %4 L/h), et %5 min pour chauffer.</translation>
    </message>
    <message>
        <source>By the rate that was told, %1 L/h of water, and half an hour to warm up; no night of this rig was learned from.</source>
        <translation>D'après le débit donné, %1 L/h d'eau, et une demi-heure pour chauffer ; rien n'a été appris des nuits de cet évaporateur.</translation>
    </message>
    <message>
        <source>%1 L stand with %2 kg of sugar. %3 L are kept back to cover the pans; %4 L of water must go.</source>
        <translation>%1 L attendent avec %2 kg de sucre. %3 L sont gardés pour couvrir les casseroles ; %4 L d'eau doivent partir.</translation>
    </message>
    <message>
        <source>Lit at %1: last load about %2 (%3 to %4), cold about %5 (%6 to %7).</source>
        <translation>Allumé à %1 : dernière charge vers %2 (de %3 à %4), froid vers %5 (de %6 à %7).</translation>
    </message>
    <message>
        <source>All of it, cold by %1: light by %2 (nine nights in ten), by %3 (five in ten).</source>
        <translation>Le tout, froid à %1 : allumer avant %2 (neuf nuits sur dix), avant %3 (cinq sur dix).</translation>
    </message>
    <message>
        <source>what stands is a volume and its sugar with @ between them, as in %1.</source>
        <translation>ce qui attend est un volume et son sucre, séparés par @, comme %1.</translation>
    </message>
    <message>
        <source>To the last load</source>
        <translation>Jusqu'à la dernière charge</translation>
    </message>
    <message>
        <source>To a cold fire</source>
        <translation>Jusqu'au feu éteint</translation>
    </message>
    <message>
        <source>Syrup to come</source>
        <translation>Sirop à venir</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>Sap that stands</source>
        <translation>Eau d'érable en attente</translation>
    </message>
    <message>
        <source>Sugar in it</source>
        <translation>Sucre qu'elle contient</translation>
    </message>
    <message>
        <source>Water to boil off</source>
        <translation>Eau à évaporer</translation>
    </message>
    <message>
        <source>Nights learned from</source>
        <translation>Nuits dont on a appris</translation>
    </message>
    <message>
        <source>Of ten such nights one comes under the first figure of a range, one over its last. Sap that still runs in, a late thaw or other wood is not in it.</source>
        <translation>Sur dix nuits pareilles, une passe sous le premier chiffre d'un intervalle, une au-dessus du dernier. L'eau qui coule encore, un dégel tardif ou un autre bois n'y sont pas.</translation>
    </message>
    <message>
        <source>Stay until the fire is dead and the pans are covered; look again an hour later. Tired hands burn pans: plan to be in bed.</source>
        <translation>Rester jusqu'à ce que le feu soit mort et les casseroles couvertes ; revenir voir une heure plus tard. Des mains fatiguées brûlent des casseroles : prévoir d'être au lit.</translation>
    </message>
    <message>
        <source>May be started</source>
        <translation>On peut en commencer</translation>
    </message>
    <message>
        <source>In five nights of ten</source>
        <translation>Cinq nuits sur dix</translation>
    </message>
    <message>
        <source>Lit at %1, all of it may be started and the fire is cold by %2 (nine nights in ten).</source>
        <translation>Allumé à %1, on peut tout commencer et le feu est froid à %2 (neuf nuits sur dix).</translation>
    </message>
    <message>
        <source>Lit at %1 and cold by %2: start %3 L of it (nine nights in ten), %4 L (five in ten). Leave the coldest and the youngest.</source>
        <translation>Allumé à %1 et froid à %2 : en commencer %3 L (neuf nuits sur dix), %4 L (cinq sur dix). Laisser le plus froid et le plus frais.</translation>
    </message>
    <message>
        <source>Through the concentrator</source>
        <translation>Par le concentrateur</translation>
    </message>
    <message>
        <source>It saves</source>
        <translation>Il épargne</translation>
    </message>
    <message>
        <source>And of wood</source>
        <translation>Et en bois</translation>
    </message>
    <message>
        <source>Concentrated to %1 °Brix first: %2 L of water less to boil off, last load after %3 h instead of %4 h. Concentrate spoils sooner than sap.</source>
        <translation>Concentrée d'abord à %1 °Brix : %2 L d'eau de moins à évaporer, dernière charge après %3 h au lieu de %4 h. Le concentré se gâte plus vite que l'eau d'érable.</translation>
    </message>
    <message>
        <source>Concentrated to %1 °Brix, no more is left than covers the pans.</source>
        <translation>Concentrée à %1 °Brix, il n'en reste pas plus qu'il n'en faut pour couvrir les casseroles.</translation>
    </message>
</context>
<context>
    <name>Reckoner</name>
    <message>
        <source>Sap that stands</source>
        <translation>Eau d'érable en attente</translation>
    </message>
    <message>
        <source>Lit at</source>
        <translation>Allumé à</translation>
    </message>
    <message>
        <source>Cold by</source>
        <translation>Froid à</translation>
    </message>
    <message>
        <source>Sap to keep back</source>
        <translation>Eau d'érable à garder</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>its temperature, if taken</source>
        <translation>sa température, si prise</translation>
    </message>
    <message>
        <source>sap scale made for</source>
        <translation>échelle à eau faite pour</translation>
    </message>
    <message>
        <source>as read</source>
        <translation>comme lu</translation>
    </message>
</context>
</TS>
