"""Is something asked of the bot, or is it about something that is no entry?

`intents` tells which request the words are; here each gets what the conversation needs with it.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.entries import Request, What
from bot.parser import intents
from bot.parser.durations import NUMBER, duration, minutes_of
from bot.parser.intents import Rule
from bot.parser.languages import filler, gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, as_written
from bot.parser.run_on import is_report, run_on


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """A request and the tokens that make it."""

    start: int
    end: int
    request: Request


@dataclass(frozen=True, slots=True)
class _Patterns:
    zone: Pattern
    later: Pattern
    long: Pattern
    wait: Pattern


#: Minutes that somebody may ask to be left: more, without a unit, is a value rather (`wait 142`).
LONGEST_WAIT = 120


@cache
def _patterns(language: str) -> _Patterns:
    later = either(gathered(language, "later_in"))
    return _Patterns(
        zone=as_written(
            rf"(?:(?:hi|hello|hey|ok|okay|so|well|just|i|bot|hola|ya|ahora|now|we|im|fyi) )*{either(gathered(language, 'zone'))} (?P<place>[^\W\d_]+(?: [^\W\d_]+){{0,2}}?)"
            r"(?P<now> now| ahora| today| this week| for [a-z ]+| (?:until|till|til) [a-z ]+| por [a-z ]+| hasta [a-z ]+)?(?: please| por favor)?"
        ),
        later=as_written(rf"(?P<lead>.*? )?{later} (?P<n>\d{{1,3}})(?: more)?(?: please| pls| plz| thanks| ok| then| por favor| porfa| gracias)*"),
        long=as_written(rf"\b{duration(language)}(?= |$)"),
        wait=as_written(
            rf"(?:(?:please|pls|just|ok|about|another|sorry|maybe|like|unos|como|otra|otros) )*{duration(language)}(?: (?:please|pls|more|thanks|ok|max|mas|por favor|porfa|gracias))*"
        ),
    )  # fmt: skip


_MARKS = frozenset(", . ; ! ? : ( ) - ¿ ¡ ~ ' \" _ =".split())


def _bare(page: Page, start: int, end: int) -> str:
    """The words alone, without marks."""
    return " ".join([word for word in page.words(start, end) if word not in _MARKS])


def whole(page: Page, language: str, *, asked: bool) -> Request | None:
    """A message that is nothing but a request. `asked` is whether a reading is asked for."""
    end = len(page.tokens)
    if end > intents.LONGEST:
        return None
    words = _bare(page, 0, end)
    patterns = _patterns(language)
    if page.numbers and _values_told(words, page):
        return None
    if (match := patterns.later.whole(words, page.held)) and float(match["n"]) <= LONGEST_WAIT:
        lead = match["lead"]
        opens = lead is None or intents.asked_for(
            page, 0, len(lead.split()), language, glue=True, only=What.LATER
        )
        if opens:
            return Request(what=What.LATER, minutes=float(match["n"]))
    if rule := intents.asked_for(page, 0, end, language):
        clauses = _clauses(page) if page.numbers and rule.what not in _NUMBERED else []
        if len(clauses) > 1 and any(is_report(page, *clause, language) for clause in clauses):
            return None  # `14, pause please`
        return _request(rule, words, language)
    if asked and patterns.wait.whole(words, page.held):
        return Request(what=What.LATER, minutes=_minutes(words, language))
    if match := patterns.zone.whole(words, page.held):
        return _zone(page, match, language)
    return None


#: A number may be part of what these ask for.
_NUMBERED = frozenset({What.LATER, What.SETTINGS})


def _values_told(words: str, page: Page) -> bool:
    """Whether a value is told, whatever else the words might ask."""
    if any(told.whole(words, page.held) for told in (_AT_A_VALUE, _AFTER_A_WHILE)):
        return True
    return _VALUED.may_stand_in(page.held) and _VALUED.along.search(words) is not None


#: `estoy en 12` tells a value; `en 12` asks to wait.
_AT_A_VALUE = as_written(
    rf"(?:ya |ahora |yo )?(?:estoy|ando|sali|amaneci|sigo|quede|anda|esta) (?:en|con) {NUMBER}"
)


#: `stop texting me. 133 after` tells one beside what it asks.
_VALUED = as_written(r"\b\d{2,3}(?:\.\d)? (?:before|after|fasting|antes|despues)$")


#: `118 after 30 mins` tells a value, too.
_AFTER_A_WHILE = as_written(
    rf"{NUMBER} (?:(?:after|later|in|despues de) .*{NUMBER}.*|.*{NUMBER} .*(?:later|after|despues))"
)


def _request(rule: Rule, words: str, language: str) -> Request:
    if rule.what is What.LATER:
        return Request(what=What.LATER, minutes=_minutes(words, language))
    if rule.setting is not None:
        return _setting(rule.setting, words)
    return Request(what=rule.what)


def _minutes(words: str, language: str) -> float | None:
    """How long the words say; None where they do not."""
    match = _patterns(language).long.along.search(words)
    if match:
        return minutes_of(match)
    number = re.search(rf"\b{NUMBER}\b", words)
    return float(number[0]) if number and float(number[0]) <= LONGEST_WAIT else None


def _setting(name: str, said: str) -> Request:
    value = None
    if name == "language":
        english = re.search("ingles|english", said)
        value = "es" if re.search("espanol|spanish|castellano", said) else "en" if english else None
    elif name == "nights":
        days = not {"days", "dia", "dias", "day"}.isdisjoint(said.split())
        value = "next week" if "next" in said else "off" if days else "this week"
    else:
        return Request(what=What.SETTINGS)
    return Request(what=What.SETTINGS, setting=name, setting_value=value)


#: They are asked for beside a sign, too; `she passed out, help` asks for something else.
_BESIDE_SIGNS = frozenset(
    {
        What.SUMMARY,
        What.RECORD,
        What.GOALS,
        What.EXPORT,
        What.ERASE,
        What.PAUSE,
        What.RESUME,
        What.STOP,
        What.LATER,
    }
)


#: A word of these is enough beside a value and its moment.
_BESIDE_REPORTS = _BESIDE_SIGNS - {What.LATER}


#: And of these at the end of anything (`rice, 141 before, pause please`).
_AT_THE_END = _BESIDE_REPORTS - {What.STOP, What.ERASE}


#: These at the end of a report, or as a sentence of their own (`141 before rice. help`).
_CALLED = frozenset({What.HELP, What.STOP})
#: So short beside a value `help` is a cry, and what is said of the value answers it.
_CRIED = 3


def _opens(page: Page, start: int) -> bool:
    """Whether a sentence begins there, and not the message."""
    return start > 0 and page.tokens[start - 1].word in {".", "!", ";"}


def _of_no_rule(page: Page, start: int, end: int, language: str, *, felt: bool) -> Request | None:
    """What a clause with a place or a number in it asks for: `I am in Dakar now, 149`, `88 before,
    remind me in 10`; `in 10` alone only in front of a sign."""
    patterns = _patterns(language)
    words = _bare(page, start, end)
    if (here := patterns.zone.whole(words, page.held)) and (zone := _zone(page, here, language)):
        return zone
    wait = patterns.later.whole(words, page.held)
    if wait is None or float(wait["n"]) > LONGEST_WAIT:
        return None
    lead = wait["lead"]
    asked = felt and start == 0 if lead is None else not _REMIND.isdisjoint(lead.split())
    return Request(what=What.LATER, minutes=float(wait["n"])) if asked else None


def _beside_signs(rule: Rule, words: list[str]) -> bool:
    if rule.what is What.NEXT_STEP and "step" in words:
        return True
    return rule.what in _BESIDE_SIGNS and (rule.what is not What.STOP or words[0] in _STOPPING)


_STOPPING = frozenset("stop please pls plz quit cease unsubscribe para deja dejen basta".split())


def in_clauses(page: Page, language: str, *, felt: bool) -> list[Wish]:
    """Claim the clauses that ask for something in a message that holds more (`142. how am I
    doing?`); single words ask for something only alone. `felt` says that a sign is told."""
    found = []
    clauses = [(start, end) for start, end in _clauses(page) if start < end]
    if len(page.tokens) > _LONG:
        return []
    clauses = [part for start, end in clauses for part in run_on(page, start, end, language)]
    rules = [intents.asked_for(page, start, end, language) for start, end in clauses]
    every = None not in rules  # `summary and goals`
    reported = (
        not every
        and any(rules)
        and all(  # `128 before, pause`
            rule is not None or is_report(page, start, end, language)
            for (start, end), rule in zip(clauses, rules, strict=True)
        )
    )
    patterns = _patterns(language)
    placed = patterns.zone.may_stand_in(page.held) or patterns.later.may_stand_in(page.held)
    for (start, end), rule in zip(clauses, rules, strict=True):
        if page.any_taken(start, end):
            continue
        if rule is None:
            if placed and (request := _of_no_rule(page, start, end, language, felt=felt)):
                page.claim(start, end)
                found.append(Wish(start=start, end=end, request=request))
            continue
        if felt and not _beside_signs(rule, page.words(start, end)):
            continue
        if rule.what is What.LATER and _AFTER_A_WHILE.whole(_bare(page, start, end), page.held):
            continue
        last = end == len(page.tokens)
        alone = every or (reported and rule.what in _BESIDE_REPORTS)
        alone = alone or (last and rule.what in _AT_THE_END)
        called = last and rule.what in _CALLED and (reported or _opens(page, start))
        told = bool(page.numbers) and end > _CRIED  # not so `52 help`, `on the floor. help`
        alone = alone or (called and (rule.what is not What.HELP or told))
        if alone or (end - start > 1 and _plain(rule, page.words(start, end))):
            page.claim(start, end)
            words = _bare(page, start, end)
            found.append(Wish(start=start, end=end, request=_request(rule, words, language)))
    return found


#: Longer messages report, and what they ask is not looked for.
_LONG = 60


def _plain(rule: Rule, words: list[str]) -> bool:
    """Whether it can be nothing else beside other words."""
    if rule.what is What.LATER:
        return bool(_REMIND & set(words))
    if rule.setting == "nights":  # `on nights, eating a sandwich in the van`
        return not _SPAN.isdisjoint(words)
    if words == ["next", "step"]:
        return True
    return rule.what not in {What.NEXT_STEP, What.HELP, What.STOP} or len(words) > 2


_REMIND = frozenset(
    "remind ask text ping message nudge buzz recuerdame preguntame avisame escribeme".split()
)
_SPAN = frozenset("week next tonight from till until esta semana proxima hasta desde".split())
_ENDS = frozenset(". ? ! ; , and n plus but so pero y".split())


def _clauses(page: Page) -> list[tuple[int, int]]:
    found, start = [], 0
    for index, token in enumerate(page.tokens):
        if token.word in _ENDS:
            found.append((start, index))
            start = index + 1
    return [*found, (start, len(page.tokens))]


_NO_PLACE = frozenset(
    "pain bed trouble bathroom car bus garden kitchen hurry doubt shock meeting range love luck "
    "agony distress hospital clinic ambulance the a an my er surgery labour labor tears house "
    "town traffic school work church class el la casa cama mi apuros dolor una un peligro danger "
    "charge need hell heaven bits debt ayunas ayuno pijama pie".split()
)


def _zone(page: Page, match: re.Match[str], language: str) -> Request | None:
    """A place: written with a capital, or with `now` beside it."""
    place = match["place"].split()
    if set(place) & _NO_PLACE or set(place) <= filler(language):
        return None
    words = [token for token in page.tokens if token.word in place][-len(place) :]
    named = all(page.shown[token.start].isupper() for token in words)  # `New York`
    now = {"ahora", "now"}.intersection(match.string.split())
    if not named and not match["now"] and not now:
        return None
    text = page.shown[words[0].start : words[-1].end]
    return Request(what=What.SETTINGS, setting="zone", setting_value=text)
