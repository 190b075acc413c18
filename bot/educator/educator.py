"""The educator as the bot knows them, with their alerts. Frozen; a change is a new one."""

from dataclasses import dataclass, field
from datetime import datetime, time

from bot.caution.ladder import EducatorWhy
from bot.participants import Enrolment
from bot.units import Unit

#: Monday is 0.
WORKING_WEEK = frozenset(range(5))


@dataclass(frozen=True, slots=True, kw_only=True)
class Hours:
    """Working hours on the educator's own clock: `starts` is inside, `ends` outside."""

    days: frozenset[int] = WORKING_WEEK
    starts: time = time(8, 0)
    ends: time = time(16, 0)

    def __post_init__(self) -> None:
        if not self.days or not self.days <= set(range(7)):
            raise ValueError("working days are some of 0 (Monday) to 6")
        if self.starts >= self.ends:
            raise ValueError("working hours end after they start")


@dataclass(frozen=True, slots=True, kw_only=True)
class Alert:
    """A word about one participant, from the instant it fell due to the educator's `closed`.

    `number` counts up within the educator and names the alert in chat; `word` is the key of the
    word to the educator, `cause` the event it is about; `also` what else one value gave reason
    for, less stern than `why`. `until`: told later than that, it comes as one line among what was
    missed. `passed_at` is when it went on to the deputy.
    """

    number: int
    participant: str
    word: str
    why: EducatorWhy
    cause: int
    due_at: datetime
    until: datetime
    also: tuple[EducatorWhy, ...] = ()
    told_at: datetime | None = None
    passed_at: datetime | None = None
    seen_at: datetime | None = None
    seen_by: str | None = None
    called_at: datetime | None = None
    closed_at: datetime | None = None

    @property
    def whys(self) -> tuple[EducatorWhy, ...]:
        """All that it is about, the sternest first."""
        return (self.why, *self.also)

    @property
    def is_open(self) -> bool:
        """Not closed yet."""
        return self.closed_at is None


@dataclass(frozen=True, slots=True, kw_only=True)
class Invited:
    """A code that waits to be used: its last four letters, and the word that was chosen for
    the person to come."""

    tail: str
    label: str | None
    at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Visit:
    """The visit of a participant, two weeks after joining; `told_at` once the educator was
    reminded of it."""

    participant: str
    due_at: datetime
    told_at: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Usual:
    """What the last invitation said of place, unit, emergency number and language."""

    zone: str
    unit: Unit | None
    emergency_number: str | None
    language: str = "en"


@dataclass(frozen=True, slots=True, kw_only=True)
class Educator:
    """Somebody who teaches participants of their own.

    `id` is random and public. `deputy` is the id of the educator who was asked to stand in;
    `deputy_agreed` tells whether they said yes. `talk` is the question that is open in the chat.
    `labels` are the educator's own words for their participants (id, word), seen by nobody else.
    """

    id: str
    zone: str
    joined_at: datetime
    language: str = "en"
    hours: Hours = field(default_factory=Hours)
    away: bool = False
    deputy: str | None = None
    deputy_agreed: bool = False
    talk: Enrolment | None = None
    usual: Usual | None = None
    invited: tuple[Invited, ...] = ()
    labels: tuple[tuple[str, str], ...] = ()
    alerts: tuple[Alert, ...] = ()
    last_alert: int = 0
    visits: tuple[Visit, ...] = ()

    def label(self, participant: str) -> str | None:
        """The educator's own word for a participant."""
        return dict(self.labels).get(participant)

    def alert(self, number: int) -> Alert | None:
        """The alert with this number."""
        return next((alert for alert in self.alerts if alert.number == number), None)
