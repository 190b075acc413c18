"""Who needs a look first, and the group before and after."""

from datetime import datetime, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats  # type: ignore[import-untyped]

from bot.educator.group import GroupFigures, TooFew, group_figures, paired
from bot.educator.roster import Reason, Tier, line, roster
from bot.entries import Meal, Moment, OffScale, Reading, Strips, Suggests, Symptom
from bot.localtime import shifted
from bot.participants import Participant
from bot.record import Body, Event, Record, fold
from bot.units import Unit

JOINED = datetime.fromisoformat("2026-03-02T08:00:00+00:00")
NOW = JOINED + timedelta(days=20)


def ana(id_: str = "ana", **known: object) -> Participant:
    plain: dict[str, object] = {"id": id_, "unit": Unit.MG_DL, "zone": "UTC", "joined_at": JOINED}
    return Participant(**{**plain, "tell_educator": True, **known})  # type: ignore[arg-type]


def record(*told: tuple[float, Body], who: Participant | None = None) -> Record:
    """Bodies told so many days before NOW."""
    events = [
        Event(id=place, at=NOW - timedelta(days=days), body=body, message=str(place))
        for place, (days, body) in enumerate(told, start=1)
    ]
    return fold(who or ana(), events)


def value(days: float, mg_dl: float | None, moment: Moment = Moment.UNSTATED) -> tuple[float, Body]:
    at = NOW - timedelta(days=days)
    off = None if mg_dl is not None else OffScale.HIGH
    entry = Reading(
        value=mg_dl, unit=Unit.MG_DL, mg_dl=mg_dl, moment=moment, taken_at=at, off_scale=off
    )
    return days, entry


def pair(days: float, before: float, after: float) -> list[tuple[float, Body]]:
    start = NOW - timedelta(days=days)
    hour = 1 / 24
    return [
        value(days, before, Moment.BEFORE_MEAL),
        (days, Meal(text="rice", started_at=start)),
        value(days - 2 * hour, after, Moment.AFTER_MEAL),
    ]


FINE = pair(0.5, 110, 150)


def reasons(*told: tuple[float, Body], **known: object) -> set[Reason]:
    who = ana(**known)  # type: ignore[arg-type]
    return {why.reason for why in line(record(*told, who=who), NOW).whys}


def test_nothing_of_note() -> None:
    found = line(record(*FINE), NOW)
    assert (found.tier, found.whys) == (Tier.WELL, ())


@pytest.mark.parametrize(
    ("told", "reason"),
    [
        ([value(13, 53)], Reason.VERY_LOW),
        ([value(6, 65), value(5, 66)], Reason.TWO_LOWS),
        ([value(3, 300), value(2, None)], Reason.VERY_HIGH_TWO_DAYS),
        ([(1, Symptom(text="fruity breath", suggests=Suggests.HIGH))], Reason.KETONE_SIGNS),
        (
            [one for day in range(1, 6) for one in pair(day * 2, 185, 190)],
            Reason.HIGH_BEFORE_MEALS,
        ),
        ([one for day in range(1, 7) for one in pair(day, 120, 200)], Reason.STUCK),
        ([(1, Strips(left=8))], Reason.STRIPS),
    ],
)
def test_each_reason(told: list[tuple[float, Body]], reason: Reason) -> None:
    assert reason in reasons(*FINE, *told)


@pytest.mark.parametrize(
    ("told", "reason"),
    [
        ([value(15, 53)], Reason.VERY_LOW),  # over two weeks ago
        ([value(1, 54)], Reason.VERY_LOW),
        ([value(6, 65)], Reason.TWO_LOWS),
        ([value(6, 65), value(6 - 0.01, 66)], Reason.TWO_LOWS),  # one low, tested twice
        ([value(8, 65), value(5, 66)], Reason.TWO_LOWS),  # not within seven days
        ([value(3, 299), value(2, 310)], Reason.VERY_HIGH_TWO_DAYS),
        ([value(4, 305), value(2, 310)], Reason.VERY_HIGH_TWO_DAYS),  # a day between
        ([value(3, 305), value(2.99, 120), value(2, 310)], Reason.VERY_HIGH_TWO_DAYS),  # washed
        ([(15, Symptom(text="fruity breath", suggests=Suggests.HIGH))], Reason.KETONE_SIGNS),
        ([one for day in range(1, 3) for one in pair(day, 185, 190)], Reason.HIGH_BEFORE_MEALS),
        ([one for day in range(1, 5) for one in pair(day, 120, 200)], Reason.STUCK),
        ([(1, Strips(left=100))], Reason.STRIPS),
    ],
)
def test_each_reason_has_an_edge(told: list[tuple[float, Body]], reason: Reason) -> None:
    assert reason not in reasons(*FINE, *told)


def test_silence_counts_from_the_last_complete_pair_or_from_joining() -> None:
    assert Reason.NO_PAIRS in reasons()
    assert Reason.NO_PAIRS in reasons(*pair(7.1, 110, 150))
    assert Reason.NO_PAIRS not in reasons(*pair(6.9, 110, 150))
    assert Reason.NO_PAIRS not in reasons(joined_at=NOW - timedelta(days=6))


def test_ketone_signs_do_not_concern_who_cannot_make_them() -> None:
    sign = (1.0, Symptom(text="fruity breath", suggests=Suggests.HIGH))
    assert Reason.KETONE_SIGNS not in reasons(*FINE, sign, ketone_risk=False)


def test_safety_stands_above_silence_and_slow_progress() -> None:
    many = [one for day in range(1, 7) for one in pair(day, 120, 200)]
    people = [
        record(*FINE, who=ana("well")),
        record(*many, (1, Strips(left=5)), who=ana("stuck")),
        record(who=ana("silent")),
        record(*FINE, value(1, 50), who=ana("low")),
        record(value(1, 50), who=ana("hidden", tell_educator=False)),
        record(*FINE, value(2, 301), value(1, 320), who=ana("high")),
    ]
    found = [one.participant.id for one in roster(people, NOW)]
    assert found == ["low", "high", "silent", "stuck", "well", "hidden"]


def test_who_shares_nothing_is_not_looked_at() -> None:
    hidden = record(value(1, 50), who=ana(tell_educator=False))
    assert line(hidden, NOW).whys == ()


# --- the group ------------------------------------------------------------------------------


@given(
    st.lists(st.tuples(st.floats(100, 300), st.floats(100, 300)), min_size=5, max_size=40).filter(
        lambda pairs: len({round(b - a, 3) for a, b in pairs}) > 1
    )
)
def test_interval_is_that_of_the_paired_t_test(values: list[tuple[float, float]]) -> None:
    """Against scipy.stats.ttest_rel and its confidence_interval."""
    found = paired(values)
    first, last = (np.array(side) for side in zip(*values, strict=True))
    expected = stats.ttest_rel(last, first).confidence_interval(0.95)
    half = (expected.high - expected.low) / 2
    assert found.change == pytest.approx(float(np.mean(last - first)), abs=1e-9)
    assert found.high - found.change == pytest.approx(half, rel=2e-4)
    assert found.change - found.low == pytest.approx(half, rel=2e-4)
    assert found.clear == (found.low > 0 or found.high < 0)


def person_with(number: int, first: float, last: float, *, tell: bool = True) -> Record:
    """Three pairs in the first week, three in the last; NOW is 20 days after joining."""
    told = [one for day in (19.5, 18, 17) for one in pair(day, 120, first + number)]
    told += [one for day in (3, 2, 1) for one in pair(day, 120, last)]
    return record(*told, who=ana(f"p{number}", tell_educator=tell))


def test_group_of_five_is_shown_and_of_four_is_not() -> None:
    five = [person_with(number, 200, 170) for number in range(5)]
    figures = group_figures(five, NOW)
    assert isinstance(figures, GroupFigures)
    assert (figures.people, figures.of) == (5, 5)
    assert figures.after.first == pytest.approx(202)
    assert figures.after.change == pytest.approx(-32)
    assert figures.rise.change == pytest.approx(-32)
    assert figures.after.clear
    assert group_figures(five[:4], NOW) == TooFew(people=4, of=4)


def test_only_who_shares_and_has_both_weeks_counts() -> None:
    five = [person_with(number, 200, 170) for number in range(4)]
    hidden = person_with(5, 200, 170, tell=False)
    assert group_figures([*five, hidden], NOW) == TooFew(people=4, of=4)
    late = record(*[one for day in (3, 2, 1) for one in pair(day, 120, 170)], who=ana("late"))
    assert group_figures([*five, late], NOW) == TooFew(people=4, of=5)


def test_same_week_is_never_compared_with_itself() -> None:
    """In the first fortnight the last span begins a week after joining."""
    soon = shifted(JOINED, timedelta(days=8))
    people = [person_with(number, 200, 170) for number in range(6)]
    assert isinstance(group_figures(people, soon), TooFew)
