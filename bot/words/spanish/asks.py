"""What waits for an educator and comes due for them, in Spanish."""

from bot.words.asks import AskSentences

ASKS = AskSentences(
    step_waits="{who} ya tiene pruebas para el siguiente paso: {step}. Son posibles valores bajos "
    "o cetonas, o no se sabe, así que le espera a usted. Puede bajar más la glucosa. Escriba "
    '"{command} {id}" si es seguro para esa persona.',
    released="Autorizado: {step}. {who} decide cuándo darlo.",
    release_last="{who} ya dio todos los pasos.",
    release_not_needed="{who} no necesita autorización: no son posibles valores bajos ni cetonas. "
    "Da el siguiente paso cuando quiere.",
    release_held="{who} tuvo un valor bajo, o uno desde 300 (16.7), en los últimos siete días. El "
    "siguiente paso ({step}) puede bajar más la glucosa. ¿Lo autoriza de todos modos?",
    fewer_wait="{who}: {within} de las últimas {of} pruebas completas están en las dos metas. "
    "Quizá ya baste medir {rhythm}. Son posibles valores bajos o cetonas, o no se sabe, así que le "
    'espera a usted. Escriba "{command} {id}" si está de acuerdo.',
    fewer_released="Autorizado: medir {rhythm}. Le pregunto a {who}, que decide.",
    fewer_last="{who} ya mide solo con comidas nuevas. No hay menos que eso.",
    fewer_not_needed="{who} no necesita autorización: yo le pregunto cuando la mayoría de sus "
    "pruebas están en sus metas.",
    fewer_held="Las pruebas de {who} aún no lo aconsejan: cinco de las últimas seis en las dos "
    "metas, dos semanas del programa, y una semana sin un valor bajo ni uno desde 300 (16.7). "
    "¿Autoriza medir {rhythm} de todos modos?",
    visit="{who} lleva dos semanas midiendo. Por favor, llámele o véale: qué sirvió, qué sigue, "
    "cuántas tiras necesita. Va con esto la página para la consulta. Nadie vigila este chat día y "
    "noche.",
    visit_not_shared="{who} entró hace dos semanas, y no comparte sus valores con usted. Por "
    "favor, llámele o véale: cómo va, y qué sigue.",
    set_by="{day}: {goals} (por {by})",
    set_at_joining="{day}: {goals} (al entrar)",
    you="usted",
    goals_since="Las metas hasta ahora:",
    me='Su código personal es {id}. Le escribo {hours}. {deputy} Escriba "horario", "suplente", o '
    "un idioma por su nombre, para cambiar eso.",
    deputy_is="Su suplente es {deputy}.",
    deputy_asked="Le pidió a {deputy} que sea su suplente, y aún no respondió.",
    deputy_none="No tiene suplente.",
    hours_now="Le escribo {hours}. Para cambiarlo escriba días y horas, así: horario lun-vie 8-16.",
    export_head="{who}: el registro entero en archivos, para una hoja de cálculo (CSV), para otros "
    "programas (FHIR, JSON) y para imprimir. Sus propios mensajes no están. Guárdelo como una "
    "historia clínica.",
    chatter_words=frozenset(
        {"gracias", "muchas gracias", "ok", "bien", "bueno", "perfecto", "entendido", "hola"}
        | {"buenos días", "buenos dias", "buenas tardes", "\N{THUMBS UP SIGN}"}
    ),
    chatter='Aquí estoy. "lista" muestra a quién mirar, "alertas" lo que está abierto.',
    language_name="Español",
    invite_language="¿Qué idioma lee: English o Español?",
    language_words=frozenset({"español", "espanol", "en español", "en espanol", "spanish"}),
    language_set="Ahora le escribo en español. Lo que leen sus participantes queda como ellos "
    "eligieron.",
    fast_waits="{who} pregunta por días de ayuno. Le espera a usted. Si es seguro para esa "
    'persona, escriba el primer y el último día, como en "{command} {id} {first} a {last}". Si no, '
    "por favor, llámele.",
    fast_how='Escriba el primer y el último día, como en "{command} {id} {first} a {last}", o '
    '"{command} {id} fin".',
    fast_set="Hecho: {who} ayuna del {first} al {last}. Le dije cuándo terminar el ayuno "
    "enseguida: con menos de 70 (3.9), desde 300 (16.7), o si se siente mal.",
    fast_ended="{who} ya no tiene días de ayuno.",
    fast_bounds="Los días de ayuno empiezan hoy o después y duran hasta 40 días. Escriba el "
    'primer y el último día, como en "{command} {id} {first} a {last}".',
    off_words=frozenset({"fin", "no", "ninguno", "terminar", "parar"}),
    fast_flag="días de ayuno del {first} al {last}",
)
