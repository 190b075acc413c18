"""The only file that reads the time. The bot's time may run faster than the world's.

The bot's time is what due times, windows and quiet time run on; leases, pacing and back-off
run on real time. At speed 1 both are one. `Rate` is kept in the database so that a fast clock
goes on, never back, across restarts.
"""

import time
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Protocol


class Clock(Protocol):
    """Two times: the bot's and the world's; both aware, in UTC."""

    def now(self) -> datetime:
        """The bot's time."""

    def real_now(self) -> datetime:
        """The world's time."""

    def monotonic(self) -> float:
        """Seconds that never go back, for waits and pacing."""

    def bot_time(self, real: datetime) -> datetime:
        """The bot's time at a real instant."""

    def real_time(self, bot: datetime) -> datetime:
        """The real instant at which the bot's time will be `bot`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rate:
    """The bot's time was `bot` at the real instant `real`, and runs `speed` times as fast."""

    real: datetime
    bot: datetime
    speed: float = 1.0

    def bot_time(self, real: datetime) -> datetime:
        """The bot's time at a real instant."""
        return self.bot + (real - self.real) * self.speed

    def real_time(self, bot: datetime) -> datetime:
        """The real instant of an instant of the bot's time."""
        return self.real + (bot - self.bot) / self.speed

    def at_speed(self, speed: float, real_now: datetime) -> "Rate":
        """The same clock from now on at another speed: it neither jumps nor goes back."""
        if speed == self.speed:
            return self
        return Rate(real=real_now, bot=self.bot_time(real_now), speed=speed)


def real_now() -> datetime:
    """The world's time, aware, in UTC."""
    return datetime.now(UTC)


class _Reckoned:
    """What clocks share whose bot's time is reckoned from the world's."""

    __slots__ = ()

    rate: Rate

    def now(self) -> datetime:
        """The bot's time."""
        return self.rate.bot_time(self.real_now())

    def real_now(self) -> datetime:
        """The world's time."""
        return real_now()

    def monotonic(self) -> float:
        """Seconds that never go back; this machine's own."""
        return time.monotonic()

    def bot_time(self, real: datetime) -> datetime:
        """The bot's time at a real instant."""
        return self.rate.bot_time(real)

    def real_time(self, bot: datetime) -> datetime:
        """The real instant of an instant of the bot's time."""
        return self.rate.real_time(bot)


@dataclass(frozen=True, slots=True)
class LiveClock(_Reckoned):
    """The machine's clock, and the bot's time reckoned from it."""

    rate: Rate

    @classmethod
    def plain(cls) -> "LiveClock":
        """A clock on which the bot's time is the world's."""
        epoch = datetime(1970, 1, 1, tzinfo=UTC)
        return cls(Rate(real=epoch, bot=epoch))


class Setback:
    """Tells how far the clock on the wall was set back, by the one that never goes back."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self.note()

    def by(self) -> timedelta:
        """Since it was noted last; less than nothing where it was set forward."""
        return self._ahead - self._wall()

    def note(self) -> None:
        """As it is set now, so be it."""
        self._ahead = self._wall()

    def _wall(self) -> datetime:
        return self._clock.real_now() - timedelta(seconds=self._clock.monotonic())


class SharedClock(_Reckoned):
    """One clock for several machines: the database's, kept up with by comparing.

    A lease that one machine took must run out at the same instant for every other one, however
    far apart their own clocks are set.
    """

    #: A comparison whose answer took longer than this says too little.
    LONGEST_ANSWER = timedelta(seconds=2)

    def __init__(self, rate: Rate) -> None:
        self.rate = rate
        self._ahead = timedelta(0)

    @classmethod
    def plain(cls) -> "SharedClock":
        """A shared clock on which the bot's time is the world's."""
        return cls(LiveClock.plain().rate)

    @property
    def ahead(self) -> timedelta:
        """How far the database's clock is ahead of this machine's."""
        return self._ahead

    def agree(self, theirs: datetime, *, asked: float, answered: float) -> bool:
        """Keep up with the time that was read between two instants of `monotonic`.

        Gives whether the answer came soon enough to be worth anything.
        """
        took = timedelta(seconds=answered - asked)
        if took > self.LONGEST_ANSWER:
            return False
        self._ahead = theirs + took / 2 - real_now()
        return True

    def real_now(self) -> datetime:
        """The world's time, as the database has it."""
        return real_now() + self._ahead


class SteppedClock:
    """A clock whose bot's time stands still until it is stepped; real time runs on.

    For playing a story through the live parts. Messages are dated in the bot's time, so
    `bot_time` changes nothing. An engine that waits on it is told by its `nudge`.
    """

    def __init__(self, start: datetime) -> None:
        self._now = start.astimezone(UTC)

    def step_to(self, instant: datetime) -> None:
        """Set the bot's time; raises ValueError if that would turn it back."""
        if instant < self._now:
            raise ValueError("a clock is never stepped back")
        self._now = instant.astimezone(UTC)

    def now(self) -> datetime:
        """The bot's time."""
        return self._now

    def real_now(self) -> datetime:
        """The world's time."""
        return real_now()

    def monotonic(self) -> float:
        """Seconds that never go back."""
        return time.monotonic()

    def bot_time(self, real: datetime) -> datetime:
        """Messages are dated in the bot's time already."""
        return real

    def real_time(self, bot: datetime) -> datetime:
        """Never by itself: now if it is due, else far away (the engine's longest wait)."""
        now = real_now()
        return now if bot <= self._now else now + timedelta(days=1)
