"""The store on real SQLite files and on PostgreSQL: one behaviour, twice."""

import sqlite3
import stat
from collections.abc import Iterator
from contextlib import suppress
from datetime import datetime, timedelta, timezone
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import inspect, select
from sqlalchemy.exc import IntegrityError

from bot.entries import (
    Activity,
    Asked,
    Doubt,
    Food,
    FoodKind,
    Meal,
    MealName,
    Moment,
    OffScale,
    Reading,
    Request,
    Skip,
    Step,
    StepTaken,
    Strips,
    What,
)
from bot.messages import Incoming, Kind
from bot.participants import Invitation, Participant, Role
from bot.record import Body, Event, Retracted, Spoke, Wondered, Wrote
from bot.storage import codec, migrations, tables
from bot.storage.letters import End
from bot.storage.statements import EVENT
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.turns.turn import Turn
from bot.units import Unit
from tests.conversation.echo import START, person, saying


@pytest.fixture
def store(database_url: str) -> Iterator[Store]:
    opened = Store.open(database_url)
    yield opened
    opened.close()


def said(id_: int, body: Body, at: datetime = START) -> Event:
    return Event(id=id_, at=at, body=body, message=str(id_))


def keep(store: Store, *events: Event, who: Participant | None = None) -> None:
    with store.turn() as work:
        work.save(Turn(participant=who or person(), events=events))


def enrol(store: Store, who: Participant | None = None) -> None:
    with store.turn() as work:
        work.enrol(who or person(), START)


@pytest.fixture
def file(tmp_path: Path) -> Iterator[Store]:
    opened = Store.open(f"sqlite:///{tmp_path / 'bot.db'}")
    yield opened
    opened.close()


class TestFile:
    def test_is_readable_by_its_owner_only(self, file: Store) -> None:
        enrol(file)
        for name in (file.path, f"{file.path}-wal"):
            assert stat.S_IMODE(Path(str(name)).stat().st_mode) == 0o600

    def test_every_pragma_that_guards_it_is_really_set(self, file: Store) -> None:
        # synchronous 2 is FULL, secure_delete 1 is ON (SQLite's pragma documentation).
        wanted = {"journal_mode": "wal", "synchronous": 2, "secure_delete": 1, "busy_timeout": 5000}
        pooled = file.engine.raw_connection()
        for name, value in wanted.items():
            assert pooled.cursor().execute(f"PRAGMA {name}").fetchone() == (value,), name
        pooled.close()

    def test_a_turn_takes_the_write_lock_at_its_beginning(self, file: Store) -> None:
        with file.turn():
            other = sqlite3.connect(str(file.path), timeout=0, isolation_level=None)
            with pytest.raises(sqlite3.OperationalError, match="locked"):
                other.execute("BEGIN IMMEDIATE")
            other.close()

    def test_history_makes_the_very_tables_of_the_models(self, file: Store) -> None:
        made, meant = inspect(file.engine), inspect(Store.in_memory().engine)
        names = set(meant.get_table_names())
        assert set(made.get_table_names()) == names | {"alembic_version"}
        for name in names:
            assert shape(made, name) == shape(meant, name)

    def test_the_newest_step_is_the_one_that_the_program_names(self) -> None:
        folder = Path(migrations.__file__).parent / "versions"
        newest = max(path.name for path in folder.glob("m*.py"))
        assert newest.startswith(f"m{migrations.HEAD}_")

    def test_opening_it_again_finds_what_was_kept(self, file: Store) -> None:
        enrol(file)
        keep(file, said(1, Wrote()))
        file.close()
        again = Store.open(f"sqlite:///{file.path}")
        with again.turn() as work:
            assert [event.id for event in work.events("ann")] == [1]
        again.close()


def shape(found: object, table: str) -> tuple[object, ...]:
    columns = [(c["name"], str(c["type"]), c["nullable"]) for c in found.get_columns(table)]  # type: ignore[attr-defined]
    indexes = sorted(
        (i["name"], tuple(i["column_names"]), bool(i["unique"]))
        for i in found.get_indexes(table)  # type: ignore[attr-defined]
    )
    return columns, indexes, found.get_pk_constraint(table)["constrained_columns"]  # type: ignore[attr-defined]


class TestTurn:
    def test_a_failing_turn_leaves_nothing(self, store: Store) -> None:
        enrol(store)
        with suppress(ZeroDivisionError), store.turn() as work:
            work.save(Turn(participant=person(), events=(said(1, Wrote()),)))
            work.outbox.queue([saying("ann", "hi", "k")], START)
            raise ZeroDivisionError
        with store.turn() as work:
            opened = work.open("ann", START)
            assert opened is not None
            assert opened.events == ()
            assert work.outbox.pending() == []

    def test_an_entry_is_never_overwritten(self, store: Store) -> None:
        enrol(store)
        keep(store, said(1, Wrote()))
        with pytest.raises(IntegrityError):
            keep(store, said(1, Strips(left=5)))

    def test_an_error_of_the_database_shows_no_value(self, store: Store) -> None:
        enrol(store)
        secret = said(1, Meal(text="a secret meal"))
        keep(store, secret)
        with pytest.raises(IntegrityError) as caught:
            keep(store, secret)
        assert "secret" not in str(caught.value)

    def test_looks_back_thirty_five_days_and_further_only_when_asked(
        self, store: Store, database_url: str
    ) -> None:
        enrol(store)
        events = [said(n, Wrote(), START + timedelta(days=10 * n)) for n in range(1, 7)]
        keep(store, *events)
        now = START + timedelta(days=60)
        for fresh in (store, Store.open(database_url)):
            with fresh.turn() as work:
                opened = work.open("ann", now)
                assert opened is not None
                assert [event.id for event in opened.events] == [3, 4, 5, 6]
                assert [event.id for event in opened.whole()] == [1, 2, 3, 4, 5, 6]
                assert opened.whole()[:1] == tuple(events[:1])
        fresh.close()

    def test_sees_what_another_process_wrote(self, store: Store, database_url: str) -> None:
        enrol(store)
        keep(store, said(1, Wrote()))
        other = Store.open(database_url)
        keep(other, said(2, Strips(left=50)))
        with other.turn() as work:
            work.save(Turn(participant=person(zone="America/Lima")))
        with store.turn() as work:
            opened = work.open("ann", START)
            assert opened is not None
            assert [event.id for event in opened.events] == [1, 2]
            assert opened.participant.zone == "America/Lima"
        other.close()

    def test_another_life_of_an_id_is_not_taken_for_the_first(
        self, store: Store, database_url: str
    ) -> None:
        enrol(store)
        keep(store, said(1, Strips(left=1)))
        with store.turn() as work:
            work.open("ann", START)
        other = Store.open(database_url)
        with other.turn() as work:
            work.erase("ann")
            work.enrol(person(), START + timedelta(hours=1))
            work.save(Turn(participant=person(), events=(said(1, Strips(left=2)),)))
        other.close()
        with store.turn() as work:
            opened = work.open("ann", START)
            assert opened is not None
            assert opened.events[0].body == Strips(left=2)


INSTANTS = st.datetimes(
    min_value=datetime(2020, 1, 1),
    max_value=datetime(2040, 1, 1),
    timezones=st.integers(-840, 840).map(lambda m: timezone(timedelta(minutes=m))),
).map(lambda at: at.replace(microsecond=at.microsecond // 1000 * 1000))
FOODS = st.builds(Food, text=st.text(), kind=st.sampled_from(FoodKind))
READINGS = st.builds(
    Reading,
    value=st.none() | st.floats(1, 600),
    unit=st.sampled_from(Unit),
    mg_dl=st.none() | st.floats(1, 600),
    moment=st.sampled_from(Moment),
    taken_at=st.none() | INSTANTS,
    off_scale=st.none() | st.sampled_from(OffScale),
)
BODIES = st.one_of(
    READINGS,
    st.builds(
        Meal,
        text=st.text(),
        name=st.none() | st.sampled_from(MealName),
        started_at=st.none() | INSTANTS,
        foods=st.lists(FOODS, max_size=3).map(tuple),
        photo=st.none() | st.text(),
    ),
    st.builds(Activity, text=st.text(), minutes=st.none() | st.floats(0, 999), ended_at=INSTANTS),
    st.builds(Skip, reason=st.none() | st.text()),
    st.builds(StepTaken, step=st.sampled_from(Step)),
    st.builds(Request, what=st.sampled_from(What), minutes=st.none() | st.floats(0, 99)),
    st.builds(Retracted, ids=st.lists(st.integers(1, 9999)).map(tuple)),
    st.builds(Spoke, kind=st.sampled_from(Kind), about=st.none() | st.text(), key=st.text()),
    st.builds(
        Wondered,
        topic=st.none() | st.text(),
        asked=st.none() | st.sampled_from(Asked),
        doubt=st.none() | st.builds(Doubt, readings=st.lists(READINGS, max_size=2).map(tuple)),
    ),
)


@given(body=BODIES, at=INSTANTS)
def test_whatever_an_event_holds_comes_back_as_it_was(body: Body, at: datetime) -> None:
    event = Event(id=7, at=at, body=body, message="m", mends=3)
    row = codec.event_row("ann", event)
    back = codec.event_of([row[column.name] for column in EVENT])
    assert back == event
    assert back.at.utcoffset() == at.utcoffset()


class TestPeople:
    def test_due_ones_come_longest_waiting_first_and_the_next_instant_is_told(
        self, store: Store
    ) -> None:
        with store.turn() as work:
            for number, minutes in enumerate((5, 1, 3, 60)):
                work.enrol(person(f"p{number}"), START, START + timedelta(minutes=minutes))
            who, later = work.due(START + timedelta(minutes=5), 2)
            assert who == ("p1", "p2")
            assert later == START + timedelta(minutes=60)
            assert work.earliest() == (START + timedelta(minutes=1), "p1")

    def test_an_invitation_works_once_until_it_expires_and_is_kept_as_a_hash(
        self, store: Store
    ) -> None:
        invitation = Invitation(zone="America/Lima", role=Role.PARTICIPANT)
        with store.turn() as work:
            work.invite("ABCD-EFGH", invitation, START + timedelta(days=1))
            assert work.invitation("abcd efgh", START) == invitation
            assert work.invitation("ABCD-EFGJ", START) is None
            assert work.invitation("ABCD-EFGH", START + timedelta(days=1)) is None
            work.spend("ABCD-EFGH", START)
            assert work.invitation("ABCD-EFGH", START) is None
            held = work.connection.execute(select(tables.invitation)).one()
        assert "ABCD" not in str(held)

    def test_erasing_leaves_none_of_their_bytes_in_the_files(self, file: Store) -> None:
        store = file
        enrol(store)
        enrol(store, person("ben"))
        with store.turn() as work:
            work.keep_chat(ChatSeen(id="77770001", participant="ann"), START)
            incoming = Incoming(
                update=1, chat="77770001", message="1", at=START, text="quinoa chowder 118"
            )
            work.keep_text("ann", incoming, START)
            work.outbox.queue([saying("ann", "heard quinoa chowder", "k1")], START)
            meals = tuple(said(n, Meal(text=f"quinoa chowder {n}")) for n in range(1, 400))
            work.save(Turn(participant=person(), events=meals))
            work.save(Turn(participant=person("ben"), events=(said(1, Meal(text="bread")),)))
        with store.turn() as work:
            assert work.erase("ann")
        store.wipe_log()
        for path in Path(str(store.path)).parent.iterdir():
            content = path.read_bytes()
            for trace in (b"quinoa", b"77770001", b'"ann"'):
                assert trace not in content, (path.name, trace)
        with store.turn() as work:
            assert [event.body for event in work.events("ben")] == [Meal(text="bread")]
            assert not work.erase("ann")

    def test_texts_go_after_their_time_and_the_record_stays(self, store: Store) -> None:
        enrol(store)
        with store.turn() as work:
            for number, days in enumerate((0, 40)):
                at = START + timedelta(days=days)
                work.keep_text(
                    "ann",
                    Incoming(update=number, chat="1", message=str(number), at=at, text="rice"),
                    at,
                )
                work.outbox.queue([saying("ann", "heard rice", f"k{number}", at=at)], at)
                (letter,) = work.outbox.pending()
                work.outbox.settle(letter, End.SENT, at, message=str(number))
            work.save(Turn(participant=person(), events=(said(1, Meal(text="rice")),)))
            limit = START + timedelta(days=30)
            assert work.forget_texts(limit, limit) == 2
            assert work.outbox.queue([saying("ann", "again", "k0")], START) == 0
            assert len(work.events("ann")) == 1
            kept = work.connection.exec_driver_sql("SELECT text FROM outbox ORDER BY id").scalars()
            assert list(kept) == ["", "heard rice"]
