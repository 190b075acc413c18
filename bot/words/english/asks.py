"""What waits for an educator and comes due for them, in English."""

from bot.words.asks import AskSentences

ASKS = AskSentences(
    step_waits="{who} has enough tests for the next step: {step}. Lows or ketones are possible for "
    "them, or nobody knows, so it waits for you. It can bring glucose lower. Text "
    '"{command} {id}" if it is safe for them.',
    released="Released: {step}. {who} decides when to take it.",
    release_last="{who} has taken all the steps.",
    release_not_needed="{who} needs no release: lows and ketones are not possible. They take "
    "the next step when they like.",
    release_held="{who} had a low, or a value from 300 (16.7), in the last seven days. The next "
    "step ({step}) can bring glucose lower. Release it all the same?",
    fewer_wait="{who}: {within} of the last {of} full tests were within both goals. Testing "
    "{rhythm} may be enough now. Lows or ketones are possible for them, or nobody knows, so it "
    'waits for you. Text "{command} {id}" if you agree.',
    fewer_released="Released: testing {rhythm}. I ask {who}, and they decide.",
    fewer_last="{who} tests only new foods already. There is nothing less.",
    fewer_not_needed="{who} needs no release: I ask them myself when most of their tests are "
    "within their goals.",
    fewer_held="The tests of {who} do not speak for it yet: five of the last six within both "
    "goals, two weeks of the programme, and a week without a low or a value from 300 (16.7). "
    "Release testing {rhythm} all the same?",
    visit="{who} has tested for two weeks. Please call them, or see them: what worked, what comes "
    "next, how many strips they need. The page for the visit comes with this. Nobody watches this "
    "chat day and night.",
    visit_not_shared="{who} joined two weeks ago, and shares no values with you. Please call them, "
    "or see them: how it goes, and what comes next.",
    set_by="{day}: {goals} (set by {by})",
    set_at_joining="{day}: {goals} (at joining)",
    you="you",
    goals_since="The goals so far:",
    me='Your id is {id}. I write to you {hours}. {deputy} Text "hours", "deputy", or a language '
    "by its name, to change that.",
    deputy_is="Your deputy is {deputy}.",
    deputy_asked="You asked {deputy} to be your deputy, and they have not answered.",
    deputy_none="You have no deputy.",
    hours_now="I write to you {hours}. Text days and times to change that, like: hours Mon-Fri "
    "8-16.",
    export_head="{who}: the whole record as files, for a spreadsheet (CSV), for other programs "
    "(FHIR, JSON lines) and to print. Their own messages are not in it. Keep it as safe as you "
    "keep a chart.",
    chatter_words=frozenset(
        {"thanks", "thank you", "thank you very much", "ok", "okay", "great", "good", "fine", "hi"}
        | {"hello", "good morning", "good afternoon", "got it", "\N{THUMBS UP SIGN}"}
    ),
    chatter='I am here. "roster" shows who needs a look, "alerts" what is open.',
    language_name="English",
    invite_language="Which language do they read: English or Español?",
    language_words=frozenset({"english", "in english", "write in english", "inglés", "en inglés"}),
    language_set="I write in English to you now. What your participants read stays as they chose.",
    fast_waits="{who} asks about fasting days. It waits for you. If it is safe for them, text the "
    'first and the last day, as in "{command} {id} {first} to {last}". If not, please call them.',
    fast_how='Text the first and the last day, as in "{command} {id} {first} to {last}", or '
    '"{command} {id} off".',
    fast_set="Set: {who} fasts from {first} to {last}. I told them when to end a fast at once: "
    "below 70 (3.9), from 300 (16.7), or unwell.",
    fast_ended="{who} has no fasting days any more.",
    fast_bounds="Fasting days begin today or later and last up to 40 days. Text the first and the "
    'last day, as in "{command} {id} {first} to {last}".',
    off_words=frozenset({"off", "no", "none", "end", "stop"}),
    fast_flag="fasting days {first} to {last}",
)
