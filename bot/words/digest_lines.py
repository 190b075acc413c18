"""The lines of a digest, one function a fact; an empty line where there is nothing to tell."""

from collections import Counter
from collections.abc import Sequence

from bot.entries import Answer
from bot.glucose.effects import Effect
from bot.glucose.height import Height
from bot.programme.compare import StepComparison, Verdict
from bot.programme.suggest import Suggestion, Try, beyond, least_and_most
from bot.units import half_up
from bot.words.amounts import change_words, mg_dl_words
from bot.words.picture import goal_bounds, lone_readings, may_come
from bot.words.replies import sentence_case
from bot.words.telling import Teller

#: More readings than this are not all named in the words.
MANY_READINGS = 4


def cautions(tell: Teller) -> str:
    """How often the bot cautioned, and the most pressing call to the care team."""
    week, say = tell.week, tell.say
    counts = Counter(week.cautions)
    if not counts:  # a value that came in later, or by an import
        counts.update(["low"] * week.has_low + ["very_high"] * week.has_very_high)
    levels = [level for level in say.caution_levels if counts[level]]
    if not levels:
        return ""
    told = ", ".join(
        say.caution_item.format(caution=say.caution_levels[level], count=counts[level])
        for level in levels
    )
    pressing = next(level for level in say.care_team if counts[level])
    opening = tell.way(say.caution_opening).format(cautions=told)
    return f"{opening} {say.care_team[pressing]}"


def went_well(tell: Teller) -> str:
    """Praise of the testing; of values only where all went well and nothing was low."""
    week, say = tell.week, tell.say
    count = len(week.complete)
    within, judged = week.after_in_goal
    if count > 1 and within == judged == count and not week.has_low:
        return tell.way(say.all_within).format(count=count)
    if count > 1:
        return tell.way(say.tested_pairs).format(count=count)
    if count == 1:
        return tell.way(say.tested_pair)
    if week.readings:
        return tell.way(say.tested)
    return tell.way(say.empty_so_far if tell.so_far else say.empty)


def goals(tell: Teller) -> str:
    """How many pairs were within each goal."""
    week, say = tell.week, tell.say
    if not week.complete:
        return ""
    if not week.participant.judged:
        return say.not_judged
    low, high, after = goal_bounds(week.participant.goals, tell.unit)
    before_within, before_of = week.before_in_goal
    after_within, after_of = week.after_in_goal
    return tell.way(say.goals).format(
        before_within=before_within,
        before_of=before_of,
        low=low,
        high=high,
        after_within=after_within,
        after_of=after_of,
        after=after,
    )


def meals(tell: Teller) -> str:
    """The meals that rose most and least, called so only beyond the meter's scatter."""
    week, say = tell.week, tell.say
    extremes = least_and_most(week)
    if extremes is not None:
        least, most = extremes
        ways = say.rose_apart if beyond(most, least) else say.rose_close
    elif week.largest_rises:
        least = most = week.largest_rises[0]
        ways = say.rose_single
    else:
        return ""
    return tell.way(ways).format(
        most=tell.dish(most),
        Most=sentence_case(tell.dish(most)),
        most_rise=tell.rise(most),
        least=tell.dish(least),
        Least=sentence_case(tell.dish(least)),
        least_rise=tell.rise(least),
    )


def span(tell: Teller) -> str:
    """The lowest and the highest value, and how many were off the meter's scale."""
    week, say = tell.week, tell.say
    off = sum(one.noted.entry.value is None for one in week.readings)
    told = [say.off_scale.format(count=off)] if off else []
    if week.lowest is not None and week.highest is not None:
        highest = mg_dl_words(week.highest, tell.unit)
        if week.lowest == week.highest:
            told.insert(0, say.range_one.format(value=highest))
        else:
            lowest = tell.number(week.lowest)
            told.insert(0, tell.way(say.range).format(lowest=lowest, highest=highest))
    return " ".join(told)


def uncounted(tell: Teller) -> str:
    """Meals that do not count, by reason, meals still open, readings that belong to no meal."""
    say = tell.say
    closed = [pair for pair in tell.week.pairs if not may_come(pair, tell.week)]
    counts = Counter(pair.status for pair in closed)
    reasons = [
        words.format(count=counts[status])
        for status, words in say.uncounted_reasons.items()
        if counts[status]
    ]
    told = [say.uncounted.format(reasons=", ".join(reasons))] if reasons else []
    waiting = len(tell.week.pairs) - len(closed)
    if waiting:
        told.append(say.waiting.format(count=waiting))
    lone = len(lone_readings(tell.week))
    if lone:
        told.append(say.others.format(count=lone))
    return " ".join(told)


def activity(tell: Teller) -> str:
    """What activity did, where no food was working."""
    clear = [one for one in tell.week.effects if one.change is not None]
    clear = [one for one in clear if not one.food_still_working]
    if not clear:
        return ""
    return _one_effect(tell, clear[0]) if len(clear) == 1 else _many_effects(tell, clear)


def food_working(tell: Teller) -> str:
    """Activities that say nothing, because food was still working."""
    working = sum(one.food_still_working for one in tell.week.effects)
    return tell.way(tell.say.food_working).format(count=working) if working else ""


def compared(tell: Teller, comparison: StepComparison | None) -> str:
    """This step against the one before, and whether the difference is more than scatter."""
    if comparison is None:
        return ""
    say, figures = tell.say, comparison.all_meals
    if figures.verdict is Verdict.CLEAR:
        ways = say.compare_clear
    else:
        ways = say.compare_days if figures.beyond_meter_scatter else say.compare_open
    return tell.way(ways).format(
        later=say.steps[comparison.later],
        Later=sentence_case(say.steps[comparison.later]),
        later_rise=tell.number(figures.mean_other),
        earlier=say.steps[comparison.earlier],
        earlier_rise=tell.number(figures.mean_one),
        difference=change_words(figures.difference, tell.unit),
        direction=say.less if figures.difference < 0 else say.more,
    )


def source(tell: Teller, height: Height | None, suggestion: Suggestion) -> str:
    """Where the height comes from, unless the suggestion says so already."""
    if height is None or suggestion.attempt is Try.BEFORE_VALUES:
        return ""
    return tell.way(tell.say.heights[height])


def trend(tell: Teller) -> str:
    """Which way the values after meals went, if that is clear."""
    slope = tell.week.trend
    if slope is None or not slope.clear:
        return ""
    template = tell.say.trend_down if slope.mg_dl_per_day < 0 else tell.say.trend_up
    return template.format(change=change_words(slope.mg_dl_per_day, tell.unit))


def answered(tell: Teller, answers: Sequence[Answer]) -> str:
    """What was answered to the weekly question, beside the figures and not explained by them."""
    latest = {one.about: one.how for one in answers}
    told = ", ".join(tell.say.answer_words[answer] for answer in latest.items())
    return tell.say.answers.format(answers=told) if told else ""


def suggested(tell: Teller, suggestion: Suggestion) -> str:
    """The one thing to try, with its reason."""
    meal = "" if suggestion.meal is None else tell.dish(suggestion.meal)
    way = tell.way(tell.say.suggestions[suggestion.attempt])
    return way.format(meal=meal, count=suggestion.count)


def cannot_know(tell: Teller) -> str:
    """What no number tells the bot."""
    return tell.way(tell.say.cannot_know)


def every_number(tell: Teller) -> str:
    """Where the values stand that the words have no room for."""
    return tell.say.every_number if len(tell.week.readings) > MANY_READINGS else ""


def _one_effect(tell: Teller, effect: Effect) -> str:
    say, moved = tell.say, effect.activity.entry
    template = say.picture.activity_minutes if moved.minutes else say.picture.activity
    told = template.format(activity=tell.short(moved.text), minutes=half_up(moved.minutes or 0, 0))
    scatter = say.beyond_scatter if effect.beyond_meter_scatter else say.within_scatter
    return tell.way(say.effects_one).format(
        activity=told, change=tell.change(effect.change or 0.0), scatter=scatter
    )


def _many_effects(tell: Teller, clear: Sequence[Effect]) -> str:
    falls = [one.change for one in clear if one.change is not None and one.change < 0]
    if not falls:
        return tell.way(tell.say.effects_none).format(count=len(clear))
    return tell.way(tell.say.effects_many).format(
        count=len(clear),
        fell=len(falls),
        most=change_words(min(falls), tell.unit),
        beyond=sum(bool(one.beyond_meter_scatter) for one in clear),
    )
