"""Readings as the sums may use them: which are doubtful, which stand in for another.

Two rules of the cautions bear on the figures. A reading below `high` within 30 minutes after
one at or above it is the washed repeat: the first is doubtful and the repeat takes its place.
A reading far from the last one (below half or above twice), within an hour and with no food
between, is surprising: until a next one is near it no goal and no trend is drawn from it.
"""

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from functools import lru_cache
from math import inf
from operator import lt
from typing import Any, NamedTuple

from bot.entries import FoodKind, Meal, Moment, OffScale, Reading
from bot.participants import Limits
from bot.record import Noted, Record
from bot.units import limit_in

#: contract: a washed repeat comes within 30 minutes (common practice, no source).
REPEAT_WITHIN = timedelta(minutes=30).total_seconds()

#: contract: a surprising reading is one within an hour of the last. One surprising value: wash and
#: repeat before acting (hospital leaflets; FDA advice). The hour, and that far is below half or
#: above twice, are common practice, no source.
SURPRISE_WITHIN = timedelta(hours=1).total_seconds()


# A tuple, as a pair is: of five weeks each sum makes a hundred, and a frozen dataclass takes four
# times as long to make.
class Settled(NamedTuple):
    """A reading with what later readings made of it.

    `moment` and `at` are the ones to pair it by: a washed repeat has those of the reading whose
    `place` it takes (its own instant stays in `noted.entry.taken_at`), any other is in its own.
    `doubtful`: overruled by a washed repeat. `surprising`: far from the last one; `unconfirmed`:
    surprising, and no later one was near it.
    """

    noted: Noted[Reading]
    moment: Moment
    doubtful: bool
    place: Noted[Reading]
    surprising: bool = False
    unconfirmed: bool = False

    @property
    def at(self) -> datetime | None:
        """The instant of its place; None where it is unknown."""
        return self.place.entry.taken_at


def is_high(reading: Reading, limits: Limits) -> bool:
    """At or above the participant's high limit in the unit as typed, or HI."""
    if reading.value is None:
        return reading.off_scale is OffScale.HIGH
    return reading.value >= limit_in(limits.high, reading.unit)


def is_free_drink(meal: Meal) -> bool:
    """Nothing but drinks known to be free of sugar: no food for the sums."""
    return bool(meal.foods) and all(food.kind is FoodKind.FREE_DRINK for food in meal.foods)


def eaten_instants(record: Record) -> list[float]:
    """When something was eaten, in order, in seconds since 1970: meals begun and sugar taken.

    Free drinks are left out, and so are meals whose start is unknown.
    """
    starts = [
        noted.seconds
        for noted in record.meals
        if noted.entry.started_at is not None and not is_free_drink(noted.entry)
    ]
    starts += [noted.seconds for noted in record.treatments]
    return sorted(starts)


def any_up_to(instants: Sequence[float], earliest: float, latest: float) -> bool:
    """Tell whether one of the ordered instants lies in [earliest, latest]."""
    index = bisect_left(instants, earliest)
    return index < len(instants) and instants[index] <= latest


# A turn asks several times about one record; records are equal if they are the same one.
@lru_cache(maxsize=8)
def settled(record: Record) -> tuple[Settled, ...]:
    """Every reading of the record, in its order, with what later ones made of it."""
    timed = _timed(record.readings)
    doubtful, places = _repeats(timed, record.participant.limits)
    # HI and LO are no numbers to halve or double; they have ladders of their own.
    standing = [
        noted for noted in timed if noted.id not in doubtful and noted.entry.mg_dl is not None
    ]
    surprises, confirmed = _surprises(standing, record)
    touched = doubtful | places.keys() | surprises
    return tuple(
        Settled(
            noted=noted,
            moment=_moment(noted, places.get(noted.id)),
            doubtful=noted.id in doubtful,
            place=places.get(noted.id, noted),
            surprising=noted.id in surprises,
            unconfirmed=noted.id in surprises and noted.id not in confirmed,
        )
        if noted.id in touched
        else Settled(noted, noted.entry.moment, False, noted)  # most of them
        for noted in record.readings
    )


def surprising(record: Record, reading: Noted[Reading]) -> bool:
    """Below half or above twice the last reading within an hour, with no food told between.

    Such a reading is to be asked for again with washed hands. One that agrees with what stood
    before a surprising one overrules that one and is not surprising itself.
    """
    return any(one.surprising for one in settled(record) if one.noted.id == reading.id)


def follow_each_other(notes: Iterable[Noted[Any]]) -> bool:
    """Whether no two notes of a record share an instant, so that they are in order already."""
    seconds = [noted.seconds for noted in notes]
    return all(map(lt, seconds, seconds[1:]))


def _timed(readings: Iterable[Noted[Reading]]) -> list[Noted[Reading]]:
    """Readings whose instant is known, in an order that does not depend on their arrival."""
    known = [noted for noted in readings if noted.entry.taken_at is not None]
    if follow_each_other(known):
        return known
    return sorted(known, key=lambda noted: (_taken(noted), noted.at, _number(noted), noted.id))


def _taken(noted: Noted[Reading]) -> float:
    return noted.seconds


def _number(noted: Noted[Reading]) -> float:
    """The value, for order only: HI is above and LO below every number."""
    reading = noted.entry
    if reading.mg_dl is not None:
        return reading.mg_dl
    return inf if reading.off_scale is OffScale.HIGH else 0.0


def _repeats(
    timed: Sequence[Noted[Reading]], limits: Limits
) -> tuple[set[int], dict[int, Noted[Reading]]]:
    """Ids of doubtful readings; and by a repeat's id the reading whose place it takes.

    Of several highs in a row each one within reach of the repeat is doubtful, and the repeat
    takes the place of the first of them.
    """
    doubtful: set[int] = set()
    places: dict[int, Noted[Reading]] = {}
    highs: list[Noted[Reading]] = []
    for noted in timed:
        if is_high(noted.entry, limits):
            highs.append(noted)
            continue
        overruled = [one for one in highs if _taken(noted) - _taken(one) <= REPEAT_WITHIN]
        if overruled:
            doubtful.update(one.id for one in overruled)
            places[noted.id] = overruled[0]
        highs = []
    return doubtful, places


def _moment(noted: Noted[Reading], place: Noted[Reading] | None) -> Moment:
    own = noted.entry.moment
    if place is None:
        return own
    taken_over = place.entry.moment
    # A repeat that says what it is for knows more than a first reading that did not.
    if taken_over is Moment.UNSTATED and own is not Moment.RECHECK:
        return own
    return taken_over


def _ate_between(record: Record, earlier: Noted[Reading], later: Noted[Reading]) -> bool:
    """Whether food was told from one reading to before another."""
    start, end = _taken(earlier), _taken(later)
    return any(
        start <= noted.seconds < end and not is_free_drink(noted.entry) for noted in record.meals
    ) or any(start <= noted.seconds < end for noted in record.treatments)


def _surprises(standing: Sequence[Noted[Reading]], record: Record) -> tuple[set[int], set[int]]:
    """Ids of surprising readings, and of those that a next one was near to."""
    surprises: set[int] = set()
    confirmed: set[int] = set()
    last: Noted[Reading] | None = None
    before_surprise: Noted[Reading] | None = None
    for noted in standing:
        if last is not None and _taken(noted) - _taken(last) <= SURPRISE_WITHIN:
            doubted = last.id in surprises and last.id not in confirmed
            if not _far(noted, last):
                if doubted:
                    confirmed.add(last.id)
            elif not _ate_between(record, last, noted):
                overrules = (
                    doubted and before_surprise is not None and not _far(noted, before_surprise)
                )
                if not overrules:
                    surprises.add(noted.id)
                    before_surprise = before_surprise if doubted else last
        last = noted
    return surprises, confirmed


def _far(one: Noted[Reading], other: Noted[Reading]) -> bool:
    a, b = _number(one), _number(other)
    return 2 * a < b or a > 2 * b
