"""Joining, as a state table: code, consent, the educator's word, what the invitation left open.

Nothing is kept before the yes but the code and the question that is open. Each stage has a
reader for its answer; an answer that it cannot read is asked for again.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.entries import Meal
from bot.localtime import at_local, fixed, in_zone, shifted, zone_named
from bot.messages import Incoming, Kind, Saying
from bot.parser import read
from bot.participants import Enrolment, Invitation, Participant
from bot.planning.agenda import next_wake
from bot.planning.quiet import is_quiet
from bot.record import Event, Spoke, fold
from bot.turns.turn import Joining
from bot.units import Unit
from bot.words.enrolling import EnrolSentences, joined_words
from bot.words.language import language

CODE = re.compile(
    r"^/start(?:@\w+)?\s+([A-Za-z0-9_-]{6,64})\s*$|^\s*([A-Z0-9]{4}(?:-[A-Z0-9]{4})+)\s*$"
)
AGE = re.compile(
    r"\b(?:i am|i'm|im|age)\s+(\d{1,2})\b|\b(\d{1,2})\s*(?:years old|yrs old|yo)\b"
    r"|\btengo\s+(\d{1,2})(?:\s+a[ñn]os\b(?!\s+(?:con|de)\s+diab)|\s*(?:$|[,.!]))",
    re.I,
)
ADULT = 18

CONSENT, TELL, UNIT, ZONE, MEAL, LOWS, KETONES = (
    "consent",
    "tell_educator",
    "unit",
    "zone",
    "main_meal",
    "may_go_low",
    "ketone_risk",
)


def code_in(text: str) -> str | None:
    """The invitation's code in `/start CODE` or in a message that is nothing but a code."""
    found = CODE.match(text.strip())
    return (found.group(1) or found.group(2)) if found else None


@dataclass(frozen=True, slots=True)
class _Stage:
    """A question, its buttons, the reader of its answer, and what to say to one it cannot read."""

    question: Callable[[EnrolSentences], str]
    buttons: Callable[[EnrolSentences], tuple[str, ...]]
    answer: Callable[[str, datetime, EnrolSentences], str | None]
    again: Callable[[EnrolSentences], str]


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("\u2019", "'").strip(" .!¡¿").split())


def _yes_no(text: str, _at: datetime, say: EnrolSentences) -> str | None:
    plain = _plain(text)
    if plain in say.yes:
        return "yes"
    return "no" if plain in say.no else None


def _yes_no_unknown(text: str, at: datetime, say: EnrolSentences) -> str | None:
    return "unknown" if _plain(text) in say.unknown else _yes_no(text, at, say)


def _unit(text: str, _at: datetime, _say: EnrolSentences) -> str | None:
    plain = _plain(text)
    if "mmol" in plain:
        return Unit.MMOL_L.value
    return Unit.MG_DL.value if "mg" in plain else None


def _zone(text: str, _at: datetime, _say: EnrolSentences) -> str | None:
    return zone_named(text)


def _main_meal(text: str, at: datetime, say: EnrolSentences) -> str | None:
    if _plain(text) in say.no_main_meal:
        return "none"
    return clock_of(text, at)


def clock_of(text: str, at: datetime) -> str | None:
    """A clock time told alone, as HH:MM."""
    # The reader knows clock times inside a report; so the answer is made into one.
    says_at = _plain(text).startswith(("at ", "a la"))
    told = read(f"ate rice {'' if says_at else 'at '}{text}", at=at, unit=Unit.MG_DL)
    for entry in told.entries:
        if isinstance(entry, Meal) and entry.started_at is not None and entry.started_at != at:
            return f"{entry.started_at:%H:%M}"
    return None


STAGES: Mapping[str, _Stage] = {
    CONSENT: _Stage(
        lambda say: say.consent_question,
        lambda say: say.consent_buttons,
        _yes_no,
        lambda say: say.yes_or_no,
    ),
    TELL: _Stage(
        lambda say: say.tell_educator, lambda say: say.yes_no, _yes_no, lambda say: say.yes_or_no
    ),
    UNIT: _Stage(lambda say: say.unit, lambda say: say.unit_buttons, _unit, lambda say: say.unit),
    ZONE: _Stage(lambda say: say.zone, lambda say: (), _zone, lambda say: say.zone_unknown),
    MEAL: _Stage(
        lambda say: say.main_meal, lambda say: (), _main_meal, lambda say: say.main_meal_unknown
    ),
    LOWS: _Stage(
        lambda say: say.may_go_low,
        lambda say: say.yes_no_unknown,
        _yes_no_unknown,
        lambda say: say.may_go_low,
    ),
    KETONES: _Stage(
        lambda say: say.ketone_risk,
        lambda say: say.yes_no_unknown,
        _yes_no_unknown,
        lambda say: say.ketone_risk,
    ),
}


def _open_stages(invitation: Invitation) -> tuple[str, ...]:
    """The questions after consent, in order: only what the invitation left open."""
    left_open = (
        (UNIT, invitation.unit is None),
        (ZONE, invitation.zone is None),
        (MEAL, invitation.main_meal is None),
        (LOWS, invitation.may_go_low is None),
        (KETONES, invitation.ketone_risk is None),
    )
    return (TELL, *(stage for stage, is_open in left_open if is_open))


def join(
    enrolment: Enrolment | None,
    invitation: Invitation | None,
    incoming: Incoming,
    *,
    now: datetime,
    new_id: str,
    clock_speed: float = 1,
    group_told: bool = False,
) -> Joining:
    """Take one message of a chat that belongs to nobody yet.

    `invitation` is the one of the code in the message or in `enrolment`; None if that code is
    unknown, used or too old. `new_id` becomes the participant's if the message completes joining.
    """
    say = language(invitation.language if invitation else "en").enrolling
    talk = _Talk(incoming, now, say)
    if not incoming.private:  # said once in a group, and nothing kept of it
        return Joining() if group_told else Joining(says=(talk.say(say.private_only),))
    if invitation is None:
        told_code = code_in(incoming.text) is not None or enrolment is not None
        return Joining(says=(talk.say(say.bad_code if told_code else say.no_code),))
    code = code_in(incoming.text)
    if code is not None or enrolment is None:
        opened = Enrolment(stage=CONSENT, known=(("code", code or ""),))
        welcome = [say.welcome, say.consent_question]
        if clock_speed > 1:
            welcome.insert(0, say.speed.format(speed=f"{clock_speed:g}"))
        return Joining(
            enrolment=opened, says=(talk.say("\n\n".join(welcome), say.consent_buttons),)
        )
    return _answer(enrolment, invitation, talk, new_id)


@dataclass(frozen=True, slots=True)
class _Talk:
    incoming: Incoming
    now: datetime
    words: EnrolSentences

    def say(self, text: str, buttons: tuple[str, ...] = (), to: str | None = None) -> Saying:
        return Saying(
            to=to or f"chat:{self.incoming.chat}",
            kind=Kind.REPLY,
            text=text,
            key=f"reply:{self.incoming.update}",
            due_at=self.now,
            expires_at=self.now + timedelta(minutes=60),
            buttons=buttons,
        )


def _answer(enrolment: Enrolment, invitation: Invitation, talk: _Talk, new_id: str) -> Joining:
    say, text = talk.words, talk.incoming.text
    age = AGE.search(text)
    if age is not None and int(next(filter(None, age.groups()))) < ADULT:
        return Joining(says=(talk.say(say.too_young),))
    stage = STAGES[enrolment.stage]
    answer = stage.answer(text, talk.now, say)
    if answer is None:
        return Joining(enrolment=enrolment, says=(talk.say(stage.again(say), stage.buttons(say)),))
    if enrolment.stage == CONSENT and answer == "no":
        return Joining(says=(talk.say(say.declined),))
    known = (*enrolment.known, (enrolment.stage, answer))
    answered = {name for name, _ in known}
    for name in _open_stages(invitation):
        if name not in answered:
            following = STAGES[name]
            question = talk.say(following.question(say), following.buttons(say))
            return Joining(enrolment=Enrolment(stage=name, known=known), says=(question,))
    return _enrol(dict(known), invitation, talk, new_id)


def _enrol(known: Mapping[str, str], invitation: Invitation, talk: _Talk, new_id: str) -> Joining:
    zone = invitation.zone or known[ZONE]
    person = Participant(
        id=new_id,
        unit=invitation.unit or Unit(known[UNIT]),
        zone=zone,
        joined_at=fixed(talk.now, zone),
        consent=talk.words.consent_version,
        language=invitation.language,
        quiet_from=invitation.quiet_from,
        quiet_to=invitation.quiet_to,
        main_meal=invitation.main_meal or _clock(known.get(MEAL, "none")),
        may_go_low=_known(invitation.may_go_low, known.get(LOWS)),
        ketone_risk=_known(invitation.ketone_risk, known.get(KETONES)),
        emergency_number=invitation.emergency_number,
        tell_educator=known[TELL] == "yes",
        educator=invitation.educator,
        fluid_limit=invitation.fluid_limit,
        acarbose=invitation.acarbose,
        helper=invitation.helper,
    )
    text = joined_words(person, quiet_meal=_test_in_quiet(person, talk.now), say=talk.words)
    saying = talk.say(text, to=new_id)
    spoke = Spoke(kind=saying.kind, about=None, key=saying.key)
    event = Event(id=1, at=person.joined_at, body=spoke)
    return Joining(
        participant=person,
        events=(event,),
        says=(replace(saying, due_at=in_zone(talk.now, zone)),),
        wake_at=next_wake(fold(person, (event,)), talk.now),
        used=True,
    )


def _clock(answer: str) -> time | None:
    return None if answer == "none" else time.fromisoformat(answer)


def _known(invited: bool | None, answer: str | None) -> bool | None:
    if invited is not None or answer is None:
        return invited
    return {"yes": True, "no": False}.get(answer)


def _test_in_quiet(person: Participant, now: datetime) -> bool:
    """Whether the two-hour test of the usual meal would fall into quiet time."""
    if person.main_meal is None:
        return False
    today = now.astimezone(ZoneInfo(person.zone)).date()
    meal = at_local(today, person.main_meal, person.zone)
    return is_quiet(person, shifted(meal, timedelta(minutes=120)))
