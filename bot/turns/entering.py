"""What was understood becomes events, joined to what was told just before."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta

from bot.entries import (
    Activity,
    Correction,
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
from bot.record import Noted, Record
from bot.turns.facts import Fact, Joined, Told
from bot.turns.mending import correct, take_back
from bot.turns.notebook import Notebook

#: What follows within this time adds to the meal just told.
BURST = timedelta(minutes=2)
#: A meal's name or `eating` alone moves the start of a meal told at most this long ago.
MOVES = timedelta(minutes=60)
#: A meal named as over belongs to one begun this long ago.
OVER_FROM, OVER_TO = timedelta(minutes=60), timedelta(minutes=180)


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
                facts.append(correct(book, entry, text))
            case Removal():
                facts.append(take_back(book))
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
    readings = [entry for entry in beside if isinstance(entry, Reading)]
    if last is not None and _is_on_the_plate(book, meal, last, readings):
        changes = {"text": meal.text, "foods": meal.foods, "started_at": meal.started_at}
        return Joined(id=book.mend(last.id, **changes), how="added")
    if last is not None and not readings:
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


def _is_on_the_plate(
    book: Notebook, meal: Meal, last: Noted[Meal], readings: list[Reading]
) -> bool:
    """`lunch now`, and then `121, rice`: the dish of that meal, which begins only now."""
    asked_for = not last.entry.text and timedelta(0) <= book.at - last.at <= MOVES
    names_fit = meal.name is None or last.entry.name in (None, meal.name)
    before = any(reading.moment is Moment.BEFORE_MEAL for reading in readings)
    return asked_for and names_fit and before and meal.started_at == book.at and bool(meal.text)


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
