"""What an educator reads, and the words that they may type; educator_lines.py fills them."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from bot.caution.ladder import EducatorWhy
from bot.educator.alerts import Mark
from bot.educator.roster import Reason, Tier
from bot.entries import Step


class Wish(StrEnum):
    """What an educator asks for."""

    HELP = "help"
    ROSTER = "roster"
    ALERTS = "alerts"
    SHOW = "show"
    MEALS = "meals"
    CHART = "chart"
    PAGE = "page"
    EXPORT = "export"
    STEPS = "steps"
    GOALS = "goals"
    LOW = "low"
    HIGH = "high"
    RELEASE = "release"
    FEWER = "fewer"
    FAST = "fast"
    PLAN = "plan"
    END_PLAN = "end_plan"
    NOTE = "note"
    LABEL = "label"
    GROUP = "group"
    INVITE = "invite"
    ME = "me"
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
    joined_again: str

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
    page_head: str
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
    limits_changed_note: str
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
