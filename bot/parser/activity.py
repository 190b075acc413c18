"""What did the body do, for how long, and is it over?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from bisect import bisect_left
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache
from itertools import islice

from bot.parser.durations import NUMBER, duration, minutes_of, one_range
from bot.parser.languages import LEXICA, gathered, of_all
from bot.parser.lexicon import either
from bot.parser.page import Page, Span, pattern
from bot.parser.phrases import Phrases
from bot.parser.vocabulary.activities import (
    NOT_ACTIVITY_PHRASES,
    NOT_ACTIVITY_PHRASES_SPANISH,
    WORK,
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
    long: re.Pattern[str]
    far: re.Pattern[str]
    done: re.Pattern[str]
    about_to: re.Pattern[str]


@cache
def _patterns(language: str) -> _Patterns:
    far = either(gathered(language, "distances"), gathered(language, "steps"))
    about = r"(?:(?:about|around|for|almost|nearly|over|like|por|durante|unos|unas|casi) ){0,2}"
    return _Patterns(
        long=pattern(f"{about}(?:a )?{duration(language)}(?: long| of| de)?"),
        far=pattern(
            f"{NUMBER} (?:more |brisk )?{far}|(?:a|1) (?:mile|km|half marathon)|half a mile"
        ),
        done=pattern(either(gathered(language, "done"))),
        about_to=pattern(either(gathered(language, "about_to"))),
    )


@cache
def _named(code: str) -> Phrases[bool]:
    return Phrases([(LEXICA[code].activities, True), (LEXICA[code].underway, False)])


@cache
def _phrases(language: str) -> Phrases[bool]:
    return of_all(language, _named)


def find(page: Page, language: str) -> list[Doing]:
    """Give the activities named, in order. Nothing is claimed yet: they may be inside a moment."""
    phrases = _phrases(language)
    found: list[Doing] = []
    to_come = _to_come(page, language)
    index = 0
    while index < len(page.tokens):
        hit = phrases.longest(page, index, len(page.tokens))
        if hit is None:
            index += 1
        else:
            end, over = hit
            over = over and not any(
                at in to_come and not any(word[0].isdigit() for word in page.words(at, index))
                for at in (index, index - 1, index - 2)
            )
            found.append(Doing(start=index, end=end, over=over))
            index = end
    return found


@cache
def _none() -> Phrases[bool]:
    return Phrases([(NOT_ACTIVITY_PHRASES, True), (NOT_ACTIVITY_PHRASES_SPANISH, True)])


def without_idioms(page: Page, doings: list[Doing]) -> list[Doing]:
    """Leave out what only sounds like an activity (`ran out`)."""
    idioms, taken = _none(), set[int]()
    for index in range(len(page.tokens)):
        if (hit := idioms.longest(page, index, len(page.tokens))) is not None:
            taken.update(range(index, hit[0]))
    return [doing for doing in doings if not taken & set(range(doing.start, doing.end))]


_GOING_ON = ("ing", "ando", "iendo")


def unfinished(page: Page, doing: Doing) -> bool:
    """Whether the words alone leave open if it is over (`gardening`, `in the garden`)."""
    words = page.words(doing.start, doing.end)
    return words[0] in {"in", "at", "on", "en"} or (
        words[0].endswith(_GOING_ON)
        and page.words(max(doing.start - 1, 0), doing.start) != ["been"]
    )


_AT_REST = frozenset(
    "waited watched rested relaxed napped talked called stayed texted tested checked finished started "
    "dreamed missed skipped needed wanted used baked boiled simmered microwaved fasted cooked turned "
    "played cards listened prayed snored delayed fried roasted heated soaked steamed stopped closed "
    "opened arrived passed changed tried asked noticed worried forgot calmed cooled lasted".split()
) - {"played", "cards"}


def unlisted(
    page: Page, found: list[Doing], measured: list[Measure], food_at: set[int]
) -> list[Doing]:
    """Something done for a while that is in no list: a word in `-ed` with a length of time."""
    for index, token in enumerate(page.tokens):
        word = token.word
        if not (word.endswith("ed") and len(word) > 4 and page.free(index)) or word in _AT_REST:
            continue
        beside = [m for m in measured if m.minutes is not None and 0 < m.start - index <= 6]
        between = beside and set(page.words(index, beside[0].start))
        if (
            between
            and not between & {",", ".", ";"}
            and not food_at & set(range(index, beside[0].start))
        ):
            return [Doing(start=index, end=index + 1)]
    return []


_NEVER_WORKED = frozenset("up out off myself hands feet hair face teeth".split())
#: Up to this many words between the work and its length (`sold fish at the big market`).
_WORKED_ON = 7
_LATER = frozenset("ago after later back before earlier since post following".split())
_STOPS = frozenset(", . ; ! ? ( ) > : then and after before".split())


def worked(page: Page, language: str) -> list[Doing]:
    """Work on food or on any other thing, with its length behind it (`peeled potatoes 30 min`) or
    before it (`2 hours picking coffee`)."""
    places = [i for i, token in enumerate(page.tokens) if token.word in WORK and page.free(i)]
    if not places:
        return []
    found = []
    for measure in measures(page, language):
        behind = page.tokens[measure.end].word if measure.end < len(page.tokens) else ""
        if behind in _LATER:
            continue
        place = bisect_left(places, measure.start)
        first = bisect_left(places, measure.start - _WORKED_ON - 1)
        before = next((at for at in places[first:place] if _on_things(page, at, measure)), None)
        if before is not None:
            joint = page.tokens[measure.start - 1].word in {",", "of", "for", "de", "por"}
            found.append(Doing(start=before, end=measure.start - joint))
            continue
        if place < len(places) and places[place] - measure.end <= 1 and measure.minutes is not None:
            first = places[place]
            if page.tokens[first].word.endswith("ing"):
                found.append(Doing(start=first, end=_object_end(page, first + 1)))
    return found


def _on_things(page: Page, index: int, measure: Measure) -> bool:
    """Whether nothing parts the work at `index` from its length."""
    words = page.words(index + 1, measure.start)
    behind = page.words(measure.end, measure.end + 1)
    if len(words) > 1 and words[-1] == "," and not any(word.isalpha() for word in behind):
        words.pop()  # `washed both cars, 40 min`
    counted = any(word[0].isdigit() for word in words)
    return not counted and not _STOPS & set(words) and not _NEVER_WORKED & set(words[:1])


def _object_end(page: Page, index: int) -> int:
    """Where the thing worked on ends: at a mark, a number, or a word that begins something else."""
    last = min(index + 4, len(page.tokens))
    while index < last and page.tokens[index].word.isalpha() and page.free(index):
        if page.tokens[index].word in _STOPS:
            break
        index += 1
    return index


def joined(listed: list[Doing], worked: list[Doing]) -> list[Doing]:
    """The activities of the lists and the work: what overlaps is one (`line dancing for 1 hr`)."""
    found: list[Doing] = []
    at = 0
    for work in worked:
        while at < len(listed) and listed[at].end <= work.start:
            found.append(listed[at])
            at += 1
        met = []
        for one in islice(listed, at, None):
            if one.start >= work.end:
                break
            met.append(one)
        at += len(met)
        if any(not one.over for one in met):
            found += met
        else:
            found.append(replace(work, start=min([work.start, *(one.start for one in met)])))
    return found + listed[at:]


def measures(page: Page, language: str) -> list[Measure]:
    """Give lengths of time and distances among the unclaimed words, in order, unclaimed."""
    patterns = _patterns(language)
    found = [
        Measure(start=_long_from(page, span), end=span.end, minutes=minutes_of(span.match))
        for span in page.find(patterns.long)
    ]
    taken = {index for measure in found for index in range(measure.start, measure.end)}
    found += [
        Measure(start=span.start, end=span.end, minutes=None)
        for span in page.find(patterns.far)
        if not taken & set(range(span.start, span.end))
    ]
    return sorted(found, key=lambda measure: measure.start)


def _long_from(page: Page, span: Span) -> int:
    """Where a length begins: a number before it that is no lower end of it is a value of its own
    (`229 - 25 min walk`, `6.4 - 20 min walk`)."""
    if one_range(span.match):
        return span.start
    return span.start + page.words(span.start, span.end).index(span["low"] or "") + 2


def said_done(page: Page, language: str) -> bool:
    """Whether the words say that something is finished."""
    return page.first(_patterns(language).done) is not None


def _to_come(page: Page, language: str) -> set[int]:
    """Where the words end which say that what follows is still to come."""
    return {span.end for span in page.find(_patterns(language).about_to)}


def tokens_of(doings: Iterable[Doing]) -> set[int]:
    """The indices of their tokens."""
    return {index for doing in doings for index in range(doing.start, doing.end)}


@cache
def _counted(language: str) -> re.Pattern[str]:
    return re.compile(rf"(?:.* )?{NUMBER} (?:.* )?{either(gathered(language, 'steps'))}")


def steps(page: Page, measure: Measure, language: str) -> bool:
    """Whether a count is one of steps or the like: an activity by itself."""
    words = " ".join(page.words(measure.start, measure.end))
    return _counted(language).fullmatch(words) is not None


_NEGATED = frozenset(
    "didnt dint not never couldnt cant cannot wont havent hasnt wasnt skipped missed without no ni "
    "tampoco".split()
)
#: Behind a denial they turn it round (`can't believe I walked 5 km`, `did not stop dancing`).
_TURNED = frozenset("believe stop mind forget only just wait help puedo".split())
_PARTED = frozenset(
    ", . ; ! ? : ( ) but so then and because cause instead pero asi porque y".split()
)
_DENIED_OVER = 6


def denied(page: Page, doing: Doing) -> bool:
    """`didn't make it to the gym`, `walk? no`: said not to have been done."""
    if page.words(doing.end, doing.end + 2) in (["?", "no"], ["?", "nope"], ["?", "nah"]):
        return True
    for index in range(doing.start - 1, max(doing.start - 1 - _DENIED_OVER, -1), -1):
        word = page.tokens[index].word
        if word in _PARTED | _TURNED:
            return False
        if word in _NEGATED and page.free(index):
            return True
    return False


_ALL_DAY = pattern(
    r"(?:all|the whole|most of the|much of the) (?:day|morning|afternoon|evening|night)(?: long)?"
    r"|toda la (?:manana|tarde|noche)|todo el dia"
)
_BARE_LENGTH = pattern(
    r"(?:for|por) (?:about |around |like |roughly |unos )?(?P<long>\d{1,3})"
    r"(?= (?:[.,;!)]|then |and |bg |bs |sugar |now |$))"
)
_SHORTEST, _LONGEST = 5, 240


def claim_length_in_words(page: Page, doings: list[Doing]) -> None:
    """Claim `all morning` behind an activity: it tells how long, in no minutes."""
    for span in list(page.find(_ALL_DAY)) if doings else ():
        if any(0 <= span.start - doing.end <= _WORKED_ON for doing in doings):
            page.claim(span.start, span.end)


def bare_lengths(page: Page, doings: list[Doing]) -> list[Measure]:
    """`cleared snow for 20`: minutes, behind an activity."""
    found = []
    for span in page.find(_BARE_LENGTH) if doings else ():
        long = float(span["long"] or 0)
        near = any(0 <= span.start - doing.end <= _WORKED_ON for doing in doings)
        if near and _SHORTEST <= long <= _LONGEST:
            found.append(Measure(start=span.start, end=span.end, minutes=long))
    return found
