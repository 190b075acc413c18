"""`copy` as a person runs it: everything arrives, it goes on, and it never overwrites."""

import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Connection, func, insert, select, text

from bot.__main__ import main
from bot.entries import Meal
from bot.mendable import Mendable
from bot.messages import Incoming, Kind
from bot.participants import Invitation
from bot.record import Event
from bot.storage import tables
from bot.storage.letters import End
from bot.storage.store import Store, backend_of
from bot.storage.tables import METADATA
from bot.turns.turn import Turn
from tests.conversation.echo import START, person, saying
from tests.postgres import TEMPLATE, Server

WAYS = ["sqlite to postgresql", "postgresql to sqlite", "sqlite to sqlite"]
#: What people send and databases trip over.
ODD = '🫓 ½ jalapeño\'s\n\t\\ "plate" — 米饭 \U0001f9d1🏽‍🍳 %s {} \x7f'
Place = Callable[[], str]


@pytest.fixture
def ends(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[tuple[str, str]]:
    """Two databases: the first filled, the second not there yet."""
    with ExitStack() as stack:

        def place(kind: str, name: str) -> str:
            if kind == "sqlite":
                return f"sqlite:///{tmp_path / name}"
            server: Server = request.getfixturevalue("postgres_server")
            return stack.enter_context(server.database(TEMPLATE))

        first, second = request.param.split(" to ")
        source = place(first, "here.db")
        fill(source)
        yield source, place(second, "there.db")


def both_ways(*ways: str) -> pytest.MarkDecorator:
    return pytest.mark.parametrize("ends", ways or WAYS, indirect=True)


def fill(url: str, meals: int = 40) -> None:
    """Some rows in every table, with every kind of value that a column may hold."""
    store = Store.open(url)
    with store.turn() as work:
        for number in range(3):
            who = person(f"p{number}", zone="America/Lima", educator="ed" if number else None)
            work.enrol(who, START, START + timedelta(days=number) if number else None)
            said = tuple(
                Event(id=n, at=START + timedelta(minutes=n), body=Meal(text=f"{ODD} {n}"))
                for n in range(1, meals + 1)
            )
            work.save(Turn(participant=who, events=said), heard_at=START)
            heard = Incoming(update=number, chat="1", message=str(number), at=START, text=ODD)
            work.keep_text(who.id, heard, START)
        work.connection.execute(
            insert(tables.chat),
            [
                {"id": f"-100{n}", "role": "participant", "group_told": n == 1,
                 "blocked": n == 2, "since_real": n, "participant": None if n else "p0",
                 "enrolment": None}
                for n in range(3)
            ],
        )  # fmt: skip
        work.connection.execute(
            insert(tables.educator), [{"id": "ed", "body": '{"é":null}', "made_real": 2**41}]
        )
        work.invite("ABCD-EFGH", Invitation(zone="America/Lima"), START)
        work.first_sight(2**40, START)
        work.park(5, START, "KeyError at a place")
        work.set_fact("bot", "name")
        chart = {"figures": [1.5, None, True, "½"]}
        for number in range(5):
            kind = Kind.DIGEST if number % 2 else Kind.REPLY
            picture = chart if number % 2 else None
            work.outbox.queue(
                [saying("chat:1", ODD, f"k{number}", kind=kind, picture=picture)], START
            )
        (letter, *_) = work.outbox.pending()
        work.outbox.settle(letter, End.EXPIRED, START)  # so that an id is missing
        assert counts(work.connection)["outbox"] == 5
    store.close()


def counts(connection: Connection) -> dict[str, int]:
    return {
        table.name: connection.execute(select(func.count()).select_from(table)).scalar_one()
        for table in METADATA.sorted_tables
    }


def rows(url: str) -> dict[str, list[tuple[Any, ...]]]:
    """Everything that a database holds, as Python has it."""
    store = Store.open(url)
    with store.turn() as work:
        found = {
            table.name: sorted(
                (tuple(row) for row in work.connection.execute(select(table))), key=repr
            )
            for table in METADATA.sorted_tables
        }
    store.close()
    return found


def change(url: str, statement: str) -> None:
    store = Store.open(url)
    with store.turn() as work:
        work.connection.execute(text(statement))
    store.close()


def copy(ends: tuple[str, str]) -> int:
    return main(["copy", "--from", ends[0], "--to", ends[1]])


@both_ways()
def test_every_value_arrives_as_it_was(
    ends: tuple[str, str], capsys: pytest.CaptureFixture[str]
) -> None:
    wanted = rows(ends[0])
    assert all(wanted.values()), "a table without rows shows nothing"
    assert copy(ends) == 0, capsys.readouterr().err
    total = sum(len(found) for found in wanted.values())
    told = capsys.readouterr().out
    assert f"copied: {total} rows, each read back and the same" in told
    assert "entry: 120 rows, SHA-256 " in told
    assert rows(ends[1]) == wanted


@both_ways()
def test_what_is_said_next_gets_an_id_of_its_own(ends: tuple[str, str]) -> None:
    assert copy(ends) == 0
    store = Store.open(ends[1])
    with store.turn() as work:
        before = work.connection.execute(select(func.max(tables.outbox.c.id))).scalar_one()
        assert work.outbox.queue([saying("chat:1", "next", "next")], START) == 1
        assert work.outbox.pending()[-1].id == before + 1
    store.close()


@both_ways()
def test_run_again_it_brings_what_is_missing_and_nothing_else(ends: tuple[str, str]) -> None:
    assert copy(ends) == 0
    change(ends[1], "DELETE FROM entry WHERE id % 3 = 0")
    assert copy(ends) == 0
    assert rows(ends[1]) == rows(ends[0])


#: Copies as the command does, and dies by signal 9 once so many rows are there.
KILLED = """
import os, signal, sys
from bot.storage.moving import move
from bot.storage.store import Store, backend_of

def moved(more):
    so_far.append(more)
    if sum(so_far) >= int(sys.argv[3]):
        os.kill(os.getpid(), signal.SIGKILL)

so_far = []
there = Store(backend_of(sys.argv[2]))
there.fit(upgrade=True, half_moved=True)
move(Store.open(sys.argv[1]), there, moved=moved)
"""


@both_ways("sqlite to postgresql", "postgresql to sqlite")
@pytest.mark.parametrize("after", [1, 1300])
def test_killed_in_the_middle_it_is_opened_by_no_bot_and_goes_on_when_run_again(
    ends: tuple[str, str], after: int, checkout: Path
) -> None:
    change(ends[0], "DELETE FROM entry")
    change(ends[0], "DELETE FROM heard")
    store = Store.open(ends[0])
    with store.turn() as work:
        meals = [Event(id=n, at=START, body=Meal(text=f"{ODD} {n}")) for n in range(1, 2001)]
        work.save(Turn(participant=person("p0"), events=tuple(meals)))
    store.close()
    copying = [sys.executable, "-c", KILLED, *ends, str(after)]
    ended = subprocess.run(copying, cwd=checkout, check=False, timeout=60)
    assert ended.returncode == -signal.SIGKILL
    with pytest.raises(Mendable, match="copy into this database was not finished"):
        Store.open(ends[1])
    there = Store(backend_of(ends[1]))
    with there.engine.begin() as connection:
        assert 0 < sum(counts(connection).values()) < 2000
    there.close()
    assert copy(ends) == 0
    assert rows(ends[1]) == rows(ends[0])


@both_ways("sqlite to postgresql", "postgresql to sqlite")
@pytest.mark.parametrize(
    ("statement", "told"),
    [
        ("UPDATE entry SET offset_s = 1 WHERE id = 7", "another row of `entry`"),
        ("INSERT INTO fact VALUES ('alive', 'other')", "that --from does not have"),
    ],
)
def test_another_bots_rows_are_never_overwritten_nor_added_to(
    ends: tuple[str, str], statement: str, told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert copy(ends) == 0
    change(ends[1], statement)
    change(ends[1], "DELETE FROM entry WHERE id = 9")
    before = rows(ends[1])
    capsys.readouterr()
    assert copy(ends) == 1
    refused = capsys.readouterr().err
    assert told in refused
    assert len(refused.strip().splitlines()) == 1
    assert rows(ends[1]) == before


@both_ways("postgresql to sqlite")
def test_a_database_that_a_bot_sends_from_is_not_copied(
    ends: tuple[str, str], capsys: pytest.CaptureFixture[str]
) -> None:
    change(ends[0], "INSERT INTO fact VALUES ('part:sending', 'me 99999999999999')")
    assert copy(ends) == 1
    assert "a bot serves the database of --from" in capsys.readouterr().err
    change(ends[0], "UPDATE fact SET value = 'me 1' WHERE name = 'part:sending'")
    assert copy(ends) == 0
    assert not [row for row in rows(ends[1])["fact"] if row[0].startswith("part:")]


@both_ways("sqlite to postgresql")
def test_what_postgresql_cannot_hold_is_told_in_one_line(
    ends: tuple[str, str], capsys: pytest.CaptureFixture[str]
) -> None:
    change(ends[0], "UPDATE heard SET text = 'a' || char(0) || 'b'")
    assert copy(ends) == 1
    refused = capsys.readouterr().err
    assert "NUL" in refused
    assert len(refused.strip().splitlines()) == 1


def test_nothing_to_copy_or_onto_itself_is_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    fill("sqlite:///afterplate.db", meals=1)
    for source, target in (("none.db", "there.db"), ("afterplate.db", "./afterplate.db")):
        assert copy((f"sqlite:///{source}", f"sqlite:///{target}")) == 1
        assert len(capsys.readouterr().err.strip().splitlines()) == 1
        assert not (tmp_path / "none.db").exists()


@pytest.mark.parametrize(
    ("given", "told"),
    [
        (("nonsense", "sqlite:///b.db"), "--from is not a database URL"),
        (("sqlite:///a.db", ""), "--to is not a database URL"),
        (("mysql://a/b", "sqlite:///b.db"), "--from must be sqlite:///... or postgresql://..."),
        (("sqlite:///a.db", "mysql://a/b"), "--to must be sqlite:///... or postgresql://..."),
    ],
)
def test_what_is_no_database_is_refused_by_its_option(
    given: tuple[str, str],
    told: str,
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["copy", "--from", given[0], "--to", given[1]]) == 1
    assert capsys.readouterr().err == f"afterplate: {told}\n"
    assert list(tmp_path.iterdir()) == []
