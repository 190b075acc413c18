"""A talk in a test: a person tells, the cautions that are due are kept as said."""

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from bot.caution import Caution, due_cautions
from bot.entries import (
    Activity,
    Food,
    FoodKind,
    Meal,
    Moment,
    OffScale,
    Reading,
    Request,
    Suggests,
    Symptom,
    What,
)
from bot.messages import Kind
from bot.participants import Participant
from bot.record import Body, Event, Record, Retracted, Spoke, fold
from bot.units import Unit, to_mg_dl

START = datetime(2026, 3, 2, 10, 0, tzinfo=UTC)


def at(minutes: float) -> datetime:
    """So many minutes after the start of the talk."""
    return START + timedelta(minutes=minutes)


def person(**known: object) -> Participant:
    """A participant whose clock is UTC, who may go low and make ketones (unknown) by default."""
    given = {"id": "ana", "unit": Unit.MG_DL, "zone": "UTC", "joined_at": START, **known}
    return Participant(**given)  # type: ignore[arg-type]


def reading(
    value: float | str,
    taken: float | None = None,
    *,
    unit: Unit = Unit.MG_DL,
    moment: Moment = Moment.UNSTATED,
) -> Reading:
    """A reading taken so many minutes after the start; HI and LO are off the scale."""
    taken_at = at(taken) if taken is not None else None
    if isinstance(value, str):
        off_scale = {"HI": OffScale.HIGH, "LO": OffScale.LOW}[value]
        return Reading(
            value=None, unit=unit, mg_dl=None, taken_at=taken_at, off_scale=off_scale, moment=moment
        )
    return Reading(
        value=value, unit=unit, mg_dl=to_mg_dl(value, unit), taken_at=taken_at, moment=moment
    )


def felt(text: str, suggests: Suggests) -> Symptom:
    """A symptom in somebody's words."""
    return Symptom(text=text, suggests=suggests)


SHAKY = felt("shaky", Suggests.LOW)
THIRSTY = felt("very thirsty", Suggests.HIGH)
VOMITING = felt("vomiting", Suggests.HIGH)
PASSED_OUT = felt("passed out", Suggests.EMERGENCY)
WRONG_DOSE = Request(what=What.WRONG_DOSE)


def sweet(text: str, started: float) -> Meal:
    """Something sweet eaten."""
    foods = (Food(text=text, kind=FoodKind.SWEET_DRINK),)
    return Meal(text=text, started_at=at(started), foods=foods)


def rice(started: float) -> Meal:
    """A meal."""
    foods = (Food(text="rice", kind=FoodKind.STARCH),)
    return Meal(text="rice", started_at=at(started), foods=foods)


def walk(ended: float) -> Activity:
    """A walk of twenty minutes."""
    return Activity(text="walk", minutes=20, ended_at=at(ended))


@dataclass
class Talk:
    """What was told and said so far."""

    who: Participant = field(default_factory=person)
    events: list[Event] = field(default_factory=list)
    new: frozenset[int] = frozenset()

    @property
    def record(self) -> Record:
        """The record as it stands."""
        return fold(self.who, self.events)

    def tell(self, minutes: float, *bodies: Body) -> tuple[Caution, ...]:
        """One message at that minute; its cautions are kept as said."""
        first = len(self.events) + 1
        told = [
            Event(id=first + place, at=at(minutes), body=body, message=str(first))
            for place, body in enumerate(bodies)
        ]
        self.events.extend(told)
        self.new = frozenset(event.id for event in told)
        due = due_cautions(self.record, self.new, now=at(minutes))
        for caution in due:
            spoke = Spoke(
                kind=Kind.CAUTION,
                about=caution.level.value,
                key=f"caution:{caution.cause}:{caution.level}",
                cause=caution.cause,
            )
            self.events.append(Event(id=len(self.events) + 1, at=at(minutes), body=spoke))
        return due

    def test(
        self, minutes: float, value: float | str, *, moment: Moment = Moment.UNSTATED
    ) -> tuple[Caution, ...]:
        """A message with one reading taken as it is sent, in the person's unit."""
        return self.tell(minutes, reading(value, minutes, unit=self.who.unit, moment=moment))

    def mend(self, minutes: float, id_: int, *bodies: Body) -> tuple[Caution, ...]:
        """What stood is taken back and the bodies stand in its place."""
        return self.tell(minutes, Retracted(ids=(id_,)), *bodies)


def levels(cautions: tuple[Caution, ...]) -> list[str]:
    """The levels in the order of sending."""
    return [caution.level.value for caution in cautions]
