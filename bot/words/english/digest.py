"""The sentences of the week, in English."""

from bot.entries import Step
from bot.glucose.height import Height
from bot.glucose.pairs import Status
from bot.programme.suggest import Try
from bot.words.english.picture import PICTURE
from bot.words.telling import DigestSentences

DIGEST = DigestSentences(
    picture=PICTURE,
    joining=frozenset({"a", "and", "in", "of", "on", "the", "with", "without"}),
    caution_opening=(
        "First, this week's cautions: {cautions}.",
        "Cautions come first. This week: {cautions}.",
    ),
    caution_item="{count} {caution}",
    caution_levels={
        "emergency": "with emergency signs",
        "very_low": "very low",
        "low": "low",
        "very_high": "very high",
        "high": "high",
        "two_days_very_high": "very high two days running",
        "repeated_high": "high again",
        "repeated_low": "low again",
        "symptoms": "with signs of a low or high",
    },
    care_team={  # the most pressing first
        "emergency": "If you have not yet, call your care team today.",
        "very_low": "If you have not yet, call your care team today.",
        "very_high": "If you have not yet, call your care team today.",
        "two_days_very_high": "If you have not yet, call your care team today.",
        "repeated_low": "Call your care team this week.",
        "repeated_high": "Call your care team this week.",
        "symptoms": "Tell your care team this week.",
        "low": "Tell your care team this week.",
        "high": "If it stays high for a day, call your care team.",
    },
    so_far="Your week so far.",
    all_within=(
        "{count} full tests, and all ended within your goal. Well done for checking.",
        "Each of your {count} full tests ended within your goal. Thank you for testing.",
        "You tested {count} meals, and all ended within your goal.",
    ),
    tested_pairs=(
        "{count} full tests: thank you for each one.",
        "{count} full tests: each one taught us something.",
        "You made {count} full tests. Well done.",
    ),
    tested_pair=(
        "One full test: that is a start, thank you.",
        "One full test this week. It counts, thank you.",
    ),
    tested=(
        "You tested this week. Thank you for that.",
        "You kept testing this week. That counts.",
    ),
    empty=(
        "No tests this week. That is all right.",
        "A week without tests. It happens, and the next one is new.",
    ),
    empty_so_far=(
        "No tests yet. There is still time.",
        "Nothing yet, and that is all right.",
    ),
    goals=(
        "Within goal before eating: {before_within} of {before_of} ({low} to {high}). "
        "Two hours after: {after_within} of {after_of} (below {after}).",
        "Before eating, {before_within} of {before_of} within goal ({low} to {high}). "
        "Two hours after, {after_within} of {after_of} (below {after}).",
    ),
    not_judged="Your care team sets your goals, so I judge none.",
    range=("Range: {lowest} to {highest}.", "Lowest {lowest}, highest {highest}."),
    range_one="The value: {value}.",
    off_scale="Off the meter's scale: {count}.",
    rose_apart=(
        "Rose most: {most}, {most_rise}. Least: {least}, {least_rise}. "
        "That is more than meter scatter.",
        "{Most} rose most, {most_rise}. {Least} rose least, {least_rise}. "
        "The meter alone could not do that.",
    ),
    rose_close=(
        "{Most}: {most_rise}. {Least}: {least_rise}. Too close: one test, try it again.",
        "{Most}, {most_rise}; {least}, {least_rise}. That is close: one test, try it again.",
    ),
    rose_single=(
        "{Most}: {most_rise}. That is one test, try it again.",
        "{Most}, {most_rise}: one test, try it again.",
    ),
    rise="up {change} ({before} to {after})",
    fall="down {change} ({before} to {after})",
    no_change="no change ({before} to {after})",
    effects_one=(
        "Activity ({activity}): it {change}, {scatter}.",
        "After activity ({activity}) it {change}, {scatter}.",
    ),
    effects_many=(
        "After activity it fell {fell} of {count} times, {most} at most. Beyond meter scatter: "
        "{beyond}.",
        "Activity: it fell {fell} of {count} times, {most} at most. "
        "Beyond meter scatter: {beyond}.",
    ),
    effects_none=(
        "After activity it did not fall ({count} times).",
        "Activity: it did not fall ({count} times).",
    ),
    went_down="fell {change}",
    went_up="rose {change}",
    stayed="stayed level",
    beyond_scatter="more than meter scatter",
    within_scatter="within meter scatter",
    food_working=(
        "Food was still at work in {count} of your activities: no change told.",
        "In {count} of your activities food was still at work: no change told.",
    ),
    steps={
        Step.AS_USUAL: "meals as usual",
        Step.LIGHTER_MEAL: "lighter meals",
        Step.MEASURED_PLATE: "measured plates",
        Step.MOVE_AFTER: "moving after meals",
    },
    compare_clear=(
        "{Later} rose {later_rise} on average, {earlier} {earlier_rise}: {difference} {direction}, "
        "more than scatter.",
        "On average {later} rose {later_rise}, {earlier} {earlier_rise}: {difference} {direction}, "
        "more than scatter.",
    ),
    compare_days=(  # more than the meter alone, but not more than this person's days
        "{Later} rose {later_rise} on average, {earlier} {earlier_rise}: {difference} {direction}, "
        "but days differ too.",
        "On average {later} rose {later_rise}, {earlier} {earlier_rise}: {difference} {direction}, "
        "but days differ too.",
    ),
    compare_open=(
        "{Later} rose {later_rise} on average, {earlier} {earlier_rise}: {difference} {direction}, "
        "not clear yet.",
        "On average {later} rose {later_rise}, {earlier} {earlier_rise}: {difference} {direction}, "
        "not clear yet.",
    ),
    less="less",
    more="more",
    heights={
        Height.BEFORE: (
            "You start high and meals add little: tell your care team.",
            "The start is high, the meals add little. Tell your care team.",
        ),
        Height.RISE: (
            "Your start is fine: what is on the plate decides.",
            "You start well, so the plate makes the height.",
        ),
        Height.BOTH: (
            "The start is high and the plate adds to it: tell your care team.",
            "Start and plate both make it high: tell your care team.",
        ),
    },
    trend_up="After meals it went up by about {change} a day.",
    trend_down="After meals it came down by about {change} a day.",
    uncounted="Not counted: {reasons}.",
    uncounted_reasons={
        Status.NO_AFTER: "{count} without a second test",
        Status.ATE_AGAIN: "{count} ate again",
        Status.OFF_TIME: "{count} tested off time",
        Status.AROUND_LOW: "{count} around a low",
        Status.OFF_SCALE: "{count} off the scale",
        Status.NO_BEFORE: "{count} without a first test",
    },
    waiting="Second tests still to come: {count}.",
    others="Other tests: {count}.",
    answers="You said: {answers}.",
    answer_words={
        ("hunger", "less"): "less hungry",
        ("hunger", "same"): "as hungry as before",
        ("hunger", "more"): "more hungry",
        ("tiredness", "less"): "less tired",
        ("tiredness", "same"): "as tired as before",
        ("tiredness", "more"): "more tired",
    },
    suggestions={
        Try.TALK: (
            "Next week: keep testing, and show this week to your care team first.",
            "Next week: test as you do now, and talk this week over with your care team.",
        ),
        Try.GOALS_FIRST: (
            "Next week: keep testing, and ask your care team for your goals.",
            "Next week: ask your care team for your own goals, and test as they say.",
        ),
        Try.FIRST_PAIR: (
            "Next week: test one meal before and two hours after. One pair shows what it does.",
            "Try one meal with both tests, before and two hours after: the pair tells the most.",
        ),
        Try.SECOND_TEST: (
            "Next week: fewer meals, but both tests. A first test alone tells little of the plate.",
            "Next week: pick meals where you can test two hours later. The second test tells "
            "what food did.",
        ),
        Try.BEFORE_VALUES: (
            "Next week: show your care team the values before eating. They start high, and meals "
            "add little.",
            "Next: tell your care team how high you start. The meal is not the main reason.",
        ),
        Try.MORE_PAIRS: (
            "Next week: {count} more tests on this step, since more tests make it clear.",
            "Next week: stay on this step for {count} more tests. Then it can be clear.",
        ),
        Try.TEST_AGAIN: (
            "Next week: test {meal} once more, since one test is a hint, not a grade.",
            "Next week: test {meal} again. A second test shows if it holds.",
        ),
        Try.SMALLER: (
            "Next week: {meal} with less starch, more greens: it rose past your goal.",
            "Next week: half the starch, more greens with {meal}: it rose past your goal.",
        ),
        Try.MOVE: (
            "Next week: walk ten minutes after {meal}, since it rose past your goal.",
            "Next week: take a ten minute walk after {meal}. It rose past your goal.",
        ),
        Try.KEEP: (
            "Next week: have {meal} again, since it suits you so far.",
            "Next week: keep {meal} on the menu. It suits you so far.",
        ),
        Try.NEW_FOOD: (
            "Next week: test a food you wonder about. Then you will know.",
            "Next week: pick one food you are not sure of and test it.",
        ),
    },
    cannot_know=(
        "I cannot see sleep, stress, illness or medicine.",
        "Medicine, stress, sleep and portions I cannot see.",
        "Sleep, stress, illness and medicine I cannot know.",
    ),
    every_number='Every number: text "record".',
)
