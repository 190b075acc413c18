"""Fortnights of invented people, a clock change in most of them, played and reckoned: prompts,
pairs, effects and weekly figures are those of a reckoning that shares no code with the bot."""

import json
from datetime import date, timedelta
from random import Random
from typing import Any

import pytest

from bot.replay.play import Played, play
from bot.replay.story import read_story
from tests.replay import reckoning
from tests.replay.reckoning import DAYS, MINUTE, Person, Told, rounded
from tests.replay.told import PNG, of_type

#: A zone and a first day: most have their clock changed in the fortnight from there.
PLACES = (
    ("Europe/Lisbon", "2026-03-23"),
    ("America/New_York", "2026-03-02"),
    ("Australia/Lord_Howe", "2026-03-30"),
    ("Asia/Kathmandu", "2026-05-04"),
    ("Africa/Cairo", "2026-10-19"),
    ("America/St_Johns", "2026-10-26"),
    ("America/Santiago", "2026-08-31"),
    ("Africa/Casablanca", "2026-02-09"),
)
FOODS = (
    "rice and beans", "pasta", "lentil soup", "oatmeal", "chicken salad", "fried eggs", "pizza",
    "tortilla with cheese", "couscous", "fish and potatoes",
)  # fmt: skip
AFTER_DELAYS = (60, 89, 90, 95, 110, 119, 120, 121, 127, 134, 135, 136, 149, 150, 151, 160, 180)


def somebody(number: int) -> Person:
    """Every setting comes up beside every other in some fortnight."""
    return Person(
        zone=PLACES[number][0],
        unit=("mg/dL", "mmol/L")[number % 2],
        week_ends=DAYS[(6 + number) % 7],
        digest_at=("18:00", "09:30", "23:00", "02:30")[number % 4],
        quiet=(("22:30", "06:30"), ("21:00", "07:00"), ("13:00", "15:00"))[number % 3],
        main_meal=(None, "12:45", "19:30")[number % 3],
        goals=(80, 130, 180) if number % 5 else (90, 150, 200),
    )


def fortnight(number: int) -> tuple[Person, list[Told]]:
    """Two weeks of messages, none within three minutes of another."""
    chance, person = Random(number * 7919), somebody(number)  # noqa: S311 - no secret
    first = date.fromisoformat(PLACES[number][1])

    def value(low: int, high: int) -> float:
        if person.unit == "mg/dL":
            return chance.randint(low, high)
        return round(chance.uniform(low / 18, high / 18), 1)

    told: list[Told] = []
    for day in (first + timedelta(days=one) for one in range(14)):
        if chance.random() < 0.5:
            at = person.instant(day, f"07:{chance.randint(10, 20)}")
            told.append(Told(at=at, moment="fasting", value=value(85, 140)))
        late = chance.random() < 0.2
        for hour in (8, 13, 21) if late else (7, 12, 19):
            if chance.random() < 0.15:
                continue
            at = person.instant(day, f"{hour:02}:{chance.randint(25, 59)}")
            before = value(84, 150) if chance.random() < 0.8 else None
            food = chance.choice(FOODS)
            told.append(Told(at=at, moment="before_meal", value=before, food=food))
            what = chance.random()
            if what < 0.7:
                then = at + chance.choice(AFTER_DELAYS) * MINUTE
                told.append(Told(at=then, moment="after_meal", value=value(100, 240)))
            elif what < 0.78:
                told.append(Told(at=at + 124 * MINUTE))
            elif what < 0.92:
                then = at + chance.randint(40, 140) * MINUTE
                walked = value(90, 160) if what < 0.85 else None
                told.append(Told(at=then, moment="after_activity", value=walked, minutes=20))
    told.sort(key=lambda one: one.at)
    apart: list[Told] = []
    for one in told:
        if not apart or one.at - apart[-1].at >= 3 * MINUTE:
            apart.append(one)
    return person, apart


def played(person: Person, told: list[Told], first: date) -> Played:
    """The story in the replay's own lines."""
    low, high, below = person.goals
    enrol = {
        "id": "ana", "unit": person.unit, "zone": person.zone, "week_ends": person.week_ends,
        "digest_at": person.digest_at, "quiet": person.quiet, "main_meal": person.main_meal,
        "may_go_low": False, "ketone_risk": False,
        "goals": {"before_low": low, "before_high": high, "after_high": below},
    }  # fmt: skip
    lines: list[dict[str, Any]] = [
        {"at": person.local(person.instant(first, "06:40")), "enrol": enrol},
        *({"at": person.local(one.at), "from": "ana", "text": one.text} for one in told),
        {"at": person.local(person.instant(first + timedelta(days=14), "06:00")), "pass": True},
    ]
    return play(read_story(json.dumps(line) for line in lines), lambda _picture: PNG)


@pytest.mark.parametrize("number", range(len(PLACES)), ids=[zone for zone, _ in PLACES])
def test_a_fortnight_brings_what_the_contract_says(number: int) -> None:
    person, told = fortnight(number)
    first = date.fromisoformat(PLACES[number][1])
    joined = person.instant(first, "06:40")
    end = person.instant(first + timedelta(days=14), "06:00")
    told = [one for one in told if one.at < end]
    bot = played(person, told, first)

    assert sorted(
        (line["at"], line["about"]) for line in bot.sent if line["kind"] == "prompt"
    ) == reckoning.prompts(person, told, joined, end)

    assert [
        (
            line["meal_started_at"], line["meal"], line["status"], line["rise"],
            (line["before_in_goal"], line["after_in_goal"]),
        )
        for line in of_type(bot, "pair")
    ] == [
        (
            person.local(one.meal.at), one.meal.food, one.status,
            None if one.rise is None else rounded(one.rise), one.judged,
        )
        for one in reckoning.pairs(person, told)
    ]  # fmt: skip

    names = ("ended_at", "before", "after", "change", "beyond_meter_scatter", "food_still_working")
    assert [tuple(line[name] for name in names) for line in of_type(bot, "activity_effect")] == (
        list(reckoning.effects(person, told))
    )

    weeks = list(reckoning.digests(person, told, joined, end))
    assert [line["at"] for line in bot.sent if line["kind"] == "digest"] == [at for at, _ in weeks]
    assert [
        {name: line[name] for name in week}
        for line, (_, week) in zip(bot.digests, weeks, strict=True)
    ] == [week for _, week in weeks]
    assert len(weeks) >= 1
    assert not [line for line in bot.sent if line["kind"] == "caution"]
