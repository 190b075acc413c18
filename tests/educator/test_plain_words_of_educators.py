"""What an educator would text without having read the help: understood, and never destructive."""

import pytest

from bot.messages import Incoming
from tests.educator.classroom import Classroom


@pytest.fixture
def room() -> Classroom:
    room = Classroom()
    edu = room.educator("edu")
    for chat in ("zoe", "ben", "lia"):
        room.participant(chat, edu, may_go_low=None)
    room.say("edu", "label ZOE Ana Maria Lopez")
    room.say("edu", "label BEN Ana Ruiz")
    room.say("zoe", "118 before, rice")
    return room


@pytest.mark.parametrize("text", ["deputy", "deputy?", "Deputy ?"])
def test_asking_who_the_deputy_is_does_not_remove_them(room: Classroom, text: str) -> None:
    other = room.educator("other")
    assert "You have no deputy." in room.say("edu", text)[0]
    room.says("edu", f"deputy {other}")
    assert "have not answered" in room.say("edu", text)[0]
    room.say("other", f"accept {room.whose('edu')}")
    assert f"Your deputy is {other}." in room.say("edu", text)[0]
    assert room.last("edu").buttons == ("no deputy",)
    assert "Ana Ruiz" in room.say("edu", "Ruiz")[0], "a participant is no deputy"
    assert f"Your deputy is {other}." in room.say("edu", "my id")[0]
    assert "no deputy now" in room.say("edu", "no deputy")[0]


def test_hours_alone_tell_them(room: Classroom) -> None:
    assert "Mon Tue Wed Thu Fri 08:00-16:00" in room.say("edu", "hours")[0]
    assert "did not get" in room.say("edu", "hours whenever")[0]


def test_my_id_tells_what_a_colleague_needs(room: Classroom) -> None:
    for text in ("my id", "who am I?", "settings"):
        assert room.whose("edu") in room.say("edu", text)[0]


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("Ana Maria", "Ana Maria Lopez (ZOE), since"),
        ("lopez", "Ana Maria Lopez (ZOE), since"),
        ("who is Lopez?", "Ana Maria Lopez (ZOE), since"),
        ("set goals for Lopez to 80 120 160", "Set. Ana Maria Lopez"),
        ("goal Lopez 80-120 160", "Set. Ana Maria Lopez"),
        ("note Ana Maria: come on Monday", "Sent to Ana Maria Lopez"),
        ("message to Lopez come on Monday", "Sent to Ana Maria Lopez"),
        ("next step for Lopez", "Released: lighter meal"),
        ("visit Lopez", "a page to print"),
        ("pdf lopez", "a page to print"),
        ("thanks", "I am here"),
        ("Thank you!", "I am here"),
        ("\N{THUMBS UP SIGN}", "I am here"),
    ],
)
def test_other_ways_to_say_it(room: Classroom, text: str, part: str) -> None:
    assert part in room.say("edu", text)[0]


def test_a_note_holds_what_follows_the_name_alone(room: Classroom) -> None:
    room.say("edu", "note Ana Maria: Maria, come on Monday")
    assert '"Maria, come on Monday"' in room.last("zoe").text


def test_two_of_one_name_are_asked_about_with_buttons_that_keep_the_rest(room: Classroom) -> None:
    [asked] = room.say("edu", "goals Ana 80-120 160")
    assert "Ana Maria Lopez (ZOE)" in asked
    assert "Ana Ruiz (BEN)" in asked
    second, first = sorted(room.last("edu").buttons)
    assert "Set. Ana Maria Lopez" in room.say("edu", first)[0]
    assert room.person("BEN").goals.after_high == 180
    assert "BEN" in second


def test_files_come_without_messages(room: Classroom) -> None:
    room.say("edu", "export lopez")
    assert room.last("edu").attachment == "export:ZOE"
    assert "Their own messages are not in it" in room.last("edu").text
    room.participant("mia", room.whose("edu"), tell=False)
    assert "does not share values" in room.say("edu", "export mia")[0]
    assert room.last("edu").attachment is None


def test_every_page_of_a_person_leads_on_by_buttons(room: Classroom) -> None:
    for text in ("show lopez", "meals lopez", "chart lopez", "steps lopez", "print lopez"):
        room.say("edu", text)
        assert "goals ZOE" in room.last("edu").buttons, text
        for button in room.last("edu").buttons:
            assert "did not get" not in room.say("edu", button)[0], button


def test_alerts_are_marked_by_buttons_from_the_list(room: Classroom) -> None:
    room.say("zoe", "48")
    room.say("ben", "43")
    room.say("edu", "alerts")
    newest, oldest = room.last("edu").buttons
    assert oldest == "seen 1"
    number = newest.removeprefix("seen ")
    room.say("edu", newest)
    assert room.last("edu").buttons == (f"called {number}", f"closed {number}")
    room.say("edu", f"called {number}")
    room.say("edu", "alerts")
    assert room.last("edu").buttons == (f"closed {number}", "seen 1")
    room.say("edu", f"closed {number}")
    assert room.last("edu").buttons == ()


def test_help_and_greetings_lead_to_where_most_begin(room: Classroom) -> None:
    for text in ("help", "hello"):
        room.say("edu", text)
        assert room.last("edu").buttons == ("roster", "alerts", "invite")


def test_a_group_chat_is_not_answered_to_an_educator(room: Classroom) -> None:
    before = len(room.letters("edu"))
    room.conversation.hear(
        Incoming(
            update=9999, chat="edu", message="9999", at=room.now, text="roster", private=False
        ),
        room.now,
    )
    assert len(room.letters("edu")) == before
