"""Joining as a talk: a code, a yes, the educator's word, and only what was left open."""

from datetime import UTC, datetime, time

from bot.messages import Incoming
from bot.participants import Enrolment, Invitation, Participant
from bot.turns.enrolling import code_in, join
from bot.turns.turn import Joining
from bot.units import Unit
from bot.words.language import ENGLISH
from tests.replay.told import Story, of_type, texts

NOW = datetime(2026, 3, 2, 10, 0, tzinfo=UTC)
ALL_KNOWN = Invitation(
    zone="Europe/Lisbon",
    unit=Unit.MG_DL,
    main_meal=time(13, 0),
    may_go_low=False,
    ketone_risk=False,
)


def talk(invitation: Invitation | None, *said: str) -> Joining:
    """Say these one after the other; what the last one brought about."""
    enrolment: Enrolment | None = None
    for number, text in enumerate(said):
        incoming = Incoming(update=number, chat="7", message=str(number), at=NOW, text=text)
        brought = join(enrolment, invitation, incoming, now=NOW, new_id="NEW")
        enrolment = brought.enrolment
    return brought


def joined(invitation: Invitation, *said: str) -> Participant:
    """The participant that a talk ends in."""
    participant = talk(invitation, *said).participant
    assert participant is not None
    return participant


def test_a_code_is_found_behind_start_and_alone() -> None:
    assert code_in("/start ABCD-EFGH-JKMN") == "ABCD-EFGH-JKMN"
    assert code_in("ABCD-EFGH-JKMN") == "ABCD-EFGH-JKMN"
    assert code_in("118, rice") is None


def test_two_answers_are_enough_where_the_invitation_knows_the_rest() -> None:
    person = joined(ALL_KNOWN, "/start ABCD-EFGH-JKMN", "yes", "no")
    assert (person.unit, person.zone, person.tell_educator) == (Unit.MG_DL, "Europe/Lisbon", False)
    assert person.consent == ENGLISH.enrolling.consent_version


def test_only_what_was_left_open_is_asked_and_unknown_counts_as_yes() -> None:
    person = joined(
        Invitation(), "/start ABCD-EFGH-JKMN", "yes", "yes", "mmol", "Nairobi", "19:30",
        "don't know", "no",
    )  # fmt: skip
    assert (person.unit, person.zone, person.main_meal) == (
        Unit.MMOL_L,
        "Africa/Nairobi",
        time(19, 30),
    )
    assert (person.may_go_low, person.ketone_risk) == (None, False)
    assert person.can_go_low
    assert person.needs_release


def test_nothing_is_kept_after_a_no_nor_of_somebody_below_18() -> None:
    for answer, words in (
        ("no", ENGLISH.enrolling.declined),
        ("I am 16", ENGLISH.enrolling.too_young),
    ):
        ended = talk(ALL_KNOWN, "/start ABCD-EFGH-JKMN", answer)
        assert (ended.enrolment, ended.participant, ended.used) == (None, None, False)
        assert ended.says[0].text == words


def test_without_a_code_it_says_how_to_get_one_and_keeps_nothing() -> None:
    met = talk(None, "hello")
    assert met.says[0].text == ENGLISH.enrolling.no_code
    assert met.enrolment is None


def test_a_declared_pregnancy_ends_the_judging_of_goals_and_keeps_the_cautions() -> None:
    played = (
        Story()
        .says("09:00", "I'm pregnant")
        .says("12:00", "150 before, rice")
        .says("14:00", "52")
        .passes("14:01")
        .play()
    )
    said, reply = texts(played, "reply")
    assert "Call your care team today" in said
    assert "not judged" in reply
    assert [line["before_in_goal"] for line in of_type(played, "pair")] == [None]
    assert next(iter(texts(played, "caution"))).startswith("Take 15 g")
