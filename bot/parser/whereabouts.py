"""Does the message say only where one is, or what keeps one from testing? `estoy en misa`, `at work`.

While a reading is asked for that is an answer: none this time, and why. Otherwise it is nothing.
"""

# ruff: noqa: E501 - patterns, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from functools import cache

from bot.entries import By
from bot.parser import activity, food
from bot.parser.lexicon import either
from bot.parser.page import Page
from bot.parser.phrases import spelled
from bot.parser.vocabulary.whereabouts import (
    DOING,
    KEPT,
    NO_PLACES,
    OTHER_GERUNDS,
    OUTAGES,
    PLACES,
)

#: Longer messages tell more than where one is.
LONGEST = 12

_LEAD = r"(?:(?:sorry|oh|ah|um|sir|madam|maam|doc|doctor|nurse|dear|bro|sis|mate|ma|hi|hello|well|so|but|oops|hey|lol|pls|please|perdon|disculpa|disculpe|lo siento|ay|uy|hola|pues|es que|because|cos|cuz|bc|porque|no|nah|nope|,|\.|!) )*"
_TAIL = r"(?: (?:sorry|now|rn|right now|just now|at the moment|atm|today|again|lol|thanks|pls|please|abeg|o|oo|po|muna|lah|la|eh|perdon|gracias|ahora|ahorita|hoy|todavia|,|\.|!))*"
_SELF = r"(?:i am|im|i was|i is|am|we are|we were|were|i dey|we dey|me dey|mi deh|mi|mi a|ah|i|we|me|still|just|only|currently|stuck|busy|out|dey|sitting|standing|lying|lost|estoy|estamos|toy|ando|andamos|voy|vamos|sigo|vengo|yo|aun|todavia|ya|ahora|ahorita|aqui|aca|right now|here)"
_THEM = r"(?:he is|she is|hes|shes|they are|theyre|he|she|they|mums|moms|dads|mum|mom|mummy|mama|dad|daddy|papa|nan|gran|granny|grandma|grandpa|is|was|ella|el|mi mama|mi papa|esta|anda|sigue|va|viene|already|just|ya|my (?:mum|mom|mother|dad|father|husband|wife|son|daughter|nan|gran|grandma|grandpa))"


@cache
def _told() -> re.Pattern[str]:
    """One pattern for whoever writes: it is the largest of all, a third of a megabyte."""
    who = f"(?:{_SELF}|{_THEM})"
    kept = either(tuple(" ".join(spelled(each)) for each in KEPT))
    outage = either(tuple(" ".join(spelled(each)) for each in OUTAGES))
    return re.compile(
        rf"{_LEAD}(?P<why>(?P<who>(?:{who} )*)(?:"
        rf"(?P<at>in|at|on|inside|with|by|outside|near|dey for|dey inside|dey|deh a|deh pon|deh inna|en|con|por) (?P<place>.+?)"
        rf"|(?P<doing>[a-z]{{2,}}(?:ing|in|ando|iendo|andome|iendome))(?P<more>(?: .+?)?)"
        rf"|(?:tried (?:\d+ times |twice |again )?(?:but )?)?(?P<kept>{kept})(?: (?:to do it|to test|here|at|in|with|on|en|con|till|until|hasta|cooking|working) .+?)?"
        rf"|(?P<outage>{outage})(?: .+?)?"
        rf"|(?P<left>(?:ive |have |he |she |we )*(?:left|forgot) (?:it|mine|the thing|that thing|everything|all of it|(?:my|the|her|his) (?:bag|purse|stuff|things|handbag|backpack|meter|kit|monitor|machine|lancets|testing kit)) (?:at|in|on|with|behind|back|upstairs|downstairs|home|to bring)(?: .+?)?|(?:i |we |he |she )?(?:forgot|left) (?:my|her|his|the) (?:bag|purse|handbag|backpack|stuff|things)(?: .+?)?|(?:i |we |he |she )?(?:dont|didnt|do not|did not|havent|doesnt) (?:have|got|get|bring|brought) (?:it|mine|anything|them|nothing|my things|my stuff)(?: (?:with|on|here|along).*?)?)"
        rf"|(?P<here>(?:my|the|our) [a-z]+(?: [a-z]+)? (?:is|are) (?:here|around|watching|with me|visiting|looking|over|round|on the phone|waiting)(?: .+?)?)"
        rf"|(?P<dejado>(?:lo |la |todo )?(?:deje|olvide|tengo)(?: todo| mis cosas| mi bolsa)? en .+?)"
        rf")){_TAIL}"
    )


_OF_ONESELF = re.compile(f"(?:{_SELF} )*")
#: Who else a helper may speak of refuses, too: `mum says no`, `he's not having it`.
_REFUSES = re.compile(
    rf"{_LEAD}(?:{_THEM} )+(?:(?:just )?(?:refuses|refused|refusing|says no|said no|saying no|says she doesnt want to|says he doesnt want to|wont|will not|doesnt want to|does not want to|doesnt want it|isnt having it|is not having it|not having it|wont have it|wont have (?:her|his|the) fingers? (?:pricked|jabbed|poked|done)|wont be pricked|wont let anyone|wont let us|wont hear of it|being stubborn|being difficult|no quiere|no quiso|no se deja|se niega|dice que no|dijo que no|no se deja pinchar))(?: (?:today|again|it|hoy|otra vez))*{_TAIL}"
)


def find(page: Page, words: str, language: str, by: By) -> tuple[int, int] | None:
    """Where the reason stands in `words`, the message's tokens joined; None where it tells
    anything else."""
    if len(page.tokens) > LONGEST or "?" in words or _counted(page):
        return None
    if by is By.HELPER and (match := _REFUSES.fullmatch(words)):
        return match.span()
    match = _told().fullmatch(words)
    if match is None or not _keeps(match):
        return None
    if by is By.SELF and not _OF_ONESELF.fullmatch(match["who"]):
        return None
    place = (match["place"] or "").split()
    sure = match["outage"] or match["kept"] or not PLACES.isdisjoint(place[-1:])
    if not sure and _eats_or_moves(page, language):
        return None
    return match.span("why")


def _keeps(match: re.Match[str]) -> bool:
    """Whether the words name what keeps one."""
    if any(match[said] for said in ("kept", "outage", "left", "dejado", "here")):
        return True
    if match["doing"]:
        doing = match["doing"]
        if doing in OTHER_GERUNDS:
            return False
        return doing in DOING or (bool(match["who"]) and doing not in _NO_GERUNDS)
    place = match["place"].split()
    if place[-1] in PLACES:
        return True
    if place[0] in NO_PLACES or (place[0] in _THE and place[1:2] and place[1] in NO_PLACES):
        return False
    known = not PLACES.isdisjoint(
        word.removesuffix("s") if len(word) > 4 else word for word in place
    )
    known = known or not PLACES.isdisjoint(place)
    open_to_all = match["at"] in {"in", "at", "en"} and bool(match["who"])
    return known or (open_to_all and len(place) <= 5)


_THE = frozenset("the a an my our this el la los las mi un una".split())
#: End like gerunds and are none.
_NO_GERUNDS = frozenset(
    "morning evening thing nothing anything something everything king ring spring again pain bring "
    "in begin certain main plain brain rain train captain mountain cuando cuanto".split()
)


def _counted(page: Page) -> bool:
    """Whether a number may be a value; hours (`till 5`) are none."""
    for index, token in enumerate(page.tokens):
        if token.word[0].isdigit():
            till = page.words(max(index - 1, 0), index)
            if set(page.words(index + 1, index + 2)) & {"times", "hours", "hour", "veces", "horas"}:
                continue
            hour = token.word.isdigit() and int(token.word) <= 12
            if not (hour and till and till[0] in {"till", "until", "til", "hasta", "las", "for"}):
                return True
    return False


def _eats_or_moves(page: Page, language: str) -> bool:
    """Whether food or an activity is named: the other finders ask or enter what they are."""
    copy = page.afresh()
    return bool(food.find(copy, language)) or bool(activity.find(copy, language))
