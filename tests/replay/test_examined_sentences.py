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


def test_a_digest_that_was_dropped_is_given_on_request_once_and_then_the_week_so_far() -> None:
    story = Story().says("12:00", "100 before, rice").says("14:00", "after 150")
    story.says("2026-03-03 10:00", "pause").says("2026-03-09 10:00", "resume")
    story.says("2026-03-09 12:00", "90 before, fish").says("2026-03-09 14:00", "after 115")
    story.says("2026-03-09 15:00", "summary").says("2026-03-09 15:05", "summary")
    played = story.passes("2026-03-09 16:00").play()
    assert played.digests == []
    asked = {line["at"][11:16]: line for line in played.sent if line["picture"]}
    assert list(asked) == ["15:00", "15:05"]
    assert "100 to 150" in asked["15:00"]["text"]
    assert "fish" not in asked["15:00"]["text"].casefold()
    assert "90 to 115" in asked["15:05"]["text"]


def test_a_digest_that_was_sent_is_followed_by_the_week_so_far() -> None:
    story = Story().says("12:00", "100 before, rice").says("14:00", "after 150")
    story.says("2026-03-09 10:00", "summary")
    *_, reply = texts(story.passes("2026-03-09 10:01").play(), "reply")
    assert "so far" in reply
    assert "rice" not in reply.casefold()


@pytest.mark.parametrize(("put_off", "second"), [("in 9", ["12:59"]), ("in 10", []), ("later", [])])
def test_a_prompt_before_the_main_meal_is_worthless_once_it_begins(
    put_off: str, second: list[str]
) -> None:
    played = Story(main_meal="13:00").says("12:50", put_off).passes("14:00").play()
    prompts = [at for at, _, about in spoken(played, "prompt") if about == "before_meal"]
    assert prompts == ["12:45", *second]


@pytest.mark.parametrize(
    ("put_off", "answer", "asked"),
    [
        ("in 10", "I will ask again at 14:15.", ["14:00", "14:15"]),
        ("in 40", "this test counts until 14:30", ["14:00"]),
    ],
)
def test_no_prompt_is_promised_that_would_come_too_late(
    put_off: str, answer: str, asked: list[str]
) -> None:
    played = Story().says("12:00", "rice").says("14:05", put_off).passes("15:00").play()
    assert answer in texts(played, "reply")[-1]
    assert [at for at, _, about in spoken(played, "prompt") if about == "after_meal"] == asked


def test_a_low_put_right_to_a_high_is_asked_about_once_and_not_twice_at_one_instant() -> None:
    played = Story().says("12:00", "62").says("12:02", "sorry 262").passes("13:00").play()
    assert spoken(played, "caution", "prompt") == [
        ("12:00", "caution", "low"),
        ("12:02", "caution", "high"),
        ("12:15", "prompt", "recheck"),
    ]


@pytest.mark.parametrize(
    ("said", "level", "value"),
    [
        ("fasting 118 and shaky", "symptoms", "118 mg/dL"),
        ("fasting 75 and shaky", "symptoms", "75 mg/dL"),
        ("200 before lunch and very thirsty", "symptoms", "200 mg/dL"),
        ("after 140, took my insulin twice", "symptoms", "140 mg/dL"),
        ("fasting 118 and chest pain", "emergency", "118 mg/dL"),
    ],
)
def test_no_goal_is_judged_beside_a_symptom(said: str, level: str, value: str) -> None:
    played = Story().says("09:00", "rice").says("11:00", said).passes("11:01").play()
    assert ("11:00", "caution", level) in spoken(played)
    *_, reply = texts(played, "reply")
    assert reply.startswith(value)
    assert "goal" not in reply
    assert "good test" not in reply.casefold()
