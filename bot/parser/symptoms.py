"""How does the body feel, and is it so now? Never missed for want of a number."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Container
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise

from bot.entries import Suggests
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
    talk: Phrases[Suggests | None] = Phrases([(NOT_SYMPTOMS, None)])
    return talk | of_all(language, _signs)


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
    index, count = 0, len(page.tokens)
    while index < count:
        hit = phrases.longest(page, index, count)
        if hit is None:
            index += 1
            continue
        end, level = hit
        if page.tokens[end - 1].word in {"as", "like"}:  # whatever it is likened to
            end = _on(page, end - 1)
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
    words = page.words(0, count)
    found = _kept_nothing_down(words, found)
    known = no_slips(language)
    found = [
        _said(page, feeling, known)
        for feeling in _felt(page, found)
        if not (_of_value(words, feeling) or _of_food(words, feeling))
    ]
    if deniers(language).isdisjoint(words):
        return sorted(found, key=lambda feeling: feeling.start)
    told = {at for feeling in found for at in range(feeling.start, feeling.end)}
    found = [
        replace(
            feeling,
            now=feeling.now
            and not denied(page, words, feeling.start, feeling.end, language=language, told=told),
        )
        for feeling in found
    ]
    found += _weak_and_denied(page, language, told)
    return sorted(found, key=lambda feeling: feeling.start)


def _kept_nothing_down(words: list[str], found: list[Feeling]) -> list[Feeling]:
    """`chundering all day and cant keep fluids down` is one sign, whichever half comes first."""
    both = sorted(found, key=lambda feeling: feeling.start)
    for one, other in pairwise(both):
        sick, kept = (one, other) if one.suggests is Suggests.HIGH else (other, one)
        if (
            sick.suggests is Suggests.HIGH
            and kept.suggests is Suggests.EMERGENCY
            and words[sick.start].startswith(_VOMITED)
            and (
                not _KEPT.isdisjoint(words[kept.start : kept.end])
                or (words[kept.start] in _MUDDLED and words[one.end : other.start] in _AND)
            )
            and other.start - one.end <= _NEAR
        ):
            whole = replace(kept, start=one.start, end=max(one.end, other.end))
            return [*(each for each in found if each not in (one, other)), whole]
    return found


#: So many words may stand between the halves.
_NEAR = 5
_MUDDLED = frozenset({"confused", "drowsy", "muddled"})
_AND = (["and"], ["n"], ["+"], ["y"])
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
        end = _brought_up(page, feeling.start, feeling.end)
        page.claim(_led_in(page, feeling.start), _where(page, end))
    return [feeling for feeling in feelings if feeling.of is not SaidOf.A_THING]


def befell(page: Page, feelings: list[Feeling], start: int) -> bool:
    """Whether what begins at `start` is what one was at when it happened (`nearly passed out
    carrying shopping`)."""
    at = start - (page.words(start - 1, start) in (["while"], ["when"], ["whilst"]))
    doing = page.words(start, start + 1)[0].endswith("ing")
    return doing and any(feeling.end == at for feeling in feelings)


_VOMITED = (
    "vomit", "throw", "threw", "puk", "chuck", "brought", "bring", "devolv", "spew", "barf",
    "chunder", "bok", "boak", "heav", "retch", "hurl", "sick", "being", "been", "hoy",
)  # fmt: skip
_LONG = (
    ["whole"],
    ["entire"],
    ["last"],
    ["day"],
    ["night"],
    ["morning"],
    ["time"],
    ["dia"],
    ["noche"],
)
_MINE = frozenset("all my his her the la el mi lo todo toda up".split())


def _brought_up(page: Page, start: int, end: int) -> int:
    """Where `my toast` behind `threw up` ends: it is no meal."""
    if not page.words(start, start + 1)[0].startswith(_VOMITED):
        return end
    at = end
    while page.words(at, at + 1) and page.tokens[at].word in _MINE:
        at += 1
    known = at > end and page.words(at, at + 1) and page.tokens[at].word.isalpha()
    long = page.words(at, at + 1) in _LONG  # `threw up all day`
    return at + 1 if known and not long else end


def _where(page: Page, end: int) -> int:
    """Where `on the stairs` or `since last night` behind a symptom ends: a place and nothing that
    was done, a time that is no reading's."""
    end = _on(page, end)
    words = page.words(end, end + 3)
    if words[:1] in (["since"], ["desde"]):
        hour = 1 + (words[1:2] in (["las"], ["la"]))
        while words[1:2] and (words[1] in _DAYS or (words[1].isdigit() and hour > 0)):
            end, words, hour = end + 1, page.words(end + 1, end + 4), hour - 1
        return end + 1
    there = len(words) == 3 and words[0] in _AT and words[1] in _THE and words[2] in _PLACES
    return end + 3 if there else end


def _on(page: Page, end: int) -> int:
    """Where `have started again` or `as a duck`, `like yesterday` behind a symptom ends: that it is
    here, and what it is likened to."""
    words = page.words(end, end + 3)
    if words[:1] in (["have"], ["has"]) and words[1:2] and words[1] in _BEGUN:
        return end + 2 + (words[2:] == ["again"])
    if words[:1] and words[0] in _BEGUN and words[1:2] in ([], ["again"], ["."], [","], ["up"]):
        return end + 1 + (words[1:2] in (["again"], ["up"]))
    if words[:1] in (["as"], ["like"], ["como"]):
        article = words[1:2] in (["a"], ["an"], ["the"], ["un"], ["una"])
        likened = words[1 + article : 2 + article]
        if likened and likened[0].isalpha() and likened[0] not in _NOT_LIKENED:
            return end + 2 + article
    return end


_BEGUN = frozenset("started starting begun empezo empezando".split())
_NOT_LIKENED = frozenset(
    "i im its it my after before when if that this you well soon last girl boy kid child teen "
    "teenager baby student youngster lad lass".split()
)
_DAYS = frozenset(
    "yesterday last this night morning afternoon evening lunch dinner breakfast supper brunch tea "
    "monday tuesday wednesday thursday friday saturday sunday anoche ayer la el en hoy manana "
    "tarde noche antier lunes martes miercoles jueves viernes sabado domingo".split()
)
_AT = frozenset("on in at by down outside en por".split())
_THE = frozenset("the my our a la las el los mi".split())
_PLACES = frozenset(
    "stairs steps garden yard pool kitchen bathroom bath shower shop shops street field allotment "
    "bus train office gym hallway porch driveway escaleras escalera jardin patio cocina bano ducha "
    "tienda calle oficina gimnasio".split()
)


_FEEL = frozenset("feel feels feeling felt fealing siento sintio senti sentir".split())
_BEFORE_FEEL = frozenset("and then now so but i im am was is just me y ahora luego pero ya".split())


def _led_in(page: Page, start: int) -> int:
    """Where `and now i feel` before a symptom begins: no part of what was eaten before it."""
    words = page.words(max(start - 12, 0), start)
    first = start - len(words)
    if words[-1:] and words[-1] in _FEEL | {"all", "really", "very", "so", "a", "bit", "muy"}:
        at = len(words) - 1
        while at >= 0 and words[at] not in _FEEL and len(words) - at < 4:
            at -= 1
        if at >= 0 and words[at] in _FEEL:
            while at > 0 and words[at - 1] in _BEFORE_FEEL:
                at -= 1
            return first + at
    return start


@cache
def _weak() -> Phrases[Suggests]:
    return Phrases((words, level) for level, words in WEAK_SIGNS.items())


def _weak_and_denied(page: Page, language: str, told: set[int]) -> list[Feeling]:
    """Signs that are none alone (`thirsty`) still make a denial (`no longer thirsty`)."""
    weak, words = _weak(), page.words(0, len(page.tokens))
    absent = []
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
    words = [token.word for token in page.tokens if token.word.isalnum()]
    return any(
        word in _STILL and not (word == "since" and at and words[at - 1] in _WELL)
        for at, word in enumerate(words)
    )


#: `all good since` says that it is over.
_WELL = frozenset(
    "good fine ok okay well nothing none great grand sound better normal rain ever".split()
)
