"""Working hours told in plain words and kept across the clock's changes; names and numbers."""

from dataclasses import replace
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.caution.ladder import EducatorWhy, EducatorWord
from bot.educator.alerts import Mark, due_alerts, gather, marked, next_alert, told
from bot.educator.bounds import OutOfBounds, with_goals, with_low
from bot.educator.educator import Educator, Hours
from bot.educator.hours import at_work, opening
from bot.participants import Participant
from bot.turns.teaching_reading import hours_of, named, wished
from bot.units import Unit
from bot.words.educator import Wish
from bot.words.educator_lines import paged
from bot.words.language import ENGLISH

SAY = ENGLISH.educator
ROME = ZoneInfo("Europe/Rome")
START = datetime(2026, 3, 2, 9, 0, tzinfo=ROME)


def educator(**known: object) -> Educator:
    plain = {"id": "EDU", "zone": "Europe/Rome", "joined_at": START}
    return Educator(**{**plain, **known})  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "days", "starts", "ends"),
    [
        ("Mon-Fri 8:00-16:00", {0, 1, 2, 3, 4}, time(8), time(16)),
        ("8-16", {0, 1, 2, 3, 4}, time(8), time(16)),
        ("monday to thursday 9am to 5:30pm", {0, 1, 2, 3}, time(9), time(17, 30)),
        ("Tue, Thu 08:15 - 12:00", {1, 3}, time(8, 15), time(12)),
        ("weekdays from 7.30 to 15", {0, 1, 2, 3, 4}, time(7, 30), time(15)),
        ("every day 10 to 18", set(range(7)), time(10), time(18)),
        ("sat-mon 9-12", {5, 6, 0}, time(9), time(12)),
        ("12am-11pm sun", {6}, time(0), time(23)),
    ],
)
def test_hours_in_plain_words(text: str, days: set[int], starts: time, ends: time) -> None:
    assert hours_of(text, SAY, Hours()) == Hours(days=frozenset(days), starts=starts, ends=ends)


@pytest.mark.parametrize("text", ["", "whenever", "16-8", "8", "25-26", "8-12 and 14-16", "8-8"])
def test_unclear_hours_are_asked_again(text: str) -> None:
    assert hours_of(text, SAY, Hours()) is None


@given(st.datetimes(datetime(2026, 1, 1), datetime(2026, 12, 31)))
def test_opening_is_within_hours_and_not_before(moment: datetime) -> None:
    instant = moment.replace(tzinfo=ROME)
    found = opening(educator(), instant)
    assert found.timestamp() >= instant.timestamp()
    local = found.astimezone(ROME)
    assert local.weekday() < 5
    assert time(8) <= local.time() < time(16)
    assert at_work(educator(), found)


def test_hours_follow_the_local_clock_when_it_changes() -> None:
    """Europe/Rome goes to summer time on 29 March 2026, a Sunday (IANA zone data)."""
    friday = datetime(2026, 3, 27, 17, 0, tzinfo=ROME)
    found = opening(educator(), friday).astimezone(ROME)
    assert (found.day, found.hour, found.utcoffset()) == (30, 8, timedelta(hours=2))


@pytest.mark.parametrize(
    ("text", "wish", "rest"),
    [
        ("roster 2", Wish.ROSTER, "2"),
        ("Who needs a look?", Wish.ROSTER, "?"),
        ("NOTE to Ana: hello, you", Wish.NOTE, "Ana: hello, you"),
        ("end plan ana", Wish.END_PLAN, "ana"),
        ("no deputy", Wish.NO_DEPUTY, ""),
        ("/roster", Wish.ROSTER, ""),
    ],
)
def test_wishes(text: str, wish: Wish, rest: str) -> None:
    found = wished(text, SAY)
    assert found is not None
    assert (found.wish, found.rest) == (wish, rest)


@pytest.mark.parametrize("text", ["", "seeing", "groups of", "lowland", "hello", "118, rice"])
def test_other_texts_are_no_wish(text: str) -> None:
    assert wished(text, SAY) is None


def person(id_: str) -> Participant:
    return Participant(id=id_, unit=Unit.MG_DL, zone="UTC", joined_at=START)


def test_names_by_label_id_or_the_beginning_of_an_id() -> None:
    own = [person("K7QZAB2345"), person("K7QXAB2345"), person("M4")]
    teacher = educator(labels=(("M4", "Ana"), ("K7QZAB2345", "Ana Maria")))
    assert named("ana: hi", own, teacher) == ((own[2],), "hi")
    assert named("Ana Maria hi", own, teacher) == ((own[0],), "hi")
    assert named("k7qx", own, teacher) == ((own[1],), "")
    assert len(named("K7Q", own, teacher)[0]) == 2
    assert named("k7", own, teacher)[0] == ()
    assert named("anabel", own, teacher)[0] == ()


@given(st.integers(0, 60), st.integers(-3, 12))
def test_pages_hold_every_line_once(lines: int, page: int) -> None:
    every = [("", f"<{number}>") for number in range(lines)]
    seen, at = [], 1
    while True:
        text, buttons = paged("head", every, at, "roster", SAY)
        seen += [word for word in text.split("\n") if word.startswith("<")]
        if not buttons:
            break
        assert buttons == (f"roster {at + 1}",)
        at += 1
    assert seen == [line for _, line in every]
    assert paged("head", every, page, "roster", SAY)[0]


# --- the states of an alert -------------------------------------------------------------------


def word(minutes: int) -> EducatorWord:
    due = START + timedelta(minutes=minutes)
    return EducatorWord(
        key=f"educator:{minutes}:very_low",
        due_at=due,
        why=EducatorWhy.VERY_LOW,
        cause=minutes,
        until=due + timedelta(hours=24),
    )


def test_word_is_gathered_once_and_dropped_untold_when_it_no_longer_holds() -> None:
    one = gather(educator(), "ana", [word(5)], since=START)
    assert gather(one, "ana", [word(5)], since=START) == one
    assert gather(one, "ana", [], since=START).alerts == ()
    known = told(one, due_alerts(one, None, word(5).due_at), word(5).due_at)
    assert len(gather(known, "ana", [], since=START).alerts) == 1, "what was told stays"
    assert gather(educator(), "ana", [word(-5)], since=START).alerts == (), "history"


def of_one_value(*whys: EducatorWhy) -> list[EducatorWord]:
    return [replace(word(5), key=f"educator:5:{why}", why=why) for why in whys]


def test_one_value_of_two_levels_is_one_alert_the_sterner_first() -> None:
    both = of_one_value(EducatorWhy.VERY_LOW, EducatorWhy.EMERGENCY)
    one = gather(educator(), "ana", both, since=START)
    [alert] = one.alerts
    assert alert.whys == (EducatorWhy.EMERGENCY, EducatorWhy.VERY_LOW)
    assert gather(one, "ana", both, since=START) == one
    [left] = gather(one, "ana", both[:1], since=START).alerts
    assert (left.number, left.whys) == (1, (EducatorWhy.VERY_LOW,)), "the emergency was taken back"


def test_what_is_worse_than_was_told_is_told_and_what_is_less_is_not() -> None:
    low, worse = of_one_value(EducatorWhy.VERY_LOW, EducatorWhy.EMERGENCY)
    first = gather(educator(), "ana", [low], since=START)
    known = told(first, due_alerts(first, None, low.due_at), low.due_at)
    _, second = gather(known, "ana", [low, worse], since=START).alerts
    assert (second.number, second.whys) == (2, (EducatorWhy.EMERGENCY,))
    first = gather(educator(), "ana", [worse], since=START)
    known = told(first, due_alerts(first, None, low.due_at), low.due_at)
    assert len(gather(known, "ana", [low, worse], since=START).alerts) == 1


def test_that_nobody_tested_again_is_an_alert_of_its_own() -> None:
    both = of_one_value(EducatorWhy.VERY_LOW, EducatorWhy.UNANSWERED)
    assert len(gather(educator(), "ana", both, since=START).alerts) == 2


@given(
    st.lists(st.integers(0, 3000), max_size=6, unique=True),
    st.sampled_from([None, False, True]),
    st.booleans(),
)
def test_every_alert_is_told_once_to_each_and_only_in_hours(
    minutes: list[int], with_deputy: bool | None, away: bool
) -> None:
    """Followed from wake to wake until nothing is left; None: no deputy, True: one who is away."""
    deputy = None
    if with_deputy is not None:
        hours = Hours(starts=time(6), ends=time(10))
        deputy = educator(id="DEP", hours=hours, away=with_deputy)
    teacher = gather(educator(away=away), "ana", [word(one) for one in minutes], since=START)
    heard: list[tuple[int, str]] = []
    now = START
    while (following := next_alert(teacher, deputy, now)) is not None:
        assert following >= now
        now = following
        tellings = due_alerts(teacher, deputy, now)
        assert tellings, "woken for nothing"
        for one in tellings:
            heard.append((one.alert.number, "deputy" if one.to == "deputy" else "educator"))
            reader = deputy if one.to == "deputy" else teacher
            assert reader is not None
            assert at_work(reader, now)
            assert not reader.away
            assert one.alert.due_at <= now
        teacher = told(teacher, tellings, now)
    assert len(heard) == len(set(heard))
    numbers = {alert.number for alert in teacher.alerts}
    expected = set() if away else {(number, "educator") for number in numbers}
    if with_deputy is False:
        expected |= {(number, "deputy") for number in numbers}
    assert set(heard) == expected


def test_mark_includes_the_ones_before_it_and_keeps_the_first_reader() -> None:
    teacher = gather(educator(), "ana", [word(5)], since=START)
    called = marked(teacher, 1, Mark.CALLED, by="DEP", now=START)
    again = marked(called, 1, Mark.CLOSED, by="EDU", now=START + timedelta(hours=1))
    alert = again.alert(1)
    assert alert is not None
    assert (alert.seen_by, alert.seen_at, alert.called_at) == ("DEP", START, START)
    assert not alert.is_open
    with pytest.raises(KeyError):
        marked(teacher, 2, Mark.SEEN, by="EDU", now=START)


# --- bounds -------------------------------------------------------------------------------------


@given(st.floats(0, 400), st.floats(0, 400), st.floats(0, 400))
def test_no_goal_beyond_the_published_ones(low: float, high: float, after: float) -> None:
    """ADA Standards of Care 2026, sections 6, 13 and 15: see bot/educator/bounds.py."""
    try:
        goals = with_goals(person("ana"), (low, high), after).goals
    except OutOfBounds:
        return
    assert 70 <= goals.before_low <= 100
    assert 95 <= goals.before_high <= 180
    assert 120 <= goals.after_high <= 200
    assert goals.before_low < goals.before_high < goals.after_high


def test_no_value_is_a_low_and_within_the_goal() -> None:
    strict = with_low(person("ana"), 80)
    with pytest.raises(OutOfBounds):
        with_goals(strict, (75, 130), 180)
    loose = with_goals(person("ana"), (70, 130), 180)
    with pytest.raises(OutOfBounds):
        with_low(loose, 75)
