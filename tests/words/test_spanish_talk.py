"""A talk in Spanish from the code to `parar`: joining, a day and a week, through the live parts."""

import re
from datetime import datetime, time
from typing import Any

import pytest

from bot.localtime import zone_named
from bot.messages import Incoming
from bot.participants import Enrolment, Invitation, Participant
from bot.turns.enrolling import clock_of, join
from bot.turns.turn import Joining
from bot.words.language import ENGLISH, SPANISH
from tests.replay.told import Story, of_type, spoken, texts
from tests.words.test_spanish import ENGLISH_WORDS

MORNING = datetime.fromisoformat("2026-03-02T07:00:00-05:00")
INVITED = Invitation(language="es", educator="EDU", emergency_number="911")


def joining(*told: str) -> tuple[list[Joining], Participant | None]:
    """What each message of somebody who joins brings, and who they are at the end."""
    enrolment: Enrolment | None = None
    answers = []
    for number, text in enumerate(("/start ABCDEF12", *told)):
        incoming = Incoming(update=number, chat="1", message=str(number), at=MORNING, text=text)
        answer = join(enrolment, INVITED, incoming, now=MORNING, new_id="ana")
        answers.append(answer)
        enrolment = answer.enrolment
    return answers, answers[-1].participant


def spanish_day(**enrol: Any) -> Story:
    return Story(offset="-05:00", language="es", zone="America/Bogota", **enrol)


def test_joining_takes_spanish_answers() -> None:
    answers, person = joining("¡Sí!", "no", "mmol", "Bogotá", "a las 13", "No sé", "sí")
    assert person is not None
    assert (person.language, person.unit.value, person.zone) == ("es", "mmol/L", "America/Bogota")
    assert person.main_meal == time(13)
    assert (person.may_go_low, person.ketone_risk, person.tell_educator) == (None, True, False)
    for answer in answers:
        for saying in answer.says:
            assert not ENGLISH_WORDS.search(saying.text), saying.text


def test_an_answer_that_is_not_understood_is_asked_for_again() -> None:
    answers, _ = joining("quizás")
    (saying,) = answers[-1].says
    assert saying.text == SPANISH.enrolling.yes_or_no
    assert saying.buttons == ("sí", "no")


@pytest.mark.parametrize(
    ("text", "young"),
    [("tengo 15 años", True), ("Tengo 15", True), ("sí, tengo 62 años", False),
     ("tengo 5 años con diabetes", False), ("sí, tengo diabetes hace 5 años", False)],
)  # fmt: skip
def test_who_says_to_be_younger_than_18_is_told_that_this_is_for_adults(
    text: str, young: bool
) -> None:
    answers, _ = joining(text)
    (saying,) = answers[-1].says
    assert (saying.text == SPANISH.enrolling.too_young) is young


@pytest.mark.parametrize(
    ("text", "clock"),
    [("13:00", "13:00"), ("a las 13", "13:00"), ("a la 1 de la tarde", "13:00"),
     ("1 pm", "13:00"), ("8 pm", "20:00"), ("at 1 pm", "13:00"), ("varía", None)],
)  # fmt: skip
def test_the_hour_of_a_meal_is_read_in_both_languages(text: str, clock: str | None) -> None:
    assert clock_of(text, MORNING) == clock


@pytest.mark.parametrize(
    ("words", "zone"),
    [("Bogotá", "America/Bogota"), ("lima", "America/Lima"), ("Asunción", "America/Asuncion"),
     ("Ciudad de México", "America/Mexico_City"), ("la habana", "America/Havana"), ("Xyz", None)],
)  # fmt: skip
def test_a_city_is_found_under_its_spanish_name(words: str, zone: str | None) -> None:
    assert zone_named(words) == zone


def test_a_pair_is_asked_about_and_said_back_in_spanish() -> None:
    played = spanish_day().says("12:50", "118, arroz y frijoles").says("14:55", "154").play()
    first, closed = texts(played, "reply")
    assert "118 mg/dL antes de comer: dentro de su meta (80 a 130)." in first
    assert "Le preguntaré a las 14:50." in first
    (prompt,) = texts(played, "prompt")
    assert prompt.startswith("Pasaron dos horas desde arroz y frijoles.")
    assert "154 mg/dL dos horas después de arroz y frijoles: dentro de su meta" in closed
    assert "Subió 36, desde 118 mg/dL." in closed
    (pair,) = of_type(played, "pair")
    assert (pair["status"], pair["rise"]) == ("complete", 36)


def test_a_comma_is_a_decimal_sign_and_the_answer_has_the_meters_point() -> None:
    played = spanish_day(unit="mmol/L").says("12:50", "7,8 antes, sopa").play()
    (reading,) = of_type(played, "reading")
    assert reading["value"] == 7.8
    assert "7.8 mmol/L antes de comer" in next(iter(texts(played, "reply")))


def test_a_bare_number_is_placed_by_a_button() -> None:
    for button, moment in zip(
        SPANISH.replies.which_moment_buttons,
        ("before_meal", "after_meal", "fasting", "unstated"),
        strict=True,
    ):
        played = spanish_day().says("18:00", "145").says("18:01", button).play()
        (reading,) = of_type(played, "reading")
        assert reading["moment"] == moment, button


@pytest.mark.parametrize("unit", ["mmol", "es mmol/L", "son mmol"])
def test_a_unit_is_taken_from_the_answer(unit: str) -> None:
    played = spanish_day().says("18:00", "7.8").says("18:01", unit).play()
    (reading,) = of_type(played, "reading")
    assert (reading["value"], reading["unit"]) == (7.8, "mmol/L")


@pytest.mark.parametrize(
    ("language", "told"),
    [("es", "a la 1"), ("es", "1"), ("es", "a las 13:00"), ("es", "comí a la 1"),
     ("es", "hace dos horas"), ("en", "at 1"), ("en", "1"), ("en", "13:00"),
     ("en", "two hours ago")],
)  # fmt: skip
def test_the_first_bite_is_read_from_an_answer(language: str, told: str) -> None:
    dish = "144 después de arroz con pollo" if language == "es" else "144 after rice"
    played = (
        Story(offset="-05:00", language=language, zone="America/Bogota")
        .says("15:00", dish)
        .says("15:00", told)
        .play()
    )
    (meal,) = of_type(played, "meal")
    assert meal["started_at"][11:16] == "13:00"


@pytest.mark.parametrize("told", ["listo, 15 min", "ya terminé, 15 minutos", "ya, 15 min"])
def test_an_activity_under_way_is_ended(told: str) -> None:
    played = spanish_day().says("19:00", "voy a caminar").says("19:20", told).play()
    (activity,) = of_type(played, "activity")
    assert (activity["minutes"], activity["ended_at"][11:16]) == (15, "19:20")


def test_a_low_is_treated_first_and_followed_up() -> None:
    played = (
        spanish_day(may_go_low=True, emergency_number="911")
        .says("17:00", "62")
        .says("17:03", "jugo de naranja")
        .says("17:16", "92")
        .passes("18:20")
        .play()
    )
    assert spoken(played, "caution", "prompt") == [
        ("17:00", "caution", "low"),
        ("17:15", "prompt", "recheck"),
        ("18:16", "prompt", "recheck"),
    ]
    (caution,) = texts(played, "caution")
    assert caution.startswith("Tome 15 g de azúcar rápida ahora: 1 cucharada de azúcar")
    assert "62 mg/dL es bajo." in caution
    assert "Llame al 911 si no puede tragar" in caution
    sugar, back = texts(played, "reply")
    assert sugar == "Jugo de naranja: anotado, para el valor bajo."
    assert back.startswith("92 mg/dL: ya volvió a 70 mg/dL o más.")


def test_an_emergency_is_told_whom_to_call_first() -> None:
    played = spanish_day(emergency_number="911").says("10:00", "mi papá se desmayó").play()
    everything = [line["text"] for line in played.sent]
    assert everything
    assert "911" in everything[0]
    own = spanish_day(emergency_number="911").says("10:00", "me desmayé").play()
    assert next(iter(texts(own, "caution"))).startswith("Llame al 911 ahora.")


def test_a_correction_and_a_removal() -> None:
    played = (
        spanish_day()
        .says("12:50", "126 antes, arroz")
        .says("12:52", "perdón, 162")
        .says("12:53", "no arroz, pan")
        .says("13:30", "50 tiras")
        .says("13:31", "deshacer")
        .play()
    )
    *_, mended, dish, strips, removed = texts(played, "reply")
    assert mended.startswith("Cambiado: ahora 162 mg/dL, no 126 mg/dL.")
    assert dish.startswith("Cambiado: Pan, no arroz.")
    assert strips.startswith("50 tiras anotadas.")
    assert removed == SPANISH.replies.removed_last
    (meal,) = of_type(played, "meal")
    assert meal["text"] == "pan"


def test_the_week_its_question_and_the_answers() -> None:
    played = (
        spanish_day()
        .says("12:50", "118, arroz y frijoles")
        .says("14:55", "154")
        .passes("2026-03-09 09:00")
        .says("2026-03-09 09:01", "menos")
        .says("2026-03-09 09:02", "lo mismo")
        .play()
    )
    (digest,) = texts(played, "digest")
    assert "arroz" in digest.casefold()
    assert not ENGLISH_WORDS.search(digest)
    answers = [(line["about"], line["how"]) for line in of_type(played, "answer")]
    assert answers == [("hunger", "less"), ("tiredness", "same")]
    assert list(texts(played, "reply"))[-1] == SPANISH.requests.answered


def test_after_parar_only_a_caution_is_sent() -> None:
    played = (
        spanish_day(main_meal="13:00")
        .says("09:00", "parar")
        .says("11:40", "62")
        .passes("2026-03-10 01:00")
        .play()
    )
    assert spoken(played, "caution", "prompt", "digest", "note") == [("11:40", "caution", "low")]
    (stopped,) = texts(played, "reply")
    assert stopped == SPANISH.requests.stopped


def test_erasing_takes_a_spanish_yes() -> None:
    kept = spanish_day().says("12:50", "118, arroz").says("13:00", "borrar").says("13:01", "no")
    assert list(texts(kept.play(), "reply"))[-1] == SPANISH.requests.not_erased
    gone = spanish_day().says("12:50", "118, arroz").says("13:00", "borrar").says("13:01", "Sí")
    assert list(texts(gone.play(), "reply"))[-1] == SPANISH.requests.erased


def test_the_language_can_be_changed_both_ways() -> None:
    played = Story().says("09:00", "español").says("09:01", "ayuda").says("09:02", "english").play()
    assert list(texts(played, "reply")) == [
        SPANISH.requests.language, SPANISH.requests.help, ENGLISH.requests.language,
    ]  # fmt: skip


def test_nothing_of_a_whole_day_is_said_in_english() -> None:
    story = spanish_day(main_meal="13:00", may_go_low=True)
    for clock, text in (
        ("07:05", "hola"), ("07:30", "112 al despertar"), ("12:50", "118, arroz y frijoles"),
        ("12:51", "y plátano"), ("13:00", "comiendo"), ("15:05", "204"), ("16:00", "caminé 20 min"),
        ("16:12", "140"), ("17:00", "62"), ("17:16", "92"), ("18:00", "145"), ("18:20", "¿?"),
        ("18:21", "puedo comer mango?"), ("19:40", "262"), ("19:50", "255 otra vez"),
        ("20:00", "HI"), ("20:05", "me siento temblorosa"), ("20:10", "tomé la pastilla dos veces"),
        ("20:12", "cuánta insulina me pongo?"), ("20:21", "registro"), ("20:22", "metas"),
        ("20:23", "siguiente paso"), ("20:24", "noches esta semana"), ("20:25", "asdf qwer"),
        ("20:26", "estoy embarazada"), ("20:27", "presión 120/80"), ("20:28", "en 10"),
        ("20:29", "resumen"), ("20:30", "exportar"), ("20:31", "pausa"), ("20:32", "reanudar"),
    ):  # fmt: skip
        story.says(clock, text)
    said = [line["text"] for line in story.passes("2026-03-09 12:00").play().sent]
    assert len(said) > 40
    for text in said:
        assert not ENGLISH_WORDS.search(text), text
        assert not re.search(r"[{}]|None|  ", text), text
