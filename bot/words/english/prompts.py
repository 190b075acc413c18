"""Prompts and notes in English."""

from bot.words.prompts import PromptSentences

PROMPTS = PromptSentences(
    before_meal="Nearly time for your main meal. Wash and dry your hands, then test. "
    "Text me the number and what is on your plate.",
    before_meal_again="Here is your reminder. Test before you eat. "
    "Text me the number and what is on your plate.",
    after_meal="It is two hours since {meal}. Please test now and text me the number.",
    after_meal_again="There is still time to test after {meal}: until {until}. "
    'No test this time? Text "skip".',
    after_activity="{activity}, done at {end}: what does your meter show now?",
    discreet="It is time. Please text me when you can.",
    go_on="I have not heard from you for a few days, and that is fine. "
    "Shall I go on asking every day, once a week, or not at all?",
    go_on_buttons=("every day", "once a week", "not at all"),
    away="I could not read messages for over a day. What you sent may be missing. "
    "Please send me again any number that I did not answer.",
    teaching=(
        "A tip for today: wash your hands with water and dry them before you test. "
        "A little fruit on a finger can make the number far too high.",
        "A tip for today: prick the side of your fingertip. It hurts less there.",
        "A tip for today: look at the date on your strips. Keep them in their closed tube.",
        "A tip for today: the two hours count from your first bite.",
        "A tip for today: use only your own lancets, and never one that somebody else has used.",
        "A tip for today: put used lancets into a hard box with a lid. "
        "Ask your clinic where to bring it.",
    ),
)
