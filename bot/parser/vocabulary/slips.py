"""Slips in words on which much hangs, too short for a slip to be told by likeness; and longer
words that are looked for with a slip in them, since they tell what a number is.

Words of four letters have too many neighbours, so that each slip stands here by itself; whoever
adds one sees that no other word is spelt so (`pedo`, `fain`). All made up here, no source.
"""

# ruff: noqa: SIM905 - word sets read best as one string

_SLIPS = {
    "shaky": "saky shky shakky shayky skaky",
    "shake": "shke shakke",
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
    "thirsty": "thisty thisrty thirtsy thristy thirsy",
    "light": "liht ligt lihgt",
    "urine": "urne uine urie",
    "woozy": "wooy woozzy",
    "twice": "twie tiwce",
    "pecho": "pcho peho peco",
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
