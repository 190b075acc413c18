"""Drinks, by what they do to glucose.

`FREE_DRINK` holds only what is surely free of sugar: a pair stays clean with it. A drink that
may or may not be sweetened (tea, coffee, beer) is `UNKNOWN` and counts as sweetened.
"""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind
from bot.parser.vocabulary import Block, gathered

_FREE: Final = """
water, watr, waters, glass of water, bottle of water, cup of water, plain water, cold water
iced water, ice water, hot water, warm water, lemon water, hot water and lemon, water with lemon
lime water, cucumber water, tap water, bottled water, mineral water, sparkling water, soda water
club soda, seltzer, seltzer water, fizzy water, carbonated water, still water, spring water
infused water, barley tea, roasted barley tea, corn silk tea, black coffee, coffee black
coffee no sugar, coffee without sugar, unsweetened coffee, black americano, coffee with sweetener
{black|green|plain|herbal|mint|iced|hot} {tea|coffee} {no|without|w/o|with no|minus} sugar
{tea|coffee|chai} {no|without|w/o|with no|minus} {sugar|milk or sugar|sugar or milk}
{tea|coffee} {with|and} {sweetener|stevia|saccharin}
unsweetened (iced |ice |green |black ){tea|coffee}
{sugarless|sugar-free|no sugar} (iced |black |green ){tea|coffee}
{sugarless|sugar-free|no sugar} {drink(s)|soda(s)|pop|cola|lemonade|squash|cordial|energy drink(s)
  ginger ale|tonic water|root beer}
{diet|zero|zero sugar|light} {soda(s)|pop|cola|drink(s)|lemonade|ginger ale|tonic|root beer
  fizzy drink(s)|soft drink(s)|squash|cordial}
cola zero, soda with no sugar, diet tonic water, zero calorie drink, unsweetened almond milk
unsweetened hibiscus, unsweetened zobo, unsweetened bissap, mate amargo, bitter mate
rooibos no sugar
"""

_SWEET: Final = """
cola(s), soda(s), sodas, soda pop, can of {soda|cola|pop}, pop drink, fizzy drink(s), fizzy pop
fizzy juice, soft drink(s), softdrink(s), cool drink(s), cooldrink(s), cold drink(s)
mineral drink, minerals drink, lemonade(s), lemonad, limeade, orangeade, orange soda, grape soda
cream soda, root beer, ginger beer, ginger ale, tonic water, regular soda, full sugar {cola|soda}
sugary drink(s), sweet drink(s), sugar drink(s), sugary soda, lemon lime soda, club orange drink
cherry cola, rum and cola, vodka and orange, gin and tonic, gin & tonic, shandy, alcopop(s)
wine cooler(s), cocktail(s), margarita(s), daiquiri(s), pina colada(s), mojito(s), sangria
mulled wine, sweet wine, dessert wine, port wine, sherry, liqueur(s), irish cream, cider(s)
hard seltzer
(glass of |cup of |bottle of ){orange|apple|grape|cranberry|mango|pineapple|fruit|guava|grapefruit
  pear|peach|cherry|passion fruit|pomegranate|tamarind|soursop|papaya|carrot|beet|fresh|lemon|lime
  prune|watermelon|sugarcane|sugar cane|cane|berry|mixed|tropical|lychee|noni|orenge} juice(s)
juice(s), juce, juise, juice box(es), glass of juice, fruit drink(s), juice drink(s), fruit punch
punch, oj, nectar, mango nectar, peach nectar, squash drink, orange squash, cordial
blackcurrant squash, blackcurrant cordial, barley water sweet, sweetened lemon water, honey water
sugar water, water with sugar, water and sugar, water with honey, oral rehydration drink
lemon and honey, honey and lemon, hot lemon and honey, sweet tea, sweet ice tea, sweet iced tea
sweetened tea, tea with sugar, tea and sugar, tea w sugar, tea with honey, sugar tea, sugary tea
tea 2 sugars, tea with {1|2|3|one} sugar(s)
tea {1|2|3|one} sugar(s), iced tea with sugar, peach iced tea, bottled iced tea
lemon iced tea sweet
{coffee|chai|milk tea} {with|and|w} {sugar|honey|sugars|syrup|condensed milk}
{coffee|chai} {with|w} {one|1|2|3} sugar(s), coffee {one|1|2|3} sugar(s)
sweet coffee, sweet chai, vanilla latte, caramel latte, flavoured latte, flavored latte
pumpkin spice latte, pumpkin latte, mocha(s), cafe mocha, frappe(s), iced mocha
iced caramel coffee, blended coffee drink, sweet cream coffee, vietnamese coffee
vietnamese iced coffee, white coffee sweet, kopi susu, kopi tubruk manis, 3 in one coffee, 3 in 1 coffee
3 in 1 coffee, bubble tea, boba, boba tea, pearl milk tea, milk tea, thai tea, thai iced tea
thai milk tea, hong kong milk tea, teh tarik, the tarik, cha yen, nai cha, teh manis
es teh manis, brown sugar boba, hot chocolate(s), hot choclate, hot cocoa, cocoa, cocoa drink
chocolate milk, chocolate drink, choc milk, drinking chocolate, malted drink, malted milk
malt drink, malta, malt, strawberry milk, banana milk, flavored milk, flavoured milk
sweetened milk, condensed milk tea, eggnog, egg nog, coquito, ponche crema, milkshake(s)
milk shake(s), shake(s), strawberry milkshake, chocolate milkshake, vanilla shake
chocolate shake, malted shake, float drink, root beer float, ice cream soda, smoothie(s), smoothy
fruit smoothie(s), berry smoothie, green smoothie, banana smoothie, mango smoothie
protein shake(s), meal replacement shake, breakfast shake, slushie(s), slushy, slush, ice slush
energy drink(s), energy drinks, sports drink(s), sport drink(s), isotonic drink
electrolyte drink, glucose drink, glucose energy drink, vitamin water, flavored water
flavoured water, kombucha, coconut water, horchata, orchata, agua fresca, agua de jamaica
jamaica, tamarindo, tepache, champurrado, atole, mauby, sorrel drink, sorrel juice, sea moss
sea moss drink, irish moss, peanut punch, carrot juice with milk, ginger beer homemade, sky juice
snow cone, snowball drink, sno cone, zobo, sobolo, bissap, hibiscus juice, hibiscus drink
karkade, karkadeh, sobo, tamarind drink, tamarind juice, ginger juice, ginger drink, gingerade
kunu, kunun, kunnu, kunun zaki, fura drink, tigernut milk, tiger nut drink, tigernut drink
baobab juice, bouye, palm wine, palmwine, palmy, mahewu, mageu, maheu, amahewu, togwa, chibuku
umqombothi, obushera, bushera, brukina, asaana, lamugin, emu, nimbu pani, nimboo pani, shikanji
shikanjvi, rose sherbet, sharbat, sherbet drink, jaljeera, aam panna, panna drink
sugarcane juice, ganne ka ras, mango lassi, sweet lassi, rose lassi, falooda, faluda, thandai
badam milk, badam doodh, rose milk, kesar milk, tender coconut water, nannari, paanakam
kokum sherbet, mango shake, banana shake, chikoo shake, masala soda, goli soda
filter coffee with sugar, cutting chai, masala chai with sugar, sweet masala chai
noon chai sweet, sahlab, salep, sahlep, jallab, jallab drink, qamar al din, qamardeen
tamar hindi, doogh sweet, ayran sweet, sharbat e rooz, sekanjabin, khakshir, kompot
compote drink, kissel drink, kvass, kvas, mors, sbiten, uzvar, elderflower cordial
elderflower drink, gluhwein, glogg, saft, must drink, spezi, apfelschorle, apple spritzer, radler
sirop, grenadine, menthe a l'eau, citron presse, chocolat chaud, boza, limonata, granita
granita drink, shikhye, sikhye, sujeonggwa, yuja tea, yuzu tea, citron tea, honey ginger tea
jujube tea, honey citron tea, banana uyu, ramune, amazake, royal milk tea, soy milk sweet
sweet soy milk, sweetened soy milk, doujiang sweet, plum juice, sour plum drink, suanmeitang
herbal jelly drink, grass jelly drink, winter melon tea, wintermelon tea, chrysanthemum tea sweet
lemon tea, iced lemon tea, bandung, sirap bandung, air bandung, ais kacang drink, cendol
es cendol, es campur, es kelapa muda, jamu, wedang jahe, bajigur, bandrek, soda gembira
sago gula melaka drink, sinh to, nuoc mia, soda chanh, che drink, ca phe sua da, cafe sua da
nam manao, nam kratiap, oliang, sago at gulaman, gulaman drink, buko juice, calamansi juice
kalamansi juice, buko shake, mais con yelo drink, salabat, tsokolate, taho drink, vaifala, otai
koko samoa, kava sweet, guarana drink, guarana soda, caldo de cana, cana juice
vitamina de banana, acai smoothie, suco, suco de laranja, caipirinha, caipirinhas, chicha
chicha morada, api, api morado, colada morada, aguapanela, agua panela, agua de panela
panela water, salpicon drink, champus, lulada, refajo, cholado drink, raspado, raspao, guarapo
mabi, morir sonando, batida, batido(s), licuado(s), pinol drink, pinolillo, cebada drink, tiste
fresco drink, refresco(s), gaseosa(s), coconut soda
"""

_DAIRY: Final = """
milk, milks, mlik, milke, glass of milk, cup of milk, bottle of milk, whole milk, skim milk
skimmed milk, semi skimmed milk, low fat milk, fat free milk, full cream milk, 2 percent milk
hot milk, warm milk, cold milk, goat milk, goat's milk, camel milk, buffalo milk
lactose free milk, long life milk, fresh milk, buttermilk, butter milk, kefir, kephir, lassi
plain lassi, salt lassi, salted lassi, salty lassi, namkeen lassi, chaas, chaach, chhaas
chaas drink, mattha, majjige, mor drink, neer mor, sambaram, moru, ayran, airan, doogh, dugh
laban, laban drink, leben, ryazhenka, ryazanka, filmjolk, kumis, koumiss, kumys, shubat, amasi
maas, emasi, mursik, mala, maziwa lala, maziwa, maziwa mala, nunu, nono, fura da nono
turmeric milk, haldi doodh, haldi milk, doodh, plain kefir, drinking yogurt, drinking yoghurt
yogurt drink, yoghurt drink
"""

_UNKNOWN: Final = """
tea(s), teas, cup of tea, cuppa, mug of tea, pot of tea, hot tea, black tea, green tea, white tea
milky tea, tea with milk, tea and milk, herbal tea, herb tea, mint tea, peppermint tea
camomile tea, chamomile tea, ginger tea, lemon tea hot, hibiscus tea, rooibos, rooibos tea
redbush tea, bush tea, fever grass tea, lemongrass tea, cerasee tea, oolong, oolong tea
jasmine tea, matcha, matcha latte, iced tea, ice tea, earl grey, english breakfast tea
builders tea, chai, chai tea, masala chai, masala tea, karak, karak chai, kadak chai, chai latte
kahwa, kashmiri chai, noon chai, butter tea, po cha, moroccan mint tea, atay, turkish tea, cay
teh, teh o, kopi, kopi o, cha, yerba mate, mate, terere, mate tea, coca tea, sage tea, thyme tea
cinnamon tea, turmeric tea, rosehip tea, fennel tea, linden tea, kuding tea, pu erh, pu erh tea
sencha, genmaicha, hojicha, senna tea, shai, shahi, chai ya rangi, chai ya maziwa, kenyan tea
suutei tsai, coffee(s), espresso(s), coffe, cofee, cup of coffee, mug of coffee, hot coffee
iced coffee, ice coffee, cold brew, instant coffee, filter coffee, decaf, decaf coffee
coffee with milk, coffee and milk, milky coffee, white coffee, coffee with cream
coffee with creamer, latte(s), cafe latte, iced latte, cappuccino(s), capuccino, flat white(s)
cortado(s), macchiato(s), americano(s), cafe au lait, cafe con leche, turkish coffee
arabic coffee, gahwa, qahwa, ethiopian coffee, buna, greek coffee, south indian coffee
coffee latte, beer(s), pint of beer, pint(s), lager(s), ale(s), stout(s), bitter ale, light beer
non alcoholic beer, alcohol free beer, bottle of beer, can of beer, millet beer, sorghum beer
banana beer, pito, burukutu, tella, tej, tchapalo, dolo, busaa, pombe, local brew, wine(s)
glass of wine, red wine, white wine, rose wine, rice wine, dry wine, sparkling wine, champagne
prosecco, bubbly, wine spritzer, sake, soju, makgeolli, baijiu, tuba, lambanog, toddy, arrack
feni, rum, white rum, whisky, whiskey, bourbon, scotch, vodka, gin, brandy, cognac, tequila
mezcal, raki, ouzo, arak, ogogoro, akpeteshie, waragi, changaa, chang'aa, moonshine, shot of rum
shot of whiskey, pisco, aguardiente, cachaca, schnapps, grappa, spirits, alcohol, booze
hot toddy, bloody mary, tomato juice, vegetable juice, veg juice, almond milk, oat milk, soy milk
soya milk, soymilk, rice milk, coconut milk drink, oatmilk, plant milk, cashew milk, nut milk
hemp milk
"""

#: Drinks in English, with the names by which other kitchens' drinks are known.
DRINKS: Final[Mapping[FoodKind, Block]] = gathered(
    (
        {
            FoodKind.FREE_DRINK: _FREE,
            FoodKind.SWEET_DRINK: _SWEET,
            FoodKind.DAIRY: _DAIRY,
            FoodKind.UNKNOWN: _UNKNOWN,
        },
    )
)

#: Drinks in Spanish, of Spain and of the Americas.
DRINKS_SPANISH: Final[Mapping[FoodKind, Block]] = gathered(
    (
        {
            FoodKind.FREE_DRINK: """
            agua, (un )vaso de agua, (una )botella de agua, agua fria, agua tibia, agua caliente
            agua natural, agua simple, agua mineral, agua con gas, agua sin gas, agua con limon
            soda sin azucar, agua gasificada, aguita
            (cafe |te |mate |infusion |refresco |gaseosa |soda |jugo |bebida |cola |
              agua de jamaica ){sin azucar}
            cafe negro, cafe solo, cafe puro, cafe amargo, cafe sin leche, cafe con edulcorante
            te con edulcorante, cafe con stevia, mate amargo, mate cebado amargo, cimarron
            {refresco|gaseosa|bebida|cola|soda} {light|de dieta|zero|cero|dietetica}
            """,
            FoodKind.SWEET_DRINK: """
            refresco(s), gaseosa(s), soda(s), cola(s), bebida azucarada, bebidas azucaradas
            bebida gaseosa, chesco
            {jugo|zumo} de {naranja|manzana|uva|mango|pina|guayaba|tamarindo|toronja|pomelo
              durazno|pera|cana|zanahoria|maracuya|mora|fresa|papaya|limon|betabel|remolacha
              guanabana|lulo|sandia|melon|frutas|parcha|chinola|tomate de arbol}
            jugo(s), zumo(s), juguito, vaso de jugo, vaso de zumo, nectar, limonada(s), naranjada
            agua fresca, aguas frescas, agua de sabor
            agua de {jamaica|horchata|tamarindo|limon|pina|sandia|melon|panela|pepino con azucar
              fresa|chia con limon|cebada|papelon|coco}
            horchata, horchata de chufa, jamaica, tepache, tejuino, champurrado, atole, atol
            atolito, atol de elote, atole de avena, pozol, chocolate caliente
            chocolate con leche, chocolatada, chocomilk, cocoa, leche con chocolate
            leche chocolatada, leche de sabor, licuado(s), licuado de platano, batido(s)
            batida(s), malteada(s), merengada(s), sorbete de bebida, smoothie(s), malta, maltas
            cafe con azucar, cafe con leche y azucar, cafe dulce, cafe de olla, te con azucar
            te dulce, te helado, te frio, te con miel, mate dulce, mate con azucar, cafe bombon
            leche merengada, granizado(s), raspado(s), raspao, frappe, bebida energetica
            bebidas energeticas, bebida energizante, bebida isotonica, bebida deportiva
            suero oral, suero con azucar, agua con azucar, aguapanela, agua panela, guarapo
            papelon con limon, chicha, chicha morada, chicha de arroz, chicha de jora, api
            api morado, mazamorra morada de beber, emoliente, mocochinchi, colada morada
            colada de avena, avena de beber, lulada, champus, salpicon, refajo, mote con huesillo
            terremoto, pinolillo, pinol, tiste, cacao de beber
            fresco de {cebada|tamarindo|cacao|ensalada|rosa de jamaica}, morir sonando
            jugo de avena, mabi, coquito, ponche, ponche crema, rompope, sangria, tinto de verano
            calimocho, clara con limon, mosto, leche condensada con agua, cuba libre, cubata
            pina colada, mojito(s), margarita(s), michelada dulce, vermut, sidra
            """,
            FoodKind.DAIRY: """
            leche, (un )vaso de leche, (una )taza de leche, leche descremada, leche desnatada
            leche entera, leche semidescremada, leche tibia, leche caliente, leche deslactosada
            leche de vaca, leche de cabra, leche agria, kefir, yogur bebible, yogurt bebible
            buttermilk
            """,
            FoodKind.UNKNOWN: """
            te, tecito, (una )taza de te, te verde, te negro, te de manzanilla, manzanilla
            te de canela, te de menta, te de hierbas, infusion, infusiones, tila, mate
            mate cocido, mate de, terere, yerba mate, te con leche, cafe(s), cafecito
            (una )taza de cafe, cafe con leche, cafe con crema, cortado, cortadito, carajillo
            cafe americano, americano, cafe instantaneo, capuchino, capuchinos, cappuccino, latte
            guayoyo, marron, perico cafe, tintico, tinto, pintado, cerveza(s), chela(s), birra(s)
            cana de cerveza, cervecita, vino(s), vino tinto, vino blanco, vinito, copa de vino
            cava, champan, ron, tequila, mezcal, pulque, aguardiente, pisco, fernet, whisky
            vodka, ginebra, anis, trago, traguito, michelada, canelazo, leche de almendra(s)
            leche de soya, leche de soja, leche de avena, leche de arroz, leche de coco de beber
            jugo de tomate, caldo de beber
            """,
        },
    )
)
