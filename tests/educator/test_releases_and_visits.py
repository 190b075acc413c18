"""What waits for an educator's word, and the visit after two weeks: told once, in their hours."""

from datetime import time, timedelta

import pytest

from bot.participants import Invitation
from bot.storage.letters import Letter
from bot.units import Unit
from tests.educator.classroom import MONDAY, Classroom


@pytest.fixture
def room() -> Classroom:
    return Classroom()


def a_pair(room: Classroom, day: int, before: int, after: int, chat: str = "ana") -> str:
    """One paired test at noon of a day; what is said to the second number."""
    room.go_to(MONDAY + timedelta(days=day, hours=3))
    room.say(chat, f"{before} before, fish and salad")
    room.passes(hours=2)
    return room.say(chat, str(after))[-1]


def told(room: Classroom, part: str, chat: str = "edu") -> list[Letter]:
    """What the educator read with these words."""
    return [letter for letter in room.letters(chat) if part in letter.text]


def test_a_step_waits_for_the_educator_who_releases_it_by_a_button(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu, may_go_low=None)
    for day in range(2):
        a_pair(room, day, 110, 190)
    assert "I ask your educator" in a_pair(room, 2, 112, 191)
    [asked] = told(room, "waits for you. It can")
    assert "ANA has enough tests for the next step: lighter meal" in asked.text
    assert "next step waits for your release" in room.say("edu", "roster")[0]
    [answer] = room.say("edu", asked.buttons[0])
    assert "Released: lighter meal" in answer
    assert "next step is safe for you" in room.last("ana").text
    assert "waits" not in room.say("edu", "roster")[0]
    assert "Next step: " in room.say("ana", "next step")[0]
    a_pair(room, 3, 110, 190)
    assert len(told(room, "waits for you. It can")) == 1


def settled_weeks(room: Classroom, chat: str = "ana") -> str:
    """Two weeks within goals; what the participant reads at their end."""
    for day in range(15):
        said = a_pair(room, day, 110, 150, chat)
    return said


def test_fewer_tests_wait_for_the_educator_and_then_for_the_participant(room: Classroom) -> None:
    edu = room.educator("edu", hours="every day 8-18")
    room.participant("ana", edu, may_go_low=None, week_ends="saturday")
    said = settled_weeks(room)
    assert "I ask your educator whether testing twice a week is enough now" in said
    [asked] = told(room, "6 of the last 6 full tests were within both goals")
    assert "Testing twice a week may be enough now" in asked.text
    assert "fewer tests wait for your release" in room.say("edu", "roster")[0]
    room.say("edu", "ana")
    assert asked.buttons[0] in room.last("edu").buttons

    a_pair(room, 15, 111, 149)
    assert len(told(room, "full tests were within both goals")) == 1, "it is told once"

    assert "I ask ANA, and they decide" in room.say("edu", asked.buttons[0])[0]
    assert room.person("ANA").rhythm == "daily", "nothing changes before the participant's yes"
    assert room.last("ana").buttons == ("yes", "no")
    assert "Shall I ask for tests twice a week" in room.last("ana").text
    assert "twice a week" in room.say("ana", "yes")[0]
    assert room.person("ANA").rhythm == "twice_a_week"


def test_a_no_to_fewer_tests_is_not_asked_again_at_once(room: Classroom) -> None:
    room.participant("ana", room.educator("edu"))
    settled_weeks(room)
    room.say("ana", "no")
    for day in range(15, 20):
        assert "Shall I ask" not in a_pair(room, day, 110, 150)
    assert "Shall I ask" in a_pair(room, 20, 110, 150), "six more full tests speak for it again"


def test_who_cannot_go_low_is_asked_without_the_educator(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu)
    assert "Shall I ask for tests twice a week" in settled_weeks(room)
    assert not told(room, "full tests were within")
    assert "needs no release" in room.say("edu", "fewer tests ana")[0]


def test_release_against_the_record_is_asked_once_more(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu, may_go_low=True)
    a_pair(room, 0, 110, 150)
    [held] = room.say("edu", "fewer tests ana")
    assert "do not speak for it yet" in held
    assert room.last("edu").buttons == ("yes", "no")
    assert "Nothing was made" in room.say("edu", "no")[0]
    room.say("edu", "fewer tests ana")
    assert "Released: testing twice a week" in room.say("edu", "yes")[0]


def test_of_somebody_who_shares_no_values_nothing_is_told(room: Classroom) -> None:
    edu = room.educator("edu", hours="every day 8-18")
    room.participant("ana", edu, tell=False, may_go_low=None)
    assert "Ask your educator whether testing twice a week" in settled_weeks(room)
    assert [
        text for text in room.texts("edu") if "full tests" in text or "enough tests" in text
    ] == []
    assert "Released: testing twice a week" in room.say("edu", "fewer tests ana")[0]


def test_somebody_who_asked_for_silence_is_not_asked(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu, may_go_low=None)
    room.say("ana", "stop")
    read = len(room.letters("ana"))
    room.says("edu", "fewer tests ana", "yes")
    assert len(room.letters("ana")) == read


# ── The visit ────────────────────────────────────────────────────────────────


def test_after_two_weeks_the_educator_gets_what_a_visit_needs(room: Classroom) -> None:
    edu = room.educator("edu", hours="Mon-Fri 10:00-16:00")
    room.participant("ana", edu)
    a_pair(room, 13, 110, 150)
    assert not told(room, "two weeks")
    room.go_to(MONDAY + timedelta(days=30))
    [visit] = told(room, "has tested for two weeks")
    assert visit.due_at == MONDAY + timedelta(days=14, hours=1), "Monday at nine waits until ten"
    assert visit.attachment == "record:ANA"
    assert "Please call them" in visit.text
    assert "1 complete pairs, 2 readings" in visit.text
    assert "print ANA" in visit.buttons


def test_a_visit_without_shared_values_is_a_reminder_alone(room: Classroom) -> None:
    edu = room.educator("edu")
    known = Invitation(
        zone="UTC",
        unit=Unit.MG_DL,
        main_meal=time(13),
        educator=edu,
        may_go_low=False,
        ketone_risk=False,
    )
    room.invite("CODEANA1", known)
    room.says("ana", "/start CODEANA1", "yes", "no")
    who = room.whose("ana")
    room.say("ana", "123, rice")
    room.go_to(MONDAY + timedelta(days=30))
    [visit] = told(room, "joined two weeks ago")
    assert who in visit.text
    assert visit.attachment is None
    assert "123" not in visit.text


def test_a_visit_waits_while_the_educator_is_away(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu)
    room.say("ana", "118, rice")
    room.say("edu", "away")
    room.go_to(MONDAY + timedelta(days=16))
    assert not told(room, "two weeks")
    room.say("edu", "back")
    room.passes(minutes=1)
    assert len(told(room, "has tested for two weeks")) == 1


def test_whoever_left_brings_no_reminder_and_nothing_of_theirs(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu)
    room.say("ana", "118, rice")
    room.say("ana", "no educator")
    room.go_to(MONDAY + timedelta(days=30))
    assert not told(room, "two weeks")


def test_an_educator_of_an_old_record_is_not_reminded_of_what_is_long_over(room: Classroom) -> None:
    edu = room.educator("edu")
    room.participant("ana", edu, joined_at=MONDAY - timedelta(days=60))
    room.say("ana", "118, rice")
    room.passes(days=3)
    assert not told(room, "two weeks")
