"""Which number is glucose, in which unit, and could a meter have shown it?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import Ask, OffScale
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import BLOT, Page, Pattern, Span, pattern
from bot.units import Unit, plausible

#: Whole numbers that either unit could show, one of them an emergency (contract, rule 3).
EITHER_UNIT = range(20, 34)


@dataclass(frozen=True, slots=True, kw_only=True)
class Value:
    """A number meant as glucose, with the unit typed beside it, or HI and LO of the meter."""

    start: int
    end: int
    number: float = 0.0
    decimal: bool = False
    unit: Unit | None = None
    off_scale: OffScale | None = None

    def judged(self, own: Unit) -> Unit | Ask:
        """The unit in which it counts, or what has to be asked (contract, rules 2 and 3)."""
        if self.off_scale is not None:
            return own
        if self.unit is not None:
            return self.unit if plausible(self.number, self.unit) else Ask.VALUE
        other = Unit.MMOL_L if own is Unit.MG_DL else Unit.MG_DL
        unsure = own is Unit.MG_DL and self.number in EITHER_UNIT
        if plausible(self.number, own) and not unsure:
            return own
        return Ask.UNIT if unsure or plausible(self.number, other) else Ask.VALUE


@dataclass(frozen=True, slots=True)
class _Patterns:
    with_unit: Pattern
    glucose: Pattern
    said: Pattern
    shown: Pattern
    on_it: Pattern
    scale: Pattern
    shown_by: Pattern
    had: Pattern


_DEVICES = (
    "meter metre machine monitor glucometer device screen display tester reader medidor glucometro "
    "aparato pantalla".split()
)
_DEVICE = f"(?:{'|'.join(_DEVICES)})"
_HIGH = ("hi", "high", "alto", "alta")
_SCALES = frozenset({"hi", "high", "lo", "low", "alto", "bajo"})


@cache
def _patterns(language: str) -> _Patterns:
    meter, says = either(gathered(language, "meter")), either(gathered(language, "meter_says"))
    scale = "(?P<scale>hi|high|lo|low|alto|bajo)"
    glucose = either(gathered(language, "glucose"))
    between = (
        r"(?: (?:just|only|me|a|the|:|=|-|is|was|now|still|again|keeps|on|solo|en|screen|me)){0,3}"
    )
    return _Patterns(
        with_unit=pattern(
            r"(?P<number>\d+(?:\.\d+)?) (?:(?P<mg>mg / dl|mg dl|mg / d l|mgdl|mg %|mgs?|milligrams)"
            r"|(?P<mmol>mmols? / l|mmols? l|mmols?|mm|millimoles?|mmoll|milimoles|mml|m mol))"
        ),
        glucose=pattern(glucose),
        said=pattern(f"{meter}{between} {says}{between} {scale}"),
        shown=pattern(
            f"(?:{says}|meter|medidor|glucometer|machine|monitor|aparato){between} {scale}"
        ),
        on_it=pattern(
            f"{scale}(?: (?:came up|comes up|came|popped up|showing|flashing|flashed))? (?:on|from|off|in|en) (?:(?:my|the|this|her|his|mums|dads|mi|el|la|su) )*{_DEVICE}"
            f"|{glucose}(?: (?:is|was|:|=|es|esta|fue))* (?P<scale3>hi|lo)"
            "|(?:got|getting|had|shows?|showing|me salio|salio) (?:a|an|another|un) (?P<scale2>hi|lo)"
        ),
        scale=pattern("(?P<scale>hi|lo)"),
        shown_by=pattern(
            f"(?:(?:my|the|mi|el|la|and|n|y) ){{0,2}}(?:{_DEVICE}|it){between} {says}(?: :)?"
            f"|(?:(?:my|the|mi|el|la|and|n|y) ){{0,2}}{_DEVICE} (?:was|is|at|gave|had|fue)(?= {BLOT})"
        ),
        had=pattern(
            rf"(?:(?:and|y|now|ahora|then|luego) )*(?:(?:la |el |mi |my |the )?{glucose} )?"
            r"(?:i am|im|its|it is|it came out|tengo|tenia|tuve|estoy|estaba|ando|quede|subi|subio|llegue|bajo(?= a )"
            r"|(?:se )?(?:me )?(?:dio|salio|marco|arrojo|da|sale|marca|tiro)|y ahora|and now)"
            rf"(?: (?:at|en|a|now|ya))?(?= {BLOT})"
        ),
    )


def alone(page: Page) -> Value | None:
    """The only thing in the message, where it is a number that a meter could show."""
    if len(page.tokens) > 1 or not _ON_A_METER.fullmatch(page.tokens[0].word):
        return None
    page.claim(0, 1)
    return _value(page, 0, 1, page.tokens[0].word, None)


#: `142`, `7.8`. Longer ones may be a year, a telephone, a count of steps.
_ON_A_METER = re.compile(r"[1-9]\d{1,2}|[1-9]\d?\.\d")


def with_units(page: Page, language: str, drugs: set[int]) -> list[Value]:
    """Claim numbers with a unit typed behind them; `mg` beside a drug is left to the doses."""
    found = []
    for span in page.find(_patterns(language).with_unit):
        if drugs & set(range(span.start - 3, span.end + 3)):
            continue
        page.claim(span.start, span.end)
        unit = Unit.MG_DL if span["mg"] else Unit.MMOL_L
        found.append(_value(page, span.start, span.end, span["number"] or "0", unit))
    return found


def bare(page: Page, amounts: set[int]) -> list[Value]:
    """Claim every other number that is no amount of food."""
    found = []
    for at in page.numbers:
        word = page.tokens[at].word
        if at not in amounts and page.free(at) and _NUMBER.fullmatch(word):
            page.claim(at, at + 1)
            found.append(_value(page, at, at + 1, word, None))
    return found


_NUMBER = re.compile(r"\d+(?:\.\d+)?")


def _value(page: Page, start: int, end: int, written: str, unit: Unit | None) -> Value:
    return Value(start=start, end=end, number=float(written), decimal="." in written, unit=unit)


_SWEETENED = frozenset(
    "with and of no brown white spoon spoons tsp teaspoon con y de azucar some without sin nae less "
    "zero ni poca poco extra more added low minus wi little reduced media cero".split()
)


def _beside_value(page: Page, start: int, end: int, food_at: set[int], amounts: set[int]) -> bool:
    """`pulse 88 and sugar 129`, `151 de azucar`: it names the value, and no food beside it."""
    before, ahead = page.words(max(start - 2, 0), start), page.words(end, end + 4)
    if len(before) == 2 and before[1] == "de" and start - 2 not in amounts:
        return before[0].isdigit() and float(before[0]) >= SWEETENED_UP_TO
    joined = before[-1:] in (["and"], ["n"], ["y"]) and start - 2 not in food_at
    while ahead and ahead[0] in _LEADS_TO_IT:
        ahead.pop(0)
    return joined and bool(ahead) and ahead[0].replace(".", "").isdigit()


_LEADS_TO_IT = frozenset("is was : es now ahora its at".split())
#: More spoons of sugar than this nobody counts (common practice, no source).
SWEETENED_UP_TO = 40


#: One of these is in the words that lead to a value.
_SHOWN_BY = frozenset({*_DEVICES, "it"})


def claim_names(
    page: Page,
    language: str,
    food_at: set[int],
    amounts: set[int],
    *,
    valued: bool,
    part_of: set[int],
) -> bool:
    """Claim what a reading is called (`my sugar`, which may also be a food); tell whether there
    was any. `valued` says that the message holds a value; `part_of` are words that are sugar only
    with others."""
    patterns = _patterns(language)
    found = False
    here = {token.word for token in page.tokens} if valued else set[str]()
    for span in [] if here.isdisjoint(_SHOWN_BY) else page.find(patterns.shown_by):
        found = True
        page.claim(span.start, span.end)
    for span in page.find(patterns.had) if valued else ():
        page.claim(span.start, span.end)
    for span in page.find(patterns.glucose):
        before = page.tokens[span.start - 1].word if span.start else ""
        as_food = set(range(span.start, span.end)) & food_at
        if as_food and _beside_value(page, span.start, span.end, food_at, amounts):
            as_food = set()
        if any(at in part_of for at in range(span.start, span.end)):
            continue  # `glucose` of `glucose tablets`
        if as_food and (before in _SWEETENED or span.start - 1 in amounts or not valued):
            page.claim(span.start + 1, span.end)  # `reading` of `bread without sugar reading 157`
            continue
        found = True
        page.claim(span.start, span.end)
    return found


def off_scale(page: Page, language: str) -> list[Value]:
    """Claim HI and LO: in capitals in a sentence that is not, or said of the meter."""
    if not page.holds(_SCALES):
        return []
    patterns = _patterns(language)
    found: list[Value] = []
    for sought in (patterns.said, patterns.shown):
        for span in page.find(sought):
            at_start = sought is patterns.said or _opens(page, span)
            if span["scale"] not in {"hi", "lo"} and _numbered(page):
                continue  # `salió alto 268`: said of the number
            named = sought is patterns.said  # whatever comes behind it: `meter says hi no idea why`
            if at_start and (_closes(page, span.end) or (named and not _greets(page, span.end))):
                found.append(_scale(page, span))
    on_it = [span for span in page.find(patterns.on_it) if _closes(page, span.end)]
    found += [_scale(page, span) for span in on_it]
    for span in page.find(patterns.scale):
        token = page.tokens[span.start]
        if page.shown[token.start : token.end].isupper() and _capital_means(page, span):
            found.append(_scale(page, span))
    return found


def _numbered(page: Page) -> bool:
    return any(
        page.free(at)
        and token.word[0].isdigit()
        and _MEASURED.isdisjoint(page.words(at + 1, at + 2))  # `shows HIGH after walk 30 min`
        for at, token in enumerate(page.tokens)
    )


_MEASURED = frozenset("min mins minutes minutos hours hour hrs km steps pasos miles laps".split())


def _scale(page: Page, span: Span) -> Value:
    page.claim(span.start, span.end)
    shown = span[span.match.lastgroup or ""]
    return Value(
        start=span.end - 1,
        end=span.end,
        off_scale=OffScale.HIGH if shown in _HIGH else OffScale.LOW,
    )


def _opens(page: Page, span: Span) -> bool:
    first = page.tokens[span.start].word
    alone = span.start == 0 or not page.tokens[span.start - 1].word.isalpha()
    return (
        first not in {"says", "say", "said", "gave", "gives"}
        or alone
        or page.tokens[span.start - 1].word
        in {"just", "only", "it", "and", "now", "still", "meter"}
    )


_MAY_FOLLOW = frozenset(
    "again now and after before then on at this what i im still with fasting pre post today but so "
    "help please thanks thank lol every each all 2 1 two for antes despues y otra".split()
)


def _closes(page: Page, end: int) -> bool:
    if end >= len(page.tokens):
        return True
    word = page.tokens[end].word
    return not word[0].isalpha() or word in _MAY_FOLLOW or not page.free(end)


def _greets(page: Page, end: int) -> bool:
    return page.tokens[end].word in _GREETED


_GREETED = frozenset(
    "there how everyone bot doctor good all guys friend dear nurse again my is".split()
)


def _capital_means(page: Page, span: Span) -> bool:
    """Capitals mean something only where not everything around is written in them."""
    following = page.tokens[span.end].word if span.end < len(page.tokens) else ""
    if following in _GREETED or following in {"mein", "fat", "carb", "tea", "carbs"}:
        return False
    around = [
        *page.tokens[max(span.start - 2, 0) : span.start],
        *page.tokens[span.end : span.end + 2],
    ]
    worded = "".join(
        page.shown[token.start : token.end] for token in around if token.word.isalpha()
    )
    if len(page.tokens) == 1 or (worded and not worded.isupper()):
        return True
    beside = {
        page.tokens[index].word
        for index in (span.start - 2, span.start - 1, span.end, span.end + 1)
        if 0 <= index < len(page.tokens)
    }
    return bool(beside & _BESIDE) or all(
        not t.word.isalpha() for i, t in enumerate(page.tokens) if i != span.start
    )


_BESIDE = frozenset(
    "meter says reads shows show showing read reading before after pre post fasting bedtime recheck "
    "glucometer machine monitor screen sugar 2h antes despues ayunas medidor marca dice display "
    "displays glucose hours hour h hrs".split()
)
