"""Signs of the body as idiom and dialect put them, in two halves as in `symptom_pairs.py`; these
come after those. Everyday wordings, our own, from memory."""



from typing import Final

from bot.entries import Suggests
from bot.parser.vocabulary import phrases

_FLOORS = "dey for ground, for ground, for floor, on the (kitchen |bathroom |bedroom |hall |hallway |living room |shop |office |cold ){floor|ground}, on the {pavement|stairs|landing|lawn}, en el {piso|suelo|bano}, tirad{a|o} en el {piso|suelo}"

IDIOM_PAIRS: Final[tuple[tuple[Suggests, tuple[str, ...], tuple[str, ...]], ...]] = tuple(
    (level, phrases(one), phrases(other))
    for level, one, other in (
        (
            Suggests.EMERGENCY,
            "wake up, i wake up, when i wake, came round, came to, came back round, coming round, come round, found myself, ended up, next thing i was, desperte, me desperte, amaneci, volvi en mi",
            _FLOORS,
        ),
        (
            Suggests.EMERGENCY,
            """
            twitching, twitches, jerking, jerks, gone stiff, went stiff, rigid, staring, stares, stare, eyes open, eyes are open, asleep, sleeping, snoring, limp, floppy
            viendo al vacio, mirando al vacio, mirada perdida, mirando a la nada, ida, ido, tieso, tiesa, rigido, rigida, dormido, dormida, roncando
            """,
            """
            not answering, isn't answering, won't answer, doesn't answer, not responding, isn't responding, doesn't respond, won't respond, no response, no answer, won't talk, not talking, doesn't talk, isn't talking, won't speak, not speaking, doesn't react, not reacting, can't rouse, can't hear me, doesn't hear me, isn't there, nobody home
            no habla, no dice nada, no contesta, no me contesta, no responde, no reacciona, se sacudia, se sacude, sacudiendose, sacudia, no oye
            """,
        ),
        (
            Suggests.EMERGENCY,
            """
            keeps asking, keeps on asking, can't think, cannot think, can't remember, cannot remember, don't remember, doesn't remember, do not remember, forgot, forgotten, no idea, no clue, not sure, doesn't know, don't know, do not know, does not know, can't tell, no knowing
            no se, no sabe, no me acuerdo, no recuerdo, no se acuerda, no recuerda, pregunta, pregunta y pregunta, sigue preguntando
            """,
            """
            where i am, who i am, who i was, what day it is, what day is it, what year it is, what month it is, my own name, his own name, her own name, how i got here, how i got there, how i ended up here, how i ended up there
            donde estoy, quien soy, que dia es, en que ano estamos, su nombre, mi nombre, como llegue aqui
            """,
        ),
        (
            Suggests.EMERGENCY,
            "keeps asking, keeps on asking, asking over and over",
            "where he is, where she is, who he is, who she is, who i am, who we are, who you are",
        ),
        (
            Suggests.EMERGENCY,
            "air, oxygen, aire, oxigeno, resuello",
            """
            not getting, isn't getting, can't get, cannot get, not enough, can't draw, can't suck in, gulping, gulping for, gasping for, starved of, begging for
            no puedo jalar, falta, me falta, le falta, no me entra, no le entra, no entra, no me llega, no agarro, no alcanzo, batallo para agarrar
            """,
        ),
        (
            Suggests.EMERGENCY,
            "breath, breaths, breathing, respiracion",
            "sounds terrible, sounds awful, sounds bad, sounds wrong, sounds funny, sounds horrible, weird, strange, funny, like i ran, like i've run, like i ran a marathon, gasps, gasp, in gasps, gulps, in gulps, rattling, rattly, rasping, short bursts, run out of, a fondo no",
        ),
        (
            Suggests.EMERGENCY,
            "chest, pecho",
            """
            sitting on, sits on, sat on, standing on, stood on, pressing on, pressing down on, kneeling on, something heavy, gripped, gripping, ripping, tearing, jabbing, bursting, exploding, radiating, in a vice, squeezes, squash, squashing
            aplasta, aplastando, aplastado, me oprime, oprime, quema, ardiendo, encima, piedra, como losa, explota, revienta
            """,
        ),
        (
            Suggests.EMERGENCY,
            "cara, boca, rostro, sonrisa",
            "chuequeo, viro, ladeo, torcio, jalo, fue de lado, fue de un lado, desvio, cayo, colgo, chuequeando, chuequita",
        ),
        (
            Suggests.EMERGENCY,
            "medio cuerpo, mitad del cuerpo, lado izquierdo, lado derecho, un lado del cuerpo, media cara",
            "durmio, duerme, adormecio, entumio, entumecio, paralizo, murio, apago, no me responde, no le responde, no siento, no siente",
        ),
        (
            Suggests.LOW,
            """
            hand, hands, finger, fingers, leg, legs, knee, knees, body, feet, foot, insides, voice, pins
            manos, dedos, piernas, rodillas, cuerpo, pies, voz, canillas, patas
            """,
            """
            won't stay still, won't keep still, can't keep still, all over the place, won't hold, won't hold me, not holding me, giving way, give way, gave way, giving out, gave out, folding, folded, buckle, buckled, spaghetti, noodles, noodle, rubber, rubbery, gone soft, like water, like lead, like string, like cotton, turned to water, quaver, quavering, weak, wobbled, from under me, from under, out from under me, going from under me, going under me
            se doblan, doblan, doblaron, flaquean, flaqueando, flaquea, aflojaron, aflojan, aflojo, fallan, fallaron, fallando, no me sostienen, no me sostiene, no me aguantan, no me detienen, de trapo, como trapo, de gelatina, como gelatina, de lana, de hule, de mantequilla, bailan, bailando, guangas, guango, guanga, temblequean, temblequeando, tembelequeo
            """,
        ),
        (
            Suggests.LOW,
            "head, brain, cabeza",
            "cotton wool, cotton, in a fog, in a cloud, in a haze, swims, merry go round, roundabout, in a whirl, doing cartwheels, balloon, globo, flotando, algodon, en el aire, remolino, trompo",
        ),
        (
            Suggests.LOW,
            "eyes, eye, vision, front of me, my eyes, ojos, vista",
            """
            darkness in front of, blackness in front of, blackness infront of, darkness infront of, darkness, darkness coming, darkness is coming, blackness, black spots, black dots, dark spots, going black, gone black, going dark, gone dark, darkening, dey turn, stars, sparkles, sparks, tunnel
            puntitos, puntos negros, estrellitas, estrellas, lucecitas, luces, oscurece, oscurecio, apaga, se me apaga, chispas
            """,
        ),
        (
            Suggests.LOW,
            "sweat, sweating, sweats, sudor, sudo, sudando",
            "dropping, dripping, drips, falling, rolling, rolls, anyhow, wet through, like a horse, like rain, like tap, well well, no be small, pour, dey pour, dey come out, dey commot, dey rush, rivers, running off me, off me, gota gorda, chorro, mojada, mojado, ensopado, ensopada",
        ),
        (
            Suggests.LOW,
            "heart, heartbeat, ticker, pulse, heart rate, corazon",
            """
            so hard, too hard, very hard, really hard, so fast, too fast, very fast, really fast, hard and fast, somersaults, somersaulting, flips, flipping, flip flops, backflips, out of my chest, out my chest, going mad, mile a minute, miles an hour, miles a minute, drumming, bumping, doing funny things, jumping out, going like a train, like the clappers, like a hammer, ten to the dozen, nineteen to the dozen, going crazy, going bonkers, going wild, doing the samba, in overdrive, racing, beating like mad, beating too fast, beating anyhow, dey run, dey beat fast, dey jump
            mil por hora, sale del pecho, se me sale, brinca, brincando, galopa, galopando, late fuerte, late muy fuerte, late muy rapido, late rapidisimo, late rapidito, late fortisimo, va a mil, rebota, alborotado
            """,
        ),
        (
            Suggests.LOW,
            "lips, lip, tongue, gums, labios, labio, lengua, encias",
            "buzzing, buzz, fizzing, fizzy, pins n needles, pins and needles, prickling, prickly, zumban, zumbando, zumba, cosquillas, adormecieron, duermen, durmieron",
        ),
        (
            Suggests.HIGH,
            "loo, toilet, bathroom, washroom, restroom, lavvy, lav, wc, john, bog, dunny, latrine, privy, cr, khazi, ladies, gents, bano, excusado, wc, sanitario",
            """
            in and out of, live on, live in, living on, living in, never off, never out of, can't leave, can't get off, stuck on, always on, back and forth to, backwards and forwards to, can't stay away from, camping in, every half hour, every hour, every {10|15|20|30|40|45} {min|mins|minutes}
            me la paso en, me la vivo en, vivo en, vivo en el, no salgo de, no salgo del, a cada rato, a cada ratito, cada ratito, cada hora, cada media hora, cada {10|15|20|30|40|45} {min|minutos}, corriendo a, corriendo al
            """,
        ),
        (
            Suggests.HIGH,
            "passing urine, passing water, pass urine, pass water, urine, pee, peeing, wee, weeing, urinating, urinate, pissing, piss, piddle, slash, orinar, orino, mear, pis, pipi, chis, hacer de las aguas",
            """
            every {10|15|20|30|40|45} {min|mins|minutes}, every other hour, every now and again, up and down, in the night, {4|5|6|7|8|9|10} times, cannot hold, bucketfuls, buckets, gallons, litres
            {3|4|5|6|7|8|9|10} veces, cada {10|15|20|30|40|45} {min|minutos}, a cada ratito, un monton, como llave, como manguera, litros
            """,
        ),
        (
            Suggests.HIGH,
            "mouth, throat, tongue, boca, garganta, lengua",
            "so dry, very dry, really dry, dried up, dry as a bone, dry as dust, bone dry, sandpaper, desert, sahara, cotton wool, parched, estropajo, algodon, lija, desierto, corcho, carton, pegada, como trapo",
        ),
        (
            Suggests.HIGH,
            "bladder, vejiga",
            "won't quit, won't stop, won't hold, always full, full again, never empty, bursting all the time, llena a cada rato, no aguanta",
        ),
        (
            Suggests.HIGH,
            "thirst, thirsty, sed",
            "no end, no peace, sigo con, no aguanto, ardo de, no se me va, no me aguanto, me mata, me esta matando, no se apaga, no me la quito, muerto, muerta, morir de, still, catch me, dey catch me, dey kill me",
        ),
        (
            Suggests.HIGH,
            "drinking, drink, drink water, drank, guzzling, downing, gulping, drinking water, tomando, bebiendo, tomo, bebo",
            "no end, nonstop, non stop, non-stop, without stopping, like no tomorrow, like a camel, like a horse, like a drain, by the bucket, bucket after bucket, buckets of, gallons of, litres and litres, bottle after bottle, glass after glass, jug after jug, como camello, litros y litros, vaso tras vaso, botella tras botella",
        ),
        (
            Suggests.HIGH,
            "eyes, eye, eyesight, vision, sight, vista",
            "going in and out, coming and going, flickering, fading, fading in and out, gone funny, funny, weird, playing tricks, playing up, going funny, blur blur, gone off, not right, gone queer, manchada, rara, mala de repente, empanando",
        ),
        (
            Suggests.HIGH,
            "everything, everythings, it all, todo",
            "blurry, blurred, blury, blurr, blured, fuzzy, hazy, foggy, misty, out of focus, cloudy, double, borroso, doble, nublado, desenfocado",
        ),
        (
            Suggests.LOW,
            "everything, everythings, world, people, voices, sounds",
            "far away, distant, miles away, under water, underwater, in slow motion, unreal, like a dream, closing in, moving, tilting, shakes, shaking",
        ),
        (
            Suggests.HIGH,
            "letras, letters, numeros",
            "juntan, se me juntan, se juntan, bailan, se mueven, running together, jumping, dancing, double, dobles, borrosas, borrosos",
        ),
    )
)
