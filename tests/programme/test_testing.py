"""The table of rhythms: testing days, fewer tests and back."""

from datetime import date, timedelta

import pytest

from bot.entries import Request, What
from bot.glucose.pairs import pairs
from bot.participants import WEEKDAYS
from bot.programme.testing import (
    MOVES,
    Proposal,
    Rhythm,
    Tendency,
    propose,
    rhythm_at,
    strips_a_week,
    waking_day,
)
from bot.programme.testing import (
    testing_day as is_testing_day,
)
from tests.glucose.story import Story, at, pair_events, person, reading

MONDAY = date(2026, 3, 2)
CALM_PERSON = person(may_go_low=False, ketone_risk=False)


def days_of(rhythm: Rhythm, **changes: object) -> list[str]:
    who = person(**changes)
    week = [MONDAY + timedelta(days=day) for day in range(7)]
    return [WEEKDAYS[day.weekday()] for day in week if is_testing_day(rhythm, day, who)]


def within(days: int, story: Story, first: int = 0) -> Story:
    for day in range(first, first + days):
        story.tell(*pair_events(day, 115, 150))
    return story


def outside(days: int, story: Story, first: int = 0) -> Story:
    for day in range(first, first + days):
        story.tell(*pair_events(day, 115, 210))
    return story


def chose(rhythm: Rhythm, story: Story, day: int) -> Story:
    request = Request(what=What.SETTINGS, setting="testing", setting_value=rhythm)
    return story.tell(request, said_at=at("08:00", day))


def proposed(story: Story, day: int) -> Proposal | None:
    return propose(story.record, pairs(story.record), at("20:00", day))


def test_every_rhythm_moves_both_ways_and_the_ends_only_one() -> None:
    order = list(Rhythm)
    for index, rhythm in enumerate(order):
        fewer, more = (MOVES.get((rhythm, tendency)) for tendency in Tendency)
        assert fewer is (order[index + 1] if index + 1 < len(order) else None)
        assert more is (order[index - 1] if index else None)


def test_testing_days_lie_before_the_week_ends() -> None:
    assert days_of(Rhythm.DAILY) == list(WEEKDAYS)
    assert days_of(Rhythm.TWICE_A_WEEK) == ["tuesday", "friday"]
    assert days_of(Rhythm.WEEKLY) == ["friday"]
    assert days_of(Rhythm.NEW_FOODS) == []
    assert days_of(Rhythm.WEEKLY, week_ends="wednesday") == ["monday"]


def test_one_test_a_week_is_on_waking() -> None:
    week = [MONDAY + timedelta(days=day) for day in range(7)]
    assert [day.isoformat() for day in week if waking_day(day, person())] == ["2026-03-04"]


def test_what_the_plan_uses() -> None:
    assert [strips_a_week(rhythm) for rhythm in Rhythm] == [15, 5, 3, 1]


def test_daily_until_told_otherwise() -> None:
    story = chose(Rhythm.WEEKLY, Story(), 3)
    assert rhythm_at(story.record, at("07:59", 3)) is Rhythm.DAILY
    assert rhythm_at(story.record, at("08:00", 3)) is Rhythm.WEEKLY


def test_fewer_tests_after_two_weeks_when_most_of_the_last_pairs_are_within_the_goals() -> None:
    story = within(14, Story(participant=CALM_PERSON))
    assert proposed(story, 12) is None
    assert proposed(story, 14) == Proposal(
        to=Rhythm.TWICE_A_WEEK, because=Tendency.SETTLED, within=6, of=6, needs_educator=False
    )


@pytest.mark.parametrize(("bad", "offered"), [(1, True), (2, False)])
def test_most_is_five_of_six(bad: int, offered: bool) -> None:
    story = outside(bad, within(10, Story(participant=CALM_PERSON)), first=10)
    within(6 - bad, story, first=10 + bad)
    assert (proposed(story, 16) is not None) is offered


def test_the_educator_is_asked_first_where_lows_are_possible() -> None:
    found = proposed(within(14, Story()), 14)
    assert found is not None
    assert found.needs_educator


@pytest.mark.parametrize("value", [65, 300, "HI", "LO"])
def test_no_fewer_tests_in_a_week_with_a_low_or_300(value: int | str) -> None:
    story = within(14, Story(participant=CALM_PERSON)).tell(reading(value, at("20:00", 10)))
    assert proposed(story, 14) is None
    assert proposed(within(7, story, first=14), 20) is not None


def test_back_to_more_when_values_leave_the_goals() -> None:
    story = chose(Rhythm.WEEKLY, within(14, Story()), 15)
    outside(2, within(1, story, first=16), first=17)
    assert proposed(story, 20) == Proposal(
        to=Rhythm.TWICE_A_WEEK, because=Tendency.LEFT_GOALS, within=1, of=3, needs_educator=False
    )


def test_pairs_before_the_rhythm_began_say_nothing_of_it() -> None:
    story = chose(Rhythm.TWICE_A_WEEK, within(14, Story(participant=CALM_PERSON)), 15)
    assert proposed(story, 16) is None


def test_daily_is_the_most_and_nothing_is_judged_in_pregnancy() -> None:
    assert proposed(outside(6, Story()), 8) is None
    expecting = Story(participant=person(pregnant=True, may_go_low=False, ketone_risk=False))
    assert proposed(within(14, expecting), 15) is None
