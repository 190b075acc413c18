"""Answers to the bot's own questions: a unit, yes, `before a meal`, `less`.

A fresh, complete report always wins over an open question; the caller sees to that. A question
is closed by retracting its event, so that it is answered once.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import timedelta

from bot.entries import (
    Activity,
    Answer,
    Ask,
    Correction,
    Meal,
    Moment,
    Reading,
    Request,
    Understood,
    What,
)
from bot.localtime import shifted
from bot.parser import read
from bot.participants import State
from bot.programme.testing import SETTING, Rhythm
from bot.record import Noted, Record, Wondered
from bot.turns.entering import Fact, Told, enter
from bot.turns.notebook import Notebook
from bot.units import Unit, plausible, to_mg_dl
from bot.words.language import Language

#: Topics of the conversation's own questions, and how long each stays open.
HUNGER, TIREDNESS, GO_ON, ERASE, FIRST_BITE, MOMENT, PLATE, RHYTHM, LOWS, KETONES = (
    "hunger",
    "tiredness",
    "go_on",
    "erase",
    "first_bite",
    "moment",
    "plate",
    "rhythm",
    "may_go_low",
    "ketone_risk",
)
OPEN: Mapping[str | None, timedelta] = {
    HUNGER: timedelta(days=6),
    TIREDNESS: timedelta(days=6),
    GO_ON: timedelta(days=30),
    ERASE: timedelta(minutes=60),
    FIRST_BITE: timedelta(hours=6),
    MOMENT: timedelta(hours=6),
    RHYTHM: timedelta(days=3),
    LOWS: timedelta(days=6),
    KETONES: timedelta(days=6),
    None: timedelta(minutes=60),
}

UNIT_WORDS = re.compile(
    r"^\W*(?:it'?s |it is |in |son |es )?(mmol(?:s|/l)?|mg(?:s|/dl|%)?)\W*$", re.I
)
DONE_WORDS = re.compile(
    r"^\W*(?:yes|yep|ok|done|all done|finished|i'?m done|i am done|just finished|back|i'?m back"
    r"|s[ií]|listo|lista|hecho|termin[eé]|ya(?: est[aá]| termin[eé])?)\b[\s,.!]*(?P<rest>.*)$",
    re.I | re.S,
)
MINUTES = re.compile(r"(\d{1,3})\s*(h(?:ours?|rs?)?\b|horas?|m(?:in(?:ute)?s?|inutos?)?\b)", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered:
    """What an answer brought about: facts for the reply, lines of its own, a settings change."""

    facts: tuple[Fact, ...] = ()
    lines: tuple[str, ...] = ()
    buttons: tuple[str, ...] = ()
    erase: bool = False
    ask: Ask | None = None


def open_questions(record: Record, book: Notebook) -> tuple[Noted[Wondered], ...]:
    """The questions that still wait for an answer, the newest first."""
    return tuple(
        noted
        for noted in reversed(record.wondered)
        if noted.at <= book.at < shifted(noted.at, OPEN.get(noted.entry.topic, OPEN[None]))
    )


def answer(text: str, understood: Understood, book: Notebook, words: Language) -> Answered | None:
    """Take a message as the answer to an open question; None if it is not one."""
    for question in open_questions(book.before, book):
        take = _TAKERS.get(question.entry.topic) or _BY_ASK.get(question.entry.ask)
        taken = take(text, understood, question, book, words) if take else None
        if taken is not None:
            return taken
    return None


def is_complete(understood: Understood) -> bool:
    """Whether a message is a report of its own, which wins over any open question."""
    return understood.ask is None and any(
        not isinstance(entry, Meal) or bool(entry.text)
        for entry in understood.entries
        if isinstance(entry, Reading | Meal | Activity | Correction)
    )


Question = Noted[Wondered]
Taker = Callable[[str, Understood, Question, Notebook, Language], Answered | None]


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("\u2019", "'").strip(" .!¡¿?").split())


def _unit(
    text: str, _understood: Understood, question: Question, book: Notebook, _words: Language
) -> Answered | None:
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


def _done(
    text: str, understood: Understood, question: Question, book: Notebook, _words: Language
) -> Answered | None:
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
        text=(doubt.activity if doubt else None) or "activity", minutes=minutes, ended_at=book.at
    )
    facts: tuple[Fact, ...] = (Told(id=book.note(activity)),)
    rest = [entry for entry in understood.entries if isinstance(entry, Reading)]
    told = [
        replace(entry, moment=Moment.AFTER_ACTIVITY) if entry.moment is Moment.UNSTATED else entry
        for entry in rest
    ]
    return Answered(facts=facts + enter(book, told, text=text))


def _meaning(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
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


def _moment(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
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
        if _plain(text) == _plain(words.replies.which_moment_buttons[-1]):
            book.retract(question.id)
            return Answered(lines=(words.requests.answered,))
        return None
    book.retract(question.id)
    meals = [entry for entry in again.entries if isinstance(entry, Meal) and entry.text]
    id_ = book.mend(reading.id, moment=told[0].moment)
    facts: tuple[Fact, ...] = (Told(id=id_),)
    return Answered(facts=facts + enter(book, meals, text=text))


def _first_bite(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    if any(isinstance(entry, Correction) and entry.at for entry in understood.entries):
        book.retract(question.id)
        return None
    again = read(f"I ate at {text}", at=book.at, unit=book.person.unit, language="en")
    moved = [entry for entry in again.entries if isinstance(entry, Correction) and entry.at]
    if not moved:
        return None
    book.retract(question.id)
    return Answered(facts=enter(book, moved, text=text))


def _erase(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    book.retract(question.id)
    if _plain(text) in words.requests.erase_yes:
        return Answered(lines=(words.requests.erased,), erase=True)
    if _plain(text) in words.enrolling.no:
        return Answered(lines=(words.requests.not_erased,))
    return None


def _how(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    how = words.requests.how.get(_plain(text))
    if how is None:
        return None
    about = question.entry.topic or HUNGER
    book.retract(question.id)
    book.note(Answer(about=about, how=how))
    if about == HUNGER:
        book.note(Wondered(topic=TIREDNESS))
        return Answered(lines=(words.requests.tiredness,), buttons=words.requests.how_buttons)
    return Answered(lines=(words.requests.answered,))


def _go_on(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    every_day, weekly, never = (_plain(button) for button in words.prompts.go_on_buttons)
    plain = _plain(text)
    if plain in (every_day, *words.enrolling.yes):
        _set_rhythm(book, Rhythm.DAILY)
        line = words.requests.go_on_yes
    elif plain == weekly:
        _set_rhythm(book, Rhythm.WEEKLY)
        line = words.requests.go_on_weekly
    elif plain in (never, *words.enrolling.no) and not understood.entries:
        book.person = replace(book.person, state=State.PAUSED)
        line = words.requests.go_on_no
    else:
        return None
    book.retract(question.id)
    return Answered(lines=(line,))


def _rhythm(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    say, plain = words.programme, _plain(text)
    if plain in words.enrolling.yes:
        rhythm = Rhythm(question.entry.about or Rhythm.DAILY)
        _set_rhythm(book, rhythm)
        line = say.rhythm_set.format(rhythm=say.rhythms[rhythm])
    elif plain in words.enrolling.no:
        line = say.rhythm_kept
    else:
        return None
    book.retract(question.id)
    return Answered(lines=(line,))


def _risk(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    plain = _plain(text)
    if plain in words.enrolling.yes:
        known = True
    elif plain in words.enrolling.no:
        known = False
    elif plain in words.enrolling.unknown:
        book.retract(question.id)
        return Answered(lines=(words.requests.risk_unknown,))
    else:
        return None
    book.retract(question.id)
    if question.entry.topic == LOWS:
        book.person = replace(book.person, may_go_low=known)
    else:
        book.person = replace(book.person, ketone_risk=known)
    return Answered(lines=(words.requests.risk_noted,))


def _set_rhythm(book: Notebook, rhythm: Rhythm) -> None:
    """Planning reads the participant's; the record keeps since when it holds."""
    book.person = replace(book.person, rhythm=rhythm.value)
    book.note(Request(what=What.SETTINGS, setting=SETTING, setting_value=rhythm.value))


_TAKERS: Mapping[str | None, Taker] = {
    MOMENT: _moment,
    FIRST_BITE: _first_bite,
    ERASE: _erase,
    HUNGER: _how,
    TIREDNESS: _how,
    GO_ON: _go_on,
    RHYTHM: _rhythm,
    LOWS: _risk,
    KETONES: _risk,
}
_BY_ASK: Mapping[Ask | None, Taker] = {
    Ask.UNIT: _unit,
    Ask.WHEN_DONE: _done,
    Ask.MEANING: _meaning,
}
