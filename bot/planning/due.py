"""One thing that falls due."""

from datetime import UTC, datetime
from enum import StrEnum
from typing import NamedTuple

from bot.entries import Activity, Meal
from bot.messages import Kind


class Topic(StrEnum):
    """What an unasked message is about."""

    BEFORE_MEAL = "before_meal"
    AFTER_MEAL = "after_meal"
    AFTER_ACTIVITY = "after_activity"
    RECHECK = "recheck"
    DIGEST = "digest"
    GO_ON = "go_on"
    TEACHING = "teaching"
    WEEKLY_QUESTION = "weekly_question"
    LOWS_POSSIBLE = "may_go_low"
    KETONES_POSSIBLE = "ketone_risk"


#: Topics that ask for a reading.
PROMPTS = (Topic.BEFORE_MEAL, Topic.AFTER_MEAL, Topic.AFTER_ACTIVITY, Topic.RECHECK)


# A tuple: a turn makes half a dozen, and a frozen dataclass takes four times as long to make.
class Due(NamedTuple):
    """Something to say at `at`, worthless after `until`.

    `key` names it for ever: what was said once is never said again. `cause` is the event it is
    about. `nudge` marks the second asking; `number` which of several lines it is;
    `week_end` the instant at which a digest's week ends.
    """

    key: str
    topic: Topic
    at: datetime
    until: datetime
    cause: int | None = None
    nudge: bool = False
    number: int = 0
    week_end: datetime | None = None

    @property
    def kind(self) -> Kind:
        """The kind of message that says it."""
        if self.topic is Topic.DIGEST:
            return Kind.DIGEST
        return Kind.PROMPT if self.topic in PROMPTS else Kind.NOTE

    @property
    def about(self) -> str | None:
        """What a prompt asks for."""
        return self.topic.value if self.topic in PROMPTS else None


def _stamp(instant: datetime) -> str:
    at = instant.astimezone(UTC)
    # A fifth of strftime's time: every turn names the meals that it asks about.
    clock = (at.year, at.month, at.day, at.hour, at.minute, at.second)
    return "%04d%02d%02dT%02d%02d%02d" % clock  # noqa: UP031


def meal_key(meal: Meal) -> str:
    """Names the two-hour prompt of a meal by its start: mending the dish asks for no second one,
    moving the start does. Only for a meal whose start is known."""
    if meal.started_at is None:
        raise ValueError("a meal without a start has no two-hour prompt")
    return f"after_meal:{_stamp(meal.started_at)}"


def activity_key(activity: Activity) -> str:
    """Names the prompt after an activity by its end."""
    return f"after_activity:{_stamp(activity.ended_at)}"
