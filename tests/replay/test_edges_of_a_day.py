"""Quoted prompts, photos, clock changes, several people at once, pauses: as stories."""

import json

import pytest

from bot.replay.play import play
from bot.replay.story import read_story
from tests.replay.told import PNG, Story, of_type, spoken, texts


def test_a_quoted_prompt_decides_what_a_number_is_even_when_a_newer_one_is_open() -> None:
    story = Story().says("12:00", "118, rice").says("13:20", "walked 20 min").passes("14:00")
    played = story.says("14:01", "150").passes("14:02").play()
    assert of_type(played, "reading")[-1]["moment"] == "after_meal"
    number = 1 + [line["about"] for line in played.sent].index("after_activity")
    story = Story().says("12:00", "118, rice").says("13:20", "walked 20 min").passes("14:00")
    played = story.says("14:01", "150", answers=number).passes("14:02").play()
    assert of_type(played, "reading")[-1]["moment"] == "after_activity"


def test_a_photo_with_words_is_a_meal_and_without_words_is_asked_about() -> None:
    played = Story().says("12:00", "118, rice", photo=True).passes("12:01").play()
    assert [line["text"] for line in of_type(played, "meal")] == ["rice"]
    played = (
        Story().says("12:00", "", photo=True).says("12:01", "rice and fish").passes("12:02").play()
    )
    assert [line["text"] for line in of_type(played, "meal")] == ["rice and fish"]
    assert "photo" in next(iter(texts(played, "reply")))


def test_a_bare_number_is_kept_as_unstated_and_asked_about() -> None:
    story = Story().says("16:00", "118").says("16:01", "on waking").passes("16:02")
    played = story.play()
    assert "Which test" in next(iter(texts(played, "reply")))
    (reading,) = of_type(played, "reading")
    assert reading["moment"] == "fasting"
    (unanswered,) = of_type(Story().says("16:00", "118").passes("17:00").play(), "reading")
    assert unanswered["moment"] == "unstated"


def test_a_meal_told_as_over_joins_the_one_begun_one_to_three_hours_before() -> None:
    played = (
        Story()
        .says("12:00", "118 before, rice and beans")
        .says("14:05", "171 after rice and beans")
        .passes("15:00")
        .play()
    )
    assert len(of_type(played, "meal")) == 1
    (pair,) = of_type(played, "pair")
    assert (pair["after"], pair["status"]) == (171, "complete")


def test_a_meal_told_as_over_with_none_before_it_asks_for_the_first_bite() -> None:
    played = (
        Story()
        .says("14:05", "171 after rice and beans")
        .says("14:06", "at 12")
        .passes("15:00")
        .play()
    )
    assert "first bite" in next(iter(texts(played, "reply")))
    (pair,) = of_type(played, "pair")
    assert (pair["meal_started_at"][11:16], pair["after"], pair["status"]) == (
        "12:00",
        171,
        "no_before",
    )


def test_two_hours_are_elapsed_hours_when_the_clock_is_put_forward() -> None:
    # Berlin, 29 March 2026: 02:00 becomes 03:00 (EU rule, from the zone database).
    story = Story(zone="Europe/Berlin", offset="+01:00", day="2026-03-29", quiet=["05:00", "05:01"])
    story.lines[0]["at"] = "2026-03-28T07:00:00+01:00"
    played = story.says("01:00", "118, soup").passes("2026-03-29 04:00").play()
    assert [line["at"] for line in played.sent if line["kind"] == "prompt"] == [
        "2026-03-29T04:00:00+02:00",
        "2026-03-29T04:15:00+02:00",
    ]
    assert "I will ask at 04:00" in played.sent[0]["text"]


def test_a_digest_hour_that_the_clock_skips_is_the_first_valid_minute_after_it() -> None:
    story = Story(
        zone="Europe/Berlin",
        offset="+01:00",
        day="2026-03-23",
        digest_at="02:30",
        quiet=["05:00", "05:01"],
    )
    played = story.passes("2026-03-30 12:00").play()
    assert [line["at"] for line in played.sent if line["kind"] == "digest"] == [
        "2026-03-29T03:00:00+02:00"
    ]


def test_pause_ends_prompts_and_digests_and_resume_brings_them_back() -> None:
    played = (
        Story(main_meal="13:00")
        .says("08:00", "pause")
        .says("2026-03-09 08:00", "resume")
        .passes("2026-03-09 13:00")
        .play()
    )
    assert spoken(played, "prompt", "digest") == [("12:45", "prompt", "before_meal")]


def test_a_digest_due_in_quiet_time_waits_for_its_end() -> None:
    played = Story(digest_at="23:00").passes("2026-03-09 12:00").play()
    assert [line["at"][:16] for line in played.sent if line["kind"] == "digest"] == [
        "2026-03-09T06:30"
    ]
    assert played.digests[0]["week_to"] == "2026-03-08"


def test_people_do_not_see_one_anothers_day_and_the_same_story_gives_the_same_bytes() -> None:
    lines = []
    for who, zone in (("ana", "Africa/Johannesburg"), ("bo", "Asia/Kolkata")):
        enrol = {"id": who, "unit": "mg/dL", "zone": zone}
        lines.append({"at": "2026-03-02T06:00:00+00:00", "enrol": enrol})
    lines.append({"at": "2026-03-02T10:00:00+00:00", "from": "ana", "text": "118, rice"})
    lines.append({"at": "2026-03-02T10:00:00+00:00", "from": "bo", "text": "131, dosa"})
    lines.append({"at": "2026-03-02T12:05:00+00:00", "pass": True})
    plays = [
        play(read_story(json.dumps(line) for line in lines), lambda _picture: PNG) for _ in range(2)
    ]
    assert plays[0].sent == plays[1].sent
    assert plays[0].record == plays[1].record
    for line in plays[0].sent:
        assert ("rice" in line["text"].casefold()) == (line["to"] == "ana")
        assert line["at"].endswith("+02:00" if line["to"] == "ana" else "+05:30")


def test_a_helper_writes_of_the_participant() -> None:
    played = Story().says("11:00", "she is 52 and shaky", by="helper").passes("11:01").play()
    first = next(iter(texts(played, "caution")))
    assert first.startswith("Give 15 g")


def test_strips_are_counted_and_six_are_kept() -> None:
    played = Story().says("09:00", "50 strips").passes("09:01").play()
    (reply,) = texts(played, "reply")
    assert "50 strips" in reply
    assert "6 aside" in reply


def test_a_food_question_gets_ones_own_figures_and_never_yes_or_no() -> None:
    played = (
        Story()
        .says("12:00", "118 before, mango")
        .says("14:00", "149")
        .says("15:00", "can I eat mango?")
        .passes("15:01")
        .play()
    )
    *_, reply = texts(played, "reply")
    assert "+31" in reply
    assert not {"yes", "no"} & set(reply.casefold().replace(",", " ").replace(".", " ").split())


def test_the_next_step_waits_for_the_educator_where_lows_are_possible_or_unknown() -> None:
    waits = Story(may_go_low=None).says("09:00", "next step").passes("09:01").play()
    assert of_type(waits, "step") == []
    taken = Story().says("09:00", "next step").passes("09:01").play()
    assert [line["step"] for line in of_type(taken, "step")] == ["lighter_meal"]


def test_what_was_due_before_a_move_is_told_on_the_clock_from_before_it() -> None:
    played = (
        Story().says("12:00", "118, rice").says("15:00", "I am in Lima now").passes("15:01").play()
    )
    offsets = {line["at"][:16]: line["at"][19:] for line in played.sent}
    assert offsets["2026-03-02T14:00"] == "+02:00"
    assert offsets["2026-03-02T08:00"] == "-05:00"


def test_the_figures_of_a_digest_are_those_that_stood_when_it_was_sent() -> None:
    played = (
        Story(day="2026-03-08")
        .says("12:00", "118 before, rice")
        .says("14:00", "150")
        .says("18:30", "150 should be 190")
        .passes("19:00")
        .play()
    )
    assert played.digests[0]["median_after"] == 150


def test_the_name_of_a_meal_does_not_tell_on_which_side_of_it_a_late_number_was() -> None:
    played = (
        Story()
        .says("12:00", "118 before, rice")
        .says("15:20", "171")
        .says("15:21", "lunch")
        .says("15:22", "after")
        .passes("15:30")
        .play()
    )
    assert "before you ate, or after?" in list(texts(played, "reply"))[2]
    assert [line["moment"] for line in of_type(played, "reading")] == ["before_meal", "after_meal"]
    assert len(of_type(played, "meal")) == 1


def test_a_meal_that_begins_hours_later_does_not_answer_which_test_a_number_was() -> None:
    played = Story().says("09:31", "165").says("12:58", "lunch now").passes("13:00").play()
    assert [line["moment"] for line in of_type(played, "reading")] == ["unstated"]
    assert [line["name"] for line in of_type(played, "meal")] == ["lunch"]


def test_who_asks_what_to_eat_gets_their_own_tests_the_smallest_change_first() -> None:
    nothing = Story().says("09:00", "what should I eat?").passes("09:01").play()
    assert "Test a meal before and two hours after" in next(iter(texts(nothing, "reply")))
    story = Story().says("08:00", "118 before, fish").says("10:00", "136")
    story.says("12:00", "110 before, rice").says("14:00", "190").says("15:00", "what should I eat?")
    told = list(texts(story.passes("15:01").play(), "reply"))[-1]
    assert "fish +18; rice +80" in told
    assert not any(word in told.casefold() for word in ("yes", "avoid", "should"))


def test_a_meal_told_without_a_dish_gets_it_from_the_report_with_the_test_before() -> None:
    played = (
        Story()
        .says("12:58", "lunch now")
        .says("13:02", "121 before, rice and beans")
        .says("15:03", "154")
        .passes("15:30")
        .play()
    )
    (pair,) = of_type(played, "pair")
    assert (pair["meal"], pair["status"], pair["after_minutes"]) == (
        "rice and beans",
        "complete",
        121,
    )
    assert [line["name"] for line in of_type(played, "meal")] == ["lunch"]


def test_who_asks_how_many_strips_are_left_is_told_once_they_were_told() -> None:
    story = Story().says("09:00", "how many strips do I have left?").says("09:01", "50 strips")
    story.says("10:00", "118").says("11:00", "how many strips have I got").passes("11:01")
    told = list(texts(story.play(), "reply"))
    assert '"50 strips"' in told[0]
    assert told[-1].startswith("49 strips left")


@pytest.mark.parametrize("text", ["48", "310", "118, rice"])
def test_a_summary_asked_in_the_second_of_a_reading_knows_it(text: str) -> None:
    """Two messages of one second, as a hurried thumb or a slow network brings them."""
    story = Story().says("12:00", text).says("12:00", "summary").passes("12:01")
    told = next(line["text"] for line in story.play().sent if line["picture"])
    [value, *_] = text.split(",")
    assert value in told
