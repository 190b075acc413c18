"""Which work did the body do, on what? `peeled potatoes 30 min`, `stacked 2 cords of wood`.

A verb of work takes its object with it, food and numbers among it: none of that is eaten, and no
number of it is a reading. `activity` knows what has a name of its own (`yoga`, `went for a walk`).
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_left
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from itertools import islice

from bot.parser.activity import Doing, Measure, measures, whole_days
from bot.parser.languages import gathered
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Page, pattern
from bot.parser.phrases import spelled
from bot.parser.strangers import Kind, Stranger
from bot.parser.vocabulary.work import FIELD, GAMES_OR_FOOD, SEATED, TOIL, WORK

_NEVER_WORKED = frozenset(
    "high low late short errands pill pills meds tablet tablets myself hands feet hair face teeth meter finger fingers lancet "
    "glucometer strip strips nails plate plates brow insulin dose carbs diet sugar sugars meal meals "
    "breakfast lunch dinner supper".split()
)
_PARTICLES = frozenset("up out off down".split())
#: Behind a verb of work without a length they leave it a saying (`dug into a curry`).
_PLACED = frozenset("in into on at".split())
#: Up to this many words between the work and its length (`sold fish at the big market`).
WORKED_ON = 7
_JOINT = frozenset(", of for in de por en".split())
_LATER = frozenset("ago after later back before earlier since post following".split())
_STOPS = frozenset(", . ; ! ? ( ) > : then and after before".split())


def found(page: Page, language: str) -> list[Doing]:
    """Work with its length behind it (`pounded yam for 30 min`) or before it (`2 hours picking
    coffee`), work that needs none (`planted potatoes`), and what was done or played for a while."""
    if not page.holds(_BEGIN):
        return []
    lengths = measures(page, language)
    works = [
        *_with_lengths(page, sorted([*lengths, *whole_days(page)], key=lambda each: each.start)),
        *_said_done(page, lengths),
        *_toil(page, language, lengths),
    ]
    works.sort(key=lambda doing: (doing.start, -doing.end))
    apart: list[Doing] = []
    for doing in works:
        if not apart or doing.start >= apart[-1].end:
            apart.append(doing)
    return apart


def _with_lengths(page: Page, lengths: list[Measure]) -> Iterator[Doing]:
    places = [i for i, token in enumerate(page.tokens) if _work_at(page, i, token.word)]
    for measure in lengths if places else ():
        behind = page.tokens[measure.end].word if measure.end < len(page.tokens) else ""
        if behind in _LATER:
            continue
        place = bisect_left(places, measure.start)
        first = bisect_left(places, measure.start - WORKED_ON - 1)
        before = next((at for at in places[first:place] if _on_things(page, at, measure)), None)
        if before is not None:
            joint = page.tokens[measure.start - 1].word in _JOINT
            yield Doing(start=before, end=measure.start - joint)
        elif place < len(places) and places[place] - measure.end <= 1 and measure.minutes:
            start = places[place]
            if page.tokens[start].word.endswith("ing"):
                yield Doing(start=start, end=_object_end(page, start + 1))


def _work_at(page: Page, index: int, word: str) -> bool:
    if not page.free(index):
        return False
    return word in WORK or (word in GAMES_OR_FOOD and _opens(page, index))


def _on_things(page: Page, index: int, measure: Measure) -> bool:
    """Whether nothing parts the work at `index` from its length."""
    words = page.words(index + 1, measure.start)
    behind = page.words(measure.end, measure.end + 1)
    if len(words) > 1 and words[-1] == "," and not any(word.isalpha() for word in behind):
        words.pop()  # `washed both cars, 40 min`
    counted = any(word[0].isdigit() for word in words)
    if page.tokens[index].word in _DID and SEATED.intersection(words):
        return False
    idle = (_NEVER_WORKED | _PARTICLES).intersection(words[:1])
    return not counted and not _STOPS & set(words) and not idle


def _object_end(page: Page, index: int) -> int:
    """Where the thing worked on ends: at a mark, a number, or a word that begins something else."""
    last = min(index + 4, len(page.tokens))
    while index < last and page.tokens[index].word.isalpha() and page.free(index):
        if page.tokens[index].word in _STOPS:
            break
        index += 1
    return index


_DID = frozenset(
    "did played practised practiced practicing playing attended joined danced hice hicimos jugue jugamos practique baile".split()
)
#: With none of these nothing was worked.
_BEGIN = WORK | TOIL | FIELD | GAMES_OR_FOOD | _DID


def _said_done(page: Page, lengths: list[Measure]) -> Iterator[Doing]:
    """`did tabata 20 min`, `played shinty for an hour`: whatever it is, unless it is done sitting."""
    for index, token in enumerate(page.tokens) if lengths else ():
        if token.word not in _DID or not page.free(index) or not _opens(page, index):
            continue
        for measure in lengths:
            between = page.words(index + 1, measure.start)
            behind = page.words(measure.end, measure.end + 1)
            if (
                measure.minutes is not None
                and 0 < len(between) <= _NAME
                and all(word.isalpha() for word in between)
                and not (_STOPS | SEATED) & set(between)
                and not _LATER & set(behind)
            ):
                joint = between[-1] in {"for", "por", "about"} and len(between) > 1
                yield Doing(start=index, end=measure.start - joint)
                break


_NAME = 5


def _toil(page: Page, language: str, lengths: list[Measure]) -> Iterator[Doing]:
    """Work of the body that says by itself that it was done (`mended the roof`)."""
    measured = {measure.start for measure in lengths if measure.minutes is not None}
    for index, token in enumerate(page.tokens):
        word, ahead = token.word, page.words(index + 1, index + 4)
        if not (word in FIELD or (word in TOIL and _one_or_many(ahead))) or not page.free(index):
            continue
        idle = bool(
            (_PLACED | _PARTICLES).intersection(ahead[:1]) or _NEVER_WORKED.intersection(ahead)
        )
        if _opens(page, index) and not idle:
            end = _counted_object(page, index + 1, language, measured)
            if end > index + 1:
                yield Doing(start=index, end=end)


_ONE = frozenset(
    "the my our his her their all both two three four five six some half every each el la los las mi".split()
)


def _one_or_many(ahead: list[str]) -> bool:
    """Whether an object begins that is this one thing, or so many."""
    return bool(ahead) and (ahead[0] in _ONE or ahead[0].isdigit())


#: Before a verb they leave it what was done, and by whom.
_SUBJECTS = frozenset(
    "i ive we weve just have also already then and finally today she he shes hes they so now we've "
    "been ok done hi hello yes yeah me us dem nosotros yo ya hoy y ayer yesterday morning".split()
)


def _opens(page: Page, index: int) -> bool:
    """Whether what stands there begins a clause, a subject before it at most."""
    word = page.tokens[index - 1].word if index else ""
    return not word[:1].isalnum() or word in _SUBJECTS


_OBJECT = 8


def _counted_object(page: Page, index: int, language: str, measured: set[int]) -> int:
    """Where the object ends: it may count what was worked on (`shore 60 sheep`)."""
    ends = _ends(language)
    last = min(index + _OBJECT, len(page.tokens))
    while index < last and page.free(index) and index not in measured:
        word = page.tokens[index].word
        if word.isdigit():
            thing = page.words(index + 1, index + 2)
            if len(word) > _DIGITS or not thing or not thing[0].isalpha() or thing[0] in ends:
                break
        elif not word.isalpha() or word in ends or _timed(page, index):
            break
        index += 1
    return index


_DIGITS = 3


def _timed(page: Page, index: int) -> bool:
    """`milked the goats at 6`."""
    at, hour = page.words(index, index + 1), page.words(index + 1, index + 2)
    return at in _AT and bool(hour) and hour[0][0].isdigit()


_AT = (["at"], ["around"], ["about"], ["by"])


@cache
def _ends(language: str) -> frozenset[str]:
    """Words that begin something else than the object of work."""
    groups = ("glucose", "minutes", "hours", "before", "after", "done", "half_hour")
    words = (word for name in groups for word in gathered(language, name))
    said = frozenset(token for phrase in words for token in spelled(phrase))
    return (said - _WITHIN_OBJECT) | _STOPS | _ELSE


_WITHIN_OBJECT = frozenset("a an the of my in on to over blood half test number level".split())
_ELSE = frozenset(
    "i im ive is was am are now it its but so for from until till today yesterday this all mg mmol "
    "feeling feel felt had ate having eating while with then she he they we y luego hoy ya".split()
)


def joined(listed: list[Doing], worked: list[Doing]) -> list[Doing]:
    """The activities of the lists and the work: what overlaps is one (`line dancing for 1 hr`)."""
    both: list[Doing] = []
    at = 0
    for work in worked:
        while at < len(listed) and listed[at].end <= work.start:
            both.append(listed[at])
            at += 1
        met = []
        for one in islice(listed, at, None):
            if one.start >= work.end:
                break
            met.append(one)
        at += len(met)
        if any(not one.over for one in met):
            both += met
        else:
            start = min([work.start, *(one.start for one in met)])
            both.append(replace(work, start=start, end=max([work.end, *(o.end for o in met)])))
    return both + listed[at:]


_AT_REST = frozenset(
    "waited watched rested relaxed napped talked called stayed texted tested checked finished started "
    "dreamed missed skipped needed wanted used baked boiled simmered microwaved fasted cooked turned "
    "listened prayed snored delayed fried roasted heated soaked steamed stopped closed "
    "opened arrived passed changed tried asked noticed worried forgot calmed cooled lasted".split()
)


def unlisted(
    page: Page, measured: list[Measure], food_at: set[int], language: str, *, done: bool
) -> list[Doing]:
    """Something done for a while that is in no list: a word in `-ed` with a length of time, or one
    that no list knows right before it where it is said to be done (`frobbing 30 minutes done`)."""
    for measure in measured if done else ():
        place = page.words(measure.end, measure.end + 3)
        within = len(place) == _PLACE and place[0] in _IN and place[1] in _THE
        if measure.minutes and within and is_strange(place[2], no_slips(language)):
            return [Doing(start=measure.end, end=measure.end + _PLACE)]
        before = measure.start - 1
        word = page.tokens[before].word if before >= 0 and measure.minutes is not None else ""
        if word and page.free(before) and is_strange(word, no_slips(language)):
            return [Doing(start=before, end=measure.start)]
    for index, token in enumerate(page.tokens):
        word = token.word
        if not (word.endswith("ed") and len(word) > 4 and page.free(index)) or word in _AT_REST:
            continue
        beside = [m for m in measured if m.minutes is not None and 0 < m.start - index <= 6]
        between = beside and set(page.words(index, beside[0].start))
        if (
            between
            and not between & ({",", ".", ";"} | SEATED)
            and not food_at & set(range(index, beside[0].start))
        ):
            return [Doing(start=index, end=index + 1)]
    return []


#: `40 min in the paddy done`.
_PLACE, _IN, _THE = 3, frozenset({"in", "on", "at"}), frozenset({"the", "my", "our"})
_TIMES = r"(?:times|x|reps|rounds|sets|goes|each(?: (?:side|leg|arm|way|foot|hand))?|per (?:side|leg|arm)|veces|repeticiones|series|holes|games|lengths|laps|malas)"
_COUNT = pattern(
    rf"(?:about |around |like )?(?:\d{{1,2}} (?:x|sets of|series de|rounds of) \d{{1,3}}(?: {_TIMES})?|\d{{1,4}} {_TIMES}(?: (?:each|per) [a-z]+)?|x \d{{1,3}}(?: {_TIMES})?|to the \d{{1,2}} (?:st|nd|rd|th) floor)"
)


def counts(page: Page, listed: list[Doing]) -> list[tuple[int, int]]:
    """How often one of the activities was done, right behind it or before it (`heel raises 3x10`,
    `3 sets of 10 squats`)."""
    if not page.numbers:
        return []
    spans = [(span.start, span.end) for span in page.find(_COUNT)]
    return [
        (start, end)
        for start, end in spans
        if any(end == doing.start or _goes_on(page, doing.end, start) for doing in listed)
    ]


def _goes_on(page: Page, end: int, start: int) -> bool:
    """Whether a few words alone stand between (`leg lifts in bed 20 each side`)."""
    between = page.words(end, start)
    return 0 <= start - end <= WHERE and all(
        word.isalpha() and word not in _STOPS for word in between
    )


#: Up to this many words between an activity and how often it was done.
WHERE = 3


def own_numbers(page: Page, strange: list[Stranger], own: set[int]) -> list[Stranger]:
    """The strangers without those that `own`, the words of what was done, counts: they are given
    back to it (`shore 60 sheep`)."""
    kept = []
    for stranger in strange:
        if stranger.kind is Kind.ODD and own.issuperset(range(stranger.start, stranger.end)):
            page.release(stranger.start, stranger.end)
        else:
            kept.append(stranger)
    return kept
