"""Who set which goals when: kept in the record, and told wherever the record is."""

import json
from datetime import timedelta
from io import BytesIO

import pytest
from fhir.resources.R4B.bundle import Bundle
from pypdf import PdfReader

from bot.chart import draw
from bot.educator.goal_log import goals_set
from bot.export.back import BadExport, restored
from bot.export.fhir import bundle_bytes
from bot.export.files import file_of
from bot.export.jsonl import export_lines, to_text
from bot.record import Record, fold
from bot.words.english.record_page import RECORD_PAGE
from bot.words.record_page_filling import record_pages
from tests.educator.classroom import MONDAY, Classroom


@pytest.fixture
def room() -> Classroom:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ana", edu)
    room.says("ana", "118 before, rice and beans")
    room.passes(days=1)
    room.say("edu", "goals ana 90-120 160")
    room.passes(days=1)
    room.say("edu", "low ana 75")
    room.passes(days=1)
    room.say("edu", "goals ana 80-130 180")
    room.say("ana", "121 before, rice and beans")
    return room


def record(room: Classroom) -> Record:
    person = room.person("ANA")
    with room.store.turn() as work:
        return fold(person, work.events("ANA"))


def test_every_setting_is_kept_with_who_and_when(room: Classroom) -> None:
    edu = room.whose("edu")
    told = [
        (one.at - MONDAY, one.by, one.goals.before_low, one.goals.after_high, one.limits.low)
        for one in goals_set(record(room))
    ]
    assert told == [
        (timedelta(), None, 80, 180, 70),
        (timedelta(days=1), edu, 90, 160, 70),
        (timedelta(days=2), edu, 90, 160, 75),
        (timedelta(days=3), edu, 80, 180, 75),
    ]


def test_the_educator_reads_them_newest_first(room: Classroom) -> None:
    [answer] = room.say("edu", "goals ana")
    lines = answer.splitlines()
    assert lines[2].startswith("2026-03-05: Goals: 80 to 130")
    assert lines[2].endswith("(set by you)")
    assert lines[5].endswith("(at joining)")
    other = Classroom()
    other.participant("ben", other.educator("edu"))
    assert "so far" not in other.say("edu", "goals ben")[0]


def test_another_educator_is_named_by_id(room: Classroom) -> None:
    first = room.whose("edu")
    lines = to_text(export_lines(record(room)))
    second = room.educator("next")
    moved = lines.replace(f'"educator": "{first}"', f'"educator": "{second}"')
    [one] = restored(moved.split("\n"))
    assert one.participant.educator == second
    assert {entry.by for entry in goals_set(fold(one.participant, one.events))} == {None, first}


def test_the_goal_line_tells_them_and_they_come_back(room: Classroom) -> None:
    text = to_text(export_lines(record(room)))
    goal = json.loads(text.split("\n")[1])
    assert (goal["type"], goal["before_low"], goal["by"]) == ("goal", 80, room.whose("edu"))
    assert [one["after_high"] for one in goal["history"]] == [180, 160, 160]
    assert goal["history"][0]["by"] is None
    [one] = restored(text.split("\n"))
    again = fold(one.participant, one.events)
    assert goals_set(again) == goals_set(record(room))
    assert to_text(export_lines(again)) == text


@pytest.mark.parametrize("value", ["", "{}", '{"by": 3, "was": {}, "now": {}}', "[1]"])
def test_a_setting_that_is_none_is_refused_by_its_line(room: Classroom, value: str) -> None:
    lines = to_text(export_lines(record(room))).split("\n")
    person = json.loads(lines[0])
    for kept in person["kept"]["talk"]:
        if kept["body"].get("setting") == "goals":
            kept["body"]["setting_value"] = value
    with pytest.raises(BadExport, match=r"^line 1: "):
        restored([json.dumps(person), *lines[1:]])


def test_fhir_has_the_goals_in_force_and_those_before(room: Classroom) -> None:
    whole = bundle_bytes([record(room)])
    Bundle.model_validate_json(whole)
    goals = [
        one["resource"]
        for one in json.loads(whole)["entry"]
        if one["resource"]["resourceType"] == "Goal"
    ]
    assert [one["lifecycleStatus"] for one in goals] == ["active"] * 2 + ["completed"] * 4
    assert [one["startDate"] for one in goals[::2]] == ["2026-03-05", "2026-03-02", "2026-03-03"]
    assert [one["statusDate"] for one in goals[2::2]] == ["2026-03-03", "2026-03-05"]
    assert goals[0]["expressedBy"]["identifier"]["value"] == room.whose("edu")
    assert "expressedBy" not in goals[2]
    assert len({one["id"] for one in goals}) == len(goals)


def test_the_printed_page_tells_them(room: Classroom) -> None:
    pdf = file_of("pdf", [record(room)], draw)
    text = " ".join(PdfReader(BytesIO(pdf)).pages[0].extract_text().split())
    edu = room.whose("edu")
    assert f"In force since Thu 5 March, set by educator {edu}" in text
    assert f"Goals by educator {edu}, Tue 3 March: 90 to 120, after below 160" in text
    assert f"Limits by educator {edu}, Wed 4 March: low below 75, high from 250" in text
    assert "Goals at joining, Mon 2 March: 80 to 130, after below 180" in text


def test_each_test_on_the_page_is_judged_by_the_goals_of_its_day() -> None:
    room = Classroom()
    room.participant("ana", room.educator("edu"))

    def meal() -> None:
        room.say("ana", "125 before, rice and beans")
        room.passes(hours=2)
        room.say("ana", "165 after")

    meal()
    room.passes(days=1)
    room.say("edu", "goals ana 90-120 160")
    room.say("edu", "low ana 75")
    room.say("ana", "73 bedtime")
    room.passes(hours=3)
    meal()
    [page] = record_pages(record(room), RECORD_PAGE)
    assert [(row.before.mark, row.after.mark) for row in page.rows] == [
        ("", ""),
        (RECORD_PAGE.above, RECORD_PAGE.above),
    ]
    shares = dict(page.figures)
    assert shares[RECORD_PAGE.before_within] == RECORD_PAGE.share.format(within=1, of=2)
    assert shares[RECORD_PAGE.after_within] == RECORD_PAGE.share.format(within=1, of=2)
    assert page.goals.lines[0] == "Before a meal: 90 to 120"
    assert page.goals.lines[-1] == RECORD_PAGE.goals_of_the_day


def test_an_older_page_shows_and_judges_by_the_goals_of_then() -> None:
    room = Classroom()
    room.participant("ana", room.educator("edu"))
    room.says("ana", "125 before, rice and beans", "73 bedtime")
    room.passes(days=20)
    room.say("edu", "goals ana 90-120 160")
    room.say("edu", "low ana 75")
    room.say("ana", "125 before, rice and beans")
    newest, older = record_pages(record(room), RECORD_PAGE, whole=True)
    assert [row.before.mark for row in newest.rows] == [RECORD_PAGE.above]
    assert [row.before.mark for row in older.rows] == [""]
    assert older.goals.lines[0] == "Before a meal: 80 to 130"
    assert "Low: below 70" in older.goals.lines
    assert RECORD_PAGE.goals_of_the_day not in older.goals.lines
    lows, _, others, _ = older.blocks
    assert lows.lines == (RECORD_PAGE.no_lows,)
    assert "73" in others.lines[0], "no low then, whatever is one now"
