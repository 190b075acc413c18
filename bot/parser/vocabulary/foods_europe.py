"""Foods of Europe: the isles, west, north, south and east, and the Jewish kitchen."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    barm, barm cake(s), stottie, cob roll, batch loaf, soda farl, soda farls, wheaten bread
    potato bread, potato farl(s), fadge, boxty, champ, colcannon, tattie scone(s)
    potato scone(s), bannocks, brose, skirlie, bara brith bread, staffordshire oatcake(s)
    pikelets savoury, dumplings suet, suet dumpling(s), pease, chip butty bread, chipped potatoes
    chippy chips, rosti, roesti, dauphinoise, gratin dauphinois, pommes, pommes frites, frites
    duchess potatoes, puree, pommes puree, pain complet, tartine bread, fougasse
    pain de campagne, biscotte(s), coquillettes, semoule, galette de sarrasin, riz blanc, brot
    brotchen, broetchen, vollkornbrot, schwarzbrot, graubrot, roggenbrot, laugenbrezel, brezel
    knackebrot, knodel, knoedel, kartoffelknodel, semmelknodel, klosse, kloesse, spatzle
    spaetzle, schupfnudeln, kartoffeln, salzkartoffeln, bratkartoffeln, kartoffelpuree
    kartoffelbrei, kartoffelsalat, pellkartoffeln, reibekuchen, kartoffelpuffer, nudeln
    haferflocken, haferbrei, toastbrot, zwieback, stamppot, boerenkool stamppot, hutspot
    aardappelen, aardappels, boterham, boterhammen, roggebrood, beschuit, patat, friet, krieltjes
    rugbrod, rugbroed, knekkebrod, knackebrod, knackebrodd, lefse, lompe, flatbrod, tunnbrod
    limpa, ruisleipa, ryebread, perunat, kartofler, poteter, potatis, kokt potatis
    brunede kartofler, puuro, kaurapuuro, havregrot, havregrod, havregryn, grot, makaroner
    laufabraud, flatkaka, flatkokur, pane, pane integrale, focaccia bread, grissini, crostini
    piadina, polenta slices, polenta porridge, gnocchi potato, orecchiette, pappardelle, bucatini
    conchiglie, ditalini, trofie, riso, risotto bianco, patate, patate al forno, taralli
    freselle, friselle, broa, pao de milho, batatas, batatas fritas, batatas cozidas
    arroz de manteiga, massa, psomi, patates, patates fournou, rizi, kritharaki, trahana
    trahanas, paximadi, pogacha, pogaca bread, lepinja, somun, proja, kacamak, mamaliga, zganci
    djuvec rice, hleb, kruh, kasha, kasza, kasza gryczana, buckwheat kasha, grechka, gretchka
    ovsyanka, ovsianka, manka, mannaya kasha, pshenka, perlovka, chleb, khleb, black bread
    borodinsky, borodinsky bread, borodino bread, bulka, bulki, ziemniaki, kartofle, kartoshka
    zharenaya kartoshka, pyure, pyureshka, kopytka, kluski, kluski slaskie, pyzy
    placki ziemniaczane, draniki, deruny, knedliky, knedle savoury, nokedli, galuska, tarhonya
    kenyer, krumpli, kifli savoury, lavash, obwarzanek, bublik(s), sushki salty, makarony, ryz
    vermishel, kulesha, challah, challa, kugel, hallah, matzo meal, bialy, bialys, latke(s)
    potato latkes, kugel potato, potato kugel, kasha varnishkes, farfel, egg kichel, kneidlach
    matzo ball(s), knaidel
    """,
    FoodKind.SWEET_FOOD: """
    welsh cake(s), bara brith, barmbrack, brack, eccles cake(s), chelsea bun(s), bath bun(s)
    lardy cake, parkin, jammie biscuit, bourbon biscuit(s), custard cream(s), rich tea biscuit(s)
    rich tea, garibaldi biscuit(s), party rings, digestive(s), chocolate digestive(s)
    malted milk biscuit(s), iced bun(s), iced finger(s), yum yum(s), empire biscuit(s)
    tablet scottish, clootie dumpling, cranachan, dundee cake, black bun, victoria sponge
    lemon drizzle, lemon drizzle cake, coffee and walnut cake, bakewell tart, bakewell
    rocky road, millionaires shortbread, tiffin, eton mess, knickerbocker glory, sticky toffee
    spotted dick, jam sponge, sponge pudding, treacle sponge, bread and butter pudding, rice pud
    semolina pudding, angel cake, arctic roll, banoffee pie, banoffee, syllabub, fool fruit
    summer pudding, plum duff, christmas cake slice, simnel cake, jelly and ice cream
    jelly and custard, apple crumble and custard, crumble and custard, pie and custard, flake bar
    humbug(s), wine gum(s), fruit pastilles, jelly tots, sherbet lemons, rock candy
    edinburgh rock, carrageen pudding, porter cake, bread and jam, jam on toast, toast and honey
    honey on toast, toast and marmalade, marmalade on toast, brioche(s), pain aux raisins
    chausson aux pommes, chouquettes, mille feuille, millefeuille, tarte tatin, tarte aux pommes
    tarte au citron, clafoutis, far breton, kouign amann, ile flottante, creme brulee
    paris brest, religieuse, madeleine(s), financier(s), canele(s), palmier(s), baba au rhum
    galette des rois, buche de noel, crepes au sucre, gaufre(s), liege waffle, belgian waffle(s)
    speculoos, mousse au chocolat, riz au lait, nougat de montelimar, marron glace, pate de fruit
    confiture, miel, gateau(x), viennoiserie, kuchen, apfelkuchen, kasekuchen, kaesekuchen
    pflaumenkuchen, streuselkuchen, black forest cake, schwarzwalder kirschtorte, torte(s)
    sachertorte, linzer torte, apfelstrudel, berliner(s), krapfen, pfannkuchen, eierkuchen
    kaiserschmarrn, germknodel, dampfnudel, milchreis, griessbrei, griesspudding, rote grutze
    lebkuchen, stollen, spritzgeback, vanillekipferl, marzipan, gummibarchen, schnecke
    franzbrotchen, plunder, baumkuchen, hagelslag, stroopwafel(s), poffertjes, pannenkoek(en)
    oliebol(len), appeltaart, vla, ontbijtkoek, drop licorice, speculaas, tompouce, bossche bol
    kanelbulle, kanelbullar, kanelsnegl, cardamom bun(s), kardemummabullar, semla, semlor
    wienerbrod, drommekage, aebleskiver, rodgrod med flode, rod grod, risalamande, ris a la mande
    risgrynsgrot, pepparkakor, pepperkaker, lussekatter, prinsesstarta, princess cake, kladdkaka
    chokladboll(ar), smakaka, dammsugare, krumkake, kransekake, vafler, vaffel, pannkakor
    lakrits, salmiakki, lordagsgodis, pulla, korvapuusti, mustikkapiirakka, runeberg cake, mammi
    kiisseli, skyr cake, kleinur, snudur, ponnukokur, tosca cake, troll cream, tiramisu
    panna cotta, cannoli, cannolo, cassata, panettone, pandoro, colomba, biscotti, cantucci
    amaretti, sfogliatella, sfogliatelle, cornetto, bombolone, bomboloni, zeppole, struffoli
    torrone, panforte, zabaglione, semifreddo, affogato, torta caprese, crostata, ricotta cake
    pastiera, pastel de nata, pasteis de nata, pastel de belem, bola de berlim, pao de lo
    toucinho do ceu, ovos moles, queijada(s), filhos, rabanadas, baklava(s), baklawa
    galaktoboureko, bougatsa, loukoumades, loukoumi, koulouria, koulourakia, kourabiedes
    melomakarona, kataifi, rizogalo, ravani, revani, karidopita, tsoureki, spoon sweet(s)
    vasilopita, diples, pasteli, krempita, krofne, tulumba, tulumbe, urmasice, hurmasice
    tufahija, palacinke, palacinka, palatschinken, slatko, krofna, potica, gibanica sweet
    strukli sweet, sutlijas, papanasi, cozonac, gogosi, clatite, kurtos, kurtoskalacs
    chimney cake, dobos torte, dobos, rigo jancsi, somloi galuska, beigli, meggyleves, retes
    palacsinta, blini sweet, blinchiki with jam, syrniki, oladi, oladyi, vareniki with cherries
    zapekanka, tvorog casserole, pryanik(i), pirozhnoe, ptichye moloko, medovik, honey cake
    napoleon cake, kulich, paskha, pastila, zefir, marmelad, varenye, varenie, sushki, vatrushka
    vatrushki, kozinaki, churchkhela, gata, nazook, pakhlava, halva, khalva, sgushchenka
    morozhenoe, ptasie mleczko, sernik, szarlotka, makowiec, paczki, paczek, faworki, chrusciki
    piernik, pierniki, drozdzowka, racuchy, nalesniki, nalesniki with cheese, kisiel, budyn
    babka, babki, krowki, wafelki, kremowka, kolach(es), kolache(s), kolace, trdelnik, medovnik
    buchty, livance, ovocne knedliky, fruit dumplings, bublanina, poppy seed roll, poppyseed roll
    nut roll, orechovnik, sakotis, tinginys, sakotis cake, rugelach, rugelah, hamantaschen
    hamantash, sufganiyot, sufganiya, mandelbrot, mandel bread, teiglach, lekach, noodle kugel
    lokshen kugel, blintz(es), cheese blintzes, charoset, macaroons coconut, tzimmes
    """,
    FoodKind.FRUIT: """
    damson(s), greengage(s), bilberries, bilberry, sloes, bramley apple, cox apple
    stewed rhubarb, loganberries, tayberries, whortleberries, poire(s), peche(s), fraise(s)
    cerise(s), raisin grapes, apfel, birne(n), pflaume(n), kirschen, erdbeeren, himbeeren
    weintrauben, banane(n), aardbeien, blabar, lingon, hjortron, jordgubbar, mustikka, mustikat
    puolukka, mela, pesche, fragole, ciliegie, arance, albicocche, anguria, fichi, karpouzi
    peponi, rodakina, stafylia, jabuka, kruska, sljive, lubenica, tresnje, grozde, jablko, jablka
    gruszka, gruszki, sliwki, truskawki, maliny, czeresnie, borowki, arbuz, yabloko, yabloki
    grusha, klubnika, malina, vinograd, arbuz slices, dynya, chernika, klyukva, smorodina, khurma
    apelsin
    """,
    FoodKind.PROTEIN: """
    jellied eels, cockles, whelks, winkles, potted shrimp, dressed crab, scampi, breaded fish
    fish goujons, cod roe, arbroath smokie, rollmop(s), soused herring, bloater, saveloy, savaloy
    chipolata(s), cumberland sausage, lincolnshire sausage, brawn, tongue sandwich meat
    gammon steak, boiled bacon, bacon joint, rasher(s), roast gammon, boiled ham
    corned beef slices, minute steak, stewing steak, braising steak, lamb shank(s), lamb mince
    liver and bacon, drisheen, crubeens, haslet, square sausage, lorne sausage
    stornoway black pudding, turkey dinosaurs, steak tartare, steak hache, entrecote, confit duck
    duck confit, confit de canard, foie gras, rillettes, saucisson, andouillette, boudin noir
    merguez sausage, jambon, escargots, cuisses de grenouille, moules, moules marinieres
    coquilles saint jacques, poulet, poulet roti, poulet grille, poisson, saumon, thon, oeuf(s)
    oeufs mimosa, blanc de poulet, viande, boeuf, lentilles, haricots blancs, flageolets, wurst
    wurstchen, bockwurst, currywurst, weisswurst, leberwurst, blutwurst, mettwurst, mett
    frikadelle(n), bulette(n), leberkase, schnitzel, schnitzels, wiener schnitzel
    chicken schnitzel, schweinebraten, sauerbraten, rouladen, rinderrouladen, eisbein
    schweinshaxe, kassler, sulze, brathahnchen, hahnchen, matjes, bismarck herring, forelle
    fischstabchen, eier, ruhrei, spiegelei, linsen, haring, kibbeling, bitterballen, kroket dutch
    frikandel, gehaktbal, gehaktballen, rookworst, gravlax, gravad lax, lutefisk, pickled herring
    surstromming, sill, inlagd sill, smoked reindeer, reindeer, moose stew meat, rakfisk
    torrfisk, klippfisk, fiskeboller, fiskekaker, fiskebollar, frikadeller, kottbullar
    swedish meatballs, kjottkaker, kjottboller, polse, polser, korv, falukorv, lihapullat
    makkara, muikku, lohi, leverpostej, flaeskesteg, flaskesteg, rejer, makrel, hangikjot, hakarl
    hardfiskur, svid, prosciutto crudo, bresaola, mortadella, speck, pancetta, nduja, salsiccia
    cotechino, porchetta, osso buco meat, bistecca, scaloppine, saltimbocca, cotoletta
    pollo arrosto, vitello tonnato, carpaccio, baccala, branzino, orata, vongole, cozze, polpo
    polpette, ceci, fagioli, lenticchie, borlotti, cannellini, cannellini beans, lupini
    bifana meat, frango de churrasco, sardinhas, sardinhas assadas, polvo, leitao, chourico
    presunto, alheira, grao, souvlaki, souvlaki chicken, kontosouvli, keftedes, soutzoukakia
    bifteki, loukaniko, psari, htapodi, kalamarakia, bakaliaros, gigantes, fasolia, fakes lentils
    revithia, cevapi, cevapcici, pljeskavica, raznjici, kobasica, kobasice, sudzuk, suho meso
    prsut, kulen, pastrmka, mici, mititei, carnati, slanina, kolbasz, szalonna, fasirt
    rantott hus, rantott csirke, kielbasa sausage, kabanos, kabanosy, parowki, szynka, schabowy
    kotlet schabowy, kotlet mielony, mielone, kotlety, kotleta, kotlet, kotlet po kievski
    chicken kiev, chicken kyiv, pieczen, golonka, boczek, sledz, sledzie, herring in oil, karp
    dorsz, jajko, jajka, jajecznica, kurczak, indyk, wolowina, wieprzowina, ryby, kaszanka
    pasztet, galareta, kholodets, holodets, studen, salo, kolbasa, sosiski, sosiska, tefteli
    shashlik, shashlyk, zharkoe, kuritsa, govyadina, svinina, seld, seledka, skumbriya, vobla
    ikra, yaitsa, yaichnitsa, fasol, gorokh, rizek, svickova meat, utopenec, klobasa, jitrnice
    brisket jewish, lox, gefilte fish, gefilte, chopped liver, pastrami, salt beef bagel meat
    kishke, whitefish salad, chicken schmaltz meat
    """,
    FoodKind.VEGETABLE: """
    runner bean(s), mangetout, pickled cabbage red, piccalilli, pickled walnuts, samphire
    laverbread, laver bread, carrot and swede, mashed swede, swede mash, carrot and turnip
    purple sprouting, cavolo nero, winter veg, steamed greens, coleslaw salad, ratatouille
    crudites, salade verte, salade composee, haricots, haricot vert, celeri remoulade
    carottes rapees, poireaux, epinards, ratatouille nicoise, soupe de legumes, potage
    potage de legumes, endives, artichauts, champignons, legumes verts, jardiniere, cornichon(s)
    salat, gruner salat, gurkensalat, krautsalat, tomatensalat, rotkohl, blaukraut
    sauerkraut salad, grunkohl, rosenkohl, spargel, mohren, gemuse, gemusesuppe, kohlrabi salad
    gurke, gurken, spinat, rahmspinat, groente, groentesoep, sperziebonen, witlof, spruitjes
    andijvie, rode kool, surkal, rodkal, agurkesalat, pressgurka, rodbeder, gulerodder, gronkal
    nettle soup, insalata, insalata mista, caponata, peperonata, zucchine, melanzane
    melanzane grigliate, verdure, verdure grigliate, spinaci, bietole, broccoletti, cime di rapa
    rapini, friarielli, cicoria, finocchio, carciofi, fagiolini, pomodori, passata
    pomodoro sauce, arrabbiata sauce, minestrone verdure, giardiniera, bruschetta topping
    salada mista, horta, horiatiki, greek salad village, melitzanosalata, briam, fasolakia
    imam bayildi, bamies, kolokithakia, kolokithia, pantzaria, lahanosalata, shopska
    shopska salata, sopska salata, ajvar, pindjur, lutenitsa, ljutenica, kiselo zelje
    kisela zelka, kupus, kupus salata, turshija, tursija, zelje, blitva, djuvec veg, zacusca
    vinete, salata de vinete, muraturi, varza, lecso, lecho, savanyusag, uborkasalata, surowka
    surowki, mizeria, kapusta, kapusta kiszona, ogorki, ogorki kiszone, ogorek, buraczki, cwikla
    marchewka, pomidor, pomidory, salatka, fasolka szparagowa, kalafior, szparagi, pieczarki
    grzyby, botwinka, szczawiowa, barszcz, barszcz czerwony, borscht, borsch, borshch, borsht
    red borscht, green borscht, shchi, schi, svekolnik, kvashenaya kapusta, ogurtsy
    pomidory salad, svekla, morkov, morkovka, griby, vinegret, vinaigrette salad beet
    korean carrots, morkovcha, kabachki, kabachkovaya ikra, baklazhany, baklazhannaya ikra
    salat iz kapusty, salat iz ogurtsov, okroshka, khren, adjika, ajika, chrain, half sours
    horseradish, beet salad, sauerkraut soup, zelnacka, zeli, kysane zeli, okurkovy salat
    """,
    FoodKind.DAIRY: """
    wensleydale, stilton, red leicester, double gloucester, caerphilly, lancashire cheese
    dairy triangle cheese, cheese triangle(s), creme fraiche, petit suisse, faisselle, comte
    emmental, emmenthal, gruyere, roquefort, reblochon, raclette cheese, chevre, munster
    quark with herbs, magerquark, krauterquark, kase, gouda slices, hagelkaas, kaas, karnemelk
    brunost, brown cheese, geitost, havarti, danbo, vasterbotten, juustoleipa, leipajuusto
    raejuusto, rahka, piima, viili, filmjolk cup, parmigiano, grana padano, pecorino, gorgonzola
    burrata, scamorza, stracchino, taleggio, robiola, caciocavallo, queijo da serra, graviera
    kefalotyri, mizithra, myzithra, anthotyro, tzatziki, tsatsiki, feta slice, kajmak cheese
    sirene, kashkaval, kaskaval, cascaval, branza, telemea, urda, bryndza, oscypek, twarog
    twarozek, bialy ser, serek, ser zolty, tvorog, farmers cheese, farmer cheese, ryazhenka cup
    prostokvasha, tvaroh, trappista, turo, korozott, zernistyy tvorog
    """,
    FoodKind.FAT: """
    beef dripping, clarified butter, bearnaise, bechamel, white sauce, cheese sauce
    parsley sauce, bread sauce, remoulade, aioli, rouille, beurre, beurre blanc, creme, noix
    amandes, noisettes, schmalz, griebenschmalz, sahne, schlagsahne, nusse, walnusse, mandeln
    slagroom, pindakaas, pinda's, gradde, flode, lardo, panna, burro, noci, mandorle, pistacchi
    olio, pesto genovese, nozes, skordalia, taramasalata, tarama, ladi, kajmak, kaymak, orasi
    bademi, smetana, smietana, tejfol, smalec, maslo, orzechy, orekhi, semechki, semki
    sunflower seeds salted, schmaltz, gribenes
    """,
    FoodKind.MIXED_DISH: """
    bubble n squeak, rumbledethumps
    clapshot, lobby, pan haggerty, panackelty, lobscows, faggots and peas, homity pie
    meal deal
    bacon bap, egg bap
    saumagen, himmel und erde, pinkel, zwiebelkuchen
    truffade, garbure, axoa, piperade, brandade, carbonade
    andijviestamppot, canederli, pizzoccheri
    orecchiette cime di rapa, culurgiones, malloreddus, pane frattau, favata
    pote asturiano, escudella, olla gitana, gazpachos manchegos, papas arrugadas
    feijoada a transmontana
    kolduny, rosolli, janssons, pyttipanna
    raspeball, tavce gravce, muckalica, karadjordjeva
    pasticada, crni rizot, burek with meat, ghivetch, tas kebab
    strapacky
    hortobagyi palacsinta
    bubble and squeak, bangers and mash, toad in the hole, sausage and chips, sausages and mash
    sausage and beans, sausage beans and chips, egg chips and beans, ham egg and chips
    gammon egg and chips, gammon and chips, pie and chips, pie and peas, pie chips and gravy
    chip butty, fish finger sandwich, fish finger butty, scampi and chips, cod and chips
    haddock and chips, ploughmans, ploughman's lunch, welsh rarebit, rarebit, scotch broth
    cock a leekie, cullen skink, stovies, haggis neeps and tatties, mince and tatties
    mince and potatoes, lob scouse, scouse, lancashire hotpot, cawl, irish stew, dublin coddle, coddle
    bacon and cabbage, ham and cabbage, corned beef and cabbage, corned beef hash, ulster fry
    full irish, full scottish, full welsh, breakfast roll, spice bag, chicken fillet roll
    3 in one chips, 3 in 1 chips, beef wellington, coronation chicken, kedgeree, devilled kidneys
    steak and ale pie, steak and onion pie, chicken and mushroom pie, chicken and leek pie
    cheese and onion pie, cheese and onion pasty, butter pie, scotch pie, macaroni scotch pie
    bridie, game pie, stargazy pie, fishermans pie, fisherman's pie, cumberland pie
    cheese and potato pie, corned beef pie, mince pie dinner, mince and dumplings
    beef and dumplings, casserole and dumplings, pasta and cheese, tuna pasta bake
    chicken tikka sandwich, prawn sandwich, prawn cocktail, cheese and pickle sandwich
    cheese and ham toastie, ham and cheese toastie, beans and cheese on toast
    beans egg and toast, egg and soldiers, boiled egg and soldiers, egg and toast soldiers
    eggy bread, dippy eggs and toast, spaghetti on toast, spaghetti hoops
    spaghetti hoops on toast, alphabet spaghetti, jacket potato and beans, jacket potato and tuna
    jacket and beans, cottage pie and veg, roast beef dinner, roast chicken dinner
    roast lamb dinner, roast pork dinner, carvery, turkey dinner, roast and veg
    roast beef and yorkshire pudding, yorkshire pudding wrap, nut roast
    cauliflower cheese and bacon, leek and potato, broccoli and stilton soup, pea and ham soup
    oxtail soup, mulligatawny, cup a soup, cuppa soup, tinned soup, packet soup, kebab and chips
    doner and chips, chicken kebab, doner meat and chips, chicken shish, donner kebab
    donner meat, parmo, balti pie, chicken balti, curry and chips, half and half curry
    croque monsieur, croque madame, quiche and salad, salade nicoise, coq au vin
    boeuf bourguignon, beef bourguignon, blanquette de veau, blanquette, pot au feu, cassoulet
    choucroute, choucroute garnie, bouillabaisse, hachis parmentier, tartiflette, raclette
    fondue, cheese fondue, aligot, endives au jambon, poulet frites, steak frites, moules frites
    jambon beurre, sandwich jambon beurre, tartine(s), tarte flambee, flammkuchen, pissaladiere
    vol au vent, gougeres, potee, navarin, ratatouille and rice, riz cantonais, pates carbonara
    pates bolognaise, lasagnes, soupe a l'oignon, veloute, galette complete, croque, waterzooi
    carbonnade flamande, stoemp, stoofvlees, vol-au-vent, witloof met ham, stamppot met worst
    stamppot with sausage, erwtensoep, snert, hutspot with meat, kapsalon, broodje kroket
    broodje, uitsmijter, tosti, nasi dutch, bami goreng, rijsttafel, hachee, pannenkoek spek
    eintopf, linseneintopf, linsensuppe, erbsensuppe, kartoffelsuppe, gulaschsuppe, gulasch
    goulash, maultaschen, kasespatzle, kaesespaetzle, konigsberger klopse, kohlrouladen
    himmel un ad, labskaus, strammer max, bauernfruhstuck, schnitzel and fries
    schnitzel mit pommes, currywurst pommes, wurst und brot, abendbrot, brotzeit, doner im brot
    doner teller, auflauf, nudelauflauf, nudelsalat, kassler and sauerkraut, tafelspitz
    krautfleckerl, rosti with egg, alplermagronen, zurcher geschnetzeltes, geschnetzeltes
    birchermuesli, bircher muesli, smorrebrod, smorbrod, smorgas, open sandwich(es)
    open faced sandwich, toast skagen, smorgastarta, janssons frestelse, janssons temptation
    pytt i panna, biksemad, kalops, artsoppa, pea soup and pancakes, meatballs and potatoes
    meatballs and mash, meatballs and pasta, kottbullar med potatis, palt, pitepalt, kroppkakor
    raggmunk, kaldolmar, stekt flask med loksas, stegt flaesk, brunkal, gule aerter, tarteletter
    farikal, lapskaus, fiskesuppe, lohikeitto, karjalanpaisti, karelian pasty, karelian pasties
    karjalanpiirakka, kaalilaatikko, makaronilaatikko, lihakeitto, hernekeitto, kalakukko
    poronkaristys, plokkfiskur, kjotsupa, pylsa, skyr bowl, spaghetti carbonara
    spaghetti aglio e olio, aglio e olio, spaghetti alle vongole, spaghetti al pomodoro
    pasta al pomodoro, pasta pomodoro, pasta al pesto, pesto pasta, pasta with pesto
    pasta alla norma, pasta e fagioli, pasta fagioli, pasta e ceci, pasta and beans
    penne arrabbiata, penne alla vodka, cacio e pepe, amatriciana, bucatini amatriciana
    tagliatelle al ragu, bolognese, lasagne al forno, tortellini in brodo, gnocchi with sauce
    gnocchi al pesto, mushroom risotto, seafood risotto, risotto alla milanese, osso buco
    ossobuco, polenta e salsiccia, polenta and sausage, polenta with cheese
    melanzane alla parmigiana, parmigiana, pollo alla cacciatora, chicken cacciatore
    chicken marsala, chicken piccata, ribollita, pappa al pomodoro, panzanella, arancini
    arancino, suppli, bruschetta, crostini with topping, piadina with ham, tramezzino
    saltimbocca and potatoes, antipasto, antipasti, caprese, caprese salad, insalata di riso
    pizza margherita, margherita pizza, margherita, marinara pizza, panzerotti, timballo, vitello
    caldo verde soup, francesinha, bifana, bitoque, arroz de pato, arroz de marisco
    arroz de polvo, acorda, bacalhau a bras, bacalhau com natas, bacalhau com todos, cozido
    cataplana, carne de porco alentejana, tosta mista, rissois, caldeirada, moussaka, mousaka
    pastitsio, pasticio, gemista, yemista, dolmades, dolmadakia, dolma(s), spanakopita, tiropita
    tyropita, kreatopita, bougatsa with cheese, avgolemono, fasolada, fasoulada, magiritsa
    giouvetsi, youvetsi, kleftiko, stifado, kokkinisto, lamb kleftiko, souvlaki pita, gyros pita
    pita gyros, spanakorizo, lahanorizo, papoutsakia, makaronia me kima, avgolemono soup
    kotopoulo me patates, dakos, saganaki, mezze, meze, burek, byrek, byrek with cheese
    borek with cheese, pita sa sirom, pita zeljanica, zeljanica, sirnica, krompirusa, gibanica
    cevapi with bread, sarma, sarme, japrak, punjene paprike, punjena paprika, filovane paprike
    grah, pasulj, prebranac, tavche gravche, djuvec, musaka, bosanski lonac, begova corba, corba
    ciorba, ciorba de burta, ciorba de perisoare, sarmale, tochitura, tocana
    mamaliga with cheese, bulz, ardei umpluti, salata de boeuf, zama, placinta, banitsa, gyuvech
    kavarma, tarator, shkembe, flija, tave kosi, speca te mbushura, gulyas, gulyasleves, halaszle
    paprikas, paprikas csirke, chicken paprikash, paprikash, porkolt, toltott kaposzta
    toltott paprika, langos, rakott krumpli, rakott kaposzta, bableves, husleves, turos csusza
    lecso with sausage, bryndzove halusky, halusky, kapustnica, svickova, knedlo vepro zelo
    vepro knedlo zelo, gulas, bramboraky, bramboracka, smazeny syr, kulajda
    rizek and potato salad, pierogi, pierogies, perogies, perogy, pierogi ruskie
    pierogi with meat, bigos, golabki, golumpki, zurek, rosol, zupa, zupa pomidorowa, pomidorowa
    ogorkowa, krupnik, grochowka, flaki, kapusniak, fasolka po bretonsku, leczo, zapiekanka
    kotlet and potatoes, schabowy with potatoes, schabowy z ziemniakami, gulasz, lazanki, kanapka
    kanapki, salatka jarzynowa, placki with goulash, knysza, uszka and barszcz, kluski with meat
    pelmeni, pelmenyi, vareniki, varenyky, manti, solyanka, ukha, rassolnik, kharcho, uha
    olivier, olivie, olivier salad, russian salad, shuba, herring under fur coat
    seledka pod shuboy, mimosa salad, golubtsy, holubtsi, holubtsy, plov, zharkoye, pirog, pirogi
    pirozhok, pirozhki, piroshki, piroshky, belyash, belyashi, chebureki, cheburek, kulebyaka
    kurnik, blini, bliny, blinchiki, blini with caviar, blinchiki with meat, beef stroganov
    befstroganov, makarony po flotski, grechka with meat, grechka and chicken, kasha with milk
    kartoshka with meat, kotlety and pyure, kotleta s pyure, sup, kharcho soup, borscht with meat
    borscht and bread, khachapuri, hachapuri, adjarian khachapuri, khinkali, lobio, chakhokhbili
    satsivi, chanakhi, mchadi and lobio, odjakhuri, khorovats with bread, lahmajo, ghapama
    cepelinai, cepelinas, zeppelins, kugelis, saltibarsciai, kibinai, balandeliai, mulgipuder
    verivorst with potatoes, rosolje, pelekie zirni, grey peas and bacon, banosh, kulish
    holodnyk, deruny with sour cream, draniki with sour cream, machanka, cholent, chulent, hamin
    matzo brei, matzoh brei, matzo ball soup with noodles, chicken soup with matzo balls
    kreplach, knish(es), kasha knish, bagel and cream cheese, bagels and lox, lox and bagel
    pastrami on rye, reuben sandwich, salt beef sandwich, salt beef bagel, whitefish bagel
    shakshuka with bread, borekas, burekas, jachnun, malawach, kubbeh soup, sabich
    """,
}
