"""Whose part it is, and who is due soon: what several machines ask of PostgreSQL."""

from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import Connection, text

from bot.messages import Kind, Saying
from bot.participants import Participant
from bot.storage import shared
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.units import Unit

START = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@pytest.fixture
def store(postgres_url: str) -> Store:
    return Store.open(postgres_url)


def take(store: Store, holder: str, seconds: float = 60, part: str = "sending") -> bool:
    with store.turn() as work:
        return shared.take(work.connection, part, holder, seconds)


def holds(store: Store, holder: str) -> bool:
    with store.turn() as work:
        return shared.holds(work.connection, "sending", holder)


def test_one_holds_a_part_and_holds_it_longer_and_nobody_else_has_it(store: Store) -> None:
    assert take(store, "a")
    assert take(store, "a")
    assert not take(store, "b")
    assert (holds(store, "a"), holds(store, "b")) == (True, False)
    assert take(store, "b", part="fetching")
    store.close()


def test_a_part_whose_time_has_run_out_is_the_next_ones(store: Store) -> None:
    assert take(store, "a", seconds=-1)
    assert not holds(store, "a")
    assert take(store, "b")
    assert not take(store, "a")
    assert (holds(store, "a"), holds(store, "b")) == (False, True)
    store.close()


def test_who_leaves_a_part_lets_the_next_one_have_it_at_once(store: Store) -> None:
    take(store, "a")
    with store.turn() as work:
        shared.leave(work.connection, "sending", "b")  # not b's to leave
    assert not take(store, "b")
    with store.turn() as work:
        shared.leave(work.connection, "sending", "a")
    assert take(store, "b")
    store.close()


def test_of_two_who_reach_for_it_at_once_one_has_it(store: Store) -> None:
    with store.turn() as first:
        assert shared.take(first.connection, "sending", "a", 60)
        with store.engine.connect() as second:
            second.execute(text("SET lock_timeout = '50ms'"))
            with pytest.raises(Exception, match="lock timeout"):
                shared.take(second, "sending", "b", 60)  # it waits for the first to commit
    assert not take(store, "b")
    store.close()


def enrol(connection_of: Store, wakes: dict[str, datetime]) -> None:
    with connection_of.turn() as work:
        for who, at in wakes.items():
            person = Participant(id=who, unit=Unit.MG_DL, zone="UTC", joined_at=START)
            work.enrol(person, START, at)


def ids(connection: Connection, until: datetime, limit: int) -> list[str]:
    return [who for who, _ in shared.due_until(connection, until, limit)]


def test_who_is_due_soon_is_told_with_the_instant_and_the_earliest_first(store: Store) -> None:
    minute = timedelta(minutes=1)
    enrol(store, {"c": START + minute, "a": START - minute, "b": START, "far": START + 9 * minute})
    with store.turn() as work:
        work.connection.execute(
            text(
                "INSERT INTO educator (id, body, made_real, next_wake_ms) VALUES ('e', '', 0, :at)"
            ),
            {"at": int((START - timedelta(seconds=1)).timestamp() * 1000)},
        )
        assert ids(work.connection, START + 2 * minute, 10) == ["a", "e", "b", "c"]
        assert ids(work.connection, START + 2 * minute, 2) == ["a", "e"]
        assert ids(work.connection, START - 2 * minute, 10) == []
        assert shared.due_until(work.connection, START, 10)[0] == ("a", START - minute)
    store.close()


def test_the_figures_of_a_picture_are_found_by_their_row_alone(store: Store) -> None:
    enrol(store, {"ann": START})
    with store.turn() as work:
        work.keep_chat(ChatSeen(id="1", participant="ann"), START)
        work.outbox.queue(
            [
                Saying(to="ann", kind=kind, text="x", key=key, due_at=START, picture=picture)
                for kind, key, picture in (
                    (Kind.DIGEST, "with", {"figures": 1}),
                    (Kind.PROMPT, "without", None),
                )
            ],
            START,
        )
        rows = {
            row.key: row.id for row in work.connection.execute(text("SELECT id, key FROM outbox"))
        }
        assert shared.picture_of(work.connection, rows["with"]) == {"figures": 1}
        for row in (rows["without"], 10**9):
            with pytest.raises(LookupError):
                shared.picture_of(work.connection, row)
    store.close()
