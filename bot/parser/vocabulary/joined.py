"""Foods and drinks of a language as one list."""

from collections.abc import Mapping

from bot.entries import FoodKind


def joined(*lists: Mapping[FoodKind, tuple[str, ...]]) -> dict[FoodKind, tuple[str, ...]]:
    """Join word lists kind by kind."""
    return {
        kind: tuple(word for words in lists for word in words.get(kind, ())) for kind in FoodKind
    }
