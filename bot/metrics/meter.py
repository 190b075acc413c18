"""What the parts of a running bot tell of their work. This meter keeps signs of life only."""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from enum import StrEnum

from bot.messages import Kind


class Loop(StrEnum):
    """What has to go round for the bot to be alive."""

    INTAKE = "intake"
    DELIVERY = "delivery"
    ALARM = "alarm"


class Heard(StrEnum):
    """How an update that came in ended."""

    ANSWERED = "answered"
    SILENT = "silent"  # handled, and nothing was to be said to it
    REPEATED = "repeated"  # handled before
    PARKED = "parked"  # given up after an error
    PUT_OFF = "put_off"  # the database could not take it: it comes again
    IGNORED = "ignored"  # of a kind that the bot has no use for


class Turn(StrEnum):
    """What a turn was taken for."""

    MESSAGE = "message"
    WAKE = "wake"


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """What the database says at an instant of the bot's time.

    By kind of message, of what is due and not yet settled: how many, and for how long the
    oldest of them has been due (seconds of the bot's time).
    """

    at: datetime
    waiting: Mapping[Kind, int] = field(default_factory=dict)
    oldest: Mapping[Kind, float] = field(default_factory=dict)
    participants: int = 0
    database: str = ""  # of which kind
    schema: str = ""  # of which version
    next_due: datetime | None = None


class Meter:
    """Told by every part; the counts go nowhere unless a subclass keeps them.

    `monotonic` gives seconds that never go back.
    """

    def __init__(self, monotonic: Callable[[], float]) -> None:
        self._monotonic = monotonic
        self._until: dict[Loop, float] = {}

    def beat(self, loop: Loop, within: float) -> None:
        """A loop goes round, and will again within so many seconds if all is well."""
        self._until[loop] = self._monotonic() + within

    def overdue(self) -> Mapping[Loop, float | None]:
        """The loops that gave no sign of life in time, and by how many seconds; None: not yet."""
        now = self._monotonic()
        waited = {loop: now - self._until[loop] if loop in self._until else None for loop in Loop}
        return {loop: late for loop, late in waited.items() if late is None or late > 0}

    @contextmanager
    def timed(self, turn: Turn) -> Iterator[None]:
        """Measure a turn from here to the end of the block."""
        began = self._monotonic()
        try:
            yield
        finally:
            self.took(turn, self._monotonic() - began)

    def took(self, turn: Turn, seconds: float) -> None:
        """A turn was taken, its wait for the database included."""

    def heard(self, how: Heard) -> None:
        """An update came in, and this is how it ended."""

    def parked_before(self, count: int) -> None:
        """So many updates had been given up when the bot began."""

    def ended(self, kind: Kind, end: str, late: timedelta) -> None:
        """A message was settled so long (the bot's time) after it was due."""

    def fell_short(self, error: str) -> None:
        """A send did not surely arrive: the class of what is known of it."""
