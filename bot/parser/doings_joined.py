"""Which activities of a message are one? `swept and mopped`, `cycled on the exercise bike`."""

# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import replace

from bot.parser.activity import Doing
from bot.parser.findings import Findings
from bot.parser.page import Page


def joined(page: Page, found: Findings) -> list[Doing]:
    """Activities with only commas between them are one (`swept, mopped and dusted`)."""
    merged: list[Doing] = []
    several = len(found.doings) > 1
    measured = {at for m in found.measures if several for at in range(m.start, m.end)}
    for doing in found.doings:
        if merged and _carries_on(page, measured, merged[-1], doing):
            continue
        if merged and _heads(page, merged[-1], doing):
            merged[-1] = doing
        elif (
            merged
            and set(page.words(merged[-1].end, doing.start)) <= {",", "and", "y", "&"}
            and all(page.free(index) for index in range(merged[-1].end, doing.start))
        ):
            merged[-1] = replace(merged[-1], end=doing.end)
        else:
            merged.append(doing)
    found.doings = merged
    return merged


def _carries_on(page: Page, measured: set[int], first: Doing, second: Doing) -> bool:
    """`cycled 25 min on the exercise bike`: the second only says on what."""
    between = [i for i in range(first.end, second.start) if i not in measured]
    words = [page.tokens[i].word for i in between]
    return words[:1] != [] and words[0] in _WHERE and _ON_WHAT.issuperset(words)


_WHERE = frozenset("on at in en to up down over out".split())
_ON_WHAT = _WHERE | frozenset("the my a la el mi".split())
_HEADINGS = frozenset("exercise exercises activity workout sport ejercicio actividad".split())


def _heads(page: Page, first: Doing, second: Doing) -> bool:
    """`exercise: walking 30 min`: the first only says that an activity follows."""
    marked = page.words(first.end, second.start) in ([":"], ["-"], ["="])
    return marked and set(page.words(first.start, first.end)) <= _HEADINGS
