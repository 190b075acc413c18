"""Foods of South East Asia and the Pacific."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    kanin, sinangag, garlic fried rice, garlic rice plate, bahaw, lugaw, lugao, puto, puto maya
    suman, kutsinta, kamote, kamoteng kahoy, kamote cue, camote cue, saging na saba
    saba banana(s), nilagang saba, nilagang mais, pandesal, pan de sal, pandesals, monay
    tasty bread, bihon, sotanghon, misua, puso rice, hanging rice, gabi, nasi putih, nasi merah
    nasi uduk, lontong, ketupat, lemang, bubur, bubur nasi, mie, mee, bihun, beehoon, kwetiau
    kway teow, soun, singkong, singkong goreng, ubi, ubi kayu, ubi rebus, ubi goreng, talas
    kentang, perkedel kentang, kerupuk, krupuk, keropok, emping, rempeyek, jagung, jagung bakar
    jagung rebus, roti canai, roti prata, prata, roti tawar, roti bakar, roti jala, pulut, ketan
    papeda, sagu, tiwul, gaplek, com trang, com tam, xoi trang, banh mi bread, banh mi khong
    bun noodles, banh pho, hu tieu noodles, banh trang, banh uot, banh hoi, khoai lang, khoai mi
    khoai tay, khoai mon, bap luoc, ngo luoc, chao trang, banh da, banh phong tom, khao
    khao suay, khao niao, khao niaw, khao neow, thai sticky rice, khao jee, sen mee, sen yai
    sen lek, woon sen, kanom jeen, khanom jeen, jok, bai sor, htamin, mont di, kauk nyin
    taro root, poi, taro chips, ulu, breadfruit fries, kumara, kumara chips, kumara fries, uvi
    ufi, kape, talo, hekaka, kaukau, sak sak, saksak, sago pancake, damper, cabin cracker(s)
    cabin biscuits, navy biscuits, pani, maori bread, rewena, rewena bread, takakau, paraoa
    paraoa parai, spaghetti tinned
    """,
    FoodKind.SWEET_FOOD: """
    halo halo, halo-halo, leche flan, ube halaya, halayang ube, ube jam, ube ice cream, ube cake
    bibingka, puto bumbong, biko, sapin sapin, palitaw, maja blanca, cassava cake, buko pandan
    buko salad, turon, banana cue, bananacue, maruya, minatamis na saging, ginataang bilo bilo
    ginataang mais, bilo bilo, champorado, taho, mais con yelo, ice candy, dirty ice cream
    polvoron, yema, pastillas, ensaymada, ensaimada, spanish bread, pan de coco, hopia, mamon
    brazo de mercedes, sans rival, silvanas, otap, barquillos, tsokolate bar, espasol, kalamay
    tupig, buchi, carioca sweet, kakanin, pichi pichi, dulce de membrillo, dried mango sweet
    banana chips sweet, egg pie, buko pie, kue, kuih, kueh, kuih lapis, kue lapis, onde onde
    klepon, kelepon, seri muka, kuih talam, ketayap, kuih dadar, dadar gulung, apam balik
    martabak manis, terang bulan, pisang goreng, goreng pisang, pisang molen, kolak, kolak pisang
    bubur cha cha, bubur kacang hijau, bubur sumsum, bubur ketan hitam, pulut hitam
    cendol dessert, chendol, es teler, es buah, ais kacang, abc dessert, ice kacang, serabi
    lupis, getuk, wajik, nagasari, dodol durian, kaya, kaya toast, kaya jam, bolu, lapis legit
    nastar, pineapple tarts, gula melaka, gula jawa, gula merah, palm sugar, kuih bahulu, bahulu
    kuih cara, putu mayam with sugar, putu piring, tau suan, bingka, wingko, che, che ba mau
    che dau, che dau xanh, banh flan, banh bo, banh da lon, banh cam, banh ran, banh chuoi
    chuoi chien, banh bong lan, banh trung thu, sinh to bo, kem, keo dau phong, keo dua, mut
    mango sticky rice, mango with sticky rice, khao niao mamuang, khao niew mamuang, khanom
    khanom krok, khanom buang, tub tim krob, bua loy, lod chong, sangkhaya, foi thong, thong yip
    thong yod, luk chup, roti gluay, roti banana, banana roti, coconut ice cream, kluay buat chi
    gluay tod, coconut pancakes, nom krok, num ansom chek, sangkhya lapov, mont lone yay paw
    shwe yin aye, sanwin makin, bein mont, haupia, malasada(s), butter mochi, shave ice
    guri guri, panipopo, pani popo, panikeke, koko rice, koko alaisa, supoesi, suafa'i, sua esi
    faikakai, fa'ausi, puligi, puligi steamed, kopai, poke fruit pudding, po'e, poe dessert
    faraoa coco, firifiri, vakalolo, purini, lolly cake, lamington(s), anzac biscuit(s)
    hokey pokey, hokey pokey ice cream, pavlova kiwi, fairy bread, afghan biscuit(s)
    ginger crunch, caramel slice, vanilla slice, jelly slice, pikelet(s), fairy floss
    steamed pudding, golden syrup pudding
    """,
    FoodKind.FRUIT: """
    mangga, manga, hilaw na mangga, indian mango, saging, lakatan, latundan, senorita banana
    pakwan, papaya hinog, pinya, bayabas, kaimito, duhat, santol, lanzones, langka, guyabano
    atis, chico fruit, chesa, dalandan, dalanghita, ponkan, suha, calamansi, kalamansi
    siniguelas, makopa, aratiles, durian fruit, marang, rambutan fruit, pisang, pisang ambon
    mangga muda, pepaya, betik, nanas, jeruk, jeruk bali, anggur, semangka, tembikai, snake fruit
    snakefruit, jambu air, jambu biji, manggis, duku, langsat, nangka, cempedak, belimbing
    sirsak, buah, rujak buah, rojak buah, ciku, buah naga, limau, chuoi, xoai, dua hau, du du
    cam sanh, buoi, nhan, vai thieu, chom chom, mang cut, sau rieng, thanh long, dua fruit
    man fruit, mamuang, kluay, gluay, malako, som o, taeng mo, saparot, mangkhut, ngoh, lamyai
    farang guava, noina, chomphu, rose apple(s), water apple(s), wax apple(s), lilikoi
    mountain apple, vi fruit, vi apple, ifi, feijoas, tangelo(s), kiwi berries, finger lime(s)
    quandong, davidson plum
    """,
    FoodKind.PROTEIN: """
    adobo, chicken adobo, pork adobo, adobong manok, adobong baboy, tocino, tocinong baboy
    longganisa, longanisa, tapa beef, beef tapa, litson, lechon kawali, lechon manok, crispy pata
    bagnet, sisig, inihaw na baboy, inihaw na liempo, liempo, inihaw na isda, inihaw na manok
    chicken inasal, inasal, isaw, betamax, balut, penoy, itlog, itlog na maalat, kwek kwek
    tokneneng, kikiam, tuyo, daing, daing na bangus, bangus, bangus belly, danggit, galunggong
    tilapya, pritong isda, pritong tilapia, paksiw na isda, hipon, pusit, kinilaw, kilawin
    tinapa, dilis, bistek tagalog, bistek, pork barbecue, pork bbq stick, tokwa, tokwa't baboy
    tortang talong, tortang giniling, embutido, giniling, relyenong bangus, munggo, monggo
    ginisang munggo, munggo guisado, ginisang monggo, ayam, ayam goreng, ayam bakar, ayam penyet
    ayam geprek, ayam pop, ayam kecap, ayam percik, ayam masak merah, ikan, ikan bakar
    ikan goreng, ikan asin, ikan teri, ikan bilis, pepes ikan, otak otak, otak-otak, udang, cumi
    sotong, kambing, daging, rendang, beef rendang, rendang daging, rendang ayam, chicken rendang
    dendeng, empal, sate, satay, sate ayam, sate kambing, chicken satay, beef satay, sate padang
    telur, telur dadar, telor, telur rebus, telur balado, balado, tempe, tempe goreng
    tempe mendoan, mendoan, tempe orek, orek tempe, tempe bacem, tahu, tahu goreng, tahu isi
    tahu gejrot, oncom, kacang merah, kacang hijau, bebek goreng, babi guling, babi panggang
    babi kecap, se'i, lele, pecel lele, gurame, perkedel, tauhu, thit kho, thit kho trung
    thit kho tau, ca kho, ca kho to, ga kho gung, ga nuong, ga luoc, thit nuong, thit luoc
    suon nuong, suon ram, bo luc lac, shaking beef, bo kho meat, bo la lot, nem nuong, cha lua
    gio lua, cha ca, chao tom, tom rang, muc, ca chien, trung chien, trung luoc, dau hu, dau phu
    dau hu chien, vit quay, hot vit lon, nem chua, larb, laab, larb gai, larb moo, nam tok
    gai yang, kai yang, gai tod, moo ping, moo grob, moo krob, moo dad diew, sai krok, sai oua
    pla pao, pla tod, pla neung manao, goong pao, khai jiao, kai jeow, khai dao, thai omelette
    fish amok, amok trey, loc lac, lok lak, beef lok lak, prahok, trey ang, sach ko ang
    wet thani, ngapi, tohu, shan tofu, tofu nway, kalua pig, kalua pork, huli huli chicken
    lomi salmon, lomi lomi salmon, kokoda, oka, oka i'a, ota ika, ika mata, poisson cru, pisupo
    corned beef tin, povi masima, povi, pork luau, pua'a, mamoe, sipi, lamb flaps, lamb necks
    turkey tails, mutton flaps, tin fish, tinpis, tinned mackerel, canned mackerel
    mussel fritters, whitebait, whitebait fritters, kina, paua, paua fritters, tuna heke
    smoked eel, muttonbird, boil bacon bones, bacon bones, kangaroo, roo meat, emu meat
    barramundi, yabbies, bugs seafood, witchetty grubs, snags, sausage sizzle meat, chook
    roast chook, crocodile meat, dugong, magpie goose
    """,
    FoodKind.VEGETABLE: """
    pinakbet, pakbet, dinengdeng, ginisang gulay, gulay, ginisang ampalaya, ampalaya, chopsuey
    ginisang repolyo, ginisang sayote, sayote, kangkong, adobong kangkong, malunggay
    talbos ng kamote, pechay, petsay, sitaw, talong, ensaladang talong, upo, patola, labanos
    okra adobo, laing, atchara, atsara, puso ng saging, banana heart, banana blossom, bulanglang
    mustasa, saluyot, alugbati, sayur, sayur asem, sayur bening, sayur lodeh veg, lalapan, lalap
    karedok, urap, tumis kangkung, cah kangkung, kangkung belacan, sambal, sambal belacan
    sambal terasi, sambal oelek, acar, ulam, daun singkong, daun ubi, bayam, sawi, kol
    kacang panjang, terong, timun, tomat, wortel, tauge, taugeh, pare sayur, peria, petai
    jengkol, pucuk paku, rebung, kerabu, plecing kangkung, asinan sayur, rau, rau muong
    rau muong xao, rau luoc, rau song, rau xao, rau cai, cai thia, canh rau, canh chua chay
    bi dao, bap cai, ca tim, dua leo, gia do, dua chua, do chua, goi du du, nom, nuoc mam
    nuoc cham, som tam, somtam, som tum, papaya salad, green papaya salad, tam mak hoong, tam som
    yum salad thai, pad pak, pad pak boong, phak boong, pak boong, pad pak ruam, nam prik
    nam phrik, nam prik ong veg, jaew, tom jued veg, tea leaf salad, lahpet, laphet thoke
    chin baung, gin thoke, kachin salad, tonic soup leaf, lu'au leaves, luau leaf, taro leaf
    taro leaves, rourou, palusami, laulau leaf, pele leaves, aibika, island cabbage
    slippery cabbage, ota fern, sea grapes, limu, puha, watercress boil up, kamokamo, rukau, pota
    pumpkin tips, silverbeet, warrigal greens, beetroot tinned, tinned beetroot
    """,
    FoodKind.DAIRY: """
    kesong puti, keso, quickmelt cheese, dadih, dangke, sua chua, yaourt
    """,
    FoodKind.FAT: """
    niyog, mani, nilagang mani, latik fat, santan, kelapa, kacang tanah, kacang goreng, kacang
    kemiri, alpukat, avokad, dau phong, lac rang, nuoc cot dua, kathi coconut milk
    coconut cream island, pe'epe'e, lolo coconut, miti, kukui nuts, inamona, galip nuts, galip
    okari nuts, ngali nuts, niu coconut
    """,
    FoodKind.MIXED_DISH: """
    titiyas, raw fish and taro
    lolo buns, kaokioki
    sinigang, sinigang na baboy, sinigang na hipon, sinigang na isda, sinigang na bangus, tinola
    tinolang manok, nilaga, nilagang baka, nilagang baboy, bulalo, kare kare, kare-kare
    kaldereta, caldereta, afritada, mechado, pochero, dinuguan, papaitan, bopis, paksiw, batchoy
    la paz batchoy, mami, arroz caldo, arrozcaldo, pancit, pansit, pancit canton, pancit bihon
    pancit malabon, pancit palabok, palabok, pancit guisado, sotanghon guisado, sotanghon soup
    sopas, filipino spaghetti, lumpia, lumpiang shanghai, lumpiang sariwa, lumpiang gulay, ukoy
    okoy, siopao, siomai, tapsilog, tosilog, longsilog, hotsilog, bangsilog, cornsilog
    chicksilog, adobo and rice, adobo with rice, rice and adobo, chicken adobo and rice
    rice and tuyo, rice and egg, kanin at ulam, pakbet and rice, bicol express, bicol ekspres
    ginataang gulay, ginataang kalabasa, ginataang manok, humba, pininyahang manok, sarciado
    kilayin, sinampalukan, arroz valenciana, bringhe, java rice and bbq, ginisang sardinas
    sardinas with rice, sardines and rice, corned beef and rice, hotdog and rice, munggo and rice
    tortang talong and rice, chopsuey and rice, nasi goreng, nasgor, nasi lemak, nasi padang
    nasi rames, nasi campur, nasi kuning, nasi ayam, nasi bungkus, nasi kandar, nasi kerabu
    nasi dagang, nasi liwet, nasi rawon, nasi kucing, nasi pecel, nasi gudeg, nasi telur
    nasi ikan, nasi tempe, chicken rice, hainanese chicken rice, duck rice, mie goreng, mi goreng
    mee goreng, mie ayam, mie rebus, mee rebus, mie kuah, mee siam, mee soto, mie bakso, bakmi
    bakmi goreng, bakso, baso, bihun goreng, kwetiau goreng, char kway teow, char kuey teow
    char koay teow, hokkien mee, hokkien noodles, laksa, curry laksa, assam laksa, asam laksa
    prawn mee, fish ball noodles, pan mee, ban mian soup, lor mee, curry mee, soto, soto ayam
    soto betawi, soto daging, coto makassar, sop buntut, sop ayam, sup ayam, rawon, gulai, gule
    gulai ayam, opor, opor ayam, tongseng, sayur lodeh, lodeh, lontong sayur, lontong sate
    ketoprak, gado gado, gado-gado, pecel, pecel sayur, gudeg, rujak, rojak, pempek, siomay
    batagor, cilok, cimol, seblak, martabak, martabak telur, murtabak, bubur ayam, bubur manado
    tahu tek, tahu telur, bakwan, bala bala, gorengan, risoles, lemper, arem arem, kroket, semur
    capcay, cap cai, fuyunghai, ikan asam pedas, asam pedas, ikan kuah, kari ayam
    roti canai and dal, roti canai with curry, prata with curry, roti john, ayam and rice
    rendang and rice, rendang with rice, nasi and rendang, fish head curry, chilli crab
    black pepper crab, bak kut teh, yong tau foo, popiah, economy rice, mixed rice, char kway
    carrot cake fried, chai tow kway, sambal prawns, tempeh and rice, rice and tempeh, pho
    pho bo, pho ga, beef pho, chicken pho, bun bo hue, bun bo, bun rieu, bun cha, bun thit nuong
    bun ca, bun mam, bun dau, hu tieu, banh canh, mi quang, cao lau, mien ga, mi xao, pho xao
    hu tieu xao, banh mi, banh mi thit, banh xeo, banh khot, banh cuon, banh beo, banh bot loc
    banh nam, banh chung, banh tet, banh bao, banh gio, xoi ga, xoi man, xoi gac, com ga
    com suon, com tam suon, com tam bi cha, com chien, com rang, com thit kho, com ca kho
    com rau, broken rice, broken rice with pork, goi cuon, fresh spring rolls, cha gio, nem ran
    bo kho, ca ri ga, canh, canh chua, canh bi, canh khoai, thit bo xao, ga xao, chao ga
    chao long, chao vit, bo ne, banh hoi thit nuong, vermicelli bowl, vermicelli and pork, goi ga
    banh trang tron, banh trang nuong, pad thai, phad thai, pad see ew, pad see eiw, pad kee mao
    drunken noodles, rad na, khao pad, khao phad, kao pad, kao pad gai, khao pad gai, thai fried rice, basil fried rice
    pineapple fried rice, pad krapow, pad kra pao, pad ka prao, krapow, basil chicken
    thai basil chicken, green curry, thai green curry, gaeng keow wan, red curry, thai red curry
    yellow curry, thai yellow curry, panang, panang curry, massaman, massaman curry, jungle curry
    khao soi, khao soy, tom yum, tom yam, tom yum goong, tom yum soup, tom kha, tom kha gai
    tom kha soup, tom saap, gaeng som, gaeng jued, kuay teow, kuaytiaw, boat noodles, yen ta fo
    khao man gai, khao mun gai, khao kha moo, khao moo daeng, khao na ped, khao tom, khao tom moo
    jok moo, yum woon sen, glass noodle salad, khao niao moo ping, sticky rice and pork
    som tam and sticky rice, larb and sticky rice, suki, hoi tod, por pia, khanom jeen nam ya
    nam khao, khao piak sen, khao poon, or lam, mok pa, bai sach chrouk, kuy teav, nom banh chok
    num pang, samlor korko, samlor machu, samlor, cha kroeung, bobor, mohinga, mohingar
    ohn no khao swe, khao swe, khauk swe, khow suey, shan noodles, nan gyi thoke, htamin and hin
    danbauk, htamin gyaw, let thoke, samusa thoke, palata and curry, plate lunch, loco moco
    saimin, poi and kalua, laulau, lau lau, manapua, chicken long rice, hawaiian plate, lu pulu
    lu sipi, palusami and taro, taro and palusami, sapasui, fa'alifu, faalifu talo, faalifu fa'i
    faalifu taro, alaisa fa'apopo, moa and taro, lovo, umu, umu food, hangi, hangi food, boil-up
    mutton boil up, puha and pork, taro and fish, fish and taro, fish and cassava
    cassava and fish, cassava and corned beef, dalo and fish, kumala and fish, tin fish and rice
    rice and tin fish, tinned fish and rice, tuna and rice, rice and corned beef, mumu, aigir
    lap lap, laplap, tuluk, bougna, fish in lolo, ika vakalolo, kelaguen, chicken kelaguen
    red rice and bbq, kadon pika, meat pie and sauce, sausage sizzle, snag in bread
    chicken parmi, chicken parma, parmi, parma, dim sim(s), cheese and bacon roll, mince on toast
    mince pie savoury, mousetrap toast, bacon and egg pie, fish and chips and sauce, rissole(s)
    rissoles and veg, curried sausages, devilled sausages, savoury mince, tuna mornay
    kangaroo stew, damper and stew, cheese roll(s), salad roll, lamb roast, roast lamb and veg
    """,
}
