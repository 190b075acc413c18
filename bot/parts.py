"""A part that one process of several plays at a time, and delivery as such a part.

Who plays it holds a lease on the database's clock. Whoever loses it stops by itself; whoever
takes it up knows that nobody else is at it.
"""

import asyncio
import contextlib
import logging
import secrets
from collections.abc import Awaitable, Callable
from typing import Protocol

from sqlalchemy.exc import DBAPIError

from bot.delivery import Delivery
from bot.logs import place_of, say
from bot.storage import shared
from bot.storage.store import Store, Writer
from bot.storage.work import Work
from scheduler.clock import Clock

_LOG = logging.getLogger(__name__)

#: What is rung when the outbox holds something new.
OUTBOX = "outbox"
#: A part is held for so many seconds, and held longer every so many; whoever waits for it
#: tries every so many. So a part whose holder vanishes is taken up within 16 seconds.
HELD, HELD_LONGER_EVERY, TRY_EVERY = 12.0, 3.0, 4.0
#: Whoever could not hold it longer for so many seconds stops by itself, before another begins.
LET_GO_AFTER = 8.0


class Sends(Protocol):
    """Sends what is due, here or on another machine."""

    @property
    def is_idle(self) -> bool:
        """Nothing is under way from here."""

    def nudge(self) -> None:
        """Something new is in the outbox."""

    async def run(self) -> None:
        """Send until `stop`."""

    async def stop(self) -> None:
        """Take nothing new, and see what is under way through."""


class Part:
    """Something that one process at a time does; the others stand by."""

    def __init__(
        self,
        name: str,
        store: Store,
        writer: Writer,
        clock: Clock,
        *,
        standing_by: Callable[[], None],
    ) -> None:
        self._name = name
        self._me = secrets.token_hex(8)
        self._store = store
        self._writer = writer
        self._clock = clock
        self._standing_by = standing_by
        self._asking: asyncio.Future[bool] | None = None
        self.is_mine = False

    async def play(self, begin: Callable[[], Awaitable[None]]) -> None:
        """Do it whenever nobody else does, until cancelled. It is cancelled when it is lost."""
        try:
            while True:
                if await self._hold():
                    await self._play_while_held(begin)
                self._standing_by()
                await asyncio.sleep(TRY_EVERY)
        finally:
            if self._asking is not None:  # it may be granted all the same
                await asyncio.wait({self._asking})
            await self._leave()

    async def _play_while_held(self, begin: Callable[[], Awaitable[None]]) -> None:
        say(_LOG, logging.INFO, "part taken up", part=self._name)
        self.is_mine = True
        playing = asyncio.ensure_future(begin())
        try:
            await self._hold_on(playing)
        finally:
            await self._end(playing)

    def is_held(self, work: Work) -> bool:
        """Whether it is still mine, asked in an open transaction."""
        return shared.holds(work.connection, self._name, self._me)

    async def _hold_on(self, playing: asyncio.Future[None]) -> None:
        """Hold it longer and longer; returns when it is lost or over."""
        held_at = self._clock.monotonic()
        while self._clock.monotonic() - held_at < LET_GO_AFTER:
            await asyncio.wait({playing}, timeout=HELD_LONGER_EVERY)
            if playing.done():
                return
            asked_at = self._clock.monotonic()
            held = await self._hold()
            if held:
                held_at = asked_at
            elif held is not None:
                break
        say(_LOG, logging.WARNING, "part lost", part=self._name)

    async def _end(self, playing: asyncio.Future[None]) -> None:
        """See it through to its end, still holding it, then leave it to the next one."""
        playing.cancel()
        while not playing.done():
            await asyncio.wait({playing}, timeout=HELD_LONGER_EVERY)
            if not playing.done():
                await self._hold()
        self.is_mine = False
        if not playing.cancelled() and (error := playing.exception()) is not None:
            say(_LOG, logging.ERROR, "part failed", part=self._name, error=place_of(error))
        await self._leave()

    async def _hold(self) -> bool | None:
        """True if it is mine from now on, False if it is another's, None if nobody knows."""
        self._asking = asyncio.ensure_future(self._writer.run(self._take))
        try:
            return await asyncio.shield(self._asking)
        except DBAPIError as error:
            say(_LOG, logging.WARNING, "whose part is unknown", error=place_of(error))
            return None

    def _take(self) -> bool:
        with self._store.turn() as work:
            return shared.take(work.connection, self._name, self._me, HELD)

    async def _leave(self) -> None:
        with contextlib.suppress(DBAPIError):
            await self._writer.run(self._give_up)

    def _give_up(self) -> None:
        with self._store.turn() as work:
            shared.leave(work.connection, self._name, self._me)


class SharedDelivery:
    """Delivery where several processes could send: one does, and the others hear of it.

    Without a `part` this process never sends.
    """

    def __init__(
        self,
        part: Part | None,
        begin: Callable[[Part], Delivery],
        ring: Callable[[str], None],
    ) -> None:
        self._part = part
        self._begin = begin
        self._ring = ring
        self._delivery: Delivery | None = None
        self._playing: asyncio.Task[None] | None = None
        self._stopped = asyncio.Event()

    @property
    def is_idle(self) -> bool:
        """Nothing is under way from here."""
        return self._delivery is None or self._delivery.is_idle

    def nudge(self) -> None:
        """Something new is in the outbox: let whoever sends know."""
        if self._delivery is not None:
            self._delivery.nudge()
        else:
            self._ring(OUTBOX)

    def heard(self) -> None:
        """Another process put something into the outbox, or may have."""
        if self._delivery is not None:
            self._delivery.nudge()

    async def run(self) -> None:
        """Send whenever it is this process's part, until `stop`."""
        if self._part is not None and not self._stopped.is_set():
            part = self._part
            self._playing = asyncio.create_task(part.play(lambda: self._send(part)))
            await asyncio.wait({self._playing})
        await self._stopped.wait()

    async def stop(self) -> None:
        """See what is under way through, and leave the part to the next one."""
        self._stopped.set()
        if self._playing is not None:
            self._playing.cancel()
            await asyncio.gather(self._playing, return_exceptions=True)

    async def _send(self, part: Part) -> None:
        """Send until cancelled. Whatever another one had claimed is nobody's now."""
        delivery = self._delivery = self._begin(part)
        sending = asyncio.create_task(delivery.run())
        try:
            await asyncio.shield(sending)
        finally:
            self._delivery = None
            await delivery.stop()
            await asyncio.gather(sending, return_exceptions=True)
