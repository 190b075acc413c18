"""The programme, in English."""

from bot.entries import Step
from bot.programme.telling import Reason
from bot.programme.testing import Rhythm
from bot.words.programme import ProgrammeSentences

PROGRAMME = ProgrammeSentences(
    steps={
        Step.AS_USUAL: "meals as usual",
        Step.LIGHTER_MEAL: "lighter meals",
        Step.MEASURED_PLATE: "a measured plate",
        Step.MOVE_AFTER: "moving after you eat",
    },
    rhythms={
        Rhythm.DAILY: "every day",
        Rhythm.TWICE_A_WEEK: "twice a week",
        Rhythm.WEEKLY: "once a week",
        Rhythm.NEW_FOODS: "only for new foods",
    },
    less="less",
    more="more",
    clear="With {later} your glucose rises {change} {unit} {direction} than with {earlier} "
    "({tests} and {before} tests). That is more than scatter.",
    not_clear="With {later} your glucose rises {change} {unit} {direction} than with {earlier} so "
    "far. That is not clear yet.",
    not_clear_more="With {later} your glucose rises {change} {unit} {direction} than with "
    "{earlier} so far. That is not clear yet: about {pairs} more full tests would tell.",
    offer='You have enough tests to try the next step: {step}. When you want it, text "next step".',
    offer_waits="You have enough tests for the next step: {step}. Ask your educator first. They "
    "say whether it is safe for you.",
    offer_asked="You have enough tests for the next step: {step}. I ask your educator whether it "
    "is safe for you, and text you when they say so.",
    fewer="{within} of your last {of} full tests were within both goals. Shall I ask for tests "
    "{rhythm} from now on?",
    fewer_waits="{within} of your last {of} full tests were within both goals. Ask your educator "
    "whether testing {rhythm} is enough now.",
    fewer_asked="{within} of your last {of} full tests were within both goals. I ask your educator "
    "whether testing {rhythm} is enough now. Until then I go on as before.",
    more_often="Some of your last tests left your goals. Shall I ask for tests {rhythm} again?",
    rhythm_buttons=("yes", "no"),
    rhythm_set="Good. I will ask for tests {rhythm}.",
    rhythm_kept="Good. I go on as before.",
    telling={
        Reason.NEVER_TESTED: "A good one to test next: {meal}. You eat it, and it has no test yet.",
        Reason.ONE_TEST: "A good one to test next: {meal}. It has one test, and a second would "
        "tell much.",
        Reason.STILL_UNSURE: "A good one to test next: {meal}. Its {tests} tests do not agree yet.",
    },
)
