"""Greetings and thanks of many tongues, as people keep them in an English or Spanish message.

They say nothing to the reader (`guten abend, 6.9`, `142 before, asante sana`). Left out are those
that are words of English or Spanish too (`tack`, `malo`, `moi`). From memory, no source.
"""




def _phrases(block: str) -> tuple[str, ...]:
    return tuple(phrase.strip() for phrase in block.replace("\n", ",").split(",") if phrase.strip())


HAILED_ELSEWHERE = _phrases(
    """
    guten morgen, guten tag, guten abend, gruezi, gruss gott, servus, moin, bonjour, bonsoir, salut
    coucou, buongiorno, buon giorno, buonasera, buona sera, bom dia, boa tarde, boa noite
    dzien dobry, dobry wieczor, czesc, dobry den, dobry vecer, ahoj, dobar dan, dobro jutro
    dobro vece, zdravo, buna ziua, buna dimineata, buna seara, kalimera, kalispera, geia sas
    merhaba, gunaydin, iyi gunler, iyi aksamlar, selam, privet, zdravstvuyte, dobryy den, dobryi den
    god morgen, god kveld, god dag, hyvaa huomenta, hyvaa paivaa, labas, sveiki, jo napot
    marhaba, ahlan, ahlan wa sahlan, sabah al khair, sabah el kheir, masa al khair, shalom
    boker tov, namaskar, namaskaram, nomoskar, vanakkam, sat sri akal, ayubowan, adaab
    sawasdee, sawasdee ka, sawasdee krap, sabaidee, xin chao, mingalaba, suostei, chum reap suor
    selamat pagi, selamat siang, selamat sore, selamat malam, selamat petang, apa kabar, apa khabar
    kumusta, kumusta po, magandang umaga, magandang umaga po, magandang hapon, magandang hapon po
    magandang gabi, magandang gabi po, magandang araw, magandang araw po, opo, ni hao, nei hou
    zao an, annyeong, annyeong haseyo, konnichiwa, konbanwa, ohayo, ohayo gozaimasu
    aloha, talofa, talofa lava, bula vinaka, kia ora, malo e lelei, sannu, ina kwana, ina wuni
    e kaaro, ekaaro, e kaale, kedu, nnoo, maakye, maaha, maadwo, akwaaba, nanga def, jambo, hujambo
    habari, habari yako, habari za asubuhi, habari za jioni, shikamoo, mambo vipi, sawubona
    sanibonani, molweni, dumela, dumelang, avuxeni, goeie more, goeie middag, goeie naand, goeiedag
    mangwanani, manheru, makadii, muli bwanji, mwaramutse, mwiriwe, muraho, oli otya, wasuze otya
    selam new, akkam, nabad, bonjou, bonswa, sak pase, wah gwaan, wa gwan, wagwan, howzit
    """
)

THANKED_ELSEWHERE = _phrases(
    """
    merci, merci beaucoup, merci bien, danke, danke schon, danke sehr, vielen dank, grazie
    grazie mille, obrigado, obrigada, muito obrigado, muito obrigada, dziekuje, dzieki, dekuji
    diky, dakujem, hvala, hvala lijepa, multumesc, mersi, efharisto, efcharisto, tesekkurler
    tesekkur ederim, sagol, spasibo, dyakuyu, takk, tusen takk, kiitos, paldies, aciu, koszonom
    shukran, shukria, shukriya, dhanyavaad, dhanyavad, dhanyabad, dhonnobad, nandri, meherbani
    istuti, khob khun, khob khun ka, khob khun krap, khop khun, kop khun, kop khun ka, khop chai
    arkun, terima kasih, terimakasih, makasih, matur nuwun, salamat, salamat po, maraming salamat
    maraming salamat po, xie xie, xiexie, kamsahamnida, gomawo, arigato, arigato gozaimasu
    mahalo, mahalo nui, faafetai, faafetai lava, vinaka, vinaka vaka levu, malo aupito, nga mihi
    asante, asante sana, ahsante, nashukuru, nashukuru sana, ngiyabonga, siyabonga, enkosi, dankie
    baie dankie, inkomu, zikomo, zikomo kwambiri, tatenda, maita basa, murakoze, webale
    webale nnyo, weebale, ameseginalehu, galatoomi, mahadsanid, na gode, nagode, daalu, imela
    medaase, meda ase, jerejef, mesi, mesi anpil, rahmat, rakhmat, tashakor, tashakkur, mamnoon
    toda raba, eskerrik asko, gracies, diolch, diolch yn fawr, go raibh maith agat, tapadh leat
    tapadh leibh, faleminderit, ta muchly
    """
)
