"""After a closed pair: where the participant stands in the programme. One line at the most.

Looks at the last 35 days. Steps and rhythms older than that are spoken of in the digest only.
"""

from collections.abc import Iterator
from datetime import datetime

from bot.glucose.pairs import Status, pairs
from bot.glucose.week import step_figures
from bot.localtime import MINUTE, shifted
from bot.programme.compare import StepComparison, compare_steps
from bot.programme.steps import PAIRS_A_STEP, offer
from bot.programme.strips import strip_count
from bot.programme.telling import most_telling
from bot.programme.testing import Rhythm, propose, strips_a_week
from bot.record import Record, Wondered
from bot.turns.notebook import Notebook
from bot.turns.questions import RHYTHM
from bot.words import programme as put
from bot.words.language import Language

#: What to test next is for whoever told how many strips are left: after every fifth complete
#: pair, and not of a meal with four tests. More often it would nag (project rule).
TELLING_EVERY, TESTS_ENOUGH = 5, 4


def programme_lines(book: Notebook, record: Record, now: datetime, words: Language) -> list[str]:
    """The first of these that there is reason to say: a proposal, a step that may be taken, how
    the last two steps compare, what to test next. May note a question."""
    return list(_lines(book, record, now, words))[:1]


def _lines(book: Notebook, record: Record, now: datetime, words: Language) -> Iterator[str]:
    person, say = book.person, words.programme
    if not person.judged:
        return
    every = pairs(record)
    proposal = propose(record, every, now)
    if proposal is not None and not _asked_lately(record, RHYTHM):
        if not proposal.needs_educator:
            book.note(Wondered(topic=RHYTHM, about=proposal.to.value))
        yield put.proposal_words(proposal, say)
        return
    following = offer(record, every, now) if _knows_its_step(record) else None
    if following is not None and not following.held_back and following.pairs == PAIRS_A_STEP:
        yield put.offer_words(following, say)
        return
    compared = _last_comparison(record, now)
    if compared is not None and len(compared.all_meals.other) >= PAIRS_A_STEP:
        yield put.comparison_words(compared, person, say)
        return
    complete = sum(pair.status is Status.COMPLETE for pair in every)
    count = strip_count(record, now, strips_a_week(Rhythm(person.rhythm)))
    if count is not None and complete % TELLING_EVERY == 0:
        telling = most_telling(record, now, count)
        if telling is not None and telling.tests < TESTS_ENOUGH:
            yield put.telling_words(telling, say)


def _asked_lately(record: Record, topic: str) -> bool:
    return any(noted.entry.topic == topic for noted in record.wondered[-20:])


def _knows_its_step(record: Record) -> bool:
    """Whether the step in force is among what is looked at."""
    first = record.wrote[0].at if record.wrote else record.participant.joined_at
    since_joining = first.date() <= record.participant.joined_at.date()
    return bool(record.steps) or since_joining


def _last_comparison(record: Record, now: datetime) -> StepComparison | None:
    if not record.steps:
        return None
    # A moment on, so that the pair that has just been closed counts.
    found = compare_steps(step_figures(record, pairs(record), until=shifted(now, MINUTE)))
    return found[-1] if found else None
