"""What a reply is made from, and how to look things up in it."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.entries import (
    Ask,
    By,
    Doubt,
    Reading,
)
from bot.glucose.pairs import Pair, closed_by
from bot.localtime import in_zone, shifted
from bot.planning.due import Due
from bot.record import Noted, Record
from bot.turns.facts import Fact
from bot.turns.notebook import Notebook
from bot.words.language import Language

#: A reply speaks of the meals and readings of the last days only.
REPLIES_LOOK_BACK = timedelta(days=3)


@dataclass(frozen=True, slots=True, kw_only=True)
class Replying:
    """What a reply is made from. `recent` is what stands of the last days, `ahead` what falls due
    next. `unwell`: the message tells of a symptom or a wrong dose, and no goal is judged beside
    its caution."""

    recent: Record
    ahead: tuple[Due, ...]
    book: Notebook
    facts: tuple[Fact, ...]
    new: frozenset[int]
    now: datetime
    cautioned: frozenset[int]
    unwell: bool
    closed: Noted[Reading] | None
    words: Language
    ask: Ask | None
    doubt: Doubt
    number: str
    edited: bool
    by: By

    @property
    def before(self) -> Record:
        """What stood of the last days when the turn began."""
        return self.book.before.since(shifted(self.now, -REPLIES_LOOK_BACK))


def noted_reading(record: Record, id_: int) -> Noted[Reading] | None:
    return next((noted for noted in record.readings if noted.id == id_), None)


def pair_after(record: Record, id_: int) -> Pair | None:
    """The pair that a reading closes."""
    noted = noted_reading(record, id_)
    return None if noted is None else closed_by(record, noted)


def due_at(about: Replying, key: str) -> datetime | None:
    """When the prompt with this key falls due, on the participant's clock as it will be then;
    None if it does not come."""
    at = next((due.at for due in about.ahead if due.key == key), None)
    return at and in_zone(at, about.book.person.zone)
