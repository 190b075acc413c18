"""What was the reading taken for, in the words of the text? Before, after, fasting, and so on."""

# ruff: noqa: E501, SIM905 - patterns and word lists, one a line
# ruff: noqa: PLR0917 - a finding needs all of them

import re
from collections.abc import Container
from dataclasses import dataclass
from functools import cache

from bot.entries import MealName, Moment
from bot.parser.durations import any_unit, duration, minutes_of, one_range
from bot.parser.languages import gathered, lexica, phrases_of
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Several, Span, pattern


@dataclass(frozen=True, slots=True, kw_only=True)
class Cue:
    """Words that say what a reading was taken for.

    `moment` is None for `before my walk`, which is none of the contract's. `meal` is the name of
    the meal inside the words; `open` says that `before` or `after` stands without its object, so
    that food right behind it is the object. `minutes` belong to `2 hours after`.
    """

    start: int
    end: int
    moment: Moment | None
    meal: MealName | None = None
    open: bool = False
    minutes: float | None = None
    moved: bool = False  # its object is an activity


@dataclass(frozen=True, slots=True)
class _Patterns:
    whole: tuple[tuple[Pattern, Moment], ...]
    before: Pattern
    after: Pattern
    long_after: Pattern
    at_long: Pattern
    bare_long: Pattern


OWN = r"(?:(?:the|my|me|ma|our|a|an|her|his|some|big|late|early|light|sunday|el|la|mi|los|las|un|una|de|del) ){0,3}"


@cache
def meal_names(language: str) -> dict[str, MealName]:
    """Each name of a meal; where languages differ, the participant's own wins."""
    names: dict[str, MealName] = {}
    for lexicon in lexica(language):
        for name, words in lexicon.meal_names.items():
            for word in phrases_of(language, lexicon, words):
                names.setdefault(word, name)
    return names


@cache
def _patterns(language: str) -> _Patterns:
    shy = tuple(
        word for lex in lexica(language) for words in lex.shy_meal_names.values() for word in words
    )
    names = either(tuple(meal_names(language)), shy)
    eating = either(gathered(language, "eating"))
    moving = either(gathered(language, "moving"))
    before, after = either(gathered(language, "before")), either(gathered(language, "after"))
    later = either(gathered(language, "later"))
    #: With a length behind it, it is an activity of its own (`después de caminar 25 minutos`).
    unmeasured = r"(?! (?:(?:durante|por|for|about|unos|como) )*(?:media hora|half an|una hora|\d+ (?:mi?n|h|k|cuadra|vuelta)))"
    glue = r"(?:(?:of|de|que|eating|having|taking|i had|i ate|finishing|ate|for|to) ){0,2}"
    tail = f"(?: {glue}{OWN}(?:(?P<name>{names})(?: time)?|(?P<food>{eating})|(?P<move>{moving}){unmeasured}))?"
    long = duration(language)
    of_meal = f"(?: (?:del?|of|into|from|since) {OWN}(?P<name>{names}))?"
    whole = tuple(
        (
            pattern(
                either(tuple(word for lex in lexica(language) for word in lex.moments[moment]))
            ),
            moment,
        )
        for moment in (Moment.RECHECK, Moment.FASTING, Moment.BEDTIME)
    )
    return _Patterns(
        whole=whole,
        before=pattern(f"(?:just |right )?{before}(?! (?:(?:de )?(?:yesterday|ayer)|last) ){tail}"),
        after=pattern(f"(?:just |right )?{after}{tail}"),
        long_after=pattern(
            f"(?:at |a las |about |around )?{long} (?:{after}|{later}|mark|into|since){tail}"
        ),
        at_long=pattern(
            f"(?:at |@ |a las |a la |son las |pasaron las )(?:the |my |about |around )?{long}(?: (?:reading|test|check|mark|point|number))?{of_meal}"
        ),
        bare_long=pattern(
            f"(?:the |my )?{long}(?: (?:reading|test|check|mark|point|number|one|in))?{of_meal}"
        ),
    )


@cache
def _sought(language: str) -> Several:
    """All that `find` looks for."""
    patterns = _patterns(language)
    whole = (sought for sought, _ in patterns.whole)
    told = patterns.before, patterns.after, patterns.long_after, patterns.at_long
    return Several(*whole, *told)


def find(page: Page, language: str, active: set[int], food_at: Container[int]) -> list[Cue]:
    """Claim the words of each moment. `active` holds the tokens of activities, for `after my walk`
    and so that `walked 20 min after lunch` keeps its minutes; `food_at` those of food, for
    `after peking duck`."""
    patterns = _patterns(language)
    found: list[Cue] = []
    if not page.worth(_sought(language)):
        return found
    for sought, moment in patterns.whole:
        for span in page.find(sought):
            if moment is Moment.RECHECK and _of_a_sign(page, span.start, span.end):
                continue
            page.claim(span.start, span.end)
            if not _of_no_test(page, span.start, span.end, moment):
                found.append(Cue(start=span.start, end=span.end, moment=moment))
    names = meal_names(language)
    timed = any_unit(page, language)
    for span in page.find(patterns.long_after) if timed else ():
        if active & {span.start - 1, span.start - 2}:
            continue
        page.claim(span.start, span.end)
        found.append(_cue(page, span.start, span.end, span.match, Moment.AFTER_MEAL, names, active))
        found[-1] = _with(found[-1], minutes_of(span.match))
    found += _at_length(page, patterns.at_long, names, active) if timed else []
    for sought, moment in (
        (patterns.before, Moment.BEFORE_MEAL),
        (patterns.after, Moment.AFTER_MEAL),
    ):
        for span in page.find(sought):
            if active.issuperset({span.start - 1, span.start}):
                continue  # within what was done (`just in from a walk`)
            if timed and active.issuperset({span.start, span.end}):
                continue  # `just in from a walk 20 min`
            object_told = span["name"] or span["move"]
            eaten = object_told or span.end in food_at
            if not eaten and _of_no_meal(page, span, names, active):
                continue  # `142 after work`
            page.claim(span.start, span.end)
            found.append(_cue(page, span.start, span.end, span.match, moment, names, active))
    return sorted(found, key=lambda cue: cue.start)


def find_long(page: Page, language: str) -> list[Cue]:
    """Claim a bare `2h`, which beside a reading means two hours after the meal."""
    if not any_unit(page, language):
        return []
    return _at_length(page, _patterns(language).bare_long, meal_names(language), set())


def _at_length(
    page: Page, sought: Pattern, names: dict[str, MealName], active: set[int]
) -> list[Cue]:
    """A length of one to three hours beside a reading (`at 2h`, `a las dos horas`): after the meal."""
    found = []
    for span in page.find(sought):
        if not one_range(span.match) or active & {span.start - 1}:
            continue
        if 60 <= (minutes := minutes_of(span.match)) <= 180:
            page.claim(span.start, span.end)
            meal = names.get(span["name"] or "")
            found.append(
                Cue(
                    start=span.start, end=span.end, moment=Moment.AFTER_MEAL, meal=meal,
                    minutes=minutes,
                )
            )  # fmt: skip
    return found


#: What one comes from or goes to, and eats neither before nor after as a rule.
_OF_NO_MEAL = frozenset(
    "work school church mass mosque temple college uni office shift prayers prayer class trabajo "
    "misa escuela iglesia turno".split()
)


_SHORT = 5
_IN_FROM = (["in", "from"], ["on", "from"])
_EATEN_ING = frozenset(
    "pudding dumpling herring stuffing filling icing dressing waking eating having snacking feeding "
    "breakfasting lunching dining drinking finishing starting evening morning training string spring "
    "seasoning crackling nothing anything everything something".split()
)


def _of_no_meal(page: Page, span: Span, names: dict[str, MealName], active: set[int]) -> bool:
    """Whether one of them stands there, and no meal with it (`after work`, not `work lunch`)."""
    index = span.end
    words = page.words(index, index + 3)
    if page.words(index - 2, index) in _IN_FROM:  # `just in from the top field`
        return not _active_next(page, index, active)
    if words and words[0].endswith("ing") and len(words[0]) > _SHORT and words[0] not in _EATEN_ING:
        return not _active_next(page, index, active)  # `after closing the stall`
    if words and words[0] in {"my", "the", "mi", "la", "el", "del"}:
        words = words[1:]
    return not _OF_NO_MEAL.isdisjoint(words[:1]) and names.keys().isdisjoint(words[1:2])


def _of_a_sign(page: Page, start: int, end: int) -> bool:
    """`mucha sed otra vez, 298`: what came again is the sign, whose words are claimed by now."""
    again = page.words(start, end) in (["otra", "vez"], ["de", "nuevo"])
    before = page.words(start - 1, start) if start else []
    told = before != [] and before[0].isalpha() and before[0] not in {"dl", "l", "mg", "mmol"}
    return again and told and page.any_taken(start - 1, start)


def _of_no_test(page: Page, start: int, end: int, moment: Moment) -> bool:
    """A bed that is not one's own for the night (`put the kids to bed`), or no night's sleep
    that was woken from (`woke up from a nap`)."""
    if moment is Moment.BEDTIME and not _SLEEPERS.isdisjoint(page.words(max(start - 4, 0), start)):
        return True
    before = page.words(max(start - 2, 0), start)
    if moment is Moment.BEDTIME and page.words(start, end)[0] == "bed":
        return before[-1:] == ["the"] or (before[-1:] == ["to"] and before[0] not in _TO_BED)
    behind = page.words(end, end + 4)
    return moment is Moment.FASTING and behind[:1] == ["from"] and not _NAPS.isdisjoint(behind)


_SLEEPERS = frozenset(
    "kids kid baby children child boys girls toddler twins grandkids weans wean bairns ninos bebe".split()
)
_TO_BED = frozenset({"go", "going", "off", "heading", "went", "gone", "get", "back", "straight"})
_NAPS = frozenset({"nap", "naps", "siesta", "snooze", "doze"})


def _with(cue: Cue, minutes: float) -> Cue:
    return Cue(
        start=cue.start, end=cue.end, moment=cue.moment, meal=cue.meal, open=cue.open,
        minutes=minutes, moved=cue.moved,
    )  # fmt: skip


def _cue(
    page: Page,
    start: int,
    end: int,
    match: re.Match[str],
    moment: Moment,
    names: dict[str, MealName],
    active: set[int],
) -> Cue:
    begun = (
        match["food"] is None or match["food"].split()[-1] in _BEGUN
    )  # `before i started my walk`
    if match["move"] or (not match["name"] and begun and _active_next(page, end, active)):
        after = Moment.AFTER_ACTIVITY if moment is Moment.AFTER_MEAL else None
        return Cue(start=start, end=end, moment=after, moved=True)
    meal = names.get(match["name"], MealName.DINNER) if match["name"] else None
    meal = meal or _NAMED_BY_VERB.get(match["food"] or "")
    return Cue(start=start, end=end, moment=moment, meal=meal, open=meal is None)


#: Eating that says which meal it is (`antes de cenar`).
_NAMED_BY_VERB = {
    "almorzar": MealName.LUNCH,
    "cenar": MealName.DINNER,
    "desayunar": MealName.BREAKFAST,
    "desayunarme": MealName.BREAKFAST,
    "merendar": MealName.SNACK,
}


_BEGUN = frozenset({"started", "began", "begin", "start"})


def _measured(page: Page, index: int) -> bool:
    """Whether a length or a distance follows: `after 20 min walk`, not `after 171, walked`."""
    following = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    return following.isalpha() and following[0] in "mhks"


_FAR = frozenset(
    "km kms k kilometers kilometres miles laps lengths steps stairs flights blocks pasos cuadras "
    "vueltas kilometros".split()
)


#: Between `after` and what was done (`after all that mopping`).
_BETWEEN = frozenset(
    "that this those brisk long short minute minutes hour half quick caminar".split()
)
_AND_THEN = frozenset({"and", "n", "then", "y", "luego"})


def _active_next(page: Page, end: int, active: set[int]) -> bool:
    """Whether an activity follows, a length of time or `a`, `my` between at most."""
    for index in range(end, min(end + 5, len(page.tokens))):
        if index in active:
            return True
        word = page.tokens[index].word
        if word in _AND_THEN:
            return False  # `141 después y caminé`
        if word[0].isdigit() and not _FAR.isdisjoint(page.words(index + 1, index + 2)):
            return True  # `after 40 laps`
        if not word[0].isalnum() or (word[0].isdigit() and not _measured(page, index)):
            return False
        if not (word[0].isdigit() or len(word) <= 3 or word in _BETWEEN):
            return False
    return False
