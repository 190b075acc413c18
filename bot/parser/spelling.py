"""Which known word was meant by a word that is in no list? One slip of the finger away, or none.

Every known word is filed under itself with each letter left out in turn, so that a look-up costs
the length of the word, not that of the list. What is filed is a number a place, made of the
letters' hash and the word's own number: a dictionary of the letters would be twenty times as large.
"""

from array import array
from bisect import bisect_left
from collections.abc import Container, Iterable, Iterator

#: Shorter words have too many neighbours.
SHORTEST = 5

#: Bits for a word's number; of the hash as many are kept as fit beside it into 64.
_NUMBER_BITS = 20
NUMBER = (1 << _NUMBER_BITS) - 1
_HASH = (1 << 64 - _NUMBER_BITS) - 1


class Spelling:
    """Known words by what is left of them; those named first win."""

    __slots__ = ("_filed", "_known", "_wanted")

    def __init__(self, wanted: Iterable[str], known: Container[str]) -> None:
        self._known = known
        self._wanted = tuple(word for word in wanted if len(word) >= SHORTEST and word.isalpha())
        self._filed = array(
            "Q",
            sorted(
                place(rest) + number
                for number, word in enumerate(self._wanted)
                for rest in _rests(word)
            ),
        )

    def meant(self, word: str) -> str | None:
        """The word that was meant, or None."""
        if len(word) < SHORTEST or word in self._known or not word.isalpha():
            return None
        for rest in _rests(word):
            for near in self._filed_under(rest):
                if near[0] == word[0] and one_slip(near, word):
                    return near
        return None

    def _filed_under(self, rest: str) -> Iterator[str]:
        """Words with this rest (and, hardly ever, one whose rest has the same hash)."""
        first = place(rest)
        at = bisect_left(self._filed, first)
        while at < len(self._filed) and self._filed[at] - first <= NUMBER:
            yield self._wanted[self._filed[at] & NUMBER]
            at += 1


def one_slip(meant: str, typed: str) -> bool:
    """Whether one letter was left out, put in or taken for another, or two changed places."""
    if meant == typed:
        return False
    at = next((at for at, (one, other) in enumerate(zip(meant, typed)) if one != other), None)  # noqa: B905
    if at is None:  # the one begins the other
        return abs(len(meant) - len(typed)) == 1
    rest, other = meant[at:], typed[at:]
    return (
        rest[1:] in (other, other[1:])
        or rest == other[1:]
        or (rest[:2] == other[1::-1] and rest[2:] == other[2:])
    )


def _rests(word: str) -> tuple[str, ...]:
    return (word, *dict.fromkeys(word[:at] + word[at + 1 :] for at in range(len(word))))


def place(rest: str) -> int:
    """Where a word is filed under these letters; its number is added, `NUMBER` at most."""
    return (hash(rest) & _HASH) << _NUMBER_BITS
