"""Who was there at a meal? `lunch with my sisters` has nothing eaten in it."""

# ruff: noqa: E501 - patterns, one a line

from functools import cache

from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.moments import meal_names
from bot.parser.page import Page, Pattern, pattern

_CROWD = (
    "(?:team|lads|girls|boys|gang|crew|colleagues|coworkers|workmates|guests|class|choir|staff|boss"
    "|visitors|relatives|in laws|equipo|familia|companeros)"
)


@cache
def _with_people(language: str) -> Pattern:
    people = either(gathered(language, "others"))
    return pattern(
        f"(?:with|w|con) (?:all )?(?:(?:my|the|our|mi|mis|la|las|el|los) )?(?:{people}s?|{_CROWD}"
        r"|mis (?:herman|amig|hij|prim|vecin|niet|ti|companer|suegr|sobrin|abuel)[oa]s?|mis padres?)(?= (?:[.,;:!?)]|\d|at |after |before |today |now |then |and |y |a las |en |$))"
    )


_WITH = frozenset({"with", "w", "con"})


def claim_company(page: Page, language: str, food_at: set[int]) -> None:
    """Claim who was there at a meal: `lunch with my sisters` has nothing eaten in it."""
    if not page.holds(_WITH):
        return
    names = meal_names(language)
    for span in page.find(_with_people(language)):
        before = span.start - 1
        eaten = not food_at.isdisjoint(range(span.start, span.end))  # `pollo con papas`
        eaten = eaten or (before in food_at and page.text(span.start, span.end) == "con papa")
        at_meal = before in food_at or (before >= 0 and page.tokens[before].word in names)
        if at_meal and not eaten:
            page.claim(span.start, span.end)
