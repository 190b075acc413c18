"""Is a reading refused, with a reason in any words? `no, estoy en el cine`, `on duty cannot test`.

What refuses is known word by word; why is told in words that no list holds, and is kept as typed.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from functools import cache

from bot.parser import activity
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, as_written

#: Longer messages are told about in their parts.
LONGEST = 18

_NO = as_written(
    r"(?:(?:sorry|oh|ah|um|hi|hello|thanks|perdon|lo siento|ay|uy|disculpa|well) (?:, )?)*"
    r"(?:no thanks|no thank you|no sorry|no can do|not now|not today|not tonight|not right now|not yet|not this time|no way|nope|nah|naw|nay|no po|hindi po|no lah|no o|no(?! (?:test )?(?:strips?|tiras|tengo|tenemos|meter|kit|battery|phone|light|time|signal|hay|traigo|traje|more|glucometer|medidor))|cant now|cant"
    r"|no gracias|no puedo|ahora no|ahorita no|no ahora|hoy no|esta vez no|no se puede|todavia no|no voy a poder)"
    r"(?: (?:,|\.|!|-|:|;|pls|plz|please|po|sorry|thanks|thank you|dear|love|mate|man|po|doc|nurse|today|now|right now|this time|tonight|gracias|perdon|ahora|hoy|because|cos|bc|cuz|cause|as|since|porque|pues|que|test|testing))* "
    r"(?P<why>.+)"
)
_STARTS = frozenset(
    "im i am were we at in on too still busy driving working out stuck with already asleep sleeping sleepy "
    "tired hands forgot left lost dont wont hes shes he she got gotta need running travelling traveling "
    "meters kits away the my no very so just both kids baby boss customer customers client clients guests visitors meter kit battery strips phone meeting church work "
    "estoy ando tengo en voy muy ya me se ocupado ocupada cansado cansada manejando trabajando sali "
    "olvide deje estamos andamos mi la el sin fuera dormida dormido".split()
)
#: What else the words may tell: eaten, done, asked, felt, mended. Then they are no reason.
_OTHERWISE = frozenset(
    "eat ate eating eaten had having breakfast lunch dinner supper feel feeling felt meant mean ? later "
    "soon stop help want delete undo before after it its was is that thats reading sugar says shows "
    "comi comiendo comer siento quise luego despues antes era fue ayuda quiero desayuno almuerzo cena "
    "ask remind recuerdame walked ran".split()
)
#: What is not done is no reason for it (`hoy no me mido`).
_ITSELF = frozenset(
    {"", "tengo ganas", "me mido", "me checo", "me pincho", "me pico", "me mide", "se mide"}
)
_CANNOT = (
    r"(?:i |we |he |she )?(?:just )?(?:cant|cannot|can not|couldnt|could not|wont|will not|unable to|not able to|not gonna|not going to|wont be able to|didnt|did not|not|no puedo|no pude|no podemos|no pudo|no puede)"
    r" (?:be )?(?:test|testing|check|checking|measure|measuring|do it|do the test|take it|prick|medir|medirme|medirse|pincharme|pincharse|checarme|hacerlo)(?: (?:my|the|his|her) (?:sugar|blood|glucose|finger))?"
    r"|(?:i |we |he |she |will |ill |so |lets |have to |must |please )*(?:skip|skipping|skipped|pass on|pass|missing)(?: (?:it|this|this one|that|that one|one|the test|this test|for now))?"
    r"|no (?:test|reading|testing)|(?:saltemos|saltamos|salta|omite|omitimos|saltala|saltalo|me salto)(?: esta| este| la prueba)?|no hay lectura"
)
_TAIL = r"(?: (?:today|now|again|sorry|please|pls|thanks|for now|muna|po|na|lang|lah|abeg|o|tonight|this time|hoy|ahora|gracias|perdon|,|\.|!|right now|yet|ok|okay))*"


#: `can't test up a roof`, `I missed it; the vicar called`: whatever follows is the reason.
_CANNOT_SINCE = as_written(
    r"(?:(?:sorry|hi|oh|well|perdon|afraid|im afraid) (?:, )?)*(?:(?:i |we |he |she )?(?:cant|cannot|can not|couldnt|could not|no puedo|no pude) (?:test|check|measure|do it|do the test|prick|medir|medirme)|i missed (?:it|this one|that one|the test))"
    r"(?: (?:him|her|them|mum|mom|dad|honey|hon|love|dear|doc|now|today|sorry|because|cos|cuz|as|since|porque|my sugar|my blood|,|\.|;|:|-))* (?P<why>.+)"
)

#: Refuses only where a reading is asked for (`at work cant`).
_BARE = r"|(?:i |we |he |she )?(?:just )?(?:cant|can not|cannot|cyah|cyaan|no fit|cant do|cant now|not now|not today|no can do|no puedo|no se puede|ahora no|hoy no)"


@cache
def _because(language: str, asked: bool) -> Pattern:
    named = either(gathered(language, "skip"))
    bare = _BARE if asked else ""
    return as_written(
        rf"(?:(?:sorry|hi|hello|oh|well|perdon|hola|nah|nope) (?:, )?|no , )*(?P<why>.+?)(?: (?:so|,|\.|;|-|and|but|y|asi que|entonces|por eso|pero|therefore))* (?P<skip>{_CANNOT}|(?<=[,.;] ){named}{bare}){_TAIL}"
    )


def find(page: Page, words: str, language: str, *, asked: bool) -> tuple[int, int] | None:
    """Where the reason stands in `words`, the message's tokens joined; None where nothing is
    refused. `asked` is whether a reading is asked for: only then does a `no` refuse one."""
    if len(page.tokens) > LONGEST or _counted(page):
        return None
    if asked and (match := _NO.whole(words, page.held)):
        span = _told(page, match, language)
        first = words[span[0] :].split(maxsplit=1)[0] if span is not None else ""
        if first in _STARTS or (first.endswith("ing") and not match[0].startswith("no ")):
            return span
    if match := _CANNOT_SINCE.whole(words, page.held):
        return _told(page, match, language)
    match = _because(language, asked).whole(words, page.held)
    return _told(page, match, language) if match else None


def _told(page: Page, match: re.Match[str], language: str) -> tuple[int, int] | None:
    why = match["why"].strip(" ,.;-")
    said = set(why.split())
    if why in _ITSELF or not any(word.isalpha() for word in said) or said & _OTHERWISE:
        return None
    done = activity.find(page.afresh(), language)
    if any(doing.over and not activity.unfinished(page, doing) for doing in done):
        return None
    start = match.start("why") + match["why"].index(why)
    return start, start + len(why)


def _counted(page: Page) -> bool:
    """Whether a number may be a value: hours (`at work till 5`) are none."""
    return any(
        not (page.tokens[at].word.isdigit() and int(page.tokens[at].word) <= 12)
        for at in page.numbers
    )
