"""Intake under faults: each test is named after its outcome (docs/delivery.md, the fault table)."""

import sqlite3
from pathlib import Path

import pytest
from sqlalchemy.exc import OperationalError

from bot.mendable import Mendable
from bot.storage.store import Store
from bot.trial.faults import Fault
from tests.conversation.echo import Served, served

pytestmark = pytest.mark.live


def facts(bot: Served, question: str) -> list[tuple[object, ...]]:
    with sqlite3.connect(bot.database.removeprefix("sqlite:///")) as connection:
        return connection.execute(question).fetchall()


async def test_an_update_not_committed_comes_again_and_is_handled_once(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        hear_all, calls = bot.service._conversation.hear_all, []

        def fail_once(messages, now):
            calls.append([incoming.update for incoming in messages])
            if len(calls) == 1:
                raise OperationalError("insert", None, Exception("killed before the commit"))
            return hear_all(messages, now)

        bot.service._conversation.hear_all = fail_once  # the process dies here, as it were
        await bot.heard(ann, "one")
        await bot.server.taken()
    assert calls == [[1], [1]]
    assert bot.texts(ann) == ["heard one"]


async def test_an_update_that_comes_again_after_its_commit_is_ignored(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats.say(ann, "one")
        update = dict(bot.server.chats.updates[0])
        await bot.server.sent(ann, 1)
        await bot.server.taken()
        bot.server.chats.again(update)
        await bot.server.taken()
        await bot.heard(ann, "two")
    assert bot.texts(ann) == ["heard one", "heard two"]


async def test_a_bot_started_again_does_not_handle_what_it_had_handled(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats.say(ann, "one")
        update = dict(bot.server.chats.updates[0])
        await bot.server.sent(ann, 1)
        await bot.stop()
        bot.server.chats.again(update)
        await bot.start()
        await bot.server.taken()
        await bot.heard(ann, "two")
    assert bot.texts(ann) == ["heard one", "heard two"]


async def test_what_comes_while_the_bot_is_away_is_handled_when_it_is_back(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.stop()
        for text in ("one", "two", "three"):
            bot.server.chats.say(ann, text)
        await bot.start()
        bot.shift(seconds=1)
        await bot.server.sent(ann, 3)
    assert bot.texts(ann) == ["heard one", "heard two", "heard three"]


async def test_a_failing_turn_is_parked_with_its_place_and_the_next_one_proceeds(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats.say(ann, "break")
        await bot.heard(ann, "next")
        await bot.server.taken()
        parked = facts(bot, "SELECT error FROM seen WHERE error IS NOT NULL")
        kept = facts(bot, "SELECT text FROM heard ORDER BY at_ms")
    assert bot.texts(ann) == ["heard next"]
    assert len(parked) == 1
    assert str(parked[0][0]).startswith("KeyError")
    assert "118" not in str(parked[0][0])
    assert ("break",) in kept


async def test_an_update_of_no_known_shape_is_parked_and_the_next_one_proceeds(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats._add({"message": {"date": "soon", "chat": 7}})
        bot.server.chats._add({"a_kind_of_next_year": {}})
        await bot.heard(ann, "next")
        parked = facts(bot, "SELECT error FROM seen WHERE error IS NOT NULL")
    assert len(parked) == 1
    assert bot.texts(ann) == ["heard next"]


async def test_a_burst_from_one_chat_is_handled_in_its_order(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann, ben = await bot.enrolled(), await bot.enrolled("Ben")
        for number in range(20):
            bot.server.chats.say(ann, f"a{number}")
            bot.server.chats.say(ben, f"b{number}")
        await bot.server.taken()
        order = [
            text
            for (text,) in facts(bot, "SELECT text FROM outbox WHERE reader = 'ann' ORDER BY id")
        ]
    assert order == [f"heard a{number}" for number in range(20)]


async def test_a_full_disk_stops_confirming_and_ends_without_a_restart(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.heard(ann, "before")
        await bot.server.taken()
        await set_pragma(bot, "max_page_count = 1")  # cannot grow beyond what it has
        await fill_the_last_page(bot)
        bot.server.chats.say(ann, "during " + "x" * 4000)
        await bot.server.until(lambda: bot.server.calls["getUpdates"] >= 5)
        assert len(bot.server.chats.updates) == 1
        await set_pragma(bot, "max_page_count = 1000000")
        await bot.server.taken()
        await bot.server.sent(ann, 2)
    assert bot.texts(ann)[1].startswith("heard during")


async def set_pragma(bot: Served, pragma: str) -> None:
    def run() -> None:
        pooled = bot.service._store.engine.raw_connection()
        pooled.cursor().execute(f"PRAGMA {pragma}")
        pooled.close()

    await bot.service._writer.run(run)


async def fill_the_last_page(bot: Served) -> None:
    def run() -> None:
        try:
            for number in range(1000):
                with bot.service._store.turn() as work:
                    work.set_fact(f"filler {number}", "x" * 100)
        except OperationalError:
            return
        raise AssertionError("the disk was never full")

    await bot.service._writer.run(run)


async def test_a_database_locked_by_another_is_waited_for_and_nothing_is_lost(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.heard(ann, "before")
        await set_pragma(bot, "busy_timeout = 100")  # the five seconds made short
        other = sqlite3.connect(bot.database.removeprefix("sqlite:///"), isolation_level=None)
        other.execute("BEGIN IMMEDIATE")
        bot.server.chats.say(ann, "during")
        await bot.server.until(lambda: bot.server.calls["getUpdates"] >= 4)
        assert len(bot.server.chats.updates) == 1
        other.execute("ROLLBACK")
        other.close()
        await bot.server.sent(ann, 2)
    assert bot.texts(ann) == ["heard before", "heard during"]


async def test_fetching_survives_broken_answers_and_a_server_that_is_away(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="getUpdates")
        bot.server.faults.order(Fault.TOO_MANY, method="getUpdates", seconds=1)
        await bot.heard(ann, "one")
        await bot.server.stop()
        await bot.server.start()
        bot.shift(seconds=60)
        await bot.heard(ann, "two")
    assert bot.texts(ann) == ["heard one", "heard two"]


async def test_a_second_bot_on_one_database_refuses_with_the_reason(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        second = Served(bot.server, tmp_path)
        with pytest.raises(Mendable, match="another bot serves this database"):
            await second.start()
        ann = await bot.enrolled()
        await bot.heard(ann, "still here")


def test_a_newer_database_is_refused(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'bot.db'}"
    Store.open(url).close()
    with sqlite3.connect(tmp_path / "bot.db") as connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
    with pytest.raises(Mendable, match="newer version"):
        Store.open(url)


def test_a_damaged_database_is_refused_and_left_as_it_is(tmp_path: Path) -> None:
    path = tmp_path / "bot.db"
    path.write_bytes(b"this is no database at all, only some text" * 100)
    before = path.read_bytes()
    with pytest.raises(Mendable, match="cannot be used"):
        Store.open(f"sqlite:///{path}")
    assert path.read_bytes() == before


def test_a_database_of_another_program_is_refused(tmp_path: Path) -> None:
    with sqlite3.connect(tmp_path / "bot.db") as connection:
        connection.execute("CREATE TABLE recipes (name TEXT)")
    with pytest.raises(Mendable, match="not made by this program"):
        Store.open(f"sqlite:///{tmp_path / 'bot.db'}")
