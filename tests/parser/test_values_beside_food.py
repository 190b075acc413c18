"""A value beside any dish of the lists stays a value, with the moment that is told.

Every dish is put before and behind a number that can be no count of it. Found so were `142 fried
rice` (142 of them), `nan bread 142` (somebody else's number), `chicken strips 142` (so many test
strips) and `171 after peking duck` (before the meal). All made up, no source.
"""

import re

import pytest

from tests.parser.test_sayings_by_cause import in_short
from tests.parser.test_vocabulary import FOOD_LISTS, words_of

#: Each of so many dishes in turn: all of them take minutes.
EVERY = 12
DISHES = [dish for dish in sorted(set(words_of(FOOD_LISTS))) if not set(dish) & set("(){}?")][
    ::EVERY
]
#: What is given, the message, and the reading that it tells.
FORMS = (
    ("", "142 {}", "142 before_meal"),
    ("mmol", "8.4 {}", "8.4 mmol before_meal"),
    ("", "{} 142", "142 before_meal"),
    ("mmol", "{}, 8.4", "8.4 mmol before_meal"),
    ("", "142 before {}", "142 before_meal"),
    ("", "171 after {}", "171 after_meal"),
    ("mmol", "9.1 after {}", "9.1 mmol after_meal"),
)
#: Words that are particles, places, fuel and the like besides food are asked about.
KEPT = 0.99
READING = re.compile(r"\d[\d.]*(?: mmol)? [a-z_]+")


@pytest.mark.parametrize(("given", "form", "told"), FORMS, ids=[form for _, form, _ in FORMS])
def test_a_value_beside_a_dish_is_kept(given: str, form: str, told: str) -> None:
    answers = {dish: in_short(form.format(dish), given).split("; ") for dish in DISHES}
    lost = {dish: got for dish, got in answers.items() if told not in got}
    assert len(lost) <= (1 - KEPT) * len(DISHES), lost


@pytest.mark.parametrize(("given", "form", "told"), FORMS, ids=[form for _, form, _ in FORMS])
def test_no_dish_makes_another_value_of_it(given: str, form: str, told: str) -> None:
    number = told.rpartition(" ")[0]
    for dish in DISHES:
        for entry in in_short(form.format(dish), given).split("; "):
            if READING.fullmatch(entry):
                assert entry.rpartition(" ")[0] == number, (dish, entry)
