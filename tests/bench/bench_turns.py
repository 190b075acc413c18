"""What the shell costs, as ratios measured in one run: `python tests/bench/bench_turns.py`.

Compared with a bare insert and commit by the driver, and with APScheduler's own database job
store on the same number of pending things. Turn functions are small fakes: the shell's own
cost is measured, not the reader's.
"""

import argparse
import asyncio
import resource
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from apscheduler.jobstores.sqlalchemy import SQLAlchemyJobStore
from apscheduler.schedulers.asyncio import AsyncIOScheduler

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "conversation"))

from echo import START, echo_turns, person  # type: ignore[import-not-found]

from bot.conversation import Conversation
from bot.messages import Incoming
from bot.storage.store import Store, Writer
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


def whole_turn(store: Store, calls: int) -> float:
    """A message heard: update marked, record loaded, entries, text and reply kept, committed."""
    conversation = Conversation(
        store, echo_turns, real_now=lambda: START, new_id=lambda: "x", clock_speed=1
    )
    conversation.enrol(person(), START)

    def hear(number: int) -> None:
        at = START + timedelta(minutes=20 * number)
        conversation.hear(
            Incoming(update=number, chat="ann", message=str(number), at=at, text="118 rice"), at
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


def called() -> None:
    """What the peer's jobs do: nothing."""
    CALLED[0] += 1
    CALLED[1] = CALLED[1] or time.perf_counter()


async def peer_due_at_once(path: Path, jobs: int) -> dict[str, float]:
    """The same number of jobs in APScheduler's own database job store, due at once."""
    alarm = AsyncIOScheduler(
        timezone=UTC, jobstores={"default": SQLAlchemyJobStore(url=f"sqlite:///{path}")}
    )
    alarm.start(paused=True)
    due = real_now() - timedelta(seconds=1)
    for number in range(jobs):
        alarm.add_job(called, "date", run_date=due, misfire_grace_time=None, id=str(number))
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
    return {"first_s": CALLED[1] - began, "per_s": jobs / took, "hold_s": longest[0]}


def main() -> None:
    """Print a table of figures and ratios."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--turns", type=int, default=2000)
    parser.add_argument("--people", type=int, default=100_000)
    parser.add_argument("--peer-jobs", type=int, default=2_000)
    args = parser.parse_args()
    say = sys.stdout.write
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        bare = bare_insert(folder, args.turns)
        turn = whole_turn(Store.open(f"sqlite:///{folder / 'turns.db'}"), args.turns)
        memory = whole_turn(Store.in_memory(), args.turns)
        say(f"bare insert and commit        {bare:8.3f} ms\n")
        say(f"whole turn of the shell, file {turn:8.3f} ms  {turn / bare:5.1f} times bare, ")
        say(f"{1000 / turn:.0f} a second\n")
        say(f"the same in memory            {memory:8.3f} ms\n")
        ours = asyncio.run(due_at_once(folder / "due.db", args.people))
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
        say(f"{args.people} people due at once: opened in {ours['open_s'] * 1000:.0f} ms, ")
        say(f"first woken after {ours['first_s'] * 1000:.0f} ms, {ours['per_s']:.0f} a second, ")
        say(f"loop held {ours['hold_s'] * 1000:.0f} ms at most, peak memory {peak} MB\n")
        peer = asyncio.run(peer_due_at_once(folder / "peer.db", args.peer_jobs))
        say(f"APScheduler's job store, {args.peer_jobs} due at once: first after ")
        say(f"{peer['first_s'] * 1000:.0f} ms, {peer['per_s']:.0f} a second (jobs that do ")
        say(f"nothing), loop held {peer['hold_s'] * 1000:.0f} ms\n")


if __name__ == "__main__":
    main()
