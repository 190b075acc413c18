"""Which word was spelt as it sounds? `unconshus`, `dropt`, `slurrd`, `thirstee`, `allunas`.

Two keys of a word: how it sounds, each run of vowels as one of five; and for words of signs with
consonants enough, what is left of that without telling the vowels apart, since a sign too many
costs less than one missed. Only a word that no list knows is looked for. The rules are rough on
purpose and our own, from memory.
"""

import re
from collections.abc import Container, Iterable

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
    """The words of one language by how they sound; of words that sound alike the first wins."""

    __slots__ = ("_filed", "_spanish")

    def __init__(self, signs: Iterable[str], wanted: Iterable[str], code: str) -> None:
        self._spanish = code == "es"
        self._filed: dict[str, str] = {}
        for word in signs:
            for key in self._keys(word):
                self._filed.setdefault(key, word)
        for word in wanted:
            if len(word) >= SHORTEST_OF_ALL:
                self._filed.setdefault(self._keys(word)[0], word)

    def meant(self, word: str, signs: Container[str]) -> str | None:
        """The word that sounds like this one, or None; a short one only if it is of `signs`."""
        if len(word) < SHORTEST or not word.isalpha():
            return None
        for key in self._keys(word):
            found = self._filed.get(key)
            if found is None or not (len(word) >= SHORTEST_OF_ALL or found in signs):
                continue
            if found[0] == word[0] or {found[0], word[0]} in _ALIKE:
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
