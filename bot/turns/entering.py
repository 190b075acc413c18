"""What was understood becomes events: joined to what was just told, mended, or taken back.

Each function returns facts: what happened, for the reply. No sentence is made here.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TypeVar

from bot.entries import (
    Activity,
    Correction,
    Food,
    Meal,
    Moment,
    Reading,
    Removal,
    Request,
    Said,
    Skip,
    Strips,
    Symptom,
)
from bot.planning.prompts import may_raise
from bot.record import Body, Event, Noted, Record, Retracted, Spoke, Wondered, Wrote
from bot.turns.notebook import Notebook
from bot.units import to_mg_dl

T = TypeVar("T", Reading, Meal)

#: What follows within this time adds to the meal just told.
BURST = timedelta(minutes=2)
#: A meal's name or `eating` alone moves the start of a meal told at most this long ago.
MOVES = timedelta(minutes=60)
#: A meal named as over belongs to one begun this long ago.
OVER_FROM, OVER_TO = timedelta(minutes=60), timedelta(minutes=180)


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """An entry that was kept as it came."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Joined:
    """A meal that added to, moved, or named an earlier one; `id` is the meal as it is now."""

    id: int
    how: str  # added, moved, over


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended:
    """A correction: the event as it was and as it is."""

    old: Body
    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenBack:
    """A removal, and what it removed."""

    bodies: tuple[Body, ...]


@dataclass(frozen=True, slots=True)
class NothingToMend:
    """A correction that fits nothing."""


@dataclass(frozen=True, slots=True)
class WhichOne:
    """A correction that fits two readings of one message."""


Fact = Told | Joined | Mended | TakenBack | NothingToMend | WhichOne


def enter(
    book: Notebook, entries: Iterable[Said], *, text: str, photo: str | None = None
) -> tuple[Fact, ...]:
    """Add events for what was understood, in the order of the text."""
    entries = tuple(entries)
    facts: list[Fact] = []
    for entry in entries:
        match entry:
            case Meal():
                facts.append(_meal(book, entry, text=text, photo=photo, beside=entries))
            case Reading():
                facts.append(Told(id=book.note(_timed(book, entry, entries))))
            case Correction():
                facts.append(_correct(book, entry, text))
            case Removal():
                facts.append(_take_back(book))
            case Activity() | Skip() | Symptom() | Strips() | Request():
                facts.append(Told(id=book.note(entry)))
    return tuple(facts)


def _timed(book: Notebook, reading: Reading, beside: tuple[Said, ...]) -> Reading:
    """Give a before-reading without a time the start of the meal it was told with."""
    if reading.taken_at is not None or reading.moment is not Moment.BEFORE_MEAL:
        return reading
    meals = [entry for entry in beside if isinstance(entry, Meal)]
    start = meals[0].started_at if meals else None
    if meals and start is None:
        over = _begun_before(book.record, book.at)
        start = over.entry.started_at if over else None
    if start is None:
        return reading
    return replace(reading, taken_at=start)


def _begun_before(record: Record, at: datetime) -> Noted[Meal] | None:
    """The latest meal begun one to three hours before."""
    for meal in reversed(record.meals):
        start = meal.entry.started_at
        if start is not None and OVER_FROM <= at - start <= OVER_TO:
            return meal
    return None


def _meal(
    book: Notebook, meal: Meal, *, text: str, photo: str | None, beside: tuple[Said, ...]
) -> Fact:
    if photo is not None:
        meal = replace(meal, photo=photo)
    if meal.started_at is None:
        return _over(book, meal)
    last = _last_told(book.record, book.at)
    if last is not None and not any(isinstance(entry, Reading) for entry in beside):
        moved = _moves(book, meal, last)
        if moved is not None:
            return moved
        if not meal.text and meal.name is None:
            return Told(id=book.note(meal))
        added = _adds(book, meal, last, text)
        if added is not None:
            return added
    id_ = book.note(meal)
    _claim_bare_reading(book)
    return Told(id=id_)


def _last_told(record: Record, at: datetime) -> Noted[Meal] | None:
    told = [meal for meal in record.meals if meal.entry.started_at is not None and meal.at <= at]
    return max(told, key=lambda meal: (meal.at, meal.id), default=None)


def _over(book: Notebook, meal: Meal) -> Fact:
    """Join a meal named as over to the one begun one to three hours before."""
    begun = _begun_before(book.record, book.at)
    if begun is None:
        return Told(id=book.note(meal))
    if begun.entry.text or not meal.text:
        return Joined(id=begun.id, how="over")
    return Joined(id=book.mend(begun.id, text=meal.text, foods=meal.foods), how="over")


def _moves(book: Notebook, meal: Meal, last: Noted[Meal]) -> Fact | None:
    """A name alone, or `eating`, moves the start of the meal that was reported just before."""
    names_fit = meal.name is None or last.entry.name in (None, meal.name)
    recent = timedelta(0) <= book.at - last.at <= MOVES
    if meal.text or not recent or not names_fit or not _has_before(book.record, last):
        return None
    name = last.entry.name or meal.name
    return Joined(id=book.mend(last.id, started_at=meal.started_at, name=name), how="moved")


def _has_before(record: Record, meal: Noted[Meal]) -> bool:
    start = meal.entry.started_at
    return start is not None and any(
        reading.entry.moment in (Moment.BEFORE_MEAL, Moment.FASTING, Moment.UNSTATED)
        and reading.entry.taken_at is not None
        and -timedelta(minutes=10) <= start - reading.entry.taken_at <= timedelta(minutes=60)
        for reading in record.readings
    )


def _adds(book: Notebook, meal: Meal, last: Noted[Meal], text: str) -> Fact | None:
    """What is told within two minutes adds to the meal; food names a meal told without any."""
    since = book.at - last.at
    starts_now = meal.started_at == book.at
    unnamed = not last.entry.text and timedelta(0) <= since <= MOVES and starts_now
    if not unnamed and not (timedelta(0) <= since <= BURST and starts_now and meal.text):
        return None
    if not may_raise(last) and not unnamed:
        return None
    changes = {
        "text": joined_dishes(last.entry.text, meal.text, text),
        "foods": (*last.entry.foods, *meal.foods),
        "name": last.entry.name or meal.name,
        "photo": last.entry.photo or meal.photo,
    }
    return Joined(id=book.mend(last.id, **changes), how="added")


#: Words with which a message goes on with the one before, and how they join.
GOES_ON = {"and": "and", "&": "and", "+": "and", "with": "with", "y": "y", "con": "con"}


def joined_dishes(first: str, second: str, typed: str) -> str:
    """The dishes of two messages as one text: `rice` and `and beans` are `rice and beans`."""
    if not first or not second:
        return first or second
    opening = typed.split(maxsplit=1)[0].casefold() if typed.split() else ""
    return f"{first} {GOES_ON[opening]} {second}" if opening in GOES_ON else f"{first}, {second}"


def _claim_bare_reading(book: Notebook) -> None:
    """A number told in the two minutes before belongs to this report: it is the one before."""
    for reading in reversed(book.before.readings):
        if not timedelta(0) <= book.at - reading.at <= BURST:
            return
        if reading.entry.moment is Moment.UNSTATED:
            book.mend(reading.id, moment=Moment.BEFORE_MEAL)
            _close_questions(book, "moment")
            return


def _close_questions(book: Notebook, topic: str) -> None:
    book.retract(*(noted.id for noted in book.before.wondered if noted.entry.topic == topic))


def _correct(book: Notebook, correction: Correction, typed: str) -> Fact:
    record = book.record
    if correction.value is not None:
        return _correct_value(book, record, correction)
    if correction.moment is not None:
        reading = _newest(record.readings)
        if reading is None:
            return NothingToMend()
        return Mended(old=reading.entry, id=book.mend(reading.id, moment=correction.moment))
    meal = _newest(record.meals)
    if correction.at is not None:
        return _correct_start(book, record, correction.at)
    if meal is None:
        return NothingToMend()
    new, foods = _dish_mended(meal.entry, correction, typed)
    return Mended(old=meal.entry, id=book.mend(meal.id, text=new, foods=foods))


def _dish_mended(meal: Meal, correction: Correction, typed: str) -> tuple[str, tuple[Food, ...]]:
    """`not rice, bread` said of `rice and beans` gives `bread and beans`."""
    new = correction.text or ""
    named = [food for food in meal.foods if f"not {food.text}".casefold() in typed.casefold()]
    if not named or named[0].text not in meal.text:
        return new, correction.foods
    wrong = named[0]
    foods = (*(food for food in meal.foods if food != wrong), *correction.foods)
    return meal.text.replace(wrong.text, new, 1), foods


def _correct_value(book: Notebook, record: Record, correction: Correction) -> Fact:
    told = sorted(record.readings, key=lambda noted: (noted.at, noted.id), reverse=True)
    if correction.replaces is not None:
        fitting = [noted for noted in told[:20] if noted.entry.value == correction.replaces]
    else:
        fitting = [noted for noted in told if noted.message == told[0].message] if told else []
        if len(fitting) > 1:
            return WhichOne()
    if not fitting:
        return NothingToMend()
    old = fitting[0]
    unit = correction.unit or old.entry.unit
    value = Reading(
        value=correction.value,
        unit=unit,
        mg_dl=None if correction.value is None else to_mg_dl(correction.value, unit),
        moment=old.entry.moment,
        taken_at=old.entry.taken_at,
    )
    return Mended(old=old.entry, id=book.supersede(old.id, value))


def _correct_start(book: Notebook, record: Record, at: datetime) -> Fact:
    """`I ate at 1`: the newest meal began then, and so was a before-reading told without a time."""
    meal = _newest(record.meals)
    if meal is None:
        return NothingToMend()
    for reading in record.readings:
        entry = reading.entry
        waits = entry.taken_at is None and entry.moment is Moment.BEFORE_MEAL
        if waits and reading.message == meal.message:
            book.mend(reading.id, taken_at=at)
    return Mended(old=meal.entry, id=book.mend(meal.id, started_at=at))


def _newest(notes: tuple[Noted[T], ...]) -> Noted[T] | None:
    """The one told last."""
    return max(notes, key=lambda noted: (noted.at, noted.id), default=None)


def _take_back(book: Notebook) -> Fact:
    """Take back everything that the last message with an entry brought."""
    standing = _standing(book)
    last = next((event.message for event in reversed(standing) if _is_entry(event.body)), None)
    if last is None:
        return TakenBack(bodies=())
    events = [event for event in standing if event.message == last]
    book.retract(*(event.root for event in events))
    return TakenBack(bodies=tuple(event.body for event in events if _is_entry(event.body)))


def _standing(book: Notebook) -> list[Event]:
    """What people told and still stands, each as it is now, in the order of the messages."""
    latest: dict[int, Event] = {}
    for event in book.old:
        if isinstance(event.body, Retracted):
            for id_ in event.body.ids:
                latest.pop(id_, None)
        elif event.message is not None and not isinstance(event.body, Spoke | Wondered | Wrote):
            latest[event.root] = event
    return sorted(latest.values(), key=lambda event: (event.at, event.root))


def _is_entry(body: Body) -> bool:
    return isinstance(body, Reading | Meal | Activity | Symptom | Skip | Strips)


def retract_message(book: Notebook, message: str) -> tuple[Body, ...]:
    """Take back what a message entered, before its edited text is read anew; gives what it was."""
    events = [event for event in _standing(book) if event.message == message]
    questions = [noted.id for noted in book.before.wondered if noted.message == message]
    book.retract(*(event.root for event in events), *questions)
    return tuple(event.body for event in events)
