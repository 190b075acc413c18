"""What a person can tell: one frozen class a kind of entry, and its JSON form.

The fields are those of the reader's contract; `Food` and the fields marked as kept
aside are for the sums and the conversation and are not part of the printed form.
"""

from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from bot.units import Unit


class Moment(StrEnum):
    """What a reading was taken for."""

    BEFORE_MEAL = "before_meal"
    AFTER_MEAL = "after_meal"
    AFTER_ACTIVITY = "after_activity"
    FASTING = "fasting"
    BEDTIME = "bedtime"
    RECHECK = "recheck"
    UNSTATED = "unstated"


class OffScale(StrEnum):
    """A meter shows HI or LO instead of a number."""

    HIGH = "high"
    LOW = "low"


class MealName(StrEnum):
    """Names of meals."""

    BREAKFAST = "breakfast"
    LUNCH = "lunch"
    DINNER = "dinner"
    SNACK = "snack"


class FoodKind(StrEnum):
    """The make-up of a food, as far as the rise of glucose is concerned."""

    STARCH = "starch"
    SWEET_DRINK = "sweet_drink"
    SWEET_FOOD = "sweet_food"
    FRUIT = "fruit"
    PROTEIN = "protein"
    VEGETABLE = "vegetable"
    DAIRY = "dairy"
    FAT = "fat"
    MIXED_DISH = "mixed_dish"
    FREE_DRINK = "free_drink"
    UNKNOWN = "unknown"


class Suggests(StrEnum):
    """What a symptom may mean."""

    LOW = "low"
    HIGH = "high"
    EMERGENCY = "emergency"


class Step(StrEnum):
    """The steps of the programme, in order."""

    AS_USUAL = "as_usual"
    LIGHTER_MEAL = "lighter_meal"
    MEASURED_PLATE = "measured_plate"
    MOVE_AFTER = "move_after"


class What(StrEnum):
    """What a request asks for, or what a message is about that holds no entry."""

    HELP = "help"
    STOP = "stop"
    PAUSE = "pause"
    RESUME = "resume"
    SUMMARY = "summary"
    RECORD = "record"
    GOALS = "goals"
    NEXT_STEP = "next_step"
    SETTINGS = "settings"
    LATER = "later"
    EXPORT = "export"
    ERASE = "erase"
    PREGNANCY = "pregnancy"
    WRONG_DOSE = "wrong_dose"
    MEDICINE_ADVICE = "medicine_advice"
    FOOD_ADVICE = "food_advice"
    NOT_GLUCOSE = "not_glucose"
    CHATTER = "chatter"


class Ask(StrEnum):
    """The one thing to ask back about a message."""

    UNIT = "unit"
    VALUE = "value"
    MEANING = "meaning"
    WHEN_DONE = "when_done"


class Asked(StrEnum):
    """What the bot asked last and is still waiting for."""

    BEFORE_MEAL = "before_meal"
    AFTER_MEAL = "after_meal"
    AFTER_ACTIVITY = "after_activity"
    RECHECK = "recheck"
    MEAL = "meal"


class By(StrEnum):
    """Who writes."""

    SELF = "self"
    HELPER = "helper"


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A glucose value: `value` as typed in `unit`, `mg_dl` unrounded; both None off scale.

    `taken_at` is None where the text does not tell when an earlier one of two was taken.
    """

    value: float | None
    unit: Unit
    mg_dl: float | None
    moment: Moment = Moment.UNSTATED
    taken_at: datetime | None = None
    off_scale: OffScale | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Food:
    """One food of a meal (kept aside): the words as typed and its kind."""

    text: str
    kind: FoodKind


@dataclass(frozen=True, slots=True, kw_only=True)
class Meal:
    """Something eaten; `started_at` is the first bite, None where only its end is told."""

    text: str
    name: MealName | None = None
    started_at: datetime | None = None
    foods: tuple[Food, ...] = ()  # kept aside
    photo: str | None = None  # kept aside: the chat's id of the picture


@dataclass(frozen=True, slots=True, kw_only=True)
class Treatment:
    """Sugar, sweet drink, sweet food or fruit taken against a low."""

    text: str
    taken_at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Activity:
    """Something the body did, over at `ended_at`; `minutes` long where told."""

    text: str
    minutes: float | None
    ended_at: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Correction:
    """Mends what was said: a value, or exactly one of `moment`, `at`, `text`."""

    value: float | None = None
    unit: Unit | None = None
    replaces: float | None = None
    moment: Moment | None = None
    at: datetime | None = None
    text: str | None = None
    foods: tuple[Food, ...] = ()  # kept aside: the foods of `text`


@dataclass(frozen=True, slots=True)
class Removal:
    """Takes back everything that the last message entered."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Skip:
    """No reading this time."""

    reason: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Symptom:
    """How somebody feels, in their words."""

    text: str
    suggests: Suggests


@dataclass(frozen=True, slots=True, kw_only=True)
class Strips:
    """How many test strips are left."""

    left: int


@dataclass(frozen=True, slots=True, kw_only=True)
class StepTaken:
    """The participant moved on to a step of the programme."""

    step: Step


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """An answer to the weekly question: `about` hunger or tiredness, `how` less, same, more."""

    about: str
    how: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Request:
    """Something asked of the bot. The other fields are kept aside for the conversation.

    `minutes` goes with `later` (None: as long as the bot thinks fit); `setting` and
    `setting_value` with `settings` (`language` `es`, `zone` `America/Lima`, `nights` `this week`);
    `subject` with `food_advice`: the food asked about.
    """

    what: What
    minutes: float | None = None
    setting: str | None = None
    setting_value: str | None = None
    subject: str | None = None


#: What the reader can give.
Said = Reading | Meal | Activity | Correction | Removal | Skip | Symptom | Strips | Request


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """What an `ask` is about, for the conversation (kept aside; never entered as it is).

    `readings` are candidates that an answer completes: with `ask: unit` the typed number in
    the participant's own unit (`mg_dl` is not to be trusted until the unit is known).
    `activity` is what `when_done` asks about. `others_feel` is what somebody else's symptom
    suggests, where one was told with `ask: meaning`; `others` that a number was somebody else's.
    """

    readings: tuple[Reading, ...] = ()
    numbers: tuple[float, ...] = ()
    activity: str | None = None
    others_feel: Suggests | None = None
    others: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Understood:
    """What one message means: entries in the order of the text, and what to ask back."""

    entries: tuple[Said, ...] = ()
    ask: Ask | None = None
    doubt: Doubt = field(default_factory=Doubt)
