"""Is advice asked for, about medicine or about food? And was a wrong dose taken?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import Request, What
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, pattern
from bot.parser.requests import Wish


@dataclass(frozen=True, slots=True)
class _Patterns:
    eat: re.Pattern[str]
    opens: re.Pattern[str]
    drug: re.Pattern[str]
    dose: re.Pattern[str]
    wrong: re.Pattern[str]
    taken: re.Pattern[str]
    medical: re.Pattern[str]
    mistaken: re.Pattern[str]
    whole: re.Pattern[str]
    fine: re.Pattern[str]
    affect: re.Pattern[str]


@cache
def _patterns(language: str) -> _Patterns:
    return _Patterns(
        eat=re.compile(
            r"\b(?:eat|have|drink|eating|try|take|comer|tomar|beber|desayunar|cenar|snack on|use|add|order|allowed|had|get|cook|be eating|ate)\b"
        ),
        opens=pattern(either(gathered(language, "food_advice"))),
        drug=pattern(either(gathered(language, "drugs"))),
        dose=pattern(either(gathered(language, "doses"))),
        wrong=pattern(either(gathered(language, "wrong_dose"))),
        taken=pattern(either(gathered(language, "taken"))),
        medical=pattern(either(gathered(language, "medicine_advice"))),
        mistaken=pattern(
            rf"(?:my|someone|somebody) (?:husbands|wifes|moms|dads|mums|dogs|cats|sisters|brothers|sons|daughters|mothers|fathers|friends|neighbou?rs|partners|elses|kids|grandmas|grandpas) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}"
            rf"|(?:night|evening|bedtime|nighttime|slow|long acting) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}(?: [a-z]+){{0,2}} (?:in the|this) morning"
            rf"|(?:morning|mornings|breakfast) (?:[a-z]+ )?{either(gathered(language, 'drugs'))}(?: [a-z]+){{0,2}} (?:at night|in the evening|tonight|at bedtime)"
            rf"|forgot(?: that)? i (?:had|already)(?: [a-z]+){{0,6}} again"
        ),
        affect=re.compile(
            r"\b(?:raise|raises|spike|spikes|affect|affects|hurt|bad|good|ok|okay|safe|increase|send|push|put|lower|mess|sube|subir|afecta|hace dano)\b"
        ),
        whole=re.compile(either(gathered(language, "meal_advice"))),
        fine=re.compile(
            rf"(?:.* )?{either(gathered(language, 'is_it_fine'))}(?: (?:for|to|with|in|at|on|if|a|me|too|para|now|tonight|today|then) ?[a-z ]*)?"
        ),
    )


def _sentences(page: Page) -> list[tuple[int, int, bool]]:
    """Where each sentence begins and ends, and whether it ends with a question mark."""
    found, start = [], 0
    for index, token in enumerate(page.tokens):
        if token.word in {".", "?", "!", ";"}:
            if index > start:
                found.append((start, index, token.word == "?"))
            start = index + 1
    if start < len(page.tokens):
        found.append((start, len(page.tokens), False))
    return found


def medicine(page: Page, language: str) -> list[Wish]:
    """Claim questions about medicine, and wrong doses taken."""
    patterns = _patterns(language)
    drugs = list(page.find(patterns.drug))
    doses = list(page.find(patterns.dose))
    if not drugs and not doses:
        return []
    found = []
    for start, end, question in _sentences(page):
        here = [span for span in (*drugs, *doses) if start <= span.start < end]
        if not here:
            continue
        opening = [
            span.start
            for span in page.find(patterns.medical)
            if start <= span.start < end and _may_open(page, span.start, start)
        ]
        has_drug = any(start <= span.start < end for span in drugs)
        first = min(opening, default=None)
        asks = (
            first is not None
            and (question or _strong(page, first))
            and (any(span.start >= first for span in here) or _takes(page, first, end))
        )
        if (asks or (question and has_drug)) and (has_drug or _takes(page, start, end)):
            begin = first if first is not None else min(span.start for span in here)
            found.append(_wish(page, begin, end, What.MEDICINE_ADVICE))
        elif (
            any(
                start <= span.start < end
                for sought in (patterns.wrong, patterns.mistaken)
                for span in page.find(sought)
            )
            and any(start <= span.start < end for span in page.find(patterns.taken))
            and not re.search(
                " (?:a|per|every|each|x) (?:day|week)| daily|al dia",
                f" {' '.join(page.words(start, end))}",
            )
        ):
            begin = min(
                span.start for span in page.find(patterns.taken) if start <= span.start < end
            )
            told = max(
                (span.end for span in page.find(patterns.wrong) if start <= span.start < end),
                default=begin,
            )
            last = max(told, _until_mark(page, begin, end))
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
            found.append(_wish(page, begin, last, What.WRONG_DOSE))
    return found


def _until_mark(page: Page, start: int, end: int) -> int:
    """Where the clause ends that holds the mistake."""
    for index in range(start, end):
        if page.tokens[index].word == ",":
            return index
    return end


def _takes(page: Page, start: int, end: int) -> bool:
    words = set(page.words(start, end))
    return bool(
        words & {"take", "inject", "dose", "shot", "bolus", "tomar", "inyectar", "dosis", "ponerme"}
    )


def _strong(page: Page, index: int) -> bool:
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
        "when",
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


_FIRST_PERSON = frozenset({"should", "shall", "can", "could", "do", "may", "must"})


def _may_open(page: Page, index: int, start: int) -> bool:
    """A question opens a sentence or follows a mark or a small word; `should I` asks anywhere."""
    if page.tokens[index].word == "which" and index > start:  # `my dinner, which is lasagne`
        return page.tokens[index - 1].word in {"-", ":", "and"}
    return (
        index == start
        or (
            page.tokens[index].word in _FIRST_PERSON
            and (
                page.words(index + 1, index + 2) == ["i"]
                or (index > 1 and page.words(index - 2, index) in (["if", "i"], ["whether", "i"]))
            )
        )
        or page.tokens[index - 1].word
        in {
            ",",
            "and",
            "but",
            "so",
            "or",
            "hi",
            "hello",
            "please",
            "also",
            "ok",
            "hey",
            "then",
            "¿",
            "y",
            "-",
            ":",
            "doctor",
            "if",
            "whether",
            "bot",
            "thanks",
            "pls",
            "wondering",
            "now",
            "hola",
        }
        or not page.tokens[index - 1].word[0].isalpha()
    )


_ADVICE = frozenset("can could may should shall puedo debo podria deberia allowed".split())


def food_advice(page: Page, language: str, food_at: set[int]) -> list[Wish]:
    """Claim questions about food."""
    patterns = _patterns(language)
    found = []
    for start, end, question in _sentences(page):
        said = " ".join(word for word in page.words(start, end) if word not in {",", "¿", "¡"})
        asks = patterns.whole.fullmatch(said) or (
            question
            and patterns.fine.fullmatch(said)
            and any(start <= index < end for index in food_at)
            and not any(word[0].isdigit() for word in page.words(start, end))
        )
        if asks and not page.any_taken(start, end):
            found.append(_wish(page, start, end, What.FOOD_ADVICE, food_at))
            continue
        opening = [
            span.start
            for span in page.find(patterns.opens)
            if start <= span.start < end and _may_open(page, span.start, start)
        ]
        if not opening:
            continue
        first = min(opening)
        words = " ".join(page.words(first, end))
        named = any(first <= index < end for index in food_at)
        strong = page.tokens[first].word in _ADVICE or words.startswith(
            (
                "how much",
                "how many",
                "am i allowed",
                "is it",
                "ok to",
                "what about",
                "how about",
                "how bad",
                "how good",
                "how healthy",
                "what can",
                "what should",
                "se puede",
                "me puedo",
                "es bueno",
                "es malo",
            )
        )
        affects = patterns.affect.search(words) is not None
        if (
            named
            and affects
            and page.tokens[first].word in {"will", "would", "does", "do", "la", "el", "los", "las"}
        ):
            found.append(_wish(page, first, end, What.FOOD_ADVICE, food_at))
            continue
        if not (
            question
            or strong
            or page.tokens[first].word
            in {
                "is",
                "are",
                "what",
                "which",
                "does",
                "do",
                "how",
                "why",
                "son",
                "es",
                "que",
                "cuanto",
                "cuanta",
            }
        ):
            continue
        about_food = named or (
            strong
            and patterns.eat.search(words) is not None
            and re.search("eat|drink|comer|beber", words)
        )
        if about_food and not re.search(r"\b(?:test|sugar level|strip)\b", words):
            found.append(_wish(page, first, end, What.FOOD_ADVICE, food_at))
    return found


def _wish(page: Page, start: int, end: int, what: What, food_at: set[int] | None = None) -> Wish:
    subject = None
    if food_at:
        named = sorted(index for index in food_at if start <= index < end)
        if named:
            last = named[0]
            while last + 1 in food_at and last + 1 < end:
                last += 1
            subject = page.text(named[0], last + 1)
    page.claim(start, end)
    return Wish(start=start, end=end, request=Request(what=what, subject=subject))
