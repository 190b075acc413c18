"""Properties of pairing on any record: order of arrival, single use, corrections, the contract."""

from collections import Counter
from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from bot.entries import FoodKind, Meal, Moment, Reading
from bot.glucose.pairs import Pair, Status, closed_by, pairs
from bot.record import Body, Event, Record, Retracted, fold
from bot.units import limit_in
from tests.glucose.story import MONDAY, at, meal, person, reading

minutes = st.integers(0, 600)
readings = st.builds(
    lambda value, minute, moment: reading(value, MONDAY + timedelta(minutes=minute), moment),
    st.one_of(st.integers(40, 320), st.sampled_from(["HI", "LO"])),
    minutes,
    st.sampled_from(Moment),
)
meals = st.builds(
    lambda number, minute, kind: meal(f"meal {number}", MONDAY + timedelta(minutes=minute), kind),
    st.integers(0, 10_000),
    minutes,
    st.sampled_from([FoodKind.STARCH, FoodKind.FREE_DRINK, FoodKind.MIXED_DISH]),
)
bodies = st.lists(
    st.one_of(readings, meals),
    max_size=14,
    unique_by=lambda body: (
        type(body),
        body.started_at if isinstance(body, Meal) else body.taken_at,
    ),
)


def record_of(told: list[tuple[int, Body]]) -> Record:
    """Fold bodies whose number decides the message and when it was said, in this order."""
    events = [
        Event(
            id=index + 1,
            at=MONDAY + timedelta(days=1, minutes=number),
            body=body,
            message=str(number),
        )
        for index, (number, body) in enumerate(told)
    ]
    return fold(person(), events)


def shape(pair: Pair) -> tuple[object, ...]:
    """A pair without the ids that arrival gave its parts."""
    return (
        pair.meal.entry,
        pair.before and pair.before.entry,
        pair.after and pair.after.entry,
        pair.after_minutes,
        pair.status,
        pair.rise,
        pair.before_in_goal,
        pair.after_in_goal,
        pair.unconfirmed,
    )


def shapes(record: Record) -> list[tuple[object, ...]]:
    return [shape(pair) for pair in pairs(record)]


@given(bodies, st.randoms(use_true_random=False))
def test_the_order_of_arrival_makes_no_difference(told: list[Body], random: object) -> None:
    numbered = list(enumerate(told))
    shuffled = numbered.copy()
    random.shuffle(shuffled)  # type: ignore[attr-defined]
    assert shapes(record_of(numbered)) == shapes(record_of(shuffled))


@given(bodies)
def test_nothing_is_used_twice(told: list[Body]) -> None:
    found = pairs(record_of(list(enumerate(told))))
    for role in ("before", "after"):
        ids = Counter(one.id for pair in found if (one := getattr(pair, role)))
        assert not ids or max(ids.values()) == 1


@given(bodies)
def test_every_meal_with_a_start_has_one_pair_in_order(told: list[Body]) -> None:
    record = record_of(list(enumerate(told)))
    found = pairs(record)
    assert [pair.started_at for pair in found] == sorted(pair.started_at for pair in found)
    assert {pair.meal.id for pair in found} == {noted.id for noted in record.meals}


@given(bodies)
def test_a_reading_closes_the_pair_that_it_is_the_after_reading_of(told: list[Body]) -> None:
    """Found without making pairs where no meal is within its reach."""
    record = record_of(list(enumerate(told)))
    closed = {pair.after.id: pair for pair in pairs(record) if pair.after}
    for noted in record.readings:
        assert closed_by(record, noted) == closed.get(noted.id)


def test_the_latest_reading_that_closes_a_pair_is_a_washed_repeat_at_three_and_a_half_hours() -> (
    None
):
    lunch = meal("rice", at("12:00"), FoodKind.STARCH)
    earliest = reading(150, at("13:00"), Moment.AFTER_MEAL)
    latest = (reading(300, at("15:00")), reading(150, at("15:30"), Moment.RECHECK))
    for told, index in (((lunch, earliest), 0), ((lunch, *latest), 1)):
        record = record_of(list(enumerate(told)))
        assert closed_by(record, record.readings[index]) is pairs(record)[0]


@given(bodies, st.data())
def test_a_correction_leaves_no_trace(told: list[Body], data: st.DataObject) -> None:
    """A wrong entry that was told and taken back is as if it had never been told."""
    wrong = data.draw(st.one_of(readings, meals))
    events = [
        Event(
            id=index + 1,
            at=MONDAY + timedelta(days=1, minutes=index),
            body=body,
            message=str(index),
        )
        for index, body in enumerate([*told, wrong, Retracted(ids=(len(told) + 1,))])
    ]
    assert shapes(fold(person(), events)) == shapes(fold(person(), events[:-2]))


@given(bodies)
def test_each_pair_keeps_the_contract(told: list[Body]) -> None:
    record = record_of(list(enumerate(told)))
    for pair in pairs(record):
        if pair.status is Status.COMPLETE:
            assert pair.values is not None
            assert pair.rise == pair.values[1] - pair.values[0]
            for one in (pair.before, pair.after):
                assert one is not None
                assert one.entry.value is not None
                assert one.entry.value >= limit_in(70, one.entry.unit)
        if pair.status is Status.NO_AFTER:
            assert pair.after is None


@given(bodies)
def test_no_meal_is_left_with_less_than_the_best_free_reading(told: list[Body]) -> None:
    """Every unused reading of a pair's window suits it less than the one it has.

    Readings far below `high`, so that none is doubtful and each is placed by its own instant.
    """
    calm = [_calmed(body) for body in told]
    record = record_of(list(enumerate(calm)))
    found = pairs(record)
    used = {pair.before.id for pair in found if pair.before}
    for pair in found:
        start = pair.started_at
        for noted in record.readings:
            taken = noted.entry.taken_at
            assert taken is not None
            since = (taken - start).total_seconds() / 60
            allowed = noted.entry.moment in {Moment.BEFORE_MEAL, Moment.FASTING, Moment.UNSTATED}
            if noted.id in used or not allowed or not -60 <= since <= 10:
                continue
            assert pair.before is not None
            assert pair.before.entry.taken_at is not None
            own = (
                pair.before.entry.moment is not Moment.BEFORE_MEAL,
                abs((pair.before.entry.taken_at - start).total_seconds() / 60),
            )
            assert own <= (noted.entry.moment is not Moment.BEFORE_MEAL, abs(since))


def _calmed(body: Body) -> Body:
    if isinstance(body, Reading):
        return replace(body, value=120.0, mg_dl=120.0, off_scale=None)
    return body
