"""No message ever carries a value, a text or a name of somebody whom its reader may not see.

Participants, educators, strangers and an operator do what they like in any order: they forward
codes, guess them, write others' ids and quote others' messages; access is given, taken away and
ended. Every message is held to the rule at the moment in which it is read; the log and what the
operator's commands print hold nothing at any time.
"""

import io
import logging
import os
import re
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager, redirect_stderr, redirect_stdout
from dataclasses import replace
from datetime import time
from pathlib import Path
from unittest import mock

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, rule, run_state_machine_as_test

from bot import teaching
from bot.__main__ import main
from bot.logs import Lines
from bot.participants import Invitation, Participant
from bot.storage import handing_out
from bot.storage.educators import Educators
from bot.storage.letters import Letter
from bot.turns import teaching_alerts
from bot.turns.teaching_desk import Taught, unasked
from bot.turns.turn import Opened, Turn
from bot.units import Unit
from tests.educator.classroom import Classroom

PEOPLE = ("p0", "p1", "p2", "s0", "s1")  # the last two are strangers at first
TEACHERS = ("e0", "e1", "e2")
EVERYBODY = (*PEOPLE, *TEACHERS)
FOODS = ("mango", "yam", "tofu", "papaya", "barley")
NAMES = ("Persephone", "Rosalinda", "Bartholomew", "Thaddeus", "Wilhelmina")
VERY_LOWS, FINE, AFTER, HIGH = (
    (41, 43, 47, 49, 51),
    (103, 107, 113, 117, 123),
    (141, 147, 151, 157, 163),
    (311, 313, 317, 319, 323),
)

person, teacher, anybody = (st.sampled_from(of) for of in (PEOPLE, TEACHERS, EVERYBODY))


def tokens(chat: str) -> tuple[str, ...]:
    """What a person's messages hold: their values, food and name."""
    index = PEOPLE.index(chat)
    values = (of[index] for of in (VERY_LOWS, FINE, AFTER, HIGH))
    return (*(str(value) for value in values), FOODS[index], NAMES[index])


def label(teacher_chat: str, chat: str) -> str:
    """An educator's own word for somebody, which nobody else may read."""
    mine = ("Quince", "Medlar", "Rowan")[TEACHERS.index(teacher_chat)]
    return mine + NAMES[PEOPLE.index(chat)][:3]


def holds(text: str, token: str) -> bool:
    """Whether a text tells it: a number by itself, and not as a part of a date or clock time."""
    return re.search(rf"(?<![\w:.-]){re.escape(token)}(?![\w:-]|\.\d)", text) is not None


class Watched(Classroom):
    """A classroom in which every message is looked at when it is read."""

    check: Callable[[Letter], None] = staticmethod(lambda _letter: None)

    def _deliver(self) -> None:
        before = {chat: len(read) for chat, read in self.read.items()}
        super()._deliver()
        for chat, read in self.read.items():
            for letter in read[before.get(chat, 0) :]:
                self.check(letter)


class Anybody(RuleBasedStateMachine):
    """What they all do, and what must hold of everything that is read, logged and printed."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.url = f"sqlite:///{Path(self.folder.name) / 'all.db'}"
        self.log = io.StringIO()
        self.handler = logging.StreamHandler(self.log)
        self.handler.setFormatter(Lines())
        logging.getLogger("bot").addHandler(self.handler)
        self.room = Watched(database=self.url)
        self.room.check = self.look  # type: ignore[method-assign]
        self.codes: list[str] = []
        for chat in TEACHERS:
            self.room.educator(chat, hours="every day 6-22")
        for chat, of in (("p0", "e0"), ("p1", "e1"), ("p2", "e1")):
            self.enrol(chat, of, tell=chat != "p2")
        # There is always something to be seen: values, a label, an alert, a deputy.
        for chat in ("p0", "p1", "p2"):
            self.tells(chat, "very low")
            self.tells(chat, "fine")
        for of, chat in (("e0", "p0"), ("e1", "p1"), ("e1", "p2")):
            self.room.say(of, f"label {chat} {label(of, chat)}")
        self.room.say("e1", f"deputy {self.room.whose('e2')}")
        self.room.say("e2", f"accept {self.room.whose('e1')}")

    def enrol(self, chat: str, of: str, *, tell: bool) -> None:
        """Somebody takes part, under the name that they gave, with the educator of a chat."""
        self.room.participant(
            chat,
            self.room.whose(of),
            tell=tell,
            may_go_low=True,
            ketone_risk=None,
            main_meal=time(13),
            name=NAMES[PEOPLE.index(chat)],
        )

    # --- the rule ----------------------------------------------------------------------------

    def look(self, letter: Letter) -> None:
        """Hold one message, its buttons, its picture and its file to the rule."""
        whole = " ".join((letter.text, *letter.buttons, str(letter.picture or "")))
        for chat in PEOPLE:
            if chat != letter.chat:
                seen = [token for token in tokens(chat) if holds(whole, token)]
                names_only = set(seen) <= {NAMES[PEOPLE.index(chat)]}
                assert not seen or self.may_see(letter.chat, chat, name=names_only), (
                    letter.chat,
                    chat,
                    letter.text,
                )
            for of in TEACHERS:
                assert of == letter.chat or label(of, chat) not in whole, (letter.chat, letter.text)
        if letter.attachment is not None:
            self.look_at_file(letter)

    def look_at_file(self, letter: Letter) -> None:
        """The record that a file is made of is the reader's own, or one that they may see."""
        with self.room.store.turn() as work:
            try:
                given = handing_out.handed_out(
                    work, letter.reader, letter.attachment or "", self.room.now
                )
            except LookupError:
                return
        who = given["record"].participant.id
        if who != letter.reader:
            assert self.may_see(letter.chat, self.chat_of(who), name=False)
            assert given["messages"] == ()

    def may_see(self, reader: str, chat: str, *, name: bool) -> bool:
        """An educator sees their own participants: their names, and their values if shared."""
        if reader not in TEACHERS:
            return False
        found = self.now_in(chat)
        if found is None or found.educator != self.room.whose(reader):
            return False
        return name or found.tell_educator

    def now_in(self, chat: str) -> Participant | None:
        """Who takes part in a chat now."""
        with self.room.store.turn() as work:
            seen = work.chat(chat)
            people = {one.participant.id: one.participant for one in work.people()}
        return people.get(seen.participant or "") if seen else None

    def chat_of(self, who: str) -> str:
        """The chat of a participant."""
        return next(chat for chat in PEOPLE if (of := self.now_in(chat)) and of.id == who)

    def id_of(self, chat: str) -> str:
        """The public id behind a chat, which anybody may have seen somewhere."""
        if chat in TEACHERS:
            return self.room.whose(chat)
        found = self.now_in(chat)
        return found.id if found else "NOBODY"

    # --- participants and strangers ----------------------------------------------------------

    @rule(
        chat=person, what=st.sampled_from(["very low", "fine", "after", "high", "meal", "unwell"])
    )
    def tells(self, chat: str, what: str) -> None:
        """A person writes of themselves."""
        index = PEOPLE.index(chat)
        texts = {
            "very low": f"{VERY_LOWS[index]}",
            "fine": f"{FINE[index]} before, {FOODS[index]}",
            "after": f"{AFTER[index]} after",
            "high": f"{HIGH[index]}",
            "meal": f"ate {FOODS[index]}",
            "unwell": f"chest pain after {FOODS[index]}",
        }
        self.room.say(chat, texts[what])

    @rule(
        chat=person,
        text=st.sampled_from(
            ["record", "summary", "export", "goals", "next step", "help", "stop", "resume", "undo",
             "yes", "no", "no educator", "erase", "I want to fast", "discreet", "español", "skip"]
        ),
    )  # fmt: skip
    def asks(self, chat: str, text: str) -> None:
        """A person asks for something."""
        self.room.say(chat, text)

    @rule(chat=person)
    def edits(self, chat: str) -> None:
        """An edited message comes once more."""
        self.room.say(
            chat, f"{AFTER[PEOPLE.index(chat)]} after, {FOODS[PEOPLE.index(chat)]}", edits="7"
        )

    @rule(chat=anybody, other=anybody, text=st.sampled_from(["yes", "118", "seen", "skip", "?"]))
    def quotes_anothers_message(self, chat: str, other: str, text: str) -> None:
        """Somebody replies to a message that stands in another chat."""
        if chat in TEACHERS or text != "118":
            self.room.say(chat, text, quotes=f"{other}-{len(self.room.letters(other))}")

    @rule(chat=anybody, other=anybody, verb=st.sampled_from(["", "show ", "record ", "print "]))
    def writes_anothers_id(self, chat: str, other: str, verb: str) -> None:
        """Somebody writes an id that is not theirs."""
        self.room.say(chat, f"{verb}{self.id_of(other)}")

    @rule(chat=anybody, code=st.sampled_from(["AAAA-BBBB-CCCC", "GUESS", "1234"]))
    def guesses(self, chat: str, code: str) -> None:
        """Somebody tries a code that nobody gave them."""
        self.room.say(chat, f"/start {code}")

    @rule(chat=teacher, tell=st.booleans())
    def invites(self, chat: str, tell: bool) -> None:
        """An educator makes a code, for whoever may get hold of it."""
        code = f"GIVEN{len(self.codes):04d}"
        self.room.invite(
            code,
            Invitation(
                zone="UTC", unit=Unit.MG_DL, main_meal=time(13), educator=self.room.whose(chat),
                may_go_low=tell, ketone_risk=False,
            ),
        )  # fmt: skip
        self.codes.append(code)

    @rule(chat=anybody, tell=st.sampled_from(["yes", "no"]), data=st.data())
    def uses_a_code(self, chat: str, tell: str, data: st.DataObject) -> None:
        """A code is used by whoever has it: once, twice, by an educator, by somebody else."""
        if self.codes:
            code = data.draw(st.sampled_from(self.codes))
            self.room.says(chat, f"/start {code}", "yes", tell)

    # --- educators ---------------------------------------------------------------------------

    @rule(
        pair=st.sampled_from([("e0", "p0"), ("e1", "p1"), ("e1", "p2")]),
        command=st.sampled_from(["show ", "meals ", "chart ", "print ", "steps "]),
    )
    def looks_at_their_own(self, pair: tuple[str, str], command: str) -> None:
        """An educator asks for somebody who was theirs at first: one shares no values."""
        self.room.say(pair[0], command + self.id_of(pair[1]))

    @rule(chat=st.sampled_from(["p0", "p1"]), text=st.sampled_from(["no educator", "erase"]))
    def leaves(self, chat: str, text: str) -> None:
        """A participant takes access away, or everything."""
        self.room.says(chat, text, "yes")

    @rule(
        chat=teacher,
        other=person,
        command=st.sampled_from(
            ["", "show ", "meals ", "chart ", "print ", "steps ", "goals ", "release ",
             "fewer tests ", "plan ", "end plan ", "fasting "]
        ),
    )  # fmt: skip
    def looks(self, chat: str, other: str, command: str) -> None:
        """An educator asks for somebody, theirs or not, by id."""
        self.room.say(chat, command + self.id_of(other))

    @rule(
        chat=teacher,
        other=person,
        command=st.sampled_from(
            ["goals {id} 90-120 160", "low {id} 75", "note {id}: see you", "label {id} {label}",
             "fasting {id} 2026-03-20 to 2026-03-22"]
        ),
    )  # fmt: skip
    def sets(self, chat: str, other: str, command: str) -> None:
        """An educator sets something for somebody, theirs or not."""
        self.room.say(chat, command.format(id=self.id_of(other), label=label(chat, other)))

    @rule(
        chat=teacher,
        text=st.sampled_from(
            ["roster", "roster 2", "alerts", "group", "seen 1", "closed 1", "called", "away",
             "back", "no deputy", "cancel", "yes", "no", "español", "english", "hours Mon-Fri 8-16"]
        ),
    )  # fmt: skip
    def works(self, chat: str, text: str) -> None:
        """An educator does what educators do."""
        self.room.say(chat, text)

    @rule(
        chat=teacher, other=teacher, text=st.sampled_from(["deputy", "accept", "decline", "seen 1"])
    )
    def deals_with_a_colleague(self, chat: str, other: str, text: str) -> None:
        """Deputies, asked for, agreed to, and marking what came to them."""
        self.room.say(chat, f"{text} {self.room.whose(other)}")

    @rule(minutes=st.sampled_from([20, 45, 130, 700, 3000, 21000]))
    def time_passes(self, minutes: int) -> None:
        """Prompts, rechecks, alerts, digests and visits fall due."""
        self.room.passes(minutes=minutes)

    # --- operators ---------------------------------------------------------------------------

    @rule(
        command=st.sampled_from(
            [("people",), ("check", "--offline"), ("export", "--participant", "X")]
        )
    )
    def operates(self, command: tuple[str, ...]) -> None:
        """An operator's command prints nothing of anybody."""
        printed = io.StringIO()
        with (
            mock.patch.dict(os.environ, {"AFTERPLATE_DATABASE": self.url}),
            redirect_stdout(printed),
            redirect_stderr(printed),
        ):
            main(list(command))
        self.nothing_of_anybody(printed.getvalue())

    @rule(chat=person)
    def a_turn_fails(self, chat: str) -> None:
        """An error that quotes the message is parked; the log tells where it was, and no more."""
        turns = self.room.conversation._turns

        def broken(_opened: Opened, incoming: object, **_: object) -> Turn:
            raise ValueError(f"cannot make anything of {incoming!r}")

        self.room.conversation._turns = replace(turns, hear=broken)
        try:
            self.tells(chat, "very low")
            self.tells(chat, "fine")
        finally:
            self.room.conversation._turns = turns

    def nothing_of_anybody(self, text: str) -> None:
        """No value, text, name or label of anybody."""
        for chat in PEOPLE:
            for token in (*tokens(chat)[-2:], *(label(of, chat) for of in TEACHERS)):
                assert token not in text, token
            for value in tokens(chat)[:-2]:
                assert not holds(text, f"{value} mg"), value
                assert f'"{value}' not in text, value

    def teardown(self) -> None:
        """What the log holds in the end."""
        logging.getLogger("bot").removeHandler(self.handler)
        self.room.store.close()
        self.folder.cleanup()
        self.nothing_of_anybody(self.log.getvalue())


def played(examples: int, steps: int) -> None:
    run_state_machine_as_test(
        Anybody,
        settings=settings(
            max_examples=examples,
            stateful_step_count=steps,
            derandomize=True,
            deadline=None,
            database=None,
            suppress_health_check=list(HealthCheck),
            phases=(Phase.generate,),  # a story that is found is short enough to be read
            report_multiple_bugs=False,
        ),
    )


def test_nobody_reads_what_is_anothers() -> None:
    played(examples=20, steps=30)


# ── The check bites ──────────────────────────────────────────────────────────


@contextmanager
def everybody_is_everybodys() -> Iterator[None]:
    """An educator's list holds all participants."""
    real = Educators.own

    def own(self: Educators, _id: str) -> tuple[Participant, ...]:
        ids = self._connection.exec_driver_sql("SELECT DISTINCT educator FROM participant")
        return tuple(one for (id_,) in ids.fetchall() if id_ for one in real(self, id_))

    with mock.patch.object(Educators, "own", own):
        yield


@contextmanager
def a_deputy_reads_the_value() -> Iterator[None]:
    """An alert goes on to the deputy with the participant's name in it."""
    plain = teaching_alerts.passed_words

    def passed_words(alert, educator, zone, say):  # type: ignore[no-untyped-def]
        return plain(alert, educator, zone, say) + f" {educator.label(alert.participant)}"

    with mock.patch.object(teaching_alerts, "passed_words", passed_words):
        yield


@contextmanager
def whoever_left_is_still_named() -> Iterator[None]:
    """The word that somebody has left tells their name."""

    def left(educator, who, *, now):  # type: ignore[no-untyped-def]
        index = {f"P{n}": n for n in range(3)}.get(who, 0)
        told = unasked(educator, f"{NAMES[index]} left", f"left:{who}", now)
        return Taught(educator=educator, says=(told,))

    with mock.patch.object(teaching.teaching, "left", left):
        yield


@contextmanager
def values_that_are_not_shared_are_shown() -> Iterator[None]:
    """Whether somebody shares values is not asked."""
    plain = teaching.teaching.teach

    def teach(desk, incoming, **more):  # type: ignore[no-untyped-def]
        own = tuple(replace(one, tell_educator=True) for one in desk.own)
        return plain(replace(desk, own=own), incoming, **more)

    with mock.patch.object(teaching.teaching, "teach", teach):
        yield


@contextmanager
def errors_are_logged_whole() -> Iterator[None]:
    """An error's own words go into the log."""
    with mock.patch("bot.conversation.place_of", repr):
        yield


FAULTS = (
    everybody_is_everybodys,
    a_deputy_reads_the_value,
    whoever_left_is_still_named,
    values_that_are_not_shared_are_shown,
    errors_are_logged_whole,
)


@pytest.mark.parametrize("fault", FAULTS, ids=lambda fault: fault.__name__)
def test_a_planted_fault_is_found(fault: Callable[[], Iterator[None]]) -> None:
    with fault(), pytest.raises(AssertionError):  # type: ignore[attr-defined]
        played(examples=20, steps=30)
