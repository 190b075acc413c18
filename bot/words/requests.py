"""What the bot answers to requests that are not about safety."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.entries import Step
from bot.glucose.pairs import Pair
from bot.participants import WEEKDAYS, Participant
from bot.words.amounts import clock, number_words, signed_words, value_words
from bot.words.replies import ReplySentences, meal_words, shortened


@dataclass(frozen=True, slots=True, kw_only=True)
class RequestSentences:
    """Sentences of answers to requests; braces name what is filled in."""

    help: str
    stopped: str
    paused: str
    resumed: str
    goals: str
    goals_unjudged: str
    record_head: str
    record_line: str
    record_empty: str
    record_missing: str
    step_taken: str
    step_waits: str
    step_last: str
    step_how: dict[Step, str]
    nights: str
    zone: str
    zone_unknown: str
    language: str
    main_meal: str
    settings: str
    settings_meal: str
    settings_change: str
    later: str
    too_late: str
    nothing_waits: str
    export: str
    erase_question: str
    erase_buttons: tuple[str, ...]
    erase_yes: frozenset[str]
    erased: str
    not_erased: str
    food_none: str
    food_unnamed: str
    food_mildest: str
    food_tests: str
    food_smaller: str
    not_glucose: str
    chatter: str
    hunger: str
    tiredness: str
    how_buttons: tuple[str, ...]
    how: dict[str, str]
    answered: str
    go_on_yes: str
    go_on_weekly: str
    go_on_no: str
    risk_noted: str
    risk_unknown: str
    strips_out: str


def goals_words(person: Participant, say: RequestSentences) -> str:
    """The participant's goals in their own unit."""
    if not person.judged:
        return say.goals_unjudged
    goals = person.goals
    return say.goals.format(
        low=number_words(goals.before_low, person.unit),
        high=number_words(goals.before_high, person.unit),
        after=number_words(goals.after_high, person.unit),
        unit=person.unit.value,
    )


def settings_words(person: Participant, say: RequestSentences, replies: ReplySentences) -> str:
    """What is set for the participant, and which words change it."""
    lines = [
        say.settings.format(
            unit=person.unit.value,
            zone=person.zone,
            quiet_from=f"{person.quiet_from:%H:%M}",
            quiet_to=f"{person.quiet_to:%H:%M}",
            day=replies.weekdays[WEEKDAYS.index(person.week_ends)],
            at=f"{person.digest_at:%H:%M}",
        )
    ]
    if person.main_meal is not None:
        lines.append(say.settings_meal.format(at=f"{person.main_meal:%H:%M}"))
    return "\n".join((*lines, say.settings_change))


def record_words(pairs: Sequence[Pair], say: RequestSentences, replies: ReplySentences) -> str:
    """The latest meals and their values, newest last."""
    if not pairs:
        return say.record_empty
    lines = [say.record_head]
    for pair in pairs:
        start = pair.meal.entry.started_at
        lines.append(
            say.record_line.format(
                day=f"{start:%Y-%m-%d}" if start else "",
                at=clock(start) if start else "",
                meal=meal_words(pair.meal.entry, replies),
                before=value_words(pair.before.entry) if pair.before else say.record_missing,
                after=value_words(pair.after.entry) if pair.after else say.record_missing,
            )
        )
    return "\n".join(lines)


def foods_words(mildest: Sequence[Pair], person: Participant, say: RequestSentences) -> str:
    """What to eat, asked without a food: the person's own tests with the smallest changes."""
    if not mildest:
        return say.food_unnamed
    meals = "; ".join(
        f"{shortened(pair.meal.entry.text)} {signed_words(pair.rise or 0.0, person.unit)}"
        for pair in mildest
    )
    return say.food_mildest.format(meals=meals, unit=person.unit.value)


def food_words(food: str, pairs: Sequence[Pair], person: Participant, say: RequestSentences) -> str:
    """The person's own figures for a food, or how to test it; never yes or no."""
    rises = [pair.rise for pair in pairs if pair.rise is not None]
    if not rises:
        return say.food_none.format(food=food)
    amounts = ", ".join(signed_words(rise, person.unit) for rise in rises[-5:])
    lines = [
        say.food_tests.format(food=food, count=len(rises), rises=amounts, unit=person.unit.value)
    ]
    if any(pair.after_in_goal is False for pair in pairs):
        lines.append(say.food_smaller)
    return " ".join(lines)
