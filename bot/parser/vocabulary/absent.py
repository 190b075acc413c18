"""How people say that there is no reading this time, by concept: `skips.py` tells which concepts
together make a skip. Written for this project, from memory."""

from collections.abc import Mapping
from typing import Final

from bot.parser.vocabulary import Block

_BLOCKS: Final[Mapping[str, str]] = {
    "test_act": """
        test, tests, testing, tested, check, checks, checking, checked, measure, measuring, measured, reading, readings, prick, pricking, pricked
        poke, poking, jab my finger, do it, done it, doing it, do that, did it, take it, take one, take a reading, do one, do mine, do the one, get one, get it done, do this, stick my finger
        {test|check|measure|do|take|checking|testing} my {sugar|sugars|glucose|blood|level|levels|bg|bs|finger|reading|test|blood sugar}, prick my {finger|fingers}, the test, blood test
        finger prick, fingerstick, finger stick, one, recheck, retest, tes, the needle, needles, the pricking, the jab, another jab, the poke, another prick, another poke
        """,
    "gauged": """
        sugar, sugars, glucose, blood sugar, blood, level, levels, finger, fingers, bg, bs, 2 hour, two hour, after meal, before meal, post meal, pre meal, after dinner, before dinner, after lunch, before lunch, after breakfast
        before breakfast, after, before, meal, second, first, morning, evening, bedtime, fasting, 2h, h, hour, hours, 2 hours, pm, am, earlier, last, other, that, results, next, follow up, follow-up, again, scheduled, afternoon, evening one
        due, planned, on time, {lunch|dinner|breakfast|supper|meal} {test|one|check|reading}
        """,
    "unable": """
        can't, cannot, can not, couldn't, could not, cant, unable, not able, wasn't able, was not able, won't be able, will not be able, am not able, wouldn't be able, didn't manage, did not manage, never managed, failed, never got round, never got around
        didn't get {a chance|round|around|time|the chance|to}, did not get {a chance|round|time}, {had|have|got|there was|there's} no {time|chance}, no time, no chance, not possible, impossible, haven't, have not, hasn't, havent, didn't, did not, didnt, isn't going, won't, will not, wont, wouldn't, not going to, not gonna, aint
        don't want, do not want, dont want, rather not, would rather not, i'd rather not, prefer not, don't feel like, not feeling like, don't feel up, refuse, can't be bothered, cant be bothered, couldn't be bothered, not in the mood, no way, not doing, not today, not tonight, not this time, not this one, not at the moment
        didn't have {time|a chance|the chance}, no, not yet, won't be, will not be, too busy, no desire, fed up, don't fancy, no mood, cba, cbb, cbf, can't face, cannot face, can't bear, cannot bear, can't stand, can't stomach, couldn't face, no fit, no go fit, no wan, nah want, cyah, cyaan, cannae, canny, canna, don't want, no strength, no energy, don't wanna, do not wanna, dont wanna, don't care to, won't bother, not bothered
        """,
    "skipping": """
        skip, skips, skipped, skipping, skip it, skip this, skip that, miss, missed, missing, missed it, missed out, missed out on, pass, pass on, leave it, leave it out, leave out, {give|gave|giving|i'll give|gonna give} {this|this one|that|that one|today|tonight} a miss, gave it a miss, give it a miss, giving it a miss, sit this one out, sitting this one out, left it, skp, passing, pass this one, not testing, no testing, forgo, bunk
        """,
    "forgot_said": """
        forgot, don forget, forget, forgotten, forgetting, forgot about, forgot all about, completely forgot, clean forgot, forgot it, forgot to, {slipped|escaped|left} my mind, slipped my memory, went out of my head, gone out of my head, went right out of my head, out of my head, didn't remember, did not remember, couldn't remember, never remembered, didnt remember, lost track of time, lost track, remembered too late, no memory
        fell asleep, i fell asleep, dozed off, nodded off, overslept, slept through, slept in, slept thru, sleeping, was asleep, was sleeping, napping, was napping, slept off, sleep off, sleep catch me, sleep carry me, dozing, was dozing, in bed already, gone to bed, went to bed, was in bed, dropped off, conked out, passed out asleep, too late, dosed off, drifted off, napped, forgetful, spaced, spaced on, spaced out on, blanked on, blanked, spaced it, slipped me, not on my mind, clean out of my mind, totally blanked
        """,
    "kit": """
        meters, machines, glucometers, monitors, kits, devices,
        meter, metre, meeter, glucometer, glucose meter, sugar meter, machine, sugar machine, monitor, glucose monitor, kit, test kit, testing kit, tester, device, reader, lancet, lancets, lancing device, pricker, needle, needles, pricking needle, pricking pen, gadget, equipment, supplies, testing stuff, testing things, testing gear, gear, test machine, checker, finger pricker
        glucose machine, blood sugar machine, blood machine, sugar checker, apparatus, sensor, glucometre
        """,
    "strip": "strip, strips, test strip, test strips, teststrips, testing strips, sticks, test sticks, strps, glucose strips, sugar strips",
    "lack": """
        no, no more, out of, all out of, ran out of, run out of, running out of, ran out, run out, ran short of, out, don't have, do not have, dont have, haven't got, haven't any, have not got, havent got, haven't, don't got, ain't got, have none, zero, none, none left, without, not got, has no, have no, have no more, got no, got no more, there are no, there's no, there is no, there are none, used up, used, used my last
        finished, finish, finished up, gone, all gone, expired, out of date, empty, waiting for, waiting on, awaiting, need, need new, need more, not arrived, haven't arrived, haven't come, out of stock, ordered, to buy, to collect, to pick up, over, done, exhausted, spent, ran dry, depleted, down to zero, no get, nuh have, nah have, no dey, never get, no longer have, missing, wasted, saving, save, rationing, can't afford, cannot afford, can't buy, spoiled, spoilt, binned, threw away, don finish, sold out, not any, not one, lacking, am out, closed, is closed, shut, is shut, not open, on order, too expensive, too dear, no spare, short of, used last
        """,
    "last_of": "last, left, new, more, any, remaining, spare, box, pharmacy, chemist, delivery, refill, post, shop, store, single, all, at home, here, with me, days ago, since, yesterday, today, my, from, last month, last week, months ago, this month, this week, till payday, until payday, for now, supplier, the, clinic, hospital, order, prescription, until, tomorrow, monday, to arrive, arrive, come, pack, have, got, anymore",
    "broken": """
        broke, broken, is broken, bust, busted, dead, died, dying, not working, isn't working, is not working, wasn't working, aint working, stopped working, stopped, quit, doesn't work, does not work, didn't work, don't work, won't work, wont work, not work, faulty, kaput, kaputt, {don|has|have|done} {spoil|die|bad|break|burst|quench|scatter|knock|conk|pack up|kaput|condemn}, packed up, packed in, conked out, playing up, acting up, acting funny, acting weird, flat, drained, knackered, out of order, given up, gave up, cracked, smashed, wet, spoilt, spoiled, spoil, frozen, failing, fails, failed
        to work, won't {turn|switch|come|power|start} on, won't {start|read|respond|light up|wake up|accept the strip|take the strip}, doesn't {turn|switch|come|power} on, not {turning|switching|coming} on, keeps {giving|showing|saying|failing}( {an|me})( {error|errors}), no power, no battery, needs {a battery|batteries|a new battery|charging|new batteries|a charge}, error, errors, malfunctioning, malfunction, defective, damaged, blunt, bent, used up, on the blink, on the fritz, done for, messed up, dropped, fell, screen is blank, blank screen, blank, out of battery, ran out of battery, ran out of batteries, ran out of charge, has died, no dey work, no gree work, no de work, shut down, buggered, banjaxed, broke down, broken down, burst, mash up, mashed up, gone bad, bad, switched off, off, refuses, refusing, jammed, stuck, lost power, gone dead, dud, water damaged, not charging, uncharged, low battery, giving error, showing error, kept failing
        """,
    "battery": "battery, batterys, batteries, power, charge, batt, batts, cell, cells, bateries, charger",
    "mislaid": """
        left, forgot, forgotten, lost, misplaced, mislaid, can't find, cannot find, cant find, couldn't find, could not find, can't locate, don't know where, dont know where, dunno where, stolen, stole, was stolen, was nicked, took, borrowed, has, have, lent, lost track of, hid, hidden, hides, ran off with, made off with, swallowed, chewed, ate, sat on, didn't bring, did not bring, didnt bring, not with me, haven't got, don't have, do not have, dont have, without, no, locked, packed, gone with, went with, gone off with, broke, dropped, gave away, is missing, missing, gone, gone missing, disappeared, away from, not near, nowhere near, no access to, not here, nowhere, not got, hasn't arrived, forgot to bring, forgot to pack, away, is at, was at
        """,
    "place": """
        at home, home, at work, work, in the car, car, in my {car|bag|purse|other bag|room|desk|office|suitcase|locker|handbag|drawer}, in the {office|house|bag|bus|taxi|hotel|other room|bedroom|kitchen|drawer|room|suitcase}, at the {office|house|hotel|gym|clinic|shop|hospital|school}, at my {mum's|mom's|sister's|brother's|daughter's|son's|mother's|friend's|place|house|desk|office|parents}, upstairs, downstairs, somewhere, behind, with me, with, where, i put it, water, in water, in the water, in the {loo|sink|bath|pool|sea|river|drain|tub|bucket|mud|rain|sand}, down the {toilet|loo|drain|stairs|sink}, in the toilet, toilet, in {hand|my} luggage, in the {boot|trunk|locker|suitcase|case}, in checked luggage, on the floor, on the bus, on the train, the bus, on a bus, someone, somebody, thief, my sister, my brother, my husband, my wife, my son, my daughter, my mum, my mom, my neighbour, my friend, the dog, the kids, the baby, is {at home|at work|upstairs|downstairs|in the car}, it's {at home|at work}, out, from, anywhere, house, bag, hotel, room, office, today, again, luggage, at school, school, another, other
        """,
    "sore": "sore, too sore, hurt, hurts, hurting, painful, bruised, numb, too cold, cold, bandaged, bleeding, no blood, not bleeding, won't bleed, wont bleed, not enough blood, raw, tender, blood won't come, blood wont come, no blood coming, dry, cut",
    "busy_with": "driving, in a meeting, at work, on the bus, at church, in class, in the cinema, busy, at the cinema, on a call, on the train, working, in traffic, out, at a wedding, at a party, too tired, tired, in bed, already in bed, sleepy, travelling, not home, not at home, at school, in the mosque, in public, too busy, at the gym, with clients, with people, at the doctor's",
}

ABSENT: Final[Mapping[str, Block]] = {
    concept: Block(block) for concept, block in _BLOCKS.items()
}

_BLOCKS_SPANISH: Final[Mapping[str, str]] = {
    "test_act": "medir, medirme, medi, me medi, mido, me mido, medirse, prueba, la prueba, lectura, medicion, checar, checarme, me checo, me cheque, chequear, chequearme, picarme, pinchar, pincharme, me pinche, hacerlo, hacerla, lo hice, la hice, hice, hacer, hacerme la prueba, tomarla, tomarme la glucosa, tomarme el azucar, medirme el azucar, medirme la glucosa, medir el azucar, medir la glucosa, el control, control, revisar, revisarme, toma, medido, checado, esta, examen",
    "gauged": "azucar, glucosa, sangre, nivel, glicemia, glucemia, dedo, antes, despues, 2 horas, dos horas, desayuno, almuerzo, cena, comida, la de, de la noche, de la manana, a tiempo, ayunas, en ayunas, de las, siguiente, segunda, primera, h, horas, tiempo, comer",
    "unable": "no puedo, no pude, no podre, no voy a poder, no pudo, no podia, no alcance, no alcanzo, no alcance a, no logre, no he podido, no quiero, no quise, prefiero no, mejor no, no voy a, no tengo ganas, no tengo tiempo, sin tiempo, no me da tiempo, no me dio tiempo, no tuve tiempo, no, no he, hoy no, ahora no, esta vez no, no me pude, no me puedo, no me quiero, no me voy a, imposible, todavia no, me da flojera, que flojera, que pereza, no me, no lo, no la, no me la, no me lo, no tengo chance, no hay tiempo, no se pudo, ni modo, no se puede",
    "skipping": "saltar, saltarme, me salto, me la salto, me lo salto, salto, saltalo, saltala, saltar esta, omitir, omite, omito, paso, me la salte, me salte, dejemosla, perdi, se me paso, se paso, se me fue, esta vez paso, la dejo pasar, dejo pasar, me la perdi, falte",
    "forgot_said": "olvide, me olvide, se me olvido, lo olvide, la olvide, se me olvida, olvidado, olvidada, olvidarme, se me fue el santo al cielo, se me fue de la mente, se me fue la onda, se me borro, se me fue el avion, se me fue la hora, se quedo dormido, se quedo dormida, se durmio, no me acorde, no me acuerdo, no recorde, me quede dormido, me quede dormida, quede dormido, quede dormida, me dormi, me ganó el sueño, me gano el sueno, estaba dormida, estaba dormido, por completo, completamente, se me paso, olvido",
    "kit": "medidor, glucometro, aparato, maquina, maquinita, aparatito, lancetas, lanceta, agujas, aguja, kit, estuche, equipo, lector, sensor, pinchador, glucometer, medidor de azucar, medidor de glucosa, aparato del azucar, monitor",
    "strip": "tira, tiras, tiras reactivas, cintas, cinta, tirillas, tirilla, tiritas, cintas reactivas",
    "lack": "no tengo, no hay, sin, se acabaron, se acabo, se me acabaron, se me acabo, se terminaron, se termino, se le {acabo|acabaron|termino|terminaron}, se me terminaron, no me quedan, no me queda, no quedan, no queda, me quede sin, estoy sin, quede sin, ya no tengo, ya no hay, ya no me quedan, ya no quedan, me faltan, faltan, me hacen falta, no llegan, no han llegado, no compre, no he comprado, vencidas, caducadas, caducaron, se vencieron, agotadas, acabaron, terminaron, esperando, espero, necesito, ni una, no encuentro, no conseguimos, no consigo, no consegui, gaste, use la ultima, use, gasté",
    "last_of": "mas, ninguna, ningun, ultima, ultimas, nuevas, nueva, farmacia, la farmacia, que lleguen, lleguen, caja, en casa, aqui, conmigo, hoy, ayer, para medirme, para medir, todas, ya, de prueba, dinero para",
    "broken": "roto, rota, se rompio, rompio, se descompuso, descompuesto, descompuesta, se dano, dano, danado, danada, no funciona, no sirve, no prende, no enciende, no trabaja, no jala, no anda, dejo de funcionar, fallo, falla, fallando, se murio, murio, muerta, muerto, se malogro, malogrado, se arruino, se apago, no lee, da error, marca error, me da error, sin pila, sin pilas, sin bateria, se quedo sin pila, se quedo sin pilas, se quedo sin bateria, descargado, descargada, se descargo, sin carga, se mojo, se cayo, se me cayo, se echo a perder, averiado, averiada, no responde, no sirvio, se chingo, se jodio, se fregó, esta malo, esta mala, malo, error, se trabo, esta fallando, bloqueado",
    "battery": "pila, pilas, bateria, baterias, carga, corriente",
    "mislaid": "deje, lo deje, la deje, olvide, se me olvido, se me quedo, quedo, se quedo, perdi, se perdio, se me perdio, sali sin, vine sin, me vine sin, me sali sin, no encuentro, no lo encuentro, no traje, no traigo, no tengo, no traje conmigo, extravie, me robaron, robaron, preste, esta, sin, no cargo, no lleve, no llevo, no ando con, lejos de, tengo, olvidado",
    "place": "en casa, casa, en la casa, en el trabajo, trabajo, en el carro, en el coche, en el auto, en la oficina, en mi cuarto, en la bolsa, en el bolso, en la mochila, conmigo, a la mano, en la escuela, en otra bolsa, en casa de, mi mama, mi hermana, mi hija, hotel, en el hotel, en el bus, en el taxi, aqui, arriba, abajo, donde, lo puse, esta, agua, al agua, en el agua, maleta, en la maleta, mi bolso, cama",
    "sore": "duele, me duele, me duelen, duelen, lastimado, lastimados, adolorido, adoloridos, dolor, no me sale sangre, no sale sangre, sin sangre, moretones",
    "busy_with": "manejando, en una reunion, en el trabajo, ocupado, ocupada, en misa, en clase, en la calle, trabajando, en el bus, de viaje, en la escuela, en el cine, fuera de casa, cansada, cansado, muy cansado, muy cansada",
}

ABSENT_SPANISH: Final[Mapping[str, Block]] = {
    concept: Block(block) for concept, block in _BLOCKS_SPANISH.items()
}
