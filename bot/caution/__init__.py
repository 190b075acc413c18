"""When the bot cautions, and what follows a caution.

What lives here: the levels with their sources, which of them a message brings about, the
rechecks that follow, the word to the educator. What it must not know: sentences, storage, the
clock. Every decision is worked out from the record alone, so that a late entry or a correction
needs no special case. Nothing here ever softens or drops a caution because of another one.
"""

from bot.caution.cautions import Caution, due_cautions
from bot.caution.levels import level_of
from bot.caution.thresholds import Level

__all__ = ["Caution", "Level", "due_cautions", "level_of"]
