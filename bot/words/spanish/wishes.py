"""Fasting days, a shared phone, the weekly summary and what the educator releases, in Spanish."""

from bot.words.wishes import WishSentences

WISHES = WishSentences(
    released_note="Su educador dice que el siguiente paso es seguro para usted: {step}. Escriba "
    '"siguiente paso" cuando lo quiera dar.',
    fewer_released_note="Su educador dice que ya le basta medir {rhythm}. ¿Le pido pruebas "
    "{rhythm} desde ahora?",
    fast_set_note="Su educador dice que usted puede ayunar del {first} al {last}. Mida como antes: "
    "medir no rompe el ayuno. Termine el ayuno enseguida con menos de 70 (3.9), desde 300 (16.7), "
    "o si se siente mal. Esos días no le pregunto antes de su comida principal. Escríbame cuando "
    "coma, y le pregunto dos horas después.",
    fast_ended_note="Su educador terminó sus días de ayuno. Por favor, coma como siempre, y "
    "llámele si tiene preguntas.",
    fast_words=(
        "días de ayuno",
        "dias de ayuno",
        "mes de ayuno",
        "estoy ayunando",
        "estoy en ayuno",
        "voy a ayunar",
        "quiero ayunar",
        "pienso ayunar",
        "puedo ayunar",
        "debo ayunar",
        "empiezo a ayunar",
        "ramadán",
        "ramadan",
        "yom kipur",
    ),
    fast_end_words=(
        "dejo de ayunar",
        "terminar mi ayuno",
        "termino mi ayuno",
        "fin del ayuno",
        "ya no ayuno",
        "rompí el ayuno",
        "rompi el ayuno",
        "no estoy ayunando",
    ),
    fast_asked="Hable con su equipo de salud antes de ayunar. Le dicen si es seguro para usted. Le "
    "pregunto ahora a su educador, y le escribo cuando lo diga. Hasta entonces, coma como siempre.",
    fast_ask="Hable con su equipo de salud antes de ayunar. Le dicen si es seguro para usted. "
    "Hasta entonces, coma como siempre.",
    fast_stands="Su educador acordó que usted ayune del {first} al {last}. Medir no rompe el "
    "ayuno. Termínelo enseguida con menos de 70 (3.9), desde 300 (16.7), o si se siente mal.",
    fast_over="Bien. Ya no tiene días de ayuno.",
    fast_none="Aquí no tiene días de ayuno.",
    fast_caution="Está ayunando: termine el ayuno ahora.",
    fast_caution_helper="La persona está ayunando: el ayuno termina ahora.",
    discreet_words=frozenset(
        {
            "discreto",
            "modo discreto",
            "avisos discretos",
            "comparto mi teléfono",
            "comparto mi telefono",
            "comparto el teléfono",
            "comparto el telefono",
            "otros leen mi teléfono",
            "otros leen mi telefono",
            "teléfono compartido",
            "telefono compartido",
        }
    ),
    normal_words=frozenset(
        {
            "no discreto",
            "avisos normales",
            "avisos completos",
            "no comparto mi teléfono",
            "no comparto mi telefono",
            "ya no comparto mi teléfono",
            "ya no comparto mi telefono",
        }
    ),
    discreet_begins='Desde ahora mis avisos no nombran comida, prueba ni número: "Ya es hora." Lo '
    "que le respondo sí lleva sus números, y una advertencia dice qué hacer. Para tener otra vez "
    'los completos, escriba "avisos normales".',
    discreet_ends="Mis avisos dicen otra vez qué hacer.",
    week_words=frozenset({"resumen", "resumenes", "grafica", "grafico", "informe", "termina"}),
    week_fillers="a ahora al cada cambia cambiar cambie de del desde dia el en envia enviar envie "
    "es favor hora la las llegue los manda mandar mande me mejor mi mover mueva nuevo para pon "
    "ponga por prefiero puede puedo que quiero quisiera recibir sea semana semanal su un una "
    "venga y",
    week_set="Desde ahora su resumen de la semana llega el {day} a las {at}.",
    week_next="El próximo: {date}, {at}.",
    strips_words=("cuántas tiras", "cuantas tiras", "cuánto me duran las tiras"),
    strips_left="Quedan {left} tiras, si cada prueba gastó una.",
    strips_unknown='Dígame cuántas tiras tiene, por ejemplo "50 tiras". Entonces las cuento.',
    waking="Una vez por semana ayuda una prueba al despertar: mañana, antes de comer. Escríbala "
    'así: "ayunas 104".',
)
