"""What the shell costs, as ratios measured in one run: `python tests/bench/bench_turns.py`.

Compared with a bare insert and commit by the driver, and with APScheduler's own database job
store: both keep what is pending in SQLite with WAL and synchronous FULL, and whatever fires
queues one message in a transaction of its own (ours keeps two events and the next wake too).
"""

import argparse
import asyncio
import logging
import resource
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from apscheduler.executors.pool import ThreadPoolExecutor
from apscheduler.jobstores.sqlalchemy import SQLAlchemyJobStore
from apscheduler.schedulers.asyncio import AsyncIOScheduler
from sqlalchemy import event

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "conversation"))

from echo import START, echo_turns, person  # type: ignore[import-not-found]

from bot.conversation import Conversation, Turns
from bot.messages import Incoming
from bot.storage.store import Store, Writer
from bot.wiring import live_turns
from scheduler.clock import LiveClock, real_now
from scheduler.in_process import InProcessEngine
from scheduler.port import Due


def per_call(calls: int, call: Callable[[int], object]) -> float:
    """Milliseconds a call: the median of five parts of the run."""
    parts, number = [], 0
    for _ in range(5):
        began = time.perf_counter()
        for _ in range(calls // 5):
            call(number)
            number += 1
        parts.append((time.perf_counter() - began) / (calls // 5) * 1000)
    return statistics.median(parts)


def bare_insert(folder: Path, calls: int) -> float:
    """One row and one commit, by the driver alone, with the same pragmas."""
    connection = sqlite3.connect(folder / "bare.db", isolation_level=None)
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("CREATE TABLE entry (id INTEGER PRIMARY KEY, body TEXT)")

    def insert(number: int) -> None:
        connection.execute("BEGIN IMMEDIATE")
        connection.execute("INSERT INTO entry VALUES (?, ?)", (number, "x" * 200))
        connection.execute("COMMIT")

    result = per_call(calls, insert)
    connection.close()
    return result


#: How many people write in turn, and what, one message after the other.
PEOPLE = 20
TEXTS = ("118 before lunch, rice and beans", "164", "walked 20 minutes", "131", "92 fasting")


def whole_turn(store: Store, turns: Turns, calls: int) -> float:
    """A message heard: update marked, record loaded, decided, all kept, committed.

    Each of the people writes five messages a day, so that their records grow as in life.
    """
    conversation = Conversation(
        store, turns, real_now=lambda: START, new_id=lambda: "x", clock_speed=1
    )
    for number in range(PEOPLE):
        conversation.enrol(person(f"p{number}"), START)

    def hear(number: int) -> None:
        turn, who = divmod(number, PEOPLE)
        day, part = divmod(turn, len(TEXTS))
        at = START + timedelta(days=day, hours=2 * part)
        conversation.hear(
            Incoming(update=number, chat=f"p{who}", message=str(number), at=at, text=TEXTS[part]),
            at,
        )

    return per_call(calls, hear)


async def due_at_once(path: Path, people: int) -> dict[str, float]:
    """Many people with a wake pending: opening, and the first and all of them due at once."""
    store = Store.open(f"sqlite:///{path}")
    now = real_now()
    with store.turn() as work:
        for number in range(people):
            work.enrol(person(f"p{number}"), now, now - timedelta(seconds=1))
    store.close()
    began = time.perf_counter()
    store = Store.open(f"sqlite:///{path}")
    with store.turn() as work:
        work.due(now, 50)
    opened = time.perf_counter() - began
    writer, first, woken, longest = Writer(), [0.0], [0], [0.0]
    conversation = Conversation(store, echo_turns, real_now=real_now, new_id=lambda: "x")

    def ask(at: datetime, limit: int) -> Due:
        with store.turn() as work:
            who, next_at = work.due(at, limit)
        return Due(who=who, next_at=next_at)

    async def due(at: datetime, limit: int) -> Due:
        return await writer.run(ask, at, limit)

    async def wake(who: str, at: datetime) -> None:
        await writer.run(conversation.wake, who, at)
        first[0] = first[0] or time.perf_counter() - began
        woken[0] += 1

    began = time.perf_counter()
    running = asyncio.create_task(InProcessEngine(LiveClock.plain()).run(due, wake))
    watching = asyncio.create_task(watch(longest))
    await asyncio.sleep(5)
    running.cancel()
    watching.cancel()
    rate = woken[0] / (time.perf_counter() - began)
    writer.close()
    store.close()
    return {"open_s": opened, "first_s": first[0], "per_s": rate, "hold_s": longest[0]}


async def watch(longest: list[float]) -> None:
    """The longest time for which the event loop was held."""
    last = time.perf_counter()
    while True:
        await asyncio.sleep(0.001)
        now = time.perf_counter()
        longest[0] = max(longest[0], now - last - 0.001)
        last = now


CALLED = [0, 0.0]
PEER: list[sqlite3.Connection] = []


def called(number: int) -> None:
    """What the peer's jobs do: queue one message in a transaction of its own."""
    row = (f"p{number}", f"prompt:{number}", "test now")
    PEER[0].execute("INSERT INTO outbox (reader, key, text) VALUES (?, ?, ?)", row)
    CALLED[0] += 1
    CALLED[1] = CALLED[1] or time.perf_counter()


def as_durable(connection: sqlite3.Connection, _record: object) -> None:
    """The pragmas of ours."""
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("PRAGMA busy_timeout = 5000")


async def peer_due_at_once(path: Path, jobs: int) -> dict[str, float]:
    """The same number of jobs in APScheduler's own database job store, due at once."""
    store = SQLAlchemyJobStore(url=f"sqlite:///{path}")
    event.listen(store.engine, "connect", as_durable)
    PEER.append(sqlite3.connect(path, isolation_level=None, check_same_thread=False))
    as_durable(PEER[0], None)
    PEER[0].execute("CREATE TABLE outbox (reader, key, text, UNIQUE (reader, key))")
    # One worker thread: the connection that queues is used by one at a time, as ours is.
    alarm = AsyncIOScheduler(
        timezone=UTC,
        jobstores={"default": store},
        executors={"default": ThreadPoolExecutor(1)},
    )
    alarm.start(paused=True)
    due = real_now() - timedelta(seconds=1)
    for number in range(jobs):
        alarm.add_job(
            called, "date", run_date=due, misfire_grace_time=None, id=str(number), args=[number]
        )
    longest = [0.0]
    watching = asyncio.create_task(watch(longest))
    await asyncio.sleep(0)
    began = time.perf_counter()
    alarm.resume()
    while CALLED[0] < jobs:  # noqa: ASYNC110 - the peer tells of nothing
        await asyncio.sleep(0.05)
    took = time.perf_counter() - began
    watching.cancel()
    alarm.shutdown(wait=False)
    PEER.pop().close()
    return {"first_s": CALLED[1] - began, "per_s": jobs / took, "hold_s": longest[0]}


def quantile(values: list[float], part: float) -> float:
    """The smallest value that so large a part lies at or below."""
    return sorted(values)[min(len(values) - 1, int(len(values) * part))]


async def lateness(path: Path, prompts: int, per_second: float) -> list[float]:
    """Seconds from a wake that falls due to its prompt in the outbox, committed, below the cap."""
    store = Store.open(f"sqlite:///{path}")
    writer, late = Writer(), []
    conversation = Conversation(store, echo_turns, real_now=real_now, new_id=lambda: "x")
    first = real_now() + timedelta(seconds=1)
    due_at = {f"p{n}": first + timedelta(seconds=n / per_second) for n in range(prompts)}
    with store.turn() as work:
        for who, at in due_at.items():
            work.enrol(person(who), first, at)

    def ask(at: datetime, limit: int) -> Due:
        with store.turn() as work:
            who, next_at = work.due(at, limit)
        return Due(who=who, next_at=next_at)

    async def due(at: datetime, limit: int) -> Due:
        return await writer.run(ask, at, limit)

    async def wake(who: str, at: datetime) -> None:
        await writer.run(conversation.wake, who, at)
        late.append((real_now() - due_at[who]) / timedelta(seconds=1))

    running = asyncio.create_task(InProcessEngine(LiveClock.plain()).run(due, wake))
    while len(late) < prompts:  # noqa: ASYNC110 - the engine tells of nothing
        await asyncio.sleep(0.05)
    running.cancel()
    writer.close()
    store.close()
    return late


def main() -> None:
    """Print a table of figures and ratios."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--turns", type=int, default=2000)
    parser.add_argument("--people", type=int, default=100_000)
    parser.add_argument("--peer-jobs", type=int, default=2_000)
    parser.add_argument("--prompts", type=int, default=300)
    args = parser.parse_args()
    logging.disable(logging.CRITICAL)  # the peer warns of every job of its backlog
    say = sys.stdout.write
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        bare = bare_insert(folder, args.turns)
        say(f"a bare insert and commit: {bare:.3f} ms\n")
        for what, turns in (("fake", echo_turns), ("real", live_turns())):
            store = Store.open(f"sqlite:///{folder / what}.db")
            turn = whole_turn(store, turns, args.turns)
            store.close()
            say(f"a whole {what} turn: {turn:.3f} ms, {turn / bare:.1f} times that, ")
            say(f"{1000 / turn:.0f} a second\n")
        late = asyncio.run(lateness(folder / "late.db", args.prompts, 25))
        say(f"{len(late)} prompts, 25 a second: late by {quantile(late, 0.5) * 1000:.1f} ms ")
        say(f"(half), {quantile(late, 0.99) * 1000:.1f} ms (99 of 100)\n")
        ours = asyncio.run(due_at_once(folder / "due.db", args.people))
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
        say(f"{args.people} people due at once: opened in {ours['open_s'] * 1000:.0f} ms, ")
        say(f"first woken after {ours['first_s'] * 1000:.0f} ms, {ours['per_s']:.0f} a second, ")
        say(f"loop held {ours['hold_s'] * 1000:.0f} ms at most, peak memory {peak} MB\n")
        peer = asyncio.run(peer_due_at_once(folder / "peer.db", args.peer_jobs))
        say(f"APScheduler's job store, {args.peer_jobs} due at once: first after ")
        say(f"{peer['first_s'] * 1000:.0f} ms, {peer['per_s']:.0f} a second, ")
        say(f"loop held {peer['hold_s'] * 1000:.0f} ms; ")
        say(f"ours fires {ours['per_s'] / peer['per_s']:.1f} times as fast\n")


if __name__ == "__main__":
    main()
