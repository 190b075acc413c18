"""Where does a request begin or end beside a report, with no mark between the two?

`155 after dinner send summary` is two clauses, and so is `export my data 7.4 before dinner`.
"""

# ruff: noqa: SIM905 - word sets read best as one string

from functools import cache

from bot.parser import intents
from bot.parser.languages import gathered
from bot.parser.moments import meal_names
from bot.parser.page import Page
from bot.parser.phrases import spelled

#: With one of these a request opens in the middle of a clause.
_OPENS = frozenset(
    "send show give what whats how please pls plz can could export erase delete pause remind tell "
    "where when muestra manda mandame dame envia enviame borra pausa recuerdame como cual".split()
)
_ITS = frozenset({"its", "im", "am", "is", "sugar", "bg"})
_TELLS_IT = _ITS | {"at", "now", "my", "i"}
#: One of these behind a report, and nothing behind it, is a request of its own.
_ALONE = frozenset("stop help pause summary goals record export ayuda pausa resumen metas".split())
_HERE = (["i", "am", "in"], ["we", "are", "in"], ["yo", "estoy", "en"])
_MAY_OPEN = _OPENS.union(words[0] for words in _HERE)
#: Of these the number behind them is the hour or the length: `remind me at 8`.
_COUNTING = frozenset("at in for by till until las la en dentro por".split())
#: No request behind a report is longer.
_LONGEST = 12
_SMALL = frozenset(
    "my the a an mi la el los las mg dl mmol l / % is was at now it its just of i im hour hours hr "
    "hrs h min mins minutes hora horas es fue ahora de before after".split()
)


_MOMENTS = frozenset(
    "fasting bedtime bed waking woke up recheck rechecked ayunas dormir acostarme".split()
)


@cache
def _of_a_report(language: str) -> frozenset[str]:
    """What stands beside a value in the plainest of reports."""
    fields = ("before", "after", "later", "eating", "glucose")
    words = (word for field in fields for word in gathered(language, field))
    told = {token for word in (*words, *meal_names(language)) for token in spelled(word)}
    return frozenset(told) | _SMALL | _MOMENTS


def is_report(page: Page, start: int, end: int, language: str) -> bool:
    """Whether it is a value and its moment, and nothing else."""
    words = page.words(start, end)
    numbered = any(word[0].isdigit() for word in words)
    known = _of_a_report(language)
    return numbered and all(word[0].isdigit() or word in known for word in words)


def run_on(page: Page, start: int, end: int, language: str) -> list[tuple[int, int]]:
    """A clause, or the two that it is: a report and what is asked of the bot, in either order."""
    words = page.words(start, end)
    numbers = [at for at, word in enumerate(words, start) if word[0].isdigit()]
    if numbers and words[-1] in _ALONE and is_report(page, start, end - 1, language):
        return [(start, end - 1), (end - 1, end)]  # `160 after dinner stop`
    if not numbers or _MAY_OPEN.isdisjoint(words):
        return [(start, end)]
    if intents.asked_for(page, start, end, language):
        return [(start, end)]
    for at in range(max(numbers[0] + 1, end - _LONGEST), end):
        if page.tokens[at].word in _OPENS and intents.asked_for(page, at, end, language):
            return [(start, at), (at, end)]
        if page.words(at, at + 3) in _HERE and is_report(page, start, at, language):
            return [(start, at), (at, end)]  # `143 before dinner I am in Lima now`
    for at in numbers if words[0] in _OPENS else ():
        first = at
        while first > start + 1 and page.tokens[first - 1].word in _TELLS_IT:
            first -= 1
        told = not _ITS.isdisjoint(page.words(first, at)) and is_report(page, first, end, language)
        if told and intents.asked_for(page, start, first, language):
            return [(start, first), (first, end)]  # `send my record it's at 54`
        behind = at > start + 1 and page.tokens[at - 1].word not in _COUNTING
        reported = behind and is_report(page, at, end, language)
        if reported and intents.asked_for(page, start, at, language):
            return [(start, at), (at, end)]
    return [(start, end)]
