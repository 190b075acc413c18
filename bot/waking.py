"""Wake-ups in the shell: many people in one transaction, each with a turn of their own.

What they need is read by set and what the turns bring about is written by set, so that a person
costs little more than the turn itself. One whose turn fails is put off, and holds up nobody else.
"""

import logging
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from sqlalchemy.exc import SQLAlchemyError

from bot.logs import place_of, say
from bot.outcome import Outcome, together
from bot.storage.faults import is_outage
from bot.storage.store import Store
from bot.storage.work import Work
from bot.teaching import Teaching
from bot.turns.ports import Turns
from bot.turns.turn import Opened, Turn

_LOG = logging.getLogger(__name__)

#: A person whose wake-up failed is tried again after this, so that one fault spins nobody.
AFTER_A_FAILED_WAKE = timedelta(minutes=5)

#: People whose records are read together: more at once would save little more.
READ_TOGETHER = 10
#: A transaction reads and decides no longer than this, so that whoever writes just then waits
#: for two of them, at most, until the answer leaves. A weekly summary and a record of weeks take
#: ten milliseconds, a prompt to somebody new 0.2.
LONGEST = timedelta(milliseconds=20)


class Waking:
    """The shell around the turns that nobody's message brings about."""

    def __init__(
        self,
        store: Store,
        turns: Turns,
        teaching: Teaching,
        *,
        real_now: Callable[[], datetime],
    ) -> None:
        self._store = store
        self._turns = turns
        self._teaching = teaching
        self._real_now = real_now

    def wake_all(self, people: Sequence[str], now: datetime) -> Outcome:
        """Do what is due for several, each of them once; nothing for who was woken already.

        One transaction, which ends early where they take long: the others are still due.
        Where it cannot stand, each half is taken alone, down to the one person with whom it
        cannot. Raises what `bot.storage.faults.is_outage` tells apart.
        """
        people = tuple(dict.fromkeys(people))
        try:
            return self._store.attempt(lambda work: self._rouse(work, people, now))
        except Exception as error:
            if is_outage(error):
                raise
            if len(people) == 1:
                with self._store.turn() as work:
                    return _put_off(work, people[0], now, error)
        half = len(people) // 2
        return together(self.wake_all(part, now) for part in (people[:half], people[half:]))

    def _rouse(self, work: Work, people: Sequence[str], now: datetime) -> Outcome:
        until = self._real_now() + LONGEST
        decided: list[tuple[Opened, Turn]] = []
        left: list[Outcome] = []
        for who, opened in _opened(work, people, now):
            if opened is None:
                kept = self._teaching.wake(work, who, now)
                left.append(Outcome(said=kept.said, wake_at=kept.wake_at))
            elif _is_due(work.next_wake(who), now):
                try:
                    decided.append((opened, self._decide(opened, now)))
                except SQLAlchemyError:
                    raise  # the transaction itself is in doubt
                except Exception as error:
                    left.append(_put_off(work, who, now, error))
            if self._real_now() >= until:
                break
        return together([*left, self._keep(work, decided, now)])

    def _decide(self, opened: Opened, now: datetime) -> Turn:
        turn = self._turns.wake(opened, now=now)
        if turn.wake_at is None or turn.wake_at > now:
            return turn
        # It would be woken for ever: put it off.
        say(_LOG, logging.ERROR, "woken for nothing", who=turn.participant.id)
        return replace(turn, wake_at=now + AFTER_A_FAILED_WAKE)

    def _keep(self, work: Work, decided: Sequence[tuple[Opened, Turn]], now: datetime) -> Outcome:
        turns = [turn for _, turn in decided]
        work.save_all(turns)
        says = (saying for turn in turns for saying in turn.says)
        said = work.outbox.queue(says, self._real_now())
        kept = [self._teaching.after(work, opened, turn, now) for opened, turn in decided]
        wakes = (*(turn.wake_at for turn in turns), *(one.wake_at for one in kept))
        earliest = min((wake for wake in wakes if wake is not None), default=None)
        return Outcome(said=said + sum(one.said for one in kept), wake_at=earliest)


def _opened(
    work: Work, people: Sequence[str], now: datetime
) -> Iterator[tuple[str, Opened | None]]:
    """Each of these with their record, read when it is their turn; None for no participant."""
    for first in range(0, len(people), READ_TOGETHER):
        some = people[first : first + READ_TOGETHER]
        opened = work.open_all(some, now)
        for who in some:
            yield who, opened.get(who)


def _is_due(wake: datetime | None, now: datetime) -> bool:
    return wake is not None and wake <= now


def _put_off(work: Work, who: str, now: datetime, error: Exception) -> Outcome:
    say(_LOG, logging.ERROR, "wake failed", who=who, error=place_of(error))
    again = now + AFTER_A_FAILED_WAKE
    work.set_wake(who, again)
    work.educators.put_off(who, again)
    return Outcome(wake_at=again)
