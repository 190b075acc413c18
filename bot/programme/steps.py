"""Which step is in force, and whether the next one is due to be offered."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.entries import Step, What
from bot.glucose.pairs import Pair, Status
from bot.glucose.week import is_very_high
from bot.localtime import shifted
from bot.record import Record
from bot.record.fold import is_low

#: A step needs several paired tests, so that a comparison means something (project rule).
PAIRS_A_STEP = 3

#: No step that lowers glucose, and no fewer tests, within a week of a low or of 300 (contract).
CALM_FOR = timedelta(days=7)

#: The setting under which an educator's release of a step is kept among the requests.
RELEASED = "released"

#: A step ends by pairs, never by days: time alone teaches nothing.
ORDER = tuple(Step)


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """The next step: whether enough pairs stand, and what holds it back.

    `pairs` are the complete pairs under the step in force, `missing` how many more it needs.
    `needs_release`: the educator releases it first. `held_back`: a low or a very high reading
    within the last week; say nothing of it then.
    """

    step: Step
    pairs: int
    missing: int
    needs_release: bool
    held_back: bool

    @property
    def ready(self) -> bool:
        """Enough pairs, and nothing holds it back."""
        return not self.missing and not self.held_back


def step_at(record: Record, instant: datetime) -> Step:
    """The step in force at an instant: as usual from joining, then the last one taken."""
    step = Step.AS_USUAL
    for noted in record.steps:
        if noted.at.timestamp() <= instant.timestamp():
            step = noted.entry.step
    return step


def next_step(step: Step) -> Step | None:
    """The step after this one; None after the last."""
    index = ORDER.index(step) + 1
    return ORDER[index] if index < len(ORDER) else None


def released(record: Record, step: Step) -> bool:
    """Tell whether the educator has released this step."""
    return any(
        noted.entry.what is What.SETTINGS
        and noted.entry.setting == RELEASED
        and noted.entry.setting_value == step.value
        for noted in record.requests
    )


def offer(record: Record, every: Sequence[Pair], now: datetime) -> Offer | None:
    """The next step to take at `now`, from all pairs of the record; None after the last."""
    current = step_at(record, now)
    following = next_step(current)
    if following is None:
        return None
    since = max(
        (noted.at.timestamp() for noted in record.steps if noted.at <= now),
        default=record.participant.joined_at.timestamp(),
    )
    until = now.timestamp()
    counted = sum(
        pair.status is Status.COMPLETE
        and not pair.unconfirmed
        and since <= pair.meal.seconds <= until
        for pair in every
    )
    return Offer(
        step=following,
        pairs=counted,
        missing=max(PAIRS_A_STEP - counted, 0),
        needs_release=record.participant.needs_release and not released(record, following),
        held_back=not calm(record, now),
    )


def calm(record: Record, now: datetime) -> bool:
    """No low and nothing from 300 (16.7) within the 168 hours up to `now`."""
    earliest, latest = shifted(now, -CALM_FOR).timestamp(), now.timestamp()
    return not any(
        is_low(noted.entry, record.participant.limits) or is_very_high(noted.entry)
        for noted in record.readings
        if earliest <= noted.seconds <= latest
    )
