"""Is a sign of the body denied, or told as over? `not dizzy or shaky any more`, `it has gone`."""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser.languages import gathered
from bot.parser.page import Page
from bot.parser.phrases import Phrases, spelled

#: How far a denial reaches: `not dizzy or shaky any more`.
REACH = 6


@cache
def _denials(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "denials"), True)])


@cache
def _gone(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "denials_after"), True)])


@cache
def deniers(language: str) -> frozenset[str]:
    """The first words of everything that denies."""
    said = (*gathered(language, "denials"), *gathered(language, "denials_after"))
    return frozenset(spelled(phrase)[0] for phrase in said)


#: Words after which a denial no longer reaches.
_TURNS = frozenset("but still except however now pero aun sino . ; !".split())


def denied(
    page: Page, words: list[str], start: int, end: int, *, language: str, told: set[int]
) -> bool:
    """Whether words around it deny it. Words inside another symptom (`sin parar no retengo
    nada`) deny nothing but what they are part of."""
    if _but_now(words, end):
        return False
    denials = _denials(language)
    for at in range(start - 1, max(-1, start - 1 - REACH), -1):
        if words[at] in _TURNS:
            break
        hit = None if at in told else denials.longest(page, at, start)
        if hit is not None and _reaches(words, at, hit[0], start, told):
            return True
    gone = _gone(language)
    if _but_no_more(page, words, end, gone):
        return True
    for at in range(end, min(end + 3, len(words))):
        if words[at] in {",", ".", "but", "pero", ";"} or at in told:
            break
        closes = words[at + 1 : at + 2] in ([], ["."], ["more"], ["longer"])
        if words[at] == "no" and not closes and words[at + 1 : at + 3] not in _OR_SO:
            continue  # `dizzy no food left`: the word belongs to what follows it
        if gone.longest(page, at, len(words)) is not None:
            return True
        if words[at] not in _PASSED:
            break
    return False


def _but_now(words: list[str], end: int) -> bool:
    """`wasnt shaky earlier but i am now`: what was denied has come since."""
    behind = words[end : end + REACH + 1]
    turn = next((at for at, word in enumerate(behind) if word in {"but", "pero"}), len(behind))
    since = behind[turn + 1 :]
    now = next((at for at, word in enumerate(since) if word in _NOW), 0)
    closes = since[now + 1 : now + 2] in ([], ["."], [","])
    return now > 0 and closes and _IT_IS.issuperset(since[:now])


_IT_IS = frozenset("i it she he we they am im is are do does have has shes hes its si".split())
_NOW = frozenset("now ahora".split())

#: Behind `no` these close the denial: `dolor de pecho no, pero tiemblo`, `dizziness no dey again`.
_OR_SO = ([",", "pero"], [",", "but"], ["dey", "again"])


def _but_no_more(page: Page, words: list[str], end: int, gone: Phrases[bool]) -> bool:
    """`antes me mareaba pero ya no`, `was shaky but it stopped`: over, and nothing behind it."""
    at = end + (words[end : end + 1] == [","])
    if words[at : at + 1] not in (["but"], ["pero"]):
        return False
    at += 1
    while words[at : at + 1] in (["it"], ["its"], ["thats"], ["now"], ["ahora"], ["eso"]):
        at += 1
    over = gone.longest(page, at, len(words))
    closing = over[0] if over is not None and words[at] != "no" else at
    if words[at : at + 2] == ["not", "now"]:
        closing = at + 2
    return closing > at and (closing == len(words) or not words[closing][0].isalnum())


#: Words over which a denial reaches a symptom. Over any other word it does not: `no appetite,
#: chest pain` and `not ok cant breathe` deny nothing that hurts.
_PASSED = frozenset(
    "get dey di "
    "feeling feel felt any anymore more really so very too a an bit of the at all or and nor , "
    "y ni o u e me siento sintiendo estoy tengo i im am been having have had being is are was my "
    "mi un una unos unas "
    "la el los las de del sign signs getting got like nada algo mas tan muy today hoy now "
    "ya ahora either single that even as such have has it he she his her to be much "
    "severe bad sudden in least slightest "
    "sensation problems trouble issues new other symptoms episodes "
    "again con it this con".split()
)
#: Signs that are none alone carry a denial on where they are joined: `no more sweat or tremble`.
_MILDER = frozenset(
    "sweat sweats shake shakes headache headaches fever cough nausea hunger hungry thirst thirsty "
    "tired tiredness sick swelling fiebre tos hambre sed".split()
)
_JOINING = frozenset("or nor and ni o y".split())
_ANSWERED = frozenset("i im ive my hes shes its yo me mi".split())
_EMPHATIC = frozenset("this so such tan that as more".split())


def _reaches(words: list[str], at: int, end: int, start: int, told: set[int]) -> bool:
    """Whether the denial at `at` is one of the symptom at `start`."""
    between = words[end:start]
    if words[at] == "no" and not _ANSWERED.isdisjoint(between[:1]):
        return False  # `no im dizzy`
    if words[at] in {"without", "sin"} and not _DENIED_ITSELF.isdisjoint(words[:at]):
        return False  # `cannot go an hour without peeing`
    if "," in between:
        on = words[end + between.index(",") : start + REACH]
        if _JOINING.isdisjoint(on):
            return False  # `no chest pain, dizzy`; `no pain, sweats or shakes` denies all three
    if between[:1] in ([","], [":"], ["-"]) or _double(words, at, end):
        return False
    if words[at] in {"never", "nunca", "jamas"} and not _EMPHATIC.isdisjoint(
        words[end : start + 1]
    ):
        return False  # `never felt this dizzy`
    return all(
        words[index] in _PASSED
        or index in told
        or (words[index] in _MILDER and words[index + 1] in _JOINING)
        for index in range(end, start)
    )


def _double(words: list[str], start: int, end: int) -> bool:
    """`not only dizzy`, `no doubt`, `can't stop shaking`: no denial."""
    after = words[end] if end < len(words) else ""
    before = words[start - 1] if start else ""
    return after in _NO_DENIAL or before in _DENIED_ITSELF


_NO_DENIAL = frozenset("only just doubt solo idea sure".split())
_DENIED_ITSELF = frozenset("cant cannot wont hasnt havent not doesnt never didnt dont".split())
