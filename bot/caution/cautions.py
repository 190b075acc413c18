"""Which cautions a message brings about: every level that fits, the worst first."""

from collections.abc import Collection, Iterator
from dataclasses import replace
from datetime import datetime

from bot.caution.caution import Caution, Told, Why, told
from bot.caution.counted import counted
from bot.caution.emergencies import emergencies
from bot.caution.episodes import episode_of, unbroken
from bot.caution.ladder import planned_high, retest_at
from bot.caution.levels import LOWS
from bot.caution.thresholds import LATE_AFTER, SEND_ORDER, Level
from bot.entries import Reading, Suggests
from bot.localtime import DAY, local_date, shifted
from bot.messages import Kind
from bot.participants import State
from bot.record import Noted, Record
from bot.record.fold import when

__all__ = ["Caution", "Why", "due_cautions"]


def due_cautions(record: Record, new: Collection[int], *, now: datetime) -> tuple[Caution, ...]:
    """Give every caution that the events `new` of one message bring, in the order of sending.

    The record already holds them. One caution a level: of several readings at one level the
    last one taken is named. An event that says again what stood before (its moment mended, say)
    is not new and should not be among `new`.
    """
    message = told(record, new, now)
    found: dict[Level, Caution] = {}
    for caution in (
        *emergencies(message),
        *_of_values(message),
        *counted(message),
        *_of_symptoms(message),
    ):
        found[caution.level] = caution
    return tuple(_shortened(message, found[level]) for level in SEND_ORDER if level in found)


def _of_values(message: Told) -> Iterator[Caution]:
    for noted in message.readings:
        level = message.level(noted)
        if level is None:
            continue
        yield Caution(
            level=level,
            cause=noted.id,
            reading=noted,
            late=message.now > shifted(when(noted), LATE_AFTER),
            repeat=_repeats(message, noted, level),
            planned=planned_high(message.record, noted),
            retest_at=retest_at(noted, message.now) if level in LOWS else None,
            asked_again=message.record.participant.state is not State.STOPPED,
        )


def _repeats(message: Told, noted: Noted[Reading], level: Level) -> bool:
    """Tell whether the reading before it in the same episode was as bad and had its caution."""
    out = message.low if level in LOWS else message.high
    episode = episode_of(noted.id, unbroken(message.record.readings, out))
    before = [one for one in episode if (when(one), one.id) < (when(noted), noted.id)]
    return bool(before) and not planned_high(message.record, before[-1])


def _of_symptoms(message: Told) -> Iterator[Caution]:
    """Low or high symptoms without a number that explains them; a wrong dose already taken."""
    number: Noted[Reading] | None = message.readings[-1] if message.readings else None
    explained = number is not None and message.level(number) is not None
    felt = [
        symptom
        for symptom in message.symptoms
        if symptom.entry.suggests is not Suggests.EMERGENCY and not explained
    ]
    causes = [*(one.id for one in felt), *(one.id for one in message.wrong_doses)]
    if causes:
        yield Caution(
            level=Level.SYMPTOMS,
            cause=causes[0],
            reading=number,
            symptom=felt[0] if felt else None,
            low_symptoms=any(one.entry.suggests is Suggests.LOW for one in felt),
            high_symptoms=any(one.entry.suggests is Suggests.HIGH for one in felt),
            wrong_dose=bool(message.wrong_doses),
        )


def _shortened(message: Told, caution: Caution) -> Caution:
    """A caution that comes daily gets shorter; an emergency never does."""
    if caution.level is Level.EMERGENCY:
        return caution
    zone = message.record.participant.zone
    today = local_date(message.now, zone)
    said = any(
        spoken.entry.kind is Kind.CAUTION
        and spoken.entry.about == caution.level
        and local_date(spoken.at, zone) in (today, today - DAY)
        for spoken in message.record.spoke
    )
    return replace(caution, shorter=said)
