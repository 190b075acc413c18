"""Several word lists as one."""

from collections.abc import Mapping

from bot.entries import FoodKind, Suggests


def joined(*lists: Mapping[FoodKind, tuple[str, ...]]) -> dict[FoodKind, tuple[str, ...]]:
    """Join word lists kind by kind."""
    return {
        kind: tuple(word for words in lists for word in words.get(kind, ())) for kind in FoodKind
    }


def joined_symptoms(*lists: Mapping[Suggests, tuple[str, ...]]) -> dict[Suggests, tuple[str, ...]]:
    """Join word lists level by level."""
    return {
        level: tuple(word for words in lists for word in words.get(level, ())) for level in Suggests
    }
