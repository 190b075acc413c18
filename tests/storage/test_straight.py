"""Statements straight to SQLite's driver do what SQLAlchemy does with them."""

from collections.abc import Iterator

import pytest
from sqlalchemy import bindparam, insert, select
from sqlalchemy.exc import IntegrityError, OperationalError

from bot.storage import tables
from bot.storage.faults import is_outage
from bot.storage.statements import PEOPLE
from bot.storage.store import Store
from bot.storage.straight import Straight
from bot.storage.work import Work
from tests.conversation.echo import START, person

SEEN = {"update": 1, "at_real": 2, "error": None}


@pytest.fixture
def work() -> Iterator[Work]:
    with Store.in_memory().turn() as opened:
        for who in ("p1", "p2", "p3"):
            opened.enrol(person(who), START)
        yield opened


@pytest.mark.parametrize("people", [[], ["p2"], ["p3", "p1", "nobody"], ["p1", "p2", "p3"]])
def test_it_finds_what_sqlalchemy_finds(work: Work, people: list[str]) -> None:
    straight = Straight()
    for _ in range(2):  # written, then known
        found = straight.find(work.connection, PEOPLE, {"people": people})
        told = work.connection.execute(PEOPLE, {"people": people}).all()
        assert [row._asdict() for row in found] == [dict(row._mapping) for row in told]


def test_what_is_not_given_is_filled_as_the_tables_say(work: Work) -> None:
    given = ("reader", "key", "kind", "text", "rank", "due_ms", "made_real")
    rows = [dict.fromkeys(given, 7) | {"key": key} for key in ("straight", "long way")]
    assert Straight().change(work.connection, insert(tables.outbox), rows[:1]) == 1
    work.connection.execute(insert(tables.outbox), rows[1:])
    short, long = work.connection.execute(select(tables.outbox).order_by(tables.outbox.c.id)).all()
    own = {"id", "key"}
    assert all(
        short._mapping[name] == long._mapping[name] for name in short._mapping if name not in own
    )
    assert (short.state, short.attempts, short.to_make) == ("pending", 0, False)


def test_it_tells_how_many_rows_it_changed(work: Work) -> None:
    table, straight = tables.participant, Straight()
    named = table.update().where(table.c.id == bindparam("who"))
    rows = [{"who": who, "last_entry": 5} for who in ("p1", "p2", "nobody")]
    assert straight.change(work.connection, named, rows) == 2
    assert straight.change(work.connection, named, [{"who": "p1", "state": "active"}]) == 1


def test_its_errors_are_told_by_their_class_and_hide_what_people_wrote(work: Work) -> None:
    straight, new = Straight(), insert(tables.seen)
    straight.change(work.connection, new, [SEEN])
    with pytest.raises(IntegrityError) as twice:
        straight.change(work.connection, new, [SEEN])
    assert not is_outage(twice.value)
    work.connection.exec_driver_sql("PRAGMA query_only = ON")
    with pytest.raises(OperationalError, match="readonly") as refused:
        straight.change(work.connection, new, [SEEN | {"error": "her words"}])
    assert is_outage(refused.value)
    assert "her words" not in str(refused.value)
    work.connection.exec_driver_sql("PRAGMA query_only = OFF")
