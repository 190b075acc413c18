"""An educator invited in Spanish reads Spanish and is understood in it, from joining on."""

import re

import pytest

from bot.__main__ import main
from bot.commands.invite import _language
from bot.participants import Invitation, Role
from tests.educator.classroom import Classroom

#: Words of nearly every English sentence, and of no Spanish one.
ENGLISH = re.compile(r"\b(the|your|you|them|with|text|they|and|from)\b", re.IGNORECASE)

TYPED = (
    "ayuda", "lista", "alertas", "Ana", "comidas Ana", "gráfica Ana", "página Ana", "pasos Ana",
    "metas Ana", "metas Ana 90-120 160", "metas Ana 20-30 40", "metas Ana", "bajo Ana 75",
    "alto Ana 220", "alto Ana 9", "autorizar Ana", "menos pruebas Ana", "sí", "ayuno Ana",
    "ayuno Ana 2026-03-10 a 2026-03-19", "ayuno Ana 2020-01-01 a 2020-01-02", "ayuno Ana fin",
    "plan Ana", "terminar plan Ana", "nota Ana: nos vemos el lunes", "nota Ana", "apodo Ana Anita",
    "apodo", "ver nadie", "grupo", "horario lun-jue 9-13", "horario", "suplente NADIE",
    "sin suplente", "ausente", "volví", "vista 9", "cancelar", "cualquier cosa", "aceptar X",
    "invitar", "sí", "Bogotá", "mg/dL", "klingon", "Español", "que lo diga", "no sé", "no",
    "ninguno", "123", "Beto",
)  # fmt: skip


@pytest.fixture
def room() -> Classroom:
    room = Classroom()
    room.invite("MAESTRA1", Invitation(role=Role.EDUCATOR, zone="UTC", language="es"))
    return room


def joined(room: Classroom) -> str:
    room.says("edu", "/start MAESTRA1", "sí", "lun-vie 8:00-16:00", "ninguno")
    return room.whose("edu")


def test_every_answer_is_in_spanish(room: Classroom) -> None:
    edu = joined(room)
    room.participant("ana", edu, language="es", may_go_low=None)
    room.say("edu", "apodo ANA Ana")
    room.say("ana", "48")
    for before, after in ((110, 150), (120, 190)):
        room.say("ana", f"{before} antes, arroz")
        room.passes(hours=2)
        room.say("ana", str(after))
    for text in TYPED:
        assert room.say("edu", text), text
    room.passes(days=15)
    read = room.texts("edu")
    assert len(read) > len(TYPED)
    for text in read:
        assert not ENGLISH.search(text), text
    for letter in room.letters("edu"):
        for button in letter.buttons:
            assert not ENGLISH.search(button), button
    assert room.parked() == []


def test_english_would_be_noticed(room: Classroom) -> None:
    other = Classroom()
    other.educator("edu")
    assert any(ENGLISH.search(text) for text in other.texts("edu"))


def test_an_invitation_goes_on_in_the_educators_language(room: Classroom) -> None:
    joined(room)
    answers = ("invitar", "sí", "Bogotá", "mg/dL", "español", "que lo diga", "no", "no", "ninguno")
    [told] = room.says("edu", *answers, "123", "Beto")
    code = told.split("/start ")[1].split()[0]
    [welcome] = room.say("beto", f"/start {code}")
    assert not ENGLISH.search(welcome)


def test_a_language_told_by_its_name_is_spoken_from_then_on() -> None:
    room = Classroom()
    edu = room.educator("edu")
    room.participant("ana", edu)
    assert room.say("edu", "Español") == [
        "Ahora le escribo en español. Lo que leen sus participantes queda como ellos eligieron."
    ]
    assert "Sus participantes: 1" in room.say("edu", "lista")[0]
    assert "I write in English" in room.say("edu", "inglés")[0]
    assert "Your participants: 1" in room.say("edu", "roster")[0]
    assert room.person("ANA").language == "en"


@pytest.mark.parametrize("code", ["en", "es", "es-MX", "EN-gb"])
def test_spoken_languages_are_taken(code: str) -> None:
    assert _language(code) == code


@pytest.mark.parametrize("code", ["fr", "sw", "", "spanish", "e"])
def test_others_are_refused_by_name(code: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as refused:
        main(["invite", "--language", code])
    assert refused.value.code == 2
    assert "choose from en, es" in capsys.readouterr().err
