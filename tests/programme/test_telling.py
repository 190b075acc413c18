"""Which meal to test next."""

from bot.entries import FoodKind, Strips
from bot.programme.strips import strip_count
from bot.programme.telling import Reason, most_telling
from tests.glucose.story import Story, at, meal, pair_events

NOW = at("20:00", 14)


def known_rice() -> Story:
    story = Story()
    for day in range(8):
        story.tell(*pair_events(day, 110, 160 + day % 3, "rice"))
    return story


def eaten(text: str, times: int, story: Story, first: int = 0) -> Story:
    for day in range(first, first + times):
        story.tell(meal(text, at("19:00", day), FoodKind.STARCH))
    return story


def test_a_meal_that_is_eaten_as_often_and_never_tested_teaches_most() -> None:
    found = most_telling(eaten("pasta", 8, known_rice()).record, NOW, None)
    assert found is not None
    assert (found.text, found.reason, found.tests, found.eaten) == (
        "pasta",
        Reason.NEVER_TESTED,
        0,
        8,
    )
    assert found.width_after < found.width_now
    assert found.expected.low < found.expected.rise < found.expected.high


def test_what_is_never_eaten_again_teaches_nobody() -> None:
    story = eaten("pasta", 3, known_rice())
    found = most_telling(story.record, at("20:00", 40), None)
    assert found is None
    eaten("rice", 1, story, first=39)
    found = most_telling(story.record, at("20:00", 40), None)
    assert found is not None
    assert (found.text, found.reason, found.tests) == ("rice", Reason.STILL_UNSURE, 8)


def test_the_daily_bread_before_a_rare_cake() -> None:
    story = eaten("bread", 10, eaten("cake", 1, Story()), first=1)
    found = most_telling(story.record, NOW, None)
    assert found is not None
    assert found.text == "bread"


def test_a_meal_tested_once_says_so() -> None:
    story = eaten("soup", 9, known_rice().tell(*pair_events(9, 110, 150, "soup", "19:00")))
    found = most_telling(story.record, NOW, None)
    assert found is not None
    assert (found.text, found.reason) == ("soup", Reason.ONE_TEST)


def test_a_test_foreseen_is_about_as_sure_as_the_test_made() -> None:
    story = eaten("pasta", 8, known_rice())
    foreseen = most_telling(story.record, NOW, None)
    assert foreseen is not None
    story.tell(*pair_events(13, 110, 150, "pasta"))
    after = most_telling(story.record, NOW, None)
    assert after is not None
    assert after.text == "pasta"
    assert abs(after.width_now - foreseen.width_after) < 0.25 * foreseen.width_now


def test_the_six_kept_strips_are_not_spent_on_it() -> None:
    for left, told in ((7, False), (8, True)):
        story = eaten("pasta", 8, known_rice()).tell(Strips(left=left), said_at=NOW)
        strips = strip_count(story.record, NOW, planned_a_week=15)
        assert (most_telling(story.record, NOW, strips) is not None) is told


def test_nothing_without_a_meal() -> None:
    assert most_telling(Story().record, NOW, None) is None
