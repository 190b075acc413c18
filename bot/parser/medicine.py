"""Is advice about a medicine asked for? And was a wrong dose taken?"""

# ruff: noqa: E501 - patterns and word lists, one a line

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import What
from bot.parser import food
from bot.parser.advice import may_open, sentences, wish
from bot.parser.dose_clauses import asked_until, first_named, until_mark
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Span, pattern
from bot.parser.requests import Wish


@dataclass(frozen=True, slots=True)
class _Patterns:
    drug: Pattern
    dose: Pattern
    wrong: Pattern
    taken: Pattern
    medical: Pattern
    mistaken: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    return _Patterns(
        drug=pattern(either(gathered(language, "drugs"))),
        dose=pattern(either(gathered(language, "doses"))),
        wrong=pattern(either(gathered(language, "wrong_dose"))),
        taken=pattern(either(gathered(language, "taken"))),
        medical=pattern(either(gathered(language, "medicine_advice"))),
        mistaken=pattern(
            rf"(?:my|someone|somebody) (?:husbands|wifes|moms|dads|mums|dogs|cats|sisters|brothers|sons|daughters|mothers|fathers|friends|neighbou?rs|partners|elses|kids|grandmas|grandpas) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}"
            rf"|(?:night|evening|bedtime|nighttime|slow|long acting) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}(?: [a-z]+){{0,2}} (?:in the|this) morning"
            rf"|(?:morning|mornings|breakfast) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}(?: [a-z]+){{0,2}} (?:at night|in the evening|tonight|at bedtime)"
            rf"|(?:pastilla|pastillas|insulina|metformina|inyeccion|tableta|medicina) de la (?:noche|manana|tarde|cena) (?:en|por) la (?:manana|noche|tarde)"
            rf"|forgot(?: that)? i (?:had|already)(?: [a-z]+){{0,6}} again"
        ),
    )


def find(page: Page, language: str) -> list[Wish]:
    """Claim questions about medicine, and wrong doses taken."""
    patterns = _patterns(language)
    drugs = page.find(patterns.drug)
    doses = page.find(patterns.dose)
    if swapped := _swapped(page):
        return swapped
    if not drugs and not doses:
        span = page.first(_MAY_I_DOUBLE)
        return [wish(page, span.start, span.end, What.MEDICINE_ADVICE)] if span else []
    if named := _named_only(page):
        return named
    found = []
    for start, end, question in sentences(page):
        here = [span for span in (*drugs, *doses) if start <= span.start < end]
        if not here:
            continue
        opening = [
            span.start
            for span in page.find(patterns.medical)
            if start <= span.start < end and may_open(page, span.start, start)
        ]
        has_drug = any(start <= span.start < end for span in drugs) or any(
            span.match[0] in _INSULIN for span in here
        )
        first = min(opening, default=None)
        asks = (
            first is not None
            and (question or _strong(page, first))
            and (
                any(span.start >= first for span in here)
                or _takes(page, first, end)
                or not {"it", "them", "one", "la", "lo"}.isdisjoint(page.words(first, end))
            )
        )
        asks = asks or (has_drug and _asks_on(page, start, end))
        already = _already_wrong(page, patterns, start, end if first is None else first)
        if (
            not already
            and (asks or (question and has_drug))
            and (has_drug or _takes(page, start, end))
        ):
            begin = first if first is not None else first_named(page, start, here)
            asked = asked_until(page, language, begin, end, here)
            found.append(wish(page, begin, asked, What.MEDICINE_ADVICE))
        elif (
            any(
                start <= span.start < end and not _of_food(page, span, drugs, language)
                for sought in (patterns.wrong, patterns.mistaken)
                for span in page.find(sought)
            )
            and any(
                start <= span.start < end
                for sought in (patterns.taken, _IN_THE_PAST)
                for span in page.find(sought)
            )
            and not re.search(
                " (?:a|per|every|each|x) (?:day|week)| daily|al dia",
                f" {' '.join(page.words(start, end))}",
            )
        ):
            begin = min(
                span.start
                for sought in (patterns.taken, _IN_THE_PAST)
                for span in page.find(sought)
                if start <= span.start < end
            )
            told = max(
                (span.end for span in page.find(patterns.wrong) if start <= span.start < end),
                default=begin,
            )
            last = max(told, until_mark(page, language, begin, told, end))
            meant = page.words(max(last - 2, begin), last + 1)
            if {"to", "been", "than", "of"} & set(meant) and page.words(last, last + 1) != [","]:
                while last < end and page.tokens[last].word in {
                    "be",
                    "take",
                    "have",
                    "only",
                    "just",
                }:
                    last += 1  # `supposed to be 1`
                last += last < end and page.tokens[last].word.isdigit()
            found.append(wish(page, begin, last, What.WRONG_DOSE))
            for span in page.find(_AND_NOW):
                page.claim(span.start, span.end)  # what to do is asked of that
    if not found and drugs and (span := page.first(_IT_TWICE)) is not None:
        found.append(wish(page, span.start, span.end, What.WRONG_DOSE))
    return found


_QUICK = "(?:fast|quick|rapid|short|day|daytime|morning|meal|mealtime)(?: acting)?(?: one| stuff)?"
_SLOW = "(?:slow|long|background|night|nighttime|evening|bedtime)(?: acting)?(?: one| stuff)?"
_FOR = "(?:instead of|in place of|rather than|not)"
_ONE_FOR_THE_OTHER = pattern(
    rf"(?:took|gave (?:myself|her|him|mum|dad)|injected|had|used|jabbed|dialled) (?:the |my )?"
    rf"(?:{_QUICK} {_FOR} (?:the |my )?{_SLOW}|{_SLOW} {_FOR} (?:the |my )?{_QUICK})"
)


_MORE_THAN_MEANT = pattern(
    r"\d+ (?:units?|unitz|u|iu|mg|tablets?|tabs|pills?|unidades|unidad|pastillas|tabletas) (?:not|instead of|rather than|en vez de|y no|en lugar de) (?:the |my )?\d+(?: (?:units?|u|iu|mg|tablets?|pills?|unidades|pastillas))?"
    r"|(?:took|injected|jabbed|dialled|gave myself|me puse|me inyecte|me aplique|se puso|se inyecto) \d+ (?:instead of|rather than|en vez de|en lugar de) (?:the |my )?\d+"
)


def _swapped(page: Page) -> list[Wish]:
    """`gave myself the fast one instead of the slow one` names no drug and is a wrong dose, and so
    is `30 units not 13`, where nothing is asked."""
    if not page.holds(_FOR_ANOTHER):
        return []
    asked = page.holds(_ASKING)
    span = page.first(_ONE_FOR_THE_OTHER) or (None if asked else page.first(_MORE_THAN_MEANT))
    return [wish(page, span.start, span.end, What.WRONG_DOSE)] if span else []


_FOR_ANOTHER = frozenset(["instead", "rather", "place", "not", "vez", "lugar", "no"])
_ASKING = frozenset(["?", "should", "can", "do", "how", "debo", "puedo"])


#: `wrong insulin!`, with nothing taken named and nothing asked.
_WRONG_ONE = re.compile(
    "(?:hi |help |oops |oh no |i )?(?:the |a )?(?:wrong|too much|too many|double|extra|dosis equivocada|doble|demasiada|mucha)"
    "(?: (?:of )?(?:my |the )?(?:insulin|insulina|doses?|dosis|pills?|tablets?|pens?|pluma|meds|medicine|pastillas?|metformin[ae]?)){1,3}"
    "(?: (?:taken|tonight|today|now|by mistake|help|oops|sorry|hoy|ahora))*|dosis equivocada|insulina equivocada|pastilla equivocada|pluma equivocada"
)
#: What is taken slowly and once a day: `took two lantus tonight`.
_TWO_PENS = pattern(
    "(?:took|taken|injected|tome|me puse) (?:2|3|both) (?:lantus|basaglar|toujeo|levemir|tresiba|glargine|detemir|degludec)"
)


def _named_only(page: Page) -> list[Wish]:
    """A wrong dose that is told by its name alone."""
    if _WRONG_ONE.fullmatch(page.said().replace(" !", "")) is not None:
        return [wish(page, 0, len(page.tokens), What.WRONG_DOSE)]
    span = page.first(_TWO_PENS)
    return [wish(page, span.start, span.end, What.WRONG_DOSE)] if span else []


#: `took it twice! the metformin`: in another sentence than the drug.
_IT_TWICE = pattern(
    r"(?:took|taken|injected|swallowed) (?:it |them |the lot )?(?:twice|2 times|too much|too many|double|again by mistake)(?= (?:[.,;!?]|today|by|this|tonight|in|$)| $)"
)
_MAY_I_DOUBLE = pattern(r"(?:should|can|shall|may|must|could) i (?:double up|double it|up it)")
_IN_THE_PAST = pattern(
    r"(?:took|tek|injected|doubled|overdosed|swallowed|jabbed|mixed up|(?:gave|given) (?:myself|him|her|them|mum|mom|mama|dad|papa|nan|gran|granny|grandma|grandpa|my (?:mum|mom|mother|dad|father|wife|husband|nan|gran))|(?:have|has|ive|hes|shes) (?:taken|had|done|injected)"
    r"|(?:me |se )?(?:tome|puse|inyecte|aplique|tomo|puso|inyecto|aplico)|me equivoque|se equivoco|me pase|se paso)"
)


def _already_wrong(page: Page, patterns: _Patterns, start: int, end: int) -> bool:
    """Whether a wrong dose is told as taken before anything is asked about it (`took my insulin
    twice, what do I do?`)."""
    taken = [span.start for span in page.find(_IN_THE_PAST) if start <= span.start < end]
    if not taken or {"if", "si", "should", "can"} & set(page.words(start, taken[0])):
        return False
    return any(
        start <= span.start and span.end <= end
        for sought in (patterns.wrong, patterns.mistaken)
        for span in page.find(sought)
    )


_AND_NOW = pattern(
    r"what (?:do|should|shall|must|can|to) (?:i |we )?do|what now|que (?:hago|debo hacer|hacemos)|is (?:that|it|this) (?:ok|okay|bad|a problem|dangerous|right|correct|normal|safe)"
)


def _asks_on(page: Page, start: int, end: int) -> bool:
    """Whether what to do about it is asked behind it (`missed my tablet what do I do`)."""
    return any(start <= span.start < end for span in page.find(_AND_NOW))


def _of_food(page: Page, wrong: Span, drugs: list[Span], language: str) -> bool:
    """Whether it is said of food: `too many chips`."""
    if wrong.match[0] not in {"too many", "too much"} or any(
        drug.start == wrong.end for drug in drugs
    ):
        return False
    dishes = food.find(page.afresh(), language)
    return any(dish.start == wrong.end for dish in dishes)


#: What only insulin is counted in.
_INSULIN = frozenset({"units", "unit", "unitz", "unidades", "unidad", "iu", "ui"})


_ASKED = frozenset({"should", "shall", "do", "can", "could", "must", "to", "is", "will", "may"})


def _takes(page: Page, start: int, end: int) -> bool:
    words = set(page.words(start, end))
    return bool(
        words & {"take", "inject", "dose", "shot", "bolus", "tomar", "inyectar", "dosis", "ponerme"}
    )


def _strong(page: Page, index: int) -> bool:
    if page.tokens[index].word == "when":  # `112 when i woke up, took my tablets` asks nothing
        return not _ASKED.isdisjoint(page.words(index + 1, index + 2))
    return page.tokens[index].word in {
        "should",
        "shall",
        "can",
        "could",
        "may",
        "how",
        "do",
        "what",
        "is",
        "would",
        "debo",
        "puedo",
        "cuanta",
        "cuantas",
        "cuanto",
        "tengo",
        "deberia",
        "ok",
        "need",
        "does",
        "will",
        "which",
        "why",
    }
