"""Foods of South Asia: north, south and east of India, Pakistan, Bangladesh, Nepal, Sri Lanka."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    nan bread, bonda potato, roti(s), ruti(s), rotti, rotee, wheat roti, makki roti, makki ki roti
    makki di roti, missi roti, bajra roti, bajre ki roti, jowar roti, jowar bhakri, bhakri
    bhakhri, ragi roti, akki roti, rice roti, tandoori roti, tandoor roti, rumali roti
    roomali roti, khamiri roti, phulka(s), fulka(s), chappathi, chappati, chapathi, paratha(s)
    parantha(s), parotta(s), parotha, porotta, kerala parotta, lachha paratha, plain paratha
    naan(s), nan bread, garlic naan, butter naan, plain naan, kulcha(s), poori(s), puri(s)
    luchi(s), bhatura(s), bhature, bathura, sheermal, taftan, bakarkhani, khameeri, litti, baati
    bati, thepla(s), thalipeeth, dosa(s), dosai, plain dosa, rava dosa, set dosa, neer dosa
    ragi dosa, oats dosa, idli(s), idly, idlys, idlies, rava idli, ragi idli, kanchipuram idli
    uttapam, uthappam, oothappam, uttapams, appam(s), aappam, paniyaram, kuzhi paniyaram, puttu
    idiyappam, idiappam, string hopper(s), stringhopper(s), indiappa, hoppers, pol roti
    coconut roti, pittu, kiribath, kiri bath, milk rice, samba rice, upma, uppuma, upmav
    rava upma, vermicelli upma, semiya upma, sevai, semiya, poha, pohe, poha chivda, aval
    aval upma, avalakki, chivda, chiwda, murmura, muri, bhel puffed rice, pori, daliya, dalia
    dalia porridge, broken wheat, sabudana khichdi, sabudana, ragi mudde, ragi ball, ragi kanji
    ragi java, ragi malt, ragi porridge, kanji, kanjee, rice kanji, koozh, kambu koozh, chawal
    jeera rice, zeera rice, lemon rice south, tamarind rice, puliyodarai, pulihora
    coconut rice south, tomato rice, ghee rice, matta rice, sona masoori, idli rice, bhat, bhaat
    panta bhat, chira, chire, khoi, rice flakes, beaten rice, chiura, sel roti, dhido, dhindo
    gundruk ko dhido, tsampa, phaley, tingmo, aloo, alu, aloo boiled, aloo chips, arbi, arvi
    colocasia, suran, elephant yam, kappa, kappa boiled, maravalli kizhangu, jackfruit seeds
    shakarkand, makhana, fox nuts, roasted makhana, murukku, muruku, chakli, chakri, sev, bhujia
    namkeen, namkin, bombay mix, mathri, khakhra, khakra, papad(s), papadum(s), papadom(s)
    poppadom(s), poppadum(s), pappadam, pappad, appalam, papdi, farsan, fryums, banana chips
    nendran chips, jackfruit chips
    """,
    FoodKind.SWEET_FOOD: """
    mithai, jaggery, gur, vellam, nolen gur, mishri, gulab jamun(s), gulab jaman, jalebi(s)
    jilapi, jelebi, imarti, rasgulla(s), rosogolla, rasagola, rasmalai, ras malai, rosmalai
    sandesh, shondesh, barfi(s), burfi(s), burfee, kaju katli, kaju barfi, kaju katri, laddu(s)
    laddoo(s), ladoo(s), ladu, besan laddu, besan ladoo, motichoor laddu, boondi laddu, boondi
    til laddu, coconut laddu, rava laddu, halwa, halua, gajar halwa, gajar ka halwa, gajrela
    sooji halwa, suji halwa, moong dal halwa, badam halwa, karachi halwa, sheera, kesari
    rava kesari, kesari bath, kheer, khir, payasam, payasa, payesh, phirni, firni, seviyan
    sevai kheer, sheer khurma, sheer korma sweet, semiya payasam, paal payasam, ada pradhaman
    pradhaman, sweet pongal, sakkarai pongal, chakkara pongal, shahi tukda, double ka meetha
    malpua, malpoa, ghevar, balushahi, badusha, mysore pak, mysorepak, soan papdi, son papdi
    patisa, gajak, gazak, chikki, peanut chikki, til chikki, rewri, revdi, petha, peda, pedha
    dharwad peda, kalakand, milk cake, rabri, rabdi, basundi, shrikhand, shrikand, amrakhand
    mishti doi, misti doi, sweet curd, kulfi, kulfi falooda, puran poli, holige, obbattu
    boli sweet, modak, modakam, kozhukattai sweet, pitha, patishapta, bhapa pitha, chitoi pitha
    til pitha, gujiya, gujia, karanji, anarsa, anarasa, adhirasam, ariselu, unniyappam
    unni appam, neyyappam, ela ada, elayappam, kaja, khaja, kakinada kaja, pootharekulu
    chandrakala, cham cham, chomchom, pantua, ledikeni, langcha, mihidana, sitabhog, kala jamun
    khoya, mawa, sohan halwa, habshi halwa, rewari, zarda, mutanjan, kokis sweet, kavum, kevum
    konda kavum, aluwa, dodol, kalu dodol, kalu-dodol, watalappam, watalappan, wattalapam
    kiri peni, curd and treacle, kithul treacle, kitul treacle, aasmi, asmi, mung kavum, pani pol
    lavariya, love cake, butter cake, bibikkan, halapa, thala guli, undu walalu, lal mohan
    yomari, barfee, juju dhau, rasbari, lalmon, khapse, nankhatai, naan khatai, rusk and sweets
    tea rusk(s), glucose biscuit(s), marie biscuit(s), cake rusk, suji biscuit, osmania biscuit
    """,
    FoodKind.FRUIT: """
    kela, santra, mosambi, mosambi(s), sweet lime, angoor, angur, anar, amrood, peru guava
    tarbooz, tarbuj, kharbuja, kharbooza, chikoo, chiku, sapota, sitaphal, seethaphal, ramphal
    jamun, jambul, jamun fruit, ber fruit, amla, gooseberry indian, lychi, litchee, kathal
    chakka pazham, nungu, ice apple, ice apples, tadgola, imli, kachi kairi, kacha aam
    nendran banana, ethapazham, ethakka, ripe nendran, poovan banana, elaichi banana
    yelakki banana, elakki, kamrakh, shahtoot, phalsa, falsa, khajur, khajoor, anjeer, kishmish
    munakka, bael, bel fruit, wood apple, woodapple, beli, divul, ambarella, nelli, rambutans
    mangosteens, anoda, katu anoda, uguressa, jambola, jambu, lovi lovi
    """,
    FoodKind.PROTEIN: """
    dal(s), daal, dahl, dhal(s), dhall, daals, dal fry, dal tadka, tadka dal, tarka dal
    tarka daal, dal makhani, daal makhani, moong dal, mung dal, moong daal, toor dal, tur dal
    arhar dal, arhar, masoor dal, masoor, urad dal, chana dal, chanay ki dal, panchmel dal
    dal palak, palak dal, yellow dal, black dal, dal soup, pappu, tomato pappu, dal curry
    parippu, parippu curry, paruppu, dhal curry, sambar, sambhar, saambar, sambaar, rajma, rajmah
    rajma masala, chole, chola, choley, chana, channa, chana masala, channa masala, chhole
    kala chana, kaala chana, black chana, cholar dal, ghugni, lobia, lobiya, rongi, sabut moong
    sprouted moong, moong sprouts, sprouts salad, moong, matki, usal, misal, sundal, kadala
    kadala curry, payar, cherupayar, van payar, kollu, horse gram, kulthi, vaal, val
    besan chilla, besan cheela, moong dal chilla, chilla, cheela, chilla(s), pesarattu, adai
    pakora(s) of dal, dal vada, dal vadai, parippu vada, parippu vadai, masala vada, medu vada
    medhu vada, vada(s), vadai, vade, ulundu vadai, uzhunnu vada, isso vadai, dahi vada
    dahi bhalla, dahi bhalle, dhokla, khaman, khaman dhokla, handvo, bonda of dal, soya nuggets
    soya bari, mochar chop, paneer tikka, paneer bhurji, grilled paneer, tofu bhurji, egg bhurji
    anda bhurji, anda, ande, ubla anda, boiled anda, egg omelette masala, masala omelette
    chicken tikka, tandoori chicken, tandoori fish, seekh kebab(s), seekh kabab(s), sheekh kebab
    shami kebab(s), shami kabab, chapli kebab(s), chapli kabab, galouti kebab, kakori kebab
    reshmi kebab, boti kebab, bihari kebab, malai tikka, chicken 65, chilli chicken dry
    chicken chilli dry, fish fry indian, fish tikka, amritsari fish, tawa fish, fried hilsa
    ilish, hilsa, ilish bhaja, ilish mach, rohu, rui mach, katla, pomfret, pabda, koi mach
    chingri, shutki, bombay duck, karimeen, mathi, ayala, nethili, vanjaram, gosht, mutton fry
    mutton chaap, bheja fry, brain masala, gurda, kaleji, keema, qeema, kheema, raan, sajji
    chargha, lahori fish, paya, trotters curry, chicken sukka, mutton sukka, mutton chukka
    pepper chicken, chicken fry, beef fry, beef ularthiyathu, choila, sekuwa, sukuti, chhoila
    ambul thiyal, ambulthiyal, umbalakada, maldive fish, dry fish, karawala, kiri malu, seer fish
    thalapath, devilled chicken, devilled fish, devilled prawns, hath maluwa
    """,
    FoodKind.VEGETABLE: """
    sabzi, sabji, subzi, sabzee, subji, mix veg, mixed sabzi, bhaji sabzi, palak, saag
    sarson ka saag, sarson da saag, methi, methi leaves, bathua, chaulai, lal saag, pui shaak
    shaak, shak, bhindi, bhindi masala, bhindi fry, vendakkai, bhendi, baingan, baigan
    baingan bharta, baingan ka bharta, begun bhaja, begun, kathirikai, brinjal(s), brinjal fry
    lauki, ghiya, dudhi, doodhi, lau, sorakkai, tori, turai, tinda, tindora, kundru, dondakaya
    kovakkai, parwal, potol, karela, karela fry, pavakkai, kakarakaya, bitter melon, gobi, gobhi
    phool gobi, phulkopi, patta gobi, bandhakopi, cabbage poriyal, cabbage thoran, cabbage sabzi
    poriyal, thoran, beans poriyal, beans thoran, carrot poriyal, avial, aviyal, olan, kootu
    keerai, keerai masiyal, keerai kootu, mulakeerai, gongura, drumstick leaves, murungai keerai
    murungakkai, muringakka, drumstick sambar veg, mooli, muli, gajar, kheera, pyaz, pyaaz
    tamatar, shimla mirch, mirchi, hari mirch, kaddu sabzi, kaddu, kumro, jhinge, kachnar
    kamal kakdi, nadru, singhara, kachumber, kachumbar, kosambari, koshimbir, salad kachumber
    raw onion, rasam, rasam soup, pepper rasam, tomato rasam, chaaru, saaru, mallung, gotukola
    gotu kola, gotukola sambol, mukunuwenna, kangkung, kankun, kang kong, pol sambol
    coconut sambol, seeni sambol, lunu miris, katta sambol, pol mallung, wambatu moju, batu moju
    achcharu, kohila, nivithi, sarana, karawila, karawila sambol, watakolu, pathola, bandakka
    dambala, achar, aachar, achaar, pickle achar, mango pickle, lime pickle, mango chutney
    coconut chutney, mint chutney, pudina chutney, tamarind chutney, imli chutney, tomato chutney
    thakkali chutney, thogayal, thuvaiyal, gunpowder podi, podi, gundruk, sinki, ishkush, iskus
    rayo saag, rayo ko saag, tarkari, torkari, labra, shukto, chorchori, chochchori, niramish
    bhorta, begun bhorta
    """,
    FoodKind.DAIRY: """
    dahi, tok doi, thayir, thair, perugu, mosaru, curd cup, raita, boondi raita, cucumber raita
    onion raita, pachadi, kiri, meekiri, mee kiri, buffalo curd, chhena, chenna, chhurpi, churpi
    durkha
    """,
    FoodKind.FAT: """
    desi ghee, malai, makhan, makkhan, white butter, mungfali, moongfali, mungphali, kadalai
    verkadalai, badam, badaam, kaju, akhrot, pista, chironji, gingelly oil, mustard oil
    coconut milk gravy, nariyal, thengai, cadju
    """,
    FoodKind.MIXED_DISH: """
    kulche chole
    dalma, pakhala, santula, chakuli pitha, gojju, soppu saaru, bas saaru, majjige huli, gojjavalakki
    pitla bhakri, bharli vangi, amti bhaat, varan bhaat, katachi amti, sol kadhi
    dal dhokli, ringan nu shaak, bateta nu shaak, bajra rotla, rotla, kadhi khichdi
    gundruk soup
    pesarattu upma, gongura pappu, mudda pappu, ulava charu, natu kodi, ragi sangati, kodi pulusu, gutti vankaya
    kozhukattai
    kaalan, erissery, kappa biriyani, ishtu
    momo(s), thali, veg thali, meals plate, south indian meals, full meals, banana leaf meal
    dal bhat, dal bhaat, daal bhaat, dal bhat tarkari, dal chawal, daal chawal, dal rice
    daal rice, dal and rice, daal and rice, rice and dal, rice dal, rice and daal, dal roti
    roti dal, roti and dal, dal and roti, roti sabzi, roti sabji, roti and sabzi
    chapati and sabzi, chapati and dal, rajma chawal, rajma rice, chole chawal, chole bhature
    chole bhatura, chole kulche, puri bhaji, poori bhaji, puri sabzi, poori sabzi, aloo puri
    halwa puri, nihari, nahari, nihari naan, paya and naan, haleem, daleem, khichda, khichdi
    kichdi, khichri, khichuri, khichadi, pongal, ven pongal, bisi bele bath, bisibelebath
    sambar rice, sambar sadam, rasam rice, curd rice, thayir sadam, dahi chawal, kadhi
    kadhi chawal, kadhi pakora, karhi, curd rice and pickle, rice and sambar, idli sambar
    idli and sambar, idli sambhar, idli chutney, idli with chutney, dosa and sambar, dosa sambar
    dosa with chutney, dosa and chutney, masala dosa, mysore masala dosa, onion dosa, egg dosa
    cheese dosa, ghee roast, podi dosa, appam and stew, appam and egg curry, puttu and kadala
    puttu kadala, idiyappam and egg curry, kappa and meen, kappa and fish curry, kappa biryani
    meen curry, fish molee, meen moilee, fish moilee, meen kuzhambu, vatha kuzhambu
    puli kuzhambu, kara kuzhambu, kuzhambu, kulambu, kozhi curry, kozhi kuzhambu
    nadan chicken curry, chettinad chicken, andhra chicken curry, gongura mutton
    mutton rogan josh, rogan josh, roghan josh, yakhni, gushtaba, rista, wazwan, butter chicken
    murgh makhani, chicken tikka masala, tikka masala, chicken korma, korma, qorma
    chicken karahi, karahi, kadai chicken, karahi gosht, mutton karahi, aloo gosht, palak gosht
    saag gosht, palak chicken, dal gosht, bhuna gosht, bhindi gosht, achar gosht, keema matar
    aloo keema, qeema aloo, keema pav, keema naan, keema paratha, vindaloo, pork vindaloo
    madras curry, jalfrezi, dopiaza, do pyaza, dhansak, balti, pasanda, mughlai chicken
    chicken handi, chicken changezi, goan fish curry, xacuti, cafreal, sorpotel, ros omelette
    kolhapuri, misal pav, vada pav, wada pav, pav bhaji, dabeli, bhel puri, bhelpuri, sev puri
    pani puri, golgappa, golgappe, phuchka, puchka, dahi puri, papdi chaat, chaat
    chat masala fruit, aloo chaat, aloo tikki, tikki, samosa chaat, samosa chole, ragda pattice
    kachori(s), kachaudi, raj kachori, pakora(s), pakoda(s), bhajji, bhajiya, bhajia(s), bhaji(s)
    onion bhaji(s), mirchi bajji, bajji, aloo bonda, batata vada, bread pakora, cutlet(s)
    veg cutlet, fish cutlet, chicken puff, veg puff, egg puff, aloo paratha(s), aloo parantha
    gobi paratha, mooli paratha, methi paratha, paneer paratha, egg paratha, kati roll(s)
    kathi roll(s), frankie, egg roll kolkata, chicken roll(s), mughlai paratha, aloo gobi
    aloo gobhi, aloo matar, aloo mutter, alu matar, aloo palak, aloo methi, aloo baingan
    aloo beans, jeera aloo, dum aloo, aloo dum, alur dom, aloo posto, aloo sabzi, aloo curry
    aloo tamatar, aloo ki sabzi, aloo bhujia sabzi, matar paneer, mutter paneer, palak paneer
    saag paneer, paneer butter masala, shahi paneer, kadai paneer, paneer makhani, chilli paneer
    malai kofta, kofta curry, nargisi kofta, lauki kofta, veg kofta, navratan korma, veg korma
    vegetable korma, kurma, veg kurma, mixed veg curry, chicken biryani, mutton biryani
    veg biryani, vegetable biryani, egg biryani, biryani(s), biriyani, biryani rice, briyani
    hyderabadi biryani, sindhi biryani, kacchi, kacchi biryani, tehari, tehri, pulao, pulav
    pulaos, veg pulao, matar pulao, mutton pulao, yakhni pulao, chana pulao, kabuli pulao, polao
    morog polao, bhuna khichuri, macher jhol, mach bhat, machh bhaat, maach bhaat, maacher jhol
    doi mach, doi maach, shorshe ilish, ilish curry, chingri malai curry, kosha mangsho, mangsho
    mangshor jhol, murgir jhol, dim er dalna, dimer curry, egg curry and rice, shobji
    panta ilish, bhat dal, alu bhorta, aloo bhorta, bhorta bhat, litti chokha, litti chokha plate
    dal baati churma, dal baati, gatte ki sabzi, laal maas, undhiyu, undhiyo, sev tameta
    ker sangri, pithla bhakri, pithla, zunka bhakar, zunka, sabudana vada, kanda poha
    poha with peanuts, chinese bhel, gobi manchurian, veg manchurian, manchurian, hakka noodles
    veg noodles, schezwan rice, schezwan fried rice, egg noodles masala, masala noodles, momos
    buff momo, chicken momo(s), veg momo(s), steamed momos, jhol momo, thukpa, thenthuk, chowmein
    chow mein, chowmin, kothey, chatamari, samaybaji, samay baji, newari khaja, dhido and gundruk
    aloo tama, kwati, quati, sekuwa and chiura, ema datshi, ema datsi, kewa datshi, kottu, kothu
    koththu, kottu roti, chicken kottu, cheese kottu, egg kottu, lamprais, lump rice
    string hoppers and curry, string hoppers and sambol, hoppers and curry, hopper and lunu miris
    egg hopper(s), pol roti and lunu miris, pol roti and curry, kiribath and lunu miris
    parippu and rice, polos curry, polos, kos curry, kiri kos, cashew curry, kaju curry
    isso curry, malu curry, fish ambul thiyal curry, kukul mas curry, elumas curry
    jaffna crab curry, kool, odiyal kool, malu paan, malu pan, fish bun(s), egg bun, sausage bun
    fish patties, pan rolls, chinese roll(s), wade and bun, isso wade, kimbula, mixed fried rice
    garudhiya, mas huni, mas huni and roshi, roshi, hedhikaa, bis keemiya, kulhi boakibaa
    rihaakuru, theluli mas
    """,
}
