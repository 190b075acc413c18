"""Answers to requests, in English."""

from bot.entries import Step
from bot.words.requests import RequestSentences

REQUESTS = RequestSentences(
    help="You can text me:\n"
    '- a test and a meal: "118 before, rice and beans"\n'
    '- the test two hours after: "154"\n'
    '- what you did: "walked 20 min"\n'
    '- a mistake: "sorry, 162", "not rice, bread", or "undo"\n'
    '- "summary", "record", "goals", "next step", "50 strips"\n'
    '- "pause", "stop", "export", "erase"\n'
    '- "no educator": your educator sees your record no more\n'
    "I know nothing of your medicine. Nobody watches this chat day and night. "
    "Very unwell? Call your emergency number.",
    stopped='I am silent now. Your record stays. Text "resume" to go on, or "erase" to delete all. '
    "A very low or very high value that you text still gets its warning.",
    paused='I pause my reminders and the weekly chart. Text "resume" when you want them back.',
    resumed="Welcome back. My reminders are on.",
    goals="Your goals: {low} to {high} {unit} before a meal, and below {after} {unit} two hours "
    "after. "
    "Your care team can set others.",
    goals_unjudged="Your care team sets your goals now. Please call them. "
    "I keep your numbers and do not judge them.",
    record_head="Your last meals (before, two hours after):",
    record_line="{day} {at} {meal}: {before}, {after}",
    record_empty="There is nothing in your record yet. Test before your next meal and text me "
    "the number.",
    record_missing="no test",
    step_taken="Next step: {step}. {how}",
    step_waits="The next step is {step}. Your educator says first whether it is safe for you, "
    "because it "
    "can bring your glucose lower. Please ask them.",
    step_last="You have taken all the steps. Keep what works for you.",
    step_how={
        Step.AS_USUAL: "Eat as you always do, and test.",
        Step.LIGHTER_MEAL: "Leave out sweet drinks. Take less starch, more vegetables and more "
        "protein "
        "food. With kidney disease, ask your care team about protein first.",
        Step.MEASURED_PLATE: "Take a smaller plate. Fill half with vegetables, and share the "
        "other half "
        "between starch and protein food.",
        Step.MOVE_AFTER: "Move for ten to thirty minutes after you eat. A walk is enough.",
    },
    nights="Until {day} I text you in your quiet time too, if a test is due then.",
    zone="Your clock is now that of {zone}. It shows {at}.",
    zone_unknown="I do not know that place. Text a bigger city in your time zone: I am in Lima "
    "now.",
    language="I will write in English.",
    main_meal="Your main meal is now at {at}. I will text you a little before.",
    settings="Your settings:\n"
    "- meter: {unit}\n"
    "- clock: {zone}\n"
    "- quiet time: {quiet_from} to {quiet_to}\n"
    "- weekly summary: {day}, {at}",
    settings_meal="- main meal: {at}",
    settings_change='To change them, text "summary on Friday at 9:00", "I am in Lima now", '
    '"nights this week" or "español".',
    later="I will ask again at {at}.",
    too_late=(
        "That would be too late: this test counts until {until}. I will not ask for it again. "
        "If you test later, text me the number all the same."
    ),
    nothing_waits="I am not waiting for a test now. I will text you when one is due.",
    export="Here is all that I hold of yours, as files: your record, and what we wrote to each "
    "other in the last 30 days. Nobody else gets what we wrote.",
    erase_question="Shall I delete everything I hold of yours, for good? Text yes to delete it "
    "all.",
    erase_buttons=("yes", "no"),
    erase_yes=frozenset({"yes", "y", "erase", "yes erase", "delete", "yes please", "ok"}),
    erased="All of it is deleted. You need a new code to come back. I wish you well.",
    not_erased="Nothing was deleted.",
    food_none="I have no test of yours with {food} yet. To find out: test before you eat it, eat "
    "your usual amount, and test two hours after your first bite.",
    food_unnamed="I cannot choose for you, but your own tests can. Test a meal before and two "
    "hours after: then I can tell what it did.",
    food_mildest="I cannot choose for you, but your own tests can. Smallest change first, in "
    "{unit}: {meals}.",
    food_tests="{food}, {count} tests of yours. Change in {unit}: {rises}.",
    food_smaller="You could test a smaller piece, and see.",
    not_glucose="I keep only glucose, meals and moving. Your clinic is the place for that number.",
    chatter="I am here for your tests: text me a number, a meal, or help.",
    hunger="One question for the week. Compared with last week, are you hungry less, the same, "
    "or more?",
    tiredness="Thank you. And are you tired less, the same, or more?",
    how_buttons=("less", "the same", "more"),
    how={
        "less": "less",
        "same": "same",
        "the same": "same",
        "more": "more",
    },
    answered="Thank you. I keep it beside your figures.",
    go_on_yes="Good. I go on as before.",
    go_on_weekly="Good. I will ask for a test once a week.",
    go_on_no='I am silent until you text me. "resume" brings my reminders back.',
    risk_noted="Thank you. I keep that in mind.",
    risk_unknown="That is fine. I stay careful. Your care team can tell you: please ask them.",
    strips_out="At your pace they last until about {day}. I keep {kept} aside for lows and sick "
    "days.",
)
