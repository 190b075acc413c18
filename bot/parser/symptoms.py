"""How does the body feel, and is it so now? Never missed for want of a number."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Container
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise

from bot.entries import Suggests
from bot.parser.around_signs import VOMITED, brought_up, led_in, likened, where
from bot.parser.denied import denied, deniers
from bot.parser.languages import LEXICA, of_all
from bot.parser.misspelt import no_slips
from bot.parser.page import Page
from bot.parser.pairs import paired
from bot.parser.phrases import Phrases
from bot.parser.supposed import is_supposed
from bot.parser.things import SaidOf, said_of
from bot.parser.vocabulary.symptoms import NOT_SYMPTOMS, WEAK_SIGNS


@dataclass(frozen=True, slots=True, kw_only=True)
class Feeling:
    """A symptom in the text: `now` false if it is denied or was over before today; `of` whom."""

    start: int
    end: int
    suggests: Suggests
    now: bool = True
    of: SaidOf = SaidOf.ONESELF


_GRAVEST_FIRST = (Suggests.EMERGENCY, Suggests.LOW, Suggests.HIGH)


@cache
def _signs(code: str) -> Phrases[Suggests | None]:
    signs = LEXICA[code].symptoms
    return Phrases((signs[level], level) for level in _GRAVEST_FIRST)


@cache
def _phrases(language: str) -> Phrases[Suggests | None]:
    """The signs of all languages; None for talk that holds a sign's words (`low fat`)."""
    return _talk() | of_all(language, _signs)


@cache
def _talk() -> Phrases[Suggests | None]:
    return Phrases([(NOT_SYMPTOMS, None)])


#: Words that are signs where nothing else is said (`stroke!`, not `a stroke of luck`).
_ALONE = dict.fromkeys(
    ("stroke", "a stroke", "fits", "a fit", "fitting", "no air", "un ataque"), Suggests.EMERGENCY
)
_FEW = 4  # words and marks
_STILL = frozenset("still since aun todavia sigo sigue desde".split())


def find(page: Page, language: str) -> list[Feeling]:
    """Give every symptom, denied ones too, in order; nothing is claimed yet."""
    phrases = _phrases(language)
    found: list[Feeling] = []
    passed: set[int] = set()  # what is a sign, or only looks like one
    heads, words = phrases.heads, page.words(0, len(page.tokens))
    index, count = 0, len(words)
    while index < count:
        hit = phrases.longest(page, index, count) if words[index] in heads else None
        if hit is None:
            index += 1
            continue
        end, level = hit
        if words[end - 1] in {"as", "like"}:  # whatever it is likened to
            end = likened(page, end - 1)
        passed.update(range(index, end))
        if level is not None:
            found.append(Feeling(start=index, end=end, suggests=level))
        index = end
    if not found and count <= _FEW and (alone := _ALONE.get(page.said())) is not None:
        found.append(Feeling(start=0, end=len(page.said().split()), suggests=alone))
    found += [
        Feeling(start=sign.start, end=sign.end, suggests=sign.suggests, now=not sign.denied)
        for sign in paired(page, language, passed)
    ]
    found += _much_thirst(words, passed) if "thirsty" in page.held else []
    denying = page.holds(deniers(language))
    if not found and not denying:
        return found
    found = [_of_one_side(words, feeling) for feeling in found]
    found = _kept_nothing_down(words, found)
    known = no_slips(language)
    found = [
        _said(page, feeling, known)
        for feeling in _felt(page, found)
        if not (_of_value(words, feeling) or _of_food(words, feeling))
    ]
    if not denying:
        return sorted(found, key=lambda feeling: feeling.start)
    told = {at for feeling in found for at in range(feeling.start, feeling.end)}
    found = [
        replace(
            feeling,
            now=feeling.now
            and not denied(page, words, feeling.start, feeling.end, language=language, told=told),
        )
        if not _does_not_stay(words, feeling)
        else feeling
        for feeling in found
    ]
    found += _weak_and_denied(page, language, told)
    return sorted(found, key=lambda feeling: feeling.start)


def _does_not_stay(words: list[str], feeling: Feeling) -> bool:
    """`not even water stays down`: what is denied there is what is wrong."""
    said = words[max(feeling.start - 2, 0) : feeling.end]
    grave = feeling.suggests is Suggests.EMERGENCY and feeling.now
    return grave and "even" in said and not _KEPT.isdisjoint(said)


def _much_thirst(words: list[str], passed: set[int]) -> list[Feeling]:
    """`peak thirsty`, or behind any word that is no small one: every place has a `very` of its own,
    and a thirst that is called anything but slight is a sign."""
    return [
        Feeling(start=at - 1, end=at + 1, suggests=Suggests.HIGH)
        for at, word in enumerate(words)
        if word == "thirsty"
        and at
        and at not in passed
        and words[at - 1].isalpha()
        and words[at - 1] not in _PLAINLY
        and not words[at - 1].endswith("s")  # `the old ute's thirsty`
    ]


#: Before `thirsty` they say no more than that, or less.
_PLAINLY = frozenset(
    """
    i im ah am there is are was were be been being feel feels feeling felt get gets getting got
    and an or but n bit abit little slightly slight touch not no nor never less made makes make
    me my his her of the a any anymore also then now today just kinda somewhat mildly he she
    they we you it hes shes hungry tired for if when whenever because cos since after before
    with in on at as dont isnt arent wasnt who what why how
    """.split()
)


def _kept_nothing_down(words: list[str], found: list[Feeling]) -> list[Feeling]:
    """`chundering all day and cant keep fluids down` is one sign, whichever half comes first."""
    both = sorted(found, key=lambda feeling: feeling.start)
    for one, other in pairwise(both):
        sick, kept = (one, other) if one.suggests is Suggests.HIGH else (other, one)
        if (
            sick.suggests is Suggests.HIGH
            and kept.suggests is Suggests.EMERGENCY
            and words[sick.start].startswith(VOMITED)
            and (
                not _KEPT.isdisjoint(words[kept.start : kept.end])
                or (
                    not _MUDDLED.isdisjoint(words[kept.start : kept.end])
                    and _AND.issuperset(words[one.end : other.start])
                )
            )
            and other.start - one.end <= _NEAR
        ):
            whole = replace(kept, start=one.start, end=max(one.end, other.end))
            return [*(each for each in found if each not in (one, other)), whole]
    return found


def _of_one_side(words: list[str], feeling: Feeling) -> Feeling:
    """`her left arm just went weak`: weakness is one thing, and that of one limb another."""
    if feeling.suggests is not Suggests.LOW or _FAILING.isdisjoint(
        words[feeling.start : feeling.end]
    ):
        return feeling
    for at in range(feeling.start - 1, max(feeling.start - 1 - _NEAR, -1), -1):
        if words[at] in _LIMBS:
            return replace(feeling, suggests=Suggests.EMERGENCY)
        if not words[at].isalpha():
            break
    return feeling


_FAILING = frozenset("weak weakness numb debil dormido adormecido".split())
_LIMBS = frozenset("arm leg brazo pierna".split())

#: So many words may stand between the halves.
_NEAR = 5
_MUDDLED = frozenset(
    "confused drowsy muddled confundido confundida desorientado desorientada somnoliento".split()
)
_AND = frozenset("and n + y really so all very a bit now feeling getting is am im".split())
_KEPT = frozenset("keep kept keeping hold down stay stays retengo retiene retener".split())


def _felt(page: Page, found: list[Feeling]) -> list[Feeling]:
    """Those that are not only supposed or asked about."""
    felt: list[Feeling] = []
    supposed: set[int] = set()
    for feeling in sorted(found, key=lambda feeling: feeling.start):
        span = feeling.start, feeling.end
        if is_supposed(page, *span, feeling.suggests, supposed):
            supposed.update(range(*span))
        else:
            felt.append(feeling)
    return felt


def _said(page: Page, feeling: Feeling, known: Container[str]) -> Feeling:
    """With whom it is said of; what is said of a thing begins with the thing."""
    of, start = said_of(page, feeling.start, feeling.end, feeling.suggests, known)
    if of is SaidOf.ONESELF:
        return feeling
    return replace(feeling, of=of, start=start if of is SaidOf.A_THING else feeling.start)


def _of_value(words: list[str], feeling: Feeling) -> bool:
    """`my sugar is low, 65`: what is said of a number is no sign of the body."""
    said = words[feeling.start : feeling.end]
    return (
        said[-1] == "low"
        and not _SAID_OF_VALUES.isdisjoint(said)
        and any(word[0].isdigit() for word in words)
    )


def _of_food(words: list[str], feeling: Feeling) -> bool:
    """`having low sugar jam`: what is low in sugar is no sign of the body."""
    named = words[feeling.end : feeling.end + 1]
    return (
        words[feeling.end - 3 : feeling.end] == ["having", "low", "sugar"]
        and named != []
        and named[0].isalpha()
        and named[0] not in _AFTER_LOW_SUGAR
    )


_AFTER_LOW_SUGAR = frozenset(
    "now today again please pls help and i im what since from attack doctor sir madam here".split()
)
_SAID_OF_VALUES = frozenset({"is", "are", "too", "very"})


def claimed(page: Page, feelings: list[Feeling]) -> list[Feeling]:
    """Claim the words of symptoms and what leads into them, and what is said of things (`the tomato
    plants look dry`); the symptoms alone are given."""
    for feeling in feelings:
        if feeling.of is SaidOf.A_THING:
            page.claim(feeling.start, feeling.end)
            continue
        end = brought_up(page, feeling.start, feeling.end)
        start = led_in(page, feeling.start)
        while not feeling.now and start and page.tokens[start - 1].word in _DENYING:
            start -= 1  # `suya n not dizzy any more`
        page.claim(start, where(page, end))
    return [feeling for feeling in feelings if feeling.of is not SaidOf.A_THING]


_DENYING = frozenset("not no never any longer dont feel feeling im ni".split())


def befell(page: Page, feelings: list[Feeling], start: int) -> bool:
    """Whether what begins at `start` is what one was at when it happened (`nearly passed out
    carrying shopping`, `passed out at rugby`, `collapsed in the yard`)."""
    at = start - (page.words(start - 1, start) in _WHILE)
    first = page.words(start, start + 1)
    doing = first[0].endswith("ing") or first in _WHILE or at < start
    return doing and any(feeling.end == at for feeling in feelings)


_WHILE = (["while"], ["when"], ["whilst"], ["at"], ["during"], ["in"], ["doing"], ["en"])


def fell_ill(page: Page, start: int, end: int, feelings: list[Feeling]) -> bool:
    """Claim a person who is called as a food is: `paw paw had a seizure`."""
    verb = page.words(end, end + 1)
    ill = bool(verb) and verb[0] in _BEFELL and any(end <= one.start <= end + 2 for one in feelings)
    if ill:
        page.claim(start, end)
    return ill


_BEFELL = frozenset("had has is was just fainted collapsed blacked passed".split())


@cache
def _weak() -> Phrases[Suggests]:
    return Phrases((words, level) for level, words in WEAK_SIGNS.items())


def _weak_and_denied(page: Page, language: str, told: set[int]) -> list[Feeling]:
    """Signs that are none alone (`thirsty`) still make a denial (`no longer thirsty`)."""
    weak, words = _weak(), page.words(0, len(page.tokens))
    absent: list[Feeling] = []
    if weak.heads.isdisjoint(words):
        return absent
    for index in range(len(page.tokens)):
        hit = weak.longest(page, index, len(page.tokens))
        if (
            hit is not None
            and index not in told
            and denied(page, words, index, hit[0], language=language, told=told)
        ):
            absent.append(Feeling(start=index, end=hit[0], suggests=hit[1], now=False))
    return absent


def still(page: Page) -> bool:
    """Whether the words say that it goes on (`since yesterday`, `still`)."""
    if not page.holds(_STILL):
        return False
    words = [token.word for token in page.tokens if token.word.isalnum()]
    return any(
        word in _STILL and not (word == "since" and at and words[at - 1] in _WELL)
        for at, word in enumerate(words)
    )


#: `all good since` says that it is over.
_WELL = frozenset(
    "never not none good fine ok okay well nothing great grand sound better normal rain "
    "ever".split()
)
