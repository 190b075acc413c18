"""The words on the picture of a week, in Spanish."""

from bot.entries import MealName
from bot.glucose.pairs import Status
from bot.picture import Legend
from bot.words.picture import PictureSentences

PICTURE = PictureSentences(
    title="Su semana: {dates}",
    title_so_far="Semana hasta ahora: {dates}",
    days=("lun", "mar", "mié", "jue", "vie", "sáb", "dom"),
    months=(
        "ene",
        "feb",
        "marzo",
        "abril",
        "mayo",
        "junio",
        "julio",
        "ago",
        "sept",
        "oct",
        "nov",
        "dic",
    ),
    dates="{first} al {last} de {last_month}",
    dates_two_months="{first} de {first_month} al {last} de {last_month}",
    meal_names={
        MealName.BREAKFAST: "Desayuno",
        MealName.LUNCH: "Almuerzo",
        MealName.DINNER: "Cena",
        MealName.SNACK: "Merienda",
    },
    activity="{activity}",
    activity_minutes="{activity}, {minutes} min",
    other_tests="Otras",
    before_goal="meta antes: {low} a {high}",
    after_goal="meta después: menos de {high}",
    legend=Legend(
        before="antes de comer",
        after="dos horas después",
        outside="fuera de su meta",
        lone="otras pruebas",
        activity="actividad",
        uncounted="no cuenta",
    ),
    notes={
        Status.NO_AFTER: "sin segunda prueba",
        Status.ATE_AGAIN: "comió otra vez antes de la prueba",
        Status.OFF_TIME: "segunda prueba a los {minutes} min",
        Status.AROUND_LOW: "cerca de un valor bajo",
        Status.OFF_SCALE: "fuera de la escala",
        Status.NO_BEFORE: "sin prueba antes",
    },
    still_open="falta la segunda prueba",
    doubtful="{value}?",
    doubtful_note="? no es seguro, y no cuenta",
    unconfirmed="un valor aún no es seguro",
    food_working="la comida aún hacía efecto",
    cautions={
        "emergency": "señales de emergencia",
        "very_low": "muy bajo",
        "low": "bajo",
        "very_high": "muy alto",
        "high": "alto",
        "two_days_very_high": "muy alto dos días seguidos",
        "repeated_high": "alto otra vez, llame a su equipo de salud",
        "repeated_low": "bajo otra vez, llame a su equipo de salud",
        "symptoms": "señales de valor bajo o alto",
    },
    caution="Aviso: {caution}",
    caution_times="Aviso: {caution}, {count} veces",
    empty="Esta semana no hay pruebas. Está bien. Una prueba antes de comer y otra dos horas "
    "después es un buen comienzo.",
    empty_so_far="Aún no hay pruebas esta semana. Una prueba antes de comer y otra dos horas "
    "después es un buen comienzo.",
    more='y {count} líneas más: escriba "registro" para verlas todas',
)
