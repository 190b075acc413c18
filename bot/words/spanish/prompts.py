"""Prompts and notes in Spanish."""

from bot.words.prompts import PromptSentences

PROMPTS = PromptSentences(
    before_meal="Ya casi es hora de su comida principal. Lave y seque sus manos, y mida. "
    "Mándeme el número y qué hay en su plato.",
    before_meal_again="Aquí está su recordatorio. Mida antes de comer. "
    "Mándeme el número y qué hay en su plato.",
    after_meal="Pasaron dos horas desde {meal}. Por favor, mida ahora y mándeme el número.",
    after_meal_again="Todavía hay tiempo para medir después de {meal}: hasta las {until}. "
    'Si esta vez no puede, escriba "omitir".',
    after_activity="{activity}, terminó a las {end}: ¿qué muestra su medidor ahora?",
    discreet="Ya es hora. Por favor, escríbame cuando pueda.",
    go_on="Hace unos días que no sé de usted, y no pasa nada. "
    "¿Le sigo preguntando todos los días, una vez por semana o nunca?",
    go_on_buttons=("todos los días", "una vez por semana", "nunca"),
    away="No pude leer mensajes por más de un día. Puede faltar lo que mandó. "
    "Por favor, mande otra vez los números a los que no respondí.",
    teaching=(
        "Un consejo para hoy: lave sus manos con agua y séquelas antes de medir. "
        "Un poco de fruta en el dedo puede dar un número muy alto.",
        "Un consejo para hoy: pinche el lado de la punta del dedo. Ahí duele menos.",
        "Un consejo para hoy: mire la fecha de sus tiras. Guárdelas en su tubo cerrado.",
        "Un consejo para hoy: las dos horas cuentan desde el primer bocado.",
        "Un consejo para hoy: use solo sus propias lancetas. Nunca use una de otra persona.",
        "Un consejo para hoy: ponga las lancetas usadas en una caja dura con tapa. "
        "Pregunte en su clínica dónde llevarla.",
    ),
)
