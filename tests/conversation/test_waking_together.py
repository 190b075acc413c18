"""Many people woken in one transaction: each as if woken alone, on both databases."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import timedelta
from functools import partial
from itertools import count
from typing import Any

import pytest
from sqlalchemy import event, select, update

from bot.conversation import Conversation
from bot.entries import Food, FoodKind, Meal
from bot.messages import Kind
from bot.record import Event, Spoke
from bot.storage import tables
from bot.storage.store import Store
from bot.turns.ports import Wake
from bot.turns.turn import Opened, Turn
from bot.waking import AFTER_A_FAILED_WAKE
from bot.wiring import live_turns
from tests.conversation.echo import START, echo_turns, person

EVERYBODY = tuple(f"p{number:02}" for number in range(50))
NOW = START + timedelta(hours=2)
RICE = Meal(text="rice", started_at=START, foods=(Food(text="rice", kind=FoodKind.STARCH),))
MEAL = Event(id=1, at=START, body=RICE, message="0")


@pytest.fixture
def store(database_url: str) -> Iterator[Store]:
    opened = Store.open(database_url)
    with opened.turn() as work:
        for who in EVERYBODY:
            work.enrol(person(who), START)
            work.save(Turn(participant=person(who), events=(MEAL,), wake_at=NOW))
    yield opened
    opened.close()


def bot(store: Store, wake: Wake = echo_turns.wake) -> Conversation:
    turns = replace(echo_turns, wake=wake)
    return Conversation(store, turns, real_now=lambda: NOW, new_id=lambda: "x")


def but_for(who: str, other: Callable[[Turn], Turn]) -> Wake:
    """Small turns, one of them another than it should be."""

    def wake(opened: Opened, *, now: object) -> Turn:
        turn = echo_turns.wake(opened, now=now)  # type: ignore[arg-type]
        return other(turn) if opened.participant.id == who else turn

    return wake


def breaks(turn: Turn) -> Turn:
    raise ValueError("a fault of ours")


def writes_what_cannot_be_kept(turn: Turn) -> Turn:
    """An entry under the id of one that is there already."""
    return replace(turn, events=(replace(turn.events[0], id=1),))


def prompted(store: Store) -> list[str]:
    with store.turn() as work:
        return sorted(letter.reader for letter in work.outbox.pending())


def due_now(store: Store) -> tuple[str, ...]:
    with store.turn() as work:
        return work.due(NOW, 50)[0]


def wakes(store: Store) -> dict[str, object]:
    with store.turn() as work:
        return {one.participant.id: one.next_wake for one in work.people()}


def test_each_is_prompted_once_and_none_is_due_any_more(store: Store) -> None:
    assert bot(store).wake_all(EVERYBODY, NOW).said == 50
    assert prompted(store) == list(EVERYBODY)
    assert set(wakes(store).values()) == {None}
    with store.turn() as work:
        for who in EVERYBODY:
            assert [type(one.body) for one in work.events(who)] == [Meal, Spoke]


@pytest.mark.parametrize("fault", [breaks, writes_what_cannot_be_kept])
def test_one_of_fifty_that_fails_is_put_off_and_fails_alone(
    store: Store, fault: Callable[[Turn], Turn]
) -> None:
    told = bot(store, but_for("p17", fault)).wake_all(EVERYBODY, NOW)
    assert told.said == 49
    assert told.wake_at == NOW + AFTER_A_FAILED_WAKE
    assert prompted(store) == [who for who in EVERYBODY if who != "p17"]
    left = wakes(store)
    assert left.pop("p17") == NOW + AFTER_A_FAILED_WAKE
    assert set(left.values()) == {None}
    with store.turn() as work:
        assert work.events("p17") == (MEAL,)
    assert bot(store).wake("p17", NOW + AFTER_A_FAILED_WAKE).said == 1


def test_one_of_fifty_that_breaks_costs_no_second_transaction(store: Store) -> None:
    ended: list[str] = []
    event.listen(store.engine, "commit", lambda _connection: ended.append("commit"))
    event.listen(store.engine, "rollback", lambda _connection: ended.append("rollback"))
    bot(store, but_for("p17", breaks)).wake_all(EVERYBODY, NOW)
    assert ended.count("commit") == 1


def test_one_of_fifty_who_was_erased_meanwhile_is_nobody(store: Store) -> None:
    due = due_now(store)
    with store.turn() as work:
        work.erase("p17")
    assert bot(store).wake_all(due, NOW).said == 49
    assert "p17" not in prompted(store)
    with store.turn() as work:
        rows = work.connection.execute(
            select(tables.entry).where(tables.entry.c.participant == "p17")
        )
        assert rows.all() == []


def test_one_who_is_named_twice_is_woken_once(store: Store) -> None:
    again = bot(store)
    assert again.wake_all(("p01", "p02", "p01"), NOW).said == 2
    assert again.wake_all(("p01", "p02"), NOW).said == 0
    assert prompted(store) == ["p01", "p02"]


def test_one_whose_wake_was_moved_meanwhile_is_left_alone(store: Store) -> None:
    later = NOW + timedelta(minutes=1)
    with store.turn() as work:
        work.set_wake("p17", later)
    assert bot(store).wake_all(EVERYBODY, NOW).said == 49
    assert wakes(store)["p17"] == later


def test_what_the_outbox_holds_already_is_not_said_again(store: Store) -> None:
    bot(store).wake_all(EVERYBODY, NOW)
    with store.turn() as work:  # as if the entries had not been kept
        work.connection.execute(tables.entry.delete().where(tables.entry.c.id == 2))
        work.connection.execute(update(tables.participant).values(last_entry=1))
        for who in EVERYBODY:
            work.set_wake(who, NOW)
    store._cache = type(store._cache)()
    assert bot(store).wake_all(EVERYBODY, NOW).said == 0
    assert prompted(store) == list(EVERYBODY)


def test_where_they_take_long_the_others_are_left_due(store: Store) -> None:
    """A clock that moves on by eight milliseconds whenever it is looked at."""
    looks = (NOW + timedelta(milliseconds=8 * number) for number in count())
    slow = Conversation(store, echo_turns, real_now=lambda: next(looks), new_id=lambda: "x")
    assert slow.wake_all(EVERYBODY, NOW).said == 3
    assert prompted(store) == ["p00", "p01", "p02"]
    rounds = 1
    while due := due_now(store):
        assert slow.wake_all(due, NOW).said == min(3, len(due))
        rounds += 1
    assert prompted(store) == list(EVERYBODY)
    assert rounds == 17


def test_one_who_takes_very_long_is_woken_all_the_same(store: Store) -> None:
    looks = (NOW + timedelta(minutes=number) for number in count())
    slow = Conversation(store, echo_turns, real_now=lambda: next(looks), new_id=lambda: "x")
    assert slow.wake_all(EVERYBODY, NOW).said == 1


def statements_of(store: Store, monkeypatch: pytest.MonkeyPatch) -> list[object]:
    """Fills with every statement from here on."""
    asked: list[object] = []
    event.listen(
        store.engine,
        "before_cursor_execute",
        lambda _connection, _cursor, statement, *_more: asked.append(statement),
    )
    if store.is_sqlite:  # the statements of every turn go past SQLAlchemy
        for way in ("find", "change"):

            def counted(
                connection: object, statement: object, told: object, run: Any = None
            ) -> object:
                asked.append(statement)
                return run(connection, statement, told)

            run = getattr(store._backend, way)
            monkeypatch.setattr(store._backend, way, partial(counted, run=run))
    return asked


def test_ten_more_people_take_two_more_statements(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = statements_of(store, monkeypatch)
    counts = []
    for people in (EVERYBODY[:5], EVERYBODY[5:15], EVERYBODY[15:45]):
        asked.clear()
        bot(store).wake_all(people, NOW)
        counts.append(len(asked))
    assert counts[0] > 4
    assert counts[0] == counts[1] == counts[2] - 2 * 2


@pytest.mark.parametrize("size", [7, 50])
def test_together_leaves_behind_what_one_by_one_leaves(store: Store, size: int) -> None:
    """The turns that serve people; every third is away for weeks, with an old record."""
    alone = Store.in_memory()
    with alone.turn() as work:
        for who in EVERYBODY:
            work.enrol(person(who), START)
            work.save(Turn(participant=person(who), events=(MEAL,), wake_at=NOW))
    kept = []
    for one, step in ((alone, 1), (store, size)):
        talk = Conversation(one, live_turns(), real_now=lambda: NOW, new_id=lambda: "x")
        for at, people in ((NOW, EVERYBODY), (NOW + timedelta(days=40), EVERYBODY[::3])):
            with one.turn() as work:
                for who in people:
                    work.set_wake(who, at)
            for first in range(0, len(people), step):
                talk.wake_all(people[first : first + step], at)
        with one.turn() as work:
            said = [(one.reader, one.key, one.text, one.kind) for one in work.outbox.pending()]
            kept.append((sorted(said), [work.events(who) for who in EVERYBODY]))
        kept[-1] = (*kept[-1], wakes(one))
    alone.close()
    assert kept[0] == kept[1]
    assert sum(kind is Kind.PROMPT for *_, kind in kept[0][0]) >= 50
