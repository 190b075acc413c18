"""Edited messages, told as stories: read as if sent at the first one's time, answered now.

Source: the replay's contract, "An edit is read as if sent at the first one's time; what it
brings about is said at its own", and the cautions' contract on a low corrected upwards.
"""

import pytest

from tests.replay.told import Story, of_type, spoken, texts


def test_a_low_edited_upwards_asks_for_one_fresh_reading_and_is_no_recheck_itself() -> None:
    played = (
        Story(may_go_low=True)
        .says("12:00", "62", id="m1")
        .says("12:02", "162", edits="m1")
        .says("12:10", "150")
        .passes("14:30")
        .play()
    )
    assert [(line["value"], line["moment"]) for line in of_type(played, "reading")] == [
        (162, "unstated"),
        (150, "recheck"),
    ]
    assert "Please test once more now" in next(iter(texts(played, "reply")))
    assert spoken(played, "prompt") == []


def test_a_low_corrected_upwards_leaves_its_recheck_open() -> None:
    played = (
        Story(may_go_low=True)
        .says("12:00", "62")
        .says("12:02", "sorry 162")
        .says("12:10", "150")
        .passes("14:30")
        .play()
    )
    assert [(line["value"], line["moment"]) for line in of_type(played, "reading")] == [
        (162, "unstated"),
        (150, "recheck"),
    ]


@pytest.mark.parametrize("edited", ["hello", "thank you", "undo that please no food"])
def test_an_edit_that_enters_nothing_says_what_is_gone(edited: str) -> None:
    played = (
        Story()
        .says("10:00", "118 before, rice", id="m1")
        .says("10:06", edited, edits="m1")
        .passes("12:30")
        .play()
    )
    assert of_type(played, "meal") == of_type(played, "reading") == []
    assert spoken(played, "prompt") == []
    assert "118 mg/dL" in list(texts(played, "reply"))[1]


def test_an_edit_of_a_prompted_answer_stays_that_answer() -> None:
    played = (
        Story()
        .says("10:00", "118 before, rice")
        .says("12:01", "204", id="m1")
        .says("12:05", "154", edits="m1")
        .passes("12:30")
        .play()
    )
    (pair,) = of_type(played, "pair")
    assert (pair["after"], pair["rise"], pair["after_minutes"]) == (154.0, 36.0, 121)


def test_a_low_that_an_edit_puts_into_an_old_message_has_its_ladder() -> None:
    """Its test was days ago: the ladder counts from when it was told, and an answer ends it."""
    days_later = (
        Story()
        .says("12:00", "118", id="m1")
        .says("2026-03-05 12:00", "rice and beans")
        .says("2026-03-05 12:30", "58", edits="m1")
    )
    unanswered = days_later.passes("2026-03-05 13:45").play()
    assert spoken(unanswered, "caution", "prompt") == [
        ("12:30", "caution", "low"),
        ("12:45", "prompt", "recheck"),
        ("12:55", "prompt", "recheck"),
    ]


def test_an_answer_ends_the_ladder_of_such_a_low_and_other_prompts_come() -> None:
    played = (
        Story()
        .says("12:00", "118", id="m1")
        .says("2026-03-05 12:00", "rice and beans")
        .says("2026-03-05 13:50", "58", edits="m1")
        .says("2026-03-05 13:50", "125")
        .passes("2026-03-05 16:00")
        .play()
    )
    assert spoken(played, "caution", "prompt") == [
        ("13:50", "caution", "low"),
        ("14:00", "prompt", "after_meal"),
        ("14:15", "prompt", "after_meal"),
    ]


def test_a_high_put_beside_another_of_days_ago_belongs_to_it_and_other_prompts_come() -> None:
    """The two are one high, and the one told later is the answer to the other."""
    played = (
        Story()
        .says("12:00", "300")
        .says("12:10", "240", id="m1")
        .says("2026-03-05 12:00", "rice and beans")
        .says("2026-03-05 13:44", "310", edits="m1")
        .passes("2026-03-05 16:00")
        .play()
    )
    assert spoken(played, "prompt")[-2:] == [
        ("14:00", "prompt", "after_meal"),
        ("14:15", "prompt", "after_meal"),
    ]
