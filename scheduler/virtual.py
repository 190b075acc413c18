"""Virtual time: no call sleeps, and time passes only when it is told to.

For replay and for tests: the same wake-ups as a live engine gives, in order of their instants.
"""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

#: Who is woken next and when: the earliest of all, None when nobody is ever to be woken.
NextWake = Callable[[], tuple[datetime, str] | None]


class VirtualClock:
    """A clock that shows what it was last set to, for both times."""

    def __init__(self, start: datetime = datetime(2000, 1, 1, tzinfo=UTC)) -> None:
        self._start = self._now = start.astimezone(UTC)

    def set(self, instant: datetime) -> None:
        """Set the time; raises ValueError if that would turn it back."""
        if instant < self._now:
            raise ValueError("virtual time is never turned back")
        self._now = instant.astimezone(UTC)

    def now(self) -> datetime:
        """The bot's time."""
        return self._now

    def real_now(self) -> datetime:
        """The same: virtual time runs at speed 1."""
        return self._now

    def monotonic(self) -> float:
        """Seconds since the start of this clock."""
        return (self._now - self._start) / timedelta(seconds=1)

    def bot_time(self, real: datetime) -> datetime:
        """The same instant."""
        return real

    def real_time(self, bot: datetime) -> datetime:
        """The same instant."""
        return bot


class VirtualEngine:
    """Wakes whoever is due while time goes on to an instant."""

    def __init__(
        self, clock: VirtualClock, next_wake: NextWake, on_wake: Callable[[str, datetime], None]
    ) -> None:
        self._clock = clock
        self._next_wake = next_wake
        self._on_wake = on_wake

    def go_to(self, until: datetime, *, including: bool) -> None:
        """Let time pass to `until`; what is due at that very instant only if `including`."""
        while (earliest := self._next_wake()) is not None:
            at, who = earliest
            if at > until or (at == until and not including):
                break
            self._clock.set(max(at, self._clock.now()))
            self._on_wake(who, self._clock.now())
        self._clock.set(max(until, self._clock.now()))
