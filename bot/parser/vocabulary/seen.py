"""Words met while reading, too odd for the lists of foods and symptoms: spellings, numbers in names."""

from collections.abc import Mapping
from typing import Final

from bot.entries import FoodKind, Suggests
from bot.parser.vocabulary import Block

ALSO_FOODS: Final[Mapping[FoodKind, Block]] = {
    FoodKind.SWEET_DRINK: Block("7up, 7 up"),
    FoodKind.VEGETABLE: Block("1000 island salad, thousand island salad"),
    FoodKind.FAT: Block(
        "1000 island, thousand island, 1000 island dressing, yeast spread, yeast extract"
    ),
    FoodKind.MIXED_DISH: Block("quarter pounder(s), half pounder(s)"),
}

ALSO_SYMPTOMS: Final[Mapping[Suggests, Block]] = {
    Suggests.EMERGENCY: Block(
        """
        pasd out, past out cold, passd out, pased out, psssed out, fit right now
        {in|having} a fit, fitting right now, fainted, fainting fit
        """
    ),
}
