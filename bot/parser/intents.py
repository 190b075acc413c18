"""What is asked of the bot, judged by what the words mean rather than by whole phrases.

A request is some concepts together (`cease` and `contact`), and nothing besides but glue: `stop
texting me` is `stop`, `stop eating bread` is nothing of the kind.
"""

# ruff: noqa: E501 - a rule a line

from collections.abc import Mapping
from dataclasses import dataclass

from bot.entries import What
from bot.parser.concepts import COUNTED, GLUE, Combination, combination, segments, words_of
from bot.parser.page import Page

#: Requests are short: a longer message is told about in its parts.
LONGEST = 18


@dataclass(frozen=True, slots=True)
class Rule:
    """Concepts that make a request, and which setting it is about."""

    what: What
    made_of: Combination
    setting: str | None = None

    def fits(self, said: list[frozenset[str]]) -> bool:
        """Whether the segments of a message are this request, each number with its unit where it
        needs one (`my readings 7` is a reading)."""
        return self.made_of.fits(said) and (
            self.what not in _UNITED
            or all(
                tags is not COUNTED or any(after & _UNITS for after in said[at + 1 : at + 3])
                for at, tags in enumerate(said)
            )
        )


#: Where a number has to say of what it is the number: `in 10` is looked at elsewhere.
_UNITED = frozenset({What.LATER, What.RECORD, What.SUMMARY, What.HELP, What.GOALS})
_UNITS = frozenset({"minutes", "span", "day", "week", "value", "mine"})


def _rule(what: What, need: str, may: str = "", setting: str | None = None) -> Rule:
    return Rule(what, combination(need, may), setting)


def _exact(what: What, word: str) -> Rule:
    """One word that asks for something only where it stands alone."""
    return Rule(what, Combination((word,), frozenset({word})))


#: In the order in which they are tried: the narrower before the wider.
RULES = (
    _rule(What.NEXT_STEP, "next_said", "stepping see asks step_done number"),  # before `sigue`
    # a time of rest, before `stop`
    _rule(What.RESUME, "resume_said", "contact away returned ready start again program allowed"),
    _rule(What.RESUME, "ready again", "start contact returned"),
    _rule(What.RESUME, "returned away", "start again ready contact"),
    _rule(What.RESUME, "returned ready", "start again contact"),
    _rule(What.RESUME, "start again", "contact ready allowed program returned away"),
    _rule(What.RESUME, "again contact", "start ready allowed"),
    _rule(What.RESUME, "start contact allowed", "ready again"),
    _rule(What.RESUME, "returned contact", "start allowed ready again"),
    _rule(What.RESUME, "hold cease", "program contact"),
    _rule(What.RESUME, "hold never", "program contact"),
    _rule(What.RESUME, "hold over", "program contact"),
    _rule(What.LATER, "hold_on", "minutes number kept not_now linger"),
    _rule(What.PAUSE, "cease contact span", "number away program"),
    _rule(What.PAUSE, "never contact span", "number away program"),
    _rule(What.PAUSE, "off contact span", "number away program"),
    _rule(What.PAUSE, "cease span", "number away program"),
    _rule(What.PAUSE, "stop_said span", "number away contact"),
    _rule(What.PAUSE, "skip contact span", "number away program"),
    _rule(What.PAUSE, "quiet span", "number away program contact"),
    _rule(What.PAUSE, "hold", "contact span number away program respite"),
    _rule(What.PAUSE, "respite", "contact span number away program hand"),
    _rule(What.PAUSE, "hand off_work span", "number away"),
    # the end
    _rule(What.STOP, "stop_said", "contact program cease never forever"),
    _rule(What.STOP, "cease contact", "program never forever"),
    _rule(What.STOP, "never contact", "program cease forever"),
    _rule(What.STOP, "off contact", "program cease forever"),
    _rule(What.STOP, "cease program", "contact forever"),
    _rule(What.STOP, "never program", "contact cease forever"),
    _rule(What.STOP, "cease_alone", "cease forever"),
    _exact(What.STOP, "end_word"),
    _exact(What.ERASE, "erase_word"),
    _exact(What.RESUME, "start_word"),
    _exact(What.NEXT_STEP, "next_word"),
    _exact(What.SUMMARY, "week_word"),
    _exact(What.EXPORT, "own_data"),
    # one's own data
    _rule(What.ERASE, "erase_said", "all_data forever wipe held data"),
    _rule(What.ERASE, "wipe all_data", "forever held data"),
    _rule(What.ERASE, "wipe held", "forever all_data data"),
    _rule(What.EXPORT, "export_said", "data hand held see mine clinic record_said"),
    _rule(What.EXPORT, "hand data held", "see clinic"),
    _rule(What.EXPORT, "data held", "see asks hand"),
    _rule(What.EXPORT, "own_data", "hand see held clinic"),
    # how it goes
    _rule(What.SETTINGS, "summary_said moved_to", "see hand", "other"),
    _rule(What.NEXT_STEP, "step_done", "stepping see asks"),
    _rule(What.GOALS, "limit", "occasion value ideal"),
    _rule(What.GOALS, "goals_said", "see asks value occasion ideal"),
    _rule(What.GOALS, "asks value ideal", "occasion"),
    _rule(What.GOALS, "asks ideal occasion", "value"),
    _rule(What.SUMMARY, "fare", "week see summary_said"),
    _rule(What.SUMMARY, "summary_said", "week see hand asks day value clinic"),
    _rule(What.SUMMARY, "extreme value", "week see asks day mine"),
    _rule(What.SUMMARY, "extreme week", "asks see day mine value"),
    _rule(What.RECORD, "record_said", "see hand asks clinic day mine value data number"),
    _rule(What.RECORD, "mine", "see hand clinic day asks number"),
    _rule(What.RECORD, "logged", "see day number value occasion"),
    _rule(What.RECORD, "see clinic", "mine data hand value day"),
    # how the bot is set up
    _rule(What.SETTINGS, "tongue", "speak", "language"),
    _rule(What.SETTINGS, "settings_said", "change setting hours number see clock span day", "other"),
    _rule(What.SETTINGS, "changing setting", "change hours number see unit_name contact clock span day", "other"),
    _rule(What.SETTINGS, "changing unit_name", "change setting", "other"),
    _rule(What.SETTINGS, "change unit_name", "setting meter", "other"),
    _rule(What.SETTINGS, "meter unit_name", "change", "other"),
    _rule(What.SETTINGS, "changing contact", "change hours setting number clock", "other"),
    _rule(What.SETTINGS, "contact hours", "never number clock setting changing", "other"),
    _rule(What.SETTINGS, "never contact hours", "number clock", "other"),
    _rule(What.SETTINGS, "secret", "value contact program change", "other"),
    _rule(What.SETTINGS, "nights_said", "shift span number", "nights"),
    # the bot itself
    _rule(What.HELP, "how_used", "using help_said lost program see"),
    _rule(What.HELP, "help_said", "using lost program see hand"),
    _rule(What.HELP, "lost using", "program help_said"),
    # another time: behind everything that holds one
    _rule(What.LATER, "later_said", "ask_me when_free when_then linger minutes number not_now kept"),
    _rule(What.LATER, "ask_me when_free", "linger not_now kept"),
    _rule(What.LATER, "ask_me when_then", "linger not_now kept"),
    _rule(What.LATER, "ask_me minutes", "linger number again not_now kept"),
    _rule(What.LATER, "not_now minutes", "number linger kept"),
    _rule(What.LATER, "linger minutes", "number not_now kept"),
    _rule(What.LATER, "when_free", "linger number kept"),
)  # fmt: skip

#: What may lead in to `remind me in 30`.
_LED = {GLUE, "kept"}

#: Thanks and greetings, looked for when nothing else was found.
_SOCIAL = frozenset({"kind", "hail", "pleased"})
_SMALL_TALK = _SOCIAL | {"small", GLUE}

_BY_CONCEPT: Mapping[str, tuple[tuple[int, Rule], ...]] = {
    first: tuple((at, rule) for at, rule in enumerate(RULES) if rule.made_of.need[0] == first)
    for first in {rule.made_of.need[0] for rule in RULES}
}


def asked_for(
    page: Page, start: int, end: int, language: str, *, glue: bool = False, only: What | None = None
) -> Rule | None:
    """The request that a span is, all of it; None for anything else.

    `only` asks for one request alone; with `glue` words that say nothing pass for it too.
    """
    if end - start > LONGEST:
        return None
    said = [segment.tags for segment in segments(page, start, end, language) or ()]
    if not said:
        return None
    if glue and all(tags & _LED for tags in said):
        return next(rule for rule in RULES if rule.what is only)
    told = frozenset().union(*said)
    rules = sorted(
        (placed for concept in told for placed in _BY_CONCEPT.get(concept, ())),
        key=lambda placed: placed[0],
    )
    barred = None if _DONE.isdisjoint(page.words(start, end)) else What.LATER
    return next(
        (
            rule
            for _, rule in rules
            if only in {None, rule.what} and rule.what is not barred and rule.fits(said)
        ),
        None,
    )


#: `did about half an hour` asks for no time.
_DONE = frozenset({"did", "done", "finished", "was", "took", "hice", "termine", "fueron"})


def small_talk(page: Page, language: str) -> bool:
    """Whether the whole message is thanks, a greeting, or the like."""
    if len(page.tokens) > LONGEST + 6 or not page.holds(words_of(language, _SOCIAL)):
        return False
    said = [segment.tags for segment in segments(page, 0, len(page.tokens), language) or ()]
    return all(tags & _SMALL_TALK for tags in said) and any(tags & _SOCIAL for tags in said)
