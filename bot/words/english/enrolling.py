"""Joining, in English."""

from bot.words.enrolling import EnrolSentences

ENROLLING = EnrolSentences(
    consent_version="en-1",
    yes=frozenset(
        {"yes", "y", "yes please", "i agree", "agree", "ok", "okay", "sure", "yeah", "yep"}
    ),
    no=frozenset({"no", "n", "no thanks", "no thank you", "nope", "i do not agree", "not now"}),
    unknown=frozenset({"don't know", "dont know", "do not know", "not sure", "unknown", "?"}),
    no_code="This is Afterplate, a bot for people with type 2 diabetes whose educator invited "
    "them. "
    "You need a code from your educator. Then text: /start and the code. I keep nothing now.",
    bad_code="I do not know this code. It may be used up or too old. "
    "Please ask your educator for a new one. I keep nothing now.",
    private_only="I talk in private chats only. I keep nothing from this group.",
    welcome="Welcome to Afterplate. I help you test your glucose before a meal and two hours "
    "after, "
    "so that you see which meals are good for you. I remind you, keep your record and do the sums. "
    "Each week you get a chart.\n"
    "I cannot help in an emergency: call your emergency number. I know nothing of your medicine, "
    "and "
    "I never tell you how much to take. For anybody under 18, in pregnancy, or with type 1 "
    "diabetes "
    "other goals hold: ask your care team.\n"
    "Nobody watches this chat day and night. I warn you of very low and very high values at once, "
    "but you or a helper must act. Your care team's own advice always comes first.\n"
    "I keep what you tell me about tests, meals and moving. Your own words are deleted after 30 "
    "days. "
    'Text "stop" and I am silent. Text "export" for all I hold. Text "erase" and all is gone.',
    speed="This is a trial: my clock runs {speed} times as fast as yours.",
    consent_question="Are you 18 or older, and do you agree? Text yes or no.",
    consent_buttons=("yes", "no"),
    declined="That is fine. I keep nothing. Your code still works if you change your mind.",
    too_young="Thank you for telling me. This bot is for adults only: younger people have other "
    "goals. "
    "Please talk with your care team. I keep nothing.",
    yes_or_no="Please text yes or no.",
    tell_educator="May I tell your educator about very low values, values off your meter's "
    "scale, and emergencies, and may they see your record? They read it in working hours only. "
    'Nobody watches day and night. Text "no educator" at any time to end it.',
    yes_no=("yes", "no"),
    unit="What does your meter show: mg/dL (like 142) or mmol/L (like 7.8)?",
    unit_buttons=("mg/dL", "mmol/L"),
    zone="Which town sets your clock? Text a big city in your time zone, like Lima or Nairobi.",
    zone_unknown="I do not know that place. Text a bigger city in your time zone.",
    main_meal="When do you eat your largest meal? Text a time like 13:00, or: it varies.",
    main_meal_unknown="I did not get the time. Text it like 13:00, or: it varies.",
    no_main_meal=frozenset({"it varies", "varies", "no", "none", "skip", "different"}),
    may_go_low="Do you take insulin or tablets that can make your glucose too low? "
    "If you do not know, say so: I will then be careful.",
    ketone_risk="Has your care team spoken of ketones, or do you take insulin or a tablet that "
    "makes "
    "you pass sugar in your urine? If you do not know, say so.",
    yes_no_unknown=("yes", "no", "don't know"),
    joined="You are in. Thank you.",
    first_test="Let us start with your next meal. Test before you eat, and text me like this: "
    '"118, rice and beans".',
    prompts_at="I will text you a little before {at}.",
    meal_in_quiet="The two-hour test for that meal falls into your quiet time ({start} to {end}). "
    'To get a text all the same, write "nights this week", or eat earlier.',
)
