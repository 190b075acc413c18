"""The activities of a message: what is over, and what is still to come."""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: PLR0917 - a finding needs all of them
# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_left
from dataclasses import dataclass, field
from datetime import datetime
from functools import cache
from itertools import islice, takewhile

from bot.entries import Activity
from bot.parser import activity, distances, symptoms, work
from bot.parser.activity import Doing, Measure
from bot.parser.doings_joined import joined
from bot.parser.findings import Findings
from bot.parser.instants import When, resolved
from bot.parser.languages import gathered
from bot.parser.moments import Cue
from bot.parser.page import Page
from bot.parser.phrases import spelled
from bot.parser.values import Value

#: How many tokens apart an activity and its length may stand.
REACH = 20


@dataclass(slots=True, kw_only=True)
class Done:
    """An activity that is over: its words, and how long it was."""

    start: int
    end: int
    text: str
    minutes: float | None

    def entry(self, when: When | None, at: datetime) -> Activity:
        """The activity with its end."""
        ended = resolved(when, at) if when is not None else None
        minutes = self.minutes or (when.minutes if when is not None else None)
        return Activity(text=self.text, minutes=minutes, ended_at=ended or at)


@dataclass(slots=True, kw_only=True)
class Told:
    """What is over, and the words of what is not."""

    done: list[Done] = field(default_factory=list)
    under_way: str | None = None


@cache
def _edges(language: str) -> frozenset[str]:
    return frozenset(token for word in gathered(language, "active_lead") for token in spelled(word))


def told(page: Page, language: str, found: Findings) -> Told:
    """Put activities together and claim their words."""
    result = Told()
    measures = list(found.measures)
    if found.under_way is not None:
        result.under_way = found.under_way
    doings = joined(page, found)
    named = {at for dish in found.dishes for at in range(dish.start, dish.end)}
    named |= activity.tokens_of(doings)
    named |= {at for value in found.values for at in range(value.start, value.end)}
    for doing in doings:
        if page.any_taken(doing.start, doing.end):
            continue
        near = _near(page, found, doing, measures)
        if not near and symptoms.befell(page, found.feelings, doing.start):
            page.claim(doing.start, doing.end)
            continue
        cue = _linked(found, doing)
        if cue is not None:  # `6000 steps today n 121 after walk`: the walk is the moment's
            near = [measure for measure in near if _beside(found, doing, measure)]
        if cue is not None and (not near or cue.moment is None):
            page.claim(doing.start, doing.end)
            continue
        if not near and activity.unfinished(page, doing) and not found.done:
            result.under_way = result.under_way or page.text(doing.start, doing.end)
            page.claim(doing.start, doing.end)
            continue
        for measure in near:
            measures.remove(measure)
        result.done.append(_done(page, language, found, doing, near, named))
    long = next((measure.minutes for measure in measures if measure.minutes is not None), None)
    for measure in distances.alone(page, language, measures):
        text = page.text(measure.start, measure.end)
        result.done.append(Done(start=measure.start, end=measure.end, text=text, minutes=long))
    result.done.sort(key=lambda done: done.start)
    return result


def _linked(found: Findings, doing: Doing) -> Cue | None:
    """The moment's words whose object the activity is (`after my walk`)."""
    for cue in found.cues:
        if cue.moved and 0 <= doing.start - cue.end <= 4:
            return cue
    return None


def _beside(found: Findings, doing: Doing, measure: Measure) -> bool:
    """Whether no value stands between an activity and a length."""
    between = range(min(doing.end, measure.end), max(doing.start, measure.start))
    return not any(value.start in between for value in found.values)


def _near(page: Page, found: Findings, doing: Doing, measures: list[Measure]) -> list[Measure]:
    """Lengths and distances that belong to an activity: in its clause, or right beside it."""
    clause = found.clauses[doing.start]
    near = []
    first = bisect_left(measures, doing.start - REACH, key=lambda measure: measure.start)
    for measure in takewhile(lambda m: m.start < doing.end + REACH, islice(measures, first, None)):
        rival = _nearest(found.doings, measure)
        if rival is not doing:
            continue
        same = found.clauses[measure.start] == clause
        gap = _gap(doing.start, doing.end, measure.start, measure.end)
        if same or gap <= 2 or _behind_comma(page, found, doing, measure):
            near.append(measure)
    return near


def _behind_comma(page: Page, found: Findings, doing: Doing, measure: Measure) -> bool:
    """`walked to church and back, 25 minutes`: a clause that is nothing but the length."""
    if not doing.end < measure.start <= doing.end + _TOLD:
        return False
    words = page.words(doing.end, measure.start)
    while words[-1:] and words[-1] in _ABOUT:
        words.pop()
    ahead = page.words(measure.end, measure.end + 1)
    ended = not ahead or not ahead[0][0].isalpha() or ahead[0] in _ABOUT
    told = range(doing.end, measure.start)
    other = any(dish.start in told for dish in found.dishes) or any(
        value.start in told for value in found.values
    )
    parted = words[-1:] in ([","], ["("], ["."]) and words.count(words[-1]) == 1
    return parted and (ended or ahead[0] in distances.OVER) and not other


#: Up to this many words tell where it went, before its length.
_TOLD = 10
_ABOUT = frozenset(
    "about around for took it me us taking total in all like maybe roughly como unos".split()
)


def _nearest(doings: list[Doing], measure: Measure) -> Doing:
    place = bisect_left(doings, measure.start, key=lambda doing: doing.start)
    return min(
        doings[max(place - 1, 0) : place + 1],
        key=lambda doing: _gap(doing.start, doing.end, measure.start, measure.end),
    )


def _gap(start: int, end: int, other_start: int, other_end: int) -> int:
    return max(other_start - end, start - other_end, 0)


_ON = frozenset(
    "to in around at with up along on through by into down for the from a al en por con hasta round "
    "across past near inside outside alrededor desde hacia dentro cerca".split()
)


def _done(
    page: Page, language: str, found: Findings, doing: Doing, near: list[Measure], named: set[int]
) -> Done:
    """The words around the activity, up to a mark or to what has another meaning."""
    counted = {i for m in near if m.minutes is None for i in range(m.start, m.end)}
    beside = [
        count
        for count in found.counts
        if 0 <= count[0] - doing.end <= work.WHERE or count[1] == doing.start
    ]
    counted = counted.union(*(range(*count) for count in beside))
    start = min([doing.start, *(count[0] for count in beside)])
    end = max([doing.end, *(count[1] for count in beside)])
    while page.free(start - 1) and _may_join(page, start - 1, named):
        start -= 1
    spans = []
    end = _forward(page, end, named)
    spans.append(_trimmed(page, language, start, end, doing, counted))
    behind = next((m for m in near if m.minutes is not None and m.start == end), None)
    if behind is not None and page.free(behind.end) and page.tokens[behind.end].word in _ON:
        last = _forward(page, behind.end, named)
        more = _trimmed(page, language, behind.end, last, doing, counted, keep_first=True)
        if more[1] - more[0] > 1:
            spans.append(more)
    for span in spans:
        page.claim(*span)
    minutes = [measure.minutes for measure in near if measure.minutes is not None]
    first = min([spans[0][0], *(measure.start for measure in near)])
    last = max([spans[-1][1], *(measure.end for measure in near)])
    text = " ".join(page.text(*span) for span in spans)
    return Done(start=first, end=last, text=text, minutes=sum(minutes) if minutes else None)


def _forward(page: Page, end: int, named: set[int]) -> int:
    begun = end
    while page.free(end) and _may_join(page, end, named):
        end += 1
    while end > begun and page.tokens[end - 1].word in _ON_TO_MORE:
        end -= 1  # `swam 20 lengths n no chest pain`
    return end


_ON_TO_MORE = frozenset({"and", "n", "y", "no", "sin", "but", "pero"})


_MARKS = frozenset(", . ; ! ? > ( ) : - +".split())


#: `walked to church and back`
_RETURNS = (["back"], ["home"], ["vuelta"], ["regreso"])


def _may_join(page: Page, index: int, named: set[int]) -> bool:
    word = page.tokens[index].word
    if word in {"and", "an", "y"} and page.words(index + 1, index + 2)[:1] in _RETURNS:
        return True
    if word in _MARKS or word in {
        "while",
        "whilst",
        "mientras",
        "and",
        "then",
        "y",
        "luego",
        "but",
        "pero",
        "so",
        "took",
    }:
        return False
    return index not in named


_ENDED = frozenset("finished done completed ended just back my our termine acabe acabo".split())
_ENDED_WITH = frozenset("with from the a de la el mi".split())


_KIND = 2


def _kind(page: Page, language: str, start: int, doing: Doing) -> int:
    """Where the words begin that tell what kind of activity it is (`waka ama training`): one or
    two that are none of the everyday ones, with nothing before them."""
    everyday = _everyday(language)
    said = page.words(start, doing.start)
    of_its_own = all(word.isalpha() and len(word) > 2 and word not in everyday for word in said)
    if len(said) <= _KIND and of_its_own and not activity.is_verb(page, doing):
        return start
    return doing.start


@cache
def _everyday(language: str) -> frozenset[str]:
    groups = ("filler", "others", "helped", "asides", "denials", "about_to")
    return frozenset(
        word for group in groups for said in gathered(language, group) for word in spelled(said)
    ) | _edges(language)


def _trimmed(
    page: Page,
    language: str,
    start: int,
    end: int,
    doing: Doing,
    counted: set[int],
    *,
    keep_first: bool = False,
) -> tuple[int, int]:
    edges = _edges(language)
    while not keep_first and start < min(end, doing.start) and start not in counted:
        if page.tokens[start].word not in edges:
            break
        start += 1
    if not keep_first and start < doing.start and start not in counted:
        kind = _kind(page, language, start, doing)
        start = min([kind, *(i for i in counted if start <= i < doing.start)])
    if not keep_first and start == doing.start and page.tokens[start].word in _ENDED:
        while start + 1 < doing.end and page.tokens[start].word in _ENDED | _ENDED_WITH:
            start += 1  # `finished my walk`
    while end > max(start, doing.start) + 1 and end - 1 not in counted:
        word = page.tokens[end - 1].word
        if word not in edges or (
            end <= doing.end and word not in distances.OVER and not keep_first
        ):
            break
        end -= 1
    return start, end


def perhaps_minutes(value: Value, activities: Told) -> bool:
    """`gym 45`: a round number right behind an activity may be its length."""
    if value.unit is not None or value.off_scale is not None or value.decimal:
        return False
    return (
        value.number % 5 == 0
        and 10 <= value.number <= 90
        and any(
            value.start in {done.end, done.start - 1} and done.minutes is None
            for done in activities.done
        )
    )
