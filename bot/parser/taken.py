"""Was sugar taken against a low (`took 3 glucose tablets`)? What is taken is no meal to come."""

# ruff: noqa: SIM905 - word sets read best as one string

from bot.parser.food import Dish
from bot.parser.lead_ins import Lead
from bot.parser.page import Page


def find(page: Page, dishes: list[Dish]) -> list[Lead]:
    """Claim `took` before sugar, which nobody eats as a meal to come."""
    found = []
    for dish in dishes:
        at = dish.start - 1
        while dish.sugar and at >= max(dish.start - 3, 0) and page.free(at):
            if page.tokens[at].word in _TAKEN:
                page.claim(at, at + 1)
                found.append(Lead(start=at, end=at + 1, strong=True, past=True))
            at -= 1
    return found


_TAKEN = frozenset("took taken chewed sucked swallowed tome mastique chupe di".split())
