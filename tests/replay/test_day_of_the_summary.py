"""The participant chooses on which day and at what time the week is told."""

import pytest

from tests.replay.told import Story, of_type, spoken, texts

# 2 March 2026 is a Monday; the week's summary comes on Sundays at 18:00 unless told otherwise.


@pytest.mark.parametrize(
    ("text", "day", "at"),
    [
        ("summary on Friday at 9:00", "2026-03-06", "09:00"),
        ("Weekly summary on Fridays, please", "2026-03-06", "18:00"),
        ("send my summary on saturday", "2026-03-07", "18:00"),
        ("chart on thursday at 7 pm", "2026-03-05", "19:00"),
        ("My week ends on Saturday.", "2026-03-07", "18:00"),
        ("change the day of my weekly chart to wed", "2026-03-04", "18:00"),
        ("weekly summary at 8:15", "2026-03-08", "08:15"),
        ("can I get the report on tuesday at 12.30pm", "2026-03-03", "12:30"),
    ],
)
def test_the_summary_comes_on_the_chosen_day(text: str, day: str, at: str) -> None:
    played = Story().says("12:00", text).passes("2026-03-09 23:00").play()
    first = next(line for line in played.sent if line["kind"] == "digest")
    assert first["at"] == f"{day}T{at}:00+02:00"
    assert f"The next one: {day}, {at}." in played.sent[0]["text"]
    assert played.digests[0]["week_to"] == day


@pytest.mark.parametrize(
    ("text", "day", "at"),
    [
        ("resumen el viernes a las 9:00", "2026-03-06", "09:00"),
        ("Quiero el resumen los sábados", "2026-03-07", "18:00"),
        ("la gráfica los miercoles a las 8 pm", "2026-03-04", "20:00"),
        ("mi semana termina el jueves", "2026-03-05", "18:00"),
        ("el resumen a las 8:15", "2026-03-08", "08:15"),
    ],
)
def test_in_spanish_too(text: str, day: str, at: str) -> None:
    story = Story(language="es").says("12:00", text).passes("2026-03-09 23:00")
    played = story.play()
    first = next(line for line in played.sent if line["kind"] == "digest")
    assert first["at"] == f"{day}T{at}:00+02:00"
    assert f"El próximo: {day}, {at}." in played.sent[0]["text"]


@pytest.mark.parametrize(
    "text",
    [
        "summary",
        "my week",
        "what did my chart on Monday say",
        "my sister looked at the chart on Monday",
        "chart at 25:00",
        "summary on Friday or Saturday",
        "picture 9",
        "118 before, rice on Friday",
        "lunch on Friday at 9",
    ],
)
def test_what_only_names_a_chart_and_a_day_changes_nothing(text: str) -> None:
    played = Story().says("12:00", text).passes("2026-03-08 23:00").play()
    assert all("from now on" not in line["text"] for line in played.sent)
    [digest] = spoken(played, "digest")
    assert digest[0] == "18:00"
    assert played.digests[0]["week_to"] == "2026-03-08"


def test_a_time_in_quiet_time_waits_for_its_end_and_says_so() -> None:
    played = Story().says("12:00", "summary at 23:00").passes("2026-03-09 23:00").play()
    assert "The next one: 2026-03-09, 06:30." in played.sent[0]["text"]
    first = next(line for line in played.sent if line["kind"] == "digest")
    assert first["at"] == "2026-03-09T06:30:00+02:00"


def test_a_time_of_today_that_is_over_begins_with_the_next_week() -> None:
    story = Story(day="2026-03-06").says("12:00", "summary on Friday at 9:00")
    played = story.passes("2026-03-13 23:00").play()
    digests = [line["at"] for line in played.sent if line["kind"] == "digest"]
    assert digests == ["2026-03-13T09:00:00+02:00"]


def test_a_test_told_beside_it_is_kept() -> None:
    played = Story().says("12:00", "118 before. Summary on Friday").passes("12:01").play()
    assert [line["value"] for line in of_type(played, "reading")] == [118]


@pytest.mark.parametrize(
    ("language", "ask", "told"),
    [
        ("en", "settings", ("mg/dL", "22:30 to 06:30", "Sunday, 18:00", "main meal: 12:45")),
        ("es", "ajustes", ("mg/dL", "22:30 a 06:30", "domingo, 18:00", "principal: 12:45")),
    ],
)
def test_settings_are_told_with_the_words_that_change_them(
    language: str, ask: str, told: tuple[str, ...]
) -> None:
    story = Story(language=language, main_meal="12:45").says("11:00", ask).passes("11:01")
    [answer] = texts(story.play(), "reply")
    for words in (*told, "Lima"):
        assert words in answer


@pytest.mark.parametrize(("language", "ask"), [("en", "settings"), ("es", "ajustes")])
def test_the_words_that_settings_name_are_understood(language: str, ask: str) -> None:
    story = Story(language=language).says("11:00", ask).passes("11:01")
    [answer] = texts(story.play(), "reply")
    quoted = answer.split('"')[1::2]
    assert len(quoted) == 4
    for words in quoted:
        story = Story(language=language).says("11:00", words).passes("11:01")
        [reply] = texts(story.play(), "reply")
        assert reply != answer, words
        assert "help" not in reply
        assert "ayuda" not in reply
