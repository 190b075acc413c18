"""Messages read in a second on one core, and how that compares with reading only the clock times.

    python tests/bench/bench_reader.py

Start-up is not counted. `dateparser` is timed on the same messages, for their dates and times
alone (`search_dates`, English), because it is the usual general-purpose reader of times. The
second table is the choice of the reader of clock times: the messages of the group `clock` with
one reading and nothing else, each library given what is left of the text without the value.
"""

# ruff: noqa: T201 - it speaks on standard output

import json
import sys
import time
import warnings
from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from pathlib import Path
from random import Random
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from bot.entries import Asked, Reading
from bot.parser import read
from bot.units import Unit

SAYINGS = Path(__file__).parents[1] / "parser" / "sayings.jsonl"
LONG = 4096

Message = dict[str, Any]


def messages() -> list[Message]:
    """The rows of the first corpus."""
    return [json.loads(line) for line in SAYINGS.read_text(encoding="utf-8").splitlines()]


def read_one(given: Message) -> Any:
    """Read one row's message."""
    return read(
        given["text"],
        at=datetime.fromisoformat(given["at"]),
        unit=Unit(given["unit"]),
        language=given.get("language", "en"),
        asked=Asked(given["asked"]) if given.get("asked") else None,
    )


def rate(function: Callable[[Message], Any], rows: Sequence[Message], times: int) -> float:
    """Messages a second, the best of `times` runs."""
    best = float("inf")
    for _ in range(times):
        begun = time.perf_counter()
        for row in rows:
            function(row["in"])
        best = min(best, time.perf_counter() - begun)
    return len(rows) / best


def milliseconds(text: str) -> float:
    """How long one message takes, the best of three."""
    given = {"text": text, "at": "2026-03-02T12:31:00+02:00", "unit": "mg/dL"}
    return min(1000 / rate(read_one, [{"in": given}], 1) for _ in range(3))


def clock_rows(rows: Sequence[Message]) -> list[Message]:
    """Rows whose one entry is a reading that was taken at a told time."""
    return [
        row
        for row in rows
        if row["group"] == "clock"
        and [entry["type"] for entry in row["out"]["entries"]] == ["reading"]
        and row["out"]["entries"][0]["taken_at"] is not None
    ]


def without_value(row: Message) -> str:
    """The words about the time, as a date reader would be given them."""
    value = str(row["out"]["entries"][0]["value"])
    words = row["in"]["text"].replace(value, "", 1)
    for moment in ("before breakfast", "after breakfast", "after dinner", "after lunch", "fasting"):
        words = words.replace(moment, "")
    return words.strip(" .,:")


def ours(row: Message) -> datetime | None:
    """Our own reading of the whole message."""
    entry = next((e for e in read_one(row["in"]).entries if isinstance(e, Reading)), None)
    return entry.taken_at if entry else None


def by_dateparser(row: Message) -> datetime | None:
    """Dateparser on the words about the time, told to look into the past."""
    import dateparser  # noqa: PLC0415 - for comparison only

    at = datetime.fromisoformat(row["in"]["at"])
    chosen: Any = {"RELATIVE_BASE": at.replace(tzinfo=None), "PREFER_DATES_FROM": "past"}
    found = dateparser.parse(without_value(row), languages=["en"], settings=chosen)
    return found.replace(tzinfo=at.tzinfo) if found else None


def by_ctparse(row: Message) -> datetime | None:
    """Ctparse on the words about the time."""
    import ctparse  # noqa: PLC0415 - for comparison only

    at = datetime.fromisoformat(row["in"]["at"])
    found = ctparse.ctparse(without_value(row), ts=at.replace(tzinfo=None), timeout=1)
    resolution = getattr(found, "resolution", None)
    moment = getattr(resolution, "dt", None)
    return moment.replace(tzinfo=at.tzinfo) if moment else None


def compare_clocks(rows: Sequence[Message]) -> None:
    """Print how many times each reads exactly, and how fast."""
    chosen = clock_rows(rows)
    for name, reader in (("own", ours), ("dateparser", by_dateparser), ("ctparse", by_ctparse)):
        reader(chosen[0])
        begun = time.perf_counter()
        right = sum(_same(_tried(reader, row), row) for row in chosen)
        spent = time.perf_counter() - begun
        print(f"{name:12}{right:>5} of {len(chosen)}{len(chosen) / spent:>12,.0f} a second")


def _tried(reader: Callable[[Message], datetime | None], row: Message) -> datetime | None:
    try:
        return reader(row)
    except Exception:
        return None


def _same(found: datetime | None, row: Message) -> bool:
    wanted = datetime.fromisoformat(row["out"]["entries"][0]["taken_at"])
    return found is not None and abs(found - wanted) < timedelta(minutes=1)


def main() -> None:
    """Print the figures."""
    warnings.simplefilter("ignore")
    from dateparser.search import search_dates  # noqa: PLC0415 - for comparison only

    rows = messages()
    for row in rows:
        read_one(row["in"])
    own = rate(read_one, rows, 3)
    few = rows[:: max(len(rows) // 120, 1)]
    search_dates("at 7", languages=["en"])
    other = rate(lambda given: search_dates(given["text"], languages=["en"]), few, 1)
    print(f"reader     {own:>10,.0f} messages a second ({len(rows)} messages)")
    print(f"dateparser {other:>10,.0f} messages a second ({len(few)} of them), its times alone")
    print(f"ratio      {own / other:>10.1f}")
    words = " ".join(row["in"]["text"] for row in rows).split()
    Random(1).shuffle(words)  # noqa: S311 - the same words each time, no secret
    for name, text in (
        ("digits", "1"),
        ("values", "142 "),
        ("food", "rice, "),
        ("reports", "walked 20 min, 130 after rice at 7 "),
        ("brackets", "()"),
        ("symptoms", "dizzy "),
        ("letters", "a "),
        ("fractions", "1/"),
        ("clocks", "7:"),
        ("steps", "4000 steps "),
        ("questions", "can i eat mango? "),
        ("leads", "the "),
        ("refusals", "no "),
        ("doings", "walked "),
        ("any words", f"{' '.join(words[:LONG])} "),
    ):
        print(f"{LONG} characters of {name:10}{milliseconds((text * LONG)[:LONG]):>8.1f} ms")
    compare_clocks(rows)


if __name__ == "__main__":
    main()
