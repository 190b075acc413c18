"""Which words lead in a meal and name it? `lunch was`, `just started my dinner`."""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import dataclass
from functools import cache

from bot.entries import MealName
from bot.parser.languages import gathered, lexica
from bot.parser.lexicon import either
from bot.parser.moments import meal_names
from bot.parser.page import Page, Pattern, Several, Span, pattern


@dataclass(frozen=True, slots=True, kw_only=True)
class Lead:
    """Words that food follows, or that say that a meal is begun or over.

    `strong` ones are followed by food and nothing else; `past` ones lie behind. What is `blamed`
    for the reading before it was eaten before it.
    """

    start: int
    end: int
    name: MealName | None = None
    is_name: bool = False
    strong: bool = False
    past: bool = False
    blamed: bool = False


@dataclass(frozen=True, slots=True)
class _Patterns:
    since: Pattern
    named: Pattern
    for_name: Pattern
    lead: Pattern
    planned: Pattern
    same: Pattern


@cache
def _verbs(language: str) -> dict[str, MealName | None]:
    verbs: dict[str, MealName | None] = {}
    for lexicon in lexica(language):
        for verb, name in lexicon.meal_verbs.items():
            verbs.setdefault(verb, name)
    return verbs


@cache
def shy_names(language: str) -> dict[str, MealName]:
    """Names of meals that are something else alone (`tea`)."""
    return {
        word: name
        for lexicon in lexica(language)
        for name, words in lexicon.shy_meal_names.items()
        for word in words
    }


#: A kind of tea is drunk; `tea:` alone is the meal.
_NO_DRINK = "".join(
    f"(?<!{kind} )" for kind in "unsweet sweet iced green black mint herbal milk ginger".split()
)


#: Whose table it was: `ate at my sister's`, `cené en casa de mi hermana`.
_AT_SOMEBODYS = (
    r"(?: at (?:(?:my|our|her|his|the|a) )?(?:mum|mom|mam|mother|dad|father|parent|sister|brother|son|daughter|friend|mate|neighbour|neighbor|cousin|aunt|auntie|uncle|nan|gran|granny|grandma|grandad|grandpa|boss|colleague)s(?: (?:house|place|home|flat|party))?"
    r"| (?:en (?:la )?casa de|donde|en lo de) (?:(?:mi|mis|la|el|los|una|un) )?(?:mama|papa|madre|padre|padres|hermana|hermano|hija|hijo|amiga|amigo|amigos|vecina|vecino|prima|primo|tia|tio|abuela|abuelo|abuelos|suegra|suegro|suegros|cunada|cunado|comadre|compadre)(?= [,.:;]))?"
)


@cache
def _patterns(language: str) -> _Patterns:
    names = either(tuple(meal_names(language)))
    shy = either(tuple(shy_names(language)))
    verbs = tuple(_verbs(language))
    return _Patterns(
        since=pattern(
            rf"(?:since|until|till|til|by|desde|hasta)(?: (?:my|the|el|la|mi))? {names}(?: time)?"
        ),
        named=pattern(
            rf"(?:(?:today|todays|my|for|the|our|early|late|hoy|para|mi|el|la|light|big|quick|small|proper|simple|school|hospital|canteen|office|pub|church|work|works|packed|family|birthday|sunday|working) )*(?P<name>{names}|(?:(?<=for )|(?<=my )|(?<=me )|(?<=our )){shy}|{_NO_DRINK}{shy}(?= (?::|was) )|(?<!my )(?<!the )bf(?= :))(?: (?:was|is|na|will be|today|now|fue|es|era|of|de|had|hoy|started|starting|time|just|i had|i ate|consists of|consisted of|tonight|ready|which is|which was|that is))*(?: :| -| =)?"
        ),
        for_name=pattern(
            rf"(?:for|as|at|para|en|de) (?:my |the |a |an |late |early |el |la |mi |una )*(?P<name>{names}|{shy})(?: today| now| tonight| hoy)?"
        ),
        lead=pattern(
            rf"(?:(?:i|we|just|have|am|im|now|she|he|is|has|ive|only|then|also|going to|already|finally|so|and|today|estoy|voy a|acabo de|me|yo|ya|ahora|recien) )*(?P<lead>{either(gathered(language, 'lead_ins'), verbs)})(?: (?:now|just|my|some|today|on|of|also|that|i had|i ate|had|ate|a nice|say|like|about|around|roughly|maybe|ahora))*{_AT_SOMEBODYS}(?: :| -)?"
        ),
        planned=pattern(either(gathered(language, "planned"))),
        same=pattern(either(gathered(language, "same_as"))),
    )


_WHOM = frozenset("me us him her them to".split())
_DRINKS = frozenset("drink drinking drinks drank".split())


def _no_meal(page: Page, span: Span) -> bool:
    """`had to sit down`, `had me in fits of laughter`; `drinking from the tap` and `could drink the
    sea dry` tell of thirst."""
    verb, behind = page.words(span.end - 1, span.end + 1), page.words(span.end, span.end + 6)
    if verb[0] == "had" and not _WHOM.isdisjoint(verb[1:]):
        return True
    if verb[0] == "had" and {"attack", "stroke", "fits", "meltdown", "giggles"} & set(behind[:3]):
        return True  # `nearly had a heart attack when i saw the bill`
    before = page.words(max(span.end - 3, 0), span.end - 1)
    could = before[-1:] == ["could"]
    if verb[0] == "eat" and (could or before == ["enough", "to"]):
        return True  # `could eat a horse`
    if verb[0] not in _DRINKS:
        return False
    return behind[:1] in (["from"], ["out"], ["like"]) or (could and "dry" in behind)


#: With one of these the food is eaten; what is `dished up` or `tucked into` is begun.
PAST = frozenset(
    "ate had eaten drank finished comi comio tome bebi termine desayune almorce cene snacked lunched brunched dined breakfasted scoffed devoured gobbled downed polished demolished wolfed munched nibbled chomped feasted sipped slurped guzzled gulped necked inhaled consumed ingested enjoyed managed cheated et given gave served merende acabo acabamos acaba acabe acabando termino terminamos terminando vengo venimos comimos comieron comido bebimos bebido tomamos tomado cenamos cenaron cenado almorzamos almorzaron almorzado desayunamos desayunaron desayunado merendamos merendado".split()
)


#: What was just begun is not over: `acabo de empezar a cenar`.
_JUST_BEGUN = frozenset({"empezar", "comenzar"})


def planned(page: Page, language: str) -> list[tuple[int, int]]:
    """Where words stand that say that food is only planned."""
    return [(span.start, span.end) for span in page.find(_patterns(language).planned)]


def same_as(page: Page, language: str) -> tuple[int, int] | None:
    """`same as yesterday`."""
    span = page.first(_patterns(language).same)
    return (span.start, span.end) if span else None


@cache
def _sought(language: str) -> Several:
    """All that `leads` looks for."""
    patterns = _patterns(language)
    return Several(patterns.since, patterns.for_name, patterns.named, patterns.lead)


def leads(page: Page, language: str, within: set[int], active: set[int]) -> list[Lead]:
    """Claim names of meals and what leads food in, in order; none is `within` a food (`drink` of
    `an energy drink`) or leads to what is `active` (`finished my walk`)."""
    patterns, names, shy, verbs = (
        _patterns(language), meal_names(language), shy_names(language), _verbs(language),
    )  # fmt: skip
    found: list[Lead] = []
    if not page.worth(_sought(language)):
        return found
    for span in page.find(patterns.since):
        page.claim(span.start, span.end)
    for span in page.find(patterns.for_name):
        if within.issuperset(range(span.start, span.end)):
            continue
        name = names.get(span["name"] or "") or shy.get(span["name"] or "")
        page.claim(span.start, span.end)
        found.append(Lead(start=span.start, end=span.end, name=name, is_name=True))
    for span in page.find(patterns.named):
        if within.issuperset(range(span.start, span.end)) or active & {span.start, span.end}:
            continue  # `snack mix`, `lunchtime walk`
        name = names.get(span["name"] or "") or shy.get(span["name"] or "")
        name = MealName.BREAKFAST if span["name"] == "bf" else name
        page.claim(span.start, span.end)
        if page.words(max(span.start - 1, 0), span.start) in _NONE:
            continue  # `no lunch today, meetings all day`
        found.append(Lead(start=span.start, end=span.end, name=name, is_name=True, strong=True))
    for span in page.find(patterns.lead):
        if within & set(range(span.start, span.end)) or span.end in active:
            continue
        if _no_meal(page, span):
            continue
        word = span["lead"] or ""
        told = page.words(span.start, span.end)
        page.claim(span.start, span.end)
        found.append(
            Lead(
                start=span.start,
                end=span.end,
                name=verbs.get(word),
                strong=True,
                past=not PAST.isdisjoint(told) and _JUST_BEGUN.isdisjoint(told),
            )
        )
    return sorted(found, key=lambda lead: lead.start)


_NONE = (["no"], ["without"], ["skipped"], ["skipping"], ["missed"], ["sin"])


_BEGINNING = frozenset(
    "eating comiendo start started starting began begin beginning empece empiezo empezando empezar empezamos comienzo comence comenzando comenzar comenzamos sentamos siento sente sento empezo comenzo pongo pusimos puse eat ate "
    "almorzando cenando desayunando desayune cene almorce comi bite snacking plate drinking snacked tuck tucking munching plating dishing dig digging".split()
)


def begins(page: Page, lead: Lead) -> bool:
    """Whether a lead-in without food says by itself that a meal is begun."""
    told = page.words(lead.start, lead.end)
    just_eaten = not (_JUST.isdisjoint(told) or _EATEN.isdisjoint(told))  # `acabo de cenar`
    return just_eaten or not _BEGINNING.isdisjoint(told)


_JUST = frozenset("acabo acabamos acaba acabe termine terminamos".split())
_EATEN = frozenset("comer almorzar cenar desayunar merendar".split())
