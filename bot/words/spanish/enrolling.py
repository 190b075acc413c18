"""Joining, in Spanish."""

from bot.words.enrolling import EnrolSentences

ENROLLING = EnrolSentences(
    consent_version="es-1",
    yes=frozenset(
        {
            "sí",
            "si",
            "s",
            "sí, por favor",
            "sí por favor",
            "si por favor",
            "sí, acepto",
            "sí acepto",
            "si acepto",
            "acepto",
            "estoy de acuerdo",
            "de acuerdo",
            "claro",
            "claro que sí",
            "claro que si",
            "ok",
            "bueno",
            "dale",
            "está bien",
            "esta bien",
        }
    ),
    no=frozenset(
        {
            "no",
            "n",
            "no, gracias",
            "no gracias",
            "no acepto",
            "no estoy de acuerdo",
            "ahora no",
            "por ahora no",
        }
    ),
    unknown=frozenset(
        {
            "no sé",
            "no se",
            "no lo sé",
            "no lo se",
            "no estoy seguro",
            "no estoy segura",
            "no sabría decir",
            "quién sabe",
            "quien sabe",
            "?",
        }
    ),
    no_code="Soy Afterplate, un bot para personas con diabetes tipo 2 a quienes su educador "
    "invitó. Necesita un código de su educador. Luego escriba: /start y el código. "
    "Ahora no guardo nada.",
    bad_code="No conozco este código. Puede que ya se usara o que sea muy viejo. "
    "Por favor, pida uno nuevo a su educador. Ahora no guardo nada.",
    private_only="Solo hablo en chats privados. No guardo nada de este grupo.",
    welcome="Le doy la bienvenida a Afterplate. Le ayudo a medir su glucosa antes de comer y dos "
    "horas después, para que vea qué comidas le hacen bien. Le recuerdo, guardo su registro y "
    "hago las cuentas. Cada semana recibe una gráfica.\n"
    "No puedo ayudar en una emergencia: llame a su número de emergencias. No sé nada de su "
    "medicina, y nunca le digo cuánta tomar. Para menores de 18 años, en el embarazo o con "
    "diabetes tipo 1 valen otras metas: pregunte a su equipo de salud.\n"
    "Nadie vigila este chat día y noche. Le aviso enseguida de valores muy bajos y muy altos, "
    "pero usted o quien le ayude debe actuar. Lo que diga su equipo de salud va siempre "
    "primero.\n"
    "Guardo lo que me cuenta de pruebas, comidas y movimiento. Sus propias palabras se borran a "
    'los 30 días. Escriba "parar" y me callo. Escriba "exportar" y le mando todo lo que guardo. '
    'Escriba "borrar" y todo se va.',
    speed="Esto es un ensayo: mi reloj va {speed} veces más rápido que el suyo.",
    consent_question="¿Tiene 18 años o más, y está de acuerdo? Escriba sí o no.",
    consent_buttons=("sí", "no"),
    declined="Está bien. No guardo nada. Su código sigue sirviendo si cambia de idea.",
    too_young="Gracias por decirlo. Este bot es solo para adultos: los más jóvenes tienen otras "
    "metas. Por favor, hable con su equipo de salud. No guardo nada.",
    yes_or_no="Por favor, escriba sí o no.",
    tell_educator="¿Puedo avisar a su educador de valores muy bajos, de valores fuera de la "
    "escala del medidor y de emergencias? ¿Y puede ver su registro? Lo lee solo en horas de "
    'trabajo. Nadie vigila día y noche. Escriba "sin educador" cuando quiera terminarlo.',
    yes_no=("sí", "no"),
    unit="¿Qué muestra su medidor: mg/dL (como 142) o mmol/L (como 7.8)?",
    unit_buttons=("mg/dL", "mmol/L"),
    zone="¿Qué ciudad marca su hora? Escriba una ciudad grande de su zona, como Lima o Bogotá.",
    zone_unknown="No conozco ese lugar. Escriba una ciudad más grande con su misma hora.",
    main_meal="¿A qué hora es su comida más grande? Escriba una hora como 13:00, o: varía.",
    main_meal_unknown="No entendí la hora. Escríbala como 13:00, o: varía.",
    no_main_meal=frozenset(
        {"varía", "varia", "no", "ninguna", "omitir", "depende", "cambia", "diferente"}
    ),
    may_go_low="¿Usa insulina o pastillas que pueden bajar demasiado su glucosa? "
    "Si no lo sabe, dígalo: entonces tendré más cuidado.",
    ketone_risk="¿Le habló su equipo de salud de cetonas? ¿O usa insulina, o una pastilla que "
    "saca azúcar por la orina? Si no lo sabe, dígalo.",
    yes_no_unknown=("sí", "no", "no sé"),
    joined="Ya está dentro. Gracias.",
    first_test="Empecemos con su próxima comida. Mida antes de comer y escríbame así: "
    '"118, arroz y frijoles".',
    prompts_at="Le escribiré un poco antes de las {at}.",
    meal_in_quiet="La prueba de las dos horas de esa comida cae en su hora de silencio ({start} a "
    '{end}). Si la quiere de todos modos, escriba "noches esta semana", o coma más temprano.',
)
