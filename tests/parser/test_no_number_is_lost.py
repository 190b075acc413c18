"""A number that may be glucose never vanishes: it is entered, kept in words, or asked about.

The messages are made of words that the reader looks for, in any order, around one value such as
meters show (values: common practice, no source).
"""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from datetime import datetime
from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.entries import Asked, Request, What
from bot.entry_lines import entry_line
from bot.parser import read
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:04:00+02:00")

#: Kinds of words that people write around a value; not those that say what else a number is.
FIELDS = (
    "greetings", "filler", "asides", "glucose", "meter", "before", "after", "joining",
    "lead_ins", "correction", "removal", "skip", "soft_no", "done", "active_lead", "activities",
    "negation", "mine",
)  # fmt: skip


#: Somebody else, a question about food, or what was counted: then the number is none of one's own.
ELSEWHERE = frozenset("casa he she papa mama are little night flight over house".split())
#: Among other words these begin a question, deny, or say what the number measures.
AMONG_OTHERS = frozenset(
    "hour hours hora horas minute minutes minuto minutos sec veces half weight error people dia k "
    "shot total cuesta yo is what not no "
    "week weeks day days month months year years night nights times semana semanas mes ano "
    "weather".split()
)


@cache
def words_of(language: str) -> list[str]:
    """Every plain word or phrase of these lists."""
    every = {word for field in FIELDS for word in gathered(language, field)}
    return sorted(
        word
        for word in every
        if word.replace(" ", "").isalpha() and ELSEWHERE.isdisjoint(word.split())
    )


@cache
def nobody_elses(language: str) -> list[str]:
    """Those that name no other person, whose number it might be (`chasing after the kids 101`)."""
    other = re.compile(rf"\b{either(gathered(language, 'others'))}\b")
    return [
        word
        for word in words_of(language)
        if not other.search(word) and AMONG_OTHERS.isdisjoint(word.split())
    ]


def values(unit: Unit) -> st.SearchStrategy[str]:
    """Values that are no hour, no round length of time and no year."""
    if unit is Unit.MMOL_L:
        return st.integers(41, 249).filter(lambda n: n % 5).map(lambda n: f"{n / 10:.1f}")
    return st.integers(101, 399).filter(lambda n: n % 5).map(str)


def kept(number: str, line: dict[str, object]) -> bool:
    """Whether an entry holds the number, as a value or in words."""
    return any(
        number in each if isinstance(each, str) else each == float(number)
        for key, each in line.items()
        if key not in {"mg_dl", "taken_at", "started_at", "ended_at"} and each is not None
    )


def is_lost(text: str, number: str, unit: Unit, language: str, asked: Asked | None) -> bool:
    """Whether neither an entry nor a question is left of the number."""
    understood = read(text, at=AT, unit=unit, language=language, asked=asked)
    if understood.ask is not None or Request(what=What.NOT_GLUCOSE) in understood.entries:
        return False
    return not any(kept(number, entry_line(entry)) for entry in understood.entries)


@pytest.mark.parametrize("unit", list(Unit))
def test_beside_every_word_alone(unit: Unit) -> None:
    number = "7.2" if unit is Unit.MMOL_L else "142"
    lost = [
        text
        for word in words_of("en")  # with those of every other language
        for text in (f"{word} {number}", f"{number} {word}")
        if is_lost(text, number, unit, "en", None)
    ]
    assert lost == []


@given(data=st.data(), language=st.sampled_from(["en", "es"]), unit=st.sampled_from(Unit))
def test_among_any_words(data: st.DataObject, language: str, unit: Unit) -> None:
    some = st.lists(st.sampled_from(nobody_elses(language)), max_size=3)
    number = data.draw(values(unit))
    text = " ".join([*data.draw(some), number, *data.draw(some)])
    asked = data.draw(st.sampled_from([None, *Asked]))
    assert not is_lost(text, number, unit, language, asked), text


def test_a_lost_number_is_noticed() -> None:
    assert not is_lost("hello 7.2", "7.2", Unit.MMOL_L, "en", None)
    assert is_lost("hello", "7.2", Unit.MMOL_L, "en", None)  # a greeting alone holds none
