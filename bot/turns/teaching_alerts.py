"""Alerts: told when they are due, listed, and marked as seen, called or closed."""

from collections.abc import Mapping
from datetime import datetime, timedelta

from bot.caution.ladder import word_to_educator
from bot.educator.alerts import (
    Mark,
    Telling,
    To,
    due_alerts,
    forgotten,
    gather,
    marked,
    open_alerts,
    told,
)
from bot.educator.educator import Alert, Educator
from bot.localtime import fixed, shifted
from bot.messages import Kind, Saying
from bot.turns.teaching_desk import Desk, Lesson, Taught, record_of
from bot.turns.teaching_reading import numbers, page_of
from bot.turns.teaching_visits import tell_visits
from bot.words.educator import EducatorSentences, Wish
from bot.words.educator_lines import (
    alert_lines,
    alert_words,
    mark_buttons,
    on_page,
    paged,
    passed_line,
    passed_words,
)
from bot.words.language import language

#: How long sending an alert is tried, from when it is told; it stays in `alerts` after that.
ALERT_KEEPS = timedelta(hours=4)

#: So many of the alerts that are listed get a button.
MARKED_BY_BUTTON = 3

MARKS: Mapping[Wish, Mark] = {
    Wish.SEEN: Mark.SEEN,
    Wish.CALLED: Mark.CALLED,
    Wish.CLOSED: Mark.CLOSED,
}


def attend(desk: Desk, *, now: datetime) -> Taught:
    """Tell the alerts that are due at `now`, each to whom it is due, and remind of visits.

    What a participant's record gives no reason for any more is dropped first: a low that was
    answered in time, a number that was mended.
    """
    educator = _current(desk, now)
    lesson = Lesson(desk=desk, now=fixed(now, educator.zone), educator=educator, key="attend")
    deputy = deputy_of(educator, desk)
    tellings = due_alerts(educator, deputy, now)
    for telling in tellings:
        _tell(lesson, telling, deputy)
    missed = [telling.alert for telling in tellings if telling.to is To.MISSED]
    if missed:
        newest = max(alert.number for alert in missed)
        text = lesson.say.missed.format(count=len(missed))
        lesson.tell(educator, text, f"missed:{newest}", (lesson.say.wishes[Wish.ALERTS][0],))
    lesson.educator = told(educator, tellings, now)
    tell_visits(lesson)
    return lesson.taught()


def deputy_of(educator: Educator, desk: Desk) -> Educator | None:
    """The educator who stands in, if they said yes."""
    if educator.deputy is None or not educator.deputy_agreed:
        return None
    return desk.colleague(educator.deputy)


def list_alerts(lesson: Lesson, rest: str) -> None:
    """Open alerts, newest first; then those that came on from educators whom this one serves."""
    say = lesson.say
    people = {person.id: person for person in lesson.desk.own}
    own = [alert for alert in open_alerts(lesson.educator) if alert.participant in people]
    passed = [
        (other, alert)
        for other in lesson.desk.served
        for alert in open_alerts(other)
        if alert.passed_at is not None
    ]
    lines = alert_lines(own, lesson.educator, people, say)
    lines += [passed_line(alert, other, lesson.educator.zone, say) for other, alert in passed]
    if not lines:
        lesson.answer(say.alerts_none)
        return
    command = say.wishes[Wish.ALERTS][0]
    page = page_of(rest)
    text, more = paged(say.alerts_head, [("", line) for line in lines], page, command, say)
    marks = [
        *(_next_mark(alert, say) for alert in own),
        *(_next_mark(alert, say, of=other.id) for other, alert in passed),
    ]
    lesson.answer(text, (*on_page(marks, page)[:MARKED_BY_BUTTON], *more))


def _next_mark(alert: Alert, say: EducatorSentences, *, of: str | None = None) -> str:
    """What is to be marked next: seen, then called, then closed."""
    seen, called, closed = mark_buttons(alert, say, of=of)
    if alert.seen_at is None:
        return seen
    return called if alert.called_at is None else closed


def mark_alert(lesson: Lesson, wish: Wish, rest: str, quoted: str | None) -> None:
    """Mark one alert: told by its number, by quoting it, or the only open one.

    A number and another educator's id mark an alert that came to this one as the deputy.
    """
    say = lesson.say
    owner = _owner(lesson, rest)
    if owner is None:
        lesson.answer(say.mark_unknown)
        return
    number = _number(owner, rest, quoted)
    if number is None:
        lesson.answer(say.mark_which, (say.wishes[Wish.ALERTS][0],))
        return
    alert = owner.alert(number)
    if alert is None or not _may_mark(lesson, owner, alert):
        lesson.answer(say.mark_unknown)
        return
    mark = MARKS[wish]
    changed = marked(owner, number, mark, by=lesson.educator.id, now=lesson.now)
    shown = f"{number}" if owner is lesson.educator else f"{number} {owner.id}"
    if owner is lesson.educator:
        lesson.educator = changed
    else:
        lesson.colleagues.append(changed)
        theirs = language(owner.language).educator
        text = theirs.seen_by_deputy.format(
            deputy=lesson.educator.id, number=number, mark=theirs.wishes[wish][0]
        )
        lesson.tell(owner, text, f"deputy:{number}:{mark}")
    marks = (Wish.SEEN, Wish.CALLED, Wish.CLOSED)
    following = marks[marks.index(wish) + 1 :]
    buttons = tuple(f"{say.wishes[one][0]} {shown}" for one in following)
    lesson.answer(say.marked[mark].format(number=shown), buttons)


def _owner(lesson: Lesson, rest: str) -> Educator | None:
    """Whose alert is meant: this educator's, or that of one whom they stand in for."""
    words = rest.split()
    if len(words) < 2:
        return lesson.educator
    other = lesson.desk.colleague(words[-1].upper())
    if other is None or other.deputy != lesson.educator.id or not other.deputy_agreed:
        return None
    return other


def _may_mark(lesson: Lesson, owner: Educator, alert: Alert) -> bool:
    if owner is not lesson.educator:
        return alert.passed_at is not None
    return alert.participant in {person.id for person in lesson.desk.own}


def _number(owner: Educator, rest: str, quoted: str | None) -> int | None:
    first = rest.split()[:1]
    told_number = numbers(first[0]) if first else ()
    if told_number:
        return int(told_number[0])
    if quoted is not None and quoted.startswith("alert:"):
        return int(quoted.split(":")[1])
    waiting = open_alerts(owner)
    return waiting[0].number if len(waiting) == 1 else None


def _current(desk: Desk, now: datetime) -> Educator:
    """The educator with the alerts for which the records give reason now."""
    educator = desk.educator
    own = {person.id: person for person in desk.own}
    for who in sorted({alert.participant for alert in educator.alerts}):
        if who not in own or not own[who].tell_educator:
            educator = forgotten(educator, who)
            continue
        record = record_of(desk, who)
        educator = gather(educator, who, word_to_educator(record), since=now)
    return educator


def _tell(lesson: Lesson, telling: Telling, deputy: Educator | None) -> None:
    alert, educator = telling.alert, lesson.educator
    if telling.to is To.DEPUTY and deputy is not None:
        say = language(deputy.language).educator
        lesson.says.append(
            _saying(
                lesson,
                deputy.id,
                passed_words(alert, educator, deputy.zone, say),
                f"passed:{educator.id}:{alert.number}:{alert.participant}",
                alert=alert,
                buttons=mark_buttons(alert, say, of=educator.id),
            )
        )
    elif telling.to is To.EDUCATOR:
        record = lesson.record(alert.participant)
        lesson.says.append(
            _saying(
                lesson,
                educator.id,
                alert_words(alert, educator, record, lesson.say),
                f"alert:{alert.number}:{alert.participant}",
                alert=alert,
                buttons=mark_buttons(alert, lesson.say),
            )
        )


def _saying(
    lesson: Lesson, to: str, text: str, key: str, *, alert: Alert, buttons: tuple[str, ...]
) -> Saying:
    """An alert is no caution: it is still worth sending after hours without a network."""
    return Saying(
        to=to,
        kind=Kind.PROMPT,
        text=text,
        key=key,
        due_at=lesson.now,
        expires_at=max(alert.until, shifted(lesson.now, ALERT_KEEPS)),
        about=f"alert:{alert.why}",
        buttons=buttons,
    )
