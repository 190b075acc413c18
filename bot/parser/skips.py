"""Is there no reading this time, and why? And how many strips are left?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache
from itertools import chain

from bot.entries import By, Skip
from bot.parser import food, refusals, whereabouts
from bot.parser.concepts import COUNTED, LENGTHS, Combination, Segment, combination, segments
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.moments import meal_names
from bot.parser.page import Page, Pattern, as_written


@dataclass(frozen=True, slots=True)
class _Patterns:
    skip: Pattern
    reason: Pattern
    soft: Pattern
    because: Pattern


_EDGE = r"(?:(?:thanks|thank you|sorry|ok|oh|well|no|so|but|i|just|ah|please|today|again|oops|,|perdon|hoy|ay|have to|and|y|hi|hello|um|it|then|i think i) )*"
_TAIL = r"(?: (?:perdon|, perdon|disculpa|disculpe|lo siento|muna|po|na|lang|lah|abeg|eh|ha|today|again|this time|now|sorry|for now|tonight|please|thanks|hoy|ahora|it|, sorry|, thanks|right now|lol|before|before lunch|to test|one|test))*"


@cache
def _patterns(language: str) -> _Patterns:
    skip, reason = either(gathered(language, "skip")), either(gathered(language, "skip_reason"))
    return _Patterns(
        skip=as_written(f"{_EDGE}(?P<skip>{skip}){_TAIL}"),
        reason=as_written(
            f"{_EDGE}(?P<reason>{reason}){_TAIL}(?: (?:till|until|til|hasta)(?: [a-z]+){{1,4}})?"
        ),
        soft=as_written(
            "{0}(?: {0})*(?: {1})*".format(
                either(gathered(language, "soft_no")), either(gathered(language, "whom"))
            )
        ),
        because=as_written(
            f"{_EDGE}(?P<skip>{skip})(?: (?:today|now|this time|hoy|ahora|this one|it|right now))?(?: (?:,|\\.|:|-|;|because|cause|cuz|bc|cos|since|as|porque|pues)| (?=(?:am|im|i am|at|in|on|still|got|too|was|were|stuck|estoy|the|my|hands|meter|battery|kit|out|busy|driving|no|he|she|we|hes|shes|its|theyre|ando|voy|vengo|estamos) ))+ ?(?P<why>.+)"
        ),
    )


#: `I forgot my insulin` is about the insulin.
_FORGOT_A_THING = re.compile(
    r"(?:[a-z,]+ ){0,3}(?:forgot|missed|skip|skipped|olvide) (?:the|my|no) "
)


def find(page: Page, language: str, *, asked: bool, by: By = By.SELF) -> Skip | None:
    """A message that is nothing but a skip. `asked` is whether a reading is asked for."""
    words = _words(page)
    if _off_the_scale(page):
        return None
    if _DESPAIR.may_stand_in(page.held) and _DESPAIR.along.search(words):
        return None
    patterns = _patterns(language)
    if asked and patterns.soft.whole(words.replace(" ,", ""), page.held):
        return Skip()
    if match := patterns.reason.whole(words, page.held):
        return Skip(reason=_typed(page, match.start("reason"), match.end("reason")))
    if match := patterns.skip.whole(words, page.held):
        said = match["skip"]
        forgot = re.search(r"forg|olvid|se (?:me|nos|le) paso|asleep|dormi|overslept|slept", said)
        return Skip(reason=_typed(page, match.start("skip"), match.end("skip")) if forgot else None)
    match = patterns.because.whole(words, page.held)
    if match and (_eats(page, match["why"], language) or _BUT_EATS.search(match["why"])):
        return None
    if match and not re.search(r"\d|\?", words) and not _FORGOT_A_THING.match(words):
        return Skip(reason=_typed(page, match.start("why"), match.end("why")))
    if (why := refusals.find(page, words, language, asked=asked)) is not None:
        return Skip(reason=_typed(page, *why))
    if (skip := _by_meaning(page, 0, len(page.tokens), language, asked=asked)) is not None:
        return skip
    why = whereabouts.find(page, words, language, by) if asked else None
    return Skip(reason=_typed(page, *why)) if why is not None else None


#: `cant test cos no strips left but eating poi`: two things are told.
_BUT_EATS = re.compile(
    r" (?:but|and|n|pero|y) (?:im |i am )?(?:eating|having|ate|ceno|como|comiendo) "
)


def _eats(page: Page, why: str, language: str) -> bool:
    """`can't test, having lentil soup`: why there is no reading is a meal of its own."""
    dishes = food.find(page.afresh(), language)
    named = [word for dish in dishes for word in page.words(dish.start, dish.end)]
    opens = why.split(maxsplit=1)[0] in _EATEN or why.split(maxsplit=1)[0] in meal_names(language)
    return bool(dishes) and (opens or [w for w in why.split() if w not in _AND] == named)


_AND = frozenset({"and", "with", "n", "y", "con"})


#: May be said of a test or of all there is: asked about.
_DESPAIR = as_written(
    r"\b(?:cant|can not|cannot|dont want to) (?:do|take|bear|stand|handle|face) (?:this|it|that) "
    r"(?:anymore|any more|any longer|no more)\b|\b(?:cant|cannot|can not) (?:go on|cope)\b"
    r"|\bno (?:puedo|aguanto|doy) mas\b|\b(?:give|giving) up\b|\bme rindo\b"
)

#: What a meter shows beyond its scale, as it shows it.
_SHOWN = re.compile(r"\b(?:HI|LO|HIGH|LOW)\b")
_AT_THE_ENDS = frozenset({"hi", "lo", "high", "low"})
_METER = re.compile(r"\b(?:meter|monitor|machine|medidor|glucometro|aparato)\b")
_SAID_TO_SHOW = re.compile(
    r"\b(?:say(?:s|ing)?|show(?:s|ing)?|read(?:s|ing)?|display(?:s|ing)?|stuck on|marca|dice|muestra)"
    r" (?:just |only |still |solo )?(?:lo|hi|low|high)\b"
)


def _off_the_scale(page: Page) -> bool:
    """`the meter keeps showing LO` is a value and no excuse: never let one pass as the other."""
    if not page.holds(_AT_THE_ENDS):
        return False
    plain = " ".join(token.word for token in page.tokens)
    if _SAID_TO_SHOW.search(plain):
        return True
    shouted = page.shown.isupper()
    if shouted and not _METER.search(plain):
        return False  # LO OLVIDE
    return _SHOWN.search(page.shown) is not None


def _why(need: str, may: str = "") -> Combination:
    """Concepts that tell why, of whoever it is that is to be tested (`he forgot his meter`)."""
    return combination(need, f"{may} who")


#: What is said of the test itself: none this time, and no reason given.
_NOT_DONE = (
    combination("skipping", "test_act gauged unable forgot_said"),
    combination("unable test_act", "gauged busy_with sore number"),
)
#: What says why: the words themselves are the reason.
_WHY = (
    _why("lack strip", "last_of kit place unable test_act gauged busy_with number"),
    _why("lack kit", "last_of place unable test_act"),
    _why("kit broken", "battery place lack unable mislaid"),
    _why("strip broken", "kit last_of place lack unable"),
    _why("battery broken", "kit"),
    _why("battery lack", "kit last_of"),
    _why("kit mislaid", "place unable test_act last_of"),
    _why("kit place", "mislaid"),
    _why("strip mislaid", "place"),
    _why("strip place", "mislaid"),
    _why("gauged sore", "test_act unable"),
    _why("bloodless", "gauged test_act unable strip kit"),
    _why("forgot_said", "test_act gauged skipping unable number"),
)
#: Answers that refuse only where a reading is asked for.
_REFUSED = (combination("unable", "busy_with gauged"),)
#: One of these is in each of them.
_EXCUSING = frozenset(each.need[0] for each in (*_NOT_DONE, *_WHY, *_REFUSED))


def _by_meaning(page: Page, start: int, end: int, language: str, *, asked: bool) -> Skip | None:
    """A skip by what the words of a span mean together."""
    if end - start > _LONGEST:
        return None
    said = segments(page, start, end, language)
    if not said or not _SCALE_ENDS.isdisjoint(page.words(start, end)):
        return None
    tags = [segment.tags for segment in said]
    if _EXCUSING.isdisjoint(chain.from_iterable(tags)) or _told(tags):
        return None
    if any(each.fits(tags) for each in _WHY):
        return Skip(reason=_reason(page, start, said))
    if any(each.fits(tags) for each in _NOT_DONE):
        return Skip()
    if asked and any(each.fits(tags) for each in _REFUSED):
        return Skip()
    return None


def _told(tags: list[frozenset[str]]) -> bool:
    """Whether a number is told that counts nothing (`14, no strips left` in mmol/L)."""
    behind = [*tags[1:], frozenset[str]()]
    return any(
        one == COUNTED and not other & LENGTHS for one, other in zip(tags, behind, strict=True)
    )


_LONGEST = 14
_SCALE_ENDS = frozenset({"lo", "hi"})
_REASONS = frozenset(
    "lack strip kit broken battery mislaid place sore bloodless forgot_said gauged unable".split()
)


_OPENING = frozenset("my mi el la all ive he she they".split())


def _reason(page: Page, first: int, said: list[Segment]) -> str:
    """The words that tell why, without what merely leads in or out."""
    telling = [segment for segment in said if segment.tags & _REASONS]
    start, end = telling[0].start, telling[-1].end
    if start > first and page.tokens[start - 1].word in _OPENING:
        start -= 1
    return page.text(start, end)


_BECAUSE = re.compile(r" (?:because|cause|cuz|cos|coz|bc|porque) ")
#: Beside an emergency (`he is sleeping and we cannot wake him`) these excuse nothing.
_SLEEP = frozenset("sleeping asleep slept dormido dormida napped dozed".split())


def in_clauses(
    page: Page, language: str, *, grave: bool, asked: bool
) -> tuple[int, int, Skip] | None:
    """Claim a clause that is a skip in a message that holds more (`forgot to test, feel faint`).
    `grave` is whether the rest tells of an emergency, `asked` whether a reading is asked for: then
    `no, eating now` skips it."""
    patterns = _patterns(language)
    said = [
        sought
        for sought in (patterns.reason, patterns.skip, patterns.because)
        if sought.may_stand_in(page.held)
    ]
    refused = asked and patterns.soft.may_stand_in(page.held)
    if not (said or refused or page.holds(_PARTED)):
        return None
    clauses = _clauses(page)
    clauses = [part for start, end in clauses for part in _up_to_food(page, start, end)]
    for start, end in clauses:
        if page.any_taken(start, end):
            continue  # `passing so much water today`
        if grave and not _SLEEP.isdisjoint(page.words(start, end)):
            continue
        skip = None
        if said or refused:
            part = Page(page.shown, page.tokens[start:end])
            words = _words(part)
            if refused and start == 0 and _eaten_behind(page, end):
                skip = Skip() if patterns.soft.whole(words, part.held) else None
            for sought in said if skip is None and not part.numbers else ():
                if sought is patterns.because and not _BECAUSE.search(words):
                    continue
                if skip is None and sought.whole(words, part.held):
                    skip = find(part, language, asked=False)
        if skip is None and len(clauses) > 1:
            skip = _by_meaning(page, start, end, language, asked=False)
        if skip is not None:
            page.claim(start, end)
            return start, end, skip
    return None


def _eaten_behind(page: Page, end: int) -> bool:
    """Whether the next clause tells of a meal (`no, eating now`)."""
    comma, *behind = (*page.words(end, end + 2), "")
    return comma == "," and not _EATEN.isdisjoint(behind)


_BETWEEN_CLAUSES = frozenset({",", ".", ";", "!", "but", "and", "an", "n", "so", "y", "pero"})


def _clauses(page: Page) -> list[tuple[int, int]]:
    found, start = [], 0
    for index, token in enumerate(page.tokens):
        if token.word in _BETWEEN_CLAUSES:
            found.append((start, index))
            start = index + 1
    found.append((start, len(page.tokens)))
    return [(start, end) for start, end in found if start < end]


_EATEN = frozenset("eating having ate comiendo comi almorzando cenando".split())


#: With none of these a message is one clause.
_PARTED = _BETWEEN_CLAUSES | _EATEN


def _up_to_food(page: Page, start: int, end: int) -> list[tuple[int, int]]:
    """A clause, or the two that it is: `no strips left eating pancit`."""
    for at in range(start + 2, end):
        if page.tokens[at].word in _EATEN:
            return [(start, at), (at, end)]
    return [(start, end)]


def _words(page: Page) -> str:
    words = [token.word for token in page.tokens]
    while words and words[-1] in {".", "!", ","}:
        words.pop()
    return " ".join(words)


def _typed(page: Page, start: int, end: int) -> str:
    at, first, last = 0, len(page.tokens), 0
    for index, token in enumerate(page.tokens):
        if at >= start and at + len(token.word) <= end:
            first, last = min(first, index), index + 1
        at += len(token.word) + 1
    return page.text(first, last)
