"""Fasting days, a shared phone, the weekly summary and what the educator releases, in English."""

from bot.words.wishes import WishSentences

WISHES = WishSentences(
    released_note='Your educator says that the next step is safe for you: {step}. Text "next '
    'step" when you want to take it.',
    fewer_released_note="Your educator says that testing {rhythm} is enough for you now. Shall I "
    "ask for tests {rhythm} from now on?",
    fast_set_note="Your educator says that you may fast from {first} to {last}. Test as before: a "
    "test does not break the fast. End the fast at once below 70 (3.9), from 300 (16.7), or if you "
    "feel unwell. On these days I do not ask before your main meal. Text me when you eat, and I "
    "ask two hours later.",
    fast_ended_note="Your educator has ended your fasting days. Please eat as usual, and call them "
    "if you have questions.",
    fast_words=(
        "fasting days",
        "fasting month",
        "i am fasting",
        "i'm fasting",
        "i fast",
        "i will fast",
        "i want to fast",
        "i plan to fast",
        "may i fast",
        "can i fast",
        "should i fast",
        "start fasting",
        "ramadan",
        "ramadhan",
        "yom kippur",
    ),
    fast_end_words=(
        "stop fasting",
        "end my fast",
        "end fasting",
        "no more fasting",
        "i broke my fast",
        "i do not fast",
        "i don't fast",
        "not fasting",
    ),
    fast_asked="Talk with your care team before you fast. They say whether it is safe for you. I "
    "ask your educator now, and text you when they say so. Until then please eat as usual.",
    fast_ask="Talk with your care team before you fast. They say whether it is safe for you. "
    "Until then please eat as usual.",
    fast_stands="Your educator has agreed that you fast from {first} to {last}. A test does not "
    "break the fast. End it at once below 70 (3.9), from 300 (16.7), or if you feel unwell.",
    fast_over="Good. You have no fasting days any more.",
    fast_none="You have no fasting days here.",
    fast_caution="You are fasting: end the fast now.",
    fast_caution_helper="They are fasting: end the fast now.",
    discreet_words=frozenset(
        {
            "discreet",
            "discreet mode",
            "discreet prompts",
            "discreet please",
            "discreet texts",
            "my phone is shared",
            "i share my phone",
            "others read my phone",
            "shared phone",
            "private prompts",
        }
    ),
    normal_words=frozenset(
        {
            "not discreet",
            "discreet off",
            "no discreet prompts",
            "normal prompts",
            "my phone is mine",
            "my phone is not shared",
            "my phone is not shared any more",
        }
    ),
    discreet_begins='From now on my reminders name no food, no test and no number: "It is time." '
    "What I answer to you still holds your numbers, and a warning says what to do. To have the "
    'full ones back, text "normal prompts".',
    discreet_ends="My reminders say again what to do.",
    week_words=frozenset(
        {"summary", "summaries", "digest", "chart", "graph", "picture", "report", "ends"}
    ),
    week_fillers="a and at be can change come comes could day every each for from get have i in "
    "instead is it like make me move my new now of on please pls send set should switch the time "
    "to want week weekly will would you",
    week_set="Your weekly summary comes on {day} at {at} from now on.",
    week_next="The next one: {date}, {at}.",
    strips_words=("how many strips", "how many test strips", "how long will my strips last"),
    strips_left="{left} strips left, if each of your tests took one.",
    strips_unknown='Tell me how many strips you have, like "50 strips". Then I count them.',
    waking="Once a week a test on waking helps: tomorrow, before you eat. Text it like "
    '"fasting 104".',
)
