"""The lines of a reply: what was understood, said back, and what it means."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

from bot.caution.ladder import low_taken_back
from bot.caution.surprise import doubtful, surprise
from bot.entries import (
    Activity,
    Meal,
    Moment,
    Reading,
    Skip,
    Strips,
    Symptom,
    Treatment,
)
from bot.glucose.effects import effects
from bot.glucose.pairs import Status
from bot.glucose.readings import settled
from bot.planning.due import activity_key, meal_key
from bot.planning.prompts import AFTER_UNTIL, TWO_HOURS, may_raise
from bot.planning.quiet import is_quiet
from bot.record import Noted
from bot.turns.asking_back import asks, next_text, standing
from bot.turns.facts import Fact, Joined, Mended, NothingToMend, TakenBack, Told, WhichOne
from bot.turns.reply import Replying, due_at, noted_reading, pair_after
from bot.turns.strips import strips_words
from bot.words import replies as put
from bot.words.amounts import clock, value_words
from bot.words.cautions import (
    doubtful_words,
    ladder_closed_words,
    low_taken_back_words,
    surprise_words,
)

#: How to tell the first bite is said for as long; later it would only be noise.
NEW_FOR = timedelta(days=7)


def reply_lines(about: Replying) -> list[str]:
    """Every line of the reply, in order. May note what the bot asks back."""
    lines = [line for fact in about.facts for line in _fact_lines(about, fact)]
    person, cautions = about.book.person, about.words.cautions
    if about.closed is not None:
        lines.append(ladder_closed_words(about.closed, person, cautions, by=about.by))
    put_right = about.edited or any(isinstance(fact, Mended) for fact in about.facts)
    if put_right and low_taken_back(about.recent, now=about.now):
        lines.append(low_taken_back_words(person, cautions))
    lines.extend(asks(about))
    lines.extend(standing(about))
    lines.extend(next_text(about, lines))
    return lines


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


#: Moments of a reading that may be said to be off a meal's time; any other speaks for itself.
SPEAKS_OF_A_MEAL = frozenset({Moment.AFTER_MEAL, Moment.UNSTATED})


def _reading_lines(about: Replying, id_: int) -> Iterator[str]:
    noted = noted_reading(about.recent, id_)
    if noted is None:
        return
    person, say = about.book.person, about.words.replies
    pair = pair_after(about.recent, id_)
    # A washed repeat takes the moment of the value that it overrules.
    moment = next(one.moment for one in settled(about.recent) if one.noted.id == id_)
    if pair is not None and pair.status is Status.OFF_TIME and moment not in SPEAKS_OF_A_MEAL:
        pair = None
    told, cautions = replace(noted.entry, moment=moment), about.words.cautions
    far = surprise(about.recent, id_)
    # No goal is drawn from a value far from the last one until a new test is near it.
    if far or about.unwell:
        yield put.unjudged_words(told, say)
    else:
        yield put.reading_words(told, pair, person, say)
    overruled = doubtful(about.recent)
    for gone in sorted(overruled - doubtful(about.before)) if overruled else ():
        first = noted_reading(about.recent, gone)
        if first is not None:
            yield doubtful_words(first.entry, noted.entry, person, cautions)
    if far:
        before = about.recent.readings[about.recent.readings.index(noted) - 1]
        yield surprise_words(noted.entry, before.entry, person, cautions)
        return
    if pair is None and moment is Moment.AFTER_ACTIVITY:
        for effect in effects(about.recent):
            if effect.after.id == id_:
                yield put.effect_words(effect, person, say)


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
        ask_at = due_at(about, meal_key(meal))
    return put.meal_told(
        meal,
        ask_at=ask_at,
        quiet=bool(quiet),
        late=bool(late),
        teach=about.now < person.joined_at + NEW_FOR,
        now=about.now,
        say=about.words.replies,
    )


def _activity_lines(about: Replying, id_: int) -> Iterator[str]:
    noted = next((one for one in about.recent.activities if one.id == id_), None)
    if noted is None:
        return
    ask_at = due_at(about, activity_key(noted.entry))
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
        ask_at = due_at(about, meal_key(meal))
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
            ask_at = due_at(about, meal_key(new)) if new.started_at else None
            if ask_at is not None and ask_at > about.now:
                yield say.will_ask.format(at=clock(ask_at))


def _taken_back(about: Replying, fact: TakenBack) -> str:
    say = about.words.replies
    if not fact.bodies:
        return say.nothing_removed
    named = [name for body in fact.bodies if (name := _name(body, about))]
    return say.removed.format(what=", ".join(named)) if named else say.removed_last


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
