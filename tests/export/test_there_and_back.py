"""What is exported as JSON lines comes back as the same record, and gives the same digests."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.entries import FoodKind
from bot.export.back import BadExport, restored
from bot.export.jsonl import export_lines, to_text
from bot.export.lines import record_lines
from bot.record import Record, Retracted, fold
from bot.units import Unit
from demo.diary import Diary, somebody
from tests.export.people import digests, everything, told

RECORDS = [*told(), everything(), everything(unit=Unit.MMOL_L, name="Ana", pregnant=True)]


def text_of(record: Record) -> str:
    return to_text(export_lines(record))


def back(text: str) -> Record:
    [one] = restored(text.split("\n"))
    return fold(one.participant, one.events)


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.participant.id)
def test_record_comes_back_the_same(record: Record) -> None:
    again = back(text_of(record))
    assert list(record_lines(again)) == list(record_lines(record))
    assert digests(again) == digests(record)
    assert again.participant == record.participant
    assert text_of(again) == text_of(record)


def test_the_story_holds_what_makes_it_hard() -> None:
    """Else the test above could not fail: treatments told as meals, cautions, doubtful values."""
    assert any(record.treatments and not record.told_treatments for record in told())
    assert any(line["cautions"] for record in told() for line in digests(record))
    assert any(line.get("doubtful") for record in RECORDS for line in record_lines(record))


def test_all_lines_but_two_are_those_of_the_replay() -> None:
    record = everything()
    lines = [json.loads(line) for line in text_of(record).split("\n") if line]
    assert [line["type"] for line in lines[:2]] == ["participant", "goal"]
    assert lines[2:] == list(record_lines(record))


WORDS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\x00"), max_size=12)
VALUES = st.integers(20, 600) | st.sampled_from(["HI", "LO"])


@given(
    st.lists(st.tuples(st.integers(0, 13), st.integers(0, 23), WORDS, VALUES, VALUES), max_size=8),
    st.sampled_from(Unit),
)
def test_any_record_comes_back(meals: list[tuple[int, int, str, Any, Any]], unit: Unit) -> None:
    diary = Diary(who=somebody(unit=unit))
    for day, hour, text, before, after in meals:
        diary.meal(day, f"{hour:02}:30", text, before, after)
    record = diary.record()
    again = back(text_of(record))
    assert list(record_lines(again)) == list(record_lines(record))
    assert digests(again) == digests(record)


def test_several_people_come_back_in_their_order() -> None:
    text = "".join(text_of(record) for record in told())
    assert [one.participant for one in restored(text.split("\n"))] == [
        record.participant for record in told()
    ]


def test_numbers_once_used_are_not_given_again() -> None:
    diary = Diary().reading(0, "07:00", 101)
    diary.reading(0, "08:00", 140).tell(diary.at(0, "08:01"), Retracted(ids=(2,)))
    [one] = restored(text_of(diary.record()).split("\n"))
    assert one.events[-1].id == 3


def test_what_is_mended_by_hand_is_heeded() -> None:
    text = changed(4, text="a cola", started_at="2026-03-02T12:20:00+03:00")
    [meal] = [one.entry for one in back(text).meals]
    assert (meal.text, f"{meal.started_at:%H:%M}") == ("a cola", "12:20")
    assert [food.kind for food in meal.foods] == [FoodKind.SWEET_DRINK]


def test_lines_without_anything_kept_beside_them_are_taken_as_they_stand() -> None:
    record = Diary().meal(0, "12:30", "rice", 118, 154).record()
    first, *rest = text_of(record).split("\n")
    plain = {name: value for name, value in json.loads(first).items() if name != "kept"}
    again = back("\n".join([json.dumps(plain), *rest]))
    assert list(record_lines(again)) == list(record_lines(record))


def changed(number: int, **fields: object) -> str:
    """The lines of a small record with one of them changed; what is "gone" is left out."""
    record = Diary().meal(0, "12:30", "rice", 118).record()
    lines = [dict(line) for line in export_lines(record)]
    told_line = {**lines[number - 1], **fields}
    lines[number - 1] = {name: value for name, value in told_line.items() if value != "gone"}
    return to_text(lines)


@pytest.mark.parametrize(
    ("text", "number", "what"),
    [
        ("{", 1, "not JSON"),
        ("[]", 1, "not a JSON object"),
        ('{"type": "reading"}', 1, "`participant` is missing"),
        ('{"type": "reading", "participant": "p1"}', 1, "must come first"),
        (changed(1, zone="Moon/Sea"), 1, "zone"),
        (changed(1, unit="mg/l"), 1, "`unit`"),
        (changed(1, joined_at="2026-03-02T12:00:00"), 1, "joined_at"),
        (changed(2, before_low="x"), 1, "`before_low`"),
        (changed(2, limits={"low": 40, "high": 250}), 1, "does not fit"),
        (changed(3, type="dream"), 3, "unknown `type`"),
        (changed(3, value=4711), 3, "does not fit"),
        (changed(3, value=None), 3, "does not fit"),
        (changed(3, moment="gone"), 3, "`moment` is missing"),
        (changed(3, taken_at="2026-03-02T12:30:00"), 3, "does not fit"),
        (changed(3, taken_at="soon"), 3, "does not fit"),
        (changed(4, type="pair"), 1, "a line was added or taken out"),
        (changed(1, kept={"lines": [{"id": 1}, {"id": 1}]}), 1, "the same `id`"),
    ],
)  # fmt: skip
def test_what_is_none_of_ours_is_refused_with_its_line(text: str, number: int, what: str) -> None:
    with pytest.raises(BadExport, match=f"^line {number}: ") as refused:
        restored(text.split("\n"))
    assert what in str(refused.value)
    assert "4711" not in str(refused.value)


def test_the_same_lines_unchanged_are_taken() -> None:
    [one] = restored(changed(3).split("\n"))
    assert len(one.events) == 2
