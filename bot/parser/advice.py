"""Is advice asked for about food? Also what questions of all kinds share."""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import Request, What
from bot.parser.beside_questions import named, told_from
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Span, as_written, pattern
from bot.parser.requests import Wish


@dataclass(frozen=True, slots=True)
class _Patterns:
    eat: re.Pattern[str]
    opens: Pattern
    whole: Pattern
    fine: Pattern
    affect: re.Pattern[str]


@cache
def _patterns(language: str) -> _Patterns:
    return _Patterns(
        eat=re.compile(
            r"\b(?:eat|have|drink|eating|try|take|comer|tomar|beber|desayunar|cenar|snack on|use|add|order|allowed|had|get|cook|be eating|ate)\b"
        ),
        opens=pattern(either(gathered(language, "food_advice"))),
        affect=re.compile(
            r"\b(?:raise|raises|spike|spikes|affect|affects|hurt|bad|good|ok|okay|safe|increase|send|push|put|lower|mess|sube|subir|afecta|hace dano)\b"
        ),
        whole=as_written(either(gathered(language, "meal_advice"))),
        fine=as_written(
            rf"(?:.* )?{either(gathered(language, 'is_it_fine'))}(?: (?:for|to|with|in|at|on|if|a|me|too|para|now|tonight|today|then) ?[a-z ]*)?"
        ),
    )


def sentences(page: Page) -> list[tuple[int, int, bool]]:
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


_STATING = frozenset({"is", "are", "was", "were", "es", "fue"})
_FIRST_PERSON = frozenset({"should", "shall", "can", "could", "do", "may", "must"})


_NOW = (["now"], ["today"], ["tonight"])


def _asks_behind(page: Page, index: int) -> bool:
    """`54 is rice ok`: what `is` opens behind a value ends with a word for what is fine."""
    last = len(page.tokens)
    while last > index and not page.tokens[last - 1].word.isalpha():
        last -= 1
    words = page.words(index + 1, last)
    return len(words) > 1 and (words[-1] in _FINE or (words[0] == "it" and words[1] in _FINE))


_FINE = frozenset("ok okay fine allowed safe good bad bueno malo".split())


def may_open(page: Page, index: int, start: int) -> bool:
    """A question opens a sentence or follows a mark or a small word; `should I` asks anywhere."""
    behind_a_number = index > start and page.tokens[index - 1].word[0].isdigit()
    if behind_a_number and page.tokens[index].word in _STATING:
        return _asks_behind(page, index)  # `129 is before pierogi`
    told = page.words(index - 1, index) in _NOW or page.words(index + 1, index + 2) in _NOW
    if page.tokens[index].word == "is" and told:
        return False  # `dinner now is lamb chops`, `is now 10.3 after byrek`
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
    openings = page.find(patterns.opens)
    may_ask = patterns.whole.may_stand_in(page.held) or patterns.fine.may_stand_in(page.held)
    if not openings and not may_ask:
        return []
    for start, close, question in sentences(page):
        end = _asked_until(page, language, (start, close), openings, food_at)
        said = " ".join(word for word in page.words(start, end) if word not in {",", "¿", "¡"})
        asks = patterns.whole.whole(said, page.held) or (
            question
            and patterns.fine.whole(said, page.held)
            and any(start <= index < end for index in food_at)
            and not any(word[0].isdigit() for word in page.words(start, end))
        )
        if asks and not page.any_taken(start, end):
            marks = [at for at in range(start, end) if page.tokens[at].word == ","]
            asked = [at + 1 for at in marks if page.words(at + 1, at + 2) in (["is"], ["are"])]
            begin = asked[-1] if asked else start  # `eating beans now, is amasi ok to eat?`
            found.append(wish(page, begin, end, What.FOOD_ADVICE, food_at))
            continue
        opening = [
            span.start
            for span in openings
            if start <= span.start < end
            and may_open(page, span.start, start)
            and not {span.start, span.start + 1} <= food_at  # `es campur`, `do pyaza`
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
            found.append(wish(page, first, end, What.FOOD_ADVICE, food_at))
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
                "cuantos",
                "cuantas",
            }
        ):
            continue
        about_food = named or (
            strong
            and patterns.eat.search(words) is not None
            and re.search("eat|drink|comer|beber", words)
        )
        if about_food and not re.search(
            r"\b(?:test|sugar level|strip|signs?|symptoms?|means?|cause|thirsty|dizzy|blurry|my sugar|the sugar)\b",
            words,
        ):
            found.append(wish(page, first, end, What.FOOD_ADVICE, food_at))
    return found


def _asked_until(
    page: Page, language: str, sentence: tuple[int, int], openings: list[Span], food_at: set[int]
) -> int:
    """Where in a sentence a value is told behind what is asked about."""
    start, end = sentence
    opened = [
        span.end
        for span in openings
        if start <= span.start < end and may_open(page, span.start, start)
    ]
    if not opened:
        return end
    last = min(opened)
    number = next((at for at in page.numbers if last <= at < end and at not in food_at), end)
    names = named(language)  # `can i eat mango my sugar is 54`: what is sugar there?
    about = (at for at in food_at if last <= at < number and page.tokens[at].word not in names)
    last = max([last, *(at + 1 for at in about)])
    return told_from(page, language, last, end, food_at)


def wish(page: Page, start: int, end: int, what: What, food_at: set[int] | None = None) -> Wish:
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
