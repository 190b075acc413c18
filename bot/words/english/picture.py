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
        "Jan",
        "Feb",
        "March",
        "April",
        "May",
        "June",
        "July",
        "Aug",
        "Sept",
        "Oct",
        "Nov",
        "Dec",
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
    doubtful_note="? is not sure, and does not count",
    unconfirmed="one value is not sure yet",
    food_working="food was still at work",
    cautions={
        "emergency": "signs of an emergency",
        "very_low": "very low",
        "low": "low",
        "very_high": "very high",
        "high": "high",
        "two_days_very_high": "very high two days running",
        "repeated_high": "high again, call your care team",
        "repeated_low": "low again, call your care team",
        "symptoms": "signs of a low or a high",
    },
    caution="Caution: {caution}",
    caution_times="Caution: {caution}, {count} times",
    empty="No tests this week. That is all right. One test before a meal and one two hours "
    "after it is a good start.",
    empty_so_far="No tests so far this week. One test before a meal and one two hours after it "
    "is a good start.",
    more='and {count} more lines: text "record" for all of them',
)
