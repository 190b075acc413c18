"""What a week's picture holds: every meal, reading and activity of it, and nothing else."""

from datetime import timedelta

import pytest

from bot.entries import Food, FoodKind, Meal, Moment
from bot.glucose.pairs import Status
from bot.glucose.week import Week
from bot.picture import Alert, Joint, Judged, Off, Role, Row
from bot.units import Unit
from bot.words.english.picture import PICTURE
from bot.words.picture import lone_readings, week_picture
from demo.diary import MONDAY, Diary, somebody
from demo.weeks import WEEKS, crowded


def rows_of(week: Week) -> tuple[Row, ...]:
    return week_picture(week, PICTURE).rows


@pytest.mark.parametrize("name", WEEKS)
def test_every_reading_of_the_week_is_marked_once(name: str) -> None:
    """A reading may be a pair's and an activity's; else it stands in one place."""
    week = WEEKS[name][0]()
    marks = sum(len(row.marks) for row in rows_of(week))
    stood = [noted for pair in week.pairs for noted in (pair.before, pair.after)]
    stood += [noted for effect in week.effects for noted in (effect.before, effect.after)]
    used = [noted.id for noted in stood if noted is not None]
    assert marks == len(used) + len(lone_readings(week))
    assert {one.noted.id for one in week.readings} <= {
        *used,
        *(one.noted.id for one in lone_readings(week)),
    }


def test_a_pair_becomes_a_stroke_with_its_words() -> None:
    (row,) = rows_of(WEEKS["one_pair"][0]())
    assert (row.day, row.name, row.detail) == ("Wed", "Lunch", "rice and beans")
    assert row.joint is Joint.COUNTED
    before, after = row.marks
    assert (before.at, before.word, before.role, before.judged) == (
        118,
        "118",
        Role.BEFORE,
        Judged.WITHIN,
    )
    assert (after.at, after.role, after.judged) == (154, Role.AFTER, Judged.WITHIN)


def test_a_meal_without_a_name_is_known_by_its_time() -> None:
    (row,) = rows_of(Diary().meal(0, "12:30", "rice", 118, 154).week())
    assert row.name == "12:30"


def test_rows_stand_in_the_order_of_the_days_and_other_tests_close_the_day() -> None:
    diary = Diary().reading(0, "07:00", 99, Moment.FASTING).meal(0, "19:00", "fish", 100, 120)
    diary.meal(0, "12:30", "rice", 118, 154).activity(
        0, "17:00", "walked", 20, before=150, after=120
    )
    names = [row.name for row in rows_of(diary.meal(1, "08:00", "egg", 100, 110).week())]
    assert names == ["12:30", "Activity", "19:00", "Other", "08:00"]


def test_off_scale_and_cautioned_values_are_marked_as_such() -> None:
    rows = rows_of(WEEKS["with_hi"][0]())
    off = [mark for row in rows for mark in row.marks if mark.off is not None]
    assert {mark.off for mark in off} == {Off.HIGH}
    assert all(mark.alert is Alert.HIGH and mark.word == "HI" for mark in off)
    low = [mark for row in rows_of(WEEKS["with_low"][0]()) for mark in row.marks if mark.alert]
    assert [(mark.word, mark.alert) for mark in low] == [("62", Alert.LOW)]


def test_what_the_washed_repeat_overruled_is_kept_and_told() -> None:
    rows = rows_of(WEEKS["washed"][0]())
    (doubtful,) = [mark for row in rows for mark in row.marks if mark.doubtful]
    assert doubtful.word == "286?"
    assert doubtful.alert is None
    (row,) = [row for row in rows if doubtful in row.marks]
    assert row.note == PICTURE.doubtful_note
    mango = next(row for row in rows if row.detail == "mango")
    assert [mark.word for mark in mango.marks] == ["112", "152"]


def test_why_a_meal_does_not_count_stands_beside_it() -> None:
    week = WEEKS["uncounted"][0]()
    notes = {row.note for row in rows_of(week) if row.joint is Joint.UNCOUNTED}
    for status in {pair.status for pair in week.pairs}:
        assert PICTURE.notes[status].format(minutes=170) in notes
    assert set(PICTURE.notes) == set(Status) - {Status.COMPLETE}


def test_a_second_test_that_may_still_come_is_not_called_missing() -> None:
    week = WEEKS["so_far"][0]()
    assert rows_of(week)[-1].note == PICTURE.still_open


def test_food_that_is_still_working_is_told_beside_the_activity() -> None:
    diary = Diary().meal(0, "12:30", "rice", 118, 160)
    diary.activity(0, "14:00", "walked", 20, before=190, after=140)
    (row,) = [row for row in rows_of(diary.week()) if row.joint is Joint.ACTIVITY]
    assert row.note == PICTURE.food_working


def test_water_alone_is_no_row() -> None:
    diary = Diary()
    water = Meal(
        text="water",
        started_at=diary.at(0, "12:00"),
        foods=(Food(text="water", kind=FoodKind.FREE_DRINK),),
    )
    diary.tell(diary.at(0, "12:00"), water)
    assert rows_of(diary.week()) == ()


def test_the_meters_unit_is_the_pictures() -> None:
    picture = week_picture(WEEKS["mmol"][0](), PICTURE)
    assert picture.unit == Unit.MMOL_L
    assert picture.goals is not None
    assert (picture.goals.before_low, picture.goals.before_high) == (4.4, 7.2)
    assert picture.goals.after_high == 10.0
    assert picture.goals.after_word.endswith("10.0")
    assert [mark.word for mark in picture.rows[0].marks] == ["6.5", "9.4"]


def test_in_pregnancy_no_goal_is_drawn_and_no_value_judged() -> None:
    picture = week_picture(WEEKS["pregnant"][0](), PICTURE)
    assert picture.goals is None
    assert {mark.judged for row in picture.rows for mark in row.marks} == {Judged.NOT}


def test_cautions_of_the_week_stand_on_the_picture() -> None:
    assert week_picture(WEEKS["with_hi"][0](), PICTURE).cautions == ("Caution: very high, 2 times",)
    assert week_picture(WEEKS["with_lo"][0](), PICTURE).cautions[0] == "Caution: very low"


def test_titles_name_the_days() -> None:
    assert week_picture(Diary().week(), PICTURE).title == "Your week: 2 to 8 March"
    later = Diary(monday=MONDAY + timedelta(weeks=4))
    assert week_picture(later.week(), PICTURE).title == "Your week: 30 March to 5 April"
    so_far = WEEKS["so_far"][0]()
    assert week_picture(so_far, PICTURE, so_far=True).title == "Week so far: 1 to 4 March"


def test_an_empty_week_says_what_would_be_a_start() -> None:
    picture = week_picture(Diary().week(), PICTURE)
    assert picture.rows == ()
    assert "two hours" in picture.empty


def test_forty_pairs_are_forty_rows() -> None:
    assert len(rows_of(crowded(40))) == 40


def test_days_are_the_participants_own_and_not_those_of_the_clock_it_was_told_on() -> None:
    """Dinner at 19:30 in Lima is a Monday dinner, though it is Tuesday in Nairobi."""
    diary = Diary(who=somebody(zone="America/Lima")).meal(0, "19:30", "fish", 100, 120)
    assert rows_of(diary.week())[0].day == "Mon"
