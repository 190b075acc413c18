"""Foods of the Middle East, Turkey, Iran, Afghanistan and Central Asia."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    matnakash, jingalov hats, zhingyalov hats, shoti, tonis puri, mchadi, ghomi, elarji
    khubz, khobez, khubez, arabic bread, lebanese bread, saj bread, markook, tannour bread
    samoon, samoun, ka'ak, pide, ramazan pidesi, ekmek, simit, simits, lavas, yufka, bazlama
    acma, pogaca, pilav, pirinc pilavi, bulgur pilavi, bulgur pilav, sehriyeli pilav, eriste
    makarna, patates kizartmasi, haslanmis patates, sutlu misir, leblebi, burghul, bulghur pilaf
    freekah, frikeh, maftoul, moghrabieh, mograbieh, roz, ruz, ruz abyad, ruz bi shaerieh
    rice with vermicelli, vermicelli rice, timman, shaariya, batata harra, batata hara, batata
    batatis, nan barbari, barbari, sangak, nan sangak, nan lavash, nane taftoon, taftoon
    nan-e barbari, noon, chelo, chelow, kateh, polo sefid, tahdig, tah dig, sib zamini
    noon barbari, balal, naan-e afghani, bolani dough, chalaw, challaw, non bread, tandir non
    lepyoshka, obi non, patir, tandyr nan, baursak, borsok, kattama, shelpek, toki nan, talkan
    jent
    """,
    FoodKind.SWEET_FOOD: """
    kunafa, knafeh, kunefe, kanafeh, konafa, basbousa, basboosa, namoura, harissa sweet
    revani cake, maamoul, mamoul, ma'amoul, ghraybeh, ghorayeba, barazek, halawa, halaweh
    halawet el jibn, qatayef, atayef, katayef, luqaimat, lgeimat, luqmat al qadi, awameh, awwamat
    zalabia, zalabiyeh, mushabak, umm ali, om ali, mahalabia, muhalabia, muhallebi, mahalabiya
    malban, lokum, turkish delight, rahat, sutlac, firin sutlac, roz bel laban, riz bi haleeb
    kazandibi, keskul, asure, ashure, noah pudding, tulumba tatlisi, lokma, sekerpare, kadayif
    ekmek kadayifi, kemalpasa, kabak tatlisi, ayva tatlisi, helva, irmik helvasi, pismaniye
    cezerye, dondurma, pekmez, tahin pekmez, recel, dibs, date molasses, date balls, date maamoul
    kleicha, kleja, balaleet, khabees, aseeda sweet, asida with honey, masoob, areeka, areekah
    bint al sahn, chebab, khanfaroosh, debyaza, halwa omani, omani halwa, sholeh zard, shole zard
    zoolbia, zulbia bamieh, sohan, nan berenji, nan nokhodchi, faloodeh, faludeh, bastani
    bastani sonnati, ranginak, sheer berenj, ferni, ghotab, koloocheh, kolucheh, masghati, noghl
    kolompeh, reshteh khoshkar, qottab, sheer pira, gosh fil, goash e feel, nishalda, chak chak
    chak-chak, halvaitar, pashmak, zhent sweet, baursak with honey, irimshik sweet
    """,
    FoodKind.FRUIT: """
    tamr, tamar, ajwa, ajwa dates, medjool, medjool dates, deglet, deglet noor, rutab
    khalas dates, sukkari dates, kayisi, incir, kuru incir, kuru kayisi, hurma, uzum, karpuz
    kavun, elma, armut, seftali, kiraz, cilek, portakal, mandalina, ayva, dut, batteekh, bateekh
    shammam, tin fruit, enab, inab, tuffah, tuffaha, mooz, moz, burtuqal, burtuqan, rumman, khokh
    mishmish, farawla, jawafa, lemon loomi, porteghal, khormaloo, hendevaneh, hendooneh
    kharbozeh, gilas, albaloo, tameshk, zardaloo, keshmesh, khorma, toot khoshk, urik, uryuk
    kuraga, chernosliv, qovun, tarvuz, anor, olma
    """,
    FoodKind.PROTEIN: """
    chechil, chechil sticks, lori cheese, motal cheese, basturma, sujukh
    kofta(s), kafta, kufta, kufteh, kofte, koftes, kofteh, izgara kofte, kuru kofte, adana
    adana kebab, adana kebap, urfa kebap, sis kebap, tavuk sis, shish taouk, shish tawook
    shish tawouk, kebab halabi, kebab(s) with, kabab koobideh, koobideh, kubideh, joojeh, jujeh
    joojeh kabab, kabab barg, shishlik, chenjeh, jigar, dil o jigar, kaleh pache, pacha, tavuk
    tavuk gogsu meat, izgara tavuk, et sote, kiyma, pastirma, sucuk, sujuk, kavurma, ciger
    arnavut cigeri, kokorec, balik, levrek, cipura, hamsi, hamsi tava, palamut, yumurta
    haslanmis yumurta, sahanda yumurta, mercimek, nohut, kuru fasulye, barbunya, bakla
    fasulye white, humus with, hommos, hummos, humos, balila, foul, fool medames, ta'amia
    foul mdammas, musabaha, msabbaha, mujaddara lentils, adas, addas, addasi, adasi, loobia
    lobya, nokhod, nakhod, baghali, tokhm morgh, morgh, mahi, mahi sefid, gusht, goosht
    kabab torki, kabab chopan, chopan kebab, kabob morgh, mosh, mosh beans, qazi, kazy, kazi
    shuzhuk, karta meat, kuurdak meat, shashlik lamb, kuyrdak, bishbarmak meat, zhaya, samak
    samak mashwi, samak meshwi, sayadieh fish, hammour, hamour, shaari fish, safi fish, zubaidi
    masgouf, masgoof, djaj, dajaj, dajaj mashwi, farrouj, lahm, lahem, lahm mashwi, beid, bayd
    bid mslouk, kibdeh, kibda, kebda, makanek, naqaniq, jaraad
    """,
    FoodKind.VEGETABLE: """
    tabbouleh, tabouleh, tabouli, tabouleh salad, tabbouli, fattoush, fatoush, fattoosh
    salata arabieh, arabic salad, cacik, coban salata, coban salatasi, shepherd salad
    mevsim salata, baba ganoush, baba ghanoush, baba ghanouj, baba ganouj, mutabbal, moutabal
    mtabbal, patlican, patlican salatasi, kozlenmis biber, ezme, acili ezme, tursu, ispanak
    semizotu, pirasa, kereviz, enginar, taze fasulye, zeytinyagli fasulye, kabak, biber
    biber kizartma, domates, salatalik, marul, roka, maydanoz, lahana, karnabahar, brokoli, havuc
    sogan, mantar, bamya, loubieh bi zeit, loubieh, bamieh, bamia stew veg, hindbeh, khobbeizeh
    sabanekh, malfouf salad, salatet malfouf, batenjan, bandora, khiar, khyar, kousa, koosa
    zahra cauliflower, arnabeet, mukhalal, makdous, zaatar, za'atar, sumac, shirazi salad
    salad shirazi, salad-e shirazi, sabzi khordan, kashk bademjan, kashke bademjan, mirza ghasemi
    borani esfenaj, borani, khiar shoor, sabzi fresh, gandana, sabzi palak, banjan, borani banjan
    buranee banjan, achichuk, shakarob, bodring, pomidor salad
    """,
    FoodKind.DAIRY: """
    labneh with oil, labaneh, laban rayeb, jibneh, jibne, jibna, jebneh, akkawi, nabulsi cheese
    halloum, shanklish, beyaz peynir, peynir, kasar, kasar peyniri, lor, tulum peyniri, cokelek
    suzme yogurt, haydari, mast, mast o khiar, mast-o-khiar, mast va khiar, mast o musir, kashk
    qurut, kurut, kurt balls, chakka, chaka, quroot, suzma, katyk, qatiq, irimshik, ayran yogurt
    jameed
    """,
    FoodKind.FAT: """
    tereyagi, zeytinyagi, zeytin, siyah zeytin, yesil zeytin, tahin, tahini sauce, tarator sauce
    tahineh, toum, zeit zeitoun, zeitoun, zaytoun, zayt, samneh, samna, qishta, ashta, findik
    ceviz, badem, fistik, antep fistigi, cekirdek, ay cekirdegi, kuruyemis, lawz, joz, jouz
    fustuq, fostok, bizr, pesteh, gerdoo, tokhmeh, ajil, kareh, sarshir, roghan, charmaghz
    kaymok, dumba
    """,
    FoodKind.MIXED_DISH: """
    mansaf, maqluba, maqlubeh, makloubeh, maqlooba, upside down rice, musakhan, msakhan, mujadara
    mujaddara, mjadra, mujadarra, megadarra, kibbeh, kibbe, kibbi, kibbeh nayyeh, kibbeh labanieh
    kubbeh, kubba, kubbat mosul, sfiha, sfeeha, lahm bi ajeen, lahm bajeen, lahmacun, manakish
    manaeesh, manakeesh, man'oushe, manousheh, zaatar bread, zaatar manakish, fatayer
    fatayer sabanekh, sambousek, sambousak, sambusek, arayes, shawarma plate, shawarma wrap
    chicken shawarma, beef shawarma, lamb shawarma, shawarma and rice, falafel sandwich
    falafel and hummus, hummus and bread, hummus with bread, hummus and pita, pita and hummus
    ful and falafel, labneh and bread, labneh with bread, bread and labneh, bread and zaatar
    zaatar and oil bread, cheese manakish, fatteh, fattet hummus, fattet djaj, yalanji
    warak enab, waraq enab, warak dawali, dawali, mahshi koosa, koosa mahshi, kousa mahshi
    malfouf, mahshi malfouf, sheikh el mahshi, shish barak, laban immo, shakriyeh
    bamia with rice, bamieh and rice, bamia and rice, mulukhiyah with rice, mloukhieh with rice
    molokhia with chicken, fasolia and rice, fasoulia, fasoulia and rice, bazella and rice
    bazella, yakhni stew, sayadieh, sayadiyah, samak and rice, kabsa, kabseh, chicken kabsa
    machboos, majboos, machbous, machboos dajaj, mandi, chicken mandi, lamb mandi, madfoon
    mathbi, zurbian, haneeth, saltah, fahsa, bukhari rice, ruz bukhari, ouzi, quzi, qoozi, harees
    hareesa, jareesh, margoog, marqooq, thareed, tharid, tashreeb, tashrib, timman and marga
    timan w qeema, tepsi baytinijan, saloona, salona, madrouba, maleh rice, balaleet with egg
    shuwa, mashuai, shorba adas, shorbet adas, adas soup, freekeh soup, freekeh with chicken
    maghmour, batata w djaj, sheesh tawook and rice, mixed grill, mashawi, mashawi mshakale
    galayet bandora, galayet bandora with bread, mfarakeh, batata w beid, ijjeh
    hawawshi sandwich, koshari bowl, mercimek corbasi, ezogelin, ezogelin corbasi, tarhana
    tarhana corbasi, yayla corbasi, iskembe corbasi, domates corbasi, tavuk corbasi, iskender
    iskender kebab, doner durum, durum, et doner, tavuk doner, doner ekmek, pilav ustu doner
    kuru fasulye pilav, nohutlu pilav, pilav ustu tavuk, etli nohut, etli fasulye, etli bamya
    karniyarik, imambayildi with rice, musakka, patlican musakka, hunkar begendi, guvec
    tavuk guvec, turlu, biber dolmasi, yaprak sarma, yaprak sarmasi, lahana sarmasi
    zeytinyagli dolma, midye dolma, icli kofte, cig kofte, kisir, mucver, menemen
    sucuklu yumurta, cilbir, ispanakli yumurta, su boregi, sigara boregi, kol boregi, gozleme
    peynirli gozleme, ispanakli gozleme, kiymali pide, kasarli pide, peynirli pide, kumpir
    balik ekmek, kokorec ekmek, kasarli tost, ayvalik tostu, serpme kahvalti, kahvalti
    turkish breakfast, keskek, tas kebabi, orman kebabi, tandir, kuzu tandir, cokertme
    izmir kofte, kofte pilav, kofte ekmek, makarna with yogurt, yogurtlu makarna, firin makarna
    ghormeh sabzi, ghorme sabzi, gormeh sabzi, qormeh sabzi, gheymeh, gheimeh, khoresh gheymeh
    gheymeh bademjan, fesenjan, fesenjoon, khoresht fesenjan, khoresh, khoresht, khoresh bademjan
    khoresh karafs, khoresh bamieh, abgoosht, abgusht, dizi, ash reshteh, aash reshteh, aash
    ash-e reshteh, ash doogh, soup jo, haleem bademjan, halim, kookoo sabzi, kuku sabzi
    kookoo sibzamini, kuku sibzamini, chelo kabab, chelow kabab, chelo kebab, joojeh with rice
    kabab and rice, koobideh and rice, zereshk polo, zereshk polo ba morgh, baghali polo
    sabzi polo, sabzi polo mahi, adas polo, lubia polo, loobia polo, albaloo polo, shirin polo
    morasa polo, tahchin, tachin, estamboli polo, estanboli, kalam polo, dampokhtak
    makaroni with tahdig, olivieh, salad olivieh, mirza ghasemi with rice, nargesi, omlet gojeh
    noon panir sabzi, nan o panir, noon o panir, bread and cheese, cheese and bread, dolmeh
    dolme barg, kufteh tabrizi, koofteh tabrizi, ghalyeh mahi, meygoo polo, kabuli palaw
    qabili palaw, qabuli palaw, qabili, palaw, palau, palow, qorma sabzi, qorma kofta
    qorma and challaw, mantu, mantoo, aushak, ashak, aush, bolani, bolani kachaloo, boolani
    bolani gandana, shorwa, shurwa, chopan and rice, kabob and naan, kichiri qurut, shola
    shola goshti, lawand, yakhni palaw, narenj palaw, zamarod palaw, maushawa, mastawa
    banjan with chaka, qurutob, osh, osh palov, palov, uzbek plov, lagman, laghman, lag'mon
    kovurma lagman, shurpa, shurva, mastava, mampar, naryn, norin, dimlama, damlama, somsa, samsa
    samsas, chuchvara, chuchvara soup, hanum, khanum, xonim, manty, oromo, beshbarmak, besbarmak
    beshbarmaq, kuurdak, kuyrdak with potatoes, quurdaq, sorpa, kespe, ashlyan fu, ashlan-fu
    boso lagman, gyuro lagman, dungan lagman, zhauburek, ichlekli, dograma, ishlekli
    chorek and tea, hasip, kazan kebab, tandir gosht, qozon kabob
    """,
}
