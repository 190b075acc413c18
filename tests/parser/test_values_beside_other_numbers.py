"""A value beside a number of something else, in every order and with every joint between them.

The other number never becomes a reading, and the value is kept or asked about: found so were
`ratio 1 to 10` (10.0 mmol/L), `took 2 metformin 6.7` (2.0) and `6.7 won 3-1` (3.0, as the currency
is called so). All made up, no source.
"""

import re

import pytest

from tests.parser.test_sayings_by_cause import in_short

OTHERS = (
    "took 10 units", "10 units of insulin", "500 mg metformin", "took 2 metformin", "bp 130/80",
    "blood pressure 130 over 80", "weight 82 kg", "82 kg", "a1c 7.2", "hba1c 6.9", "pulse 72",
    "oxygen 97", "temp 37.2", "walked 4000 steps", "6000 steps", "walked 3 km", "20 min walk",
    "bus 42", "room 12", "paid 45 for fish", "fish cost 120", "my mum is 205", "dad got 11.2",
    "i am 62 years old", "age 70", "50 strips left", "cholesterol 5.1", "height 170 cm",
    "call 0712 345 678", "on the 12th of march", "10 people for dinner", "2 eggs", "100 g rice",
    "half past seven", "slept 6 hours", "30 degrees outside", "won 3-1", "page 45",
    "top of 200 stairs", "carb 60 g", "45 carbs", "ratio 1 to 10", "pen 3 clicks", "lost 2 kg",
    "2 pints of milk", "250 ml juice", "rent went up to 540", "I-80 traffic", "my b-12 shot",
    "exam mark of my boy 95", "at block 212", "the bill was 18 dollars", "72 pulse", "a 72 pulse",
    "88 heart rate", "97 spo2", "97% oxygen", "37.2 temp", "128/80 bp", "128 over 80 pressure",
    "7.2 a1c", "190 cholesterol", "5.1 cholesterol", "170 cm height", "82 kg weight", "72 bpm",
    "1.2 ketones", "18 resp rate", "pulse of 72", "72 bpm pulse", "45 egfr", "27 bmi",
    "bp 128/80, pulse 72", "pulse 88 bpm", "heart rate 88 bpm", "128/80 bp 72 bpm",
    "150 over 92 pulse 88", "bp was 150/92 pulse 88", "82 kg pulse 88",
    "pulse 88 temp 37.2", "72 pulse 37.2 temp", "weight 82 kg height 170 cm", "98% oxygen pulse 72",
    "walked half hr", "waited an hr", "every hr",
)  # fmt: skip
#: The same in Spanish.
OTROS = (
    "me puse 10 unidades", "10 unidades de insulina", "500 mg de metformina", "tome 2 metforminas",
    "presion 130/80", "peso 82 kg", "a1c 7.2", "pulso 72", "camine 4000 pasos", "6000 pasos",
    "camine 3 km", "20 minutos de caminata", "bus 42", "cuarto 12", "pague 45 por pescado",
    "mi mama tiene 205", "tengo 62 años", "quedan 50 tiras", "colesterol 190", "mido 170 cm",
    "somos 10 para cenar", "2 huevos", "100 g de arroz", "dormi 6 horas", "30 grados",
    "ganamos 3-1", "pagina 45", "60 g de carbohidratos", "relacion 1 a 10", "baje 2 kilos",
    "250 ml de jugo", "calle 45", "edad 70", "2 tazas de arroz", "a las 2", "saturacion 97",
    "72 de pulso", "pulso de 72", "97 de saturacion", "190 de colesterol", "125/80 de presion",
    "37.2 de temperatura", "82 kilos de peso", "72 pulso", "125/80 presion", "7.2 de hemoglobina",
    "tome el bus 42", "tomamos el bus 42", "perdi el tren 45",
    "la abuela cumple 80", "cumplo 60 mañana", "mi hijo cumplió 45 ayer",
)  # fmt: skip
#: What is given, the value as it is written, and its number.
VALUES = (
    ("", "142 before lunch", "142"),
    ("mmol", "8.4 after dinner", "8.4"),
    ("", "118 fasting", "118"),
    ("", "164", "164"),
    ("mmol", "6.7", "6.7"),
    ("es", "142 antes del almuerzo", "142"),
    ("es mmol", "8,4 despues de la cena", "8.4"),
    ("es", "118 en ayunas", "118"),
    ("es", "164", "164"),
    ("es mmol", "6,7", "6.7"),
)
FORMS = (
    "{v} {o}", "{o} {v}", "{v}, {o}", "{o}, {v}", "{v} n {o}", "{o} and {v}", "{v} and {o}",
    "{o} then {v}", "{o}. {v}", "{o} - {v}", "{v} - {o}", "{o}; {v}",
)  # fmt: skip
READING = re.compile(r"(\d[\d.]*)(?: mmol)? [a-z]+_?[a-z]+(?: @.*)?")


@pytest.mark.parametrize(
    ("given", "value", "number"), VALUES, ids=[value for _, value, _ in VALUES]
)
def test_no_other_number_is_a_reading_and_no_value_is_lost(
    given: str, value: str, number: str
) -> None:
    for other in OTROS if "es" in given else OTHERS:
        for form in (*FORMS, "{v} y {o}", "{o} y {v}"):
            text = form.format(v=value, o=other)
            told = in_short(text, given).split("; ")
            read = [match[1] for entry in told if (match := READING.fullmatch(entry))]
            assert set(read) <= {number}, (text, told)
            assert read or told[-1].startswith("?"), (text, told)
