"""A story told in a test: people join, write, time passes; what the bot said is looked at."""

import json
from collections.abc import Iterable
from typing import Any

from bot.replay.play import Played, play
from bot.replay.story import read_story

PNG = b"\x89PNG\r\n\x1a\n"


class Story:
    """Lines of a story; clock times are of 2 March 2026 in its offset unless a date is given."""

    def __init__(self, *, offset: str = "+02:00", day: str = "2026-03-02", **enrol: Any) -> None:
        self.offset = offset
        self.day = day
        self.lines: list[dict[str, Any]] = []
        person = {
            "id": "ana",
            "unit": "mg/dL",
            "zone": "Africa/Johannesburg",
            "may_go_low": False,
            "ketone_risk": False,
            **enrol,
        }
        self.lines.append({"at": self.at("07:00"), "enrol": person})

    def at(self, clock: str) -> str:
        """`12:31` or `2026-03-04 12:31` as an instant."""
        day, _, time = clock.rpartition(" ")
        return f"{day or self.day}T{time}:00{self.offset}"

    def says(self, clock: str, text: str, **more: Any) -> "Story":
        """The participant writes."""
        self.lines.append({"at": self.at(clock), "from": "ana", "text": text, **more})
        return self

    def passes(self, clock: str) -> "Story":
        """Time goes on."""
        self.lines.append({"at": self.at(clock), "pass": True})
        return self

    def play(self) -> Played:
        """Play it through the live parts."""
        return play(read_story(json.dumps(line) for line in self.lines), lambda _picture: PNG)


def spoken(played: Played, *kinds: str) -> list[tuple[str, str, str | None]]:
    """When, what kind, what about: everything said of these kinds (all kinds but notes if none)."""
    wanted = kinds or ("caution", "reply", "prompt", "digest")
    return [
        (line["at"][11:16], line["kind"], line["about"])
        for line in played.sent
        if line["kind"] in wanted
    ]


def of_type(played: Played, type_: str) -> list[dict[str, Any]]:
    """The lines of the record of one type."""
    return [line for line in played.record if line["type"] == type_]


def texts(played: Played, kind: str) -> Iterable[str]:
    """What was said of one kind."""
    return [line["text"] for line in played.sent if line["kind"] == kind]
