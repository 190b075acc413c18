"""An invitation made in chat: for whom it is, then only what matters, then the code.

A table of questions: what a question says, which buttons go with it, how its answer is read.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, time

from bot.educator.educator import Educator, Invited, Usual
from bot.localtime import zone_named
from bot.participants import Enrolment, Invitation, Participant
from bot.turns.enrolling import clock_of
from bot.turns.teaching_desk import Lesson, talking
from bot.turns.teaching_reading import plain
from bot.units import Unit
from bot.words.educator import EducatorSentences
from bot.words.language import LANGUAGES, language, language_named

FIT, SAME, ZONE, UNIT, LANGUAGE, MEAL, LOWS, KETONES, SPECIAL, NUMBER, LABEL = (
    "invite:fit",
    "invite:same",
    "invite:zone",
    "invite:unit",
    "invite:language",
    "invite:meal",
    "invite:lows",
    "invite:ketones",
    "invite:special",
    "invite:number",
    "invite:label",
)
ORDER = (FIT, SAME, ZONE, UNIT, LANGUAGE, MEAL, LOWS, KETONES, SPECIAL, NUMBER, LABEL)
#: What `same` answers for all of them.
OF_SAME = (ZONE, UNIT, LANGUAGE, NUMBER)
OPEN = "open"  # left to be asked when the participant joins, or not known

TAIL = 4
LONGEST_LABEL = 24
_TELEPHONE = re.compile(r"^\+?[\d\s()/-]{2,20}$")

Answer = Callable[[str, datetime, EducatorSentences], str | None]


@dataclass(frozen=True, slots=True)
class Code:
    """A fresh code, and the bot's name in the chat program if it is known."""

    code: str
    bot: str | None = None


@dataclass(frozen=True, slots=True)
class _Question:
    text: Callable[[EducatorSentences, Educator], str]
    buttons: Callable[[EducatorSentences, Educator], tuple[str, ...]]
    answer: Answer
    again: Callable[[EducatorSentences, Educator], str]


def _yes_no(text: str, _at: datetime, say: EducatorSentences) -> str | None:
    words = plain(text)
    return "yes" if words in say.yes else "no" if words in say.no else None


def _yes_no_unknown(text: str, at: datetime, say: EducatorSentences) -> str | None:
    return OPEN if plain(text) in say.unknown else _yes_no(text, at, say)


def _zone(text: str, _at: datetime, _say: EducatorSentences) -> str | None:
    return zone_named(text)


def _unit(text: str, _at: datetime, say: EducatorSentences) -> str | None:
    words = plain(text)
    if words in say.ask_them:
        return OPEN
    if "mmol" in words:
        return Unit.MMOL_L.value
    return Unit.MG_DL.value if "mg" in words else None


def _language(text: str, _at: datetime, _say: EducatorSentences) -> str | None:
    return language_named(plain(text))


def _meal(text: str, at: datetime, say: EducatorSentences) -> str | None:
    return OPEN if plain(text) in say.ask_them else clock_of(text, at)


def _special(text: str, _at: datetime, say: EducatorSentences) -> str | None:
    words = plain(text)
    if words in say.none_words:
        return "none"
    told = (
        ("fluid", say.fluid_words),
        ("acarbose", say.acarbose_words),
        ("helper", say.helper_words),
    )
    found = [name for name, of in told if any(word in words for word in of)]
    return " ".join(found) or None


def _number(text: str, _at: datetime, say: EducatorSentences) -> str | None:
    if plain(text) in say.none_words:
        return OPEN
    return text.strip() if _TELEPHONE.match(text.strip()) else None


def _label(text: str, _at: datetime, say: EducatorSentences) -> str | None:
    return OPEN if plain(text) in say.none_words else cut_label(text)


def cut_label(text: str) -> str | None:
    """A word for a participant: one line, not too long; None if nothing is left."""
    return " ".join(text.split())[:LONGEST_LABEL].strip() or None


def _last(say: EducatorSentences, educator: Educator) -> str:
    usual = educator.usual
    parts = (
        ()
        if usual is None
        else (
            usual.zone,
            usual.unit and usual.unit.value,
            language(usual.language).asks.language_name,
            usual.emergency_number,
        )
    )
    return say.same_as_last.format(last=", ".join(part for part in parts if part))


QUESTIONS: Mapping[str, _Question] = {
    FIT: _Question(
        lambda say, _: f"{say.for_whom}\n\n{say.for_whom_question}",
        lambda say, _: say.yes_no,
        _yes_no,
        lambda say, _: say.yes_or_no,
    ),
    SAME: _Question(_last, lambda say, _: say.yes_no, _yes_no, lambda say, _: say.yes_or_no),
    ZONE: _Question(
        lambda say, educator: say.invite_zone.format(zone=educator.zone),
        lambda _, educator: (educator.zone,),
        _zone,
        lambda say, _: say.zone_unknown,
    ),
    UNIT: _Question(
        lambda say, _: say.invite_unit,
        lambda say, _: say.unit_buttons,
        _unit,
        lambda say, _: say.invite_unit,
    ),
    LANGUAGE: _Question(
        lambda _, educator: language(educator.language).asks.invite_language,
        lambda _say, _: tuple(one.asks.language_name for one in LANGUAGES.values()),
        _language,
        lambda _, educator: language(educator.language).asks.invite_language,
    ),
    MEAL: _Question(
        lambda say, _: say.invite_meal,
        lambda say, _: (say.ask_them_button,),
        _meal,
        lambda say, _: say.meal_unknown,
    ),
    LOWS: _Question(
        lambda say, _: say.invite_lows,
        lambda say, _: say.yes_no_unknown,
        _yes_no_unknown,
        lambda say, _: say.invite_lows,
    ),
    KETONES: _Question(
        lambda say, _: say.invite_ketones,
        lambda say, _: say.yes_no_unknown,
        _yes_no_unknown,
        lambda say, _: say.invite_ketones,
    ),
    SPECIAL: _Question(
        lambda say, _: say.invite_special,
        lambda say, _: say.special_buttons,
        _special,
        lambda say, _: say.special_unknown,
    ),
    NUMBER: _Question(
        lambda say, _: say.invite_number,
        lambda say, _: ("112", "911", say.special_buttons[0]),
        _number,
        lambda say, _: say.number_unknown,
    ),
    LABEL: _Question(
        lambda say, _: say.invite_label,
        lambda say, _: (say.special_buttons[0],),
        _label,
        lambda say, _: say.invite_label,
    ),
}


def ask_for_whom(lesson: Lesson) -> None:
    """The first question of an invitation: for whom it is and is not."""
    _ask(lesson, FIT, ())


def take_answer(lesson: Lesson, text: str, fresh: Code) -> bool:
    """Take the answer to the open question of an invitation; False if it cannot be read."""
    talk = lesson.educator.talk
    if talk is None:
        return False
    answer = QUESTIONS[talk.stage].answer(text, lesson.now, lesson.say)
    if answer is None:
        return False
    if talk.stage == FIT and answer == "no":
        lesson.educator = talking(lesson.educator, None)
        lesson.answer(lesson.say.not_for_them)
        return True
    known = (*talk.known, (talk.stage, answer))
    following = _following(dict(known), lesson.educator)
    if following is not None:
        _ask(lesson, following, known)
    else:
        _invite(lesson, dict(known), fresh)
    return True


def ask_again(lesson: Lesson) -> None:
    """The open question once more, for an answer that could not be read."""
    talk = lesson.educator.talk
    if talk is not None:
        question = QUESTIONS[talk.stage]
        lesson.answer(question.again(lesson.say, lesson.educator), _buttons(lesson, question))


def joined_by(educator: Educator, person: Participant, code: str) -> Educator:
    """Somebody has joined with a code of this educator: the word chosen for them is theirs."""
    tail = _tail(code)
    used = next((one for one in educator.invited if one.tail == tail), None)
    if used is None:
        return educator
    left = tuple(one for one in educator.invited if one is not used)
    labels = educator.labels
    if used.label is not None:
        labels = (*labels, (person.id, used.label))
    return replace(educator, invited=left, labels=labels)


def _ask(lesson: Lesson, stage: str, known: tuple[tuple[str, str], ...]) -> None:
    question = QUESTIONS[stage]
    lesson.educator = replace(lesson.educator, talk=Enrolment(stage=stage, known=known))
    text = question.text(lesson.say, lesson.educator)
    lesson.answer(text, _buttons(lesson, question))


def _buttons(lesson: Lesson, question: _Question) -> tuple[str, ...]:
    return (*question.buttons(lesson.say, lesson.educator), lesson.say.cancel_button)


def _following(known: Mapping[str, str], educator: Educator) -> str | None:
    """The next question that matters: what is the same as last time is not asked again."""
    for stage in ORDER:
        settled_by_same = known.get(SAME) == "yes" and stage in OF_SAME
        if stage in known or settled_by_same or (stage == SAME and educator.usual is None):
            continue
        return stage
    return None


def _invite(lesson: Lesson, known: Mapping[str, str], fresh: Code) -> None:
    educator, say = lesson.educator, lesson.say
    usual = educator.usual if known.get(SAME) == "yes" else None
    if usual is None:
        usual = Usual(
            zone=known[ZONE],
            unit=None if known[UNIT] == OPEN else Unit(known[UNIT]),
            emergency_number=None if known[NUMBER] == OPEN else known[NUMBER],
            language=known[LANGUAGE],
        )
    invitation = Invitation(
        zone=usual.zone,
        unit=usual.unit,
        main_meal=None if known[MEAL] == OPEN else time.fromisoformat(known[MEAL]),
        language=usual.language,
        may_go_low=_known(known[LOWS]),
        ketone_risk=_known(known[KETONES]),
        emergency_number=usual.emergency_number,
        educator=educator.id,
        fluid_limit="fluid" in known[SPECIAL],
        acarbose="acarbose" in known[SPECIAL],
        helper="helper" in known[SPECIAL],
    )
    label = None if known[LABEL] == OPEN else known[LABEL]
    waiting = Invited(tail=_tail(fresh.code), label=label, at=lesson.now)
    lesson.educator = replace(
        educator, talk=None, usual=usual, invited=(*educator.invited, waiting)
    )
    lesson.invites.append((fresh.code, invitation))
    lines = [say.invited.format(code=fresh.code)]
    if fresh.bot:
        link = f"https://t.me/{fresh.bot}?start={fresh.code}"
        lines.append(say.invited_link.format(link=link))
    lesson.answer("\n".join(lines))


def _known(answer: str) -> bool | None:
    return {"yes": True, "no": False}.get(answer)


def _tail(code: str) -> str:
    return "".join(letter for letter in code.upper() if letter.isalnum())[-TAIL:]
