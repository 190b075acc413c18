"""In which language a message of the bot's is, as a chat does not tell.

It is known by the words that stand in the sentences of one language only. A page has to say it of
each part in another language than its own, so that it is read out as that (WCAG 2.2, 3.1.2).
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from functools import cache

from bot.words.language import LANGUAGES

WORD = re.compile(r"[^\W\d_]+")
#: What stands in a sentence for what is filled in.
GAP = re.compile(r"\{[^}]*\}")


def spoken(text: str) -> str | None:
    """The language's code; None where nothing tells, as in a number alone."""
    words = [word.casefold() for word in WORD.findall(text)]
    heard = {code: sum(word in own for word in words) for code, own in _words_of_one().items()}
    best = max(heard, key=lambda code: heard[code])
    others = [count for code, count in heard.items() if code != best]
    return best if heard[best] > max(others, default=0) else None


@cache
def _words_of_one() -> Mapping[str, frozenset[str]]:
    """The words that only one language's sentences have, by its code."""
    every = {code: frozenset(_words(whole)) for code, whole in LANGUAGES.items()}
    return {
        code: words.difference(*(other for one, other in every.items() if one != code))
        for code, words in every.items()
    }


def _words(part: object) -> Iterator[str]:
    """Every word of the sentences in a part; what is worked out by a function is passed by."""
    if isinstance(part, str):
        yield from (word.casefold() for word in WORD.findall(GAP.sub(" ", part)))
    elif is_dataclass(part):
        for field in fields(part):
            yield from _words(getattr(part, field.name))
    elif isinstance(part, Mapping):
        for value in part.values():
            yield from _words(value)
    elif isinstance(part, list | tuple | set | frozenset):
        for value in part:
            yield from _words(value)
