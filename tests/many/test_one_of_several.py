"""One process of several: what it does, what it leaves to another, and what it never loads."""

import asyncio
import subprocess
import sys
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import pytest
from pydantic import SecretStr

from bot.many import Role, SharedService
from bot.mendable import Mendable
from bot.messages import Kind, Saying
from bot.parts import Part
from bot.settings import Settings
from bot.storage.store import Store, Writer
from bot.trial.faults import Fault
from bot.trial.stand_in import TOKEN, StandIn
from scheduler.clock import LiveClock, real_now
from scheduler.postgres import prepare
from tests.conversation.echo import person


@pytest.fixture
def url(postgres_url: str) -> str:
    prepare(postgres_url)
    return postgres_url


def service(server: StandIn, url: str, role: Role = Role.BOTH) -> SharedService:
    settings = Settings(telegram_token=SecretStr(TOKEN), telegram_api=server.url, database=url)
    return SharedService(settings, role=role)


@asynccontextmanager
async def running(bot: SharedService) -> AsyncIterator[SharedService]:
    stop, ready = asyncio.Event(), asyncio.Event()
    task = asyncio.create_task(bot.run(stop, ready=ready))
    await asyncio.wait({task, asyncio.create_task(ready.wait())}, return_when="FIRST_COMPLETED")
    try:
        yield bot
    finally:
        stop.set()
        await task


async def until(holds, seconds: float = 20) -> None:  # type: ignore[no-untyped-def]
    async with asyncio.timeout(seconds):
        while not holds():  # noqa: ASYNC110 - what is looked at sets no event
            await asyncio.sleep(0.02)


def queue(url: str, *says: Saying) -> None:
    store = Store.open(url)
    with store.turn() as work:
        work.outbox.queue(says, real_now())
    store.close()


def saying(to: str, kind: Kind, key: str, **fields: Any) -> Saying:
    return Saying(to=to, kind=kind, text=key, key=key, due_at=real_now(), **fields)


class Draws:
    """In the place of the drawing process: waits until it may go on, or fails."""

    def __init__(self, *, fails: bool = False) -> None:
        self.may_go_on = asyncio.Event()
        self._fails = fails

    async def __call__(self, _picture: Mapping[str, Any]) -> bytes:
        if self._fails:
            raise TimeoutError
        await self.may_go_on.wait()
        return b"png"

    def close(self) -> None:
        self.may_go_on.set()


# --- charts and cautions ---------------------------------------------------------------------


async def test_a_caution_waits_neither_behind_charts_being_drawn_nor_behind_those_in_line(
    url: str,
) -> None:
    async with StandIn(real_now) as server:
        bot, draws = service(server, url), Draws()
        bot._drawing = draws  # type: ignore[assignment]
        async with running(bot):
            chats = [server.chats.open(f"p{number}") for number in range(13)]
            for number, chat in enumerate(chats):
                await bot.enrol(person(f"p{number}"), chat=str(chat))
            figures = {"figures": 1}
            week = (saying(f"p{n}", Kind.DIGEST, f"week {n}", picture=figures) for n in range(12))
            queue(url, *week)
            await until(lambda: not bot.is_idle)
            await asyncio.sleep(0.5)  # as many are being drawn as ever are at one time
            queue(url, saying("p12", Kind.CAUTION, "sugar now"))
            bot._wire.ring("outbox")
            (sent,) = await server.sent(chats[12], 1, seconds=3)
            assert sent.text == "sugar now"
            assert not any(server.sent_to(chat) for chat in chats[:12])
            draws.may_go_on.set()
            await server.until(lambda: all(server.sent_to(chat) for chat in chats[:12]), 20)
            assert {server.sent_to(chat)[0].picture for chat in chats[:12]} == {b"png"}


async def test_words_go_out_alone_when_no_worker_can_draw(url: str) -> None:
    async with StandIn(real_now) as server:
        bot = service(server, url)
        bot._drawing = Draws(fails=True)  # type: ignore[assignment]
        async with running(bot):
            chat = server.chats.open("ann")
            await bot.enrol(person("ann"), chat=str(chat))
            queue(url, saying("ann", Kind.DIGEST, "your week", picture={"figures": 1}))
            (sent,) = await server.sent(chat, 1)
            assert (sent.text, sent.picture) == ("your week", None)


# --- who does what ---------------------------------------------------------------------------


async def test_of_two_one_fetches_and_one_sends_and_the_other_takes_both_up_at_once(
    url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.parts.TRY_EVERY", 0.2)
    async with StandIn(real_now) as server, running(service(server, url)) as second:
        await until(lambda: second._fetching.is_mine)
        chat = server.chats.open("ann")
        await second.enrol(person("ann"), chat=str(chat))
        async with running(service(server, url)) as first:
            server.chats.say(chat, "help")
            await server.sent(chat, 1)
            assert not first._fetching.is_mine  # and no two fetchers turned each other away
        async with running(service(server, url)) as third:
            second._fetching._me = second._delivery._part._me = "nobody"  # type: ignore[attr-defined]
            await third._writer.run(forget_parts, url)
            await until(lambda: third._fetching.is_mine and not second._fetching.is_mine)
            await until(lambda: not third.is_idle or third._delivery._delivery is not None)  # type: ignore[attr-defined]
            server.chats.say(chat, "help")
            await server.sent(chat, 2)


def forget_parts(url: str) -> None:
    store = Store.open(url)
    with store.turn() as work:
        work.connection.exec_driver_sql("DELETE FROM fact WHERE name LIKE 'part:%%'")
    store.close()


async def test_one_that_only_works_fetches_nothing_and_one_that_only_receives_sends_nothing(
    url: str,
) -> None:
    async with StandIn(real_now) as server:
        async with running(service(server, url, Role.WORK)) as worker:
            chat = server.chats.open("ann")
            await worker.enrol(person("ann"), chat=str(chat))
            server.chats.say(chat, "help")
            await asyncio.sleep(1)
            assert not server.fetching
            assert server.sent_to(chat) == []
        async with running(service(server, url, Role.RECEIVE)):
            await server.taken(20)
            await asyncio.sleep(1)
            assert server.sent_to(chat) == []
        async with running(service(server, url, Role.WORK)):
            assert len(await server.sent(chat, 1)) == 1


async def test_who_ends_in_good_order_leaves_its_part_to_the_next_one_at_once(url: str) -> None:
    async with StandIn(real_now) as server:
        async with running(service(server, url)) as first:
            await until(lambda: first._fetching.is_mine)
        store = Store.open(url)
        with store.turn() as work:
            held = work.connection.exec_driver_sql(
                "SELECT count(*) FROM fact WHERE name IN ('part:sending', 'part:fetching')"
            ).scalar_one()
        store.close()
    assert held == 0


async def test_a_process_that_sends_and_one_that_only_receives_are_both_alive_for_a_monitor(
    url: str,
) -> None:
    async with StandIn(real_now) as server:
        for role in Role:
            async with running(service(server, url, role)) as bot:
                meter = bot._meter
                await until(lambda meter=meter: not meter.overdue())


async def test_a_send_under_way_when_the_part_is_lost_is_seen_through(url: str) -> None:
    async with StandIn(real_now) as server:
        async with running(service(server, url)) as bot:
            chat = server.chats.open("ann")
            await bot.enrol(person("ann"), chat=str(chat))
            server.faults.order(Fault.SLOW, method="sendMessage", seconds=2)
            queue(url, saying("ann", Kind.PROMPT, "test now"))
            await until(lambda: server.calls["sendMessage"] == 1)
        assert [sent.text for sent in server.sent_to(chat)] == ["test now"]
        store = Store.open(url)
        with store.turn() as work:
            assert work.outbox.counts() == {"sent": 1}
        store.close()


# --- holding a part --------------------------------------------------------------------------


async def test_whoever_cannot_hold_a_part_longer_lets_go_before_another_may_begin(
    url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.parts.HELD_LONGER_EVERY", 0.05)
    monkeypatch.setattr("bot.parts.LET_GO_AFTER", 0.3)
    store, writer = Store.open(url), Writer()
    part = Part("sending", store, writer, LiveClock.plain(), standing_by=lambda: None)
    playing = [0]

    async def play() -> None:
        playing[0] += 1
        try:
            await asyncio.Event().wait()
        finally:
            playing[0] -= 1

    task = asyncio.create_task(part.play(play))
    await until(lambda: playing == [1])
    holds = part._hold

    async def unknown() -> None:
        return None  # as while the database is away

    part._hold = unknown  # type: ignore[assignment,method-assign]
    await until(lambda: playing == [0], seconds=2)
    part._hold = holds  # type: ignore[method-assign]
    monkeypatch.setattr("bot.parts.TRY_EVERY", 0.05)
    await asyncio.sleep(0)
    task.cancel()
    await asyncio.gather(task, return_exceptions=True)
    writer.close()
    store.close()


async def test_what_fails_at_once_is_begun_again_and_no_fault_escapes(
    url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.parts.TRY_EVERY", 0.05)
    store, writer = Store.open(url), Writer()
    part = Part("sending", store, writer, LiveClock.plain(), standing_by=lambda: None)
    begun = [0]

    async def fail() -> None:
        begun[0] += 1
        raise ConnectionError

    task = asyncio.create_task(part.play(fail))
    await until(lambda: begun[0] >= 2)
    task.cancel()
    await asyncio.gather(task, return_exceptions=True)
    writer.close()
    store.close()


# --- beginning -------------------------------------------------------------------------------


async def test_a_database_without_the_engines_tables_is_refused_with_what_to_do(
    postgres_url: str,
) -> None:
    async with StandIn(real_now) as server:
        with pytest.raises(Mendable, match="run migrate first"):
            await service(server, postgres_url).run(asyncio.Event())


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["--only", "work"], "--only is for several processes, and those need postgresql://"),
        (["--only", "sing"], "invalid choice: 'sing'"),
    ],
)
def test_a_part_of_one_is_refused(tmp_path: Path, arguments: list[str], told: str) -> None:
    done = serve(tmp_path, f"sqlite:///{tmp_path / 'bot.db'}", *arguments)
    assert done.returncode in (1, 2)
    assert told in done.stderr


def test_one_that_only_works_takes_no_address(tmp_path: Path) -> None:
    done = serve(tmp_path, "postgresql://x/y", "--only", "work", "--webhook", "https://x.org/")
    assert done.returncode == 1
    assert "--webhook goes with taking messages in" in done.stderr


def serve(folder: Path, database: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    checkout = str(Path(__file__).resolve().parents[2])
    env = {
        "PYTHONPATH": checkout,
        "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
        "AFTERPLATE_DATABASE": database,
    }
    return subprocess.run(
        [sys.executable, "-m", "bot", "serve", *arguments],
        check=False,
        capture_output=True,
        text=True,
        env=env,
        cwd=folder,
        timeout=60,
    )


def test_a_bot_on_sqlite_loads_nothing_of_the_job_engine_or_of_postgresql() -> None:
    asked = (
        "import sys; import bot.commands.serve, bot.wiring; from bot.storage.store import Store; "
        "Store.open('sqlite://').close(); "
        "print([name for name in sys.modules if name.split('.')[0] in "
        "('psycopg', 'psycopg_pool', 'procrastinate') or name.startswith("
        "('scheduler.postgres', 'sqlalchemy.dialects.postgresql'))])"
    )
    done = subprocess.run(
        [sys.executable, "-c", asked], check=True, capture_output=True, text=True, timeout=60
    )
    assert done.stdout.strip() == "[]"
