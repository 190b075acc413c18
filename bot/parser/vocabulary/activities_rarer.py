"""More of what the body does: games, work, care and exercises that `activities` does not name.

They are known, but never looked for in a word with a slip in it (`curling` is no misspelt
`curlings`, `poi` no slip of anything). Verbs of work with whatever they are done to stand in
`work`. Written for this project, from memory.
"""

from typing import Final

from bot.parser.vocabulary import Block
from bot.parser.vocabulary.activities import forms_with

#: plain, past, -ing, and what stands after them, as in `activities`.
_VERBS_WITH: Final = """
do did doing: {my|the|a} {post|paper|milk|delivery|newspaper|ward|security} round
do did doing: {my|the|a|our} {big|weekly|food|grocery|monthly} shop, {my|the|a} {grocery|water} run on foot
do did doing: {my |the |some |a few }{knee|hip|back|shoulder|leg|foot|ankle|balance|core|chair|seated|bed|gym|strength|rehab|neck|hand|arm} exercises
do did doing: {my |some |the |a bit of |a little |a spot of }{stretching|walking|running|jogging|swimming|cycling|dancing|digging|weeding|mowing|sweeping|mopping|dusting|tidying|ironing|raking|painting|decorating|diy|lifting|boxing}
do did doing: {my |the |some }{abs|core|arms|legs|reps|drills|crunches|circuits|burpees|kegels|floors|lawns|hedges}
get got getting: {my |a |some }{swim|run|exercise|workout|stretches|laps|walking|stretching} in
push pushed pushing: {the {mower|lawnmower|lawn mower|trolley|wheelbarrow|barrow|twins|baby|car}}
put put putting: {up {shelves|a fence|the fence|fences|curtains|a tent|the tent|wallpaper|a shed|the christmas tree|the decorations}}
set set setting: {up {the|my} {stall|market stall|chairs|tables|tent|hall|shop}}
drive drove driving: {the {tractor|combine|digger|cattle|sheep|cows}}
stand stood standing: {{at|behind} {the|my} {till|counter|stall|stove|machine|bench|checkout|bar}}
work worked working: {a {shift|double shift|night shift|day shift|long shift|double} {in|at|on} {the|a} {warehouse|factory|kitchen|ward|hospital|farm|site|restaurant|hotel|mill|shop|supermarket|care home}}
work worked working: {my shift on my feet, {at|in|on} {the|my} {allotment|stall|vineyard|orchard|rice field|warehouse|building site|site|stables|greenhouse|garden|farm|veg patch}}
give gave giving: {{the|my} {dog|kids|baby|twins|horse|house|floor|kitchen|bathroom|car} a {bath|wash|good clean|scrub|deep clean|mop}}
play played playing: {darts|snooker|pool|skittles|curling|rounders|croquet|bocce|polo|paintball|touch rugby|footy|rugby league|beach volleyball|wii sports|just dance}
play played playing: {{football|soccer|cricket|ball|catch|outside|basketball} with {the|my} {kids|grandkids|grandson|grandsons|son|sons|children|boys|girls|dog|nephews}}
ride rode riding: {{my|the} {scooter|tricycle|trike|mountain bike|cycle|donkey|pony}}
push pushed pushing: {my|the} {grandson|granddaughter|grandkids|kids|son|daughter} on the {swing|swings}
gather gathered gathering: {firewood|wood|sticks|stones|eggs}
beat beat beating: the {carpet|carpets|rug|rugs}
bow bowed bowing: 108 times
build built building: (a |the ){chicken coop|coop|deck|patio|pergola|bench|sandcastle|snowman|treehouse|kennel|wall|fence}
turn turned turning: over the {soil|bed|beds|vegetable patch|plot|garden}
spread spread spreading: {manure|compost|mulch|fertiliser|fertilizer|gravel}
round rounded rounding: up the {cattle|sheep|cows|horses|goats}
hit hit hitting: the (heavy )bag
take took taking: the long way (home|back)( on foot)
go went going: {up and down|up} the {hill|steps|stairs}
pull pulled pulling: in {the|my} nets
turn turned turning: the {compost|hay|soil}
cut cut cutting: {sugarcane|sugar cane|cane|reeds|bamboo|fodder|silage|bushes|branches|turf|peat}
feed fed feeding: (the |my ){chickens|hens|cows|calves|sheep|goats|lambs|stock|ducks|livestock}( and {collected|gathered} eggs)
clear cleared clearing: {the|my} {gutters|drains|path|drive|garage|attic|loft|shed|table|tables|land|bush}
lay laid laying: {a|the|some} {patio|path|carpet|floor|turf|slabs|tiles|flooring}
assemble assembled assembling: {a|the|my} {wardrobe|bed|shed|bookcase|desk|cot|crib|table}
deliver delivered delivering: {parcels|leaflets|letters|newspapers|the papers|the post|packages|food on my bike}
fix fixed fixing: (the |a |my ){fence|fences|roof|gate|wall|path}
carry carried carrying: {sand|cement|stones|gravel|concrete|tiles|furniture|mud}
"""

_NOUNS: Final = """
samba, samba class, forro, forro class, capoeira class, {aerobics|pilates|zumba|yoga|salsa|karate|judo|fitness|dance|gym|circuits|tai chi|qigong|stretch|keep fit
  bhangra|ballet|ballroom|swim|swimming|rowing|climbing|kickboxing|taekwondo|boxing|footy|touch
  kapa haka|waka ama|poi|cheer} {class|session|practice|training|lesson|workout|rehearsal|drills}
{touch|tag|walking|street|beach|wheelchair|gaelic|aussie rules} {rugby|football|footy|cricket|soccer|tennis|volleyball}
{roller|ice|inline|figure} skating, golf, curling, archery, darts, snooker, {ten pin|10 pin|tenpin} bowling
skittles, rounders, croquet, fencing practice, sparring, shadow boxing, shadowboxing, tabata, trx
hiit, spin, keep fit, boxercise, bodypump, body pump, aqua walking, water walking, pool walking, planking
side plank, step ups, high knees, mountain climbers, wall push ups, chair squats, knee lifts, knee raises
ankle pumps, ankle circles, leg raises, leg extensions, leg curls, toe raises, toe taps, shoulder rolls, neck rolls
arm raises, sit stands, bicep curls, kettlebell swings, pull downs, heel slides, clamshells, bridges on the mat
{knee|hip|back|shoulder|leg|foot|arm|hand|ankle|balance|breathing|neck|core|radio|chair based|otago|vestibular|resistance band} exercise(s)
radio taiso, sepak takraw, parkour, hopscotch, hula hooping, kite flying, skateboarding, {morning|park} stretches
{hot|gentle|bed|mat|morning|hatha|vinyasa|prenatal|senior|seniors} {yoga|pilates}
pranayama, asanas, namaz, salah, salat, prostrations, parikrama, pilgrimage walk
{praise|church|worship|traditional|folk|street|modern|country|latin|bollywood|afro|barn|square|sword|belly|ballroom|tribal|african|highland} {dance|dancing}
{hill|forest|bush|city|nature|cliff|river|beach|town|woodland|coastal|moor|mountain|family|group|charity|sponsored|mall|treadmill|power|recovery|gentle|pram|buggy} {walk|run|hike|ramble}
hard labour, labouring, construction work, building work, site work, scaffolding, lawn care, landscaping
house painting, car wash, deep clean, deep cleaning, spring clean, office cleaning, room cleaning
{cleaning|housekeeping|kitchen|factory|ward|nursing|waitressing|bar|nursery|delivery|retail} shift on my feet
cleaning job, ironing pile, shift on the ward, shift at the {warehouse|factory|restaurant|shop|mill|hospital}
{1|2|3|4|5|a few} loads of {washing|laundry}, moving boxes, lifting boxes, loading trucks, unloading trucks, stocking shelves
tidying up, tidying the {house|garage|garden|attic|shed}, {garage|attic|loft|shed} clear out
tobacco picking, cane cutting, wood cutting, hay baling, silage making, sheep shearing, fruit packing, milking the cows
cattle work, yard duty, stable work, horse work, rice harvesting, weeding the {garden|farm|field|plot|maize}
{carrying|rocking|bathing|walking} the {baby|twins|toddler}, trampolining with the kids, park with the {kids|grandkids|dog}
walking with {my|the} {frame|walker|stick|crutches|cane|rollator}, wheelchair laps, walking practice, hand cycling
exercises {in bed|in my chair|in the chair|at the sink|with the band|lying down|from the physio}
couch to 5 k( week {1|2|3|4|5|6|7|8|9})
"""

#: Said of something that is over, whole.
_DONE: Final = """
{just in|in|just home|home|just back in} from {a|my|the|a long|a short|a wee|a quick} {walk|stroll|run|jog|swim|hike|bike ride|ride|wander|workout|cycle}
{back|home|just back|got back|just got back|just in|just home} from {pilates|aqua|karate|judo|boxing|spin|hiking|cycling|hockey|rugby|netball
  tennis|badminton|golf|bowls|bowling|parkrun|the allotment|line dancing|physio|rehab|practice|jogging|running|foraging
  milking|walking the dog|walking the dogs|taking the dog out|the park with {the dog|the kids|the grandkids}|a round of golf}
{walk|run|swim|gym|yoga|zumba|workout|exercise|exercises|steps|stairs|dance|stretches|physio|pilates|jog|bike ride
  hike|class|gardening|housework|cleaning|laps|squats|treadmill|tai chi|chores|ironing|hoovering|sweeping
  weeding|parkrun} {finished|completed|over|all done|is done|complete}
moved house, waitressed( a {double|single|long} shift), been {boxing|bowling|hiking|ironing|hoovering|mopping|dusting|weeding|planting|mowing|raking|painting|decorating
  skating|skiing|surfing|rowing|paddling|training|climbing|stretching|skipping|chopping wood|moving furniture
  carrying boxes|at the gym|at zumba|at yoga|at pilates|at training|on the treadmill|on my bike|at the allotment
  running around after {the kids|the grandkids|toddlers}|shovelling snow|milking|mucking out|walking the dog}
"""

#: As `ACTIVITIES`: the past is over, what is going on only with a length beside it.
RARER_ACTIVITIES: Final = Block(
    "\n".join(
        (
            *(form for _, *forms in forms_with(_VERBS_WITH) for form in forms),
            _NOUNS,
            _DONE,
        )
    )
)

#: As `RARER_ACTIVITIES`, in Spanish (Spain and the Americas).
RARER_ACTIVITIES_SPANISH: Final = Block(
    """
    {barri|trapee|limpie|fregue|pinte|arregle|ordene|recogi} {la casa|mi casa|el patio|la cocina|el bano|los banos
      el garaje|la cochera|el techo|los vidrios|las ventanas|los cuartos|el cuarto|la azotea|el corral|la terraza}
    {lave|planche|tendi|colgue|doble} {las cortinas|las sabanas|los trastes|los platos|la camioneta|la moto|las camas}
    {pode|regue|corte|desyerbe|desmalece|chapee|machetee} {el jardin|las plantas|las rosas|los arboles|el cesped|el pasto
      el zacate|las flores|la hierba|el solar|el huerto|la huerta|cana|la cana|lena|los setos}
    {sembre|coseche|plante|pizque|recogi|corte|desgrane} {maiz|frijol|frijoles|papa|papas|cafe|tomate|tomates|arroz|aceituna|aceitunas
      uva|uvas|chile|calabaza|algodon|fruta|manzanas|naranjas|hortalizas|verduras|arboles}
    {ordene|arree|pastoree|esquile} {las vacas|vacas|las cabras|las ovejas|el ganado|los borregos}
    {di de comer|eche de comer} a {los animales|las gallinas|los cerdos|las vacas|los pollos|los caballos}
    {pique|raje|parti|junte|recogi} lena, {cargue|descargue|acarree|subi|movi|empuje} {muebles|los muebles|cajas|ladrillos|arena|bultos|costales|el carro
      la carretilla|cemento|garrafones|el camion}
    {fui|fuimos|vine} {al|a la} {mercado|tienda|escuela|trabajo|parque|iglesia|super|centro|farmacia} {a pie|caminando|andando}
    {saque|sacamos} a pasear {al perro|a la perra|a los perros|al bebe}, {pode|corte} {el rosal|los rosales|el arbol}
    {hice|hicimos|haciendo} {quehacer|el quehacer|bici|bicicleta|spinning|eliptica|caminadora|cinta|terapia|fisioterapia|fisio|mi rutina|la rutina|mis ejercicios
      los ejercicios|mis estiramientos|crossfit|boxeo|natacion|calistenia|hiit|planchas|remo|baile|tareas del hogar|labores de la casa
      labores del campo|bricolaje|una caminata|un paseo|la compra a pie|trabajo de campo|senderismo}
    {fui|fuimos|vine|volvi|regrese|llegue|vengo} {a|de} {nadar|bailar|correr|trotar|caminar|pasear|la piscina|la alberca|yoga|zumba|pilates
      entrenar|clase de {baile|zumba|yoga|pilates}|jugar {futbol|tenis|padel|basquetbol|voleibol}|andar en bici|la milpa|la huerta|la terapia
      sembrar|cosechar|la caminata}
    {fui|fuimos|vine|volvi|regrese|me fui|llegue|baje|subi} {caminando|a pie|andando|corriendo|en bici} {a|al|hasta|de|del|por} {la tienda|la escuela|el trabajo|trabajo|mercado
      la iglesia|misa|super|la casa|casa|parque|centro|pueblo|rio|la plaza|la farmacia|banco|la clinica|la playa}
    {jugue|jugamos|jugando} {al {tenis|padel|baloncesto|basquet|voleibol|golf|ping pong|badminton|escondite|boliche}|golf|futsal|rugby|petanca|boliche
      futbol con {mis hijos|mi hijo|los ninos|mis nietos|los amigos}|con {mi nieto|mi nieta|mi hijo|mi hija|los chicos|mi perro}}
    {practique|entrene|entrenamos} {boxeo|karate|judo|natacion|danza|yoga|futbol|tenis|basquet|remo|pilates}
    {corretee|persegui|cargue|bane} {a mi nieto|a mi nieta|al nino|a la nina|al bebe|a los ninos|a mis nietos|al perro}
    {empuje} {la silla de ruedas|el cochecito|la carriola}
    {estuve|estuvimos|he estado} {caminando|corriendo|bailando|nadando|trotando|barriendo|limpiando|trapeando|sembrando|cosechando|regando|podando
      planchando|cargando {cajas|agua|lena|muebles}|haciendo {ejercicio|limpieza|yoga|zumba|quehacer|el quehacer|deporte}|de pie todo el dia
      jugando {futbol|con los ninos|con mis nietos}|lavando {ropa|el carro}|pintando {la casa|la pared|el cuarto}|subiendo y bajando escaleras}
    trabaje {en {la obra|la construccion|la parcela|el taller|la bodega|la cosecha|el invernadero|la vina|el olivar|la zafra|el cafetal}|de {albanil|jardinero|cargador}}
    {caminata|ejercicio|ejercicios|gimnasio|gym|yoga|zumba|rutina|paseo|terapia|pilates} {lista|listo|hecha|hecho|terminada|terminado|completada|cumplida|hechos|listos}
    {termine|acabe|ya termine|ya acabe} {mi rutina|la rutina|mis ejercicios|de barrer|de limpiar|de trapear|de trotar|de planchar|de entrenar|la limpieza|los quehaceres|el quehacer
      mi clase de {zumba|yoga|baile|pilates}|el gimnasio|el entrenamiento|de pintar|de podar|de regar}
    camino, corro, nado, bailo, troto, marcha nordica, estiramientos, calistenia, crossfit, kickboxing, patinaje, senderismo, escalada, vuelta en bici, paseo en bici, cabalgata
    kayak, surf, tenis, tenis de mesa, ping pong, badminton, baloncesto, balonmano, beisbol, petanca, fulbito, futsal, picadito, plancha abdominal
    zancadas, burpees, trabajo de campo, labores del campo, faena, aquaerobic, ejercicios de kegel, ejercicios de {rodilla|piernas|brazos|espalda|cadera|equilibrio}
    """
)
