"""What an educator reads depends on nothing that is said to somebody else's bot.

The same story is played twice; only the values, words and names of participants who are not the
educator's differ. What the educator reads must be the same, to the letter. The other educator
has named this one as deputy, so that alerts pass between them too.
"""

from dataclasses import dataclass

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.educator.classroom import Classroom


@dataclass(frozen=True)
class Secret:
    """What somebody else's participant tells, in two versions of one urgency."""

    very_low: str
    low: str
    fine: str
    food: str
    symptom: str
    label: str


ONE = Secret("43", "61", "118", "mango", "shaky", "Rosalinda")
OTHER = Secret("51", "67", "97", "yam", "sweaty", "Bartholomew")

#: What can happen. Texts of the watched educator are the same in both versions.
EVENTS = st.lists(
    st.sampled_from(
        [
            "theirs very_low",
            "theirs low",
            "theirs fine",
            "theirs meal",
            "theirs symptom",
            "theirs unwell",
            "theirs leaves",
            "mine fine",
            "mine very_low",
            "watch roster",
            "watch alerts",
            "watch show zoe",
            "watch show ben",
            "watch meals ben",
            "watch chart ben",
            "watch note ben: hello",
            "watch goals ben 80-130 170",
            "watch release ben",
            "watch label ben Benny",
            "watch group",
            "watch seen",
            "watch seen 1",
            "watch closed 1 OTHER",
            "watch seen 1 OTHER",
            "watch Rosalinda",
            "watch Bartholomew",
            "other seen 1",
            "other goals ben 80-120 170",
            "pass 20",
            "pass 45",
            "pass 600",
        ]
    ),
    max_size=14,
)


#: There is always something to find, and the watched educator always looks for it.
FIRST = ("theirs very_low", "theirs fine", "pass 45")
LAST = (
    "watch roster",
    "watch alerts",
    "watch show ben",
    "watch meals ben",
    "watch chart ben",
    "watch steps ben",
    "watch goals ben",
    "watch group",
    "watch Rosalinda",
    "watch Bartholomew",
)


def played(events: list[str], secret: Secret, room: Classroom | None = None) -> list[str]:
    """The story with this version of the other's secrets: what the watched educator reads."""
    room = room or Classroom()
    watched, other = room.educator("watch"), room.educator("other")
    room.participant("zoe", watched)
    room.participant("ben", other, may_go_low=True)
    room.say("other", f"label ben {secret.label}")
    room.say("other", f"deputy {watched}")
    room.say("watch", f"accept {other}")
    for event in (*FIRST, *events, *LAST):
        who, _, what = event.partition(" ")
        if who == "pass":
            room.passes(minutes=int(what))
        elif who == "theirs":
            room.say("ben", _told(what, secret))
        elif who == "mine":
            room.say("zoe", "47" if what == "very_low" else "126, bread")
        else:
            room.say(who, what.replace("OTHER", other))
    room.passes(hours=30)
    assert room.parked() == []
    return room.texts("watch")


def _told(what: str, secret: Secret) -> str:
    return {
        "very_low": secret.very_low,
        "low": secret.low,
        "fine": f"{secret.fine}, {secret.food}",
        "meal": f"ate {secret.food}",
        "symptom": secret.symptom,
        "unwell": "chest pain",
        "leaves": "no educator",
    }[what]


@settings(max_examples=25)
@given(EVENTS)
def test_nothing_of_somebody_elses_participant_reaches_an_educator(events: list[str]) -> None:
    read = played(events, ONE)
    assert read == played(events, OTHER)
    shows_nothing_of_theirs(read)


def shows_nothing_of_theirs(read: list[str]) -> None:
    """No word of the first version of the secrets is among what was read."""
    for text in read:
        for word in (ONE.label, ONE.food, ONE.symptom, f"{ONE.very_low} mg", f"{ONE.low} mg"):
            answered = f'"{word}"' in text  # the educator's own words, said back
            assert answered or word not in text


def test_the_story_reaches_the_watched_educator_at_all() -> None:
    """The check above would see nothing if alerts never came."""
    read = played(["theirs very_low", "pass 45", "mine very_low"], ONE)
    assert any("You are the deputy" in text for text in read)
    assert any("47 mg/dL" in text for text in read)


def test_secrets_do_reach_their_own_educator() -> None:
    """And it would see nothing if nobody were ever told a value."""
    room = Classroom()
    room.participant("ben", room.educator("other"))
    room.say("other", f"label ben {ONE.label}")
    room.say("ben", ONE.very_low)
    assert f"{ONE.very_low} mg/dL" in room.texts("other")[-1]
    assert ONE.label in room.texts("other")[-1]
