"""On which day and at what time the week is told, as a participant wishes it:
`summary on Friday at 9:00`.

The whole message has to be about it, word by word: a report or a question that only names a chart
and a day changes nothing.
"""

import re
from dataclasses import replace
from datetime import datetime, time
from unicodedata import combining, normalize

from bot.entries import Request, What
from bot.glucose.week import digest_instants
from bot.localtime import in_zone
from bot.participants import WEEKDAYS, Participant, State
from bot.planning.quiet import after_quiet
from bot.planning.weekly import SETTING
from bot.turns.notebook import Notebook
from bot.turns.questions import Answered, plainly
from bot.words.amounts import clock
from bot.words.language import Language

#: `9:30`, `7 pm`, `7.30pm`; a bare hour only behind a word such as `at`.
TIME = re.compile(
    r"(?<!\S)(?:(?P<at>at|a las?) )?(?P<hour>\d{1,2})(?:[:.](?P<minute>\d\d))?"
    r"(?: ?(?P<half>[ap])\.? ?m)?(?=$|[\s,.])"
)
#: A weekday's name is known by its beginning, so long at least: `fri`, `vier`.
SHORTEST = 3


def week_wish(text: str, book: Notebook, words: Language) -> Answered | None:
    """Change the day or the time; None if the message is about something else."""
    plain = _plain(text)
    found = TIME.search(plain)
    at = None if found is None else _time(found)
    rest = plain if found is None else f"{plain[: found.start()]} {plain[found.end() :]}"
    told = re.findall(r"[^\s,.]+", rest)
    days = {day for word in told if (day := _weekday(word, words)) is not None}
    say = words.wishes
    others = {word for word in told if _weekday(word, words) is None}
    if not others & say.week_words or not others <= say.week_words | set(say.week_fillers.split()):
        return None
    if len(days) > 1 or (found is not None and at is None) or not (days or at):
        return None
    person = book.person
    week_ends = WEEKDAYS[days.pop()] if days else person.week_ends
    book.person = replace(person, week_ends=week_ends, digest_at=at or person.digest_at)
    value = f"{week_ends} {book.person.digest_at:%H:%M}"
    book.note(Request(what=What.SETTINGS, setting=SETTING, setting_value=value))
    return Answered(lines=_lines(book.person, book.at, words))


def _lines(person: Participant, now: datetime, words: Language) -> tuple[str, ...]:
    day = words.replies.weekdays[WEEKDAYS.index(person.week_ends)]
    said = words.wishes.week_set.format(day=day, at=f"{person.digest_at:%H:%M}")
    if person.state is not State.ACTIVE:
        return (said,)
    coming = after_quiet(person, next(digest_instants(person, now)))
    local = in_zone(coming, person.zone)
    return said, words.wishes.week_next.format(date=f"{local:%Y-%m-%d}", at=clock(local))


def _time(found: re.Match[str]) -> time | None:
    hour, minute, half = int(found["hour"]), int(found["minute"] or 0), found["half"]
    if not (found["at"] or found["minute"] or half):
        return None
    if half:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if half == "p" else 0)
    return time(hour, minute) if hour < 24 and minute < 60 else None


def _weekday(word: str, words: Language) -> int | None:
    """The number of a weekday's name, in one or many, whole or shortened."""
    one = word.removesuffix("s")
    if len(one) < SHORTEST:
        return None
    names = [_plain(name).removesuffix("s") for name in words.replies.weekdays]
    return next((index for index, name in enumerate(names) if name.startswith(one)), None)


def _plain(text: str) -> str:
    """Without case and accents, since telephones make them hard to type."""
    parted = normalize("NFD", plainly(text))
    return "".join(letter for letter in parted if not combining(letter))
