"""Everyday Spanish words that say nothing the reader needs. Written for this project."""

from typing import Final

from bot.parser.vocabulary import phrases

EVERYDAY_SPANISH: Final = phrases(
    """
    el, la, los, las, un, una, unos, unas, lo, al, del, de, a, en, y, e, o, u, con, sin, por, para
    que, se, me, te, le, les, nos, mi, mis, tu, tus, su, sus, yo, ella, ellos, nosotros, este
    esta, esto, ese, esa, eso, aquel, aquella, es, son, era, fue, ser, estar, estoy, estas, estamos
    hay, habia, he, ha, han, hemos, haber, tengo, tiene, tener, tenia, hago, hace, hacer, hice, voy
    va, vamos, ir, fui, pero, mas, menos, muy, mucho, mucha, muchos, poco, poca, todo, toda, todos
    nada, algo, alguien, nadie, como, cuando, donde, porque, pues, si, no, ya, aun, todavia, hoy
    ayer, manana, tarde, noche, dia, dias, semana, hora, horas, minuto, minutos, ahora, ahorita
    luego, despues, antes, siempre, nunca, tambien, tampoco, solo, bien, mal, mejor, peor, bueno
    buena, buenos, buenas, malo, mala, gracias, favor, hola, adios, ok, vale, listo, lista, claro
    casa, trabajo, doctor, doctora, medico, enfermera, familia, mama, papa, hijo, hija, esposo
    esposa, amigo, amiga, azucar, glucosa, sangre, nivel, lectura, medidor, prueba, medi, medir
    medirme, resultado, numero, valor, alto, alta, bajo, baja, normal, otra, otro, vez, veces, nuevo
    nueva, mismo, misma, entre, desde, hasta, sobre, cerca, lejos, aqui, aca, ahi, alli, asi, casi
    creo, siento, siente, sentir, quiero, puedo, puede, debo, dice, digo, dijo, salio, sale, marca
    marco, cansado, cansada, hambre, contento, contenta, feliz, comida, comer, comi, comido, comiendo
    bebida, desayuno, almuerzo, cena, merienda, dos, tres, cuatro, cinco, seis, siete, ocho, nueve
    perdon, disculpa, oye, ay, uy, jaja, jajaja, pues, entonces, cada, ambos, mio, mia, uno
    anda, andan, ando, pies, duelen, acabo, acabe, termine, terminar, empece, empezar, sigo, sigue, quede, quedan, queda, mientras
    sigo, traigo, trae, traia, traje, anduve, salio, sali, salia, marco, marca, marcaba, dio, registro
    """
)
