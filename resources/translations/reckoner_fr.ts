<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_CA" sourcelanguage="en">
<context>
    <name>reckon</name>
    <message>
        <source>there is no such sum.</source>
        <translation>ce calcul n'existe pas.</translation>
    </message>
    <message>
        <source>Where water boils</source>
        <translation>Où l'eau bout</translation>
    </message>
    <message>
        <source>Where syrup boils</source>
        <translation>Où le sirop bout</translation>
    </message>
    <message>
        <source>Hydrometer in a hot cup</source>
        <translation>Densimètre, godet chaud</translation>
    </message>
    <message>
        <source>Sap for syrup</source>
        <translation>Eau d'érable pour le sirop</translation>
    </message>
    <message>
        <source>Blend</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Weight of a liter</source>
        <translation>Poids d'un litre</translation>
    </message>
    <message>
        <source>Refractometer</source>
        <translation>Réfractomètre</translation>
    </message>
    <message>
        <source>Baumé</source>
        <translation>Baumé</translation>
    </message>
    <message>
        <source>Firewood</source>
        <translation>Bois de chauffage</translation>
    </message>
    <message>
        <source>Sap to keep back</source>
        <translation>Eau d'érable à garder</translation>
    </message>
    <message>
        <source>Thermocouple</source>
        <translation>Thermocouple</translation>
    </message>
    <message>
        <source>Platinum probe</source>
        <translation>Sonde de platine</translation>
    </message>
    <message>
        <source>The barometer at the pan reads %1 kPa.</source>
        <translation>Le baromètre à la casserole indique %1 kPa.</translation>
    </message>
    <message>
        <source>Sea level pressure %1 kPa less the weight of %2 m of air at %3 °C.</source>
        <translation>Pression au niveau de la mer %1 kPa moins le poids de %2 m d'air à %3 °C.</translation>
    </message>
    <message>
        <source>Sea level pressure %1 kPa less the weight of %2 m of air, taken to be at %3 °C as it is not known.</source>
        <translation>Pression au niveau de la mer %1 kPa moins le poids de %2 m d'air, tenu pour être à %3 °C faute de le savoir.</translation>
    </message>
    <message>
        <source>Altimeter setting %1 kPa less %2 m of the standard atmosphere (no thermometer is needed).</source>
        <translation>Calage altimétrique %1 kPa moins %2 m d'atmosphère normale (sans thermomètre).</translation>
    </message>
    <message>
        <source>it is needed here, as in %1; or --sea-level or --altimeter with --elevation.</source>
        <translation>il le faut ici, par exemple %1; ou --sea-level ou --altimeter avec --elevation.</translation>
    </message>
    <message>
        <source>give one pressure: --pressure, --sea-level or --altimeter.</source>
        <translation>donnez une seule pression : --pressure, --sea-level ou --altimeter.</translation>
    </message>
    <message>
        <source>a station pressure needs no elevation. If it was reduced to sea level, write --sea-level in place of --pressure.</source>
        <translation>une pression de station n'a pas besoin d'altitude. Si elle est ramenée au niveau de la mer, écrivez --sea-level au lieu de --pressure.</translation>
    </message>
    <message>
        <source>it goes with --sea-level only.</source>
        <translation>cela va seulement avec --sea-level.</translation>
    </message>
    <message>
        <source>Boiling water and the rise together: %1 °C.</source>
        <translation>L'eau bouillante et la hausse ensemble : %1 °C.</translation>
    </message>
    <message>
        <source>One standard uncertainty is %1 C°, or %2 °Brix, before a hydrometer has trimmed the probe. Late syrup with much invert sugar boils up to 0.3 °C hotter.</source>
        <translation>Une incertitude type est de %1 C°, ou %2 °Brix, avant que le densimètre ait ajusté la sonde. Le sirop tardif, riche en sucre inverti, bout jusqu'à 0,3 °C plus haut.</translation>
    </message>
    <message>
        <source>At %1 kPa water boils at %2 °C.</source>
        <translation>À %1 kPa l'eau bout à %2 °C.</translation>
    </message>
    <message>
        <source>Pressure is taken as known to %1 kPa, which is %2 C° of boiling water.</source>
        <translation>La pression est tenue pour connue à %1 kPa près, soit %2 C° sur l'eau bouillante.</translation>
    </message>
    <message>
        <source>give one of --density and --rise.</source>
        <translation>donnez soit --density, soit --rise.</translation>
    </message>
    <message>
        <source>the station pressure comes to %1 kPa; the rise of syrup is known from 60 to 110 kPa.</source>
        <translation>la pression de station est de %1 kPa; la hausse du sirop est connue de 60 à 110 kPa.</translation>
    </message>
    <message>
        <source>%1 °Brix boils %2 C° above water at that pressure.</source>
        <translation>À %1 °Brix, il bout %2 C° au-dessus de l'eau à cette pression.</translation>
    </message>
    <message>
        <source>A rise of %1 C° at that pressure means %2 °Brix.</source>
        <translation>Une hausse de %1 C° à cette pression veut dire %2 °Brix.</translation>
    </message>
    <message>
        <source>A temperature is advice: the hydrometer decides. Boiling syrup and steam burn.</source>
        <translation>Une température est un conseil : le densimètre décide. Le sirop bouillant et la vapeur brûlent.</translation>
    </message>
    <message>
        <source>Only station pressure boils water. Check it once a day in plain boiling water, on the probe that you use.</source>
        <translation>Seule la pression de station fait bouillir l'eau. Vérifiez une fois par jour dans de l'eau pure bouillante, avec la sonde qui sert.</translation>
    </message>
    <message>
        <source>Syrup boils at</source>
        <translation>Le sirop bout à</translation>
    </message>
    <message>
        <source>Rise above boiling water</source>
        <translation>Au-dessus de l'eau bouillante</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densité</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertitude type</translation>
    </message>
    <message>
        <source>Water boils at</source>
        <translation>L'eau bout à</translation>
    </message>
    <message>
        <source>Station pressure</source>
        <translation>Pression de station</translation>
    </message>
    <message>
        <source>it is needed here, as in %1.</source>
        <translation>il le faut ici, par exemple %1.</translation>
    </message>
    <message>
        <source>what thins the syrup must be thinner than the target. Are the two the right way round?</source>
        <translation>ce qui dilue le sirop doit être moins dense que la cible. Les deux sont-ils dans le bon ordre?</translation>
    </message>
    <message>
        <source>It is %1 °Brix over the %2 wanted: to %3 L add %4 L of plain water.</source>
        <translation>Il est de %1 °Brix au-dessus des %2 voulus : à %3 L ajouter %4 L d'eau pure.</translation>
    </message>
    <message>
        <source>It is %1 °Brix over the %2 wanted: to %3 L add %4 L of %5 °Brix.</source>
        <translation>Il est de %1 °Brix au-dessus des %2 voulus : à %3 L ajouter %4 L à %5 °Brix.</translation>
    </message>
    <message>
        <source>there is no sugar in the cup: no boiling makes syrup of it.</source>
        <translation>il n'y a pas de sucre dans le godet : aucune cuisson n'en fera du sirop.</translation>
    </message>
    <message>
        <source>It is %1 °Brix under the %2 wanted: from %3 L boil off %4 L of water.</source>
        <translation>Il est de %1 °Brix au-dessous des %2 voulus : de %3 L faire bouillir %4 L d'eau.</translation>
    </message>
    <message>
        <source>at %1 °C that would be more than 75 °Brix.</source>
        <translation>à %1 °C ce serait plus de 75 °Brix.</translation>
    </message>
    <message>
        <source>at %1 °C that would be less than no sugar.</source>
        <translation>à %1 °C ce serait moins que pas de sucre.</translation>
    </message>
    <message>
        <source>Is the temperature that of the cup, and the reading what the glass showed there?</source>
        <translation>La température est-elle celle du godet, et la lecture celle du verre à ce moment?</translation>
    </message>
    <message>
        <source>The scale was made for %1 °C; in the cup it is %2 °C, where syrup is thinner.</source>
        <translation>L'échelle est faite pour %1 °C; dans le godet il fait %2 °C, et le sirop y est moins dense.</translation>
    </message>
    <message>
        <source>Allowing for the glass as well, %1 °Brix as read means %2 °Brix: %3 to be added.</source>
        <translation>Le verre compris, %1 °Brix lus veulent dire %2 °Brix : %3 à ajouter.</translation>
    </message>
    <message>
        <source>%1 °Brix</source>
        <translation>%1 °Brix</translation>
    </message>
    <message>
        <source>—</source>
        <translation>—</translation>
    </message>
    <message>
        <source>One standard uncertainty is %1 °Brix, with the cup's temperature known to 1 °C. Printed hot charts differ from this by up to 0.35 °Brix. Volumes are taken at 20 °C.</source>
        <translation>Une incertitude type est de %1 °Brix, la température du godet étant connue à 1 °C près. Les tables imprimées s'en écartent jusqu'à 0,35 °Brix. Les volumes sont pris à 20 °C.</translation>
    </message>
    <message>
        <source>Hot syrup burns. Read the hydrometer and the cup's thermometer at the same moment; stir what you add well in, heat it again, and test again before it is packed.</source>
        <translation>Le sirop chaud brûle. Lisez densimètre et thermomètre au même moment; mêlez bien ce que vous ajoutez, réchauffez et mesurez encore avant d'embouteiller.</translation>
    </message>
    <message>
        <source>True density</source>
        <translation>Densité vraie</translation>
    </message>
    <message>
        <source>To add</source>
        <translation>À ajouter</translation>
    </message>
    <message>
        <source>To boil off</source>
        <translation>À faire bouillir</translation>
    </message>
    <message>
        <source>no such wood is known. Write one of %1.</source>
        <translation>ce bois n'est pas connu. Écrivez l'un de : %1.</translation>
    </message>
    <message>
        <source>%1 MJ/kg (%2 Btu/lb)</source>
        <translation>%1 MJ/kg (%2 Btu/lb)</translation>
    </message>
    <message>
        <source>%1 percent of the wood as it is (wet basis) is water; on the dry basis that is %2 percent.</source>
        <translation>L'eau fait %1 pour cent du bois tel quel (base humide); sur base sèche, c'est %2 pour cent.</translation>
    </message>
    <message>
        <source>Dry wood of this kind gives %1 MJ/kg; the water carries none and must be boiled off.</source>
        <translation>Sec, ce bois donne %1 MJ/kg; l'eau n'en donne pas et doit être évaporée.</translation>
    </message>
    <message>
        <source>A cord is 128 cubic feet stacked, about 85 of them wood, %1 times as heavy as water when dry.</source>
        <translation>Une corde fait 128 pieds cubes empilés, dont 85 environ de bois, %1 fois aussi lourd que l'eau une fois sec.</translation>
    </message>
    <message>
        <source>Heating values 5 percent; a cord 15 percent, as stacks and trees differ.</source>
        <translation>Pouvoirs calorifiques à 5 pour cent près; une corde à 15 pour cent, car piles et arbres varient.</translation>
    </message>
    <message>
        <source>To raise the pans by %1 mm takes %2 L.</source>
        <translation>Monter les casseroles de %1 mm prend %2 L.</translation>
    </message>
    <message>
        <source>While the fire dies, half of its rate for %1 min boils off another %2 L.</source>
        <translation>Pendant que le feu s'éteint, la moitié de son débit pendant %1 min évapore encore %2 L.</translation>
    </message>
    <message>
        <source>Within 20 percent; large wood and deep coals burn longer. Keep more rather than less.</source>
        <translation>À 20 pour cent près; le gros bois et la braise épaisse durent plus. Gardez plutôt plus que moins.</translation>
    </message>
    <message>
        <source>Keep to local fire codes and the maker's clearances. Flue gas in a closed house kills: have a carbon monoxide alarm.</source>
        <translation>Suivez le code local d'incendie et les dégagements du fabricant. Les gaz de cheminée dans un lieu fermé tuent : ayez un avertisseur de monoxyde de carbone.</translation>
    </message>
    <message>
        <source>A dry pan burns within minutes and can start a fire. Stay until the fire is dead, look again an hour later, and keep cold sap at hand.</source>
        <translation>Une casserole à sec brûle en quelques minutes et peut mettre le feu. Restez jusqu'à ce que le feu soit mort, revenez voir une heure après, et gardez de l'eau d'érable froide à portée.</translation>
    </message>
    <message>
        <source>Lower heating value</source>
        <translation>Pouvoir calorifique inférieur</translation>
    </message>
    <message>
        <source>Higher heating value</source>
        <translation>Pouvoir calorifique supérieur</translation>
    </message>
    <message>
        <source>A full cord weighs</source>
        <translation>Une corde pleine pèse</translation>
    </message>
    <message>
        <source>A face cord of 16 in sticks</source>
        <translation>Une corde de façade, bûches de 16 po</translation>
    </message>
    <message>
        <source>a part is a volume and a density with @ between them, as in %1.</source>
        <translation>une part est un volume et une densité avec @ entre les deux, par exemple %1.</translation>
    </message>
    <message>
        <source>sap must be thinner than syrup. Are the two the right way round?</source>
        <translation>l'eau d'érable doit être moins dense que le sirop. Les deux sont-ils dans le bon ordre?</translation>
    </message>
    <message>
        <source>sap of less than 0.2 °Brix is as good as water.</source>
        <translation>une eau d'érable de moins de 0,2 °Brix vaut de l'eau pure.</translation>
    </message>
    <message>
        <source>The sugar in a liter of %1 °Brix syrup is that in %2 liters of %3 °Brix sap.</source>
        <translation>Le sucre d'un litre de sirop à %1 °Brix est celui de %2 litres d'eau d'érable à %3 °Brix.</translation>
    </message>
    <message>
        <source>The rule of 86 says 86 over %1, or %2: it was made for raw sap and thinner syrup, of 65.5 °Brix.</source>
        <translation>La règle de 86 dit 86 sur %1, soit %2 : elle est faite pour l'eau d'érable brute et un sirop moins dense, de 65,5 °Brix.</translation>
    </message>
    <message>
        <source>The revised rule for this density says %1.</source>
        <translation>La règle révisée dit pour cette densité %1.</translation>
    </message>
    <message>
        <source>For %1 L of syrup: %2 L of sap.</source>
        <translation>Pour %1 L de sirop : %2 L d'eau d'érable.</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>0.1 °Brix wrong in the sap is %1 wrong in the ratio.</source>
        <translation>0,1 °Brix d'erreur sur l'eau d'érable, c'est %1 sur le rapport.</translation>
    </message>
    <message>
        <source>%1 L of %2 °Brix.</source>
        <translation>%1 L à %2 °Brix.</translation>
    </message>
    <message>
        <source>there is nothing to mix: all volumes are zero.</source>
        <translation>il n'y a rien à mêler : tous les volumes sont nuls.</translation>
    </message>
    <message>
        <source>Mass and sugar add up: %1 L of %2 °Brix.</source>
        <translation>Masse et sucre s'additionnent : %1 L à %2 °Brix.</translation>
    </message>
    <message>
        <source>As good as the readings that went in. Volumes are taken at 20 °C; hot syrup takes up 4 percent more.</source>
        <translation>Vaut ce que valent les lectures. Les volumes sont pris à 20 °C; le sirop chaud occupe 4 pour cent de plus.</translation>
    </message>
    <message>
        <source>For planning. Sugar also stays in the pans, the filter and the drums: a season's total is always worse.</source>
        <translation>Pour prévoir. Du sucre reste aussi dans les casseroles, le filtre et les barils : le total d'une saison est toujours moins bon.</translation>
    </message>
    <message>
        <source>Stir well, heat again and test again: the hydrometer decides. Note which lots went in.</source>
        <translation>Mêlez bien, réchauffez et mesurez encore : le densimètre décide. Notez quels lots y sont entrés.</translation>
    </message>
    <message>
        <source>Sap for one of syrup</source>
        <translation>Eau d'érable pour un de sirop</translation>
    </message>
    <message>
        <source>By the rule of 86</source>
        <translation>Selon la règle de 86</translation>
    </message>
    <message>
        <source>Sap in all</source>
        <translation>Eau d'érable en tout</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Mélangé</translation>
    </message>
    <message>
        <source>the types known are K, J and T.</source>
        <translation>les types connus sont K, J et T.</translation>
    </message>
    <message>
        <source>%1 mV</source>
        <translation>%1 mV</translation>
    </message>
    <message>
        <source>Wire of class 2 is within %1 C° near 100 °C, or 0.75 percent if that is more; the sum itself is exact.</source>
        <translation>Le fil de classe 2 est à %1 C° près autour de 100 °C, ou 0,75 pour cent si c'est plus; le calcul lui-même est exact.</translation>
    </message>
    <message>
        <source>give one of --mv and --temp.</source>
        <translation>donnez soit --mv, soit --temp.</translation>
    </message>
    <message>
        <source>The emf of %1 °C less that of the junction at %2 °C is %3 mV.</source>
        <translation>La tension de %1 °C moins celle de la jonction à %2 °C fait %3 mV.</translation>
    </message>
    <message>
        <source>type %1 gives no such voltage from %2 to %3 °C. Is the pair open or reversed, the type right, the voltage in millivolts?</source>
        <translation>le type %1 ne donne pas cette tension de %2 à %3 °C. Le couple est-il ouvert ou inversé, le type le bon, la tension en millivolts?</translation>
    </message>
    <message>
        <source>%1 mV and the emf of the junction at %2 °C together are the emf of %3 °C.</source>
        <translation>%1 mV et la tension de la jonction à %2 °C font ensemble la tension de %3 °C.</translation>
    </message>
    <message>
        <source>give one of --ohm and --temp.</source>
        <translation>donnez soit --ohm, soit --temp.</translation>
    </message>
    <message>
        <source>that is outside -200 to 850 °C.</source>
        <translation>c'est hors de -200 à 850 °C.</translation>
    </message>
    <message>
        <source>%1 ohm</source>
        <translation>%1 ohm</translation>
    </message>
    <message>
        <source>100 ohm at 0 °C; %1 ohm at %2 °C.</source>
        <translation>100 ohm à 0 °C; %1 ohm à %2 °C.</translation>
    </message>
    <message>
        <source>An element of class A is within %1 C° here, of class B within %2 C°; 0.38 ohm in the leads is 1 °C.</source>
        <translation>Une sonde de classe A est ici à %1 C° près, de classe B à %2 C° près; 0,38 ohm dans les fils vaut 1 °C.</translation>
    </message>
    <message>
        <source>No probe finishes syrup untrimmed: set it to zero in plain boiling water of the day, then against the hydrometer.</source>
        <translation>Aucune sonde ne finit le sirop sans ajustement : mettez-la à zéro dans l'eau pure bouillante du jour, puis d'après le densimètre.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Résistance</translation>
    </message>
    <message>
        <source>nothing stands there. Write a number and its unit together, as in %1.</source>
        <translation>il n'y a rien. Écrivez un nombre et son unité ensemble, par exemple %1.</translation>
    </message>
    <message>
        <source>the number has no unit. Write them together, as in %1; units: %2.</source>
        <translation>le nombre n'a pas d'unité. Écrivez-les ensemble, par exemple %1; unités : %2.</translation>
    </message>
    <message>
        <source>Did you mean %1%2?</source>
        <translation>Vouliez-vous dire %1%2?</translation>
    </message>
    <message>
        <source>that is not a number. Write a point, not a comma, as in %1.</source>
        <translation>ce n'est pas un nombre. Écrivez un point, non une virgule, par exemple %1.</translation>
    </message>
    <message>
        <source>that is not an amount. Write a number and its unit together, as in %1.</source>
        <translation>ce n'est pas une quantité. Écrivez un nombre et son unité ensemble, par exemple %1.</translation>
    </message>
    <message>
        <source>there is no unit %1. Write one of %2 (capitals count), as in %3.</source>
        <translation>l'unité %1 n'existe pas. Écrivez l'une de %2 (les majuscules comptent), par exemple %3.</translation>
    </message>
    <message>
        <source>this sum has no such argument.</source>
        <translation>ce calcul n'a pas cet argument.</translation>
    </message>
    <message>
        <source>it is given twice.</source>
        <translation>c'est donné deux fois.</translation>
    </message>
    <message>
        <source>it is needed: %1, as in %2.</source>
        <translation>il le faut : %1, par exemple %2.</translation>
    </message>
    <message>
        <source>%1 is a unit of something else. Write one of %2, as in %3.</source>
        <translation>%1 est l'unité d'autre chose. Écrivez l'une de %2, par exemple %3.</translation>
    </message>
    <message>
        <source>it must lie from %1 to %2 %3.</source>
        <translation>ce doit être de %1 à %2 %3.</translation>
    </message>
    <message>
        <source>a rise is written in degC, degF or K, as in %1.</source>
        <translation>une hausse s'écrit en degC, degF ou K, par exemple %1.</translation>
    </message>
    <message>
        <source>a rise must lie from 0 to %1 %2.</source>
        <translation>une hausse doit être de 0 à %1 %2.</translation>
    </message>
    <message>
        <source>That looks like what the thermometer reads. A rise is how far it stands above boiling water.</source>
        <translation>Cela ressemble à ce que le thermomètre indique. La hausse dit combien il est au-dessus de l'eau bouillante.</translation>
    </message>
    <message>
        <source>Was it shifted by 32? A difference is not: 4 °C of rise are 7.2 °F.</source>
        <translation>A-t-on ajouté 32? Pas pour une différence : 4 °C de hausse font 7,2 °F.</translation>
    </message>
    <message>
        <source>it must lie from 0 to %1 baume.</source>
        <translation>ce doit être de 0 à %1 baume.</translation>
    </message>
    <message>
        <source>that is not a plain number. Write digits with a point, as in %1.</source>
        <translation>ce n'est pas un simple nombre. Écrivez des chiffres avec un point, par exemple %1.</translation>
    </message>
    <message>
        <source>it must lie from %1 to %2.</source>
        <translation>ce doit être de %1 à %2.</translation>
    </message>
    <message>
        <source>The scale is good to 0.02 °Brix, the correction to 0.02 below 20 °C and 0.06 at 30 °C; a hand refractometer to 0.2.</source>
        <translation>L'échelle est bonne à 0,02 °Brix, la correction à 0,02 sous 20 °C et à 0,06 à 30 °C; un réfractomètre à main à 0,2.</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>Water at %1 °C weighs %2 kg a liter; %3 °Brix of sugar in it brings that to %4.</source>
        <translation>À %1 °C l'eau pèse %2 kg le litre; avec %3 °Brix de sucre, cela fait %4.</translation>
    </message>
    <message>
        <source>One standard uncertainty is %1 kg in 1000 liters.</source>
        <translation>Une incertitude type est de %1 kg sur 1000 litres.</translation>
    </message>
    <message>
        <source>give one of --index (with --temp) and --density.</source>
        <translation>donnez soit --index (avec --temp), soit --density.</translation>
    </message>
    <message>
        <source>The scale has %1 °Brix at an index of %2 at 20 °C.</source>
        <translation>L'échelle a %1 °Brix pour un indice de %2 à 20 °C.</translation>
    </message>
    <message>
        <source>at that temperature even plain water bends light more than this.</source>
        <translation>à cette température, même l'eau pure dévie plus la lumière.</translation>
    </message>
    <message>
        <source>An index of %1 reads %2 °Brix on the scale made for 20 °C.</source>
        <translation>Un indice de %1 se lit %2 °Brix sur l'échelle faite pour 20 °C.</translation>
    </message>
    <message>
        <source>At %1 °C the reading needs %2 °Brix added.</source>
        <translation>À %1 °C il faut ajouter %2 °Brix à la lecture.</translation>
    </message>
    <message>
        <source>give one of --density and --baume.</source>
        <translation>donnez soit --density, soit --baume.</translation>
    </message>
    <message>
        <source>%1 °Bé</source>
        <translation>%1 °Bé</translation>
    </message>
    <message>
        <source>At %1 °C it weighs %2 times as much as water.</source>
        <translation>À %1 °C il pèse %2 fois autant que l'eau.</translation>
    </message>
    <message>
        <source>145 less 145 over %1 is %2 °Bé.</source>
        <translation>145 moins 145 sur %1 fait %2 °Bé.</translation>
    </message>
    <message>
        <source>Printed tables agree within 0.06 °Bé, which is 0.1 °Brix.</source>
        <translation>Les tables imprimées concordent à 0,06 °Bé, soit 0,1 °Brix.</translation>
    </message>
    <message>
        <source>Real syrup is not pure sugar: allow 0.2 °Brix between instruments. For sale, the law of the place says which instrument counts.</source>
        <translation>Le vrai sirop n'est pas du sucre pur : comptez 0,2 °Brix entre instruments. Pour la vente, la loi du lieu dit quel instrument fait foi.</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Refractive index at 20 °C</source>
        <translation>Indice de réfraction à 20 °C</translation>
    </message>
    <message>
        <source>A liter weighs</source>
        <translation>Un litre pèse</translation>
    </message>
    <message>
        <source>A gallon weighs</source>
        <translation>Un gallon pèse</translation>
    </message>
    <message>
        <source>%1 °C (%2 °F)</source>
        <translation>%1 °C (%2 °F)</translation>
    </message>
    <message>
        <source>%1 C° (%2 F°)</source>
        <translation>%1 C° (%2 F°)</translation>
    </message>
    <message>
        <source>%1 kPa (%2 inHg)</source>
        <translation>%1 kPa (%2 inHg)</translation>
    </message>
    <message>
        <source>%1 L (%2 gal)</source>
        <translation>%1 L (%2 gal)</translation>
    </message>
    <message>
        <source>%1 kg (%2 lb)</source>
        <translation>%1 kg (%2 lb)</translation>
    </message>
    <message>
        <source>Weight to fill</source>
        <translation>Poids à verser</translation>
    </message>
    <message>
        <source>What a drum gives</source>
        <translation>Ce que donne un baril</translation>
    </message>
    <message>
        <source>Color of a blend</source>
        <translation>Couleur d'un mélange</translation>
    </message>
    <message>
        <source>Concentrating sap</source>
        <translation>Concentrer l'eau d'érable</translation>
    </message>
    <message>
        <source>Sap hydrometer</source>
        <translation>Densimètre à eau d'érable</translation>
    </message>
    <message>
        <source>what the container is to hold</source>
        <translation>ce que le contenant doit tenir</translation>
    </message>
    <message>
        <source>temperature the size is meant at (20degC if left out)</source>
        <translation>température à laquelle le format s'entend (20degC si omise)</translation>
    </message>
    <message>
        <source>how much syrup there is, at 20 degC</source>
        <translation>combien il y a de sirop, à 20 degC</translation>
    </message>
    <message>
        <source>a size of container</source>
        <translation>un format de contenant</translation>
    </message>
    <message>
        <source>volume of a part and the light it lets through</source>
        <translation>volume d'une part et lumière qu'elle laisse passer</translation>
    </message>
    <message>
        <source>volume and sugar of the sap</source>
        <translation>volume et sucre de l'eau d'érable</translation>
    </message>
    <message>
        <source>sugar of the concentrate</source>
        <translation>sucre du concentré</translation>
    </message>
    <message>
        <source>what the sap hydrometer shows</source>
        <translation>ce que marque le densimètre à eau</translation>
    </message>
    <message>
        <source>temperature of the sap</source>
        <translation>température de l'eau d'érable</translation>
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
        <source>No scale here is legal for trade: sell by one that is inspected. Take off the empty container's own weight. Hot syrup burns deeply: carry it covered.</source>
        <translation>Aucune balance d'ici n'est légale pour la vente : vendez avec une balance vérifiée. Retranchez le poids du contenant vide. Le sirop chaud brûle en profondeur : portez-le couvert.</translation>
    </message>
    <message>
        <source>An estimate: measure before it is labelled.</source>
        <translation>Une estimation : mesurez avant d'étiqueter.</translation>
    </message>
    <message>
        <source>Weight of the content</source>
        <translation>Poids du contenu</translation>
    </message>
    <message>
        <source>A liter of %1 °Brix weighs %2 kg at %3 °C.</source>
        <translation>Un litre à %1 °Brix pèse %2 kg à %3 °C.</translation>
    </message>
    <message>
        <source>The same content fills %1 percent more at 85 °C: a container that is brim-full of hot syrup is so much short when it is cold.</source>
        <translation>Le même contenu occupe %1 pour cent de plus à 85 °C : il en manque autant, une fois froid, à un contenant rempli à ras bord de sirop chaud.</translation>
    </message>
    <message>
        <source>0.1 °Brix wrong in the syrup is 0.05 percent of the weight.</source>
        <translation>0,1 °Brix d'erreur sur le sirop fait 0,05 pour cent du poids.</translation>
    </message>
    <message>
        <source>%1 of %2 L, each to be filled to %3 kg.</source>
        <translation>%1 de %2 L, chacun à remplir jusqu'à %3 kg.</translation>
    </message>
    <message>
        <source>Containers</source>
        <translation>Contenants</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>At 20 °C, with nothing broken, tasted or left in the filler.</source>
        <translation>À 20 °C, sans rien de cassé, de goûté ni de resté dans la remplisseuse.</translation>
    </message>
    <message>
        <source>a part is a volume and its light with @ between them, as in %1.</source>
        <translation>une part est un volume et sa lumière séparés par @, comme %1.</translation>
    </message>
    <message>
        <source>%1 L that lets %2 percent of light through.</source>
        <translation>%1 L qui laissent passer %2 pour cent de la lumière.</translation>
    </message>
    <message>
        <source>What each takes away adds up by volume: %1 percent is left.</source>
        <translation>Ce que chacun retient s'additionne selon le volume : il reste %1 pour cent.</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>Class by light</source>
        <translation>Classe selon la lumière</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>%1 pour cent</translation>
    </message>
    <message>
        <source>About 3 percent of light either way; clouded or unfiltered syrup is not covered.</source>
        <translation>Environ 3 pour cent de lumière de part et d'autre; ne vaut pas pour un sirop trouble ou non filtré.</translation>
    </message>
    <message>
        <source>Concentrate spoils sooner than sap: boil it first. Rinse after every cleaner.</source>
        <translation>Le concentré se gâte plus vite que l'eau d'érable : bouillez-le d'abord. Rincez après chaque nettoyant.</translation>
    </message>
    <message>
        <source>A hydrometer shows all that is dissolved as sugar; ice in a tank makes what is left sweeter.</source>
        <translation>Un densimètre montre tout ce qui est dissous comme du sucre; la glace dans un bassin rend plus sucré ce qui reste.</translation>
    </message>
    <message>
        <source>sap is a volume and its sugar with @ between them, as in %1.</source>
        <translation>l'eau d'érable est un volume et son sucre séparés par @, comme %1.</translation>
    </message>
    <message>
        <source>concentrate must be sweeter than the sap. Are the two the right way round?</source>
        <translation>le concentré doit être plus sucré que l'eau d'érable. Les deux sont-ils dans le bon sens?</translation>
    </message>
    <message>
        <source>All the sugar stays: %1 L of %2 °Brix becomes %3 L of %4 °Brix.</source>
        <translation>Tout le sucre reste : %1 L à %2 °Brix donnent %3 L à %4 °Brix.</translation>
    </message>
    <message>
        <source>For a liter of syrup the pans now boil off %1 L of water instead of %2 L: %3 percent of the boil and of the wood is saved.</source>
        <translation>Pour un litre de sirop, les casseroles évaporent maintenant %1 L d'eau au lieu de %2 L : %3 pour cent de la bouillée et du bois est épargné.</translation>
    </message>
    <message>
        <source>As good as the readings: 0.1 °Brix wrong in the sap is %1 percent of the volume.</source>
        <translation>Vaut ce que valent les lectures : 0,1 °Brix d'erreur sur l'eau fait %1 pour cent du volume.</translation>
    </message>
    <message>
        <source>Concentrate</source>
        <translation>Concentré</translation>
    </message>
    <message>
        <source>Water taken out</source>
        <translation>Eau retirée</translation>
    </message>
    <message>
        <source>at that temperature it would be less than no sugar. Is the temperature that of the sap?</source>
        <translation>à cette température, ce serait moins que pas de sucre. Est-ce la température de l'eau d'érable?</translation>
    </message>
    <message>
        <source>Sugar of the sap</source>
        <translation>Sucre de l'eau d'érable</translation>
    </message>
    <message>
        <source>The scale was made for %1 °C; the sap is at %2 °C.</source>
        <translation>L'échelle est faite pour %1 °C; l'eau d'érable est à %2 °C.</translation>
    </message>
    <message>
        <source>%1 °Brix as read means %2 °Brix.</source>
        <translation>%1 °Brix lus valent %2 °Brix.</translation>
    </message>
    <message>
        <source>A sap hydrometer is read to 0.1 °Brix; 5 °C wrong in the sap's temperature is up to 0.2 °Brix near 20 °C.</source>
        <translation>Un densimètre à eau se lit à 0,1 °Brix près; 5 °C d'erreur sur la température de l'eau font jusqu'à 0,2 °Brix vers 20 °C.</translation>
    </message>
    <message>
        <source>%1 L (%2 qt)</source>
        <translation>%1 L (%2 pinte US)</translation>
    </message>
    <message>
        <source>%1 mL (%2 pt)</source>
        <translation>%1 mL (%2 chopine US)</translation>
    </message>
    <message>
        <source>%1 mL (%2 cups)</source>
        <translation>%1 mL (%2 tasse)</translation>
    </message>
    <message>
        <source>concentrate must be sweeter than the sap.</source>
        <translation>le concentré doit être plus sucré que l'eau d'érable.</translation>
    </message>
    <message>
        <source>%1 L are on hand with %2 kg of sugar; %3 L of water must go. Nothing is kept back, as nothing is known of the pans: say how much covers them while the fire burns out, and stop that much sooner.</source>
        <translation>%1 L sont là avec %2 kg de sucre; %3 L d'eau doivent partir. Rien n'est gardé, car rien n'est connu des casseroles : dites combien les couvre pendant que le feu s'éteint, et cessez d'autant plus tôt.</translation>
    </message>
    <message>
        <source>No tree gives sap of %1 °Brix. Did you mean %2?</source>
        <translation>Aucun arbre ne donne d'eau à %1 °Brix : vouliez-vous dire %2?</translation>
    </message>
    <message>
        <source>Tomorrow's run</source>
        <translation>La coulée de demain</translation>
    </message>
    <message>
        <source>coldest of the night</source>
        <translation>minimum de la nuit</translation>
    </message>
    <message>
        <source>warmest of the day</source>
        <translation>maximum du jour</translation>
    </message>
    <message>
        <source>how many taps</source>
        <translation>nombre d'entailles</translation>
    </message>
    <message>
        <source>a day that hardly thaws</source>
        <translation>un jour qui dégèle à peine</translation>
    </message>
    <message>
        <source>no freeze: what the last one left</source>
        <translation>pas de gel : ce que le dernier a laissé</translation>
    </message>
    <message>
        <source>a fair run</source>
        <translation>une coulée moyenne</translation>
    </message>
    <message>
        <source>a heavy day</source>
        <translation>une forte coulée</translation>
    </message>
    <message>
        <source>%1 to %2 L (%3 to %4 gal)</source>
        <translation>%1 à %2 L (%3 à %4 gal)</translation>
    </message>
    <message>
        <source>the warmest of the day is under the coldest of the night. Are the two the right way round?</source>
        <translation>le maximum du jour est sous le minimum de la nuit. Les deux sont-ils dans le bon ordre?</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>À quoi s'attendre</translation>
    </message>
    <message>
        <source>Sap of a tap</source>
        <translation>Eau par entaille</translation>
    </message>
    <message>
        <source>Sap of all taps</source>
        <translation>Eau de toutes les entailles</translation>
    </message>
    <message>
        <source>%1 °C by night, %2 °C by day.</source>
        <translation>%1 °C la nuit, %2 °C le jour.</translation>
    </message>
    <message>
        <source>A rule of thumb: sun, wind, vacuum, the trees and how long it was cold are not in it. What your own taps gave on such days goes before it.</source>
        <translation>Une règle du pouce : soleil, vent, vide, arbres et durée du froid n'y sont pas. Ce que vos entailles ont donné de tels jours passe avant.</translation>
    </message>
    <message>
        <source>A heavy day of about a gallon a tap: trade farming magazine, about 2015; the temperatures and the other amounts are common practice, no source</source>
        <translation>Une forte coulée d'environ un gallon par entaille : revue agricole, vers 2015; les températures et les autres quantités sont d'usage courant, sans source</translation>
    </message>
    <message>
        <source>Look how much room the tanks have before such a day.</source>
        <translation>Regardez la place qui reste dans les bassins avant un tel jour.</translation>
    </message>
    <message>
        <source>Vermont's own chart asks %1 °Brix (%2 °Bé) of a glass in such a cup, and there the chart decides.</source>
        <translation>La charte du Vermont demande %1 °Brix (%2 °Bé) d'un verre dans un tel godet, et là c'est la charte qui décide.</translation>
    </message>
    <message>
        <source>Vermont's own chart pairs %1 °Bé with %2 °Brix, and there the chart decides.</source>
        <translation>La charte du Vermont joint %1 °Bé à %2 °Brix, et là c'est la charte qui décide.</translation>
    </message>
</context>
<context>
    <name>Reckoner</name>
    <message>
        <source>Barometer at the pan</source>
        <translation>Baromètre à la casserole</translation>
    </message>
    <message>
        <source>Pressure at sea level</source>
        <translation>Pression au niveau de la mer</translation>
    </message>
    <message>
        <source>Altimeter setting</source>
        <translation>Calage altimétrique</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Outside air</source>
        <translation>Air extérieur</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densité</translation>
    </message>
    <message>
        <source>Rise above water</source>
        <translation>Au-dessus de l'eau</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Baromètre</translation>
    </message>
    <message>
        <source>Weather report</source>
        <translation>Bulletin météo</translation>
    </message>
    <message>
        <source>From the density</source>
        <translation>D'après la densité</translation>
    </message>
    <message>
        <source>From the rise</source>
        <translation>D'après la hausse</translation>
    </message>
    <message>
        <source>By weather report</source>
        <translation>Par le bulletin météo</translation>
    </message>
    <message>
        <source>Hydrometer shows</source>
        <translation>Densimètre indique</translation>
    </message>
    <message>
        <source>In the cup</source>
        <translation>Dans le godet</translation>
    </message>
    <message>
        <source>Scale made for</source>
        <translation>Échelle faite pour</translation>
    </message>
    <message>
        <source>How much syrup</source>
        <translation>Combien de sirop</translation>
    </message>
    <message>
        <source>Wanted density</source>
        <translation>Densité voulue</translation>
    </message>
    <message>
        <source>Sap to thin it</source>
        <translation>Eau d'érable pour diluer</translation>
    </message>
    <message>
        <source>Sap</source>
        <translation>Eau d'érable</translation>
    </message>
    <message>
        <source>First part</source>
        <translation>Première part</translation>
    </message>
    <message>
        <source>Its density</source>
        <translation>Sa densité</translation>
    </message>
    <message>
        <source>Second part</source>
        <translation>Seconde part</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>From the index</source>
        <translation>D'après l'indice</translation>
    </message>
    <message>
        <source>Index as read</source>
        <translation>Indice lu</translation>
    </message>
    <message>
        <source>From degrees Baumé</source>
        <translation>D'après les degrés Baumé</translation>
    </message>
    <message>
        <source>Degrees Baumé</source>
        <translation>Degrés Baumé</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>Water in it (wet basis)</source>
        <translation>Eau qu'il contient (base humide)</translation>
    </message>
    <message>
        <source>Area of the pans</source>
        <translation>Surface des casseroles</translation>
    </message>
    <message>
        <source>Depth to add</source>
        <translation>Hauteur à ajouter</translation>
    </message>
    <message>
        <source>Water boiled off</source>
        <translation>Eau évaporée</translation>
    </message>
    <message>
        <source>Fire burns out in</source>
        <translation>Le feu s'éteint en</translation>
    </message>
    <message>
        <source>From the voltage</source>
        <translation>D'après la tension</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>Its other end</source>
        <translation>Son autre bout</translation>
    </message>
    <message>
        <source>From the temperature</source>
        <translation>D'après la température</translation>
    </message>
    <message>
        <source>From the resistance</source>
        <translation>D'après la résistance</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Résistance</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Type: %1.</source>
        <translation>Tapez : %1.</translation>
    </message>
    <message>
        <source>Size of the container</source>
        <translation>Format du contenant</translation>
    </message>
    <message>
        <source>Meant at</source>
        <translation>S'entend à</translation>
    </message>
    <message>
        <source>Another size</source>
        <translation>Autre format</translation>
    </message>
    <message>
        <source>Its light</source>
        <translation>Sa lumière</translation>
    </message>
    <message>
        <source>How much sap</source>
        <translation>Combien d'eau d'érable</translation>
    </message>
    <message>
        <source>Its sugar</source>
        <translation>Son sucre</translation>
    </message>
    <message>
        <source>Concentrate</source>
        <translation>Concentré</translation>
    </message>
    <message>
        <source>In the sap</source>
        <translation>Dans l'eau d'érable</translation>
    </message>
    <message>
        <source>Coldest of the night</source>
        <translation>Minimum de la nuit</translation>
    </message>
    <message>
        <source>Warmest of the day</source>
        <translation>Maximum du jour</translation>
    </message>
    <message>
        <source>How many taps</source>
        <translation>Nombre d'entailles</translation>
    </message>
</context>
<context>
    <name>panside::ReckonerScreen</name>
    <message>
        <source>other way</source>
        <translation>autre façon</translation>
    </message>
    <message>
        <source>%1 (or leave empty)</source>
        <translation>%1 (ou laisser vide)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Source : %1.</translation>
    </message>
</context>
<context>
    <name>wood</name>
    <message>
        <source>hardwood</source>
        <translation>bois franc</translation>
    </message>
    <message>
        <source>softwood</source>
        <translation>bois mou</translation>
    </message>
    <message>
        <source>sugar maple</source>
        <translation>érable à sucre</translation>
    </message>
    <message>
        <source>red maple</source>
        <translation>érable rouge</translation>
    </message>
    <message>
        <source>beech</source>
        <translation>hêtre</translation>
    </message>
    <message>
        <source>yellow birch</source>
        <translation>bouleau jaune</translation>
    </message>
    <message>
        <source>white birch</source>
        <translation>bouleau blanc</translation>
    </message>
    <message>
        <source>white ash</source>
        <translation>frêne blanc</translation>
    </message>
    <message>
        <source>red oak</source>
        <translation>chêne rouge</translation>
    </message>
    <message>
        <source>white oak</source>
        <translation>chêne blanc</translation>
    </message>
    <message>
        <source>black cherry</source>
        <translation>cerisier tardif</translation>
    </message>
    <message>
        <source>elm</source>
        <translation>orme</translation>
    </message>
    <message>
        <source>aspen</source>
        <translation>peuplier faux-tremble</translation>
    </message>
    <message>
        <source>basswood</source>
        <translation>tilleul</translation>
    </message>
    <message>
        <source>hemlock</source>
        <translation>pruche</translation>
    </message>
    <message>
        <source>white pine</source>
        <translation>pin blanc</translation>
    </message>
    <message>
        <source>spruce</source>
        <translation>épinette</translation>
    </message>
    <message>
        <source>larch</source>
        <translation>mélèze</translation>
    </message>
    <message>
        <source>balsam fir</source>
        <translation>sapin baumier</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>J</source>
        <translation>J</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
</context>
</TS>
