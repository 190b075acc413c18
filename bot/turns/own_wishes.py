"""What a participant wishes in words that are no report: fasting days, prompts for a shared phone,
how many strips are left, on which day the week is told.

Read after the reader and after the open questions: a number or a meal always comes first.
"""

import re
from dataclasses import replace
from functools import cache

from bot.entries import Reading, Understood
from bot.localtime import local_date
from bot.participants import Participant
from bot.record import Wondered
from bot.turns.notebook import Notebook
from bot.turns.questions import FAST_WAITS, Answered, plainly
from bot.turns.strips import strips_left_words
from bot.turns.week_wishes import week_wish
from bot.words.asks import days_words
from bot.words.language import Language


def wish(text: str, understood: Understood, book: Notebook, words: Language) -> Answered | None:
    """Carry out a wish; None if the message tells none."""
    if any(isinstance(entry, Reading) for entry in understood.entries):
        return None
    say, plain = words.wishes, plainly(text)
    if plain in say.discreet_words | say.normal_words:
        discreet = plain in say.discreet_words
        book.person = replace(book.person, discreet=discreet)
        return Answered(lines=(say.discreet_begins if discreet else say.discreet_ends,))
    if (told := week_wish(text, book, words)) is not None:
        return told
    if _holds(plain, say.strips_words):
        return Answered(lines=(strips_left_words(book.record, book.at, words),))
    if _holds(plain, say.fast_end_words):
        return _end_fast(book, words)
    return _fast(book, words) if _holds(plain, say.fast_words) else None


def _fast(book: Notebook, words: Language) -> Answered:
    """Fasting is for the care team to agree to: what they have agreed to, or that it is asked."""
    person, say = book.person, words.wishes
    if person.fast_from and person.fast_to and person.fast_to >= local_date(book.at, person.zone):
        return Answered(lines=(days_words(person.fast_from, person.fast_to, say.fast_stands),))
    if person.educator is None:
        return Answered(lines=(say.fast_ask,))
    book.note(Wondered(topic=FAST_WAITS))
    return Answered(lines=(say.fast_asked if _tells(person) else say.fast_ask,))


def _end_fast(book: Notebook, words: Language) -> Answered:
    person, say = book.person, words.wishes
    if person.fast_to is None or person.fast_to < local_date(book.at, person.zone):
        return Answered(lines=(say.fast_none,))
    book.person = replace(person, fast_from=None, fast_to=None)
    return Answered(lines=(say.fast_over,))


def _tells(person: Participant) -> bool:
    return person.educator is not None and person.tell_educator


def _holds(text: str, phrases: tuple[str, ...]) -> bool:
    """Whether one of the phrases stands in the text as whole words."""
    return _any_of(phrases).search(text) is not None


@cache  # two for each language
def _any_of(phrases: tuple[str, ...]) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, phrases))})(?!\w)")
