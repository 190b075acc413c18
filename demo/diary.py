"""An invented diary, for looking at charts and digests and for testing them.


A `Diary` writes down what a participant would have told, as events; its week comes out of the
same fold and the same sums as a real one.
"""

from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta

from bot.entries import (
    Activity,
    Answer,
    Meal,
    MealName,
    Moment,
    OffScale,
    Reading,
    Step,
    StepTaken,
)
from bot.glucose.week import Week, week, week_of
from bot.localtime import at_local, shifted
from bot.messages import Kind
from bot.participants import Participant
from bot.record import Event, Record, Spoke, fold
from bot.units import Unit, in_unit, to_mg_dl

MONDAY = date(2026, 3, 2)
ZONE = "Africa/Nairobi"


def somebody(**known: object) -> Participant:
    """A participant with every question answered, unless told otherwise."""
    facts: dict[str, object] = {
        "id": "p1",
        "unit": Unit.MG_DL,
        "zone": ZONE,
        "joined_at": at_local(MONDAY - timedelta(days=28), time(9), ZONE),
        "may_go_low": False,
        "ketone_risk": False,
    }
    return Participant(**{**facts, **known})  # type: ignore[arg-type]


@dataclass
class Diary:
    """What somebody told; values in mg/dL, or HI and LO, days counted from a Monday."""

    who: Participant = field(default_factory=somebody)
    monday: date = MONDAY
    events: list[Event] = field(default_factory=list)

    def at(self, day: int, clock: str) -> datetime:
        """The instant of a clock time on the diary's day (0 is the Monday)."""
        return at_local(self.monday + timedelta(days=day), time.fromisoformat(clock), self.who.zone)

    def reading(
        self, day: int, clock: str, value: float | str, moment: Moment = Moment.UNSTATED
    ) -> "Diary":
        """A test, told when it is taken."""
        self._test(self.at(day, clock), value, moment)
        return self

    def meal(
        self,
        day: int,
        clock: str,
        text: str,
        before: float | str | None = None,
        after: float | str | None = None,
        *,
        name: MealName | None = None,
        minutes: int = 120,
    ) -> "Diary":
        """A meal with the tests around it."""
        start = self.at(day, clock)
        if before is not None:
            self._test(start, before, Moment.BEFORE_MEAL)
        self.tell(start, Meal(text=text, name=name, started_at=start))
        if after is not None:
            self._test(shifted(start, timedelta(minutes=minutes)), after, Moment.AFTER_MEAL)
        return self

    def activity(
        self,
        day: int,
        clock: str,
        text: str,
        minutes: float | None = None,
        *,
        before: float,
        after: float,
    ) -> "Diary":
        """An activity that ends at this time, with the tests before and after it."""
        end = self.at(day, clock)
        self._test(shifted(end, timedelta(minutes=-(minutes or 0) - 5)), before, Moment.UNSTATED)
        self.tell(end, Activity(text=text, minutes=minutes, ended_at=end))
        self._test(shifted(end, timedelta(minutes=10)), after, Moment.AFTER_ACTIVITY)
        return self

    def caution(self, day: int, clock: str, level: str) -> "Diary":
        """A caution that the bot sent."""
        key = f"caution:{level}:{day}:{clock}"
        self.tell(self.at(day, clock), Spoke(kind=Kind.CAUTION, about=level, key=key))
        return self

    def step(self, day: int, clock: str, step: Step) -> "Diary":
        """A step of the programme, taken."""
        self.tell(self.at(day, clock), StepTaken(step=step))
        return self

    def answer(self, day: int, clock: str, about: str, how: str) -> "Diary":
        """An answer to the weekly question."""
        self.tell(self.at(day, clock), Answer(about=about, how=how))
        return self

    def record(self) -> Record:
        """Everything that stands."""
        return fold(self.who, self.events)

    def week(self, *, until: datetime | None = None) -> Week:
        """The figures of the diary's week, or of the part of it before `until`."""
        start, end, _, _ = week_of(self.who, self.at(6, self.who.digest_at.isoformat()))
        return week(self.record(), start=start, end=until or end)

    def _test(self, at: datetime, value: float | str, moment: Moment) -> None:
        unit = self.who.unit
        if isinstance(value, str):
            off = OffScale.HIGH if value == "HI" else OffScale.LOW
            reading = Reading(
                value=None, unit=unit, mg_dl=None, moment=moment, taken_at=at, off_scale=off
            )
        else:
            typed = float(in_unit(value, unit))
            reading = Reading(
                value=typed, unit=unit, mg_dl=to_mg_dl(typed, unit), moment=moment, taken_at=at
            )
        self.tell(at, reading)

    def tell(self, at: datetime, body: object) -> None:
        """Any other event, said at this instant."""
        number = len(self.events) + 1
        self.events.append(
            Event(id=number, at=at, body=body, message=f"m{number}")  # type: ignore[arg-type]
        )
