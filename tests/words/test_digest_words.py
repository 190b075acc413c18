"""The week in words: short, plain, complete, safe, and not the same every time."""

import re
from dataclasses import fields, is_dataclass, replace
from datetime import timedelta
from itertools import pairwise

import pytest
import textstat  # type: ignore[import-untyped]
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.entries import Answer, Moment, Step
from bot.glucose.height import Height
from bot.programme.suggest import Try
from bot.units import Unit
from bot.words.digest import MOST_CHARACTERS, MOST_WORDS
from bot.words.english.digest import DIGEST
from demo.contact_sheet import told
from demo.diary import MONDAY, Diary, somebody
from demo.weeks import WEEKS, crowded
from tests.words.reading_level import grade

HIGHEST_GRADE = 6


def fullest() -> Diary:
    """Everything at once: two steps, a trend, activities, uncounted meals, lone readings."""
    diary = Diary()
    for day in range(5):
        diary.meal(day - 8, "12:30", "boiled plantain with fried fish", 118, 182 + 3 * day)
    diary.step(-1, "19:00", Step.LIGHTER_MEAL)
    for day in range(6):
        diary.meal(day, "12:30", "steamed plantain with grilled fish", 120, 205 - 8 * day)
        diary.meal(day, "19:00", "brown bread with scrambled egg", 112, 190 - 9 * day)
    diary.meal(0, "08:00", "oat porridge with banana", 116, 188, minutes=165)
    diary.meal(1, "08:00", "oat porridge with banana", 116)
    diary.activity(2, "17:20", "walked to the market", 30, before=160, after=120)
    diary.reading(3, "07:00", 101, Moment.FASTING)
    return diary


ANSWERS = (Answer(about="hunger", how="less"), Answer(about="tiredness", how="same"))


@pytest.mark.parametrize("shift", range(6))
@pytest.mark.parametrize("name", WEEKS)
def test_short_and_plain_in_every_way_of_saying_it(name: str, shift: int) -> None:
    make, so_far = WEEKS[name]
    week = make()
    text = told(replace(week, to_date=week.to_date + timedelta(weeks=shift)), so_far=so_far)
    assert len(text.split()) <= MOST_WORDS
    assert len(text) <= MOST_CHARACTERS
    assert "{" not in text
    if name not in ("scripts", "long_names"):  # the person's own words are not ours to grade
        assert grade(text) <= HIGHEST_GRADE
        # Automated readability index (Senter and Smith, 1967): by letters, not syllables.
        assert textstat.automated_readability_index(text) <= HIGHEST_GRADE


def test_every_sentence_is_plain_by_itself() -> None:
    for text in _sentences(DIGEST):
        plain = re.sub(r"\{[a-zA-Z_]+\}", "8", text)
        if len(plain.split()) >= 9:  # a grade of fewer words says nothing
            assert grade(plain) <= HIGHEST_GRADE, text


def _sentences(value: object) -> list[str]:
    if isinstance(value, str):
        return [value]
    if isinstance(value, tuple):
        return [text for one in value for text in _sentences(one)]
    if isinstance(value, dict):
        return [text for one in value.values() for text in _sentences(one)]
    if is_dataclass(value):
        return [text for one in fields(value) for text in _sentences(getattr(value, one.name))]
    return []


def test_every_choice_has_its_words() -> None:
    assert set(DIGEST.suggestions) == set(Try)
    assert set(DIGEST.heights) == set(Height)
    assert set(DIGEST.steps) == set(Step)
    assert set(DIGEST.care_team) == set(DIGEST.caution_levels) == set(DIGEST.picture.cautions)


def test_every_sentence_that_can_vary_does() -> None:
    for name in ("goals", "rose_apart", "rose_close", "tested_pairs", "cannot_know", "empty"):
        assert len(set(getattr(DIGEST, name))) >= 2
    assert all(len(set(ways)) >= 2 for ways in DIGEST.suggestions.values())


def test_the_facts_of_a_good_week() -> None:
    text = told(WEEKS["mixed"][0]())
    for fact in (
        "6 of 6", "(80 to 130)", "5 of 6", "(below 180)", "up 82 (122 to 204)",
        "down 2 (128 to 126)", "96", "204 mg/dL", "1 without a second test", "Other tests: 2",
        "walked, 20 min", "fell 41, more than meter scatter", "38", "65",
    ):  # fmt: skip
        assert fact in text, fact


def test_what_the_picture_shows_is_never_left_out() -> None:
    """Of the fullest week only figures that the picture does not show may go."""
    week = fullest().week()
    for shift in range(6):
        later = replace(week, to_date=week.to_date + timedelta(weeks=shift))
        text = told(later, answers=ANSWERS)
        assert len(text.split()) <= MOST_WORDS
        for fact in (
            "of 12", "101", "205", "up 85", "up 78", "Not counted: 1 without", "1 tested off",
            "Other tests: 1", "fell 40", "ighter meals rose 60", "as usual 70",
        ):  # fmt: skip
            assert fact in text, text


def test_what_went_well_comes_first_unless_a_caution_must() -> None:
    assert told(WEEKS["good"][0]()).splitlines()[0] in {
        way.format(count=5) for way in DIGEST.all_within
    }
    cautions = {"with_low": "1 low", "with_hi": "2 very high", "with_lo": "1 very low"}
    for name, counted in cautions.items():
        first = told(WEEKS[name][0]()).splitlines()[0]
        assert counted in first
        assert "care team" in first


def test_the_most_pressing_call_is_the_one_that_is_told() -> None:
    diary = Diary().reading(1, "10:00", 62).caution(1, "10:00", "low")
    diary.reading(2, "10:00", 340).caution(2, "10:00", "very_high")
    assert "today" in told(diary.week()).splitlines()[0]


def test_a_low_that_no_caution_told_of_opens_all_the_same() -> None:
    assert "1 low" in told(Diary().reading(1, "10:00", 62).week()).splitlines()[0]


def test_a_low_week_is_not_praised_for_its_values() -> None:
    text = told(WEEKS["with_low"][0]())
    assert not any(way.format(count=2) in text for way in DIGEST.all_within)


FORBIDDEN = re.compile(
    r"less starch|half the starch|smaller|eat less|walk|move more|fewer (tests|meals)", re.I
)


@settings(max_examples=60, deadline=None)
@given(
    values=st.lists(st.tuples(st.integers(60, 260), st.integers(60, 420)), min_size=1, max_size=8),
    shift=st.integers(0, 5),
    step=st.sampled_from(Step),
    released=st.booleans(),
)
def test_no_suggestion_to_eat_less_or_move_more_in_a_week_with_a_low_or_from_300(
    values: list[tuple[int, int]], shift: int, step: Step, released: bool
) -> None:
    diary = Diary(who=somebody(may_go_low=not released))
    diary.step(-3, "09:00", step)
    for number, (before, after) in enumerate(values):
        diary.meal(number % 6, ("08:00", "14:00")[number // 6], "rice", before, after)
    week = diary.week()
    week = replace(week, to_date=week.to_date + timedelta(weeks=shift))
    if any(value < 70 or value >= 300 for pair in values for value in pair):
        assert not FORBIDDEN.search(told(week))


def test_no_dose_no_drug_no_diagnosis() -> None:
    wrong = re.compile(r"\b(dose|units?|insulin|metformin|pill|diabetic|a1c|diagnos)", re.I)
    assert not any(wrong.search(text) for text in _sentences(DIGEST))


def test_a_meal_is_called_the_most_only_beyond_the_meters_scatter() -> None:
    """Reference, section 5, case 3: 120 to 180 against 120 to 180 differ from 46 on."""
    near = Diary().meal(0, "12:30", "rice", 120, 180).meal(1, "12:30", "bread", 120, 150).week()
    far = Diary().meal(0, "12:30", "rice", 120, 210).meal(1, "12:30", "bread", 120, 130).week()
    for shift in range(4):
        text = told(replace(near, to_date=near.to_date + timedelta(weeks=shift)))
        assert "one test, try it again" in text
        assert not re.search(r"\b(most|least|highest rise|lowest rise)\b", text)
        text = told(replace(far, to_date=far.to_date + timedelta(weeks=shift)))
        assert "rose most" in text.lower() or "Rose most" in text
        assert "one test, try it again" not in text


def test_one_meal_alone_is_one_test() -> None:
    assert "one test, try it again" in told(WEEKS["one_pair"][0]())


def test_same_facts_in_another_week_are_said_otherwise_and_always_the_same_way() -> None:
    def in_week(weeks: int) -> str:
        diary = Diary(monday=MONDAY + timedelta(weeks=weeks))
        return told(diary.meal(0, "12:30", "rice", 118, 160).week())

    assert in_week(0) == in_week(0)
    lines = [in_week(week).splitlines() for week in range(4)]
    for one, other in pairwise(lines):
        assert sum(first != second for first, second in zip(one, other, strict=True)) >= 3


def test_the_week_so_far() -> None:
    text = told(WEEKS["so_far"][0](), so_far=True)
    assert text.startswith(DIGEST.so_far)
    assert "Second tests still to come: 1." in text
    assert "Not counted" not in text
    nothing = told(Diary().week(), so_far=True).splitlines()
    assert nothing[0] == DIGEST.so_far
    assert nothing[1] in DIGEST.empty_so_far


def test_a_week_with_too_little_says_so_kindly() -> None:
    assert told(Diary().week()).splitlines()[0] in DIGEST.empty
    assert "two hours" in told(Diary().week())
    assert "118" in told(Diary().reading(1, "08:00", 118).week())


def test_millimoles_are_those_of_the_meter() -> None:
    text = told(WEEKS["mmol"][0]())
    assert "(4.4 to 7.2)" in text
    assert "(below 10.0)" in text
    assert "mg/dL" not in text
    assert "mmol/L" in text


def test_a_change_is_converted_itself_and_not_as_the_difference_of_its_ends() -> None:
    """Rises in mmol/L: 44.9 mg/dL is 2.5 though 6.5 and 9.1 lie 2.6 apart."""
    diary = Diary(who=somebody(unit=Unit.MMOL_L)).meal(0, "12:30", "rice", 117.1, 163.9)
    assert "up 2.6 (6.5 to 9.1)" in told(diary.week())


def test_in_pregnancy_no_goal_is_judged() -> None:
    text = told(WEEKS["pregnant"][0]())
    assert "130" not in text
    assert "goal (" not in text
    assert "care team" in text


def test_own_goals_are_the_ones_that_are_named() -> None:
    assert "(90 to 150)" in told(WEEKS["own_goals"][0]())


def test_activity_while_food_works_is_not_credited() -> None:
    diary = Diary().meal(0, "12:30", "rice", 118, 160)
    diary.activity(0, "14:00", "walked", 20, before=190, after=140)
    text = told(diary.week())
    assert "fell 50" not in text
    assert "food was still at work" in text.lower()


def test_answers_stand_beside_the_figures_and_explain_nothing() -> None:
    text = told(WEEKS["good"][0](), answers=ANSWERS)
    assert "You said: less hungry, as tired as before." in text
    assert "because" not in text


def test_a_crowded_week_keeps_to_its_words() -> None:
    for pairs in (5, 20, 40):
        assert len(told(crowded(pairs), answers=ANSWERS).split()) <= MOST_WORDS


@settings(max_examples=60, deadline=None)
@given(dish=st.text(max_size=300))
def test_any_dish_fits(dish: str) -> None:
    week = Diary().meal(0, "12:30", dish, 110, 190).meal(1, "12:30", f"{dish} too", 110, 120).week()
    text = told(week)
    assert len(text.split()) <= MOST_WORDS
    assert len(text) <= MOST_CHARACTERS
