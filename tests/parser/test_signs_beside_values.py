"""A sign, when it came and a value beside it: neither hides the other.

What the words come to is written down from the contract (reading-messages.md, rules 7 and 16); the
wordings are our own, no source.
"""

from datetime import datetime
from itertools import product

import pytest

from bot.entries import Reading, Symptom
from bot.parser import read
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:04:00+02:00")
SIGNS = {
    "en": (
        "dizzy", "shaky and sweaty", "very thirsty", "blurry vision", "feeling faint", "hypo",
        "peeing loads", "my vision is blurry", "chest pain", "trembling", "threw up", "feel low",
    ),
    "es": ("mareado", "temblando y sudando", "mucha sed", "visión borrosa", "me duele el pecho"),
}  # fmt: skip
WHENS = {
    "en": (
        "", "since lunch", "since morning", "since 2", "since 2pm", "since i woke up", "all day",
        "today", "again", "for an hour", "for 2 hours", "this morning", "on the bus", "at work",
        "in the garden", "after lunch", "before dinner", "after walking", "all night", "right now",
        "the whole day", "for 20 min", "in church", "when i stood up", "while cooking",
        "out of nowhere", "for no reason", "every time", "twice", "3 days now", "second time",
    ),
    "es": ("", "desde la comida", "desde las 2", "todo el día", "hoy", "ahora", "en el trabajo"),
}  # fmt: skip
VALUES = (62, 310)


@pytest.mark.parametrize("language", SIGNS)
@pytest.mark.parametrize("order", ["{sign} {when} {value}", "{value} {sign} {when}"])
def test_both_are_entered(language: str, order: str) -> None:
    lost = []
    for sign, when, value in product(SIGNS[language], WHENS[language], VALUES):
        text = " ".join(order.format(sign=sign, when=when, value=value).split())
        answer = read(text, at=AT, unit=Unit.MG_DL, language=language)
        values = [entry.value for entry in answer.entries if isinstance(entry, Reading)]
        felt = any(isinstance(entry, Symptom) for entry in answer.entries)
        entered = values == [value] or answer.ask is not None
        if not (felt and entered):
            lost.append(text)
    assert lost == []
