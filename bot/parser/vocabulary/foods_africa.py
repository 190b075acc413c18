"""Foods of Africa: west, centre, east, Horn, south and north."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    # west and centre
    fufu, foofoo, foufou, fou fou, fu fu, eba, garri, gari, gari soakings, soaked garri
    drinking garri, amala, tuwo, tuwo shinkafa, tuwo masara, semo, semovita, wheat swallow
    pando yam, iyan, lafun, starch and banga swallow, usi, kenkey, kenke, ga kenkey, fante kenkey
    banku, akple, tz, tuo zaafi, tuozafi, omo tuo, rice balls, rice ball(s), waakye rice, agidi
    ogi, akamu, pap, hausa koko, rice water, tom brown, bole, roasted plantain, dodo, aloko
    alloco, kelewele, tatale, boiled yams, yam slices, fried yams, dundun, asaro, yam pottage
    ojojo, water yam, ikokore, attieke, achiecke, placali, chikwangue, kwanga, bobolo, miondo
    baton de manioc, cassava stick, cassava bread, cassava flour, couscous de manioc, water fufu
    garri fufu, cocoyam fufu, achu, fonio porridge, thiere, chakery millet, to with okra, masa
    waina, sinasir, gurasa, agege bread, tea bread, butter bread, sugar bread, ghana bread
    tapalapa, abacha, african salad abacha, ewa and bread, buns and beans bread, corn dough, ablo
    mawe, aboloo
    # east and Horn
    ugali, ugari, nsima, sima, sembe, posho, kawunga, uji, ujii, obusera porridge, kalo, karo
    matoke, matooke, matooki, chapati(s), chapatti(s), chapo, viazi, viazi karai, bhajia za viazi
    mkate, mkate wa maji, mihogo, muhogo, nduma, ngwaci, boiled nduma, arrow root(s), arrowroots
    sweet potatoes boiled, njahi ugali, injera, enjera, taita, kocho, qotcho, genfo, ga'at
    ambasha, himbasha, dabo, kolo, ful bread, canjeero, anjero, anjeero, lahoh, laxoox, muufo
    muufa, soor, bariis, ubwari, bugali, ubugari, ubugali, imyumbati, wali, wali wa nazi
    wali mweupe, pilau rice, kisra, asida, aseeda, aseedah, mkate wa ufuta
    # south
    pap and gravy, stiff pap, phuthu, putu, uphuthu, krummelpap, mieliepap, mielie pap
    mealie pap, slap pap, samp, stampkoring, isitshwala, sadza, sadza rezviyo, sudza, bogobe
    mabele, mabela, motoho, motogo, lesheleshele, phaletshe, phaleche, oshifima, mahangu pap
    xima, shima, nshima, vetkoek(s), fat cake(s), fatcakes, magwinya, amagwinya
    dumplings (steamed) bread, dombolo, ujeqe, steamed bread, roosterkoek, stokbrood
    mielie bread, green mealie bread, mealies, mielies, mopane chips, amadumbe, madumbi
    potjie rice, yellow rice with raisins
    # north
    khobz, kesra, batbout, msemen, meloui, baghrir, harcha, aish baladi, eish, tabouna bread
    rechta, mhamsa
    # Indian Ocean
    vary, vary maina, vary sosoa, ravitoto rice, godro, mkatra, mataba bread
    """,
    FoodKind.SWEET_FOOD: """
    puff puff, puffpuff, bofrot, bofloat, beignet(s), botokoin, mikate, gbofloto, chin chin
    chinchin, chin-chin, atchomo, kuli candy, coconut candy, toogbei, ayigbe biscuit(s)
    nkate cake, peanut brittle, groundnut cake, groundnut candy, baba dudu, shuku shuku
    kokoro sweet, meat pie dough sweet, thiakry, degue, chakery, chakry, lakh, lakhe, ngalakh
    bouye pudding, fonio pudding, mandazi, mandaazi, mahamri, mahamri(s), maandazi, mandasi
    kaimati, kaimati balls, kashata, halwa swahili, vitumbua, kitumbua, visheti, vibibi
    mkate wa kumimina, mkate wa sinia, half cake(s), queen cake(s), ngumu, drop scone(s)
    simsim balls, simsim, buskut, halwo, xalwo, xalwad, kac kac, shushumow, sambusa sweet
    dabo kolo sweet, koeksister(s), koeksuster(s), koesister(s), malva pudding, melktert
    milk tart, melk tert, hertzoggie(s), beskuit, buttermilk rusks, peppermint crisp tart
    fridge tart, cape brandy pudding, tipsy tart, vetkoek with jam, vetkoek with syrup, makroud
    makrout, griwech, chebakia, sellou, zamita, kaab el ghazal, gazelle horns, ghoriba
    briouat sweet, bambalouni, sfenj, yoyo, assidat zgougou, basbousa with cream, mhalbi, zlabia
    mokary, mofo gasy, mofo baolina, koba, napolitaine(s), gateau patate, gateau coco, poutou
    """,
    FoodKind.FRUIT: """
    agbalumo, udara, african star apple, african pear, safou, ube, agbalumo fruit, monkey apple
    velvet tamarind, awin, icheku, soursop fruit, tree tomato(es), tamarillo(s), zambarau
    matunda, ndizi, ndizi mbivu, embe, maembe, papai, nanasi, machungwa, chungwa, tikiti maji
    tikiti, passion fruits, matunda ya pasheni, stafeli, fenesi, ukwaju, marula, marulas
    naartjie(s), granadilla(s), mazhanje, masau, matamba, monkey orange, baobab fruit, ubuyu
    mabuyu, sour plum(s), kei apple(s), num num, spanspek
    """,
    FoodKind.PROTEIN: """
    suya, kilishi, tsire, chichinga, kebab sticks, nkwobi, isi ewu, asun, pepper soup meat, ponmo
    kpomo, pomo, cow skin, wele, cow foot, cow leg, cowleg, cow tail, assorted meat, orisirisi
    bokoto, gizdodo meat, peppered gizzard, peppered snail, peppered chicken, peppered fish
    peppered meat, fried beef, fried meat, turkey wings, smoked turkey, bush meat, grasscutter
    cane rat, catfish pepper, point and kill, kote, titus fish, mackerel titus, croaker
    croaker fish, panla, eja kika, eja, bonga, bonga fish, shawa, stock fish, okporoko
    tilapia fried, kapenta, matemba, usipa, dagaa, omena, mukene, silver cyprinid
    keta schoolboys, keta school boys, momone, koobi, koobi fish, crayfish dry, periwinkle(s)
    ngolo, akara, acara, akla, koose, kose, bean cake(s), bean fritters, moi moi, moin moin
    moimoi, moyi moyi, olele, ekuru, ewa agoyin, ewa aganyin, ewa, ewa riro, stewed beans
    beans porridge, bean porridge, gbegiri, gbugbu, ndondo beans, red red beans, aboboi, awara
    wara tofu, soya awara, egusi balls, oha beans, adalu, frejon, beans and corn, bambara nuts
    bambara groundnut(s), okpa, nyimo, jugo beans, nyama, nyama choma, nyama ya ng'ombe, mbuzi
    mbuzi choma, kuku, kuku choma, kuku kienyeji, samaki, samaki wa kupaka, samaki fry, mutura
    mshikaki, mishkaki, mayai, maharagwe, maharage, njahi, ndengu, kunde, mbaazi, kamande
    githeri beans, dengu, choroko, kachumbari beans, ibihyimbo, ibishyimbo, isambaza
    brochette(s), zingalo, boerewors, wors, droewors, biltong, sosatie(s), braai meat
    braai chops, walkie talkies, chicken dust, chicken feet stew, mala mogodu, mogodu, ulusu
    tripe and trotters, skop, mopane worms, mopani worms, mashonja, masonja, madora, amacimbi
    macimbi, amanqina, russian sausage, vienna(s), polony, snoek, smoorsnoek meat, kingklip
    hake fried, cabanossi, ostrich steak, kudu, springbok, impala, sugar beans, tlhakwane, ditloo
    letlhodi, dinawa, chakalaka beans, doro, tibs, kitfo, gored gored, kwanta, siga tibs
    awaze tibs, shekla tibs, zilzil tibs, dulet, hilib, hilib ari, hilib geel, suqaar, kalluun
    digir, ambulo beans, ful, fuul, ful medames, foul medames, ful mudammas, shiro, shiro wot
    misir, misir wot, kik alicha, kik wot, azifa, asa tibs, dinich beans, ta'ameya, taamiya
    bissara, bissara beans, loubia, lablabi beans, kefta, kofta kebab, merguez, mechoui, khlii
    khlea, zebu, romazava meat, trondro, kitoza
    """,
    FoodKind.VEGETABLE: """
    efo, efo riro, efo shoko, ugu, ugwu, ewedu, okazi leaf, afang leaf, ora leaf, oha leaf
    uziza leaf, utazi, waterleaf, water leaf, tete leaf, soko leaf, kontomire, nkontomire
    garden egg(s), garden egg stew, ayoyo leaves, alefu, gboma, bitterball(s), saka saka leaves
    feuilles de manioc, ndole leaves, eru leaves, kale (sukuma), sukuma, sukuma wiki, sukumawiki
    skuma, mboga, mboga za majani, mchicha, terere greens, managu, sagaa, kunde leaves, mrenda
    murenda, mlenda, spider plant greens, saget, isaga, cabbage fry, kabichi, bamia, biringanya
    mbilingani, nyanya chungu, kachumbari, kachumbali, karoti, kitunguu, dodo greens, nakati
    entula, eggobe, malakwang, gomen, gomen wot, tikil gomen, fosolia, atakilt wot, dinich wot
    timatim salad, salata, jabal greens, morogo, imifino, imfino, marogo, muriwo, rape greens
    covo, chomolia, derere, delele, muboora, bowora, chibwabwa, lepu, ifisashi greens, chakalaka
    sambals, green beans with potato, spinach and onion, mfino, ulude, thepe, ekaka, ombidi
    zaalouk, taktouka, salade mechouia, mechouia, shakshouka vegetables, molokhia, molokhiya
    mulukhiyah, mloukhieh, harissa, torshi, slata, preserved lemon, romazava greens, brede(s)
    bredes mafana, rougail tomate, achard, lasary, shito, piri piri sauce, peri peri sauce
    """,
    FoodKind.DAIRY: """
    wagashi, wara, wara cheese, west african soft cheese, ayib, ayibe, nech ergo, ergo, caano
    caano geel, garoor, fermented milk, inkomazi, mabisi, madila, omaere milk
    sour milk with pap milk, jben, leben cheese, lben, raib
    """,
    FoodKind.FAT: """
    red palm oil, red oil, groundnut oil, shea butter cooking, palm nut oil, niter kibbeh
    niter kebbeh, smen, subag, njugu, karanga, njugu karanga, korosho, groundnut butter, dovi
    simsim paste, nzungu, kuli kuli, kulikuli, tiger nuts, tigernut(s), ofio, aya nuts, atadwe
    roasted groundnuts, egusi seeds, ogbono seeds, nneka nuts, mabungo nuts, argan oil, amlou
    nazi, tui la nazi
    """,
    FoodKind.MIXED_DISH: """
    kota, spatlho, sphatlho, dagwood, skhambane, thiou
    yassa guinar, mafe ginaar, saga, mrenda and ugali, ugali omena, ugali nyama
    kikomando, nyoyo, kimanga, mseto, biryani ya kuku, ugali maharage
    ugali dagaa, zege, supu ya ng'ombe, kande, makande, futali, mbatata ndi nyama
    # west and centre
    jollof, jolof, jellof, jallof, jollof rice, jolof rice, jellof rice, jollof spaghetti, ofada
    ofada rice, ofada stew, ayamase, designer stew, fried rice and chicken, jollof and chicken
    coconut rice and chicken, concoction rice, native rice, iwuk edesi, waakye, wakye, waache
    red red, kelewele and beans, yam and egg, yam and egg sauce, plantain and egg
    plantain and eggs, yam and beans, beans and plantain, beans and dodo, beans and yam
    bread and beans, bread and akara, akara and pap, akara and koko, bread and egg
    bread and tea and egg, garri and beans, gari and beans, gari foto, gari fortor, yo ke gari
    yam pottage with fish, plantain pottage, egusi, egusi soup, egusi stew, egwusi, ogbono
    ogbono soup, draw soup, okra soup, okro soup, okro, okra stew, okro stew, ila alasepo
    oha soup, ora soup, nsala, nsala soup, white soup, ofe nsala, ofe onugbu, bitterleaf soup
    bitter leaf soup, ofe owerri, ofe akwu, banga, banga soup, banga stew, edikang ikong
    edikaikong, afang, afang soup, efo soup, vegetable soup and eba, gbegiri and ewedu, abula
    miyan kuka, miyan taushe, miyan yakuwa, atama soup, fisherman soup, pepper soup, peppersoup
    catfish pepper soup, goat meat pepper soup, goat pepper soup, black soup, owo soup
    editan soup, groundnut soup, peanut soup, peanut stew, groundnut stew, nkatenkwan
    nkatie nkwan, abenkwan, palm nut soup, palmnut soup, light soup, nkrakra, fufu and light soup
    fufu and egusi, eba and egusi, eba and okra, amala and ewedu, pounded yam and egusi
    banku and tilapia, banku and okro, banku and okra stew, kenkey and fish, kenkey and pepper
    tz and ayoyo, rice balls and groundnut soup, omo tuo and soup, kontomire stew, palava sauce
    palaver sauce, plasas, plassas, cassava leaf stew, cassava leaf soup, cassava leaf
    potato leaf stew, potato greens stew, pondu, saka saka, mpondu, ndole, eru, koki, koki corn
    kwacoco, ekwang, achu soup, kati kati, poulet dg, moambe, muamba, moambe chicken
    poulet moambe, chicken yassa, yassa, poulet yassa, yassa poisson, thieboudienne
    thiebou dieune, ceebu jen, ceebu yapp, thiebou yapp, benachin, domoda, mafe, maafe
    mafe chicken, superkanja, soupou kandja, pastels, fataya, mbahal, caldou, kedjenou
    garba attieke, attieke poisson, attieke and fish, sauce graine, sauce arachide, sauce feuille
    sauce gombo, riz gras, riz sauce, dibi, dambou, burabisko, dan wake, danwake, gizdodo
    ewa agoyin and bread, tomato stew, red stew, chicken stew and rice, obe ata, ata din din
    buka stew, beef stew and rice, noodles and egg, spaghetti and stew, macaroni and stew
    moi moi and pap, moi moi and rice, fish roll(s), scotch egg(s), buns and egg, pepe soup
    rice and egusi, rice and palava sauce, check rice, dry rice, torborgee, dumboy
    dumboy and soup, gb and soup, groundnut soup and fufu
    # east and Horn
    githeri, muthokoi, irio, mukimo, mokimo, mokimoo, nyama na ugali, ugali and sukuma
    ugali sukuma, ugali and fish, ugali na samaki, ugali and beef, ugali and greens
    ugali and beans, ugali matumbo, ugali mayai, matumbo, chips mayai, chipsi mayai, chips masala
    chips kuku, kuku paka, kuku wa kupaka, pilau, pilao, biriani, biriani ya kuku
    wali na maharage, wali maharage, wali na samaki, wali nyama, rice and ndengu
    rice and beans stew, chapati beans, chapati and beans, chapo beans, chapati ndengu
    chapo dondo, chapati madondo, rolex, chapati and eggs, katogo, matoke and beef
    matoke and groundnut sauce, matooke and gnuts, posho and beans, luwombo, oluwombo
    groundnut sauce, g nut sauce, gnut sauce, binyebwa, firinda, eshabwe, malewa, mchuzi
    mchuzi wa kuku, mchuzi wa samaki, mtori, supu, supu ya mbuzi, ndizi nyama, ndizi na nyama
    makange, urojo, zanzibar mix, zanzibar pizza, mkate wa nyama, kachori, sambusa, sambusas
    sambuus, sambuusa, samaki wa nazi, isombe, ibihaza, agatogo, igisafuria, umutsima, akabenz
    mizuzu, ikivunde, doro wot, doro wat, doro wet, wat stew, key wot, siga wot, alicha
    alicha wot, beyaynetu, beyainatu, yetsom beyaynetu, firfir, fir fir, fitfit, fit-fit
    enkulal firfir, chechebsa, kita firfir, kinche, bozena shiro, tegabino, injera and shiro
    injera and wot, injera with lentils, injera with doro wat, zigni, tsebhi, tsebhi derho, hamli
    alicha begee, bariis iskukaris, bariis and hilib, bariis hilib, baasto, baasto and hilib
    maraq, maraq digaag, isku dheh karis, cambuulo, ambulo, shaah and canjeero
    suqaar and canjeero, oodkac, sabaayad, sabayad and beans, malawah, bajiyo, bur with beans
    fah-fah, skudahkharis
    # south
    bunny chow, bunnychow, spatlo, gatsby, bobotie, babotie, potjiekos, potjie, bredie
    tomato bredie, waterblommetjie bredie, denningvleis, frikkadel(s), boerewors roll, wors roll
    pap and wors, pap en vleis, pap and vleis, pap and stew, pap and chicken, pap and morogo
    pap and mince, samp and beans, umngqusho, umngqushu, umqhusho, samp and stew, dikgobe
    isigwamba, seswaa, seswaa and pap, vetkoek and mince, vetkoek with mince, magwinya and mince
    magwinya and atchar, atchar, kota bread, chip roll, slap chips, walkie talkie and pap
    sadza and stew, sadza nemuriwo, sadza and muriwo, sadza and beef, sadza nenyama
    muriwo unedovi, muriwo nedovi, huku nedovi, dovi stew, mutakura, mupunga unedovi
    rice with peanut butter, nshima and kapenta, nshima and vegetables, nshima with beans
    nsima and beans, nsima and chambo, nsima ndi nyama, chambo, chambo and nsima, ifisashi
    vinkubala, matapa, mucapata, galinha a zambeziana, frango piri piri
    peri peri chicken and chips, prawns piri piri, caril de amendoim, oshifima and meat, kapana
    mieliepap and sheba, sheba, tshakalaka and pap, umleqwa, hardbody chicken stew, isijabane
    xigugu, tihove, ujeqe and stew, dombolo and stew, jeqe, mince curry, mince and rice
    curry bunny, beans bunny, mutton curry, sugar bean curry, chicken breyani, breyani
    mutton breyani, akni, samp curry, salomie, smoorsnoek, pickled fish
    # north
    tagine, tajine, chicken tagine, lamb tagine, fish tagine, kefta tagine, tagine with prunes
    couscous with vegetables, couscous with lamb, couscous royale, couscous and chicken, seffa
    bastilla, pastilla, b'stilla, harira, chorba, chorba frik, shorba, brik, bourek, borek
    briouat(s), rfissa, mrouzia, tanjia, chakchouka, shakshuka, shakshouka, shakshooka, ojja
    lablabi, kafteji, kamounia, marqa, mloukhia stew, koshari, koshary, kushari, kosheri
    molokhia and rice, mahshi, hawawshi, fatta, fattah, fiteer, feteer, ful and bread
    ful with bread, macarona bechamel, macaroni bechamel, bamia with meat, besara and bread
    bazin, bazeen, usban, osban, mbakbaka, shakshouka with bread, tajine zitoune, chtitha
    berkoukes, mhadjeb, mhajeb, karantika, garantita, mulah, mullah bamia, mullah rob
    asida and mullah, kisra and mullah, agashe, gurasa with stew
    # Indian Ocean
    ravitoto, romazava, lasopy, cari poulet, cari, rougail saucisse, rougail, dholl puri
    dal puri, dhal puri, dhalpuri, gateau piment, gateaux piments, mine frite, mine frit, bol renverse
    boulettes mauritius, vindaye, briani, ladob, ladob with fish, pwason ek diri, kari koko
    langouste a la vanille, mkatra foutra, pilaou
    """,
}
