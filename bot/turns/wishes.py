"""Answers to what the bot asks of its own accord: to go on, to test less often, how one feels."""

from dataclasses import replace

from bot.entries import Answer, Request, Understood, What
from bot.participants import State
from bot.programme.testing import SETTING, Rhythm
from bot.record import Wondered
from bot.turns.notebook import Notebook
from bot.turns.questions import HUNGER, LOWS, TIREDNESS, Answered, Question, plainly
from bot.words.language import Language


def erase(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`yes` to deleting everything; anything else leaves it."""
    book.retract(question.id)
    if plainly(text) in words.requests.erase_yes:
        return Answered(lines=(words.requests.erased,), erase=True)
    if plainly(text) in words.enrolling.no:
        return Answered(lines=(words.requests.not_erased,))
    return None


def how(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`less`, `the same`, `more`; hunger first, then tiredness."""
    told = words.requests.how.get(plainly(text))
    if told is None:
        return None
    about = question.entry.topic or HUNGER
    book.retract(question.id)
    book.note(Answer(about=about, how=told))
    if about == HUNGER:
        book.note(Wondered(topic=TIREDNESS))
        return Answered(lines=(words.requests.tiredness,), buttons=words.requests.how_buttons)
    return Answered(lines=(words.requests.answered,))


def go_on(
    text: str, understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`every day`, `once a week` or `not at all`, after days of silence."""
    every_day, weekly, never = (plainly(button) for button in words.prompts.go_on_buttons)
    plain = plainly(text)
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


def rhythm(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """`yes` or `no` to testing less often, or more."""
    say, plain = words.programme, plainly(text)
    if plain in words.enrolling.yes:
        wanted = Rhythm(question.entry.about or Rhythm.DAILY)
        _set_rhythm(book, wanted)
        line = say.rhythm_set.format(rhythm=say.rhythms[wanted])
    elif plain in words.enrolling.no:
        # Said anew, so that the pairs so far speak for no further proposal.
        _set_rhythm(book, Rhythm(book.person.rhythm))
        line = say.rhythm_kept
    else:
        return None
    book.retract(question.id)
    return Answered(lines=(line,))


def risk(
    text: str, _understood: Understood, question: Question, book: Notebook, words: Language
) -> Answered | None:
    """Whether glucose may go too low, or ketones are possible."""
    plain = plainly(text)
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
