"""The whole live bot and the stand-in server side by side in this process.

The client, the SQLite file, the alarm clock and the delivery are the real ones; only the API
server is ours. Used by `try`, by the demo and by tests from end to end.
"""

import asyncio
import tempfile
from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from pydantic import SecretStr

from bot.participants import Invitation
from bot.settings import Settings
from bot.storage.store import Store
from bot.trial.stand_in import TOKEN, StandIn
from bot.wiring import Service
from scheduler.clock import Clock, SteppedClock, real_now

PATIENCE: Final = 30.0  # seconds that a play waits for the bot to come to rest
CODE_KEEPS: Final = timedelta(days=365)  # a page may stand open for long
LOOK_AGAIN: Final = 0.002  # seconds between two looks whether it has


class StoryClock(SteppedClock):
    """A stepped clock whose pacing can be hurried too, since a story is not read as it runs."""

    def __init__(self, start: datetime) -> None:
        super().__init__(start)
        self._hurried = 0.0

    def hurry(self, seconds: float) -> None:
        """Let the pauses between messages to one reader pass."""
        self._hurried += seconds

    def monotonic(self) -> float:
        """Seconds that never go back, the hurried ones included."""
        return super().monotonic() + self._hurried


class Trial:
    """`async with Trial(settings, clock=...) as trial:` runs the bot against `trial.server`.

    `clock` None is the real one at the speed of the settings; `dated_by` dates what people
    write (default: the real time, as the real API does). The database is a file of its own in
    a temporary folder, unless `database` names one. Raises Mendable where the bot cannot begin.
    """

    def __init__(
        self,
        settings: Settings,
        *,
        clock: Clock | None = None,
        dated_by: Callable[[], datetime] = real_now,
        database: Path | None = None,
    ) -> None:
        self.server = StandIn(dated_by)
        self._folder = tempfile.TemporaryDirectory(prefix="afterplate-")
        self.database = database or Path(self._folder.name) / "trial.db"
        self._settings = settings
        self._clock = clock
        self._stop = asyncio.Event()
        self.service: Service
        self._serving: asyncio.Task[None]

    async def __aenter__(self) -> Self:
        await self.server.start()
        try:
            await self.start_bot()
        except BaseException:
            await self.server.stop()
            self._folder.cleanup()
            raise
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        try:
            await self.stop_bot()
        finally:
            await self.server.stop()
            self._folder.cleanup()

    @property
    def url(self) -> str:
        """The database as a setting."""
        return f"sqlite:///{self.database}"

    async def start_bot(self) -> None:
        """Start the bot (again) on the same database and wait until it serves."""
        settings = self._settings.model_copy(
            update={
                "telegram_token": SecretStr(TOKEN),
                "telegram_api": self.server.url,
                "database": self.url,
                "metrics": None,  # its place is the real bot's
            }
        )
        self._stop = asyncio.Event()
        ready = asyncio.Event()
        self.service = Service(settings, clock=self._clock)
        self._serving = asyncio.create_task(self.service.run(self._stop, ready=ready))
        waiting = asyncio.create_task(ready.wait())
        await asyncio.wait({self._serving, waiting}, return_when=asyncio.FIRST_COMPLETED)
        waiting.cancel()
        if self._serving.done():
            await self._serving  # it could not begin: the reason comes out here
            raise RuntimeError("the bot ended at once")

    async def stop_bot(self) -> None:
        """Let the bot end as on SIGTERM."""
        self._stop.set()
        await self._serving

    def parked(self) -> int:
        """How many updates the bot has given up."""
        store = Store.open(self.url)
        with store.turn() as work:
            found = len(work.parked())
        store.close()
        return found

    async def ended(self) -> None:
        """Wait until the bot ends; raises whatever ended it."""
        await self._serving

    def invite(self, invitation: Invitation, code: str = "TRY-IT-OUT") -> str:
        """Keep an invitation, as the command `invite` does beside a serving bot."""
        store = Store.open(self.url)
        with store.turn() as work:
            work.invite(code, invitation, real_now() + CODE_KEEPS)
        store.close()
        return code

    async def at_rest(self, seconds: float = PATIENCE) -> None:
        """Wait until every update is handled, nobody is due and nothing waits to be sent.

        Raises TimeoutError if that does not come about, and whatever ended the bot.
        """
        async with asyncio.timeout(seconds):
            while not await self._rests():
                if self._serving.done():
                    await self._serving
                    raise RuntimeError("the bot ended in the middle")
                await asyncio.sleep(LOOK_AGAIN)
                self.service.look()

    async def _rests(self) -> bool:
        # In this order: a wake-up commits its next instant together with what it says.
        if self.server.chats.updates or not self.server.fetching:
            return False
        due = await self.service.next_due()
        if due is not None and self._clock is not None and due <= self._clock.now():
            return False
        if not self.service.is_idle:
            return False
        if not await self.service.waiting():
            return self.service.is_idle
        if isinstance(self._clock, StoryClock):
            self._clock.hurry(1)
            self.service.look()
        return False
