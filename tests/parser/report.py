"""How well does the reader do on a corpus? By group, with what went wrong.

    python tests/parser/report.py tests/parser/sayings.jsonl
    python tests/parser/report.py tests/parser/second_sayings.jsonl --summary

Counted as tests/parser/CORPUS.md says: exactly, but for the edges of words that are kept as
typed. `wrong` is the dangerous kind: a reading that should not be there, or with another unit or
moment; `missed` a symptom that is not there. `--summary` shows no text, so that the second corpus
stays blind.
"""

# ruff: noqa: T201 - it speaks on standard output

import argparse
import json
import re
import sys
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from bot.entries import Asked, By
from bot.entry_lines import entry_line
from bot.parser import read
from bot.units import Unit

Row = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Outcome:
    """One row as it was read."""

    group: str
    text: str
    expected: Row
    got: Row

    @property
    def right(self) -> bool:
        """Everything as expected."""
        return self.expected["ask"] == self.got["ask"] and _same(
            self.expected["entries"], self.got["entries"]
        )

    @property
    def wrong_reading(self) -> bool:
        """A reading or corrected value that the text does not hold."""
        wanted = Counter(_reading(entry) for entry in self.expected["entries"] if _valued(entry))
        given = Counter(_reading(entry) for entry in self.got["entries"] if _valued(entry))
        return bool(given - wanted)

    @property
    def missed_symptom(self) -> bool:
        """A level of symptom that is in the text and was not found."""
        return bool(_levels(self.expected) - _levels(self.got))


def _valued(entry: Row) -> bool:
    return entry["type"] == "reading"


def _reading(entry: Row) -> tuple[Any, ...]:
    return entry["value"], entry["unit"], entry["moment"], entry["off_scale"]


def _levels(line: Row) -> set[str]:
    return {entry["suggests"] for entry in line["entries"] if entry["type"] == "symptom"}


def _same(expected: list[Row], got: list[Row]) -> bool:
    return len(expected) == len(got) and all(
        _same_entry(*pair) for pair in zip(expected, got, strict=True)
    )


def _same_entry(expected: Row, got: Row) -> bool:
    if expected.keys() != got.keys():
        return False
    for key, value in expected.items():
        if key in {"text", "reason"} and value is not None and got[key] is not None:
            if not _same_words(value, got[key], loose=got["type"] in {"symptom", "skip"}):
                return False
        elif value != got[key]:
            return False
    return True


def _same_words(expected: str, got: str, *, loose: bool) -> bool:
    one, other = _words(expected), _words(got)
    return one == other or (loose and bool(one and other) and (one in other or other in one))


def _words(text: str) -> str:
    words = re.sub(r"\s+", " ", text.casefold()).strip(" .,;:!?-")
    return re.sub(r"^(?:a|an|the|some|un|una|el|la|los|las|unos|unas) | (?:a|an|the)$", "", words)


def outcomes(rows: Iterable[Row]) -> list[Outcome]:
    """Read every row."""
    found = []
    for row in rows:
        given = row["in"]
        understood = read(
            given["text"],
            at=datetime.fromisoformat(given["at"]),
            unit=Unit(given["unit"]),
            language=given.get("language", "en"),
            by=By(given.get("by", "self")),
            asked=Asked(given["asked"]) if given.get("asked") else None,
        )
        got = {
            "entries": [entry_line(entry) for entry in understood.entries],
            "ask": understood.ask.value if understood.ask else None,
        }
        found.append(Outcome(row["group"], given["text"], row["out"], got))
    return found


def main() -> None:
    """Print the table, and each row that is not right unless a summary is wanted."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("corpus", type=Path)
    parser.add_argument("--summary", action="store_true", help="no texts")
    parser.add_argument("--group", help="only this group's rows")
    chosen = parser.parse_args()
    lines = chosen.corpus.read_text(encoding="utf-8").splitlines()
    found = outcomes(json.loads(line) for line in lines if line.strip())
    if not chosen.summary:
        for outcome in found:
            if not outcome.right and chosen.group in {None, outcome.group}:
                _print_row(outcome)
    _print_table(found)


def _print_row(outcome: Outcome) -> None:
    mark = "WRONG" if outcome.wrong_reading else "MISSED" if outcome.missed_symptom else ""
    print(f"{outcome.group}: {outcome.text!r} {mark}")
    for name, line in (("expected", outcome.expected), ("got", outcome.got)):
        entries = [
            {key: value for key, value in entry.items() if value is not None}
            for entry in line["entries"]
        ]
        print(f"   {name:9}{entries} {line['ask'] or ''}")


def _print_table(found: list[Outcome]) -> None:
    print(f"{'group':20}{'rows':>6}{'right':>7}{'%':>8}{'wrong':>7}{'missed':>8}")
    groups = dict.fromkeys(outcome.group for outcome in found)
    for group in (*groups, None):
        of = [outcome for outcome in found if group in {None, outcome.group}]
        right = sum(outcome.right for outcome in of)
        wrong = sum(outcome.wrong_reading for outcome in of)
        missed = sum(outcome.missed_symptom for outcome in of)
        share = 100 * right / len(of) if of else 0
        print(f"{group or 'all':20}{len(of):>6}{right:>7}{share:>8.1f}{wrong:>7}{missed:>8}")
    asks = Counter(
        f"{outcome.expected['ask']} -> {outcome.got['ask']}"
        for outcome in found
        if outcome.expected["ask"] != outcome.got["ask"]
    )
    print("asks expected -> given:", dict(asks.most_common(12)))


if __name__ == "__main__":
    main()
