"""Whatever is told and whenever: what falls due keeps the rules of the replay's contract."""

from collections import Counter
from datetime import UTC, datetime, time, timedelta
from itertools import pairwise, zip_longest
from zoneinfo import ZoneInfo

from hypothesis import given
from hypothesis import strategies as st

from bot.caution.ladder import rechecks
from bot.entries import Ask
from bot.localtime import local_date
from bot.messages import Kind
from bot.participants import State
from bot.planning.agenda import Agenda, next_wake
from bot.planning.due import Topic
from bot.planning.quiet import after_quiet, is_quiet
from bot.planning.weekly import days_of, digests, teaching, unknown_risks
from bot.record import Body, Event, Record, Spoke, Wondered, fold
from bot.record.fold import extended
from tests.planning.living import Life, person

#: Zones with and without changes of the clock: an hour, half an hour, at midnight, never.
ZONES = (
    "Africa/Johannesburg",
    "America/New_York",
    "Asia/Beirut",
    "Australia/Lord_Howe",
    "Asia/Kathmandu",
)
CLOCKS = st.times(time(0, 0), time(23, 59)).map(lambda at: at.replace(second=0, microsecond=0))
#: Around both changes of the clock of 2026 in Europe and America, and a month without one.
STARTS = st.sampled_from([datetime(2026, month, 4, 6, 0, tzinfo=UTC) for month in (3, 6, 10)])
SAYINGS = st.sampled_from(
    [
        "118, rice and beans",
        "154",
        "62",
        "310",
        "lunch now",
        "eating",
        "an apple",
        "walked 20 min",
        "later",
        "in 10",
        "sorry 126",
        "undo",
        "skip",
        "hello",
        "feeling shaky",
        "a cola",
        "water",
        "pause",
        "resume",
    ]
)
#: Minutes between two messages; now and then days.
WAITS = st.integers(1, 400) | st.sampled_from([15, 120, 3 * 24 * 60])
#: Which message is written: most often a new one, else the last, the one before it and so on.
BACK = st.sampled_from([99, 99, 99, 99, 0, 1, 2])
#: What it is changed to; None: anything.
EDITED = st.sampled_from(["62", "310", None])


@st.composite
def lives(draw: st.DrawFn) -> Life:
    """A few days of somebody's messages, in order, at any minute, some of them edited."""
    joined = draw(STARTS)
    who = person(
        joined.astimezone(ZoneInfo(zone := draw(st.sampled_from(ZONES)))),
        zone=zone,
        main_meal=draw(st.none() | CLOCKS),
        quiet_from=draw(CLOCKS),
        quiet_to=draw(CLOCKS),
        digest_at=draw(CLOCKS),
        may_go_low=draw(st.sampled_from([None, False])),
    )
    life = Life(who)
    at = joined
    for minutes, text, back in draw(
        st.lists(st.tuples(WAITS, SAYINGS, BACK), min_size=1, max_size=14)
    ):
        at += timedelta(minutes=minutes)
        if back < len(life.wrote):
            life.edits(at, len(life.wrote) - 1 - back, draw(EDITED) or text)
        else:
            life.says(at, text)
    life.until(at + timedelta(days=9))
    return life


@given(lives())
def test_nothing_is_said_twice_and_nothing_wakes_for_ever(life: Life) -> None:
    keys = Counter(saying.key for _, saying in life.said)
    assert max(keys.values(), default=1) == 1


@given(lives())
def test_in_quiet_time_only_rechecks_are_prompted_and_no_note_is_sent(life: Life) -> None:
    for at, saying in life.said:
        unasked = saying.kind in (Kind.PROMPT, Kind.NOTE, Kind.DIGEST)
        if unasked and saying.about != "recheck":
            assert not is_quiet(life.participant, at), (at, saying.key)


@given(lives())
def test_after_meal_prompts_come_in_their_window_and_at_most_twice(life: Life) -> None:
    prompts = [(at, one) for at, one in life.prompts() if one.about == "after_meal"]
    copies = Counter(one.key.removesuffix(":nudge") for _, one in prompts)
    assert max(copies.values(), default=0) <= 2
    for at, saying in prompts:
        start = datetime.strptime(saying.key.split(":")[1], "%Y%m%dT%H%M%S").replace(tzinfo=UTC)
        assert timedelta(minutes=120) <= at - start <= timedelta(minutes=150)


@given(lives())
def test_activity_is_asked_about_once_a_local_day(life: Life) -> None:
    days = Counter(
        local_date(at, life.participant.zone)
        for at, one in life.prompts()
        if one.about == "after_activity"
    )
    assert max(days.values(), default=0) <= 1


@given(lives())
def test_the_record_folded_step_by_step_is_the_record_folded_at_once(life: Life) -> None:
    whole = fold(life.participant, life.events)
    assert life.record is not None
    for name in ("readings", "meals", "treatments", "activities", "wrote", "spoke", "wondered"):
        assert getattr(life.record, name) == getattr(whole, name)


@st.composite
def moments(draw: st.DrawFn) -> tuple[Record, datetime]:
    """A record at some moment of a life, soon after something was said."""
    life = draw(lives())
    events = life.events[: draw(st.integers(1, len(life.events)))]
    now = max(event.at for event in events) + timedelta(minutes=draw(st.integers(0, 180)))
    return fold(life.participant, events), now


#: What the bot answers, and what it asks back.
TALK = st.sampled_from(
    [
        Wondered(topic="moment", events=(1,)),
        Wondered(ask=Ask.WHEN_DONE),
        Spoke(kind=Kind.REPLY, about=None, key="reply:0"),
    ]
)


@given(moments(), st.lists(TALK, min_size=1, max_size=3))
def test_what_is_answered_and_asked_back_changes_nothing_of_what_falls_due(
    moment: tuple[Record, datetime], talk: list[Body]
) -> None:
    """So a turn may look ahead once, before its reply is worded."""
    record, now = moment
    more = [
        Event(id=record.last_id + number, at=now, body=body, message="0")
        for number, body in enumerate(talk, 1)
    ]
    assert Agenda.of(extended(record, more), now).upcoming == Agenda.of(record, now).upcoming


@given(moments(), st.lists(st.booleans(), max_size=4))
def test_what_is_left_once_what_is_due_was_said_is_what_a_fresh_look_finds(
    moment: tuple[Record, datetime], kept: list[bool]
) -> None:
    """So a wake-up looks for digests, lines that teach and most tests once; some of it may be
    said, then the rest."""
    record, now = moment
    agenda = Agenda.of(record, now)
    first = [item for item, later in zip_longest(agenda.due, kept) if item and not later]
    for some in (first, [item for item in agenda.due if item not in first]):
        said = [
            Event(
                id=record.last_id + number,
                at=now,
                body=Spoke(kind=item.kind, about=item.about, key=item.key, cause=item.cause),
            )
            for number, item in enumerate(some, 1)
        ]
        record = extended(record, said)
        agenda, anew = agenda.after(record), Agenda.of(record, now)
        assert (agenda.tests, agenda.series) == (anew.tests, anew.series)


@given(moments())
def test_nobody_is_woken_later_than_for_the_first_thing_that_may_be_said(
    moment: tuple[Record, datetime],
) -> None:
    record, now = moment
    person = record.participant
    if person.state is not State.ACTIVE or person.silent:
        return
    wake_at = next_wake(record, now)
    every = (
        *digests(record, now - timedelta(days=1)),
        *unknown_risks(person, days_of(person, now)),
        *teaching(days_of(person, person.joined_at)),
    )
    for item in every:
        kept_quiet = item.topic is not Topic.DIGEST and is_quiet(person, item.at)
        if not record.said(item.key) and not kept_quiet and item.until >= now:
            assert wake_at is not None
            assert wake_at <= max(item.at, now)


@given(lives())
def test_the_rechecks_that_fall_due_are_those_of_the_ladder(life: Life) -> None:
    """Of the whole record's, whatever stretch of it the agenda looks at."""
    record, now = fold(life.participant, ()), life.participant.joined_at
    for event in life.events:
        record, now = extended(record, [event]), max(event.at, now)
        ladder = {one.key for one in rechecks(record, now=now) if not record.said(one.key)}
        ahead = Agenda.of(record, now).upcoming
        assert {item.key for item in ahead if item.topic is Topic.RECHECK} == ladder


@given(st.sampled_from(ZONES), STARTS, CLOCKS, CLOCKS, CLOCKS)
def test_one_digest_for_every_week_whatever_the_clock_does(
    zone: str, joined: datetime, digest_at: time, quiet_from: time, quiet_to: time
) -> None:
    who = person(
        joined.astimezone(ZoneInfo(zone)),
        zone=zone,
        digest_at=digest_at,
        quiet_from=quiet_from,
        quiet_to=quiet_to,
    )
    life = Life(who)
    life.until(joined + timedelta(days=36))
    digests = [at for at, one in life.said if one.kind is Kind.DIGEST]
    assert len(digests) in (5, 6)
    for earlier, later in pairwise(digests):
        # A week, give or take the hour that a change of the clock makes it shorter or longer.
        assert abs((later - earlier) - timedelta(days=7)) <= timedelta(hours=1)


@given(CLOCKS, CLOCKS, st.datetimes(datetime(2026, 1, 1), datetime(2026, 12, 1)))
def test_the_start_of_quiet_time_is_inside_it_and_its_end_is_outside(
    start: time, end: time, moment: datetime
) -> None:
    who = person(datetime(2026, 1, 1, tzinfo=UTC), quiet_from=start, quiet_to=end)
    place = ZoneInfo(who.zone)
    if start != end:
        assert is_quiet(who, datetime.combine(moment.date(), start, tzinfo=place))
    assert not is_quiet(who, datetime.combine(moment.date(), end, tzinfo=place))
    assert not is_quiet(who, after_quiet(who, moment.replace(tzinfo=place)))
