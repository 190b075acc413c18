"""Words spelt as they sound are found, and names and foods are not taken for signs.

The misspellings and the names are common ones, from memory, no source.
"""

from itertools import chain

import pytest

from bot.parser.by_sound import Sounds
from bot.parser.graph import spelled
from bot.parser.languages import LEXICA
from bot.parser.misspelt import mended, no_slips
from bot.parser.tokens import cut
from bot.parser.vocabulary.real_words import REAL_WORDS
from bot.parser.vocabulary.slips import (
    BESIDE,
    SLIPS,
    SLIPS_AT_HOME,
    SOUND_LIKE_SIGNS,
    SOUNDED,
    WITHIN_SIGNS,
)
from tests.parser.test_sayings_by_cause import in_short

HEARD = {
    "unconshus": "unconscious",
    "unkonshuss": "unconscious",
    "siezure": "seizure",
    "seazure": "seizure",
    "kolapsed": "collapsed",
    "faynted": "fainted",
    "thurstee": "thirsty",
    "diszy": "dizzy",
    "dizee": "dizzy",
    "swetting": "sweating",
    "vomitting": "vomiting",
    "konfused": "confused",
    "drowzee": "drowsy",
    "slurrd": "slurred",
    "palpatations": "palpitations",
}
NAMES = """
    Abena Adebayo Aisha Akiko Amina Anjali Arjun Ayesha Babajide Bashir Beatriz Blessing Chidi
    Chioma Dalisay Deepa Desmond Dessie Dilip Emeka Fatima Fionnuala Folasade Giuseppe Grainne
    Harpreet Ifeoma Imelda Jamal Joginder Juanita Kwabena Kwame Lakshmi Leilani Malik Marisol
    Mbali Mehmet Mohan Nkechi Nomsa Olumide Padraig Priya Rashida Roisin Samira Sanjay Shanice
    Sibongile Siobhan Sipho Somchai Tariq Thandiwe Tunde Uchenna Vusi Wanjiku Xiomara Yolanda
    Yusuf Zainab Zodwa
""".split()  # noqa: SIM905 - read best as one string


def word_meant(typed: str, language: str = "en") -> str:
    (token,) = mended(cut(typed.casefold()), language)
    return token.word


@pytest.mark.parametrize("typed", HEARD)
def test_a_sign_is_found_by_its_sound(typed: str) -> None:
    assert word_meant(typed) == HEARD[typed]


SPANISH = {
    "allunas": "ayunas",
    "desmallarme": "desmayarme",
    "borrozo": "borroso",
    "bomitando": "vomitando",
    "nesesito": "necesito",
}


@pytest.mark.parametrize("typed", SPANISH)
def test_spanish_is_written_as_it_sounds(typed: str) -> None:
    assert word_meant(typed, "es") == SPANISH[typed]


@pytest.mark.parametrize("name", NAMES)
def test_no_name_is_a_sign(name: str) -> None:
    signs = {*SOUNDED["en"], *SOUNDED["es"]}
    assert word_meant(name) not in signs
    assert word_meant(name, "es") not in signs


def test_no_common_word_is_taken_for_another() -> None:
    slips = SLIPS.keys() | SLIPS_AT_HOME["en"].keys()
    taken = {word: word_meant(word) for word in REAL_WORDS if word not in slips}
    assert {w: meant for w, meant in taken.items() if meant not in {w, f"{w}g"}} == {}  # `comin`


@pytest.mark.parametrize("code", LEXICA)
def test_every_sign_is_filed_under_its_own_sound(code: str) -> None:
    sounds = Sounds(SOUNDED[code], (), code)
    assert all(sounds.sign(word) in SOUNDED[code] for word in SOUNDED[code] if len(word) > 3)
    assert [word for word in SOUNDED[code] if word not in no_slips(code)] == []


def test_slips_within_signs_are_those_that_sound_so() -> None:
    made: dict[str, str] = {}
    for code, lexicon in LEXICA.items():
        sounds = Sounds(SOUNDED[code], (), code)
        for phrase in chain.from_iterable(lexicon.symptoms.values()):
            for word in chain.from_iterable(map(spelled, phrase.split())):
                meant = sounds.sign(word)
                if meant and word not in SOUNDED[code] and word not in SOUND_LIKE_SIGNS:
                    made[word] = meant
    assert made == WITHIN_SIGNS


def test_a_word_meant_beside_another_stays_itself_elsewhere() -> None:
    assert all(before and typed and meant for (before, typed), meant in BESIDE.items())
    assert in_short("tummy pane all night", "") == "high tummy pane"
    assert in_short("having a hippo, 61", "") == "low having a hippo; 61 unstated"
    assert "low" not in in_short("saw a hippo at the zoo", "")
    assert in_short("walked half an our", "") == "did walked 30 min"
