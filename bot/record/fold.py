"""Events folded into a record of what stands now."""

from bisect import bisect_right
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Generic, TypeVar, cast

from bot.entries import (
    Activity,
    Answer,
    FoodKind,
    Meal,
    Moment,
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


@dataclass(frozen=True, slots=True, kw_only=True)
class Noted(Generic[T]):
    """An entry that stands, with the event it came from: `at` is when it was said."""

    id: int
    at: datetime
    message: str | None
    entry: T


@dataclass(frozen=True, slots=True, kw_only=True)
class Record:
    """Everything that stands for one participant; each kind in the order of its own instant.

    Readings are ordered by `taken_at` (where unknown, by when they were told), meals by
    `started_at` (likewise), activities by `ended_at`, the rest by when they were said.
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
    last_id: int = 0

    def said(self, key: str) -> bool:
        """Tell whether the bot has already said the thing with this key."""
        return any(spoken.entry.key == key for spoken in reversed(self.spoke))


def is_low(reading: Reading, limits: Limits) -> bool:
    """Below the participant's low limit in the unit as typed, or LO."""
    if reading.value is None:
        return reading.off_scale is OffScale.LOW
    return reading.value < limit_in(limits.low, reading.unit)


def fold(participant: Participant, events: Iterable[Event]) -> Record:
    """Fold events, in any order, into the record that stands."""
    ordered = sorted(events, key=lambda event: event.id)
    gone = {id_ for event in ordered if isinstance(event.body, Retracted) for id_ in event.body.ids}
    kept: dict[type, list[Event]] = {}
    for event in ordered:
        if event.id not in gone:
            kept.setdefault(type(event.body), []).append(event)
    readings = _notes(kept, Reading)
    meals, treatments = _part_treatments(
        _notes(kept, Meal), _notes(kept, Treatment), readings, participant.limits
    )
    return Record(
        participant=participant,
        readings=readings,
        meals=meals,
        treatments=treatments,
        activities=_notes(kept, Activity),
        symptoms=_notes(kept, Symptom),
        skips=_notes(kept, Skip),
        strips=_notes(kept, Strips),
        steps=_notes(kept, StepTaken),
        answers=_notes(kept, Answer),
        requests=_notes(kept, Request),
        wrote=_notes(kept, Wrote),
        spoke=_notes(kept, Spoke),
        wondered=_notes(kept, Wondered),
        last_id=ordered[-1].id if ordered else 0,
    )


def when(noted: Noted[T]) -> datetime:
    """The instant by which an entry is ordered: its own, or when it was told."""
    entry = noted.entry
    match entry:
        case Reading() | Treatment():
            own = entry.taken_at
        case Meal():
            own = entry.started_at
        case Activity():
            own = entry.ended_at
        case _:
            own = None
    return own or noted.at


def _notes(kinds: Mapping[type, list[Event]], kind: type[T]) -> tuple[Noted[T], ...]:
    notes = [
        Noted(id=event.id, at=event.at, message=event.message, entry=cast("T", event.body))
        for event in kinds.get(kind, ())
    ]
    notes.sort(key=lambda noted: (when(noted), noted.id))
    return tuple(notes)


def _part_treatments(
    meals: tuple[Noted[Meal], ...],
    told: tuple[Noted[Treatment], ...],
    readings: tuple[Noted[Reading], ...],
    limits: Limits,
) -> tuple[tuple[Noted[Meal], ...], tuple[Noted[Treatment], ...]]:
    """Take out of the meals what was eaten against a low.

    Worked out here and not when it is heard, so that a correction of the low turns the
    sugar back into a meal.
    """
    stays: list[Noted[Meal]] = []
    treatments = list(told)
    for meal in meals:
        if _treats_a_low(meal, readings, limits):
            treatment = Treatment(text=meal.entry.text, taken_at=when(meal))
            treatments.append(Noted(id=meal.id, at=meal.at, message=meal.message, entry=treatment))
        else:
            stays.append(meal)
    treatments.sort(key=lambda noted: (when(noted), noted.id))
    return tuple(stays), tuple(treatments)


def _treats_a_low(meal: Noted[Meal], readings: tuple[Noted[Reading], ...], limits: Limits) -> bool:
    foods = meal.entry.foods
    if not foods or any(food.kind not in SUGARS for food in foods):
        return False
    eaten = when(meal)
    earlier = bisect_right(readings, eaten, key=when)
    last = readings[earlier - 1] if earlier else None
    if last is None or last.message == meal.message or not is_low(last.entry, limits):
        return False
    return eaten - when(last) <= TREATMENT_WINDOW
