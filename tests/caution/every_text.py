"""Every text about safety that can be generated: all cautions of all kinds for all readers."""

from collections.abc import Iterator
from dataclasses import fields, replace
from itertools import product

from bot.caution import Caution, Level
from bot.caution.caution import Why
from bot.caution.ladder import Recheck, RecheckKind
from bot.entries import By, Reading
from bot.participants import Participant, State
from bot.record import Noted
from bot.units import Unit
from bot.words.caution_sentences import CautionSentences, Voice
from bot.words.cautions import (
    activity_words,
    caution_words,
    doubtful_words,
    educator_told_words,
    just_under_goal_words,
    ladder_closed_words,
    low_taken_back_words,
    medicine_advice_words,
    other_people_words,
    others_symptom_words,
    pregnancy_words,
    recheck_words,
    surprise_words,
)
from bot.words.english.cautions import CAUTIONS
from tests.caution.talk import at, person, reading

BOTH = (False, True)

#: Values in both units, by level.
SHOWN: dict[Level, tuple[float | str, ...]] = {
    Level.VERY_LOW: (48, 2.7, "LO"),
    Level.LOW: (62, 3.4),
    Level.VERY_HIGH: (312, 17.3, "HI"),
    Level.HIGH: (262, 14.5),
}


def people() -> Iterator[Participant]:
    """Every combination of what changes the words."""
    for number, acarbose, fluid, low in product((None, "112"), BOTH, BOTH, (None, False)):
        yield person(emergency_number=number, acarbose=acarbose, fluid_limit=fluid, may_go_low=low)


def cautions() -> Iterator[Caution]:
    """Every kind of caution."""
    for level, values in SHOWN.items():
        for value, late, repeat, shorter, asked in product(values, BOTH, BOTH, BOTH, BOTH):
            yield Caution(
                level=level,
                cause=1,
                reading=noted(value),
                late=late,
                repeat=repeat,
                shorter=shorter,
                retest_at=at(15),
                asked_again=asked,
            )
    for late in BOTH:
        yield Caution(level=Level.HIGH, cause=1, reading=noted(262), planned=True, late=late)
    shown: tuple[float | str, ...] = (48, 110, "HI", "LO", 14.5)
    numbers = (None, *map(noted, shown))
    for why, number in product(Why, numbers):
        yield Caution(level=Level.EMERGENCY, cause=1, why=why, reading=number)
    for value in (312, 17.3, "HI"):
        yield Caution(level=Level.TWO_DAYS_VERY_HIGH, cause=1, reading=noted(value))
        yield Caution(level=Level.REPEATED_HIGH, cause=1, reading=noted(value))
    for value in (62, 3.4, "LO"):
        yield Caution(level=Level.REPEATED_LOW, cause=1, reading=noted(value))
    for low, high, dose, shorter in product(BOTH, BOTH, BOTH, BOTH):
        if low or high or dose:
            yield Caution(
                level=Level.SYMPTOMS,
                cause=1,
                low_symptoms=low,
                high_symptoms=high,
                wrong_dose=dose,
                shorter=shorter,
            )


def noted(value: float | str) -> Noted[Reading]:
    """A reading at the start of the talk; a decimal number is one of mmol/L."""
    unit = Unit.MMOL_L if isinstance(value, float) else Unit.MG_DL
    return Noted(id=1, at=at(0), message="1", entry=reading(value, 0, unit=unit))


def said(caution: Caution, who: Participant | None = None, by: By = By.SELF) -> str:
    """The English words of a caution."""
    return caution_words(caution, who or person(), CAUTIONS, now=at(0), by=by)


def caution_texts() -> Iterator[tuple[Caution, str]]:
    """Every caution for everybody, in both voices."""
    for caution, who, by in product(tuple(cautions()), tuple(people()), By):
        yield caution, said(caution, who, by)


def recheck_texts() -> Iterator[str]:
    """Every prompt for a new test."""
    for kind, who, by in product(RecheckKind, tuple(people()), By):
        recheck = Recheck(key="", due_at=at(0), kind=kind, cause=1, until=at(10))
        yield recheck_words(recheck, who, CAUTIONS, by=by)


def lines() -> Iterator[str]:
    """Every single line about safety."""
    for who in people():
        for state in State:
            yield ladder_closed_words(noted(82), replace(who, state=state), CAUTIONS)
        yield doubtful_words(noted(262).entry, noted(171).entry, who, CAUTIONS)
        yield surprise_words(noted(80).entry, noted(180).entry, who, CAUTIONS)
        yield just_under_goal_words(noted(74).entry, who, CAUTIONS)
        yield activity_words(noted(4.7).entry, who, CAUTIONS)
        for words in (
            low_taken_back_words,
            educator_told_words,
            medicine_advice_words,
            pregnancy_words,
            other_people_words,
            others_symptom_words,
        ):
            yield words(who, CAUTIONS)


def catalogue() -> Iterator[tuple[str, str]]:
    """Every sentence as it is written, by name."""
    for voice_name, voice in (("own", CAUTIONS.own), ("helper", CAUTIONS.helper)):
        for field in fields(Voice):
            yield f"{voice_name}.{field.name}", getattr(voice, field.name)
    for field in fields(CautionSentences):
        if field.name not in ("own", "helper"):
            yield field.name, getattr(CAUTIONS, field.name)
