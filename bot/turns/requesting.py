"""Requests: what the participant asks of the bot, answered and carried out."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, time

from bot.entries import Request, Step, StepTaken, What
from bot.glucose.foods import mildest, tests_of
from bot.glucose.pairs import pairs
from bot.localtime import DAY, at_local, in_zone, zone_named
from bot.participants import State
from bot.planning.agenda import due_later
from bot.programme.steps import released, step_at
from bot.record import Record, Wondered, fold
from bot.turns.notebook import Notebook
from bot.turns.questions import ERASE
from bot.turns.turn import Opened
from bot.turns.weekly import asked_for
from bot.words.amounts import clock
from bot.words.cautions import medicine_advice_words, pregnancy_words
from bot.words.language import Language, language
from bot.words.requests import (
    food_words,
    foods_words,
    goals_words,
    record_words,
    settings_words,
)

#: How many of the latest meals `record` lists.
RECORD_LINES = 10
#: How many meals are named to somebody who asks what to eat.
MEALS_SHOWN = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Granted:
    """The answer to a request."""

    text: str
    buttons: tuple[str, ...] = ()
    picture: Mapping[str, object] | None = None
    attachment: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Asking:
    """A request with what is needed to answer it."""

    request: Request
    book: Notebook
    opened: Opened
    now: datetime
    words: Language

    @property
    def record(self) -> Record:
        """The record with what the message added."""
        return self.book.record

    def whole(self) -> Record:
        """The record of everything since joining."""
        return fold(self.book.person, (*self.opened.whole(), *self.book.new))


def grant(asking: Asking) -> Granted | None:
    """Answer a request; None where a caution alone answers it."""
    return _GRANTS[asking.request.what](asking)


def _line(choose: Callable[[Language], str]) -> Callable[[Asking], Granted]:
    return lambda asking: Granted(text=choose(asking.words))


def _state(state: State, choose: Callable[[Language], str]) -> Callable[[Asking], Granted]:
    def change(asking: Asking) -> Granted:
        asking.book.person = replace(asking.book.person, state=state)
        return Granted(text=choose(asking.words))

    return change


def _summary(asking: Asking) -> Granted:
    told = asked_for(asking.whole(), asking.now, asking.words)
    return Granted(text=told.text, picture=told.picture)


def _record(asking: Asking) -> Granted:
    latest = pairs(asking.record)[-RECORD_LINES:]
    words = asking.words
    return Granted(text=record_words(latest, words.requests, words.replies), attachment="record")


def _goals(asking: Asking) -> Granted:
    return Granted(text=goals_words(asking.book.person, asking.words.requests))


def _next_step(asking: Asking) -> Granted:
    say, names = asking.words.requests, asking.words.replies.steps
    order = list(Step)
    whole = asking.whole()
    place = order.index(step_at(whole, asking.now))
    if place + 1 == len(order):
        return Granted(text=say.step_last)
    step = order[place + 1]
    if asking.book.person.needs_release and not released(whole, step):
        return Granted(text=say.step_waits.format(step=names[step]))
    asking.book.note(StepTaken(step=step))
    return Granted(text=say.step_taken.format(step=names[step], how=say.step_how[step]))


def _settings(asking: Asking) -> Granted:
    value = asking.request.setting_value or ""
    change = _SETTINGS.get(asking.request.setting or "")
    changed = change(asking, value) if change else None
    words = asking.words
    return Granted(
        text=changed or settings_words(asking.book.person, words.requests, words.replies)
    )


def _nights(asking: Asking, _value: str) -> str:
    person, now = asking.book.person, in_zone(asking.now, asking.book.person.zone)
    days_left = 7 - now.weekday()
    until = at_local(now.date() + days_left * DAY, time(12, 0), person.zone)
    asking.book.person = replace(person, nights_until=until)
    return asking.words.requests.nights.format(day=f"{until:%Y-%m-%d}")


def _zone(asking: Asking, value: str) -> str:
    zone = zone_named(value)
    if zone is None:
        return asking.words.requests.zone_unknown
    asking.book.person = replace(asking.book.person, zone=zone)
    return asking.words.requests.zone.format(zone=zone, at=clock(in_zone(asking.now, zone)))


def _language(asking: Asking, value: str) -> str:
    chosen = language(value)
    asking.book.person = replace(asking.book.person, language=chosen.code)
    return chosen.requests.language


def _main_meal(asking: Asking, value: str) -> str | None:
    try:
        at = time.fromisoformat(value)
    except ValueError:
        return None
    asking.book.person = replace(asking.book.person, main_meal=at)
    return asking.words.requests.main_meal.format(at=value)


_SETTINGS: Mapping[str, Callable[[Asking, str], str | None]] = {
    "nights": _nights,
    "zone": _zone,
    "language": _language,
    "main_meal": _main_meal,
}


def _later(asking: Asking) -> Granted:
    """The nudge is moved by the request itself, which is in the record; here it is said."""
    say, zone = asking.words.requests, asking.book.person.zone
    due = due_later(asking.record, asking.now)
    if due is None:
        return Granted(text=say.nothing_waits)
    if due.at > due.until:
        return Granted(text=say.too_late.format(until=clock(in_zone(due.until, zone))))
    return Granted(text=say.later.format(at=clock(in_zone(due.at, zone))))


def _export(asking: Asking) -> Granted:
    return Granted(text=asking.words.requests.export, attachment="export")


def _erase(asking: Asking) -> Granted:
    asking.book.note(Wondered(topic=ERASE))
    say = asking.words.requests
    return Granted(text=say.erase_question, buttons=say.erase_buttons)


def _pregnancy(asking: Asking) -> Granted:
    person = replace(asking.book.person, pregnant=True)
    asking.book.person = person
    return Granted(text=pregnancy_words(person, asking.words.cautions))


def _medicine(asking: Asking) -> Granted:
    return Granted(text=medicine_advice_words(asking.book.person, asking.words.cautions))


def _food(asking: Asking) -> Granted:
    food = asking.request.subject
    if not food:
        shown = mildest(asking.whole(), MEALS_SHOWN)
        return Granted(text=foods_words(shown, asking.book.person, asking.words.requests))
    found = tests_of(asking.whole(), food)
    return Granted(text=food_words(food, found, asking.book.person, asking.words.requests))


_GRANTS: Mapping[What, Callable[[Asking], Granted | None]] = {
    What.HELP: _line(lambda words: words.requests.help),
    What.STOP: _state(State.STOPPED, lambda words: words.requests.stopped),
    What.PAUSE: _state(State.PAUSED, lambda words: words.requests.paused),
    What.RESUME: _state(State.ACTIVE, lambda words: words.requests.resumed),
    What.SUMMARY: _summary,
    What.RECORD: _record,
    What.GOALS: _goals,
    What.NEXT_STEP: _next_step,
    What.SETTINGS: _settings,
    What.LATER: _later,
    What.EXPORT: _export,
    What.ERASE: _erase,
    What.PREGNANCY: _pregnancy,
    What.WRONG_DOSE: lambda _asking: None,
    What.MEDICINE_ADVICE: _medicine,
    What.FOOD_ADVICE: _food,
    What.NOT_GLUCOSE: _line(lambda words: words.requests.not_glucose),
    What.CHATTER: _line(lambda words: words.requests.chatter),
}
