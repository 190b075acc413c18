"""Where somebody is or what keeps them while a reading is asked for: `whereabouts.py` reads them.
Written for this project, from memory."""

# ruff: noqa: SIM905 - word sets read best as one string

from typing import Final

from bot.parser.vocabulary import packed, phrases

#: Where and with whom one is kept from testing; behind `in`, `at`, `on`, `with`, `en`, `con`.
PLACES: Final = packed(
    """
    church mass service temple mosque synagogue gurdwara mandir masjid chapel prayer prayers meeting meetings
    interview class lecture lesson school uni university college exam exams test-centre training conference
    court work office shift duty job site factory farm field fields workshop kitchen market mall shop shops
    store supermarket bank queue line checkout salon barber hairdresser hairdressers cinema movie movies
    theatre theater concert show match game stadium gym pool pub bar restaurant cafe party wedding funeral
    burial wake graduation christening baptism ceremony parade festival bus train tube metro subway tram
    plane flight airport airplane aeroplane station ferry boat ship car van truck lorry taxi cab uber matatu
    danfo okada jeepney tricycle motorbike bike road highway motorway freeway traffic jam go-slow goslow
    hospital clinic surgery doctor doctors dentist dentists vet appointment ward theatre bed bath shower
    tub toilet bathroom loo library museum park beach campsite forest mountains village country town city
    phone call zoom line other-line holiday holidays vacation leave trip road outing stage set air campus
    customer customers client clients patient patients boss guests visitors company people friends family
    kids children grandkids baby neighbours neighbors students pupils class team colleagues inlaws in-laws
    keke okada bodaboda boda napep jeep rickshaw auto tuktuk physio therapist therapy carer centre center daycare
    middle rush hurry hotel embassy police ranch yard warehouse break lift elevator
    misa culto iglesia templo mezquita reunion junta clase clases escuela universidad examen curso trabajo
    oficina turno guardia obra fabrica finca campo mercado super supermercado tienda centro banco cola fila
    peluqueria cine teatro concierto partido estadio gimnasio fiesta boda funeral velorio entierro bautizo
    graduacion bus autobus camion micro colectivo metro tren avion vuelo aeropuerto carro coche auto taxi
    moto calle carretera camino trafico trancon taco tranque hospital clinica consulta medico doctor dentista
    cama ducha bano telefono llamada vacaciones viaje playa rio parque pueblo cliente clientes paciente
    pacientes jefe visita visitas gente amigos amigas familia ninos nietos nenes bebe alumnos vecinos medio
    tramite tramites notaria juzgado
    """.split()
)

#: What keeps one, without a place: `driving`, `teaching a class`.
DOING: Final = frozenset(
    """
    driving drivin teaching working workin praying studying travelling traveling shopping babysitting
    sleeping sleepin resting napping showering bathing commuting flying serving queuing queueing parking
    riding preaching singing fasting rehearsing presenting marking welding soldering milking fishing
    hosting minding feeding watching helping fixing nursing attending performing moving packing dressing visiting delivering operating
    manejando conduciendo trabajando estudiando rezando orando durmiendo descansando viajando comprando
    cuidando atendiendo banandome duchandome ensenando vendiendo cosechando cobrando
    """.split()
)

#: How one is kept: `busy`, `tied up`, `asleep`.
KEPT: Final = phrases(
    """
    busy, bsy, very busy, really busy, {kinda|kind of|sort of|a bit|bit|too|so|super|rather|quite} busy, swamped, slammed, {tied|caught|held} up, up to my {eyes|neck|ears}( in it)
    flat out, run off my feet, rushed off my feet, rushing, in a rush, in a hurry, occupied, engaged, my hands are full, hands full, snowed under, up the walls
    out for {a meal|food|tea|coffee|drinks|breakfast|brunch|lunch|dinner|supper}
    out, out {shopping|with friends|and about|of town|of the house|right now}, away, away from home, not home, not at home, abroad, offline, outdoors, outside
    having {a|his|her|my} {nap|lie down|sleep|rest|bath|shower}, asleep, in bed, {already|still|fast|sound} asleep, half asleep, {too|so|very|dead} {tired|sleepy|knackered|shattered|exhausted|lazy|late|cold}, knackered, shattered, exhausted, wiped out
    {gone|went|off|already gone|already went} to {bed|sleep}, {got|been|was} {distracted|sidetracked|held up|caught up|called away}, {got|been|was|am} called {in|into work|to work|away}, (the |my ){boss|manager|teacher} (is ){watching|here|around}, baby (is )asleep( on me), covered in {paint|mud|flour|grease|oil|soil|dough}, distracted, sidetracked, lost track, {too|bit|so|very} {embarrassed|shy}, embarrassed, not alone, no privacy
    {have|got|have got|had|we have|we had|expecting} {visitors|company|guests|people over|people round|family over|family round}, {visitors|guests|people|company} {here|around|over|round|about}, {too many|lots of|loads of} people( {here|around|about|watching}), nowhere {private|to sit|to go|to wash|to test|to do it}( my hands), no {water|soap}( {to wash|for hands|for washing})(( my) hands)
    (my ){hands|fingers} (are |is )(all |too |so |very ){dirty|wet|greasy|muddy|oily|filthy|full|covered|floury|soapy|sticky|not clean|bloody|in plaster|bandaged}, {no|not enough|cannot get} blood, {blood|it} {wont|isnt|not} {come out|come|coming|bleed|flow|flowing|coming out}
    {pharmacy|chemist|shop|drugstore|clinic} (is |was ){closed|shut|out of strips}, {time|2 hours|two hours} (has |have |is |already ){passed|gone|up|over}( already), over 2 hours now, (way )past the {2 hours|two hours|time}, {wrong|bad} time
    {got|have|having|had|in} (a |another |my ){meeting|class|call|appointment|exam|interview|lecture|funeral|wedding|deadline|shift}, (my )hands full( {carrying|holding|cooking|feeding|washing} {shopping|baby|kids|dishes|bags|food|the baby|the kids})
    ya me {acoste|dormi|meti a la cama}, se me {descargo|apago|murio|rompio|perdio|acabo}, me {marca|da|sale|salio|marco|dio} error( otra vez), estoy en cita
    (tengo |tenemos |hay )visitas, ocupado, ocupada, atareado, atareada, muy ocupado, muy ocupada, apurado, apurada, a las carreras, con prisa, {todavia|aun|ya} acostado, {todavia|aun|ya} acostada, dormido, dormida, cansado, cansada, muy cansado, muy cansada, agotado, agotada
    fuera, fuera de casa, de compras, de viaje, de guardia, de turno, de visita, lejos de casa, en la calle
    """
)

#: Nothing to test with, said of other things than the meter: power, phone, light.
OUTAGES: Final = phrases(
    """
    no {light|power|electricity|current|nepa|signal|network|service|data|wifi|internet|coverage}( {for|in|at|here|out|since|all|today|again}), {power|light|electricity|current|nepa} {is out|cut|went|has gone|is gone|gone|failure|outage|took light}, power cut, load shedding, loadshedding, brownout, blackout here
    (my |the )phone {was off|is off|died|was dead|was flat|was on silent|was charging|off|had died}, {it is|its|it's} charging, on charge, {it is|its|it's} on charge
    no hay {luz|corriente|electricidad|senal}, {se fue|se me fue|cortaron} la luz, sin {luz|corriente|electricidad|senal}, {el |mi |tenia el }celular {apagado|sin pila|descargado|muerto}, me quede sin {pila en el celular|celular|senal}
    """
)

#: Behind a preposition these are no place.
NO_PLACES: Final = packed(
    """
    last least most all once moment night nights noon midday midnight lunch dinner breakfast supper brunch
    tea rest ease risk meal meals start end home range pain love shock need danger trouble doubt theory
    general total fact green red zone mood mmol mg morning evening afternoon sec second seconds minute
    minutes mins min bit while hour hours day days week weeks month target insulin it this that them him her
    monday tuesday wednesday thursday friday saturday sunday time times first bedtime waking goal average
    control agony distress bits pieces tears spanish english case particular short full labour labor
    present sugar glucose reading readings level levels blood metformin food eating fasting diet keto steps
    loss panic hell heaven mind mess state half between
    ayunas casa rato momento manana noche tarde madrugada rango serio cuanto fin realidad espanol ingles
    general total meta metas dia semana almuerzo cena desayuno comida azucar glucosa verdad minutos minuto
    hora horas seguida breve peligro apuros coma dieta orden forma contra
    """.split()
)

#: Gerunds that tell of no hindrance: what is eaten, felt, tested or walked is the other finders'.
OTHER_GERUNDS: Final = frozenset(
    """
    eating having testing checking doing feeling getting going trying thinking asking starving sweating
    running walking waiting wondering planning hoping looking dying losing gaining taking drinking cooking
    seeing becoming being starting finishing coming telling saying texting sending calling needing wanting
    passing peeing weeing shaking vomiting bleeding hurting counting dancing jogging swimming cycling
    gardening cleaning exercising using learning leaving heading quitting stopping giving freezing boiling
    comiendo almorzando cenando desayunando midiendo midiendome caminando corriendo sintiendo sintiendome
    tomando bebiendo bajando subiendo sudando temblando esperando pensando haciendo yendo teniendo muriendo
    muriendome nadando bailando limpiando cocinando andando mejorando empeorando siendo dando buscando
    checando checandome probando preguntando intentando
    """.split()
)
