"""An educator's chat from joining to settings, through the whole bot."""

import pytest
from sqlalchemy import select

from bot.participants import Invitation, Role
from bot.storage.store import Store
from bot.storage.tables import METADATA
from bot.units import Unit
from bot.words.language import ENGLISH
from tests.educator.classroom import Classroom


@pytest.fixture
def room() -> Classroom:
    return Classroom()


@pytest.fixture
def edu(room: Classroom) -> str:
    return room.educator("edu")


def code_of(text: str) -> str:
    return text.split("/start ")[1].split(maxsplit=1)[0]


def test_joining_tells_the_rules_and_keeps_nothing_before_the_yes(room: Classroom) -> None:
    room.invite("TEACHER1", Invitation(role=Role.EDUCATOR, zone="UTC"))
    [rules] = room.say("edu", "/start TEACHER1")
    for rule in ("working hours only", "Nobody watches this chat day and night", "own"):
        assert rule in rules
    assert room.last("edu").buttons == ("yes", "no")
    [declined] = room.say("edu", "no")
    assert "keep nothing" in declined
    with room.store.turn() as work:
        assert work.chat("edu") is None

    read = room.says("edu", "/start TEACHER1", "yes", "Mon-Thu 9:00-12:30")
    assert "Mon Tue Wed Thu 09:00-12:30" in read[0]
    assert room.whose("edu") in read[0]
    assert "TEACHER1" not in room.say("other", "/start TEACHER1")[0]
    with room.store.turn() as work:
        assert work.chat("other") is None, "a code works once"


def test_invitation_says_first_whom_it_is_for(room: Classroom, edu: str) -> None:
    [first] = room.say("edu", "invite")
    for word in ("adult", "type 2", "pregnant", "type 1", "dialysis", "eating disorder", "acute"):
        assert word in first
    [end] = room.say("edu", "no")
    assert "no code" in end
    assert "did not get" in room.say("edu", "UTC")[0], "the question is closed"


def test_invitation_carries_what_was_told_into_the_participant(room: Classroom, edu: str) -> None:
    answers = ["invite", "yes", "Nairobi", "mmol/L", "english", "13:30", "don't know", "no"]
    room.says("edu", *answers, "acarbose, fluid limit and her daughter writes")
    [told] = room.says("edu", "999", "Ana")
    code = code_of(told)
    read = room.says("ana", f"/start {code}", "yes", "yes", "don't know")
    assert "You are in" in read[0]
    person = room.person(room.whose("ana"))
    assert (person.zone, person.unit.value) == ("Africa/Nairobi", "mmol/L")
    assert f"{person.main_meal:%H:%M}" == "13:30"
    assert (person.may_go_low, person.ketone_risk) == (None, False)
    assert (person.acarbose, person.fluid_limit, person.helper) == (True, True, True)
    assert person.emergency_number == "999"
    assert person.educator == edu
    assert person.tell_educator
    assert "Ana" in room.texts("edu")[-1]
    assert person.id in room.say("edu", "ana")[0]


def test_second_invitation_does_not_ask_again_what_is_the_same(room: Classroom, edu: str) -> None:
    first = ["invite", "yes", "UTC", "mg/dL", "es", "ask them", "no", "no", "none", "112", "none"]
    room.says("edu", *first)
    assert "UTC, mg/dL, Español, 112" in room.says("edu", "invite", "yes")[0]
    [told] = room.says("edu", "yes", "ask them", "no", "no", "none", "none")
    assert "code is" in told
    [welcome] = room.say("ana", f"/start {code_of(told)}")
    assert "bienvenida" in welcome, "the language is the same as last time, too"


def test_odd_answers_are_asked_again_and_cancel_ends_it(room: Classroom, edu: str) -> None:
    room.says("edu", "invite", "yes")
    for odd in ("Atlantis", "🙂", "12", "a" * 300):
        assert "do not know that place" in room.say("edu", odd)[0]
    assert "Nothing was made" in room.say("edu", "cancel")[0]
    assert "Nothing is open" in room.say("edu", "cancel")[0]


def test_alert_can_be_marked_in_the_middle_of_an_invitation(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.says("edu", "invite", "yes")
    room.say("ana", "48")
    assert "marked as seen" in room.say("edu", "seen 1")[0]
    assert "meter" in room.say("edu", "UTC")[0], "the invitation goes on"


@pytest.mark.parametrize(
    ("unit", "text", "expected"),
    [
        ("mg/dL", "goals ana 90-150 180", (90, 150, 180)),
        ("mg/dL", "goals ana 70 to 95 120", (70, 95, 120)),
        ("mmol/L", "goals ana 5.0-8.3 10.0", (90.078, 149.52948, 180.156)),
        ("mg/dL", "goals ana 60-130 180", (80, 130, 180)),
        ("mg/dL", "goals ana 80-130 250", (80, 130, 180)),
        ("mg/dL", "goals ana 100-95 180", (80, 130, 180)),
        ("mg/dL", "goals ana 130", (80, 130, 180)),
        ("mmol/L", "goals ana 80-130 180", (80, 130, 180)),
    ],
)
def test_goals_within_safe_bounds_in_the_persons_own_unit(
    room: Classroom, edu: str, unit: str, text: str, expected: tuple[float, ...]
) -> None:
    room.participant("ana", edu, unit=Unit(unit))
    room.say("edu", text)
    goals = room.person("ANA").goals
    found = (goals.before_low, goals.before_high, goals.after_high)
    assert found == pytest.approx(expected)


def test_goals_are_told_to_the_participant_and_hold_at_once(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("edu", "goals ana 80-130 150")
    assert "below 150" in room.texts("ana")[-1]
    room.say("ana", "118, rice")
    room.passes(hours=2)
    assert "above your goal (below 150" in room.say("ana", "165")[0]


def test_limits_can_be_narrowed_only(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.says("edu", "low ana 78", "high ana 210", "low ana 65", "low ana 85", "high ana 260")
    limits = room.person("ANA").limits
    assert (limits.low, limits.high) == (78, 210)
    assert "15 g" in room.say("ana", "75")[0]


def test_plan_quietens_highs_alone_and_ends(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("edu", "plan ana")
    until = room.person("ANA").high_plan_until
    assert until is not None
    assert (until - room.now).days == 14
    room.say("edu", "end plan ana")
    assert room.person("ANA").high_plan_until is None


def test_step_waits_until_it_is_released(room: Classroom, edu: str) -> None:
    room.participant("ana", edu, may_go_low=True)
    assert "educator says first" in room.say("ana", "next step")[0]
    assert "Released: lighter meal" in room.say("edu", "release ana")[0]
    assert "lighter meal" in room.texts("ana")[-1]
    assert "Next step" in room.say("ana", "next step")[0]
    assert "educator says first" in room.say("ana", "next step")[0], "each step anew"


def test_release_after_a_low_asks_once_more(room: Classroom, edu: str) -> None:
    room.participant("ana", edu, may_go_low=True)
    room.says("ana", "62")
    assert "all the same" in room.say("edu", "release ana")[0]
    assert "Nothing was made" in room.say("edu", "no")[0]
    assert "educator says first" in room.say("ana", "next step")[0]
    room.says("edu", "release ana", "yes")
    assert "Next step" in room.say("ana", "next step")[0]


def test_note_reaches_the_participant_after_quiet_time_and_never_after_stop(
    room: Classroom, edu: str
) -> None:
    room.participant("ana", edu)
    room.say("edu", "note to ana: see you on {Monday}")
    assert "see you on {Monday}" in room.texts("ana")[-1]
    room.passes(hours=14)
    assert "06:30" in room.say("edu", "note ana: good night")[0]
    room.say("ana", "stop")
    before = len(room.texts("ana"))
    assert "silence" in room.say("edu", "note ana: hello")[0]
    assert len(room.texts("ana")) == before


def test_who_does_not_share_is_not_shown(room: Classroom, edu: str) -> None:
    room.participant("ana", edu, tell=False)
    room.says("ana", "48", "62")
    for text in ("ana", "meals ana", "chart ana", "steps ana"):
        [answer] = room.say("edu", text)
        assert "does not share values" in answer
    roster = room.say("edu", "roster")[0]
    assert "SHARE NO VALUES" in roster
    assert "very low" not in roster


def test_access_ends_when_the_participant_says_so(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("ana", "48")
    room.say("edu", "label ana Rosalinda")
    assert "sees nothing of yours" in room.say("ana", "No educator.")[0]
    assert "has left" in room.texts("edu")[-1]
    for text in ("ana", "rosalinda", "show ana", "goals ana 80-130 170", "note ana: hi"):
        [answer] = room.say("edu", text)
        assert "did not get" in answer or "nobody called" in answer
    assert "No alert" in room.say("edu", "alerts")[0]
    room.say("ana", "LO")
    room.passes(hours=3)
    assert not any("off the meter" in text for text in room.texts("edu"))
    assert "15 g" in room.say("ana", "50")[0] + room.texts("ana")[-2], "cautions stay"


def test_erasing_leaves_nothing_with_the_educator(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("edu", "label ana Rosalinda")
    room.says("ana", "48", "chest pain", "erase", "yes")
    assert "has left" in room.texts("edu")[-1]
    kept = _everything(room.store)
    for trace in ("Rosalinda", "48 mg/dL", "chest pain"):
        assert trace not in kept


def test_operators_erase_leaves_nothing_with_the_educator_either(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("edu", "label ana Rosalinda")
    room.say("ana", "48")
    with room.store.turn() as work:
        assert work.erase("ANA")
    kept = _everything(room.store)
    for trace in ("Rosalinda", "48 mg/dL", "ANA"):
        assert trace not in kept


def test_new_phone_of_an_educator_keeps_their_participants(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.passes(minutes=1)
    room.invite("AGAIN123", Invitation(role=Role.EDUCATOR, educator=edu))
    room.says("new", "/start AGAIN123", "yes")
    assert room.whose("new") == edu
    room.say("ana", "48")
    assert "very low" in room.texts("new")[-1]


def test_long_lists_are_paged(room: Classroom, edu: str) -> None:
    for number in range(19):
        room.participant(f"kim{number:02d}", edu)
    first = room.say("edu", "roster")[0]
    assert first.count("KIM") == 8
    assert room.last("edu").buttons[-1] == "roster 2"
    seen = first
    for page in ("roster 2", "roster 3"):
        seen += room.say("edu", page)[0]
    assert {f"KIM{number:02d}" for number in range(19)} == {
        word.strip(":") for word in seen.split() if word.startswith("KIM")
    }
    assert "roster 4" not in seen


def test_everything_an_educator_can_write_is_answered(room: Classroom, edu: str) -> None:
    room.participant("ana", edu)
    room.say("ana", "118, rice and beans")
    room.passes(hours=2)
    room.say("ana", "154")
    for told in ENGLISH.educator.wishes.values():
        for phrase in told:
            for text in (phrase, f"{phrase} ana", f"{phrase} 1", f"{phrase} ana 7", f"{phrase} ?"):
                assert room.say("edu", text), text
                room.say("edu", "cancel")
    assert room.parked() == []


def _everything(store: Store) -> str:
    rows: list[str] = []
    with store.turn() as work:
        for table in METADATA.sorted_tables:
            rows += [str(row) for row in work.connection.execute(select(table))]
    return "\n".join(rows)
