"""The words of the week: at most 120, and no more than a chat's caption holds.

Every fact that the picture shows is in them, for whoever cannot see it. What went well comes
first, unless a caution has to. The same facts in another week are said in other sentences, and
the same week is always said in the same ones.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from bot.entries import Answer
from bot.glucose.height import Height
from bot.glucose.week import Week
from bot.programme.compare import StepComparison
from bot.programme.suggest import Suggestion
from bot.words import digest_lines as lines
from bot.words.telling import ELLIPSIS, DigestSentences, Teller

__all__ = ["MOST_CHARACTERS", "MOST_WORDS", "DigestSentences", "digest_words"]

MOST_WORDS = 120
MOST_CHARACTERS = 1024  # of a caption (Bot API, sendPhoto)

#: Words of a dish's name in a sentence, and fewer where room is short.
DISH_WORDS = (4, 2)

MUST = 0


@dataclass(frozen=True, slots=True)
class _Part:
    """A line of the digest. MUST stays; of the rest the lowest rank is kept first."""

    rank: int
    text: str


def digest_words(
    week: Week,
    *,
    suggestion: Suggestion,
    sentences: DigestSentences,
    comparison: StepComparison | None = None,
    height: Height | None = None,
    answers: Sequence[Answer] = (),
    so_far: bool = False,
) -> str:
    """The caption of a week's picture.

    At most 120 words and 1,024 characters: what matters least is left out where it has to be.
    `so_far` tells that the week still runs; `answers` are those to the weekly question.
    """
    parts: list[_Part] = []
    for dish_words in DISH_WORDS:
        tell = Teller(week, sentences, dish_words, so_far)
        parts = [_Part(MUST, sentences.so_far)] if so_far else []
        parts += _parts(tell, suggestion, comparison, height, answers)
        if not _too_long(parts):
            break
    return _text(_fitting(parts))


def _parts(
    tell: Teller,
    suggestion: Suggestion,
    comparison: StepComparison | None,
    height: Height | None,
    answers: Sequence[Answer],
) -> Iterator[_Part]:
    """The lines in the order in which they are read."""
    ranked = (
        (MUST, lines.cautions(tell)),
        (MUST, lines.went_well(tell)),
        (MUST, lines.goals(tell)),
        (MUST, lines.meals(tell)),
        (1, lines.span(tell)),
        (1, lines.uncounted(tell)),
        (2, lines.activity(tell)),
        (4, lines.food_working(tell)),
        (2, lines.compared(tell, comparison)),
        (5, lines.source(tell, height, suggestion)),
        (7, lines.trend(tell)),
        (6, lines.answered(tell, answers)),
        (MUST, lines.suggested(tell, suggestion)),
        (MUST, lines.cannot_know(tell)),
        (6, lines.every_number(tell)),
    )
    return (_Part(rank, text) for rank, text in ranked if text)


def _fitting(parts: Sequence[_Part]) -> list[_Part]:
    """All that must be said, and of the rest what still fits, the most important first."""
    kept = [part for part in parts if part.rank == MUST]
    for part in sorted(parts, key=lambda one: one.rank):
        if part.rank != MUST and not _too_long([*kept, part]):
            kept.append(part)
    return [part for part in parts if part in kept]


def _too_long(parts: Iterable[_Part]) -> bool:
    text = _text(parts)
    return len(text.split()) > MOST_WORDS or len(text) > MOST_CHARACTERS


def _text(parts: Iterable[_Part]) -> str:
    text = "\n".join(part.text for part in parts)
    return text.replace(f"{ELLIPSIS}.", ELLIPSIS)  # a sentence that ends with a shortened dish
