"""What several machines do, as ratios measured in one run: `python tests/bench/bench_postgres.py`.

On a PostgreSQL of its own (fsync on), server and processes on the same cores. Whole turns a
second with 1, 2 and 4 processes, beside one process on SQLite; and how fast people who fall due
together are woken by 1, 2 and 4 workers, with nobody else waiting and with 100,000 due next
week, beside the plain job engine, which is given all of them, near and far. Beside each rate
stands what one of them cost in processor time, the server's included: other work on the same
cores lowers the rates, but hardly that.
"""

import argparse
import asyncio
import json
import logging
import os
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Awaitable, Callable
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

import psycopg
from procrastinate import App, PsycopgConnector
from psycopg_pool import AsyncConnectionPool

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from postgres import Server  # type: ignore[import-not-found]

from bot.conversation import Conversation
from bot.messages import Incoming
from bot.participants import Participant
from bot.storage import shared
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.units import Unit
from bot.wiring import live_turns
from scheduler.clock import SharedClock, real_now
from scheduler.port import Due
from scheduler.postgres import PostgresEngine, Wire, prepare
from scheduler.postgres.engine import POLL, WAKES_AT_ONCE
from scheduler.postgres.making import worker_of

PROCESSES = (1, 2, 4)
#: Threads that take turns in one process, as in `serve`.
THREADS = 4
PEOPLE_A_THREAD = 5
TEXTS = ("118 before lunch, rice and beans", "164", "walked 20 minutes", "131", "92 fasting")
#: As any installation has it: what is committed is on the disk.
HONEST = {"fsync": "on", "full_page_writes": "on", "autovacuum": "on", "shared_buffers": "128MB"}

#: One small transaction, the same for both engines: one message queued, the next wake moved on.
WAKE = """
WITH woken AS (
    UPDATE participant SET next_wake_ms = NULL WHERE id = %(who)s RETURNING id
)
INSERT INTO said (who) SELECT id FROM woken
"""


@dataclass(frozen=True, kw_only=True)
class Rate:
    """How many a second, and the processor time of one: the bot's processes', the server's."""

    a_second: float
    own_ms: float
    server_ms: float

    def __str__(self) -> str:
        return f"{self.a_second:.0f}/s, {self.own_ms:.1f} + {self.server_ms:.1f} ms each"


# --- whole turns -----------------------------------------------------------------------------


def take_turns(url: str, process: int, count: int) -> None:
    """One process: say that it is ready, wait for a line, take turns, tell how long it took."""
    store = Store.open(url)
    now = real_now()
    conversation = Conversation(store, live_turns(), real_now=real_now, new_id=lambda: "x")
    chats = {
        thread: [f"{process}-{thread}-{number}" for number in range(PEOPLE_A_THREAD)]
        for thread in range(THREADS)
    }
    for chat in (chat for mine in chats.values() for chat in mine):
        who = Participant(id=chat, unit=Unit.MG_DL, zone="UTC", joined_at=now)
        with store.turn() as work:
            work.enrol(who, now)
            work.keep_chat(ChatSeen(id=chat, participant=who.id), now)

    parked: list[int] = []

    def talk(thread: int) -> None:
        for number in range(count // THREADS):
            update = (process * THREADS + thread) * 1_000_000 + number
            chat = chats[thread][number % PEOPLE_A_THREAD]
            text = TEXTS[number // PEOPLE_A_THREAD % len(TEXTS)]
            at = now + timedelta(minutes=70 * (number // PEOPLE_A_THREAD))
            message = Incoming(update=update, chat=chat, message=str(number), at=at, text=text)
            if conversation.hear(message, at).parked:
                parked.append(number)

    for number, text in enumerate(TEXTS * 2):  # patterns are built when they are first met
        update, at = -(process * 100 + number) - 1, now - timedelta(days=2, minutes=-90 * number)
        first = chats[0][0]
        conversation.hear(Incoming(update=update, chat=first, message="", at=at, text=text), at)
    threads = [threading.Thread(target=talk, args=[thread]) for thread in range(THREADS)]
    _wait_to_go()
    began, used = time.perf_counter(), time.process_time()
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    took, used = time.perf_counter() - began, time.process_time() - used
    store.close()
    if parked:
        raise RuntimeError(f"{len(parked)} turns failed: nothing was measured")
    _tell(took, used)


def turns_a_second(url: str, processes: int, count: int, server: Server) -> Rate:
    """Whole turns, all processes together; from the first to the last."""
    before = _server_cpu(server)
    told = _run_all(processes, lambda number: ["turns", url, str(number), str(count)])
    return Rate(
        a_second=processes * count / max(took for took, _ in told),
        own_ms=sum(used for _, used in told) / (processes * count) * 1000,
        server_ms=(_server_cpu(server) - before) / (processes * count) * 1000,
    )


# --- waking ----------------------------------------------------------------------------------


def wake_with_ours(url: str) -> None:
    """One worker of ours, until it is ended."""
    store = Store.open(url)

    async def serve() -> None:
        clock = SharedClock.plain()
        engines: list[PostgresEngine] = []
        wire = Wire(url, clock, heard=lambda word: [e.heard(word) for e in engines] and None)
        async with wire, _pool(url) as pool:
            engine = PostgresEngine(url, clock, wire)
            engines.append(engine)

            def look(until: datetime, limit: int) -> Due:
                with store.turn() as work:
                    found = shared.due_until(work.connection, until, limit)
                return Due(who=tuple(w for w, _ in found), at=tuple(a for _, a in found))

            async def due(until: datetime, limit: int) -> Due:
                return await asyncio.to_thread(look, until, limit)

            async def on_wake(people: tuple[str, ...], _now: datetime) -> None:
                await _wake(pool, people[0])

            _tell(0)
            await engine.run(due, on_wake)

    asyncio.run(serve())


def wake_with_plain(url: str) -> None:
    """One worker of the plain engine, until it is ended."""

    async def serve() -> None:
        async with _pool(url) as pool, _pool(url) as jobs:
            app = App(connector=PsycopgConnector())
            await app.open_async(jobs)

            @app.task(name="wake", queue="wake")
            async def wake(who: str, at: str) -> None:
                await _wake(pool, who)

            _tell(0)
            worker = worker_of(app, "wake", at_once=WAKES_AT_ONCE, poll=POLL, listen=True)
            await worker.run()

    asyncio.run(serve())


def _pool(url: str) -> AsyncConnectionPool:
    return AsyncConnectionPool(url, min_size=2, max_size=WAKES_AT_ONCE, open=False)


async def _wake(pool: AsyncConnectionPool, who: str) -> None:
    async with pool.connection() as connection:
        await connection.execute(WAKE, {"who": who})


def woken_a_second(
    url: str, kind: str, *, workers: int, due: int, backlog: int, server: Server
) -> Rate:
    """How fast `due` people are woken who fall due together."""
    with psycopg.connect(url, autocommit=True) as line:
        line.execute("TRUNCATE participant, procrastinate_jobs, procrastinate_events, said CASCADE")
        _people(line, "far", backlog, "7 days")
        if kind == "plain":
            _jobs(line, "far", backlog, "7 days")
        line.execute("VACUUM ANALYZE")
        children = _start(workers, lambda _number: [kind, url])
        time.sleep(1.5)  # they have looked once, and have nothing to do
        before = _server_cpu(server), sum(_cpu(child.pid) for child in children)
        with line.transaction():
            _people(line, "due", due, "0")
            if kind == "plain":
                _jobs(line, "due", due, "0")
            else:
                line.execute("NOTIFY afterplate, 'soon'")
        began = time.perf_counter()
        try:
            while (done := _count(line)) < due and time.perf_counter() - began < 120:
                time.sleep(0.02)
            took = time.perf_counter() - began
            used = sum(_cpu(child.pid) for child in children) - before[1]
            return Rate(
                a_second=done / took,
                own_ms=used / done * 1000,
                server_ms=(_server_cpu(server) - before[0]) / done * 1000,
            )
        finally:
            for child in children:
                child.kill()
                child.wait()
                for end in (child.stdin, child.stdout):
                    if end is not None:
                        end.close()
            line.execute("DELETE FROM procrastinate_workers")


def _count(line: psycopg.Connection) -> int:
    found = line.execute("SELECT count(*) FROM said").fetchone()
    return 0 if found is None else int(found[0])


def _people(line: psycopg.Connection, name: str, count: int, wake: str) -> None:
    line.execute(
        "INSERT INTO participant (id, body, state, made_real, last_entry, next_wake_ms) "
        "SELECT %(name)s || n, '', 'active', 0, 0, "
        "extract(epoch FROM now() + %(wake)s::interval) * 1000 "
        "FROM generate_series(1, %(count)s) n",
        {"name": name, "count": count, "wake": wake},
    )


def _jobs(line: psycopg.Connection, name: str, count: int, wake: str) -> None:
    line.execute(
        "INSERT INTO procrastinate_jobs (queue_name, task_name, args, scheduled_at) "
        "SELECT 'wake', 'wake', jsonb_build_object('who', %(name)s || n, 'at', ''), "
        "now() + %(wake)s::interval FROM generate_series(1, %(count)s) n",
        {"name": name, "count": count, "wake": wake},
    )


# --- processes -------------------------------------------------------------------------------


def _wait_to_go() -> None:
    _tell(0)
    sys.stdin.readline()


def _tell(*seconds: float) -> None:
    sys.stdout.write(f"{json.dumps(seconds)}\n")
    sys.stdout.flush()


def _start(count: int, arguments: Callable[[int], list[str]]) -> list[subprocess.Popen[str]]:
    """Start so many of this program, and wait until each of them is ready."""
    children = [
        subprocess.Popen(
            [sys.executable, __file__, "--as", *arguments(number)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            env={**os.environ, "AFTERPLATE_LOG": "error"},
        )
        for number in range(count)
    ]
    for child in children:
        assert child.stdout is not None
        child.stdout.readline()
    return children


def _run_all(count: int, arguments: Callable[[int], list[str]]) -> list[tuple[float, float]]:
    children = _start(count, arguments)
    for child in children:
        assert child.stdin is not None
        child.stdin.write("go\n")
        child.stdin.flush()
    told = [tuple(json.loads(child.communicate()[0])) for child in children]
    assert not any(child.returncode for child in children)
    return told


def _cpu(process: int) -> float:
    """Processor seconds of a process, and of children of it that have ended (proc(5), stat)."""
    fields = Path(f"/proc/{process}/stat").read_text(encoding="utf-8").rpartition(")")[2].split()
    return sum(int(field) for field in fields[11:15]) / os.sysconf("SC_CLK_TCK")


def _server_cpu(server: Server) -> float:
    """Of PostgreSQL, all its processes."""
    process = server.process.pid
    children = Path(f"/proc/{process}/task/{process}/children").read_text(encoding="utf-8")
    used = _cpu(process)
    for child in children.split():
        with suppress(FileNotFoundError, ProcessLookupError):  # ended just now
            used += _cpu(int(child))
    return used


ROLES: dict[str, Callable[..., Awaitable[None] | None]] = {
    "ours": wake_with_ours,
    "plain": wake_with_plain,
    "turns": lambda url, process, count: take_turns(url, int(process), int(count)),
}


def main() -> None:
    """Print a table of figures and ratios."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--as", nargs="+", dest="role", help=argparse.SUPPRESS)
    parser.add_argument("--turns", type=int, default=400, help="turns a process")
    parser.add_argument("--due", type=int, default=2000, help="people who fall due together")
    parser.add_argument("--backlog", type=int, default=100_000, help="people due next week")
    args = parser.parse_args()
    logging.disable(logging.CRITICAL)
    if args.role:
        ROLES[args.role[0]](*args.role[1:])
        return
    out = sys.stdout.write
    with tempfile.TemporaryDirectory() as folder, Server.begun(**HONEST) as server:
        one = turns_a_second(_made(f"sqlite:///{folder}/bot.db"), 1, args.turns, server)
        out(f"whole turns, SQLite, 1 process: {one}\n")
        for processes in PROCESSES:
            with server.database() as url:
                rate = turns_a_second(_made(url), processes, args.turns, server)
            ratio = rate.a_second / one.a_second
            out(f"whole turns, PostgreSQL, {processes} processes: {rate} ({ratio:.2f})\n")
            sys.stdout.flush()
        with server.database() as url:
            _made(url)
            with psycopg.connect(url, autocommit=True) as line:
                line.execute("CREATE TABLE said (who text)")
            for backlog in (0, args.backlog):
                for workers in PROCESSES:
                    ours, plain = (
                        woken_a_second(
                            url, kind, workers=workers, due=args.due, backlog=backlog, server=server
                        )
                        for kind in ("ours", "plain")
                    )
                    out(
                        f"woken, {workers} workers, {backlog} next week: {ours}; "
                        f"plain {plain} ({ours.a_second / plain.a_second:.1f})\n"
                    )
                    sys.stdout.flush()


def _made(url: str) -> str:
    Store.open(url, upgrade=True).close()
    if not url.startswith("sqlite"):
        prepare(url)
    return url


if __name__ == "__main__":
    main()
