"""Several word lists as one."""

from collections.abc import Iterable, Mapping

from bot.entries import FoodKind, Suggests
from bot.parser.vocabulary import Block


def joined(*lists: Mapping[FoodKind, Block]) -> dict[FoodKind, Block]:
    """Join word lists kind by kind."""
    return {kind: _one(words[kind] for words in lists if kind in words) for kind in FoodKind}


def joined_symptoms(*lists: Mapping[Suggests, Block]) -> dict[Suggests, Block]:
    """Join word lists level by level."""
    return {level: _one(words[level] for words in lists if level in words) for level in Suggests}


def _one(blocks: Iterable[Block]) -> Block:
    return Block("\n".join(block.written for block in blocks))
