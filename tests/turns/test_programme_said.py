"""After a closed pair the bot says where it puts the participant: one line, once a day."""

from datetime import UTC, datetime, timedelta

from bot.entries import Step
from bot.messages import Kind
from tests.planning.living import Life, person

START = datetime(2026, 3, 2, 6, 0, tzinfo=UTC)


def a_pair(life: Life, day: int, before: int, after: int, dish: str) -> str:
    """One paired test at noon of a day; what was said back to the second number."""
    at = START + timedelta(days=day, hours=5)
    life.says(at, f"{before} before, {dish}")
    life.says(at + timedelta(hours=2), str(after))
    return [one.text for _, one in life.said if one.kind is Kind.REPLY][-1]


def test_after_three_pairs_the_next_step_is_offered() -> None:
    life = Life(person(START))
    for day in range(2):
        assert "next step" not in a_pair(life, day, 110, 190, ("fish", "pasta")[day])
    assert 'text "next step"' in a_pair(life, 2, 112, 191, "rice")


def test_where_lows_are_possible_the_educator_is_to_be_asked_first() -> None:
    life = Life(person(START, may_go_low=None))
    for day in range(2):
        a_pair(life, day, 110, 190, "rice")
    said = a_pair(life, 2, 112, 191, "rice")
    assert "Ask your educator first" in said
    assert 'text "next step"' not in said


def test_a_step_is_compared_with_the_one_before_by_more_than_scatter() -> None:
    life = Life(person(START))
    for day in range(3):
        a_pair(life, day, 110 + day, 195 + day, "rice")
    life.says(START + timedelta(days=2, hours=10), "next step")
    assert life.record is not None
    assert [noted.entry.step for noted in life.record.steps] == [Step.LIGHTER_MEAL]
    for day in range(3, 6):
        a_pair(life, day, 110 + day, 140 + day, "rice")
    said = a_pair(life, 6, 111, 142, "rice")
    assert "With lighter meals your glucose rises 55 mg/dL less than with meals as usual" in said
    assert "That is more than scatter." in said


def test_no_step_is_offered_in_the_week_of_a_low() -> None:
    life = Life(person(START))
    life.says(START + timedelta(hours=1), "62")
    life.says(START + timedelta(hours=1, minutes=16), "90")
    for day in range(3):
        said = a_pair(life, day, 110, 190, "rice")
    assert "next step" not in said


def test_fewer_tests_are_proposed_after_two_good_weeks_and_begin_with_yes() -> None:
    life = Life(person(START, main_meal=None))
    for day in range(14):
        a_pair(life, day, 110, 150, "fish and salad")
    assert "twice a week" in a_pair(life, 14, 111, 149, "fish and salad")
    life.says(START + timedelta(days=14, hours=8), "yes")
    assert life.participant.rhythm == "twice_a_week"
