"""The sentences of the week, in Spanish.

They share 120 words and a caption with the English ones, so that each is as short as it gets.
"""

from bot.entries import Step
from bot.glucose.height import Height
from bot.glucose.pairs import Status
from bot.programme.suggest import Try
from bot.words.spanish.picture import PICTURE
from bot.words.telling import DigestSentences

DIGEST = DigestSentences(
    picture=PICTURE,
    joining=frozenset(
        {"a", "al", "con", "de", "del", "e", "el", "en", "la", "las", "los", "o", "sin", "un"}
        | {"una", "y"}
    ),
    caution_opening=(
        "Primero, los avisos de la semana: {cautions}.",
        "Los avisos van primero. Esta semana: {cautions}.",
    ),
    caution_item="{caution} ({count})",
    caution_levels={
        "emergency": "señales de emergencia",
        "very_low": "valor muy bajo",
        "low": "valor bajo",
        "very_high": "valor muy alto",
        "high": "valor alto",
        "two_days_very_high": "muy alto dos días seguidos",
        "repeated_high": "alto otra vez",
        "repeated_low": "bajo otra vez",
        "symptoms": "señales de valor bajo o alto",
    },
    care_team={  # the most pressing first
        "emergency": "Si aún no lo hizo, llame hoy a su equipo de salud.",
        "very_low": "Si aún no lo hizo, llame hoy a su equipo de salud.",
        "very_high": "Si aún no lo hizo, llame hoy a su equipo de salud.",
        "two_days_very_high": "Si aún no lo hizo, llame hoy a su equipo de salud.",
        "repeated_low": "Llame esta semana a su equipo de salud.",
        "repeated_high": "Llame esta semana a su equipo de salud.",
        "symptoms": "Cuéntelo esta semana a su equipo de salud.",
        "low": "Cuéntelo esta semana a su equipo de salud.",
        "high": "Si sigue alto por un día, llame a su equipo de salud.",
    },
    so_far="Su semana hasta ahora.",
    all_within=(
        "{count} pruebas completas, y todas dentro de su meta. Bien hecho por medir.",
        "Cada una de sus {count} pruebas completas quedó en su meta. Gracias por medir.",
        "Midió {count} comidas, y todas quedaron en su meta.",
    ),
    tested_pairs=(
        "{count} pruebas completas: gracias por cada una.",
        "{count} pruebas completas: cada una enseñó algo.",
        "Hizo {count} pruebas completas. Bien hecho.",
    ),
    tested_pair=(
        "Una prueba completa: es un comienzo, gracias.",
        "Una prueba completa esta semana. Cuenta, gracias.",
    ),
    tested=(
        "Midió esta semana. Gracias por eso.",
        "Siguió midiendo esta semana. Eso cuenta.",
    ),
    empty=(
        "Esta semana no hay pruebas. Está bien.",
        "Una semana sin pruebas. Pasa, y la próxima es nueva.",
    ),
    empty_so_far=(
        "Aún no hay pruebas. Todavía hay tiempo.",
        "Nada todavía, y está bien.",
    ),
    goals=(
        "En su meta antes de comer: {before_within} de {before_of} ({low} a {high}). "
        "Dos horas después: {after_within} de {after_of} (menos de {after}).",
        "Antes de comer, {before_within} de {before_of} en su meta ({low} a {high}). "
        "Dos horas después, {after_within} de {after_of} (menos de {after}).",
    ),
    not_judged="Su equipo de salud fija sus metas, así que no juzgo.",
    range=("De {lowest} a {highest}.", "Mínimo {lowest}, máximo {highest}."),
    range_one="El valor: {value}.",
    off_scale="Fuera de la escala: {count}.",
    rose_apart=(
        "Más subió: {most}, {most_rise}. Menos: {least}, {least_rise}. "
        "Es más que el margen del medidor.",
        "{Most}: lo que más subió, {most_rise}. {Least}: lo que menos, {least_rise}. "
        "El medidor solo no da tanto.",
    ),
    rose_close=(
        "{Most}: {most_rise}. {Least}: {least_rise}. Muy cerca: una prueba, repita.",
        "{Most}, {most_rise}; {least}, {least_rise}. Están cerca: una prueba, repita.",
    ),
    rose_single=(
        "{Most}: {most_rise}. Es una prueba, repita.",
        "{Most}, {most_rise}: una prueba, repita.",
    ),
    rise="sube {change} ({before} a {after})",
    fall="baja {change} ({before} a {after})",
    no_change="sin cambio ({before} a {after})",
    effects_one=(
        "Actividad ({activity}): {change}, {scatter}.",
        "Tras la actividad ({activity}) {change}, {scatter}.",
    ),
    effects_many=(
        "Tras la actividad bajó {fell} de {count} veces, {most} como máximo. Más que el margen: "
        "{beyond}.",
        "Actividad: bajó {fell} de {count} veces, {most} como máximo. Más que el margen: {beyond}.",
    ),
    effects_none=(
        "Tras la actividad no bajó ({count} veces).",
        "Actividad: no bajó ({count} veces).",
    ),
    went_down="bajó {change}",
    went_up="subió {change}",
    stayed="quedó igual",
    beyond_scatter="más que el margen del medidor",
    within_scatter="dentro del margen del medidor",
    food_working=(
        "En {count} de sus actividades la comida aún hacía efecto: no digo el cambio.",
        "La comida aún hacía efecto en {count} de sus actividades: no digo el cambio.",
    ),
    steps={
        Step.AS_USUAL: "comidas de siempre",
        Step.LIGHTER_MEAL: "comidas ligeras",
        Step.MEASURED_PLATE: "platos medidos",
        Step.MOVE_AFTER: "moverse después",
    },
    compare_clear=(
        "{Later}: sube {later_rise} de media; {earlier}: {earlier_rise}. {difference} {direction}, "
        "más que el margen.",
        "De media, {later} sube {later_rise}; {earlier}, {earlier_rise}. {difference} {direction}, "
        "más que el margen.",
    ),
    compare_days=(  # more than the meter alone, but not more than this person's days
        "{Later}: sube {later_rise} de media; {earlier}: {earlier_rise}. {difference} {direction}, "
        "pero los días cambian.",
        "De media, {later} sube {later_rise}; {earlier}, {earlier_rise}. {difference} {direction}, "
        "pero los días cambian.",
    ),
    compare_open=(
        "{Later}: sube {later_rise} de media; {earlier}: {earlier_rise}. {difference} {direction}, "
        "aún no es claro.",
        "De media, {later} sube {later_rise}; {earlier}, {earlier_rise}. {difference} {direction}, "
        "aún no es claro.",
    ),
    less="menos",
    more="más",
    heights={
        Height.BEFORE: (
            "Empieza alto y las comidas suman poco: dígalo a su equipo de salud.",
            "El comienzo es alto, la comida suma poco. Dígalo a su equipo de salud.",
        ),
        Height.RISE: (
            "Empieza bien: decide lo que hay en el plato.",
            "Su comienzo es bueno: el plato hace la subida.",
        ),
        Height.BOTH: (
            "Empieza alto y el plato suma: dígalo a su equipo de salud.",
            "El comienzo y el plato suben: dígalo a su equipo de salud.",
        ),
    },
    trend_up="Tras comer fue subiendo unos {change} al día.",
    trend_down="Tras comer fue bajando unos {change} al día.",
    uncounted="No cuentan: {reasons}.",
    uncounted_reasons={
        Status.NO_AFTER: "{count} sin segunda prueba",
        Status.ATE_AGAIN: "{count} por comer otra vez",
        Status.OFF_TIME: "{count} a deshora",
        Status.AROUND_LOW: "{count} cerca de un valor bajo",
        Status.OFF_SCALE: "{count} fuera de la escala",
        Status.NO_BEFORE: "{count} sin primera prueba",
    },
    waiting="Segundas pruebas que faltan: {count}.",
    others="Otras pruebas: {count}.",
    answers="Usted dijo: {answers}.",
    answer_words={
        ("hunger", "less"): "menos hambre",
        ("hunger", "same"): "hambre igual que antes",
        ("hunger", "more"): "más hambre",
        ("tiredness", "less"): "menos cansancio",
        ("tiredness", "same"): "cansancio igual que antes",
        ("tiredness", "more"): "más cansancio",
    },
    suggestions={
        Try.TALK: (
            "Próxima semana: siga midiendo. Muestre antes esta semana a su equipo de salud.",
            "Próxima semana: mida como ahora, y hable de esta semana con su equipo de salud.",
        ),
        Try.GOALS_FIRST: (
            "Próxima semana: siga midiendo, y pida sus metas a su equipo de salud.",
            "Próxima semana: pida sus metas a su equipo de salud, y mida como le digan.",
        ),
        Try.FIRST_PAIR: (
            "Próxima semana: mida una comida antes y dos horas después. Un par dice qué hace.",
            "Pruebe una comida con las dos pruebas, antes y dos horas después: el par dice más.",
        ),
        Try.SECOND_TEST: (
            "Próxima semana: menos comidas, pero las dos pruebas. La primera sola dice poco.",
            "Próxima semana: elija comidas que pueda medir dos horas después. La segunda prueba "
            "dice qué hizo la comida.",
        ),
        Try.BEFORE_VALUES: (
            "Próxima semana: muestre a su equipo de salud los valores de antes de comer. Empiezan "
            "altos, y la comida suma poco.",
            "Diga a su equipo de salud qué tan alto empieza. La comida no es la causa principal.",
        ),
        Try.MORE_PAIRS: (
            "Próxima semana: {count} pruebas más en este paso, y así se ve claro.",
            "Próxima semana: siga en este paso por {count} pruebas más. Así puede verse claro.",
        ),
        Try.TEST_AGAIN: (
            "Próxima semana: mida {meal} otra vez, pues una prueba es una pista, no una nota.",
            "Próxima semana: mida de nuevo {meal}. Otra prueba dice si se repite.",
        ),
        Try.SMALLER: (
            "Próxima semana: {meal} con menos harinas y más verduras: pasó de su meta.",
            "Próxima semana: la mitad de harinas y más verduras con {meal}: pasó de su meta.",
        ),
        Try.MOVE: (
            "Próxima semana: camine diez minutos después de {meal}, pues pasó de su meta.",
            "Próxima semana: dé un paseo de diez minutos después de {meal}. Pasó de su meta.",
        ),
        Try.KEEP: (
            "Próxima semana: coma {meal} otra vez, pues le va bien hasta ahora.",
            "Próxima semana: siga con {meal}. Le va bien hasta ahora.",
        ),
        Try.NEW_FOOD: (
            "Próxima semana: mida una comida que le cause dudas. Así lo sabrá.",
            "Próxima semana: elija una comida que no conoce bien y mida.",
        ),
    },
    cannot_know=(
        "No puedo ver sueño, estrés, enfermedad ni medicina.",
        "Medicina, estrés, sueño y porciones no los puedo ver.",
        "Sueño, estrés, enfermedad y medicina no los puedo saber.",
    ),
    every_number='Todos los números: escriba "registro".',
)
