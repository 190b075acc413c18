"""The lines of a reply: what was understood, said back; what it means; what comes next."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.caution.ladder import low_taken_back
from bot.caution.surprise import doubtful, surprise
from bot.entries import (
    Activity,
    Ask,
    Doubt,
    Meal,
    Moment,
    Reading,
    Skip,
    Strips,
    Symptom,
    Treatment,
)
from bot.glucose.effects import effects
from bot.glucose.pairs import Pair, Status, pairs
from bot.glucose.readings import settled
from bot.planning.agenda import upcoming
from bot.planning.asked import PLATE
from bot.planning.due import Topic, activity_key, meal_key
from bot.planning.prompts import AFTER_UNTIL, TWO_HOURS, may_raise
from bot.planning.quiet import is_quiet
from bot.record import Noted, Record, Wondered
from bot.turns.answering import FIRST_BITE, MOMENT
from bot.turns.entering import (
    Fact,
    Joined,
    Mended,
    NothingToMend,
    TakenBack,
    Told,
    WhichOne,
)
from bot.turns.notebook import Notebook
from bot.turns.programme import programme_lines
from bot.turns.strips import strips_words
from bot.words import replies as put
from bot.words.amounts import clock, value_words
from bot.words.cautions import (
    doubtful_words,
    ladder_closed_words,
    low_taken_back_words,
    others_symptom_words,
    surprise_words,
)
from bot.words.language import Language


@dataclass(frozen=True, slots=True, kw_only=True)
class Replying:
    """What a reply is made from. `recent` is what stands of the
    last days, `before` the same as the turn found it."""

    before: Record
    recent: Record
    book: Notebook
    facts: tuple[Fact, ...]
    new: frozenset[int]
    now: datetime
    cautioned: frozenset[int]
    closed: Noted[Reading] | None
    words: Language
    ask: Ask | None
    doubt: Doubt
    number: str


def reply_lines(about: Replying) -> list[str]:
    """Every line of the reply, in order. May note what the bot asks back."""
    lines = [line for fact in about.facts for line in _fact_lines(about, fact)]
    person, cautions = about.book.person, about.words.cautions
    if about.closed is not None:
        lines.append(ladder_closed_words(about.closed, person, cautions))
    if any(isinstance(fact, Mended) for fact in about.facts) and low_taken_back(
        about.recent, now=about.now
    ):
        lines.append(low_taken_back_words(person, cautions))
    lines.extend(_asks(about))
    lines.extend(_programme(about))
    lines.extend(_next_text(about, lines))
    return lines


def _programme(about: Replying) -> list[str]:
    """Where a pair that has just been closed puts the participant in the programme."""
    complete = {
        pair.after.id
        for pair in pairs(about.recent)
        if pair.after is not None and pair.status is Status.COMPLETE
    }
    if about.ask is not None or about.cautioned or not complete & about.new:
        return []
    return programme_lines(about.book, about.book.record, about.now, about.words)


def _fact_lines(about: Replying, fact: Fact) -> Iterator[str]:
    match fact:
        case Told():
            yield from _told_lines(about, fact.id)
        case Joined():
            yield from _joined_lines(about, fact)
        case Mended():
            yield from _mended_lines(about, fact)
        case TakenBack():
            yield _taken_back(about, fact)
        case NothingToMend():
            yield about.words.replies.nothing_to_correct
        case WhichOne():
            yield about.words.replies.which_one


def _told_lines(about: Replying, id_: int) -> Iterator[str]:
    say = about.words.replies
    body = about.book.event(id_).body
    match body:
        case Reading():
            closes_low = about.closed is not None and about.closed.id == id_
            if id_ not in about.cautioned and not closes_low:
                yield from _reading_lines(about, id_)
        case Meal():
            yield from _meal_lines(about, id_)
        case Activity():
            yield from _activity_lines(about, id_)
        case Skip():
            yield say.skipped
        case Strips():
            yield strips_words(body, about.book.record, about.now, about.words)
        case _:
            return


def _noted_reading(record: Record, id_: int) -> Noted[Reading] | None:
    return next((noted for noted in record.readings if noted.id == id_), None)


def _reading_lines(about: Replying, id_: int) -> Iterator[str]:
    noted = _noted_reading(about.recent, id_)
    if noted is None:
        return
    person, say = about.book.person, about.words.replies
    pair = _pair_after(about.recent, id_)
    # A washed repeat takes the moment of the value that it overrules.
    moment = next(one.moment for one in settled(about.recent) if one.noted.id == id_)
    yield put.reading_words(replace(noted.entry, moment=moment), pair, person, say)
    cautions = about.words.cautions
    for gone in sorted(doubtful(about.recent) - doubtful(about.before)):
        first = _noted_reading(about.recent, gone)
        if first is not None:
            yield doubtful_words(first.entry, noted.entry, person, cautions)
    if surprise(about.recent, id_):
        before = about.recent.readings[about.recent.readings.index(noted) - 1]
        yield surprise_words(noted.entry, before.entry, person, cautions)
        return
    for effect in effects(about.recent):
        if effect.after.id == id_ and pair is None and moment is Moment.AFTER_ACTIVITY:
            yield put.effect_words(effect, person, say)


def _pair_after(record: Record, id_: int) -> Pair | None:
    """The pair that a reading closes."""
    return next((pair for pair in pairs(record) if pair.after and pair.after.id == id_), None)


def _meal_lines(about: Replying, id_: int) -> Iterator[str]:
    if any(noted.id == id_ for noted in about.recent.treatments):
        body = about.book.event(id_).body
        text = body.text if isinstance(body, Meal | Treatment) else ""
        yield about.words.replies.treatment.format(text=put.sentence_case(text))
        return
    noted = next((meal for meal in about.recent.meals if meal.id == id_), None)
    if noted is None:
        return
    yield _meal_line(about, noted)


def _meal_line(about: Replying, noted: Noted[Meal]) -> str:
    meal, person = noted.entry, about.book.person
    start = meal.started_at
    ask_at = quiet = late = None
    if start is not None and may_raise(noted):
        due = start + TWO_HOURS
        late = about.now > start + AFTER_UNTIL
        quiet = is_quiet(person, due) and not late
        ask_at = _due_at(about, meal_key(meal))
    return put.meal_told(
        meal,
        ask_at=ask_at,
        quiet=bool(quiet),
        late=bool(late),
        teach=about.now < person.joined_at + NEW_FOR,
        now=about.now,
        say=about.words.replies,
    )


def _due_at(about: Replying, key: str) -> datetime | None:
    """When the prompt with this key falls due; None if it does not come."""
    return next((due.at for due in upcoming(about.recent, about.now) if due.key == key), None)


def _activity_lines(about: Replying, id_: int) -> Iterator[str]:
    noted = next((one for one in about.recent.activities if one.id == id_), None)
    if noted is None:
        return
    ask_at = _due_at(about, activity_key(noted.entry))
    yield put.activity_told(noted.entry, ask_at=ask_at, say=about.words.replies)


def _joined_lines(about: Replying, fact: Joined) -> Iterator[str]:
    say = about.words.replies
    meal = about.book.event(fact.id).body
    if not isinstance(meal, Meal) or meal.started_at is None:
        return
    if fact.how == "over":
        return
    if fact.how == "moved":
        yield say.moved.format(start=clock(meal.started_at))
        ask_at = _due_at(about, meal_key(meal))
        if ask_at is not None:
            yield say.will_ask.format(at=clock(ask_at))
        return
    noted = next((one for one in about.recent.meals if one.id == fact.id), None)
    if noted is not None:
        yield _meal_line(about, noted)


def _mended_lines(about: Replying, fact: Mended) -> Iterator[str]:
    say = about.words.replies
    new = about.book.event(fact.id).body
    match fact.old, new:
        case Reading() as old, Reading():
            if (old.value, old.unit) != (new.value, new.unit):
                yield say.corrected.format(new=value_words(new), old=value_words(old))
            else:
                moment = say.moments[new.moment]
                yield say.corrected_moment.format(value=value_words(new), moment=moment)
            if fact.id not in about.cautioned:
                yield from _reading_lines(about, fact.id)
        case Meal() as old, Meal():
            if old.started_at != new.started_at and new.started_at is not None:
                yield say.corrected_start.format(
                    meal=put.sentence_case(put.meal_words(new, say)), start=clock(new.started_at)
                )
            else:
                yield say.corrected_text.format(
                    new=put.sentence_case(put.meal_words(new, say)), old=put.meal_words(old, say)
                )
            ask_at = _due_at(about, meal_key(new)) if new.started_at else None
            if ask_at is not None and ask_at > about.now:
                yield say.will_ask.format(at=clock(ask_at))


def _taken_back(about: Replying, fact: TakenBack) -> str:
    say = about.words.replies
    if not fact.bodies:
        return say.nothing_removed
    named = [_name(body, about) for body in fact.bodies]
    return say.removed.format(what=", ".join(name for name in named if name))


def _name(body: object, about: Replying) -> str:
    match body:
        case Reading():
            return value_words(body)
        case Meal():
            return put.meal_words(body, about.words.replies)
        case Activity() | Symptom():
            return put.shortened(body.text)
        case _:
            return ""


def _asks(about: Replying) -> Iterator[str]:
    """What is asked back: the reader's one thing, or one of the conversation's own."""
    say, book = about.words.replies, about.book
    if about.doubt.others_feel is not None:
        yield others_symptom_words(book.person, about.words.cautions)
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
        noted = _noted_reading(about.recent, id_)
        if noted is None:
            continue
        if noted.entry.moment is Moment.UNSTATED and not meals:
            if _pair_after(about.recent, id_) is None:
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


#: How to tell the first bite is said for as long; later it would only be noise.
NEW_FOR = timedelta(days=7)

#: What a reply names as the next text, so that nobody waits in doubt.
NAMED_NEXT = frozenset({Topic.BEFORE_MEAL, Topic.AFTER_MEAL, Topic.DIGEST})


def _next_text(about: Replying, lines: list[str]) -> Iterator[str]:
    """After a pair is closed, a test skipped: when the bot writes next."""
    if about.ask is not None or about.cautioned or not lines:
        return
    closed = any(
        isinstance(fact, Told)
        and (
            isinstance(about.book.event(fact.id).body, Skip)
            or _pair_after(about.recent, fact.id) is not None
        )
        for fact in about.facts
    )
    following = [
        due
        for due in upcoming(about.recent, about.now)
        if due.topic in NAMED_NEXT and due.at > about.now + timedelta(minutes=1)
    ]
    if closed and following:
        yield put.next_text_words(following[0].at, about.now, about.words.replies)
