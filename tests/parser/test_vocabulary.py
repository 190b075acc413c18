"""The word lists keep their promises: one meaning a phrase, one way of writing it, no brands.

The sizes are those asked for when the lists were ordered (common practice, no source). The
symptoms of a low are compared with those that the patient leaflet names; the page is named beside
the check.
"""

import re
from collections.abc import Iterable, Mapping
from itertools import chain, combinations
from typing import TypeVar

import pytest

from bot.entries import FoodKind, Suggests
from bot.parser.languages import LEXICA
from bot.parser.vocabulary import (
    Block,
    activities,
    drinks,
    foods,
    foods_spanish,
    phrases,
    symptoms,
)

#: What a list is sorted by.
Kind = TypeVar("Kind", FoodKind, Suggests)

FOOD_LISTS: tuple[Mapping[FoodKind, Block], ...] = (
    foods.FOODS,
    drinks.DRINKS,
    foods_spanish.FOODS_SPANISH,
    drinks.DRINKS_SPANISH,
)
SYMPTOM_LISTS: tuple[Mapping[Suggests, Block], ...] = (
    symptoms.SYMPTOMS,
    symptoms.SYMPTOMS_SPANISH,
)
ACTIVITY_LISTS = {
    "activities": activities.ACTIVITIES,
    "underway": activities.ACTIVITIES_UNDERWAY,
    "activities, Spanish": activities.ACTIVITIES_SPANISH,
    "underway, Spanish": activities.ACTIVITIES_UNDERWAY_SPANISH,
}

#: A few makers' names, from memory: enough to notice when one slips in.
BRANDS = frozenset(
    """
    coke coca-cola pepsi fanta sprite gatorade powerade snickers oreo nutella kitkat mcdonald
    mcdonalds bimbo maruchan milo nescafe lipton maggi knorr nestle kellogg kelloggs cheerios
    weetabix doritos pringles heinz spam marmite vegemite velveeta jello popsicle ribena lucozade
    horlicks ovaltine starbucks kfc quorn ensure glucerna yakult danone inca-kola guarana-antarctica
    """.split()  # noqa: SIM905 - a block is read more easily
)

#: Words that mean one thing in English kitchens and another in Spanish ones.
FALSE_FRIENDS = frozenset(
    """
    tuna tunas chocho chochos tostada tostadas migas pasteles pastelitos mamon mamones
    """.split()  # noqa: SIM905 - a block is read more easily
) | {"chile verde"}


def words_of(lists: Iterable[Mapping[Kind, Block]]) -> set[str]:
    return {phrase for by in lists for many in by.values() for phrase in many}


def every_phrase() -> list[str]:
    return [
        *words_of(FOOD_LISTS),
        *words_of(SYMPTOM_LISTS),
        *chain.from_iterable(ACTIVITY_LISTS.values()),
        *foods.ALSO_NOT_FOOD,
        *foods.NOT_FOOD_PHRASES,
        *activities.NOT_ACTIVITY_PHRASES,
        *symptoms.NOT_SYMPTOMS,
    ]


class TestTheNotation:
    @pytest.mark.parametrize(
        ("written", "unfolded"),
        [
            ("rice, beans", ("rice", "beans")),
            ("rice\nbeans  # staples\n", ("rice", "beans")),
            ("{yoghurt|yogurt}(s)", ("yoghurt", "yoghurts", "yogurt", "yogurts")),
            ("(glass of |cup of )milk", ("milk", "glass of milk", "cup of milk")),
            ("{a|\n  b} c", ("a c", "b c")),
            ("{go {left|right}|stay}", ("go left", "go right", "stay")),
            ("can't walk", ("can't walk", "cant walk")),
            ("stir-fry", ("stir-fry", "stir fry")),
            ("rice, rice", ("rice",)),
            ("", ()),
        ],
    )
    def test_unfolds(self, written: str, unfolded: tuple[str, ...]) -> None:
        assert phrases(written) == unfolded


class TestEveryPhrase:
    def test_is_written_one_way(self) -> None:
        odd = [p for p in every_phrase() if p != " ".join(p.split()).lower() or not p]
        assert odd == []

    def test_holds_letters_digits_and_few_marks_only(self) -> None:
        usual = re.compile(r"[a-z0-9 '&/-]+")
        assert [p for p in every_phrase() if not usual.fullmatch(p)] == []

    def test_names_no_brand(self) -> None:
        branded = [p for p in every_phrase() if BRANDS & set(p.replace("'", "").split())]
        assert branded == []


class TestFoods:
    @pytest.mark.parametrize(
        ("food", "drink"),
        [
            (foods.FOODS, drinks.DRINKS),
            (foods_spanish.FOODS_SPANISH, drinks.DRINKS_SPANISH),
        ],
        ids=["English", "Spanish"],
    )
    def test_have_one_kind(
        self,
        food: Mapping[FoodKind, Block],
        drink: Mapping[FoodKind, Block],
    ) -> None:
        kinds: dict[str, set[str]] = {}
        for by in (food, drink):
            for kind, many in by.items():
                for phrase in many:
                    kinds.setdefault(phrase, set()).add(f"{id(by)} {kind}")
        assert {p: k for p, k in kinds.items() if len(k) > 1} == {}

    def test_agree_between_the_languages_but_for_false_friends(self) -> None:
        english = kind_by_phrase(foods.FOODS, drinks.DRINKS)
        spanish = kind_by_phrase(foods_spanish.FOODS_SPANISH, drinks.DRINKS_SPANISH)
        differ = {p for p in english.keys() & spanish.keys() if english[p] != spanish[p]}
        assert differ <= FALSE_FRIENDS

    def test_are_as_many_as_were_asked_for(self) -> None:
        assert len(words_of((foods.FOODS,))) >= 1800
        spanish = words_of((foods_spanish.FOODS_SPANISH, drinks.DRINKS_SPANISH))
        assert len(spanish) >= 400

    def test_are_short(self) -> None:
        assert [p for p in words_of((foods.FOODS,)) if len(p.split()) > 6] == []

    def test_that_are_doubtful_are_foods_all_the_same(self) -> None:
        known = kind_by_phrase(foods.FOODS, drinks.DRINKS)
        assert foods.ALSO_NOT_FOOD - known.keys() == set()

    def test_count_in_digits(self) -> None:
        # The reader makes digits of numbers in words before it looks for food, so that
        # `three sisters soup` is found as `3 sisters soup` and in no other way.
        said = {word for lexicon in LEXICA.values() for word in lexicon.numerals.words}
        said -= {word for lexicon in LEXICA.values() for word in lexicon.numerals.at_home}
        said -= {word for lexicon in LEXICA.values() for word in lexicon.numerals.shy}
        assert [food for food in words_of(FOOD_LISTS) if said & set(food.split())] == []

    def test_turns_of_speech_are_no_food(self) -> None:
        known = kind_by_phrase(foods.FOODS, drinks.DRINKS)
        assert set(foods.NOT_FOOD_PHRASES) & known.keys() == set()

    @pytest.mark.parametrize("kind", [k for k in FoodKind if k is not FoodKind.UNKNOWN])
    def test_every_kind_has_words_in_both_languages(self, kind: FoodKind) -> None:
        assert foods.FOODS.get(kind) or drinks.DRINKS.get(kind)
        assert foods_spanish.FOODS_SPANISH.get(kind) or drinks.DRINKS_SPANISH.get(kind)


class TestDrinks:
    def test_a_free_drink_never_names_sugar_without_saying_none(self) -> None:
        sweet = re.compile(r"\b(sugar|sweet|honey|syrup|juice|azucar|miel|jugo|zumo)\b")
        free = re.compile(
            r"\b(no|without|minus|w/o|zero|free|sugarless|diet|sin|light|dieta|cero|milk)\b|sweetener"
        )
        for by in (drinks.DRINKS, drinks.DRINKS_SPANISH):
            wrong = [d for d in by[FoodKind.FREE_DRINK] if sweet.search(d) and not free.search(d)]
            assert wrong == []

    @pytest.mark.parametrize("drink", ["tea", "coffee", "beer", "chai", "wine"])
    def test_that_may_be_sweetened_are_not_free(self, drink: str) -> None:
        assert drink in drinks.DRINKS[FoodKind.UNKNOWN]


class TestActivities:
    def test_are_as_many_as_were_asked_for(self) -> None:
        assert len(set(activities.ACTIVITIES_SPANISH)) >= 60

    def test_over_and_under_way_are_told_apart(self) -> None:
        assert set(activities.ACTIVITIES) & set(activities.ACTIVITIES_UNDERWAY) == set()
        spanish = set(activities.ACTIVITIES_SPANISH) & set(activities.ACTIVITIES_UNDERWAY_SPANISH)
        assert spanish == set()

    @pytest.mark.parametrize(
        "phrase",
        ["going to walk", "about to run", "walking now", "still sweeping", "going for a walk"],
    )
    def test_under_way_is_built_from_the_verbs(self, phrase: str) -> None:
        assert phrase in activities.ACTIVITIES_UNDERWAY

    def test_are_no_foods_but_for_the_yam_that_was_pounded(self) -> None:
        known = kind_by_phrase(foods.FOODS, drinks.DRINKS)
        assert set(activities.ACTIVITIES) & known.keys() <= {"pounded yam"}


class TestSymptoms:
    def test_are_as_many_as_were_asked_for(self) -> None:
        assert len(words_of((symptoms.SYMPTOMS_SPANISH,))) >= 80

    @pytest.mark.parametrize("words", SYMPTOM_LISTS, ids=["English", "Spanish"])
    def test_have_one_level(self, words: Mapping[Suggests, Block]) -> None:
        for one, other in combinations(words.values(), 2):
            assert set(one) & set(other) == set()

    def test_are_no_foods_and_no_activities(self) -> None:
        others = kind_by_phrase(*FOOD_LISTS).keys() | set(chain(*ACTIVITY_LISTS.values()))
        assert words_of(SYMPTOM_LISTS) & others == set()

    def test_a_low_holds_an_emergency_only_where_it_has_not_happened_yet(self) -> None:
        """The longest phrase wins, so each of these must say `nearly` in some way."""
        emergency = set(symptoms.SYMPTOMS[Suggests.EMERGENCY])
        softened = [p for p in symptoms.SYMPTOMS[Suggests.LOW] if holds(p, emergency)]
        coming = re.compile(
            r"^(about|liked?|wan|bout|boutta|abt|gonna|going|goin|might|may|could|fixing|finna|near|nearly|almost|close|want"
            r"|ready|feel|feels|feeling|think|afraid|will|just about|on the|verge|came|scared"
            r"|worried|fainting feeling|feel like)\b"
        )
        assert [p for p in softened if not coming.match(p)] == []
        assert "about to pass out" in softened

    def test_the_leaflet_s_signs_of_a_low_are_found(self) -> None:
        """Signs named by the ADA leaflet (Clinical Diabetes 2017;35:71) that stand alone here."""
        low = set(symptoms.SYMPTOMS[Suggests.LOW])
        assert {"shaky", "sweaty", "clammy", "fast heartbeat", "weak", "pale"} <= low
        assert {"lightheaded", "tingling lips", "nauseous", "clumsy"} <= low
        emergency = set(symptoms.SYMPTOMS[Suggests.EMERGENCY])
        assert {"confused", "seizure", "unconscious"} <= emergency

    @pytest.mark.parametrize(
        ("level", "phrase"),
        [
            # the reader's contract, rule 16
            (Suggests.LOW, "trembling"),
            (Suggests.LOW, "dizzy"),
            (Suggests.LOW, "diziness"),
            (Suggests.LOW, "shakey"),
            (Suggests.LOW, "feeling low"),
            (Suggests.LOW, "hypo"),
            (Suggests.HIGH, "very thirsty"),
            (Suggests.HIGH, "passing much water"),
            (Suggests.HIGH, "blurred sight"),
            (Suggests.HIGH, "throwing up"),
            (Suggests.HIGH, "belly pain"),
            (Suggests.HIGH, "double sight"),
            (Suggests.EMERGENCY, "passed out"),
            (Suggests.EMERGENCY, "had a fit"),
            (Suggests.EMERGENCY, "cannot be woken"),
            (Suggests.EMERGENCY, "confused and vomiting"),
            (Suggests.EMERGENCY, "chest pain"),
            (Suggests.EMERGENCY, "chest hurts"),
            (Suggests.EMERGENCY, "trouble breathing"),
            (Suggests.EMERGENCY, "cant breath"),
            (Suggests.EMERGENCY, "breath smells of fruit"),
            (Suggests.EMERGENCY, "breath smells of nail varnish"),
            (Suggests.EMERGENCY, "cannot keep fluids down"),
            (Suggests.EMERGENCY, "slurred speech"),
            (Suggests.EMERGENCY, "drooping face"),
            (Suggests.EMERGENCY, "face is drooping"),
            (Suggests.EMERGENCY, "weak arm"),
            (Suggests.EMERGENCY, "unable to swallow"),
            (Suggests.EMERGENCY, "very drowsy"),
        ],
    )
    def test_the_contract_s_wordings_are_found(self, level: Suggests, phrase: str) -> None:
        assert phrase in symptoms.SYMPTOMS[level]

    @pytest.mark.parametrize("word", ["fit", "fits", "low", "high", "thirsty", "hungry", "cold"])
    def test_ordinary_words_do_not_fire_alone(self, word: str) -> None:
        assert word not in words_of(SYMPTOM_LISTS)

    def test_ordinary_talk_is_longer_than_the_symptom_in_it(self) -> None:
        assert set(symptoms.NOT_SYMPTOMS) & words_of(SYMPTOM_LISTS) == set()


def kind_by_phrase(*lists: Mapping[FoodKind, Block]) -> dict[str, FoodKind]:
    return {phrase: kind for by in lists for kind, many in by.items() for phrase in many}


def holds(phrase: str, others: set[str]) -> bool:
    words = phrase.split()
    return any(
        " ".join(words[start:end]) in others
        for start in range(len(words))
        for end in range(start + 1, len(words) + 1)
    )
