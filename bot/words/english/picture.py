"""The words on the picture of a week, in English."""

from bot.entries import MealName
from bot.glucose.pairs import Status
from bot.picture import Legend
from bot.words.picture import PictureSentences

PICTURE = PictureSentences(
    title="Your week: {dates}",
    title_so_far="Week so far: {dates}",
    days=("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
    months=(
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ),
    dates="{first} to {last} {last_month}",
    dates_two_months="{first} {first_month} to {last} {last_month}",
    meal_names={
        MealName.BREAKFAST: "Breakfast",
        MealName.LUNCH: "Lunch",
        MealName.DINNER: "Dinner",
        MealName.SNACK: "Snack",
    },
    activity="{activity}",
    activity_minutes="{activity}, {minutes} min",
    other_tests="Other",
    before_goal="goal before: {low} to {high}",
    after_goal="goal after: below {high}",
    legend=Legend(
        before="before eating",
        after="two hours after",
        outside="outside your goal",
        lone="other tests",
        activity="activity",
        uncounted="does not count",
    ),
    notes={
        Status.NO_AFTER: "no second test",
        Status.ATE_AGAIN: "ate again before the test",
        Status.OFF_TIME: "second test at {minutes} min",
        Status.AROUND_LOW: "around a low",
        Status.OFF_SCALE: "off the meter's scale",
        Status.NO_BEFORE: "no test before",
    },
    still_open="second test still to come",
    doubtful="{value}?",
    cautions={
        "emergency": "Emergency signs",
        "very_low": "Very low",
        "low": "Low",
        "very_high": "Very high",
        "high": "High",
        "two_days_very_high": "Very high two days running: call your care team",
        "repeated_high": "High again and again: call your care team",
        "repeated_low": "Low again: call your care team",
        "symptoms": "Signs of a low or a high",
    },
    caution="{caution}: {count} times",
    empty="No tests this week. That is all right. One test before a meal and one two hours "
    "after it is a good start.",
    empty_so_far="No tests so far this week. One test before a meal and one two hours after it "
    "is a good start.",
    more='and {count} more lines: text "record" for all of them',
)
