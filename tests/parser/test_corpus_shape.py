"""The corpora of sayings are what the reader's contract allows: checked without the reader.

A wrong expectation would teach the reader a wrong habit, so every row is held against the
contract's own words: fields and their order, plausible values, times and what an `ask` excludes.
"""

import json
from collections import Counter
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from bot.entries import Ask, Asked, By, MealName, Moment, OffScale, Suggests, What
from bot.units import Unit

HERE = Path(__file__).parent
FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH, SEVENTH, EIGHTH, NINTH, TENTH, ELEVENTH = (
    HERE / f"{name}sayings.jsonl"
    for name in (
        *("", "second_", "third_", "fourth_", "fifth_", "sixth_", "seventh_", "eighth_"),
        *("ninth_", "tenth_", "eleventh_"),
    )
)
CORPORA = (FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH, SEVENTH, EIGHTH, NINTH, TENTH, ELEVENTH)
LEAST = {
    FIRST: 550,
    SECOND: 350,
    THIRD: 420,
    FOURTH: 420,
    FIFTH: 450,
    SIXTH: 320,
    SEVENTH: 450,
    EIGHTH: 380,
    NINTH: 400,
    TENTH: 400,
    ELEVENTH: 250,
}

Row = dict[str, Any]
Entry = dict[str, Any]

#: The fields of each entry, in the order in which they are printed.
FIELDS = {
    "reading": ["value", "unit", "mg_dl", "moment", "taken_at", "off_scale"],
    "meal": ["text", "name", "started_at"],
    "activity": ["text", "minutes", "ended_at"],
    "correction": ["value", "unit", "replaces"],
    "removal": [],
    "skip": ["reason"],
    "symptom": ["text", "suggests"],
    "strips": ["left"],
    "request": ["what"],
}
MENDS = {"moment", "at", "text"}
REQUIRED = {"id", "text", "at", "unit", "asked"}
OPTIONAL = {"language", "by"}
LONGEST = 4096
FIXED_WORDS = 3  # `HI`, `not now`, `no puedo respirar`: there is no other way to say them
SHARED_AT_MOST = 20
AHEAD = timedelta(minutes=60)  # rule 10: only a meal's start may lie ahead
MG_DL_PER_MMOL_L = Decimal("18.0156")  # the contract's table, field `reading`
#: What rule 1 and rule 18 give only to a message that holds nothing else.
ONLY_ALONE = {What.NOT_GLUCOSE, What.CHATTER}


def rows_of(path: Path) -> list[Row]:
    """One row a line."""
    return [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]


ROWS = [(path, row) for path in CORPORA for row in rows_of(path)]


def entries(kind: str) -> Iterator[tuple[Row, Entry]]:
    """Every expected entry of one type, with its row."""
    for _, row in ROWS:
        yield from ((row, entry) for entry in row["out"]["entries"] if entry["type"] == kind)


def instant(text: str) -> datetime:
    """An instant that names its offset."""
    moment = datetime.fromisoformat(text)
    assert moment.utcoffset() is not None, text
    return moment


def plausible(value: float, unit: str) -> bool:
    """Rule 2, written a second time on purpose: 20 to 600 in wholes, 1.1 to 33.3."""
    if unit == Unit.MG_DL:
        return float(value).is_integer() and 20 <= value <= 600
    return 1.1 <= value <= 33.3


def test_there_are_enough_messages() -> None:
    counts = Counter(path for path, _ in ROWS)
    assert all(counts[path] >= least for path, least in LEAST.items()), counts


def test_ids_are_unique_and_given_back() -> None:
    ids = [row["in"]["id"] for _, row in ROWS]
    assert len(set(ids)) == len(ids)
    assert all(row["out"]["id"] == row["in"]["id"] for _, row in ROWS)


def question(row: Row) -> str:
    """The message and its context, without its id; the time only where the text may lean on it."""
    leans = row["group"] in {"clock", "corrections"}
    left_out = {"id"} if leans else {"id", "at"}
    return json.dumps({key: value for key, value in row["in"].items() if key not in left_out})


def test_no_question_comes_twice() -> None:
    """Neither within a corpus nor in two."""
    times = Counter(question(row) for _, row in ROWS)
    assert [asked for asked, count in times.items() if count > 1] == []


@pytest.mark.parametrize("blind", CORPORA[1:], ids=lambda path: path.stem)
def test_a_blind_corpus_shares_only_fixed_words_with_those_before_it(blind: Path) -> None:
    before = CORPORA[: CORPORA.index(blind)]
    told = {row["in"]["text"].casefold() for path, row in ROWS if path in before}
    again = {row["in"]["text"].casefold() for path, row in ROWS if path == blind} & told
    assert all(len(text.split()) <= FIXED_WORDS for text in again), again
    assert len(again) <= SHARED_AT_MOST, again


@pytest.mark.parametrize("path", CORPORA, ids=lambda path: path.stem)
def test_inputs_hold_what_the_contract_names(path: Path) -> None:
    for row in rows_of(path):
        assert list(row) == ["group", "in", "out"]
        given = row["in"]
        assert REQUIRED <= set(given) <= REQUIRED | OPTIONAL, given
        assert len(given["text"]) <= LONGEST
        assert given["unit"] in set(Unit)
        assert given["asked"] is None or given["asked"] in set(Asked)
        assert given.get("by", "self") in set(By)
        instant(given["at"])


def test_outputs_hold_their_fields_in_the_printed_order() -> None:
    for _, row in ROWS:
        out = row["out"]
        assert list(out) == ["id", "entries", "ask"]
        assert out["ask"] is None or out["ask"] in set(Ask)
        for entry in out["entries"]:
            fixed = ["type", *FIELDS[entry["type"]]]
            assert list(entry)[: len(fixed)] == fixed, row
            beyond = set(entry) - set(fixed)
            assert beyond <= (MENDS if entry["type"] == "correction" else set()), row


def test_every_message_gives_something() -> None:
    silent = [row for _, row in ROWS if not row["out"]["entries"] and row["out"]["ask"] is None]
    assert silent == []


def test_what_is_only_said_alone_stands_alone() -> None:
    for row, entry in entries("request"):
        assert entry["what"] in set(What)
        if entry["what"] in ONLY_ALONE:
            assert len(row["out"]["entries"]) == 1, row
            assert row["out"]["ask"] is None, row


def test_readings_are_plausible_and_converted() -> None:
    for row, reading in entries("reading"):
        assert reading["unit"] in set(Unit)
        assert reading["moment"] in set(Moment)
        value = reading["value"]
        if reading["off_scale"] is not None:
            assert reading["off_scale"] in set(OffScale)
            assert (value, reading["mg_dl"], reading["unit"]) == (None, None, row["in"]["unit"])
            continue
        assert plausible(value, reading["unit"]), row
        factor = Decimal(1) if reading["unit"] == Unit.MG_DL else MG_DL_PER_MMOL_L
        assert reading["mg_dl"] == float(Decimal(repr(value)) * factor), row


def test_no_more_than_two_readings_and_the_last_has_its_time() -> None:
    for _, row in ROWS:
        times = [entry["taken_at"] for entry in row["out"]["entries"] if entry["type"] == "reading"]
        assert len(times) <= 2, row
        assert not times or times[-1] is not None, row


@pytest.mark.parametrize(
    ("kind", "field", "ahead"),
    [
        ("reading", "taken_at", timedelta(0)),
        ("activity", "ended_at", timedelta(0)),
        ("meal", "started_at", AHEAD),
        ("correction", "at", timedelta(0)),
    ],
)
def test_times_lie_in_the_past_and_keep_the_offset(kind: str, field: str, ahead: timedelta) -> None:
    for row, entry in entries(kind):
        if entry.get(field) is None:
            continue
        sent, told = instant(row["in"]["at"]), instant(entry[field])
        assert told - sent <= ahead, row
        assert told.utcoffset() == sent.utcoffset(), row
        assert sent - told <= timedelta(days=7), row


def test_food_activity_symptom_and_reason_are_the_persons_own_words() -> None:
    for kind, field in [
        ("meal", "text"),
        ("activity", "text"),
        ("symptom", "text"),
        ("skip", "reason"),
        ("correction", "text"),
    ]:
        for row, entry in entries(kind):
            words = entry.get(field) or ""
            assert words in row["in"]["text"], row
            assert words == words.strip(" .,;:!?"), row


def test_small_fields_hold_what_the_contract_names() -> None:
    checks: dict[str, Callable[[Entry], bool]] = {
        "meal": lambda e: e["name"] is None or e["name"] in set(MealName),
        "activity": lambda e: e["minutes"] is None or 0 < e["minutes"] <= 24 * 60,
        "symptom": lambda e: e["suggests"] in set(Suggests),
        "strips": lambda e: isinstance(e["left"], int) and e["left"] >= 0,
        "skip": lambda e: e["reason"] is None or bool(e["reason"]),
    }
    for kind, holds in checks.items():
        assert [row for row, entry in entries(kind) if not holds(entry)] == []


def test_a_correction_mends_one_thing() -> None:
    for row, entry in entries("correction"):
        mends = MENDS & set(entry)
        if entry["value"] is None:
            assert len(mends) == 1, row
            assert (entry["unit"], entry["replaces"]) == (None, None), row
        else:
            assert not mends, row
            assert plausible(entry["value"], entry["unit"]), row


def test_symptoms_are_one_a_level() -> None:
    for _, row in ROWS:
        levels = [e["suggests"] for e in row["out"]["entries"] if e["type"] == "symptom"]
        assert len(set(levels)) == len(levels), row
