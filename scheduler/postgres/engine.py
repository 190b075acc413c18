"""Waking people on any of several workers, with procrastinate handing out the jobs.

A job is a hint and nothing more: it may be lost, doubled or stale. Whoever is due is found
again by the next look into our own table, and whoever is woken for nothing is left alone.
"""

import asyncio
import contextlib
import logging
from collections.abc import Awaitable, Mapping
from datetime import UTC, datetime, timedelta
from typing import Any

import psycopg
from procrastinate import App, PsycopgConnector
from procrastinate.exceptions import ConnectorException
from procrastinate.jobs import Job, Status
from procrastinate.worker import Worker

from scheduler.clock import SharedClock
from scheduler.port import AskDue, OnWake
from scheduler.postgres import making
from scheduler.postgres.making import STALLED, Make, Making, worker_of
from scheduler.postgres.wire import MISSED, Wire, connection_string, pool_of

_LOG = logging.getLogger(__name__)

QUEUE = "wake"
#: Rung when somebody is to be woken within `AHEAD`: whoever works looks at once.
SOON = "soon"
#: Only who is due within this is handed over: the job engine has no index on due times, and a
#: long list of far ones slows it down eightfold.
AHEAD = timedelta(minutes=2)
#: However quiet it is, look again after so many seconds: a job may have died with its worker.
LOOK_EVERY = 10.0
#: People handed over in one look; while so many wait to be woken that the workers are kept busy
#: for a second, nobody looks for more.
BATCH = 2000
ENOUGH = 1000
#: Handed over together: the first are woken while the rest are handed over.
TOGETHER = 100
#: Seconds between two questions for jobs: how late a wake can be at most on a quiet night.
POLL = 1.0
#: Wakes under way at one time, and things being made. The latter never take the former's places.
WAKES_AT_ONCE = 8
MAKES_AT_ONCE = 2
#: Seconds between two looks at whether a worker of ours is alive, and the wait before a new one.
WATCH_EVERY = 10.0
AGAIN_AFTER = 1.0
#: Seconds that a worker may take to end before it is left behind.
GRACE = 8.0
#: Any number of ours: one machine at a time hands over, so that no two hand over the same.
HANDING_OVER = 4_200_002
#: Priorities are seconds before this: whoever is due first comes first out of the queue.
LAST = datetime(2090, 1, 1, tzinfo=UTC)
MOST_URGENT = 2**31 - 1

MAY_HAND_OVER = "SELECT pg_try_advisory_lock(%s)"
HANDED_OVER = "SELECT pg_advisory_unlock(%s)"
OVERDUE = """
SELECT count(*) FROM (
    SELECT FROM procrastinate_jobs
    WHERE status = 'todo' AND queue_name = %s AND (scheduled_at IS NULL OR scheduled_at <= now())
    LIMIT %s
) overdue
"""
WAITING = """
SELECT queueing_lock FROM procrastinate_jobs
WHERE status = 'todo' AND queueing_lock = ANY(%s)
"""
ALIVE = """
SELECT count(*) FROM procrastinate_workers
WHERE id = ANY(%s) AND last_heartbeat > now() - make_interval(secs => %s)
"""


class PostgresEngine:
    """Wakes people, on this machine or another. Works behind an open `Wire`.

    `makes` is what this worker can make for others; `get` has something made by any.
    """

    def __init__(
        self,
        url: str,
        clock: SharedClock,
        wire: Wire,
        *,
        makes: Mapping[str, Make] | None = None,
    ) -> None:
        self._url = url
        self._clock = clock
        self._wire = wire
        self._makes = makes or {}
        self._making = Making(wire)
        self._look_now = asyncio.Event()
        self._app: App | None = None

    def nudge(self, at: datetime | None) -> None:
        """Look again if somebody is to be woken within two minutes (None: look)."""
        if at is None or self._clock.real_time(at) <= self._clock.real_now() + AHEAD:
            self._look_now.set()
            self._wire.ring(SOON)

    def heard(self, word: str) -> None:
        """What another machine rang."""
        if word in (SOON, MISSED):
            self._look_now.set()
        self._making.heard(word)

    async def get(self, name: str, what: str) -> bytes:
        """Have something made by whichever worker is free. The caller sets the limit of time.

        Raises NotMade, or what the database raises.
        """
        if self._app is None:
            raise making.NotMade("no worker here is at work")
        return await self._making.get(self._app, name, what)

    async def run(self, due: AskDue, on_wake: OnWake) -> None:
        """Wake whoever is due, now and from now on, until cancelled.

        `due(until, limit)` must tell when each of them is due (`Due.at`). A worker that ends,
        or gives no sign of life, is replaced.
        """
        while True:
            try:
                await self._work(due, on_wake)
            except Exception as error:
                _say("engine begins anew", error=_classes(error))
            await asyncio.sleep(AGAIN_AFTER)

    async def _work(self, due: AskDue, on_wake: OnWake) -> None:
        """One life of the workers. Returns or raises when any part of it ends."""
        # A dead connection ends this life; the next one begins with fresh ones.
        pool = pool_of(self._url, most=WAKES_AT_ONCE, tried=False)
        try:
            await pool.open(wait=True, timeout=POLL * 10)
            app = App(connector=PsycopgConnector())
            await app.open_async(pool)
            self._teach(app, on_wake)
            self._making.teach(app, self._makes)
            wakes = worker_of(app, QUEUE, at_once=WAKES_AT_ONCE, poll=POLL, listen=True)
            makes = worker_of(app, making.QUEUE, at_once=MAKES_AT_ONCE, poll=POLL, listen=True)
            self._app = app
            await _until_one_ends(
                wakes.run(),  # type: ignore[no-untyped-call]
                makes.run(),  # type: ignore[no-untyped-call]
                self._keep_looking(app, due),
                self._keep_watching(app, wakes, makes),
            )
        finally:
            self._app = None
            await pool.close(timeout=1)

    def _teach(self, app: App, on_wake: OnWake) -> None:
        @app.task(name=QUEUE, queue=QUEUE)
        async def wake(who: str, at: str) -> None:
            # The two clocks may differ by a moment; nobody is to be found not yet due by it.
            now = max(self._clock.now(), datetime.fromisoformat(at))
            await on_wake((who,), now)

    # --- handing over ----------------------------------------------------------------------

    async def _keep_looking(self, app: App, due: AskDue) -> None:
        while True:
            self._look_now.clear()
            all_seen = await self._look(app, due)
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(LOOK_EVERY if all_seen else POLL):
                    await self._look_now.wait()

    async def _look(self, app: App, due: AskDue) -> bool:
        """Hand over who is due soon; False if there may be more of them."""
        async with self._wire.pool.connection() as connection:
            row = await (await connection.execute(MAY_HAND_OVER, [HANDING_OVER])).fetchone()
            if row is None or not row[0]:
                return False  # another machine is at it
            try:
                row = await (await connection.execute(OVERDUE, [QUEUE, ENOUGH])).fetchone()
                if row is None or row[0] >= ENOUGH:
                    return False
                found = await due(self._clock.bot_time(self._clock.real_now() + AHEAD), BATCH)
                for first in range(0, len(found.who), TOGETHER):
                    part = slice(first, first + TOGETHER)
                    told = zip(found.who[part], found.at[part], strict=True)
                    await self._hand_over(app, tuple(told), connection)
            finally:
                await connection.execute(HANDED_OVER, [HANDING_OVER])
        return len(found.who) < BATCH

    async def _hand_over(
        self,
        app: App,
        due: tuple[tuple[str, datetime], ...],
        connection: psycopg.AsyncConnection[Any],
    ) -> None:
        """One job a person and instant, unless it waits already."""
        asked = {f"{who} {at.isoformat()}": (who, at) for who, at in due}
        rows = await (await connection.execute(WAITING, [list(asked)])).fetchall()
        waiting = {row[0] for row in rows}
        new = [self._job(lock, *told) for lock, told in asked.items() if lock not in waiting]
        if new:
            await app.job_manager.batch_defer_jobs_async(new, connection=connection)

    def _job(self, lock: str, who: str, at: datetime) -> Job:
        real = self._clock.real_time(at)
        return Job(
            id=None,
            queue=QUEUE,
            task_name=QUEUE,
            task_kwargs={"who": who, "at": at.isoformat()},
            # `lock` would let jobs of one person wait for each other behind a dead worker.
            lock=None,
            queueing_lock=lock,
            scheduled_at=real if real > self._clock.real_now() else None,
            priority=min(MOST_URGENT, int((LAST - real).total_seconds())),
        )

    # --- seeing that all is well -----------------------------------------------------------

    async def _keep_watching(self, app: App, *workers: Worker) -> None:
        """Sweep away what dead workers left; end when one of ours is none any more."""
        while True:
            await asyncio.sleep(WATCH_EVERY)
            await self._sweep(app)
            ids = [worker.worker_id for worker in workers]
            if not await self._are_alive(ids):
                raise TimeoutError("a worker gives no sign of life")

    async def _sweep(self, app: App) -> None:
        """Jobs of workers that are gone. Whoever is still due is handed over by the next look."""
        manager = app.job_manager
        stalled = list(await manager.get_stalled_jobs(seconds_since_heartbeat=STALLED))
        for job in stalled:
            with contextlib.suppress(ConnectorException):  # another machine was first
                await manager.finish_job(job=job, status=Status.FAILED, delete_job=True)
        await manager.prune_stalled_workers(STALLED)
        await self._making.forget()
        if stalled:
            _say("swept up after a dead worker", jobs=len(stalled))
            self._look_now.set()

    async def _are_alive(self, ids: list[int | None]) -> bool:
        """Asked over a fresh line: the workers' own may be dead without a word."""
        async with asyncio.timeout(POLL * 10):
            line = await psycopg.AsyncConnection.connect(
                connection_string(self._url), autocommit=True
            )
            async with line:
                row = await (await line.execute(ALIVE, [ids, 2 * STALLED])).fetchone()
        return row is not None and row[0] == len(ids)


async def _until_one_ends(*parts: Awaitable[Any]) -> None:
    """Run all; when one ends, end the others, but wait for none of them for ever."""
    tasks = [asyncio.ensure_future(part) for part in parts]
    try:
        done, _ = await asyncio.wait(tasks, return_when=asyncio.FIRST_COMPLETED)
        for task in done:
            task.result()
    finally:
        for task in tasks:
            task.cancel()
        _, left = await asyncio.wait(tasks, timeout=GRACE)
        for task in tasks:
            if task.done() and not task.cancelled():
                task.exception()  # told: the first one was raised
        if left:
            _say("parts of the engine left behind", parts=len(left))


def _classes(error: BaseException) -> str:
    """The class of an error, and of what it came from."""
    cause = error.__cause__
    return type(error).__name__ + (f" from {type(cause).__name__}" if cause else "")


def _say(event: str, **fields: object) -> None:
    _LOG.warning(event, extra={"fields": fields})
