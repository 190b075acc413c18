"""Figures of meals and kinds of food for one person, and their own tests of a food."""

import pytest

from bot.entries import FoodKind
from bot.glucose import foods
from bot.glucose.foods import food_figures
from bot.glucose.height import Height, height, height_of
from bot.glucose.pairs import pairs
from bot.glucose.week import week
from tests.glucose.story import Story, at, meal, pair_events, person, reading


def fed() -> Story:
    story = Story()
    rows = [
        (115, 180, "white rice", FoodKind.STARCH),
        (118, 176, "White rice", FoodKind.STARCH),
        (110, 172, "white rice", FoodKind.STARCH),
        (112, 130, "eggs", FoodKind.PROTEIN),
        (120, 131, "eggs", FoodKind.PROTEIN),
        (109, 140, "mango", FoodKind.FRUIT),
        (111, 155, "Mangoes and yogurt", FoodKind.FRUIT),
    ]
    for day, (before, after, text, kind) in enumerate(rows):
        story.tell(*pair_events(day, before, after, text, "12:00", kind, FoodKind.DAIRY))
    return story


def test_repeated_meals_and_kinds_get_a_figure_those_that_raise_least_first() -> None:
    found = food_figures(fed().record)
    assert [(one.text, len(one.tests)) for one in found.meals] == [("eggs", 2), ("white rice", 3)]
    assert [one.kind for one in found.kinds] == [
        FoodKind.PROTEIN,
        FoodKind.FRUIT,
        FoodKind.STARCH,
    ]
    for one in (*found.meals, *found.kinds):
        assert one.expected.low < one.expected.rise < one.expected.high


def test_nothing_is_said_where_nothing_is_known() -> None:
    assert food_figures(Story().record).meals == ()
    once = Story().tell(*pair_events(0, 110, 150, "mango", "12:00", FoodKind.FRUIT))
    found = food_figures(once.record)
    assert found.meals == found.kinds == ()


def test_pairs_that_do_not_count_teach_nothing() -> None:
    story = fed()
    before = food_figures(story.record)
    story.tell(*pair_events(8, 110, "HI", "white rice", "12:00", FoodKind.STARCH))
    story.tell(*pair_events(9, 62, 120, "eggs", "12:00", FoodKind.PROTEIN))
    story.tell(reading(230, at("11:30", 10)))  # so that 110 half an hour later is a surprise
    story.tell(*pair_events(10, 110, 190, "eggs", "12:00", FoodKind.PROTEIN))
    assert food_figures(story.record) == before


def test_kinds_unknown_and_free_drinks_are_no_advice() -> None:
    story = Story()
    for day in range(3):
        story.tell(*pair_events(day, 110, 140, "okonjo", "12:00", FoodKind.UNKNOWN))
        story.tell(*pair_events(day, 110, 112, "water", "18:00", FoodKind.FREE_DRINK))
    found = food_figures(story.record)
    assert [one.text for one in found.meals] == ["okonjo"]
    assert found.kinds == ()


@pytest.mark.parametrize("asked", ["mango", "Mangoes", "  MANGO? "])
def test_a_food_asked_about_finds_its_own_tests(asked: str) -> None:
    assert [pair.rise for pair in foods.tests_of(fed().record, asked)] == [31, 44]


@pytest.mark.parametrize(
    ("asked", "count"), [("rice", 3), ("white rice", 3), ("rice white", 0), ("man", 0), ("", 0)]
)
def test_words_must_match_whole_and_in_order(asked: str, count: int) -> None:
    assert len(foods.tests_of(fed().record, asked)) == count


@pytest.mark.parametrize(
    ("before", "after", "source"),
    [
        (225, 245, Height.BEFORE),
        (175, 190, Height.BEFORE),
        (130, 245, Height.RISE),
        (150, 240, Height.BOTH),
        (130, 179, None),
        (131, 150, Height.BEFORE),
        (130, 180, Height.RISE),
    ],
)
def test_where_the_height_comes_from(before: int, after: int, source: Height | None) -> None:
    """First three: educators' examples (245 after, from 225 and from 130; 175 to 190)."""
    story = Story()
    for day in range(3):
        story.tell(*pair_events(day, before, after))
    record = story.record
    found = week(record, start=at("00:00"), end=at("18:00", 6))
    assert height(found.complete, record.participant) is source
    assert height_of(pairs(record)[0], record.participant) is source


def test_no_pattern_from_two_pairs_and_none_in_pregnancy() -> None:
    story = Story().tell(*pair_events(0, 110, 240)).tell(*pair_events(1, 110, 240))
    assert height(pairs(story.record), person()) is None
    story.tell(*pair_events(2, 110, 240))
    assert height(pairs(story.record), person()) is Height.RISE
    assert height(pairs(story.record), person(pregnant=True)) is None


def test_a_surprising_pair_waits() -> None:
    story = Story().tell(*pair_events(0, 110, 240)).tell(reading(100, at("13:30")))
    assert height_of(pairs(story.record)[0], person()) is None


def test_an_untested_meal_is_known_but_has_no_figure() -> None:
    story = fed().tell(meal("soup", at("18:00", 3)))
    assert "soup" not in [one.text for one in food_figures(story.record).meals]
