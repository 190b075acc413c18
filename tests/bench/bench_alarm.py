"""A hundred thousand people due at once, against APScheduler's own database job store.

`python tests/bench/bench_alarm.py [ours|peer] --people N`. Both do the same work for each
person: find who is due, read their record, decide by the real turns what to say (the prompt
two hours after a meal), and commit the message and the next wake, in SQLite with WAL and
synchronous FULL. What differs is the alarm clock: ours holds one timer and asks the same
database who is due, waking many in one transaction; the peer keeps a job a person in a job
store of its own, takes each out of it with a commit of its own, wakes them one by one, and puts
the job of their next wake into the store. Both wake in one thread beside the event loop.

Whoever watches the loop a thousand times a second, and whoever writes meanwhile, takes time
from ours alone: the peer's loop is held, so that its watcher hardly runs, and nobody could be
answered. `--alone` leaves both out, on both sides: compare rates by that.
"""

import argparse
import asyncio
import logging
import resource
import sqlite3
import sys
import tempfile
import threading
import time
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

from apscheduler.executors.pool import ThreadPoolExecutor
from apscheduler.jobstores.sqlalchemy import SQLAlchemyJobStore
from apscheduler.schedulers.asyncio import AsyncIOScheduler
from sqlalchemy import event, func, select

from bot.commands.serve import keep_what_is_loaded
from bot.conversation import Conversation
from bot.entries import Food, FoodKind, Meal
from bot.messages import Incoming, Kind
from bot.participants import Participant
from bot.record import Event
from bot.storage.store import Store, Writer
from bot.turns.turn import Opened, Turn
from bot.units import Unit
from bot.wiring import live_turns
from scheduler.clock import LiveClock, real_now
from scheduler.in_process import InProcessEngine
from scheduler.port import Due

#: How long either is watched.
SECONDS = 20.0


class Watch:
    """When the first was woken, how many were, and how long the event loop was held.

    `put_in` counts the next jobs that the peer has taken.
    """

    def __init__(self) -> None:
        self.turns = replace(live_turns(), wake=self._wake)
        self._real = live_turns().wake
        self.deciding = 0.0
        self.begin()
        self.first = 0.0
        self.woken = 0
        self.put_in = 0
        self.hold = 0.0

    def begin(self) -> None:
        """From here on it counts."""
        self.began, self.cpu = time.perf_counter(), time.process_time()

    def _wake(self, opened: Opened, *, now: datetime) -> Turn:
        """The real turn, and how long this thread computed for it."""
        began = time.thread_time()
        turn = self._real(opened, now=now)
        self.deciding += time.thread_time() - began
        return turn

    def wake(self, people: int = 1) -> None:
        """So many more were woken, each with what is to be said to them committed."""
        self.first = self.first or time.perf_counter() - self.began
        self.woken += people

    async def loop(self) -> None:
        """Look a thousand times a second how long the loop was away."""
        last = time.perf_counter()
        while True:
            await asyncio.sleep(0.001)
            now = time.perf_counter()
            self.hold = max(self.hold, now - last - 0.001)
            last = now

    def tell(self, what: str) -> None:
        """One line."""
        now = time.perf_counter()
        took = now - self.began
        cpu = time.process_time() - self.cpu
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
        rate, each = self.woken / took, cpu / self.woken * 1000
        sys.stdout.write(
            f"{what}: first after {self.first * 1000:.0f} ms, {self.woken} woken in {took:.1f} s, "
            f"{rate:.0f} a second, {each:.2f} ms computed for each ({self.deciding / cpu:.0%} of "
            f"it the turn), loop held {self.hold * 1000:.0f} ms at most, peak memory {peak} MB\n"
        )
        sys.stdout.flush()


def enrol(store: Store, people: int, now: datetime) -> None:
    """People who began a meal two hours ago and are to be asked for the second test now."""
    started = now - timedelta(minutes=120)
    rice = Meal(text="rice", started_at=started, foods=(Food(text="rice", kind=FoodKind.STARCH),))
    told = Event(id=1, at=started, body=rice, message="0")
    quiet = [(now + timedelta(hours=hours)).time() for hours in (6, 7)]
    for first in range(0, people, 1000):
        with store.turn() as work:
            for number in range(first, min(first + 1000, people)):
                who = Participant(
                    id=f"p{number}",
                    unit=Unit.MG_DL,
                    zone="UTC",
                    joined_at=started,
                    quiet_from=quiet[0],
                    quiet_to=quiet[1],
                )
                work.enrol(who, now)
                work.save(Turn(participant=who, events=(told,), wake_at=now))


def conversation_of(store: Store, watch: Watch) -> Conversation:
    """The bot's own, with the turns that serve people."""
    return Conversation(store, watch.turns, real_now=real_now, new_id=lambda: "x")


def see_that_it_was_done(store: Store, people: int, watch: Watch) -> None:
    """Of each person woken one prompt is kept and a later wake; the others are due still."""
    with store.turn() as work:
        queued = sum(letter.kind is Kind.PROMPT for letter in work.outbox.pending())
        still, _ = work.due(real_now(), people)
    if queued < watch.woken or queued + len(still) != people:
        raise AssertionError(f"{watch.woken} woken, {queued} queued, {len(still)} due still")


async def write(writer: Writer, conversation: Conversation) -> None:
    """Somebody writes all the while; tell how long their messages waited to be answered."""
    waits: list[float] = []
    try:
        for number in count(1):
            await asyncio.sleep(0.1)
            at, asked = real_now(), time.perf_counter()
            message = Incoming(update=number, chat="anna", message=str(number), at=at, text="help")
            await writer.run(conversation.hear, message, at)
            waits.append(time.perf_counter() - asked)
    finally:
        waits.sort()
        sys.stdout.write(
            f"{len(waits)} messages meanwhile answered after {waits[len(waits) // 2] * 1000:.0f} "
            f"ms (half), {waits[-1] * 1000:.0f} ms (the last)\n"
        )


async def ours(folder: Path, people: int, *, alone: bool) -> None:
    """The engine of `serve` on a database just opened."""
    url = f"sqlite:///{folder / 'ours.db'}"
    store = Store.open(url)
    enrol(store, people, real_now())
    store.close()
    began = time.perf_counter()
    store = Store.open(url)
    with store.turn() as work:
        work.due(real_now(), 50)
    sys.stdout.write(f"opened in {(time.perf_counter() - began) * 1000:.0f} ms\n")
    writer, watch = Writer(), Watch()
    conversation = conversation_of(store, watch)

    def look(at: datetime, limit: int) -> Due:
        with store.turn() as work:
            who, next_at = work.due(at, limit)
        return Due(who=who, next_at=next_at)

    async def due(at: datetime, limit: int) -> Due:
        return await writer.run(look, at, limit)

    async def wake(who: tuple[str, ...], at: datetime) -> None:
        watch.wake((await writer.run(conversation.wake_all, who, at)).said)

    anna = Participant(id="anna", unit=Unit.MG_DL, zone="UTC", joined_at=real_now())
    conversation.enrol(anna, real_now())
    for number in range(3):  # its word lists are read before people are served
        first = Incoming(
            update=-number, chat="anna", message=f"-{number}", at=real_now(), text="help"
        )
        conversation.hear(first, real_now())

    tasks = [asyncio.create_task(InProcessEngine(LiveClock.plain()).run(due, wake))]
    if not alone:
        tasks.append(asyncio.create_task(watch.loop()))
        tasks.append(asyncio.create_task(write(writer, conversation)))
    watch.begin()
    until = watch.began + SECONDS
    while watch.woken < people and time.perf_counter() < until:  # noqa: ASYNC110 - tells nothing
        await asyncio.sleep(0.01)
    watch.tell("ours")
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    writer.close()
    see_that_it_was_done(store, people, watch)
    store.close()


PEER: list[tuple[Conversation, Watch, AsyncIOScheduler]] = []


def put_in(alarm: AsyncIOScheduler, number: int, at: datetime) -> None:
    """The job that wakes a person at an instant: the peer knows of no other way."""
    alarm.add_job(
        wake_one,
        "date",
        run_date=at,
        misfire_grace_time=None,
        id=str(number),
        args=[number],
        replace_existing=True,
    )


def wake_one(number: int) -> None:
    """What a job of the peer does: the same turn, in a transaction of its own, and the next job.

    Its store forgets a job that ran once: without the next one nobody would be woken again.
    """
    conversation, watch, alarm = PEER[0]
    outcome = conversation.wake(f"p{number}", real_now())
    watch.wake(outcome.said)
    if outcome.wake_at is not None:
        put_in(alarm, number, outcome.wake_at)
        watch.put_in += 1


def as_durable(connection: sqlite3.Connection, _record: object) -> None:
    """The pragmas of ours."""
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")


async def peer(folder: Path, people: int, *, alone: bool) -> None:
    """A job a person, in a job store with a file of its own."""
    store = Store.open(f"sqlite:///{folder / 'turns.db'}")
    now = real_now()
    enrol(store, people, now)
    jobs = SQLAlchemyJobStore(url=f"sqlite:///{folder / 'jobs.db'}")
    event.listen(jobs.engine, "connect", as_durable)
    alarm = AsyncIOScheduler(
        timezone=UTC, jobstores={"default": jobs}, executors={"default": ThreadPoolExecutor(1)}
    )
    alarm.start(paused=True)
    for number in range(people):
        put_in(alarm, number, now)
    watch = Watch()
    PEER.append((conversation_of(store, watch), watch, alarm))
    watching = None if alone else asyncio.create_task(watch.loop())
    await asyncio.sleep(0.01)
    # Its loop may be held for longer than it is watched: a thread tells what came of it.
    told = threading.Timer(SECONDS, lambda: watch.tell("peer while its loop is held"))
    told.start()
    watch.begin()
    alarm.resume()
    while watch.put_in < people:  # noqa: ASYNC110 - the peer tells of nothing
        await asyncio.sleep(0.05)
    told.cancel()
    watch.tell("peer")
    if watching is not None:
        watching.cancel()
    alarm.shutdown(wait=False)
    see_that_it_was_done(store, people, watch)
    with jobs.engine.begin() as asking:
        waiting = asking.execute(select(func.count()).select_from(jobs.jobs_t)).scalar_one()
    if waiting != people:
        raise AssertionError(f"{waiting} of {people} are to be woken again")
    store.close()


def main() -> None:
    """Print what one of the two did; each in a process of its own, for its memory."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("who", choices=("ours", "peer"))
    parser.add_argument("--people", type=int, default=100_000)
    parser.add_argument("--alone", action="store_true", help="watch no loop and write nothing")
    args = parser.parse_args()
    logging.disable(logging.CRITICAL)  # the peer warns of every job of its backlog
    with tempfile.TemporaryDirectory() as name:
        keep_what_is_loaded()  # as `serve` begins; good for both
        run = {"ours": ours, "peer": peer}[args.who]
        asyncio.run(run(Path(name), args.people, alone=args.alone))


if __name__ == "__main__":
    main()
