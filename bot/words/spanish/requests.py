"""Answers to requests, in Spanish."""

from bot.entries import Step
from bot.words.requests import RequestSentences

REQUESTS = RequestSentences(
    help="Puede escribirme:\n"
    '- una prueba y una comida: "118 antes, arroz y frijoles"\n'
    '- la prueba de dos horas después: "154"\n'
    '- lo que hizo: "caminé 20 min"\n'
    '- un error: "perdón, 162", "no arroz, pan" o "deshacer"\n'
    '- "resumen", "registro", "metas", "siguiente paso", "50 tiras"\n'
    '- "pausa", "parar", "exportar", "borrar"\n'
    '- "sin educador": su educador ya no ve su registro\n'
    "No sé nada de su medicina. Nadie vigila este chat día y noche. "
    "¿Se siente muy mal? Llame a su número de emergencias.",
    stopped='Ya no le escribo. Su registro queda. Escriba "reanudar" para seguir, o "borrar" para '
    "borrar todo. Si manda un valor muy bajo o muy alto, le aviso igual.",
    paused='Pauso mis recordatorios y la gráfica de la semana. Escriba "reanudar" cuando los '
    "quiera de vuelta.",
    resumed="Qué bueno que volvió. Mis recordatorios siguen.",
    goals="Sus metas: {low} a {high} {unit} antes de comer, y menos de {after} {unit} dos horas "
    "después. Su equipo de salud puede fijar otras.",
    goals_unjudged="Ahora sus metas las fija su equipo de salud. Por favor, llame. "
    "Guardo sus números y no los juzgo.",
    record_head="Sus últimas comidas (antes, dos horas después):",
    record_line="{day} {at} {meal}: {before}, {after}",
    record_empty="Aún no hay nada en su registro. Mida antes de su próxima comida y mándeme el "
    "número.",
    record_missing="sin prueba",
    step_taken="Siguiente paso: {step}. {how}",
    step_waits="El siguiente paso: {step}. Su educador dice antes si es seguro para usted, "
    "porque puede bajar más su glucosa. Por favor, pregúntele.",
    step_last="Ya dio todos los pasos. Quédese con lo que le sirve.",
    step_how={
        Step.AS_USUAL: "Coma como siempre, y mida.",
        Step.LIGHTER_MEAL: "Deje las bebidas dulces. Sirva menos harinas, más verduras y más "
        "alimentos con proteína. Si sus riñones están enfermos, pregunte antes por la proteína a "
        "su equipo de salud.",
        Step.MEASURED_PLATE: "Use un plato más chico. Llene la mitad con verduras. La otra mitad "
        "es para harinas y alimentos con proteína, por partes iguales.",
        Step.MOVE_AFTER: "Muévase de diez a treinta minutos después de comer. Caminar basta.",
    },
    nights="Hasta el {day} le escribo también en su hora de silencio, si toca una prueba.",
    zone="Su reloj es ahora el de {zone}. Marca las {at}.",
    zone_unknown="No conozco ese lugar. Escriba una ciudad más grande con su misma hora: estoy en "
    "Lima ahora.",
    language="Le escribiré en español.",
    main_meal="Su comida principal es ahora a las {at}. Le escribiré un poco antes.",
    settings="Sus ajustes:\n"
    "- medidor: {unit}\n"
    "- reloj: {zone}\n"
    "- hora de silencio: {quiet_from} a {quiet_to}\n"
    "- resumen de la semana: {day}, {at}",
    settings_meal="- comida principal: {at}",
    settings_change='Para cambiarlos escriba "resumen el viernes a las 9:00", "estoy en Lima '
    'ahora", "noches esta semana" o "English".',
    later="Le preguntaré otra vez a las {at}.",
    too_late=(
        "Eso sería tarde: esta prueba cuenta hasta las {until}. Ya no se la pido otra vez. "
        "Si mide más tarde, mándeme el número igual."
    ),
    nothing_waits="Ahora no me falta una prueba. Le escribo cuando toque la próxima.",
    export="Aquí está todo lo que guardo de usted: su registro, y lo que nos escribimos en los "
    "últimos 30 días. Nadie más recibe lo que nos escribimos.",
    erase_question="¿Borro todo lo que guardo de usted, para siempre? Escriba sí para borrarlo.",
    erase_buttons=("sí", "no"),
    erase_yes=frozenset(
        {"sí", "si", "s", "sí, borrar", "sí borrar", "si borrar", "borrar", "sí, por favor", "ok"}
    ),
    erased="Todo está borrado. Para volver necesita un código nuevo. Le deseo lo mejor.",
    not_erased="No borré nada.",
    food_none="Aún no tengo una prueba suya con {food}. Para saberlo: mida antes de comerlo, coma "
    "lo de siempre y mida dos horas después del primer bocado.",
    food_unnamed="No puedo elegir por usted, pero sus pruebas sí. Mida antes de una comida y dos "
    "horas después: así sabré qué hizo.",
    food_mildest="No puedo elegir por usted, pero sus pruebas sí. El menor cambio primero, en "
    "{unit}: {meals}.",
    food_tests="{food}, {count} pruebas suyas. Cambio en {unit}: {rises}.",
    food_smaller="Puede probar con un trozo más chico, y ver.",
    not_glucose="Solo guardo lo que mide, come y se mueve. Lleve ese número a su clínica.",
    chatter="Estoy aquí para sus pruebas. Mande un número o lo que comió. O escriba: ayuda.",
    hunger="Una pregunta de la semana. Comparado con la semana pasada, ¿tiene hambre menos, igual "
    "o más?",
    tiredness="Gracias. ¿Y siente cansancio menos, igual o más?",
    how_buttons=("menos", "igual", "más"),
    how={
        "menos": "less",
        "igual": "same",
        "lo mismo": "same",
        "la misma": "same",
        "más": "more",
        "mas": "more",
    },
    answered="Gracias. Lo guardo junto a sus cifras.",
    go_on_yes="Bien. Sigo como antes.",
    go_on_weekly="Bien. Le pediré una prueba una vez por semana.",
    go_on_no='No le escribo hasta que usted me escriba. Con "reanudar" vuelven mis recordatorios.',
    risk_noted="Gracias. Lo tengo en cuenta.",
    risk_unknown="Está bien. Sigo con cuidado. Su equipo de salud lo sabe: por favor, pregunte.",
    strips_out="A su ritmo duran hasta cerca del {day}. Aparto {kept} para valores bajos y días de "
    "enfermedad.",
)
