"""What an educator reads, in English."""

from bot.caution.ladder import EducatorWhy
from bot.educator.alerts import Mark
from bot.educator.roster import Reason, Tier
from bot.entries import Step
from bot.words.educator import EducatorSentences, Wish

EDUCATOR = EducatorSentences(
    wishes={
        Wish.HELP: ("help", "/help", "/start", "what can you do"),
        Wish.ROSTER: ("roster", "/roster", "list", "who needs a look", "people", "participants"),
        Wish.ALERTS: ("alerts", "/alerts", "open alerts"),
        Wish.SHOW: ("show", "record of", "record", "about", "who is"),
        Wish.MEALS: ("meals of", "meals"),
        Wish.CHART: ("chart of", "chart"),
        Wish.PAGE: ("printed page of", "page of", "print", "page", "pdf of", "pdf", "visit"),
        Wish.EXPORT: ("export of", "export", "files of", "csv of", "csv", "fhir"),
        Wish.STEPS: ("steps of", "steps"),
        Wish.GOALS: ("goals of", "goals for", "set goals for", "set goals", "goal", "goals"),
        Wish.LOW: ("low for", "low"),
        Wish.HIGH: ("high for", "high"),
        Wish.RELEASE: ("release next step for", "next step for", "release"),
        Wish.FEWER: ("release fewer tests for", "fewer tests for", "fewer tests"),
        Wish.FAST: ("fasting days for", "fasting for", "fasting days", "fasting"),
        Wish.PLAN: ("high plan for", "high plan", "plan for", "plan"),
        Wish.END_PLAN: ("end plan for", "end plan", "end high plan for"),
        Wish.NOTE: ("note to", "note for", "note", "tell", "message to", "message"),
        Wish.LABEL: ("label", "call them", "name"),
        Wish.GROUP: ("group", "/group", "before and after", "group figures"),
        Wish.INVITE: ("invite", "/invite", "new participant", "invitation"),
        Wish.ME: ("my id", "id", "who am i", "settings", "my settings", "me"),
        Wish.HOURS: ("my hours", "hours", "i work"),
        Wish.DEPUTY: ("my deputy is", "deputy is", "deputy"),
        Wish.NO_DEPUTY: ("no deputy", "deputy none", "remove deputy"),
        Wish.ACCEPT: ("accept",),
        Wish.DECLINE: ("decline",),
        Wish.SEEN: ("seen",),
        Wish.CALLED: ("called", "i called"),
        Wish.CLOSED: ("closed", "close"),
        Wish.AWAY: ("away", "i am away", "stop", "holiday"),
        Wish.BACK: ("back", "i am back", "resume"),
        Wish.CANCEL: ("cancel", "never mind"),
    },
    leave=frozenset(
        {
            "no educator",
            "remove educator",
            "remove my educator",
            "end educator access",
            "do not tell my educator",
            "don't tell my educator",
            "dont tell my educator",
            "stop telling my educator",
            "my educator may not see this",
            "leave my educator",
        }
    ),
    left="Your educator sees nothing of yours from now on. I tell them that you have left, and "
    "no more. What they read before I cannot take back. I go on as before. "
    "To have an educator again you need a new code.",
    no_educator="You have no educator here, so no one sees what you text me.",
    yes=frozenset({"yes", "y", "yes please", "i agree", "agree", "ok", "okay", "sure", "yep"}),
    no=frozenset({"no", "n", "no thanks", "nope", "i do not agree"}),
    unknown=frozenset({"don't know", "dont know", "do not know", "not sure", "unknown", "?"}),
    yes_no=("yes", "no"),
    yes_no_unknown=("yes", "no", "don't know"),
    none_words=frozenset({"none", "no", "nothing", "skip", "later", "nobody", "no one"}),
    cancel_button="cancel",
    day_names={
        "mon": (0,),
        "tue": (1,),
        "wed": (2,),
        "thu": (3,),
        "fri": (4,),
        "sat": (5,),
        "sun": (6,),
        "weekdays": (0, 1, 2, 3, 4),
        "daily": (0, 1, 2, 3, 4, 5, 6),
        "every": (0, 1, 2, 3, 4, 5, 6),
    },
    day_short=("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
    welcome="Welcome to Afterplate, as an educator. Your participants test before a meal and two "
    "hours after. I keep their record, warn them of lows and highs at once, and show you who "
    "needs a look.\n"
    "The rules:\n"
    "- I write to you in your working hours only. Nobody watches this chat day and night, and "
    "your participants are told so.\n"
    "- An alert is no emergency call. I tell the participant at once what to do. You call them "
    "when you can.\n"
    "- You see your own participants only, and only while they agree.\n"
    "- I never name a dose, and I know nothing of anybody's medicine. You and the care team "
    "decide.\n"
    "- What I show you is for their care. Keep this phone locked.",
    speed="This is a trial: my clock runs {speed} times as fast as yours.",
    consent_question="Do you agree to these rules? Text yes or no.",
    declined="That is fine. I keep nothing. Your code still works if you change your mind.",
    yes_or_no="Please text yes or no.",
    zone="Which town sets your clock? Text a big city in your time zone, like Lima or Nairobi.",
    zone_unknown="I do not know that place. Text a bigger city in your time zone.",
    hours_question="When do you work? Text days and times, like: Mon-Fri 8:00-16:00.",
    hours_unknown="I did not get that. Text days and times, like: Mon-Fri 8:00-16:00.",
    hours_buttons=("Mon-Fri 8:00-16:00", "Mon-Fri 9:00-17:00"),
    deputy_question="Who stands in when you have not seen an alert within 30 minutes? Text the id "
    "of another educator of this bot, or: none.",
    joined="You are in. Your id is {id}; another educator needs it to name you as deputy. I write "
    'to you {hours}. To begin, text "invite".',
    joined_again="Welcome back. Your participants and settings are as they were, and I write to "
    "this chat now, {hours}.",
    help="You can text me:\n"
    '- "invite": a code for a new participant\n'
    '- "roster": who needs a look first, and why\n'
    '- "alerts"; then "seen 3", "called 3", "closed 3"\n'
    '- a name or id: that record. Also "meals", "chart", "steps", "goals" with a name\n'
    '- "goals Ana 80-130 180", "low Ana 75", "high Ana 220"\n'
    '- "release Ana": the next step. "fewer tests Ana": test less often\n'
    '- "plan Ana": 14 days for lasting highs; "end plan Ana"\n'
    '- "fasting Ana 2026-03-10 to 2026-03-19": fasting days; "fasting Ana off"\n'
    '- "note Ana: see you on Monday"\n'
    '- "label 7KQ Ana": your own word for a participant\n'
    '- "group": before and after, from five people on\n'
    '- "hours Mon-Fri 8-16", "deputy" and an id, "no deputy", "away", "back"\n'
    "Nobody watches this chat day and night.",
    not_understood='I did not get that. Text "help" for what I can do.',
    private_only="I talk in private chats only. I keep nothing from this group.",
    reads_text='I read text only. Text "help" for what I can do.',
    whom='For whom? Add a name or an id, as in "{command} Ana".',
    who_is='I know nobody called "{name}" among your participants.',
    several='"{name}" fits more than one of your participants. Which one? {ids}.',
    not_shared="{who} does not share values with you. You can still send a note, set goals and "
    "release steps.",
    for_whom="Whom this is for: an adult with type 2 diabetes, not pregnant and not planning to "
    "be. It is not for type 1 diabetes, dialysis, an eating disorder, acute illness, or weight "
    "loss with ketones. They own a meter, and agree themselves when they join.",
    for_whom_question="Is it right for this person? Text yes or no.",
    not_for_them="Then no code. Please care for them in another way.",
    same_as_last="Same place, unit, language and emergency number as last time ({last})?",
    invite_zone="Where do they live? Text a big city in their time zone. Your own: {zone}.",
    invite_unit="What does their meter show?",
    unit_buttons=("mg/dL", "mmol/L", "ask them"),
    invite_meal="When do they eat their largest meal? Text a time like 13:00, or: ask them.",
    ask_them=frozenset({"ask them", "ask", "it varies", "varies", "don't know", "dont know"}),
    ask_them_button="ask them",
    meal_unknown="I did not get the time. Text it like 13:00, or: ask them.",
    invite_lows="Can their glucose go too low: insulin, or tablets that can cause lows? Unknown "
    "counts as yes.",
    invite_ketones="Are they at risk of ketones: insulin, an SGLT2 medicine, ketones before, or "
    "possible type 1? Unknown counts as yes.",
    invite_special="Does any of these hold? A fluid limit; acarbose (only glucose then works for "
    "a low); a helper who may write for them. Text all that hold, or: none.",
    special_buttons=("none", "fluid limit", "acarbose", "helper"),
    fluid_words=("fluid",),
    acarbose_words=("acarbose", "miglitol"),
    helper_words=("helper", "carer", "family", "son", "daughter", "wife", "husband"),
    special_unknown="Please text fluid limit, acarbose, helper (or more than one), or: none.",
    invite_number='Which emergency number do they call? Text it, or: none, and I say "your '
    'emergency number".',
    number_unknown="Please text a telephone number like 112, or: none.",
    invite_label="A word for you to know them by, seen by you alone: a first name or initials. "
    "Or: none.",
    invited="The code is {code}. It works once, for 14 days. Give it to them with: text /start "
    "{code} to this bot. I ask them what you left open, and for their consent.",
    invited_link="Or this link: {link}",
    cancelled="Nothing was made.",
    nothing_to_cancel="Nothing is open.",
    somebody_joined="{who} has joined with your code. {shares}",
    somebody_left="{who} has left, or shares nothing with you any more. Their record is closed "
    "to you.",
    alert="Alert {number}: {who}, {why}.{what}, {at} (their clock).",
    alert_to_deputy="An alert of educator {educator} is unseen: participant {participant}, {why}, "
    "{at}. You are the deputy. Their record is not open to you: reach the educator or the "
    "clinic, and see that somebody calls the participant.",
    alert_whys={
        EducatorWhy.EMERGENCY: "emergency",
        EducatorWhy.VERY_LOW: "very low",
        EducatorWhy.OFF_SCALE: "off the meter's scale",
        EducatorWhy.UNANSWERED: "low, and no new test since",
    },
    alert_told_them={
        EducatorWhy.EMERGENCY: "I told them at once to call the emergency number. Please call "
        "them.",
        EducatorWhy.VERY_LOW: "I told them at once what to do. Please call them.",
        EducatorWhy.OFF_SCALE: "I told them at once what to do. Please call them.",
        EducatorWhy.UNANSWERED: "I told them what to do and asked twice for a new test. Please "
        "call them.",
    },
    nobody_watches="Nobody watches this chat day and night.",
    alert_marks="Text: seen {number}, called {number} or closed {number}.",
    missed="Alerts from outside your hours, over a day old: {count}. Nobody watches this chat "
    'day and night. Text "alerts" to see them.',
    alerts_none="No alert is open. Nobody watches this chat day and night.",
    alerts_head="Open alerts, newest first. Nobody watches this chat day and night.",
    alert_line="{number}. {who}: {why}, {at}, {state}",
    alert_state={"unseen": "not seen yet", "seen": "seen", "called": "called"},
    marked={
        Mark.SEEN: 'Alert {number} is marked as seen. Text "called {number}" once you have.',
        Mark.CALLED: 'Alert {number} is marked as called. Text "closed {number}" when it is done.',
        Mark.CLOSED: "Alert {number} is closed.",
    },
    mark_which='Which one? Text its number, as in "seen 3". "alerts" lists them.',
    mark_unknown='I know no such alert. "alerts" lists the open ones.',
    seen_by_deputy="Your deputy {deputy} has marked alert {number}: {mark}.",
    roster_empty='You have no participants yet. Text "invite" for a code.',
    roster_head="Your participants: {count}. Who needs a look first:",
    tiers={
        Tier.SAFETY: "SAFETY",
        Tier.SILENCE: "SILENT",
        Tier.PROGRESS: "PROGRESS",
        Tier.WELL: "NOTHING OF NOTE",
        Tier.CLOSED: "SHARE NO VALUES",
    },
    whys={
        Reason.VERY_LOW: "very low, {count} in two weeks, last on {last}",
        Reason.TWO_LOWS: "{count} lows in seven days, last on {last}",
        Reason.VERY_HIGH_TWO_DAYS: "300 (16.7) or more on two days running, last on {last}",
        Reason.KETONE_SIGNS: "signs that may mean ketones, last on {last}",
        Reason.HIGH_BEFORE_MEALS: "median before meals {value} over two weeks",
        Reason.NO_PAIRS: "no complete pair for a week, last: {last}",
        Reason.STUCK: "{count} of the last 6 tests above goal, last on {last}",
        Reason.STRIPS: "strips run out, {count} left",
        Reason.STEP_WAITS: "the next step waits for your release",
        Reason.FEWER_WAITS: "fewer tests wait for your release",
    },
    never="never",
    roster_line="{who}: {why}",
    more='{left} more: text "{command} {page}".',
    more_button="{command} {page}",
    person="{who}, since {joined}. Step: {step}.",
    person_figures="The last 14 days: {pairs} complete pairs, {readings} readings. Before a meal: "
    "{before_in} of {before_of} within goal, median {before}. Two hours after: {after_in} of "
    "{after_of} within goal, median {after}. Median rise {rise}. Lowest {lowest}, highest "
    "{highest}.",
    person_none="No reading in the last 14 days.",
    person_goals="Goals: {low} to {high} {unit} before, below {after} after. Low below "
    "{limit_low}, high from {limit_high}.",
    person_flags="Known: {flags}.",
    flag_lows="lows possible",
    flag_ketones="ketones possible",
    flag_plan="high plan until {until}",
    person_buttons=("meals {id}", "chart {id}", "steps {id}", "goals {id}", "print {id}"),
    meals_head="{who}, meals of the last 35 days, newest first (before, two hours after):",
    chart_head="{who}. What they read with this chart:",
    page_head="{who}: the last fortnight on a page to print, for the visit.",
    steps_head="{who}, steps and mean rise after meals:",
    steps_line="{step}, from {since}: {pairs} pairs, {rise}",
    steps_none="no mean yet",
    steps_next="Next step: {step}.",
    steps_missing="{missing} more complete pairs first.",
    steps_held="A low or a value from 300 (16.7) in the last seven days speaks against it now.",
    steps_free="It waits for your release.",
    steps_last="All steps are taken.",
    step_names={
        Step.AS_USUAL: "as usual",
        Step.LIGHTER_MEAL: "lighter meal",
        Step.MEASURED_PLATE: "measured plate",
        Step.MOVE_AFTER: "move after eating",
    },
    goals_now="{who}: {goals}",
    goals_set="Set. {who}: {goals}",
    goals_bounds="I set goals within these bounds only ({unit}): before a meal from {a}-{b} up "
    "to {c}-{d}, after it below {e}-{f}, each higher than the one before it and none below the "
    "limit of lows.",
    goals_how='Text "goals {who} {low}-{high} {after}" to change them.',
    low_set="Set. {who}: low begins below {limit_low} {unit}.",
    high_set="Set. {who}: high begins at {limit_high} {unit}.",
    limit_bounds="Safe bounds ({unit}): low from {a} to {b} (and not above the goal before "
    "meals), high from {c} to {d}.",
    goals_changed_note="You have new goals. Your educator set them: {goals}",
    limits_changed_note="Your educator has set when I warn you. A low is now below {limit_low} "
    "{unit}. A high starts at {limit_high} {unit}.",
    plan_set="Plan set for {who} until {until}: highs from 250 (13.9) to below 300 (16.7) without "
    "symptoms get one line and no new test. All other warnings stay.",
    plan_ended="The plan for {who} has ended.",
    plan_ended_already="{who} has no plan.",
    plan_note="Your educator knows that your values are high now. Until {until} I say less about "
    "a value from 250 (13.9) to below 300 (16.7). All other warnings stay.",
    note_empty='What shall I tell them? Text "note {who}: " and your words.',
    note_sent="Sent to {who}.",
    note_later="{who} has quiet time now. I send it at {at} (their clock).",
    note_stopped="{who} has asked me for silence, so I send nothing. Please call them.",
    note='A note from your educator: "{text}" I cannot pass on an answer. Nobody watches this '
    "chat day and night.",
    labelled="{who}. The word is for you alone.",
    label_empty='Which word? As in "label {who} Ana".',
    group="Your group: {people} of {of} who share values have enough tests. First seven days "
    "against the last seven:",
    group_after="Two hours after a meal:",
    group_rise="Rise after a meal:",
    group_change="{first} then {last} {unit}: each person's own value {direction} by {change} on "
    "average (95 % interval of the change {low} to {high}).",
    group_fell="fell",
    group_rose="rose",
    group_clear="This is more than chance alone would bring.",
    group_unclear="Chance alone could bring this.",
    group_limits="Before and after, without a comparison group: what else changed is not known.",
    group_few="I give group figures from {needed} people with enough tests on, so that nobody "
    "can be singled out. Now: {people}.",
    hours_set="I write to you {hours}. Outside them alerts wait, or go to your deputy.",
    away='You are away. Alerts go to your deputy {deputy} at once. Text "back" when you are.',
    away_alone='You are away, and have no deputy: alerts wait until you text "back". Name one '
    'with "deputy" and an id.',
    back="Welcome back. I write to you {hours}.",
    deputy_asked="I ask {deputy}. They stand in once they accept.",
    deputy_offer="Educator {educator} asks you to be their deputy: you get their alerts, without "
    'names and values, when they have not seen one within 30 minutes. Text "accept {educator}" or '
    '"decline {educator}".',
    deputy_unknown="I know no educator with that id.",
    deputy_self="You cannot be your own deputy.",
    deputy_agreed="You are the deputy of {educator}, in your own working hours.",
    deputy_agreed_note="{deputy} is your deputy now.",
    deputy_declined="You are not the deputy of {educator}.",
    deputy_declined_note='{deputy} does not stand in for you. Name another with "deputy" and an '
    "id.",
    deputy_gone="You have no deputy now. Unseen alerts wait for you.",
    deputy_nobody="Nobody with that id asks you to be their deputy.",
)
