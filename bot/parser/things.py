"""Is a sign's word said of something that is no part of oneself? `the kitchen table is wobbly`,
`my da's awfy dizzy`, `the tomato plants look very thirsty`."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Container
from dataclasses import dataclass
from enum import Enum, auto
from itertools import takewhile

from bot.entries import Suggests
from bot.parser.page import Page
from bot.parser.spelling import one_slip
from bot.parser.vocabulary.things import BEASTS, OWN, PICTURES, THINGS


class SaidOf(Enum):
    """Of whom or what a sign is said."""

    ONESELF = auto()
    A_THING = auto()  # surely no sign of a body
    ANOTHER = auto()  # a noun that no list knows: a person or a thing, and not oneself
    SOMEBODY = auto()  # `a boy in the waiting room`: nobody that is spoken for either


_IS = frozenset(
    """
    salio salieron quedo is are was were be been look looks looked looking feel feels felt
    feeling seem seems seemed keep keeps kept has have had got gets getting gone went goes dey
    don came started starts just es son esta estan estaba estaban anda andan se ve ven veia
    veian tiene tienen
    """.split()
)
_HOW = frozenset(
    """
    a bit little very so really quite too all pretty rather totally completely dead pure awfy
    right proper well real mighty still always again now also both suddenly slightly getting
    being on the up out that over awfully terribly extremely incredibly gey fair looking feeling
    been started muy bien un poco toda todo todas todos como medio bastante
    """.split()
)
_THE = frozenset(
    """
    de di da dis dat the a an my our this that these those your his her their some every someone
    somebody ma me wor dem one el la los las mi mis un una este esta ese esa
    nuestro nuestra unos unas
    """.split()
)
_SOME = frozenset("a an one some every someone somebody un una unos unas alguien".split())
_NEARBY = frozenset("door road room bus opposite lado frente".split())
_AT = frozenset(
    "on in of at by from with to next near beside behind across over home door outside here there "
    "under inside above below around against off through between during opposite "
    "de del en con al junto lado".split()
)
_BREAKS = frozenset(", . ; ! ? : - ( ) and n but so then because cos y pero que porque".split())
#: Before an article they let a new subject begin.
_OPENS = _BREAKS | frozenset(
    "think guess hope omg lol hey hi help says that its when if like damn well today now creo "
    "que".split()
)
_MINE = frozenset("mi me ma".split())
_I_DO = frozenset("feel have get keep look just got felt".split())
#: Of nobody by name: whoever speaks of another says `is` or `feels`.
_FEEL = frozenset({"feeling", "feel", "felt"})
_BARELY = frozenset("nearly almost casi".split())
#: No noun ends at one of these, so what stands before the verb is no subject of it.
_NO_NOUN = frozenset(
    """
    help please i im am ah you we it its he she they there what who when if why how not no me us do
    does did
    will can made makes make making gave gives left says said think thinks know after before
    since while during without yo tu el ella ellos nosotros te nos cuando si despues antes desde
    hace
    """.split()
)
#: Behind a noun these are its verb.
_DID = frozenset(
    "collapsed collapses crashed shakes trembles sweats vomited vomits threw fainted puked "
    "tiembla tiemblan vomito suda colapso".split()
)
#: Right before a thing.
_ABOUT_IT = (["shaky"], ["wobbly"], ["unsteady"], ["weak"], ["shaking"], ["blurry"])
#: Right behind a thing or a beast, without a verb: `kettle handle shaky already`.
_MOVED = ("shak", "trembl", "wobbl", "vomit", "blur", "sweat")
_WITH_VERB = _IS | _HOW - {"the", "a"}
_NEVER_ONESELF = THINGS | BEASTS
_REACH = 9
_MISTY = ("blur", "fuzz", "haz", "mist", "fog", "cloud", "doubl", "dim", "borros", "nubla", "empan")


def said_of(
    page: Page, start: int, end: int, suggests: Suggests, known: Container[str]
) -> tuple[SaidOf, int]:
    """Of whom the sign at `start` is said, and where that is named, by the noun and the verb before
    it. `known` are the words of all lists: a word of none is a name where it stands alone."""
    if page.words(start, end) in _ABOUT_IT and _of_what_follows(page, start, end):
        return SaidOf.A_THING, start
    bare = start == 1 and page.tokens[start].word not in _IS
    if start == 0 or (bare and page.tokens[0].word not in _NEVER_ONESELF):
        return SaidOf.ONESELF, start
    words = page.words(max(start - _REACH, 0), start + 1)
    first = start + 1 - len(words)
    sign = page.words(start, end)
    noun = _subject(page, words, first, sign)
    phrase = None if noun is None else _phrase(words, noun)
    if noun is None or phrase is None:
        return SaidOf.ONESELF, start
    named, begins = phrase
    if len(named) == noun.at - begins:  # without the article
        somebody = words[begins] in _SOME
        return _judged(named, sign, suggests, known, somebody=somebody), first + begins
    if words[begins] in _AT or not all(map(str.isalpha, named)):
        return SaidOf.ONESELF, start
    name = noun.word
    feels = words[noun.verb] in _FEEL  # `strewth feeling faint`
    strange = len(named) == 1 and len(name) > 2 and name not in known and name not in _AT | OWN
    strange = strange and not feels
    if {name, named[0]} & _NEVER_ONESELF or strange:
        return _judged(named, sign, suggests, known), first + begins
    return SaidOf.ONESELF, start


@dataclass(frozen=True, slots=True)
class _Noun:
    """A noun before a sign: its place among the words, itself without `'s`, its verb's place."""

    at: int
    word: str
    verb: int


def _subject(page: Page, words: list[str], first: int, sign: list[str]) -> _Noun | None:
    """The noun whose verb the sign ends; `words` end with the first word of the sign, and begin at
    the token `first`. None where the sign has no noun before it."""
    at = len(words) - 1  # the verb, or the noun with `'s`
    if words[at] not in _IS:
        at -= 1
        while at >= 0 and words[at] in _HOW and words[at] not in _IS:
            at -= 1
    if at < 0:
        return None
    contracted = "'" in page.text(first + at, first + at + 1).replace("’", "'")
    right_behind = at == len(words) - 2
    if contracted and words[at].endswith("s") and words[at] not in _NO_NOUN:
        noun = _Noun(at, words[at][:-1], at)
    elif words[at] in _IS:
        while at > 0 and words[at - 1] in _WITH_VERB:
            at -= 1
        noun = _Noun(at - 1, words[at - 1] if at else "", at)
    elif right_behind and words[at] in _NEVER_ONESELF and _has_a_verb(sign):
        noun = _Noun(at, words[at], at)  # `the economy collapsed`
    elif right_behind and sign[0] in _BARELY:
        noun = _Noun(at, words[at], at)  # `my manager nearly fainted`
    else:
        return None
    beside_me = noun.word == "me" and noun.at > 0 and words[noun.at - 1] in _AT
    if noun.at < 0 or noun.word in _BREAKS or (noun.word in _NO_NOUN and not beside_me):
        return None
    return noun


def _has_a_verb(sign: list[str]) -> bool:
    return sign[0] in _DID or sign[1:2] in (["out"], ["up"]) or sign[0].startswith(_MOVED)


def _phrase(words: list[str], noun: _Noun) -> tuple[list[str], int] | None:
    """The nouns and what stands between them, without the article before them, and where they
    begin, with it. None where another clause runs into the noun."""
    named, at = [noun.word], noun.at
    while at > 0 and words[at - 1] not in _BREAKS:
        at -= 1
        by_me = words[at] == "me" and words[at - 1] in _AT and at > 0  # `the man next to me`
        if words[at] in _THE and not by_me and (at == 0 or words[at - 1] not in _AT):
            opens = at == 0 or words[at - 1] in _OPENS or words[at - 1][0].isdigit()
            mine = words[at] in _MINE and words[at + 1] not in OWN and words[noun.verb] in _I_DO
            if not opens or mine or not OWN.isdisjoint(words[:at]):
                return None  # `climbing the stairs felt faint`, `mi jus feel dizzy`
            return named[::-1], at
        if words[at] in _IS or (words[at] in _NO_NOUN - _THE and not by_me):
            return None
        named.append(words[at])
    return named[::-1], at


def _of_what_follows(page: Page, start: int, end: int) -> bool:
    """`shaky ladder`, `a shaky landing`, `takes blurry photos`: said of the noun behind it."""
    noun = " ".join(page.words(end, end + 1))
    if noun in THINGS or noun in PICTURES:
        return True
    article = page.words(max(start - 1, 0), start) in (["a"], ["an"], ["the"], ["that"], ["un"])
    small = _HOW | _AT | _BREAKS | _IS | _NO_NOUN | OWN
    return article and noun.isalpha() and len(noun) > 3 and noun not in small


def _judged(
    named: list[str],
    sign: list[str],
    suggests: Suggests,
    known: Container[str],
    *,
    somebody: bool = False,
) -> SaidOf:
    """By the nouns between an article and the verb; what `of` and the like add tells little."""
    nouns = [word for word in named if word not in _THE or word == named[-1]]
    head = list(takewhile(lambda word: word not in _AT, nouns)) or nouns
    head = [word for word in head if word != "wee" or word == head[-1]]  # `wee car`
    if any(word.startswith(_MISTY) for word in sign):
        return SaidOf.A_THING if PICTURES & set(head) else SaidOf.ONESELF
    if not head or OWN & set(head) or not all(map(str.isalpha, head)):
        return SaidOf.ONESELF
    if suggests is Suggests.EMERGENCY:
        whole = named[len(head) : len(head) + 1] in ([], ["of"], ["de"])  # `roof of the school`
        thing = head[-1] in _NEVER_ONESELF and whole
        return SaidOf.A_THING if thing else SaidOf.ONESELF
    if head[-1] in _NEVER_ONESELF:
        return SaidOf.A_THING
    odd = [noun for noun in head if noun not in known and len(noun) > 3]
    if any(one_slip(own, noun) for noun in odd for own in OWN if len(own) > 3):
        return SaidOf.ONESELF  # `my hads are shaking`
    strange = somebody or not _NEARBY.isdisjoint(named)
    return SaidOf.SOMEBODY if strange else SaidOf.ANOTHER
