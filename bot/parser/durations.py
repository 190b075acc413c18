"""How long does it say? `20 min`, `an hour and a half`, `2h`."""

# ruff: noqa: E501 - patterns and word lists, one a line

import re
from functools import cache

from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page
from bot.parser.phrases import spelled

NUMBER = r"\d+(?:\.\d+)?"


@cache
def _units(language: str) -> frozenset[str]:
    fields = ("hours", "minutes", "half_hour", "one_hour")
    return frozenset(spelled(word)[-1] for name in fields for word in gathered(language, name))


def any_unit(page: Page, language: str) -> bool:
    """Whether a word for hours or minutes stands anywhere: no length of time is without one."""
    return not _units(language).isdisjoint(page.held)


def is_hours(page: Page, index: int, language: str) -> bool:
    """Whether a word for hours stands there."""
    return not _hours(language).isdisjoint(page.words(index, index + 1))


@cache
def _hours(language: str) -> frozenset[str]:
    return frozenset(gathered(language, "hours"))


@cache
def duration(language: str) -> str:
    """A pattern of a length of time; `minutes_of` reads its match."""
    hours = either(gathered(language, "hours"))
    minutes = either(gathered(language, "minutes"))
    one_hour = either(gathered(language, "one_hour"))
    half_hour = either(gathered(language, "half_hour"))
    and_half = either(gathered(language, "and_a_half"))
    couple = either(gathered(language, "two_or_so"))
    joined = either(("and", "n", "y", ","))
    return (
        f"(?:(?P<half_hour>{half_hour})"
        f"|(?P<quarter>(?:a )?quarter of an hour|un cuarto de hora|3 quarters of an hour|3 cuartos de hora|[13] / 4 (?:of an |of a |de )?(?:hour|hora)|(?:an?|1|un) {minutes})"
        f"|(?P<one>{one_hour})(?: (?P<one_half>{and_half})| (?:{joined} )?(?P<one_rest>{NUMBER}) "
        f"{minutes})?"
        f"|(?P<two>{couple}) (?:of )?(?P<two_in>{hours}|{minutes})"
        f"|(?P<whole>\\d+) (?:{and_half}|1 / 2|½) {hours}"
        f"|(?P<hours>{NUMBER}) (?:- )?{hours}(?: (?P<more_half>{and_half})"
        f"| (?:{joined} )?(?P<rest>{NUMBER}) {minutes})?"
        f"|(?P<clock_h>\\d):(?P<clock_m>[0-5]\\d) {hours}"
        f"|(?P<low>{NUMBER}) (?:-|to) (?P<upto>{NUMBER}) {minutes}"
        f"|(?P<minutes>{NUMBER}) (?:- )?{minutes})"
    )


def minutes_of(match: re.Match[str]) -> float:
    """The length of a match of `duration`, in minutes."""
    found = match.groupdict()
    if found["half_hour"]:
        return 30
    if found["one"]:
        return 60 + (30 if found["one_half"] else float(found["one_rest"] or 0))
    if found["two"]:
        return 120 if found["two_in"].startswith("h") else 2
    if found["whole"]:
        return float(found["whole"]) * 60 + 30
    if found["hours"]:
        more = 30 if found["more_half"] else float(found["rest"] or 0)
        return float(found["hours"]) * 60 + more
    if found["quarter"]:
        long = 45 if found["quarter"].startswith("3") else 15
        return long if found["quarter"].endswith(("hour", "hora")) else 1
    if found["clock_h"]:
        return float(found["clock_h"]) * 60 + float(found["clock_m"])
    return float(found["upto"] or found["minutes"])


def one_range(match: re.Match[str]) -> bool:
    """Whether the two numbers of a match, where it has two, are the ends of one length: `229 - 25
    min` is a value and a length."""
    low, upto = match["low"], match["upto"]
    return low is None or ("." not in low and float(low) < float(upto))
