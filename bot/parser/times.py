"""When was it, as far as the words tell? A length of time ago, or a time on the clock.

`find` gives what is written; `instants` makes an instant of it.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache

from bot.parser.durations import any_unit, duration, is_hours, minutes_of
from bot.parser.instants import Day, Half, When
from bot.parser.languages import gathered, lexica
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, Span, pattern
from bot.parser.tokens import FEW_HOURS

#: A bare hour or length ends a clause.
ENDING = r"(?= (?:[.,;!?)>]|$|and |y |then |so |cos |because |it |i |was |my |\x00))"


@dataclass(frozen=True, slots=True)
class _Patterns:
    ago: tuple[Pattern, ...]
    span: Pattern
    worded: Pattern
    minutes_to: Pattern
    with_half: Pattern
    oclock: Pattern
    colon: Pattern
    four: Pattern
    at: Pattern
    near: Pattern
    named: Pattern
    day: Pattern
    bare_after_day: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    def words(field: str) -> str:
        return either(gathered(language, field))

    long = duration(language)
    at = f"(?:{words('at')} )?"
    part = f"(?: (?P<am>am|{words('morning')})| (?P<pm>pm|{words('afternoon')}))"
    hour = r"(?P<hour>[01]?\d|2[0-4])"
    extra = either(
        tuple(hour for lex in lexica(language) for hour in lex.times.hour_words) or ("\x01",)
    )
    hour_word = rf"(?P<hour>[01]?\d|2[0-4]|{extra})"
    after_hour = (
        f"(?: (?:(?P<and_half>{words('and_half')})|(?P<and_quarter>{words('and_quarter')})"
        f"|(?P<less_quarter>{words('less_quarter')})))"
    )
    days = "|".join(
        f"(?P<{name}>{words(field)})"
        for name, field in (
            ("before_yesterday", "before_yesterday"),
            ("last_night", "last_night"),
            ("yesterday", "yesterday"),
            ("this_morning", "this_morning"),
            ("this_afternoon", "this_afternoon"),
            ("today", "today"),
        )
    )
    weekdays = either(tuple(day for lex in lexica(language) for day in lex.times.weekdays))
    ago_before, ago_after = words("ago_before"), words("ago_after")
    return _Patterns(
        ago=(
            pattern(f"{long} {ago_after}"),
            pattern(f"{ago_before} {long}"),
        ),
        span=pattern(
            r"(?:from|between|de|entre)(?: las| la)? (?P<from>[01]?\d|2[0-3])(?:[:.](?P<from_minute>[0-5]\d))?(?: (?:am|pm))?"
            rf" (?:to|till|until|-|and|a|y)(?: las| la)? {hour}(?:[:.](?P<minute>[0-5]\d))?{part}?"
        ),
        worded=pattern(
            f"{at}(?:(?P<half_past>{words('half_past')})|(?P<quarter_past>{words('quarter_past')})"
            f"|(?P<quarter_to>{words('quarter_to')})) {hour}(?: oclock)?{part}?"
            r"|(?P<half>half) (?P<half_hour>[1-9]|1[0-2])(?= (?:[.,;!?]|$|\d\d|\d\.|and |it ))"
        ),
        minutes_to=pattern(
            f"(?:(?P<sure>{words('at')}) )?(?P<minutes>5|10|15|20|25) (?:(?P<past>{words('past')})"
            f"|(?P<to>{words('to')})) {hour}{part}?"
        ),
        with_half=pattern(
            rf"(?<! x ){at}(?:{hour}(?:[:.](?P<minute>[0-5]\d)|{after_hour})?{part}|(?P<packed>1?\d[0-5]\d) (?P<packed_half>am|pm))"
        ),
        oclock=pattern(f"{at}{hour_word} (?:{words('oclock')}){part}?"),
        colon=pattern(
            rf"(?:(?P<sure>{words('at')}|{words('near')}) )?{hour}:(?P<minute>[0-5]\d)(?::\d\d)?"
        ),
        four=pattern(
            r"(?P<hour>0\d)(?P<minute>[0-5]\d)(?: (?:h|hrs|hours|hr))?"
            rf"|{words('at')} (?P<at_hour>[01]\d|2[0-3])(?P<at_minute>[0-5]\d)(?: (?:h|hrs|hours|hr))?"
        ),
        at=pattern(
            rf"{words('at')} (?:{hour_word}(?:\.(?P<minute>[0-5]\d))?|(?P<packed>1?\d[0-5]\d))"
            rf"(?:{after_hour})?{part}?(?! (?:%|units?|mg|mmol))"
        ),
        near=pattern(
            rf"{words('near')} {hour_word}(?:\.(?P<minute>[0-5]\d))?(?:{after_hour})?{part}?{ENDING}"
        ),
        named=pattern(f"{at}(?:(?P<noon>{words('noon')})|(?P<midnight>{words('midnight')}))"),
        day=pattern(
            f"(?:{days}|(?:{words('on_day')} )?(?<!me )(?<!ma )(?P<weekday>{weekdays})"
            r"|(?P<days_ago>[1-7]) days? (?:ago|back)|hace (?P<hace>[1-7]) dias?)"
            "(?: (?:(?P<early>morning|mornin)|(?P<late>afternoon|evening|night|arvo|evenin)))?"
        ),
        bare_after_day=pattern(rf"(?P<hour>[01]?\d|2[0-3]){ENDING}"),
    )


def find(page: Page, language: str) -> list[When]:
    """Claim every time on the page and give them in order."""
    patterns = _patterns(language)
    found: list[When] = []
    for sought in patterns.ago if any_unit(page, language) else ():
        for span in page.find(sought):
            found.append(When(start=span.start, end=span.end, ago=minutes_of(span.match)))
            page.claim(span.start, span.end)
    if any(map(page.free, page.numbers)) or page.holds(_HOURS_IN_WORDS):
        for clock in _clocks(page, patterns, language):
            found.append(clock)
            page.claim(clock.start, clock.end)
    for span in page.find(patterns.named):
        hour = 12 if span["noon"] else 0
        found.append(When(start=span.start, end=span.end, hour=hour, half=Half.STATED))
        page.claim(span.start, span.end)
    found = [when for when in found if not _of_an_event(page, when)]
    found.sort(key=lambda when: when.start)
    return _with_days(page, found, patterns, language)


_HOURS_IN_WORDS = frozenset({"una", "once"})


def _of_an_event(page: Page, when: When) -> bool:
    """`shift ends at 10, 138 before dinner`: told of something else; it stays claimed."""
    return not _EVENTS.isdisjoint(page.words(max(when.start - 2, 0), when.start))


_EVENTS = frozenset(
    "tomorrow doctor doctors dentist nurse clinic ends starts finishes closes opens begins departs arrives lands appointment bus train "
    "flight film movie meeting termina empieza sale llega cierra abre cita reunion".split()
)


def _long_span(span: Span) -> When:
    """`from 5 to 5:30`, within twelve hours."""
    end = _clock(span, int(span["hour"] or 0), int(span["minute"] or 0))
    begun = int(span["from"] or 0) * 60 + int(span["from_minute"] or 0)
    ended = int(span["hour"] or 0) * 60 + int(span["minute"] or 0)
    return replace(end, minutes=float((ended - begun) % (12 * 60)))


def _clocks(page: Page, patterns: _Patterns, language: str) -> Iterator[When]:
    for span in page.find(patterns.span):
        yield _long_span(span)
    for span in page.find(patterns.worded):
        hour = int(span["hour"] or span["half_hour"] or 0)
        minute = 30 if span["half_past"] or span["half"] else 15 if span["quarter_past"] else -15
        yield _clock(span, hour, minute)
    for span in page.find(patterns.minutes_to):
        minute = int(span["minutes"] or 0)
        if span["sure"] or span["past"] or span["am"] or span["pm"] or _parted(page, span.end):
            yield _clock(span, int(span["hour"] or 0), minute if span["past"] else -minute)
    for span in page.find(patterns.with_half):
        yield from _checked(span, language, page)
    for span in page.find(patterns.oclock):
        yield _clock(span, _hour(span, language), 0)
    for span in page.find(patterns.colon) if ":" in page.line else ():
        raw = span["hour"] or "0"
        if not span["sure"] and raw in FEW_HOURS and is_hours(page, span.end, language):
            continue  # `walked 1:20 h`
        half = _half_of(raw)
        yield replace(
            _clock(span, int(raw), int(span["minute"] or 0)),
            half=half,
            bare_digits=not span["sure"],
        )
    for span in page.find(patterns.four):
        hour_written = span["hour"] or span["at_hour"] or "0"
        minute = int(span["minute"] or span["at_minute"] or 0)
        yield replace(_clock(span, int(hour_written), minute), half=Half.STATED)
    for sought in (patterns.at, patterns.near):
        for span in page.find(sought):
            yield from _checked(span, language, page)


def _checked(span: Span, language: str, page: Page) -> Iterator[When]:
    """An hour with what stands around it, if it can be one."""
    groups = span.match.groupdict()
    packed = groups.get("packed")
    if packed:
        if page.words(span.end, span.end + 1) == ["mg"]:
            return
        hour, minute = int(packed[:-2]), int(packed[-2:])
        if groups.get("packed_half"):
            half = Half.MORNING if groups["packed_half"] == "am" else Half.AFTERNOON
            yield replace(_clock(span, hour, minute), half=half)
            return
        if not (groups["am"] or groups["pm"]) and not _spoken(page, span):
            return  # `at 130` is a value
    else:
        hour, minute = _hour(span, language), int(groups.get("minute") or 0)
    if not (groups["am"] or groups["pm"]) and _of_oneself(page, span):
        return  # `im at 14` is a value
    if (groups["am"] or groups["pm"]) and not 1 <= hour <= 12:
        if not (groups["pm"] and 12 < hour < 24):
            return
        yield replace(_clock(span, hour, minute), half=Half.STATED)
        return
    if groups.get("and_half"):
        minute = 30
    elif groups.get("and_quarter"):
        minute = 15
    elif groups.get("less_quarter"):
        minute = -15
    yield _clock(span, hour, minute)


def _of_oneself(page: Page, span: Span) -> bool:
    """Whether `at 14` is said of oneself, and no other number of a short message is told."""
    words, before = page.words(span.start, span.end), page.words(span.start - 2, span.start)
    if len(words) != 2 or words[0] != "at" or not words[1].isdigit():
        return False
    standing = before[-1:] in _STANDING or (before[-1:] == ["is"] and before[:1] in _STANDING)
    short = standing and len(page.tokens) <= _SHORT
    return short and sum(map(page.free, page.numbers)) == 1


_STANDING = (["im"], ["am"], ["its"], ["sugar"], ["bg"], ["glucose"])
_SHORT = 40


def _spoken(page: Page, span: Span) -> bool:
    """Whether a packed time was said in words (`at seven thirty`)."""
    token = page.tokens[span.end - 1]
    return page.shown[token.start].isalpha() and not 100 <= int(token.word) <= 199


def _hour(span: Span, language: str) -> int:
    word = span["hour"] or "0"
    if word.isdigit():
        return int(word)
    return next(
        lex.times.hour_words[word] for lex in lexica(language) if word in lex.times.hour_words
    )


def _half_of(hour: str) -> Half:
    """`07` and `19` are hours of 24; `7` is either."""
    stated = hour.startswith("0") or not 1 <= int(hour) <= 12
    return Half.STATED if stated else Half.EITHER


def _clock(span: Span, hour: int, minute: int) -> When:
    groups = span.match.groupdict()
    if minute < 0:
        hour, minute = (hour - 1) or 12, minute + 60
    half = Half.EITHER if 1 <= hour <= 12 else Half.STATED
    if groups.get("am") or groups.get("pm"):
        half = Half.MORNING if groups.get("am") else Half.AFTERNOON
    return When(start=span.start, end=span.end, hour=hour % 24, minute=minute, half=half)


def _parted(page: Page, index: int) -> bool:
    """Whether a time in words ends there: at a mark, or before a number (`20 to 8 142`)."""
    return index >= len(page.tokens) or not page.tokens[index].word[0].isalpha()


def _with_days(page: Page, clocks: list[When], patterns: _Patterns, language: str) -> list[When]:
    """Join each named day with the clock time beside it."""
    found = list(clocks)
    days = page.find(patterns.day)
    hours = {hour.start: hour for hour in page.find(patterns.bare_after_day)} if days else {}
    for span in days:
        day = _day(span, language)
        page.claim(span.start, span.end)
        if not _COMPARED.isdisjoint(page.words(max(span.start - 1, 0), span.start)):
            continue  # `better than yesterday`
        beside = next((at for at, when in enumerate(found) if _beside(page, when, span)), None)
        if beside is None and (hour := hours.get(span.end)) is not None:
            page.claim(hour.start, hour.end)
            found.append(_clock(hour, int(hour["hour"] or 0), 0))  # `yesterday 7`
            beside = len(found) - 1
        if beside is not None:
            found[beside] = _on(found[beside], day)
        else:
            found.append(day)
    return sorted(found, key=lambda when: when.start)


_COMPARED = frozenset({"than", "vs", "versus", "que"})


#: Up to so many words of a moment stand between a day and its hour.
_APART = 5


def _beside(page: Page, when: When, span: Span) -> bool:
    if when.hour is None or when.day is not None:
        return False
    first, last = min(when.end, span.end), max(when.start, span.start)
    if last - first > 1:  # `yesterday before dinner at 7pm`
        return last - first <= _APART and not any(page.free(at) for at in range(first, last))
    between = page.words(first, last)
    return set(between) <= {",", "at", "on", "a", "las", "de", "la", "el"}


def _day(span: Span, language: str) -> When:
    base = When(start=span.start, end=span.end)
    if span["weekday"]:
        weekday = next(
            lex.times.weekdays[span["weekday"]]
            for lex in lexica(language)
            if span["weekday"] in lex.times.weekdays
        )
        return replace(base, day=Day.WEEKDAY, weekday=weekday, half=_day_half(span))
    if span["days_ago"] or span["hace"]:
        days = int(span["days_ago"] or span["hace"] or 0)
        return replace(base, day=Day.SOME_DAYS_AGO, days=days, half=_day_half(span))
    if span["before_yesterday"]:
        return replace(base, day=Day.DAY_BEFORE, half=_day_half(span))
    if span["last_night"]:
        return replace(base, day=Day.LAST_NIGHT, half=Half.AFTERNOON)
    if span["yesterday"]:
        return replace(base, day=Day.YESTERDAY, half=_day_half(span))
    return replace(base, day=Day.TODAY, half=_day_half(span))


def _day_half(span: Span) -> Half:
    if span["this_morning"] or span["early"]:
        return Half.MORNING
    return Half.AFTERNOON if span["this_afternoon"] or span["late"] else Half.EITHER


def _on(clock: When, day: When) -> When:
    half = clock.half
    if half is Half.EITHER and day.day is not Day.LAST_NIGHT:
        half = day.half
    start, end = min(clock.start, day.start), max(clock.end, day.end)
    return replace(
        clock, start=start, end=end, day=day.day, weekday=day.weekday, days=day.days, half=half,
        bare_digits=False,
    )  # fmt: skip


@cache
def _long_ago(language: str) -> Pattern:
    words = [word.replace("#", r"\d+") for word in gathered(language, "long_ago")]
    return pattern("|".join(sorted(words, key=len, reverse=True)))


def long_ago(page: Page, language: str) -> list[tuple[int, int]]:
    """Where words say that something was over before today (`last year`)."""
    return [(span.start, span.end) for span in page.find(_long_ago(language))]
