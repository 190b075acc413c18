"""A week and the sentences it is told in: what all lines of a digest share."""

from dataclasses import dataclass

from bot.entries import Step
from bot.glucose.height import Height
from bot.glucose.pairs import Pair, Status
from bot.glucose.week import Week, rise_of
from bot.programme.suggest import Try
from bot.units import Unit
from bot.words.amounts import change_words, number_words
from bot.words.picture import PictureSentences

#: No name of a dish in a sentence is longer; the record has it whole.
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
    empty_so_far: Ways
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
    waiting: str
    others: str
    off_scale: str
    answers: str
    answer_words: dict[tuple[str, str], str]
    suggestions: dict[Try, Ways]
    cannot_know: Ways
    every_number: str


@dataclass(frozen=True, slots=True)
class Teller:
    """Tells a week, or one that still runs (`so_far`); a dish in at most `dish_words` words."""

    week: Week
    say: DigestSentences
    dish_words: int
    so_far: bool

    @property
    def unit(self) -> Unit:
        """The unit of the person's own meter."""
        return self.week.participant.unit

    def way(self, ways: Ways) -> str:
        """This week's way to say it: another one than the week before and after."""
        return ways[self.week.to_date.toordinal() // 7 % len(ways)]

    def number(self, mg_dl: float) -> str:
        """A value in the person's unit, without it."""
        return number_words(mg_dl, self.unit)

    def short(self, text: str) -> str:
        """A dish or an activity in few words, as the person wrote them."""
        words = text.split()
        kept = words[: self.dish_words]
        while len(kept) > 1 and (
            len(" ".join(kept)) > DISH_CHARACTERS
            or (len(kept) < len(words) and kept[-1].casefold() in self.say.joining)
        ):
            kept.pop()
        line = " ".join(kept)
        if len(line) > DISH_CHARACTERS:
            return f"{line[: DISH_CHARACTERS - 1]}{ELLIPSIS}"
        return f"{line}{ELLIPSIS}" if len(kept) < len(words) else line

    def dish(self, pair: Pair) -> str:
        """What was eaten, in few words."""
        return self.short(pair.meal.entry.text)

    def rise(self, pair: Pair) -> str:
        """By how much a complete pair rose or fell, and from where to where."""
        rise = rise_of(pair)
        before, after = pair.values or (0.0, 0.0)
        change = change_words(rise, self.unit)
        moved = self.say.rise if rise > 0 else self.say.fall
        template = moved if float(change) else self.say.no_change
        return template.format(change=change, before=self.number(before), after=self.number(after))

    def change(self, mg_dl: float) -> str:
        """By how much it rose or fell."""
        words = change_words(mg_dl, self.unit)
        if not float(words):
            return self.say.stayed
        template = self.say.went_down if mg_dl < 0 else self.say.went_up
        return template.format(change=words)
