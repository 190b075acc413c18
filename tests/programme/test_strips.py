"""Counting strips."""

from datetime import date

import pytest

from bot.entries import Moment, Strips
from bot.programme.strips import StripCount, strip_count, used_a_week
from tests.glucose.story import Story, at, pair_events, person, reading


def test_strips_told_are_counted_down_by_readings_taken_since() -> None:
    story = Story().tell(*pair_events(0, 110, 150))
    story.tell(Strips(left=50), said_at=at("14:00")).tell(*pair_events(1, 110, "HI"))
    found = strip_count(story.record, at("20:00", 1), planned_a_week=15)
    assert found == StripCount(
        told=50,
        used=2,
        left=48,
        to_spend=42,
        pairs_left=21,
        a_week=15,
        runs_out_on=date(2026, 3, 22),
    )


def test_the_last_count_told_replaces_the_one_before() -> None:
    story = Story().tell(Strips(left=50), said_at=at("08:00"))
    story.tell(*pair_events(0, 110, 150)).tell(Strips(left=20), said_at=at("16:00"))
    found = strip_count(story.record, at("17:00"), planned_a_week=15)
    assert found is not None
    assert (found.left, found.used) == (20, 0)


def test_a_reading_told_late_but_taken_before_the_count_costs_nothing() -> None:
    story = Story().tell(Strips(left=20), said_at=at("12:00"))
    story.tell(reading(110, at("11:00")), said_at=at("13:00"))
    found = strip_count(story.record, at("14:00"), planned_a_week=15)
    assert found is not None
    assert found.used == 0


@pytest.mark.parametrize(
    ("left", "to_spend", "pairs_left"), [(0, 0, 0), (6, 0, 0), (7, 1, 0), (8, 2, 1), (9, 3, 1)]
)
def test_six_are_kept_for_lows_and_illness(left: int, to_spend: int, pairs_left: int) -> None:
    record = Story().tell(Strips(left=left), said_at=at("12:00")).record
    found = strip_count(record, at("12:00"), planned_a_week=15)
    assert found is not None
    assert (found.to_spend, found.pairs_left) == (to_spend, pairs_left)
    assert (found.runs_out_on == date(2026, 3, 2)) is (to_spend < 3)


def test_never_below_none() -> None:
    story = Story().tell(Strips(left=1), said_at=at("08:00")).tell(*pair_events(0, 110, 150))
    found = strip_count(story.record, at("17:00"), planned_a_week=15)
    assert found is not None
    assert found.left == 0


def test_nothing_is_known_before_it_is_told() -> None:
    story = Story().tell(Strips(left=20), said_at=at("12:00"))
    assert strip_count(story.record, at("11:59"), planned_a_week=15) is None


def test_who_uses_more_than_planned_runs_out_earlier() -> None:
    story = Story().tell(Strips(left=106), said_at=at("06:00"))
    for day in range(14):
        for clock in ("07:00", "12:00", "18:00"):
            story.tell(reading(110, at(clock, day), Moment.UNSTATED))
    record = story.record
    assert used_a_week(record, at("00:00", 14)) == 21
    found = strip_count(record, at("00:00", 14), planned_a_week=15)
    assert found is not None
    assert (found.to_spend, found.a_week) == (58, 21)
    assert found.runs_out_on == date(2026, 4, 4)


def test_no_plan_and_no_use_has_no_end() -> None:
    record = Story(participant=person()).tell(Strips(left=50), said_at=at("12:00")).record
    found = strip_count(record, at("12:00"), planned_a_week=0)
    assert found is not None
    assert found.runs_out_on is None
