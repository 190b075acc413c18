"""A message as the answer to one of the bot's own questions.

A fresh, complete report always wins over an open question; the caller sees to that.
"""

from collections.abc import Mapping

from bot.entries import Activity, Ask, Correction, Meal, Reading, Understood
from bot.turns import doubts, wishes
from bot.turns.notebook import Notebook
from bot.turns.own_wishes import wish
from bot.turns.questions import (
    ERASE,
    FIRST_BITE,
    GO_ON,
    HUNGER,
    KETONES,
    LOWS,
    MOMENT,
    RHYTHM,
    TIREDNESS,
    Answered,
    Taker,
    open_questions,
)
from bot.words.language import Language


def answer(text: str, understood: Understood, book: Notebook, words: Language) -> Answered | None:
    """Take a message as the answer to an open question, or as a wish of the conversation's own;
    None if it is neither."""
    for question in open_questions(book.before, book):
        take = _TAKERS.get(question.entry.topic) or _BY_ASK.get(question.entry.ask)
        taken = take(text, understood, question, book, words) if take else None
        if taken is not None:
            return taken
    return wish(text, understood, book, words)


def is_complete(understood: Understood) -> bool:
    """Whether a message is a report of its own, which wins over any open question."""
    return understood.ask is None and any(
        not isinstance(entry, Meal) or bool(entry.text)
        for entry in understood.entries
        if isinstance(entry, Reading | Meal | Activity | Correction)
    )


_TAKERS: Mapping[str | None, Taker] = {
    MOMENT: doubts.moment,
    FIRST_BITE: doubts.first_bite,
    ERASE: wishes.erase,
    HUNGER: wishes.how,
    TIREDNESS: wishes.how,
    GO_ON: wishes.go_on,
    RHYTHM: wishes.rhythm,
    LOWS: wishes.risk,
    KETONES: wishes.risk,
}
_BY_ASK: Mapping[Ask | None, Taker] = {
    Ask.UNIT: doubts.unit,
    Ask.WHEN_DONE: doubts.done,
    Ask.MEANING: doubts.meaning,
}
