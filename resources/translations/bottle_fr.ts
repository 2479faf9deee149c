<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>Remedy</source>
        <translation>Remède</translation>
    </message>
    <message>
        <source>what the vessel just filled needs</source>
        <translation>ce que demande le récipient qui vient d'être rempli</translation>
    </message>
</context>
<context>
    <name>BookForm</name>
    <message>
        <source>%1: type it, or leave with Escape.</source>
        <translation>%1 : saisissez, ou quittez avec Échap.</translation>
    </message>
    <message>
        <source>%1: %2 cannot be read. Type a number, and its unit if it is another one.</source>
        <translation>%1 : %2 ne se lit pas. Tapez un nombre, suivi de son unité si c'en est une autre.</translation>
    </message>
    <message>
        <source>%1: %2 is not a whole number. Type how many there are.</source>
        <translation>%1 : %2 n'est pas un nombre entier. Tapez combien il y en a.</translation>
    </message>
    <message>
        <source>%1: %2 is not possible. The range is %3.</source>
        <translation>%1 : %2 est impossible. Les limites sont %3.</translation>
    </message>
    <message>
        <source>Did you mean %1?</source>
        <translation>Vouliez-vous dire %1?</translation>
    </message>
    <message>
        <source>No vessel is called %1. Name it first.</source>
        <translation>Aucun récipient ne s'appelle %1. Nommez-le d'abord.</translation>
    </message>
    <message>
        <source>No vessel is called %1. Did you mean %2? If not, name it first.</source>
        <translation>Aucun récipient ne s'appelle %1. Vouliez-vous dire %2? Sinon nommez-le d'abord.</translation>
    </message>
    <message>
        <source>Lot %1 is already another packing. The next free code is %2.</source>
        <translation>Le lot %1 est déjà un autre conditionnement. Le prochain code libre est %2.</translation>
    </message>
    <message>
        <source>%1 is the vessel it comes from. Name another.</source>
        <translation>%1 est le récipient d'où cela vient. Nommez-en un autre.</translation>
    </message>
    <message>
        <source>Which gallon? The US one is gal, 3.785 L; the imperial one is impgal, 4.546 L.</source>
        <translation>Quel gallon? L'américain est usgal, 3,785 L; l'impérial est impgal, 4,546 L.</translation>
    </message>
    <message>
        <source>at the door</source>
        <translation>à la porte</translation>
    </message>
    <message>
        <source>market</source>
        <translation>marché</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>magasin</translation>
    </message>
    <message>
        <source>Type the light that is let through, or the class, the flavor or what is off.</source>
        <translation>Tapez la lumière transmise, ou la classe, le goût ou son défaut.</translation>
    </message>
</context>
<context>
    <name>GradeForm</name>
    <message>
        <source>Class by the rule of %1: %2</source>
        <translation>Classe selon la règle de %1 : %2</translation>
    </message>
    <message>
        <source>Compared by eye, it is a class, not a number. An off-flavor keeps the vessel apart: for processing only.</source>
        <translation>Comparé à l'œil, c'est une classe et non un nombre. Un défaut de goût met le récipient à part : pour la transformation seulement.</translation>
    </message>
</context>
<context>
    <name>BookWords</name>
    <message>
        <source>rinsed</source>
        <translation>rincé</translation>
    </message>
    <message>
        <source>press</source>
        <translation>filtre-presse</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>personne de nommé</translation>
    </message>
    <message>
        <source>Nothing was written from %1 to %2, and it has not been measured since: dip it.</source>
        <translation>Rien n'a été écrit du %1 au %2, et personne ne l'a mesuré depuis : jaugez-le.</translation>
    </message>
    <message>
        <source>gathering tank</source>
        <translation>bassin de cueillette</translation>
    </message>
    <message>
        <source>truck tank</source>
        <translation>citerne du camion</translation>
    </message>
    <message>
        <source>holding tank</source>
        <translation>bassin de garde</translation>
    </message>
    <message>
        <source>feed tank</source>
        <translation>bassin d'arrivée</translation>
    </message>
    <message>
        <source>concentrate</source>
        <translation>concentré</translation>
    </message>
    <message>
        <source>pail</source>
        <translation>seau</translation>
    </message>
    <message>
        <source>filter tank</source>
        <translation>bassin de filtration</translation>
    </message>
    <message>
        <source>drum</source>
        <translation>baril</translation>
    </message>
    <message>
        <source>canner</source>
        <translation>canneuse</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>suspect</source>
        <translation>soupçonné</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>limpide</translation>
    </message>
    <message>
        <source>cloudy</source>
        <translation>trouble</translation>
    </message>
    <message>
        <source>ropy</source>
        <translation>filante</translation>
    </message>
    <message>
        <source>back to the tank</source>
        <translation>retour au bassin</translation>
    </message>
    <message>
        <source>sap</source>
        <translation>eau d'érable</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>verre</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>plastique</translation>
    </message>
    <message>
        <source>tin</source>
        <translation>boîte de métal</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>jeté</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neufs</translation>
    </message>
    <message>
        <source>sour</source>
        <translation>aigri</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>répandu</translation>
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
        <source>given away</source>
        <translation>donné</translation>
    </message>
    <message>
        <source>poured off</source>
        <translation>vidé</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomb</translation>
    </message>
    <message>
        <source>golden</source>
        <translation>doré</translation>
    </message>
    <message>
        <source>amber</source>
        <translation>ambré</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>foncé</translation>
    </message>
    <message>
        <source>very dark</source>
        <translation>très foncé</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>vers %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot n° %1</translation>
    </message>
    <message>
        <source>vessel named</source>
        <translation>récipient nommé</translation>
    </message>
    <message>
        <source>gathered</source>
        <translation>récolté</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>transvasé</translation>
    </message>
    <message>
        <source>dipped</source>
        <translation>jaugé</translation>
    </message>
    <message>
        <source>concentrated</source>
        <translation>concentré (machine)</translation>
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
        <source>lost</source>
        <translation>perdu</translation>
    </message>
    <message>
        <source>pans emptied</source>
        <translation>casseroles vidées</translation>
    </message>
    <message>
        <source>filter run begun</source>
        <translation>filtration commencée</translation>
    </message>
    <message>
        <source>filter run ended</source>
        <translation>filtration finie</translation>
    </message>
    <message>
        <source>graded</source>
        <translation>classé</translation>
    </message>
    <message>
        <source>packed</source>
        <translation>conditionné</translation>
    </message>
    <message>
        <source>shipped</source>
        <translation>expédié</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>retourné</translation>
    </message>
    <message>
        <source>destroyed</source>
        <translation>détruit</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>nettoyé</translation>
    </message>
    <message>
        <source>tested</source>
        <translation>analysé</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>contient</translation>
    </message>
    <message>
        <source>how much; empty: all</source>
        <translation>combien; vide : tout</translation>
    </message>
    <message>
        <source>went through</source>
        <translation>passé au filtre</translation>
    </message>
    <message>
        <source>light let through</source>
        <translation>lumière transmise</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>found, ppb or words</source>
        <translation>trouvé, ppb ou mots</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>sorte</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>weighs empty</source>
        <translation>pèse à vide</translation>
    </message>
    <message>
        <source>made of</source>
        <translation>fait de</translation>
    </message>
    <message>
        <source>lead in it</source>
        <translation>plomb dedans</translation>
    </message>
    <message>
        <source>no longer used</source>
        <translation>hors d'usage</translation>
    </message>
    <message>
        <source>to whom</source>
        <translation>à qui</translation>
    </message>
    <message>
        <source>into</source>
        <translation>dans</translation>
    </message>
    <message>
        <source>from whom</source>
        <translation>de qui</translation>
    </message>
    <message>
        <source>run or stop</source>
        <translation>tournée ou arrêt</translation>
    </message>
    <message>
        <source>out of</source>
        <translation>sorti de</translation>
    </message>
    <message>
        <source>taps</source>
        <translation>entailles</translation>
    </message>
    <message>
        <source>density at packing</source>
        <translation>densité à la mise</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>sucre</translation>
    </message>
    <message>
        <source>cleaned with</source>
        <translation>nettoyé avec</translation>
    </message>
    <message>
        <source>measured with</source>
        <translation>mesuré avec</translation>
    </message>
    <message>
        <source>scale made for</source>
        <translation>échelle pour</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>aspect</translation>
    </message>
    <message>
        <source>vessel dipped</source>
        <translation>récipient jaugé</translation>
    </message>
    <message>
        <source>sugar of the sap</source>
        <translation>sucre de l'eau</translation>
    </message>
    <message>
        <source>hours run</source>
        <translation>heures de marche</translation>
    </message>
    <message>
        <source>washed with</source>
        <translation>lavé avec</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>vessel or gear</source>
        <translation>récipient ou outil</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>récipient</translation>
    </message>
    <message>
        <source>price</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>chased with</source>
        <translation>poussé avec</translation>
    </message>
    <message>
        <source>filter aid: kind, mass, lot</source>
        <translation>adjuvant : sorte, masse, lot</translation>
    </message>
    <message>
        <source>papers</source>
        <translation>papiers</translation>
    </message>
    <message>
        <source>stays in the filter</source>
        <translation>reste au filtre</translation>
    </message>
    <message>
        <source>came out</source>
        <translation>est sorti</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>class by eye</source>
        <translation>classe à l'œil</translation>
    </message>
    <message>
        <source>flavor</source>
        <translation>saveur</translation>
    </message>
    <message>
        <source>off-flavor</source>
        <translation>défaut de goût</translation>
    </message>
    <message>
        <source>sample kept</source>
        <translation>échantillon gardé</translation>
    </message>
    <message>
        <source>size</source>
        <translation>format</translation>
    </message>
    <message>
        <source>container of</source>
        <translation>contenant de</translation>
    </message>
    <message>
        <source>of what</source>
        <translation>de quoi</translation>
    </message>
    <message>
        <source>in the filler</source>
        <translation>dans la remplisseuse</translation>
    </message>
    <message>
        <source>when capped</source>
        <translation>au bouchage</translation>
    </message>
    <message>
        <source>broken besides</source>
        <translation>brisés en plus</translation>
    </message>
    <message>
        <source>laid down, minutes</source>
        <translation>couchés, minutes</translation>
    </message>
    <message>
        <source>rinsed with</source>
        <translation>rincé avec</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>inspecté</translation>
    </message>
    <message>
        <source>tested for</source>
        <translation>analysé pour</translation>
    </message>
    <message>
        <source>tsp</source>
        <translation>c. à thé</translation>
    </message>
    <message>
        <source>tbsp</source>
        <translation>c. à soupe</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>tasse</translation>
    </message>
    <message numerus="yes">
        <source>cups</source>
        <translation><numerusform>tasse</numerusform><numerusform>tasses</numerusform></translation>
    </message>
</context>
<context>
    <name>Checklist</name>
    <message>
        <source>The name of the food: maple syrup</source>
        <translation>Le nom de l'aliment : sirop d'érable</translation>
    </message>
    <message>
        <source>How much is in it, as a volume</source>
        <translation>Combien il y en a, en volume</translation>
    </message>
    <message>
        <source>How much is in it, in metric units</source>
        <translation>Combien il y en a, en unités métriques</translation>
    </message>
    <message>
        <source>Grade and color class</source>
        <translation>Catégorie et classe de couleur</translation>
    </message>
    <message>
        <source>Name and address of the packer or the responsible firm</source>
        <translation>Nom et adresse de qui a conditionné ou répond du produit</translation>
    </message>
    <message>
        <source>The same in English and French</source>
        <translation>Le même en anglais et en français</translation>
    </message>
    <message>
        <source>Nutrition facts, where you are not small enough to be exempt</source>
        <translation>Valeur nutritive, si vous n'êtes pas assez petit pour en être exempt</translation>
    </message>
    <message>
        <source>The label needs</source>
        <translation>L'étiquette demande</translation>
    </message>
    <message>
        <source>source, as quoted</source>
        <translation>source, telle que citée</translation>
    </message>
    <message>
        <source>Lot code: %1</source>
        <translation>Code de lot : %1</translation>
    </message>
    <message>
        <source>CONTAINS MILK: it was used against foam</source>
        <translation>CONTIENT DU LAIT : il a servi contre la mousse</translation>
    </message>
    <message>
        <source>This is advice: the inspector decides.</source>
        <translation>C'est un conseil : l'inspecteur décide.</translation>
    </message>
    <message>
        <source>Packing: %1</source>
        <translation>Conditionnement : %1</translation>
    </message>
    <message>
        <source>To keep: %1</source>
        <translation>À garder : %1</translation>
    </message>
</context>
<context>
    <name>Filter</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 or later</source>
        <translation>%1 ou plus tard</translation>
    </message>
    <message>
        <source>From the third reading on, this says when the limit will be reached.</source>
        <translation>Dès la troisième lecture, on dit quand la limite sera atteinte.</translation>
    </message>
    <message>
        <source>At the limit: stop the pump, let the pressure off, stand clear.</source>
        <translation>À la limite : arrêtez la pompe, relâchez la pression, écartez-vous.</translation>
    </message>
    <message>
        <source>The gauge is not climbing: when the limit is reached is not known.</source>
        <translation>Le manomètre ne monte pas : on ne sait pas quand la limite sera atteinte.</translation>
    </message>
    <message>
        <source>The gauge has stopped climbing: a bypass is open or the flow falls. No forecast.</source>
        <translation>Le manomètre ne monte plus : une dérivation est ouverte ou le débit baisse. Pas de prévision.</translation>
    </message>
    <message>
        <source>By now the limit should have been reached: look at the gauge, and write what it says.</source>
        <translation>La limite devrait maintenant être atteinte : regardez le manomètre et notez ce qu'il indique.</translation>
    </message>
    <message>
        <source>The limit in %1 min</source>
        <translation>La limite dans %1 min</translation>
    </message>
    <message>
        <source>, after %1 to %2 through it</source>
        <translation>, après %1 à %2 filtrés</translation>
    </message>
    <message>
        <source>, after %1 or more through it</source>
        <translation>, après %1 filtrés ou plus</translation>
    </message>
    <message>
        <source>No run is going on.</source>
        <translation>Aucune filtration en cours.</translation>
    </message>
    <message>
        <source>Run of %1, from %2 to %3</source>
        <translation>Filtration de %1, de %2 à %3</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation>%1, au plus %2</translation>
    </message>
    <message>
        <source>Write the maker's limit under Rig: there is no usual one.</source>
        <translation>Écrivez la limite du fabricant sous Réglages : il n'y en a pas d'usuelle.</translation>
    </message>
    <message>
        <source>Under %1: stop or circulate, back to %2.</source>
        <translation>Sous %1 : arrêtez ou recirculez, revenez à %2.</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>vers</translation>
    </message>
    <message>
        <source>went through</source>
        <translation>passé</translation>
    </message>
    <message>
        <source>filter aid</source>
        <translation>adjuvant</translation>
    </message>
    <message>
        <source>came out</source>
        <translation>est sorti</translation>
    </message>
    <message>
        <source>A press under pressure hurts: stop the pump and let the pressure off before a frame is touched. Hot syrup burns deeply. Do not breathe the dust of the aid.</source>
        <translation>Un filtre sous pression blesse : arrêtez la pompe et relâchez la pression avant de toucher un cadre. Le sirop chaud brûle en profondeur. Ne respirez pas la poussière d'adjuvant.</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>1 run, %1.</source>
        <translation>1 filtration, %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n runs, %1 in all.</source>
        <translation><numerusform>%n filtration, %1 en tout.</numerusform><numerusform>%n filtrations, %1 en tout.</numerusform></translation>
    </message>
    <message>
        <source>About %1 through by the flow of the runs before.</source>
        <translation>Environ %1 passés, au débit des filtrations précédentes.</translation>
    </message>
    <message>
        <source>It climbs %1 each %2.</source>
        <translation>La pression monte de %1 à chaque %2.</translation>
    </message>
    <message>
        <source>Learned from runs with this aid and these papers: %1.</source>
        <translation>Appris des filtrations avec cet adjuvant et ces papiers : %1.</translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>%1 fl oz</source>
        <translation>%1 oz liq. US</translation>
    </message>
    <message>
        <source>CONTAINS MILK</source>
        <translation>CONTIENT DU LAIT</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Sirop d'érable</translation>
    </message>
    <message>
        <source>Class: ________</source>
        <translation>Classe : ________</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lot n° %1</translation>
    </message>
    <message>
        <source>Packed %1</source>
        <translation>Conditionné le %1</translation>
    </message>
    <message>
        <source>Nights: %1</source>
        <translation>Nuits : %1</translation>
    </message>
    <message>
        <source>Lead: %1</source>
        <translation>Plomb : %1</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Étiquettes</translation>
    </message>
</context>
<context>
    <name>MarkWords</name>
    <message>
        <source>The entry before it, of %1, does not fit.</source>
        <translation>La note d'avant, du %1, ne s'accorde pas.</translation>
    </message>
    <message>
        <source>%1: %2 more come out than the book has in it.%4 Dip it.</source>
        <translation>%1 : il en sort %2 de plus que n'en a le cahier.%4 Jaugez-le.</translation>
    </message>
    <message>
        <source>%1: %2 over its rim of %3.%4 Dip it.</source>
        <translation>%1 : %2 au-dessus de son bord de %3.%4 Jaugez-le.</translation>
    </message>
    <message>
        <source>%1 is no longer used.</source>
        <translation>%1 est hors d'usage.</translation>
    </message>
    <message>
        <source>%1 is a vessel that has not been named.</source>
        <translation>%1 est un récipient sans nom au cahier.</translation>
    </message>
    <message>
        <source>Lot %1 was capped at %2, under the least of %3: it is held.</source>
        <translation>Le lot %1 a été bouché à %2, sous le minimum de %3 : il est retenu.</translation>
    </message>
    <message>
        <source>Lot %1 is %2, under the %3 of this place: it is held.</source>
        <translation>Le lot %1 est à %2, sous les %3 d'ici : il est retenu.</translation>
    </message>
    <message>
        <source>Lot %1 is %2, over the %3 of this place: it is held.</source>
        <translation>Le lot %1 est à %2, au-dessus des %3 d'ici : il est retenu.</translation>
    </message>
    <message>
        <source>Lot %1: %2 more left than were made.</source>
        <translation>Lot %1 : il en est parti %2 de plus qu'il n'en a été fait.</translation>
    </message>
    <message>
        <source>Lot %1 was never packed.</source>
        <translation>Le lot %1 n'a jamais été conditionné.</translation>
    </message>
    <message>
        <source>Lot code %1 is used twice.</source>
        <translation>Le code de lot %1 sert deux fois.</translation>
    </message>
    <message>
        <source>A draw was entered twice and counts once: %1.</source>
        <translation>Une coulée est entrée deux fois et compte une fois : %1.</translation>
    </message>
    <message>
        <source>A draw without a vessel: where to?</source>
        <translation>Une coulée sans récipient : vers où?</translation>
    </message>
    <message>
        <source>Nobody said how much went through this run.</source>
        <translation>Personne n'a dit combien est passé dans cette filtration.</translation>
    </message>
    <message>
        <source>A concentrate of %2 is thinner than the %3 that went in.</source>
        <translation>Un concentré de %2 est moins dense que les %3 entrés.</translation>
    </message>
    <message>
        <source>Sap of %2. Did you mean %3?</source>
        <translation>Eau d'érable à %2. Vouliez-vous dire %3?</translation>
    </message>
    <message>
        <source>%1: milk is in it, by %5 against foam. It belongs on the label.</source>
        <translation>%1 : il y a du lait, par %5 contre la mousse. À mettre sur l'étiquette.</translation>
    </message>
    <message>
        <source>%1: lead over the limit of %3 ppb.</source>
        <translation>%1 : plomb au-dessus de la limite de %3 ppb.</translation>
    </message>
    <message>
        <source>%1: ropy sap is in it.</source>
        <translation>%1 : il y a de l'eau filante.</translation>
    </message>
    <message>
        <source>%1: an off-flavor (%5). It is for processing only.</source>
        <translation>%1 : un défaut de goût (%5). Pour la transformation seulement.</translation>
    </message>
    <message>
        <source>%1: a depth gives no volume until its shape is known. Enter its shape.</source>
        <translation>%1 : une profondeur ne donne aucun volume tant que la forme n'est pas connue. Entrez sa forme.</translation>
    </message>
    <message>
        <source>A filter run ends here that was never begun.</source>
        <translation>Ici finit une filtration jamais commencée.</translation>
    </message>
    <message>
        <source>The filter gauge showed %2 while no run went on (%4): was its beginning not entered, or the pressure not let off?</source>
        <translation>Le manomètre du filtre montrait %2 sans filtration en cours (%4) : son début n'a-t-il pas été dit, ou la pression pas relâchée?</translation>
    </message>
    <message>
        <source>Lot %1: %2 more came back than had left.</source>
        <translation>Lot %1 : il en est revenu %2 de plus qu'il n'en était parti.</translation>
    </message>
    <message>
        <source>Lot %1 was never packed in %5.</source>
        <translation>Le lot %1 n'a jamais été conditionné en %5.</translation>
    </message>
    <message>
        <source>%1: “%5” is no shape. Enter it as in upright 1.2 0.9.</source>
        <translation>%1 : « %5 » n'est pas une forme. Écrivez-la comme upright 1.2 0.9.</translation>
    </message>
    <message>
        <source>A filter run begins while that of %4 was not ended. Enter its end.</source>
        <translation>Une filtration commence alors que celle du %4 n'est pas terminée. Notez sa fin.</translation>
    </message>
    <message>
        <source>A press cannot hold back %2 of the %3 that were in it.</source>
        <translation>Une presse ne peut retenir %2 des %3 qu'elle contenait.</translation>
    </message>
    <message>
        <source>Did you mean %1?</source>
        <translation>Vouliez-vous dire %1?</translation>
    </message>
</context>
<context>
    <name>Pack</name>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>Fill at %1 or hotter, cap at no less than %2, lay down 5 to 10 min.</source>
        <translation>Remplir à %1 ou plus, boucher à %2 au moins, coucher 5 à 10 min.</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>récipient</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>contient</translation>
    </message>
    <message>
        <source>°Brix</source>
        <translation>°Brix</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>classement</translation>
    </message>
    <message>
        <source>also in it</source>
        <translation>contient aussi</translation>
    </message>
    <message>
        <source>ready to pack?</source>
        <translation>prêt à conditionner?</translation>
    </message>
    <message>
        <source>no: keep it apart</source>
        <translation>non : gardez à part</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>test it first</source>
        <translation>mesurez d'abord</translation>
    </message>
    <message>
        <source>no: see what it needs</source>
        <translation>non : voyez ce qu'il demande</translation>
    </message>
    <message>
        <source>Milk is in it: say so on every label.</source>
        <translation>Il y a du lait : dites-le sur chaque étiquette.</translation>
    </message>
    <message>
        <source>Measure the color before you label it.</source>
        <translation>Mesurez la couleur avant d'étiqueter.</translation>
    </message>
    <message>
        <source>Check the density again after re-heating. Hot syrup burns deeply.</source>
        <translation>Mesurez encore la densité après réchauffage. Le sirop chaud brûle en profondeur.</translation>
    </message>
    <message>
        <source>No vessel holds syrup to pack. Draws, bought syrup and moves fill them.</source>
        <translation>Aucun récipient ne contient de sirop à conditionner. Coulées, achats et transvasements les remplissent.</translation>
    </message>
    <message>
        <source>size</source>
        <translation>format</translation>
    </message>
    <message>
        <source>fill weight</source>
        <translation>poids à verser</translation>
    </message>
    <message>
        <source>yield, all in this size</source>
        <translation>rendement, tout en ce format</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>reste</translation>
    </message>
    <message>
        <source>No scale here is legal for trade. Hot syrup burns deeply.</source>
        <translation>Aucune balance d'ici n'est légale pour la vente. Le sirop chaud brûle en profondeur.</translation>
    </message>
    <message>
        <source>Fill each to %1 by weight: full to the brim with hot syrup, it is %2 percent short when cold. That makes %3, and %4 is left.</source>
        <translation>Versez %1 dans chacun : plein à ras bord de sirop chaud, il manque %2 pour cent à froid. Cela en donne %3, et il reste %4.</translation>
    </message>
    <message>
        <source>Small containers cool first: fill and cap these before the others.</source>
        <translation>Les petits contenants refroidissent d'abord : remplissez et bouchez-les avant les autres.</translation>
    </message>
    <message>
        <source>Capped under %1: the lot will be held.</source>
        <translation>Bouché sous %1 : le lot sera retenu.</translation>
    </message>
    <message>
        <source>Density outside the %1 to %2 °Brix for this place: the lot will be held.</source>
        <translation>Densité hors de %1 à %2 °Brix d'ici : le lot sera retenu.</translation>
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
        <source>made</source>
        <translation>faits</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation>en stock</translation>
    </message>
    <message>
        <source>class</source>
        <translation>classe</translation>
    </message>
    <message>
        <source>status</source>
        <translation>état</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenu</translation>
    </message>
    <message>
        <source>released</source>
        <translation>libéré</translation>
    </message>
    <message>
        <source>Released: %1.</source>
        <translation>Libéré : %1.</translation>
    </message>
    <message>
        <source>No lot has been packed yet.</source>
        <translation>Aucun lot n'a encore été conditionné.</translation>
    </message>
</context>
<context>
    <name>Screens</name>
    <message>
        <source>Vessels</source>
        <translation>Récipients</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtrer</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Conditionner</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Retracer</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Cahier</translation>
    </message>
</context>
<context>
    <name>Trace</name>
    <message>
        <source>sap</source>
        <translation>eau d'érable</translation>
    </message>
    <message>
        <source>tanks</source>
        <translation>bassins</translation>
    </message>
    <message>
        <source>nights</source>
        <translation>nuits</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>coulées</translation>
    </message>
    <message>
        <source>vessels</source>
        <translation>récipients</translation>
    </message>
    <message>
        <source>lots</source>
        <translation>lots</translation>
    </message>
    <message>
        <source>buyers</source>
        <translation>acheteurs</translation>
    </message>
    <message>
        <source>share not known</source>
        <translation>part inconnue</translation>
    </message>
    <message>
        <source>under 0.1 %</source>
        <translation>moins de 0,1 %</translation>
    </message>
    <message>
        <source>no entry</source>
        <translation>aucune note</translation>
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
        <source>tank</source>
        <translation>bassin</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>coulée</translation>
    </message>
    <message>
        <source>check</source>
        <translation>vérification</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>récipient</translation>
    </message>
    <message>
        <source>filter run</source>
        <translation>filtration</translation>
    </message>
    <message>
        <source>filter aid</source>
        <translation>adjuvant</translation>
    </message>
    <message>
        <source>against foam</source>
        <translation>contre la mousse</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>buyer</source>
        <translation>acheteur</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>lacune</translation>
    </message>
    <message>
        <source>made %1, sold %2, came back %3, destroyed %4, here %5</source>
        <translation>faits %1, vendus %2, retournés %3, détruits %4, ici %5</translation>
    </message>
    <message>
        <source>It passes through a time with no entries.</source>
        <translation>Cela passe par une période sans aucune note.</translation>
    </message>
    <message>
        <source>Shares are parts of its sugar. This is advice: the inspector decides.</source>
        <translation>Les parts sont en sucre. C'est un conseil : l'inspecteur décide.</translation>
    </message>
    <message>
        <source>searched for</source>
        <translation>cherché</translation>
    </message>
</context>
<context>
    <name>Vessels</name>
    <message>
        <source>%1 nights</source>
        <translation>%1 nuits</translation>
    </message>
    <message>
        <source>lead suspect</source>
        <translation>plomb soupçonné</translation>
    </message>
    <message>
        <source>no syrup yet</source>
        <translation>pas encore du sirop</translation>
    </message>
    <message>
        <source>good as it is</source>
        <translation>bon tel quel</translation>
    </message>
    <message>
        <source>boil %1 off</source>
        <translation>évaporer %1</translation>
    </message>
    <message>
        <source>test before you pack it</source>
        <translation>mesurer avant de conditionner</translation>
    </message>
    <message>
        <source>stir in %1 of sap</source>
        <translation>ajouter %1 d'eau d'érable</translation>
    </message>
    <message>
        <source>nobody said how much</source>
        <translation>personne n'a dit combien</translation>
    </message>
    <message>
        <source>milk (%1)</source>
        <translation>lait (%1)</translation>
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
        <source>off: %1</source>
        <translation>défaut : %1</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 est vide.</translation>
    </message>
    <message>
        <source>%1: %2 at %3</source>
        <translation>%1 : %2 à %3</translation>
    </message>
    <message>
        <source>%1, under the %2 for this place: do not pack; boil %3 off for %4</source>
        <translation>%1, sous les %2 d'ici : ne pas conditionner; évaporer %3 pour %4</translation>
    </message>
    <message>
        <source>%1: perhaps under the %2 for this place. Test it before you pack it</source>
        <translation>%1 : peut-être sous les %2 d'ici. Mesurez avant de conditionner</translation>
    </message>
    <message>
        <source>%1, over the %2 for this place: do not pack; stir in %3 of sap, heat, test</source>
        <translation>%1, au-dessus des %2 d'ici : ne pas conditionner; ajouter %3 d'eau d'érable, chauffer, mesurer</translation>
    </message>
    <message>
        <source>%1: stir in %2 of sap, heat, test</source>
        <translation>%1 : ajouter %2 d'eau d'érable, chauffer, mesurer</translation>
    </message>
    <message>
        <source>%1: good as it is</source>
        <translation>%1 : bon tel quel</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>récipient</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>sorte</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>contient</translation>
    </message>
    <message>
        <source>°Brix</source>
        <translation>°Brix</translation>
    </message>
    <message>
        <source>nights</source>
        <translation>nuits</translation>
    </message>
    <message>
        <source>also in it</source>
        <translation>contient aussi</translation>
    </message>
    <message>
        <source>needs</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Not all of it was measured: its density is calculated.</source>
        <translation>Tout n'a pas été mesuré : sa densité est calculée.</translation>
    </message>
    <message>
        <source>Milk is in it: it belongs on every label.</source>
        <translation>Il y a du lait : à mettre sur chaque étiquette.</translation>
    </message>
    <message>
        <source>Lead: have it tested before it is sold.</source>
        <translation>Plomb : faites analyser avant de vendre.</translation>
    </message>
    <message>
        <source>Keep it apart: for processing only.</source>
        <translation>Gardez à part : pour la transformation seulement.</translation>
    </message>
    <message>
        <source>Hot syrup burns deeply: carry it covered.</source>
        <translation>Le sirop chaud brûle en profondeur : portez-le couvert.</translation>
    </message>
    <message>
        <source>A blend. %1: %2 at %3</source>
        <translation>Un mélange. %1 : %2 à %3</translation>
    </message>
    <message>
        <source>Its color is an estimate: %1 % of light, %2. Measure it before it is labeled.</source>
        <translation>Sa couleur est estimée : %1 % de lumière, %2. À mesurer avant d'étiqueter.</translation>
    </message>
    <message>
        <source>%1: keep it apart</source>
        <translation>%1 : à garder à part</translation>
    </message>
    <message>
        <source>keep it apart</source>
        <translation>garder à part</translation>
    </message>
    <message>
        <source>No vessel for syrup has a name yet. Name the first one, or say at the end of a draw what it went into.</source>
        <translation>Aucun récipient à sirop n'a encore de nom. Nommez le premier, ou dites à la fin d'une coulée où elle est allée.</translation>
    </message>
</context>
<context>
    <name>panside::ActionKeys</name>
    <message>
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Entrée</translation>
    </message>
    <message>
        <source>Ctrl+Del</source>
        <translation>Ctrl+Suppr</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
</context>
<context>
    <name>panside::BookSheet</name>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>10 min earlier</source>
        <translation>10 min plus tôt</translation>
    </message>
    <message>
        <source>1 h earlier</source>
        <translation>1 h plus tôt</translation>
    </message>
    <message>
        <source>1 day earlier</source>
        <translation>1 jour plus tôt</translation>
    </message>
    <message>
        <source>more</source>
        <translation>suite</translation>
    </message>
    <message>
        <source>who?</source>
        <translation>qui?</translation>
    </message>
    <message>
        <source>Keep it all the same</source>
        <translation>Garder quand même</translation>
    </message>
</context>
<context>
    <name>panside::Console</name>
    <message>
        <source>Put aside for an alarm: %1. Open it again: what you typed is still there.</source>
        <translation>Mis de côté pour une alarme : %1. Rouvrez : ce que vous avez tapé y est encore.</translation>
    </message>
</context>
<context>
    <name>panside::Desk</name>
    <message>
        <source>Reading the book …</source>
        <translation>Lecture du cahier…</translation>
    </message>
    <message>
        <source>The whole book on paper</source>
        <translation>Tout le cahier sur papier</translation>
    </message>
    <message>
        <source>View it</source>
        <translation>Voir</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>in the book</source>
        <translation>au cahier</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>lignes</translation>
    </message>
    <message>
        <source>Begin a run</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>End the run</source>
        <translation>Finir</translation>
    </message>
    <message>
        <source>Papers or cones changed</source>
        <translation>Papiers ou cônes changés</translation>
    </message>
    <message>
        <source>Let the pressure off first. Rinse with plenty of water after every cleaner.</source>
        <translation>Relâchez d'abord la pression. Rincez à grande eau après tout nettoyant.</translation>
    </message>
    <message>
        <source>Run it at %1 or hotter. A press under pressure hurts: stand clear of the frames. Do not breathe the dust of the aid.</source>
        <translation>Filtrez à %1 ou plus. Un filtre sous pression blesse : écartez-vous des cadres. Ne respirez pas la poussière d'adjuvant.</translation>
    </message>
    <message>
        <source>%1 is not a pressure: type what the gauge shows.</source>
        <translation>%1 n'est pas une pression : tapez ce que montre le manomètre.</translation>
    </message>
    <message>
        <source>No run is going on: begin one first.</source>
        <translation>Aucune filtration en cours : commencez d'abord.</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Conditionner</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Classer</translation>
    </message>
    <message>
        <source>Drum tag</source>
        <translation>Fiche de baril</translation>
    </message>
    <message>
        <source>What a label needs</source>
        <translation>Ce que demande l'étiquette</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Retracer</translation>
    </message>
    <message>
        <source>heated and packed again</source>
        <translation>chauffé et conditionné de nouveau</translation>
    </message>
    <message>
        <source>measured again, as the place wants it</source>
        <translation>mesuré de nouveau, comme le veut l'endroit</translation>
    </message>
    <message>
        <source>Weights are of the content alone. No scale here is legal for trade.</source>
        <translation>Les poids sont ceux du contenu seul. Aucune balance d'ici n'est légale pour la vente.</translation>
    </message>
    <message>
        <source>%1 is held: no label until somebody says why it can be released.</source>
        <translation>%1 est retenu : pas d'étiquette tant que personne ne dit pourquoi le libérer.</translation>
    </message>
    <message>
        <source>Ship</source>
        <translation>Expédier</translation>
    </message>
    <message>
        <source>Came back</source>
        <translation>Retourné</translation>
    </message>
    <message>
        <source>Destroyed</source>
        <translation>Détruit</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Libérer</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Étiquettes</translation>
    </message>
    <message>
        <source>This lot is held: say first why it can be released.</source>
        <translation>Ce lot est retenu : dites d'abord pourquoi le libérer.</translation>
    </message>
    <message>
        <source>Why %1 can be released</source>
        <translation>Pourquoi libérer %1</translation>
    </message>
    <message>
        <source>why it can be released</source>
        <translation>pourquoi le libérer</translation>
    </message>
    <message>
        <source>This is advice: the inspector decides.</source>
        <translation>C'est un conseil : l'inspecteur décide.</translation>
    </message>
    <message>
        <source>Nothing can be traced yet: no vessel and no lot has a name.</source>
        <translation>Rien à retracer encore : aucun récipient ni lot n'a de nom.</translation>
    </message>
    <message>
        <source>Mock recall on paper</source>
        <translation>Exercice de rappel sur papier</translation>
    </message>
    <message>
        <source>Hot syrup burns deeply: carry it covered. What goes into a vessel that is not empty is a blend.</source>
        <translation>Le sirop chaud brûle en profondeur : portez-le couvert. Ce qui entre dans un récipient non vide est un mélange.</translation>
    </message>
    <message>
        <source>Rinse with plenty of water after every cleaner, and never mix two.</source>
        <translation>Rincez à grande eau après tout nettoyant, et n'en mêlez jamais deux.</translation>
    </message>
    <message>
        <source>Only emptying the pans breaks the trace through them. Empty them cold.</source>
        <translation>Seul ce vidage coupe la trace à travers les casseroles. Videz-les froides.</translation>
    </message>
    <message>
        <source>Kept: %1 went into %2</source>
        <translation>Gardé : %1 est allé dans %2</translation>
    </message>
</context>
<context>
    <name>panside::FilterScreen</name>
    <message>
        <source>The gauge shows</source>
        <translation>Le manomètre montre</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
</context>
<context>
    <name>panside::TracePicture</name>
    <message>
        <source>all %1 ▾</source>
        <translation>les %1 ▾</translation>
    </message>
</context>
<context>
    <name>panside::TraceScreen</name>
    <message>
        <source>Nothing is called %1: type a lot, a vessel, a night, a buyer's load or an aid's lot.</source>
        <translation>Rien ne s'appelle %1 : tapez un lot, un récipient, une nuit, un achat ou un lot d'adjuvant.</translation>
    </message>
    <message>
        <source>Nothing is called %1. Did you mean one of these?</source>
        <translation>Rien ne s'appelle %1. Vouliez-vous dire l'un de ceux-ci?</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Retracer</translation>
    </message>
    <message>
        <source>lot, vessel or night</source>
        <translation>lot, récipient ou nuit</translation>
    </message>
    <message>
        <source>Mock recall on paper</source>
        <translation>Exercice de rappel</translation>
    </message>
    <message>
        <source>Previous search</source>
        <translation>Recherche précédente</translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation>Taper un nom</translation>
    </message>
</context>
<context>
    <name>panside::VesselsScreen</name>
    <message>
        <source>drawn</source>
        <translation>coulé</translation>
    </message>
    <message>
        <source>What to write</source>
        <translation>Quoi noter</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Transvaser</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Jauger</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Classer</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Retracer</translation>
    </message>
    <message>
        <source>New vessel</source>
        <translation>Nouveau récipient</translation>
    </message>
    <message>
        <source>Other entry</source>
        <translation>Autre note</translation>
    </message>
    <message>
        <source>Where to? %1</source>
        <translation>Vers où? %1</translation>
    </message>
    <message>
        <source>It went there</source>
        <translation>C'est allé là</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Where did it go? Choose the draw, then type or press the vessel.</source>
        <translation>Où est-ce allé? Choisissez la coulée, puis tapez ou pressez le récipient.</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Coulées</translation>
    </message>
</context>
<context>
    <name>Touched</name>
    <message>
        <source>some of its sugar came by it, nobody knows how much</source>
        <translation>une part de son sucre en vient, personne ne sait combien</translation>
    </message>
    <message>
        <source>%1 percent of its sugar came by it</source>
        <translation>%1 pour cent de son sucre en vient</translation>
    </message>
    <message>
        <source>it is no lot any more</source>
        <translation>ce n'est plus un lot</translation>
    </message>
    <message>
        <source>density by the book %1, before %2</source>
        <translation>densité selon le livre %1, avant %2</translation>
    </message>
    <message>
        <source>held from now on</source>
        <translation>retenu dès maintenant</translation>
    </message>
    <message>
        <source>no longer held</source>
        <translation>n'est plus retenu</translation>
    </message>
    <message>
        <source>nothing runs with it any more</source>
        <translation>plus rien ne le suit</translation>
    </message>
    <message>
        <source>runs with it: %1</source>
        <translation>ce qui le suit : %1</translation>
    </message>
    <message>
        <source>its thread is another</source>
        <translation>son fil est un autre</translation>
    </message>
    <message>
        <source>nothing went out</source>
        <translation>rien n'est sorti</translation>
    </message>
    <message>
        <source>went to %1</source>
        <translation>chez %1</translation>
    </message>
    <message>
        <source>Packed lots rest on what was taken back or put right: %1</source>
        <translation>Des lots conditionnés reposent sur ce qui a été repris ou corrigé : %1</translation>
    </message>
    <message>
        <source>What it changes for packed lots</source>
        <translation>Ce que cela change pour les lots conditionnés</translation>
    </message>
    <message>
        <source>This is advice: the inspector decides.</source>
        <translation>Ce n'est qu'un conseil : l'inspecteur décide.</translation>
    </message>
</context>
<context>
    <name>Rig</name>
    <message>
        <source>a state or a province; US or Canada until then</source>
        <translation>un État ou une province; d'ici là US ou Canada</translation>
    </message>
    <message>
        <source>usually %1; {yyyy} {mm} {dd}: its day, {v}: the vessel, {n}: counted</source>
        <translation>d'habitude %1; {yyyy} {mm} {dd} : son jour, {v} : le récipient, {n} : compté</translation>
    </message>
    <message>
        <source>by %1 (read only as quoted)</source>
        <translation>selon %1 (lu seulement comme cité)</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>selon %1</translation>
    </message>
    <message>
        <source>%1 in %2, at %3</source>
        <translation>%1 au lieu %2, à %3</translation>
    </message>
    <message>
        <source>none is known of %1</source>
        <translation>aucune n'est connue au lieu %1</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>Entered already: %1, %2. Is this the same draw?</source>
        <translation>Déjà dit : %1, %2. Est-ce la même coulée?</translation>
    </message>
</context>
<context>
    <name>panside::EntrySheet</name>
    <message>
        <source>The same one</source>
        <translation>La même</translation>
    </message>
    <message>
        <source>Keep it besides</source>
        <translation>La garder en plus</translation>
    </message>
</context>
<context>
    <name>Law</name>
    <message>
        <source>a code on every container over 125 mL that the records explain; bought sap and syrup traced too</source>
        <translation>un code sur chaque contenant de plus de 125 mL, que les registres expliquent; l'eau d'érable et le sirop achetés sont retracés aussi</translation>
    </message>
    <message>
        <source>a lot number or production code on every label</source>
        <translation>un numéro de lot ou un code de production sur chaque étiquette</translation>
    </message>
    <message>
        <source>a batch code on every container</source>
        <translation>un code de lot sur chaque contenant</translation>
    </message>
    <message>
        <source>none of its own is known here; a record of one step back and one step forward is expected</source>
        <translation>aucune règle propre n'est connue ici; un registre d'un pas en arrière et d'un pas en avant est attendu</translation>
    </message>
    <message>
        <source>the container filled to at least 90 percent</source>
        <translation>le contenant rempli à 90 pour cent au moins</translation>
    </message>
    <message>
        <source>packed at 85 °C, laid on its side 5 to 10 minutes</source>
        <translation>conditionné à 85 °C, couché de 5 à 10 minutes</translation>
    </message>
    <message>
        <source>packed at 82 to 85 °C or hotter</source>
        <translation>conditionné de 82 à 85 °C ou plus chaud</translation>
    </message>
    <message>
        <source>at least 180 °F (82 °C) when the cap goes on</source>
        <translation>au moins 180 °F (82 °C) quand on ferme</translation>
    </message>
    <message>
        <source>processing grade only in containers of 5 gallons and more</source>
        <translation>la catégorie de transformation seulement en contenants de 5 gallons et plus</translation>
    </message>
    <message>
        <source>a rule of its own on grades and labels: ask for it</source>
        <translation>une règle propre sur les catégories et les étiquettes : demandez-la</translation>
    </message>
    <message>
        <source>the volume of the label is meant at 68 °F (20 °C)</source>
        <translation>le volume de l'étiquette s'entend à 68 °F (20 °C)</translation>
    </message>
    <message>
        <source>a record of each lot</source>
        <translation>un registre de chaque lot</translation>
    </message>
</context>
<context>
    <name>LedgerPaper</name>
    <message>
        <source>hydrometer</source>
        <translation>densimètre</translation>
    </message>
    <message>
        <source>refractometer</source>
        <translation>réfractomètre</translation>
    </message>
    <message>
        <source>pan probe</source>
        <translation>sonde de la casserole</translation>
    </message>
    <message>
        <source>water boiled at %1</source>
        <translation>l'eau a bouilli à %1</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>conditionnement</translation>
    </message>
    <message>
        <source>to keep</source>
        <translation>à garder</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Appareils de mesure</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>appareil</translation>
    </message>
    <message>
        <source>last used</source>
        <translation>dernier usage</translation>
    </message>
    <message>
        <source>last checked</source>
        <translation>dernière vérification</translation>
    </message>
    <message>
        <source>found</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>A check is a row tested of the instrument; of a probe, boiling water.</source>
        <translation>Une vérification est une ligne tested de l'instrument; d'une sonde, l'eau bouillante.</translation>
    </message>
    <message>
        <source>Other lots of the same vessels</source>
        <translation>Autres lots des mêmes récipients</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
    </message>
    <message>
        <source>made</source>
        <translation>faits</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendus</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>bassin</translation>
    </message>
    <message>
        <source>night</source>
        <translation>nuit</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>coulée</translation>
    </message>
    <message>
        <source>check</source>
        <translation>vérification</translation>
    </message>
    <message>
        <source>press</source>
        <translation>filtration</translation>
    </message>
    <message>
        <source>defoamer</source>
        <translation>antimousse</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>lacune</translation>
    </message>
    <message>
        <source>nothing written</source>
        <translation>rien d'écrit</translation>
    </message>
</context>
<context>
    <name>panside::DrawsPicture</name>
    <message>
        <source>not measured</source>
        <translation>pas mesuré</translation>
    </message>
    <message>
        <source>The draws and their densities</source>
        <translation>Les coulées et leur densité</translation>
    </message>
    <message>
        <source>where to?</source>
        <translation>vers où?</translation>
    </message>
    <message>
        <source>No draw was entered yet.</source>
        <translation>Aucune coulée n'a encore été dite.</translation>
    </message>
    <message>
        <source>°Brix of each draw by the pan's reading, with its doubt; diamonds: density checks</source>
        <translation>°Brix de chaque coulée selon la lecture de la casserole, avec son doute; losanges : densités vérifiées</translation>
    </message>
</context>
<context>
    <name>panside::FilterPicture</name>
    <message>
        <source>Resistance of the cake against what went through</source>
        <translation>Résistance du gâteau selon ce qui est passé</translation>
    </message>
    <message>
        <source>%1 %2 at %3 %4</source>
        <translation>%1 %2 à %3 %4</translation>
    </message>
    <message>
        <source>%1 through</source>
        <translation>%1 passés</translation>
    </message>
    <message>
        <source>Resistance of the cake: %1 on the gauge, at a steady flow</source>
        <translation>Résistance du gâteau : %1 au manomètre, à débit constant</translation>
    </message>
    <message>
        <source>limit of the maker</source>
        <translation>limite du fabricant</translation>
    </message>
</context>
</TS>
