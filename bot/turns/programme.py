"""After a closed pair: where the participant stands in the programme. One line at the most.

Looks at the last 35 days. Steps and rhythms older than that are spoken of in the digest only.
"""

from collections.abc import Iterator
from datetime import datetime

from bot.entries import Moment
from bot.glucose.pairs import Status, pairs
from bot.glucose.week import step_figures
from bot.localtime import DAY, MINUTE, local_date, shifted
from bot.participants import Participant
from bot.programme.compare import StepComparison, compare_steps
from bot.programme.steps import PAIRS_A_STEP, Offer, offer
from bot.programme.strips import strip_count
from bot.programme.telling import most_telling
from bot.programme.testing import Proposal, Rhythm, propose, strips_a_week, waking_day
from bot.record import Record, Wondered
from bot.record.fold import when
from bot.turns.notebook import Notebook
from bot.turns.questions import FEWER_WAITS, RHYTHM, STEP_WAITS
from bot.words import programme as put
from bot.words.language import Language

#: What to test next is for whoever told how many strips are left: after every fifth complete
#: pair, and not of a meal with four tests. More often it would nag (project rule).
TELLING_EVERY, TESTS_ENOUGH = 5, 4


def programme_lines(book: Notebook, record: Record, now: datetime, words: Language) -> list[str]:
    """The first of these that there is reason to say: a proposal, a step that may be taken,
    tomorrow's test on waking, how the last two steps compare, what to test next. May note a
    question."""
    return list(_lines(book, record, now, words))[:1]


def _lines(book: Notebook, record: Record, now: datetime, words: Language) -> Iterator[str]:
    person, say = book.person, words.programme
    if not person.judged:
        return
    every = pairs(record)
    proposal = propose(record, every, now)
    if proposal is not None and not _asked_lately(record, _topic(proposal)):
        book.note(Wondered(topic=_topic(proposal), about=proposal.to.value))
        yield put.proposal_words(proposal, say, tells=_tells(person))
        return
    following = offer(record, every, now) if _knows_its_step(record) else None
    if following is not None and not following.held_back and following.pairs == PAIRS_A_STEP:
        _ask_educator(book, following)
        yield put.offer_words(following, say, tells=_tells(person))
        return
    if _eve_of_waking(record, now):
        yield words.wishes.waking
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


def _eve_of_waking(record: Record, now: datetime) -> bool:
    """Whether tomorrow is the week's day for a test on waking, and none was told lately.

    It is said here and not by a prompt: the prompts have their exact list (docs/sums.md).
    """
    person = record.participant
    tomorrow = local_date(now, person.zone) + DAY
    lately = shifted(now, -6 * DAY)
    return waking_day(tomorrow, person) and not any(
        noted.entry.moment is Moment.FASTING and when(noted) > lately for noted in record.readings
    )


def _topic(proposal: Proposal) -> str:
    """Whose question a proposal is: the participant's own, or first the educator's."""
    return FEWER_WAITS if proposal.needs_educator else RHYTHM


def _tells(person: Participant) -> bool:
    """Whether what waits for the educator's release reaches them through the bot."""
    return person.educator is not None and person.tell_educator


def _ask_educator(book: Notebook, following: Offer) -> None:
    if following.needs_release:
        book.note(Wondered(topic=STEP_WAITS, about=following.step.value))


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
