"""Which word was spelt as it sounds? `unconshus`, `dropt`, `slurrd`, `thirstee`, `allunas`.

Two keys of a word: how it sounds, each run of vowels as one of five; and for words of signs with
consonants enough, what is left of that without telling the vowels apart, since a sign too many
costs less than one missed. Only a word that no list knows is looked for. The rules are rough on
purpose and our own, from memory.
"""

import re
from array import array
from bisect import bisect_left
from collections.abc import Iterable

from bot.parser.spelling import NUMBER, place

#: Shorter words have too many that sound like them: of signs, and of all that is looked for.
SHORTEST, SHORTEST_OF_ALL = 4, 5
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
        (r"ee|ea|ie|ei|ey", "i"), (r"a[iyeu]?|ay", "a"), (r"o[uow]|ew|ue|ui", "u"),
        (r"o[aei]?", "o"), (r"y", "i"), (r"(?<=[aeiou])w", ""), (r"(.)\1", r"\1"),
    )
)  # fmt: skip
_SPANISH = tuple(
    (re.compile(found), put)
    for found, put in (
        (r"ch|tx", "C"), (r"h", ""), (r"v|w", "b"), (r"z|c(?=[ei])|x", "s"),
        (r"qu(?=[ei])|q|c", "k"), (r"ll", "y"), (r"g(?=[ei])", "j"), (r"(?<=g)u(?=[ei])", ""),
        (r"y$", "i"), (r"(.)\1", r"\1"),
    )
)  # fmt: skip
_VOWELS = re.compile(r"[aeiou]+")
_ALIKE = ({"c", "k"}, {"f", "p"}, {"b", "v"}, {"s", "c"}, {"s", "z"}, {"y", "l"}, {"g", "j"},
          {"h", "a"}, {"h", "o"}, {"h", "i"}, {"h", "u"}, {"h", "e"})  # fmt: skip


class Sounds:
    """The words of one language by how they sound, filed as in `spelling`; of words that sound
    alike the first wins."""

    __slots__ = ("_filed", "_signs", "_spanish", "_words")

    def __init__(self, signs: Iterable[str], wanted: Iterable[str], code: str) -> None:
        self._spanish = code == "es"
        self._signs = tuple(signs)
        longer = (word for word in wanted if len(word) >= SHORTEST_OF_ALL)
        self._words = (*self._signs, *longer)
        filed: dict[int, int] = {}
        for number, word in enumerate(self._words):
            keys = self._keys(word)
            for key in keys if number < len(self._signs) else keys[:1]:
                filed.setdefault(place(key), number)
        self._filed = array("Q", sorted(start + number for start, number in filed.items()))

    def sign(self, word: str) -> str | None:
        """The word of a sign that sounds like this one, or None."""
        return self._meant(word, len(self._signs))

    def meant(self, word: str) -> str | None:
        """The word that sounds like this one, or None; a short one only if it is of a sign."""
        short = len(word) < SHORTEST_OF_ALL
        return self._meant(word, len(self._signs) if short else len(self._words))

    def _meant(self, word: str, among: int) -> str | None:
        if len(word) < SHORTEST or not word.isalpha():
            return None
        for key in self._keys(word):
            first = place(key)
            at = bisect_left(self._filed, first)
            if at == len(self._filed) or self._filed[at] - first > NUMBER:
                continue
            number = self._filed[at] - first
            found = self._words[number]
            if number < among and (found[0] == word[0] or {found[0], word[0]} in _ALIKE):
                return found
        return None

    def _keys(self, word: str) -> list[str]:
        """How it sounds, and without its vowels where its consonants tell it."""
        for found, put in _SPANISH if self._spanish else _ENGLISH:
            word = found.sub(put, word)
        if self._spanish:
            return [word]
        bare = _VOWELS.sub("A", word)
        return [word, bare] if sum(char != "A" for char in bare) >= _TELLING else [word]
