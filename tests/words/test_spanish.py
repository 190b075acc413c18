"""Spanish says all that English says: the same gaps, nothing left over, and as easy to read.

What must be said, and what never may be, is the project's table of cautions; its sources are in
docs/safety.md. Reading ease: tests/words/spanish_reading.py names the measure and its source.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from datetime import datetime, timedelta
from itertools import product

import pytest

from bot.caution import Caution, Level
from bot.caution.ladder import Recheck, RecheckKind
from bot.educator.educator import Hours
from bot.entries import Answer, Asked, By, Moment, Reading, Request, Understood, What
from bot.glucose.height import height
from bot.glucose.week import Week
from bot.parser import read
from bot.programme.compare import compare_steps
from bot.programme.suggest import suggest
from bot.turns.teaching_reading import hours_of, wished
from bot.units import Unit
from bot.words.cautions import caution_words, recheck_words
from bot.words.digest import MOST_CHARACTERS, MOST_WORDS, digest_words
from bot.words.educator import Wish
from bot.words.language import ENGLISH, LANGUAGES, SPANISH, language
from demo.weeks import WEEKS, crowded
from tests.caution.every_text import cautions, people
from tests.caution.talk import at
from tests.words.spanish_reading import SIXTH_GRADE, ease, syllables

NOON = datetime.fromisoformat("2026-03-02T12:00:00-05:00")


def heard(text: str, asked: Asked | None = None) -> Understood:
    """What the reader makes of a text in a Spanish talk."""
    return read(text, at=NOON, unit=Unit.MG_DL, language="es", asked=asked)


def strings(value: object, name: str = "") -> Iterator[tuple[str, str]]:
    """Every sentence in a value, by its place; sets of words that people type are none."""
    if isinstance(value, str):
        yield name, value
    elif isinstance(value, tuple):
        for place, one in enumerate(value):
            yield from strings(one, f"{name}[{place}]")
    elif isinstance(value, Mapping):
        for key, one in value.items():
            yield from strings(one, f"{name}[{key}]")
    elif is_dataclass(value):
        for field in fields(value):
            yield from strings(getattr(value, field.name), f"{name}.{field.name}")


#: Words that people type, as many as a language has.
TYPED = re.compile(r"\.(wishes|day_names|\w+_words|ask_them|requests\.how)\b|\.code$")
ENGLISH_BY_PLACE = {place: text for place, text in strings(ENGLISH) if not TYPED.search(place)}
SPANISH_BY_PLACE = {place: text for place, text in strings(SPANISH) if not TYPED.search(place)}
FOR_PARTICIPANTS = {
    place: text
    for place, text in SPANISH_BY_PLACE.items()
    if not re.match(r"\.(educator|asks|record_page)\.", place)
}


# ── The same as English ──────────────────────────────────────────────────────


def test_spanish_is_spoken_where_it_is_asked_for() -> None:
    assert LANGUAGES["es"] is SPANISH
    assert language("es-419") is SPANISH
    assert language("es_MX".replace("_", "-")) is SPANISH
    assert language("sw") is ENGLISH


def test_every_sentence_of_english_has_its_own() -> None:
    assert SPANISH_BY_PLACE.keys() == ENGLISH_BY_PLACE.keys()
    empty = {place for place, text in ENGLISH_BY_PLACE.items() if not text}
    assert {place for place, text in SPANISH_BY_PLACE.items() if not text} == empty


@pytest.mark.parametrize("place", SPANISH_BY_PLACE)
def test_the_gaps_are_those_of_english(place: str) -> None:
    def gaps(text: str) -> set[str]:
        # `Most` and `most` are one meal, at the start of a sentence or within it
        return {gap.casefold() for gap in re.findall(r"\{\w*\}", text)}

    assert gaps(SPANISH_BY_PLACE[place]) == gaps(ENGLISH_BY_PLACE[place])


#: Texts that are the same in both languages: no words, units, the word `no`, letters of a meter.
SAME = re.compile(r"[\W\d_]*|no|mg/dL|mmol/L|abril|min")


def test_no_sentence_is_left_in_english() -> None:
    left = [
        place
        for place, text in SPANISH_BY_PLACE.items()
        if text == ENGLISH_BY_PLACE[place]
        and not SAME.fullmatch(re.sub(r"\{\w+\}|\bmin\b", "", text).strip())
    ]
    assert not left


ENGLISH_WORDS = re.compile(
    r"\b(the|your?|and|with|text|test|tests|meal|please|is|are|before|after|of|for|low|high)\b",
    re.I,
)


@pytest.mark.parametrize("place", SPANISH_BY_PLACE)
def test_no_english_word_stands_in_a_sentence(place: str) -> None:
    assert not ENGLISH_WORDS.search(re.sub(r"\{\w+\}", "", SPANISH_BY_PLACE[place]))


def test_every_reader_is_spoken_to_as_usted() -> None:
    """`tú`, its pronouns and its commands: a clinic says `usted` to older adults (common practice,
    no source)."""
    familiar = re.compile(
        r"\b(?i:tú|tu|tus|te|ti|contigo|vos|puedes|tienes|quieres|eres|estás|sientes|vosotros)\b"
        r"|(?:^|[.?:] )(?:Toma|Mide|Escribe|Llama|Lava|Come|Manda|Pide|Lleva|Usa|Mira)\b"
    )
    assert familiar.search("Mide ahora.")
    for place, text in SPANISH_BY_PLACE.items():
        assert not familiar.search(text), (place, text)


# ── What must be said, and what never may be ─────────────────────────────────


def said(caution: Caution, **who: object) -> str:
    person = replace(next(people()), **who)  # type: ignore[arg-type]
    return caution_words(caution, person, SPANISH.cautions, now=at(0))


CAUTIONED = {
    caution_words(caution, who, SPANISH.cautions, now=at(0), by=by): caution
    for caution, who, by in product(tuple(cautions()), tuple(people()), By)
}


def of(level: Level, **flags: object) -> list[str]:
    return [
        text
        for text, caution in CAUTIONED.items()
        if caution.level is level
        and all(getattr(caution, name) == value for name, value in flags.items())
    ]


FIRST_WORDS = [
    (Level.EMERGENCY, {}, r"Llame al (112|número de emergencias de su zona) ahora\."),
    (Level.VERY_LOW, {"late": False}, r"(Tome|Dele) 15 g de azúcar rápida ahora"),
    (Level.LOW, {"late": False}, r"(Tome|Dele) 15 g de azúcar rápida ahora"),
    (Level.LOW, {"late": True}, r"Mida ahora\."),
    (
        Level.VERY_HIGH,
        {"late": False, "repeat": False},
        r"Lave y seque (sus manos|las manos de la persona)\. Luego mida otra vez, ahora mismo\.",
    ),
    (
        Level.HIGH,
        {"late": False, "repeat": False, "planned": False},
        r"Lave y seque (sus manos|las manos de la persona)\. Luego mida otra vez, ahora mismo\.",
    ),
    (Level.HIGH, {"late": True, "planned": False}, r"Mida ahora\."),
    (Level.TWO_DAYS_VERY_HIGH, {}, r"Llame hoy (a su|al) equipo de salud"),
    (Level.REPEATED_HIGH, {}, r"Llame esta semana (a su|al) equipo de salud"),
    (Level.REPEATED_LOW, {}, r"Llame esta semana (a su|al) equipo de salud"),
    (Level.SYMPTOMS, {"wrong_dose": True}, r"Llame (a su|al) equipo de salud .*ahora\."),
]
IN_EVERY = [
    (Level.EMERGENCY, r"no está bien despierta, no le dé nada por la boca"),
    (Level.EMERGENCY, r"necesita 15 g de azúcar rápida ahora"),
    (Level.EMERGENCY, r"glucagón si se lo recetaron"),
    (Level.VERY_LOW, r"(No maneje|no debe manejar)\."),
    (Level.VERY_LOW, r"a solas|No deje sola"),
    (Level.VERY_LOW, r"Mida otra vez 15 minutos después del azúcar"),
    (Level.VERY_LOW, r"no puede tragar, si se pone peor o si no mejora en 15 minutos"),
    (Level.VERY_LOW, r"Llame hoy (a su|al) equipo de salud"),
    (
        Level.LOW,
        r"(No maneje|no debe manejar) hasta que vuelva a (70 mg/dL|3\.9 mmol/L) y se sient",
    ),
    (Level.LOW, r"falta más de una hora para (su|la) próxima comida"),
    (Level.VERY_HIGH, r"vomita o le duele la barriga"),
    (Level.VERY_HIGH, r"huele a fruta o si respira rápido y hondo"),
    (Level.VERY_HIGH, r"mucho sueño o confusión"),
    (Level.REPEATED_LOW, r"Solo (ellos|el equipo de salud) puede[n]? revisar (su|la) medicina"),
]


@pytest.mark.parametrize(("level", "flags", "first"), FIRST_WORDS)
def test_what_to_do_comes_first(level: Level, flags: dict[str, object], first: str) -> None:
    texts = of(level, **flags)
    assert texts
    for text in texts:
        assert re.match(first, text), text


@pytest.mark.parametrize(("level", "must"), IN_EVERY)
def test_what_every_caution_of_a_level_says(level: Level, must: str) -> None:
    texts = of(level)
    assert texts
    for text in texts:
        assert re.search(must, text), text


def test_nobody_watches_and_the_care_team_comes_last() -> None:
    for text, caution in CAUTIONED.items():
        assert "Nadie vigila este chat día y noche." in text
        assert text.endswith("va primero.") is (caution.level is not Level.EMERGENCY)


def test_number_and_unit_stand_as_the_meter_shows_them() -> None:
    shown = r"(62|262) mg/dL|(3\.4|14\.5) mmol/L"
    for text in (*of(Level.LOW), *of(Level.HIGH)):
        assert re.search(shown, text), text


def test_a_helper_is_told_what_to_do_for_the_person() -> None:
    for caution in cautions():
        text = caution_words(caution, next(people()), SPANISH.cautions, now=at(0), by=By.HELPER)
        assert not re.search(r"Tome 15 g|sus manos|No maneje|Llame[^.]* a su equipo", text), text


def test_every_gap_is_filled_and_no_text_is_too_long() -> None:
    for text in CAUTIONED:
        assert not re.search(r"[{}]|None|  |\.\.| \.|\ba el\b|\bde el\b", text), text
        assert len(text) <= 1000  # Spanish takes a tenth more than English, which has 900
        for sentence in re.split(r"(?<=[.?]) ", text):
            assert len(sentence.split()) <= 27, sentence


NEVER = {
    "an amount of a drug": (
        r"\d[\d.,]*\s*(unidad(es)?|UI|mg\b(?!/dL)|mcg|µg|pastillas?|tabletas?|dosis)\b"
    ),
    "a drug": (
        r"insulina|metformina|gli[a-z]+(ida|ina)\b|sulfonilurea|gliptina|gliflozina|aspirina|"
        r"paracetamol|ibuprofeno|acarbosa|miglitol|antibiótic|esteroide"
    ),
    "taking, leaving out or changing a drug": (
        r"\b(tome|deje|salte|pare|empiece|doble|reduzca|suba|baje|inyecte|ajuste|ponga|use)\b[^.:]*"
        r"\b(medicinas?|medicamentos?|pastillas?|tabletas?|inyección|remedios?)\b"
    ),
    "a dose": r"\bd[oó]sis\b",
    "a diagnosis": (
        r"cetoacid|hipogluc|hipergluc|hiperosmolar|\bcoma (diab|hip)|derrame|infarto|infección|"
        r"usted tiene (un|una|la|el)\b|diagn[oó]st|deshidrat|A1C"
    ),
    "praise beside bad news": r"!|¡|excelente|felici[dt]|genial|perfecto|bien hecho|orgull",
    "a promise": r"\b(no se preocupe|tranquil[oa]|sin peligro|estará bien|no es nada)\b",
    "jargon": r"\b(glucemi|glicemi|carbohidrat|posprandial|bolo|basal|síntoma|consulte|administr)",
    "exercise at a high value": r"\b(camine|caminar|ejercicio|corra|trote|paseo)\b",
}


@pytest.mark.parametrize("what", NEVER)
def test_no_sentence_about_safety_names(what: str) -> None:
    pattern = re.compile(NEVER[what], re.IGNORECASE)
    for place, text in strings(SPANISH.cautions):
        assert pattern.search(text.replace("tabletas o gel de glucosa", "")) is None, (place, text)


#: The questions of joining ask about tablets, and an invitation speaks of them to an educator.
ASKS_ABOUT_MEDICINE = re.compile(r"\.enrolling\.(may_go_low|ketone_risk)")


@pytest.mark.parametrize(
    "what", ["an amount of a drug", "a drug", "taking, leaving out or changing a drug", "a dose"]
)
def test_no_sentence_for_participants_names(what: str) -> None:
    pattern = re.compile(NEVER[what], re.IGNORECASE)
    for place, text in FOR_PARTICIPANTS.items():
        if ASKS_ABOUT_MEDICINE.match(place):
            continue
        assert pattern.search(text.replace("tabletas o gel de glucosa", "")) is None, (place, text)


@pytest.mark.parametrize(
    ("what", "planted"),
    [
        ("an amount of a drug", "Póngase 4 unidades ahora."),
        ("a drug", "Su insulina actúa."),
        ("a drug", "Pregunte por la glimepirida o la gliclazida."),
        ("taking, leaving out or changing a drug", "Salte su próxima pastilla."),
        ("taking, leaving out or changing a drug", "Tome una tableta más."),
        ("a dose", "Cuide la dosis."),
        ("a diagnosis", "Esto puede ser cetoacidosis."),
        ("a diagnosis", "Tiene hipoglucemia."),
        ("praise beside bad news", "¡Muy bien!"),
        ("a promise", "No se preocupe."),
        ("jargon", "Coma un carbohidrato."),
        ("exercise at a high value", "Camine un poco y baja."),
    ],
)
def test_the_patterns_bite(what: str, planted: str) -> None:
    assert re.search(NEVER[what], planted, re.IGNORECASE)


# ── How easy it reads ────────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("word", "count"),
    [("día", 2), ("energía", 4), ("aún", 2), ("leer", 2), ("agua", 2), ("que", 1), ("médico", 3),
     ("guerra", 2), ("muy", 1), ("y", 1), ("ahora", 3), ("cuidado", 3), ("prohíbe", 3),
     ("vergüenza", 3), ("después", 2), ("siguiente", 3), ("hoy", 1), ("118", 1)],
)  # fmt: skip
def test_syllables_are_counted_as_spoken(word: str, count: int) -> None:
    """By the rules of the language (hiatus, diphthong), from memory."""
    assert syllables(word) == count


def test_hard_words_are_found_hard() -> None:
    assert ease("La administración inmediata de carbohidratos es imprescindible.") < SIXTH_GRADE
    assert ease("Lave sus manos y mida otra vez.") > SIXTH_GRADE


def test_every_caution_reads_at_sixth_grade_or_easier() -> None:
    for text in CAUTIONED:
        assert ease(text) >= SIXTH_GRADE, (ease(text), text)


def test_every_recheck_reads_at_sixth_grade_or_easier_and_names_no_value() -> None:
    for kind, who, by in product(RecheckKind, tuple(people()), By):
        recheck = Recheck(key="", due_at=at(0), kind=kind, cause=1, until=at(10))
        text = recheck_words(recheck, who, SPANISH.cautions, by=by)
        assert ease(text) >= SIXTH_GRADE, text
        assert not re.search(r"\d", text.replace("112", "")), text
        assert "Nadie vigila este chat día y noche." in text


@pytest.mark.parametrize("place", FOR_PARTICIPANTS)
def test_every_sentence_for_participants_reads_at_sixth_grade_or_easier(place: str) -> None:
    plain = re.sub(r"\{\w+\}", "8", FOR_PARTICIPANTS[place])
    if len(plain.split()) >= 9:  # a grade of fewer words says nothing
        assert ease(plain) >= SIXTH_GRADE, (ease(plain), plain)


FROM_THE_EDUCATOR = (
    "left", "no_educator", "goals_changed_note", "limits_changed_note", "plan_note", "note",
)  # fmt: skip


@pytest.mark.parametrize("name", FROM_THE_EDUCATOR)
def test_what_an_educator_sends_a_participant_is_easy_to_read(name: str) -> None:
    plain = re.sub(r"\{\w+\}", "8", getattr(SPANISH.educator, name))
    assert ease(plain) >= SIXTH_GRADE, (ease(plain), plain)


# ── The week ─────────────────────────────────────────────────────────────────


def told(week: Week, *, so_far: bool = False) -> str:
    where = height(week.complete, week.participant)
    compared = compare_steps(week.steps)
    last = compared[-1] if compared else None
    more = last.all_meals.more_pairs if last is not None else None
    return digest_words(
        week,
        suggestion=suggest(week, height=where, more_pairs=more),
        sentences=SPANISH.digest,
        comparison=last,
        height=where,
        answers=(Answer(about="hunger", how="less"), Answer(about="tiredness", how="same")),
        so_far=so_far,
    )


@pytest.mark.parametrize("shift", range(6))
@pytest.mark.parametrize("name", WEEKS)
def test_every_week_is_short_and_plain_in_every_way_of_saying_it(name: str, shift: int) -> None:
    make, so_far = WEEKS[name]
    week = make()
    text = told(replace(week, to_date=week.to_date + timedelta(weeks=shift)), so_far=so_far)
    assert len(text.split()) <= MOST_WORDS
    assert len(text) <= MOST_CHARACTERS
    assert "{" not in text
    if name not in ("scripts", "long_names"):  # the person's own words are not ours to grade
        assert ease(text) >= SIXTH_GRADE, (ease(text), text)


def test_a_crowded_week_keeps_to_its_words() -> None:
    for pairs in (5, 20, 40):
        assert len(told(crowded(pairs)).split()) <= MOST_WORDS


def test_the_facts_of_a_good_week() -> None:
    text = told(WEEKS["mixed"][0]())
    for fact in (
        "6 de 6", "(80 a 130)", "5 de 6", "(menos de 180)", "sube 82 (122 a 204)",
        "baja 2 (128 a 126)", "204 mg/dL", "1 sin segunda prueba", "Otras pruebas: 2",
        "bajó 41, más que el margen del medidor",
    ):  # fmt: skip
        assert fact in text, text


# ── What people are told to type is understood ───────────────────────────────

QUOTED = re.compile(r'"([^"{}]+)"')
#: Words for the conversation itself, read before the reader sees them.
BY_THE_CONVERSATION = (
    SPANISH.educator.leave
    | SPANISH.wishes.normal_words
    # Made of many words, and tried in tests/replay/test_day_of_the_summary.py.
    | {"resumen el viernes a las 9:00"}
)


def words_to_type() -> Iterator[str]:
    for place, text in FOR_PARTICIPANTS.items():
        if ".enrolling." not in place or "first_test" in place or "welcome" in place:
            yield from QUOTED.findall(text)
    yield "ayuda"
    yield "estoy en Lima ahora"


@pytest.mark.parametrize("words", sorted(set(words_to_type())))
def test_what_the_bot_tells_people_to_type_is_understood(words: str) -> None:
    understood = heard(words)
    assert words in BY_THE_CONVERSATION or (understood.entries and understood.ask is None), words


@pytest.mark.parametrize(
    ("words", "what"),
    [("parar", What.STOP), ("pausa", What.PAUSE), ("reanudar", What.RESUME), ("ayuda", What.HELP),
     ("resumen", What.SUMMARY), ("registro", What.RECORD), ("metas", What.GOALS),
     ("siguiente paso", What.NEXT_STEP), ("exportar", What.EXPORT), ("borrar", What.ERASE)],
)  # fmt: skip
def test_requests_are_the_ones_that_are_meant(words: str, what: What) -> None:
    (entry,) = heard(words).entries
    assert isinstance(entry, Request)
    assert entry.what is what
    assert f'"{words}"' in " ".join(FOR_PARTICIPANTS.values()) or words == "ayuda"


def test_the_buttons_of_a_bare_reading_name_its_moment() -> None:
    *moments, none = SPANISH.replies.which_moment_buttons
    wanted = (Moment.BEFORE_MEAL, Moment.AFTER_MEAL, Moment.FASTING)
    for button, moment in zip(moments, wanted, strict=True):
        (reading,) = heard(f"118 mg/dL {button}").entries
        assert isinstance(reading, Reading)
        assert reading.moment is moment
    assert not heard(none).entries


def test_answers_by_button_belong_to_the_words_that_are_read() -> None:
    say = SPANISH
    assert set(say.enrolling.consent_buttons) <= say.enrolling.yes | say.enrolling.no
    assert set(say.enrolling.yes_no) <= say.enrolling.yes | say.enrolling.no
    yes, no, unknown = say.enrolling.yes_no_unknown
    assert yes in say.enrolling.yes
    assert no in say.enrolling.no
    assert unknown in say.enrolling.unknown
    assert say.requests.erase_buttons[0] in say.requests.erase_yes
    assert say.requests.erase_buttons[1] in say.enrolling.no
    assert [say.requests.how[button] for button in say.requests.how_buttons] == [
        "less", "same", "more",
    ]  # fmt: skip
    assert not say.enrolling.yes & say.enrolling.no
    assert "varía" in say.enrolling.no_main_meal
    for button in (*say.requests.how_buttons, *say.prompts.go_on_buttons):
        assert not heard(button).entries  # nothing takes the answer away from its question


# ── What an educator types ───────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("text", "wish"),
    [("invitar", Wish.INVITE), ("lista", Wish.ROSTER), ("alertas", Wish.ALERTS),
     ("vista 3", Wish.SEEN), ("llamada 3", Wish.CALLED), ("cerrada 3", Wish.CLOSED),
     ("comidas Ana", Wish.MEALS), ("gráfica Ana", Wish.CHART), ("pasos Ana", Wish.STEPS),
     ("metas Ana 80-130 180", Wish.GOALS), ("bajo Ana 75", Wish.LOW), ("alto Ana 220", Wish.HIGH),
     ("autorizar Ana", Wish.RELEASE), ("menos pruebas Ana", Wish.FEWER),
     ("ayuno Ana 2026-03-10 a 2026-03-19", Wish.FAST),
     ("plan Ana", Wish.PLAN), ("página Ana", Wish.PAGE),
     ("terminar plan Ana", Wish.END_PLAN), ("nota Ana: nos vemos el lunes", Wish.NOTE),
     ("apodo 7KQ Ana", Wish.LABEL), ("grupo", Wish.GROUP), ("sin suplente", Wish.NO_DEPUTY),
     ("horario lun-vie 8-16", Wish.HOURS), ("suplente 7KQ", Wish.DEPUTY), ("ausente", Wish.AWAY),
     ("volví", Wish.BACK), ("ayuda", Wish.HELP), ("cancelar", Wish.CANCEL),
     ("aceptar 7KQ", Wish.ACCEPT), ("rechazar 7KQ", Wish.DECLINE)],
)  # fmt: skip
def test_an_educators_words_are_read(text: str, wish: Wish) -> None:
    found = wished(text, SPANISH.educator)
    assert found is not None
    assert found.wish is wish


def test_every_wish_has_words_and_no_words_mean_two() -> None:
    wishes = SPANISH.educator.wishes
    assert wishes.keys() == ENGLISH.educator.wishes.keys()
    every = [phrase for told in wishes.values() for phrase in told]
    assert len(every) == len(set(every))


@pytest.mark.parametrize("text", ["lun-vie 8:00-16:00", "lun a vie 8 a 16", "lunes a viernes 8-16"])
def test_working_days_are_read(text: str) -> None:
    hours = hours_of(text, SPANISH.educator, Hours())
    assert hours is not None
    assert hours.days == frozenset(range(5))
    assert (hours.starts.hour, hours.ends.hour) == (8, 16)
