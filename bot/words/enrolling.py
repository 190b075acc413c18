"""What is said while somebody joins."""

from dataclasses import dataclass
from datetime import time

from bot.participants import Participant


@dataclass(frozen=True, slots=True, kw_only=True)
class EnrolSentences:
    """Sentences of joining; `consent_version` names the wording that was agreed to."""

    consent_version: str
    yes: frozenset[str]
    no: frozenset[str]
    unknown: frozenset[str]
    no_code: str
    bad_code: str
    private_only: str
    welcome: str
    speed: str
    consent_question: str
    consent_buttons: tuple[str, ...]
    declined: str
    too_young: str
    yes_or_no: str
    tell_educator: str
    yes_no: tuple[str, ...]
    unit: str
    unit_buttons: tuple[str, ...]
    zone: str
    zone_unknown: str
    main_meal: str
    main_meal_unknown: str
    no_main_meal: frozenset[str]
    may_go_low: str
    ketone_risk: str
    yes_no_unknown: tuple[str, ...]
    joined: str
    first_test: str
    prompts_at: str
    meal_in_quiet: str


def joined_words(person: Participant, *, quiet_meal: bool, say: EnrolSentences) -> str:
    """The last word of joining: that one is in, and the first test."""
    lines = [say.joined]
    if person.main_meal is not None:
        lines.append(say.prompts_at.format(at=_clock(person.main_meal)))
    if quiet_meal:
        quiet = {"start": _clock(person.quiet_from), "end": _clock(person.quiet_to)}
        lines.append(say.meal_in_quiet.format(**quiet))
    lines.append(say.first_test)
    return "\n".join(lines)


def _clock(clock: time) -> str:
    return f"{clock:%H:%M}"
