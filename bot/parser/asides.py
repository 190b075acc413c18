"""Which words are only thrown in? `pizza yikes`, `eish 15.8`, `scrap that hun`.

At the borders of a clause they say nothing to the reader, and are left off the page before any
finder sees it; elsewhere, and where nothing else was said, they stay.
"""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.languages import gathered
from bot.parser.page import Token
from bot.parser.phrases import spelled

_BORDERS = frozenset(", . ; : ! ? - ( ) ¡ ¿ …".split())

_HAS = frozenset({"got", "had", "has", "is", "was", "gets", "reading", "sugar"})
_MARKS = frozenset({",", "!", ";", "-"})

#: Only the last word of a message, behind another word: `coke x` is signed, `tacos x 2` counted.
_KISSES = frozenset({"ta", "x", "xx", "xxx", "xo", "xoxo"})

#: Only beside a number: alone, or in `no thanks`, they say something.
_THANKS = tuple(
    tuple(words.split())
    for words in ("thank you so much", "thanks so much", "many thanks", "thank you", "thanks",
                  "thankyou", "thx", "ty", "tnx", "cheers", "muchas gracias", "gracias")
)  # fmt: skip

_THANKING = frozenset(thanks[0] for thanks in _THANKS)

#: Wherever they stand, behind another word: they only make it kinder (`sorry po 156`).
_PARTICLES = frozenset(
    {"po", "sah", "lah", "leh", "lor", "ka", "kha", "krap", "khrap", "krub", "krab"}
)
#: Likewise, as one who speaks looks for a word (`142 before um lunch`).
_HESITATING = frozenset(
    """
    um umm uh uhh uhm erm er ehm eh hmm eish sjoe yoh yho haibo aiyo aiyoh alamak wah walao
    naku grabe jusko huhu haha hahaha hehe lol lmao omg jaja jajaja jeje uff
    ugh argh aargh och yikes jeez geez whew phew oof sheesh innit sef jor
    """.split()
)
#: Behind one of these `er` is the emergency room.
_TO_THE_ER = frozenset({"the", "to", "in", "an", "at"})

#: Whom one speaks to, in words that may be food or something else, too.
_CALLED = frozenset(
    "love luv mate m8 honey hen cariad guv fam bru boet cuzzy machan machang ji beta "
    "kuya manong mzee ndugu sha akhi babe hunny sweetheart darlin sunshine hun hon doc pal bro "
    "bruv boss sis dear darling sweetie sir madam miss".split()
)
#: The same, only where a clause ends with them (`forgot baby`).
_CALLED_LAST = frozenset({"baby", "pet", "duck", "petal", "doll", "chick"})
#: Behind one of these they are called so, wherever the clause goes on (`sorry love 9.1`); behind
#: the others where it ends (`skip m8`).
_CALLING = frozenset("sorry oops well och right evening ok okay thanks cheers ta".split())
_ANSWERING = frozenset("it no nah nope yes yeah yep skip forgot undo done stop".split())

#: Nothing but behind a number: `at 8 sharp`, and never `sharp pain`.
_BEHIND_AN_HOUR = (("sharp",), ("on", "the", "dot"), ("en", "punto"))


@cache
def _asides(language: str) -> dict[str, list[tuple[str, ...]]]:
    """The words of each aside by the first of them, the longest first."""
    asides: dict[str, list[tuple[str, ...]]] = {}
    words = {tuple(spelled(phrase)) for phrase in gathered(language, "asides")}
    for each in sorted(words, key=lambda each: (-len(each), each)):
        asides.setdefault(each[0], []).append(each)
    return asides


@cache
def _firsts(language: str) -> frozenset[str]:
    behind = {each[0] for each in _BEHIND_AN_HOUR}
    said = _KISSES | _THANKING | _CALLED | _CALLED_LAST | _HESITATING | _PARTICLES
    return frozenset(_asides(language)) | behind | said


def without(tokens: list[Token], language: str) -> list[Token]:
    """The tokens without what is only thrown in; all of them where nothing else is left."""
    firsts = _firsts(language)
    if firsts.isdisjoint([token.word for token in tokens]):
        return tokens
    numbered = any(token.word[0].isdigit() for token in tokens)
    words = [
        "" if token.word == "er" and _glued(tokens, at) else token.word
        for at, token in enumerate(tokens)
    ]
    kept: list[Token] = []
    at = 0
    while at < len(tokens):
        end = _end(words, at, language) if words[at] in firsts else at
        if numbered and end == at and words[at] in _THANKING:
            end = _thanked(words, at)
        if end > at:
            at = end
            while not kept and at < len(tokens) and words[at] in _MARKS:
                at += 1  # `crikey, that was after`
        else:
            kept.append(tokens[at])
            at += 1
    return kept if any(token.word not in _BORDERS for token in kept) else tokens


def _end(words: list[str], at: int, language: str) -> int:
    """Where the aside that begins at a word ends, or `at` where none does."""
    for behind in _BEHIND_AN_HOUR:
        end = at + len(behind)
        if at and tuple(words[at:end]) == behind and words[at - 1][0].isdigit():
            return end
    if at and words[at] in _PARTICLES and words[at + 1 : at + 2] != ["box"]:
        return at + 1
    if at and words[at] in _HESITATING and not (words[at] == "er" and words[at - 1] in _TO_THE_ER):
        return at + 1
    if at and words[at] in _CALLED | _CALLED_LAST and _called(words, at):
        return at + 1
    opens = at == 0 or words[at - 1] in _BORDERS
    for aside in _asides(language).get(words[at], ()):
        end = at + len(aside)
        if tuple(words[at:end]) == aside and (opens or _closes(words, end)):
            spoken_of = words[end : end + 1] and words[end] in _HAS  # `aunty got 14.1`
            return at if spoken_of else end
    kiss = words[at] in _KISSES and at + 1 == len(words) and at > 0
    return at + 1 if kiss and words[at - 1].isalpha() else at


def _glued(tokens: list[Token], at: int) -> bool:
    """Whether the next token begins right where this one ends: `er3` is an error of the meter's."""
    return at + 1 < len(tokens) and tokens[at].end == tokens[at + 1].start


_OF_THEM = frozenset({"a", "an", "the", "my", "our", "your", "this", "un", "una", "mi"})


def _called(words: list[str], at: int) -> bool:
    """Whether somebody is called so there, rather than spoken of."""
    before = words[at - 1]
    if before in _OF_THEM:
        return False  # `expecting a baby and 54`
    if before in _CALLING and words[at] in _CALLED:
        return True
    if (
        words[at + 1 : at + 2] in (["n"], ["and"])
        and words[at + 2 : at + 3]
        and words[at] != "honey"
    ):
        return words[at + 2][0].isdigit()  # `9 strips left boss n 7.7`
    answered = before in _ANSWERING or before[0].isdigit()
    return answered and _closes(words, at + 1) and (before, words[at]) != ("no", "honey")


def _thanked(words: list[str], at: int) -> int:
    """Where thanks that end a clause end (`25 min walk thanks`)."""
    ends = (at + len(each) for each in _THANKS if tuple(words[at : at + len(each)]) == each)
    behind = at > 0 and words[at - 1] != "no"
    return next((end for end in ends if behind and _closes(words, end)), at)


def _closes(words: list[str], end: int) -> bool:
    return end == len(words) or words[end] in _BORDERS
