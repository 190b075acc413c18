"""A slip of the finger never makes another number of what was meant.

Each letter but the first of a word is left out, doubled, or changes places with the next one.
What the whole number is, the words themselves say; the wordings are our own, no source.
"""

from collections.abc import Iterator
from datetime import datetime

import pytest

from bot.entries import Asked, Reading, Suggests, Symptom, Understood
from bot.parser import read
from bot.parser.misspelt import no_slips
from bot.parser.vocabulary.slips import SLIPS
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:04:00+02:00")


def slips(word: str) -> Iterator[str]:
    """The word with one slip in it, where it is then no other word that is known."""
    known = no_slips("en")
    for at in range(1, len(word)):
        for typed in (
            word[:at] + word[at + 1 :],
            word[:at] + word[at] + word[at:],
            word[:at] + word[at + 1 : at + 2] + word[at] + word[at + 2 :],
        ):
            if typed != word and typed not in known:
                yield typed


def values(text: str, unit: Unit, language: str) -> Understood:
    return read(text, at=AT, unit=unit, language=language, asked=Asked.AFTER_MEAL)


SAID = [
    *(("en", Unit.MG_DL, said) for said in (
        "one hundred and forty two", "two hundred and three", "one hundred eighteen",
        "hundred and seventy seven", "one fifty five", "ninety eight", "one hundred and twelve",
        "two hundred thirty four", "one hundred and sixty six", "hundred and ninety nine",
    )),
    *(("en", Unit.MMOL_L, said) for said in (
        "seven point eight", "eleven point five", "five point four", "thirteen point nine",
        "twelve point three", "eight point seven",
    )),
    *(("es", Unit.MG_DL, said) for said in (
        "ciento cuarenta y dos", "ciento sesenta y cinco", "noventa y ocho", "doscientos treinta",
        "ciento diecinueve", "ciento setenta y cuatro", "ciento veinte",
    )),
    *(("es", Unit.MMOL_L, said) for said in (
        "siete coma ocho", "nueve coma cuatro", "siete punto cinco",
    )),
]  # fmt: skip


@pytest.mark.parametrize(("language", "unit", "said"), SAID)
def test_a_number_in_words_is_read_as_meant_or_asked_about(
    language: str, unit: Unit, said: str
) -> None:
    (meant,) = values(said, unit, language).entries
    words = said.split()
    typed = [
        " ".join([*words[:at], slip, *words[at + 1 :]])
        for at, word in enumerate(words)
        for slip in slips(word)
        if len(word) > 3
    ]
    answers = {text: values(text, unit, language) for text in typed}
    other = {
        text: answer
        for text, answer in answers.items()
        if any(isinstance(each, Reading) and each != meant for each in answer.entries)
    }
    assert not other
    right = sum(answer.entries == (meant,) for answer in answers.values())
    assert right >= 0.85 * len(typed)


@pytest.mark.parametrize(
    "text",
    [
        "a hundred and something after lunch", "hundred odd after dinner", "two hundred and change",
        "one hundred and frzt after dinner", "one hundred and frzt two",
    ],
)  # fmt: skip
def test_a_number_told_only_roughly_is_asked_about(text: str) -> None:
    answer = values(text, Unit.MG_DL, "en")
    assert not [each for each in answer.entries if isinstance(each, Reading)]
    assert answer.ask is not None


@pytest.mark.parametrize(
    "text",
    [
        "did hundreds of squats", "elevens and toast", "rugby sevens 40 min", "on the eighth floor",
        "dozens of steps", "twelves", "hundreds and thousands on toast",
    ],
)  # fmt: skip
@pytest.mark.parametrize("unit", Unit)
def test_several_of_a_number_are_no_number(text: str, unit: Unit) -> None:
    answer = read(text, at=AT, unit=unit, language="en")
    assert not [each for each in answer.entries if isinstance(each, Reading)]


FELT = {
    "i feel shaky": Suggests.LOW, "i feel faint": Suggests.LOW, "so dizzy": Suggests.LOW,
    "chest pain": Suggests.EMERGENCY, "very thirsty": Suggests.HIGH, "keep peeing": Suggests.HIGH,
    "breath smells of fruit": Suggests.EMERGENCY, "blurred vision": Suggests.HIGH,
    "she cannot be woken": Suggests.EMERGENCY, "trembling": Suggests.LOW,
    "belly pain": Suggests.HIGH,
    "me duele el pecho": Suggests.EMERGENCY, "tengo mucha sed": Suggests.HIGH,
    "mareado": Suggests.LOW, "temblando": Suggests.LOW, "orino mucho": Suggests.HIGH,
}  # fmt: skip


@pytest.mark.parametrize("slip", SLIPS)
def test_a_slip_that_is_listed_is_no_word_of_another_list(slip: str) -> None:
    assert SLIPS[slip] in no_slips("en")
    assert SLIPS[slip] not in SLIPS


@pytest.mark.parametrize("text", FELT)
def test_a_sign_is_found_with_nearly_any_slip_in_its_words(text: str) -> None:
    words = text.split()
    typed = [
        " ".join([*words[:at], slip, *words[at + 1 :]])
        for at, word in enumerate(words)
        for slip in slips(word)
        if len(word) > 4
    ]
    found = [
        any(
            isinstance(each, Symptom) and each.suggests is FELT[text]
            for each in read(one, at=AT, unit=Unit.MG_DL, language="es").entries
        )
        for one in typed
    ]
    missed = [one for one, was in zip(typed, found, strict=True) if not was]
    assert len(missed) <= 0.25 * len(typed), missed
