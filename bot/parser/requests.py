"""Is something asked of the bot, or is it about something that is no entry?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM102 - one question an `if`
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import Request, What
from bot.parser.durations import NUMBER, duration, minutes_of
from bot.parser.languages import gathered, lexica
from bot.parser.lexicon import either
from bot.parser.page import Page, pattern
from bot.parser.phrases import Phrases
from bot.parser.strangers import Stranger


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """A request and the tokens that make it."""

    start: int
    end: int
    request: Request


@dataclass(frozen=True, slots=True)
class _Patterns:
    whole: tuple[tuple[re.Pattern[str], What], ...]
    settings: tuple[tuple[re.Pattern[str], str], ...]
    zone: re.Pattern[str]
    later: re.Pattern[str]
    pregnant: re.Pattern[str]
    not_pregnant: re.Pattern[str]
    polite: re.Pattern[str]
    eat: re.Pattern[str]
    opens: re.Pattern[str]
    drug: re.Pattern[str]
    dose: re.Pattern[str]
    wrong: re.Pattern[str]
    taken: re.Pattern[str]
    medical: re.Pattern[str]


@cache
def _patterns(language: str) -> _Patterns:
    def whole(words: tuple[str, ...]) -> re.Pattern[str]:
        return re.compile(either(words).replace("#", NUMBER) if words else r"(?!)")

    every = lexica(language)
    asked = tuple(
        (whole(tuple(word for lex in every for word in lex.requests.get(what, ()))), what)
        for what in What
        if any(lex.requests.get(what) for lex in every)
    )
    settings = tuple(
        (whole(tuple(word for lex in every for word in lex.settings.get(name, ()))), name)
        for name in ("language", "nights", "other")
    )
    zone = either(tuple(word for lex in every for word in lex.settings.get("zone", ())))
    later = either(gathered(language, "later_in"))
    return _Patterns(
        whole=asked,
        settings=settings,
        zone=re.compile(
            f"{zone} (?P<place>[^\\W\\d_]+(?: [^\\W\\d_]+){{0,2}}?)(?P<now> now| ahora| today| this week)?"
        ),
        later=re.compile(
            f"{later} (?:{duration(language)}|(?P<n>{NUMBER}))(?: more)?(?: please| por favor)?"
        ),
        pregnant=pattern(
            r"pregnant|expecting a baby|embarazada|pregnancy|pregnent|preggers|having a baby"
        ),
        not_pregnant=pattern(
            r"(?:not|no|isnt|wasnt|never|if|arent|sister|wife|daughter|friend|cousin|neighbou?r)(?: [a-z]+){0,3} (?:pregnant|embarazada)"
        ),
        polite=re.compile(
            r"^(?:(?:please|pls|plz|hi|hello|hey|ok|okay|bot|just|hola|por favor|so|well|sorry|,|/|(?:can|could|may|might) (?:i|you|we)|i (?:want|need|would like|d like)(?: to)?|id like(?: to)?|remind me of|let me|quiero|necesito|puedo|puedes|podria) )+|(?: (?:please|pls|plz|thanks|thank you|bot|por favor|now|gracias|today|ok|with this|of everything|my messages|por una semana|for a (?:week|while|bit|day|few days)))+$"
        ),
        eat=re.compile(
            r"\b(?:eat|have|drink|eating|try|take|comer|tomar|beber|desayunar|cenar|snack on|use|add|order|allowed|had|get|cook|be eating|ate)\b"
        ),
        opens=pattern(either(gathered(language, "food_advice"))),
        drug=pattern(either(gathered(language, "drugs"))),
        dose=pattern(either(gathered(language, "doses"))),
        wrong=pattern(either(gathered(language, "wrong_dose"))),
        taken=pattern(either(gathered(language, "taken"))),
        medical=pattern(either(gathered(language, "medicine_advice"))),
    )


def _bare(page: Page) -> str:
    """The words alone, without marks and politeness."""
    return " ".join(token.word for token in page.tokens if token.word not in _MARKS)


_MARKS = frozenset(", . ; ! ? : ( ) - ¿ ¡ ~ ' \" _ =".split())


def whole(page: Page, language: str) -> Request | None:
    """A message that is nothing but a request."""
    patterns = _patterns(language)
    words = _bare(page)
    for said in dict.fromkeys((words, patterns.polite.sub("", words))):
        for sought, what in patterns.whole:
            if sought.fullmatch(said):
                return Request(what=what)
        if match := patterns.later.fullmatch(said):
            minutes = float(match["n"]) if match["n"] else minutes_of(match)
            return Request(what=What.LATER, minutes=minutes)
        for sought, name in patterns.settings:
            if sought.fullmatch(said):
                return _setting(name, said)
        if match := patterns.zone.fullmatch(said):
            if request := _zone(page, match, language):
                return request
    return None


def _setting(name: str, said: str) -> Request:
    if name == "language":
        value = (
            "es"
            if re.search("espanol|spanish", said)
            else "en"
            if re.search("ingles|english", said)
            else None
        )
        return Request(what=What.SETTINGS, setting="language", setting_value=value)
    if name == "nights":
        value = (
            "next week"
            if "next" in said
            else "off"
            if "days" in said or "dia" in said.split()
            else "this week"
        )
        return Request(what=What.SETTINGS, setting="nights", setting_value=value)
    return Request(what=What.SETTINGS)


@cache
def _everyday(language: str) -> frozenset[str]:
    return frozenset(gathered(language, "filler"))


_NO_PLACE = frozenset(
    "pain bed trouble bathroom car bus garden kitchen hurry doubt shock meeting range love luck".split()
)


def _zone(page: Page, match: re.Match[str], language: str) -> Request | None:
    """A place: written with a capital, or followed by `now`."""
    place = match["place"].split()
    if set(place) & _NO_PLACE:
        return None
    words = [token for token in page.tokens if token.word in place]
    named = all(page.shown[token.start].isupper() for token in words)  # `New York`
    if not named and (not match["now"] or set(place) & _everyday(language)):
        return None
    text = page.shown[words[0].start : words[-1].end]
    return Request(what=What.SETTINGS, setting="zone", setting_value=text)


def pregnancy(page: Page, language: str) -> Wish | None:
    """`I'm pregnant`."""
    patterns = _patterns(language)
    if (span := page.first(patterns.pregnant)) is None or page.first(patterns.not_pregnant):
        return None
    start = max(span.start - 5, 0)
    for index in range(start, span.end):
        if page.free(index):
            page.claim(index, index + 1)
    return Wish(start=span.start, end=span.end, request=Request(what=What.PREGNANCY))


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
            and any(span.start >= first for span in here)
        )
        if (asks or (question and has_drug)) and (has_drug or _takes(page, start, end)):
            begin = first if first is not None else min(span.start for span in here)
            found.append(_wish(page, begin, end, What.MEDICINE_ADVICE))
        elif (
            any(start <= span.start < end for span in page.find(patterns.wrong))
            and any(start <= span.start < end for span in page.find(patterns.taken))
            and not re.search(
                " (?:a|per|every|each|x) (?:day|week)| daily|al dia",
                f" {' '.join(page.words(start, end))}",
            )
        ):
            begin = min(
                span.start for span in page.find(patterns.taken) if start <= span.start < end
            )
            found.append(_wish(page, begin, _until_mark(page, begin, end), What.WRONG_DOSE))
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


def _may_open(page: Page, index: int, start: int) -> bool:
    """A question opens a sentence or follows a mark or a small word."""
    return (
        index == start
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
    if page.first(patterns.opens) is None:
        return []
    found = []
    for start, end, question in _sentences(page):
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
                "what can",
                "what should",
                "se puede",
                "me puedo",
                "es bueno",
                "es malo",
            )
        )
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


@cache
def _greetings(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "greetings"), True)])


def greeting(page: Page, language: str) -> list[tuple[int, int]]:
    """Claim thanks and greetings."""
    phrases = _greetings(language)
    found = []
    index = 0
    while index < len(page.tokens):
        hit = phrases.longest(page, index, len(page.tokens))
        if hit is None:
            index += 1
        else:
            found.append((index, hit[0]))
            index = hit[0]
    for start, end in found:
        page.claim(start, end)
    return found


def not_glucose(strangers: list[Stranger]) -> Wish:
    """What another measurement or a dose makes of a message with nothing else in it."""
    return Wish(
        start=strangers[0].start, end=strangers[0].end, request=Request(what=What.NOT_GLUCOSE)
    )


def strange(page: Page, language: str) -> bool:
    """Whether words are left beside greetings that are not everyday ones."""
    everyday = _everyday(language)
    left = [word for _, word in page.find_words(0, len(page.tokens)) if word[0].isalnum()]
    return len(left) > 4 or any(word not in everyday for word in left)
