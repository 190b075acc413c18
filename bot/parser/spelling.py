"""Which known word was meant by a word that is in no list? One slip of the finger away, or none.

Every known word is filed under itself with each letter left out in turn, so that a look-up costs
the length of the word, not that of the list; rapidfuzz (MIT licence) measures what it finds.
"""

from collections.abc import Iterable

from rapidfuzz.distance import OSA

#: Shorter words have too many neighbours.
SHORTEST = 5


class Spelling:
    """Known words by what is left of them; those named first win."""

    __slots__ = ("_filed", "_known")

    def __init__(self, wanted: Iterable[str], known: Iterable[str]) -> None:
        self._known = frozenset(known)
        self._filed: dict[str, list[str]] = {}
        for word in wanted:
            if len(word) >= SHORTEST and word.isalpha():
                for rest in _rests(word):
                    self._filed.setdefault(rest, []).append(word)

    def meant(self, word: str) -> str | None:
        """The word that was meant, or None."""
        if len(word) < SHORTEST or word in self._known or not word.isalpha():
            return None
        for rest in _rests(word):
            for near in self._filed.get(rest, ()):
                if near[0] == word[0] and OSA.distance(near, word, score_cutoff=1) == 1:
                    return near
        return None


def _rests(word: str) -> tuple[str, ...]:
    return (word, *dict.fromkeys(word[:at] + word[at + 1 :] for at in range(len(word))))
