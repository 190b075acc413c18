"""An educator's message: the wish it tells, carried out for participants of their own alone.

What nobody but the shell can know comes in with the desk; a participant who is not on it does
not exist here.
"""

from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import datetime

from bot.educator.educator import Educator
from bot.educator.visits import expecting
from bot.messages import Content, Incoming
from bot.participants import Participant
from bot.turns import teaching_granting as granting
from bot.turns import teaching_releasing as releasing
from bot.turns import teaching_showing as showing
from bot.turns.teaching_alerts import MARKS, attend, list_alerts, mark_alert
from bot.turns.teaching_colleagues import (
    DEPUTY,
    answer_offer,
    ask_deputy,
    come_back,
    go_away,
    set_hours,
    show_deputy,
    show_me,
)
from bot.turns.teaching_desk import Desk, Lesson, Taught, Welcoming, lesson, talking, unasked
from bot.turns.teaching_inviting import (
    Code,
    ask_again,
    ask_for_whom,
    joined_by,
    take_answer,
)
from bot.turns.teaching_joining import welcome
from bot.turns.teaching_reading import Wished, named, plain, wished
from bot.turns.teaching_releasing import waiting
from bot.words.educator import Wish
from bot.words.educator_lines import who_words
from bot.words.language import language, language_named

__all__ = [
    "Code",
    "Desk",
    "Taught",
    "Welcoming",
    "attend",
    "joined",
    "left",
    "teach",
    "waiting",
    "welcome",
]

#: Wishes that are granted while another question is open, which then stays open.
MEANWHILE = frozenset({Wish.ALERTS, Wish.ROSTER, Wish.HELP, *MARKS})

#: Of so many people with one name it is asked who is meant.
MOST_ASKED = 5

#: Wishes about one participant that show values, and those that do not.
Page = Callable[[Lesson, Participant, str], None]
SHOWS: Mapping[Wish, Page] = {
    Wish.SHOW: lambda lesson, person, _: showing.show_person(lesson, person),
    Wish.MEALS: showing.show_meals,
    Wish.CHART: lambda lesson, person, _: showing.show_chart(lesson, person),
    Wish.PAGE: lambda lesson, person, _: showing.show_page(lesson, person),
    Wish.EXPORT: lambda lesson, person, _: showing.show_export(lesson, person),
    Wish.STEPS: lambda lesson, person, _: showing.show_steps(lesson, person),
}
SETS: Mapping[Wish, Page] = {
    Wish.GOALS: granting.set_goals,
    Wish.LOW: granting.set_low,
    Wish.HIGH: granting.set_high,
    Wish.RELEASE: lambda lesson, person, _: releasing.release_step(lesson, person),
    Wish.FEWER: lambda lesson, person, _: releasing.release_fewer(lesson, person),
    Wish.FAST: releasing.set_fast,
    Wish.PLAN: lambda lesson, person, _: granting.set_plan(lesson, person),
    Wish.END_PLAN: lambda lesson, person, _: granting.end_plan(lesson, person),
    Wish.NOTE: granting.send_note,
    Wish.LABEL: granting.set_label,
}
PLAIN: Mapping[Wish, Callable[[Lesson, str], None]] = {
    Wish.HELP: lambda lesson, _: lesson.answer(lesson.say.help, _first_steps(lesson)),
    Wish.ROSTER: showing.show_roster,
    Wish.ALERTS: list_alerts,
    Wish.GROUP: lambda lesson, _: showing.show_group(lesson),
    Wish.INVITE: lambda lesson, _: ask_for_whom(lesson),
    Wish.HOURS: set_hours,
    Wish.DEPUTY: show_deputy,
    Wish.ME: lambda lesson, _: show_me(lesson),
    Wish.NO_DEPUTY: lambda lesson, _: ask_deputy(lesson, ""),
    Wish.ACCEPT: lambda lesson, rest: answer_offer(lesson, rest, accepts=True),
    Wish.DECLINE: lambda lesson, rest: answer_offer(lesson, rest, accepts=False),
    Wish.AWAY: lambda lesson, _: go_away(lesson),
    Wish.BACK: lambda lesson, _: come_back(lesson),
    Wish.CANCEL: lambda lesson, _: lesson.answer(lesson.say.nothing_to_cancel),
}


def teach(
    desk: Desk, incoming: Incoming, *, now: datetime, fresh: Code, quoted: str | None = None
) -> Taught:
    """Take one message of an educator.

    `fresh` is the code to give if the message completes an invitation; `quoted` the key of the
    bot's own message that this one replies to, if any.
    """
    begun = lesson(desk, incoming, now)
    if not incoming.private:
        return begun.taught()
    if incoming.content is not Content.TEXT or not incoming.text.strip():
        begun.answer(begun.say.reads_text)
        return begun.taught()
    if not _answered(begun, incoming.text, fresh, quoted):
        _wish(begun, incoming.text, quoted)
    return begun.taught()


def joined(educator: Educator, person: Participant, code: str, *, now: datetime) -> Taught:
    """A participant has joined with a code of this educator, who is told of it."""
    changed = expecting(joined_by(educator, person, code), person, since=now)
    say = language(educator.language).educator
    who = who_words(person, changed)
    shares = "" if person.tell_educator else say.not_shared.format(who=person.id)
    text = say.somebody_joined.format(who=who, shares=shares).strip()
    return Taught(educator=changed, says=(unasked(educator, text, f"joined:{person.id}", now),))


def left(educator: Educator, who: str, *, now: datetime) -> Taught:
    """A participant has left or taken access away, and nothing of theirs is kept any more."""
    say = language(educator.language).educator
    text = say.somebody_left.format(who=who)
    told = unasked(educator, text, f"left:{who}:{now.isoformat()}", now)
    return Taught(educator=educator, says=(told,))


def _answered(begun: Lesson, text: str, fresh: Code, quoted: str | None) -> bool:
    """Take the text as the answer to the open question, if it is one."""
    talk = begun.educator.talk
    if talk is None:
        return False
    told = wished(text, begun.say)
    if told is not None and told.wish is Wish.CANCEL:
        begun.educator = talking(begun.educator, None)
        begun.answer(begun.say.cancelled)
        return True
    bare = told is not None and (not told.rest or told.rest[0].isdigit())
    if told is not None and bare and told.wish in MEANWHILE:
        _grant(begun, told, quoted)
        return True
    if talk.stage == DEPUTY:
        return _deputy_named(begun, text, told)
    if talk.stage in releasing.ANYWAY:
        return _release_answered(begun, text, talk.stage, dict(talk.known).get("who", ""))
    if take_answer(begun, text, fresh):
        return True
    if told is not None:  # something else is wished: the question is dropped
        begun.educator = talking(begun.educator, None)
        return False
    ask_again(begun)
    return True


def _deputy_named(begun: Lesson, text: str, told: Wished | None) -> bool:
    """The question of joining: an id, or nobody. Anything else is a wish of its own."""
    words = plain(text)
    people, _ = named(text.strip(), begun.desk.own, begun.educator)
    if told is None and not people and (words in begun.say.none_words or len(words.split()) == 1):
        ask_deputy(begun, text)
        return True
    begun.educator = talking(begun.educator, None)
    return False


def _release_answered(begun: Lesson, text: str, stage: str, who: str) -> bool:
    begun.educator = talking(begun.educator, None)
    words = plain(text)
    if words in begun.say.no:
        begun.answer(begun.say.cancelled)
        return True
    person = next((one for one in begun.desk.own if one.id == who), None)
    if words not in begun.say.yes or person is None:
        return False
    releasing.ANYWAY[stage](begun, person)
    return True


def _wish(begun: Lesson, text: str, quoted: str | None) -> None:
    if _language_chosen(begun, text):
        return
    told = wished(text, begun.say)
    people, rest = named(text.strip(), begun.desk.own, begun.educator)
    if people and (told is None or not rest):
        told = Wished(Wish.SHOW, text.strip())  # a name alone is a wish to see the record
    if told is None and plain(text) in begun.asks.chatter_words:
        begun.answer(begun.asks.chatter, _first_steps(begun))
        return
    if told is None:
        begun.answer(begun.say.not_understood, (begun.say.wishes[Wish.HELP][0],))
        return
    _grant(begun, told, quoted)


def _first_steps(begun: Lesson) -> tuple[str, ...]:
    """Buttons for where most begin."""
    return tuple(begun.say.wishes[wish][0] for wish in (Wish.ROSTER, Wish.ALERTS, Wish.INVITE))


def _language_chosen(begun: Lesson, text: str) -> bool:
    """A language told by its name, in any language, is spoken from now on."""
    code = language_named(plain(text))
    if code is None:
        return False
    begun.educator = replace(begun.educator, language=code)
    begun.answer(begun.asks.language_set)
    return True


def _grant(begun: Lesson, told: Wished, quoted: str | None) -> None:
    if told.wish in MARKS:
        mark_alert(begun, told.wish, told.rest, quoted)
        return
    plain_wish = PLAIN.get(told.wish)
    if plain_wish is not None:
        plain_wish(begun, told.rest)
        return
    found = _person(begun, told)
    if found is None:
        return
    person, rest = found
    show = SHOWS.get(told.wish)
    if show is None:
        SETS[told.wish](begun, person, rest)
    elif person.tell_educator:
        show(begun, person, rest)
    else:
        begun.answer(begun.say.not_shared.format(who=begun.who(person)))


def _person(begun: Lesson, told: Wished) -> tuple[Participant, str] | None:
    """Whom a wish is about; what is wrong with the name is answered."""
    say = begun.say
    if not told.rest:
        roster_button = (say.wishes[Wish.ROSTER][0],)
        begun.answer(say.whom.format(command=say.wishes[told.wish][0]), roster_button)
        return None
    people, rest = named(told.rest, begun.desk.own, begun.educator)
    if len(people) == 1:
        return people[0], rest
    name = told.rest.split(" ", maxsplit=1)[0].strip(":,")
    if people:
        shown = people[:MOST_ASKED]
        ids = ", ".join(begun.who(person) for person in shown)
        command = say.wishes[told.wish][0]
        buttons = tuple(f"{command} {person.id} {rest}".strip() for person in shown)
        begun.answer(say.several.format(name=name, ids=ids), buttons)
    else:
        begun.answer(say.who_is.format(name=name))
    return None
