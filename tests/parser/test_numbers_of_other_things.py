"""What real messages do with numbers, times and the words around them: one row a cause.

The expected readings follow the contract of the reader; the sentences are written for this test.
"""

from datetime import datetime

import pytest

from bot.entries import Activity, Ask, Asked, Correction, Meal, Moment, Reading, Removal, Understood
from bot.parser import read
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:30:00+02:00")


def told(text: str, unit: Unit = Unit.MG_DL) -> Understood:
    return read(text, at=AT, unit=unit)


@pytest.mark.parametrize(
    "text",
    [
        "AUD 130", "130 birr", "KSh 150", "tomatoes 120 a kilo", "2 for 150", "our water bill 142",
        "coat size 42", "row 120 seat 88", "G142", "F-150", "for x in range(142)",
        "we lost 98 to 102",
        "oven at 180", "preheat 180", "battery at 80", "doing 80 on the motorway", "lotto 88",
        "number 142 in the queue", "3 sets of 50", "table for 60", "ranked 120", "got 142 likes",
        "india 142 for 3", "glorby quax 142", "nan is 142", "my gran got 142",
    ],
)  # fmt: skip
def test_other_numbers_are_asked_about(text: str) -> None:
    """Prices, sizes, scores, codes, ranks, and what stands among words of no list."""
    understood = told(text)
    assert not [entry for entry in understood.entries if isinstance(entry, Reading)]
    assert understood.ask is Ask.MEANING


@pytest.mark.parametrize(
    ("text", "moment"),
    [
        ("BG142", Moment.UNSTATED),
        ("feeling fine 142", Moment.UNSTATED),
        ("stressed at work 142", Moment.UNSTATED),
        ("before bed 142", Moment.BEDTIME),
        ("didn't eat 142", Moment.UNSTATED),
        ("nothing to eat yet 142", Moment.UNSTATED),
    ],
)
def test_a_reading_among_everyday_words_is_one(text: str, moment: Moment) -> None:
    """No question too many, and no meal that was not eaten."""
    (entry,) = told(text).entries
    assert isinstance(entry, Reading)
    assert (entry.value, entry.moment) == (142, moment)


def test_a_round_number_behind_an_activity_may_be_its_length() -> None:
    """45 mg/dL would be an emergency, 45 minutes are a class."""
    assert told("gym 45").ask is Ask.VALUE


@pytest.mark.parametrize(
    ("text", "taken"),
    [
        ("131 yesterday evening at 6", "2026-03-01T18:00:00+02:00"),
        ("131, 2 days ago at 8am", "2026-02-28T08:00:00+02:00"),
        ("131 the day before yesterday at 8pm", "2026-02-28T20:00:00+02:00"),
        ("half 8 131", "2026-03-02T08:30:00+02:00"),
        ("ten to one 131", "2026-03-02T12:50:00+02:00"),
        ("just gone 7, 131", "2026-03-02T19:00:00+02:00"),
        ("around 6 it was 131", "2026-03-02T18:00:00+02:00"),
        ("at 0730 131", "2026-03-02T07:30:00+02:00"),
    ],
)
def test_times_as_people_say_them(text: str, taken: str) -> None:
    (entry,) = told(text).entries
    assert isinstance(entry, Reading)
    assert entry.taken_at == datetime.fromisoformat(taken)


@pytest.mark.parametrize(
    ("text", "words", "minutes"),
    [
        ("picked beans for an hour", "picked beans", 60),
        ("grated cassava 40 min", "grated cassava", 40),
        ("2 hours picking coffee", "picking coffee", 120),
        ("sold bread at the junction 3 hours", "sold bread at the junction", 180),
        ("line dancing for 1 hr done", "line dancing", 60),
        ("30 burpees", "30 burpees", None),
    ],
)
def test_work_with_food_is_no_meal(text: str, words: str, minutes: float | None) -> None:
    (entry,) = told(text).entries
    assert isinstance(entry, Activity)
    assert (entry.text, entry.minutes) == (words, minutes)


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("having pilau, 1 plate", "pilau, 1 plate"),
        ("chapati 2, dal 1 cup", "chapati 2, dal 1 cup"),
        ("had me tea, pie and chips", "pie and chips"),
        ("ate like 2 slices of bread", "2 slices of bread"),
        ("burger no bun", "burger no bun"),
        ("my cousin eats doughnuts, I'm having salad", "salad"),
        ("wife made lasagne", "lasagne"),
    ],
)
def test_meals_as_people_tell_them(text: str, dish: str) -> None:
    (entry,) = told(text).entries
    assert isinstance(entry, Meal)
    assert entry.text == dish


@pytest.mark.parametrize(
    ("text", "value", "old"),
    [
        ("i entered 19 but it was 119", 119, 19),
        ("replace 191 with 161", 161, 191),
        ("fat fingers, 118", 118, None),
        ("the last one should be 118", 118, None),
        ("that's wrong it's 118", 118, None),
    ],
)
def test_values_mended_in_natural_words(text: str, value: float, old: float | None) -> None:
    assert told(text).entries == (Correction(value=value, unit=Unit.MG_DL, replaces=old),)


@pytest.mark.parametrize("text", ["remove that last reading", "oops wrong chat, delete that"])
def test_taken_back_in_natural_words(text: str) -> None:
    assert told(text).entries == (Removal(),)


@pytest.mark.parametrize(
    "text",
    [
        "the meter keeps showing LO",
        "meter not working just says HI",
        "it says LO and wont change",
        "meter keeps showing lo",
        "THE METER KEEPS SHOWING LO",
    ],
)
@pytest.mark.parametrize("asked", [None, Asked.RECHECK])
def test_what_a_meter_shows_off_its_scale_is_never_an_excuse(
    text: str, asked: Asked | None
) -> None:
    understood = read(text, at=AT, unit=Unit.MG_DL, asked=asked)
    (reading,) = understood.entries
    assert isinstance(reading, Reading)
    assert reading.off_scale is not None
