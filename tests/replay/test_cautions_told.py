"""Cautions as they are met in a chat: what is said first, when a new test is asked for.

Expectations: the contract of cautions, which names its sources row by row.
"""

import pytest

from tests.replay.told import Story, of_type, spoken, texts


def cautions(story: Story) -> list[tuple[str, str | None]]:
    """When and at what level the story brings cautions."""
    return [(at, about) for at, _, about in spoken(story.play(), "caution")]


@pytest.mark.parametrize(
    ("said", "level"),
    [
        ("53", "very_low"),
        ("54", "low"),
        ("69", "low"),
        ("250", "high"),
        ("299", "high"),
        ("300", "very_high"),
        ("LO", "very_low"),
        ("HI", "very_high"),
        ("2.9 mmol", "very_low"),
        ("3.0 mmol", "low"),
        ("3.8 mmol", "low"),
        ("13.9 mmol", "high"),
        ("16.6 mmol", "high"),
        ("16.7 mmol", "very_high"),
        ("passed out", "emergency"),
        ("chest pain", "emergency"),
        ("I feel shaky", "symptoms"),
        ("took my insulin twice", "symptoms"),
    ],
)
def test_level_by_what_is_said(said: str, level: str) -> None:
    assert cautions(Story().says("11:00", said).passes("11:01"))[0] == ("11:00", level)


@pytest.mark.parametrize("said", ["70", "249", "3.9 mmol", "13.8 mmol", "118, rice and beans"])
def test_no_caution_between_the_levels(said: str) -> None:
    assert cautions(Story().says("11:00", said).passes("11:01")) == []


def test_a_low_that_answers_a_prompt_is_cautioned_before_anything_else() -> None:
    played = Story().says("12:00", "118, rice").says("14:01", "52").passes("14:02").play()
    assert next(line["kind"] for line in played.sent if line["at"][11:16] == "14:01") == "caution"
    (pair,) = of_type(played, "pair")
    assert pair["status"] == "around_low"


def test_sugar_against_a_low_is_no_meal_and_is_cautioned_once() -> None:
    played = (
        Story()
        .says("11:00", "62")
        .says("11:01", "had juice")
        .says("11:16", "84")
        .passes("14:00")
        .play()
    )
    assert spoken(played, "caution") == [("11:00", "caution", "low")]
    assert [line["text"] for line in of_type(played, "treatment")] == ["juice"]
    assert of_type(played, "meal") == []
    assert "after_meal" not in [about for _, _, about in spoken(played, "prompt")]


def test_a_meal_told_with_the_low_stays_a_meal() -> None:
    played = Story().says("12:00", "62, rice and beans").passes("15:00").play()
    (pair,) = of_type(played, "pair")
    assert pair["meal"] == "rice and beans"
    assert ("14:00", "prompt", "after_meal") in spoken(played, "prompt")


def test_unanswered_a_low_is_asked_about_once_more_ten_minutes_later() -> None:
    played = Story().says("11:00", "62").passes("14:00").play()
    assert spoken(played, "prompt") == [
        ("11:15", "prompt", "recheck"),
        ("11:25", "prompt", "recheck"),
    ]


def test_where_lows_are_possible_one_more_test_an_hour_after_recovery() -> None:
    played = Story(may_go_low=None).says("11:00", "62").says("11:16", "84").passes("14:00").play()
    assert ("12:16", "prompt", "recheck") in spoken(played, "prompt")


def test_still_low_is_cautioned_again_and_the_third_time_is_an_emergency() -> None:
    story = Story().says("11:00", "62").says("11:15", "61").says("11:30", "63").passes("11:31")
    assert cautions(story) == [
        ("11:00", "low"),
        ("11:15", "low"),
        ("11:30", "emergency"),
        ("11:30", "low"),
    ]


def test_the_washed_repeat_overrules_a_high() -> None:
    played = (
        Story()
        .says("12:00", "310 before rice")
        .says("12:10", "128")
        .says("14:01", "150")
        .passes("16:00")
        .play()
    )
    first, repeat, _ = of_type(played, "reading")
    assert (first["doubtful"], repeat["doubtful"]) == (True, False)
    (pair,) = of_type(played, "pair")
    assert (pair["before"], pair["after"], pair["status"]) == (128, 150, "complete")
    assert spoken(played, "caution") == [("12:00", "caution", "very_high")]


def test_a_high_without_a_new_test_is_asked_about_once() -> None:
    played = Story().says("11:00", "260").passes("14:00").play()
    assert spoken(played, "prompt") == [("11:15", "prompt", "recheck")]


def test_300_on_two_days_running_and_a_third_high_call_the_care_team() -> None:
    story = (
        Story()
        .says("11:00", "310")
        .says("2026-03-03 11:00", "305")
        .says("2026-03-04 11:00", "255")
        .passes("2026-03-04 11:01")
    )
    assert cautions(story) == [
        ("11:00", "very_high"),
        ("11:00", "very_high"),
        ("11:00", "two_days_very_high"),
        ("11:00", "high"),
        ("11:00", "repeated_high"),
    ]


def test_a_second_low_within_seven_days_calls_the_care_team_this_week() -> None:
    story = (
        Story()
        .says("11:00", "66")
        .says("11:20", "90")
        .says("2026-03-04 11:00", "65")
        .passes("2026-03-04 11:01")
    )
    assert cautions(story)[-2:] == [("11:00", "low"), ("11:00", "repeated_low")]


def test_an_old_value_opens_with_a_new_test() -> None:
    played = Story().says("11:00", "at 8 it was 62").passes("11:01").play()
    (words,) = texts(played, "caution")
    assert words.casefold().startswith("test now")


def test_a_value_far_from_the_last_one_is_asked_for_again_with_washed_hands() -> None:
    played = Story().says("11:00", "fasting 100").says("11:20", "230").passes("11:21").play()
    *_, reply = texts(played, "reply")
    assert "wash" in reply.casefold()


def test_a_correction_of_a_low_upwards_asks_for_one_fresh_reading() -> None:
    played = Story().says("11:00", "62").says("11:02", "sorry 162").passes("12:00").play()
    *_, reply = texts(played, "reply")
    assert "test once more" in reply
    assert spoken(played, "prompt") == [("11:15", "prompt", "recheck")]


def test_an_edit_that_says_the_same_value_is_not_cautioned_again() -> None:
    story = (
        Story()
        .says("11:00", "62", id="m1")
        .says("11:02", "62, felt fine", edits="m1")
        .passes("11:03")
    )
    assert cautions(story) == [("11:00", "low")]


def test_vomiting_with_a_high_is_an_emergency() -> None:
    assert cautions(Story().says("11:00", "280 and vomiting").passes("11:01"))[0] == (
        "11:00",
        "emergency",
    )


def test_emergency_words_come_first_with_the_number_of_the_place() -> None:
    played = (
        Story(emergency_number="10177").says("11:00", "she passed out", by="helper").passes("11:01")
    ).play()
    first = played.sent[0]
    assert (first["kind"], first["about"]) == ("caution", "emergency")
    assert first["text"].startswith("Call 10177")


def test_somebody_elses_low_gets_what_to_do_first() -> None:
    played = Story().says("11:00", "my husband is shaky").passes("11:01").play()
    (reply,) = texts(played, "reply")
    assert "15 g of fast sugar" in reply


def test_every_caution_but_emergency_defers_to_the_care_team() -> None:
    story = Story()
    for minute, said in enumerate(["62", "310", "52", "HI", "LO", "255", "shaky", "chest pain"]):
        story.says(f"11:{minute:02}", said)
    played = story.passes("12:00").play()
    for line in played.sent:
        if line["kind"] == "caution" and line["about"] != "emergency":
            assert "care team" in line["text"], line["text"]
        if line["kind"] == "caution":
            assert "Nobody watches" in line["text"], line["text"]


def test_seventy_to_seventy_nine_is_just_under_the_goal_not_a_low() -> None:
    played = Story().says("12:00", "74 before, rice").passes("12:01").play()
    (reply,) = texts(played, "reply")
    assert "just under your goal" in reply
    assert "not a low" in reply


def test_some_carbohydrate_before_activity_below_90_where_lows_are_possible() -> None:
    played = (
        (Story(may_go_low=True).says("11:00", "84 fasting").says("11:05", "going for a walk"))
        .passes("11:06")
        .play()
    )
    *_, reply = texts(played, "reply")
    assert "below 90" in reply


def test_somebody_elses_value_is_no_reading_and_goes_to_their_own_care_team() -> None:
    played = Story().says("11:00", "my mum is 152").passes("11:01").play()
    (reply,) = texts(played, "reply")
    assert "their own care team" in reply
    assert of_type(played, "reading") == []


def test_a_low_that_is_said_back_once_more_is_never_called_not_a_low() -> None:
    mended = Story().says("11:00", "62").says("11:02", "that was before lunch").passes("11:03")
    edited = (
        Story()
        .says("11:00", "62 before lunch", id="m1")
        .says("11:02", "62 before lunch!", edits="m1")
    ).passes("11:03")
    for story in (mended, edited):
        *_, reply = texts(story.play(), "reply")
        assert "62 mg/dL before eating: low" in reply
        assert "not a low" not in reply


def test_a_helper_is_told_that_the_other_person_is_back_in_range() -> None:
    played = (
        Story()
        .says("12:00", "she is at 58 and shaky", by="helper")
        .says("12:20", "she's at 81 now", by="helper")
        .passes("12:30")
        .play()
    )
    assert "they are back at 70 mg/dL" in next(iter(texts(played, "reply")))
