"""Foods of East Asia: China and its regions, Korea, Japan, Taiwan, Mongolia, Tibet."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind

WORDS: Final[Mapping[FoodKind, str]] = {
    FoodKind.STARCH: """
    congee, plain congee, conjee, jook, zhou, baizhou, xifan, mantou, man tou, steamed bun(s)
    steamed roll(s), huajuan, hua juan, flower roll(s), plain bun(s), youtiao, you tiao
    fried dough stick(s), dough stick(s), shaobing, shao bing, sesame flatbread, laobing
    cong you bing, scallion pancake(s), green onion pancake(s), spring onion pancake(s), wotou
    wowotou, nang, nang bread, mifen, mi fen, rice vermicelli, mei fun, mai fun, bee hoon, ho fun
    hor fun, hefen, he fen, kuay teow noodles, hand pulled noodles, la mian, lamian
    knife cut noodles, liangpi, cold skin noodles, e fu noodles, lo mein noodles, wheat noodle(s)
    mung bean noodles, cellophane noodles, sweet potato noodles, fensi, nian gao, niangao
    rice cake slices, lotus root starch, baifan, bai fan, mifan, mi fan, zhouzi, xiaomi zhou
    millet congee, hong shu, hongshu, roasted sweet potato, yutou, taro balls, wu tau, lo bak go
    turnip cake(s), radish cake(s), taro cake(s), luo bo gao, cheung fun, changfen
    chee cheong fun, rice noodle roll(s), rice rolls, ssalbap, huinbap, hyeonmi bap, japgokbap
    multigrain rice, barley rice, boribap, kongbap, tteok, dduk, garaetteok, baek tteok
    sirutteok, somyeon, somyun, dangmyeon, guksu noodles, nurungji, scorched rice, sungnyung
    goguma, gun goguma, gamja, korean sweet potato(es), gohan, steamed japanese rice, mochi rice
    kirimochi, okayu, kayu, genmai, mugi gohan, sekihan, udon, udon noodles, soba, soba noodles
    somen, ramen noodles, hiyamugi, harusame, satsumaimo, yaki imo, yakiimo, satoimo, nagaimo
    kabocha squash, shokupan, milk bread, senbei, arare, okaki, agemochi, rice cracker mix, bing
    boortsog, boorsog, tsampa balls, balep, balep korkun
    """,
    FoodKind.SWEET_FOOD: """
    mooncake(s), moon cake(s), egg tart(s), dan tat, pineapple bun(s), bolo bao, cocktail bun(s)
    custard bun(s), red bean bun(s), dou sha bao, lotus seed bun, sesame ball(s), jian dui
    tangyuan, tang yuan, sweet rice balls, 8 treasure rice, ba bao fan, babao zhou
    red bean soup, hong dou tang, green bean soup sweet, mung bean soup, lu dou tang, tong sui
    black sesame soup, walnut soup sweet, almond tofu, almond jelly, tofu pudding, douhua
    dou hua, tau fu fa, mango pudding, mango pomelo sago, mango sago, sago soup, grass jelly
    guilinggao, herbal jelly, tanghulu, candied hawthorn, haw flakes, hawthorn candy
    dragon beard candy, ma hua, mahua, sachima, shaqima, pineapple cake(s), sun cake(s)
    wife cake(s), mung bean cake(s), red bean paste, red bean cake, fried milk, malay cake
    ma lai go, put chai ko, osmanthus jelly, fortune cookie(s), almond cookie(s)
    walnut cookie(s), snow skin mooncake, taro paste dessert, ginger milk curd, double skin milk
    shaved ice, bao bing, baobing, hotteok, hoddeok, bungeoppang, bungeobbang, gyeranppang
    hodugwaja, songpyeon, yakgwa, yaksik, yakbap, injeolmi, gyeongdan, hwajeon, baekseolgi
    jeolpyeon, dasik, gangjeong, yeot, patbingsu, bingsu, bingsoo, hobakjuk sweet, patjuk sweet
    danpatjuk, jjinppang, hoppang, dalgona candy, dalgona, melon bar, chapssaltteok
    red bean bread, soboro bread, cream bread, castella, wagashi sweets, daifuku, ichigo daifuku
    dango, mitarashi dango, manju, taiyaki, dorayaki, imagawayaki, obanyaki, yokan, anmitsu
    mitsumame, zenzai, oshiruko, shiruko, ohagi, botamochi, warabi mochi, warabimochi, kakigori
    purin, japanese cheesecake, matcha ice cream, matcha cake, green tea ice cream
    mochi ice cream, melon pan, melonpan, anpan, an pan, cream pan, kasutera, castella cake
    karinto, konpeito, monaka, senbei sweet, kinako mochi, amanatto, roll cake, japanese pancakes
    souffle pancakes
    """,
    FoodKind.FRUIT: """
    hawthorn fruit, red dates, jujube(s), dried jujubes, goji, goji berries, wolfberries, yangmei
    waxberry, asian pear(s), nashi, nashi pear(s), korean pear(s), bae, sagwa, gam
    dried persimmon(s), gotgam, hongsi, gyul, hallabong, chamoe, korean melon, subak, podo
    ttalgi, boksunga, salak, mikan, mikans, ringo, kaki, nashi fruit, ume, umeboshi, yuzu
    sudachi, momo fruit, suika, biwa, longans, lichees, you zi, xi gua, ping guo, xiang jiao
    cheng zi, liulian
    """,
    FoodKind.PROTEIN: """
    char siu, cha siu, chashao, char siew, siu yuk, siu yuk pork, crispy pork, crispy pork belly
    roast goose, peking duck, beijing duck, crispy duck, soy sauce chicken, white cut chicken
    bai qie ji, hainan chicken, drunken chicken, salt baked chicken, poached chicken, lap cheong
    lap cheung, chinese sausage, century egg(s), pidan, salted egg(s), salted duck egg
    tea egg(s), cha ye dan, steamed egg, steamed eggs, egg custard savoury, twice cooked pork
    hui guo rou, red cooked pork, hong shao rou, red braised pork, dongpo pork, mapo tofu
    ma po tofu, mapo doufu, doufu, dofu, silken tofu, stinky tofu, chou doufu, dried tofu, dougan
    tofu skin, yuba, fuzhu, tofu puffs, fermented tofu, furu, beef shank, spiced beef, cumin lamb
    lamb skewers, yang rou chuan, chuan'r, chuar, chicken feet dim sum, phoenix claws
    steamed spare ribs, steamed ribs, beef balls, fish balls, fish ball(s), squirrel fish
    boiled fish sichuan, shui zhu yu, shuizhuyu, la zi ji, laziji, chongqing chicken
    kung pao chicken, gongbao jiding, gong bao chicken, salt and pepper squid
    salt and pepper shrimp, salt and pepper pork, drunken shrimp, hairy crab, sea cucumber
    abalone, jellyfish, fish maw, duck neck, duck tongue, pig ear, pork blood, blood tofu
    blood curd, bak kwa, rousong, pork floss, meat floss, fish floss, edamame beans, mao dou
    bulgogi, bool kogi, galbi, kalbi, la galbi, samgyeopsal, samgyupsal, samgyeopsal grill
    korean bbq, kbbq, dakgalbi meat, dak galbi, jeyuk bokkeum, jeyuk, spicy pork, bossam, bo ssam
    jokbal, dakgangjeong, yangnyeom chicken, korean fried chicken, chimaek, jjimdak
    andong jjimdak meat, gyeran mari, gyeranmari, gyeran jjim, gyeranjjim, rolled omelette
    maekbanseok gyeran, jangjorim, godeungeo gui, godeungeo, grilled mackerel, galchi
    galchi jorim, jogi, gulbi, myeolchi bokkeum, myeolchi, anchovy banchan, ojingeo bokkeum
    ojingeochae, nakji bokkeum, saengseon gui, hwe, yukhoe, dubu, dubu jorim, dubu kimchi
    soft tofu, sundubu, kongjaban, cheonggukjang, doenjang beans, soondae, gopchang, makchang
    dakbal, odeng, eomuk, nokdu, sashimi, tataki, tuna tataki, yakitori, tsukune, teba, tebasaki
    karaage, kara age, chicken karaage, chicken katsu, tonkatsu, ton katsu, katsu, menchi katsu
    ebi fry, ebi furai, tempura shrimp, shrimp tempura, teriyaki chicken, chicken teriyaki
    salmon teriyaki, beef teriyaki, ginger pork, shogayaki, buta shogayaki, nikujaga meat, chashu
    tamagoyaki, tamago, dashimaki, onsen tamago, ajitama, chawanmushi, yakizakana
    grilled fish japanese, saba, saba shioyaki, sanma, aji fry, shake salmon, ikura, uni, unagi
    kamaboko, chikuwa, satsuma age, oden items, hanpen, natto, nattou, tofu hiyayakko, hiyayakko
    agedashi tofu, atsuage, aburaage, koya dofu, edamame pods, kuromame, takoyaki octopus, ika
    tako, maguro, hamachi, toro, hambagu, hamburg steak, wagyu, sukiyaki beef, shabu shabu meat
    mongolian beef, boodog, khorkhog, dried yak meat, yak meat, shapale meat
    """,
    FoodKind.VEGETABLE: """
    choy sum, choi sum, gai lan, kai lan, kailan, chinese broccoli, yu choy, yau choy
    baby bok choy, bai cai, baicai, da bai cai, shanghai greens, qing cai, qingcai, kong xin cai
    ong choy, dou miao, pea shoots, snow pea shoots, a cai, chinese lettuce, celtuce, wosun
    garlic chives, jiu cai, jiucai, chinese chives, garlic stems, suan tai, bitter melon stir fry
    ku gua, si gua, dong gua, winter melon, winter melon soup, lotus root, lian ou, lotus roots
    bamboo shoot, wood ear, wood ear mushroom, mu er, black fungus, white fungus, shiitake
    shitake, enoki, king oyster mushroom, oyster mushrooms, straw mushrooms, tree fungus
    daikon radish, bai luobo, luobo, suan cai, suancai, pickled mustard greens, zha cai, mei cai
    pickled cabbage, smashed cucumber, pai huang gua, cucumber garlic salad
    dry fried green beans, dry fried beans, garlic eggplant, yu xiang qiezi
    fish fragrant eggplant, di san xian, stir fried greens, garlic broccoli, buddha's delight
    lo han jai, hot and sour cabbage, egg drop soup, egg flower soup, seaweed soup
    tomato egg soup, chili oil, hoisin, hoisin sauce, black bean sauce, doubanjiang
    laoganma-free chili crisp, chili crisp, xo sauce, kimchi, kimchee, gimchi, kimchi cabbage
    kkakdugi, kakdugi, kkaktugi, oi kimchi, oi sobagi, oi muchim, pa kimchi, baek kimchi
    dongchimi, nabak kimchi, chonggak kimchi, yeolmu, yeolmu kimchi, namul, sigeumchi namul
    sigeumchi, kongnamul, kong namul, sukju namul, gosari, doraji, chwinamul, gaji namul
    hobak namul, hobak bokkeum, musaengchae, mu saengchae, danmuji, pickled radish
    ssam vegetables, sangchu, kkaennip, perilla leaves, perilla, minari, buchu, baechu, gim
    laver, dried seaweed, roasted seaweed, gim gui, miyeok, miyeok muchim, miyeokguk, miyeok guk
    kongnamulguk, kongnamul guk, mu guk, muguk, banchan, gochujang, ssamjang, doenjang, gochugaru
    musaengchae salad, miso soup, misoshiru, miso shiru, osumashi, clear soup japanese, tsukemono
    takuan, takuwan, asazuke, beni shoga, gari ginger, nasu, nasu dengaku, ohitashi, gomaae
    goma ae, spinach gomaae, sunomono, namasu, hijiki, wakame, kombu, konbu, nori, kinpira
    kinpira gobo, gobo, burdock, renkon, kiriboshi daikon, horenso, komatsuna, mizuna, shiso
    shungiku, negi, myoga, konnyaku, shirataki, shirataki noodles, konjac, konjac noodles
    takenoko, moyashi, seaweed salad, wakame salad, ponzu, wasabi, furikake, fuki
    cabbage sengiri, shredded cabbage, miso
    """,
    FoodKind.DAIRY: """
    aaruul, byaslag, tarag, dried curd, dri cheese, yak cheese, rushan, nai lao
    """,
    FoodKind.FAT: """
    sesame oil, perilla oil, chilli oil peanuts, huasheng, sesame paste, goma, japanese mayo
    yak butter, ginkgo nuts, ginko nuts, hotaru
    """,
    FoodKind.MIXED_DISH: """
    jianbing guozi, reganmian, biangbiang mian
    dao xiao mian, daoxiaomian, liang pi
    guo qiao mixian, crossing bridge noodles, hu la tang, chao gan, lu zhu
    dapanji, polo rice, kao lao, o a jian
    san bei ji, ba wan, mi fen soup, fen zheng rou, yu xiang qie zi
    guo bao rou, suan cai yu, mao xue wang, kou shui ji, fu qi fei pian, chuan chuan
    tangsuyuk, japchae bap
    champon, sara udon
    hoto, kiritanpo
    # China and Taiwan
    dim sum, dimsum, yum cha, dumplings pork, jiaozi, jiao zi, potsticker(s), pot sticker(s)
    guotie, pork dumplings, chicken dumplings, shrimp dumplings, veggie dumplings
    soup dumpling(s), xiaolongbao, xiao long bao, xlb, shumai, siu mai, siew mai, sui mai
    har gow, har gau, ha gow, wonton(s), won ton(s), wantan, wonton soup, wonton noodles
    wonton noodle soup, wantan mee, baozi, bao zi, bao, bao bun(s), pork bun(s), char siu bao
    cha siu bao, bbq pork bun(s), roast pork bun, veggie bun(s), sheng jian bao, shengjianbao
    gua bao, zongzi, zong zi, joong, bak chang, sticky rice dumpling, lo mai gai, lo mai kai
    lor mai kai, sticky rice chicken, fan tuan, fantuan, jianbing, jian bing, roujiamo
    rou jia mo, chinese burger, danbing, dan bing, congee with pork, pork congee
    century egg congee, pidan congee, fish congee, chicken congee, congee with egg
    congee and youtiao, jook with, lo mein, lomein, low mein, chow fun, beef chow fun
    beef ho fun, chow mein noodles, chicken chow mein, shrimp lo mein, singapore noodles
    singapore rice noodles, dan dan noodles, dandan mian, dan dan mian, zha jiang mian
    zhajiangmian, beef noodle soup, niu rou mian, niurou mian, lanzhou beef noodles
    lanzhou noodles, chongqing noodles, xiao mian, hot and sour noodles, suan la fen
    guilin rice noodles, mi xian, mixian, crossing the bridge noodles, luosifen
    biang biang noodles, biangbiang noodles, cold noodles, cold sesame noodles, sesame noodles
    re gan mian, hot dry noodles, scallion oil noodles, cong you ban mian, yangchun noodles
    da lu mian, braised noodles, oil splashed noodles, chao mian, chaomian, chao fan, chaofan
    yangzhou fried rice, yang chow fried rice, young chow fried rice, beef fried rice
    shrimp fried rice, pork fried rice, ham fried rice, salted fish fried rice, clay pot rice
    claypot rice, bao zai fan, char siu rice, roast pork rice, roast duck rice, soy chicken rice
    pork chop rice, lu rou fan, lurou fan, braised pork rice, minced pork rice, gai fan
    rice with toppings, sweet and sour pork, sweet and sour chicken, sweet n sour chicken
    gu lao rou, general tso chicken, general tsos chicken, general tso's chicken, orange chicken
    sesame chicken, cashew chicken, chicken with cashew nuts, moo goo gai pan, moo shu pork
    mu shu pork, chop suey, egg foo young, egg fu yung, egg foo yung, beef with broccoli
    beef in black bean sauce, beef and black bean, chicken and broccoli, chicken with broccoli
    pepper steak, chicken and cashews, hunan chicken, szechuan chicken, sichuan beef
    kung pao shrimp, kung pao tofu, garlic chicken and rice, tomato and eggs, tomato egg
    tomato and egg stir fry, fanqie chao dan, xihongshi chaodan, tomato eggs and rice
    shredded pork with pepper, qing jiao rou si, yu xiang rou si, fish fragrant pork
    cumin lamb noodles, da pan ji, big plate chicken, hand grabbed rice, hot and sour soup
    suan la tang, corn egg soup, west lake beef soup, malatang, mala tang, mala xiang guo, huoguo
    huo guo, steamboat, maocai, oyster omelette, o ah jian, oyster pancake
    popcorn chicken taiwanese, taiwanese beef noodles, taiwanese sausage rice, luwei, lu wei
    ban mian, spring pancake, chun juan, chunjuan, tofu soup, pork rib soup, lotus root soup
    pork and lotus root soup, old fire soup, chinese takeaway, chinese take out, chinese food
    salt and pepper chips, curry fish balls, chips and curry sauce, prawn toast
    sesame prawn toast, crispy chilli beef, chilli beef, yang rou pao mo, paomo
    lamb soup with bread, fried bread stick and soy milk, doujiang and youtiao, kaolengmian
    liang mian
    # Korea
    bibimbap, bibim bap, bi bim bap, dolsot bibimbap, gimbap, kimbap, kim bap, chamchi gimbap
    samgak gimbap, jumeokbap, kimchi fried rice, kimchi bokkeumbap, bokkeumbap, omurice, omu rice
    deopbap, jeyuk deopbap, bulgogi deopbap, hoedeopbap, curry rice, japchae, jap chae, chapchae
    tteokbokki, tteokboki, ddukbokki, topokki, dukbokki, rabokki, tteokguk, tteok guk
    tteok mandu guk, mandu, mandoo, gunmandu, jjinmandu, mandu guk, manduguk, ramyeon, ramyun
    ramyon, jjapaguri, jajangmyeon, jjajangmyeon, jajangmyun, jjamppong, jjampong, kalguksu
    kal guksu, sujebi, janchi guksu, bibim guksu, naengmyeon, naengmyun, mul naengmyeon
    bibim naengmyeon, kongguksu, makguksu, udong, kimchi jjigae, kimchi jigae, kimchi stew
    kimchi chigae, doenjang jjigae, dwenjang jjigae, doenjang stew, sundubu jjigae, soondubu
    soft tofu stew, budae jjigae, army stew, gochujang jjigae, cheonggukjang jjigae
    dongtae jjigae, jjigae, jigae, kimchi soup, samgyetang, ginseng chicken soup, dakbokkeumtang
    dakdoritang, galbitang, galbi tang, galbijjim, galbi jjim, seolleongtang, sullungtang
    gomtang, yukgaejang, gamjatang, haejangguk, soondaeguk, sundaeguk, dwaeji gukbap, gukbap
    bukeoguk, sogogi muguk, maeuntang, haemultang, jeongol, juk, dakjuk, jeonbokjuk, hobakjuk
    patjuk, pajeon, pa jeon, haemul pajeon, kimchi jeon, kimchijeon, kimchi pancake, buchimgae
    bindaetteok, gamjajeon, hobakjeon, donggeurangttaeng, gyeran toast, korean toast
    korean corn dog, dakgalbi, jjimdak stew, bulgogi and rice, galbi and rice, rice and kimchi
    kimchi and rice, rice and banchan, soup and rice, guk and rice, dosirak, ssambap
    nakji deopbap, donkatsu, donkkaseu, chikin mu, tteokgalbi, tteok kkochi, sotteok
    # Japan
    sushi, sushi roll(s), nigiri, maki, maki roll(s), california roll(s), temaki, hand roll(s)
    chirashi, chirashizushi, inari, inarizushi, inari sushi, onigiri, musubi, rice ball(s) with, ochazuke
    donburi, don buri, oyakodon, gyudon, gyuudon, beef bowl, katsudon, katsu don, tendon bowl
    tendon, unadon, unaju, kaisendon, tekkadon, butadon, soboro don, tamago kake gohan, tkg
    natto gohan, natto and rice, natto rice, curry japanese, japanese curry, kare raisu
    katsu curry, katsukare, chicken katsu curry, hayashi rice, omuraisu, chahan, takikomi gohan
    maze gohan, kamameshi, zosui, zousui, nabe, nabemono, sukiyaki, shabu shabu, oden, yosenabe
    motsunabe, chanko nabe, mizutaki, ramen, shoyu ramen, miso ramen, tonkotsu, tonkotsu ramen
    shio ramen, tsukemen, mazesoba, abura soba, hiyashi chuka, kitsune udon, tempura udon
    curry udon, niku udon, yaki udon, tempura soba, zaru soba, zarusoba, kake soba, yakisoba
    yaki soba, toshikoshi soba, okonomiyaki, takoyaki, monjayaki, negiyaki, gyoza, gyouza
    yaki gyoza, shumai japanese, korokke, croquette curry, tempura, tenpura, vegetable tempura
    nikujaga, chikuzenni, buri daikon, tonjiru, kenchinjiru, butajiru, ozoni, bento, bento box
    obento, teishoku, grilled fish set, hambagu set, japanese pasta, mentaiko pasta, napolitan
    doria, gratin, korokke pan, yakisoba pan, curry pan, katsu sando, tamago sando, egg sando
    goya champuru, goya chanpuru, champuru, taco rice, okinawa soba, soki soba, poke, ahi poke
    rice and miso soup, miso soup and rice, fish and miso soup
    # Mongolia, Tibet
    buuz, khuushuur, huushuur, tsuivan, bansh, banshtai, guriltai shul, budaatai huurga
    thukpa soup, shabaley, shapale, tingmo and, laping, gyathuk
    """,
}
