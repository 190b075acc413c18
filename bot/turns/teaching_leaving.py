"""A participant takes the educator's access away, in their own words, at once."""

from dataclasses import replace
from datetime import datetime

from bot.localtime import fixed
from bot.messages import Content, Incoming, Kind
from bot.planning.agenda import next_wake
from bot.record import Wrote
from bot.turns.notebook import Notebook
from bot.turns.teaching_reading import plain
from bot.turns.turn import Opened, Turn
from bot.words.language import language


def leave(opened: Opened, incoming: Incoming, *, now: datetime) -> Turn | None:
    """The turn of a message that ends the educator's access; None for any other message."""
    person = opened.participant
    say = language(person.language).educator
    if incoming.content is not Content.TEXT or plain(incoming.text) not in say.leave:
        return None
    local = fixed(now, person.zone)
    alone = replace(person, educator=None, tell_educator=False)
    book = Notebook(
        person=alone,
        old=opened.events,
        last_id=opened.last_id,
        at=fixed(incoming.said_at or incoming.at, person.zone),
        message=incoming.message,
        folded=opened.record,
    )
    book.note(Wrote())
    text = say.no_educator if person.educator is None else say.left
    book.say(Kind.REPLY, text, f"reply:{incoming.update}", now=local)
    return Turn(
        participant=alone,
        events=tuple(book.new),
        says=tuple(book.says),
        wake_at=next_wake(book.record, local),
        record=book.record,
    )
