"""Is a sign's word said of something that is no part of oneself? `the kitchen table is wobbly`,
`my da's awfy dizzy`, `the tomato plants look very thirsty`."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Container
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
_BREAKS = frozenset(", . ; ! ? : - ( ) and but so then because cos y pero que porque".split())
#: Before an article they let a new subject begin.
_OPENS = _BREAKS | frozenset(
    "think guess hope omg lol hey hi help says that its when if like damn well today now creo "
    "que".split()
)
_MINE = frozenset("mi me ma".split())
_I_DO = frozenset("feel have get keep look just got felt".split())
_BARELY = frozenset("nearly almost casi".split())
#: No noun ends at one of these, so what stands before the verb is no subject of it.
_NO_NOUN = frozenset(
    """
    help please i im am you we it its he she they there what who when if why how not no me us do
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
    at = len(words) - 1  # the verb, or the noun with `'s`
    if words[at] not in _IS:
        at -= 1
        while at >= 0 and words[at] in _HOW and words[at] not in _IS:
            at -= 1
    if at < 0:
        return SaidOf.ONESELF, start
    contracted = "'" in page.text(first + at, first + at + 1).replace("’", "'")
    if contracted and words[at].endswith("s") and words[at] not in _NO_NOUN:
        noun, last = at, words[at][:-1]
    elif words[at] in _IS:
        while at > 0 and words[at - 1] in _WITH_VERB:
            at -= 1
        noun, last = at - 1, words[at - 1] if at else ""
    elif (
        at == len(words) - 2
        and words[at] in _NEVER_ONESELF
        and (sign[0] in _DID or sign[1:2] == ["out"] or sign[0].startswith(_MOVED))
    ):
        noun, last = at, words[at]  # `the economy collapsed`
    elif at == len(words) - 2 and sign[0] in _BARELY:
        noun, last = at, words[at]  # `my manager nearly fainted`
    else:
        return SaidOf.ONESELF, start
    beside_me = last == "me" and noun > 0 and words[noun - 1] in _AT
    if noun < 0 or last in _BREAKS or (last in _NO_NOUN and not beside_me):
        return SaidOf.ONESELF, start
    named = [last]
    while noun > 0 and words[noun - 1] not in _BREAKS:
        noun -= 1
        by_me = words[noun] == "me" and words[noun - 1] in _AT and noun > 0  # `the man next to me`
        if words[noun] in _THE and not by_me and (noun == 0 or words[noun - 1] not in _AT):
            opens = noun == 0 or words[noun - 1] in _OPENS or words[noun - 1][0].isdigit()
            mine = words[noun] in _MINE and words[noun + 1] not in OWN and words[at] in _I_DO
            if not opens or mine or not OWN.isdisjoint(words[:noun]):
                return (
                    SaidOf.ONESELF,
                    start,
                )  # `climbing the stairs felt faint`, `mi jus feel dizzy`
            somebody = words[noun] in _SOME
            return _judged(named[::-1], sign, suggests, known, somebody=somebody), first + noun
        if words[noun] in _IS or (words[noun] in _NO_NOUN - _THE and not by_me):
            return SaidOf.ONESELF, start
        named.append(words[noun])
    if words[noun] in _AT or not all(map(str.isalpha, named)):
        return SaidOf.ONESELF, start
    if {last, named[-1]} & _NEVER_ONESELF or (
        len(named) == 1
        and len(last) > 2
        and last not in known
        and last not in _AT
        and last not in OWN
    ):
        return _judged(named[::-1], sign, suggests, known), first + noun
    return SaidOf.ONESELF, start


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
