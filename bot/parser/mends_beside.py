"""Does the message begin with a correction or a removal, or end with one, and tell more besides?"""

# ruff: noqa: SIM905 - word sets read best as one string

from datetime import datetime

from bot.entries import Correction, Meal, Reading, Removal, Understood
from bot.parser import removals
from bot.parser.corrections import REPORTING, Mend, find, part_of
from bot.parser.page import Page
from bot.units import Unit

_ENDS = frozenset(", . ; ! and n plus but y pero".split())
#: Behind a mend they tell how one feels (`that was after n im shaky`).
_FEELING = (["im"], ["feeling"], ["i", "feel"], ["i", "am"], ["estoy"], ["me", "siento"])
_PASSED_OVER = _ENDS | {"now", "i", "im", "am", "its"}


def opening(page: Page, language: str, at: datetime, own: Unit) -> tuple[int, Mend] | None:
    """A correction of a number, or a removal, in front of something else: where the rest begins
    (`undo, I feel faint`, `sorry 162 not 126, having roti`)."""
    for end, token in enumerate(page.tokens[:-1]):
        told = end > 1 and token.word == "its" and page.tokens[end + 1].word[0].isdigit()
        if told and removals.takes_back(part_of(page, 0, end), language):
            return end, Mend(entry=Removal())  # `ignore my last its 140 after lunch`
        if token.word not in _ENDS or end < 1:
            continue
        part = part_of(page, 0, end)
        if removals.takes_back(part, language):
            return end + 1, Mend(entry=Removal())
        mend = find(part, language, at, own)
        if mend is not None and _parted(page, end, mend.entry):
            joined = end + 2 < len(page.tokens) and page.tokens[end + 1].word in _ENDS
            return end + 1 + joined, mend  # `perdón 152, y ahora 140`
        if end > removals.LONGEST:
            break
    return None


def _parted(page: Page, end: int, entry: Correction | Removal | None) -> bool:
    """Whether a mend surely ends at a mark: a number does, and words at the end of a sentence or
    before a number (`not beans, toast. and now 8.1 after`)."""
    if not isinstance(entry, Correction):
        return False
    behind = [word for word in page.words(end, end + 4) if word not in _PASSED_OVER]
    valued = behind[:1] != [] and (behind[0][0].isdigit() or behind[0] in REPORTING)
    felt = page.words(end + 1, end + 2) in _FEELING or page.words(end + 1, end + 3) in _FEELING
    return bool(entry.value) or (page.tokens[end].word == "." and bool(behind)) or valued or felt


def closes(page: Page, language: str) -> int | None:
    """Where the words in front of a removal end (`that was my wife's meter, delete that`)."""
    last = len(page.tokens) - 1
    if last > removals.LONGEST * 2 or not removals.may_take_back(page, language):
        return None
    for end in range(last, 0, -1):
        if page.tokens[end].word in _ENDS and end < last:
            return end if removals.takes_back(part_of(page, end + 1, last + 1), language) else None
    return None


_NOW = frozenset({"now", "ahora", "ahorita", "new"})


def stands_beside(page: Page, mend: Correction | Removal, after: Page, rest: Understood) -> bool:
    """Whether what follows a mend is a report of its own: `sorry 6.5, now 8.0 after`, `sorry not
    rice, bread. 166 after`, `wrong, it's 117, and 30 strips left`."""
    if rest.ask is not None:
        return False
    if all(isinstance(each, Reading) for each in rest.entries):
        other = isinstance(mend, Correction) and mend.value is None
        return other or after.holds(_NOW)
    if isinstance(mend, Correction) and mend.moment is not None:
        return True  # `that was after, and having papaya now`
    sentence = _before(page, after) == ["."]
    if not any(isinstance(each, Meal) for each in rest.entries):
        if isinstance(mend, Correction) and mend.text is not None and sentence:
            return True  # `not bread, cassava. 14 strips left`
        joined = not _AND.isdisjoint(_before(page, after))
        return plainly(page, mend) or (joined and _sorry_for(page))
    if _sorry_for(page) and sentence:
        return True  # `sorry 141. supper now`
    if _sorry_for(page) and not REPORTING.isdisjoint(after.words(0, 1)):
        return True  # `sorry 146, eating rice`
    return page.holds(_MEANT)


def plainly(page: Page, entry: Correction | Removal) -> bool:
    """Whether more than `sorry`, which may excuse a delay (`sorry, 162, was on the bus`), says that
    something was wrong: `I meant 145, wrong glasses`."""
    mistaken = page.holds(_MISTAKEN)
    mistaken = mistaken or page.tokens[0].word == "*"
    return isinstance(entry, Removal) or entry.replaces is not None or mistaken


_AND = frozenset({"and", "n", "plus", "y"})


def _before(page: Page, after: Page) -> list[str]:
    """The word that joins a mend and what follows it."""
    at = len(page.tokens) - len(after.tokens)
    return page.words(at - 1, at)


def _sorry_for(page: Page) -> bool:
    """`sorry 117 n walked 10 min`: with no mark behind it, `sorry` is said of the number."""
    words = page.words(0, 2)
    return words[0] in {"sorry", "oops", "perdon"} and words[1:] != [] and words[1][0].isdigit()


#: With one of these it is sure enough for a meal to follow (`quise decir 148, cena: milanesa`).
_MEANT = frozenset("meant misread mistyped typo wrong correction quise equivoque".split())
_MISTAKEN = frozenset(
    "meant misread misheard wrong wrongly typo mistake mistyped glasses fingers fingered thumb "
    "thumbs autocorrect error quise equivoque lentes gafas anteojos mal".split()
)
