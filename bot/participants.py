"""The person whom the bot serves, as the record knows them. Frozen; a change is a new one."""

from dataclasses import dataclass, field
from datetime import date, datetime, time
from enum import StrEnum

from bot.units import Unit

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


class State(StrEnum):
    """Whether anything may be sent unasked."""

    ACTIVE = "active"
    PAUSED = "paused"
    STOPPED = "stopped"


@dataclass(frozen=True, slots=True, kw_only=True)
class Goals:
    """Goals in mg/dL: before a meal both ends included, after it from 70 to below `after_high`.

    Defaults: ADA Standards of Care 2026, section 6, table 6.3.
    """

    before_low: float = 80
    before_high: float = 130
    after_high: float = 180


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """Where `low` and `high` begin, in mg/dL; a care team may narrow them, never widen.

    Below 70: ADA Standards of Care 2026, section 6, level 1. From 250: same, section 13 (call
    a clinician when values stay above it within a day). `low` may be raised to 80 at most,
    `high` lowered to 200 at least (project rule).
    """

    low: float = 70
    high: float = 250

    def __post_init__(self) -> None:
        if not 70 <= self.low <= 80:
            raise ValueError("low must be from 70 to 80 mg/dL")
        if not 200 <= self.high <= 250:
            raise ValueError("high must be from 200 to 250 mg/dL")


@dataclass(frozen=True, slots=True, kw_only=True)
class Participant:
    """A person with type 2 diabetes who tests in pairs.

    `id` is random and public, never the chat's. `may_go_low` and `ketone_risk` are None where
    unknown, which counts as true (see `can_go_low`, `can_make_ketones`).
    """

    id: str
    unit: Unit
    zone: str
    joined_at: datetime
    language: str = "en"
    week_ends: str = "sunday"
    digest_at: time = time(18, 0)
    quiet_from: time = time(22, 30)
    quiet_to: time = time(6, 30)
    main_meal: time | None = None
    may_go_low: bool | None = None
    ketone_risk: bool | None = None
    emergency_number: str | None = None
    tell_educator: bool = False
    goals: Goals = field(default_factory=Goals)
    limits: Limits = field(default_factory=Limits)
    state: State = State.ACTIVE
    educator: str | None = None
    name: str | None = None
    fluid_limit: bool = False
    acarbose: bool = False
    helper: bool = False
    pregnant: bool = False
    discreet: bool = False
    high_plan_until: datetime | None = None
    nights_until: datetime | None = None
    fast_from: date | None = None  # days of fasting that the educator has released,
    fast_to: date | None = None  # both of them included
    consent: str | None = None  # the version of the wording that was agreed to
    silent: bool = False  # asked whether to go on, and no word since
    rhythm: str = "daily"  # how often pairs are tested: bot.programme.testing.Rhythm

    @property
    def can_go_low(self) -> bool:
        """Unknown counts as yes."""
        return self.may_go_low is not False

    @property
    def can_make_ketones(self) -> bool:
        """Unknown counts as yes."""
        return self.ketone_risk is not False

    @property
    def needs_release(self) -> bool:
        """Each step past as_usual waits for the educator: with less starch lows can come."""
        return self.can_go_low or self.can_make_ketones

    def fasts_on(self, day: date) -> bool:
        """Whether this local date is one of the fasting days that the educator released."""
        return (
            self.fast_from is not None
            and self.fast_to is not None
            and self.fast_from <= day <= self.fast_to
        )

    @property
    def judged(self) -> bool:
        """Goals are not judged in pregnancy until the care team sets them."""
        return not self.pregnant


class Role(StrEnum):
    """What a chat is to the bot."""

    PARTICIPANT = "participant"
    EDUCATOR = "educator"


@dataclass(frozen=True, slots=True, kw_only=True)
class Invitation:
    """What the one who invites already knows. What is None is asked at joining."""

    zone: str | None = None
    unit: Unit | None = None
    main_meal: time | None = None
    language: str = "en"
    may_go_low: bool | None = None
    ketone_risk: bool | None = None
    quiet_from: time = time(22, 30)
    quiet_to: time = time(6, 30)
    emergency_number: str | None = None
    educator: str | None = None
    fluid_limit: bool = False
    acarbose: bool = False
    helper: bool = False
    role: Role = Role.PARTICIPANT


@dataclass(frozen=True, slots=True, kw_only=True)
class Enrolment:
    """How far a chat has come in joining; nothing else is kept of it before consent.

    `stage` is the name of the question that is open; `known` what was answered so far, as text.
    """

    stage: str
    known: tuple[tuple[str, str], ...] = ()
