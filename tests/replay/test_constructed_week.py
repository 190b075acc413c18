"""A whole week through the live parts against figures worked out elsewhere.

The week of reference section 10 (constructed there, no public source); medians and goals by hand,
the slope by scipy.stats.theilslopes, the scatter limits by reference section 5.
"""

from statistics import median

import pytest
from scipy.stats import theilslopes

from bot.replay.play import Played
from tests.replay.told import Story, of_type

BEFORE = (112, 124, 105, 131, 98, 118, 127)
AFTER = (168, 191, 149, 176, 139, 160, 182)
DISHES = (
    "rice and beans",
    "pasta",
    "fish and salad",
    "pap and stew",
    "eggs and spinach",
    "chicken and cabbage",
    "bread and cheese",
)


@pytest.fixture(scope="module")
def week() -> Played:
    story = Story(day="2026-03-02")
    days = [f"2026-03-{number:02}" for number in range(2, 9)]
    for day, before, after, dish in zip(days, BEFORE, AFTER, DISHES, strict=True):
        story.says(f"{day} 12:00", f"{before} before, {dish}").says(f"{day} 14:00", f"{after}")
    return story.passes("2026-03-08 23:00").play()


def test_each_pair_has_its_rise_and_its_goals(week: Played) -> None:
    pairs = of_type(week, "pair")
    assert [pair["rise"] for pair in pairs] == [56, 67, 44, 45, 41, 42, 55]
    assert sum(pair["before_in_goal"] for pair in pairs) == 6
    assert sum(pair["after_in_goal"] for pair in pairs) == 5
    assert {pair["status"] for pair in pairs} == {"complete"}


def test_digest_holds_the_weeks_figures(week: Played) -> None:
    (digest,) = week.digests
    rises = [after - before for before, after in zip(BEFORE, AFTER, strict=True)]
    assert (digest["readings"], digest["complete_pairs"]) == (14, 7)
    assert (digest["before_in_goal"], digest["after_in_goal"]) == ([6, 7], [5, 7])
    assert digest["median_before"] == median(BEFORE)
    assert digest["median_after"] == median(AFTER)
    assert digest["median_rise"] == median(rises) == 45
    assert (digest["lowest"], digest["highest"]) == (98, 191)
    assert digest["largest_rises"] == ["pasta", "rice and beans", "bread and cheese"]
    assert digest["smallest_rises"] == [
        "eggs and spinach",
        "chicken and cabbage",
        "fish and salad",
    ]
    assert digest["cautions"] == []


def test_trend_is_that_of_theilslopes(week: Played) -> None:
    trend = week.digests[0]["trend"]
    slope = theilslopes(AFTER, range(7))
    assert trend["mg_dl_per_day"] == round(slope.slope, 4)
    assert trend["low"] == round(slope.low_slope, 4)
    assert trend["high"] == round(slope.high_slope, 4)
    assert trend["clear"] is False


def test_words_of_the_digest_name_the_same_figures(week: Played) -> None:
    (told,) = [line for line in week.sent if line["kind"] == "digest"]
    assert "6 of 7" in told["text"]
    assert "5 of 7" in told["text"]
    assert told["picture"] in week.pictures
