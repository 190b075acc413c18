"""Whatever is told, in whatever order and however late: grave things are cautioned first.

Common practice, no source, but for the limits (ADA 2026, section 6, p. 145).
"""

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from bot.caution import Caution, Level
from bot.caution.ladder import rechecks, word_to_educator
from bot.caution.thresholds import SEND_ORDER
from bot.entries import Moment, Reading, Suggests, Symptom
from bot.participants import State
from bot.record import Body
from bot.units import Unit
from tests.caution.talk import (
    PASSED_OUT,
    SHAKY,
    THIRSTY,
    VOMITING,
    WRONG_DOSE,
    Talk,
    at,
    person,
    reading,
    rice,
    sweet,
)

VALUES_MG_DL = st.one_of(
    st.integers(20, 600), st.sampled_from([53, 54, 69, 70, 89, 249, 250, 299, 300]),
    st.sampled_from(["HI", "LO"]),
)  # fmt: skip
VALUES_MMOL_L = st.one_of(
    st.integers(11, 333).map(lambda tenths: tenths / 10),
    st.sampled_from([2.9, 3.0, 3.8, 3.9, 13.8, 13.9, 16.6, 16.7]),
    st.sampled_from(["HI", "LO"]),
)
LATENESS = st.sampled_from([0, 0, 0, 1, 14, 15, 16, 30, 59, 60, 61, 180, 1440, 4000])
PAUSES = st.sampled_from([1, 5, 14, 15, 16, 29, 30, 31, 60, 240, 1440, 10080])
OTHERS: st.SearchStrategy[Body] = st.sampled_from(
    [SHAKY, THIRSTY, VOMITING, PASSED_OUT, WRONG_DOSE]
)
PEOPLE = st.fixed_dictionaries(
    {
        "unit": st.sampled_from(Unit),
        "zone": st.sampled_from(["UTC", "America/Lima", "Europe/Berlin", "Pacific/Auckland"]),
        "may_go_low": st.sampled_from([None, True, False]),
        "ketone_risk": st.sampled_from([None, True, False]),
        "tell_educator": st.booleans(),
        "state": st.sampled_from(State),
        "high_plan_until": st.sampled_from([None, at(20000)]),
    }
)


def grave(body: Body) -> bool:
    """Below 54 (3.0), LO, or an emergency symptom: decided here without the code under test."""
    match body:
        case Symptom(suggests=Suggests.EMERGENCY):
            return True
        case Reading(off_scale="low"):
            return True
        case Reading(value=float() | int() as value, unit=unit):
            return value < (54 if unit is Unit.MG_DL else 3.0)
    return False


class Telling(RuleBasedStateMachine):
    """Messages, corrections and removals in any order."""

    @initialize(known=PEOPLE)
    def joins(self, known: dict[str, object]) -> None:
        self.talk = Talk(person(**known))
        self.now = 0.0
        self.said: tuple[Caution, ...] = ()
        self.told: tuple[Body, ...] = ()

    @rule(data=st.data(), pause=PAUSES)
    def tells(self, data: st.DataObject, pause: float) -> None:
        self.now += pause
        values = VALUES_MG_DL if self.talk.who.unit is Unit.MG_DL else VALUES_MMOL_L
        readings = [
            reading(
                data.draw(values),
                self.now - data.draw(LATENESS),
                unit=self.talk.who.unit,
                moment=data.draw(st.sampled_from(Moment)),
            )
            for _ in range(data.draw(st.integers(0, 2)))
        ]
        others: list[Body] = data.draw(st.lists(OTHERS, max_size=2))
        self._hear((*readings, *others))

    @rule(pause=PAUSES, late=LATENESS, sweetened=st.booleans())
    def eats(self, pause: float, late: float, sweetened: bool) -> None:
        self.now += pause
        started = self.now - late
        self._hear((sweet("juice", started) if sweetened else rice(started),))

    @precondition(lambda self: self.talk.record.readings)
    @rule(data=st.data(), pause=PAUSES)
    def mends(self, data: st.DataObject, pause: float) -> None:
        self.now += pause
        old = data.draw(st.sampled_from(self.talk.record.readings))
        values = VALUES_MG_DL if self.talk.who.unit is Unit.MG_DL else VALUES_MMOL_L
        taken = (old.entry.taken_at or old.at) - at(0)
        new = reading(data.draw(values), taken.total_seconds() / 60, unit=self.talk.who.unit)
        self.told = (new,)
        self.said = self.talk.mend(self.now, old.id, new)

    @precondition(lambda self: self.talk.record.readings)
    @rule(data=st.data())
    def takes_back(self, data: st.DataObject) -> None:
        old = data.draw(st.sampled_from(self.talk.record.readings))
        self.told = ()
        self.said = self.talk.mend(self.now, old.id)

    def _hear(self, bodies: tuple[Body, ...]) -> None:
        self.told = bodies
        self.said = self.talk.tell(self.now, *bodies)

    @invariant()
    def a_grave_thing_is_said_first(self) -> None:
        if any(grave(body) for body in self.told):
            assert self.said
            assert self.said[0].level in (Level.EMERGENCY, Level.VERY_LOW)
        if PASSED_OUT in self.told:
            assert self.said[0].level is Level.EMERGENCY
        below = [body for body in self.told if isinstance(body, Reading) and grave(body)]
        if below:
            assert Level.VERY_LOW in [caution.level for caution in self.said]

    @invariant()
    def cautions_are_sent_worst_first_one_a_level(self) -> None:
        order = [SEND_ORDER.index(caution.level) for caution in self.said]
        assert order == sorted(set(order))

    @invariant()
    def a_low_that_was_just_told_is_tested_again(self) -> None:
        lows = [
            noted
            for noted in self.talk.record.readings
            if noted.id in self.talk.new and grave(noted.entry)
        ]
        if not lows or self.talk.who.state is State.STOPPED:
            return
        # Answered within the same message, or a recheck is due after it.
        last = lows[-1]
        later = [noted for noted in self.talk.record.readings if noted.id > last.id]
        due = [one for one in rechecks(self.talk.record) if one.due_at > at(self.now)]
        assert later or any(one.cause == last.id for one in due)

    @invariant()
    def nobody_is_prompted_after_stop_and_no_educator_told_unasked(self) -> None:
        if self.talk.who.state is State.STOPPED:
            assert rechecks(self.talk.record) == ()
        if not self.talk.who.tell_educator:
            assert word_to_educator(self.talk.record) == ()

    @invariant()
    def keys_are_unique(self) -> None:
        keys = [one.key for one in rechecks(self.talk.record)]
        keys += [one.key for one in word_to_educator(self.talk.record)]
        assert len(keys) == len(set(keys))

    @invariant()
    def a_level_is_quietened_by_a_plan_only_where_it_may_be(self) -> None:
        for caution in self.said:
            assert not caution.planned or caution.level is Level.HIGH


TestTelling = Telling.TestCase
TestTelling.settings = settings(max_examples=60, stateful_step_count=25)
