"""What an educator reads, in Spanish."""

from bot.caution.ladder import EducatorWhy
from bot.educator.alerts import Mark
from bot.educator.roster import Reason, Tier
from bot.entries import Step
from bot.words.educator import EducatorSentences, Wish

EDUCATOR = EducatorSentences(
    wishes={
        Wish.HELP: ("ayuda", "/help", "/start", "qué puede hacer", "que puede hacer"),
        Wish.ROSTER: ("lista", "/roster", "a quién mirar", "a quien mirar", "participantes"),
        Wish.ALERTS: ("alertas", "/alerts", "alertas abiertas"),
        Wish.SHOW: ("ver", "mostrar", "registro de", "registro", "sobre", "quién es"),
        Wish.MEALS: ("comidas de", "comidas"),
        Wish.CHART: ("gráfica de", "gráfica", "grafica de", "grafica"),
        Wish.PAGE: ("página de", "página", "pagina de", "pagina", "imprimir", "pdf", "consulta"),
        Wish.EXPORT: ("exportar", "archivos de", "archivos", "csv", "fhir"),
        Wish.STEPS: ("pasos de", "pasos"),
        Wish.GOALS: ("metas de", "metas para", "fijar metas de", "fijar metas", "meta", "metas"),
        Wish.LOW: ("bajo para", "bajo"),
        Wish.HIGH: ("alto para", "alto"),
        Wish.RELEASE: ("autorizar a", "autorizo a", "siguiente paso de", "autorizar"),
        Wish.FEWER: ("menos pruebas para", "menos pruebas a", "menos pruebas"),
        Wish.FAST: ("días de ayuno para", "ayuno para", "ayuno de", "ayuno"),
        Wish.PLAN: ("plan para", "plan de", "plan"),
        Wish.END_PLAN: ("terminar plan de", "terminar plan", "fin del plan de", "fin del plan"),
        Wish.NOTE: ("nota para", "nota a", "nota", "dígale a", "digale a", "mensaje para"),
        Wish.LABEL: ("apodo", "etiqueta", "nombre"),
        Wish.GROUP: ("grupo", "/group", "antes y después", "antes y despues"),
        Wish.INVITE: ("invitar", "/invite", "nuevo participante", "invitación", "invitacion"),
        Wish.ME: ("mi código", "mi codigo", "quién soy", "quien soy", "ajustes", "mis ajustes"),
        Wish.HOURS: ("mi horario", "horario", "trabajo"),
        Wish.DEPUTY: ("mi suplente es", "suplente es", "suplente"),
        Wish.NO_DEPUTY: ("sin suplente", "no tengo suplente", "quitar suplente"),
        Wish.ACCEPT: ("aceptar", "acepto"),
        Wish.DECLINE: ("rechazar", "rechazo"),
        Wish.SEEN: ("vista", "visto"),
        Wish.CALLED: ("llamada", "llamado", "llamé", "llame"),
        Wish.CLOSED: ("cerrada", "cerrado", "cerrar"),
        Wish.AWAY: ("ausente", "estoy ausente", "parar", "vacaciones"),
        Wish.BACK: ("volví", "volvi", "ya volví", "ya volvi", "regresé", "reanudar"),
        Wish.CANCEL: ("cancelar", "olvídelo", "olvidelo"),
    },
    leave=frozenset(
        f"{words} {whom}"
        for whom in ("educador", "educadora")
        for words in (
            "sin",
            "quitar",
            "quitar a mi",
            "no avise a mi",
            "no le diga a mi",
            "dejar a mi",
        )
    )
    | {"mi educador no puede ver esto", "mi educadora no puede ver esto"},
    left="Desde ahora su educador no ve nada suyo. Le digo que usted se fue, y nada más. Lo que "
    "ya leyó no lo puedo quitar. Yo sigo como antes. "
    "Para tener otra vez un educador necesita un código nuevo.",
    no_educator="Aquí usted no tiene educador, así que nadie ve lo que me escribe.",
    yes=frozenset({"sí", "si", "s", "sí, por favor", "acepto", "de acuerdo", "claro", "ok"}),
    no=frozenset({"no", "n", "no, gracias", "no gracias", "no acepto"}),
    unknown=frozenset({"no sé", "no se", "no lo sé", "no lo se", "desconocido", "?"}),
    yes_no=("sí", "no"),
    yes_no_unknown=("sí", "no", "no sé"),
    none_words=frozenset({"ninguno", "ninguna", "no", "nada", "omitir", "después", "nadie"}),
    cancel_button="cancelar",
    day_names={
        "lun": (0,),
        "mar": (1,),
        "mié": (2,),
        "mie": (2,),
        "jue": (3,),
        "vie": (4,),
        "sáb": (5,),
        "sab": (5,),
        "dom": (6,),
        "laborables": (0, 1, 2, 3, 4),
        "diario": (0, 1, 2, 3, 4, 5, 6),
        "todos": (0, 1, 2, 3, 4, 5, 6),
    },
    day_short=("lun", "mar", "mié", "jue", "vie", "sáb", "dom"),
    welcome="Le doy la bienvenida a Afterplate, como educador o educadora. Sus participantes miden "
    "antes de comer y dos horas después. Guardo su registro, les aviso enseguida de valores bajos "
    "y altos, y le muestro a quién mirar primero.\n"
    "Las reglas:\n"
    "- Le escribo solo en su horario de trabajo. Nadie vigila este chat día y noche, y sus "
    "participantes lo saben.\n"
    "- Una alerta no es una llamada de emergencia. Le digo enseguida al participante qué hacer. "
    "Usted le llama cuando pueda.\n"
    "- Usted ve solo a sus propios participantes, y solo mientras ellos acepten.\n"
    "- Nunca nombro una dosis, y no sé nada de la medicina de nadie. Deciden usted y el equipo de "
    "salud.\n"
    "- Lo que le muestro es para su atención. Tenga este teléfono bloqueado.",
    speed="Esto es un ensayo: mi reloj va {speed} veces más rápido que el suyo.",
    consent_question="¿Acepta estas reglas? Escriba sí o no.",
    declined="Está bien. No guardo nada. Su código sigue sirviendo si cambia de idea.",
    yes_or_no="Por favor, escriba sí o no.",
    zone="¿Qué ciudad marca su hora? Escriba una ciudad grande de su zona, como Lima o Bogotá.",
    zone_unknown="No conozco ese lugar. Escriba una ciudad más grande con su misma hora.",
    hours_question="¿Cuándo trabaja? Escriba días y horas, así: lun-vie 8:00-16:00.",
    hours_unknown="No entendí eso. Escriba días y horas, así: lun-vie 8:00-16:00.",
    hours_buttons=("lun-vie 8:00-16:00", "lun-vie 9:00-17:00"),
    deputy_question="¿Quién le suple si en 30 minutos no ha visto una alerta? Escriba el código "
    "personal de otro educador de este bot, o: ninguno.",
    joined="Ya está dentro. Su código personal es {id}; otro educador lo necesita para nombrarle "
    'suplente. Le escribo {hours}. Para empezar, escriba "invitar".',
    joined_again="Qué bueno que volvió. Sus participantes y ajustes están como antes, y ahora "
    "escribo a este chat, {hours}.",
    help="Puede escribirme:\n"
    '- "invitar": un código para un participante nuevo\n'
    '- "lista": a quién mirar primero, y por qué\n'
    '- "alertas"; luego "vista 3", "llamada 3", "cerrada 3"\n'
    '- un nombre o código: ese registro. También "comidas", "gráfica", "página", "pasos", '
    '"metas" con un nombre\n'
    '- "metas Ana 80-130 180", "bajo Ana 75", "alto Ana 220"\n'
    '- "autorizar Ana": el siguiente paso. "menos pruebas Ana": medir menos\n'
    '- "plan Ana": 14 días para valores altos que duran; "terminar plan Ana"\n'
    '- "ayuno Ana 2026-03-10 a 2026-03-19": días de ayuno; "ayuno Ana fin"\n'
    '- "nota Ana: nos vemos el lunes"\n'
    '- "apodo 7KQ Ana": su propia palabra para un participante\n'
    '- "grupo": antes y después, desde cinco personas\n'
    '- "horario lun-vie 8-16", "suplente" y un código, "sin suplente", "ausente", "volví"\n'
    "Nadie vigila este chat día y noche.",
    not_understood='No entendí eso. Escriba "ayuda" para ver qué puedo hacer.',
    private_only="Solo hablo en chats privados. No guardo nada de este grupo.",
    reads_text='Solo leo texto. Escriba "ayuda" para ver qué puedo hacer.',
    whom='¿Para quién? Agregue un nombre o un código, como en "{command} Ana".',
    who_is='No conozco a nadie llamado "{name}" entre sus participantes.',
    several='"{name}" puede ser más de un participante suyo. ¿Cuál? {ids}.',
    not_shared="{who} no comparte sus valores con usted. Puede mandar una nota, fijar metas y "
    "autorizar pasos.",
    for_whom="Para quién es: una persona adulta con diabetes tipo 2, sin embarazo ni planes de "
    "embarazo. No es para diabetes tipo 1, diálisis, un trastorno de la alimentación, una "
    "enfermedad aguda ni pérdida de peso con cetonas. Tiene un medidor, y acepta por sí misma al "
    "entrar.",
    for_whom_question="¿Es lo adecuado para esta persona? Escriba sí o no.",
    not_for_them="Entonces no hay código. Por favor, atienda a esa persona de otra manera.",
    same_as_last="¿Lo mismo que la última vez: lugar, unidad, idioma, emergencias ({last})?",
    invite_zone="¿Dónde vive? Escriba una ciudad grande de su zona horaria. La de usted: {zone}.",
    invite_unit="¿Qué muestra su medidor?",
    unit_buttons=("mg/dL", "mmol/L", "que lo diga"),
    invite_meal="¿A qué hora es su comida más grande? Escriba una hora como 13:00, o: que lo diga.",
    ask_them=frozenset(
        {"que lo diga", "que lo digan", "pregúntele", "preguntele", "varía", "varia", "no sé"}
        | {"no se"}
    ),
    ask_them_button="que lo diga",
    meal_unknown="No entendí la hora. Escríbala como 13:00, o: que lo diga.",
    invite_lows="¿Puede bajar demasiado su glucosa: insulina, o pastillas que pueden causarlo? No "
    "saberlo cuenta como sí.",
    invite_ketones="¿Tiene riesgo de cetonas: insulina, una medicina SGLT2, cetonas antes, o "
    "posible diabetes tipo 1? No saberlo cuenta como sí.",
    invite_special="¿Vale algo de esto? Límite de líquidos; acarbosa (entonces solo la glucosa "
    "sirve para un valor bajo); un ayudante que puede escribir por la persona. Escriba todo lo que "
    "valga, o: ninguno.",
    special_buttons=("ninguno", "límite de líquidos", "acarbosa", "ayudante"),
    fluid_words=("líquido", "liquido"),
    acarbose_words=("acarbosa", "miglitol"),
    helper_words=("ayudante", "cuidador", "familia", "hij", "niet", "espos", "marido", "mujer"),
    special_unknown="Por favor, escriba límite de líquidos, acarbosa, ayudante (o más de uno), o: "
    "ninguno.",
    invite_number='¿A qué número de emergencias llama? Escríbalo, o: ninguno, y digo "número de '
    'emergencias de su zona".',
    number_unknown="Por favor, escriba un teléfono como 911, o: ninguno.",
    invite_label="Una palabra para que usted le reconozca, que solo usted ve: un nombre o "
    "iniciales. O: ninguno.",
    invited="El código es {code}. Sirve una vez, por 14 días. Déselo así: escriba /start {code} a "
    "este bot. Le pregunto lo que usted dejó abierto, y si acepta.",
    invited_link="O este enlace: {link}",
    cancelled="No se hizo nada.",
    nothing_to_cancel="No hay nada abierto.",
    somebody_joined="{who} entró con su código. {shares}",
    somebody_left="{who} se fue, o ya no comparte nada con usted. Su registro queda cerrado para "
    "usted.",
    alert="Alerta {number}: {who}, {why}.{what}, {at} (su reloj).",
    alert_to_deputy="Nadie ha visto una alerta del educador {educator}: participante "
    "{participant}, {why}, {at}. Usted es el suplente. Su registro no está abierto para usted: "
    "busque al educador o a la clínica, y vea que alguien llame al participante.",
    alert_whys={
        EducatorWhy.EMERGENCY: "emergencia",
        EducatorWhy.VERY_LOW: "muy bajo",
        EducatorWhy.OFF_SCALE: "fuera de la escala del medidor",
        EducatorWhy.UNANSWERED: "bajo, y sin prueba nueva desde entonces",
    },
    alert_told_them={
        EducatorWhy.EMERGENCY: "Le dije enseguida que llame al número de emergencias. Por favor, "
        "llámele.",
        EducatorWhy.VERY_LOW: "Le dije enseguida qué hacer. Por favor, llámele.",
        EducatorWhy.OFF_SCALE: "Le dije enseguida qué hacer. Por favor, llámele.",
        EducatorWhy.UNANSWERED: "Le dije qué hacer y pedí dos veces una prueba nueva. Por favor, "
        "llámele.",
    },
    nobody_watches="Nadie vigila este chat día y noche.",
    alert_marks="Escriba: vista {number}, llamada {number} o cerrada {number}.",
    missed="Alertas de fuera de su horario, de hace más de un día: {count}. Nadie vigila este chat "
    'día y noche. Escriba "alertas" para verlas.',
    alerts_none="No hay alertas abiertas. Nadie vigila este chat día y noche.",
    alerts_head="Alertas abiertas, las más nuevas primero. Nadie vigila este chat día y noche.",
    alert_line="{number}. {who}: {why}, {at}, {state}",
    alert_state={"unseen": "aún sin ver", "seen": "vista", "called": "con llamada"},
    marked={
        Mark.SEEN: 'La alerta {number} queda como vista. Escriba "llamada {number}" cuando llame.',
        Mark.CALLED: "La alerta {number} queda con llamada. Escriba "
        '"cerrada {number}" cuando esté resuelta.',
        Mark.CLOSED: "La alerta {number} está cerrada.",
    },
    mark_which='¿Cuál? Escriba su número, como en "vista 3". "alertas" las muestra.',
    mark_unknown='No conozco esa alerta. "alertas" muestra las abiertas.',
    seen_by_deputy="Su suplente {deputy} marcó la alerta {number}: {mark}.",
    roster_empty='Aún no tiene participantes. Escriba "invitar" para un código.',
    roster_head="Sus participantes: {count}. A quién mirar primero:",
    tiers={
        Tier.SAFETY: "SEGURIDAD",
        Tier.SILENCE: "EN SILENCIO",
        Tier.PROGRESS: "AVANCE",
        Tier.WELL: "NADA QUE SEÑALAR",
        Tier.CLOSED: "NO COMPARTEN VALORES",
    },
    whys={
        Reason.VERY_LOW: "muy bajo, {count} en dos semanas, el último el {last}",
        Reason.TWO_LOWS: "{count} valores bajos en siete días, el último el {last}",
        Reason.VERY_HIGH_TWO_DAYS: "300 (16.7) o más dos días seguidos, el último el {last}",
        Reason.KETONE_SIGNS: "señales que pueden ser de cetonas, la última el {last}",
        Reason.HIGH_BEFORE_MEALS: "mediana antes de comer {value} en dos semanas",
        Reason.NO_PAIRS: "ningún par completo en una semana, el último: {last}",
        Reason.STUCK: "{count} de las últimas 6 pruebas sobre la meta, la última el {last}",
        Reason.STRIPS: "se acaban las tiras, quedan {count}",
        Reason.STEP_WAITS: "el siguiente paso espera su autorización",
        Reason.FEWER_WAITS: "medir menos espera su autorización",
    },
    never="nunca",
    roster_line="{who}: {why}",
    more='{left} más: escriba "{command} {page}".',
    more_button="{command} {page}",
    person="{who}, desde {joined}. Paso: {step}.",
    person_figures="Los últimos 14 días: {pairs} pares completos, {readings} mediciones. Antes de "
    "comer: {before_in} de {before_of} en la meta, mediana {before}. Dos horas después: {after_in} "
    "de {after_of} en la meta, mediana {after}. Mediana de la subida {rise}. Mínimo {lowest}, "
    "máximo {highest}.",
    person_none="Ninguna medición en los últimos 14 días.",
    person_goals="Metas: {low} a {high} {unit} antes, menos de {after} después. Bajo: menos de "
    "{limit_low}. Alto: desde {limit_high}.",
    person_flags="Se sabe: {flags}.",
    flag_lows="valores bajos posibles",
    flag_ketones="cetonas posibles",
    flag_plan="plan de valores altos hasta {until}",
    person_buttons=("comidas {id}", "gráfica {id}", "pasos {id}", "metas {id}", "página {id}"),
    meals_head="{who}, comidas de los últimos 35 días, las nuevas primero (antes, dos horas "
    "después):",
    page_head="{who}: las dos últimas semanas en una página para imprimir, para la consulta.",
    chart_head="{who}. Lo que leen con esta gráfica:",
    steps_head="{who}, pasos y subida media después de comer:",
    steps_line="{step}, desde {since}: {pairs} pares, {rise}",
    steps_none="aún sin media",
    steps_next="Siguiente paso: {step}.",
    steps_missing="Antes faltan {missing} pares completos.",
    steps_held="Un valor bajo, o uno desde 300 (16.7), en los últimos siete días lo desaconseja "
    "ahora.",
    steps_free="Espera su autorización.",
    steps_last="Ya dio todos los pasos.",
    step_names={
        Step.AS_USUAL: "como siempre",
        Step.LIGHTER_MEAL: "comida más ligera",
        Step.MEASURED_PLATE: "plato medido",
        Step.MOVE_AFTER: "moverse después de comer",
    },
    goals_now="{who}: {goals}",
    goals_set="Hecho. {who}: {goals}",
    goals_bounds="Solo fijo metas dentro de estos límites ({unit}): antes de comer de {a}-{b} "
    "hasta {c}-{d}, después menos de {e}-{f}, cada una mayor que la anterior y ninguna por debajo "
    "del límite de valor bajo.",
    goals_how='Escriba "metas {who} {low}-{high} {after}" para cambiarlas.',
    low_set="Hecho. {who}: bajo es menos de {limit_low} {unit}.",
    high_set="Hecho. {who}: alto es desde {limit_high} {unit}.",
    limit_bounds="Límites seguros ({unit}): bajo de {a} a {b} (y no por encima de la meta antes de "
    "comer), alto de {c} a {d}.",
    goals_changed_note="Tiene metas nuevas. Las fijó su educador: {goals}",
    limits_changed_note="Su educador fijó cuándo le aviso. Bajo es ahora menos de {limit_low} "
    "{unit}. Alto es desde {limit_high} {unit}.",
    plan_set="Plan para {who} hasta {until}: los valores altos de 250 (13.9) a menos de 300 (16.7) "
    "sin síntomas reciben una línea y ninguna prueba nueva. Los demás avisos siguen.",
    plan_ended="El plan de {who} terminó.",
    plan_ended_already="{who} no tiene plan.",
    plan_note="Su educador sabe que ahora sus valores son altos. Hasta {until} digo menos de un "
    "valor de 250 (13.9) a menos de 300 (16.7). Los demás avisos siguen.",
    note_empty='¿Qué le digo? Escriba "nota {who}: " y sus palabras.',
    note_sent="Enviado a {who}.",
    note_later="{who} está en su hora de silencio. Lo mando a las {at} (su reloj).",
    note_stopped="{who} me pidió silencio, así que no mando nada. Por favor, llámele.",
    note='Una nota de su educador: "{text}" No puedo pasarle una respuesta. Nadie vigila este chat '
    "día y noche.",
    labelled="{who}. La palabra es solo para usted.",
    label_empty='¿Qué palabra? Como en "apodo {who} Ana".',
    group="Su grupo: {people} de {of} que comparten valores tienen pruebas suficientes. Los "
    "primeros siete días frente a los últimos siete:",
    group_after="Dos horas después de comer:",
    group_rise="Subida después de comer:",
    group_change="{first} y luego {last} {unit}: el valor propio de cada persona {direction} "
    "{change} de media (intervalo del 95 % del cambio: {low} a {high}).",
    group_fell="bajó",
    group_rose="subió",
    group_clear="Es más de lo que daría el azar.",
    group_unclear="El azar podría dar esto.",
    group_limits="Antes y después, sin grupo de comparación: no se sabe qué más cambió.",
    group_few="Doy cifras de grupo desde {needed} personas con pruebas suficientes, para que no se "
    "reconozca a nadie. Ahora: {people}.",
    hours_set="Le escribo {hours}. Fuera de ese horario las alertas esperan, o van a su suplente.",
    away="Queda ausente. Las alertas van enseguida a su suplente {deputy}. Escriba "
    '"volví" cuando regrese.',
    away_alone='Queda ausente, y sin suplente: las alertas esperan hasta que escriba "volví". '
    'Nombre uno con "suplente" y un código.',
    back="Qué bueno que volvió. Le escribo {hours}.",
    deputy_asked="Le pregunto a {deputy}. Suple cuando acepte.",
    deputy_offer="El educador {educator} le pide que sea su suplente: recibe sus alertas, sin "
    'nombres ni valores, cuando no vio una en 30 minutos. Escriba "aceptar {educator}" o '
    '"rechazar {educator}".',
    deputy_unknown="No conozco a ningún educador con ese código.",
    deputy_self="No puede ser su propio suplente.",
    deputy_agreed="Usted suple a {educator}, en su propio horario de trabajo.",
    deputy_agreed_note="{deputy} es ahora su suplente.",
    deputy_declined="Usted no suple a {educator}.",
    deputy_declined_note='{deputy} no le suple. Nombre otro con "suplente" y un código.',
    deputy_gone="Ahora no tiene suplente. Las alertas sin ver le esperan.",
    deputy_nobody="Nadie con ese código le pide ser su suplente.",
)
