"""Where one stands in the programme: step against step, what comes next, what to test."""

from dataclasses import dataclass

from bot.entries import Step
from bot.participants import Participant
from bot.programme.compare import StepComparison, Verdict
from bot.programme.steps import Offer
from bot.programme.telling import Reason, Telling
from bot.programme.testing import Proposal, Rhythm
from bot.words.amounts import change_words
from bot.words.replies import shortened


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgrammeSentences:
    """Sentences on the programme; braces name what is filled in."""

    steps: dict[Step, str]
    rhythms: dict[Rhythm, str]
    less: str
    more: str
    clear: str
    not_clear: str
    not_clear_more: str
    offer: str
    offer_waits: str
    offer_asked: str
    fewer: str
    fewer_waits: str
    fewer_asked: str
    more_often: str
    rhythm_buttons: tuple[str, ...]
    rhythm_set: str
    rhythm_kept: str
    telling: dict[Reason, str]


def comparison_words(
    comparison: StepComparison, person: Participant, say: ProgrammeSentences
) -> str:
    """A step against the one before it: by how much, and whether that is more than scatter."""
    found = comparison.all_meals
    words = {
        "later": say.steps[comparison.later],
        "earlier": say.steps[comparison.earlier],
        "change": change_words(found.difference, person.unit),
        "unit": person.unit.value,
        "direction": say.less if found.difference < 0 else say.more,
        "tests": len(found.other),
        "before": len(found.one),
        "pairs": found.more_pairs,
    }
    if found.verdict is Verdict.CLEAR:
        return say.clear.format(**words)
    return (say.not_clear_more if found.more_pairs else say.not_clear).format(**words)


def offer_words(offer: Offer, say: ProgrammeSentences, *, tells: bool) -> str:
    """Enough pairs stand: the next step may be taken, or the educator releases it first.

    `tells`: the bot asks the educator itself.
    """
    waits = say.offer_asked if tells else say.offer_waits
    template = waits if offer.needs_release else say.offer
    return template.format(step=say.steps[offer.step])


def proposal_words(proposal: Proposal, say: ProgrammeSentences, *, tells: bool) -> str:
    """Fewer tests, or more, and what speaks for it. `tells`: the bot asks the educator itself."""
    words = {"within": proposal.within, "of": proposal.of, "rhythm": say.rhythms[proposal.to]}
    if proposal.needs_educator:
        return (say.fewer_asked if tells else say.fewer_waits).format(**words)
    template = say.fewer if proposal.because == "settled" else say.more_often
    return template.format(**words)


def telling_words(telling: Telling, say: ProgrammeSentences) -> str:
    """The most telling meal to test next, explained in one sentence."""
    return say.telling[telling.reason].format(meal=shortened(telling.text), tests=telling.tests)
