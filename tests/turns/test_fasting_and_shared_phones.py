"""Life as it is: fasting days that the educator releases, prompts for a phone that is shared."""

from datetime import date, time, timedelta

import pytest

from bot.entries import By
from bot.messages import Incoming
from bot.turns.hearing import hear
from bot.turns.turn import Opened
from tests.educator.classroom import MONDAY, Classroom
from tests.planning.living import person


@pytest.fixture
def room() -> Classroom:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ana", edu, may_go_low=None)
    return room


FAST = "fasting ana 2026-03-04 to 2026-03-10"


@pytest.mark.parametrize(
    "text",
    ["I want to fast next week", "may I fast?", "Ramadan begins on Friday", "fasting days"],
)
def test_a_wish_to_fast_goes_to_the_educator_and_is_not_granted_here(
    room: Classroom, text: str
) -> None:
    [said] = room.say("ana", text)
    assert "They say whether it is safe for you" in said
    assert "Until then please eat as usual" in said
    asked = room.last("edu").text
    assert "ANA asks about fasting days" in asked
    assert 'as in "fasting ANA 2026-03-03 to 2026-03-12"' in asked
    assert room.person("ANA").fast_from is None


def test_who_has_no_educator_or_shares_nothing_asks_for_themselves() -> None:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ben", edu, tell=False)
    before = len(room.letters("edu"))
    [said] = room.say("ben", "I want to fast")
    assert "I ask your educator" not in said
    assert len(room.letters("edu")) == before


def test_days_are_released_told_and_shown(room: Classroom) -> None:
    assert "ANA fasts from 2026-03-04 to 2026-03-10" in room.say("edu", FAST)[0]
    told = room.last("ana").text
    for words in (
        "you may fast from 2026-03-04 to 2026-03-10",
        "a test does not break the fast",
        "End the fast at once below 70 (3.9), from 300 (16.7), or if you feel unwell",
    ):
        assert words in told
    person = room.person("ANA")
    assert (person.fast_from, person.fast_to) == (date(2026, 3, 4), date(2026, 3, 10))
    assert "fasting days 2026-03-04 to 2026-03-10" in room.say("edu", "ana")[0]
    assert "has agreed that you fast" in room.say("ana", "I am fasting")[0]


@pytest.mark.parametrize(
    "dates",
    [
        "2026-03-01 to 2026-03-05",  # begins before today
        "2026-03-10 to 2026-03-04",
        "2026-03-04 to 2026-04-20",  # longer than forty days
        "2026-02-30 to 2026-03-04",
        "2026-03-04",
        "next week",
    ],
)
def test_other_days_are_refused(room: Classroom, dates: str) -> None:
    assert (
        "begin today or later and last up to 40 days" in room.say("edu", f"fasting ana {dates}")[0]
    )
    assert room.person("ANA").fast_from is None


@pytest.mark.parametrize("text", ["62", "48", "LO", "320", "HI", "I feel shaky"])
def test_on_a_fasting_day_a_caution_ends_the_fast(room: Classroom, text: str) -> None:
    room.say("edu", FAST)
    room.go_to(MONDAY + timedelta(days=2, hours=3))
    said = room.say("ana", text)
    assert "You are fasting: end the fast now." in said[0]
    assert not said[0].startswith("You are fasting"), "what to do comes first"
    if text != "HI":
        assert "care team" in said[0].split("end the fast now.")[1], "and the care team last"


@pytest.mark.parametrize("text", ["62", "320", "I feel shaky"])
def test_on_any_other_day_it_says_nothing_of_a_fast(room: Classroom, text: str) -> None:
    room.say("edu", FAST)
    assert "fast now" not in " ".join(room.say("ana", text))
    room.go_to(MONDAY + timedelta(days=9, hours=3))
    assert "fast now" not in " ".join(room.say("ana", text))


def test_a_helper_reads_it_of_the_person() -> None:
    fasting = person(MONDAY, fast_from=MONDAY.date(), fast_to=MONDAY.date())
    opened = Opened(participant=fasting, events=(), last_id=0, whole=tuple)
    told = Incoming(update=1, chat="ana", message="1", at=MONDAY, text="62", by=By.HELPER)
    said = hear(opened, told, now=MONDAY).says[0].text
    assert "They are fasting: end the fast now." in said
    assert "You are fasting" not in said


def test_an_emergency_says_nothing_else(room: Classroom) -> None:
    room.say("edu", FAST)
    room.go_to(MONDAY + timedelta(days=2, hours=3))
    assert "end the fast" not in room.say("ana", "chest pain")[0]


def test_no_test_is_asked_for_before_a_main_meal_that_is_not_eaten() -> None:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ana", edu, main_meal=time(13), may_go_low=None)
    room.say("edu", FAST)
    room.go_to(MONDAY + timedelta(days=10))
    asked = {
        letter.due_at.date().isoformat()
        for letter in room.letters("ana")
        if letter.about == "before_meal"
    }
    assert asked & {f"2026-03-{day:02d}" for day in range(4, 11)} == set()
    assert {"2026-03-02", "2026-03-03", "2026-03-11"} <= asked


@pytest.mark.parametrize("text", ["stop fasting", "I broke my fast", "end my fast"])
def test_the_participant_ends_the_days(room: Classroom, text: str) -> None:
    room.say("edu", FAST)
    assert "no fasting days any more" in room.say("ana", text)[0]
    assert room.person("ANA").fast_to is None
    assert "no fasting days here" in room.say("ana", text)[0]


def test_the_educator_ends_the_days(room: Classroom) -> None:
    room.say("edu", FAST)
    assert "no fasting days any more" in room.say("edu", "fasting ana off")[0]
    assert "Please eat as usual" in room.last("ana").text
    assert room.person("ANA").fast_from is None


@pytest.mark.parametrize("text", ["fasting 104", "104 fasting", "broke my fast with 3 dates, 118"])
def test_a_value_told_while_fasting_is_a_value(room: Classroom, text: str) -> None:
    assert "Talk with your care team" not in " ".join(room.say("ana", text))
    with room.store.turn() as work:
        events = work.events("ANA")
    assert any(getattr(event.body, "value", None) in (104.0, 118.0) for event in events)


# ── A shared phone ───────────────────────────────────────────────────────────


@pytest.mark.parametrize("text", ["discreet", "My phone is shared.", "others read my phone"])
def test_prompts_name_nothing_on_request_until_told_otherwise(room: Classroom, text: str) -> None:
    assert "name no food, no test and no number" in room.say("ana", text)[0]
    room.say("ana", "118, mango")
    room.passes(hours=2)
    prompt = room.last("ana").text
    assert prompt == "It is time. Please text me when you can."
    assert "what to do" in room.say("ana", "normal prompts")[0]
    room.passes(minutes=15)
    assert "mango" in room.last("ana").text
    assert room.person("ANA").discreet is False


def test_cautions_are_never_discreet(room: Classroom) -> None:
    room.say("ana", "discreet")
    assert "15 g" in room.say("ana", "62")[0]


def test_spanish_words_do_the_same() -> None:
    room = Classroom()
    room.participant("ana", room.educator("edu"), language="es")
    assert "mis avisos" in room.say("ana", "comparto mi teléfono")[0]
    assert room.person("ANA").discreet
    assert "equipo de salud" in room.say("ana", "quiero ayunar en ramadán")[0]
