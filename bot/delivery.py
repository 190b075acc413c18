"""From the outbox to the chat: urgent first, drawn when sent, paced, retried by rule.

The database says what leaves next and is told how it ended; `Pace` says when. One message a
reader is under way at a time, so a reader's messages keep their order.
"""

import asyncio
import contextlib
import logging
import random
from collections.abc import Callable
from datetime import timedelta

from bot.chat.pace import Pace
from bot.chat.port import Chat, ChatError, Gone, NotSent, Part, Refused, Throttled, Unsure
from bot.letterbox import Letterbox
from bot.logs import place_of, say
from bot.making import Makes, parts_of
from bot.messages import Delivered
from bot.metrics.meter import Loop, Meter
from bot.storage.letters import End, Letter
from bot.storage.store import Store, Writer
from bot.storage.urgency import URGENCY
from bot.storage.work import Work
from scheduler.clock import Clock, Setback

_LOG = logging.getLogger(__name__)

#: However quiet it is, look into the outbox again after so many seconds.
LONGEST_LOOK = 30.0
SWEEP_EVERY = 30.0
#: A round that takes longer than this is no round of a delivery that is alive.
LONGEST_ROUND = 120.0
#: Waits while the chat program cannot be reached: twice as long each time up to the longest.
SHORTEST_HOLD, LONGEST_HOLD = 0.5, 10.0
#: Messages whose picture or file is made at one time; plain ones pass them by meanwhile.
MAKING_AT_ONCE = 4
#: How long the end waits for what is under way.
DRAIN_SECONDS = 8.0
#: A clock that is set back by more than this has jumped; by less it was only put right.
JUMP = timedelta(seconds=5)
#: What was drawn waits no longer than this for its reader's turn: it is put back.
LONGEST_TURN = 30.0


class _NoTurn(Exception):
    """What was made cannot leave soon."""


class Delivery:
    """Sends what is due until it is stopped.

    `may_claim` is asked in the very transaction that takes a message; `longest_look` is how
    many seconds at most it looks away from the outbox.
    """

    def __init__(
        self,
        store: Store,
        writer: Writer,
        chat: Chat,
        *,
        clock: Clock,
        pace: Pace,
        makes: Makes,
        meter: Meter | None = None,
        may_claim: Callable[[Work], bool] = lambda _work: True,
        longest_look: float = LONGEST_LOOK,
    ) -> None:
        self._longest_look = longest_look
        self._meter = meter or Meter(clock.monotonic)
        self._box = Letterbox(store, clock, may_claim)
        self._writer = writer
        self._chat = chat
        self._clock = clock
        self._pace = pace
        self._makes = makes
        self._ring = asyncio.Event()
        self._under_way: set[asyncio.Task[None]] = set()
        self._making = 0
        self._stopping = False
        self._ended = asyncio.Event()
        self._ended.set()
        self._failures = 0
        self._held_at = float("-inf")
        self._setback = Setback(clock)

    def nudge(self) -> None:
        """Something new is in the outbox."""
        self._ring.set()

    @property
    def is_idle(self) -> bool:
        """Nothing is under way."""
        return not self._under_way

    async def run(self) -> None:
        """Send until `stop`. Expects to be the only sender of this database."""
        self._ended.clear()
        try:
            recovered = await self._writer.run(self._box.recover)
            say(_LOG, logging.INFO, "delivery begins", recovered=recovered)
            swept = self._clock.monotonic()
            while not self._stopping:
                self._meter.beat(Loop.DELIVERY, LONGEST_ROUND)
                try:
                    await self._see_the_clock()
                    await self._step()
                    if self._clock.monotonic() - swept >= SWEEP_EVERY:
                        swept = self._clock.monotonic()
                        await self._sweep()
                except Exception as error:
                    say(_LOG, logging.ERROR, "delivery stumbled", error=place_of(error))
                    await asyncio.sleep(1)
        finally:
            self._ended.set()

    async def stop(self) -> None:
        """Take nothing new, wait for what is under way, give back what has not left."""
        self._stopping = True
        self._ring.set()
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(DRAIN_SECONDS):
                await self._ended.wait()  # what is being claimed just now is given back
                if self._under_way:
                    await asyncio.wait(self._under_way)
        for task in self._under_way:
            task.cancel()

    async def _step(self) -> None:
        self._ring.clear()
        at, real_now = self._clock.monotonic(), self._clock.real_now()
        if (wait := self._pace.wait(at)) > 0:
            await self._listen(wait)
            return
        crowded = self._making >= MAKING_AT_ONCE
        letter = await self._writer.run(self._box.claim, self._pace.closed(at), crowded, real_now)
        if letter is None:
            # From the same instant on: what may be tried again since then is not passed by.
            opening = self._pace.next_opening(at)
            retry = await self._writer.run(self._box.next_retry, real_now)
            waits = [wait for wait in (opening, retry) if wait is not None]
            await self._listen(min(waits, default=None))
            return
        if self._stopping:
            await self._writer.run(self._box.give_back, letter, real_now, False)
            return
        if letter.is_plain:
            self._pace.leaves(letter.reader, self._clock.monotonic())
        else:
            self._making += 1
        task = asyncio.create_task(self._deliver(letter))
        self._under_way.add(task)
        task.add_done_callback(self._under_way.discard)

    async def _sweep(self) -> None:
        """Take back what a vanished sender has claimed, and close what is worthless: some at a
        time, so that whoever writes meanwhile is heard."""
        await self._writer.run(self._box.take_back)
        while await self._writer.run(self._box.expire):
            if self._stopping:
                return

    async def _see_the_clock(self) -> None:
        """Where the clock was set back, what waited for an instant does not wait for it twice."""
        if (by := self._setback.by()) > JUMP:
            say(_LOG, logging.WARNING, "clock set back", seconds=by.seconds)
            await self._writer.run(self._box.went_back, by)
        self._setback.note()  # only then: a database that was away is told later

    async def _listen(self, opening: float | None) -> None:
        """Wait until a gate opens or something happens."""
        wait = self._longest_look if opening is None else min(self._longest_look, opening)
        try:
            async with asyncio.timeout(max(wait, 0.001)):
                await self._ring.wait()
        except TimeoutError:
            return

    async def _deliver(self, letter: Letter) -> None:
        try:
            await self._send(letter)
        except Exception as error:
            say(_LOG, logging.ERROR, "sending stumbled", row=letter.id, error=place_of(error))
        finally:
            self._ring.set()

    async def _make(self, letter: Letter) -> tuple[Part, ...]:
        """What goes out, once it is made and its reader's turn has come: others of the reader's
        messages pass it by meanwhile. Raises _NoTurn where its turn does not come soon."""
        try:
            parts = await self._makes.parts(letter)
            if not await self._turn_of(letter.reader):
                raise _NoTurn
        finally:
            self._making -= 1
        try:
            await self._writer.run(self._box.mark_sending, letter)
        except BaseException:
            self._pace.ended(letter.reader)
            raise
        return parts

    async def _turn_of(self, reader: str) -> bool:
        """Wait until a message may leave to this reader, and take the place; False if not soon."""
        until = self._clock.monotonic() + LONGEST_TURN
        while (wait := self._pace.wait_for(reader, self._clock.monotonic())) > 0:
            if self._stopping or self._clock.monotonic() + wait > until:
                return False
            await asyncio.sleep(min(wait, 1))
        self._pace.leaves(reader, self._clock.monotonic())
        return True

    async def _send(self, letter: Letter) -> None:
        try:
            parts = parts_of(letter) if letter.is_plain else await self._make(letter)
        except _NoTurn:
            await self._put_back(letter, timedelta(0), False)
            return
        try:
            await self._go_out(letter, parts)
        finally:
            self._pace.ended(letter.reader)

    async def _go_out(self, letter: Letter, parts: tuple[Part, ...]) -> None:
        done, began = letter.parts_done, self._clock.monotonic()
        receipt, asked_at = None, self._clock.now()
        try:
            for part in parts[done:]:
                if receipt is not None:
                    await self._next_part(letter.reader)
                receipt = await self._send_part(letter.chat, part)
                done += 1
                if done < len(parts):
                    await self._writer.run(self._box.note_part, letter, done)
        except Throttled as error:
            self._pace.turned_away(letter.reader, self._clock.monotonic(), error.retry_after)
            await self._put_back(letter, timedelta(seconds=error.retry_after), False)
        except NotSent as error:
            self._hold(error, began)
            await self._put_back(letter, timedelta(0), False)
        except Unsure:
            await self._after_unsure(letter)
        except Gone:
            end = await self._writer.run(self._box.chat_gone, letter, asked_at)
            if end is not None:
                self._meter.ended(letter.kind, end.value, timedelta(0))
        except Refused as error:
            say(_LOG, logging.ERROR, "message refused", row=letter.id, error=str(error))
            await self._settle(letter, End.FAILED)
        else:
            self._failures = 0
            if receipt is None:
                await self._settle(letter, End.FAILED)  # there was nothing to say
            else:
                await self._settle(letter, End.SENT, receipt.message)

    async def _send_part(self, chat: str, part: Part) -> Delivered:
        try:
            return await self._chat.send(chat, part)
        except ChatError as error:
            self._meter.fell_short(type(error).__name__)
            raise
        except Exception as error:  # an answer that is none: the message may have arrived
            say(_LOG, logging.ERROR, "odd answer", error=place_of(error))
            raise Unsure(type(error).__name__) from error

    async def _next_part(self, reader: str) -> None:
        """Keep to the pace between the parts of one message."""
        while (wait := self._pace.wait_between(reader, self._clock.monotonic())) > 0:  # noqa: ASYNC110
            await asyncio.sleep(wait)
        self._pace.leaves(reader, self._clock.monotonic())

    async def _after_unsure(self, letter: Letter) -> None:
        rule = URGENCY[letter.kind]
        if letter.copies + 1 >= rule.copies:
            say(_LOG, logging.WARNING, "arrival unsure", row=letter.id, kind=letter.kind.value)
            await self._settle(letter, End.UNSURE)
        else:
            await self._put_back(letter, rule.again_after[letter.copies], True)

    def _hold(self, error: NotSent, began: float) -> None:
        if began <= self._held_at:
            return  # it left before the hold that another one's failure has begun
        self._held_at = self._clock.monotonic()
        self._failures += 1
        longest = min(LONGEST_HOLD, SHORTEST_HOLD * 2 ** min(self._failures - 1, 10))
        wait = longest * random.uniform(0.5, 1)  # noqa: S311 - spreads retries, guards nothing
        self._pace.hold_all(self._clock.monotonic() + wait)
        say(_LOG, logging.WARNING, "chat out of reach", error=str(error), failures=self._failures)

    async def _put_back(self, letter: Letter, wait: timedelta, may_have_arrived: bool) -> None:
        retry_at = self._clock.real_now() + wait
        await self._writer.run(self._box.give_back, letter, retry_at, may_have_arrived)

    async def _settle(self, letter: Letter, end: End, message: str | None = None) -> None:
        await self._writer.run(self._box.close, letter, end, message)
        self._meter.ended(letter.kind, end.value, self._clock.now() - letter.due_at)
        say(_LOG, logging.INFO, "message settled", row=letter.id, end=end.value)
