"""From the outbox to the chat: urgent first, drawn when sent, paced, retried by rule.

The database says what leaves next and is told how it ended; `Pace` says when. One message a
reader is under way at a time, so a reader's messages keep their order.
"""

import asyncio
import logging
import random
from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from bot.chat.pace import Pace
from bot.chat.pieces import pieces
from bot.chat.port import Chat, ChatError, Gone, NotSent, Part, Refused, Throttled, Unsure
from bot.logs import place_of, say
from bot.messages import Delivered
from bot.metrics.meter import Loop, Meter
from bot.storage.letters import Letter
from bot.storage.outbox import End
from bot.storage.store import Store, Writer
from bot.storage.urgency import URGENCY
from bot.storage.work import Work
from scheduler.clock import Clock

_LOG = logging.getLogger(__name__)

#: Longest texts (Bot API manual, sendMessage and sendPhoto).
TEXT_LIMIT = 4096
CAPTION_LIMIT = 1024

#: However quiet it is, look into the outbox again after so many seconds.
LONGEST_LOOK = 30.0
SWEEP_EVERY = 30.0
#: A round that takes longer than this is no round of a delivery that is alive.
LONGEST_ROUND = 120.0
#: Waits while the chat program cannot be reached: twice as long each time up to the longest.
SHORTEST_HOLD, LONGEST_HOLD = 0.5, 30.0
#: How long making a picture or file may take before the words go out alone.
MAKING_SECONDS = 20.0
#: Messages whose picture or file is made at one time; plain ones pass them by meanwhile.
MAKING_AT_ONCE = 4
#: How long the end waits for what is under way.
DRAIN_SECONDS = 8.0

#: Draws the picture of a row of the outbox, from its figures.
Draw = Callable[[int, Mapping[str, Any]], Awaitable[bytes]]
#: Makes the file of an attachment for a reader: its name and bytes.
Attach = Callable[[str, str], Awaitable[tuple[str, bytes]]]


async def draw_nothing(_row: int, _picture: Mapping[str, Any]) -> bytes:
    """For a bot without a drawing process: the words go out alone."""
    raise NotImplementedError


async def attach_nothing(_reader: str, _what: str) -> tuple[str, bytes]:
    """For a bot that makes no files: the words go out alone."""
    raise NotImplementedError


@dataclass(frozen=True, slots=True, kw_only=True)
class Makes:
    """What delivery has made just before a message leaves."""

    draw: Draw = draw_nothing
    attach: Attach = attach_nothing


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
        self._may_claim = may_claim
        self._longest_look = longest_look
        self._meter = meter or Meter(clock.monotonic)
        self._store = store
        self._writer = writer
        self._chat = chat
        self._clock = clock
        self._pace = pace
        self._makes = makes
        self._ring = asyncio.Event()
        self._under_way: set[asyncio.Task[None]] = set()
        self._making = 0
        self._stopping = False
        self._failures = 0

    def nudge(self) -> None:
        """Something new is in the outbox."""
        self._ring.set()

    @property
    def is_idle(self) -> bool:
        """Nothing is under way."""
        return not self._under_way

    async def run(self) -> None:
        """Send until `stop`. Expects to be the only sender of this database."""
        recovered = await self._writer.run(self._recover)
        say(_LOG, logging.INFO, "delivery begins", recovered=recovered)
        swept = self._clock.monotonic()
        while not self._stopping:
            self._meter.beat(Loop.DELIVERY, LONGEST_ROUND)
            try:
                await self._step()
                if self._clock.monotonic() - swept >= SWEEP_EVERY:
                    swept = self._clock.monotonic()
                    await self._writer.run(self._sweep)
            except Exception as error:
                say(_LOG, logging.ERROR, "delivery stumbled", error=place_of(error))
                await asyncio.sleep(1)

    async def stop(self) -> None:
        """Take nothing new, wait for what is under way, give back what has not left."""
        self._stopping = True
        self._ring.set()
        if self._under_way:
            await asyncio.wait(self._under_way, timeout=DRAIN_SECONDS)
        for task in self._under_way:
            task.cancel()

    async def _step(self) -> None:
        self._ring.clear()
        at = self._clock.monotonic()
        if (wait := self._pace.wait(at)) > 0:
            await self._listen(wait)
            return
        crowded = self._making >= MAKING_AT_ONCE
        letter = await self._writer.run(self._claim, self._pace.closed(at), crowded)
        if letter is None:
            opening, retry = self._pace.next_opening(at), await self._writer.run(self._next_retry)
            await self._listen(min((wait for wait in (opening, retry) if wait), default=None))
            return
        self._pace.leaves(letter.reader, self._clock.monotonic())
        self._making += not letter.is_plain
        task = asyncio.create_task(self._deliver(letter))
        self._under_way.add(task)
        task.add_done_callback(self._under_way.discard)

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
            self._making -= not letter.is_plain
            self._pace.ended(letter.reader)
            self._ring.set()

    async def _send(self, letter: Letter) -> None:
        parts = await self._parts(letter)
        done = letter.parts_done
        receipt = None
        try:
            for part in parts[done:]:
                receipt = await self._send_part(letter.chat, part)
                done += 1
                if done < len(parts):
                    await self._writer.run(self._note_part, letter, done)
        except Throttled as error:
            self._pace.turned_away(letter.reader, self._clock.monotonic(), error.retry_after)
            await self._put_back(letter, timedelta(seconds=error.retry_after), False)
        except NotSent as error:
            self._hold(error)
            await self._put_back(letter, timedelta(0), False)
        except Unsure:
            await self._after_unsure(letter)
        except Gone:
            await self._writer.run(self._chat_gone, letter)
            self._meter.ended(letter.kind, End.CANCELLED.value, timedelta(0))
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

    async def _parts(self, letter: Letter) -> tuple[Part, ...]:
        """What goes out; what cannot be made in time is left out, its words are not."""
        if letter.is_plain:
            return parts_of(letter)
        picture, file = None, None
        try:
            async with asyncio.timeout(MAKING_SECONDS):
                if letter.picture is not None:
                    picture = await self._makes.draw(letter.id, letter.picture)
                if letter.attachment is not None:
                    file = await self._makes.attach(letter.reader, letter.attachment)
        except Exception as error:
            say(_LOG, logging.ERROR, "not made", row=letter.id, error=place_of(error))
        await self._writer.run(self._mark_sending, letter)
        return parts_of(letter, picture=picture, file=file)

    async def _after_unsure(self, letter: Letter) -> None:
        rule = URGENCY[letter.kind]
        if letter.copies + 1 >= rule.copies:
            say(_LOG, logging.WARNING, "arrival unsure", row=letter.id, kind=letter.kind.value)
            await self._settle(letter, End.UNSURE)
        else:
            await self._put_back(letter, rule.again_after, True)

    def _hold(self, error: NotSent) -> None:
        self._failures += 1
        longest = min(LONGEST_HOLD, SHORTEST_HOLD * 2 ** min(self._failures - 1, 10))
        wait = longest * random.uniform(0.5, 1)  # noqa: S311 - spreads retries, guards nothing
        self._pace.hold_all(self._clock.monotonic() + wait)
        say(_LOG, logging.WARNING, "chat out of reach", error=str(error), failures=self._failures)

    async def _put_back(self, letter: Letter, wait: timedelta, may_have_arrived: bool) -> None:
        retry_at = self._clock.real_now() + wait
        await self._writer.run(self._give_back, letter, retry_at, may_have_arrived)

    async def _settle(self, letter: Letter, end: End, message: str | None = None) -> None:
        await self._writer.run(self._close, letter, end, message)
        self._meter.ended(letter.kind, end.value, self._clock.now() - letter.due_at)
        say(_LOG, logging.INFO, "message settled", row=letter.id, end=end.value)

    # --- in the writer's thread ------------------------------------------------------------

    def _recover(self) -> int:
        with self._store.turn() as work:
            return work.outbox.recover(self._clock.real_now(), all_leases=True)

    def _sweep(self) -> None:
        with self._store.turn() as work:
            work.outbox.recover(self._clock.real_now())
            work.outbox.expire(self._clock.now(), self._clock.real_now())

    def _claim(self, closed: frozenset[str], plain_only: bool) -> Letter | None:
        with self._store.turn() as work:
            if not self._may_claim(work):
                return None
            return work.outbox.claim(
                self._clock.now(), self._clock.real_now(), closed=closed, plain_only=plain_only
            )

    def _next_retry(self) -> float | None:
        now = self._clock.real_now()
        with self._store.turn() as work:
            at = work.outbox.next_try(now)
        return None if at is None else (at - now) / timedelta(seconds=1)

    def _mark_sending(self, letter: Letter) -> None:
        with self._store.turn() as work:
            work.outbox.sending(letter, self._clock.real_now())

    def _note_part(self, letter: Letter, done: int) -> None:
        with self._store.turn() as work:
            work.outbox.part_sent(letter, done)

    def _close(self, letter: Letter, end: End, message: str | None) -> None:
        with self._store.turn() as work:
            work.outbox.settle(letter, end, self._clock.real_now(), message=message)

    def _give_back(self, letter: Letter, retry_at: datetime, may_have_arrived: bool) -> None:
        with self._store.turn() as work:
            work.outbox.give_back(letter, retry_at, may_have_arrived=may_have_arrived)

    def _chat_gone(self, letter: Letter) -> None:
        with self._store.turn() as work:
            work.set_blocked(letter.chat, blocked=True)
            work.outbox.settle(letter, End.CANCELLED, self._clock.real_now())
            work.outbox.cancel_for(letter.reader, self._clock.real_now())
        say(_LOG, logging.INFO, "chat takes no messages", row=letter.id)


def parts_of(
    letter: Letter, *, picture: bytes | None = None, file: tuple[str, bytes] | None = None
) -> tuple[Part, ...]:
    """Cut a message into what the chat program takes; buttons stand under the last part."""
    parts: list[Part] = []
    text = letter.text
    if picture is not None or file is not None:
        caption = text if len(text) <= CAPTION_LIMIT else ""
        name, content = file if file is not None else ("", None)
        parts.append(Part(text=caption, picture=picture, file=content, file_name=name))
        text = "" if caption else text
    parts.extend(Part(text=piece) for piece in pieces(text, TEXT_LIMIT))
    if not parts:
        return ()
    last = parts[-1]
    parts[-1] = Part(
        text=last.text,
        picture=last.picture,
        file=last.file,
        file_name=last.file_name,
        buttons=letter.buttons,
    )
    return tuple(parts)
