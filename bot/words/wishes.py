"""What a participant wishes in words of the conversation's own, and what the educator released.

Fasting days; prompts that tell nothing to whoever else holds the phone; the test on waking.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class WishSentences:
    """What a participant reads and types; braces name what is filled in.

    `fast_words`, `fast_end_words` and `strips_words` are looked for inside a message;
    `discreet_words` and `normal_words` are whole messages; one about the weekly summary is made of
    `week_words`, `week_fillers`, a weekday and a time, all without accents.
    """

    released_note: str
    fewer_released_note: str

    fast_set_note: str
    fast_ended_note: str
    fast_words: tuple[str, ...]
    fast_end_words: tuple[str, ...]
    fast_asked: str
    fast_ask: str
    fast_stands: str
    fast_over: str
    fast_none: str
    fast_caution: str
    fast_caution_helper: str

    discreet_words: frozenset[str]
    normal_words: frozenset[str]
    discreet_begins: str
    discreet_ends: str

    week_words: frozenset[str]
    week_fillers: str
    week_set: str
    week_next: str

    strips_words: tuple[str, ...]
    strips_left: str
    strips_unknown: str

    waking: str
