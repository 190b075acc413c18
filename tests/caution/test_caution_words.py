"""What the cautions say: what must be in them, what must never be, and how easy they read.

What must be said is the project's table of cautions; its sources are in docs/safety.md. That no
dose, drug to take or diagnosis is named is a project rule, in line with all bodies read.
"""

import re
from dataclasses import replace

import pytest
import textstat  # type: ignore[import-untyped]

from bot.caution import Caution, Level
from bot.caution.caution import Why
from bot.entries import By
from bot.participants import Limits
from bot.words.cautions import caution_words
from bot.words.english.cautions import CAUTIONS
from tests.caution.every_text import (
    catalogue,
    caution_texts,
    cautions,
    lines,
    noted,
    recheck_texts,
    said,
)
from tests.caution.talk import at, person
from tests.words.reading_level import grade

CAUTIONED = tuple(dict.fromkeys(caution_texts()))
RECHECKS = tuple(dict.fromkeys(recheck_texts()))
LINES = tuple(dict.fromkeys(lines()))
CATALOGUE = tuple(catalogue())
ALL = (*dict.fromkeys(text for _, text in CAUTIONED), *RECHECKS, *LINES)

WARNING_SIGNS = (
    "vomit",
    "belly pain",
    "fruity breath",
    "fast deep breathing",
    "drowsy",
    "confused",
)


def of(level: Level, **flags: object) -> list[str]:
    """Every text of the cautions of a level that have these flags."""
    return [
        text
        for caution, text in CAUTIONED
        if caution.level is level
        and all(getattr(caution, name) == value for name, value in flags.items())
    ]


def hold(texts: list[str], *must: str) -> None:
    """Each text holds each pattern."""
    assert texts
    for text in texts:
        for pattern in must:
            assert re.search(pattern, text, re.IGNORECASE), (pattern, text)


# ── What must be said ────────────────────────────────────────────────────────


def test_an_emergency_opens_with_the_call() -> None:
    """Emergency number; nothing by mouth if not fully awake; glucagon that was prescribed: ADA
    education sheet 2024, hospital pages; 15 g: ADA 2026, recommendation 6.15."""
    texts = of(Level.EMERGENCY)
    hold(
        texts,
        r"^Call (your local emergency number|112) now\.",
        "not fully awake, give nothing by mouth",
        "awake and low needs 15 g of fast sugar now",
        "glucagon if it was prescribed",
    )


def test_very_low_opens_with_sugar() -> None:
    """15 g, again after 15 minutes: ADA 2026, p. 144 and recommendation 6.15."""
    hold(of(Level.VERY_LOW, late=False), r"^(Take|Give) 15 g of fast sugar now")
    hold(
        of(Level.VERY_LOW),
        "15 g of fast sugar now",
        "alone",
        r"(Do|must) not drive\.",
        "Test again 15 minutes after",
        r"(emergency number|112) if (you|they) cannot swallow",
        "get worse",
        "no better in 15 minutes",
        "Call (your|their) care team today",
    )


def test_low() -> None:
    hold(of(Level.LOW, late=False), r"^(Take|Give) 15 g of fast sugar now")
    hold(
        of(Level.LOW),
        "15 g of fast sugar now",
        r"not drive until (you|they) are back at (70 mg/dL|3\.9 mmol/L) and feel well",
        "as long as (your|their) care team says",
        "Test again 15 minutes after",
        r"if (your|the) next meal is over an hour away",
    )


def test_the_limit_of_the_person_and_the_unit_of_their_number() -> None:
    """80 = 4.4 is a published pair."""
    raised = person(limits=Limits(low=80))
    assert "back at 80 mg/dL" in said(Caution(level=Level.LOW, cause=1, reading=noted(72)), raised)
    assert "back at 4.4 mmol/L" in said(
        Caution(level=Level.LOW, cause=1, reading=noted(4.1)), raised
    )
    lowered = person(limits=Limits(high=200))
    assert "each 200 mg/dL or more" in said(
        Caution(level=Level.REPEATED_HIGH, cause=1, reading=noted(210)), lowered
    )
    assert "250 mg/dL or more" in said(
        Caution(level=Level.REPEATED_HIGH, cause=1, reading=noted(262))
    )
    assert "300 mg/dL or more on two days" in said(
        Caution(level=Level.TWO_DAYS_VERY_HIGH, cause=1, reading=noted(312)), lowered
    )


def test_the_exact_number_is_in_each_caution_of_a_value() -> None:
    for caution, text in CAUTIONED:
        if caution.reading is not None and caution.level in (Level.LOW, Level.HIGH):
            assert re.search(r"(62|262) mg/dL|(3\.4|14\.5) mmol/L", text), text


def test_very_high_asks_for_a_washed_repeat() -> None:
    """Wash, dry, repeat; HI again: emergency care (hospital leaflets). Signs: health service
    pages on ketoacidosis. 300 staying: call the care team (hospital leaflets)."""
    first = of(Level.VERY_HIGH, repeat=False, late=False)
    hold(first, r"^Wash and dry (your|their) hands\. Then test again now\.")
    hold(
        of(Level.VERY_HIGH, repeat=False),
        "Wash and dry",
        "if the new test is as high, call (your|their) care team today",
        "shows HI again, get urgent care now",
    )
    hold(of(Level.VERY_HIGH), "water", *WARNING_SIGNS, "emergency number|112")


def test_high() -> None:
    first = of(Level.HIGH, repeat=False, late=False, planned=False)
    hold(first, r"^Wash and dry (your|their) hands\. Then test again now\.")
    hold(
        of(Level.HIGH, planned=False),
        "water",
        *WARNING_SIGNS,
        "care team if it stays this high for a day",
    )


def test_a_repeat_as_high_has_its_own_words() -> None:
    again = of(Level.VERY_HIGH, repeat=True, late=False)
    hold(again, "(^Call (your|their) care team today|^Get urgent care now).*again")
    assert not any("Wash" in text for text in (*again, *of(Level.HIGH, repeat=True, late=False)))
    hi = [text for text in again if "HI again" in text]
    hold(hi, "^Get urgent care now")


def test_a_plan_makes_one_line_of_a_high() -> None:
    hold(of(Level.HIGH, planned=True), "262 mg/dL is high", "emergency number|112", "nobody")
    for text in of(Level.HIGH, planned=True):
        assert "\n" not in text
        assert len(text) < 260


def test_calls_to_the_care_team() -> None:
    hold(of(Level.TWO_DAYS_VERY_HIGH), "^Call (your|their) care team today")
    hold(of(Level.REPEATED_HIGH), "^Call (your|their) care team this week")
    hold(of(Level.REPEATED_LOW), "^Call (your|their) care team this week", "only.*medicine")


def test_low_symptoms_are_treated_first_unless_lows_are_impossible() -> None:
    caution = Caution(level=Level.SYMPTOMS, cause=1, low_symptoms=True)
    possible = said(caution)
    assert possible.startswith("Treat this as a low. Take 15 g of fast sugar now")
    assert "Then test." in possible
    impossible = said(caution, person(may_go_low=False))
    assert impossible.startswith("Test now.")
    assert "If it is below 70 mg/dL, take 15 g" in impossible


def test_high_symptoms_are_tested() -> None:
    texts = of(Level.SYMPTOMS, low_symptoms=False, high_symptoms=True, wrong_dose=False)
    hold(texts, r"^Wash and dry.*Test now\.", "water", *WARNING_SIGNS)


def test_a_wrong_dose_opens_with_the_call_and_names_no_amount() -> None:
    hold(of(Level.SYMPTOMS, wrong_dose=True), r"^Call (your|their) care team or .* now\.", "test")
    alone = of(Level.SYMPTOMS, wrong_dose=True, low_symptoms=False, high_symptoms=False)
    for text in alone:
        assert not re.search(r"\d", text.replace("112", "")), text


def test_a_late_one_opens_with_test_now() -> None:
    for level in (Level.VERY_LOW, Level.LOW):
        hold(of(level, late=True), r"^Test now\.")
    for level in (Level.VERY_HIGH, Level.HIGH):
        hold(of(level, late=True), r"^Test now\.")


@pytest.mark.parametrize("level", list(Level))
def test_nobody_watches_and_the_care_team_comes_last(level: Level) -> None:
    hold(of(level), "nobody watches this chat day and night")
    last = r"advice comes first\.$"
    if level is Level.EMERGENCY:
        assert not any(re.search(last, text) for text in of(level))
    else:
        hold(of(level), r"(Your|Their) care team's own " + last)


def test_rechecks_say_that_nobody_watches_and_name_no_value() -> None:
    hold(list(RECHECKS), "nobody watches this chat day and night", r"\btest\b")
    for text in RECHECKS:
        assert not re.search(r"\d", text.replace("112", "")), text


def test_who_sent_stop_is_told_when_to_test() -> None:
    low = Caution(level=Level.LOW, cause=1, reading=noted(62), retest_at=at(15), asked_again=False)
    assert "Test again 15 minutes after the sugar, at 10:15." in said(low)
    assert "I will ask at 10:15." in said(replace(low, asked_again=True))


def test_times_are_those_of_the_persons_clock() -> None:
    low = Caution(level=Level.LOW, cause=1, reading=noted(62), retest_at=at(15))
    assert "I will ask at 05:15." in said(low, person(zone="America/Lima"))


def test_a_late_reading_of_another_day_is_not_named_by_a_clock_time() -> None:
    late = Caution(level=Level.LOW, cause=1, reading=noted(62), late=True, retest_at=at(195))
    assert "62 mg/dL at 10:00 was low." in said(late)
    tomorrow = caution_words(late, person(), CAUTIONS, now=at(24 * 60))
    assert "62 mg/dL on an earlier day was low." in tomorrow


def test_what_a_person_brings_changes_the_words() -> None:
    low = Caution(level=Level.LOW, cause=1, reading=noted(62), retest_at=at(15))
    high = Caution(level=Level.HIGH, cause=1, reading=noted(262))
    glucose = said(low, person(acarbose=True))
    assert "glucose tablets" in glucose
    assert "juice" not in glucose
    assert "tablespoon" not in glucose
    assert "juice" not in said(low, person(fluid_limit=True))
    assert "Keep to your fluid limit." in said(high, person(fluid_limit=True))
    assert "Call 999 if" in said(low, person(emergency_number="999"))
    assert "Call your local emergency number if" in said(low)


def test_a_helper_is_told_what_to_do_for_the_person() -> None:
    for caution in cautions():
        text = said(caution, by=By.HELPER)
        assert not re.search(r"\byour? (hands|care team|meter|next meal)\b", text), text
        assert "Take 15 g" not in text


def test_a_shorter_caution_keeps_every_action() -> None:
    for caution in cautions():
        long, short = said(replace(caution, shorter=False)), said(replace(caution, shorter=True))
        dropped = set(re.split(r"(?<=\.) ", long)) - set(re.split(r"(?<=\.) ", short))
        assert dropped <= {
            "Food on the fingers can make a test read too high.",
            "How you feel counts more than the number.",
        }
    high = Caution(level=Level.HIGH, cause=1, reading=noted(262))
    assert len(said(replace(high, shorter=True))) < len(said(high))


def test_no_text_is_longer_than_900_signs() -> None:
    assert max(map(len, ALL)) <= 900


def test_every_gap_is_filled() -> None:
    for text in ALL:
        assert not re.search(r"[{}]|None|  |\.\.| \.", text), text


def test_each_reason_for_an_emergency_is_worded() -> None:
    shown = {said(Caution(level=Level.EMERGENCY, cause=1, why=why)) for why in Why}
    assert len(shown) == 3  # a low that stays needs the same words for either reason


# ── What must never be said ──────────────────────────────────────────────────

NEVER = {
    "an amount of a drug": r"\d[\d.,]*\s*(units?\b|IU\b|mg\b(?!/dL)|mcg|µg|pills?\b|doses?\b)",
    "a drug": (
        r"insulin|metformin|gli[a-z]+(ide|in)\b|sulfonylurea|gliptin|gliflozin|aspirin|"
        r"paracetamol|ibuprofen|acarbose|miglitol|antibiotic|steroid"
    ),
    "taking, leaving out or changing a drug": (
        r"\b(take|skip|stop|start|double|halve|reduce|raise|lower|inject|adjust)\b[^.]*"
        r"\b(medicine|medication|tablets?(?! or glucose)|pill|dose|injection)\b"
    ),
    "a dose": r"\bdos(e|es|age|ing)\b",
    "a diagnosis": (
        r"keto|\bDKA\b|hypoglyc|hyperglyc|hyperosmolar|\bcoma\b|\bstroke\b|heart attack|"
        r"infection|type 1|prediabet|you have (an?|the)\b|\bdiagnos|dehydrat|A1C"
    ),
    "praise beside bad news": r"!|great|well done|good job|congrat|excellent|proud|perfect",
    "exercise at a high value": r"\b(walk|exercise|work ?out|jog|run|be active|move about)\b",
    "a promise": r"\b(safe|don't worry|do not worry|nothing to worry|will be fine|harmless)\b",
    "jargon": r"\b(glycem|carbohydrate|postprandial|mmHg|bolus|basal|symptom|consult|administer)",
}


@pytest.mark.parametrize("what", NEVER)
def test_no_sentence_names(what: str) -> None:
    pattern = re.compile(NEVER[what], re.IGNORECASE)
    for name, sentence in CATALOGUE:
        if what.startswith("taking") and name == "sugar_glucose_only":
            continue
        found = pattern.search(sentence)
        assert found is None, (name, sentence)
    for text in ALL:
        found = pattern.search(text.replace("glucose tablets or glucose gel", ""))
        assert found is None, text


@pytest.mark.parametrize(
    ("what", "planted"),
    [
        ("an amount of a drug", "Take 4 units now."),
        ("an amount of a drug", "Take 500 mg more."),
        ("a drug", "Your insulin works."),
        ("a drug", "Ask about gliclazide."),
        ("taking, leaving out or changing a drug", "Skip your next tablet."),
        ("taking, leaving out or changing a drug", "Do not stop your medicine."),
        ("a dose", "Mind the dose."),
        ("a diagnosis", "This may be ketoacidosis."),
        ("a diagnosis", "You have a cold."),
        ("praise beside bad news", "Great, you tested."),
        ("exercise at a high value", "A walk brings it down."),
        ("a promise", "Do not worry."),
        ("jargon", "Eat some carbohydrate."),
    ],
)
def test_the_patterns_bite(what: str, planted: str) -> None:
    assert re.search(NEVER[what], planted, re.IGNORECASE)


def test_glucagon_is_named_only_as_prescribed() -> None:
    for text in ALL:
        for sentence in re.split(r"(?<=\.) ", text):
            assert "glucagon" not in sentence or "prescribed" in sentence


def test_medicine_is_named_only_to_leave_it_to_the_care_team() -> None:
    for text in ALL:
        for sentence in re.split(r"(?<=\.) ", text):
            if "medicine" in sentence:
                assert re.match(r"Only|Do not change|I cannot help", sentence), sentence


# ── How easy it reads ────────────────────────────────────────────────────────

GRADE = 6


@pytest.mark.parametrize("kind", ["cautions", "rechecks", "lines"])
def test_grade_6_or_lower_by_two_measures(kind: str) -> None:
    """Flesch-Kincaid grade (Kincaid and others, 1975) by syllables, and the automated readability
    index (Senter and Smith, 1967) by letters; both by textstat. Both are rates per word and per
    sentence, so a text of forty words is treated fairly (SMOG asks for thirty sentences)."""
    texts = {
        "cautions": [text for _, text in CAUTIONED],
        "rechecks": list(RECHECKS),
        "lines": list(LINES),
    }[kind]
    for text in dict.fromkeys(texts):
        assert grade(text) <= GRADE, (grade(text), text)
        letters = textstat.automated_readability_index(text)
        assert letters <= GRADE, (letters, text)


def test_one_instruction_a_sentence_and_short_ones() -> None:
    """Common practice, no source: the longest is 15 g of sugar with what that is."""
    for text in ALL:
        for sentence in re.split(r"(?<=[.?]) ", text):
            assert len(sentence.split()) <= 27, sentence
