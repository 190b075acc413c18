"""What a sign's words may be said of besides a body: things, beasts and pictures that shake, blur
or faint; and what is always one's own. From memory, in both languages."""

# ruff: noqa: SIM905 - word sets read best as one string

from typing import Final

from bot.parser.vocabulary import packed

#: Never ill as a person is: `the table is wobbly`, `the market collapsed`.
THINGS: Final = packed(
    """
    combine jeepney tuk rickshaw mrt lrt maxi minibus steering handlebars conveyor forklift crane batting innings signboard signpost billboard stall kiosk cars greenhouse veranda porch handle kettle scaffold copier photocopier telly tele deckchair hammock bunk swing trampoline canopy awning pergola carport pavilion wardrobe cupboard bookcase shelving mixer blender drill saw generator pump compressor mower strimmer sewing pans pot pots shed sheds barn garage meter meters monitor table tables chair chairs stool bench shelf shelves ladder fence gate door doors wall roof
    ceiling floorboards bridge footbridge scaffold scaffolding tent marquee gazebo tower pole post
    mast house building lift elevator escalator machine dryer dishwasher fridge freezer fan boiler
    engine motor wheel wheels tyre tyres car van lorry truck minibus coach bus tram train plane aeroplane flight
    boat ship ferry bike bicycle scooter pram trolley cart tractor mower drill window windows
    windscreen laptop computer phone mobile app website internet wifi signal connection network
    line server power electricity battery batteries grid lights light lamp bulb candle torch
    screen camera lens printer radio speaker mic microphone ink print text font economy market
    markets stock stocks shares price prices sales business company bank currency pound peso naira
    team deal plan plans government league defence match game traffic cake souffle jelly sponge
    numbers digits letters sound siren alarm beeping scales
    tea coffee soup brew tooth crown denture filling plant plants flower flowers roses tree trees
    lawn grass garden soil field fields crop crops beans peas lettuces cabbages courgettes strawberries tomatoes seedlings hedge maize earth weather
    temperature temperatures tide river road song film movie show joke story excuse alibi argument
    start onions onion cheese mesa silla escalera puente edificio casa ventana ventanas puerta
    techo lavadora licuadora motor carro coche camion camioneta autobus tren avion barco bici
    bicicleta moto celular telefono compu computadora internet senal luz luces bateria pila
    pantalla camara impresora economia mercado peso precio precios equipo pastel gelatina planta
    plantas flor flores rosas arbol pasto jardin tierra diente
    """.split()
)
#: Shaken, thirsty or sick as they may be, they are not the participant.
BEASTS: Final = frozenset(
    """
    goat goats sheep cow cows pig pigs horse horses hen hens puppy puppies cat cats dog dogs whippet kelpie collie terrier lab labrador spaniel poodle greyhound lurcher husky mutt pup pups pups moggy kitty kitten kittens tomcat ewe ewes ram tup lamb lambs heifer bullock bull mule rooster cockerel duck ducks geese budgie gerbil lizard snake hamsters dog dogs puppy cat cats horse horses cow cows goat goats sheep hens chickens pig pigs bird
    parrot rabbit hamster goldfish fish calf pony donkey tortoise perro perra perrito gato gata
    caballo vaca gallina gallinas pollito pajaro conejo
    """.split()
)
#: Blurred and misty for everybody; a telly or a page may be so for one's own eyes.
PICTURES: Final = frozenset(
    """
    picture pictures photo photos pic pics image images video videos camera lens screenshot selfie
    scan xray printout recording cctv webcam selfie film clip poster stream zoom text message voice reception windscreen window windows weather morning mirror
    foto fotos imagen video camara ventana parabrisas espejo mensaje
    """.split()
)
#: One's own body, mind, clothes, sugar and days: no stranger to oneself.
OWN: Final = packed(
    """
    body bodies head heads heid face cheek cheeks hair neck shoulder shoulders arm arms elbow elbows
    hand hands wrist wrists palm palms finger fingers thumb chest breast back spine waist side sides
    hip hips belly tummy stomach gut guts leg legs thigh thighs knee knees calves shin shins ankle
    ankles foot feet toe toes heel skin scalp forehead brow eye eyes ear ears nose mouth lip lips
    tongue throat gums jaw chin heart pulse heartbeat lungs breath breathing muscles muscle bones
    bone joints nerves nerve blood brain mind oxter oxters armpits pits limbs limb tootsies pegs pins
    sight eyesight vision view hearing balance grip gait walk walking step steps hold voice speech words
    writing handwriting typing texting thinking thoughts memory mood feeling feelings sensation self
    myself rest inside insides everything everythings thing things bit lot one ones part parts
    half health condition state energy strength symptoms symptom sign signs shakes sweats sweat
    shaking sweating dizziness trembling thirst hunger headache headaches attack spell turn episode
    sugar sugars glucose bg bs bgl level levels reading readings number numbers result results count
    hypo low lows high highs urine pee wee bladder spit saliva mouthfeel appetite
    shirt tshirt top vest clothes pyjamas pajamas pjs nightie sheets sheet bed bedding pillow blouse
    dress trousers jumper socks underwear bra mattress duvet towel
    day days morning afternoon evening night today yesterday tonight week weeks time times hour hours
    minute minutes now moment room world ground floor surroundings problem issue reason worst trouble
    cuerpo cabeza cara cuello hombro hombros brazo brazos mano manos muneca dedo dedos pecho espalda
    cintura lado barriga panza estomago vientre pierna piernas rodilla rodillas pie pies piel frente ojo
    ojos oido boca labio labios lengua garganta corazon pulso musculos huesos nervios sangre mente vista
    vision voz habla camisa ropa pijama sabanas cama almohada blusa azucar glucosa nivel niveles sed
    dia manana tarde noche cosa cosas parte mitad mareo temblor sudor orina presion letra letras
    todo todos alma animo
    """.split()
)
