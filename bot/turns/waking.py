"""A wake-up: what has fallen due is said, and the next instant is named."""

from dataclasses import dataclass, replace
from datetime import datetime

from bot.caution.ladder import rechecks
from bot.entries import Activity, Meal
from bot.localtime import fixed, in_zone
from bot.messages import Kind
from bot.participants import Participant
from bot.planning.agenda import Agenda, next_wake
from bot.planning.due import Due, Topic
from bot.record import Record, Wondered, fold
from bot.turns.notebook import Notebook
from bot.turns.questions import GO_ON, HUNGER
from bot.turns.turn import Opened, Turn
from bot.turns.weekly import digest
from bot.words.cautions import recheck_words
from bot.words.language import Language, language
from bot.words.prompts import after_activity_words, after_meal_words, before_meal_words


@dataclass(frozen=True, slots=True, kw_only=True)
class _Waking:
    opened: Opened
    book: Notebook
    now: datetime
    words: Language

    @property
    def person(self) -> Participant:
        return self.book.person


def start(participant: Participant, *, now: datetime) -> datetime | None:
    """When to wake first for somebody who has just joined."""
    return next_wake(fold(participant, ()), now)


def wake(opened: Opened, *, now: datetime) -> Turn:
    """Say what is due at `now`. A stale wake-up says nothing and only names the next instant."""
    person = opened.participant
    local = fixed(now, person.zone)
    book = Notebook(
        person=person,
        old=opened.events,
        last_id=opened.last_id,
        at=local,
        message=None,
        folded=opened.record,
    )
    waking = _Waking(opened=opened, book=book, now=local, words=language(person.language))
    agenda = Agenda.of(book.before, local)
    for item in agenda.due:
        _say(waking, item)
    if book.new:
        agenda = agenda.after(book.record)
    return Turn(
        participant=book.person,
        events=tuple(book.new),
        says=tuple(book.says),
        wake_at=agenda.next_wake,
        record=book.record,
    )


def _say(waking: _Waking, item: Due) -> None:
    book = waking.book
    if item.topic is Topic.DIGEST:
        _say_digest(waking, item)
        return
    buttons: tuple[str, ...] = ()
    if item.topic in (Topic.LOWS_POSSIBLE, Topic.KETONES_POSSIBLE):
        book.note(Wondered(topic=item.topic.value))
        buttons = waking.words.enrolling.yes_no_unknown
    elif item.topic is Topic.WEEKLY_QUESTION:
        book.note(Wondered(topic=HUNGER))
        buttons = waking.words.requests.how_buttons
    elif item.topic is Topic.GO_ON:
        book.note(Wondered(topic=GO_ON))
        book.person = replace(book.person, silent=True)
        buttons = waking.words.prompts.go_on_buttons
    book.say(
        item.kind,
        _text(waking, item),
        item.key,
        now=waking.now,
        about=item.about,
        cause=item.cause,
        buttons=buttons,
        expires_at=item.until,
    )


def _say_digest(waking: _Waking, item: Due) -> None:
    whole = fold(waking.person, (*waking.opened.whole(), *waking.book.new))
    told = digest(whole, item.week_end or waking.now, waking.words)
    waking.book.say(
        Kind.DIGEST,
        told.text,
        item.key,
        now=waking.now,
        picture=told.picture,
        expires_at=item.until,
    )


def _text(waking: _Waking, item: Due) -> str:
    words, person = waking.words, waking.person
    say = words.prompts
    match item.topic:
        case Topic.BEFORE_MEAL:
            return before_meal_words(again=item.nudge, discreet=person.discreet, say=say)
        case Topic.AFTER_MEAL:
            return after_meal_words(
                _meal(waking.book.before, item.cause),
                until=in_zone(item.until, person.zone),
                again=item.nudge,
                discreet=person.discreet,
                say=say,
                replies=words.replies,
            )
        case Topic.AFTER_ACTIVITY:
            activity = _activity(waking.book.before, item.cause)
            return after_activity_words(
                activity.text, activity.ended_at, discreet=person.discreet, say=say
            )
        case Topic.RECHECK:
            return _recheck_text(waking, item)
        case Topic.TEACHING:
            return say.teaching[item.number]
        case Topic.WEEKLY_QUESTION:
            return words.requests.hunger
        case Topic.GO_ON:
            return say.go_on
        case Topic.LOWS_POSSIBLE:
            return words.enrolling.may_go_low
        case Topic.KETONES_POSSIBLE:
            return words.enrolling.ketone_risk
        case Topic.DIGEST:
            raise ValueError("a digest has its own words")


def _recheck_text(waking: _Waking, item: Due) -> str:
    ladder = rechecks(waking.book.before, now=waking.now)
    recheck = next(one for one in ladder if one.key == item.key)
    return recheck_words(recheck, waking.person, waking.words.cautions)


def _meal(record: Record, id_: int | None) -> Meal | None:
    return next((noted.entry for noted in record.meals if noted.id == id_), None)


def _activity(record: Record, id_: int | None) -> Activity:
    return next(noted.entry for noted in record.activities if noted.id == id_)
