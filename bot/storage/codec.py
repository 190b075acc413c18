"""Frozen nouns to JSON and back, kept-aside fields included.

Fields that a newer version added are ignored when read, so that two versions can work side by
side during an upgrade.
"""

import re
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, datetime, timedelta, timezone
from functools import lru_cache
from typing import Any, get_args

from pydantic import TypeAdapter

from bot.messages import Saying
from bot.participants import Enrolment, Invitation, Participant
from bot.record import Body, Event

EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
MILLISECOND = timedelta(milliseconds=1)

_PARTICIPANT = TypeAdapter(Participant)
_INVITATION = TypeAdapter(Invitation)
_ENROLMENT = TypeAdapter(Enrolment)
_JSON: TypeAdapter[dict[str, Any]] = TypeAdapter(dict[str, Any])


def _kind_of(kind: type) -> str:
    return re.sub(r"(?<!^)(?=[A-Z])", "_", kind.__name__).lower()


_KINDS: Mapping[type, str] = {kind: _kind_of(kind) for kind in get_args(Body)}
_BODIES: Mapping[str, TypeAdapter[Any]] = {name: TypeAdapter(kind) for kind, name in _KINDS.items()}
#: Straight to what writes and reads: the adapter's own methods take as long again.
_READ_PARTICIPANT: Callable[[str], Participant] = _PARTICIPANT.validator.validate_json
_WRITE = {name: adapter.serializer.to_json for name, adapter in _BODIES.items()}
_READ = {name: adapter.validator.validate_json for name, adapter in _BODIES.items()}


def to_ms(moment: datetime) -> int:
    """UTC milliseconds since 1970; what is finer is cut off."""
    return (moment - EPOCH) // MILLISECOND


def from_ms(ms: int, offset_s: int = 0) -> datetime:
    """The instant, on a clock with this offset in seconds from UTC."""
    return _epoch(offset_s) + MILLISECOND * ms


def offset_of(moment: datetime) -> int:
    """The offset from UTC in whole seconds."""
    offset = moment.utcoffset()
    return 0 if offset is None else round(offset.total_seconds())


@lru_cache(maxsize=256)
def _epoch(offset_s: int) -> datetime:
    return EPOCH.astimezone(timezone(timedelta(seconds=offset_s))) if offset_s else EPOCH


def event_row(participant: str, event: Event) -> dict[str, Any]:
    """An event as a row of `entry`."""
    kind = _KINDS[type(event.body)]
    return {
        "participant": participant,
        "id": event.id,
        "at_ms": to_ms(event.at),
        "offset_s": offset_of(event.at),
        "message": event.message,
        "mends": event.mends,
        "kind": kind,
        "body": _WRITE[kind](event.body).decode(),
    }


def event_of(row: Sequence[Any]) -> Event:
    """A row of `statements.EVENT` as an event."""
    id_, at_ms, offset_s, message, mends, kind, body = row
    return Event(
        id=id_,
        at=from_ms(at_ms, offset_s),
        message=message,
        mends=mends,
        body=_READ[kind](body),
    )


def participant_json(participant: Participant) -> str:
    """A participant as JSON."""
    return _PARTICIPANT.dump_json(participant).decode()


@lru_cache(maxsize=256)
def participant_of(body: str) -> Participant:
    """A participant from JSON."""
    return _READ_PARTICIPANT(body)


def invitation_json(invitation: Invitation) -> str:
    """An invitation as JSON."""
    return _INVITATION.dump_json(invitation).decode()


def invitation_of(body: str) -> Invitation:
    """An invitation from JSON."""
    return _INVITATION.validate_json(body)


def enrolment_json(enrolment: Enrolment) -> str:
    """An enrolment as JSON."""
    return _ENROLMENT.dump_json(enrolment).decode()


def enrolment_of(body: str) -> Enrolment:
    """An enrolment from JSON."""
    return _ENROLMENT.validate_json(body)


def extras_json(saying: Saying) -> str | None:
    """What a saying carries beside its text, as JSON; None for a plain one."""
    extras: dict[str, Any] = {}
    if saying.picture is not None:
        extras["picture"] = dict(saying.picture)
    if saying.buttons:
        extras["buttons"] = list(saying.buttons)
    if saying.attachment is not None:
        extras["attachment"] = saying.attachment
    return _JSON.dump_json(extras).decode() if extras else None


def extras_of(body: str | None) -> dict[str, Any]:
    """What a saying carries beside its text."""
    return _JSON.validate_json(body) if body else {}
