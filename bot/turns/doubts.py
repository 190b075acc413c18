"""Answers that complete a report: its unit, its moment, when it was, that an activity is over."""

import re
from dataclasses import replace
from datetime import timedelta

from bot.entries import Activity, Ask, Correction, Meal, Moment, Reading, Understood
from bot.parser import read
from bot.record import Noted
from bot.record.fold import when
from bot.turns.entering import enter
from bot.turns.facts import Fact, Told
from bot.turns.notebook import Notebook
from bot.turns.questions import Answered, Question, plainly
from bot.units import Unit, plausible, to_mg_dl
from bot.words.language import Language

UNIT_WORDS = re.compile(
    r"^\W*(?:it'?s |it is |in |son |es )?(mmol(?:s|/l)?|mg(?:s|/dl|%)?)\W*$", re.I
)
DONE_WORDS = re.compile(
    r"^\W*(?:yes|yep|ok|done|all done|finished|i'?m done|i am done|just finished|back|i'?m back"
    r"|s[ií]|listo|lista|hecho|termin[eé]|ya(?: est[aá]| termin[eé])?)\b[\s,.!]*(?P<rest>.*)$",
    re.I | re.S,
)
MINUTES = re.compile(r"(\d{1,3})\s*(h(?:ours?|rs?)?\b|horas?|m(?:in(?:ute)?s?|inutos?)?\b)", re.I)


def unit(
    text: str, _understood: Understood, question: Question, book: Notebook, _words: Language
) -> Answered | None:
    """`mmol`: the unit of the value that was asked about."""
    found = UNIT_WORDS.match(text)
    doubt = question.entry.doubt
    if found is None or doubt is None or not doubt.readings:
        return None
    unit = Unit.MMOL_L if found.group(1).casefold().startswith("mm") else Unit.MG_DL
    book.retract(question.id)
    readings = [_in_unit(reading, unit) for reading in doubt.readings]
    if not all(readings):
        return Answered(ask=Ask.VALUE)
    entries = [reading for reading in readings if reading is not None]
    return Answered(facts=enter(book, entries, text=text))


def _in_unit(reading: Reading, unit: Unit) -> Reading | None:
    if reading.value is None or not plausible(reading.value, unit):
        return None
    return replace(reading, unit=unit, mg_dl=to_mg_dl(reading.value, unit))


def done(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`done, 20 min`: the activity that was under way is over."""
    doubt = question.entry.doubt
    if any(isinstance(entry, Activity) for entry in understood.entries):
        book.retract(question.id)
        return None
    found = DONE_WORDS.match(text)
    length = MINUTES.search(text)
    if found is None and (length is None or understood.ask is None):
        return None
    minutes = None
    if length is not None:
        hours = length.group(2).casefold().startswith("h")
        minutes = float(length.group(1)) * (60 if hours else 1)
    book.retract(question.id)
    activity = Activity(
        text=(doubt.activity if doubt else None) or words.replies.some_activity,
        minutes=minutes,
        ended_at=book.at,
    )
    facts: tuple[Fact, ...] = (Told(id=book.note(activity)),)
    rest = [entry for entry in understood.entries if isinstance(entry, Reading)]
    told = [
        replace(entry, moment=Moment.AFTER_ACTIVITY) if entry.moment is Moment.UNSTATED else entry
        for entry in rest
    ]
    return Answered(facts=facts + enter(book, told, text=text))


def meaning(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """A moment for a number that could not be placed."""
    doubt = question.entry.doubt
    if doubt is None or len(doubt.numbers) != 1 or understood.ask is None:
        return None
    again = read(
        f"{doubt.numbers[0]:g} {text}",
        at=book.at,
        unit=book.person.unit,
        language=words.code,
    )
    readings = [entry for entry in again.entries if isinstance(entry, Reading)]
    if again.ask is not None or not readings or readings[0].moment is Moment.UNSTATED:
        return None
    book.retract(question.id)
    return Answered(facts=enter(book, again.entries, text=text))


def moment(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`before a meal`: what a bare reading was taken for."""
    readings = {noted.id: noted for noted in book.before.readings}
    waiting = [readings[id_] for id_ in question.entry.events if id_ in readings]
    if not waiting or any(isinstance(entry, Reading) for entry in understood.entries):
        return None
    reading = waiting[0]
    again = read(
        f"{reading.entry.value:g} {reading.entry.unit.value} {text}"
        if reading.entry.value is not None
        else text,
        at=book.at,
        unit=reading.entry.unit,
        language=words.code,
    )
    told = [entry for entry in again.entries if isinstance(entry, Reading)]
    if not told or told[0].moment is Moment.UNSTATED:
        if plainly(text) == plainly(words.replies.which_moment_buttons[-1]):
            book.retract(question.id)
            return Answered(lines=(words.requests.answered,))
        return None
    if _names_only_a_meal(understood) and book.at - question.at > GOES_WITH_IT:
        return None  # a meal that begins now says nothing of a test from long before
    if _names_only_a_meal(understood) and _ate_before(reading, book):
        say = words.replies
        return Answered(lines=(say.which_side,), buttons=say.which_moment_buttons)
    book.retract(question.id)
    meals = [entry for entry in again.entries if isinstance(entry, Meal) and entry.text]
    id_ = book.mend(reading.id, moment=told[0].moment)
    facts: tuple[Fact, ...] = (Told(id=id_),)
    return Answered(facts=facts + enter(book, meals, text=text))


#: What is told so soon after a number still goes with it.
GOES_WITH_IT = timedelta(minutes=10)
#: A meal begun so long before a reading may be the one that its test belongs to.
COULD_BE_AFTER = timedelta(minutes=60), timedelta(hours=6)


def _names_only_a_meal(understood: Understood) -> bool:
    """`lunch` tells which meal, and not on which side of it the test was."""
    meals = [entry for entry in understood.entries if isinstance(entry, Meal)]
    return bool(meals) and not any(meal.text for meal in meals)


def _ate_before(reading: Noted[Reading], book: Notebook) -> bool:
    least, most = COULD_BE_AFTER
    taken = when(reading)
    return any(
        meal.entry.started_at and least <= taken - meal.entry.started_at <= most
        for meal in book.before.meals
    )


def first_bite(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`at 1`: when the meal began that was told as over."""
    if any(isinstance(entry, Correction) and entry.at for entry in understood.entries):
        book.retract(question.id)
        return None
    moved = _bite_at(text.strip(), book, words)
    if moved is None:
        return None
    book.retract(question.id)
    return Answered(facts=enter(book, [moved], text=text))


def _bite_at(told: str, book: Notebook, words: Language) -> Correction | None:
    """A time told alone (`1`, `at 1`, `a la 1`), made into a report that the reader knows."""
    for begun in words.replies.ate:
        report = begun.format(at=told)
        again = read(report, at=book.at, unit=book.person.unit, language=words.code)
        for entry in again.entries:
            if isinstance(entry, Correction) and entry.at:
                return entry
    return None
