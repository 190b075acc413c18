"""What makes an emergency: a symptom, signs of ketones, a low that sugar does not lift."""

from collections.abc import Iterator

from bot.caution.caution import Caution, Told, Why
from bot.caution.episodes import Episode, episode_of, unbroken
from bot.caution.levels import LOWS
from bot.caution.signs import may_mean_ketones
from bot.caution.surprise import doubtful
from bot.caution.thresholds import READINGS_IN_ONE_LOW, RECHECK_OPEN, SIGN_AND_NUMBER, Level
from bot.entries import Reading, Suggests, Symptom
from bot.localtime import shifted
from bot.messages import Kind
from bot.record import Noted
from bot.record.events import Spoke
from bot.record.fold import when


def emergencies(told: Told) -> Iterator[Caution]:
    """Every reason for an emergency; the last one given is the one to be named."""
    yield from _lows_that_stay(told)
    yield from _signs_of_ketones(told)
    number = told.readings[-1] if told.readings else None
    for symptom in told.symptoms:
        if symptom.entry.suggests is Suggests.EMERGENCY:
            yield _emergency(Why.SYMPTOM, symptom.id, reading=number, symptom=symptom)


def _emergency(
    why: Why,
    cause: int,
    *,
    reading: Noted[Reading] | None = None,
    symptom: Noted[Symptom] | None = None,
) -> Caution:
    return Caution(level=Level.EMERGENCY, cause=cause, reading=reading, symptom=symptom, why=why)


def _lows_that_stay(told: Told) -> Iterator[Caution]:
    lows = [noted for noted in told.readings if told.level(noted) in LOWS]
    runs = unbroken(told.record.readings, told.low) if lows else ()
    for noted in lows:
        run = episode_of(noted.id, runs)
        if len(run) >= READINGS_IN_ONE_LOW:
            yield _emergency(Why.THIRD_LOW, noted.id, reading=noted)
        if told.level(noted) is Level.VERY_LOW and _sugar_was_advised(told, noted, run):
            yield _emergency(Why.VERY_LOW_AFTER_SUGAR, noted.id, reading=noted)


def _sugar_was_advised(told: Told, noted: Noted[Reading], run: Episode) -> bool:
    """Tell whether a caution of this low, or of low symptoms before it, advised sugar, and no
    reading has been in range since. Advice counts once it was given before the reading was taken,
    so that a mended number is not taken for a second one."""
    taken = when(noted)
    since = min(shifted(taken, -RECHECK_OPEN), when(run[0]))
    for spoken in told.record.spoke:
        if not since <= spoken.at < taken or not _advises_sugar(told, spoken.entry):
            continue
        back = any(
            spoken.at < when(other) < taken and not told.low(other.entry)
            for other in told.record.readings
        )
        if not back:
            return True
    return False


def _advises_sugar(told: Told, spoke: Spoke) -> bool:
    if spoke.kind is not Kind.CAUTION:
        return False
    if spoke.about in LOWS:
        return True
    low_symptoms = any(
        symptom.id == spoke.cause and symptom.entry.suggests is Suggests.LOW
        for symptom in told.record.symptoms
    )
    if spoke.about == Level.SYMPTOMS:
        return low_symptoms and told.record.participant.can_go_low
    return spoke.about == Level.EMERGENCY


def _signs_of_ketones(told: Told) -> Iterator[Caution]:
    """Vomiting, belly pain or fast deep breathing: with a high value, or with any or none where
    ketones are possible (they come with near-normal values too on some medicines: symptoms go
    before numbers)."""
    for symptom in _signs(told):
        near = [noted for noted in told.record.readings if _belong(symptom, noted)]
        overruled = doubtful(told.record) if near else frozenset()
        high = [noted for noted in near if told.high(noted.entry) and noted.id not in overruled]
        number = next(reversed(high or near), None)
        if symptom in told.symptoms and (high or told.record.participant.can_make_ketones):
            yield _emergency(Why.KETONES, symptom.id, reading=number, symptom=symptom)
        elif high and number is not None and number in told.readings:
            yield _emergency(Why.KETONES, number.id, reading=number, symptom=symptom)


def _signs(told: Told) -> Iterator[Noted[Symptom]]:
    """The signs of ketones that are new, or close to a new high."""
    highs = [noted for noted in told.readings if told.high(noted.entry)]
    for symptom in told.record.symptoms:
        concerns = symptom in told.symptoms or any(_belong(symptom, noted) for noted in highs)
        if concerns and may_mean_ketones(symptom.entry):
            yield symptom


def _belong(symptom: Noted[Symptom], noted: Noted[Reading]) -> bool:
    earliest = shifted(symptom.at, -SIGN_AND_NUMBER)
    return earliest <= when(noted) <= shifted(symptom.at, SIGN_AND_NUMBER)
