"""A thin line to the database beside the turns: ringing other machines, and their clock."""

import asyncio
import logging
from collections.abc import Callable
from datetime import timedelta
from types import TracebackType
from typing import Any, Self

import psycopg
from psycopg.conninfo import make_conninfo
from psycopg_pool import AsyncConnectionPool

from scheduler.clock import SharedClock

_LOG = logging.getLogger(__name__)

#: The channel on which machines ring each other. What is rung is a word, never a message.
CHANNEL = "afterplate"
#: Rung to oneself each time the line is up again: whatever was rung meanwhile went unheard.
MISSED = "missed"
#: Seconds between two looks at the database's clock, and between two signs of life of a line.
AGREE_EVERY = 10.0
QUIET_FOR = 10.0
#: Seconds to wait before a broken line is tried again.
AGAIN_AFTER = 1.0
PATIENCE = 10.0

#: A line that died without a word is noticed by the kernel within some twenty seconds.
KEEPING_ALIVE = {
    "connect_timeout": "5",
    "keepalives": "1",
    "keepalives_idle": "5",
    "keepalives_interval": "5",
    "keepalives_count": "3",
    "tcp_user_timeout": "20000",
    "application_name": "afterplate",
}


def connection_string(url: str) -> str:
    """What the driver wants, from the address of a database as the settings give it."""
    scheme, separator, rest = url.partition("://")
    return make_conninfo(f"{scheme.partition('+')[0]}{separator}{rest}", **KEEPING_ALIVE)


def pool_of(
    url: str, *, most: int, tried: bool
) -> AsyncConnectionPool[psycopg.AsyncConnection[Any]]:
    """A pool, not yet open, whose statements each stand alone: half as many ways to and fro.

    `tried`: a connection is tried before it is given out. Otherwise a dead one is met in use.
    """
    return AsyncConnectionPool(
        connection_string(url),
        configure=_each_alone,
        min_size=1,
        max_size=most,
        timeout=PATIENCE,
        open=False,
        check=AsyncConnectionPool.check_connection if tried else None,
    )


async def _each_alone(connection: psycopg.AsyncConnection[Any]) -> None:
    await connection.set_autocommit(True)


class Wire:
    """Rings, and keeps the shared clock. `async with` opens it; `heard` is told what was rung.

    Raises psycopg.Error, psycopg_pool.PoolTimeout or TimeoutError where the database cannot be
    reached at the beginning; later it only says so, and tries again.
    """

    def __init__(
        self, url: str, clock: SharedClock, *, heard: Callable[[str], None] | None = None
    ) -> None:
        self._url = url
        self._clock = clock
        self._heard = heard
        self._to_ring: set[str] = set()
        self._tasks: set[asyncio.Task[None]] = set()
        self.pool = pool_of(url, most=2, tried=True)

    async def __aenter__(self) -> Self:
        await self.pool.open(wait=True, timeout=PATIENCE)
        await self.agree()
        self._begin(self._keep_agreeing())
        if self._heard is not None:
            self._begin(self._keep_listening(self._heard))
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        for task in self._tasks:
            task.cancel()
        await asyncio.gather(*self._tasks, return_exceptions=True)
        await self.pool.close(timeout=1)

    def ring(self, word: str) -> None:
        """Let every machine hear a word, soon and without waiting; several at once are one.

        A word may be lost with the line: whoever listens looks by itself from time to time.
        """
        if not self._to_ring:
            self._begin(self._ring_out())
        self._to_ring.add(word)

    async def agree(self) -> None:
        """Compare clocks with the database."""
        asked = self._clock.monotonic()
        async with asyncio.timeout(PATIENCE), self.pool.connection() as connection:
            asked = self._clock.monotonic()
            row = await (await connection.execute("SELECT clock_timestamp()")).fetchone()
            answered = self._clock.monotonic()
        before = self._clock.ahead
        if row is not None and self._clock.agree(row[0], asked=asked, answered=answered):
            jump = abs(self._clock.ahead - before)
            if jump > timedelta(seconds=1):
                _say("clock set by the database's", seconds=self._clock.ahead.total_seconds())

    def _begin(self, doing: Any) -> None:
        task = asyncio.create_task(doing)
        self._tasks.add(task)
        task.add_done_callback(self._tasks.discard)

    async def _ring_out(self) -> None:
        await asyncio.sleep(0)  # whatever is rung in the same breath goes along
        words, self._to_ring = self._to_ring, set()
        try:
            async with asyncio.timeout(PATIENCE), self.pool.connection() as connection:
                for word in words:
                    await connection.execute("SELECT pg_notify(%s, %s)", [CHANNEL, word])
        except Exception as error:
            _say("ringing failed", error=type(error).__name__)

    async def _keep_agreeing(self) -> None:
        while True:
            await asyncio.sleep(AGREE_EVERY)
            try:
                await self.agree()
            except Exception as error:
                _say("clocks not compared", error=type(error).__name__)

    async def _keep_listening(self, heard: Callable[[str], None]) -> None:
        while True:
            try:
                await self._listen(heard)
            except Exception as error:
                _say("line broken", error=type(error).__name__)
            await asyncio.sleep(AGAIN_AFTER)

    async def _listen(self, heard: Callable[[str], None]) -> None:
        line = await psycopg.AsyncConnection.connect(connection_string(self._url), autocommit=True)
        async with line:
            await line.execute(f"LISTEN {CHANNEL}")
            heard(MISSED)
            while True:
                async for note in line.notifies(timeout=QUIET_FOR):
                    heard(note.payload)
                async with asyncio.timeout(PATIENCE):
                    await line.execute("SELECT 1")  # is anybody still there?


def _say(event: str, **fields: object) -> None:
    _LOG.warning(event, extra={"fields": fields})
