"""Whose rows a turn touches on PostgreSQL: its own person's, and nobody else's.

The stories of the test of educators, played on a real PostgreSQL; what educators read is held
to the same property, and every statement of every turn is looked at on its way to the server.
"""

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any

from hypothesis import given, settings
from sqlalchemy import event

from bot.conversation import Outcome
from bot.messages import Incoming
from tests.educator.classroom import Classroom
from tests.educator.test_educators_see_their_own import (
    EVENTS,
    ONE,
    OTHER,
    played,
    shows_nothing_of_theirs,
)
from tests.postgres import TEMPLATE, Server

#: The tables whose rows are somebody's.
THEIRS = re.compile(r"\b(participant|entry|heard|chat|outbox|educator)\b")
SPEAKERS = ("watch", "other", "zoe", "ben")


@contextmanager
def room_on(server: Server) -> Iterator[Classroom]:
    """An empty classroom on a fresh database."""
    with server.database(TEMPLATE) as url:
        room = Classroom(database=url)
        try:
            yield room
        finally:
            room.store.close()


@settings(max_examples=4)
@given(EVENTS)
def stories(server: Server, events: list[str]) -> None:
    with room_on(server) as room:
        read = played(events, ONE, room)
    with room_on(server) as room:
        assert read == played(events, OTHER, room)
    shows_nothing_of_theirs(read)


def test_nothing_of_somebody_elses_participant_reaches_an_educator(
    postgres_server: Server,
) -> None:
    stories(postgres_server)


@dataclass
class Watched:
    """Every statement of every turn, with who spoke."""

    room: Classroom
    told: list[tuple[str, str, tuple[str, ...]]] = field(default_factory=list)
    speaker: str | None = None

    def __post_init__(self) -> None:
        event.listen(self.room.store.engine, "before_cursor_execute", self._executed)
        self._hear = self.room.conversation.hear
        self.room.conversation.hear = self._heard  # type: ignore[method-assign]

    def _heard(self, incoming: Incoming, now: Any) -> Outcome:
        self.speaker = incoming.chat
        try:
            return self._hear(incoming, now)
        finally:
            self.speaker = None

    def _executed(
        self, _conn: Any, _cursor: Any, statement: str, parameters: Any, *_more: Any
    ) -> None:
        if self.speaker is None:
            return
        many = parameters if isinstance(parameters, list) else [parameters]
        for one in many:
            values = tuple(str(value) for value in (one or {}).values())
            self.told.append((self.speaker, statement, values))

    def ids(self) -> dict[str, str]:
        """The id behind each chat, as far as there is one."""
        with self.room.store.turn() as work:
            seen = {chat: work.chat(chat) for chat in SPEAKERS}
        return {
            chat: found.participant
            for chat, found in seen.items()
            if found is not None and found.participant is not None
        }


def strays(watched: Watched) -> list[tuple[str, str, tuple[str, ...]]]:
    """Statements about people's rows that name nobody, or somebody who is none of the speaker's."""
    ids = watched.ids() | {"ben": "BEN", "zoe": "ZOE"}
    watch, other = ids["watch"], ids["other"]
    # `other` named `watch` as deputy: an alert of ben's is a matter of both, his record is not.
    may: dict[str, set[str]] = {
        "watch": {watch, other, "ZOE"},
        "zoe": {watch, "ZOE"},
        "other": {watch, other, "BEN"},
        "ben": {watch, other, "BEN"},
    }
    everybody = set(ids.values()) | set(SPEAKERS)
    found = []
    for speaker, statement, values in watched.told:
        if not THEIRS.search(statement):
            continue
        allowed = may[speaker] | {speaker}
        named = {value.removeprefix("chat:") for value in values}
        if not (named & allowed) and "outbox.id" not in statement:
            found.append((speaker, statement, values))
        if (named & everybody) - allowed:
            found.append((speaker, statement, values))
    return found


STORY = [
    "theirs very_low",
    "theirs meal",
    "theirs symptom",
    "pass 45",
    "mine very_low",
    "watch alerts",
    "watch show zoe",
    "watch show ben",
    "watch note ben: hello",
    "watch goals zoe 80-130 170",
    "watch goals ben 80-130 170",
    "watch seen 1 OTHER",
    "other goals ben 80-120 170",
    "other label ben Benny",
    "other group",
    "theirs leaves",
    "theirs fine",
]


def test_every_statement_of_a_turn_names_whose_rows_it_wants(postgres_server: Server) -> None:
    with room_on(postgres_server) as room:
        watched = Watched(room)
        played(STORY, ONE, room)
        assert strays(watched) == []
        seen = {speaker for speaker, *_ in watched.told}
        kinds = {word for _, statement, _ in watched.told for word in THEIRS.findall(statement)}
    assert seen >= set(SPEAKERS)
    assert kinds == {"participant", "entry", "heard", "chat", "outbox", "educator"}


def test_a_statement_without_its_scope_would_be_seen(postgres_server: Server) -> None:
    """The check above would see nothing if it looked at nothing."""
    with room_on(postgres_server) as room:
        watched = Watched(room)
        hear: Callable[..., Outcome] = watched._hear

        def forgetful(incoming: Incoming, now: Any) -> Outcome:
            if incoming.text == "roster":
                with room.store.turn() as work:
                    work.events("BEN")
                    work.people()
            return hear(incoming, now)

        watched._hear = forgetful
        played(["watch roster"], ONE, room)
        found = strays(watched)
    assert any("BEN" in values for _, _, values in found)
    assert any("participant" in statement and not values for _, statement, values in found)
