"""Texts cut to what the chat program takes."""

from hypothesis import given
from hypothesis import strategies as st

from bot.chat.pieces import pieces


def units(text: str) -> int:
    return len(text.encode("utf-16-le")) // 2


@given(st.text(alphabet=st.characters(exclude_categories=("Cs",)), max_size=300))
def test_no_piece_is_too_long_and_no_word_is_lost(text: str) -> None:
    cut = pieces(text, 40)
    assert all(0 < units(piece) <= 40 for piece in cut if piece)
    assert "".join("".join(cut).split()) == "".join(text.split())


def test_a_short_text_stays_whole() -> None:
    assert pieces("118 rice", 40) == ["118 rice"]
    assert pieces("", 40) == []
