"""Signs of the body that are said in ever new words: what it is about, and what is wrong with it.

Each pair is a part or an act of the body and what is said of it, in either order with small words
between (`breathing is really hard`, `can hardly breathe`). Whole phrases stand in `symptoms.py`
and win; these find what no list foresees. Sources as in docs/word-lists.md.
"""

from typing import Final

from bot.entries import Suggests
from bot.parser.vocabulary import phrases

#: level, the one half, the other half
PAIRS: Final[tuple[tuple[Suggests, tuple[str, ...], tuple[str, ...]], ...]] = tuple(
    (level, phrases(one), phrases(other))
    for level, one, other in (
        (
            Suggests.EMERGENCY,
            "breath, breathe, breathing, breaths, brethe, breathin, breething, respirar, respiracion, respira, respiro, aire, aliento",
            """
            hard, difficult, difficulty, difficulties, trouble, struggle, struggling, struggles, can't, cannot, can not, can hardly, hardly, barely, short, shortness, laboured, labored, fighting for, fighting to, gasping, gasping for, unable
            not able, tight, heavy, catch my, catch her, catch his, catch, problem, problems, shallow, rapid, fast, very fast, too fast, quick, noisy, wheezing, stopped, stopping, hurts, hurting, painful, couldn't, out of, losing my, no breath, short of, no dey come, no gree come, not getting, not coming, cant get, can't get
            no puedo, no puede, no puedo ni, no puede ni, cuesta, me cuesta, le cuesta, dificultad, dificil, falta, me falta, le falta, agitada, agitado, trabajo, sin, no logro, rapida, rapido, ahogo, corta, batallando para, apenas puedo, apenas
            """,
        ),
        (
            Suggests.EMERGENCY,
            "chest, chess, breastbone, ribcage, pecho, corazon",
            """
            giving me pain, giving me some pain, giving me jip, giving me gip, giving me grief, killing me, pain, pains, painful, paining, hurt, hurts, hurting, ache, aches, aching, achy, tight, tightness, tightening, tightened, pressure, heavy, heaviness, crushing, squeezing, squeezed, squeeze, burning, sore, cramp, cramps, cramping, stabbing, sharp, gripping, discomfort, weight on, elephant, brick, bricks, rock, boulder, band round, band around, vice, vise, squashed, crushed, caving in, standing on, sitting on, sat on, stood on, kneeling on, someone on, someone sat on, clutching, clutches, clutched, grabbing, grabbed, on fire
            dolor, doloron, dolorazo, dolorcito, dolores, duele, me duele, le duele, dolio, dolia, doliendo, cierra, se me cierra, aprieta, apreto, apretaba, opresion, presion, punzadas, apretado, apretada, apachurrado, apachurrada, aplastado, estrujado, hundido, oprimido, ardor, molestia, peso en, punzada
            """,
        ),
        (
            Suggests.EMERGENCY,
            "speech, talking, talk, speak, speaking, words, tongue, hablar, habla, hablando, palabras, lengua",
            """
            isn't clear, not clear, unclear, slurred, slurring, slurry, slur, slurs, garbled, mumbled, mumbling, jumbled, muddled, mixed up, funny, strange, won't come out, wont come out, can't, cannot, unable, trouble, difficulty, thick, heavy tongue, not making sense, makes no sense, gibberish, gone funny, coming out wrong, won't work, wont work, not working, isn't working, stopped working, stumbling over, can't get my
            arrastrando, arrastra, enredada, enredado, trabada, trabado, no puedo, no puede, raro, rara, no le sale, no me salen, incoherente, incoherencias, cosas sin sentido, trabo, traba, pesada, dormida, entrecortado, cuesta, me cuesta, le cuesta
            """,
        ),
        (
            Suggests.EMERGENCY,
            "face, mouth, smile, eyelid, cheek, side of my face, side of her face, side of his face, cara, boca, sonrisa, rostro",
            """
            drooping, droopy, drooped, droops, droop, slipped, slipping, slid, sliding, melting, melted, slack, wonky, fallen, dropped, sagging, crooked, lopsided, numb, one sided, twist, twists, twisting, twisted, gone numb, paralysed, paralyzed, pulled to one side, hanging, uneven
            caida, caido, torcida, torcido, chueca, chueco, dormida, adormecida, paralizada, entumida, entumecida, desviada, paralizado
            """,
        ),
        (
            Suggests.EMERGENCY,
            "arm, arms, leg, one side, left side, right side, half my body, left hand, right hand, brazo, pierna, un lado, lado izquierdo, lado derecho, medio cuerpo",
            """
            weak, gone weak, is week, feels week, gone week, weakness, can't move, cannot move, can't lift, cannot lift, can't feel, cannot feel, won't move, wont move, paralysed, paralyzed, no strength, gone dead, dead, limp, gone numb, numb, useless, not working, heavy and weak, lost feeling, lost power, can't raise, cannot raise, hanging, hangs, just hangs, dangling, dangles, flops, hanging down, flopping, won't lift, wont lift, won't go up, gone floppy, floppy, drooping
            debil, se me fue la fuerza, se le fue la fuerza, perdi la fuerza, perdio la fuerza, sin fuerza, no puedo mover, no puede mover, no mueve, no muevo, dormido, dormida, entumido, entumida, adormecido, adormecida, paralizado, paralizada, no siento, no puedo levantar, no siente
            """,
        ),
        (
            Suggests.EMERGENCY,
            "swallow, swallowing, tragar, pasar saliva, pasar el agua",
            "impossible, imposible, no longer, no more, can't, cannot, can not, unable, couldn't, hard, difficult, trouble, difficulty, not able, no puedo, no puede, cuesta, me cuesta, dificultad, dificil",
        ),
        (
            Suggests.EMERGENCY,
            """
            breath smells, breath smell, breath smelling, breath smelled, breath stinks, breath stink, breath stinking, breath reeks, breath tastes, breath sells, breath is smelling, breath do stink, breath do smell, breath dey smell
            """,
            """
            fruit, fruits, fruity, ripe fruit, rotten fruit, mango, mangoes, ripe mango, pineapple, melon, watermelon, banana, bananas, peach, peaches, strawberries, grapes, papaya, guava, pear, pears, pear drops, pear cider, apples, rotten apples, bubble gum, bubblegum, fruit salad, fruit juice, fruit drops, fruit gums
            acetone, nail varnish, nail polish
            """,
        ),
        (
            Suggests.EMERGENCY,
            "breath, breaths, breathe, breathes, exhale, mouth, aliento, boca",
            """
            fruity, fruit, ripe fruit, rotten fruit, overripe fruit, old fruit, pineapple, apples, acetone, nail varnish, nail polish, nail polish remover, nail varnish remover, pear drops, like pears, like apples, rotten apples, sweet smell, smells sweet, juicy fruit, paint thinner, solvent
            fruta, frutas, acetona, esmalte, quitaesmalte, a manzana, a manzanas, frutal
            """,
        ),
        (
            Suggests.EMERGENCY,
            "vomiting, vomit, vomited, throwing up, threw up, puking, puke, puked, being sick, been sick, barfing, spewing, vomito, vomitando, vomite, devolviendo, vomitos",
            """
            can't keep, cannot keep, cant keep, not keeping, unable to keep, nothing stays, nothing is staying, can't hold, won't stay down, blood, bloody, non stop, nonstop, non-stop, can't stop, cannot stop, everything, confused, drowsy, water comes back, keeps coming back, even water
            no retengo, no retiene, no puedo retener, nada se queda, sangre, sin parar, no para, no paro, todo, hasta el agua, confundido, confundida
            """,
        ),
        (
            Suggests.EMERGENCY,
            "keep, hold, stay, stays, staying, keeping, holding, retener, retengo, retiene",
            "down no water, down no food, down nothing, down anything, down water, down food, down no fluids, sip of water down, sips of water down, sip down, sips down, drop of water down, drop down, even a sip, food down, water down, fluid down, fluids down, liquid down, liquids down, anything down, nothing down, a thing down, drinks down, even water, water, sips, nada, liquidos, agua, ni el agua",
        ),
        (
            Suggests.EMERGENCY,
            "wake, wake up, waking, waking up, woken, rouse, rousing, arouse, despierta, despertar, reacciona, responde, respond, responding, responsive, wake her, wake him, wake her up, wake him up, despertarlo, despertarla",
            "can't, cannot, can not, won't, will not, unable, couldn't, not, isn't, hard to, difficult to, trouble, impossible, not able, no, no se, no puedo, no podemos, no logro, barely",
        ),
        (
            Suggests.HIGH,
            """
            pee, peeing, peed, wee, weeing, weed, urinate, urinating, urine, urination, piss, pissing, toilet, loo, bathroom, restroom, washroom, passing water, pass water, passing heaps of water, passing loads of water, passing lots of water, passing a lot of water, passing so much water, passing too much water, pass urine, passing urine, lavatory, ladies room, jacks, lav, bog, bogs, dunny, netty, privy, slash, mimi, pish, busting for a wee, bursting for a wee, busting for a pee, bursting for a pee, busting for the loo, bursting for the loo, desperate for a wee, desperate for the loo
            orinar, orino, orinando, orina, mear, meando, hacer pipi, pipi, bano, pis, chichi, hacer pis
            """,
            """
            plenty, heaps, heaps of, buckets, gallons, plenty plenty, nuff, keep, keeps, kept, keeping, constantly, constant, non stop, nonstop, non-stop, all night, all day, every hour, every half hour, every few minutes, every ten minutes, every twenty minutes, so often, so much, too much, a lot, lots, frequently, frequent, again and again, many times, several times, all the time, always, like a racehorse, like a tap, up and down
            can't stop, cannot stop, over and over, ten times, loads, every 5 minutes, every 10 minutes, every 15 minutes, every 20 minutes, every 30 minutes, every five minutes, every hour, excessive, excessively, more than usual, up all night, live in the, living in the, running to, back and forth, can't stay out of, more often, too often, very often, every time, everytime, very much, too many times, well well, whole night, whole day, all through the night, through the night, since morning, steady, anyhow, {4|5|6|7|8|9|10|11|12|13|14|15|16|18|20|25|30} times
            mucho, un chorro, un monton, todo el rato, todo rato, ganas de, a cada nada, muchas veces, a cada rato, cada rato, todo el tiempo, toda la noche, todo el dia, sin parar, demasiado, cada hora, cada media hora, seguido, muy seguido, muchisimo, frecuente, frecuentemente, constantemente, paro de, a cada ratito, a cada ratico, cada ratico, cada ratito, cada cinco minutos
            """,
        ),
        (
            Suggests.HIGH,
            "thirst, thirsty, thursty, thristy, sed, sediento, sedienta, sedientos",
            """
            very, so, really, extremely, terribly, terrible, unbelievably, always, constantly, constant, still, awful, awfully, mad, crazy, dying of, unquenchable, can't quench, cannot quench, can't stop, non stop, nonstop, raging, super, like anything, like mad, like crazy, as anything, as hell, as ever, all day, all night, all the time, incredibly, mighty, dreadful, no matter how much, excessive, powerful, unusual, unusually, insane, insanely, massive, huge, too, too much, very much
            mucha, muchisima, demasiada, tanta, mas, un chorro de, un chingo de, un monton de, un buen de, harta, seca de, seco de, no se me quita, no se quita, terrible, todo el tiempo, todo el dia, bastante, horrible, muerto de, muerta de, muriendo de, insaciable
            """,
        ),
        (
            Suggests.HIGH,
            "vision, sight, eyesight, eyes, eye, seeing, see, words, letters, print, page, writing, lines, telly, vista, vision, ojos, veo, ver, letras",
            """
            smudgy, smudged, smeary, smeared, blurry, blurred, blurring, blury, blurr, blurrd, blured, blur, bleary, fuzzy, hazy, cloudy, misty, foggy, double, unclear, out of focus, dim, not clear, can't focus, cannot focus, won't focus, distorted, swimming, dancing, jumping about, moving about, running together, blurrier, blurs, not seeing, not seeing clear, not seeing well
            borrosa, borroso, borrosos, nublada, nublado, nublados, doble, empanada, no enfoco, distorsionada, turbia
            """,
        ),
        (
            Suggests.HIGH,
            "belly, stomach, tummy, abdomen, abdominal, gut, guts, tum, barriga, panza, estomago, abdomen, vientre, guata",
            """
            pain, pains, painful, paining, hurt, hurts, hurting, ache, aches, aching, achy, cramp, cramps, cramping, sore, agony, killing, in knots, tender, stabbing, twisting, griping, biting
            dolor, dolores, duele, me duele, le duele, dolio, dolia, doliendo, calambres, calambre, retorcijones, colicos, colico, punzadas
            """,
        ),
        (
            Suggests.LOW,
            "hand, hands, finger, fingers, leg, legs, knee, knees, body, arms, whole body, manos, mano, piernas, cuerpo, rodillas, dedos, all over, inside, insides",
            """
            shaking, shaky, shakey, shake, shakes, shook, tremble, trembles, trembling, trembly, tremor, tremors, trembled, jittery, jelly, like jelly, wobbly, wobbling, wobble, quivering, shivering, unsteady, quaking, jittering, vibrating, buckling, knocking, like the clappers, flapping, quivery, juddering
            tiritan, tirita, tiritando, titiritan, titiritando, tiemblan, tiembla, temblo, temblaron, temblaba, temblaban, temblando, temblorosas, temblorosa, tembloroso, temblor, temblores, flojas, aguadas, tembleque, temblar, tembladera
            """,
        ),
        (
            Suggests.LOW,
            "sweat, sweats, sweating, sweaty, sweated, perspiring, perspiration, sudor, sudando, sudores, sudo, sudar",
            """
            cold, pouring, running, lashing, coming, dey come, pouring off me, drenched, drenched in, soaked, soaked in, dripping, buckets, lots, a lot, alot, heavily, all over, profusely, covered in, beads of, bad, for no reason, like crazy, like a pig, clammy, breaking out, broke out, running down, woke up, badly, so much, through my, suddenly, out of nowhere, streaming, in a
            frio, fria, frios, mucho, a mares, empapado, empapada, a chorros, demasiado, helado, banado, banada, gotas de, de la nada, chorreando
            """,
        ),
        (
            Suggests.LOW,
            "head, heid, hed, room, everything, everythings, world, vision, cabeza, cuarto, mundo, todo, piso, suelo, techo, cama, floor, house, ground, ceiling, walls, bed",
            """
            a tun, tun, a turn, turning, spinning, spin, spins, swimming, birlin, birling, going round, goes round, going in circles, rotating, tipping, rocking, swaying, going around, woozy, whirling, reeling, tilting, swimmy, giddy, turning round, moving around me, won't stop moving, won't stay still, turns, turning, rounding, dey turn, floating, floaty, going dark, going black, dizzy
            vueltas, da vueltas, dando vueltas, me da vueltas, gira, girando, mareada, mareado, ligera, se mueve
            """,
        ),
        (
            Suggests.LOW,
            "head, cabeza",
            "light, lite, floating off, empty, hollow, fuzzy, foggy, not right, gone funny, funny, in the clouds, liviana, hueca, vacia",
        ),
        (
            Suggests.EMERGENCY,
            "fell, fallen, floor, ground, slumped, lying, cayo, piso, suelo, tirado, tirada",
            """
            isn't answering, not answering, won't answer, doesn't answer, not talking, isn't talking, won't talk, not moving, isn't moving, won't move, won't get up, not getting up, isn't getting up, can't get up, cannot get up, not responding, isn't responding, no response
            no contesta, no responde, no se mueve, no se levanta, no reacciona, no habla
            """,
        ),
        (
            Suggests.LOW,
            "heart, heartbeat, pulse, corazon, palpitaciones",
            "racing, pounding, thumping, fluttering, hammering, beating fast, beating so fast, going fast, beating out of, palpitations, palpitating, galloping, jumping, skipping beats, acelerado, late rapido, palpita, a mil, latiendo rapido, latiendo fuerte, desbocado",
        ),
        (
            Suggests.LOW,
            "lips, tongue, mouth, labios, lengua",
            "tingling, tingly, tingle, pins and needles, numb, hormigueo, cosquilleo, adormecidos, dormidos, entumidos, hormiguean",
        ),
    )
)

#: What may stand between the two halves.
BETWEEN: Final = frozenset(
    """
    don r thru o belt band strap rope week punzante opresivo opresiva extrano extrana sordo insoportable espantoso espantosa fuertisimo horroroso fuerte fuertes horrible intenso intensa agudo aguda feo fea grande raro rara constante ligero ligera leve tremendo tremenda strong dull sharp nasty horrible dreadful stabbing burning weird funny mild slight constant happening pure proper fair fierce real dead gey well mad wicked ma me meh mah mih wor di ont on't loo lav down at they will would might aqui aca ahi night looks look looking went seems do dem does doing beating enough infront front is are was am are be been being gets getting got gone feel feels feeling felt my me her his the a an
    so very really all too quite bit little like of in on to for with and at it its im i she he has have
    having had keep keeps kept still just now again today start started suddenly both up down out get go goes
    going from when as this that some lot lots much no proper properly pretty kinda kind sort super just
    have through off rather starting making make makes left right bad badly awful terrible severe such lying
    sitting sits sat pressing sitting coming come comes catch needing need wanting want have to need
    how what into round around down there here also about over dat de dey ah mi la el los las un una me se
    te le lo su sus esta estan estoy tengo tiene siento siente y con muy mas tan como que en al del por para
    across middle upper lower ya ve ven side hoy ahora mucho mucha todo toda puedo puede bien
    """.split()  # noqa: SIM905 - a block is read more easily
)
