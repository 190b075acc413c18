"""A participant's message: understood, entered, cautioned, said back.

The order in which things are said is the order of this module: cautions first, then one reply.
"""

from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.caution.activity import carbohydrate_first
from bot.caution.cautions import Caution, due_cautions
from bot.caution.ladder import ladder_closed
from bot.caution.thresholds import Level
from bot.entries import Ask, By, Doubt, Reading, Request, What
from bot.localtime import fixed, shifted
from bot.messages import Content, Incoming, Kind
from bot.parser import read
from bot.planning.agenda import Agenda
from bot.planning.asked import PLATE, asked
from bot.record import Body, Record, Wondered, Wrote, fold
from bot.turns.answering import answer, is_complete
from bot.turns.entering import enter
from bot.turns.facts import Fact, TakenBack, Told
from bot.turns.mending import is_entry, retract_message
from bot.turns.notebook import Notebook
from bot.turns.questions import MOMENT, RHYTHM, Answered
from bot.turns.reply import REPLIES_LOOK_BACK, Replying
from bot.turns.replying import reply_lines
from bot.turns.requesting import Asking, Granted, grant
from bot.turns.turn import Opened, Turn
from bot.words.cautions import activity_words, caution_words
from bot.words.language import Language, language
from bot.words.replies import joined

#: Cautions look back seven days (168 hours) for highs and lows, and for what was said of them.
CAUTIONS_LOOK_BACK = timedelta(days=15)
#: Pictures that can be sent together (Bot API manual, sendMediaGroup).
LONGEST_ALBUM = 10
#: Levels that speak of how somebody feels, beside which no value is judged.
FELT = frozenset({Level.SYMPTOMS, Level.EMERGENCY})


@dataclass(frozen=True, slots=True, kw_only=True)
class _Heard:
    """A message with all that decides what it means."""

    opened: Opened
    incoming: Incoming
    now: datetime
    book: Notebook
    words: Language
    first_version: tuple[Body, ...] = ()  # what an edited message had entered before
    at_first: Record | None = None  # the record as it stood when an edited message first came


def hear(opened: Opened, incoming: Incoming, *, now: datetime, quoted: str | None = None) -> Turn:
    """Take one message of a participant.

    `quoted` is the key of the bot's own message that this one replies to, if any.
    """
    person = opened.participant
    local = fixed(now, person.zone)
    said_at = fixed(incoming.said_at or incoming.at, person.zone)
    book = Notebook(
        person=person,
        old=opened.events,
        last_id=opened.last_id,
        at=said_at,
        message=incoming.message,
        folded=opened.record,
    )
    heard = _Heard(
        opened=opened,
        incoming=incoming,
        now=local,
        book=book,
        words=language(person.language),
    )
    if incoming.edits:
        return _hear_edit(heard, quoted)
    return _take(heard, quoted)


def _hear_edit(heard: _Heard, quoted: str | None) -> Turn:
    """Read an edited message against what stood without its first version."""
    book = heard.book
    first_version = retract_message(book, heard.incoming.message)
    gone = tuple(book.new)
    anew = replace(book, old=(*book.old, *gone), new=[], folded=book.record, _latest=None)
    at_first = _as_it_stood(book, heard.incoming.message)
    turn = _take(replace(heard, book=anew, first_version=first_version, at_first=at_first), quoted)
    return replace(turn, events=(*gone, *turn.events))


def _as_it_stood(book: Notebook, message: str) -> Record:
    """The record before a message first came: what it brought about does not ask for it."""
    first = min((event.id for event in book.old if event.message == message), default=None)
    if first is None:
        return book.before
    return fold(book.person, (event for event in book.old if event.id < first))


def _take(heard: _Heard, quoted: str | None) -> Turn:
    book = heard.book
    book.note(Wrote(album=heard.incoming.album))
    if book.person.silent:
        book.person = replace(book.person, silent=False)
    if heard.incoming.content is Content.OTHER:
        return _close(heard, [heard.words.replies.reads_text])
    if heard.incoming.content is Content.PHOTO and not heard.incoming.text.strip():
        if _is_one_more_of_an_album(heard):
            return _close(heard, [])  # asked about, or told by its words, with the first one
        book.note(Wondered(topic=PLATE))
        return _close(heard, [heard.words.replies.photo_words])
    return _text(heard, quoted)


def _is_one_more_of_an_album(heard: _Heard) -> bool:
    album, earlier = heard.incoming.album, heard.book.before.wrote[-LONGEST_ALBUM:]
    in_one = album is not None and any(one.entry.album == album for one in earlier)
    return in_one and not heard.incoming.edits


def _text(heard: _Heard, quoted: str | None) -> Turn:
    book, incoming = heard.book, heard.incoming
    waiting = asked(heard.at_first or book.before, book.at, quoted)
    understood = read(
        incoming.text,
        at=book.at,
        unit=book.person.unit,
        language=book.person.language,
        by=incoming.by,
        asked=waiting,
    )
    answered = None
    if not is_complete(understood):
        answered = answer(incoming.text, understood, book, heard.words)
    if answered is not None:
        facts, ask = answered.facts, answered.ask
    else:
        facts = enter(book, understood.entries, text=incoming.text, photo=incoming.photo)
        ask = understood.ask
    gone = tuple(body for body in heard.first_version if is_entry(body))
    if gone and not _enters(book, facts):
        facts = (TakenBack(bodies=gone), *facts)
    if ask is not None and answered is None:
        book.note(Wondered(ask=ask, doubt=understood.doubt, asked=waiting))
    return _respond(heard, facts, ask, understood.doubt, answered)


def _enters(book: Notebook, facts: tuple[Fact, ...]) -> bool:
    return any(isinstance(fact, Told) and is_entry(book.event(fact.id).body) for fact in facts)


def _new_ids(heard: _Heard) -> frozenset[int]:
    """The events that may bring a caution: what was not told before.

    What is put right but for its value keeps its id, and a value that an edited message only
    says again was cautioned when it was first said.
    """
    said_before = [_value(body) for body in heard.first_version if isinstance(body, Reading)]
    return frozenset(
        event.id
        for event in heard.book.new
        if event.mends is None
        and not (isinstance(event.body, Reading) and _value(event.body) in said_before)
    )


def _value(reading: Reading) -> tuple[object, ...]:
    return reading.value, reading.unit, reading.off_scale


def _respond(
    heard: _Heard, facts: tuple[Fact, ...], ask: Ask | None, doubt: Doubt, answered: Answered | None
) -> Turn:
    book, words = heard.book, heard.words
    new = _new_ids(heard)
    record = book.record
    cautions = due_cautions(
        record.since(shifted(heard.now, -CAUTIONS_LOOK_BACK)), new, now=heard.now
    )
    _caution(heard, cautions)
    granted = _grant(heard, facts)
    # Nothing that is answered or asked back from here on changes what falls due.
    agenda = Agenda.of(book.record, heard.now)
    recent = book.record.since(shifted(heard.now, -REPLIES_LOOK_BACK))
    lines = reply_lines(
        Replying(
            recent=recent,
            ahead=agenda.upcoming,
            book=book,
            facts=facts,
            new=new,
            now=heard.now,
            cautioned=frozenset(caution.cause for caution in cautions),
            unwell=any(caution.level in FELT for caution in cautions),
            closed=ladder_closed(record, new),
            words=words,
            ask=ask,
            doubt=doubt,
            number=_number(doubt),
            edited=heard.incoming.edits,
            by=heard.incoming.by,
        )
    )
    low_before_activity = carbohydrate_first(
        recent, new, now=heard.now, planned=ask is Ask.WHEN_DONE
    )
    if low_before_activity is not None:
        lines.insert(0, activity_words(low_before_activity.entry, book.person, words.cautions))
    buttons: tuple[str, ...] = ()
    if answered is not None:
        lines.extend(answered.lines)
        buttons = answered.buttons
    if ask is None and any(question.topic == MOMENT for question in _asked_now(book)):
        buttons = words.replies.which_moment_buttons
    if any(question.topic == RHYTHM for question in _asked_now(book)):
        buttons = words.programme.rhythm_buttons
    for one in granted:
        lines.append(one.text)
        buttons = one.buttons or buttons
    erase = answered is not None and answered.erase
    return _close(heard, lines, agenda=agenda, buttons=buttons, granted=granted, erase=erase)


def _asked_now(book: Notebook) -> list[Wondered]:
    return [event.body for event in book.new if isinstance(event.body, Wondered)]


def _number(doubt: Doubt) -> str:
    if doubt.readings and doubt.readings[0].value is not None:
        return f"{doubt.readings[0].value:g}"
    return f"{doubt.numbers[0]:g}" if doubt.numbers else ""


def _caution(heard: _Heard, cautions: tuple[Caution, ...]) -> None:
    book, wishes = heard.book, heard.words.wishes
    by_helper = heard.incoming.by is By.HELPER
    for caution in cautions:
        text = caution_words(
            caution,
            book.person,
            heard.words.cautions,
            now=heard.now,
            by=heard.incoming.by,
            fast=wishes.fast_caution_helper if by_helper else wishes.fast_caution,
        )
        book.say(
            Kind.CAUTION,
            text,
            f"caution:{caution.cause}:{caution.level}",
            now=heard.now,
            about=caution.level.value,
            cause=caution.cause,
        )


def _grant(heard: _Heard, facts: tuple[Fact, ...]) -> list[Granted]:
    book = heard.book
    granted = []
    for fact in facts:
        body = book.event(fact.id).body if isinstance(fact, Told) else None
        if not isinstance(body, Request):
            continue
        if body.what is What.CHATTER and (heard.incoming.edits or len(facts) > 1):
            continue
        answer_ = grant(
            Asking(request=body, book=book, opened=heard.opened, now=heard.now, words=heard.words)
        )
        if answer_ is not None:
            granted.append(answer_)
    return granted


def _close(
    heard: _Heard,
    lines: list[str],
    *,
    agenda: Agenda | None = None,
    buttons: tuple[str, ...] = (),
    granted: list[Granted] | None = None,
    erase: bool = False,
) -> Turn:
    """One reply with all lines, and the turn."""
    book, now = heard.book, heard.now
    if agenda is None:
        agenda = Agenda.of(book.record, now)
    extras = granted or []
    if lines:
        book.say(
            Kind.REPLY,
            joined(lines),
            f"reply:{heard.incoming.update}",
            now=now,
            buttons=buttons,
            picture=next((one.picture for one in extras if one.picture), None),
            attachment=next((one.attachment for one in extras if one.attachment), None),
        )
    return Turn(
        participant=book.person,
        events=tuple(book.new),
        says=tuple(book.says),
        wake_at=None if erase else agenda.next_wake,
        erase=erase,
        record=book.record,
    )
