<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Route</name>
    <message>
        <source>stop</source>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>into</source>
        <translation>dans</translation>
    </message>
    <message>
        <source>last time</source>
        <translation>dernière fois</translation>
    </message>
    <message>
        <source>sap, %1</source>
        <translation>eau, %1</translation>
    </message>
    <message>
        <source>sugar, °Brix</source>
        <translation>sucre, °Brix</translation>
    </message>
    <message>
        <source>sap at, %1</source>
        <translation>eau à, %1</translation>
    </message>
    <message>
        <source>stop %1 of %2: %3</source>
        <translation>arrêt %1 de %2 : %3</translation>
    </message>
    <message>
        <source>The last time %1 at %2. Enter goes on to the next stop.</source>
        <translation>La dernière fois %1 à %2. Entrée passe à l'arrêt suivant.</translation>
    </message>
    <message>
        <source>The last time %1. Enter goes on to the next stop.</source>
        <translation>La dernière fois %1. Entrée passe à l'arrêt suivant.</translation>
    </message>
    <message>
        <source>Gathering, %1</source>
        <translation>Récolte, %1</translation>
    </message>
    <message>
        <source>Who: ____________   Hydrometer made for: ______   Cloudy or ropy sap: write it beside the stop.</source>
        <translation>Qui : ____________   Densimètre fait pour : ______   Eau trouble ou filante : l'écrire à côté de l'arrêt.</translation>
    </message>
    <message>
        <source>, 1 tap</source>
        <translation>, 1 entaille</translation>
    </message>
    <message numerus="yes">
        <source>, %n taps</source>
        <translation><numerusform>, %n entaille</numerusform><numerusform>, %n entailles</numerusform></translation>
    </message>
</context>
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
        <translation>ce n'est pas une heure. Écrivez heures et minutes, comme %1.</translation>
    </message>
    <message>
        <source>syrup is meant here, not sap, as in %1.</source>
        <translation>il s'agit ici du sirop, non de l'eau d'érable, comme %1.</translation>
    </message>
    <message>
        <source>there is no sap anywhere. Say what there is, as in %1.</source>
        <translation>il n'y a d'eau d'érable nulle part. Dites ce qu'il y a, comme %1.</translation>
    </message>
    <message>
        <source>nothing is known of this rig yet: no night with a fire and a tank that was read. Say what it boils off, as in %1.</source>
        <translation>on ne sait encore rien de cet évaporateur : aucune nuit avec un feu et un bassin lu. Dites ce qu'il évapore, comme %1.</translation>
    </message>
    <message>
        <source>all of it must cover the pans while the fire burns out: about %1 L. Do not light for it.</source>
        <translation>il faut le tout pour couvrir les casseroles pendant que le feu s'éteint : environ %1 L. N'allumez pas pour cela.</translation>
    </message>
    <message>
        <source>Learned from %1 nights of this rig: %2 L/h of water (%3 L/h to %4 L/h), and %5 min to warm up.</source>
        <translation>Appris de %1 nuits de cet évaporateur : %2 L/h d'eau (de %3 L/h à %4 L/h), et %5 min pour chauffer.</translation>
    </message>
    <message>
        <source>By the rate given, %1 L/h of water, and half an hour to warm up; no night of this rig was learned from.</source>
        <translation>D'après le débit donné, %1 L/h d'eau, et une demi-heure pour chauffer; rien n'a été appris des nuits de cet évaporateur.</translation>
    </message>
    <message>
        <source>%1 L are on hand with %2 kg of sugar. %3 L are kept back to cover the pans; %4 L of water must go.</source>
        <translation>%1 L sont en réserve avec %2 kg de sucre. %3 L sont gardés pour couvrir les casseroles; %4 L d'eau doivent partir.</translation>
    </message>
    <message>
        <source>Lit at %1: last load about %2 (%3 to %4), cold about %5 (%6 to %7).</source>
        <translation>Allumé à %1 : dernière charge vers %2 (de %3 à %4), froid vers %5 (de %6 à %7).</translation>
    </message>
    <message>
        <source>All of it, cold by %1: light by %2 (nine nights in ten), by %3 (five in ten).</source>
        <translation>Le tout, froid à %1 : allumez avant %2 (neuf nuits sur dix), avant %3 (cinq sur dix).</translation>
    </message>
    <message>
        <source>what stands is a volume and its sugar with @ between them, as in %1.</source>
        <translation>l'eau en réserve est un volume et son sucre, séparés par @, comme %1.</translation>
    </message>
    <message>
        <source>To the last load</source>
        <translation>Jusqu'à la dernière charge</translation>
    </message>
    <message>
        <source>To the first draw</source>
        <translation>Jusqu'à la première coulée</translation>
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
        <source>Sap on hand</source>
        <translation>Eau d'érable en réserve</translation>
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
        <translation>Restez jusqu'à ce que le feu soit mort et les casseroles couvertes; revenez une heure plus tard. Des mains fatiguées brûlent des casseroles : prévoyez d'être au lit.</translation>
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
        <translation>Allumé à %1 et froid à %2 : commencez-en %3 L (neuf nuits sur dix), %4 L (cinq sur dix). Laissez le plus froid et le plus frais.</translation>
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
        <translation>Concentrée d'abord à %1 °Brix : %2 L d'eau de moins à évaporer, dernière charge après %3 h au lieu de %4 h. Le concentré se gâte plus vite que l'eau d'érable.</translation>
    </message>
    <message>
        <source>Concentrated to %1 °Brix, no more is left than covers the pans.</source>
        <translation>Concentrée à %1 °Brix, il n'en reste pas plus qu'il n'en faut pour couvrir les casseroles.</translation>
    </message>
</context>
<context>
    <name>Reckoner</name>
    <message>
        <source>Sap on hand</source>
        <translation>Eau d'érable en réserve</translation>
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
    <name>panside::Desk</name>
    <message>
        <source>Gathered</source>
        <translation>Récolté</translation>
    </message>
    <message>
        <source>Pumped</source>
        <translation>Pompé</translation>
    </message>
    <message>
        <source>Dipped</source>
        <translation>Jaugé</translation>
    </message>
    <message>
        <source>By route</source>
        <translation>Par tournée</translation>
    </message>
    <message>
        <source>Route sheet</source>
        <translation>Feuille de tournée</translation>
    </message>
    <message>
        <source>Concentrated</source>
        <translation>Concentré</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdu</translation>
    </message>
    <message>
        <source>Pans emptied</source>
        <translation>Casseroles vidées</translation>
    </message>
    <message>
        <source>A tank</source>
        <translation>Un bassin</translation>
    </message>
    <message>
        <source>Lit earlier</source>
        <translation>Allumé plus tôt</translation>
    </message>
    <message>
        <source>Lit later</source>
        <translation>Allumé plus tard</translation>
    </message>
    <message>
        <source>Cold earlier</source>
        <translation>Froid plus tôt</translation>
    </message>
    <message>
        <source>Cold later</source>
        <translation>Froid plus tard</translation>
    </message>
    <message>
        <source>Concentrated first</source>
        <translation>Concentré d'abord</translation>
    </message>
    <message>
        <source>Tanks</source>
        <translation>Bassins</translation>
    </message>
</context>
<context>
    <name>Account</name>
    <message>
        <source>At the mean of what was sold, %1 a %2.</source>
        <translation>À la moyenne des ventes, %1 par %2.</translation>
    </message>
    <message>
        <source>Price list by weight</source>
        <translation>Prix au poids</translation>
    </message>
    <message>
        <source>holds %1</source>
        <translation>contient %1</translation>
    </message>
    <message>
        <source>Concentrator</source>
        <translation>Concentrateur</translation>
    </message>
    <message>
        <source>%1 at %2 from %3 at %4</source>
        <translation>%1 à %2, de %3 à %4</translation>
    </message>
    <message>
        <source>What that saves the boil is not known: no night with the fire entered and the tank read.</source>
        <translation>Ce que cela épargne au feu n'est pas connu : aucune nuit avec le feu noté et le bassin lu.</translation>
    </message>
    <message>
        <source>It saves the boil %1 of fire (%2 to %3).</source>
        <translation>Cela épargne %1 de feu (%2 à %3).</translation>
    </message>
    <message>
        <source>And about %1 of a full cord.</source>
        <translation>Et environ %1 de corde pleine.</translation>
    </message>
    <message>
        <source>Washed: %1.</source>
        <translation>Lavé : %1.</translation>
    </message>
    <message>
        <source>%1 of water out</source>
        <translation>%1 d'eau retirée</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Coulées d'eau</translation>
    </message>
    <message>
        <source>%1 a tap</source>
        <translation>%1 par entaille</translation>
    </message>
    <message>
        <source>taps not entered</source>
        <translation>entailles non entrées</translation>
    </message>
    <message>
        <source>%1: sap for %2 of syrup.</source>
        <translation>%1 : de l'eau pour %2 de sirop.</translation>
    </message>
    <message>
        <source>Not all of its sugar was measured: 2 °Brix is assumed there.</source>
        <translation>Tout son sucre n'a pas été mesuré : 2 °Brix y sont supposés.</translation>
    </message>
    <message>
        <source>a tap, all runs with their taps entered</source>
        <translation>par entaille, toutes les coulées d'eau dont les entailles sont entrées</translation>
    </message>
    <message>
        <source>Nights</source>
        <translation>Nuits</translation>
    </message>
    <message>
        <source>%1 cord, %2 a cord</source>
        <translation>%1 corde, %2 par corde</translation>
    </message>
    <message>
        <source>wood or draws not all known</source>
        <translation>bois ou coulées pas tous connus</translation>
    </message>
    <message>
        <source>At the mean of what was sold that is %1 by price.</source>
        <translation>Au prix moyen de ce qui a été vendu, cela fait %1.</translation>
    </message>
    <message>
        <source>%1: %2 of syrup%3.</source>
        <translation>%1 : %2 de sirop%3.</translation>
    </message>
    <message>
        <source> in %1 of fire</source>
        <translation> en %1 de feu</translation>
    </message>
    <message>
        <source>Heavy draws</source>
        <translation>Coulées trop lourdes</translation>
    </message>
    <message>
        <source>given away</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>draws surely over %3: %1 of %2</source>
        <translation>coulées sûrement au-dessus de %3 : %1 sur %2</translation>
    </message>
    <message>
        <source>Heavy draws gave away %1 of syrup.</source>
        <translation>Les coulées trop lourdes ont donné %1 de sirop de trop.</translation>
    </message>
    <message>
        <source>That much more there would be at %1. Draws that are not surely over it do not count.</source>
        <translation>Il y en aurait autant de plus à %1. Les coulées qui ne sont pas sûrement au-dessus ne comptent pas.</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>En stock</translation>
    </message>
    <message>
        <source>not graded</source>
        <translation>non classé</translation>
    </message>
    <message>
        <source>, %1 of them held</source>
        <translation>, dont %1 retenus</translation>
    </message>
    <message>
        <source>Sap bought and sold</source>
        <translation>Eau achetée et vendue</translation>
    </message>
    <message>
        <source>bought from %1, %2</source>
        <translation>achetée de %1, %2</translation>
    </message>
    <message>
        <source>sold to %1, %2</source>
        <translation>vendue à %1, %2</translation>
    </message>
    <message>
        <source>%1, for %2 of syrup</source>
        <translation>%1, pour %2 de sirop</translation>
    </message>
    <message>
        <source>By the revised rule (University of Vermont) at 66.9 °Brix.</source>
        <translation>Par la règle révisée (Université du Vermont) à 66,9 °Brix.</translation>
    </message>
    <message>
        <source>From the first of %1 nights to the last it changed by %2, surely between %3 and %4.</source>
        <translation>De la première à la dernière de %1 nuits, il a changé de %2, sûrement entre %3 et %4.</translation>
    </message>
    <message>
        <source>water by the weight of the wood</source>
        <translation>eau selon le poids du bois</translation>
    </message>
    <message>
        <source>too little to tell</source>
        <translation>trop peu pour le dire</translation>
    </message>
    <message>
        <source>1 night of like wood</source>
        <translation>1 nuit du même bois</translation>
    </message>
    <message numerus="yes">
        <source>%n nights of like wood</source>
        <translation><numerusform>%n nuit du même bois</numerusform><numerusform>%n nuits du même bois</numerusform></translation>
    </message>
    <message>
        <source>Too little to tell whether the wood gives less than it did.</source>
        <translation>Trop peu pour dire si le bois donne moins qu'avant.</translation>
    </message>
    <message>
        <source>Five nights of one wood, weighed, with the tank read, are the least.</source>
        <translation>Il faut au moins cinq nuits d'un même bois, pesé, avec le bassin lu.</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>stable</translation>
    </message>
    <message>
        <source>The same wood boils off as much as it did.</source>
        <translation>Le même bois évapore autant qu'avant.</translation>
    </message>
    <message>
        <source>The same wood boils off less each night: flues or grate? Brush them and see.</source>
        <translation>Le même bois évapore moins chaque nuit : plis ou grille? Brossez et voyez.</translation>
    </message>
    <message>
        <source>Only cold, and with the ash out.</source>
        <translation>Seulement à froid, et la cendre sortie.</translation>
    </message>
    <message>
        <source>The same wood boils off more than it did: drier wood, or cleaner flues.</source>
        <translation>Le même bois évapore plus qu'avant : bois plus sec, ou plis plus propres.</translation>
    </message>
    <message>
        <source>hours of fire to a switch of sides</source>
        <translation>heures de feu par changement de côté</translation>
    </message>
    <message>
        <source>1 switch entered</source>
        <translation>1 changement entré</translation>
    </message>
    <message numerus="yes">
        <source>%n switches entered</source>
        <translation><numerusform>%n changement entré</numerusform><numerusform>%n changements entrés</numerusform></translation>
    </message>
    <message>
        <source>Too little to tell after how many hours the sides are switched.</source>
        <translation>Trop peu pour dire après combien d'heures on change de côté.</translation>
    </message>
    <message>
        <source>Press the key for a swapped pan each time: three are enough to tell.</source>
        <translation>Appuyez chaque fois sur la touche du changement de casserole : trois suffisent.</translation>
    </message>
    <message>
        <source>%1 of fire since the last switch, usually %2: look for niter.</source>
        <translation>%1 de feu depuis le dernier changement, d'ordinaire %2 : cherchez la pierre de sucre.</translation>
    </message>
    <message>
        <source>The sides are switched every %1 of fire.</source>
        <translation>On change de côté toutes les %1 de feu.</translation>
    </message>
    <message>
        <source>Scale under the syrup insulates and scorches.</source>
        <translation>La pierre de sucre sous le sirop isole et brûle.</translation>
    </message>
    <message>
        <source>hydrometer against physics</source>
        <translation>densimètre contre physique</translation>
    </message>
    <message>
        <source>1 checked draw</source>
        <translation>1 coulée vérifiée</translation>
    </message>
    <message numerus="yes">
        <source>%n checked draws</source>
        <translation><numerusform>%n coulée vérifiée</numerusform><numerusform>%n coulées vérifiées</numerusform></translation>
    </message>
    <message>
        <source>one pan or side</source>
        <translation>une casserole ou un côté</translation>
    </message>
    <message numerus="yes">
        <source>%n pans or sides</source>
        <translation><numerusform>%n casserole ou côté</numerusform><numerusform>%n casseroles ou côtés</numerusform></translation>
    </message>
    <message>
        <source>nothing to tell</source>
        <translation>rien à dire</translation>
    </message>
    <message>
        <source>Hydrometer and physics do not surely differ by the same amount on every pan.</source>
        <translation>Densimètre et physique ne diffèrent pas sûrement d'autant sur chaque casserole.</translation>
    </message>
    <message>
        <source>Six checked draws from three pans or sides are the least.</source>
        <translation>Il faut au moins six coulées vérifiées de trois casseroles ou côtés.</translation>
    </message>
    <message>
        <source>Too little to tell whether hydrometer and physics differ.</source>
        <translation>Trop peu pour dire si densimètre et physique diffèrent.</translation>
    </message>
    <message>
        <source>%1 apart on average, ± %2.</source>
        <translation>Écart moyen de %1, ± %2.</translation>
    </message>
    <message>
        <source>Between two switches it was %1 to %2.</source>
        <translation>Entre deux changements : de %1 à %2.</translation>
    </message>
    <message>
        <source>Hydrometer and physics differ by the same %1 on every pan: it may be the hydrometer. Try another.</source>
        <translation>Densimètre et physique diffèrent des mêmes %1 sur chaque casserole : c'est peut-être le densimètre. Essayez-en un autre.</translation>
    </message>
    <message>
        <source>About %1 °Brix in the hydrometer, ± %2. A probe that reads wrong looks the same: boil water and see.</source>
        <translation>Environ %1 °Brix au densimètre, ± %2. Une sonde fausse donne la même chose : faites bouillir de l'eau et voyez.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>by</source>
        <translation>d'après</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>The book is still empty.</source>
        <translation>Le cahier est encore vide.</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>based on</source>
        <translation>d'après</translation>
    </message>
</context>
<context>
    <name>panside::FlowScreen</name>
    <message>
        <source>There is no sugar in the book yet.</source>
        <translation>Il n'y a encore aucun sucre au cahier.</translation>
    </message>
</context>
<context>
    <name>SugarFlow</name>
    <message>
        <source>sap of the bush</source>
        <translation>eau de l'érablière</translation>
    </message>
    <message>
        <source>sap bought</source>
        <translation>eau achetée</translation>
    </message>
    <message>
        <source>syrup bought</source>
        <translation>sirop acheté</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non entré</translation>
    </message>
    <message>
        <source>sold and shipped</source>
        <translation>vendu et expédié</translation>
    </message>
    <message>
        <source>bottled, here</source>
        <translation>embouteillé, ici</translation>
    </message>
    <message>
        <source>in pails and drums</source>
        <translation>en seaux et barils</translation>
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
        <source>in the tanks</source>
        <translation>dans les bassins</translation>
    </message>
    <message>
        <source>does not close</source>
        <translation>écart inexpliqué</translation>
    </message>
    <message>
        <source>%1 of sugar came in; %2 was drawn as syrup.</source>
        <translation>%1 de sucre sont entrés; %2 sont sortis en sirop.</translation>
    </message>
    <message>
        <source>%1 more is found than came in. It has a line of its own and is not spread over the others. The measurements alone may be off by %2.</source>
        <translation>On trouve %1 de plus qu'il n'en est entré. Cela a sa ligne à part et n'est pas réparti sur les autres. Les mesures seules peuvent se tromper de %2.</translation>
    </message>
    <message>
        <source>%1 is missing. It has a line of its own and is not spread over the others. The measurements alone may be off by %2.</source>
        <translation>Il manque %1. Cela a sa ligne à part et n'est pas réparti sur les autres. Les mesures seules peuvent se tromper de %2.</translation>
    </message>
</context>
<context>
    <name>Losses</name>
    <message>
        <source>sour</source>
        <translation>sûr</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>renversé</translation>
    </message>
    <message>
        <source>overflow</source>
        <translation>débordé</translation>
    </message>
    <message>
        <source>tasting</source>
        <translation>dégustation</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>échantillon</translation>
    </message>
    <message>
        <source>scorched</source>
        <translation>brûlé</translation>
    </message>
    <message>
        <source>given</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>poured off</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>pans emptied</source>
        <translation>casseroles vidées</translation>
    </message>
    <message>
        <source>press heel</source>
        <translation>reste du filtre-presse</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>cassé</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation>détruit</translation>
    </message>
    <message>
        <source>no cause told</source>
        <translation>sans cause dite</translation>
    </message>
</context>
<context>
    <name>Tanks</name>
    <message>
        <source>the only one</source>
        <translation>le seul</translation>
    </message>
    <message>
        <source>concentrate before sap</source>
        <translation>le concentré avant l'eau</translation>
    </message>
    <message>
        <source>warm before cold</source>
        <translation>le chaud avant le froid</translation>
    </message>
    <message>
        <source>old before new</source>
        <translation>le vieux avant le neuf</translation>
    </message>
    <message>
        <source>no difference</source>
        <translation>sans différence</translation>
    </message>
    <message>
        <source>ropy: look and smell before it is boiled</source>
        <translation>filante : regardez et sentez avant de bouillir</translation>
    </message>
    <message>
        <source>size not entered</source>
        <translation>taille non entrée</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 de trop</translation>
    </message>
    <message>
        <source>full in %1</source>
        <translation>plein dans %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
    <message>
        <source>%1: ropy sap. Look and smell before any of it is boiled.</source>
        <translation>%1 : eau filante. Regardez et sentez avant d'en bouillir.</translation>
    </message>
    <message>
        <source>%1: over its rim by the book. Dip it.</source>
        <translation>%1 : au-dessus du bord d'après le cahier. Jaugez-le.</translation>
    </message>
    <message>
        <source>Boil %1 first: %2. %3 at %4.</source>
        <translation>Bouillez %1 d'abord : %2. %3 à %4.</translation>
    </message>
    <message>
        <source>No difference which is boiled first. %1: %2 at %3.</source>
        <translation>Peu importe par quoi commencer. %1 : %2 à %3.</translation>
    </message>
    <message>
        <source>%1: %2 at %3. The oldest part came in %4 ago.</source>
        <translation>%1 : %2 à %3. Le plus vieux est entré il y a %4.</translation>
    </message>
    <message>
        <source>nobody knows when</source>
        <translation>on ne sait quand</translation>
    </message>
    <message>
        <source>Its temperature was not entered: how warm it is is not known.</source>
        <translation>Sa température n'a pas été entrée : sa chaleur est inconnue.</translation>
    </message>
    <message>
        <source>Coldest %1, warmest %2 as entered; now %3, entered %4 ago.</source>
        <translation>Au plus froid %1, au plus chaud %2 selon les entrées; maintenant %3, entré il y a %4.</translation>
    </message>
    <message>
        <source>At the freezing point: ice holds little sugar, so the liquid reads sweeter. How much is ice cannot be told from here.</source>
        <translation>Au point de congélation : la glace tient peu de sucre, le liquide se lit donc plus sucré. On ne peut dire d'ici combien est en glace.</translation>
    </message>
    <message>
        <source>Over 40 °F for %1, over 50 °F for %2, as far as it was entered.</source>
        <translation>Au-dessus de 40 °F pendant %1, de 50 °F pendant %2, selon les entrées.</translation>
    </message>
    <message>
        <source>Over 4 °C for %1, over 10 °C for %2, as far as it was entered.</source>
        <translation>Au-dessus de 4 °C pendant %1, de 10 °C pendant %2, selon les entrées.</translation>
    </message>
    <message>
        <source>Limit for concentrate over 4 °Brix: 41 °F (Wisconsin, as quoted).</source>
        <translation>Limite du concentré au-dessus de 4 °Brix : 41 °F (Wisconsin, tel que cité).</translation>
    </message>
    <message>
        <source>Limit for concentrate over 4 °Brix: 5 °C (Wisconsin, as quoted).</source>
        <translation>Limite du concentré au-dessus de 4 °Brix : 5 °C (Wisconsin, tel que cité).</translation>
    </message>
    <message>
        <source>Under 4 °C bacteria grow slowly, over 10 °C fast (Ohio State University, 2020).</source>
        <translation>Sous 4 °C les bactéries croissent lentement, au-dessus de 10 °C vite (Ohio State University, 2020).</translation>
    </message>
    <message>
        <source>Never over 40 °F, as far as it was entered.</source>
        <translation>Jamais au-dessus de 40 °F, selon les entrées.</translation>
    </message>
    <message>
        <source>Never over 4 °C, as far as it was entered.</source>
        <translation>Jamais au-dessus de 4 °C, selon les entrées.</translation>
    </message>
    <message>
        <source>Over 40 °F for %1, never over 50 °F, as far as it was entered.</source>
        <translation>Au-dessus de 40 °F pendant %1, jamais de 50 °F, selon les entrées.</translation>
    </message>
    <message>
        <source>Over 4 °C for %1, never over 10 °C, as far as it was entered.</source>
        <translation>Au-dessus de 4 °C pendant %1, jamais de 10 °C, selon les entrées.</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Under 40 °F bacteria grow slowly, over 50 °F fast (Ohio State University, 2020).</source>
        <translation>Sous 40 °F les bactéries croissent lentement, au-dessus de 50 °F vite (Ohio State University, 2020).</translation>
    </message>
    <message>
        <source>Nose and eye decide.</source>
        <translation>Le nez et l'œil décident.</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>bassin</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>sucre</translation>
    </message>
    <message>
        <source>oldest</source>
        <translation>le plus vieux</translation>
    </message>
    <message>
        <source>warmest</source>
        <translation>au plus chaud</translation>
    </message>
    <message>
        <source>over 50 °F</source>
        <translation>plus de 50 °F</translation>
    </message>
    <message>
        <source>to the rim</source>
        <translation>jusqu'au bord</translation>
    </message>
    <message>
        <source>why in this order</source>
        <translation>pourquoi cet ordre</translation>
    </message>
    <message>
        <source>over 10 °C</source>
        <translation>plus de 10 °C</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>There is no sap in any tank. Enter what was gathered.</source>
        <translation>Il n'y a d'eau dans aucun bassin. Entrez ce qui a été récolté.</translation>
    </message>
    <message>
        <source>Not all of its sugar was measured: 2 °Brix is assumed for the rest.</source>
        <translation>Tout son sucre n'a pas été mesuré : 2 °Brix sont supposés pour le reste.</translation>
    </message>
    <message>
        <source>the pans</source>
        <translation>les casseroles</translation>
    </message>
    <message>
        <source>boil or drain them</source>
        <translation>les faire bouillir ou les vider</translation>
    </message>
    <message>
        <source>The pans hold sweet since %1; the book does not know how much.</source>
        <translation>Les casseroles contiennent du réduit depuis %1; le cahier ne dit pas combien.</translation>
    </message>
    <message>
        <source>The pans hold about %1 of sugar since %2, ± %3: boil or drain them.</source>
        <translation>Les casseroles contiennent environ %1 de sucre depuis %2, ± %3 : faites-les bouillir ou videz-les.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd'hui</translation>
    </message>
    <message>
        <source>Sweet in the pans spoils in a warm spell, and freezes only to slush in a cold one. If you drain it into numbered pails, enter the pails' names.</source>
        <translation>Le réduit dans les casseroles se gâte par temps doux, et ne fait que de la bouillie par temps froid. Si vous le videz dans des seaux numérotés, entrez le nom des seaux.</translation>
    </message>
</context>
<context>
    <name>TonightPage</name>
    <message>
        <source>first draw</source>
        <translation>première coulée</translation>
    </message>
    <message>
        <source>The first draw comes about %1.</source>
        <translation>La première coulée vient vers %1.</translation>
    </message>
    <message>
        <source>When the pans hold as much sugar as at the first draws before.</source>
        <translation>Quand les casseroles tiennent autant de sucre qu'aux premières coulées d'avant.</translation>
    </message>
    <message>
        <source>There is no sap in any tank. Enter what was gathered.</source>
        <translation>Il n'y a d'eau dans aucun bassin. Entrez ce qui a été récolté.</translation>
    </message>
    <message>
        <source>Nothing is known of this rig yet. It takes one night with the fire entered and the tank read.</source>
        <translation>On ne sait encore rien de cet évaporateur. Il faut une nuit avec le feu entré et le bassin lu.</translation>
    </message>
    <message>
        <source>All the sap on hand is needed to cover the pans while the fire burns out. Do not light for it.</source>
        <translation>Toute l'eau en réserve est nécessaire pour couvrir les casseroles pendant que le feu s'éteint. N'allumez pas pour cela.</translation>
    </message>
    <message>
        <source>Nights of this rig learned from: %1. It boils off %2 of water (%3 to %4) and takes %5 to warm up. Of ten such nights one ends before the range, one after. Sap that still runs in or other wood is not in it.</source>
        <translation>Nuits de cet évaporateur dont cela est appris : %1. Il évapore %2 d'eau (de %3 à %4) et met %5 à chauffer. Sur dix nuits pareilles, une finit plus tôt que cela, une plus tard. Ni l'eau qui coule encore ni un autre bois n'y sont comptés.</translation>
    </message>
    <message>
        <source>concentrated to %1</source>
        <translation>concentrée à %1</translation>
    </message>
    <message>
        <source>no boil</source>
        <translation>pas de bouillée</translation>
    </message>
    <message>
        <source>Concentrated to %1, no more is left than covers the pans.</source>
        <translation>Concentrée à %1, il n'en reste pas plus qu'il n'en faut pour couvrir les casseroles.</translation>
    </message>
    <message>
        <source>Concentrated to %1 first, the boil is %2 shorter.</source>
        <translation>Concentrée d'abord à %1, la bouillée est plus courte de %2.</translation>
    </message>
    <message>
        <source>It saves %1 cord. The sweeter the feed, the more often the draws come. Concentrate spoils sooner than sap.</source>
        <translation>Cela épargne %1 corde. Plus l'eau est sucrée, plus les coulées viennent souvent. Le concentré se gâte plus vite que l'eau.</translation>
    </message>
    <message>
        <source>Concentrate spoils sooner than sap: boil it at once.</source>
        <translation>Le concentré se gâte plus vite que l'eau : bouillez-le aussitôt.</translation>
    </message>
    <message>
        <source>concentrated to %1: saves</source>
        <translation>concentrée à %1 : épargne</translation>
    </message>
    <message>
        <source>lit at %1</source>
        <translation>allumé à %1</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>one in ten under</source>
        <translation>1 sur 10 au-dessous</translation>
    </message>
    <message>
        <source>one in ten over</source>
        <translation>1 sur 10 au-dessus</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>last load</source>
        <translation>dernière charge</translation>
    </message>
    <message>
        <source>Lit at %1, the last load goes in about %2; the fire is cold about %3.</source>
        <translation>Allumé à %1, la dernière charge entre vers %2; le feu est froid vers %3.</translation>
    </message>
    <message>
        <source>cold fire</source>
        <translation>feu froid</translation>
    </message>
    <message>
        <source>The fire is cold about %1. Stay until the pans are covered; look again an hour later.</source>
        <translation>Le feu est froid vers %1. Restez jusqu'à ce que les casseroles soient couvertes; revenez une heure plus tard.</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>About %1 of syrup, from %2 of sap.</source>
        <translation>Environ %1 de sirop, de %2 d'eau.</translation>
    </message>
    <message>
        <source>By the sugar on hand and what came of it on the nights before; what the pans hold may shift it.</source>
        <translation>D'après le sucre en réserve et ce qui en est sorti les nuits d'avant; ce que contiennent les casseroles peut le déplacer.</translation>
    </message>
    <message>
        <source>wood, cords</source>
        <translation>bois, cordes</translation>
    </message>
    <message>
        <source>About %1 of a full cord.</source>
        <translation>Environ %1 d'une corde pleine.</translation>
    </message>
    <message>
        <source>keep back</source>
        <translation>garder</translation>
    </message>
    <message>
        <source>Keep %1 of sap for the pans while the fire burns out.</source>
        <translation>Gardez %1 d'eau pour les casseroles pendant que le feu s'éteint.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>pas connu</translation>
    </message>
    <message>
        <source>What covers the pans while the fire burns out is not in it: stop that much sooner.</source>
        <translation>Ce qui couvre les casseroles pendant que le feu s'éteint n'y est pas compté : cessez d'autant plus tôt.</translation>
    </message>
    <message>
        <source>The pans' areas and the running depth, entered with the rig, tell how much.</source>
        <translation>L'aire des casseroles et la hauteur de marche, entrées avec l'installation, disent combien.</translation>
    </message>
    <message>
        <source>As it was kept on the nights before.</source>
        <translation>Comme on l'a gardée les nuits d'avant.</translation>
    </message>
    <message>
        <source>By the pans' area, depth and rate.</source>
        <translation>D'après la surface, la profondeur et le débit des casseroles.</translation>
    </message>
    <message>
        <source>start, to be cold by %1</source>
        <translation>à commencer, pour être froid à %1</translation>
    </message>
    <message>
        <source>Cold by %1: all of it may be started.</source>
        <translation>Froid à %1 : on peut tout commencer.</translation>
    </message>
    <message>
        <source>Cold by %1: start %2 (nine nights in ten), %3 at the most (five in ten).</source>
        <translation>Froid à %1 : commencez %2 (neuf nuits sur dix), %3 au plus (cinq sur dix).</translation>
    </message>
    <message>
        <source>All of it: light by %1, or by %2 to be sure.</source>
        <translation>Le tout : allumez avant %1, ou avant %2 pour être sûr.</translation>
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
<context>
    <name>Screens</name>
    <message>
        <source>Tanks</source>
        <translation>Bassins</translation>
    </message>
    <message>
        <source>Tonight</source>
        <translation>Ce soir</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>House account</source>
        <translation>Compte de la maison</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>Tendances</translation>
    </message>
</context>
</TS>
