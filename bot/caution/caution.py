"""One caution, and what a message tells against the whole record."""

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.caution.levels import level_of
from bot.caution.thresholds import Level
from bot.entries import Reading, Request, Symptom, What
from bot.glucose.readings import is_high
from bot.record import Noted, Record
from bot.record.fold import is_low


class Why(StrEnum):
    """What makes an emergency of it."""

    SYMPTOM = "symptom"
    KETONES = "ketones"
    THIRD_LOW = "third_low"
    VERY_LOW_AFTER_SUGAR = "very_low_after_sugar"


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """One caution that is due, with what its words need.

    `cause` is the event that brings it: a reading, a symptom, or the request that tells of a
    wrong dose. `late`: the reading was told more than an hour after it was taken. `repeat`: the
    last reading of the same episode was as bad. `planned`: an educator's plan makes one line of
    it. `shorter`: said already today or yesterday; shorter in its explanations, never in its
    actions. `retest_at`: when a low is to be tested again; `asked_again` tells that a prompt will
    ask for it (nobody who sent `stop` is prompted). `why` is set for an emergency alone.
    """

    level: Level
    cause: int
    reading: Noted[Reading] | None = None
    symptom: Noted[Symptom] | None = None
    why: Why | None = None
    late: bool = False
    repeat: bool = False
    planned: bool = False
    shorter: bool = False
    retest_at: datetime | None = None
    asked_again: bool = True
    low_symptoms: bool = False
    high_symptoms: bool = False
    wrong_dose: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What one message told, against the record that already holds it."""

    record: Record
    now: datetime
    readings: tuple[Noted[Reading], ...]
    symptoms: tuple[Noted[Symptom], ...]
    wrong_doses: tuple[Noted[Request], ...]

    def level(self, noted: Noted[Reading]) -> Level | None:
        """The level of a reading within the participant's limits."""
        return level_of(noted.entry, self.record.participant.limits)

    def low(self, reading: Reading) -> bool:
        """Below the participant's low limit."""
        return is_low(reading, self.record.participant.limits)

    def high(self, reading: Reading) -> bool:
        """From the participant's high limit."""
        return is_high(reading, self.record.participant.limits)


def told(record: Record, new: Collection[int], now: datetime) -> Told:
    """Pick out of the record what the events `new` told."""
    return Told(
        record=record,
        now=now,
        readings=tuple(noted for noted in record.readings if noted.id in new),
        symptoms=tuple(noted for noted in record.symptoms if noted.id in new),
        wrong_doses=tuple(
            noted
            for noted in record.requests
            if noted.id in new and noted.entry.what is What.WRONG_DOSE
        ),
    )
