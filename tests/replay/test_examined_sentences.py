"""Sentences of the contract told as stories by somebody who had not seen the code.

Expectations: the contracts of replay and of cautions, sentence by sentence; no other source.
"""

import pytest

from tests.replay.told import Story, spoken, texts


@pytest.mark.parametrize(
    ("story", "value"),
    [
        (Story().says("11:00", "fasting 100").says("11:40", "fasting 201"), "201 mg/dL"),
        (Story().says("11:00", "fasting 200").says("11:40", "fasting 99"), "99 mg/dL"),
        (
            Story()
            .says("12:00", "90 before, rice")
            .says("13:30", "after 100")
            .says("14:00", "after 210"),
            "210 mg/dL",
        ),
    ],
)
def test_no_goal_is_drawn_from_a_value_that_is_asked_for_again(story: Story, value: str) -> None:
    *_, reply = texts(story.passes("14:01").play(), "reply")
    assert reply.startswith(value)
    assert "wash" in reply
    assert "goal" not in reply


@pytest.mark.parametrize(
    ("story", "prompts"),
    [
        (
            Story().says("12:00", "118 before, rice", id="m1").says("12:40", "52", edits="m1"),
            ["12:55", "13:05"],
        ),
        (Story().says("12:00", "fasting 118").says("12:40", "sorry 52"), ["12:55", "13:05"]),
        (Story().says("12:00", "fasting 118").says("12:10", "sorry 52"), ["12:15", "12:25"]),
        (
            Story().says("12:00", "fasting 118", id="m1").says("12:40", "fasting 310", edits="m1"),
            ["12:55"],
        ),
    ],
)
def test_what_an_edit_brings_about_is_due_at_its_own_time(story: Story, prompts: list[str]) -> None:
    played = story.passes("13:30").play()
    rechecks = [at for at, _, about in spoken(played, "prompt") if about == "recheck"]
    assert rechecks == prompts
    (words,) = texts(played, "caution")
    if "310" not in words:
        assert f"I will ask at {prompts[0]}" in words


def test_a_value_put_right_more_than_an_hour_after_it_was_taken_opens_with_test_now() -> None:
    story = Story().says("12:00", "fasting 118", id="m1").says("13:01", "fasting 62", edits="m1")
    (words,) = texts(story.passes("13:02").play(), "caution")
    assert words.startswith("Test now. 62 mg/dL at 12:00 was low.")
    story = Story().says("12:00", "fasting 118", id="m1").says("13:00", "fasting 62", edits="m1")
    (words,) = texts(story.passes("13:02").play(), "caution")
    assert not words.startswith("Test now")
