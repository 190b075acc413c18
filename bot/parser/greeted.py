"""Is what nobody has claimed only a greeting, or thanks? Asked where nothing else was found."""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.languages import filler, gathered
from bot.parser.page import Page
from bot.parser.phrases import Phrases
from bot.parser.vocabulary.greetings import THANKED_ELSEWHERE


@cache
def _greetings(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "greetings"), True)])


def claimed(page: Page, language: str) -> list[tuple[int, int]]:
    """Claim thanks and greetings."""
    phrases = _greetings(language)
    found = []
    index = len(page.tokens) if phrases.heads.isdisjoint(page.held) else 0
    while index < len(page.tokens):
        hit = phrases.longest(page, index, len(page.tokens))
        if hit is None:
            index += 1
        else:
            found.append((index, hit[0]))
            index = hit[0]
    for start, end in found:
        page.claim(start, end)
    return found


def says_more(page: Page, language: str, greeted: list[tuple[int, int]]) -> bool:
    """Whether words are left beside greetings that are not everyday ones; whoever is thanked
    may have any name (`thank you teresa`)."""
    everyday = filler(language)
    left = [word for _, word in page.find_words(0, len(page.tokens)) if word[0].isalnum()]
    start, end = greeted[-1]
    named = len(page.tokens) - end <= _NAME and not _THANKS.isdisjoint(page.words(start, end))
    if named and all(word.isalpha() for word in page.words(end, len(page.tokens))):
        return False
    return len(left) > 4 or any(word not in everyday for word in left)


_NAME = 2
_THANKS = frozenset("thanks thank thankyou thx ty cheers gracias".split()) | {
    thanks.split()[0] for thanks in THANKED_ELSEWHERE
}
