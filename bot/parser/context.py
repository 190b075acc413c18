"""What is known beside the text."""

from dataclasses import dataclass
from datetime import datetime

from bot.entries import Asked, By, Moment
from bot.units import Unit

#: What a reading that is asked for is taken for, unless the text says otherwise.
MOMENT_OF = {
    Asked.BEFORE_MEAL: Moment.BEFORE_MEAL,
    Asked.AFTER_MEAL: Moment.AFTER_MEAL,
    Asked.AFTER_ACTIVITY: Moment.AFTER_ACTIVITY,
    Asked.RECHECK: Moment.RECHECK,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Context:
    """When the message came, from whom, and what the bot is waiting for."""

    at: datetime
    unit: Unit
    language: str
    by: By
    asked: Asked | None

    @property
    def wants_reading(self) -> bool:
        """Whether a reading is asked for."""
        return self.asked in MOMENT_OF
