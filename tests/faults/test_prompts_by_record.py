"""Prompts are worked out from the record: rows 16, 17 and 20 of the table in docs/delivery.md.

Through the real turns, the real store and the virtual engine.
"""

import pytest

from tests.replay.told import Story, spoken

BEFORE = "118 before lunch, rice and beans"


def prompts(story: Story) -> list[tuple[str, str, str | None]]:
    return spoken(story.play(), "prompt")


def test_without_a_further_word_the_prompt_comes() -> None:
    assert prompts(Story().says("12:00", BEFORE).passes("14:05")) == [
        ("14:00", "prompt", "after_meal")
    ]


def test_stopped_before_the_prompt_no_prompt_comes() -> None:
    assert prompts(Story().says("12:00", BEFORE).says("13:59", "stop").passes("15:00")) == []


def test_a_meal_edited_to_another_time_moves_its_prompt() -> None:
    story = Story().says("12:00", "rice and beans for lunch", id="a")
    story.says("12:10", "rice and beans for lunch at 11:40", edits="a").passes("13:50")
    assert prompts(story) == [("13:40", "prompt", "after_meal")]


def test_a_report_edited_to_be_no_meal_has_no_prompt() -> None:
    story = Story().says("12:00", BEFORE, id="a").says("12:30", "118 fasting", edits="a")
    assert prompts(story.passes("15:00")) == []


def test_answered_before_the_prompt_no_prompt_comes() -> None:
    assert prompts(Story().says("12:00", BEFORE).says("13:45", "151").passes("15:00")) == []


@pytest.mark.parametrize(
    ("day", "until", "offset"),
    [("2026-03-27", "2026-03-31", "+01:00"), ("2026-10-23", "2026-10-27", "+02:00")],
    ids=["spring gap", "autumn fold"],
)
def test_a_week_that_ends_in_a_change_of_the_clock_has_one_digest(
    day: str, until: str, offset: str
) -> None:
    story = Story(
        offset=offset,
        day=day,
        zone="Europe/Rome",
        digest_at="02:30",
        week_ends="sunday",
        quiet=["00:00", "00:01"],
    )
    story.says("12:00", BEFORE).says("14:00", "151").passes(f"{until} 12:00")
    assert len(spoken(story.play(), "digest")) == 1
