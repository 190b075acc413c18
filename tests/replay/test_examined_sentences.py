"""Sentences of the contract told as stories by somebody who had not seen the code.

Expectations: the contracts of replay and of cautions, sentence by sentence; no other source.
"""

import pytest

from tests.replay.told import Story, texts


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
