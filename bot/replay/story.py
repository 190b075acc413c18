"""A story's lines, read and refused with the line's number."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, time
from math import inf
from pathlib import Path
from typing import Any, cast

from bot.entries import By
from bot.json_lines import NotALine, instant_of, lines_of, object_of, storable
from bot.localtime import known_zone
from bot.mendable import Mendable
from bot.participants import WEEKDAYS, Goals, Participant
from bot.units import Unit


class BadStory(Mendable):
    """A line of a story that cannot be played: `line` counts from 1."""

    def __init__(self, line: int, what: str) -> None:
        super().__init__(f"line {line}: {what}")
        self.line = line


@dataclass(frozen=True, slots=True, kw_only=True)
class Enrol:
    """A participant joins, with consent given."""

    line: int
    at: datetime
    participant: Participant


@dataclass(frozen=True, slots=True, kw_only=True)
class Message:
    """A participant writes, or edits what they wrote.

    `edits` is the `id` of the message that this one mends; `answers` the number of the line of
    sent.jsonl that it replies to.
    """

    line: int
    at: datetime
    sender: str
    text: str
    id: str | None = None
    edits: str | None = None
    answers: int | None = None
    photo: bool = False
    by: By = By.SELF


@dataclass(frozen=True, slots=True, kw_only=True)
class Pass:
    """Nothing is written; time goes on to `at`, its instant included."""

    line: int
    at: datetime


Line = Enrol | Message | Pass

ENROL_FIELDS = frozenset(
    {
        "id",
        "unit",
        "zone",
        "week_ends",
        "digest_at",
        "quiet",
        "main_meal",
        "may_go_low",
        "ketone_risk",
        "language",
        "emergency_number",
        "tell_educator",
        "goals",
    }
)
MESSAGE_FIELDS = frozenset({"at", "from", "text", "id", "edits", "answers", "photo", "by"})


def story_lines(path: Path) -> list[str]:
    """The lines of a story's file. Raises Mendable where it cannot be read."""
    try:
        return lines_of(path.read_bytes())
    except UnicodeDecodeError:
        raise Mendable(f"cannot read {path}: it is not UTF-8") from None
    except OSError as fault:
        raise Mendable(f"cannot read {path}: {fault.strerror}") from fault


def read_story(lines: Iterable[str]) -> tuple[Line, ...]:
    """Read a whole story. Raises BadStory at the first line that cannot be played."""
    story: list[Line] = []
    known: set[str] = set()
    senders: dict[str, str] = {}
    for number, text in enumerate(lines, start=1):
        if not text.strip():
            continue
        line = _line(_object(text, number), number)
        if story and line.at < story[-1].at:
            raise BadStory(number, "`at` is earlier than on the line before")
        match line:
            case Enrol():
                if line.participant.id in known:
                    raise BadStory(number, f"participant {line.participant.id!r} joined before")
                known.add(line.participant.id)
            case Message():
                _check_message(line, known, senders)
        story.append(line)
    return tuple(story)


def _check_message(line: Message, known: set[str], senders: dict[str, str]) -> None:
    if line.sender not in known:
        raise BadStory(line.line, f"unknown participant {line.sender!r}")
    # Nobody can edit what somebody else wrote.
    if line.edits is not None and senders.get(line.edits) != line.sender:
        raise BadStory(line.line, f"`edits` names no earlier message: {line.edits!r}")
    if line.id is not None:
        if line.id in senders:
            raise BadStory(line.line, f"`id` {line.id!r} is there already")
        senders[line.id] = line.sender


def _object(text: str, number: int) -> Mapping[str, Any]:
    try:
        return cast("Mapping[str, Any]", storable(object_of(text)))
    except NotALine as fault:
        raise BadStory(number, str(fault)) from fault


def _line(fields: Mapping[str, Any], number: int) -> Line:
    at = _instant(fields, number)
    if "enrol" in fields:
        _only(fields, {"at", "enrol"}, number)
        return Enrol(line=number, at=at, participant=_participant(fields["enrol"], at, number))
    if "pass" in fields:
        _only(fields, {"at", "pass"}, number)
        if fields["pass"] is not True:
            raise BadStory(number, "`pass` is not true")
        return Pass(line=number, at=at)
    if "from" not in fields:
        raise BadStory(number, "neither `enrol`, `from` nor `pass`")
    _only(fields, MESSAGE_FIELDS, number)
    return _message(fields, at, number)


def _message(fields: Mapping[str, Any], at: datetime, number: int) -> Message:
    if "text" not in fields:
        raise BadStory(number, "`text` is missing")
    answers = fields.get("answers")
    if answers is not None and (
        not isinstance(answers, int) or isinstance(answers, bool) or answers < 1
    ):
        raise BadStory(number, "`answers` is not the number of a line")
    by = fields.get("by", By.SELF.value)
    if by not in tuple(By):
        raise BadStory(number, f"unknown `by` {by!r}")
    photo = fields.get("photo", False)
    if not isinstance(photo, bool):
        raise BadStory(number, "`photo` is neither true nor false")
    return Message(
        line=number,
        at=at,
        sender=_text(fields, "from", number),
        text=_text(fields, "text", number),
        id=_text(fields, "id", number) if fields.get("id") is not None else None,
        edits=_text(fields, "edits", number) if fields.get("edits") is not None else None,
        answers=answers,
        photo=photo,
        by=By(by),
    )


def _only(fields: Mapping[str, Any], allowed: set[str] | frozenset[str], number: int) -> None:
    unknown = sorted(set(fields) - allowed)
    if unknown:
        raise BadStory(number, f"unknown field `{unknown[0]}`")


def _text(fields: Mapping[str, Any], name: str, number: int) -> str:
    value = fields.get(name)
    if not isinstance(value, str):
        raise BadStory(number, f"`{name}` is not text")
    return value


def _instant(fields: Mapping[str, Any], number: int) -> datetime:
    value = fields.get("at")
    if not isinstance(value, str):
        raise BadStory(number, "`at` is missing")
    try:
        return instant_of(value)
    except NotALine as fault:
        raise BadStory(number, f"`at` {fault}: {value!r}") from fault


def _participant(fields: Any, at: datetime, number: int) -> Participant:
    if not isinstance(fields, dict):
        raise BadStory(number, "`enrol` is not an object")
    _only(fields, ENROL_FIELDS, number)
    for name in ("id", "unit", "zone"):
        if name not in fields:
            raise BadStory(number, f"`enrol` lacks `{name}`")
    if not fields["id"]:
        raise BadStory(number, "`id` is empty")
    if fields["unit"] not in tuple(Unit):
        raise BadStory(number, f"unknown unit {fields['unit']!r}")
    if not isinstance(fields["zone"], str) or not known_zone(fields["zone"]):
        raise BadStory(number, f"unknown zone {fields['zone']!r}")
    week_ends = fields.get("week_ends", "sunday")
    if week_ends not in WEEKDAYS:
        raise BadStory(number, f"unknown weekday {week_ends!r}")
    quiet = fields.get("quiet", ["22:30", "06:30"])
    if not isinstance(quiet, list) or len(quiet) != 2:
        raise BadStory(number, "`quiet` is not a start and an end")
    main_meal = fields.get("main_meal")
    return Participant(
        id=_text(fields, "id", number),
        unit=Unit(fields["unit"]),
        zone=fields["zone"],
        joined_at=at,
        language=_text({"language": "en", **fields}, "language", number),
        week_ends=week_ends,
        digest_at=_clock(fields.get("digest_at", "18:00"), "digest_at", number),
        quiet_from=_clock(quiet[0], "quiet", number),
        quiet_to=_clock(quiet[1], "quiet", number),
        main_meal=None if main_meal is None else _clock(main_meal, "main_meal", number),
        may_go_low=_known(fields, "may_go_low", number),
        ketone_risk=_known(fields, "ketone_risk", number),
        emergency_number=(
            None
            if fields.get("emergency_number") is None
            else _text(fields, "emergency_number", number)
        ),
        tell_educator=_known(fields, "tell_educator", number) is True,
        goals=_goals(fields.get("goals", {}), number),
    )


def _clock(value: Any, name: str, number: int) -> time:
    try:
        clock = time.fromisoformat(value)
    except (TypeError, ValueError) as fault:
        raise BadStory(number, f"`{name}` is no clock time: {value!r}") from fault
    if clock.tzinfo is not None:  # it runs on the participant's own clock
        raise BadStory(number, f"`{name}` has an offset: {value!r}")
    return clock


def _known(fields: Mapping[str, Any], name: str, number: int) -> bool | None:
    value = fields.get(name)
    if value is not None and not isinstance(value, bool):
        raise BadStory(number, f"`{name}` is neither true, false nor null")
    return value


def _goals(fields: Any, number: int) -> Goals:
    names = {"before_low", "before_high", "after_high"}
    if not isinstance(fields, dict):
        raise BadStory(number, "`goals` is not an object")
    _only(fields, names, number)
    for name, value in fields.items():
        number_given = isinstance(value, int | float) and not isinstance(value, bool)
        if not number_given or not 0 < value < inf:  # JSON as Python reads it knows NaN
            raise BadStory(number, f"`{name}` is not a number of mg/dL")
    return Goals(**fields)
