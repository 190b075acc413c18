"""The decision table of the cautions, worked out from the code.

`WRITE_DOCS=1 python -m pytest tests/caution/test_decision_table.py` writes the page; without
`WRITE_DOCS` the same test holds the page to it. Every number comes from the thresholds, every
outcome from a run of the rules, every text from the words.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.caution import Caution, Level
from bot.caution.thresholds import (
    HIGH,
    HIGHS_IN_SEVEN_DAYS,
    LOW,
    LOWS_IN_SEVEN_DAYS,
    READINGS_IN_ONE_LOW,
    SEND_ORDER,
    SEVEN_DAYS,
    VERY_HIGH,
    VERY_LOW,
)
from bot.entries import Suggests
from bot.participants import Limits
from bot.record import Body
from bot.units import Unit, in_unit
from bot.words.cautions import caution_words
from bot.words.english.cautions import CAUTIONS
from tests.caution.talk import (
    PASSED_OUT,
    SHAKY,
    THIRSTY,
    VOMITING,
    WRONG_DOSE,
    Talk,
    at,
    felt,
    levels,
    person,
    reading,
)

DAY = 24 * 60
ORDINALS = {2: "second", 3: "third"}
DAYS = {7: "seven"}


@dataclass(frozen=True, slots=True)
class Row:
    """When a level is due, in both units."""

    level: Level
    mg_dl: str
    mmol_l: str


def rows() -> Iterator[Row]:
    """One row a level, in the order of sending, numbers from the thresholds."""
    limits = Limits()
    if (limits.low, limits.high) != (LOW, HIGH):
        raise ValueError("the participant's limits and the thresholds have drifted apart")
    m, n = (
        {name: str(in_unit(value, unit)) for name, value in _NAMED.items()}
        for unit in (Unit.MG_DL, Unit.MMOL_L)
    )
    days = DAYS[SEVEN_DAYS.days]
    when = {
        Level.EMERGENCY: (
            f"an emergency symptom at any value; vomiting, belly pain or fast deep breathing from "
            f"{m['high']} or with `HI`, or at any value with `ketone_risk`; the "
            f"{ORDINALS[READINGS_IN_ONE_LOW]} reading in one low still below {m['low']}; one below "
            f"{m['very_low']} after sugar was advised",
            f"the same; {n['high']}; {n['low']}; {n['very_low']}",
        ),
        Level.VERY_LOW: (f"below {m['very_low']}, or `LO`", f"below {n['very_low']}"),
        Level.LOW: (
            f"{m['very_low']} to below {m['low']}",
            f"{n['very_low']} to below {n['low']}",
        ),
        Level.VERY_HIGH: (f"from {m['very_high']}, or `HI`", f"from {n['very_high']}"),
        Level.HIGH: (
            f"{m['high']} to below {m['very_high']}",
            f"{n['high']} to below {n['very_high']}",
        ),
        Level.TWO_DAYS_VERY_HIGH: (
            f"from {m['very_high']}, or `HI`, on two local dates running",
            n["very_high"],
        ),
        Level.REPEATED_HIGH: (
            f"the {ORDINALS[HIGHS_IN_SEVEN_DAYS]} high (from {m['high']}) within {days} days",
            n["high"],
        ),
        Level.REPEATED_LOW: (
            f"the {ORDINALS[LOWS_IN_SEVEN_DAYS]} low (below {m['low']}) within {days} days",
            n["low"],
        ),
        Level.SYMPTOMS: (
            f"a `low` or `high` symptom without a reading or with one from {m['low']} to below "
            f"{m['high']}; a wrong or double dose already taken",
            f"{n['low']}; {n['high']}",
        ),
    }
    for level in SEND_ORDER:
        yield Row(level, *when[level])


_NAMED = {"very_low": VERY_LOW, "low": LOW, "high": HIGH, "very_high": VERY_HIGH}


@dataclass(frozen=True, slots=True)
class Case:
    """What was told, in words and as messages of (minute, what)."""

    words: str
    told: tuple[tuple[float, tuple[Body, ...]], ...]
    known: tuple[tuple[str, object], ...] = ()

    def outcome(self) -> tuple[Caution, ...]:
        """The cautions of the last message."""
        talk = Talk(person(**dict(self.known)))
        said: tuple[Caution, ...] = ()
        for minute, bodies in self.told:
            said = talk.tell(minute, *bodies)
        return said


def _values(unit: Unit, *values: float | str) -> Iterator[Case]:
    for value in values:
        yield Case(
            f"{value} {unit.value}" if not isinstance(value, str) else f"`{value}`",
            ((0, (reading(value, 0, unit=unit),)),),
            (("unit", unit),),
        )


def _at(*told: tuple[float, float | str]) -> tuple[tuple[float, tuple[Body, ...]], ...]:
    return tuple((minute, (reading(value, minute),)) for minute, value in told)


def cases() -> Iterator[Case]:
    """Values at every boundary, then what hangs on more than one value."""
    yield from _values(Unit.MG_DL, "LO", 53, 54, 69, 70, 79, 249, 250, 299, 300, "HI")
    yield from _values(Unit.MMOL_L, 2.9, 3.0, 3.8, 3.9, 13.8, 13.9, 16.6, 16.7)
    for value in (None, 62, 110, 262):
        told: tuple[Body, ...] = (reading(value, 0),) if value else ()
        with_ = f" with {value}" if value else ""
        yield Case(f"passed out{with_}", ((0, (*told, PASSED_OUT)),))
        yield Case(f"shaky{with_}", ((0, (*told, SHAKY)),))
        yield Case(f"very thirsty{with_}", ((0, (*told, THIRSTY)),))
        for risk in (True, None, False):
            known = {True: "yes", None: "unknown", False: "no"}[risk]
            yield Case(
                f"vomiting{with_}, risk of ketones: {known}",
                ((0, (*told, VOMITING)),),
                (("ketone_risk", risk),),
            )
    yield Case(
        "fast breathing with `HI`, risk of ketones: no",
        ((0, (reading("HI", 0), felt("breathing fast", Suggests.HIGH))),),
        (("ketone_risk", False),),
    )
    yield Case("62, then 64 after 15 minutes", _at((0, 62), (15, 64)))
    yield Case("62, 64, then 69 after 30 minutes", _at((0, 62), (15, 64), (30, 69)))
    yield Case("62, 64, then 70 after 30 minutes", _at((0, 62), (15, 64), (30, 70)))
    yield Case("62, then 53 after 15 minutes", _at((0, 62), (15, 53)))
    yield Case("62, then 62 a day later", _at((0, 62), (DAY, 62)))
    yield Case("62, then 62 after 168 hours", _at((0, 62), (168 * 60, 62)))
    yield Case("262, then 258 after 12 minutes", _at((0, 262), (12, 258)))
    yield Case("262, then 171 after 12 minutes", _at((0, 262), (12, 171)))
    yield Case("262 on three days", _at((0, 262), (DAY, 262), (2 * DAY, 262)))
    yield Case(
        "262 on three days, the first overruled by its repeat",
        _at((0, 262), (10, 150), (DAY, 262), (2 * DAY, 262)),
    )
    yield Case("310, then 300 the next day", _at((0, 310), (DAY, 300)))
    yield Case("310, then 299 the next day", _at((0, 310), (DAY, 299)))
    yield Case("a wrong dose", ((0, (WRONG_DOSE,)),))
    yield Case("a wrong dose with 62", ((0, (reading(62, 0), WRONG_DOSE)),))


def page() -> str:
    """The whole page."""
    return "\n".join(_lines()) + "\n"


def _lines() -> Iterator[str]:
    yield "# The decision table of the cautions"
    yield ""
    yield "Made from the code by"
    yield "`WRITE_DOCS=1 python -m pytest tests/caution/test_decision_table.py`: not to be edited."
    yield "Limits are compared in the unit in which a reading was typed. What each limit rests on"
    yield "stands in [safety.md](safety.md) and beside the numbers in `bot/caution/thresholds.py`."
    yield ""
    yield "## Levels, in the order of sending"
    yield ""
    yield "| level | when, mg/dL | when, mmol/L |"
    yield "| --- | --- | --- |"
    for row in rows():
        yield f"| `{row.level}` | {row.mg_dl} | {row.mmol_l} |"
    yield ""
    yield "## What was told, and what is sent for the last message"
    yield ""
    yield "Lows and ketones are possible unless the case says otherwise (unknown counts as yes)."
    yield "Values without a unit are mg/dL."
    yield ""
    yield "| told | sent, in this order |"
    yield "| --- | --- |"
    for case in cases():
        sent = ", ".join(f"`{level}`" for level in levels(case.outcome()))
        yield f"| {case.words} | {sent or 'nothing'} |"
    yield ""
    yield "## The words"
    yield ""
    yield "As sent to a person who writes for themselves, with no emergency number on record."
    yield ""
    for title, case in _worded():
        caution = case.outcome()[0]
        yield f"**{title}** (`{caution.level}`)"
        yield ""
        who = person(**dict(case.known))
        yield f"> {caution_words(caution, who, CAUTIONS, now=at(case.told[-1][0]))}"
        yield ""


def _worded() -> Iterator[tuple[str, Case]]:
    yield "Passed out", Case("", ((0, (PASSED_OUT,)),))
    yield "Vomiting with 262", Case("", ((0, (reading(262, 0), VOMITING)),))
    yield "The third low reading", Case("", _at((0, 62), (15, 64), (30, 66)))
    yield "48", Case("", _at((0, 48)))
    yield "`LO`", Case("", _at((0, "LO")))
    yield "48, told two hours late", Case("", ((120, (reading(48, 0),)),))
    yield "62", Case("", _at((0, 62)))
    yield "312", Case("", _at((0, 312)))
    yield "312, then 305", Case("", _at((0, 312), (12, 305)))
    yield "`HI`, then `HI`", Case("", _at((0, "HI"), (12, "HI")))
    yield "262", Case("", _at((0, 262)))
    yield "262, then 258", Case("", _at((0, 262), (12, 258)))
    yield "262 under an educator's plan", Case("", _at((0, 262)), (("high_plan_until", at(DAY)),))
    yield "Shaky, lows possible", Case("", ((0, (SHAKY,)),))
    yield "Shaky, lows not possible", Case("", ((0, (SHAKY,)),), (("may_go_low", False),))
    yield "Very thirsty", Case("", ((0, (THIRSTY,)),))
    yield "A wrong dose", Case("", ((0, (WRONG_DOSE,)),))
