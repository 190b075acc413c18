"""Alerts through the whole bot: who is told, when, and what ends them."""

from datetime import UTC, datetime

import pytest

from tests.educator.classroom import Classroom

WATCHES = "Nobody watches this chat day and night."


@pytest.fixture
def room() -> Classroom:
    return Classroom()


def alerts(room: Classroom, chat: str) -> list[str]:
    return [
        letter.text for letter in room.letters(chat) if (letter.about or "").startswith("alert")
    ]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("48", ["very low", "48 mg/dL"]),
        ("LO", ["off the meter's scale", "LO"]),
        ("HI", ["off the meter's scale", "HI"]),
        ("chest pain", ["emergency", "chest pain"]),
    ],
)
def test_alert_comes_at_once_in_working_hours(room: Classroom, text: str, words: list[str]) -> None:
    room.participant("ana", room.educator("edu"))
    room.say("ana", text)
    told = alerts(room, "edu")
    assert told, room.texts("edu")
    for word in (*words, "ANA", WATCHES, "seen 1"):
        assert word in told[0]
    assert room.parked() == []


def test_one_value_of_two_levels_is_one_alert_with_both_named(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.say("ana", "62")
    room.passes(minutes=15)
    room.say("ana", "48")  # very low, and an emergency: below 54 after sugar was advised
    [told] = alerts(room, "edu")
    assert "emergency, very low. 48 mg/dL" in told
    assert "call the emergency number" in told
    room.say("edu", "closed")  # the only one
    assert "No alert is open" in room.say("edu", "alerts")[0]


def test_one_value_of_two_levels_goes_to_the_deputy_once(room: Classroom) -> None:
    edu, deputy = room.educator("edu"), room.educator("dep")
    room.participant("ana", edu)
    room.say("edu", f"deputy {deputy}")
    room.say("dep", f"accept {edu}")
    room.say("ana", "62")
    room.passes(minutes=15)
    room.say("ana", "LO")
    room.say("ana", "95 recheck")
    room.passes(minutes=40)
    assert len(alerts(room, "dep")) == 1
    assert "off the meter's scale" in alerts(room, "dep")[0]


@pytest.mark.parametrize("text", ["62", "118, rice", "260"])
def test_nothing_else_is_an_alert_at_once(room: Classroom, text: str) -> None:
    room.participant("ana", room.educator("edu"))
    room.say("ana", text)
    assert alerts(room, "edu") == []


def test_low_without_a_new_test_is_told_after_two_rechecks(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.say("ana", "62")
    room.passes(minutes=34)
    assert alerts(room, "edu") == []
    room.passes(minutes=1)
    [told] = alerts(room, "edu")
    assert "no new test since" in told
    assert "62 mg/dL" in told


def test_low_that_was_tested_again_is_not_told(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.say("ana", "62")
    room.passes(minutes=20)
    room.say("ana", "95")
    room.passes(hours=2)
    assert alerts(room, "edu") == []


def test_nobody_is_told_without_leave(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"), tell=False)
    room.says("ana", "48", "chest pain", "LO")
    room.passes(hours=3)
    assert alerts(room, "edu") == []


def test_alert_waits_for_working_hours(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.go_to(datetime(2026, 3, 2, 22, 0, tzinfo=UTC))
    room.say("ana", "48")
    room.go_to(datetime(2026, 3, 3, 7, 59, tzinfo=UTC))
    assert alerts(room, "edu") == []
    room.go_to(datetime(2026, 3, 3, 8, 0, tzinfo=UTC))
    assert "22:00" in alerts(room, "edu")[0]


def test_alerts_of_a_weekend_come_as_one_line(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.go_to(datetime(2026, 3, 6, 22, 0, tzinfo=UTC))
    room.says("ana", "48", "LO")
    room.go_to(datetime(2026, 3, 9, 8, 0, tzinfo=UTC))
    assert alerts(room, "edu") == []
    assert "over a day old" in room.texts("edu")[-1]
    assert WATCHES in room.texts("edu")[-1]
    listed = room.say("edu", "alerts")[0]
    assert "very low" in listed
    assert "off the meter's scale" in listed


def test_unseen_alert_goes_on_to_the_deputy_without_value_or_name(room: Classroom) -> None:
    edu = room.educator("edu")
    deputy = room.educator("dep")
    room.participant("ana", edu)
    room.say("edu", "label ana Rosalinda")
    room.say("edu", f"deputy {deputy}")
    assert f"accept {edu}" in room.texts("dep")[-1]
    room.say("ana", "48")
    room.passes(minutes=40)
    assert alerts(room, "dep") == [], "not before they accept"
    room.say("dep", f"accept {edu}")
    [told] = alerts(room, "dep")
    assert WATCHES in told
    assert "48" not in told
    assert "Rosalinda" not in told
    assert "Rosalinda" in alerts(room, "edu")[0]

    assert room.say("dep", f"seen 1 {edu}")[0].startswith("Alert 1")
    assert deputy in room.texts("edu")[-1]
    assert ", seen" in room.say("edu", "alerts")[0]


def test_alert_that_was_seen_does_not_go_on(room: Classroom) -> None:
    edu, deputy = room.educator("edu"), room.educator("dep")
    room.participant("ana", edu)
    room.say("edu", f"deputy {deputy}")
    room.say("dep", f"accept {edu}")
    room.say("ana", "48")
    room.passes(minutes=29)
    room.say("edu", "seen")
    room.passes(hours=5)
    # An answer to the recheck never came, which is a second alert of its own.
    assert all("very low" not in text for text in alerts(room, "dep"))


def test_away_sends_alerts_to_the_deputy_at_once(room: Classroom) -> None:
    edu, deputy = room.educator("edu"), room.educator("dep")
    room.participant("ana", edu)
    room.says("edu", f"deputy {deputy}", "away")
    room.say("dep", f"accept {edu}")
    room.say("ana", "48")
    assert alerts(room, "edu") == []
    assert len(alerts(room, "dep")) == 1
    room.say("edu", "back")
    assert len(alerts(room, "edu")) == 1


def test_deputy_who_declines_gets_nothing(room: Classroom) -> None:
    edu, deputy = room.educator("edu"), room.educator("dep")
    room.participant("ana", edu)
    room.say("edu", f"deputy {deputy}")
    room.say("dep", f"decline {edu}")
    room.say("ana", "48")
    room.passes(hours=4)
    assert alerts(room, "dep") == []
    assert "no such alert" in room.say("dep", f"seen 1 {edu}")[0]


def test_marks_by_number_by_quoting_and_bare(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    room.says("ana", "48", "LO")
    assert "Which one" in room.say("edu", "seen")[0]
    first = next(letter for letter in room.letters("edu") if "very low" in letter.text)
    place = room.letters("edu").index(first) + 1
    quoted = room.say("edu", "called", quotes=f"edu-{place}")[0]
    number = first.buttons[0].split()[1]
    assert f"Alert {number} is marked as called" in quoted
    assert "closed" in room.say("edu", f"closed {number}")[0]
    assert f"\n{number}. " not in room.say("edu", "alerts")[0]
    assert "no such alert" in room.say("edu", "seen 99")[0]


def test_corrected_value_is_not_told(room: Classroom) -> None:
    """A slip at night, mended before working hours begin."""
    room.participant("ana", room.educator("edu"))
    room.go_to(datetime(2026, 3, 2, 22, 0, tzinfo=UTC))
    room.says("ana", "48", "sorry, 148")
    room.passes(minutes=15)
    room.say("ana", "140")
    room.go_to(datetime(2026, 3, 3, 12, 0, tzinfo=UTC))
    assert alerts(room, "edu") == []


def test_a_deputy_finds_what_came_to_them_among_the_alerts_and_marks_it() -> None:
    room = Classroom()
    first, second = room.educator("first"), room.educator("second")
    room.participant("ana", first)
    room.say("first", "label ana Anita")
    room.say("first", f"deputy {second}")
    assert "No alert is open" in room.say("second", "alerts")[0]
    room.say("second", f"accept {first}")
    room.say("ana", "48")
    assert "No alert is open" in room.say("second", "alerts")[0], "it is not passed on yet"
    room.passes(minutes=31)
    [listed] = room.say("second", "alerts")
    assert f"1 {first}. ANA: very low" in listed
    assert "48" not in listed
    assert "Anita" not in listed
    assert room.last("second").buttons == (f"seen 1 {first}",)
    assert "marked as seen" in room.say("second", f"seen 1 {first}")[0]
    assert room.last("second").buttons == (f"called 1 {first}", f"closed 1 {first}")
    room.say("second", f"decline {first}")
    assert "No alert is open" in room.say("second", "alerts")[0]
