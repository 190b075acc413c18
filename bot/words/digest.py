"""The words of the week: at most 120, and at most a chat's caption holds.

Every fact that the picture shows is in them, for whoever cannot see it. What went well comes
first, unless a caution has to. The same facts in another week are said in other sentences, and
the same week is always said in the same ones.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from bot.entries import Answer, Step
from bot.glucose.effects import Effect
from bot.glucose.height import Height
from bot.glucose.pairs import Pair, Status
from bot.glucose.week import Week, rise_of
from bot.programme.compare import StepComparison, Verdict
from bot.programme.suggest import Suggestion, Try, beyond, least_and_most
from bot.units import Unit, half_up
from bot.words.amounts import change_words, mg_dl_words, number_words
from bot.words.picture import PictureSentences, goal_bounds, lone_readings

MOST_WORDS = 120
MOST_CHARACTERS = 1024  # of a caption (Bot API, sendPhoto)

#: Words of a dish's name in a sentence, and fewer where room is short; the record has it whole.
DISH_WORDS = (4, 2)
DISH_CHARACTERS = 32

ELLIPSIS = "\N{HORIZONTAL ELLIPSIS}"

#: Ways to say the same thing; a week takes one of them.
Ways = tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DigestSentences:
    """Sentences of the week; braces name what is filled in."""

    picture: PictureSentences
    joining: frozenset[str]  # words that a shortened dish does not end with
    caution_opening: Ways
    caution_item: str
    caution_levels: dict[str, str]
    care_team: dict[str, str]
    so_far: str
    all_within: Ways
    tested_pairs: Ways
    tested_pair: Ways
    tested: Ways
    empty: Ways
    goals: Ways
    not_judged: str
    range: Ways
    range_one: str
    rose_apart: Ways
    rose_close: Ways
    rose_single: Ways
    rise: str
    fall: str
    no_change: str
    effects_one: Ways
    effects_many: Ways
    effects_none: Ways
    went_down: str
    went_up: str
    stayed: str
    beyond_scatter: str
    within_scatter: str
    food_working: Ways
    steps: dict[Step, str]
    compare_clear: Ways
    compare_days: Ways
    compare_open: Ways
    less: str
    more: str
    heights: dict[Height, Ways]
    trend_up: str
    trend_down: str
    uncounted: str
    uncounted_reasons: dict[Status, str]
    others: str
    off_scale: str
    answers: str
    answer_words: dict[tuple[str, str], str]
    suggestions: dict[Try, Ways]
    cannot_know: Ways
    every_number: str


def digest_words(
    week: Week,
    *,
    suggestion: Suggestion,
    sentences: DigestSentences,
    comparison: StepComparison | None = None,
    height: Height | None = None,
    answers: Sequence[Answer] = (),
    so_far: bool = False,
) -> str:
    """The caption of a week's picture.

    At most 120 words and 1,024 characters: what matters least is left out where it has to be.
    `so_far` tells that the week still runs; `answers` are those to the weekly question.
    """
    parts: list[_Part] = []
    for dish_words in DISH_WORDS:
        tell = _Teller(week, sentences, dish_words)
        parts = [_Part(sentences.so_far, MUST)] if so_far else []
        parts += _parts(tell, suggestion, comparison, height, answers)
        if not _too_long(parts):
            break
    return _text(_fitting(parts))


MUST = 0

#: More readings than this are not all named in the words.
MANY_READINGS = 4


@dataclass(frozen=True, slots=True)
class _Part:
    """A line of the digest; the largest `rank` is the first to be left out, MUST never is."""

    text: str
    rank: int


@dataclass(frozen=True, slots=True)
class _Teller:
    """A week and the sentences it is told in."""

    week: Week
    say: DigestSentences
    dish_words: int

    @property
    def unit(self) -> Unit:
        return self.week.participant.unit

    def way(self, ways: Ways) -> str:
        """This week's way to say it: another one than the week before and after."""
        return ways[self.week.to_date.toordinal() // 7 % len(ways)]

    def number(self, mg_dl: float) -> str:
        return number_words(mg_dl, self.unit)

    def short(self, text: str) -> str:
        """A dish or an activity in few words, as the person wrote them."""
        return _shortened(text, self.dish_words, self.say.joining)

    def dish(self, pair: Pair) -> str:
        return self.short(pair.meal.entry.text)


def _parts(
    tell: _Teller,
    suggestion: Suggestion,
    comparison: StepComparison | None,
    height: Height | None,
    answers: Sequence[Answer],
) -> Iterator[_Part]:
    say = tell.say
    yield from _cautions(tell)
    yield _Part(_went_well(tell), MUST)
    yield from _goals(tell)
    yield from _meals(tell)
    yield from _range(tell)
    yield from _uncounted(tell)
    yield from _activity(tell)
    if comparison is not None:
        yield _Part(_compared(tell, comparison), 2)
    if height is not None and suggestion.attempt is not Try.BEFORE_VALUES:
        yield _Part(tell.way(say.heights[height]), 5)
    yield from _trend(tell)
    if answers:
        told = ", ".join(say.answer_words[one.about, one.how] for one in answers)
        yield _Part(say.answers.format(answers=told), 6)
    yield _Part(_suggested(tell, suggestion), MUST)
    yield _Part(tell.way(say.cannot_know), MUST)
    if len(tell.week.readings) > MANY_READINGS:
        yield _Part(say.every_number, 6)


def _cautions(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    counts = Counter(week.cautions)
    if not counts:  # a value that came in later, or by an import
        counts.update(["low"] * week.has_low + ["very_high"] * week.has_very_high)
    levels = [level for level in say.caution_levels if counts[level]]
    if not levels:
        return
    pressing = next(level for level in say.care_team if counts[level])
    told = ", ".join(
        say.caution_item.format(caution=say.caution_levels[level], count=counts[level])
        for level in levels
    )
    opening = tell.way(say.caution_opening).format(cautions=told)
    yield _Part(f"{opening} {say.care_team[pressing]}", MUST)


def _went_well(tell: _Teller) -> str:
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
        return tell.way(say.tested).format(count=len(week.readings))
    return tell.way(say.empty)


def _goals(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    if not week.complete:
        return
    if not week.participant.judged:
        yield _Part(say.not_judged, MUST)
        return
    low, high, after = goal_bounds(week.participant.goals, tell.unit)
    before_within, before_of = week.before_in_goal
    after_within, after_of = week.after_in_goal
    text = tell.way(say.goals).format(
        before_within=before_within,
        before_of=before_of,
        low=low,
        high=high,
        after_within=after_within,
        after_of=after_of,
        after=after,
    )
    yield _Part(text, MUST)


def _range(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    if week.lowest is None or week.highest is None:
        return
    if week.lowest == week.highest:
        text = say.range_one.format(value=mg_dl_words(week.lowest, tell.unit))
    else:
        text = tell.way(say.range).format(
            lowest=tell.number(week.lowest), highest=mg_dl_words(week.highest, tell.unit)
        )
    off = sum(one.noted.entry.value is None for one in week.readings)
    yield _Part(f"{text} {say.off_scale.format(count=off)}" if off else text, 1)


def _meals(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    extremes = least_and_most(week)
    if extremes is not None:
        least, most = extremes
        ways = say.rose_apart if beyond(most, least) else say.rose_close
    elif week.largest_rises:
        least = most = week.largest_rises[0]
        ways = say.rose_single
    else:
        return
    named = {
        "most": tell.dish(most),
        "Most": _sentence(tell.dish(most)),
        "most_rise": _rise(tell, most),
        "least": tell.dish(least),
        "Least": _sentence(tell.dish(least)),
        "least_rise": _rise(tell, least),
    }
    yield _Part(tell.way(ways).format(**named), MUST)


def _rise(tell: _Teller, pair: Pair) -> str:
    say, rise = tell.say, rise_of(pair)
    before, after = pair.values or (0.0, 0.0)
    change = change_words(rise, tell.unit)
    moved = say.rise if rise > 0 else say.fall
    template = moved if float(change) else say.no_change
    return template.format(change=change, before=tell.number(before), after=tell.number(after))


def _activity(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    clear = [one for one in week.effects if not one.food_still_working and one.change is not None]
    if len(clear) == 1:
        yield _Part(_one_effect(tell, clear[0]), 2)
    elif clear:
        yield _Part(_many_effects(tell, clear), 2)
    working = sum(one.food_still_working for one in week.effects)
    if working:
        yield _Part(tell.way(say.food_working).format(count=working), 4)


def _one_effect(tell: _Teller, effect: Effect) -> str:
    say, activity = tell.say, effect.activity.entry
    template = say.picture.activity_minutes if activity.minutes else say.picture.activity
    told = template.format(
        activity=tell.short(activity.text),
        minutes=half_up(activity.minutes or 0, 0),
    )
    scatter = say.beyond_scatter if effect.beyond_meter_scatter else say.within_scatter
    return tell.way(say.effects_one).format(
        activity=told, change=_moved(tell, effect.change or 0.0), scatter=scatter
    )


def _many_effects(tell: _Teller, clear: Sequence[Effect]) -> str:
    falls = [one.change for one in clear if one.change is not None and one.change < 0]
    if not falls:
        return tell.way(tell.say.effects_none).format(count=len(clear))
    return tell.way(tell.say.effects_many).format(
        count=len(clear),
        fell=len(falls),
        most=change_words(min(falls), tell.unit),
        beyond=sum(bool(one.beyond_meter_scatter) for one in clear),
    )


def _moved(tell: _Teller, change: float) -> str:
    words = change_words(change, tell.unit)
    if not float(words):
        return tell.say.stayed
    template = tell.say.went_down if change < 0 else tell.say.went_up
    return template.format(change=words)


def _compared(tell: _Teller, comparison: StepComparison) -> str:
    say, figures = tell.say, comparison.all_meals
    if figures.verdict is Verdict.CLEAR:
        ways = say.compare_clear
    else:
        ways = say.compare_days if figures.beyond_meter_scatter else say.compare_open
    return tell.way(ways).format(
        later=say.steps[comparison.later],
        Later=_sentence(say.steps[comparison.later]),
        later_rise=tell.number(figures.mean_other),
        earlier=say.steps[comparison.earlier],
        earlier_rise=tell.number(figures.mean_one),
        difference=change_words(figures.difference, tell.unit),
        direction=say.less if figures.difference < 0 else say.more,
    )


def _trend(tell: _Teller) -> Iterator[_Part]:
    trend = tell.week.trend
    if trend is not None and trend.clear:
        template = tell.say.trend_down if trend.mg_dl_per_day < 0 else tell.say.trend_up
        change = change_words(trend.mg_dl_per_day, tell.unit)
        yield _Part(template.format(change=change), 7)


def _uncounted(tell: _Teller) -> Iterator[_Part]:
    week, say = tell.week, tell.say
    counts = Counter(pair.status for pair in week.pairs)
    told = [
        say.uncounted_reasons[status].format(count=counts[status])
        for status in say.uncounted_reasons
        if counts[status]
    ]
    sentences = [say.uncounted.format(reasons=", ".join(told))] if told else []
    lone = len(lone_readings(week))
    if lone:
        sentences.append(say.others.format(count=lone))
    if sentences:
        yield _Part(" ".join(sentences), 1)


def _suggested(tell: _Teller, suggestion: Suggestion) -> str:
    meal = "" if suggestion.meal is None else tell.dish(suggestion.meal)
    way = tell.way(tell.say.suggestions[suggestion.attempt])
    return way.format(meal=meal, count=suggestion.count)


def _shortened(text: str, most_words: int, joining: frozenset[str]) -> str:
    words = text.split()
    kept = words[:most_words]
    while len(kept) > 1 and (
        len(" ".join(kept)) > DISH_CHARACTERS
        or (len(kept) < len(words) and kept[-1].casefold() in joining)
    ):
        kept.pop()
    line = " ".join(kept)
    if len(line) > DISH_CHARACTERS:
        return f"{line[: DISH_CHARACTERS - 1]}{ELLIPSIS}"
    return f"{line}{ELLIPSIS}" if len(kept) < len(words) else line


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def _fitting(parts: Sequence[_Part]) -> list[_Part]:
    """All that must be said, and of the rest what still fits, the most important first."""
    kept = [part for part in parts if part.rank == MUST]
    for part in sorted(parts, key=lambda one: one.rank):
        if part.rank != MUST and not _too_long([*kept, part]):
            kept.append(part)
    return [part for part in parts if part in kept]


def _too_long(parts: Iterable[_Part]) -> bool:
    text = _text(parts)
    return len(text.split()) > MOST_WORDS or len(text) > MOST_CHARACTERS


def _text(parts: Iterable[_Part]) -> str:
    text = "\n".join(part.text for part in parts)
    return text.replace(f"{ELLIPSIS}.", ELLIPSIS)  # a sentence that ends with a shortened dish
