"""Which numbers measure something other than glucose? `pulse 72`, `72 bpm`, `bp 130/80`, doses.

A name may stand before its number or behind it, so that `72 pulse, 142 before` and `142, pulse 72`
are told apart by what stands between; where nothing does, neither number is taken.
"""

# ruff: noqa: E501 - patterns, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from bot.parser.doses import no_dose
from bot.parser.food import Dish
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Several, Span, pattern
from bot.parser.phrases import spelled

N = r"\d+(?:\.\d+)?"


_PRESSURE = "(?:bp|b p|blood pressure|pressure|presion(?: arterial)?|tension)"
#: What each unit measures: `72 bpm pulse 142` is a pulse of 72, `82 kg pulse 88` two measurements.
_WITH_UNIT = "(?:" + "|".join((
    "bpm (?:of |de )?(?:pulse|heart rate|heartrate|heartbeat|pulso)",
    "(?:kgs?|kilos?|lbs?|pounds|stone) (?:of |de )?(?:weight|peso)",
    "% (?:of |de )?(?:oxygen|o2|spo2|sats|saturation|saturacion|oxigeno|a1c)",
    "(?:cm|m) (?:of |de )?(?:height|waist|altura|estatura)",
    "(?:c|f|degrees|grados) (?:of |de )?(?:temp|temperature|fever|fiebre|temperatura)",
)) + ")"  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Patterns:
    named_behind: Pattern  # `72 pulse, 142 before`
    named_first: Pattern
    measured: Several
    heart: Pattern
    weight: Pattern
    ratio: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    def words(*fields: str) -> str:
        return either(*(gathered(language, field) for field in fields))

    drugs, doses, measures = words("drugs"), words("doses"), words("not_glucose")
    #: With one behind it a number is a value of its own: `72 pulse 142 before lunch`.
    moment = r"(?:before|after|fasting|b4|pre|post|bedtime|antes|despues|en ayunas|ayunas)"
    between = r"(?: (?:is|was|of|at|:|=|my|today|now|this|morning|were|are|es|fue|de|en|level|reading|about|around|rate|count|came|back|to|the|,|just|result|last|,|-|esta|i|taken|took|am|yesterday|total|sat|down|up|from|still|in|dropped|went|has|improved|fell|rose|now|gone|got|my|last|new|latest|todays|bajo|subio|salio|ahora|a)){0,5}"
    return _Patterns(
        named_behind=pattern(
            rf"{N} (?:/|over|on|sobre) {N} (?:of |de )?{_PRESSURE}|{N} {_WITH_UNIT}"
            rf"|{N} (?:of |de )?{measures}(?= (?:[,;.!)-]|and|n|y|then|$|{N} {moment}))"
        ),
        named_first=pattern(
            rf"{measures}{between} {N}(?: (?:/|over|on|sobre|por|con) {N})?(?: (?:%|mmol / mol|mmol|mg / dl|mg|kg|lbs|lb|cm|m|bpm|mmhg|c|f|degrees|per cent|percent|° ?[cf]|ft|feet|st|stone|l / min)){{0,2}}(?! (?:mg|mmol))"
        ),
        measured=Several(
            pattern(rf"{drugs} , {N} (?:mg|mcg)(?! / dl| dl| {moment})"),
            pattern(r"(?:- )?\d{1,2} c (?:outside|inside|indoors|here|today)"),
            pattern(rf"{N} (?:/|over|on|sobre) {N} {measures}"),
            pattern(
                rf"(?:carb |insulin |my |mi )*(?:ratio|relacion|proporcion)(?: (?:is|of|was|:|es|de))? (?:{N} (?:to|a|:|-|/) {N}|\d:\d\d)"
            ),
            pattern(rf"{N} (?:% )?{measures}"),
            pattern(r"\d{2,3} (?:over|sobre) \d{2,3}|1\d\d con \d\d(?= (?:[.,;!?]|$|y ))"),
            pattern(rf"{N} (?:mmol / mol|bpm|mmhg|° ?[cf]?|degrees(?: [cf])?|celsius|fahrenheit)"),
            pattern(
                rf"{N} (?:cm|m|ft|feet|foot)(?: \d{{1,2}})? (?:tall|high|height|in height)|\d (?:ft|feet|foot) \d{{1,2}}(?: (?:in|inches))?"
            ),
            pattern(
                rf"[1-6] {drugs} (?:25|50|75|100|125|250|500|750|850|1000)(?! (?:before|after|fasting|now))"
            ),
            pattern(
                rf"{N} (?:(?:ml|g|of|x|more|my|{doses}) ){{0,3}}(?:of |my |de )?(?:[a-z]+ing |long |short |fast |slow |rapid )?{drugs}(?! (?:{N} (?:{doses}|mg|ml|g|mcg)|(?:25|50|75|100|125|250|500|750|850|1000)) )(?! mmol| mg / dl)"
            ),
            pattern(
                rf"{N} (?:(?:ml|g|of|x|more|my) ){{0,2}}{doses} (?:of |my |de )?(?:[a-z]+ing |long |short |fast |slow |rapid )?{drugs}(?: {N} (?:{doses}|ml|g))?(?! mmol| mg / dl)"
            ),
            pattern(
                rf"{drugs}(?: (?:is|was|of|at|:|dose|-)){{0,2}} (?P<dose>{N})(?: / {N})?(?P<counted> {doses}| ml| g)?(?: (?:x|times) \d)?(?! mmol| mg / dl)"
            ),
            pattern(
                rf"{N} (?:units?|iu|u|unidades|unidad|ui|tablets?|pills?|puffs|mcg|clicks|capsules?|pastillas?|tabletas?)"
            ),
        ),
        heart=pattern(r"hr(?: (?:is|was|:|of))? (?:[4-9]\d|1\d\d)"),
        weight=pattern(rf"(?:(?:weigh|weight|at|to|now|peso) )?{N} {words('weight')}"),
        ratio=pattern(
            rf"(?:(?P<bp>bp|pressure|presion) )?(?P<over>{N}) / (?P<under>{N})(?: (?P<bp2>bp))?"
        ),
    )


def found(page: Page, language: str, dishes: list[Dish], *, asked: bool) -> Iterator[Span]:
    """Give every other measurement and dose, one by one: each is to be claimed before the next is
    looked for. `asked` says that a reading is asked for: it comes first then (`166 pulse 77`)."""
    patterns = _patterns(language)
    sugar = {at for dish in dishes if dish.sugar for at in range(dish.start, dish.end)}
    for span in page.find(patterns.named_behind):
        if not _named_before(page, span.start, language):
            yield span
    for span in page.find(patterns.named_first):
        if not asked and _between_two(page, span, _names(language)):
            page.claim(span.start, span.end - 1)  # whose the name is nobody can tell
        elif sugar.isdisjoint(range(span.start, span.end)):
            yield span
    for sought in page.worth(patterns.measured):
        for span in page.find(sought):
            if sugar.isdisjoint(range(span.start, span.end)) and not no_dose(page, span):
                yield span
    for span in page.find(patterns.heart):
        if page.words(span.start - 1, span.start) in _OPENS:
            yield span
    food_at = {dish.start for dish in dishes}
    for span in page.find(patterns.weight):
        if not ({span.end, span.end + 1} & food_at):
            yield span
    for span in page.find(patterns.ratio):
        over, under = float(span["over"] or 0), float(span["under"] or 0)
        if span["bp"] or span["bp2"] or (over > under and over >= 60 and under >= 30):
            yield span


@cache
def _names(language: str) -> frozenset[str]:
    """The last words of what is measured besides glucose."""
    fields = ("not_glucose", "weight")
    named = (word for field in fields for word in gathered(language, field))
    return frozenset(spelled(word)[-1] for word in named)


def _named_before(page: Page, start: int, language: str) -> bool:
    """`bp 138/84 pulse 76`: the first number has its name, and the second name its own number."""
    at = start - 1
    if page.words(at, start) in _OVER:
        return True  # `150 over 92 pulse 88`
    while at >= 0 and page.tokens[at].word in _IS:
        at -= 1
    if at < 0 or page.tokens[at].word not in _names(language):
        return False
    if page.words(start + 1, start + 2) == ["bpm"] and page.tokens[at].word in _OF_THE_HEART:
        return True  # `141 pulse 88 bpm`
    return at == 0 or not page.tokens[at - 1].word[0].isdigit()  # `128/80 bp 72 pulse`


def _between_two(page: Page, span: Span, names: frozenset[str]) -> bool:
    """`72 pulse 164`, `72 pulse 37.2 temp 164`: a name between two numbers, and nothing else that
    tells of either."""
    before, last = span.start - 1, span.end - 1
    before -= page.words(before, span.start) in (["de"], ["of"])
    if before < 0 or not page.free(before) or not page.tokens[before].word[0].isdigit():
        return False
    words = page.words(span.start, last)
    opens = before == 0 or page.tokens[before - 1].word in _MARKS | {"a"} | names
    ends = _MARKS | names
    closes = span.end == len(page.tokens) or page.tokens[span.end].word in ends
    return opens and closes and _IS.isdisjoint(words) and not any(w[0].isdigit() for w in words)


_OF_THE_HEART = frozenset({"pulse", "rate", "heartrate", "heartbeat", "pulso"})
#: Before `hr` as the heart's rate; behind anything else it is an hour (`walked half hr 84 after`).
_OPENS: tuple[list[str], ...] = ([], [","], ["."], [";"], ["my"], ["and"], ["n"], ["resting"])
_OVER = (["/"], ["over"], ["on"], ["sobre"])
_MARKS = frozenset(", . ; ! - ( )".split())
_IS = frozenset("is was of at : = es fue de".split())
