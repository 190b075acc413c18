"""What the bot says back to a report: value, food, goal, what next and when."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.entries import Activity, Ask, Meal, MealName, Moment, Reading, Step
from bot.glucose.effects import Effect
from bot.glucose.pairs import Pair, Status
from bot.glucose.scatter import rise_limit
from bot.participants import Goals, Limits, Participant
from bot.record.fold import is_low
from bot.units import limit_in
from bot.words.amounts import change_words, clock, number_words, value_words


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplySentences:
    """Sentences of replies; braces name what is filled in.

    `ate` are reports, as a person would type them, that a bare time completes for the reader;
    the first that it understands counts. `some_activity` is one that nobody named.
    """

    moments: dict[Moment, str]
    meal_names: dict[MealName, str]
    steps: dict[Step, str]
    your_meal: str
    after_meal: str
    after_meal_minutes: str
    reading: str
    reading_judged: str
    within_before: str
    above_before: str
    under_before: str
    just_under: str
    within_after: str
    above_after: str
    under_after: str
    not_judged: str
    rose: str
    fell: str
    level: str
    plate_likely: str
    start_high: str
    one_test: str
    good_test: str
    thanks: str
    off_time: str
    ate_again: str
    around_low: str
    no_before: str
    meal: str
    meal_unnamed: str
    will_ask: str
    ask_now: str
    not_yet: str
    quiet_then: str
    over_long_ago: str
    moved: str
    activity: str
    activity_minutes: str
    activity_ask: str
    effect_fell: str
    effect_rose: str
    effect_same: str
    beyond_scatter: str
    within_scatter: str
    food_working: str
    corrected: str
    corrected_moment: str
    corrected_start: str
    corrected_text: str
    nothing_to_correct: str
    which_one: str
    removed: str
    removed_last: str
    nothing_removed: str
    skipped: str
    strips: str
    treatment: str
    next_text: str
    weekdays: tuple[str, str, str, str, str, str, str]
    today: str
    tomorrow: str
    which_moment: str
    which_side: str
    which_moment_buttons: tuple[str, ...]
    what_on_plate: str
    first_bite: str
    ate: tuple[str, ...]
    some_activity: str
    ask_unit: str
    ask_value: str
    ask_meaning: str
    ask_when_done: str
    reads_text: str
    photo_words: str


def meal_words(meal: Meal | None, say: ReplySentences) -> str:
    """What to call a meal in a sentence: its food, its name, or `your meal`."""
    if meal is None:
        return say.your_meal
    if meal.text:
        return shortened(meal.text)
    return say.meal_names[meal.name] if meal.name else say.your_meal


def shortened(text: str, length: int = 60) -> str:
    """A dish on one line, cut at a word."""
    line = " ".join(text.split())
    if len(line) <= length:
        return line
    cut = line[: length - 1].rsplit(" ", 1)[0]
    return f"{cut}…"


def sentence_case(text: str) -> str:
    """The first letter large, the rest as it is."""
    return text[:1].upper() + text[1:]


def reading_words(
    reading: Reading, pair: Pair | None, person: Participant, say: ReplySentences
) -> str:
    """One reading said back, with its goal; with `pair` it is that pair's after reading."""
    if pair is not None:
        return _after_words(reading, pair, person, say)
    judgement = _judge_before(reading, person, say) if _is_before(reading.moment) else None
    if judgement is None:
        return unjudged_words(reading, say)
    value, moment = value_words(reading), say.moments[reading.moment]
    return say.reading_judged.format(value=value, moment=moment, judgement=judgement)


def unjudged_words(reading: Reading, say: ReplySentences) -> str:
    """One reading said back without a goal."""
    return say.reading.format(value=value_words(reading), moment=say.moments[reading.moment])


def _is_before(moment: Moment) -> bool:
    return moment in (Moment.BEFORE_MEAL, Moment.FASTING)


def _judge_before(reading: Reading, person: Participant, say: ReplySentences) -> str | None:
    if reading.value is None:
        return None
    if not person.judged:
        return say.not_judged
    goals = person.goals
    low, high = (limit_in(goal, reading.unit) for goal in (goals.before_low, goals.before_high))
    words = {
        "low": number_words(goals.before_low, reading.unit),
        "high": number_words(goals.before_high, reading.unit),
    }
    if is_low(reading, person.limits):  # cautioned when it was told; never called `not a low`
        return say.under_before.format(**words)
    if reading.value > high:
        return say.above_before.format(**words)
    if reading.value >= low:
        return say.within_before.format(**words)
    return say.just_under.format(**words)


def _judge_after(reading: Reading, goals: Goals, limits: Limits, say: ReplySentences) -> str | None:
    if reading.value is None:
        return None
    high = number_words(goals.after_high, reading.unit)
    if reading.value >= limit_in(goals.after_high, reading.unit):
        return say.above_after.format(high=high)
    if reading.value >= limit_in(limits.low, reading.unit):
        return say.within_after.format(high=high)
    return say.under_after.format(high=high)


def _after_words(reading: Reading, pair: Pair, person: Participant, say: ReplySentences) -> str:
    minutes = pair.after_minutes or 0
    template = say.after_meal if 105 <= minutes <= 135 else say.after_meal_minutes
    moment = template.format(meal=meal_words(pair.meal.entry, say), minutes=minutes)
    judgement = (
        _judge_after(reading, person.goals, person.limits, say) if person.judged else say.not_judged
    )
    value = value_words(reading)
    head = (
        say.reading.format(value=value, moment=moment)
        if judgement is None
        else say.reading_judged.format(value=value, moment=moment, judgement=judgement)
    )
    return " ".join([head, *_pair_lines(pair, person, say)])


def _pair_lines(pair: Pair, person: Participant, say: ReplySentences) -> list[str]:
    match pair.status:
        case Status.ATE_AGAIN:
            return [say.ate_again]
        case Status.OFF_TIME:
            return [say.off_time.format(minutes=pair.after_minutes)]
        case Status.AROUND_LOW:
            return [say.around_low]
        case Status.NO_BEFORE:
            return [say.no_before]
        case Status.COMPLETE:
            return _rise_lines(pair, person, say)
        case _:
            return []


def _rise_lines(pair: Pair, person: Participant, say: ReplySentences) -> list[str]:
    if pair.rise is None or pair.before is None or pair.after is None:
        return []
    before, after = pair.before.entry, pair.after.entry
    by = change_words(pair.rise, person.unit)
    words = {"change": by, "before": value_words(before)}
    if not float(by):
        lines = [say.level.format(**words)]
    else:
        lines = [(say.rose if pair.rise > 0 else say.fell).format(**words)]
    if pair.after_in_goal is None:
        return lines
    if pair.after_in_goal:
        return [*lines, say.good_test]
    clear = (
        before.mg_dl is not None
        and after.mg_dl is not None
        and pair.rise > rise_limit(before.mg_dl, after.mg_dl)
    )
    if clear and pair.before_in_goal:
        lines.append(say.plate_likely)
    elif not clear and pair.before_in_goal is False:
        lines.append(say.start_high)
    return [*lines, say.one_test, say.thanks]


def meal_told(
    meal: Meal,
    *,
    ask_at: datetime | None,
    quiet: bool,
    late: bool,
    teach: bool,
    now: datetime,
    say: ReplySentences,
) -> str:
    """A meal said back: what, from when, and when the next text comes.

    `teach` adds how to tell the first bite, for those who are new.
    """
    if meal.started_at is None:
        return sentence_case(meal_words(meal, say)) + "."
    template = say.meal if meal.text else say.meal_unnamed
    line = template.format(meal=sentence_case(meal_words(meal, say)), start=clock(meal.started_at))
    if late:
        return f"{line} {say.over_long_ago}"
    if quiet:
        return f"{line} {say.quiet_then}"
    if ask_at is None:
        return line
    if ask_at <= now:
        return f"{line} {say.ask_now}"
    line = f"{line} {say.will_ask.format(at=clock(ask_at))}"
    starts_now = meal.started_at >= now - timedelta(minutes=1)
    return f"{line} {say.not_yet}" if teach and starts_now else line


def activity_told(activity: Activity, *, ask_at: datetime | None, say: ReplySentences) -> str:
    """An activity said back, and when it is asked about."""
    text = sentence_case(shortened(activity.text))
    if activity.minutes is None:
        line = say.activity.format(activity=text, end=clock(activity.ended_at))
    else:
        minutes = f"{activity.minutes:g}"
        line = say.activity_minutes.format(
            activity=text, minutes=minutes, end=clock(activity.ended_at)
        )
    if ask_at is None:
        return line
    return f"{line} {say.activity_ask.format(at=clock(ask_at))}"


def effect_words(effect: Effect, person: Participant, say: ReplySentences) -> str:
    """What an activity did, or why that cannot be said yet."""
    if effect.food_still_working or effect.change is None:
        return say.food_working
    words = {
        "activity": shortened(effect.activity.entry.text),
        "change": change_words(effect.change, person.unit),
        "before": value_words(effect.before.entry),
    }
    if not float(words["change"]):
        return say.effect_same.format(**words)
    line = (say.effect_fell if effect.change < 0 else say.effect_rose).format(**words)
    return f"{line} {say.beyond_scatter if effect.beyond_meter_scatter else say.within_scatter}"


def next_text_words(at: datetime, now: datetime, say: ReplySentences) -> str:
    """When the next unasked message comes."""
    days = (at.date() - now.date()).days
    if days > 6:  # this weekday's name would be taken for today
        day = f"{say.weekdays[at.weekday()]} {at:%Y-%m-%d}"
    else:
        day = (say.today, say.tomorrow)[days] if days < 2 else say.weekdays[at.weekday()]
    return say.next_text.format(day=day, at=clock(at))


def ask_words(ask: Ask, number: str, activity: str | None, say: ReplySentences) -> str:
    """The one thing asked back about a message."""
    match ask:
        case Ask.UNIT:
            return say.ask_unit.format(number=number)
        case Ask.VALUE:
            return say.ask_value
        case Ask.WHEN_DONE:
            return say.ask_when_done.format(activity=activity or "")
        case Ask.MEANING:
            return say.ask_meaning


def joined(lines: Sequence[str]) -> str:
    """The lines of one message."""
    return "\n".join(line for line in lines if line)
