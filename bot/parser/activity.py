"""What did the body do, for how long, and is it over?"""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache

from bot.parser.durations import NUMBER, any_unit, duration, minutes_of, one_range
from bot.parser.languages import LEXICA, gathered, of_all
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Span, pattern
from bot.parser.phrases import Phrases
from bot.parser.vocabulary.activities import (
    NOT_ACTIVITY_PHRASES,
    NOT_ACTIVITY_PHRASES_SPANISH,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Doing:
    """Words of an activity; `over` false if it is about to begin or under way."""

    start: int
    end: int
    over: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Measure:
    """A length of time (`minutes`) or a count or distance (None) beside an activity."""

    start: int
    end: int
    minutes: float | None


@dataclass(frozen=True, slots=True)
class _Patterns:
    long: Pattern
    far: Pattern
    done: Pattern
    about_to: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    far = either(gathered(language, "distances"), gathered(language, "steps"))
    counter = (
        r"(?:steps?|pasos) (?:(?:count|today|so far|:|=|-|is|was|total|hoy|de hoy) ){0,3}\d{4,6}"
    )
    near = "about bout abt around round roughly approx for fer almost nearly over like por durante"
    about = rf"(?:(?:{'|'.join(near.split())}|unos|unas|casi|como) ){{0,2}}"
    walks = r"(?:[a-z]+ )?(?:walks|strolls|runs|jogs|rides|swims|sessions|workouts|caminatas)"
    several = rf"(?=\d+ (?:- )?(?:mins?|minutes?|minutos?) (?:de )?{walks} )"
    bouts = rf"(?P<bouts>[2-9]) (?:x|times|sets of|lots of|rounds of) |(?P<some>[234]) {several}"
    return _Patterns(
        long=pattern(f"{about}(?:a |{bouts})?{duration(language)}(?: long| of| de)?"),
        far=pattern(
            f"{NUMBER} (?:more |brisk |k |thousand |mil )?{far}"
            f"|(?:a|1) (?:mile|km|half marathon)|half a mile|{counter}"
        ),
        done=pattern(either(gathered(language, "done"))),
        about_to=pattern(either(gathered(language, "about_to"))),
    )


@cache
def _named(code: str) -> Phrases[bool]:
    lexicon = LEXICA[code]
    over = [(lexicon.activities, True), (lexicon.rarer_activities, True)]
    return Phrases([*over, (lexicon.underway, False)])


@cache
def _phrases(language: str) -> Phrases[bool]:
    return of_all(language, _named)


def find(page: Page, language: str) -> list[Doing]:
    """Give the activities named, in order. Nothing is claimed yet: they may be inside a moment."""
    phrases = _phrases(language)
    heads = phrases.heads
    found: list[Doing] = []
    to_come = _to_come(page, language)
    index = 0
    while index < len(page.tokens):
        if page.tokens[index].word not in heads:
            index += 1
            continue
        hit = phrases.longest(page, index, len(page.tokens))
        if hit is None or (language == "en" and page.words(index, hit[0]) == ["a", "pie"]):
            index += 1  # `a pie` is on foot in Spanish alone
        else:
            end, over = hit
            past = page.tokens[index].word.endswith("ed")  # never `going to walked`
            over = over and (
                past
                or not any(
                    at in to_come and not _valued(page, at, index)
                    for at in range(index, max(index - _AHEAD, -1), -1)
                )
            )
            doing = Doing(start=index, end=end, over=over)
            found.append(replace(doing, over=over and not _planned(page, doing)))
            index = end
    return found


_PAST = frozenset(
    "ran swam went did took rode had got dug swept rowed been have walked done just back home cut "
    "made gave put set stood hit drew fed shore ive".split()
)


def is_past(page: Page, doing: Doing) -> bool:
    """Whether its first word says by its tense that it was done."""
    word = page.tokens[doing.start].word
    return word in _PAST or word.endswith("ed")


_PLANNED = re.compile(
    r"(?:(?:for|maybe|class|session|at|\d+|pm|las|a) ){0,4}"
    r"(?:tomorrow|later(?! in)|next week|(?:tonight|esta noche)(?! (?:for )?\d)"
    r"|(?:in|en) (?:about |like |unos |como )?(?:\d+|an?|half an|media|una?) ?"
    r"(?:mins?|minutes|minutos|hours?|hrs?|h|horas?|bit|rato)|in \d{1,2}(?= [,.;]|$))\b"
)
#: What is timed: `parkrun in 34 min`.
_RACES = frozenset("parkrun run race marathon k km mile miles laps lengths steps pasos".split())


def _planned(page: Page, doing: Doing) -> bool:
    """`gym tonight`, `a walk later`: a time to come right behind what it is called."""
    behind = " ".join(page.words(doing.end, doing.end + 6))
    if is_past(page, doing) or page.tokens[doing.end - 1].word in _RACES:
        return False
    return _PLANNED.match(behind) is not None


@cache
def _none() -> Phrases[bool]:
    return Phrases([(NOT_ACTIVITY_PHRASES, True), (NOT_ACTIVITY_PHRASES_SPANISH, True)])


def without_idioms(page: Page, doings: list[Doing]) -> list[Doing]:
    """Leave out what only sounds like an activity (`ran out`)."""
    idioms, taken = _none(), set[int]()
    if not doings or idioms.heads.isdisjoint(page.held):
        return doings
    for index in range(len(page.tokens)):
        if (hit := idioms.longest(page, index, len(page.tokens))) is not None:
            taken.update(range(index, hit[0]))
    return [doing for doing in doings if not taken & set(range(doing.start, doing.end))]


_GOING_ON = ("ing", "ando", "iendo")
_VERBS_END = ("ed", "ing", "ando", "iendo")
#: In `-ing`, and yet what was gone to rather than what is going on.
_LESSONS = frozenset({"training"})


def is_verb(page: Page, doing: Doing) -> bool:
    """Whether it begins with a verb, which no kind of activity stands before."""
    first = page.tokens[doing.start].word
    return first.endswith(_VERBS_END) and first not in _LESSONS


#: `en el jardin`, and the present tense (`camino 30 minutos`).
_NEEDS_LENGTH = frozenset("in at on en camino corro nado bailo troto".split())


_GONE_TO = frozenset("class session practice lesson training club rehearsal".split())


def unfinished(page: Page, doing: Doing) -> bool:
    """Whether the words alone leave open if it is over (`gardening`, `in the garden`)."""
    words = page.words(doing.start, doing.end)
    if words[-2:-1] in (["all"], ["whole"], ["for"]):
        return False  # `on my feet all day`
    if len(words) > 1 and words[-1] in _GONE_TO:
        return False  # `boxing class`
    return (
        words == ["spin"]
        or words[0] in _NEEDS_LENGTH
        or (
            words[0].endswith(_GOING_ON)
            and page.words(max(doing.start - 1, 0), doing.start) != ["been"]
        )
    )


#: One of these is in every length that has no number.
_UNCOUNTED = frozenset(
    "half hour hr hrs hours minute min mile km marathon couple quarter ½ media hora horita horitas "
    "horas minuto minutos cuarto par rato".split()
)


def measures(page: Page, language: str) -> list[Measure]:
    """Give lengths of time and distances among the unclaimed words, in order, unclaimed."""
    if not page.numbers and not page.holds(_UNCOUNTED):
        return []
    patterns = _patterns(language)
    found = [
        Measure(start=_long_from(page, span), end=span.end, minutes=_length(span))
        for span in (page.find(patterns.long) if any_unit(page, language) else ())
    ]
    taken = {index for measure in found for index in range(measure.start, measure.end)}
    found += [
        Measure(start=span.start, end=span.end, minutes=None)
        for span in page.find(patterns.far)
        if not taken & set(range(span.start, span.end))
    ]
    return sorted(found, key=lambda measure: measure.start)


def _length(span: Span) -> float:
    """Its minutes, all bouts together (`3 x 10 min walks`)."""
    return minutes_of(span.match) * int(span["bouts"] or span["some"] or 1)


def _long_from(page: Page, span: Span) -> int:
    """Where a length begins: a number before it that is no lower end of it is a value of its own
    (`229 - 25 min walk`, `6.4 - 20 min walk`)."""
    if one_range(span.match):
        return span.start
    return span.start + page.words(span.start, span.end).index(span["low"] or "") + 2


def clear_of(doings: list[Doing], lengths: list[Measure]) -> list[Doing]:
    """The activities without the lengths of time that their last words open (`chased the kids
    around for an hour`)."""
    starts = [measure.start for measure in lengths if measure.minutes is not None]
    clear = []
    for doing in doings:
        end = min([doing.end, *(at for at in starts if doing.start < at < doing.end)])
        clear.append(replace(doing, end=end))
    return clear


def said_done(page: Page, language: str) -> bool:
    """Whether the words say that something is finished."""
    return page.first(_patterns(language).done) is not None


def _valued(page: Page, start: int, end: int) -> bool:
    """Whether a number stands there that measures nothing (`i am at 109 walked`, not `going for a
    2 km walk`), or more than two words that measure nothing either."""
    words = page.words(start, end + 1)
    measured = {at + 1 for at, word in enumerate(words) if word[0].isdigit()}
    if any(words[at] not in _MEASURED for at in measured if at < len(words)):
        return True
    if not all(word[0].isalnum() or word == "-" for word in words):
        return True
    others = [at for at in range(len(words) - 1) if at not in measured and at + 1 not in measured]
    if "for" in page.words(end - 2, end) and not measured:
        return False  # `going to the pool for a swim`
    return len(others) > 2


#: Fewer words than this between `going for` and what is still to come (`a quick 30 min`).
_AHEAD = 6
_MEASURED = _UNCOUNTED | frozenset("mins minutes hours miles kms k km m lap laps - round".split())


def _to_come(page: Page, language: str) -> set[int]:
    """Where the words end which say that what follows is still to come."""
    return {span.end for span in page.find(_patterns(language).about_to)}


def tokens_of(doings: Sequence[Doing]) -> set[int]:
    """The indices of their tokens."""
    if not doings:
        return set()
    return {index for doing in doings for index in range(doing.start, doing.end)}


#: Up to this many words between an activity and its length.
_REACH = 7
_ALL_DAY = pattern(
    r"(?:all|the whole|most of the|much of the) (?:day|morning|afternoon|evening|night)(?: long)?"
    r"|toda la (?:manana|tarde|noche)|todo el dia"
)
_BARE_LENGTH = pattern(
    r"(?:for|por) (?:about |around |like |roughly |unos )?(?P<long>\d{1,3})"
    r"(?= (?:[.,;!)]|then |and |bg |bs |sugar |now |$))"
)
_SHORTEST, _LONGEST = 5, 240


def whole_days(page: Page) -> list[Measure]:
    """Lengths told in no minutes: `all morning`."""
    return [Measure(start=span.start, end=span.end, minutes=None) for span in page.find(_ALL_DAY)]


def claim_length_in_words(page: Page, doings: list[Doing]) -> None:
    """Claim `all morning` behind an activity: it tells how long, in no minutes."""
    for span in page.find(_ALL_DAY) if doings else ():
        if any(0 <= span.start - doing.end <= _REACH for doing in doings):
            page.claim(span.start, span.end)


def bare_lengths(page: Page, doings: list[Doing]) -> list[Measure]:
    """`cleared snow for 20`: minutes, behind an activity."""
    found = []
    for span in page.find(_BARE_LENGTH) if doings else ():
        long = float(span["long"] or 0)
        near = any(0 <= span.start - doing.end <= _REACH for doing in doings)
        if near and _SHORTEST <= long <= _LONGEST:
            found.append(Measure(start=span.start, end=span.end, minutes=long))
    return found


def of_oneself(page: Page, measure: Measure) -> bool:
    """`5.7 mi good`, in Jamaica: no miles."""
    unit, ahead = page.words(measure.end - 1, measure.end), page.words(measure.end, measure.end + 1)
    return unit == ["mi"] and not _HOW_ONE_IS.isdisjoint(ahead)


_HOW_ONE_IS = frozenset("good fine ok okay alright irie feel feeling deh well".split())
