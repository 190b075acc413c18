"""Making something on whichever worker is free, and having it brought back.

What is to be made is named by ids; what was made lies in a table until whoever asked takes it,
at most for two minutes.
"""

import asyncio
import contextlib
from collections.abc import Awaitable, Callable, Mapping

from procrastinate import App, JobContext
from procrastinate.jobs import DeleteJobCondition
from procrastinate.worker import Worker

from scheduler.postgres.wire import Wire

#: Makes something from a word that names what: ids, never values.
Make = Callable[[str], Awaitable[bytes]]

QUEUE = "make"
#: Rung when something is made: this and the job's number.
MADE = "made:"
#: However the ringing goes, look by oneself after so many seconds.
LOOK_EVERY = 1.0
#: Seconds for which what nobody fetched is kept.
KEPT = 120

KEEP = """
INSERT INTO engine_result (job, body) VALUES (%s, %s)
ON CONFLICT (job) DO UPDATE SET body = excluded.body
"""
TAKE = "DELETE FROM engine_result WHERE job = %s RETURNING body"
FORGET = "DELETE FROM engine_result WHERE made_at < now() - make_interval(secs => %s)"


class NotMade(Exception):
    """Whoever tried to make it could not."""


class Making:
    """Both ends: asking (`get`) and doing (`work`)."""

    def __init__(self, wire: Wire) -> None:
        self._wire = wire
        self._waiting: dict[int, asyncio.Event] = {}

    def heard(self, word: str) -> None:
        """Something was rung."""
        if word.startswith(MADE):
            event = self._waiting.get(int(word.removeprefix(MADE)))
            if event is not None:
                event.set()

    async def get(self, app: App, name: str, what: str) -> bytes:
        """Have something made on any worker.

        Raises NotMade, or what the database raises. The caller sets the limit of time: when
        it gives up, the job is taken back if nobody has begun it.
        """
        asking = asyncio.ensure_future(
            app.configure_task(QUEUE, queue=QUEUE).defer_async(name=name, what=what)
        )
        try:
            # Whoever gives up while the job is on its way has asked for it all the same: it is
            # let arrive, so that it can be taken back.
            return await self._fetch(name, await asyncio.shield(asking))
        except asyncio.CancelledError:
            await app.job_manager.cancel_job_by_id_async(await asking, delete_job=True)
            raise

    async def _fetch(self, name: str, job: int) -> bytes:
        """Wait until a job is made, and take what was made."""
        made = self._waiting[job] = asyncio.Event()
        try:
            while True:
                with contextlib.suppress(TimeoutError):
                    async with asyncio.timeout(LOOK_EVERY):
                        await made.wait()
                async with self._wire.pool.connection() as connection:
                    row = await (await connection.execute(TAKE, [job])).fetchone()
                if row is None:
                    made.clear()
                elif row[0] is None:
                    raise NotMade(name)
                else:
                    return bytes(row[0])
        finally:
            del self._waiting[job]

    def teach(self, app: App, makes: Mapping[str, Make]) -> None:
        """Let this worker make these things."""

        @app.task(name=QUEUE, queue=QUEUE, pass_context=True)
        async def make(context: JobContext, name: str, what: str) -> None:
            job = context.job.id
            assert job is not None  # noqa: S101 - a job that was fetched has a number
            try:
                body: bytes | None = await makes[name](what)
            except Exception:  # it told of itself where it failed
                body = None
            async with self._wire.pool.connection() as connection:
                await connection.execute(KEEP, [job, body])
            self._wire.ring(f"{MADE}{job}")

    async def forget(self) -> None:
        """Let go of what nobody came for."""
        async with self._wire.pool.connection() as connection:
            await connection.execute(FORGET, [KEPT])


def worker_of(app: App, queue: str, *, at_once: int, poll: float, listen: bool) -> Worker:
    """One of the engine's own workers, for one queue."""
    return Worker(
        app,
        queues=[queue],
        name=queue,
        concurrency=at_once,
        fetch_job_polling_interval=poll,
        # Nothing is ever asked to be given up while it runs.
        abort_job_polling_interval=3600,
        listen_notify=listen,
        delete_jobs=DeleteJobCondition.ALWAYS,
        install_signal_handlers=False,
        shutdown_graceful_timeout=5,
        update_heartbeat_interval=HEARTBEAT,
        stalled_worker_timeout=STALLED,
    )


#: Seconds between two signs of life of a worker, and after how many it counts as gone.
HEARTBEAT, STALLED = 5.0, 20.0
