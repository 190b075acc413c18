"""The chat page says in which language each of the bot's messages is.

WCAG 2.2, success criterion 3.1.2: the language of each passage can be determined by a program.
"""

from dataclasses import fields, is_dataclass
from datetime import UTC, datetime

import pytest

from bot.trial.chats import Chats
from bot.trial.shown import shown
from bot.trial.spoken import GAP, WORD, spoken
from bot.words.language import LANGUAGES
from tests.replay.told import Story


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_sentence_is_known_by_its_words(code: str) -> None:
    """All that a language's dataclasses hold as text, with a number where something is filled in;
    those of fewer than three words of their own tell too little."""
    missed = [
        sentence
        for part in fields(LANGUAGES[code])
        if is_dataclass(whole := getattr(LANGUAGES[code], part.name))
        for field in fields(whole)
        if isinstance(sentence := getattr(whole, field.name), str)
        and len(WORD.findall(GAP.sub("9", sentence))) >= 3
        and spoken(GAP.sub("9", sentence)) != code
    ]
    assert missed == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_message_of_a_story_is_known(code: str) -> None:
    story = Story(language=code, main_meal="12:45", may_go_low=None)
    story.says("12:31", "118, pasta").says("14:40", "204").says("19:00", "62")
    story.says("19:20", "95").says("20:00", "walked 20 min").says("20:30", "summary")
    story.says("21:00", "settings").says("21:05", "help").says("21:10", "HI")
    sent = story.passes("2026-03-09 18:30").play().sent
    assert len(sent) > 20
    assert {spoken(line["text"]) for line in sent} == {code}


@pytest.mark.parametrize("text", ["", "118", "118 mg/dL", "🙂", "🥣 12:31"])
def test_a_number_is_in_no_language(text: str) -> None:
    assert spoken(text) is None


def test_the_page_is_told_the_language_of_messages_and_of_what_they_answer() -> None:
    chats = Chats(lambda: datetime(2026, 3, 2, 12, 0, tzinfo=UTC))
    chat = chats.open("Ana")
    chats.say(chat, "hola")
    asked = chats.post(chat, {"text": "¿Qué hay en su plato? Lávese las manos antes de la prueba."})
    chats.say(chat, "arroz", quotes=asked["message_id"])
    mine, bots, answer = shown(chats[chat], "Europe/Madrid")
    assert "lang" not in mine, "what a person writes is in whatever they write"
    assert bots["lang"] == "es"
    assert answer["answers"]["lang"] == "es"
