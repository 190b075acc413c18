"""An educator joins: the rules, working hours, a deputy. Nothing is kept before the yes."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from bot.educator.educator import Educator, Hours
from bot.localtime import fixed, zone_named
from bot.messages import Incoming, Kind, Saying
from bot.participants import Enrolment, Invitation
from bot.turns.enrolling import code_in
from bot.turns.teaching_desk import Welcoming
from bot.turns.teaching_reading import hours_of, plain
from bot.words.educator import EducatorSentences
from bot.words.educator_lines import hours_words
from bot.words.language import language

CONSENT, ZONE, HOURS = "consent", "zone", "hours"
#: What waits for an answer that never came is not worth sending after it.
REPLY_KEEPS = timedelta(minutes=60)


def welcome(
    enrolment: Enrolment | None,
    invitation: Invitation,
    incoming: Incoming,
    *,
    now: datetime,
    new_id: str,
    clock_speed: float = 1,
    existing: Educator | None = None,
) -> Welcoming:
    """Take one message of a chat that joins by an educator's code.

    `new_id` becomes the educator's if the message completes joining. `existing`: the code is for
    somebody who is one already and has another chat now.
    """
    say = language(invitation.language).educator

    def says(text: str, buttons: tuple[str, ...] = (), to: str | None = None) -> tuple[Saying, ...]:
        saying = Saying(
            to=to or f"chat:{incoming.chat}",
            kind=Kind.REPLY,
            text=text,
            key=f"reply:{incoming.update}",
            due_at=now,
            expires_at=now + REPLY_KEEPS,
            buttons=buttons,
        )
        return (saying,)

    if not incoming.private:
        return Welcoming(says=says(say.private_only))
    code = code_in(incoming.text)
    if code is not None or enrolment is None:
        opened = Enrolment(stage=CONSENT, known=(("code", code or ""),))
        text = f"{say.welcome}\n\n{say.consent_question}"
        if clock_speed > 1:
            text = say.speed.format(speed=f"{clock_speed:g}") + "\n\n" + text
        return Welcoming(enrolment=opened, says=says(text, say.yes_no))
    answer = _answer(enrolment.stage, incoming.text, say)
    if answer is None:
        text, buttons = _again(enrolment.stage, say)
        return Welcoming(enrolment=enrolment, says=says(text, buttons))
    if enrolment.stage == CONSENT and answer == "no":
        return Welcoming(says=says(say.declined))
    if existing is not None:
        text = say.joined_again.format(hours=hours_words(existing, say))
        again = replace(existing, talk=None)
        return Welcoming(educator=again, says=says(text, to=existing.id), used=True)
    known = (*enrolment.known, (enrolment.stage, answer))
    told = dict(known)
    if ZONE not in told and invitation.zone is None:
        return Welcoming(enrolment=Enrolment(stage=ZONE, known=known), says=says(say.zone))
    if HOURS not in told:
        question = says(say.hours_question, say.hours_buttons)
        return Welcoming(enrolment=Enrolment(stage=HOURS, known=known), says=question)
    educator = _educator(told, invitation, now, new_id)
    text = "\n".join(
        (
            say.joined.format(id=new_id, hours=hours_words(educator, say)),
            say.deputy_question,
        )
    )
    asked = replace(educator, talk=Enrolment(stage="deputy"))
    return Welcoming(educator=asked, says=says(text, say.special_buttons[:1], to=new_id), used=True)


def _answer(stage: str, text: str, say: EducatorSentences) -> str | None:
    if stage == CONSENT:
        words = plain(text)
        return "yes" if words in say.yes else "no" if words in say.no else None
    if stage == ZONE:
        return zone_named(text)
    return text if hours_of(text, say, Hours()) is not None else None


def _again(stage: str, say: EducatorSentences) -> tuple[str, tuple[str, ...]]:
    if stage == CONSENT:
        return say.yes_or_no, say.yes_no
    return (say.zone_unknown, ()) if stage == ZONE else (say.hours_unknown, say.hours_buttons)


def _educator(
    told: Mapping[str, str], invitation: Invitation, now: datetime, new_id: str
) -> Educator:
    say = language(invitation.language).educator
    zone = invitation.zone or told[ZONE]
    hours = hours_of(told[HOURS], say, Hours())
    return Educator(
        id=new_id,
        zone=zone,
        joined_at=fixed(now, zone),
        language=invitation.language,
        hours=hours or Hours(),
    )
