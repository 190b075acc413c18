"""The graph of words holds just what its blocks unfold into; spellings are found as by hand."""

from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rapidfuzz.distance import OSA

from bot.parser.graph import Node, graph, graph_of, spelled, words_in
from bot.parser.languages import LEXICA
from bot.parser.phrases import Phrases
from bot.parser.spelling import Spelling, one_slip
from bot.parser.vocabulary import Block

WORDS = st.sampled_from(["a", "b", "tea", "can't", "non-stop", "7 up", "no sugar"])


def bracketed(inner: st.SearchStrategy[str]) -> st.SearchStrategy[str]:
    several = st.lists(inner, min_size=1, max_size=3)
    return st.one_of(
        several.map(lambda parts: "{" + "|".join(parts) + "}"),
        st.tuples(inner, inner).map(lambda pair: f"{pair[0]} ({pair[1]} )b"),
        st.tuples(inner, inner).map(lambda pair: f"{pair[0]}(s) {pair[1]}"),
        several.map(" ".join),
    )


BLOCKS = st.lists(st.recursive(WORDS, bracketed, max_leaves=8), min_size=1, max_size=4).map(
    "\n".join
)


def held(node: Node[Any], so_far: tuple[str, ...] = ()) -> Iterator[tuple[str, ...]]:
    """Every phrase of a graph."""
    if node.meaning is not None:
        yield so_far
    for word, below in node.below.items():
        yield from held(below, (*so_far, word))


class TestGraph:
    @given(BLOCKS)
    def test_holds_what_a_block_unfolds_into_and_nothing_else(self, written: str) -> None:
        block = Block(written)
        found = list(held(graph(block, "meant")))
        assert sorted(found) == sorted({spelled(phrase) for phrase in block})

    @given(BLOCKS)
    def test_tells_every_word(self, written: str) -> None:
        words = {word for phrase in Block(written) for word in spelled(phrase)}
        assert set(words_in(Block(written))) == words

    @given(BLOCKS)
    def test_holds_phrases_with_a_meaning_each(self, written: str) -> None:
        meanings = {spelled(phrase): len(phrase) for phrase in Block(written)}
        top = graph_of(meanings)
        assert sorted(held(top)) == sorted(meanings)
        assert {words: Phrases.of(meanings).whole(words) for words in meanings} == meanings

    @pytest.mark.parametrize("code", LEXICA)
    def test_holds_every_list_of_symptoms_whole(self, code: str) -> None:
        for level, block in LEXICA[code].symptoms.items():
            assert set(held(graph(block, level))) == {spelled(phrase) for phrase in block}

    def test_keeps_what_leads_on_alike_once(self) -> None:
        top = graph(Block("{my|his} {arm|leg} hurts, an arm hurts"), "sign")
        assert top.below["my"] is top.below["his"]
        assert top.below["my"].below["leg"] is top.below["an"].below["arm"]


class TestPhrases:
    @given(BLOCKS, BLOCKS)
    def test_the_first_list_wins(self, one: str, other: str) -> None:
        first, second = Block(one), Block(other)
        together = Phrases([(first, 1), (second, 2)])
        joined = Phrases([(first, 1)]) | Phrases([(second, 2)])
        wanted = {spelled(phrase): 2 for phrase in second} | {spelled(p): 1 for p in first}
        assert {words: together.whole(words) for words in wanted} == wanted
        assert {words: joined.whole(words) for words in wanted} == wanted

    @given(BLOCKS, BLOCKS)
    def test_some_can_be_left_out(self, one: str, other: str) -> None:
        left = Phrases([(Block(one), 1)]) - Phrases([(Block(other), True)])
        out = {spelled(phrase) for phrase in Block(other)}
        for phrase in Block(one):
            words = spelled(phrase)
            assert left.whole(words) == (None if words in out else 1)


class TestSpelling:
    @given(st.text("abc", max_size=6), st.text("abc", max_size=6))
    def test_a_slip_is_a_distance_of_one(self, meant: str, typed: str) -> None:
        """rapidfuzz's optimal string alignment distance."""
        assert one_slip(meant, typed) is (OSA.distance(meant, typed) == 1)

    @given(st.lists(st.text("abc", min_size=5, max_size=7), max_size=8), st.text("abc", min_size=5))
    def test_finds_what_a_search_through_all_words_finds(
        self, wanted: list[str], word: str
    ) -> None:
        """Compared with rapidfuzz's distance to each word in turn."""
        near = {each for each in wanted if each[0] == word[0] and OSA.distance(each, word) == 1}
        meant = Spelling(wanted, ()).meant(word)
        assert meant in near if near else meant is None
