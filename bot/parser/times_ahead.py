"""What is just begun, or begins within the hour? `in 10 min`, `just now`."""

from datetime import timedelta
from functools import cache

from bot.parser.durations import duration, minutes_of
from bot.parser.instants import AHEAD, When
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, pattern
from bot.parser.times import ENDING


@cache
def _ahead(language: str) -> Pattern:
    return pattern(
        rf"(?:in|en|dentro de) (?:about |around |like )?"
        rf"(?:{duration(language)}|(?P<bare>\d{{1,2}}){ENDING})"
    )


@cache
def _now(language: str) -> Pattern:
    return pattern(either(gathered(language, "just_now")))


def find_ahead(page: Page, language: str) -> list[When]:
    """Claim `in 10 min`, up to an hour ahead: only a meal may begin then."""
    found = []
    for span in page.find(_ahead(language)):
        minutes = float(span["bare"]) if span["bare"] else minutes_of(span.match)
        before = page.words(max(span.start - 1, 0), span.start)
        oneself = before in _I_STAND and (minutes > _HOURS or len(page.tokens) > _BRIEF)
        if span["bare"] and (before in _STANDS or oneself):
            continue  # `su azúcar está en 48`, `estoy en 57, puedo comer?`; `estoy en 12` is asked
        if minutes <= AHEAD / timedelta(minutes=1):
            page.claim(span.start, span.end)
            found.append(When(start=span.start, end=span.end, ago=-minutes))
    return found


_I_STAND = (["estoy"], ["ando"], ["sigo"], ["quede"])
_HOURS, _BRIEF = 24, 3
_STANDS = (["esta"], ["estaba"], ["anda"], ["sigue"], ["azucar"], ["glucosa"], ["is"], ["at"])


def find_now(page: Page, language: str) -> list[When]:
    """Claim `now` and `just now`: a time each may have."""
    found = [When(start=span.start, end=span.end, ago=0) for span in page.find(_now(language))]
    for when in found:
        page.claim(when.start, when.end)
    return found
