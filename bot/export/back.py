"""Our own JSON lines back into events: what `bot.export.jsonl` wrote.

Derived lines are ignored, and so are `doubtful` and `mg_dl`: they are worked out anew. A line that
does not fit is refused with its number; the value that is wrong is not repeated.
"""

import json
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import datetime
from math import isfinite
from typing import Any

from pydantic import ValidationError

from bot.educator import bounds, goal_log
from bot.entries import (
    Activity,
    Answer,
    Meal,
    MealName,
    Moment,
    OffScale,
    Reading,
    Request,
    Skip,
    Step,
    StepTaken,
    Strips,
    Suggests,
    Symptom,
    Treatment,
)
from bot.export.jsonl import GOALS, LIMITS, MEAL, PARTICIPANT, TALK
from bot.json_lines import NotALine, instant_of, object_of, storable
from bot.localtime import known_zone
from bot.mendable import Mendable
from bot.parser.food import kinds_of
from bot.participants import WEEKDAYS, Participant
from bot.programme.testing import Rhythm
from bot.record import Body, Event, Retracted
from bot.units import Unit, plausible, to_mg_dl

Line = Mapping[str, Any]

#: Lines that are worked out from the others.
DERIVED = frozenset({"pair", "activity_effect"})


class BadExport(Mendable):
    """A line that is none of ours: `line` counts from 1."""

    def __init__(self, line: int, what: str) -> None:
        super().__init__(f"line {line}: {what}")
        self.line = line


@dataclass(frozen=True, slots=True, kw_only=True)
class Restored:
    """A participant with the events of their record, in the order of their ids."""

    participant: Participant
    events: tuple[Event, ...]


@dataclass(slots=True, kw_only=True)
class _Told:
    """What the lines tell of one participant: numbers of lines, and the lines."""

    number: int
    person: Line
    goal: Line = field(default_factory=dict)
    goal_number: int = 0
    entries: list[tuple[int, Line]] = field(default_factory=list)


def restored(lines: Iterable[str]) -> tuple[Restored, ...]:
    """Read an export. Raises BadExport at a line that is none of ours."""
    people: dict[str, _Told] = {}
    for number, text in enumerate(lines, start=1):
        if text.strip():
            with _fitting(number):
                _take(people, number, text)
    return tuple(_restore(who, told) for who, told in people.items())


@contextmanager
def _fitting(number: int) -> Iterator[None]:
    """Name the line and the field of what does not fit, and never its value."""
    try:
        yield
    except Mendable:
        raise
    except ValidationError as fault:
        place = ".".join(str(part) for part in fault.errors(include_input=False)[0]["loc"])
        raise BadExport(number, f"`{place}` does not fit") from None
    except KeyError as fault:
        raise BadExport(number, f"`{fault.args[0]}` is missing") from None
    except (TypeError, ValueError, AttributeError):
        raise BadExport(number, "a field has a value that does not fit") from None


def _take(people: dict[str, _Told], number: int, text: str) -> None:
    try:
        line = storable(object_of(text))
    except NotALine as fault:
        raise BadExport(number, str(fault)) from None
    who, kind = line["participant"], line["type"]
    # `people` lists ids, a line each.
    if not isinstance(who, str) or not who.strip() or not who.isprintable():
        raise BadExport(number, "`participant` is no public id")
    if kind == "participant":
        if who in people:
            raise BadExport(number, "this participant has a line already")
        people[who] = _Told(number=number, person=line)
    elif who not in people:
        raise BadExport(number, "the participant's own line must come first")
    elif kind == "goal":
        people[who].goal, people[who].goal_number = line, number
    elif kind in ENTRIES:
        people[who].entries.append((number, line))
    elif kind not in DERIVED:
        raise BadExport(number, "unknown `type`")


def _restore(who: str, told: _Told) -> Restored:
    with _fitting(told.number):
        person = _participant(who, told)
        kept = told.person.get("kept") or {}
        # Lines without anything kept beside them are numbered as they come.
        beside = kept.get("lines") or [{"id": n + 1} for n in range(len(told.entries))]
        events = [_talk(one) for one in kept.get("talk") or ()]
        last = _id(kept["last_id"]) if kept.get("last_id") else 0
    try:
        bounds.check(person)
    except bounds.OutOfBounds as fault:
        raise BadExport(told.goal_number or told.number, f"goals out of bounds: {fault}") from None
    if len(beside) != len(told.entries):
        raise BadExport(
            told.number,
            f"knows of {len(beside)} entries, and {len(told.entries)} follow: "
            "a line was added or taken out",
        )
    for (number, line), aside in zip(told.entries, beside, strict=True):
        with _fitting(number):
            events.append(_entry(line, aside, person))
    events.sort(key=lambda event: event.id)
    if len({event.id for event in events}) < len(events):
        raise BadExport(told.number, "two entries have the same `id`")
    if last > max((event.id for event in events), default=0):
        # A number once used is not given again: what the bot said is known by it.
        events.append(Event(id=last, at=person.joined_at, body=Retracted(ids=())))
    return Restored(participant=person, events=tuple(events))


def _participant(who: str, told: _Told) -> Participant:
    fields = {name: value for name, value in told.person.items() if name not in _NOT_THEIRS}
    goal = dict(told.goal)
    limits = LIMITS.validate_python(goal.pop("limits", {}))
    goals = {name: value for name, value in goal.items() if name not in _NOT_GOALS}
    person = PARTICIPANT.validate_json(
        json.dumps(
            {
                **fields,
                "id": who,
                "goals": GOALS.dump_python(GOALS.validate_python(goals)),
                "limits": LIMITS.dump_python(limits),
            }
        )
    )
    if not known_zone(person.zone):
        raise BadExport(told.number, "unknown `zone`")
    try:
        instant_of(person.joined_at.isoformat())
    except NotALine as fault:
        raise BadExport(told.number, f"`joined_at` {fault}") from None
    # Every turn works with these two: one that nobody knows would stop all of the person's turns.
    if person.week_ends not in WEEKDAYS:
        raise BadExport(told.number, "unknown `week_ends`")
    if person.rhythm not in list(Rhythm):
        raise BadExport(told.number, "unknown `rhythm`")
    return person


_NOT_THEIRS = frozenset({"participant", "type", "kept"})
#: Who set the goals and when is in what is kept; beside the goals it is for people to read.
_NOT_GOALS = _NOT_THEIRS | {"at", "by", "history"}


def _talk(kept: Line) -> Event:
    adapter = TALK[kept["kind"]]
    body = adapter.validate_json(json.dumps(kept["body"]))
    if isinstance(body, Request):
        goal_log.check(body)
    message = _or_words(kept["message"])
    return Event(id=_id(kept["id"]), at=_instant(kept["at"]), message=message, body=body)


def _entry(line: Line, beside: Line, person: Participant) -> Event:
    body: Body = ENTRIES[line["type"]](line, person)
    if "meal" in beside:
        body = _as_told(body, MEAL.validate_json(json.dumps(beside["meal"])))
    said = beside.get("at") or next((line[name] for name in _INSTANTS if line.get(name)), None)
    message = _or_words(beside.get("message"))
    return Event(id=_id(beside["id"]), at=_instant(said), message=message, body=body)


#: Every database counts further than this; JSON's own numbers are exact up to here (RFC 8259, 6).
MOST = 2**53 - 1


def _id(given: Any) -> int:
    if isinstance(given, bool) or not isinstance(given, int) or not 1 <= given <= MOST:
        raise ValueError("no number of an entry")
    return given


def _or_words(given: Any) -> str | None:
    return None if given is None else _words(given)


def _as_told(body: Body, meal: Meal) -> Meal:
    """What was told as a meal: with its foods, as far as the line still says the same."""
    if not isinstance(body, Meal):
        return meal  # told as a meal, eaten against a low: the fold finds that again
    same = meal.text == body.text
    return replace(body, photo=meal.photo, foods=meal.foods if same else body.foods)


#: Where an entry's line tells when it was, if nothing kept tells when it was said.
_INSTANTS = ("at", "taken_at", "started_at", "ended_at")


def _instant(written: str | None) -> datetime:
    if written is None:
        raise ValueError("nothing tells when it was")
    return instant_of(written)


def _or_none(written: str | None) -> datetime | None:
    return None if written is None else _instant(written)


def _number(given: Any) -> float | None:
    if given is None:
        return None
    if isinstance(given, bool) or not isinstance(given, int | float) or not isfinite(given):
        raise TypeError("no number")
    return float(given)


def _words(given: Any) -> str:
    if not isinstance(given, str):
        raise TypeError("no words")
    return given


def _reading(line: Line, _: Participant) -> Reading:
    value, unit = _number(line["value"]), Unit(line["unit"])
    off_scale = None if line["off_scale"] is None else OffScale(line["off_scale"])
    if (value is None) is (off_scale is None) or not (value is None or plausible(value, unit)):
        raise ValueError("no value of a meter")
    return Reading(
        value=value,
        unit=unit,
        mg_dl=None if value is None else to_mg_dl(value, unit),
        moment=Moment(line["moment"]),
        taken_at=_or_none(line["taken_at"]),
        off_scale=off_scale,
    )


def _meal(line: Line, person: Participant) -> Meal:
    text = _words(line["text"])
    return Meal(
        text=text,
        name=None if line["name"] is None else MealName(line["name"]),
        started_at=_or_none(line["started_at"]),
        foods=kinds_of(text, person.language) if text else (),
    )


def _activity(line: Line, _: Participant) -> Activity:
    return Activity(
        text=_words(line["text"]),
        minutes=_number(line["minutes"]),
        ended_at=_instant(line["ended_at"]),
    )


def _treatment(line: Line, _: Participant) -> Treatment:
    return Treatment(text=_words(line["text"]), taken_at=_instant(line["taken_at"]))


def _symptom(line: Line, _: Participant) -> Symptom:
    return Symptom(text=_words(line["text"]), suggests=Suggests(line["suggests"]))


def _skip(line: Line, _: Participant) -> Skip:
    return Skip(reason=_or_words(line["reason"]))


def _answer(line: Line, _: Participant) -> Answer:
    return Answer(about=_words(line["about"]), how=_words(line["how"]))


#: How the line of each kind of entry is read.
ENTRIES: Mapping[str, Any] = {
    "reading": _reading,
    "meal": _meal,
    "treatment": _treatment,
    "activity": _activity,
    "symptom": _symptom,
    "skip": _skip,
    "step": lambda line, _: StepTaken(step=Step(line["step"])),
    "strips": lambda line, _: Strips(left=int(line["left"])),
    "answer": _answer,
}
