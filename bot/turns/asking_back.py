"""The end of a reply: what is asked back, where one stands, when the next text comes."""

from collections.abc import Iterator
from datetime import timedelta

from bot.entries import (
    Meal,
    Moment,
    Reading,
    Skip,
)
from bot.glucose.pairs import Status, pairs
from bot.localtime import in_zone
from bot.planning.asked import PLATE
from bot.planning.due import Topic
from bot.record import Noted, Wondered
from bot.record.fold import when
from bot.turns.facts import Joined, Told
from bot.turns.programme import programme_lines
from bot.turns.questions import FIRST_BITE, MOMENT
from bot.turns.reply import Replying, noted_reading, pair_after
from bot.words import replies as put
from bot.words.cautions import (
    other_people_words,
    others_symptom_words,
)


def asks(about: Replying) -> Iterator[str]:
    """What is asked back: the reader's one thing, or one of the conversation's own."""
    say, book = about.words.replies, about.book
    if about.doubt.others_feel is not None:
        yield others_symptom_words(book.person, about.words.cautions)
        return
    if about.doubt.others:
        yield other_people_words(book.person, about.words.cautions)
        return
    if about.ask is not None:
        yield put.ask_words(about.ask, about.number, about.doubt.activity, say)
        return
    readings, meals = _new_of(about, Reading), _new_of(about, Meal)
    pending = [
        noted.id
        for noted in about.recent.meals
        if noted.id in about.new and noted.entry.started_at is None
    ]
    if pending:
        book.note(Wondered(topic=FIRST_BITE, events=tuple(pending)))
        yield say.first_bite
        return
    if about.cautioned:
        return
    for id_ in readings:
        noted = noted_reading(about.recent, id_)
        if noted is None:
            continue
        if noted.entry.moment is Moment.UNSTATED and not meals:
            if pair_after(about.recent, id_) is None:
                book.note(Wondered(topic=MOMENT, events=(id_,)))
                yield say.which_moment
                return
        elif (
            noted.entry.moment is Moment.BEFORE_MEAL
            and not meals
            and not _meal_around(about, noted)
        ):
            book.note(Wondered(topic=PLATE))
            yield say.what_on_plate
            return
    for id_ in meals:
        body = book.event(id_).body
        if isinstance(body, Meal) and not body.text:
            book.note(Wondered(topic=PLATE))


def _new_of(about: Replying, kind: type[Reading] | type[Meal]) -> list[int]:
    return [
        fact.id
        for fact in about.facts
        if isinstance(fact, Told | Joined) and isinstance(about.book.event(fact.id).body, kind)
    ]


def _meal_around(about: Replying, noted: Noted[Reading]) -> bool:
    """Whether the meal of a before-reading is known already."""
    return any(
        pair.before is not None and pair.before.id == noted.id for pair in pairs(about.recent)
    )


#: What a reply names as the next text, so that nobody waits in doubt.
NAMED_NEXT = frozenset({Topic.BEFORE_MEAL, Topic.AFTER_MEAL, Topic.DIGEST})


def next_text(about: Replying, lines: list[str]) -> Iterator[str]:
    """After a pair is closed, a test skipped: when the bot writes next."""
    if about.ask is not None or about.cautioned or not lines:
        return
    closed = any(
        isinstance(fact, Told)
        and (
            isinstance(about.book.event(fact.id).body, Skip)
            or pair_after(about.recent, fact.id) is not None
        )
        for fact in about.facts
    )
    if not closed:
        return
    following = [
        due
        for due in about.ahead
        if due.topic in NAMED_NEXT and due.at > about.now + timedelta(minutes=1)
    ]
    if following:
        at = in_zone(following[0].at, about.book.person.zone)
        yield put.next_text_words(at, about.now, about.words.replies)


def standing(about: Replying) -> list[str]:
    """Where the day's first complete pair puts the participant in the programme.

    Once a day: what is said after every test is not heard.
    """
    if about.ask is not None or about.cautioned:
        return []
    if not any(pair_after(about.recent, id_) for id_ in about.new):
        return []
    today = about.now.date()
    closed = [
        pair.after.id
        for pair in pairs(about.recent)
        if pair.after is not None
        and pair.status is Status.COMPLETE
        and when(pair.after).date() == today
    ]
    if not closed or closed[0] not in about.new:
        return []
    return programme_lines(about.book, about.book.record, about.now, about.words)
