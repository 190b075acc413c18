"""What once went wrong, and its near neighbours: a message and all that it comes to, on one line.

`sayings_by_cause.txt` holds them under the cause they share. Before the first bar stand the
language, `mmol` for that unit, what is asked for and `helper`, each only where it is not the
usual; behind the last one what the message comes to (`-`: nothing): entries with `;` between, `?`
and what is asked back. The wordings are our own, no source; they were written beside the reader.
"""

from datetime import datetime
from pathlib import Path

import pytest

from bot.entries import Asked, By
from bot.entry_lines import entry_line
from bot.parser import read
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:04:00+02:00")
ASKED = {asked.value for asked in Asked}


def in_short(text: str, given: str) -> str:
    """All that a message comes to, on one line."""
    words = set(given.split())
    understood = read(
        text,
        at=AT,
        unit=Unit.MMOL_L if "mmol" in words else Unit.MG_DL,
        language="es" if "es" in words else "en",
        by=By.HELPER if "helper" in words else By.SELF,
        asked=next((Asked(word) for word in words & ASKED), None),
    )
    told = [_entry(entry_line(entry)) for entry in understood.entries]
    told += [f"?{understood.ask.value}"] if understood.ask else []
    return "; ".join(told) or "-"


def _entry(line: dict) -> str:
    match line["type"]:
        case "reading":
            number = line["off_scale"] or f"{line['value']:g}"
            unit = " mmol" if line["unit"] == "mmol/L" else ""
            return f"{number}{unit} {line['moment']}{_time(line['taken_at'])}"
        case "meal":
            name = f" [{line['name']}]" if line["name"] else ""
            return f"meal {line['text']}{name}{_time(line['started_at'])}"
        case "activity":
            minutes = f" {line['minutes']:g} min" if line["minutes"] else ""
            return f"did {line['text']}{minutes}{_time(line['ended_at'])}"
        case "correction":
            said = next(line[key] for key in ("value", "moment", "text", "at") if line.get(key))
            said = _time(said) if said == line.get("at") else said
            return f"mend {said:g}" if isinstance(said, float) else f"mend {said}"
        case "skip":
            return f"skip {line['reason']}" if line["reason"] else "skip"
        case "symptom":
            return f"{line['suggests']} {line['text']}"
        case "strips":
            return f"strips {line['left']}"
        case "request":
            return line["what"]
    return line["type"]


def _time(written: str | None) -> str:
    """Nothing where it is the message's own."""
    if written is None:
        return " @?"
    when = datetime.fromisoformat(written)
    if when == AT:
        return ""
    return f" @{when:%H:%M}" if when.date() == AT.date() else f" @{when:%a %H:%M}"


def _sayings() -> dict[str, list[tuple[str, str, str]]]:
    found: dict[str, list[tuple[str, str, str]]] = {}
    cause = ""
    for line in Path(__file__).with_name("sayings_by_cause.txt").read_text("utf-8").splitlines():
        if line.startswith("# "):
            cause = line[2:]
        elif line.strip():
            given, text, meant = (part.strip() for part in line.split("|"))
            found.setdefault(cause, []).append((given, text, meant))
    return found


SAYINGS = _sayings()


@pytest.mark.parametrize("cause", SAYINGS)
def test_every_message_comes_to_what_it_means(cause: str) -> None:
    got = [(text, in_short(text, given)) for given, text, _ in SAYINGS[cause]]
    assert got == [(text, meant) for _, text, meant in SAYINGS[cause]]
