"""Who set which goals and limits, and when: kept in the participant's own record.

Each setting is a request of the settings kind, as a step's release is, so that it is kept, taken
out, brought in and erased with the rest of the record.
"""

import json
from bisect import bisect_right
from collections.abc import Callable, Iterator
from dataclasses import asdict, dataclass, replace
from datetime import datetime
from typing import Any

from bot.entries import Request, What
from bot.participants import Goals, Limits, Participant
from bot.record import Record

#: The setting under which goals are kept among the requests.
SETTING = "goals"


@dataclass(frozen=True, slots=True, kw_only=True)
class GoalsSet:
    """Goals and limits in mg/dL, in force from `at`. `by`: the public id of the educator who set
    them; None for those at joining."""

    at: datetime
    by: str | None
    goals: Goals
    limits: Limits


def check(request: Request) -> None:
    """Refuse a setting that came some other way and is none. Raises KeyError, TypeError or
    ValueError."""
    if request.what is What.SETTINGS and request.setting == SETTING:
        told = json.loads(request.setting_value or "")
        for values in (told["was"], told["now"]):
            _of(values)
        if not isinstance(told["by"], str):
            raise TypeError("`by` is no public id")


def as_request(before: Participant, after: Participant, by: str) -> Request:
    """The setting as the record keeps it: what was set, and what stood until then."""
    told = {"by": by, "was": _values(before), "now": _values(after)}
    return Request(what=What.SETTINGS, setting=SETTING, setting_value=json.dumps(told))


def goals_set(record: Record) -> tuple[GoalsSet, ...]:
    """All goals that have been in force since joining, in order; the last are in force now.

    `record` must be the whole one. Goals that came in without a history count from joining.
    """
    person = record.participant
    kept = list(_kept(record))
    first = _of(kept[0][1]["was"]) if kept else (person.goals, person.limits)
    found = [GoalsSet(at=person.joined_at, by=None, goals=first[0], limits=first[1])]
    for at, told in kept:
        goals, limits = _of(told["now"])
        found.append(GoalsSet(at=at, by=told["by"], goals=goals, limits=limits))
    return tuple(found)


def person_then(record: Record) -> Callable[[datetime], Participant]:
    """The participant as they are, with the goals and limits that were in force at an instant.

    `record` must be the whole one.
    """
    person, (*earlier, latest) = record.participant, goals_set(record)
    ends = [one.at.timestamp() for one in (*earlier[1:], latest)]

    def then(moment: datetime) -> Participant:
        place = bisect_right(ends, moment.timestamp())
        if place >= len(earlier):
            return person
        return replace(person, goals=earlier[place].goals, limits=earlier[place].limits)

    return then


def _kept(record: Record) -> Iterator[tuple[datetime, dict[str, Any]]]:
    for noted in record.requests:
        entry = noted.entry
        if entry.what is What.SETTINGS and entry.setting == SETTING and entry.setting_value:
            yield noted.at, json.loads(entry.setting_value)


def _values(person: Participant) -> dict[str, Any]:
    return {"goals": asdict(person.goals), "limits": asdict(person.limits)}


def _of(told: dict[str, Any]) -> tuple[Goals, Limits]:
    return Goals(**told["goals"]), Limits(**told["limits"])
