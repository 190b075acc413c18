"""Foods found in most kitchens, by the plain names that people text."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    # grains
    rice, ryce, roll(s), chip, white rice, brown rice, boiled rice, steamed rice, plain rice
    sticky rice, wild rice, basmati (rice), jasmine rice, long grain rice, short grain rice
    red rice, black rice, yellow rice, parboiled rice, instant rice, rice cake(s), puffed rice
    rice paper, rice flour, coconut rice, garlic rice, lemon rice, rice pilaf, pilaf, rice bowl
    quinoa, qinoa, couscous, cous cous, couscus, bulgur, bulgar, bulghur, bulgur wheat
    cracked wheat, barley, pearl barley, millet, sorghum, amaranth, buckwheat, farro, spelt
    freekeh, teff, fonio, wheat berries, polenta, cornmeal, corn meal, semolina, grits, hominy
    oats, oat bran, wheat bran, rye, wheat, maize, maize meal, mealie meal, flour
    # breads
    bread, bred, white bread, brown bread, wheat bread, whole wheat bread, wholewheat bread
    wholemeal bread, wholegrain bread, whole grain bread, multigrain bread, granary bread
    rye bread, sourdough(s), sourdough bread, soda bread, corn bread, cornbread, garlic bread
    slice(s) of bread, piece(s) of bread, bread roll(s), dinner roll(s), toast(s), toasts
    brown toast, white toast, wheat toast, dry toast, buttered toast, slice(s) of toast
    piece(s) of toast, french bread, flat bread(s), flatbread(s), bun(s), burger bun(s)
    hot dog bun(s), hotdog bun(s), bagel(s), bagle(s), biscuit and gravy, english muffin(s)
    crumpet(s), baguette(s), ciabatta, focaccia, pita(s), pitta(s), pita bread, pitta bread
    naan bread, wrap(s), tortilla(s), corn tortilla(s), flour tortilla(s), cracker(s), saltine(s)
    soda cracker(s), cream cracker(s), water biscuit(s), crispbread(s), rice cracker(s)
    oatcake(s), breadstick(s), bread stick(s), rusk(s), crouton(s), matzo, matzah, pumpernickel
    breadcrumb(s), stuffing, crust(s), pizza crust, pizza dough
    # porridges and cereals, plain
    porridge, porrige, poridge, oatmeal, oat meal, porridge oats, rolled oats, steel cut oats
    overnight oats, instant oats, bowl of oats, oat porridge, rice porridge, maize porridge
    corn porridge, millet porridge, sorghum porridge, wheat porridge, cornmeal porridge
    semolina porridge, cream of rice, gruel, cereal(s), cereals, breakfast cereal(s)
    bowl of cereal, corn flakes, cornflakes, cornflake, bran flakes, bran cereal, wheat flakes
    wheat biscuits, shredded wheat, rice cereal, puffed wheat, oat cereal, muesli, granola
    hot cereal
    # pasta and noodles
    pasta(s), pastas, macaroni, macoroni, spaghetti, spagetti, spaghetti noodles, penne, fusilli
    linguine, linguini, tagliatelle, fettuccine, fettucine, fettuccini, rigatoni, farfalle, orzo
    vermicelli, angel hair, pasta shells, lasagne sheets, wholewheat pasta, whole wheat pasta
    noodle(s), egg noodles, rice noodles, glass noodles, instant noodles, wheat noodles
    cup noodle(s), pot of noodles, noodle cup, noodle bowl, gnocchi, dumpling(s)
    # potatoes and roots
    potato(es), potatos, potatoe, potatoe(s), patato(es), spud(s), tattie(s), white potato(es)
    red potato(es), new potato(es), baby potato(es), boiled potato(es), baked potato(es)
    jacket potato(es), roast potato(es), roasted potato(es), roasties, mashed potato(es)
    mash potato(es), mash, mashed spuds, fried potato(es), scalloped potato(es), potato salad
    potato wedges, wedges, hash brown(s), hashbrown(s), home fries, french fries, french fry
    french fried potatoes, fries, fry, frys, curly fries, sweet potato fries, steak fries, chips
    oven chips, potato chips, crisps, packet of crisps, bag of crisps, bag of chips
    tortilla chips, corn chips, tots, potato cake(s), potato pancake(s), croquette(s)
    sweet potato(es), sweet potatos, sweetpotato(es), yam(s), boiled yam, fried yam, roast yam
    roasted yam, yam chips, yam porridge, pounded yam, cassava, casava, boiled cassava
    fried cassava, cassava chips, taro, cocoyam(s), dasheen, eddo(es), yucca, yuca, yuca fries
    fried yuca, plantain(s), plantin, plantane, plaintain(s), fried plantain(s)
    boiled plantain(s), roast plantain(s), green plantain(s), ripe plantain(s), plantain chips
    green banana(s), boiled banana(s), boiled green banana(s), breadfruit, roast breadfruit
    tapioca, sago, arrowroot
    # starchy vegetables
    corn, sweetcorn, sweet corn, corn on the cob, cob of corn, corncob, roast corn, roasted corn
    boiled corn, grilled corn, baby corn, creamed corn, roast maize, boiled maize, green mealies
    pea(s), green pea(s), garden pea(s), mushy peas, sweet peas, pumpkin(s), pumkin
    mashed pumpkin, squash, butternut, butternut squash, acorn squash, winter squash, kabocha
    parsnip(s), roast parsnips, water chestnut(s), chestnut(s)
    # snacks of starch
    popcorn, pop corn, pretzel(s), soft pretzel(s), cheese puffs, corn puffs, corn nuts
    prawn crackers, snack mix, trail mix, yorkshire pudding(s), yorkshire pud(s), popover(s)
    """,
    FoodKind.SWEET_FOOD: """
    sugar, sugars, taffy, mochi, brown sugar, cane sugar, spoon(s) of sugar, teaspoon(s) of sugar
    sugar cube(s), sugarcane, sugar cane, glucose tablet(s), glucose tab(s), dextrose tablet(s)
    glucose gel, honey, hony, jam(s), jelly, marmalade, syrup, maple syrup, pancake syrup
    golden syrup, corn syrup, molasses, treacle, agave, agave syrup, date syrup, chocolate spread
    hazelnut spread, lemon curd, cake(s), caek, slice of cake, piece of cake(s), birthday cake
    wedding cake, chocolate cake, carrot cake, sponge cake, pound cake, fruit cake, fruitcake
    cheese cake, cheesecake(s), cup cake(s), cupcake(s), fairy cake(s), muffin(s)
    blueberry muffin(s), banana bread, banana cake, coffee cake, lemon cake, angel food cake
    bundt cake, ginger cake, gingerbread, zucchini bread, pumpkin bread, ice cream cake
    brownie(s), blondie(s), cookie(s), cooky, chocolate chip cookie(s), oatmeal cookie(s)
    sugar cookie(s), biscuit(s), bisuits, biscut(s), sweet biscuit(s), chocolate biscuit(s)
    digestive biscuit(s), tea biscuit(s), ginger biscuit(s), ginger snap(s), gingersnap(s)
    shortbread(s), wafer(s), macaroon(s), macaron(s), graham cracker(s), animal crackers
    cereal bar(s), granola bar(s), flapjack(s), energy bar(s), energy ball(s)
    lemon tart(s), apple tart(s), jam tart(s), treacle tart, fruit tart(s), custard tart(s)
    plum tart, cherry tart(s), chocolate tart(s), strawberry tart(s), protein bar(s), candy, candies
    candy bar(s), candy cane, hard candy, sweet(s), sweetie(s), sweeties, boiled sweet(s)
    lollipop(s), lolly, lollies, ice lolly, ice lollies, ice pop(s), toffee(s), toffees
    caramel(s), butterscotch, fudge, nougat, marshmallow(s), gummies, gummy bears, gummy candy
    jelly beans, jelly babies, licorice, liquorice, mints, chewy sweets, cotton candy
    candy floss, chocolate(s), choclate, chocolat, choc, chocs, chocolate bar(s)
    bar of chocolate, dark chocolate, milk chocolate, white chocolate, square(s) of chocolate
    box of chocolates, praline(s), truffle(s), ice cream(s), icecream(s), ice creem
    ice cream cone, vanilla ice cream, chocolate ice cream, scoop of ice cream, soft serve
    frozen yogurt, frozen yoghurt, gelato, sorbet(s), sherbet, sundae(s), pudding(s), pudings
    rice pudding, bread pudding, chocolate pudding, vanilla pudding, tapioca pudding
    christmas pudding, sticky toffee pudding, custard(s), creme caramel, flan(s), mousse
    chocolate mousse, trifle(s), gelatin, dessert(s), sweet treat, something sweet, treat, treats
    pie a la mode, apple pie(s), cherry pie, pumpkin pie, pecan pie, sweet potato pie
    key lime pie, blueberry pie, peach pie, lemon meringue pie, banana cream pie, cream pie
    custard pie, fruit pie, custard tart(s), fruit tart, jam tart(s), apple tart, treacle tart
    crumble, apple crumble, rhubarb crumble, cobbler, peach cobbler, apple crisp, turnover(s)
    apple turnover(s), strudel, apple strudel, pastry, pastries, danish, danish pastry, danishes
    eclair(s), profiterole(s), cream puff(s), croissant(s), croisant(s), pain au chocolat
    chocolate croissant(s), doughnut(s), donut(s), donught(s), glazed donut(s), doughnut hole(s)
    cinnamon roll(s), cinnamon bun(s), sticky bun(s), sweet bun(s), sweet roll(s), sweet bread
    hot cross bun(s), scone(s), tea cake(s), teacake(s), raisin bread, fruit loaf, malt loaf
    french toast, pancake(s), pancaks, pan cake(s), hotcake(s), hot cake(s), griddle cake(s)
    crepe(s), waffle(s), wafle(s), toaster pastry, toaster pastries, funnel cake(s), churro(s)
    fritter(s), banana fritter(s), apple fritter(s), meringue(s), pavlova, frosted cereal
    honey cereal, chocolate cereal, sugary cereal, sweet cereal, sugar coated cereal
    condensed milk, sweetened condensed milk, banana split, candied yams, candied fruit
    glazed nuts, caramel popcorn, kettle corn, frosting, icing, whipped topping, sprinkles
    jam roly poly, swiss roll, jelly roll, battenberg cake, mince pie(s), fruit cocktail in syrup
    canned peaches in syrup, tinned fruit in syrup, cranberry sauce, sweet chili sauce
    sweet and sour sauce, barbecue sauce, bbq sauce
    """,
    FoodKind.FRUIT: """
    fruit(s), fruite, piece(s) of fruit, fruit salad(s), fruit cup, fruit bowl, mixed fruit
    fresh fruit, fruit plate, fruit platter, apple(s), aple(s), appel, appels, green apple(s)
    red apple(s), apple slices, baked apple(s), apple sauce, applesauce, stewed apple(s)
    stewed fruit, banana(s), bananna(s), bannana(s), ripe banana(s), orange(s), ornge
    orange slices, tangerine(s), mandarin(s), mandarin orange(s), clementine(s), satsuma(s)
    grapefruit(s), grape fruit, pomelo(s), lemon(s), lime(s), kumquat(s), pear(s), peach(es)
    peeches, nectarine(s), plum(s), apricot(s), cherry, cherries, grape(s), red grapes
    green grapes, bunch of grapes, raisin(s), sultana(s), currant(s), prune(s), date(s)
    dried fruit, dried apricot(s), dried mango, dried cranberries, dried figs, fig(s), berry
    berries, berrys, mixed berries, strawberry, strawberries, strawberrys, blueberry, blueberries
    bluberries, raspberry, raspberries, rasberries, blackberry, blackberries, cranberry
    cranberries, gooseberry, gooseberries, mulberry, mulberries, elderberries, blackcurrant(s)
    redcurrants, lingonberries, cloudberries, melon(s), watermelon(s), water melon(s), waterlemon
    slice of watermelon, cantaloupe(s), canteloupe, honeydew, honeydew melon, kiwi(s), kiwifruit
    kiwi fruit, mango(es), mangos, mangoe, green mango(es), ripe mango(es), slice(s) of mango
    papaya(s), pawpaw(s), paw paw(s), pineapple(s), pine apple(s), pinapple, guava(s)
    passion fruit, passionfruit, lychee(s), litchi(s), leechi, longan, rambutan, dragon fruit
    dragonfruit, star fruit, starfruit, jackfruit, jack fruit, durian, mangosteen, persimmon(s)
    pomegranate(s), pomegranite, quince, loquat(s), soursop, sweetsop, custard apple(s)
    sugar apple(s), sapodilla, sapote, tamarind, rhubarb, medlar(s), crab apple(s), cactus pear
    prickly pear(s), canned fruit, tinned fruit, canned peaches, canned pineapple, fruit compote
    """,
    FoodKind.PROTEIN: """
    # eggs
    egg(s), eggs, egs, boiled egg(s), hard boiled egg(s), soft boiled egg(s), fried egg(s)
    poached egg(s), scrambled egg(s), scramble eggs, scrambles, egg white(s), devilled egg(s)
    deviled egg(s), egg over easy, eggs over easy, eggs sunny side up, sunny side up, omelette(s)
    omelet(s), omlet(s), omlette(s), omelett, cheese omelette, cheese omelet, egg omelette
    frittata
    # poultry
    chicken, chiken, chickin, chikcen, chicken breast(s), chicken thigh(s), chicken leg(s)
    duck leg(s), rabbit leg(s), lamb leg, goat leg, beef cheek(s), pig cheek(s), ox cheek(s)
    halal chicken
    chicken wing(s), chicken drumstick(s), drumstick(s), wings, hot wings, buffalo wings
    fried chicken, grilled chicken, roast chicken, roasted chicken, baked chicken, bbq chicken
    barbecue chicken, stewed chicken, boiled chicken, chicken strips, chicken fingers
    chicken tenders, chicken nugget(s), nugget(s), chicken goujons, chicken liver(s), gizzard(s)
    chicken feet, rotisserie chicken, lemon chicken, jerk chicken, peri peri chicken
    chicken skewer(s), chicken salad, turkey, turkey breast, roast turkey, ground turkey
    turkey burger(s), turkey bacon, turkey sausage, duck, roast duck, goose, quail, guinea fowl
    pheasant, ostrich
    # meat
    meat, meats, grilled meat, red meat, minced meat, mince, beef mince, ground beef, ground meat
    hamburger meat, beef, roast beef, beef roast, pot roast, corned beef, salt beef, beef jerky
    jerky, steak(s), beef steak, sirloin, ribeye, rump steak, brisket, short ribs, ribs
    spare ribs, bbq ribs, veal, oxtail(s), ox tail, tripe, liver, kidney(s), tongue, beef liver
    liver and onions, {jacket|baked} {tatie|tattie|tater|spud}(s), lamb chop(s), meatball(s), meat ball(s), meatloaf, meat loaf, pork, pork chop(s)
    porkchop(s), roast pork, pulled pork, pork belly, pork loin, pork roast, pork ribs, gammon
    ham, bacon, rashers, rasher of bacon, strips of bacon, sausage(s), sausages, saussage(s)
    sausage link(s), sausage patty, sausage patties, salami, pepperoni, chorizo, prosciutto
    deli meat, cold cuts, lunch meat, luncheon meat, bologna, baloney, lamb, lamb chop(s)
    roast lamb, leg of lamb, mutton, mutton chops, goat, goat meat, venison, deer meat
    moose meat, elk, bison, buffalo meat, rabbit, camel meat, bushmeat, hot dog sausage
    kebab meat, pate, black pudding, white pudding, haggis, offal, pigs feet, trotters
    # fish
    fish, fishes, fried fish, grilled fish, baked fish, steamed fish, dried fish, smoked fish
    stockfish, salt fish, saltfish, salmon, smoked salmon, grilled salmon, tuna, tuna fish
    tin of tuna, can of tuna, tuna salad, sardine(s), sardins, mackerel, smoked mackerel
    herring(s), kipper(s), anchovy, anchovies, cod, haddock, halibut, trout, tilapia, catfish
    cat fish, snapper, red snapper, sea bass, seabass, sole, plaice, pollock, hake, kingfish
    king fish, bream, carp, perch, nile perch, swordfish, eel, fish finger(s), fish stick(s)
    fishfinger(s), fish cake(s), fishcake(s), fish fillet(s), fish fry, battered fish, seafood
    sea food, shrimp(s), srimp, prawn(s), crab(s), crab meat, crab cake(s), lobster, crayfish
    crawfish, crawdads, mussels, clams, oysters, scallops, squid, calamari, octopus, conch
    snail(s), caviar, roe, fish roe, fish head
    # legumes (they carry starch too) and soya
    bean(s), beens, beans, black bean(s), blackbean(s), red bean(s), kidney bean(s)
    pinto bean(s), white bean(s), navy bean(s), butter bean(s), lima bean(s), broad bean(s)
    fava bean(s), baked beans, bake beans, refried beans, refried bean, mung bean(s), mung
    green gram, black eyed pea(s), black eye peas, black eyed bean(s), blackeyed peas, cowpea(s)
    cow pea(s), pigeon pea(s), gungo peas, gandules, field peas, split pea(s), chickpea(s)
    chick pea(s), garbanzo(s), garbanzo beans, lentil(s), lentels, lentills, red lentils
    green lentils, brown lentils, beluga lentils, soya bean(s), soy bean(s), soybean(s), edamame
    tofu, tofoo, fried tofu, tempeh, seitan, soya chunks, soya mince, textured protein
    bean burger, veggie burger patty, veggie sausage(s), hummus, hummous, houmous, humus
    falafel(s), felafel, bean dip, bean salad, lupin(s), bambara beans, peas pudding
    protein powder
    """,
    FoodKind.VEGETABLE: """
    vegetable(s), vegetabels, vegtable(s), vegatable(s), vegetble(s), veg, veggie(s), veggies
    veges, vegies, mixed vegetables, mixed veg, steamed vegetables, steamed veggies
    stir fried vegetables, roast vegetables, roasted vegetables, roasted veggies
    grilled vegetables, raw vegetables, raw veggies, boiled vegetables, green vegetables, greens
    leafy greens, leaves, cooked greens, collard greens, collards, mustard greens, turnip greens
    beet greens, spring greens, dandelion greens, kale, spinach, spinich, spinnach, swiss chard
    chard, cabbage, cabage, red cabbage, white cabbage, boiled cabbage, fried cabbage
    steamed cabbage, savoy cabbage, chinese cabbage, napa cabbage, bok choy, pak choi, pak choy
    brussels sprouts, brussel sprouts, sprouts, bean sprouts, alfalfa sprouts, broccoli, brocoli
    brocolli, broccolli, tenderstem, cauliflower, califlower, cauliflour, cauliflower rice
    romanesco, carrot(s), carots, carrot sticks, baby carrots, celery, celery sticks, cucumber(s)
    cucumbr, lettuce, lettace, letuce, romaine, iceberg lettuce, rocket, arugula, watercress
    cress, endive, radicchio, salad(s), sallad, salid, green salad, side salad, mixed salad
    garden salad, tomato salad, cucumber salad, cabbage salad, coleslaw, cole slaw, slaw
    carrot salad, beetroot salad, kale salad, spinach salad, house salad, tossed salad
    salad leaves, tomato(es), tomatos, tomatoe, tomatoe(s), cherry tomato(es), sliced tomato(es)
    tinned tomatoes, canned tomatoes, fried tomatoes, grilled tomato(es), tomato sauce
    tomato paste, tomato puree, pepper(s), bell pepper(s), red pepper(s), green pepper(s)
    sweet pepper(s), capsicum(s), chili(es), chilli(es), chillies, chilies, chile pepper(s)
    hot pepper(s), jalapeno(s), scotch bonnet, onion(s), onyons, red onion(s), spring onion(s)
    green onion(s), scallion(s), shallot(s), leek(s), chives, fried onions, garlic, ginger
    mushroom(s), mushrom(s), mushrooms, fried mushrooms, green bean(s), string bean(s)
    french beans, runner beans, haricots verts, snap peas, snow peas, mange tout, sugar snaps
    asparagus, asparagas, artichoke(s), aubergine(s), eggplant(s), egg plant(s), courgette(s)
    zucchini(s), zuchini, zucchinni, marrow, summer squash, yellow squash, spaghetti squash, okra
    ocra, ladies finger(s), lady finger(s), bitter gourd, bottle gourd, ridge gourd, snake gourd
    chayote, chocho, christophene, radish(es), daikon, turnip(s), swede, rutabaga, neeps, beet(s)
    beetroot(s), beet root, pickled beets, celeriac, kohlrabi, fennel, bamboo shoots
    hearts of palm, palm hearts, seaweed, kelp, sauerkraut, pickle(s), dill pickle(s), gherkin(s)
    pickled onion(s), pickled vegetables, chutney, relish, caper(s), parsley, coriander, cilantro
    basil, dill, mint, sage, rosemary, thyme, herbs, lemongrass, curry leaves, amaranth greens
    pumpkin leaves, sweet potato leaves, cassava leaves, moringa, nettles, sorrel leaves
    jute leaves, bitter leaf, bitterleaf, water spinach, morning glory, morning glory greens
    vegetable soup
    veg soup, veggie soup, cabbage soup, tomato soup, mushroom soup, clear soup, broth
    bone broth, chicken broth, beef broth, vegetable broth, vegetable stir fry, veg stir fry
    vegetable curry, veggie curry, ketchup, catsup, mustard, vinegar, soy sauce, soya sauce
    hot sauce, chili sauce, pepper sauce, fish sauce, oyster sauce, salsa, pico de gallo
    marinara, marinara sauce, spices, salt
    """,
    FoodKind.DAIRY: """
    cheese, chese, cheez, cheddar, cheddar cheese, mozzarella, mozarella, parmesan, feta
    feta cheese, brie, camembert, gouda, edam, swiss cheese, blue cheese, goat cheese
    goats cheese, ricotta, cottage cheese, cottage chese, cream cheese, string cheese
    cheese stick(s), cheese string(s), cheese slice(s), slice(s) of cheese, piece(s) of cheese
    american cheese, processed cheese, soft cheese, cheese spread, halloumi, haloumi, paneer
    panir, queso fresco, provolone, mascarpone, quark, skyr, labneh, labne
    {yogurt|yoghurt|yogourt|yougurt|yoghourt}(s)
    {plain|natural|greek|low fat|fruit|vanilla|strawberry} {yogurt|yoghurt}
    greek {yogurt|yoghurt} with berries, pot of {yogurt|yoghurt}, cup of {yogurt|yoghurt}
    curd(s), sour milk, fromage frais, evaporated milk, powdered milk, milk powder
    """,
    FoodKind.FAT: """
    butter, buttr, margarine, marg, ghee, lard, dripping, oil, olive oil, vegetable oil, palm oil
    coconut oil, sunflower oil, mayonnaise, mayonaise, mayo, cream, sour cream, soured cream
    whipped cream, double cream, clotted cream, coconut cream, coconut milk, creamer, ranch
    ranch dressing, salad dressing, dressing, caesar dressing, vinaigrette, tartar sauce
    tartare sauce, hollandaise, gravy, avocado(s), avacado(s), avocado pear, guacamole, guac
    olive(s), green olives, black olives, tapenade, pesto, tahini, tahina, nut(s), mixed nuts
    handful of nuts, almond(s), almands, cashew(s), cashew nuts, walnut(s), pecan(s)
    pistachio(s), pistachios, hazelnut(s), macadamia(s), macadamia nuts, brazil nut(s), pine nuts
    peanut(s), pea nuts, groundnut(s), ground nut(s), monkey nuts, roasted peanuts
    boiled peanuts, salted peanuts, peanut butter, peanutbutter, groundnut paste, almond butter
    cashew butter, nut butter, sunflower seeds, pumpkin seeds, pepitas, sesame, sesame seeds
    chia, chia seeds, flax, flax seeds, flaxseed, linseed, hemp seeds, seeds, melon seeds
    coconut, fresh coconut, coconut flakes, pork rinds, pork scratchings, crackling, suet
    bacon fat, fatback
    """,
    FoodKind.MIXED_DISH: """
    # the plain heads of dishes: food when named alone
    soup(s), stew(s), pie(s), slider(s), curry, curries, casserole(s), hotpot, hot pot, chowder
    chili con carne, stir fry, stirfry, stir fries, sandwich(es), sandwhich, sandwitch, sandwiche
    sammich, sambo(s), sarnie(s), butty, panini(s), sub(s), sub sandwich, hoagie(s), toastie(s)
    leftover(s), left overs, leftovers, home cooked meal, ready meal, tv dinner, frozen dinner
    frozen meal, microwave meal, microwave dinner, takeaway, take away, takeout, take out food
    fast food, junk food, street food, buffet, barbecue, bbq, braai, picnic, full breakfast
    cooked breakfast, fry up, english breakfast, full english, hospital food, hospital meal
    meals on wheels, school dinner, canteen food, finger food, party food, appetizer(s), starters
    # sandwiches and burgers
    {ham|cheese|egg|tuna|chicken|turkey|beef|bacon|sausage|fish|jam|peanut butter} sandwich(es)
    {veggie|salad|avocado|pork} sandwich(es)
    ham and cheese (sandwich), grilled cheese (sandwich), cheese toastie
    cheese and tomato sandwich, club sandwich, egg salad (sandwich), egg mayo (sandwich)
    tuna mayo (sandwich), tuna melt, chicken salad sandwich, blt, b l t, bacon butty, bacon roll
    bacon sarnie, sausage roll(s), sausage bap, chicken wrap(s), tuna wrap, veggie wrap(s)
    falafel wrap, meatball sub, steak sandwich, philly cheesesteak, cheesesteak, reuben
    peanut butter and jelly, pb and j, pbj, pb&j, egg muffin, egg and cheese, bacon and egg
    sausage and egg, bacon egg and cheese, breakfast sandwich(es), breakfast burrito(s)
    avocado toast, beans on toast, cheese on toast, eggs on toast, egg on toast
    sardines on toast, mushrooms on toast, toast and jam, peanut butter toast, toast with butter
    bagel with cream cheese, bagel and lox, burger(s), burgar, hamburger(s), cheeseburger(s)
    cheese burger(s), beef burger(s), beefburger(s), chicken burger(s), fish burger(s)
    veggie burger(s), burger and fries, burger and chips, sliders, hot dog(s), hotdog(s)
    corn dog(s), sloppy joe(s), kebab(s), kebob(s), kabob(s), doner (kebab), gyro(s), shawarma
    shwarma, shawerma, shish kebab(s)
    # pizza and pasta
    pizza(s), piza, pizzas, slice(s) of pizza, cheese pizza, pepperoni pizza, calzone, lasagna
    lasagne, lasagnia, spaghetti bolognese, spag bol, spaghetti and meatballs
    spaghetti with meat sauce, pasta bake, pasta salad, pasta with sauce, pasta with meat sauce
    macaroni and cheese, macaroni cheese, mac and cheese, mac n cheese, mac & cheese, mac cheese
    macaroni pie, chicken pasta, tuna pasta, tuna casserole, chicken alfredo, fettuccine alfredo
    carbonara, ravioli, tortellini, cannelloni, stuffed pasta, macaroni salad, noodle soup
    chicken noodle soup, chicken noodles, noodle stir fry, risotto, paella
    # soups and stews
    chicken soup, beef soup, fish soup, potato soup, lentil soup, bean soup, pea soup
    split pea soup, corn soup, pumpkin soup, butternut soup, squash soup, carrot soup, onion soup
    french onion soup, leek and potato soup, minestrone, clam chowder, corn chowder
    seafood chowder, beef stew, chicken stew, lamb stew, fish stew, goat stew, pork stew
    vegetable stew, bean stew, oxtail stew, meat stew, chili beans, chilli con carne
    chile con carne, chili with beans, bowl of chili, turkey chili, beef casserole
    chicken casserole, green bean casserole, tuna noodle casserole, chicken curry, beef curry
    lamb curry, goat curry, curry goat, fish curry, prawn curry, shrimp curry, egg curry
    potato curry, chickpea curry, lentil curry, bean curry, curry and rice, curry chicken
    chicken and rice, chicken with rice, rice and chicken, fish and rice, rice and beans
    beans and rice, rice with beans, rice and peas, peas and rice, rice and stew, rice & beans
    rice and curry, rice and vegetables, beef and rice, egg fried rice, fried rice
    veg fried rice, chicken fried rice, special fried rice, egg rice, meat and potatoes
    meat and veg, meat and 2 veg, steak and chips, steak and fries, steak and eggs
    steak and potatoes, fish and chips, fish n chips, fish & chips, sausage and mash
    egg and chips, pie and mash, chicken and chips, chicken and fries, chicken and dumplings
    chicken and waffles, chicken nuggets and fries, ham and eggs, eggs and bacon, bacon and eggs
    eggs and toast, egg and toast, sausage and eggs, beans and toast, roast dinner, sunday roast
    sunday dinner, stuffed peppers, stuffed pepper, stuffed cabbage, cabbage rolls
    leek tart, onion tart, tomato tart, cheese tart, mushroom tart, savoury tart, galette(s)
    stuffed tomatoes, cauliflower cheese, quiche(s), quiche lorraine, souffle, pot pie(s)
    chicken pot pie, chicken pie, meat pie(s), steak pie, steak and kidney pie, beef pie
    fish pie, shepherd's pie, shepherds pie, cottage pie, pasty, pasties, cornish pasty
    pork pie(s), cheese pie, spinach pie, tamale pie, spring roll(s), egg roll(s), summer roll(s)
    samosa(s), samoosa(s), empanada(s), patty, patties, beef patty, loaded fries, cheesy chips
    chips and gravy, chips and cheese, fries with gravy, nachos, loaded potato
    jacket potato with beans, baked potato with cheese, chef salad, cobb salad, caesar salad
    ceaser salad, chicken caesar salad, greek salad, nicoise salad, taco salad, waldorf salad
    seafood salad, grain bowl, burrito bowl, buddha bowl, poke bowl, smoothie bowl
    yogurt parfait, parfait, cheese and crackers, crackers and cheese, chips and dip
    chips and salsa, milk and cereal, cereal with milk, cereal and milk, oats with milk
    tomato and egg, egg and tomato
    """,
}
