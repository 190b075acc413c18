"""Which cautions a message brings, in which order.

The rules are those of the project's table of cautions (docs/cautions-table.md). Where a check
has no source named beside it, it is common practice, no source.
"""

from datetime import UTC, datetime, timedelta

import pytest

from bot.caution import Caution
from bot.caution.surprise import doubtful, surprise
from bot.entries import Moment, Suggests, Symptom
from bot.participants import State
from bot.record import Body
from bot.units import Unit
from tests.caution.talk import (
    PASSED_OUT,
    SHAKY,
    THIRSTY,
    VOMITING,
    WRONG_DOSE,
    Talk,
    at,
    felt,
    levels,
    person,
    reading,
    rice,
    sweet,
)

DAY = 24 * 60


# ── Emergencies ──────────────────────────────────────────────────────────────


@pytest.mark.parametrize("with_reading", [None, 62, 110, 262, "HI", "LO"])
def test_an_emergency_symptom_comes_first_at_any_value(with_reading: float | str | None) -> None:
    """Level 3 is at any value: ADA 2026, section 6."""
    talk = Talk()
    told: list[Body] = [PASSED_OUT]
    if with_reading is not None:
        told.insert(0, reading(with_reading, 0))
    assert levels(talk.tell(0, *told))[0] == "emergency"


def test_other_levels_are_sent_beside_an_emergency() -> None:
    talk = Talk()
    assert levels(talk.tell(0, reading(50, 0), PASSED_OUT)) == ["emergency", "very_low"]
    assert levels(talk.tell(200, reading("HI", 200), PASSED_OUT)) == ["emergency", "very_high"]


@pytest.mark.parametrize(
    ("ketone_risk", "value", "expected"),
    [
        (False, None, ["symptoms"]),
        (False, 249, ["symptoms"]),
        (False, 250, ["emergency", "high"]),
        (False, "HI", ["emergency", "very_high"]),
        (True, None, ["emergency", "symptoms"]),
        (True, 110, ["emergency", "symptoms"]),
        (None, 110, ["emergency", "symptoms"]),
        (None, 262, ["emergency", "high"]),
    ],
)
def test_vomiting_with_a_high_value_or_with_ketone_risk(
    ketone_risk: bool | None, value: float | str | None, expected: list[str]
) -> None:
    """Ketoacidosis comes with near-normal values on some medicines: consensus report 2024,
    doi 10.2337/dci24-0032; unknown counts as yes (project rule)."""
    told: list[Body] = [VOMITING] if value is None else [reading(value, 0), VOMITING]
    assert levels(Talk(person(ketone_risk=ketone_risk)).tell(0, *told)) == expected


@pytest.mark.parametrize(("value", "emergency"), [(13.8, False), (13.9, True)])
def test_the_same_in_mmol_l(value: float, emergency: bool) -> None:
    talk = Talk(person(ketone_risk=False, unit=Unit.MMOL_L))
    told = talk.tell(0, reading(value, 0, unit=Unit.MMOL_L), VOMITING)
    assert ("emergency" in levels(told)) is emergency


@pytest.mark.parametrize("first", ["sign", "number"])
def test_a_sign_and_a_number_in_two_messages_belong_together(first: str) -> None:
    talk = Talk(person(ketone_risk=False))
    told: list[tuple[Body, ...]] = [(VOMITING,), (reading(262, 5),)]
    if first == "number":
        told.reverse()
    talk.tell(0, *told[0])
    assert levels(talk.tell(5, *told[1]))[0] == "emergency"


def test_a_sign_of_hours_ago_does_not_belong_to_a_number() -> None:
    talk = Talk(person(ketone_risk=False))
    talk.tell(0, VOMITING)
    assert levels(talk.test(61, 262)) == ["high"]


def test_a_high_that_the_washed_repeat_overruled_makes_no_emergency_of_a_sign() -> None:
    talk = Talk(person(ketone_risk=False))
    talk.test(0, 262)
    talk.test(10, 140)
    assert levels(talk.tell(12, VOMITING)) == ["symptoms"]


def test_the_third_reading_in_one_low_still_low_is_an_emergency() -> None:
    talk = Talk()
    assert levels(talk.test(0, 62)) == ["low"]
    assert levels(talk.test(15, 64)) == ["low"]
    assert levels(talk.test(30, 69)) == ["emergency", "low"]
    assert levels(talk.test(45, 66)) == ["emergency", "low"]


@pytest.mark.parametrize(("third", "emergency"), [(3.8, True), (3.9, False)])
def test_the_third_reading_in_mmol_l(third: float, emergency: bool) -> None:
    talk = Talk(person(unit=Unit.MMOL_L))
    talk.test(0, 3.5)
    talk.test(15, 3.6)
    assert ("emergency" in levels(talk.test(30, third))) is emergency


def test_a_low_that_was_back_in_between_is_counted_anew() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(15, 64)
    talk.test(28, 75)
    assert "emergency" not in levels(talk.test(40, 66))


def test_the_third_low_is_found_however_late_the_second_is_told() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(30, 66, moment=Moment.RECHECK)
    assert levels(talk.tell(40, reading(64, 15)))[0] == "emergency"


def test_below_54_after_sugar_was_advised_is_an_emergency() -> None:
    talk = Talk()
    assert levels(talk.test(0, 62)) == ["low"]
    assert levels(talk.test(15, 53)) == ["emergency", "very_low"]


@pytest.mark.parametrize(("second", "emergency"), [(2.9, True), (3.0, False)])
def test_below_3_0_after_sugar_was_advised(second: float, emergency: bool) -> None:
    talk = Talk(person(unit=Unit.MMOL_L))
    talk.test(0, 3.5)
    assert ("emergency" in levels(talk.test(15, second))) is emergency


def test_sugar_advised_for_symptoms_counts_too_where_it_was_advised() -> None:
    talk = Talk()
    talk.tell(0, SHAKY)
    assert levels(talk.test(10, 50)) == ["emergency", "very_low"]
    calm = Talk(person(may_go_low=False))
    calm.tell(0, SHAKY)
    assert levels(calm.test(10, 50)) == ["very_low"]


def test_advice_of_a_low_that_was_over_does_not_count() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(15, 75)
    assert levels(talk.test(40, 50)) == ["very_low", "repeated_low"]


def test_a_mended_number_is_no_second_reading() -> None:
    talk = Talk()
    talk.test(0, 62)
    assert levels(talk.mend(1, 1, reading(52, 0))) == ["very_low"]


def test_two_very_lows_of_one_message_had_no_advice_between() -> None:
    assert levels(Talk().tell(20, reading(62, 0), reading(50, 19))) == ["very_low", "low"]


# ── Single values ────────────────────────────────────────────────────────────


def test_one_message_with_a_low_and_a_high_brings_both_the_low_first() -> None:
    assert levels(Talk().tell(200, reading(262, 0), reading(62, 199))) == ["low", "high"]


def test_a_caution_is_due_to_somebody_who_sent_stop_and_it_says_when_to_test() -> None:
    (caution,) = Talk(person(state=State.STOPPED)).test(0, 62)
    assert caution.level == "low"
    assert caution.retest_at == at(15)
    assert not caution.asked_again


@pytest.mark.parametrize(("told", "late"), [(60, False), (61, True), (600, True)])
def test_a_reading_told_more_than_an_hour_late(told: float, late: bool) -> None:
    (caution,) = Talk().tell(told, reading(50, 0))
    assert caution.level == "very_low"
    assert caution.late is late


def test_a_repeat_as_high_stands_and_is_cautioned_again() -> None:
    talk = Talk()
    (first,) = talk.test(0, 312)
    (again,) = talk.test(12, 305)
    assert (first.level, first.repeat) == ("very_high", False)
    assert (again.level, again.repeat) == ("very_high", True)


def test_a_plan_quietens_high_only_and_only_without_symptoms() -> None:
    planned = person(high_plan_until=at(14 * DAY))
    talk = Talk(planned)
    (caution,) = talk.test(0, 262)
    assert caution.planned
    (worse,) = talk.test(10, 300)
    assert not worse.planned
    assert not worse.repeat  # the planned one asked for no repeat, so this one does
    assert not talk.test(400, 62)[0].planned
    ill = Talk(planned)
    assert not ill.tell(0, reading(262, 0), THIRSTY)[0].planned
    over = Talk(person(high_plan_until=at(-1)))
    assert not over.test(0, 262)[0].planned


def test_a_caution_gets_shorter_when_it_comes_daily_an_emergency_never() -> None:
    talk = Talk(person(may_go_low=True))
    assert not talk.test(0, 262)[0].shorter
    assert talk.test(DAY, 262)[0].shorter
    assert not talk.test(4 * DAY, 262)[0].shorter
    ill = Talk()
    ill.tell(0, PASSED_OUT)
    assert not ill.tell(5, PASSED_OUT)[0].shorter


# ── Washed repeats and surprises ─────────────────────────────────────────────


def test_a_lower_reading_within_half_an_hour_overrules_a_high() -> None:
    talk = Talk()
    talk.test(0, 262)
    talk.test(30, 249)
    assert doubtful(talk.record) == {1}
    later = Talk()
    later.test(0, 262)
    later.test(31, 249)
    assert doubtful(later.record) == frozenset()


@pytest.mark.parametrize(
    ("first", "second", "minutes", "far"),
    [
        (180, 89, 60, True),
        (180, 90, 60, False),
        (100, 201, 60, True),
        (100, 200, 60, False),
        (180, 80, 61, False),
    ],
)
def test_far_from_the_last_one(first: float, second: float, minutes: float, far: bool) -> None:
    talk = Talk()
    talk.test(0, first)
    talk.test(minutes, second)
    assert surprise(talk.record, talk.record.readings[-1].id) is far


def test_food_between_explains_a_jump() -> None:
    talk = Talk()
    talk.test(0, 100)
    talk.tell(5, rice(5))
    talk.test(55, 240)
    assert not surprise(talk.record, talk.record.readings[-1].id)


def test_a_surprising_low_is_cautioned_at_once() -> None:
    talk = Talk()
    talk.test(0, 180)
    assert levels(talk.test(20, 60)) == ["low"]


def test_a_surprising_high_draws_no_third_high_until_it_is_confirmed() -> None:
    talk = Talk()
    talk.test(0, 262)
    talk.test(DAY, 262)
    talk.test(2 * DAY, 110)
    assert levels(talk.test(2 * DAY + 30, 262)) == ["high"]
    assert levels(talk.test(2 * DAY + 40, 258)) == ["high", "repeated_high"]


# ── Calls to the care team ───────────────────────────────────────────────────


def test_the_second_low_within_seven_days_once() -> None:
    talk = Talk()
    assert levels(talk.test(0, 62)) == ["low"]
    assert levels(talk.test(DAY, 62)) == ["low", "repeated_low"]
    assert levels(talk.test(2 * DAY, 62)) == ["low"]
    assert levels(talk.test(8 * DAY, 62)) == ["low", "repeated_low"]


@pytest.mark.parametrize(("apart", "counts"), [(168 * 60 - 1, True), (168 * 60, False)])
def test_seven_days_are_168_hours(apart: float, counts: bool) -> None:
    talk = Talk()
    talk.test(0, 62)
    assert ("repeated_low" in levels(talk.test(apart, 62))) is counts


@pytest.mark.parametrize(("gap", "counts"), [(29, False), (30, True), (31, True)])
def test_an_episode_lasts_until_half_an_hour_after_its_last_reading(
    gap: float, counts: bool
) -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(15, 75)
    assert ("repeated_low" in levels(talk.test(gap, 65))) is counts


def test_a_recheck_answered_late_belongs_to_its_low() -> None:
    talk = Talk()
    talk.test(0, 62)
    assert levels(talk.test(40, 64, moment=Moment.RECHECK)) == ["low"]


def test_the_third_high_within_seven_days_once() -> None:
    talk = Talk()
    assert levels(talk.test(0, 262)) == ["high"]
    assert levels(talk.test(10, 262)) == ["high"]  # its repeat
    assert levels(talk.test(DAY, 262)) == ["high"]
    assert levels(talk.test(2 * DAY, 262)) == ["high", "repeated_high"]
    assert levels(talk.test(3 * DAY, 262)) == ["high"]


def test_the_third_high_is_found_when_the_first_is_told_last() -> None:
    talk = Talk()
    talk.test(DAY, 262)
    talk.test(2 * DAY, 262)
    assert levels(talk.tell(2 * DAY + 60, reading(262, 0))) == ["high", "repeated_high"]


def test_an_overruled_high_counts_for_nothing() -> None:
    talk = Talk()
    for day in range(3):
        talk.test(day * DAY, 320)
        said = talk.test(day * DAY + 10, 170)
        assert said == ()
    assert "repeated_high" not in levels(talk.test(3 * DAY, 262))


def test_very_high_on_two_local_dates_running_once_a_day() -> None:
    """ADA 2026, section 13, p. 297: above 300 over two days, call promptly (care homes)."""
    talk = Talk()
    assert levels(talk.test(0, 300)) == ["very_high"]
    assert levels(talk.test(DAY, "HI")) == ["very_high", "two_days_very_high"]
    assert levels(talk.test(DAY + 120, 310)) == ["very_high", "repeated_high"]
    assert "two_days_very_high" in levels(talk.test(2 * DAY, 310))


@pytest.mark.parametrize(("second", "counts"), [(299, False), (300, True)])
def test_two_days_from_300(second: float, counts: bool) -> None:
    talk = Talk()
    talk.test(0, 300)
    assert ("two_days_very_high" in levels(talk.test(DAY, second))) is counts


def test_a_day_whose_very_high_was_overruled_does_not_count() -> None:
    talk = Talk()
    talk.test(0, 310)
    talk.test(10, 150)
    assert levels(talk.test(DAY, 310)) == ["very_high"]


def test_two_days_are_dates_of_the_persons_own_zone() -> None:
    """23:50 and 00:10 in Lima are two dates there, 04:50 and 05:10 UTC one."""
    lima = person(zone="America/Lima")
    evening = (datetime(2026, 3, 3, 4, 50, tzinfo=UTC) - at(0)) / timedelta(minutes=1)
    talk = Talk(lima)
    talk.test(evening, 310)
    assert "two_days_very_high" in levels(talk.test(evening + 20, 310))
    assert "two_days_very_high" not in levels(_on_one_date_in_utc(evening))


def _on_one_date_in_utc(evening: float) -> tuple[Caution, ...]:
    talk = Talk()
    talk.test(evening, 310)
    return talk.test(evening + 20, 310)


def test_a_day_told_late_completes_two_days() -> None:
    talk = Talk()
    talk.test(DAY, 310)
    assert levels(talk.tell(DAY + 60, reading(310, 0))) == ["very_high", "two_days_very_high"]


# ── Symptoms and wrong doses ─────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("value", "expected"),
    [
        (None, ["symptoms"]),
        (69, ["low"]),
        (70, ["symptoms"]),
        (249, ["symptoms"]),
        (250, ["high"]),
    ],
)
@pytest.mark.parametrize("symptom", [SHAKY, THIRSTY])
def test_symptoms_that_no_number_explains(
    symptom: Symptom, value: float | None, expected: list[str]
) -> None:
    told: list[Body] = [symptom] if value is None else [reading(value, 0), symptom]
    assert levels(Talk().tell(0, *told)) == expected


@pytest.mark.parametrize(("value", "explained"), [(3.8, True), (3.9, False), (13.9, True)])
def test_symptoms_and_numbers_in_mmol_l(value: float, explained: bool) -> None:
    told = Talk().tell(0, reading(value, 0, unit=Unit.MMOL_L), SHAKY)
    assert ("symptoms" not in levels(told)) is explained


def test_a_wrong_dose_is_cautioned_whatever_the_number() -> None:
    (caution,) = Talk().tell(0, WRONG_DOSE)
    assert caution.level == "symptoms"
    assert caution.wrong_dose
    assert levels(Talk().tell(0, reading(62, 0), WRONG_DOSE)) == ["low", "symptoms"]


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("vomiting", True),
        ("vomitng", True),
        ("threw up", True),
        ("been sick twice", True),
        ("belly pain", True),
        ("stomach hurts", True),
        ("breathing fast", True),
        ("deep breathing", True),
        ("hyperventilating", True),
        ("ketones high", True),
        ("vómitos", True),
        ("dolor de barriga", True),
        ("respiración rápida", True),
        ("very thirsty", False),
        ("so thristy", False),
        ("parched", False),
        ("peeing all the time", False),
        ("passing much water", False),
        ("blurred sight", False),
        ("seeing double", False),
        ("feeling high", False),
        ("dry mouth", False),
        ("mucha sed", False),
        ("orino mucho", False),
        ("visión borrosa", False),
        ("thirsty and throwing up", True),
    ],
)
def test_which_high_symptoms_go_with_ketones(text: str, sign: bool) -> None:
    """Signs: health service pages on ketoacidosis; consensus report 2024."""
    talk = Talk()
    assert ("emergency" in levels(talk.tell(0, felt(text, Suggests.HIGH)))) is sign


def test_sugar_told_after_a_low_changes_nothing_about_the_next_low() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.tell(2, sweet("juice", 2))
    assert levels(talk.test(15, 64)) == ["low"]
