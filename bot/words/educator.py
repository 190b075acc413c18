"""What an educator reads: the sentences, the words that they may type, and how both are filled."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.caution.ladder import EducatorWhy
from bot.educator.alerts import Mark
from bot.educator.educator import Alert, Educator
from bot.educator.group import Change, GroupFigures, TooFew
from bot.educator.roster import Line, Reason, Tier, Why
from bot.entries import Reading, Step, Symptom
from bot.localtime import in_zone
from bot.participants import Participant
from bot.record import Body, Record
from bot.record.fold import when
from bot.units import Unit
from bot.words.amounts import change_words, clock, mg_dl_words, number_words, value_words

#: Lines of a list that go into one message.
PAGE = 8
#: How much of a participant's own words an alert repeats.
QUOTED = 60


class Wish(StrEnum):
    """What an educator asks for."""

    HELP = "help"
    ROSTER = "roster"
    ALERTS = "alerts"
    SHOW = "show"
    MEALS = "meals"
    CHART = "chart"
    STEPS = "steps"
    GOALS = "goals"
    LOW = "low"
    HIGH = "high"
    RELEASE = "release"
    PLAN = "plan"
    END_PLAN = "end_plan"
    NOTE = "note"
    LABEL = "label"
    GROUP = "group"
    INVITE = "invite"
    HOURS = "hours"
    DEPUTY = "deputy"
    NO_DEPUTY = "no_deputy"
    ACCEPT = "accept"
    DECLINE = "decline"
    SEEN = "seen"
    CALLED = "called"
    CLOSED = "closed"
    AWAY = "away"
    BACK = "back"
    CANCEL = "cancel"


@dataclass(frozen=True, slots=True, kw_only=True)
class EducatorSentences:
    """Sentences of one language; braces name what is filled in.

    `wishes` are the words that an educator types for each wish, `buttons` the ones that the bot
    puts under a message. `leave` are a participant's words for taking the educator's access away.
    """

    wishes: Mapping[Wish, tuple[str, ...]]
    leave: frozenset[str]
    left: str
    no_educator: str
    yes: frozenset[str]
    no: frozenset[str]
    unknown: frozenset[str]
    yes_no: tuple[str, ...]
    yes_no_unknown: tuple[str, ...]
    none_words: frozenset[str]
    cancel_button: str
    day_names: Mapping[str, tuple[int, ...]]
    day_short: tuple[str, ...]

    welcome: str
    speed: str
    consent_question: str
    declined: str
    yes_or_no: str
    zone: str
    zone_unknown: str
    hours_question: str
    hours_unknown: str
    hours_buttons: tuple[str, ...]
    deputy_question: str
    joined: str

    help: str
    not_understood: str
    private_only: str
    reads_text: str
    whom: str
    who_is: str
    several: str
    not_shared: str

    for_whom: str
    for_whom_question: str
    not_for_them: str
    same_as_last: str
    invite_zone: str
    invite_unit: str
    unit_buttons: tuple[str, ...]
    invite_meal: str
    ask_them: frozenset[str]
    ask_them_button: str
    meal_unknown: str
    invite_lows: str
    invite_ketones: str
    invite_special: str
    special_buttons: tuple[str, ...]
    fluid_words: tuple[str, ...]
    acarbose_words: tuple[str, ...]
    helper_words: tuple[str, ...]
    special_unknown: str
    invite_number: str
    number_unknown: str
    invite_label: str
    invited: str
    invited_link: str
    cancelled: str
    nothing_to_cancel: str
    somebody_joined: str
    somebody_left: str

    alert: str
    alert_to_deputy: str
    alert_whys: Mapping[EducatorWhy, str]
    alert_told_them: Mapping[EducatorWhy, str]
    nobody_watches: str
    alert_marks: str
    missed: str
    alerts_none: str
    alerts_head: str
    alert_line: str
    alert_state: Mapping[str, str]
    marked: Mapping[Mark, str]
    mark_which: str
    mark_unknown: str
    seen_by_deputy: str

    roster_empty: str
    roster_head: str
    tiers: Mapping[Tier, str]
    whys: Mapping[Reason, str]
    never: str
    roster_line: str
    more: str
    more_button: str

    person: str
    person_figures: str
    person_none: str
    person_goals: str
    person_flags: str
    flag_lows: str
    flag_ketones: str
    flag_plan: str
    person_buttons: tuple[str, ...]
    meals_head: str
    chart_head: str
    steps_head: str
    steps_line: str
    steps_none: str
    steps_next: str
    steps_missing: str
    steps_held: str
    steps_free: str
    steps_last: str
    step_names: Mapping[Step, str]

    goals_now: str
    goals_set: str
    goals_bounds: str
    goals_how: str
    low_set: str
    high_set: str
    limit_bounds: str
    goals_changed_note: str
    released: str
    released_note: str
    release_last: str
    release_not_needed: str
    release_held: str
    release_anyway: str
    plan_set: str
    plan_ended: str
    plan_ended_already: str
    plan_note: str
    note_empty: str
    note_sent: str
    note_later: str
    note_stopped: str
    note: str
    labelled: str
    label_empty: str

    group: str
    group_after: str
    group_rise: str
    group_change: str
    group_fell: str
    group_rose: str
    group_clear: str
    group_unclear: str
    group_limits: str
    group_few: str

    hours_set: str
    away: str
    away_alone: str
    back: str
    deputy_asked: str
    deputy_offer: str
    deputy_unknown: str
    deputy_self: str
    deputy_agreed: str
    deputy_agreed_note: str
    deputy_declined: str
    deputy_declined_note: str
    deputy_gone: str
    deputy_nobody: str


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


def alert_words(
    alert: Alert, educator: Educator, record: Record, cause: Body | None, say: EducatorSentences
) -> str:
    """An alert to the participant's own educator, with the value or words that it is about."""
    person = record.participant
    at = alert.due_at
    what = ""
    if isinstance(cause, Reading):
        what = value_words(cause)
        at = next((when(noted) for noted in record.readings if noted.id == alert.cause), at)
    elif isinstance(cause, Symptom):
        what = f'"{cause.text[:QUOTED]}"'
    text = say.alert.format(
        number=alert.number,
        who=who_words(person, educator),
        why=say.alert_whys[alert.why],
        what=f" {what}" if what else "",
        at=day_time(at, person.zone, say),
    )
    told = say.alert_told_them[alert.why]
    marks = say.alert_marks.format(number=alert.number)
    return "\n".join((text, told, say.nobody_watches, marks))


def passed_words(alert: Alert, educator: Educator, zone: str, say: EducatorSentences) -> str:
    """An alert that goes on to the deputy: no value, text or name of the participant."""
    text = say.alert_to_deputy.format(
        educator=educator.id,
        why=say.alert_whys[alert.why],
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
            why=say.alert_whys[alert.why],
            at=day_time(alert.due_at, people[alert.participant].zone, say),
            state=say.alert_state[_state(alert)],
        )
        for alert in alerts
        if alert.participant in people
    ]


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
    for heading, text in lines[(page - 1) * PAGE : page * PAGE]:
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
