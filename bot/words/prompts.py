"""What the bot says unasked: prompts, lines that teach, the question after silence."""

from dataclasses import dataclass
from datetime import datetime

from bot.entries import Meal
from bot.words.amounts import clock
from bot.words.replies import ReplySentences, meal_words, sentence_case, shortened


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptSentences:
    """Sentences of prompts and notes; braces name what is filled in."""

    before_meal: str
    before_meal_again: str
    after_meal: str
    after_meal_again: str
    after_activity: str
    discreet: str
    go_on: str
    go_on_buttons: tuple[str, ...]
    away: str
    teaching: tuple[str, ...]


def before_meal_words(*, again: bool, discreet: bool, say: PromptSentences) -> str:
    """The prompt ahead of the main meal."""
    if discreet:
        return say.discreet
    return say.before_meal_again if again else say.before_meal


def after_meal_words(
    meal: Meal | None,
    *,
    until: datetime,
    again: bool,
    discreet: bool,
    say: PromptSentences,
    replies: ReplySentences,
) -> str:
    """The prompt two hours after a meal's start, naming the meal; `again` is the nudge."""
    if discreet:
        return say.discreet
    template = say.after_meal_again if again else say.after_meal
    return template.format(meal=meal_words(meal, replies), until=clock(until))


def after_activity_words(
    activity: str, ended: datetime, *, discreet: bool, say: PromptSentences
) -> str:
    """The prompt after an activity."""
    if discreet:
        return say.discreet
    activity = sentence_case(shortened(activity))
    return say.after_activity.format(activity=activity, end=clock(ended))
