"""Is an activity only spoken of: denied, called off, wished, asked about, a habit, another's?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re

from bot.entries import By
from bot.parser.activity import Doing, is_past
from bot.parser.page import Page
from bot.parser.subjects import Subjects, Whose

_NEGATED = frozenset(
    "didnt dint not never couldnt cant cannot wont havent hasnt wasnt skipped missed without no ni "
    "tampoco".split()
)
#: Behind a denial they turn it round (`can't believe I walked 5 km`, `did not stop dancing`).
_TURNED = frozenset("believe stop mind forget only just wait help puedo pare paramos deje".split())
_PARTED = frozenset(
    ", . ; ! ? : ( ) but so then and because cause instead pero asi porque y".split()
)
_REACH = 6

#: What stands before it, to the clause's edge, where it was not done, whatever its tense.
_NOT_DONE = re.compile(
    r"\b(?:forgot(?:ten)? (?:to|about)|forgetting to|too [a-z]+ (?:to|for)|wish|if only|nada de"
    r"|(?:se me )?olvid[eo](?: hacer)?(?: mi| el)?|cancel(?:l?ed|aron|ado|ada)|called off|rained off"
    r"|(?<!even )(?:if|si) (?:i|we|id|you|yo)|(?:could|should|might|would|pude|debi) (?:have|haber)"
    r"|(?:till|til|until|unless|once|as soon as|hasta que)(?: (?:i|we|he|she|they))?"
    r"|planning|thinking (?:about|of)|dread(?:ing)?|looking forward to)(?: [a-z]+){0,3}$"
)
#: The same, where the tense does not say that it was done: a habit, what is liked or advised.
_IN_GENERAL = re.compile(
    r"\b(?:when(?:ever)? (?:i|we)|if (?:i|we)|hurts?(?: too much)?(?: to)?|barely|hardly|who won|(?:can|cant) wait to"
    r"|driv(?:e|ing) (?:(?:my|the) [a-z]+ )?to|drove to|cuando|me duele(?: al)?|how (?:many|much|long|often|far)|used to|like(?: to)?|love(?: to)?|hate(?: to)?|enjoy"
    r"|prefer(?: to)?|normally|usually|always|often|sometimes|every day i|told (?:me|us|him|her) to"
    r"|(?:says?|said|told me|wants|advised|recommends?|suggests?|recommended|suggested)(?: [a-z]+)?"
    r"(?: should| to| must)?|cuantos|cuanto|cuantas|me gusta(?: mucho)?|me encanta|odio|suelo"
    r"|(?:dice|dijo|manda|mando|pide|pidio|quiere|recomienda|recomendo)(?: [a-z]+)?(?: que)?)"
    r"(?: (?:a|the|my|i|we|do|go|going|some|more|for|to|for a|un|una|el|la|mi|hacer|ir)){0,3}$"
)
_ASKED = re.compile(
    r"^(?:(?:so|and|ok|hi|hello|hey|bot|please|but|then|also|well|y|pero|hola) )*"
    r"(?:(?:can|could|should|may|shall|must|would|will|do|does|is|are|what about|how about"
    r"|when|why|which|what) (?!.*\b(?:log|add|record|note|count|put|enter|save|write|only|just|barely)\b)"
    r"|(?:puedo|podemos|debo|deberia|tengo que|es (?:bueno|malo|mejor|seguro|recomendable)"
    r"|conviene|esta bien|sirve|ayuda|cuando|como) ?)(?:[a-z0-9]+ ?){0,6}$"
)
#: Right behind it: it did not take place, or is told of in general.
_BEHIND = re.compile(
    r"^(?:(?:class|session|match|game|training|lesson|pool|today|hoy|is|was|were|got|has been"
    r"|have been|esta|estaba|estuvo|fue|too|so|very|really) )*(?:closed|busy|packed|crowded|heaving|shut|cancell?ed|called off|rained off|full|cerrad[oa]|cancelad[oa])\b"
    r"|^(?:is|are) (?!done|over|finished|complete|all done|in the bag)|^on (?:the )?(?:tv|telly|television|box|radio)\b|^(?:en|por) la (?:tele|television)\b"
    r"|^(?:says?|said|told|thinks?|wants?|dice|dijo)\b"
)
_HABIT = re.compile(
    r"^(?:\w+ ){0,4}(?:every (?:day|week|morning|evening|night|other|[a-z]+day)|twice a|once a"
    r"|on (?:mon|tues|wednes|thurs|fri|satur|sun)days|most days|on weekends|daily|weekly"
    r"|todos los|todas las|cada|los (?:lunes|martes|miercoles|jueves|viernes|sabados|domingos)"
    r"|(?:dos|tres|2|3|4|5) veces (?:a la|por) semana)\b"
)


#: `my daily walk` is the walk of the day, `walk daily` a habit.
_DAILY = re.compile(r"^(?:(?:a|an|the|my) )?daily (?=[a-z])")


def only_spoken_of(page: Page, doing: Doing, subjects: Subjects, by: By) -> bool:
    """Whether what a message says of an activity is anything but that it was done."""
    if _denied(page, doing):
        return True
    clause = _clause_before(page, doing.start)
    behind = " ".join(page.words(doing.end, doing.end + 6))
    if _NOT_DONE.search(clause) or _BEHIND.search(behind):
        return True
    if by is By.SELF and _somebody_elses(page, doing, clause, subjects):
        return True
    if is_past(page, doing):
        return False
    inside = _DAILY.sub("", " ".join(page.words(doing.start, doing.end)))
    return bool(
        _IN_GENERAL.search(clause)
        or _ASKED.search(f"{clause} ")
        or _HABIT.search(f"{inside} {behind}")
    )


def _denied(page: Page, doing: Doing) -> bool:
    """`didn't make it to the gym`, `walk? no`: said not to have been done."""
    if page.words(doing.end, doing.end + 2) in (["?", "no"], ["?", "nope"], ["?", "nah"]):
        return True
    for index in range(doing.start - 1, max(doing.start - 1 - _REACH, -1), -1):
        word = page.tokens[index].word
        if word in _PARTED | _TURNED:
            return False
        if word in _NEGATED and page.free(index):
            return True
    return False


#: So many words before an activity speak of it; more would make a long message slow.
_CLAUSE = 30
_ENDS_A_CLAUSE = _PARTED - {"and", "so", "then", "y"}


def _clause_before(page: Page, end: int) -> str:
    start, furthest = end, max(end - _CLAUSE, 0)
    while start > furthest and page.tokens[start - 1].word not in _ENDS_A_CLAUSE:
        start -= 1
    return " ".join(page.words(start, end)).lstrip("¿¡ ")


_OURS = frozenset("i we me us and with took yo nosotros nos y con our".split())


def _somebody_elses(page: Page, doing: Doing, clause: str, subjects: Subjects) -> bool:
    """`my husband walked 5 km`; `my husband and I walked` is one's own too."""
    others = subjects.whose(doing.start) is Whose.OTHER
    return others and _OURS.isdisjoint(clause.split())


def to_come(page: Page, doings: list[Doing]) -> str | None:
    """Claim what is still to come, before `after this` in it can be taken for a moment. Behind
    `before` it says what the reading was taken for and is not asked about. Gives the words of the first that is."""
    under_way: str | None = None
    for doing in doings:
        if doing.over:
            continue
        before = page.words(max(doing.start - 2, 0), doing.start)
        after_it = page.words(doing.end, doing.end + 2) in (["after", "this"], ["after", "that"])
        page.claim(doing.start, doing.end + 2 * after_it)
        if before[-1:] in (["and"], ["then"], ["y"]):
            before = []  # `6.3 before and off for a bike ride`
        meant = _ONLY_MEANT & {*before, *page.words(doing.start, doing.end)}
        if not {"before", "antes"} & set(before) and not meant and under_way is None:
            under_way = page.text(doing.start, doing.end)
    return under_way


#: `was going to walk, but it rained`: nothing is under way.
_ONLY_MEANT = frozenset(
    "was were supposed meant wanted planned hoped tried iba queria pensaba".split()
)
