"""The sender's dealings with the outbox: each one transaction, in the writer's thread."""

import logging
from collections.abc import Callable
from datetime import datetime, timedelta

from bot.logs import say
from bot.storage.letters import End, Letter, unwanted
from bot.storage.store import Store
from bot.storage.work import Work
from scheduler.clock import Clock

_LOG = logging.getLogger(__name__)


class Letterbox:
    """`may_claim` is asked in the very transaction that takes a message."""

    def __init__(self, store: Store, clock: Clock, may_claim: Callable[[Work], bool]) -> None:
        self._store = store
        self._clock = clock
        self._may_claim = may_claim

    def recover(self) -> int:
        """Take back what was claimed by a sender that is no more; gives how many."""
        with self._store.turn() as work:
            return work.outbox.recover(self._clock.real_now(), all_leases=True)

    def take_back(self) -> None:
        """The same for leases that have run out."""
        with self._store.turn() as work:
            work.outbox.recover(self._clock.real_now())

    def expire(self) -> int:
        """Close some of what is worthless; gives how many, 0 once all are."""
        with self._store.turn() as work:
            return work.outbox.expire(self._clock.now(), self._clock.real_now())

    def went_back(self, by: timedelta) -> None:
        """The clock was set back by so much."""
        real_now = self._clock.real_now()
        now = self._clock.bot_time(real_now)
        with self._store.turn() as work:
            work.outbox.clock_went_back(now, real_now, self._clock.bot_time(real_now + by))

    def claim(self, closed: frozenset[str], plain_only: bool, real_now: datetime) -> Letter | None:
        """The next message that may leave, taken; None if there is none."""
        with self._store.turn() as work:
            if not self._may_claim(work):
                return None
            return work.outbox.claim(
                self._clock.now(), real_now, closed=closed, plain_only=plain_only
            )

    def next_retry(self, since: datetime) -> float | None:
        """Seconds until one that was put back may leave, of those after an instant."""
        with self._store.turn() as work:
            at = work.outbox.next_try(since)
        return None if at is None else (at - self._clock.real_now()) / timedelta(seconds=1)

    def mark_sending(self, letter: Letter) -> None:
        """It may have arrived from here on."""
        with self._store.turn() as work:
            work.outbox.sending(letter, self._clock.real_now())

    def note_part(self, letter: Letter, done: int) -> None:
        """So many of its parts have arrived."""
        with self._store.turn() as work:
            work.outbox.part_sent(letter, done)

    def close(self, letter: Letter, end: End, message: str | None) -> None:
        """It has ended; `message` is the chat's id of it."""
        with self._store.turn() as work:
            work.outbox.settle(letter, end, self._clock.real_now(), message=message)

    def give_back(self, letter: Letter, retry_at: datetime, may_have_arrived: bool) -> None:
        """It is to be tried again from an instant on."""
        with self._store.turn() as work:
            work.outbox.give_back(letter, retry_at, may_have_arrived=may_have_arrived)

    def chat_gone(self, letter: Letter, asked_at: datetime) -> End | None:
        """Its chat took no messages (asked at an instant of the bot's time).

        Whatever waits for it is cancelled, cautions are owed; gives how the letter ended. Whoever
        has written since takes messages again: then it is only to be tried again.
        """
        end = unwanted(letter.kind)
        with self._store.turn() as work:
            if work.heard_since(letter.reader, asked_at):
                work.outbox.give_back(letter, self._clock.real_now(), may_have_arrived=False)
                return None
            work.set_blocked(letter.chat, blocked=True)
            work.outbox.settle(letter, end, self._clock.real_now())
            work.outbox.cancel_for(letter.reader, self._clock.real_now())
        say(_LOG, logging.INFO, "chat takes no messages", row=letter.id)
        return end
