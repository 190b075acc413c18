"""Slips in words on which much hangs, too short for a slip to be told by likeness; and longer
words that are looked for with a slip in them, since they tell what a number is.

Words of four letters have too many neighbours, so that each slip stands here by itself; whoever
adds one sees that no other word is spelt so (`pedo`, `fain`). All made up here, no source.
"""

# ruff: noqa: SIM905 - word sets read best as one string

_SLIPS = {
    "and": "adn nad",
    "not": "nto",
    "help": "hlep hepl",
    "stop": "stpo",
    "this": "ths thsi tihs",
    "fish": "fsh fihs",
    "have": "ahve hvae",
    "what": "waht",
    "sorry": "sory sorrry srory",
    "shaky": "saky shky shakky shayky skaky",
    "shake": "shke shakke",
    "fainted": "faintd",
    "dropped": "dropt dropd",
    "instead": "insted instad insteed",
    "faint": "fint fant fiant",
    "dizzy": "dzzy dizy dizz dizzzy",
    "giddy": "gidy gddy",
    "sweat": "swet sweatt",
    "chest": "cest ches chet chst chets",
    "breath": "breth bretth",
    "breathing": "brething",
    "smells": "smels smeels",
    "really": "realy relly",
    "swallow": "swalow swolow swallo",
    "woken": "woen wokn wken",
    "fruit": "frut fuit fruitt frute fruite froot",
    "water": "watr waer wter wota wotter",
    "vomit": "vmit vomt",
    "smell": "smel",
    "belly": "bely blly",
    "peeing": "peing",
    "meter": "mter metr metter meeter meater",
    "about": "abot aout abowt abaut abuot",
    "after": "afer afte atfer",
    "night": "nght nigt ngiht niht",
    "hours": "hurs huors hous owrs",
    "wrong": "wrng wong wrog rong wronge",
    "walking": "wlaking warking wolking wawking",
    "pulse": "pules pusle puls",
    "units": "unts uints",
    "years": "yeas yers yaers",
    "going": "ging goig gong",
    "ache": "ake ayk",
    "tongue": "tung tounge tonge",
    "heart": "hart haert",
    "head": "hed",
    "words": "wurds werds wrds",
    "come": "cum",
    "veo": "beo",
    "sweaty": "swety swetty swettie swetti",
    "thirsty": "thisty thisrty thirtsy thristy thirsy firsty fersty fursty thersty thurstie tirsty thurstee",
    "light": "liht ligt lihgt",
    "urine": "urne uine urie",
    "woozy": "wooy woozzy",
    "twice": "twie tiwce",
    "pecho": "pexo pcho peho peco",
    "mucha": "mcha muha muca muxa",
    "mucho": "mcho muho muxo",
    "dolor": "dlor dolr",
    "duele": "duee dule",
    "puedo": "pueo",
    "sudor": "sdor",
    "mareo": "mreo maero",
    "doble": "dble",
    "fruta": "futa frta",
    "desde": "dese dede desdde",
    "orino": "orno oino orrino",
    "panza": "paza",
    "antes": "ates anes atnes",
    "despues": "despuse dspuse",
    "luego": "lueo",
    "horas": "hroas hras",
    "menos": "menso",
    "tenia": "tennia",
    "marido": "mardo",
    "curry": "curri cury",
    "very": "verry vrry",
    "every": "evry evrey evary",
    "half": "haf harf hafl",
    "minutes": "minits minuts minnits minites mintues minets minnutes",
    "minute": "minit minnit",
    "toilet": "toylet toilit toilett toylit",
    "double": "dubble dubel dabel",
    "hurts": "hertz hurtz herts hurtes",
    "pain": "payn pian payne",
    "breathe": "breeve",
    "able": "abel",
    "nail": "nale nayl",
    "hypo": "hypoe hipoe hypow",
    "still": "stil",
    "cold": "cowld",
    "again": "agen agin agane agian",
    "says": "sayz sez",
    "vomiting": "womiting womitting vommiting",
    "stinks": "stinx",
    "walked": "warked wolked wakled walkt wawked",
    "walk": "wark warlk wawk wolk",
    "climbed": "climed clymbed",
    "bed": "bedd",
    "now": "nau",
    "face": "fase fayce",
    "wake": "wayke wak wayk",
    "fit": "fitt",
    "drooping": "druping",
    "pizza": "pitsa piza peetsa",
    "apple": "appel aple",
    "soup": "soop",
    "lettuce": "letuce lettus letus",
    "chicken": "chiken chikin chickin chikn",
    "potatoes": "potatos pottatoes potatose",
    "potato": "potatoe pottato patato",
    "vegetables": "vegtables vegatables vegitables vegtebles",
    "sandwich": "sandwhich sanwich samwich sandwitch sandwic",
    "tomato": "tomatoe",
    "tomatoes": "tomatos tomatose",
    "spaghetti": "spagetti spageti sphagetti",
    "omelette": "omlet omlette omelet",
    "broccoli": "brocoli brocolli broccolli",
    "cereal": "cerial cereel seriel",
    "biscuits": "biskits biscits biskets",
    "biscuit": "biskit biscit",
    "yoghurt": "yogart yoghert yogert",
    "lasagne": "lasanya lasagnia lazanya lasange",
    "sausage": "sosage sossage sausige sausge",
    "sausages": "sosages sossages sausiges",
    "noodles": "noodels nudles noodls",
    "cheese": "cheeze chese chees",
    "beans": "beenz benas",
    "banana": "bananna bannana banan",
    "porridge": "porrige poridge porige",
    "salad": "sallad salid sald",
    "chocolate": "choclate choclit chocolat chocolte",
    "juice": "jusse jooce joos juce",
    "coffee": "cofee coffe koffee cofe",
    "bread": "breadd braed",
    "rice": "ryce rcie riec",
    "summary": "sumary sumery sumarry summery",
    "please": "pleez pleeze pleaze pleas pleese",
    "goals": "gowls gols goles goasl gaols",
    "pause": "pawz paus pawse pasue puase",
    "messages": "mesages messiges mesiges massages",
    "message": "mesage messige",
    "next": "nextt nexst nex",
    "undo": "undoo undu",
    "ignore": "ignor",
    "last": "larst lasst",
    "delete": "deleat delet deleet",
    "skip": "skipp skp skpi sikp",
    "test": "tesst tset",
    "strips": "stripz stripps",
    "left": "lefd",
    "broken": "brokin brocken brokken",
    "took": "tooke",
    "pill": "pil pilll",
    "thanks": "thanx fanks thanxs thnaks thansk tahnks",
    "nights": "nites",
    "box": "boks",
    "should": "shoud shuld shood",
    "neighbour": "nayber naybour",
    "know": "kno",
    "where": "wher",
    "would": "woud",
    "could": "coud",
    "because": "becuase becos becouse",
    "breakfast": "brekfast brekky breckfast breakfst brekfist",
    "lunch": "lunsh lucnh",
    "dinner": "dinna dinnner",
    "supper": "suppa",
    "voy": "boi",
    "veces": "beses",
    "cada": "kada",
    "rato": "rrato",
    "borra": "vorra",
    "necesito": "nesesito nececito",
    "ayuda": "alluda",
    "hora": "ora",
    "hoy": "oy",
    "hice": "ise",
    "front": "frunt",
    "gonna": "gona gunna",
    "shaking": "shacking shakeing",
    "feel": "feal feell fele",
    "loads": "lods",
    "times": "tims tymes",
    "vision": "vishun vishon vizion visoin",
    "settings": "setings settins",
    "good": "gud",
    "evening": "evning evenin",
    "ago": "agow",
    "cabbage": "cabage cabbige",
    "fried": "fryed",
    "plantain": "plantin plantane",
    "brunch": "brunsh",
    "pancakes": "pankakes pancaks",
    "mareado": "mariado",
    "mareada": "mariada",
    "read": "reed",
    "usual": "usal ushual",
    "nothing": "nuthing",
    "yesterday": "yestarday yesturday yestaday",
    "today": "tody toady todai",
    "friend": "freind frend",
    "sugar": "suger shuger sugr shugar",
    "reading": "reeding readin",
    "number": "numbr nummer",
    "finished": "finisht finshed",
    "garden": "gardin gardn",
    "gardening": "gardning",
    "bicycle": "bycicle",
    "exercise": "excercise exersise exercize",
    "medicine": "medecine medisin",
    "insulin": "insuline insalin inslin",
    "tablet": "tablit",
    "tablets": "tablits",
    "metformin": "metphormin metaformin",
    "doctor": "docter docta",
    "nurse": "nerse",
    "hospital": "hospitle",
    "ambulance": "ambulence amblance",
    "emergency": "emergancy emergensy",
    "weight": "wieght weigt",
    "pressure": "presure preasure",
    "stomach": "stumach stumak stummick stomak",
    "trembling": "tremberling trembelling trembeling",
    "right": "rite",
    "brazo": "braso",
    "thirst": "thurst thrist",
}

#: Words of their own that are meant as others behind certain words: typed, meant, behind what.
_BESIDE = (
    ("me", "my", "forgot left lost broke before after"),
    ("our", "hour", "an half"),
    ("jim", "gym", "the at"),
    ("ate", "eight", "point"),
    ("super", "supper", "before after b4 my had having for"),
    ("owt", "out", "pass pas passed past passing black blak blacked blak fell"),
    ("al", "all", "at thirsty weeing peeing shaky"),
    ("pane", "pain", "stomach stumick chest belly tummy back bad"),
    ("panes", "pains", "stomach stumick chest belly tummy bad"),
    ("fante", "faint", "feel feeling feelin felt"),
    ("dizi", "dizzy", "im am is hes shes feel feeling feelin felt bit so very was"),
    ("meh", "me", "send give show gimme tell get"),
    ("aft", "afternoon", "this yesterday"),
    ("hippo", "hypo", "had having feel feeling going"),
    ("thursday", "thirsty", "very so really always im am feeling feel super mad"),
    ("wok", "walk", "a"),
    ("week", "weak", "gone feels feel feeling felt very so went suddenly"),
)

#: Slips in one language that are words in another.
SLIPS_AT_HOME = {
    "en": {"hipo": "hypo"},
    "es": {
        "toy": "estoy", "ta": "esta", "almorse": "almorce", "sene": "cene",
        "aroz": "arroz", "hera": "era", "xfa": "porfa", "muxo": "mucho", "muxa": "mucha",
        "ise": "hice", "boi": "voy", "oi": "hoy", "asucar": "azucar",
    },
}  # fmt: skip

BESIDE = {
    (before, typed): meant for typed, meant, behind in _BESIDE for before in behind.split()
}

#: What is typed, and the word that is meant by it.
SLIPS = {slip: word for word, slips in _SLIPS.items() for slip in slips.split()}

#: By language.
WATCHED = {
    "en": (
        "neighbour neighbours neighbor neighbors cousin cousins husband brother sister mother father "
        "friend friends daughter grandma grandad grandpa uncle auntie colleague partner minutes minute "
        "hours quarter quarters units tablets years pounds scoops slices yesterday monday "
        "tuesday wednesday thursday friday saturday sunday morning afternoon evening midnight steps "
        "miles price number house phone pressure pulse typed"
    ).split(),
    "es": (
        "marido esposo esposa hermano hermana vecino vecina amiga amigo madre padre abuela abuelo "
        "suegra primo prima unidades pastillas minutos horas anoche lunes martes miercoles jueves "
        "viernes sabado domingo manana tarde cuarto pasos gramos presion precio mediodia"
    ).split(),
}

#: Slips that phrases of signs hold as they are typed, by the word that other phrases hold:
#: `test_by_sound` makes them anew.
_WITHIN_SIGNS = {
    "blurred": "blured blurrd bluured",
    "blurry": "blury",
    "borrosa": "borosa",
    "borroso": "borozo",
    "breathe": "breeth brethe",
    "breathing": "breathin breething",
    "breathless": "breathles",
    "choking": "chokin",
    "clammy": "clammie clamy",
    "collapsed": "colapsed",
    "confused": "confusd confussed confuzed cunfused konfused",
    "confusion": "confussion",
    "convulsion": "convulcion convulshun convultion",
    "convulsiones": "convulciones",
    "convulsions": "convultions",
    "delirious": "delirius",
    "desmaye": "desmalle",
    "desmayo": "desmallo",
    "disoriented": "disorianted",
    "dizziness": "diziness dizzines dizzyness",
    "dizzy": "dissy disy diziy dizy dizzey dizzi dizzie dizzzy",
    "drowsy": "drousy drowsey drowzy",
    "faint": "faintd fant faynt",
    "fainted": "fanted",
    "fruity": "frooty fruitty fruty",
    "gasping": "gaspin",
    "giddy": "gidy",
    "hipoglucemia": "hipoglusemia",
    "inconsciente": "inconciente",
    "palpitations": "palpatations",
    "paralysed": "paralyzed",
    "passed": "pasd pased passd",
    "seizure": "ceizure seazure seezure seisure seizur siezure sizure",
    "seizures": "ceizures seazures seezures seisures seziures sezures siezures sizures",
    "shaking": "shakin shakking",
    "shaky": "shakey shaki shakie shakky",
    "slurred": "slurd slured slurrd",
    "slurring": "sluring",
    "smells": "smels",
    "speech": "speach",
    "stomach": "stomache",
    "swallow": "swalow",
    "sweating": "sweeting swetting",
    "thirsty": "thirstey thursty",
    "tremors": "tremours",
    "unconscious": "unconcious unconscius uncounscious",
    "unresponsive": "unresponsiv",
    "vomitando": "bomitando",
    "vomite": "bomite",
    "vomited": "vomitted vommited",
    "vomiting": "vomitin vomitting vommiting",
    "vomito": "bomito",
    "wobbly": "wobbley wobly",
}
WITHIN_SIGNS = {slip: word for word, slips in _WITHIN_SIGNS.items() for slip in slips.split()}

#: Words of their own that sound like one of a sign.
SOUND_LIKE_SIGNS = frozenset(
    "breath past crashing dripping dropping fighting dolores colapse".split()
)

#: Words of signs that are looked for by their sound, by language; the first of several wins.
SOUNDED: dict[str, dict[str, None]] = {
    "en": dict.fromkeys(
        (
        "unconscious unresponsive collapsed collapsing collapse fainted fainting faint faints "
        "blacked dizzy dizziness giddy seizure seizures convulsing convulsion convulsions fitting "
        "shaking shaky trembling trembles tremble tremors jittery wobbly sweating clammy "
        "thirsty thirst blurred blurry blurring fuzzy vomiting vomited vomit breathe breathing "
        "breathless gasping fruity smells swallow slurring slurred slurs speech droopy drooping dropped drooped "
        "paralysed confused confusion drowsy lightheaded palpitations numbness urinating tongue "
        "stomach headache twitching wheezing choking passed acetone squeezing crushing tightness "
        "disoriented delirious hallucinating vision weakness strength"
    ).split()
    ),
    "es": dict.fromkeys(
        (
        "desmayo desmaye desmayada desmayado desmayarme convulsion convulsiones convulsionando "
        "mareo mareada mareado mareos tiemblo tiembla tiemblan temblando temblor temblores sudo "
        "sudando sudores debil borroso borrosa vista vision veo vomito vomitando vomite vomitos "
        "inconsciente pecho respirar respiro respiracion confundido confundida trago tragar "
        "aliento acetona boca torcida brazo hormigueo orino orinando orinar sed sediento sedienta "
        "cabeza barriga estomago panza palpitaciones hambre hipoglucemia ahogo asfixia"
    ).split()
    ),
}
