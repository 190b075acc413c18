"""Builders: a participant's record told in a few words, times on 2 March 2026, UTC."""

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from bot.entries import (
    Activity,
    Food,
    FoodKind,
    Meal,
    MealName,
    Moment,
    OffScale,
    Reading,
    Step,
    StepTaken,
)
from bot.participants import Participant
from bot.record import Body, Event, Record, Retracted, fold
from bot.units import Unit, to_mg_dl

MONDAY = datetime(2026, 3, 2, tzinfo=UTC)


def at(clock: str, day: int = 0) -> datetime:
    """The instant of `HH:MM` or `HH:MM:SS`, `day` days after Monday 2 March 2026."""
    hours, minutes, *seconds = (int(part) for part in clock.split(":"))
    return MONDAY + timedelta(days=day, hours=hours, minutes=minutes, seconds=sum(seconds))


def person(**changes: object) -> Participant:
    """A participant in UTC with an mg/dL meter who joined at the start of Monday."""
    known: dict[str, object] = {
        "id": "p1",
        "unit": Unit.MG_DL,
        "zone": "UTC",
        "joined_at": MONDAY,
    }
    return Participant(**{**known, **changes})  # type: ignore[arg-type]


def reading(
    value: float | str,
    taken_at: datetime | None,
    moment: Moment = Moment.UNSTATED,
    unit: Unit = Unit.MG_DL,
) -> Reading:
    """A reading; `HI` and `LO` are off the scale."""
    if isinstance(value, str):
        off = OffScale.HIGH if value == "HI" else OffScale.LOW
        return Reading(
            value=None, unit=unit, mg_dl=None, moment=moment, taken_at=taken_at, off_scale=off
        )
    return Reading(
        value=value, unit=unit, mg_dl=to_mg_dl(value, unit), moment=moment, taken_at=taken_at
    )


def meal(
    text: str,
    started_at: datetime | None,
    *kinds: FoodKind,
    name: MealName | None = None,
) -> Meal:
    """A meal whose foods are the words of its text, of these kinds (starch unless told)."""
    foods = tuple(
        Food(text=word, kind=kind)
        for word, kind in zip(text.split(" and "), kinds or (FoodKind.STARCH,) * 9, strict=False)
    )
    return Meal(text=text, name=name, started_at=started_at, foods=foods)


def activity(text: str, ended_at: datetime, minutes: float | None = None) -> Activity:
    """An activity that is over."""
    return Activity(text=text, minutes=minutes, ended_at=ended_at)


@dataclass
class Story:
    """Events in the order in which they are told."""

    participant: Participant = field(default_factory=person)
    events: list[Event] = field(default_factory=list)

    def tell(self, *bodies: Body, said_at: datetime | None = None) -> "Story":
        """Add a message with these bodies, said at the last one's instant unless told."""
        message = f"m{len(self.events)}"
        for body in bodies:
            said = said_at or _own_instant(body) or self._last
            self.events.append(Event(id=len(self.events) + 1, at=said, body=body, message=message))
        return self

    def takes(self, step: Step, when: datetime) -> "Story":
        """Move on to a step."""
        return self.tell(StepTaken(step=step), said_at=when)

    def retracts(self, *ids: int) -> "Story":
        """Take events back."""
        return self.tell(Retracted(ids=ids), said_at=self._last)

    @property
    def record(self) -> Record:
        """What stands."""
        return fold(self.participant, self.events)

    @property
    def _last(self) -> datetime:
        return self.events[-1].at if self.events else MONDAY


def pair_events(
    day: int,
    before: float | str,
    after: float | str,
    text: str = "rice and beans",
    clock: str = "12:00",
    *kinds: FoodKind,
    unit: Unit = Unit.MG_DL,
) -> list[Body]:
    """The three entries of a complete pair whose meal starts at this clock time."""
    start = at(clock, day)
    return [
        reading(before, start, Moment.BEFORE_MEAL, unit),
        meal(text, start, *kinds),
        reading(after, start + timedelta(minutes=120), Moment.AFTER_MEAL, unit),
    ]


def _own_instant(body: Body) -> datetime | None:
    for name in ("taken_at", "started_at", "ended_at"):
        instant = getattr(body, name, None)
        if isinstance(instant, datetime):
            return instant
    return None
