"""What was said is put right or taken back.

A value put right is a new event, with cautions of its own. A moment, a start or a dish put right
stays the event it was. What is taken back leaves no trace in the figures.
"""

from datetime import datetime, timedelta
from typing import TypeVar

from bot.entries import (
    Activity,
    Ask,
    Asked,
    Correction,
    Food,
    Meal,
    Moment,
    Reading,
    Skip,
    Strips,
    Symptom,
)
from bot.record import Body, Event, Noted, Record, Retracted, Spoke, Wondered, Wrote
from bot.turns.facts import Fact, Mended, NothingToMend, TakenBack, Told, WhichOne
from bot.turns.notebook import Notebook
from bot.units import to_mg_dl

T = TypeVar("T", Reading, Meal)


def correct(book: Notebook, correction: Correction, typed: str) -> Fact:
    """Put right what the correction names: a value, a moment, a start or a dish."""
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
    doubted = _doubted(book, correction)
    if doubted is not None:
        return doubted
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


#: How long a value that was asked about can still be put right.
DOUBTED_FOR = timedelta(minutes=60)


def _doubted(book: Notebook, correction: Correction) -> Fact | None:
    """`sorry 7.1` after `71`, which was asked about: it takes the place of the doubted value."""
    if correction.replaces is not None or correction.value is None:
        return None
    record = book.before
    told_last = max((reading.at for reading in record.readings), default=None)
    for question in reversed(record.wondered):
        if question.entry.ask not in (Ask.UNIT, Ask.VALUE):
            continue
        stale = book.at - question.at > DOUBTED_FOR
        if stale or (told_last is not None and told_last > question.at):
            return None
        unit = correction.unit or book.person.unit
        doubt = question.entry.doubt
        first = doubt.readings[0] if doubt is not None and doubt.readings else None
        asked = question.entry.asked
        moment = first.moment if first else Moment(asked) if asked in MOMENTS else Moment.UNSTATED
        book.retract(question.id)
        reading = Reading(
            value=correction.value,
            unit=unit,
            mg_dl=to_mg_dl(correction.value, unit),
            moment=moment,
            taken_at=first.taken_at if first else question.at,
        )
        return Told(id=book.note(reading))
    return None


#: Questions of the bot that name the moment of their answer.
MOMENTS = frozenset({Asked.BEFORE_MEAL, Asked.AFTER_MEAL, Asked.AFTER_ACTIVITY, Asked.RECHECK})


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


def take_back(book: Notebook) -> Fact:
    """Take back everything that the last message with an entry brought."""
    standing = _standing(book)
    last = next((event.message for event in reversed(standing) if is_entry(event.body)), None)
    if last is None:
        return TakenBack(bodies=())
    events = [event for event in standing if event.message == last]
    book.retract(*(event.root for event in events))
    return TakenBack(bodies=tuple(event.body for event in events if is_entry(event.body)))


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


def is_entry(body: Body) -> bool:
    """Tell whether it is something told of the body or the meter, not a wish or the bot's own."""
    return isinstance(body, Reading | Meal | Activity | Symptom | Skip | Strips)


def retract_message(book: Notebook, message: str) -> tuple[Body, ...]:
    """Take back what a message entered, before its edited text is read anew; gives what it was."""
    events = [event for event in _standing(book) if event.message == message]
    questions = [noted.id for noted in book.before.wondered if noted.message == message]
    book.retract(*(event.root for event in events), *questions)
    return tuple(event.body for event in events)
