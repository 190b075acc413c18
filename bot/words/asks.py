"""What waits for an educator's word, and what comes due for them.

Steps, fewer tests and fasting days to release; the visit after two weeks; who set which goals.
"""

from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True, kw_only=True)
class AskSentences:
    """What an educator reads; braces name what is filled in."""

    step_waits: str
    released: str
    release_last: str
    release_not_needed: str
    release_held: str

    fewer_wait: str
    fewer_released: str
    fewer_last: str
    fewer_not_needed: str
    fewer_held: str

    visit: str
    visit_not_shared: str

    set_by: str
    set_at_joining: str
    you: str
    goals_since: str
    me: str
    deputy_is: str
    deputy_asked: str
    deputy_none: str
    hours_now: str
    export_head: str
    chatter_words: frozenset[str]
    chatter: str
    language_name: str
    invite_language: str
    language_words: frozenset[str]
    language_set: str

    fast_waits: str
    fast_how: str
    fast_set: str
    fast_ended: str
    fast_bounds: str
    off_words: frozenset[str]
    fast_flag: str


def days_words(first: date, last: date, template: str) -> str:
    """Two local dates put into a sentence."""
    return template.replace("{first}", first.isoformat()).replace("{last}", last.isoformat())
