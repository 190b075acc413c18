"""How does the body feel, and is it so now? Never missed for want of a number."""

from dataclasses import dataclass
from functools import cache

from bot.entries import Suggests
from bot.parser.languages import gathered, lexica
from bot.parser.page import Page
from bot.parser.phrases import Phrases

#: How far a denial reaches: `not dizzy or shaky any more`.
REACH = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class Feeling:
    """A symptom in the text: `now` false if it is denied or was over before today."""

    start: int
    end: int
    suggests: Suggests
    now: bool = True


@cache
def _phrases(language: str) -> Phrases[Suggests]:
    return Phrases(
        (lexicon.symptoms[level], level)
        for lexicon in lexica(language)
        for level in (Suggests.EMERGENCY, Suggests.LOW, Suggests.HIGH)
    )


def words(language: str) -> set[str]:
    """Every word of a symptom, for mending misspelt ones."""
    return _phrases(language).words


@cache
def _denials(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "denials"), True)])


@cache
def _gone(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "denials_after"), True)])


#: Words after which a denial no longer reaches.
_TURNS = frozenset("but still except however now pero aun sino . ; !".split())
_STILL = frozenset("still since aun todavia sigo sigue desde".split())


def find(page: Page, language: str) -> list[Feeling]:
    """Claim every symptom, denied ones too, and give them in order."""
    phrases = _phrases(language)
    found: list[Feeling] = []
    index = 0
    while index < len(page.tokens):
        hit = phrases.longest(page, index, len(page.tokens))
        if hit is None:
            index += 1
            continue
        end, level = hit
        denied = _denied(page, index, end, language)
        found.append(Feeling(start=index, end=end, suggests=level, now=not denied))
        index = end
    for feeling in found:
        page.claim(feeling.start, feeling.end)
    return found


def _denied(page: Page, start: int, end: int, language: str) -> bool:
    denials = _denials(language)
    words = [token.word for token in page.tokens]
    for at in range(start - 1, max(-1, start - 1 - REACH), -1):
        if words[at] in _TURNS:
            break
        hit = denials.longest(page, at, start)
        if hit is not None and not _double(words, at, hit[0]):
            return True
    gone = _gone(language)
    for at in range(end, min(end + 3, len(words))):
        if words[at] in {",", ".", "but", "pero", ";"}:
            break
        if gone.longest(page, at, len(words)) is not None:
            return True
    return False


def _double(words: list[str], start: int, end: int) -> bool:
    """`not only dizzy`, `no doubt`, `can't stop shaking`: no denial."""
    after = words[end] if end < len(words) else ""
    before = words[start - 1] if start else ""
    return after in {"only", "just", "doubt", "solo", "idea", "sure", "feeling"} and after != "feeling" or before in {
        "cant", "cannot", "wont", "hasnt", "havent", "not", "doesnt", "never", "didnt", "dont",
    }


def still(page: Page) -> bool:
    """Whether the words say that it goes on (`since yesterday`, `still`)."""
    return any(token.word in _STILL for token in page.tokens)
