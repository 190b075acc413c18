"""Everything that a language has to supply: a missing word list is a type error.

A field is a tuple of pieces of a pattern on the page's line: plain words (lower case, no
accents, no apostrophes), one space between, and where it helps a regular expression. `#` stands
for a number.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from bot.entries import FoodKind, MealName, Moment, Suggests
from bot.parser.numbers import Numerals
from bot.parser.vocabulary import Block

Words = tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeWords:
    """How a language tells the time."""

    minutes: Words
    hours: Words
    half_hour: Words  # `half an hour`
    one_hour: Words  # `an hour`
    and_a_half: Words
    two_or_so: Words  # `a couple of`
    ago_before: Words  # `hace 20 min`
    ago_after: Words  # `20 min ago`
    later: Words  # `2 hours later`, a moment
    just_now: Words
    at: Words
    near: Words  # `around`: an hour only at the end of a clause
    half_past: Words  # before the hour
    quarter_past: Words
    quarter_to: Words
    past: Words  # `ten past seven`
    to: Words
    and_half: Words  # after the hour: `siete y media`
    and_quarter: Words
    less_quarter: Words
    oclock: Words
    morning: Words  # after an hour: `7 in the morning`
    afternoon: Words
    noon: Words
    midnight: Words
    today: Words
    this_morning: Words
    this_afternoon: Words
    last_night: Words
    yesterday: Words
    before_yesterday: Words
    weekdays: Mapping[str, int]
    on_day: Words
    long_ago: Words  # `last week`: over before today
    hour_words: Mapping[str, int]  # hours that are no number elsewhere


@dataclass(frozen=True, slots=True, kw_only=True)
class Lexicon:
    """All words of one language."""

    code: str
    numerals: Numerals
    times: TimeWords

    # readings and their moments
    glucose: Words  # what a reading is called
    meter: Words  # what shows it
    meter_says: Words
    high: Words
    low: Words
    before: Words
    after: Words
    eating: Words  # `eating`, `food` inside a moment's words
    moving: Words  # `activity`, `exercise` inside a moment's words
    moments: Mapping[Moment, Words]
    then: Words

    # meals
    meal_names: Mapping[MealName, Words]
    shy_meal_names: Mapping[MealName, Words]  # need a lead-in or food beside them
    meal_verbs: Mapping[str, MealName | None]  # `desayune` is food's lead-in and the name
    lead_ins: Words
    blamed: Words  # food behind them is over: `must be the rice`
    planned: Words
    food_advice: Words  # how a question about food opens
    meal_advice: Words  # whole questions about food that name none
    is_it_fine: Words  # behind a food: `mango, is that ok?`
    amounts: Words  # units of food
    sizes: Words
    not_eaten: Words  # words that show that food is spoken of, not eaten
    joining: Words  # words at the edges of food that are none of it
    same_as: Words
    foods: Mapping[FoodKind, Block]

    # activity
    activities: Block
    rarer_activities: Block  # never looked for in a word with a slip in it
    underway: Block
    about_to: Words
    done: Words
    distances: Words
    steps: Words
    active_lead: Words

    # body
    symptoms: Mapping[Suggests, Block]
    denials: Words
    denials_after: Words
    others: Words  # who else it may be
    helped: Words  # who the participant is when a helper writes
    mine: Words

    # numbers that are no glucose
    weight: Words
    doses: Words
    drugs: Words
    not_glucose: Words  # named measurements, the number after or before
    taken: Words
    wrong_dose: Words
    medicine_advice: Words
    age: Words
    money: Words
    currencies: Words  # short names, also in front of the number: `KES 200`
    places: Words
    months: Words
    counted: Words  # counted things that are no food

    # the rest
    intents: Mapping[str, Block]  # the concepts of `intents.py`
    zone: Words  # `I am in`, with the name of a place behind it
    pregnant: Words
    not_pregnant: Words
    later_in: Words  # `in` 10
    greetings: Words
    hailed: Words  # what opens a message and says nothing: `good morning`
    hesitant: Words  # the same: `ok so`
    late: Words  # the same: `sorry for the delay`
    thanked: Words
    parting: Words  # what closes a message and says nothing: `bye for now`, `please`
    whom: Words  # who is greeted and thanked: `hello doc`
    correction: Words
    correction_after: Words
    instead_of: Words
    should_be: Words
    that_was: Words
    removal: Words
    skip: Words
    skip_reason: Words
    soft_no: Words
    strips: Words
    filler: Words
    asides: Words  # thrown in at the borders of a clause: they say nothing
    negation: Words


#: A word of a list that begins with a letter and holds no top-level choice (it may hold brackets).
_LETTER_FIRST = re.compile(r"[a-z](?![?*+{|])(?:[^|()\[\]]|\(\?:[^()]*\))*")


def either(*groups: Words) -> str:
    """One pattern for any of the words, the longest first.

    The words are filed under their first letter, so that the engine tries some thirty branches at
    each place of a message, not hundreds.
    """
    words = {word for group in groups for word in group}
    every = sorted(words, key=lambda word: (-len(word), word))
    filed: dict[str, list[str]] = {}
    branches = []
    for word in every:
        if _LETTER_FIRST.fullmatch(word):
            filed.setdefault(word[0], []).append(word[1:])
        else:
            branches.append(word)
    branches += [f"{first}(?:{'|'.join(rest)})" for first, rest in filed.items()]
    return "(?:" + "|".join(branches) + ")"
