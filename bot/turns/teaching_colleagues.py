"""Working hours, being away, and the deputy who stands in."""

from dataclasses import replace

from bot.turns.teaching_alerts import deputy_of
from bot.turns.teaching_desk import Lesson, talking
from bot.turns.teaching_reading import hours_of, plain
from bot.words.educator import Wish
from bot.words.educator_lines import hours_words
from bot.words.language import language

#: The question of joining that stays open: who stands in.
DEPUTY = "deputy"


def set_hours(lesson: Lesson, rest: str) -> None:
    """Set working days and hours, or tell them."""
    if not rest.strip("?"):
        shown = hours_words(lesson.educator, lesson.say)
        lesson.answer(lesson.asks.hours_now.format(hours=shown), lesson.say.hours_buttons)
        return
    hours = hours_of(rest, lesson.say, lesson.educator.hours)
    if hours is None:
        lesson.answer(lesson.say.hours_unknown, lesson.say.hours_buttons)
        return
    lesson.educator = replace(lesson.educator, hours=hours)
    shown = hours_words(lesson.educator, lesson.say)
    lesson.answer(lesson.say.hours_set.format(hours=shown))


def deputy_words(lesson: Lesson) -> str:
    """Who stands in, was asked to, or that nobody does."""
    educator, say = lesson.educator, lesson.asks
    if educator.deputy is None:
        return say.deputy_none
    return (say.deputy_is if educator.deputy_agreed else say.deputy_asked).format(
        deputy=educator.deputy
    )


def show_deputy(lesson: Lesson, rest: str) -> None:
    """Tell who stands in, or ask somebody to."""
    if rest.strip("?"):
        ask_deputy(lesson, rest)
        return
    none = lesson.say.wishes[Wish.NO_DEPUTY][0]
    lesson.answer(
        f"{deputy_words(lesson)} {lesson.say.deputy_question}",
        (none,) if lesson.educator.deputy else (),
    )
    lesson.educator = talking(lesson.educator, DEPUTY)


def show_me(lesson: Lesson) -> None:
    """The educator's own id, hours and deputy."""
    hours = hours_words(lesson.educator, lesson.say)
    text = lesson.asks.me.format(id=lesson.educator.id, hours=hours, deputy=deputy_words(lesson))
    commands = (Wish.HOURS, Wish.DEPUTY, Wish.ROSTER)
    lesson.answer(text, tuple(lesson.say.wishes[wish][-1] for wish in commands))


def go_away(lesson: Lesson) -> None:
    """No alert comes here until `back`; they go to the deputy at once."""
    lesson.educator = replace(lesson.educator, away=True)
    deputy = deputy_of(lesson.educator, lesson.desk)
    if deputy is None:
        lesson.answer(lesson.say.away_alone)
    else:
        lesson.answer(lesson.say.away.format(deputy=deputy.id))


def come_back(lesson: Lesson) -> None:
    """Alerts come here again in working hours."""
    lesson.educator = replace(lesson.educator, away=False)
    lesson.answer(lesson.say.back.format(hours=hours_words(lesson.educator, lesson.say)))


def ask_deputy(lesson: Lesson, rest: str) -> None:
    """Ask another educator to stand in. They get nothing before they accept."""
    say, educator = lesson.say, lesson.educator
    lesson.educator = educator = talking(educator, None)
    if not rest or plain(rest) in say.none_words:
        lesson.educator = replace(educator, deputy=None, deputy_agreed=False)
        lesson.answer(say.deputy_gone)
        return
    other = lesson.desk.colleague(rest.rsplit(maxsplit=1)[-1].upper())
    if other is None:
        lesson.answer(say.deputy_unknown)
    elif other.id == educator.id:
        lesson.answer(say.deputy_self)
    else:
        lesson.educator = replace(educator, deputy=other.id, deputy_agreed=False)
        theirs = language(other.language).educator
        buttons = tuple(
            f"{theirs.wishes[wish][0]} {educator.id}" for wish in (Wish.ACCEPT, Wish.DECLINE)
        )
        lesson.tell(
            other,
            theirs.deputy_offer.format(educator=educator.id),
            f"deputy:{educator.id}:{lesson.key}",
            buttons,
        )
        lesson.answer(say.deputy_asked.format(deputy=other.id))


def answer_offer(lesson: Lesson, rest: str, *, accepts: bool) -> None:
    """Say yes or no to standing in for another educator; a yes can be taken back."""
    say, own_id = lesson.say, lesson.educator.id
    words = rest.split()
    other = lesson.desk.colleague(words[-1].upper()) if words else None
    if other is None or other.deputy != own_id:
        lesson.answer(say.deputy_nobody)
        return
    theirs = language(other.language).educator
    if accepts:
        lesson.colleagues.append(replace(other, deputy_agreed=True))
        lesson.answer(say.deputy_agreed.format(educator=other.id))
        note = theirs.deputy_agreed_note
    else:
        lesson.colleagues.append(replace(other, deputy=None, deputy_agreed=False))
        lesson.answer(say.deputy_declined.format(educator=other.id))
        note = theirs.deputy_declined_note
    lesson.tell(other, note.format(deputy=own_id), f"deputy:{own_id}:{lesson.key}")
