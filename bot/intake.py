"""Raw updates in: each of them handled, ignored or parked before it may be confirmed."""

import asyncio
import contextlib
from collections.abc import Awaitable, Callable, Mapping, Sequence
from typing import Any

from bot.chat.updates import OddUpdate, incoming, press_of
from bot.conversation import Conversation, Outcome
from bot.messages import Incoming
from bot.metrics.meter import Heard, Meter, Turn
from bot.storage.store import Writer
from scheduler.clock import Clock

#: Presses that are told at one time to the chat program that they were taken, and for how long
#: that is tried; further ones let go by themselves.
PRESSES_AT_ONCE, LONGEST_PRESS = 20, 10.0


class Intake:
    """What comes in from the chat program, whichever way it comes."""

    def __init__(
        self,
        conversation: Conversation,
        writer: Writer,
        clock: Clock,
        meter: Meter,
        *,
        after: Callable[[Outcome], None],
        press_seen: Callable[[str], Awaitable[None]],
    ) -> None:
        self._conversation = conversation
        self._writer = writer
        self._clock = clock
        self._meter = meter
        self._after = after
        self._press_seen = press_seen
        self._being_taken = 0
        self._presses: set[asyncio.Task[None]] = set()

    @property
    def is_idle(self) -> bool:
        """Nothing is being taken in."""
        return not self._being_taken

    async def take(self, update: Mapping[str, Any]) -> None:
        """Handle one raw update, as `take_all` does."""
        await self.take_all((update,))

    async def take_all(self, updates: Sequence[Mapping[str, Any]]) -> None:
        """Handle raw updates in their order; all may be confirmed once this returns.

        Raises sqlalchemy.exc.DBAPIError where the database cannot take one: all of them come
        again then, and those that were handled are known by their ids.
        """
        self._being_taken += 1
        try:
            waiting = [message for update in updates if (message := await self._read(update))]
            while waiting:
                waiting = waiting[await self._hear(waiting) :]
        finally:
            self._being_taken -= 1
        for update in updates:
            press = press_of(update)
            if press is not None and len(self._presses) < PRESSES_AT_ONCE:
                # Beside what comes next: whoever writes does not wait for a button to be let go.
                task = asyncio.create_task(self._let_go(press))
                self._presses.add(task)
                task.add_done_callback(self._presses.discard)

    async def _let_go(self, press: str) -> None:
        """Best effort: nothing is lost where it fails."""
        with contextlib.suppress(Exception):
            async with asyncio.timeout(LONGEST_PRESS):
                await self._press_seen(press)

    async def _read(self, update: Mapping[str, Any]) -> Incoming | None:
        """The message of an update; None for one that says nothing, or nothing known."""
        try:
            message = incoming(update, now=self._clock.now(), bot_time=self._clock.bot_time)
        except OddUpdate as error:
            await self._writer.run(self._conversation.park, int(update["update_id"]), error)
            self._meter.heard(Heard.PARKED)
            return None
        if message is None:
            self._meter.heard(Heard.IGNORED)
        return message

    async def _hear(self, messages: Sequence[Incoming]) -> int:
        """Take as many of the first of these as go into one transaction; gives how many."""
        began = self._clock.monotonic()
        try:
            outcomes = await self._writer.run(
                self._conversation.hear_all, messages, self._clock.now()
            )
        except BaseException:
            for _ in messages:
                self._meter.heard(Heard.PUT_OFF)
            raise
        took = self._clock.monotonic() - began
        for outcome in outcomes:  # each of them waited until all were kept
            self._meter.took(Turn.MESSAGE, took)
            self._meter.heard(outcome.heard)
            self._after(outcome)
        return len(outcomes)
