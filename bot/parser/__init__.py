"""The reader: one short text and a little context become structured entries.

Rules of the room. Pure: no clock, no disk, no environment; `at` is always an argument. Each
file asks one question of the text and claims the words that answer it, the most specific
question first; `reader` puts the findings together, or asks. Words live in `vocabulary` and
in one lexicon a language; a rule of grammar that no word list can hold is code, once, for all
languages. Nothing doubtful is guessed: a wrong reading is worse than a question.
"""

from bot.parser.food import kinds_of
from bot.parser.reader import read

__all__ = ["kinds_of", "read"]
