"""Which word of a sign was spelt as it sounds? `unconshus`, `dropt`, `slurrd`, `thirstee`.

Two keys of a word: how it sounds, each run of vowels as one of five, and what is left of that
without telling the vowels apart, for words with consonants enough. Only words on which much hangs
are found so, and only for a word that no list knows: a sign too many costs less than one missed.
The rules are rough on purpose and our own, from memory.
"""

import re
from collections.abc import Iterable, Mapping
from functools import cache

from bot.parser.vocabulary.slips import SOUNDED

#: Shorter words have too many that sound like them.
SHORTEST = 4
#: So many consonants tell a word whatever its vowels are.
_TELLING = 4

_ENGLISH = tuple(
    (re.compile(found), put)
    for found, put in (
        (r"^kn|^gn", "n"), (r"^wr", "r"), (r"^ps", "s"), (r"^wh", "w"),
        (r"sci(?=[aeou])|ti(?=on|ou)|ci(?=ou|a)|s?si(?=on)|sh", "S"),
        (r"tch|ch", "C"), (r"ph", "f"), (r"dge", "j"), (r"gh", ""), (r"ck", "k"),
        (r"c(?=[eiy])", "s"), (r"[cq]u?(?=[aeiou])|c", "k"), (r"x", "ks"), (r"z", "s"),
        (r"mb$", "m"), (r"([^aeiou])\1", r"\1"),
        (r"(?<=[td])ed$", "it"), (r"(?<=[^aeiou])ed$|d$", "t"), (r"ing?$|en$", "n"),
        (r"(?:ee|ie|ey|y|ea|i)$", "i"), (r"(?<=[^aeiou])e$", ""),
        (r"ee|ea|ie|ei|ey", "i"), (r"a[iyeu]?|ay", "a"), (r"o[uow]|ew|ue|ui", "u"), (r"o[aei]?", "o"),
        (r"y", "i"), (r"(?<=[aeiou])w", ""), (r"(.)\1", r"\1"),
    )
)  # fmt: skip
_SPANISH = tuple(
    (re.compile(found), put)
    for found, put in (
        (r"ch|tx", "C"), (r"h", ""), (r"v|w", "b"), (r"z|c(?=[ei])|x", "s"), (r"qu(?=[ei])|q|c", "k"),
        (r"ll", "y"), (r"g(?=[ei])", "j"), (r"(?<=g)u(?=[ei])", ""), (r"y$", "i"),
        (r"(.)\1", r"\1"),
    )
)  # fmt: skip
_VOWELS = re.compile(r"[aeiou]+")


def meant(word: str, language: str) -> str | None:
    """The word of a sign that sounds like this word of no list, or None."""
    if len(word) < SHORTEST or not word.isalpha():
        return None
    for code in dict.fromkeys((language, "en")):
        for key in _keys(word, code):
            if (found := _filed(code).get(key)) is not None and found[0] == _first(word, found):
                return found
    return None


def _first(word: str, found: str) -> str:
    """The first letter of a word, in the spelling of the one that was found."""
    return found[0] if {word[0], found[0]} in _ALIKE else word[0]


_ALIKE = ({"c", "k"}, {"f", "p"}, {"b", "v"}, {"s", "c"}, {"s", "z"}, {"y", "l"}, {"g", "j"})


@cache
def _filed(code: str) -> Mapping[str, str]:
    """Words by their keys; of words that sound alike the first."""
    return _index(SOUNDED[code], code)


def _index(words: Iterable[str], code: str) -> dict[str, str]:
    filed: dict[str, str] = {}
    for word in words:
        for key in _keys(word, code):
            filed.setdefault(key, word)
    return filed


def _keys(word: str, code: str) -> list[str]:
    """How it sounds, and without its vowels where its consonants tell it."""
    for found, put in _SPANISH if code == "es" else _ENGLISH:
        word = found.sub(put, word)
    if code == "es":
        return [word]
    bare = _VOWELS.sub("A", word)
    return [word, bare] if sum(char != "A" for char in bare) >= _TELLING else [word]
