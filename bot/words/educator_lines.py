"""Numbers, times and people filled into what an educator reads."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import TypeVar

from bot.educator.educator import Alert, Educator
from bot.educator.group import Change, GroupFigures, TooFew
from bot.educator.roster import Line, Tier, Why
from bot.localtime import in_zone
from bot.participants import Participant
from bot.record import Record
from bot.record.fold import when
from bot.units import Unit
from bot.words.amounts import change_words, clock, mg_dl_words, number_words, value_words
from bot.words.educator import EducatorSentences, Wish

T = TypeVar("T")

#: Lines of a list that go into one message.
PAGE = 8
#: How much of a participant's own words an alert repeats.
QUOTED = 60


def who_words(person: Participant, educator: Educator) -> str:
    """The educator's own word for a participant, else their name, else the id alone."""
    name = educator.label(person.id) or person.name
    return f"{name} ({person.id})" if name else person.id


def day_time(instant: datetime, zone: str, say: EducatorSentences) -> str:
    """`Mon 2 Mar, 14:31` as a plain date: `Mon 2026-03-02 14:31`."""
    local = in_zone(instant, zone)
    return f"{say.day_short[local.weekday()]} {local:%Y-%m-%d} {clock(local)}"


def hours_words(educator: Educator, say: EducatorSentences) -> str:
    """Working days and hours: `Mon Tue Wed 08:00 to 16:00`."""
    hours = educator.hours
    days = " ".join(say.day_short[day] for day in sorted(hours.days))
    return f"{days} {hours.starts:%H:%M}-{hours.ends:%H:%M}"


def alert_words(alert: Alert, educator: Educator, record: Record, say: EducatorSentences) -> str:
    """An alert to the participant's own educator, with the value or words that it is about."""
    person = record.participant
    at = alert.due_at
    what = ""
    reading = next((noted for noted in record.readings if noted.id == alert.cause), None)
    symptom = next((noted for noted in record.symptoms if noted.id == alert.cause), None)
    if reading is not None:
        what, at = f" {value_words(reading.entry)}", when(reading)
    elif symptom is not None:
        what = f' "{symptom.entry.text[:QUOTED]}"'
    text = say.alert.format(
        number=alert.number,
        who=who_words(person, educator),
        why=_alert_whys(alert, say),
        what=what,
        at=day_time(at, person.zone, say),
    )
    told = say.alert_told_them[alert.why]
    marks = say.alert_marks.format(number=alert.number)
    return "\n".join((text, told, say.nobody_watches, marks))


def _alert_whys(alert: Alert, say: EducatorSentences) -> str:
    return ", ".join(say.alert_whys[why] for why in alert.whys)


def passed_words(alert: Alert, educator: Educator, zone: str, say: EducatorSentences) -> str:
    """An alert that goes on to the deputy: no value, text or name of the participant."""
    text = say.alert_to_deputy.format(
        educator=educator.id,
        why=_alert_whys(alert, say),
        participant=alert.participant,
        at=day_time(alert.due_at, zone, say),
    )
    marks = say.alert_marks.format(number=f"{alert.number} {educator.id}")
    return "\n".join((text, say.nobody_watches, marks))


def mark_buttons(alert: Alert, say: EducatorSentences, *, of: str | None = None) -> tuple[str, ...]:
    """Seen, called, closed; `of` names the educator for whom a deputy answers."""
    more = f" {of}" if of else ""
    return tuple(
        f"{say.wishes[wish][0]} {alert.number}{more}"
        for wish in (Wish.SEEN, Wish.CALLED, Wish.CLOSED)
    )


def alert_lines(
    alerts: Sequence[Alert],
    educator: Educator,
    people: Mapping[str, Participant],
    say: EducatorSentences,
) -> list[str]:
    """A line for each open alert of participants who are still the educator's own."""
    return [
        say.alert_line.format(
            number=alert.number,
            who=who_words(people[alert.participant], educator),
            why=_alert_whys(alert, say),
            at=day_time(alert.due_at, people[alert.participant].zone, say),
            state=say.alert_state[_state(alert)],
        )
        for alert in alerts
        if alert.participant in people
    ]


def passed_line(alert: Alert, educator: Educator, zone: str, say: EducatorSentences) -> str:
    """A line for an alert that came on to the deputy: the ids alone."""
    return say.alert_line.format(
        number=f"{alert.number} {educator.id}",
        who=alert.participant,
        why=_alert_whys(alert, say),
        at=day_time(alert.due_at, zone, say),
        state=say.alert_state[_state(alert)],
    )


def _state(alert: Alert) -> str:
    if alert.called_at is not None:
        return "called"
    return "seen" if alert.seen_at is not None else "unseen"


def roster_lines(
    lines: Sequence[Line], educator: Educator, say: EducatorSentences
) -> list[tuple[Tier, str]]:
    """The text of each line with its tier."""
    return [
        (
            line.tier,
            say.roster_line.format(
                who=who_words(line.participant, educator), why=_whys(line, say)
            ).rstrip(" :"),
        )
        for line in lines
    ]


def _whys(line: Line, say: EducatorSentences) -> str:
    return "; ".join(why_words(why, line.participant, say) for why in line.whys)


def why_words(why: Why, person: Participant, say: EducatorSentences) -> str:
    """One reason with what it rests on."""
    return say.whys[why.reason].format(
        count=why.count,
        last=say.never if why.last is None else f"{in_zone(why.last, person.zone):%Y-%m-%d}",
        value="" if why.mg_dl is None else mg_dl_words(why.mg_dl, person.unit),
    )


def on_page(lines: Sequence[T], page: int) -> Sequence[T]:
    """What stands on one page of a list; beyond the last is the last."""
    pages = max(1, -(-len(lines) // PAGE))
    page = min(max(page, 1), pages)
    return lines[(page - 1) * PAGE : page * PAGE]


def paged(
    head: str, lines: Sequence[tuple[str, str]], page: int, command: str, say: EducatorSentences
) -> tuple[str, tuple[str, ...]]:
    """One page of a list as text and buttons; `lines` are (heading, line).

    A heading is said once where it begins. A page beyond the last is the last.
    """
    pages = max(1, -(-len(lines) // PAGE))
    page = min(max(page, 1), pages)
    said = [head]
    last = ""
    for heading, text in on_page(lines, page):
        if heading and heading != last:
            said.append(heading)
        last = heading
        said.append(text)
    if page == pages:
        return "\n".join(said), ()
    said.append(say.more.format(left=len(lines) - page * PAGE, command=command, page=page + 1))
    return "\n".join(said), (say.more_button.format(command=command, page=page + 1),)


def goals_line(person: Participant, template: str) -> str:
    """Goals in the participant's unit."""
    goals, unit = person.goals, person.unit
    return template.format(
        low=number_words(goals.before_low, unit),
        high=number_words(goals.before_high, unit),
        after=number_words(goals.after_high, unit),
        unit=unit.value,
        limit_low=number_words(person.limits.low, unit),
        limit_high=number_words(person.limits.high, unit),
        who=person.id,
    )


def group_words(figures: GroupFigures | TooFew, say: EducatorSentences) -> str:
    """The group's change in both units, or that there are too few people."""
    if isinstance(figures, TooFew):
        return say.group_few.format(people=figures.people, needed=figures.needed)
    return "\n".join(
        (
            say.group.format(people=figures.people, of=figures.of),
            _change_line("after", figures.after, say),
            _change_line("rise", figures.rise, say),
            say.group_limits,
        )
    )


def _change_line(what: str, change: Change, say: EducatorSentences) -> str:
    lines = []
    for unit in Unit:
        direction = say.group_fell if change.change < 0 else say.group_rose
        lines.append(
            say.group_change.format(
                first=number_words(change.first, unit),
                last=number_words(change.last, unit),
                direction=direction,
                change=change_words(change.change, unit),
                low=number_words(change.low, unit),
                high=number_words(change.high, unit),
                unit=unit.value,
            )
        )
    heading = {"after": say.group_after, "rise": say.group_rise}[what]
    verdict = say.group_clear if change.clear else say.group_unclear
    return "\n".join((heading, *lines, verdict))
