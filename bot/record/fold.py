"""Events folded into a record of what stands now."""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from itertools import chain
from math import inf
from operator import attrgetter
from typing import Any, Generic, TypeVar

from bot.entries import (
    Activity,
    Answer,
    FoodKind,
    Meal,
    OffScale,
    Reading,
    Request,
    Skip,
    StepTaken,
    Strips,
    Symptom,
    Treatment,
)
from bot.participants import Limits, Participant
from bot.record.events import Body, Event, Retracted, Spoke, Wondered, Wrote
from bot.units import limit_in

T = TypeVar("T", bound=Body)

#: What is eaten against a low. Anything else told during one is a meal.
SUGARS = frozenset({FoodKind.SWEET_DRINK, FoodKind.SWEET_FOOD, FoodKind.FRUIT})

#: How long after a low without a later reading something sweet still counts as its treatment
#: (two rechecks, each with a wait, fit in; common practice, no source).
TREATMENT_WINDOW = timedelta(minutes=120)

#: The field that tells when a thing happened, for kinds that have their own instant.
_INSTANT: Mapping[type, str] = {
    Reading: "taken_at",
    Treatment: "taken_at",
    Meal: "started_at",
    Activity: "ended_at",
}
_SECONDS: Callable[["Noted[Any]"], float] = attrgetter("seconds")
_ID: Callable[[Event], int] = attrgetter("id")


# Never changed, and yet not frozen: a record of five weeks is hundreds of these, and a frozen one
# takes four times as long to make.
@dataclass(slots=True, init=False, unsafe_hash=True)
class Noted(Generic[T]):
    """An entry that stands, with the event it came from: `at` is when it was said.

    `instant` is what it is ordered by: its own instant, or where that is unknown, `at`;
    `seconds` is the same since 1970. Both are kept because a turn asks for them hundreds of times.
    """

    id: int
    at: datetime
    message: str | None
    entry: T
    instant: datetime = field(repr=False, compare=False)
    seconds: float = field(repr=False, compare=False)

    def __init__(self, *, id: int, at: datetime, message: str | None, entry: T) -> None:  # noqa: A002
        self.id = id
        self.at = at
        self.message = message
        self.entry = entry
        name = _INSTANT.get(type(entry))
        self.instant = instant = (getattr(entry, name) or at) if name else at
        self.seconds = instant.timestamp()


# Without slots: a turn makes a dozen, and copying a dictionary takes a tenth of setting each field.
@dataclass(frozen=True, kw_only=True, eq=False)
class Record:
    """Everything that stands for one participant; each kind in the order of its own instant.

    Readings are ordered by `taken_at` (where unknown, by when they were told), meals by
    `started_at` (likewise), activities by `ended_at`, the rest by when they were said. `lows` are
    the readings below the participant's limit; `told` holds the meals as they were told, those
    against a low among them. Two records are equal if they are the same one, so that sums over a
    record can be remembered by it.
    """

    participant: Participant
    readings: tuple[Noted[Reading], ...] = ()
    meals: tuple[Noted[Meal], ...] = ()
    treatments: tuple[Noted[Treatment], ...] = ()
    activities: tuple[Noted[Activity], ...] = ()
    symptoms: tuple[Noted[Symptom], ...] = ()
    skips: tuple[Noted[Skip], ...] = ()
    strips: tuple[Noted[Strips], ...] = ()
    steps: tuple[Noted[StepTaken], ...] = ()
    answers: tuple[Noted[Answer], ...] = ()
    requests: tuple[Noted[Request], ...] = ()
    wrote: tuple[Noted[Wrote], ...] = ()
    spoke: tuple[Noted[Spoke], ...] = ()
    wondered: tuple[Noted[Wondered], ...] = ()
    told: tuple[Noted[Meal], ...] = ()
    told_treatments: tuple[Noted[Treatment], ...] = ()
    lows: tuple[Noted[Reading], ...] = ()
    last_id: int = 0

    def said(self, key: str) -> bool:
        """Tell whether the bot has already said the thing with this key."""
        return any(spoken.entry.key == key for spoken in reversed(self.spoke))

    def noted(self, id_: int) -> Noted[Any] | None:
        """What stands under an id, as it was told."""
        every = chain.from_iterable(_ALL_NOTES(self))
        return next((noted for noted in every if noted.id == id_), None)

    def spoke_since(self, instant: datetime) -> tuple[Noted[Spoke], ...]:
        """What the bot has said from an instant on."""
        return _since(self.spoke, instant.timestamp())

    def wrote_between(self, start: datetime, end: datetime) -> bool:
        """Tell whether the participant wrote anything from `start` to `end`, both included."""
        place = bisect_right(self.wrote, end.timestamp(), key=_SECONDS)
        return place > 0 and self.wrote[place - 1].at >= start

    def readings_behind(self, noted: Noted[Reading]) -> tuple[Noted[Reading], ...]:
        """The readings that come after this one in their order."""
        return self.readings[bisect_right(self.readings, _PLACE(noted), key=_PLACE) :]

    def since(self, instant: datetime) -> "Record":
        """The same record from an instant on: for what looks back no further than that."""
        start = instant.timestamp()
        cut = {
            name: notes[bisect_left(notes, start, key=_SECONDS) :]
            for name, notes in vars(self).items()  # what is not there is empty
            if type(notes) is tuple and notes and notes[0].seconds < start
        }
        return self.changed(**cut) if cut else self

    def changed(self, **fields: Any) -> "Record":
        """The same record but for these fields."""
        other = object.__new__(Record)
        vars(other).update(vars(self), **fields)
        return other


def _since(notes: tuple[Noted[T], ...], start: float) -> tuple[Noted[T], ...]:
    if not notes or notes[0].seconds >= start:  # most kinds are rare
        return notes
    return notes[bisect_left(notes, start, key=_SECONDS) :]


def _before(notes: tuple[Noted[T], ...], end: float) -> tuple[Noted[T], ...]:
    return notes[: bisect_left(notes, end, key=_SECONDS)]


#: The field of a record that holds what was told of each kind.
_TOLD: Mapping[type, str] = {
    Reading: "readings",
    Meal: "told",
    Treatment: "told_treatments",
    Activity: "activities",
    Symptom: "symptoms",
    Skip: "skips",
    Strips: "strips",
    StepTaken: "steps",
    Answer: "answers",
    Request: "requests",
    Wrote: "wrote",
    Spoke: "spoke",
    Wondered: "wondered",
}
#: All fields that hold notes: the last three are worked out from the others.
_FIELDS = (*_TOLD.values(), "meals", "treatments", "lows")
_ALL_NOTES: Callable[[Record], tuple[tuple[Noted[Any], ...], ...]] = attrgetter(*_FIELDS)
#: Those that decide which meals were eaten against a low.
_PARTING = frozenset({Reading, Meal, Treatment})


def is_low(reading: Reading, limits: Limits) -> bool:
    """Below the participant's low limit in the unit as typed, or LO."""
    if reading.value is None:
        return reading.off_scale is OffScale.LOW
    return reading.value < limit_in(limits.low, reading.unit)


def fold(participant: Participant, events: Iterable[Event]) -> Record:
    """Fold events, in any order, into the record that stands."""
    return extended(_empty(participant), events)


def _empty(participant: Participant) -> Record:
    """A record of nothing: what is not set of it is as the class has it."""
    record = object.__new__(Record)
    vars(record)["participant"] = participant
    return record


def extended(record: Record, events: Iterable[Event]) -> Record:
    """The record with more events, each of them later (by id) than those in it."""
    ordered = sorted(events, key=_ID)
    if not ordered:
        return record
    gone: set[int] = set()
    standing: dict[int, Event] = {}
    for event in ordered:
        if isinstance(event.body, Retracted):
            gone.update(event.body.ids)
            for id_ in event.body.ids:
                standing.pop(id_, None)
        else:
            if event.mends is not None:
                gone.add(event.mends)
            standing[event.root] = event
    fresh: dict[type, list[Noted[Any]]] = {}
    for id_, event in standing.items():
        body: Any = event.body
        noted = Noted(id=id_, at=event.at, message=event.message, entry=body)
        fresh.setdefault(type(body), []).append(noted)
    fields: dict[str, Any] = {"last_id": ordered[-1].id}
    for kind in _TOLD if gone else fresh:
        name = _TOLD[kind]
        fields[name] = _merged(getattr(record, name), fresh.get(kind, []), gone)
    grown = record.changed(**fields)
    if gone:
        return _parted(grown)
    if _PARTING.isdisjoint(fresh):
        return grown
    parting = (noted.seconds for kind in _PARTING for noted in fresh.get(kind, ()))
    return _parted(grown, since=min(parting))


def of(record: Record, participant: Participant) -> Record:
    """The same record after the participant's settings have changed."""
    return _parted(record.changed(participant=participant))


def when(noted: Noted[T]) -> datetime:
    """The instant by which an entry is ordered: its own, or when it was told."""
    return noted.instant


_PLACE: Callable[[Noted[Any]], tuple[float, int]] = attrgetter("seconds", "id")


def _merged(
    notes: tuple[Noted[T], ...], fresh: list[Noted[T]], gone: set[int]
) -> tuple[Noted[T], ...]:
    if gone and any(noted.id in gone for noted in notes):
        notes = tuple(noted for noted in notes if noted.id not in gone)
    if not fresh:
        return notes
    fresh.sort(key=_PLACE)
    if not notes:
        return tuple(fresh)
    if _PLACE(notes[-1]) < _PLACE(fresh[0]):
        return (*notes, *fresh)
    return tuple(sorted((*notes, *fresh), key=_PLACE))


def _parted(record: Record, since: float = -inf) -> Record:
    """Find the lows, and take out of the meals what was eaten against one; nothing is new before
    `since`.

    Worked out here and not when it is heard, so that a correction of the low turns the
    sugar back into a meal.
    """
    limits = record.participant.limits
    lows = (noted for noted in _since(record.readings, since) if is_low(noted.entry, limits))
    all_lows = (*_before(record.lows, since), *lows)
    if not all_lows:  # nothing can be eaten against one
        return record.changed(lows=(), meals=record.told, treatments=record.told_treatments)
    told, treated = _since(record.told, since), _since(record.told_treatments, since)
    if not told and not treated and since > -inf:
        return record.changed(lows=all_lows)  # nothing was eaten since then
    against = [meal for meal in told if _treats_a_low(meal, record)]
    ids = {meal.id for meal in against}
    eaten = [
        Noted(
            id=meal.id,
            at=meal.at,
            message=meal.message,
            entry=Treatment(text=meal.entry.text, taken_at=when(meal)),
        )
        for meal in against
    ]
    return record.changed(
        lows=all_lows,
        meals=(
            *_before(record.meals, since),
            *(meal for meal in told if meal.id not in ids),
        ),
        treatments=(*_before(record.treatments, since), *sorted((*treated, *eaten), key=_PLACE)),
    )


def _treats_a_low(meal: Noted[Meal], record: Record) -> bool:
    foods = meal.entry.foods
    if not foods or any(food.kind not in SUGARS for food in foods):
        return False
    place = bisect_right(record.readings, meal.seconds, key=_SECONDS)
    last = record.readings[place - 1] if place else None
    if last is None or last.message == meal.message:
        return False
    low = is_low(last.entry, record.participant.limits)
    return low and when(meal) - when(last) <= TREATMENT_WINDOW
