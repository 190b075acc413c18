"""Whether the bot is alive: its parts move, its event loop turns, its database answers."""

import asyncio
import threading
from collections.abc import Awaitable, Callable
from concurrent.futures import TimeoutError as NoAnswer

from bot.metrics.meter import Figures, Meter

#: Seconds that the event loop, and then the database, may take to answer.
PATIENCE = 5.0


class Liveness:
    """Asked from another thread, so that a loop that hangs is seen too."""

    def __init__(
        self,
        meter: Meter,
        loop: asyncio.AbstractEventLoop,
        ask: Callable[[], Awaitable[Figures]],
        *,
        patience: float = PATIENCE,
    ) -> None:
        self._meter = meter
        self._loop = loop
        self._ask = ask
        self._patience = patience

    def wrong(self) -> tuple[str, ...]:
        """What does not live, a sentence each; nothing if all is well."""
        stuck = tuple(
            f"{loop.value}: not begun yet"
            if late is None
            else f"{loop.value}: no sign of life, {late:.0f} s overdue"
            for loop, late in self._meter.overdue().items()
        )
        if not self._loop_turns():
            return (*stuck, f"event loop: no answer within {self._patience:g} s")
        try:
            self.figures()
        except NoAnswer:
            return (*stuck, f"database: no answer within {self._patience:g} s")
        except Exception as error:
            return (*stuck, f"database: {type(error).__name__}")
        return stuck

    def figures(self) -> Figures:
        """Ask the database, through the loop and in its turn, as every message does.

        Raises TimeoutError, or what the database raised.
        """

        async def asked() -> Figures:
            return await self._ask()

        waiting = asyncio.run_coroutine_threadsafe(asked(), self._loop)
        try:
            return waiting.result(self._patience)
        except NoAnswer:
            waiting.cancel()
            raise

    def figures_or_none(self) -> Figures | None:
        """The same; None where there is no answer."""
        try:
            return self.figures() if self._loop_turns() else None
        except Exception:
            return None

    def _loop_turns(self) -> bool:
        turned = threading.Event()
        try:
            self._loop.call_soon_threadsafe(turned.set)
        except RuntimeError:  # it is closed
            return False
        return turned.wait(self._patience)
