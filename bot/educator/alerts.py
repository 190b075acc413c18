"""Alerts: gathered from what the cautions give, told in working hours, passed on while unseen.

    waiting -> told -> seen -> called -> closed
         \\-> passed to the deputy, while neither of the two has seen it

Nothing here is sent: `due_alerts` says what is to be told to whom now, `next_alert` when to look
again. An alert that was taken back (a mended number, access withdrawn) is dropped untold.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import StrEnum

from bot.caution.ladder import EducatorWhy, EducatorWord
from bot.educator.educator import Alert, Educator
from bot.educator.hours import opening
from bot.localtime import shifted

#: An alert that nobody has seen for so long goes on to the deputy (common practice, no source).
UNSEEN_FOR = timedelta(minutes=30)

#: Closed alerts are kept for as long as message texts are.
CLOSED_KEPT = timedelta(days=30)


class To(StrEnum):
    """Who is told of an alert."""

    EDUCATOR = "educator"
    MISSED = "missed"  # the educator, but too late for a message of its own
    DEPUTY = "deputy"


@dataclass(frozen=True, slots=True, kw_only=True)
class Telling:
    """An alert that is due to be told."""

    alert: Alert
    to: To


class Mark(StrEnum):
    """What an educator or their deputy says of an alert; each includes the ones before it."""

    SEEN = "seen"
    CALLED = "called"
    CLOSED = "closed"


def gather(
    educator: Educator, participant: str, words: Iterable[EducatorWord], *, since: datetime
) -> Educator:
    """Take in the words that a participant's record now gives reason for.

    What one value gives reason for at once is one alert, under the sternest of its words. Words
    that fell due before `since` are history (a record that was imported, an educator who came
    later) and bring no alert. What the record gives no reason for any more is dropped if it was
    not told yet.
    """
    waiting = _together(words)
    kept = []
    for alert in educator.alerts:
        if alert.participant != participant:
            kept.append(alert)
        elif _was_told(alert):
            kept.append(alert)
            _strike(waiting, alert)
        elif (group := waiting.pop(_group_of(alert), None)) is not None:
            kept.append(_about(group, alert))
    number = educator.last_alert
    for group in waiting.values():
        if max(word.due_at for word in group) < since:
            continue
        number += 1
        first = group[0]
        alert = Alert(
            number=number,
            participant=participant,
            word=first.key,
            why=first.why,
            cause=first.cause,
            due_at=first.due_at,
            until=first.until,
        )
        kept.append(_about(group, alert))
    return replace(educator, alerts=tuple(kept), last_alert=number)


#: A group's name: the value or symptom, and whether it is what came of it later.
Group = tuple[int, bool]

#: The sternest first.
STERNNESS = {why: place for place, why in enumerate(EducatorWhy)}


def _together(words: Iterable[EducatorWord]) -> dict[Group, list[EducatorWord]]:
    """Words by what they are about, the sternest of each first."""
    groups: dict[Group, list[EducatorWord]] = {}
    for word in words:
        groups.setdefault(_group_of(word), []).append(word)
    for group in groups.values():
        group.sort(key=lambda word: STERNNESS[word.why])
    return groups


def _group_of(one: EducatorWord | Alert) -> Group:
    # That nobody tested again is news of its own, half an hour after the value.
    return one.cause, one.why is EducatorWhy.UNANSWERED


def _strike(waiting: dict[Group, list[EducatorWord]], alert: Alert) -> None:
    """Take out the words about a value of which this or worse was told."""
    name = _group_of(alert)
    worse = [word for word in waiting.get(name, ()) if STERNNESS[word.why] < STERNNESS[alert.why]]
    if worse:
        waiting[name] = worse
    else:
        waiting.pop(name, None)


def _about(group: list[EducatorWord], alert: Alert) -> Alert:
    """The alert, not told yet, under the sternest of these words."""
    first, *others = group
    also = tuple(word.why for word in others)
    return replace(alert, word=first.key, why=first.why, also=also, until=first.until)


def due_alerts(educator: Educator, deputy: Educator | None, now: datetime) -> tuple[Telling, ...]:
    """What is to be told at `now`, the longest waiting first.

    `deputy` None: there is none, or they have not agreed yet.
    """
    found = []
    for alert in sorted(educator.alerts, key=lambda one: (one.due_at, one.number)):
        told_at, passed_at = _instants(educator, deputy, alert, now)
        if told_at is not None and told_at <= now:
            to = To.EDUCATOR if now < alert.until else To.MISSED
            found.append(Telling(alert=alert, to=to))
        if passed_at is not None and passed_at <= now:
            found.append(Telling(alert=alert, to=To.DEPUTY))
    return tuple(found)


def told(educator: Educator, tellings: Iterable[Telling], now: datetime) -> Educator:
    """Note who was told, and let go of what was closed long ago."""
    to = {(telling.alert.number, telling.to) for telling in tellings}
    alerts = []
    for alert in educator.alerts:
        if alert.closed_at is not None and now - alert.closed_at > CLOSED_KEPT:
            continue
        if to & {(alert.number, To.EDUCATOR), (alert.number, To.MISSED)}:
            alert = replace(alert, told_at=now)  # noqa: PLW2901 - the same alert, one mark on
        if (alert.number, To.DEPUTY) in to:
            alert = replace(alert, passed_at=now)  # noqa: PLW2901
        alerts.append(alert)
    return replace(educator, alerts=tuple(alerts))


def next_alert(educator: Educator, deputy: Educator | None, now: datetime) -> datetime | None:
    """The next instant, `now` or later, at which somebody is to be told of an alert."""
    instants = [
        instant
        for alert in educator.alerts
        for instant in _instants(educator, deputy, alert, now)
        if instant is not None
    ]
    return min(instants, default=None)


def marked(educator: Educator, number: int, mark: Mark, *, by: str, now: datetime) -> Educator:
    """Note a mark; the ones before it are noted with it. KeyError if there is no such alert."""
    old = educator.alert(number)
    if old is None:
        raise KeyError(number)
    new = old
    if new.seen_at is None:
        new = replace(new, seen_at=now, seen_by=by)
    if mark is Mark.CALLED and new.called_at is None:
        new = replace(new, called_at=now)
    if mark is Mark.CLOSED and new.closed_at is None:
        new = replace(new, closed_at=now)
    swapped = tuple(new if alert is old else alert for alert in educator.alerts)
    return replace(educator, alerts=swapped)


def open_alerts(educator: Educator) -> tuple[Alert, ...]:
    """Alerts that were told or passed on and are not closed, newest first."""
    told_ones = [alert for alert in educator.alerts if alert.is_open and _was_told(alert)]
    return tuple(sorted(told_ones, key=lambda alert: alert.number, reverse=True))


def forgotten(educator: Educator, participant: str) -> Educator:
    """Nothing of a participant is kept: they left, or took the educator's access away."""
    return replace(
        educator,
        alerts=tuple(one for one in educator.alerts if one.participant != participant),
        labels=tuple(one for one in educator.labels if one[0] != participant),
        visits=tuple(one for one in educator.visits if one.participant != participant),
    )


def _was_told(alert: Alert) -> bool:
    return alert.told_at is not None or alert.passed_at is not None


def _instants(
    educator: Educator, deputy: Educator | None, alert: Alert, now: datetime
) -> tuple[datetime | None, datetime | None]:
    """When, from `now` on, the educator and the deputy are to be told; None: not, or done."""
    to_educator = to_deputy = None
    if alert.is_open and alert.seen_at is None:
        if alert.told_at is None and not educator.away:
            to_educator = opening(educator, max(alert.due_at, now))
        if alert.passed_at is None and deputy is not None and not deputy.away:
            to_deputy = opening(deputy, max(_unseen_from(educator, alert), now))
    return to_educator, to_deputy


def _unseen_from(educator: Educator, alert: Alert) -> datetime:
    """From when on it goes to the deputy: at once while the educator is away."""
    if educator.away:
        return alert.due_at
    return shifted(alert.told_at or alert.due_at, UNSEEN_FOR)
