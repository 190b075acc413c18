"""Foods in Spanish: Mexico, Central America, the Caribbean, the Andes, the Southern Cone, Spain.

Kinds are meant as in `foods`. A word that both languages have (`tortilla`) has one kind, that of
the kitchen in which it is eaten most.
"""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind
from bot.parser.vocabulary import Block, gathered

_WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    arroz, arros, arroz blanco, arroz integral, arroz amarillo, arroz rojo, arroz verde
    arroz frito blanco, arrocito, arroz con coco, arroz cocido, plato de arroz, porcion de arroz
    media taza de arroz, pan(es), pan blanco, pan integral, pan frances, pan tostado
    pan de molde, pan de caja, pan amasado, pan de yuca, pan de queso, pan de bono, pandebono(s)
    panecillo(s), pan de agua, pan sobao, pan de barra, barra de pan, bolillo(s), telera(s)
    birote(s), marraqueta(s), hallulla(s), bollo(s), bollo de maiz, bollito(s), bolillito
    mogolla(s), rebanada(s) de pan, rodaja(s) de pan, pedazo de pan, pan con mantequilla
    pan con aceite, tostada(s), tostaditas, pan de ajo, galletas saladas, galleta salada
    galletas de soda, galletas de agua, picos de pan, colines, totopos, tortilla(s)
    tortilla de maiz, tortillas de maiz, tortilla de harina, tortillas de harina, tortillita(s)
    tortilla tostada, arepa(s), arepita(s), arepa de maiz, arepa asada, areparina, casabe, cazabe
    bammy, papa(s), patata(s), papita(s), papas fritas, patatas fritas, papa cocida
    papas cocidas, papa hervida, papa sancochada, papas al horno, pure de papa(s)
    pure de patata(s), pure, pure instantaneo, papas doradas, papas bravas, patatas bravas
    papa criolla, papas criollas, papa salada, papas saladas, chuno, tunta
    papas chorreadas sin queso, papas de bolsa, tortitas de papa, camote(s), batata(s)
    boniato(s), moniato, yuca(s), yuca frita, yuca hervida, yuca sancochada, mandioca
    mandioca frita, guacamote, malanga, yautia, ocumo, oca(s), olluco(s), ulluco(s), mashua
    arracacha, apio criollo, papa china, tiquisque, platano verde, platano macho, platano frito
    platano maduro, platanos fritos, platanos maduros, platano asado, platano hervido, tajadas
    tajada de maduro, maduros, maduritos, tostones, toston, patacon(es), patacones, chifles
    chifle, platanitos, mariquitas, tachino(s), guineo verde, guineos verdes, guineitos
    guineo hervido, mangu, verdes, bolon sin relleno, maiz, elote(s), choclo(s), mazorca(s)
    jojoto(s), elote asado, elote cocido, esquite(s), esquites, maiz tostado, cancha
    cancha serrana, mote, mote pelado, canguil, palomitas, palomitas de maiz, cotufas, pochoclo
    pororo, cabritas, crispetas, rositas de maiz, pasta(s), fideo(s), fideos, espagueti(s)
    tallarines, tallarin, macarrones, coditos, sopa de fideo seca, noquis, noquis, avena
    avena cocida, avena con agua, hojuelas de avena, cereal(es), cereal de caja, granola, muesli
    hojuelas de maiz, polenta, semola, harina de maiz, funche, cuscus, trigo, trigo mote, quinua
    quinoa, kiwicha, canihua, amaranto, cebada, burgol, papilla, mazamorra de maiz, gofio, migas
    sopaipilla(s), sopaipillas, tortas fritas, torta frita, chipa(s), sopa paraguaya, mbeju
    chipa guazu, guirila(s), guarachas, memelas, bocoles, masa, masa de maiz, nixtamal, arvejas
    arveja, chicharos, chicharo, guisantes, petit pois, calabaza, zapallo, ayote, auyama, ahuyama
    auyama hervida, calabaza de castilla, chilacayote, castanas, croquetas de papa, hojaldra(s)
    hojaldre panameno, almojabana(s), cuca de sal, bizcocho de sal
    """,
    FoodKind.SWEET_FOOD: """
    azucar, azucares, cucharada(s) de azucar, cucharadita(s) de azucar, piloncillo, panela
    papelon, chancaca, rapadura, miel, miel de abeja, mermelada(s), jalea, cajeta, dulce de leche
    manjar, manjar blanco, arequipe, cajeta de leche, leche condensada, lechera, dulce(s), dulces
    golosina(s), golosinas, caramelo(s), bombon(es), bombones, paleta(s), paletas
    paleta de hielo, chicle(s), malvaviscos, chocolate(s), chocolatito, chocolatina(s)
    barra de chocolate, turron, turrones, mazapan, mazapanes, polvoron(es), alfajor(es)
    alfajores, galleta(s), galletas, galletita(s), galletitas, galletas dulces
    galletas de chocolate, galletas maria, galletas de avena, barra de cereal, pastel(es)
    pastelito(s), torta de cumpleanos, torta de chocolate, torta dulce, bizcocho(s), bizcochos
    bizcochuelo, queque(s), queques, ponque, ponques, keke, tarta(s), tarta de queso
    tarta de manzana, pay de limon, pay de queso, pie de limon, 3 leches
    pastel de 3 leches, torta 3 leches, rosca de reyes, roscon, roscon de reyes
    pan de muerto, pan dulce, panes dulces, panecito dulce, concha(s), cuernito(s), orejas
    cuerno dulce, pan de pascua, panettone, pan de higo, medialuna(s), medialunas, factura(s)
    facturas, cachito dulce, croissant dulce, dona(s), donas, donut dulce, rosquilla(s)
    rosquillas, rosquete(s), bunuelo(s), bunuelos, churro(s), churros, porras
    churros con chocolate, picarones, sopaipillas pasadas, calzones rotos, berlines
    bolas de fraile, pestinos, torrijas, torrija, leche frita, hojuelas con miel
    bunuelos con miel, crepa(s), crepas, panqueque(s), panqueques, panquecas, panqueca, hotcakes
    hot cakes, waffles dulces, wafles, flan, flan de coco, quesillo, natilla(s), natillas
    crema catalana, arroz con leche, arroz con dulce, arroz zambito, mazamorra, mazamorra morada
    mazamorra dulce, gelatina(s), budin, budin de pan, pudin, pudin de pan, capirotada, majarete
    habichuelas con dulce, tembleque, bienmesabe, cabello de angel, suspiro(s), suspiro limeno
    merengue(s), merengon, espumilla(s), helado(s), helados, heladito, nieve(s), nieve de limon
    paleta helada, raspado dulce, cono de helado, bola de helado, sorbete(s), postre(s)
    postrecito, postre de leche, cocada(s), cocadas, alegria(s), alegrias, palanqueta(s)
    palanquetas, obleas, oblea, glorias, jamoncillo, ate de membrillo, membrillo dulce
    dulce de membrillo, dulce de batata, dulce de lechosa, dulce de guayaba, bocadillo de guayaba
    bocadillo veleno, guayaba en almibar, duraznos en almibar, pina en almibar, fruta en almibar
    fruta confitada, higos en almibar, brevas con arequipe, ensalada de frutas con crema
    fresas con crema, tamal dulce, tamales dulces, canjica, camote dulce, camote enmielado
    calabaza en tacha, bunuelo(s), besitos de coco, cocada amazonica, cupcake, magdalena(s)
    magdalenas, sobao, ensaimada(s), palmera(s), palmeritas, milhojas, canutillos, borrachos
    cuajada con miel, yogur azucarado, cereal azucarado, cereal de chocolate
    """,
    FoodKind.FRUIT: """
    fruta(s), frutas, frutita, fruta picada, fruta fresca, ensalada de frutas, coctel de frutas
    plato de fruta, manzana(s), manzanita, pera(s), platano(s), platanito, banana(s), banano(s)
    guineo(s), cambur(es), cambures, naranja(s), mandarina(s), toronja(s), pomelo(s), limon(es)
    limas, uva(s), uvas, uvitas, fresa(s), fresas, frutilla(s), frutillas, mora(s), moras
    zarzamora(s), frambuesa(s), arandano(s), cereza(s), cerezas, ciruela(s), ciruelas
    ciruela pasa, ciruelas pasas, durazno(s), melocoton(es), melocotones, chabacano(s)
    albaricoque(s), damasco(s), nectarina(s), sandia(s), patilla(s), melon(es), melones, pina(s)
    anana(s), ananas, papaya(s), lechosa, fruta bomba, mango(s), manguito, manga(s), guayaba(s)
    guayabas, guanabana(s), chirimoya(s), anona(s), anon, zapote(s), mamey, mamey(es), nispero(s)
    nisperos, chicozapote, caimito, tuna(s), tunas, higo(s), higos, breva(s), granada(s)
    granadas, maracuya, parchita, parcha, chinola, granadilla(s), curuba, lulo(s), naranjilla
    uchuva(s), uchuvas, aguaymanto, carambola(s), pitahaya(s), pitaya(s), lichi(s), rambutan
    mamon(es), mamones, quenepa(s), limoncillo, jocote(s), jobo(s), nance(s), nances, maranon
    maranon, tamarindo en vaina, membrillo(s), kiwi(s), kaki, caqui, caquis, lucuma, pacay, guaba
    camu camu, cocona, tomate de arbol, borojo, feijoa(s), pasas, pasitas, uvas pasas, datil(es)
    datiles, orejones, fruta seca, fruta deshidratada, tejocote(s), ciruelitas
    """,
    FoodKind.PROTEIN: """
    huevo(s), huevos, huevito(s), blanquillos, huevo cocido, huevos cocidos, huevo duro
    huevos duros, huevo frito, huevos fritos, huevo estrellado, huevos estrellados
    huevos revueltos, huevo revuelto, huevos pericos, perico, huevo pasado por agua
    clara(s) de huevo, omelet de huevo, tortilla francesa, huevo sancochado, huevos a la mexicana
    huevos con jamon, pollo, pollito, pollo asado, pollo a la plancha, pollo frito, pollo hervido
    pollo al horno, pollo a la brasa, pollo rostizado, pechuga(s), pechuga de pollo
    pechuga a la plancha, muslo(s) de pollo, pierna de pollo, alitas, alitas de pollo
    encuentro de pollo, nuggets de pollo, chicharron de pollo, milanesa de pollo, pavo
    pechuga de pavo, pavita, gallina, pato, codorniz, cuy, cuy frito, conejo, carne(s), carnita
    carne asada, carne molida, carne picada, carne de res, res, bistec, bistec(es), bistek
    bife(s), bife de chorizo, churrasco, asado, asado de tira, asado de res, lomo, lomo de cerdo
    lomo fino, filete(s), filete de res, arrachera, entrana, costilla(s), costillas, costillar
    carne mechada, carne desmechada, carne seca, cecina, tasajo, charqui, machaca, albondiga(s)
    albondigas, milanesa(s), milanesas, escalope, picadillo, higado, higado encebollado, rinones
    lengua, tripas, tripitas, chinchulines, mollejas, corazon de res, anticucho(s), anticuchos
    cerdo, puerco, chancho, marrano, lechon, cochinillo, cochinita, carnitas, chuleta(s)
    chuletas, chuleta de cerdo, pernil, chicharron(es), chicharrones, chicharron de cerdo
    fritada, hornado, jamon, jamon serrano, jamon de pavo, tocino, panceta, beicon, salchicha(s)
    salchichas, salchichon, longaniza, chorizo(s), chorizos, morcilla(s), morcilla, moronga
    butifarra, mortadela, salami, salame, embutidos, fiambre, cordero, borrego, chivo, cabrito
    ternera, pescado, pescadito, pescado frito, pescado asado, pescado al vapor
    pescado a la plancha, mojarra, mojarra frita, tilapia, trucha, salmon, atun, lata de atun
    sardina(s), sardinas, bacalao, merluza, corvina, pargo, huachinango, robalo, bonito, jurel
    caballa, anchoas, boquerones, congrio, reineta, pejerrey, bagre, mariscos, camaron(es)
    camarones, gambas, langostinos, langosta, cangrejo, jaiba, pulpo, pulpo a la gallega
    calamar(es), calamares, mejillones, choritos, almejas, ostiones, ostras, conchas negras
    machas, caracoles, ceviche, cebiche, ceviche de pescado, ceviche de camaron, tiradito
    aguachile, leche de tigre, frijol(es), frijoles, frijolitos, frijoles negros
    frijoles refritos, frijoles de la olla, frijoles charros, frijoles bayos, porotos, poroto(s)
    porotos granados, caraotas, caraotas negras, habichuelas, habichuelas rojas
    habichuelas guisadas, judias, judias blancas, judias pintas, alubias, fabes, fabada, gandules
    guandules, guandu, lenteja(s), lentejas, garbanzo(s), garbanzos, habas, haba(s), pallares
    tarwi, chocho(s), soya, soja, tofu, carne de soya, potaje de lentejas, proteina en polvo
    chapulines, gusanos de maguey, escamoles, hueva, queso de cerdo, sesos
    """,
    FoodKind.VEGETABLE: """
    verdura(s), verduras, verduritas, vegetal(es), vegetales, legumbres verdes, hortalizas
    verduras al vapor, verduras cocidas, verduras salteadas, ensalada(s), ensaladita
    ensalada verde, ensalada mixta, ensalada de lechuga, ensalada de tomate, ensalada de repollo
    ensalada de pepino, ensalada chilena, ensalada rusa sin papa, ensalada de nopales, lechuga
    lechugas, tomate(s), tomates, jitomate(s), jitomates, cebolla(s), cebollas, cebollita
    cebolla morada, cebollin, ajo, ajos, zanahoria(s), zanahorias, zanahoria rallada, pepino(s)
    pepinos, pepinillos, apio, brocoli, coliflor, repollo, col, coles, col rizada, berza
    col morada, coles de bruselas, espinaca(s), espinacas, acelga(s), acelgas, berro(s), berros
    rucula, grelos, quelites, verdolagas, huauzontle, quintoniles, romeritos, nopal(es), nopales
    nopalitos, chayote(s), chayotes, tayota, guisquil, guisquiles, calabacita(s), calabacitas
    calabacin(es), calabacines, zapallito(s), zucchini(s), berenjena(s), berenjenas, pimiento(s)
    pimientos, pimenton, pimentones, morron, morrones, aji, ajies, chile(s), chiles, chile verde
    chile serrano, rajas, rajas de chile, jalapenos, champinon(es), champinones, hongos, setas
    huitlacoche, flor de calabaza, alcachofa(s), alcachofas, esparrago(s), esparragos, palmito(s)
    palmitos, ejote(s), ejotes, vainita(s), vainitas, judias verdes, chauchas, porotos verdes
    habichuelas tiernas, rabano(s), rabanos, remolacha(s), betabel(es), beterraga(s), nabo(s)
    jicama(s), jicama, puerro(s), poro, cilantro, perejil, hierbas, okra, quimbombo, molondrones
    bledo, loroco, pacaya, chipilin, hierba mora, cochayuyo, algas, sopa de verduras
    sopa de verdura, caldo de verduras, crema de verduras, crema de espinaca, crema de zapallo
    gazpacho, salmorejo, pisto, escalivada, menestra de verduras, caldo, caldito, caldo de pollo
    consome, caldo de res, caldo de hueso, salsa, salsa verde, salsa roja, pico de gallo, pebre
    chimichurri, sofrito, hogao, curtido, escabeche, encurtido(s), ensalada de col
    salsa de tomate, catsup, mostaza
    """,
    FoodKind.DAIRY: """
    queso(s), quesito, queso fresco, queso blanco, queso panela, queso oaxaca, quesillo oaxaqueno
    queso cotija, queso manchego, queso crema, queso rallado, requeson, cuajada, queso de cabra
    queso de mano, queso llanero, queso costeno, queso campesino, mozarela, queso gouda
    yogur(es), yogurt(s), yogures, yogurt natural, yogur natural, yogurt griego, yogur griego
    yogur con fruta, jocoque, suero costeno, rebanada(s) de queso, trozo de queso
    """,
    FoodKind.FAT: """
    aguacate(s), aguacates, palta(s), paltas, medio aguacate, media palta, guacamole, guasacaca
    mantequilla, manteca, margarina, crema, crema acida, nata, natas, mayonesa, aceite
    aceite de oliva, alioli, aderezo, aceituna(s), aceitunas, nuez, nueces, nuez de castilla
    almendra(s), almendras, cacahuate(s), cacahuates, cacahuete(s), mani, manies, manises
    crema de cacahuate, mantequilla de mani, mantequilla de cacahuate, avellanas, pistaches
    pistachos, pepitas, pepita de calabaza, semillas, semillas de girasol, pipas, chia, linaza
    ajonjoli, maranon tostado, merey, frutos secos, coco, coco rallado, leche de coco
    crema de coco, chicharron de queso
    """,
    FoodKind.MIXED_DISH: """
    sopa(s), sopita, guiso(s), guisado(s), guisito, estofado(s), cazuela(s), puchero, cocido
    potaje, olla de carne, sancocho, sancochado, ajiaco, hervido, caldo tlalpeno, sopa de pollo
    sopa de fideo(s), sopa de lentejas, sopa de frijol, sopa de tortilla, sopa azteca
    sopa de arroz, sopa de pasta, sopa de mariscos, sopa de pescado, sopa de mani, sopa de quinua
    chupe, chupe de camarones, locro, pozole, pozol con carne, menudo, mondongo, pancita, birria
    barbacoa, caldo de res con verduras, caldo de camaron, caldo de 7 mares, mole de olla
    arroz con pollo, arroz con frijoles, arroz y frijoles, frijoles con arroz
    arroz con habichuelas, arroz con gandules, arroz con huevo, arroz con carne
    arroz con camarones, arroz con mariscos, arroz chaufa, chaufa, arroz frito, arroz a la cubana
    arroz con pato, arroz tapado, arroz con lentejas, lentejas con arroz, caraotas con arroz
    gallo pinto, pinto, casado, moros y cristianos, moros con cristianos, congri, moro
    moro de guandules, rice and beans limonense, paella, arroz a banda, fideua, pabellon
    pabellon criollo, bandeja paisa, calentado, tacu tacu, lomo saltado, pollo saltado
    aji de gallina, causa, causa rellena, papa a la huancaina, papa rellena, papas rellenas
    rocoto relleno, carapulcra, seco de res, seco de pollo, seco de cabrito, seco de chivo
    cau cau, olluquito, pachamanca, juane(s), tallarines verdes, tallarin saltado
    tallarines rojos, ocopa, anticuchos con papa, salchipapa(s), salchipapas, chorrillana
    choripan, choripanes, completos italianos, pastel de choclo, humita(s), humitas, charquican
    porotos con riendas, curanto, cazuela de ave, cazuela de vacuno, llapingacho(s), llapingachos
    encebollado, guatita, bolon, bolones, bolon de verde, tigrillo, mote pillo, fritada con mote
    hornado con mote, encocado, yapingacho, saltena(s), saltenas, silpancho, pique macho
    picante de pollo, sajta, fricase, majadito, chairo, charque de llama, trancapecho, sonso
    taco(s), taquito(s), tacos dorados, tacos de canasta, tacos al pastor, tacos de carnitas
    tacos de asada, tacos de pescado, flauta(s), flautas, quesadilla(s), quesadillas
    sincronizada(s), burrito(s), burritos, enchilada(s), enchiladas, enchiladas verdes
    enfrijoladas, entomatadas, chilaquiles, chilaquiles rojos, chilaquiles verdes, sope(s), sopes
    huarache(s), huaraches, gordita(s), gorditas, tlacoyo(s), tlacoyos, tlayuda(s), tlayudas
    panucho(s), panuchos, salbute(s), salbutes, papadzules, molletes, mollete(s)
    tostada de tinga, tostadas de pollo, tostada de ceviche, tinga, tinga de pollo, mole
    mole poblano, mole con pollo, pollo en mole, pipian, chile relleno, chiles rellenos
    chiles en nogada, cochinita pibil, huevos rancheros, huevos divorciados, huevos con chorizo
    huevos motulenos, torta(s), torta de jamon, torta ahogada, torta cubana, cemita(s)
    pambazo(s), tamal(es), tamales, tamalito(s), tamal de pollo, nacatamal(es), nacatamales
    tamal de elote, corunda(s), uchepo(s), hallaca(s), hallacas, pasteles de hoja
    pasteles puertorriquenos, bollo prenado, pupusa(s), pupusas, pupusas revueltas
    pupusas de queso, baleada(s), baleadas, catracha(s), catrachas, yuca con chicharron, vigoron
    indio viejo, rondon, tapado, pepian, jocon, kak ik, hilachas, chuchitos, paches, garnacha(s)
    garnachas, enchilada hondurena, plato tipico, carne asada con tajadas, pollo con tajadas
    sopa de caracol, carimanola(s), carimanolas, ropa vieja, vaca frita, picadillo a la habanera
    yuca con mojo, mofongo, mofongo relleno, alcapurria(s), alcapurrias, bacalaito(s), bacalaitos
    pastelon, pionono(s), jibarito, tripleta, chimi, la bandera, mangu con los 3 golpes
    3 golpes, locrio, asopao, chivo guisado, pollo guisado, carne guisada
    habichuelas con arroz, quipe(s), yaroa, pastelitos de carne, empanada(s), empanadas
    empanadilla(s), empanadillas, empanada de carne, empanada de pollo, empanada de queso
    pastel de carne, arepa rellena, arepa con queso, arepa reina pepiada, reina pepiada
    arepa de huevo, arepas con queso, cachapa(s), cachapas, cachapa con queso, tequeno(s)
    tequenos, patacon relleno, asado negro, perros calientes, perro caliente, pepito, mandoca(s)
    cachito(s), cachitos de jamon, lechona, tamal tolimense, fritanga, sobrebarriga
    ajiaco santafereno, changua, cuchuco, posta negra, cazuela de mariscos, carne con papas
    pollo con papas, papas con carne, papas con huevo, asado con ensalada
    milanesa a la napolitana, milanesa con papas, milanesa con pure, matambre, locro argentino
    carbonada, pastel de papa(s), guiso de lentejas, guiso de arroz, tarta de verdura
    tarta de jamon y queso, empanadas saltenas, sandwich de miga, sanguche(s), sanguche, sanduche
    sandwich(es), sandwichito, emparedado(s), bocadillo(s), bocata(s), montadito(s), lomito
    chivito, barros luco, barros jarpa, pan con jamon, pan con queso, pan con palta
    pan con huevo, pan con tomate, pan con pollo, pan con chicharron, pan con aguacate
    tostada con aguacate, tostadas con tomate, pan con lechon, butifarra criolla, medianoche
    sandwich cubano, tortilla espanola, tortilla de patata(s), tortilla de papa(s), croqueta(s)
    croquetas, croquetas de jamon, ensaladilla, ensaladilla rusa, ensalada rusa, ensalada de papa
    ensalada de pollo, ensalada de atun, ensalada cesar, ensalada de pasta, callos
    callos a la madrilena, cocido madrileno, cocido montanes, pote gallego, caldo gallego
    marmitako, fabada asturiana, olla podrida, empanada gallega, huevos rotos, migas con huevo
    lentejas con chorizo, garbanzos con espinacas, pimientos rellenos, canelones
    bacalao a la vizcaina, pisto con huevo, tapas, pinchos, pintxos, racion de bravas
    coca de verduras, san jacobo, lasana, lasana, pizza(s), pizzas, trozo de pizza
    rebanada de pizza, hamburguesa(s), hamburguesas, hamburguesa con papas, hot dog(s), jocho(s)
    jochos, pancho(s), panchos, nachos, nachos con queso, espagueti con carne
    espagueti con salsa, espagueti a la bolonesa, pasta con salsa, pasta con pollo
    macarrones con queso, macarrones con tomate, fideos con tuco, fideos con salsa, sopa seca
    ramen, sushi, comida rapida, comida china, sobras, recalentado, comida corrida
    plato combinado, comida del hospital, comida de hospital, curry, lentejas con carne
    frijoles con carne, frijoles puercos, carne con chile, chili con carne, chile con carne
    verduras con pollo, pollo con verduras, pollo con ensalada, pollo con arroz, carne con arroz
    pescado con arroz, pescado con ensalada, cereal con leche, avena con leche
    granola con yogurt, huevo con frijoles, huevos con frijoles, huevo con arroz, huevo con papas
    """,
}

#: Every food in Spanish, by kind; a phrase stands under one kind only.
FOODS_SPANISH: Final[Mapping[FoodKind, Block]] = gathered((_WORDS,))
