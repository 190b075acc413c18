"""Who is handed what as a file: one's own texts to oneself, a shared record to its educator."""

import csv
from datetime import UTC, datetime, timedelta
from io import BytesIO, StringIO
from zipfile import ZipFile

import pytest

from bot.chart import draw
from bot.export.files import MESSAGES, attachment
from bot.export.letters import COLUMNS, letters_bytes
from bot.messages import Passed
from bot.storage.handing_out import handed_out
from tests.educator.classroom import Classroom

NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@pytest.fixture
def room() -> Classroom:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ana", edu)
    room.participant("ben", edu, tell=False)
    room.says("ana", "118 before, rice and beans", "thank you")
    room.say("ben", "133, yam")
    return room


def asked(room: Classroom, reader: str, what: str) -> dict[str, object]:
    with room.store.turn() as work:
        return dict(handed_out(work, reader, what, room.now))


def test_ones_own_export_holds_what_was_written_by_both(room: Classroom) -> None:
    messages = asked(room, "ANA", "export")["messages"]
    assert isinstance(messages, tuple)
    mine = [one.text for one in messages if not one.by_bot]
    assert mine == ["118 before, rice and beans", "thank you"]
    assert [one.text for one in messages if one.by_bot] == room.texts("ana")


def test_an_educator_gets_the_record_without_a_text(room: Classroom) -> None:
    edu = room.whose("edu")
    given = asked(room, edu, "record:ANA")
    assert given["messages"] == ()
    assert asked(room, edu, "export:ANA")["messages"] == ()
    assert asked(room, "ANA", "record")["messages"] == (), "a page to print is for others to see"


@pytest.mark.parametrize("what", ["record:BEN", "record:NOBODY", "export:BEN"])
def test_what_is_not_shared_is_not_handed_out(room: Classroom, what: str) -> None:
    with pytest.raises(LookupError):
        asked(room, room.whose("edu"), what)


def test_nobody_gets_anothers_record(room: Classroom) -> None:
    stranger = room.educator("other")
    for reader in (stranger, "BEN"):
        with pytest.raises(LookupError):
            asked(room, reader, "record:ANA")


def test_access_that_ended_meanwhile_ends_the_file_too(room: Classroom) -> None:
    edu = room.whose("edu")
    room.say("ana", "no educator")
    with pytest.raises(LookupError):
        asked(room, edu, "record:ANA")


def test_texts_go_after_thirty_days_from_the_export_too(room: Classroom) -> None:
    later = room.now + timedelta(days=31)
    with room.store.turn() as work:
        work.forget_texts(later - timedelta(days=30), later - timedelta(days=30))
    assert asked(room, "ANA", "export")["messages"] == ()


def test_the_file_opens_as_a_table_and_runs_no_formula() -> None:
    messages = (
        Passed(at=NOON, text='=HYPERLINK("x")\nand, "more"'),
        Passed(at=NOON, text="Thank you.", by_bot=True),
    )
    text = letters_bytes(messages, "Africa/Nairobi").decode("utf-8-sig")
    rows = list(csv.reader(StringIO(text)))
    assert rows == [
        list(COLUMNS),
        ["2026-03-02T15:00:00+03:00", "me", '\'=HYPERLINK("x")\nand, "more"'],
        ["2026-03-02T15:00:00+03:00", "bot", "Thank you."],
    ]


def test_the_archive_holds_it_beside_the_record(room: Classroom) -> None:
    given = asked(room, "ANA", "export")
    name, content = attachment("export", given["record"], draw, given["messages"])  # type: ignore[arg-type]
    assert name == "export.zip"
    with ZipFile(BytesIO(content)) as archive:
        assert MESSAGES in archive.namelist()
        assert "rice and beans" in archive.read(MESSAGES).decode()
