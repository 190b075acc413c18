"""Foods of the Americas: US South, Tex-Mex, Caribbean, Mexico, the Andes, Brazil, first nations."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    doubles
    cheese grits, buttered grits, corn pone, corn pones, johnny cake(s), johnnycake(s)
    journey cake, hoe cake(s), hoecake(s), hush puppy, hush puppies, hushpuppies, spoonbread
    spoon bread, corn muffin(s), biscuits southern, buttermilk biscuit(s), drop biscuit(s)
    cathead biscuit(s), texas toast, kaiser roll(s), hamburger bun(s), parker house roll(s)
    yeast roll(s), crescent roll(s), tortilla chip(s), spanish rice, mexican rice, dirty rice
    carolina gold rice, hominy grits, succotash, corn salad, fried corn, creamed potatoes
    twice baked potato(es), potato skins, potatoes au gratin, au gratin potatoes
    potato casserole, home fried potatoes, waffle fries, shoestring fries, potato tots, bannock
    fry bread, frybread, indian fry bread, indian bread, pan bread indian, piki, piki bread
    blue corn mush, blue corn bread, blue corn tortillas, wild rice manoomin, manoomin
    parched corn, corn mush, cornmeal mush, acorn mush, hulled corn, posole corn, camas, wapato
    bannik, luskinikn, fried dumpling(s), boiled dumpling(s), johnny dumpling(s)
    fried johnny cake, bammy, bammies, fried bake(s), coconut bake, roast bake, float(s) and
    hops bread, hard dough bread, hardo bread, hardough bread, harddough bread, coco bread
    cou cou, cou-cou, coucou, fungi, fungie, turned cornmeal, turn cornmeal, cornmeal dumplings
    ground provision(s), hard food, blue food, breadfruit roasted, fried breadfruit
    breadfruit chips, green fig(s), boiled green fig, roti skin, dhal puri skin, buss up shut
    bust up shut, buss-up-shut, paratha roti, sada roti, dosti roti, oil roti, metagee dumplings
    cassava bammy, yellow yam, white yam, renta yam, sweet yam, irish potato(es), white rice and
    seasoned rice, coconut bread savoury, diri, diri blan, bannann peze, banan peze, banann
    pitimi, mayi moulen, mais moulin, labouyi, akasan, kasav, marinad, tostones, maduros, tajadas
    patacones, arepa(s), pao de queijo, pan de yuca, farofa, farinha, farinha de mandioca, pirao
    tapioca crepe, beiju, cuscuz, cuscuz paulista, arroz branco, aipim, macaxeira, mandioca frita
    batata frita, batata doce, inhame, mandioquinha, milho, milho cozido, angu, polenta frita
    pao frances, pao, paozinho, torrada, macarrao, bolacha salada, biscoito de polvilho, cara yam
    mingau, canjiquinha, chuno, oca, olluco, quinoa porridge, purple potato(es), cancha
    toasted corn, choclo, mote, hominy corn, masa harina, totopos, taco shell(s), hard taco shell
    """,
    FoodKind.SWEET_FOOD: """
    banana pudding, peach cobbler southern, chess pie, buttermilk pie, sweet potato casserole
    sweet potato pudding, ambrosia, divinity, moon cookie, whoopie pie(s), red velvet cake
    red velvet, hummingbird cake, lane cake, coconut cake, german chocolate cake, 3 leches
    3 leches cake, texas sheet cake, sheet cake, king cake, monkey bread, bear claw(s)
    apple cider donut, s'more(s), rice cereal treat(s), marshmallow treat(s), puppy chow snack
    trifle cake, mississippi mud pie, shoofly pie, sugar pie, butter tart(s), nanaimo bar(s)
    maple taffy, saskatoon pie, beaver tail pastry, touton(s), pudding chomeur, tarte au sucre
    rhubarb pie, fried pie(s), hand pie(s), gelatin salad, snow cream, sopapilla(s)
    sopaipilla(s) with honey, indian pudding, wojapi, wozapi, akutaq, maple sugar, maple candy
    gizzada(s), grater cake(s), bulla, bulla cake, spice bun, easter bun, rum cake, black cake
    christmas cake, sweet potato pone, pone, cassava pone, cornmeal pudding, tie a leaf
    blue drawers, duckunoo, dukunu, ducana, conkies, conkie, coconut drops, coconut drop
    tamarind ball(s), kurma sweet, sugar cake, tooloom, paradise plum(s), guava cheese, guava jam
    guava duff, coconut sweet bread, currant roll(s), currants roll, pine tart(s), salara
    plantain tart(s), peanut drops, busta, pera sweet, parsad, prasad, gulgula, pain patate
    dous makos, dous kokoye, tablet pistach, tablet kokoye, blan manje, tembleque
    coconut tart(s), black fruit cake, rock cake(s), rock bun(s), icicle, brigadeiro(s)
    beijinho(s), cajuzinho, quindim, pudim, pudim de leite, mousse de maracuja, doce de leite
    doces, doce, bolo(s), bolo de cenoura, bolo de fuba, bolo de rolo, pacoca, pe de moleque
    rapadura, cocada, goiabada, romeu e julieta, bala, sorvete, picole, sonho, bolinho de chuva
    pave, canjica doce, curau, pamonha doce, arroz doce, acai bowl, acai, acai na tigela
    churros doce de leite, bem casado, biscoito(s), bolacha(s), dulce de leche, alfajores
    picarones, suspiro, mazamorra morada, 3 leches slice, arroz con leche, flan de coco
    pan dulce, concha(s), capirotada, cajeta, bunuelos, tejate sweet, paletas, paleta, helado
    """,
    FoodKind.FRUIT: """
    otaheite apple(s), jamaican apple, june plum(s), golden apple(s), golden plum(s), guinep(s)
    ginep(s), ackee fruit, sweet sop, sour sop, star apple(s), naseberry, naseberries, jackfruits
    soursops, tinkin toe, stinking toe, pommecythere, pommerac, pomerac, chenette(s), 5 finger
    5 fingers fruit, carambola, fat pork fruit, plumrose, hog plum(s), ripe fig, silk fig(s)
    sucrier, sugar banana, mamey apple, mammee apple, mammee, kenep, kachiman, korosol, seriz
    abriko, julie mango, mango chow, pineapple chow, plum chow, tambran, saskatoon berries
    saskatoons, huckleberry, huckleberries, salmonberry, salmonberries, thimbleberries
    chokecherries, chokecherry, soapberries, buffaloberry, marionberries, boysenberries
    boysenberry, pawpaw fruit, muscadine(s), scuppernong(s), concord grapes, honeycrisp
    granny smith, gala apple(s), fuji apple, navel orange(s), ruby grapefruit, bartlett pear
    dried cherries, dried pineapple, goiaba, mamao, abacaxi, melancia, caju, jabuticaba, graviola
    acerola, pitanga, cupuacu, maca, laranja, uva, morango, maracuja, cherimoya(s), lucuma
    naranjilla, lulo, uchuva, golden berries, ground cherries, mamoncillo, guanabana, tuna fruit
    nopal fruit, mamey, zapote
    """,
    FoodKind.PROTEIN: """
    southern fried chicken, smothered chicken, smothered pork chops, chicken fried steak
    country fried steak, chicken fried chicken, fried catfish, blackened catfish, blackened fish
    crawfish boil, shrimp boil, low country boil, lowcountry boil, boiled crawfish, boiled shrimp
    peel and eat shrimp, fried shrimp, fried oysters, oysters rockefeller, soft shell crab
    crab legs, crab boil, lobster tail, clam bake, smoked brisket, burnt ends, smoked turkey leg
    turkey leg, turkey necks, neck bones, neckbones, ham hock(s), hamhock, hog maws, chitlins
    chitterlings, pig feet, pickled pigs feet, souse, head cheese, scrapple, livermush
    liver pudding, goetta, salisbury steak, swiss steak, country ham, honey baked ham
    canadian bacon, summer sausage, andouille, boudin, hot links, kielbasa, polish sausage
    bratwurst, beef stick(s), meat stick(s), ranch beans, barbecue beans, cowboy beans
    boston baked beans, pork and beans, field pea(s), crowder peas, purple hull peas, butterbeans
    tepary beans, anasazi beans, charro beans, fajita meat, carne asada, al pastor meat
    barbacoa meat, carnitas, chicken fajita meat, pulled chicken, rotisserie turkey, fried turkey
    fish filet, walleye, crappie, bluegill, perch fry, whitefish, smoked whitefish, lake trout
    arctic char, dried salmon, salmon jerky, smoked eulachon, muktuk, seal meat, caribou
    caribou stew meat, elk steak, pemmican, buffalo jerky, dried meat, dry meat, moose
    rabbit stew meat, gator, alligator, gator tail, frog legs, jerk pork, jerk fish
    escovitch fish, escoveitch fish, escovitched fish, brown stew chicken, brown stew fish
    steam fish, fry fish, fried sprat(s), sprats, ackee, bussol, bake fish, buljol
    saltfish buljol, salt fish buljol, smoke herring, smoked herring, solomon gundy
    pickled mackerel, mackerel run down meat, pepper shrimp, janga, stew peas meat, cow heel
    mannish water meat, curry conch, cracked conch, conch fritters, conch salad, stewed pork
    pig tail, pigtail, corned pork, pudding and souse, flying fish, fried flying fish, griot
    griyo, tasso, taso, poul fri, poul an sos, poule en sauce, kabrit, kabrit fri, lambi, lanbi
    aransol, poisson gros sel, pwason, pwa, sos pwa, sauce pois, pwa nwa, red peas, stew peas
    lentil peas, split pea dhal, garlic pork, feijao, feijao preto, feijao carioca
    feijao tropeiro, tutu de feijao, picanha, churrasco, carne de sol, carne seca, frango
    frango assado, frango grelhado, peixe, peixe frito, bacalhau, camarao, ovo, ovos, ovo frito
    linguica, calabresa, bife, bife acebolado, carne moida, lombo, costela, file de frango
    coxa de frango, peito de frango, lentilha, grao de bico, acaraje, ceviche, cebiche
    anticuchos, cuy, lomo, pollo a la brasa, chorizo and eggs meat, machaca, lechon, pernil
    chicharron, chicharrones, bistec, bistec encebollado, churrasco steak, morcilla, habichuelas
    frijoles, frijoles negros, refried black beans
    """,
    FoodKind.VEGETABLE: """
    turnips and greens, mixed greens, mess of greens, pot of greens, poke sallet, poke salad
    creasy greens, fried green tomatoes, fried okra, stewed okra, okra and tomatoes
    stewed tomatoes, smothered cabbage, wilted lettuce, cucumbers and onions, pickled okra
    chow chow, chowchow, pickled beets and eggs, 3 bean salad, bean salad vinaigrette
    wedge salad, spring mix, bagged salad, fiddleheads, cattail, squash blossoms, cactus, nopales
    nopalitos, chayotes, jicama, tomatillo(s), salsa verde, green chile, hatch chile
    roasted chiles, poblano(s), rajas, ratatouille veg, vegetable medley
    california blend vegetables, normandy blend, house salad with vinaigrette, zoodles
    zucchini noodles, cauliflower mash, mashed cauliflower, callaloo, calaloo, calalloo
    callalloo, bhagi, dasheen bush, dasheen leaves, steamed callaloo, cho cho, cabbage and carrot
    steam cabbage, steamed veg, susumber, gully bean, melongene, baigan choka, tomato choka
    melongene choka, caraili, carailli, bodi, bora beans, bodi beans, ochro, ochroes, pikliz
    pikliz slaw, berejen, militon, mirliton(s), christophine(s), kuchela, mango kuchela
    mother in law pepper, hearts of palm salad, couve, couve refogada, alface, tomate salad
    salada, salada verde, legumes cozidos, quiabo, abobrinha, chuchu, berinjela, cenoura
    beterraba, repolho, vinagrete, brocolis, couve flor, palmito, pepino salad
    """,
    FoodKind.DAIRY: """
    pimento cheese, pimiento cheese, cheese curds, monterey jack, pepper jack, colby, colby jack
    nacho cheese, queso, queso dip, cheese dip, cotija, queso blanco, queijo, queijo minas
    queijo branco, requeijao, iogurte, coalho, oaxaca cheese, queso oaxaca, crema mexicana
    tin cheese, tinned cheese
    """,
    FoodKind.FAT: """
    spinach dip, onion dip, french onion dip, ranch dip, artichoke dip, bacon grease, fat back
    pot likker, oolichan grease, eulachon grease, seal oil, whale blubber, blubber
    macadamia butter, zaboca, manteiga, azeite, amendoim, castanha de caju, castanha do para
    abacate, manba, crema
    """,
    FoodKind.MIXED_DISH: """
    7 layer dip, tater tot hotdish, hotdish, hot dish, rappie pie, cincinnati chili, 3 way chili
    peameal bacon, booyah, runza(s), chislic
    johnny marzetti, slinger, st paul sandwich, italian beef, gravy fries, dressed po boy
    garbage plate, pileau
    provision(s)
    dukuna, fungee, breadfruit roast
    los 3 golpes
    # US and Tex-Mex
    shrimp and grits, fish and grits, eggs and grits, biscuits and gravy, biscuit and egg
    sausage biscuit(s), bacon biscuit, chicken biscuit, egg biscuit, ham biscuit, sausage gravy
    chicken and grits, salmon patties, salmon croquettes, red beans and rice, hoppin john
    hopping john, black eyed peas and rice, beans and cornbread, pinto beans and cornbread
    greens and cornbread, collards and cornbread, gumbo, chicken gumbo, seafood gumbo
    gumbo and rice, jambalaya, etouffee, crawfish etouffee, shrimp etouffee, shrimp creole
    courtbouillon, dirty rice and chicken, brunswick stew, burgoo, frogmore stew, chicken bog
    chicken pilau, chicken perlo, perlo, red rice and sausage, chicken spaghetti
    king ranch chicken, chicken tetrazzini, turkey tetrazzini, chicken divan, poppy seed chicken
    chicken casserole with rice, tater casserole, hashbrown casserole, breakfast casserole
    egg casserole, green bean casserole with onions, squash casserole, corn casserole
    corn pudding, chicken a la king, chipped beef on toast, cream chipped beef, tuna noodle
    american chop suey, beef stroganoff, stroganoff, beef and noodles, beef and broccoli
    chicken and noodles, chicken and biscuits, pot roast and potatoes
    meatloaf and mashed potatoes, meatloaf and potatoes, steak and potato, chicken and potatoes
    pork chops and applesauce, pork chop and rice, ribs and beans, bbq plate, bbq sandwich
    pulled pork sandwich, brisket sandwich, po boy, po' boy, poboy, shrimp po boy, muffuletta
    french dip, patty melt, chicken sandwich and fries, crab cake sandwich, lobster roll
    fish sandwich, catfish and fries, catfish plate, fish plate, chicken plate, soul food plate
    chicken dinner, fried chicken dinner, wings and fries, chicken tenders and fries
    mozzarella sticks, onion ring(s), fried pickles, jalapeno poppers, pigs in a blanket
    chili dog(s), chili cheese dog, chili cheese fries, chili mac, chili and rice
    chili and cornbread, tamale(s), hot tamales, loaded baked potato, stuffed baked potato
    potato salad and ribs, macaroni and tomatoes, tomato sandwich(es), banana sandwich
    bologna sandwich, fried bologna sandwich, baloney sandwich, pimento cheese sandwich
    monte cristo, cuban sandwich, cubano, italian sub, meatball sandwich, cheese fries, poutine
    tourtiere, split pea and ham soup, jiggs dinner, fish and brewis, fish n brewis, donair
    caesar wrap, buddha wrap, deep dish pizza, stromboli, pizza rolls, pizza bagel, lasagna rolls
    baked ziti, ziti, spaghetti and meat sauce, spaghetti and sauce, chicken parmesan
    chicken parm, eggplant parmesan, eggplant parm, tuna casserole with peas, turkey and stuffing
    turkey and dressing, chicken and dressing, cornbread dressing, dressing and gravy
    thanksgiving dinner, thanksgiving plate, christmas dinner, cowboy stew, hobo dinner
    chicken pot pie soup, taco soup, tortilla soup, chicken tortilla soup, cheeseburger soup
    baked potato soup, loaded potato soup, broccoli cheese soup, broccoli cheddar soup
    cream of mushroom soup, cream of chicken soup, manhattan clam chowder, she crab soup
    lobster bisque, crab bisque, navy bean soup, ham and bean soup, ham and beans, beans and ham
    beans and franks, franks and beans, beanie weenies, vegetable beef soup, beef barley soup
    beef vegetable soup, chicken rice soup, chicken and rice soup, matzo ball soup
    chicken corn soup, taco(s), hard taco(s), soft taco(s), fish taco(s), street tacos
    breakfast taco(s), beef tacos, chicken tacos, bean tacos, puffy taco(s), walking taco
    indian taco, navajo taco, burrito(s), bean burrito(s), beef burrito(s), chicken burrito(s)
    smothered burrito, chimichanga(s), fajita(s), chicken fajitas, steak fajitas, enchilada(s)
    chicken enchiladas, cheese enchiladas, quesadilla(s), cheese quesadilla, chicken quesadilla
    taquito(s), flauta(s), tostada(s), chalupa(s), nachos with cheese, loaded nachos
    nachos and cheese, chile relleno, chili relleno, chiles rellenos, huevos rancheros, migas
    chilaquiles, chorizo and eggs, machaca and eggs, beans and tortillas, eggs and tortillas
    tortillas and beans, rice beans and tortillas, pozole, posole, menudo, birria, birria tacos
    mole, chicken mole, sopes, gorditas, tortas, elote cup, carne guisada, albondigas soup
    sopa de fideo, arroz con pollo, chicken and spanish rice, carne asada plate, mexican plate
    combo plate, green chile stew, chile verde, chili verde, red chile stew
    mutton stew and frybread, hull corn soup, 3 sisters soup, 3 sisters stew
    buffalo stew, bison stew, elk stew, venison stew, deer stew, venison chili, moose stew
    caribou stew, caribou soup, salmon soup, fish head soup, bannock and soup, bannock and stew
    bannock and jam, fry bread and beans, bean bread, acorn soup, hominy soup, hominy stew
    # Caribbean
    ackee and saltfish, ackee and salt fish, ackee an saltfish, callaloo and saltfish
    callaloo and salt fish, mackerel and banana, mackerel rundown, run down, rundown
    rice an peas, rice and red peas, rice and gungo peas, peas n rice, pigeon peas and rice
    rice and pigeon peas, rice and peas and chicken, jerk chicken and rice, curry goat and rice
    curry chicken and rice, oxtail and rice, oxtail and beans, oxtail with rice and peas
    brown stew chicken and rice, stew peas and rice, stew chicken and rice
    stewed chicken and rice, cook up rice, cookup rice, cook-up, cookup, pelau, chicken pelau
    oil down, oildown, callaloo soup, callaloo and crab, crab and dumpling(s), crab and callaloo
    saltfish and bake, bake and saltfish, bake and shark, bake n shark, bake and buljol
    bake and cheese, fried dumpling and callaloo, dumpling and saltfish, saltfish fritter(s)
    stamp and go, saltfish cakes, salt fish cakes, bread and 2, cou cou and flying fish
    fungi and saltfish, fungee and pepperpot, pepperpot, pepper pot, pepper pot soup
    guyanese pepperpot, metemgee, metagee, provision and saltfish, chicken foot soup
    chicken feet soup, red peas soup, gungo peas soup, pumpkin soup with dumplings, cow foot soup
    cow heel soup, fish tea, mannish water, goat water, goat head soup, conch soup, conch chowder
    fish broth, sancoche, sancocho, souse soup, macaroni pie and chicken, double(s) with channa
    aloo pie, pholourie, phulourie, pholouri, saheena, sahina, roti and curry, chicken roti
    curry chicken roti, goat roti, potato roti, channa roti, dhal and rice, dhal puri and curry
    channa and aloo, aloo and channa, curry channa and aloo, curry duck, curry crab
    curry crab and dumpling, curry conch and rice, geera pork, chinese fried rice and chicken
    patty and coco bread, coco bread and patty, jamaican patty, beef patties, callaloo patty
    bun and cheese, turn cornmeal and fish, stewed salt fish, steamed fish and okra
    steam fish and crackers, steam fish and bammy, fry fish and bammy, escovitch fish and bammy
    fish and festival, liver and banana, liver and green banana, kidney and banana, boiled food
    boil food, johnny cake and saltfish, johnny cake and chicken, stew chicken and johnny cakes
    boil up, hudut, stew beans and rice, rice and stew beans, garnaches, salbutes, panades
    relleno negro, soup joumou, soupe joumou, bouyon, diri ak pwa, diri kole, diri kole ak pwa
    diri djon djon, diri ak djon djon, diri ak sos pwa, mayi ak pwa, mayi moulen ak sos pwa
    tchaka, legim, griot and pikliz, griyo ak bannann, pate kode, accra malanga, akra
    spaghetti ak aransol, spageti, mofongo, pastelon, pasteles, alcapurrias, bacalaitos
    arroz con gandules, asopao, keshi yena, stoba, kabritu stoba, funchi, pastechi, bakabana
    moksi alesi, bami, brown stew and rice
    # south
    feijoada, feijoada completa, arroz e feijao, arroz com feijao, arroz feijao e carne
    arroz feijao e ovo, arroz feijao e frango, prato feito, moqueca, bobo de camarao, vatapa
    caruru, xinxim, baiao de dois, baiao, galinhada, escondidinho, strogonoff, estrogonofe
    lasanha, coxinha(s), pastel de feira, pastel de queijo, pasteis, empadinha, empada, empadao
    esfiha(s), esfirra, kibe, quibe, bolinho de bacalhau, misto quente, pao com manteiga
    pao com ovo, x burger, x-salada, x tudo, cachorro quente, tapioca com queijo, cuscuz com ovo
    sopa de legumes, caldo verde, canja, canja de galinha, caldo de feijao, macarronada
    macarrao com molho, macarrao com carne, frango com quiabo, vaca atolada, carne de panela
    picadinho, barreado, tacaca, manicoba, pato no tucupi, virado, virado a paulista
    acaraje with vatapa, salgadinho(s), sanduiche, torta salgada, panqueca de carne, lomo saltado
    aji de gallina, causa, papa a la huancaina, papa rellena, arroz chaufa, chaufa, tacu tacu
    seco de res, seco de pollo, carapulcra, pachamanca, locro, locro de papa, llapingachos
    encebollado, guatita, bolon, salchipapa, salchipapas, ajiaco, bandeja paisa, calentado, tamal
    hallaca, hallacas, pabellon, cachapa, cachapas, reina pepiada, arepa with cheese
    arepa with egg, arepa con queso, tequenos, pastel de choclo, humita, humitas, cazuela
    charquican, completo, chivito, milanesa with fries, milanesa napolitana, choripan
    asado and salad, locro stew, saltena, saltenas, pique macho, silpancho, sopa de mani, chairo
    quinoa soup, quinoa stew, pupusa(s), baleada(s), gallo pinto, casado, nacatamal, nacatamales
    vigoron, indio viejo, pepian, jocon, chuchitos, ropa vieja and rice, picadillo and rice
    moros, moros y cristianos, congri, black beans and rice, yuca con mojo, medianoche
    croqueta sandwich, pastelitos
    """,
}
