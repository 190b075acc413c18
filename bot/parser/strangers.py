"""Which numbers are surely no glucose? Doses, weights, pressure, prices, dates, telephones.

`find` claims them, so that no later finder can take one for a value.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from functools import cache

from bot.parser.food import Dish
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.numbers import LINK
from bot.parser.page import Page, Span, pattern


class Kind(Enum):
    """What such a number makes of the message if it holds nothing else."""

    MEASURED = auto()  # another measurement or a dose: `not_glucose`
    ODD = auto()  # a price, an address: asked about
    ERROR = auto()  # a meter's error code


@dataclass(frozen=True, slots=True, kw_only=True)
class Stranger:
    """A number that is no glucose, or a word that measures something else."""

    start: int
    end: int
    kind: Kind


N = r"\d+(?:\.\d+)?"


@dataclass(frozen=True, slots=True)
class _Patterns:
    error: re.Pattern[str]
    odd: tuple[re.Pattern[str], ...]
    measured: tuple[re.Pattern[str], ...]
    weight: re.Pattern[str]
    ratio: re.Pattern[str]
    age: re.Pattern[str]
    counted: re.Pattern[str]
    drug: re.Pattern[str]
    taken: re.Pattern[str]


@cache
def _patterns(language: str) -> _Patterns:
    def words(*fields: str) -> str:
        return either(*(gathered(language, field) for field in fields))

    months, money, places = words("months"), words("money"), words("places")
    currencies = words("currencies")
    drugs, doses, measures = words("drugs"), words("doses"), words("not_glucose")
    between = r"(?: (?:is|was|of|at|:|=|my|today|now|this|morning|were|are|es|fue|de|en|level|reading|about|around|rate|count|came|back|down|up|in|to|the|,|just|result|last|,|-|esta|i|taken|took|am|yesterday|total|sat)){0,4}"
    return _Patterns(
        error=pattern(r"(?:error|err|code|error code) (?:- )?\d{1,3}|(?:e|er|err) (?:- )?\d{1,3}"),
        odd=(
            pattern(
                r"(?:call|phone|tel|number|text|cell|mobile|whatsapp|dial|telefono|celular|llama|ring|fax)"
                r"(?: [a-z]+| :| \(| \+){0,4} \d{3,5}(?: [-.)(])?(?: \d{2,4}(?: [-.)(])?){1,4}"
                r"|\(? ?\+ ?\d[\d ().-]{6,}\d|\( ?\d{3} \) \d{3} ?-? ?\d{4}|0\d{2,4}(?: [-.)(])?(?: \d{3,4}(?: [-.)(])?){1,3}"
                r"|\d{3}(?: [-.])? \d{3}(?: [-.])? \d{4}|\d{3} - \d{4}|\d{7,}"
            ),
            pattern(f"{LINK}|(?:password|passcode|pin|login|user|otp)(?: [a-z]+| :){{0,2}} \\d+"),
            pattern(
                rf"(?:[$€£¥₹₦₵₱฿₺₽₩₫₪] ?|{currencies} )(?:\. )?{N}(?: {money})?|{N} (?:[$€£¥₹₦₵₱฿₺₽₩₫₪]|{money})|(?:paid|cost|costs|costed|price|spent|charged|pague|cuesta|costo|bill of)(?: (?:is|was|me|now|only|of|about|around|just)){{0,2}} {N}"
            ),
            pattern(
                r"\d{4} - \d{1,2} - \d{1,2}|\d{1,2} / \d{1,2} / \d{2,4}|\d{1,2} - \d{1,2} - \d{4}|\d{1,2}\.\d{1,2} ?\. ?\d{2,4}|20[2-3]\d"
            ),
            pattern(
                rf"(?:the )?\d{{1,2}}(?: (?:st|nd|rd|th))?(?: of| de)? {months}(?: (?:de )?\d{{4}})?|{months}(?: the)? \d{{1,2}}(?: (?:st|nd|rd|th))?(?: ,? ?\d{{4}})?"
            ),
            pattern(
                rf"{places}(?: (?:number|no|nr|#|num|numero|is|was|:|the)){{0,2}}(?: [a-z]{{1,2}})? \d+(?: [a-z])?(?! (?:min|mins|minutes|minutos|h|hr|hrs|hours|hour|km|steps|miles|g|kg|mg|mmol|units))"
            ),
            pattern(r"(?:live at|lives at|living at|vivo en el)(?: number| no)? \d+(?: \w+){0,2}"),
            pattern(
                r"\d{1,5}(?: [a-z]+){1,2} (?:street|st|avenue|ave|road|rd|drive|lane|blvd|boulevard|court|close|terrace)"
            ),
            pattern(
                r"(?:print|echo|alert|eval|exec|return|select) \( ?\d+|(?:value|x|y|n|id) = \d+"
            ),
            pattern(r"# \d+|no \. \d+|number \d+ (?:street|road|avenue|in|on|of)"),
            # shares, ranks and companies: `7 out of 10`, `2 for 150`, `3 sets of 50`, `table for 6`
            pattern(
                rf"{N} (?:out of|de cada|(?:sets?|rounds?|reps|lots?|packs?|boxes) of|for(?: only| just)?) {N}|{N} for the (?:lot|pair|set|two|both)"
                rf"|(?:table|party|group|family|team|class|crowd|queue|reservation|booked|dinner|lunch|room|seats|space) (?:for|of) {N}"
                rf"|(?:we are|we were|there are|there were|there is|theres) (?:only |about |like )?{N}|slept (?:only |about |for |just |like )?{N}"
            ),
            pattern(
                rf"(?:score|scored|points|won|win|lottery|jackpot|bet|lost|(?<!heart )beat)(?: [a-z]+){{0,4}} {N}(?: (?:(?:-|to|:|nil|vs|v|all) )?{N})?(?! {words('weight')} )(?: (?:at|in|on) [a-z]+)?"
            ),
            pattern(r"(?:password|pincode|chapter|verse|psalm|version|v) \d+(?: : \d+)?|www [^ ]+"),
            pattern(r"\d{1,4} (?:st|nd|rd|th)(?! (?:half|time))"),
            # how many strips, or what they cost: asked
            pattern(rf"{words('strips')} (?:are|son) (?:only |now |just )?{N}"),
            # `over 200` is no value: which one it was has to be asked
            pattern(
                rf"(?<!\d )(?:over|under|above|below|(?:less|more|higher|lower) than) {N}(?! (?:min|mins|minutes|hours?|hrs?|km|steps|miles))"
            ),
        ),
        measured=(
            pattern(
                rf"{measures}{between} {N}(?: (?:/|over|on|sobre|por) {N})?(?: (?:%|mmol / mol|mmol|mg / dl|mg|kg|lbs|lb|cm|m|bpm|mmhg|c|f|degrees|per cent|percent|° ?[cf]|ft|feet|st|stone|l / min)){{0,2}}(?! (?:mg|mmol))"
            ),
            pattern(rf"{N} (?:/|over|on|sobre) {N} {measures}"),
            pattern(rf"{N} (?:% )?{measures}"),
            pattern(r"\d{2,3} (?:over|sobre) \d{2,3}"),
            pattern(rf"{N} (?:mmol / mol|bpm|mmhg|° ?[cf]?|degrees(?: [cf])?|celsius|fahrenheit)"),
            pattern(
                rf"{N} (?:cm|m|ft|feet|foot)(?: \d{{1,2}})? (?:tall|high|height|in height)|\d (?:ft|feet|foot) \d{{1,2}}(?: (?:in|inches))?"
            ),
            pattern(
                rf"{N} (?:(?:ml|g|of|x|more|my|{doses}) ){{0,3}}(?:of |my |de )?(?:[a-z]+ing |long |short |fast |slow |rapid )?{drugs}(?: {N}(?: {doses}| ml| g)?)?(?! mmol| mg / dl)"
            ),
            pattern(
                rf"{drugs}(?: (?:is|was|of|at|:|dose|-)){{0,2}} {N}(?: {doses}| ml| g)?(?: (?:x|times) \d)?(?! mmol| mg / dl)"
            ),
            pattern(
                rf"{N} (?:units?|iu|u|unidades|unidad|ui|tablets?|pills?|puffs|mcg|clicks|capsules?|pastillas?|tabletas?)"
            ),
        ),
        weight=pattern(
            rf"(?:(?:weigh|weight|at|to|now|peso|lost|gained|down|up) )?{N} {words('weight')}"
            rf"(?: \d{{1,2}}(?: {words('weight')})?(?= [.,!?]| $)"
            rf"|(?: (?:,|now|it|i))* (?:was|were|from|used to be|down from|up from|down to|up to|last (?:week|month|year|time)) {N}(?: {words('weight')})?)?"
        ),
        ratio=pattern(
            rf"(?:(?P<bp>bp|pressure|presion) )?(?P<over>{N}) / (?P<under>{N})(?: (?P<bp2>bp))?"
        ),
        age=pattern(
            rf"{N} {words('age')}|(?:age|aged|turned|turning|turn|tengo) (?:1[01]\d|\d{{1,2}})(?: anos)?|(?:edad) \d{{1,3}}"
        ),
        counted=pattern(rf"{N} {words('counted')}"),
        drug=pattern(
            f"(?:{words('taken')} )?(?:(?:my|the|his|her|mi|la|el|mis|las|los|morning|evening|daily|night|blood pressure|bp|diabetes|sugar|water) ){{0,3}}{drugs}"
        ),
        taken=pattern(words("taken")),
    )


def find(page: Page, language: str, dishes: list[Dish]) -> list[Stranger]:
    """Claim every number that is surely none of glucose, and give what it is."""
    patterns = _patterns(language)
    found: list[Stranger] = []

    def claim(span: Span, kind: Kind) -> None:
        page.claim(span.start, span.end)
        found.append(Stranger(start=span.start, end=span.end, kind=kind))

    digits = any(char.isdigit() for char in page.line)
    if digits:
        _errors(page, patterns, claim)
        for span in _codes(page, language):
            page.claim(*span)
            found.append(Stranger(start=span[0], end=span[1], kind=Kind.ODD))
        for sought in patterns.odd:
            for span in list(page.find(sought)):
                claim(span, Kind.ODD)
        for sought in patterns.measured:
            for span in list(page.find(sought)):
                claim(span, Kind.MEASURED)
        food_at = {dish.start for dish in dishes}
        for span in list(page.find(patterns.weight)):
            if not ({span.end, span.end + 1} & food_at):
                claim(span, Kind.MEASURED)
        for span in list(page.find(patterns.ratio)):
            over, under = float(span["over"] or 0), float(span["under"] or 0)
            if span["bp"] or span["bp2"] or (over > under and over >= 60 and under >= 30):
                claim(span, Kind.MEASURED)
        for span in list(page.find(patterns.age)):
            claim(span, Kind.ODD)
        for span in list(page.find(patterns.counted)):
            if not (
                page.tokens[span.end - 1].word == "%"
                and span.end in food_at | {f - 1 for f in food_at}
            ):
                claim(span, Kind.ODD)
    return found


#: Of up to this many letters, glued to a number, only words of a reading are no code (`BA142`).
_CODE_LETTERS = 3
_GLUED = frozenset(
    "bs bg fbs fbg glu am pm pre is was at it its fast e er err x by to aft bef bed mg now the".split()
)


def _codes(page: Page, language: str) -> Iterator[tuple[int, int]]:
    """Numbers glued to letters before them (`BA142`, `M25`, `range(142)`, `F-150`)."""
    spoken = {*_GLUED, *gathered(language, "before"), *gathered(language, "after")}
    spoken.update(gathered(language, "glucose"), gathered(language, "meter"))
    tokens = page.tokens
    for index in range(1, len(tokens)):
        token, mark = tokens[index], tokens[index - 1]
        if not token.word[0].isdigit() or mark.end != token.start or not page.free(index):
            continue
        start = index - 1
        if mark.word in {"-", "("} and start and tokens[start - 1].end == mark.start:
            start -= 1
        word = tokens[start].word
        if not word.isalpha() or word in spoken or not page.shown[token.start].isdigit():
            continue
        if mark.word == "(" or len(word) <= _CODE_LETTERS:
            yield start, index + 1


def _errors(page: Page, patterns: _Patterns, claim: "object") -> None:
    for span in list(page.find(patterns.error)):
        claim(span, Kind.ERROR)  # type: ignore[operator]


def find_medicine(page: Page, language: str) -> list[Stranger]:
    """Claim medicine that was taken, or a measurement that is only named."""
    patterns = _patterns(language)
    found = []
    for span in list(page.find(patterns.drug)):
        page.claim(span.start, span.end)
        found.append(Stranger(start=span.start, end=span.end, kind=Kind.MEASURED))
    return found
