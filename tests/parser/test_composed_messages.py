"""What is told together is read as it is told apart: a reading, a meal or an activity, a sign of
the body, in any order, joined and ended as people join and end short messages.

What each part comes to is written down here from the contract (reading-messages.md, rules 7, 8, 11,
12 and 16); wordings and foods are our own, no source.
"""

from dataclasses import dataclass
from datetime import datetime
from itertools import chain

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.entry_lines import entry_line
from bot.parser import read
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T19:04:00+02:00")


@dataclass(frozen=True, kw_only=True)
class Words:
    """How the parts of a message are worded in one language."""

    readings: dict[str, tuple[str, ...]]  # by moment; `{v}` is the value, `{n}` a meal's name
    names: dict[str, str]
    amounts: tuple[str, ...]
    dishes: tuple[str, ...]
    sides: tuple[str, ...]
    meals: tuple[str, ...]  # `{d}` is the dish
    named_meals: tuple[str, ...]  # `{n}` is the name
    activities: tuple[tuple[str, str], ...]  # with `{m}` for the minutes, and what is kept
    signs: tuple[tuple[str, str], ...]
    joints: tuple[str, ...]
    tails: tuple[str, ...]


ENGLISH = Words(
    readings={
        "before_meal": (
            "{v} before", "{v} b4", "before {n}: {v}", "{v} before {n}", "{v} before eating",
            "my sugar was {v} before {n}", "pre meal {v}", "before food {v}", "{v} pre",
            "reading before {n} {v}", "checked before {n}, {v}", "{v} right before my {n}",
        ),
        "after_meal": (
            "{v} after", "{v} after {n}", "after {n} {v}", "2h after {v}", "post meal {v}",
            "{v} two hours after {n}", "{v} 2 hrs after eating", "2 hours later {v}",
            "at the 2 hour mark {v}", "two hours on from {n} {v}",
        ),
        "fasting": ("{v} fasting", "fasting {v}", "woke up at {v}", "{v} on waking"),
        "bedtime": ("{v} at bedtime", "bedtime {v}", "{v} before bed"),
        "": (
            "{v}", "my sugar is {v}", "{v} now", "sugar {v}", "it's {v}", "bg {v}", "glucose: {v}",
            "reading {v}", "meter says {v}", "i am at {v}", "got {v}", "it was {v}",
        ),
    },
    names={"breakfast": "breakfast", "lunch": "lunch", "dinner": "dinner", "supper": "dinner",
           "brekkie": "breakfast"},
    amounts=("", "2 ", "a plate of ", "1 cup ", "3 slices ", "half a ", "a bowl of ", "100 g ",
             "1/2 plate ", "two ", "a small ", "1.5 cups ", "2-3 ", "a handful of "),
    dishes=("rice", "lentil soup", "pizza", "chapati", "jollof rice", "fish", "fried plantain",
            "porridge", "tamales", "bread", "noodles", "beans", "chicken curry", "potato salad"),
    sides=("", " and salad", " with cheese", ", beans and an egg", " and a coffee", " w/o sugar",
           " and a glass of milk", " + tea"),
    meals=("{d}", "eating {d}", "having {d}", "about to eat {d}", "i'm eating {d}", "now {d}"),
    named_meals=("{n}: {d}", "{d} for {n}", "{n} is {d}", "having {d} for {n}"),
    activities=(
        ("walked {m} min", "walked"), ("{m} min walk", "walk"), ("a {m}-minute walk", "walk"),
        ("walked for {m} minutes", "walked"), ("did {m} minutes of gardening", "gardening"),
        ("swam {m} min", "swam"), ("mowed the lawn for {m} min", "mowed the lawn"),
        ("danced about {m} mins", "danced"), ("went for a {m} min run", "run"),
    ),
    signs=(("feeling shaky", "low"), ("i feel dizzy", "low"), ("very thirsty", "high"),
           ("chest pain", "emergency"), ("blurry vision", "high")),
    joints=(", ", ". ", "\n", " - ", "; ", "... "),
    tails=("", "", " thanks", " lol", ", thank you", " 🙂", "!", "."),
)  # fmt: skip
SPANISH = Words(
    readings={
        "before_meal": (
            "{v} antes", "antes de comer {v}", "{v} antes del {n}", "antes del {n}: {v}",
            "mi azúcar {v} antes de comer", "glucosa antes de comer {v}",
        ),
        "after_meal": (
            "{v} después", "{v} después de comer", "después del {n} {v}", "2 horas después {v}",
            "{v} dos horas después del {n}",
        ),
        "fasting": ("{v} en ayunas", "en ayunas {v}", "ayunas: {v}"),
        "bedtime": ("{v} antes de dormir", "antes de acostarme {v}"),
        "": ("{v}", "tengo {v}", "mi azúcar está en {v}", "glucosa {v}", "salió {v}", "{v} ahora"),
    },
    names={"desayuno": "breakfast", "almuerzo": "lunch"},
    amounts=("", "2 ", "un plato de ", "1 taza de ", "media ", "100 g de ", "dos ", "un poco de "),
    dishes=("arroz", "sopa de lentejas", "arepas", "pollo asado", "tortillas", "frijoles"),
    sides=("", " y ensalada", " con queso", ", frijoles y un huevo", " y un café", " sin azúcar"),
    meals=("{d}", "estoy comiendo {d}", "a punto de comer {d}", "comiendo {d}"),
    named_meals=("{n}: {d}", "{d} de {n}"),
    activities=(
        ("caminé {m} minutos", "caminé"), ("{m} min caminando", "caminando"),
        ("bailé {m} min", "bailé"), ("barrí la casa {m} minutos", "barrí la casa"),
    ),
    signs=(("estoy temblando", "low"), ("mucha sed", "high"), ("dolor en el pecho", "emergency")),
    joints=(", ", ". ", "\n", " - ", "; "),
    tails=("", "", " gracias", ", gracias", "!", " 🙂"),
)  # fmt: skip


@st.composite
def values(draw: st.DrawFn, unit: Unit) -> str:
    """A value as a meter of that unit shows it; no whole number that could count minutes, too."""
    if unit is Unit.MG_DL:
        return str(draw(st.integers(101, 380)))
    return f"{draw(st.integers(41, 199)) / 10:.1f}"


@st.composite
def dishes(draw: st.DrawFn, words: Words) -> str:
    """A dish with its amount and what goes with it."""
    amount, side = draw(st.sampled_from(words.amounts)), draw(st.sampled_from(words.sides))
    return amount + draw(st.sampled_from(words.dishes)) + side


@st.composite
def messages(draw: st.DrawFn, words: Words, unit: Unit) -> tuple[str, list[str]]:
    """A message, and what its parts come to, in their order."""
    pick = lambda many: draw(st.sampled_from(many))  # noqa: E731 - short for all that follows
    value, name = draw(values(unit)), pick(list(words.names))
    with_it = pick(["nothing", "meal", "meal", "named meal", "activity"])
    moments = [""] if with_it == "activity" else ["", "before_meal"]
    moment = pick(moments if with_it != "nothing" else list(words.readings))
    form = pick(words.readings[moment])
    told = {"meal": "before_meal", "named meal": "before_meal", "activity": "after_activity"}
    number = f"{float(value):g}" + (" mmol" if unit is Unit.MMOL_L else "")
    parts = [(form.format(v=value, n=name), f"{number} {moment or told.get(with_it, 'unstated')}")]
    first = draw(st.booleans())
    if with_it in {"meal", "named meal"}:
        dish = draw(dishes(words))
        # the name inside the moment's words names the food behind them (CORPUS.md)
        called = words.names[name] if "{n}" in form and moment and first else ""
        meal = pick(words.meals)
        if with_it == "named meal":
            other = pick(list(words.names))
            called, meal = words.names[other], pick(words.named_meals).replace("{n}", other)
        parts.append((meal.format(d=dish), f"meal {dish}" + (f" [{called}]" if called else "")))
    if with_it == "activity":
        minutes = draw(st.integers(2, 18)) * 5
        activity, kept = pick(words.activities)
        parts.append((activity.format(m=minutes), f"did {kept} {minutes} min"))
    parts = parts if first else parts[::-1]
    if draw(st.booleans()):
        sign, level = pick(words.signs)
        parts.append((sign, level))
    text = pick(words.joints).join(text for text, _ in parts) + pick(words.tails)
    text = text[0].upper() + text[1:] if draw(st.booleans()) else text
    return text, [meant for _, meant in parts]


def in_short(entry: dict[str, object]) -> str:
    """An entry in the words of this page; a sign by its level alone."""
    kind = entry["type"]
    if kind == "reading":
        unit = " mmol" if entry["unit"] == "mmol/L" else ""
        return f"{entry['value']:g}{unit} {entry['moment']}"
    if kind == "meal":
        return f"meal {entry['text']}".lower() + (f" [{entry['name']}]" if entry["name"] else "")
    if kind == "activity":
        return f"did {entry['text']} {entry['minutes']:g} min".lower()
    return str(entry["suggests"] if kind == "symptom" else entry)


BOTH = list(chain.from_iterable(((code, unit) for unit in Unit) for code in ("en", "es")))


@pytest.mark.parametrize(("language", "unit"), BOTH)
@given(data=st.data())
def test_parts_told_together_are_read_as_they_are_apart(
    language: str, unit: Unit, data: st.DataObject
) -> None:
    words = ENGLISH if language == "en" else SPANISH
    text, meant = data.draw(messages(words, unit))
    understood = read(text, at=AT, unit=unit, language=language)
    assert [in_short(entry_line(entry)) for entry in understood.entries] == meant, text
    assert understood.ask is None, text
