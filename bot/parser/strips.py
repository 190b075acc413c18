"""How many test strips are left?"""

# ruff: noqa: E501 - patterns, one a line

from collections.abc import Container
from dataclasses import dataclass
from functools import cache

from bot.entries import Strips
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Span, pattern


@dataclass(frozen=True, slots=True)
class _Patterns:
    counted: Pattern
    box: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    strips = either(gathered(language, "strips"))
    return _Patterns(
        counted=pattern(
            rf"(?:about |only |just |still |solo |i have |left with |a new |new |another |got |bought |a |una |un |with |of )*(?P<left>\d+)(?: (?:more|new|test|glucose|of my|left|testing|of the|of|mas|nuevas))* {strips}(?: (?:left|remaining|to go|now|more|in the box|only|in all|in total|de prueba))*"
        ),
        box=pattern(
            rf"(?:(?:new|a|another|full|fresh|one|1|nueva|una|opened|got|bought|my|box|caja|pack|vial|bottle|tub|{strips}|have|left|quedan|me|:|=|down|to|test(?! strip)|of|only|with|tengo|about|remaining|i|is|de) )*(?:box|pack|vial|caja|tub|{strips})(?: (?:of|left|de|nueva|nuevo|remaining|:|=|down to|down|to|with|i|have|quedan|,|only|me|test|strips|now|tiras|about|at))*+ (?P<left>\d+)(?! (?:mins?|minutes|minutos|hours?|hrs?) )(?: (?:left|remaining|now|strips|only|tiras))*"
        ),
    )


def _boxes(page: Page, language: str) -> tuple[int, int, Strips] | None:
    """`2 boxes of 50 strips` are 100."""
    if (span := page.first(_several(language))) is None or not (span["behind"] or span["before"]):
        return None
    boxes, each = int(span["boxes"] or 0), int(span["each"] or 0)
    page.claim(span.start, span.end)
    return span.start, span.end, Strips(left=boxes * each)


@cache
def _several(language: str) -> Pattern:
    strips = either(gathered(language, "strips"))
    return pattern(
        rf"(?:(?P<before>{strips}) (?:: |, )?)?(?P<boxes>[2-9]) (?:new |more |full )?(?:boxes|box|packs|vials|tubs|bottles|cajas|frascos|botes) (?:of|de|x|with|con) (?P<each>\d+)(?P<behind> (?:test |new )?{strips})?"
    )


_STRIP_WORDS = frozenset(["strip", "strips", "tiras", "tirillas"])


def _a_reading(page: Page, span: Span, language: str) -> bool:
    """Whether the number behind a comma has a moment of its own."""
    ahead = page.words(span.end, span.end + 1)
    moments = {*gathered(language, "before"), *gathered(language, "after")}
    return "," in page.words(span.start, span.end) and bool(ahead) and ahead[0] in moments


_NONE = frozenset(["no", "without", "sin", "any", "zero", "0", "ningun", "ninguna"])


def _none(page: Page, start: int) -> bool:
    """Whether it is said there that none are left."""
    before = page.words(max(start - 2, 0), start)
    return before[-1:] != [] and (before[-1] in _NONE or before == ["out", "of"])


def find(page: Page, language: str, food_at: Container[int]) -> list[tuple[int, int, Strips]]:
    """Claim a number of strips, but for those of food (`chicken strips 142`)."""
    if (boxes := _boxes(page, language)) is not None:
        return [boxes]
    patterns = _patterns(language)
    found = []
    for sought in (patterns.counted, patterns.box):
        for span in page.find(sought):
            if any(at in food_at for at in range(span.start, span.end)):
                continue
            if _a_reading(page, span, language):
                continue  # `paid 40 for strips, 136 before dinner`
            if span.start and page.tokens[span.start - 1].word in {
                "used",
                "ordered",
                "need",
                "order",
                "buy",
                "cost",
                "paid",
                "for",
                "use",
            }:
                page.claim(span.start, span.end)
                continue
            words = page.words(span.start, span.end)
            if (
                span.start
                and words[1:2] == [","]
                and len(words) == 3
                and words[0] not in _STRIP_WORDS
            ):
                continue  # `koshari medium box, 122`
            if not page.tokens[span.start].word[0].isdigit() and _none(page, span.start):
                continue  # `no strips left 54`
            if page.words(span.end, span.end + 1) == ["of"]:
                continue  # `three strips of bacon`
            page.claim(span.start, span.end)
            found.append((span.start, span.end, Strips(left=int(span["left"] or 0))))
    return found[-1:]
