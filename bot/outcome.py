"""What a turn left behind, for whoever runs the loops."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from bot.metrics.meter import Heard

__all__ = ["NOTHING", "Outcome", "together"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """How many messages were queued, and the person's next wake."""

    said: int = 0
    wake_at: datetime | None = None
    erased: bool = False
    parked: bool = False
    repeated: bool = False

    @property
    def heard(self) -> Heard:
        """The same as a word for the metrics."""
        if self.parked:
            return Heard.PARKED
        if self.repeated:
            return Heard.REPEATED
        return Heard.ANSWERED if self.said else Heard.SILENT


NOTHING = Outcome()


def together(outcomes: Iterable[Outcome]) -> Outcome:
    """All that was said, and the earliest of the next wakes."""
    all_of_them = tuple(outcomes)
    wakes = [one.wake_at for one in all_of_them if one.wake_at is not None]
    return Outcome(said=sum(one.said for one in all_of_them), wake_at=min(wakes, default=None))
