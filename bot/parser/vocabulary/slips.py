"""Slips in words on which much hangs, too short for a slip to be told by likeness; and longer
words that are looked for with a slip in them, since they tell what a number is.

Words of four letters have too many neighbours, so that each slip stands here by itself; whoever
adds one sees that no other word is spelt so (`pedo`, `fain`). All made up here, no source.
"""

# ruff: noqa: SIM905 - word sets read best as one string

_SLIPS = {
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
    "water": "watr waer wter",
    "vomit": "vmit vomt",
    "smell": "smel",
    "belly": "bely blly",
    "peeing": "peing",
    "meter": "mter metr metter",
    "about": "abot aout",
    "after": "afer afte atfer",
    "night": "nght nigt ngiht niht",
    "hours": "hurs huors hous",
    "wrong": "wrng wong wrog",
    "walking": "wlaking",
    "pulse": "pules pusle",
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
    "sweaty": "swety swetty",
    "thirsty": "thisty thisrty thirtsy thristy thirsy",
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

#: Words of their own that sound like one of a sign.
SOUND_LIKE_SIGNS = frozenset(
    "breath past crashing dripping dropping fighting dolores colapse".split()
)

#: Words of signs that are looked for by their sound, by language; the first of several wins.
SOUNDED = {
    "en": (
        "unconscious unresponsive collapsed collapsing collapse fainted fainting faint faints "
        "blacked dizzy dizziness giddy seizure seizures convulsing convulsion convulsions fitting "
        "shaking shaky trembling trembles tremble tremors jittery wobbly sweating clammy "
        "thirsty thirst blurred blurry blurring fuzzy vomiting vomited vomit breathe breathing "
        "breathless gasping swallow slurring slurred slurs speech droopy drooping dropped drooped "
        "paralysed confused confusion drowsy lightheaded palpitations numbness urinating tongue "
        "stomach headache twitching wheezing choking passed acetone squeezing crushing tightness "
        "disoriented delirious hallucinating vision weakness strength"
    ).split(),
    "es": (
        "desmayo desmaye desmayada desmayado desmayarme convulsion convulsiones convulsionando "
        "mareo mareada mareado mareos tiemblo tiembla tiemblan temblando temblor temblores sudo "
        "sudando sudores debil borroso borrosa vista vision veo vomito vomitando vomite vomitos "
        "inconsciente pecho respirar respiro respiracion confundido confundida trago tragar "
        "aliento acetona boca torcida brazo hormigueo orino orinando orinar sed sediento sedienta "
        "cabeza barriga estomago panza palpitaciones hambre hipoglucemia ahogo asfixia"
    ).split(),
}
