"""The ladder after a low or a high. 15 minutes: ADA 2026, section 6, p. 144 and recommendation
6.15; the other waits are common practice, no source."""

from datetime import timedelta

import pytest

from bot.caution.activity import carbohydrate_first
from bot.caution.ladder import (
    ladder_closed,
    low_taken_back,
    rechecks,
    recovery,
    word_to_educator,
)
from bot.participants import State
from bot.record import Retracted
from bot.units import Unit
from tests.caution.talk import (
    PASSED_OUT,
    THIRSTY,
    Talk,
    at,
    person,
    reading,
    walk,
)


def due(talk: Talk) -> list[tuple[str, float]]:
    """The rechecks that stand, each with its minute after the start."""
    return [
        (one.kind.value, (one.due_at - at(0)) / timedelta(minutes=1))
        for one in rechecks(talk.record)
    ]


def words(talk: Talk) -> list[tuple[str, float]]:
    """The words to the educator, each with its minute."""
    return [
        (word.why.value, (word.due_at - at(0)) / timedelta(minutes=1))
        for word in word_to_educator(talk.record)
    ]


# ── After a low ──────────────────────────────────────────────────────────────


@pytest.mark.parametrize("value", [69, 53, "LO"])
def test_fifteen_minutes_after_a_low_and_ten_more(value: float | str) -> None:
    talk = Talk()
    talk.test(0, value)
    assert due(talk) == [("first", 15), ("second", 25)]


@pytest.mark.parametrize(("value", "rungs"), [(3.8, 2), (3.9, 0)])
def test_the_same_in_mmol_l(value: float, rungs: int) -> None:
    talk = Talk(person(unit=Unit.MMOL_L))
    talk.test(0, value)
    assert len(due(talk)) == rungs


def test_seventy_needs_none_unless_the_care_team_raised_the_limit() -> None:
    talk = Talk()
    talk.test(0, 70)
    assert due(talk) == []


def test_a_first_recheck_is_worthless_once_the_second_is_due() -> None:
    talk = Talk()
    talk.test(0, 62)
    first, second = rechecks(talk.record)
    assert first.until == second.due_at
    assert [one.kind for one in rechecks(talk.record, now=at(25))] == ["second"]


def test_a_low_told_late_is_tested_from_when_it_was_told() -> None:
    talk = Talk()
    talk.tell(20, reading(62, 0))
    assert due(talk) == [("first", 35), ("second", 45)]
    sooner = Talk()
    sooner.tell(10, reading(62, 0))
    assert due(sooner) == [("first", 15), ("second", 25)]


def test_each_low_has_its_own_recheck_and_the_last_one_counts() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(16, 65)
    assert due(talk) == [("first", 31), ("second", 41)]


def test_back_at_the_limit_ends_it_with_one_more_an_hour_later() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(16, 70)
    assert ladder_closed(talk.record, talk.new)
    assert due(talk) == [("after_hour", 76)]


def test_no_hour_later_where_lows_are_not_possible() -> None:
    talk = Talk(person(may_go_low=False))
    talk.test(0, 62)
    talk.test(16, 82)
    assert ladder_closed(talk.record, talk.new)
    assert due(talk) == []


def test_no_kind_line_beside_a_caution_but_the_ladder_ends() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(16, 262)
    assert not ladder_closed(talk.record, talk.new)
    assert recovery(talk.record, talk.new) is not None
    assert ("after_hour", 76) in due(talk)


def test_low_again_within_the_hour_takes_up_a_new_ladder() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(16, 82)
    talk.test(50, 66)
    assert due(talk) == [("first", 65), ("second", 75)]
    talk.test(66, 90)
    assert due(talk) == [("after_hour", 126)]


def test_a_reading_of_hours_later_is_no_answer_to_a_low() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.test(121, 110)
    assert not ladder_closed(talk.record, talk.new)
    assert due(talk) == []


def test_an_old_low_told_now_asks_for_a_test_whatever_came_between() -> None:
    talk = Talk()
    talk.test(120, 110)
    (caution, *_) = talk.tell(180, reading(50, 0))
    assert caution.late
    assert due(talk) == [("first", 195), ("second", 205)]


def test_a_low_and_its_end_in_one_message() -> None:
    talk = Talk()
    talk.tell(20, reading(62, 0), reading(88, 20))
    assert ladder_closed(talk.record, talk.new)
    assert due(talk) == [("after_hour", 80)]


@pytest.mark.parametrize("state", [State.ACTIVE, State.PAUSED])
def test_rechecks_go_on_in_a_pause(state: State) -> None:
    talk = Talk(person(state=state))
    talk.test(0, 62)
    assert len(due(talk)) == 2


def test_nobody_who_sent_stop_is_prompted() -> None:
    talk = Talk(person(state=State.STOPPED))
    talk.test(0, 50)
    talk.test(100, 312)
    assert due(talk) == []


# ── Corrections ──────────────────────────────────────────────────────────────


def test_a_low_corrected_upwards_asks_for_one_fresh_reading() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.mend(2, 1, reading(162, 0))
    assert low_taken_back(talk.record, now=at(2))
    assert due(talk) == [("first", 15)]
    talk.test(14, 158)
    assert due(talk) == []
    assert not low_taken_back(talk.record, now=at(14))


def test_a_low_corrected_to_another_low_has_that_ones_ladder() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.mend(2, 1, reading(64, 0))
    assert due(talk) == [("first", 15), ("second", 25)]
    assert not low_taken_back(talk.record, now=at(2))


def test_a_value_corrected_downwards_gets_its_ladder() -> None:
    talk = Talk()
    talk.test(0, 162)
    talk.mend(2, 1, reading(62, 0))
    assert due(talk) == [("first", 15), ("second", 25)]


# ── After a high ─────────────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("value", "rungs"), [(249, []), (250, [("high", 15)]), ("HI", [("high", 15)])]
)
def test_one_recheck_after_a_high(value: float | str, rungs: list[tuple[str, float]]) -> None:
    talk = Talk()
    talk.test(0, value)
    assert due(talk) == rungs


def test_none_once_a_reading_came_and_none_after_the_repeat() -> None:
    talk = Talk()
    talk.test(0, 262)
    talk.test(12, 258)
    assert due(talk) == []
    washed = Talk()
    washed.test(0, 262)
    washed.test(12, 140)
    assert due(washed) == []


def test_no_recheck_under_an_educators_plan_unless_it_is_worse() -> None:
    planned = person(high_plan_until=at(14 * 24 * 60))
    talk = Talk(planned)
    talk.test(0, 262)
    assert due(talk) == []
    talk.test(20, 305)
    assert due(talk) == [("high", 35)]
    ill = Talk(planned)
    ill.tell(0, reading(262, 0), THIRSTY)
    assert due(ill) == [("high", 15)]


# ── The educator ─────────────────────────────────────────────────────────────


def test_the_educator_hears_of_grave_things_where_that_was_agreed() -> None:
    talk = Talk(person(tell_educator=True))
    talk.test(0, 50)
    assert words(talk) == [("very_low", 0), ("unanswered", 35)]
    talk.test(15, 90)
    talk.test(100, "HI")
    talk.tell(200, PASSED_OUT)
    assert words(talk) == [("very_low", 0), ("off_scale", 100), ("emergency", 200)]


def test_the_educator_hears_nothing_where_it_was_not_agreed() -> None:
    talk = Talk()
    talk.test(0, "LO")
    talk.tell(10, PASSED_OUT)
    assert words(talk) == []


def test_an_answer_in_time_spares_the_word_a_later_one_does_not() -> None:
    talk = Talk(person(tell_educator=True))
    talk.test(0, 62)
    talk.test(35, 90)
    assert words(talk) == []
    late = Talk(person(tell_educator=True))
    late.test(0, 62)
    late.test(36, 90)
    assert words(late) == [("unanswered", 35)]


def test_keys_of_rechecks_and_words_are_unique_and_stable() -> None:
    talk = Talk(person(tell_educator=True))
    talk.test(0, 50)
    before = {one.key for one in rechecks(talk.record)}
    talk.tell(5, THIRSTY)
    assert {one.key for one in rechecks(talk.record)} == before
    assert len(before) == 2


# ── Before activity ──────────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("value", "unit", "first"),
    [
        (89, Unit.MG_DL, True),
        (90, Unit.MG_DL, False),
        (69, Unit.MG_DL, False),  # a low has its own caution
        (4.9, Unit.MMOL_L, True),
        (5.0, Unit.MMOL_L, False),
    ],
)
def test_carbohydrate_before_activity_below_90(value: float, unit: Unit, first: bool) -> None:
    """ADA 2026, section 5, p. 112: below 90 (5.0), carbohydrate first."""
    talk = Talk(person(unit=unit))
    talk.tell(0, reading(value, 0, unit=unit), walk(0))
    assert (carbohydrate_first(talk.record, talk.new, now=at(0)) is not None) is first


def test_planned_activity_counts_and_not_where_lows_are_impossible() -> None:
    talk = Talk()
    talk.test(0, 85)
    assert carbohydrate_first(talk.record, talk.new, now=at(0)) is None
    assert carbohydrate_first(talk.record, set(), now=at(10), planned=True) is not None
    assert carbohydrate_first(talk.record, set(), now=at(61), planned=True) is None
    calm = Talk(person(may_go_low=False))
    calm.tell(0, reading(85, 0), walk(0))
    assert carbohydrate_first(calm.record, calm.new, now=at(0)) is None


def test_a_low_that_was_taken_back_altogether_is_still_tested_once() -> None:
    talk = Talk()
    talk.test(0, 62)
    talk.tell(1, Retracted(ids=(1,)))
    assert due(talk) == [("first", 15)]
