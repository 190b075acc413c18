"""A story played by the live parts on virtual time, and what would be sent written down."""

import json
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from typing import Any

from bot.export.lines import Line, digest_line, record_lines
from bot.glucose.week import week, week_of
from bot.localtime import at_local, in_zone, iso
from bot.mendable import Mendable
from bot.messages import Content, Incoming, Kind
from bot.participants import Participant
from bot.record import fold
from bot.replay.story import Enrol, Message, Pass
from bot.replay.story import Line as StoryLine
from bot.storage.letters import Letter
from bot.storage.outbox import TO_CHAT
from bot.wiring import Replay, Said

Draw = Callable[[Mapping[str, Any]], bytes]


@dataclass(kw_only=True)
class Played:
    """What a story brought about: lines of three files, and pictures by name."""

    sent: list[Line] = field(default_factory=list)
    record: list[Line] = field(default_factory=list)
    digests: list[Line] = field(default_factory=list)
    pictures: dict[str, bytes] = field(default_factory=dict)

    def write(self, folder: Path) -> None:
        """Write the files into a folder, all or none of a file at a time.

        Raises Mendable where the folder cannot be written.
        """
        try:
            folder.mkdir(parents=True, exist_ok=True)
            for name, picture in self.pictures.items():
                (folder / name).write_bytes(picture)
            for name in ("sent", "record", "digests"):
                lines: list[Line] = getattr(self, name)
                text = "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)
                (folder / f"{name}.jsonl").write_text(text, encoding="utf-8")
        except OSError as fault:
            raise Mendable(f"cannot write to {folder}: {fault.strerror}") from fault


class _Player:
    """Plays lines one by one, and writes down what was said after each."""

    def __init__(self, draw: Draw) -> None:
        self.played = Played()
        self._draw = draw
        self._replay = Replay()
        self._people: dict[str, Participant] = {}
        self._first_said: dict[str, datetime] = {}

    def play(self, line: StoryLine) -> None:
        """Let time pass to the line, then take it."""
        # What falls due before the line is written down before it is taken: by the record and
        # the settings (zone, goals) as they were then.
        self._replay.pass_to(line.at, including=isinstance(line, Pass))
        self._write_down()
        match line:
            case Enrol():
                self._people[line.participant.id] = line.participant
                self._replay.enrol(line.participant, line.at)
            case Message():
                self._replay.hear(self._incoming(line))
                # Kept here for the farewell after an erasure, when nobody has this id any more.
                self._people.update({person.id: person for person in self._replay.participants()})
                self._write_down()
            case Pass():
                pass

    def finish(self) -> Played:
        """Add the record at the end and give everything."""
        for line, fault in self._replay.parked():  # an update's number is its line's
            raise Mendable(f"line {line}: the bot failed on it ({fault})")
        for person in self._replay.participants():
            record = fold(person, self._replay.events(person.id))
            self.played.record.extend(record_lines(record))
        self._replay.close()
        return self.played

    def _incoming(self, line: Message) -> Incoming:
        message = line.edits or line.id or f"line {line.line}"
        return Incoming(
            update=line.line,
            chat=line.sender,
            message=message,
            at=line.at,
            text=line.text,
            content=Content.PHOTO if line.photo else Content.TEXT,
            said_at=self._first_said.setdefault(message, line.at),
            edits=line.edits is not None,
            quotes=None if line.answers is None else str(line.answers),
            photo=message if line.photo else None,
            by=line.by,
        )

    def _write_down(self) -> None:
        for said in self._replay.said[len(self.played.sent) :]:
            self._add(said)

    def _add(self, said: Said) -> None:
        letter = said.letter
        person = self._people[letter.reader.removeprefix(TO_CHAT)]
        picture = self._picture(letter, person)
        self.played.sent.append(_sent_line(letter, person, picture))
        if letter.kind is Kind.DIGEST:
            record = fold(person, self._replay.events(person.id))
            start, end, _, _ = week_of(person, _week_end(letter, person))
            self.played.digests.append(digest_line(week(record, start=start, end=end), picture))

    def _picture(self, letter: Letter, person: Participant) -> str | None:
        if letter.picture is None:
            return None
        day = in_zone(letter.due_at, person.zone)
        name = f"{_file_name(person.id)}-{day:%Y-%m-%d}-{len(self.played.pictures) + 1}.png"
        self.played.pictures[name] = self._draw(letter.picture)
        return name


def _file_name(who: str) -> str:
    return "".join(letter if letter.isalnum() or letter in "-_" else "_" for letter in who)


def _week_end(letter: Letter, person: Participant) -> datetime:
    """The instant at which the week of a digest ends: its key names the local date."""
    day = date.fromisoformat(letter.key.rpartition(":")[2])
    return at_local(day, person.digest_at, person.zone)


def _sent_line(letter: Letter, person: Participant, picture: str | None) -> Line:
    return {
        "at": iso(in_zone(letter.due_at, person.zone)),
        "to": person.id,
        "kind": letter.kind.value,
        "about": letter.about,
        "text": letter.text,
        "picture": picture,
    }


def play(story: Iterable[StoryLine], draw: Draw) -> Played:
    """Play a whole story in memory."""
    player = _Player(draw)
    for line in story:
        player.play(line)
    return player.finish()
