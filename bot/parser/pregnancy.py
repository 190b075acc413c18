"""Is a pregnancy told? `I'm pregnant`; by a helper's hand `she's pregnant`."""

from dataclasses import dataclass
from functools import cache

from bot.entries import By, Request, What
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, pattern
from bot.parser.requests import Wish


@dataclass(frozen=True, slots=True)
class _Patterns:
    pregnant: Pattern
    not_pregnant: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    pregnant = either(gathered(language, "pregnant"))
    denied = either(gathered(language, "not_pregnant"))
    return _Patterns(
        pregnant=pattern(pregnant),
        not_pregnant=pattern(
            rf"{denied}(?: [a-z]+){{0,3}} {pregnant}"
            rf"|{pregnant}(?: [a-z]+){{0,2}} (?:negative|negativo|negativa)"
        ),
    )


_HOW_LONG = frozenset(
    ["weeks", "week", "wks", "wk", "months", "month", "semanas", "semana", "meses", "mes"]
)
_SHE = frozenset({"she", "shes", "her", "wife", "daughter", "ella", "esposa", "hija", "mujer"})


def find(page: Page, language: str, by: By) -> list[Wish]:
    """`I'm pregnant`; by a helper's hand `she's pregnant`."""
    patterns = _patterns(language)
    if (span := page.first(patterns.pregnant)) is None:
        return []
    denied = page.first(patterns.not_pregnant)
    if denied is not None and not (
        by is By.HELPER and page.words(denied.start, denied.end)[0] in _SHE
    ):
        return []
    start = max(span.start - 5, 0)
    marked = [
        at
        for at in range(start, span.start)
        if page.tokens[at].word in {"and", "n", "y"}
        or (not page.tokens[at].word.isalpha() and page.tokens[at + 1].word not in _HOW_LONG)
    ]
    for index in range(marked[-1] + 1 if marked else start, span.end):
        if page.free(index):
            page.claim(index, index + 1)
    return [Wish(start=span.start, end=span.end, request=Request(what=What.PREGNANCY))]
