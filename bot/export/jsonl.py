"""A whole record as JSON lines, from which `bot.export.back` makes it again.

A line of type `goal` holds the goals in force, since when (`at`) and who set them (`by`), and all
that were in force before under `history`; both are for whoever reads the file, and come back from
what is kept.

Every line but those of type `participant` and `goal` is a line of the replay's record.jsonl,
unchanged. What the record needs beside them stands in the participant's own line under `kept`:

- `lines`: for each entry line in its order the entry's `id`, when it was said (`at`), the chat's
  id of the `message`, and for what was told as a meal the `meal` as the sums know it (foods with
  their kinds). Derived lines (`pair`, `activity_effect`) have none.
- `talk`: what is no entry but bears on the digests and on what may still be said: what the bot
  said (its kind and level, never its words), what it asked, what was asked of it.
- `last_id`: the number after which the next entry counts on.
"""

import json
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from pydantic import TypeAdapter

from bot.educator.goal_log import GoalsSet, goals_set
from bot.entries import Meal, Request
from bot.export.lines import Line, entries_in_order, record_lines
from bot.localtime import in_zone, iso
from bot.participants import Goals, Limits, Participant
from bot.record import Noted, Record, Spoke, Wondered, Wrote

PARTICIPANT = TypeAdapter(Participant)
GOALS = TypeAdapter(Goals)
LIMITS = TypeAdapter(Limits)
MEAL = TypeAdapter(Meal)

#: What is no line of the record, by the name of its kind.
TALK: Mapping[str, TypeAdapter[Any]] = {
    "spoke": TypeAdapter(Spoke),
    "request": TypeAdapter(Request),
    "wrote": TypeAdapter(Wrote),
    "wondered": TypeAdapter(Wondered),
}


def export_lines(record: Record) -> Iterator[Line]:
    """Everything that stands for one participant: who they are, their goals, their record."""
    person = record.participant
    told = PARTICIPANT.dump_python(person, mode="json", exclude={"id", "goals", "limits"})
    yield {"participant": person.id, "type": "participant", **told, "kept": _kept(record)}
    *earlier, _ = settings = goals_set(record)
    yield {
        "participant": person.id,
        "type": "goal",
        **GOALS.dump_python(person.goals, mode="json"),
        "limits": LIMITS.dump_python(person.limits, mode="json"),
        "at": iso(in_zone(settings[-1].at, person.zone)),
        "by": settings[-1].by,
        "history": [_goals(one, person) for one in earlier],
    }
    yield from record_lines(record)


def _goals(one: GoalsSet, person: Participant) -> Line:
    return {
        **GOALS.dump_python(one.goals, mode="json"),
        "limits": LIMITS.dump_python(one.limits, mode="json"),
        "at": iso(in_zone(one.at, person.zone)),
        "by": one.by,
    }


def to_text(lines: Iterable[Line]) -> str:
    """One JSON object a line."""
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)


def _kept(record: Record) -> Line:
    as_told = {noted.id: noted.entry for noted in record.told}
    talk: tuple[Noted[Any], ...] = (
        *record.spoke,
        *record.requests,
        *record.wrote,
        *record.wondered,
    )
    return {
        "lines": [_beside(noted, as_told.get(noted.id)) for noted in entries_in_order(record)],
        "talk": [_talk(noted) for noted in sorted(talk, key=lambda noted: noted.id)],
        "last_id": record.last_id,
    }


def _beside(noted: Noted[Any], told: Meal | None) -> Line:
    kept = _where(noted)
    # A treatment may have been told as a meal: it is one again when the low is put right.
    return kept if told is None else {**kept, "meal": MEAL.dump_python(told, mode="json")}


def _talk(noted: Noted[Any]) -> Line:
    kind = type(noted.entry).__name__.lower()
    return {**_where(noted), "kind": kind, "body": TALK[kind].dump_python(noted.entry, mode="json")}


def _where(noted: Noted[Any]) -> Line:
    return {"id": noted.id, "at": noted.at.isoformat(), "message": noted.message}
