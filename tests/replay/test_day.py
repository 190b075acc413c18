"""A day with the bot, told as stories: what is asked, when, and what the record holds after."""

from tests.replay.told import Story, of_type, spoken, texts


def test_a_meal_is_asked_about_two_hours_after_its_start_and_the_number_closes_the_pair() -> None:
    played = (
        Story().says("12:31", "118, rice and beans").says("14:33", "154").passes("23:00").play()
    )
    assert spoken(played) == [
        ("12:31", "reply", None),
        ("14:31", "prompt", "after_meal"),
        ("14:33", "reply", None),
    ]
    (pair,) = of_type(played, "pair")
    assert (pair["before"], pair["after"], pair["rise"]) == (118, 154, 36)
    assert pair["after_minutes"] == 122
    assert pair["status"] == "complete"
    assert (pair["before_in_goal"], pair["after_in_goal"]) == (True, True)
    said, closed = texts(played, "reply")
    assert "118 mg/dL" in said
    assert "14:31" in said
    assert "154 mg/dL" in closed
    assert "36" in closed


def test_one_nudge_a_quarter_of_an_hour_later_and_then_silence() -> None:
    played = Story().says("12:00", "118, rice and beans").passes("20:00").play()
    assert spoken(played, "prompt") == [
        ("14:00", "prompt", "after_meal"),
        ("14:15", "prompt", "after_meal"),
    ]


def test_later_moves_the_nudge_within_its_window() -> None:
    played = Story().says("12:00", "118, rice").says("14:02", "in 20").passes("20:00").play()
    assert spoken(played, "prompt") == [
        ("14:00", "prompt", "after_meal"),
        ("14:22", "prompt", "after_meal"),
    ]


def test_a_newer_meal_takes_the_place_of_the_older_prompt() -> None:
    played = Story().says("12:00", "118, rice").says("13:00", "an apple").passes("20:00").play()
    assert spoken(played, "prompt")[0] == ("15:00", "prompt", "after_meal")
    first, second = of_type(played, "pair")
    assert first["status"] == "no_after"
    assert second["status"] == "no_after"


def test_no_prompt_falls_into_quiet_time_and_the_reply_says_so() -> None:
    played = Story().says("21:00", "118, soup").passes("2026-03-03 06:00").play()
    assert spoken(played, "prompt") == []
    (reply,) = texts(played, "reply")
    assert "quiet" in reply


def test_activity_is_asked_about_ten_minutes_after_its_end_once_a_day() -> None:
    played = (
        Story()
        .says("10:00", "walked 20 min")
        .says("10:12", "140")
        .says("16:00", "walked 30 min")
        .passes("18:30")
        .play()
    )
    assert spoken(played, "prompt") == [("10:10", "prompt", "after_activity")]
    (reading,) = of_type(played, "reading")
    assert reading["moment"] == "after_activity"


def test_a_low_is_cautioned_first_and_rechecked_until_it_is_over() -> None:
    played = Story().says("11:40", "62").says("11:57", "84").passes("14:00").play()
    assert spoken(played)[:3] == [
        ("11:40", "caution", "low"),
        ("11:55", "prompt", "recheck"),
        ("11:57", "reply", None),
    ]
    caution = next(iter(texts(played, "caution")))
    assert "62 mg/dL" in caution


def test_a_low_at_night_is_cautioned_and_rechecked_in_quiet_time() -> None:
    played = Story().says("23:40", "62").passes("2026-03-03 01:00").play()
    assert spoken(played) == [
        ("23:40", "caution", "low"),
        ("23:55", "prompt", "recheck"),
        ("00:05", "prompt", "recheck"),
    ]


def test_after_stop_a_low_is_cautioned_and_nothing_else_is_sent() -> None:
    played = (
        Story(main_meal="13:00")
        .says("09:00", "stop")
        .says("11:40", "62")
        .passes("2026-03-10 01:00")
        .play()
    )
    assert spoken(played, "caution", "prompt", "digest", "note") == [("11:40", "caution", "low")]


def test_an_edit_mends_what_was_first_said() -> None:
    played = (
        Story()
        .says("12:00", "181 before, rice", id="m1")
        .says("12:05", "118 before, rice", edits="m1")
        .passes("13:00")
        .play()
    )
    (reading,) = of_type(played, "reading")
    assert (reading["value"], reading["taken_at"][11:16]) == (118, "12:00")
    assert len(of_type(played, "meal")) == 1


def test_a_correction_and_a_removal_leave_no_trace() -> None:
    played = (
        Story()
        .says("12:00", "126 before, rice")
        .says("12:01", "sorry 162")
        .says("12:30", "an apple")
        .says("12:31", "undo")
        .passes("13:00")
        .play()
    )
    assert [line["value"] for line in of_type(played, "reading")] == [162]
    assert [line["text"] for line in of_type(played, "meal")] == ["rice"]


def test_short_messages_in_a_row_are_one_report() -> None:
    played = (
        Story()
        .says("12:00", "118")
        .says("12:01", "rice")
        .says("12:02", "and beans")
        .passes("13:00")
        .play()
    )
    (meal,) = of_type(played, "meal")
    assert meal["text"] == "rice and beans"
    (reading,) = of_type(played, "reading")
    assert reading["moment"] == "before_meal"


def test_eating_moves_the_start_of_the_meal_that_was_reported() -> None:
    played = (
        Story().says("12:00", "118 before, rice").says("12:20", "eating").passes("15:00").play()
    )
    (meal,) = of_type(played, "meal")
    assert meal["started_at"][11:16] == "12:20"
    assert spoken(played, "prompt")[0] == ("14:20", "prompt", "after_meal")


def test_the_main_meal_is_prompted_and_three_silent_days_bring_one_question() -> None:
    played = Story(main_meal="13:00").passes("2026-03-12 20:00").play()
    assert spoken(played, "prompt") == [("12:45", "prompt", "before_meal")] * 3
    asked = [line for line in played.sent if line["kind"] == "note" and "go on" in line["text"]]
    assert [line["at"][:16] for line in asked] == ["2026-03-05T12:45"]


def test_a_digest_goes_out_every_week_also_an_empty_one() -> None:
    played = Story().passes("2026-03-16 08:00").play()
    assert [line["at"][:16] for line in played.sent if line["kind"] == "digest"] == [
        "2026-03-08T18:00",
        "2026-03-15T18:00",
    ]
    first, second = played.digests
    assert (first["week_from"], first["week_to"]) == ("2026-03-02", "2026-03-08")
    assert second["readings"] == 0


def test_a_unit_that_is_asked_back_completes_the_reading() -> None:
    played = Story().says("08:00", "fasting 7.2").says("08:01", "mmol").passes("09:00").play()
    (reading,) = of_type(played, "reading")
    assert (reading["value"], reading["unit"], reading["moment"]) == (7.2, "mmol/L", "fasting")


def test_an_activity_under_way_is_completed_by_done() -> None:
    played = (
        Story()
        .says("10:00", "going for a walk")
        .says("10:25", "done, 20 min")
        .passes("11:00")
        .play()
    )
    (activity,) = of_type(played, "activity")
    assert (activity["minutes"], activity["ended_at"][11:16]) == (20, "10:25")


def test_sorry_after_a_value_that_was_asked_about_mends_that_value_and_no_other() -> None:
    played = (
        Story(unit="mmol/L")
        .says("08:00", "10.9 fasting")
        .says("12:00", "71, rice and stew")
        .says("12:01", "sorry 7.1")
        .passes("13:00")
        .play()
    )
    assert [line["value"] for line in of_type(played, "reading")] == [10.9, 7.1]
    (pair,) = of_type(played, "pair")
    assert pair["before"] == 127.91


def test_no_nudge_after_skip() -> None:
    played = Story().says("12:00", "118, rice").says("14:02", "can't test").passes("15:00").play()
    assert spoken(played, "prompt") == [("14:00", "prompt", "after_meal")]


def test_a_value_after_activity_is_not_said_to_be_off_a_meals_time() -> None:
    played = (
        Story()
        .says("13:00", "a biscuit")
        .says("15:30", "walked 20 min")
        .says("15:41", "140")
        .passes("15:42")
        .play()
    )
    *_, reply = texts(played, "reply")
    assert "after moving" in reply
    assert "biscuit" not in reply
