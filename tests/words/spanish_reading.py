"""Reading ease of Spanish by the scale of Fernández Huerta, counted in two ways.

Fernández Huerta, J. (1959): Medidas sencillas de lecturabilidad. Consigna 214, 29-32. The form
and the table of school grades are those of legible.es (206.84 - 60 syllables a word - 1.02 words a
sentence; 70 to 80: sixth grade; higher is easier). textstat counts syllables by hyphenation, which
never parts a lone vowel (`día` has one, `energía` two); so they are counted by the rules of the
language as well, and the harder of the two figures holds.
"""

import re
from itertools import pairwise

from textstat.backend.metrics import fernandez_huerta  # type: ignore[import-untyped]

#: The lowest figure of the sixth grade.
SIXTH_GRADE = 70

_WORD = re.compile(r"[^\W_]+(?:[./][^\W_]+)*")
_SENTENCE_END = re.compile(r"[.?!](?=\s|$)|\n")
_VOWELS = re.compile(r"[aeiouáéíóúü]+")
_SILENT = re.compile(r"(?<=q)u(?=[eiéí])|(?<=g)u(?=[eiéí])")


def ease(text: str) -> float:
    """The harder of the two figures; in ours a new line ends a sentence, too."""
    words = _WORD.findall(text)
    sentences = [one for one in _SENTENCE_END.split(text) if _WORD.search(one)]
    own = 206.84 - 60 * sum(map(syllables, words)) / len(words) - 1.02 * len(words) / len(sentences)
    return min(own, float(fernandez_huerta(text, "es")))


def syllables(word: str) -> int:
    """Vowels that stand together are one syllable, unless two of them part (hiatus): strong from
    strong (`le-er`), and a weak one with the accent from a strong one (`dí-a`)."""
    plain = re.sub(r"y$|^y$", "i", _SILENT.sub("", word.casefold())).replace("h", "")
    nuclei = 0
    for group in _VOWELS.findall(plain):
        nuclei += 1 + sum(_part(one, other) for one, other in pairwise(group))
    return max(nuclei, 1)


def _part(one: str, other: str) -> bool:
    strong = "aeoáéó"
    if one in strong and other in strong:
        return True
    return (one in strong and other in "íú") or (one in "íú" and other in strong)
