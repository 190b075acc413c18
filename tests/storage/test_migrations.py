"""The history of the tables on both databases: one line, run once, old and new side by side."""

from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine, inspect, text

from bot.conversation import Conversation
from bot.mendable import Mendable
from bot.messages import Incoming
from bot.storage import migrations, postgres
from bot.storage.store import Store, backend_of
from bot.storage.work import ChatSeen
from tests.conversation.echo import START, echo_turns, person, saying
from tests.postgres import Server

STEPS = sorted(
    path.name[1:5] for path in (Path(migrations.__file__).parent / "versions").glob("m*.py")
)
Shape = dict[str, dict[str, Any]]


def shape(engine: Engine) -> Shape:
    """Columns and indexes by table and name."""
    seen = inspect(engine)
    found: Shape = {}
    for table in seen.get_table_names():
        columns = {
            f"column {one['name']}": (str(one["type"]), one["nullable"], one["default"])
            for one in seen.get_columns(table)
        }
        indexes = {
            f"index {one['name']}": (one["column_names"], bool(one["unique"]), where(engine, one))
            for one in seen.get_indexes(table)
        }
        found[table] = columns | indexes | {"key": seen.get_pk_constraint(table)}
    return found


def where(engine: Engine, index: Any) -> str:
    """For which rows an index is kept."""
    if engine.dialect.name == "postgresql":
        return str(index.get("dialect_options", {}).get("postgresql_where"))
    asked = text("SELECT sql FROM sqlite_master WHERE type = 'index' AND name = :name")
    with engine.connect() as connection:
        made = connection.execute(asked, {"name": index["name"]}).scalar_one()
    return str(made).partition(" WHERE ")[2]


@pytest.fixture(params=["sqlite", "postgresql"])
def empty_url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """A database without tables, of each kind."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'empty.db'}"
    return str(request.getfixturevalue("empty_postgres_url"))


@pytest.fixture
def empty(empty_url: str) -> Iterator[Store]:
    store = Store(backend_of(empty_url))
    yield store
    store.close()


def bring(store: Store, to: str) -> None:
    with store.engine.begin() as connection:
        migrations.upgrade(connection, to)


def test_the_newest_step_is_the_one_that_the_program_names() -> None:
    assert STEPS[-1] == migrations.HEAD


def test_made_at_once_and_step_by_step_are_the_same(
    empty: Store, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    if empty.is_sqlite:
        other = Store(backend_of(f"sqlite:///{tmp_path / 'other.db'}"))
        by_steps = shape_by_steps(other)
    else:
        server: Server = request.getfixturevalue("postgres_server")
        with server.database() as url:
            by_steps = shape_by_steps(Store(backend_of(url)))
    empty.fit(upgrade=True)
    assert shape(empty.engine) == by_steps


def shape_by_steps(store: Store) -> Shape:
    bring(store, "head")
    with store.engine.begin() as connection:
        assert migrations.version(connection) == migrations.HEAD
    found = shape(store.engine)
    store.close()
    return found


def test_every_step_only_adds_so_that_a_program_of_the_step_before_goes_on(empty: Store) -> None:
    """The policy of docs/postgresql.md, held mechanically: old hosts serve beside new ones."""
    before: Shape = {}
    for step in STEPS:
        bring(empty, step)
        after = shape(empty.engine)
        for table, parts in before.items():
            for name, part in parts.items():
                if name.startswith("index") and not part[1]:
                    continue  # it refuses no row, so that no program can miss it but in time
                assert after[table][name] == part, f"step {step} changes {table} {name}"
            for name in after[table].keys() - parts.keys():
                if name.startswith("column"):
                    _, may_be_null, default = after[table][name]
                    assert may_be_null or default, f"an old program cannot fill {table} {name}"
                else:
                    assert not after[table][name][1], f"{table} {name} may refuse old rows"
        before = after


def test_this_program_reads_and_keeps_in_the_last_schema(empty: Store) -> None:
    """Whole turns: `serve` refuses it all the same, and says what to do first."""
    bring(empty, STEPS[-2])
    talk = Conversation(empty, echo_turns, real_now=lambda: START, new_id=lambda: "x")
    with empty.turn() as work:
        work.enrol(person(), START, START)
        work.keep_chat(ChatSeen(id="100", participant="ann"), START)
    heard = Incoming(update=1, chat="100", message="1", at=START, text="118 before")
    assert talk.hear(heard, START).said == 1
    with empty.turn() as work:
        assert work.outbox.claim(START, START) is not None
        assert work.events("ann")
        assert work.due(START, 1)[0] == ()
        assert [one.participant.id for one in work.people()] == ["ann"]


class TestGuard:
    def test_several_that_migrate_at_once_do_it_once(self, empty_postgres_url: str) -> None:
        first = Store(backend_of(empty_postgres_url))
        bring(first, STEPS[0])
        with first.turn() as work:
            work.enrol(person(), START)
        first.close()

        def migrate(_: int) -> None:
            Store.open(empty_postgres_url, upgrade=True).close()

        with ThreadPoolExecutor(max_workers=6) as hosts:
            assert list(hosts.map(migrate, range(6))) == [None] * 6
        store = Store.open(empty_postgres_url)
        with store.turn() as work:
            assert len(work.people()) == 1
        store.close()

    def test_several_that_make_the_tables_at_once_do_it_once(self, empty_postgres_url: str) -> None:
        def migrate(_: int) -> None:
            Store.open(empty_postgres_url, upgrade=True).close()

        with ThreadPoolExecutor(max_workers=6) as hosts:
            assert list(hosts.map(migrate, range(6))) == [None] * 6

    def test_a_step_that_a_long_turn_keeps_waiting_gives_up_and_lets_the_turns_go_on(
        self, empty_postgres_url: str, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setitem(postgres.SESSION, "lock_timeout", "100ms")
        bot = Store(backend_of(empty_postgres_url))
        bring(bot, "0002")  # the step behind it makes an index of the outbox
        with bot.turn() as work:
            work.outbox.queue([saying("chat:1", "hi", "k")], START)
            with pytest.raises(Mendable, match="lock timeout"):
                Store.open(empty_postgres_url, upgrade=True)
        Store.open(empty_postgres_url, upgrade=True).close()
        with bot.turn() as work:
            assert len(work.outbox.pending()) == 1
        bot.close()

    @pytest.mark.parametrize("step", [None, STEPS[0]])
    def test_an_older_one_is_refused_on_postgresql(
        self, empty_postgres_url: str, step: str | None
    ) -> None:
        if step:
            store = Store(backend_of(empty_postgres_url))
            bring(store, step)
            store.close()
        with pytest.raises(Mendable, match=rf"version {step or 'none'}.*run migrate first"):
            Store.open(empty_postgres_url)

    def test_an_older_one_is_brought_up_by_itself_on_sqlite(self, tmp_path: Path) -> None:
        url = f"sqlite:///{tmp_path / 'old.db'}"
        old = Store(backend_of(url))
        bring(old, STEPS[0])
        with old.turn() as work:
            work.enrol(person(), START)
        old.close()
        store = Store.open(url)
        with store.turn() as work:
            assert len(work.people()) == 1
        store.close()

    def test_a_newer_one_and_a_strangers_are_refused(self, empty_url: str) -> None:
        store = Store(backend_of(empty_url))
        with store.engine.begin() as connection:
            connection.execute(text("CREATE TABLE recipes (name TEXT)"))
        with pytest.raises(Mendable, match="not made by this program"):
            Store.open(empty_url, upgrade=True)
        with store.engine.begin() as connection:
            connection.execute(text("DROP TABLE recipes"))
            migrations.create(connection)
            connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))
        with pytest.raises(Mendable, match="newer version"):
            Store.open(empty_url, upgrade=True)
        store.close()
