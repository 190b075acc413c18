"""What became of the entries of a message: facts for the reply, without a sentence."""

from dataclasses import dataclass

from bot.record import Body


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """An entry that was kept as it came."""

    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Joined:
    """A meal that added to, moved, or named an earlier one; `id` is the meal as it is now."""

    id: int
    how: str  # added, moved, over


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended:
    """A correction: the event as it was and as it is."""

    old: Body
    id: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenBack:
    """A removal, and what it removed."""

    bodies: tuple[Body, ...]


@dataclass(frozen=True, slots=True)
class NothingToMend:
    """A correction that fits nothing."""


@dataclass(frozen=True, slots=True)
class WhichOne:
    """A correction that fits two readings of one message."""


Fact = Told | Joined | Mended | TakenBack | NothingToMend | WhichOne
