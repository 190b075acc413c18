"""What leads in food, and only where food follows: `demolished a pizza`, `went for the salad`."""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.activity import measures
from bot.parser.food import amount_words
from bot.parser.lead_ins import PAST, Lead
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, pattern
from bot.parser.vocabulary.eating import EATING


@cache
def _eating() -> Pattern:
    ahead = (
        "i|we|she|he|ive|im|am|is|was|just|only|have|has|been|and|then|so|now|about to|bout to"
        "|fixing to|fixin to|let me|lemme|time to|ready to|finally|already|currently|also"
    )
    return pattern(rf"(?:(?:{ahead}) )*(?P<lead>{either(EATING)})")


#: So many words of an amount may stand between (`demolished half of a big pizza`).
_BETWEEN = 4
_SMALL = frozenset(
    ": - the my some of this that a an another about only just big small large half whole".split()
)
_ASKED = frozenset("should can could shall may must would do does if when".split())
_DENIED = frozenset("not no didnt dont never havent wont without cant".split())


def find(page: Page, language: str, food_at: set[int], worked: set[int]) -> list[Lead]:
    """Claim and give them. What is done for a length of time is `worked` and leads to none."""
    if not food_at:
        return []
    found = []
    for span in page.find(_eating()):
        before = page.words(max(span.start - 2, 0), span.start)
        if _DENIED.intersection(before[-1:]) or _ASKED.intersection(before):
            continue
        if food_at.intersection(range(span.start, span.end)) or not _food_follows(
            page, span.end, language, food_at
        ):
            continue
        if worked.intersection(range(span.start, span.end)) and measures(page, language):
            continue
        page.claim(span.start, span.end)
        past = not PAST.isdisjoint(page.words(span.start, span.end))
        found.append(Lead(start=span.start, end=span.end, strong=True, past=past))
    return found


def _food_follows(page: Page, end: int, language: str, food_at: set[int]) -> bool:
    small = amount_words(language) | _SMALL
    for at in range(end, min(end + _BETWEEN + 1, len(page.tokens))):
        if at in food_at:
            return True
        word = page.tokens[at].word
        if not page.free(at) or not (word in small or word.isdigit()):
            return False
    return False
