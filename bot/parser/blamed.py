"""Which food is named only as what a value comes from? `201 must be the rice`.

It was eaten before the reading, whenever that was: no meal begins with it, and the reading is not
before it.
"""

from functools import cache

from bot.parser.languages import gathered
from bot.parser.lead_ins import Lead
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, pattern
from bot.parser.values import Value


@cache
def _pattern(language: str) -> Pattern:
    return pattern(either(gathered(language, "blamed")))


def find(page: Page, language: str, food_at: set[int], values: list[Value]) -> list[Lead]:
    """Claim the words behind a value that blame what was eaten, and give them as what leads it
    in."""
    found: list[Lead] = []
    if not values or not food_at:
        return found
    for span in page.find(_pattern(language)):
        named = not food_at.isdisjoint(range(span.end, span.end + _REACH))
        if span.start > values[0].start and named:
            page.claim(span.start, span.end)
            found.append(Lead(start=span.start, end=span.end, strong=True, past=True, blamed=True))
    return found


#: Between the blame and the food: `all that`, `the two`.
_REACH = 3
