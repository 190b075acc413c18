"""What did the body do, for how long, and is it over?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from bot.parser.durations import NUMBER, duration, minutes_of
from bot.parser.languages import gathered, lexica, phrases_of
from bot.parser.lexicon import either
from bot.parser.page import Page, pattern
from bot.parser.phrases import Phrases
from bot.parser.vocabulary.activities import WORK


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
def _phrases(language: str) -> Phrases[bool]:
    lists = []
    for lexicon in lexica(language):
        lists.append((phrases_of(language, lexicon, lexicon.activities), True))
        lists.append((phrases_of(language, lexicon, lexicon.underway), False))
    return Phrases(lists)


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
            over = over and to_come.isdisjoint({index, index - 1, index - 2})
            found.append(Doing(start=index, end=end, over=over))
            index = end
    return found


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


#: Said of food as often as of work: no activity by themselves (`smoked fish 20 min`).
_COOKED = frozenset(
    "smoked fried grilled stewed mashed stuffed braised sauteed curried dried salted iced minced "
    "whipped glazed candied spiced pickled toasted poached scrambled buttered sliced diced crusted "
    "battered breaded sweetened flavoured flavored mixed cured canned tinned refried loaded roast".split()
)


def unlisted(
    page: Page, found: list[Doing], measured: list[Measure], food_at: set[int]
) -> list[Doing]:
    """Something done for a while that is in no list: a verb of the past with a length of time."""
    for index, token in enumerate(page.tokens):
        word = token.word
        past = (word.endswith("ed") and len(word) > 4) or word in WORK
        if not past or not page.free(index) or word in _AT_REST | _COOKED:
            continue
        beside = [m for m in measured if m.minutes is not None and 0 < m.start - index <= 7]
        between = range(index, beside[0].start) if beside else range(0)
        if not between or not _BREAKS.isdisjoint(page.words(index, beside[0].start)):
            continue
        if word in WORK or food_at.isdisjoint(between):
            return [Doing(start=index, end=index + 1)]
    return []


_BREAKS = frozenset(", . ; before after then antes despues ate had".split())


def objects(page: Page, doing: Doing, measured: list[Measure]) -> range:
    """What is worked on, between the work and its length (`hoed the maize 40 min`)."""
    for measure in measured:
        gap = range(doing.start, measure.start)
        if measure.minutes is not None and 0 < measure.start - doing.end <= 6:
            return gap if _BREAKS.isdisjoint(page.words(doing.end, measure.start)) else range(0)
    return range(0)


def measures(page: Page, language: str) -> list[Measure]:
    """Give lengths of time and distances among the unclaimed words, in order, unclaimed."""
    patterns = _patterns(language)
    found = [
        Measure(start=span.start, end=span.end, minutes=minutes_of(span.match))
        for span in page.find(patterns.long)
    ]
    taken = {index for measure in found for index in range(measure.start, measure.end)}
    found += [
        Measure(start=span.start, end=span.end, minutes=None)
        for span in page.find(patterns.far)
        if not taken & set(range(span.start, span.end))
    ]
    return sorted(found, key=lambda measure: measure.start)


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
def _step_words(language: str) -> frozenset[str]:
    return frozenset(gathered(language, "steps"))


def steps(page: Page, measure: Measure, language: str) -> bool:
    """Whether a count is one of steps or the like: an activity by itself."""
    return page.tokens[measure.end - 1].word in _step_words(language)
