"""Greetings, excuses and thanks around a message change nothing of what it means.

Every row of the corpora is read as it is and with a courtesy of its language before or behind it.
The courtesies are common practice, no source.
"""

import json
from datetime import datetime
from itertools import chain
from pathlib import Path

import pytest

from bot.entries import Asked, By
from bot.entry_lines import entry_line
from bot.parser import read
from bot.units import Unit

CORPORA = sorted(Path(__file__).parent.glob("*sayings.jsonl"))
BEFORE = {
    "en": ("hi, ", "hello doc ", "good morning. ", "ok so ", "Hey there! ", "hi teresa, ",
           "sorry for the delay, ", "sorry I'm late: ", "thanks nurse, "),
    "es": ("hola, ", "buenos días doctora ", "buenas tardes. ", "Hola licenciada, ",
           "perdón por la demora, ", "gracias, "),
}  # fmt: skip
BEHIND = {
    "en": (" thanks", ", thank you", " thanks a lot doc", " xx", " please", ". Many thanks!",
           " cheers mate", " bye for now"),
    "es": (" gracias", ", muchas gracias", " por favor", ". Mil gracias!", " gracias doctora"),
}  # fmt: skip
ROWS = [
    json.loads(line)["in"]
    for line in chain.from_iterable(
        path.read_text(encoding="utf-8").splitlines() for path in CORPORA
    )
]


def understood(row: dict, text: str) -> tuple:
    """What a text means in the place of a row's: entries but for thanks, and what is asked."""
    answer = read(
        text,
        at=datetime.fromisoformat(row["at"]),
        unit=Unit(row["unit"]),
        language=row.get("language", "en"),
        by=By(row.get("by", "self")),
        asked=Asked(row["asked"]) if row.get("asked") else None,
    )
    lines = [entry_line(entry) for entry in answer.entries]
    return [line for line in lines if line.get("what") != "chatter"], answer.ask


def _says_something(text: str) -> bool:
    """One word may be a greeting itself, or nothing that anybody greets with (`🙂`)."""
    return sum(word[:1].isalnum() for word in text.split()) > 1


@pytest.mark.parametrize("side", ["before", "behind"])
def test_courtesies_change_nothing(side: str) -> None:
    other = []
    for index, row in enumerate(row for row in ROWS if _says_something(row["text"])):
        text, language = row["text"], row.get("language", "en")
        courtesies = (BEFORE if side == "before" else BEHIND)[language]
        courtesy = courtesies[index % len(courtesies)]
        polite = courtesy + text if side == "before" else text + courtesy
        meant = understood(row, text)
        only_polite = meant == ([], None)
        if not only_polite and understood(row, polite) != meant:
            other.append(polite)
    assert other == []


@pytest.mark.parametrize(
    ("text", "what"),
    [("hi, help", "help"), ("good morning, stop", "stop"), ("record please thanks", "record")],
)
def test_a_single_word_behind_a_greeting_is_heard(text: str, what: str) -> None:
    at = datetime.fromisoformat("2026-03-02T12:31:00+02:00")
    answer = read(text, at=at, unit=Unit.MG_DL)
    assert [getattr(entry, "what", None) for entry in answer.entries] == [what]


def test_a_meter_s_hi_is_no_greeting() -> None:
    at = datetime.fromisoformat("2026-03-02T12:31:00+02:00")
    answer = read("HI, thank you", at=at, unit=Unit.MG_DL, asked=Asked.AFTER_MEAL)
    assert [entry_line(entry)["off_scale"] for entry in answer.entries] == ["high"]
