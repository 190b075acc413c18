"""An educator's words: which wish, which participant, which hours, which numbers."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import time

from bot.educator.educator import Educator, Hours
from bot.participants import Participant
from bot.words.educator import EducatorSentences, Wish

#: So much of an id must be told to mean a participant.
ID_PART = 3

_CLOCK = re.compile(r"(?<![\d:])(\d{1,2})(?:[:.h](\d{2}))?\s*(am|pm)?(?![\d:])", re.IGNORECASE)
_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
_RANGE = re.compile(r"\s*(?:-|–|\bto\b|\ba\b)\s*", re.IGNORECASE)
_WORD = re.compile(r"[^\W\d_]+|[-–]")


@dataclass(frozen=True, slots=True)
class Wished:
    """A wish and what was written after its words."""

    wish: Wish
    rest: str


def plain(text: str) -> str:
    """Small letters, single spaces, straight quotes, no full stop."""
    return " ".join(text.casefold().replace("\u2019", "'").strip(" .!¡¿").split())


def wished(text: str, say: EducatorSentences) -> Wished | None:
    """The wish that a text begins with, the longest words first; None if it is none."""
    words = " ".join(text.replace("\u2019", "'").split())
    folded = words.casefold()
    phrases = sorted(
        ((phrase, wish) for wish, told in say.wishes.items() for phrase in told),
        key=lambda one: -len(one[0]),
    )
    for phrase, wish in phrases:
        if _begins(folded, phrase):
            return Wished(wish, words[len(phrase) :].strip(" :,"))
    return None


def named(
    text: str, own: Sequence[Participant], educator: Educator
) -> tuple[tuple[Participant, ...], str]:
    """The participants whom the beginning of a text may mean, and what follows.

    By label, name or id as a whole, the longest first; else by the first part of an id; else by
    words of a label or name, as many as are told.
    """
    folded = text.casefold()
    found = [
        (len(name), person)
        for person in own
        for name in (educator.label(person.id), person.name, person.id)
        if name and _begins(folded, name.casefold())
    ]
    if found:
        longest = max(length for length, _ in found)
        people = {person.id: person for length, person in found if length == longest}
        return tuple(people.values()), text[longest:].strip(" :,")
    first = text.split(" ", maxsplit=1)[0].strip(":,").casefold()
    rest = text[len(first) :].strip(" :,")
    by_id = tuple(one for one in own if one.id.casefold().startswith(first))
    if by_id and len(first) >= ID_PART:
        return by_id, rest
    return _by_words(text, own, educator) or ((), rest)


def _by_words(
    text: str, own: Sequence[Participant], educator: Educator
) -> tuple[tuple[Participant, ...], str] | None:
    """Whom the first words of a text name in part: `Ana` is Ana Maria Lopez."""
    words = text.split()
    best: dict[str, int] = {}
    for person in own:
        name = educator.label(person.id) or person.name or ""
        best[person.id] = _words_of(name, words)
    most = max(best.values(), default=0)
    if not most:
        return None
    people = tuple(person for person in own if best[person.id] == most)
    return people, " ".join(words[most:]).strip(" :,")


def _words_of(name: str, words: Sequence[str]) -> int:
    """How many of the first words are words of a name, each once; a colon or comma ends it."""
    parts = name.casefold().split()
    for told, word in enumerate(words):
        if word.strip(":,?").casefold() not in parts or (told and words[told - 1][-1] in ":,"):
            return told
        parts.remove(word.strip(":,?").casefold())
    return len(words)


def _begins(text: str, name: str) -> bool:
    return text.startswith(name) and not text[len(name) : len(name) + 1].isalnum()


def numbers(text: str) -> tuple[float, ...]:
    """Every number of a text; a decimal comma is a decimal point."""
    return tuple(float(found.replace(",", ".")) for found in _NUMBER.findall(text))


def page_of(text: str) -> int:
    """The page that was asked for; the first unless told."""
    told = [int(number) for number in numbers(text)]
    return told[0] if told else 1


def hours_of(text: str, say: EducatorSentences, usual: Hours) -> Hours | None:
    """Days and two clock times; days that are not told stay as they were. None if unclear."""
    clocks = list(_CLOCK.finditer(text))
    if len(clocks) != 2:
        return None
    starts, ends = (_clock(found) for found in clocks)
    if starts is None or ends is None:
        return None
    days = _days(text[: clocks[0].start()] + " " + text[clocks[1].end() :], say)
    try:
        return Hours(days=days or usual.days, starts=starts, ends=ends)
    except ValueError:
        return None


def _clock(found: re.Match[str]) -> time | None:
    hour, minute = int(found.group(1)), int(found.group(2) or 0)
    half = (found.group(3) or "").casefold()
    if half and not 1 <= hour <= 12:
        return None
    if half:
        hour = hour % 12 + (12 if half == "pm" else 0)
    try:
        return time(hour, minute)
    except ValueError:
        return None


def _days(text: str, say: EducatorSentences) -> frozenset[int]:
    """Days named one by one, or from one to another across a dash, `to` or `a`."""
    days: set[int] = set()
    last: int | None = None
    spans = False
    for word in _WORD.findall(_RANGE.sub(" - ", text).casefold()):
        if word in "-–":
            spans = last is not None
            continue
        told = next(
            (of for name, of in say.day_names.items() if word.startswith(name)),
            None,
        )
        if told is None:
            continue
        if spans and last is not None and len(told) == 1:
            days |= {(last + step) % 7 for step in range((told[0] - last) % 7 + 1)}
        days |= set(told)
        last, spans = told[-1], False
    return frozenset(days)
