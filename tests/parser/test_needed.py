"""Words that a pattern needs: where it is found, one of them stands, whatever the pattern."""

import gc
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.parser.needed import words_needed
from bot.parser.page import Page, Pattern, pattern
from bot.parser.ready import make_ready
from bot.parser.tidy import plain, shown
from bot.parser.tokens import cut
from tests.parser.test_sayings_by_others import PARTS


@pytest.mark.parametrize(
    ("source", "needed"),
    [
        ("before", {"before"}),
        ("before|after", {"before", "after"}),
        ("b(?:efore|4)", {"before", "b4"}),
        ("(?:my )?sugar", {"sugar"}),
        (r"\d+ (?:mg|mmol) / l", {"mg", "mmol"}),
        (r"(?:my |the )*glucose(?: was)?", {"glucose"}),
        (r"walk(?:ed|ing)? \d+", {"walk", "walked", "walking"}),
        (r"(?:at|around) (?P<hour>\d+)(?! mg)", {"at", "around"}),
        (r"[$€] \d+", {"$", "€"}),
        (r"p(?:eriod is .*|regnant)", {"period", "pregnant"}),
        (r"\* \d+", {"*"}),
    ],
)
def test_words_are_read_off_the_pattern(source: str, needed: set[str]) -> None:
    assert words_needed(source) == needed


@pytest.mark.parametrize(
    "source",
    [r"\d+", r"(?:before)?", r"[a-z]+ful", r"before|\d+", r"(?:my )*", r"no\w+", r"\w+able", "."],
)
def test_no_words_are_named_where_none_has_to_stand(source: str) -> None:
    assert words_needed(source) is None


_WORD_LIST = ["a", "an", "ate", "at", "my", "sugar", "5", "low"]
_WORDS = st.sampled_from(_WORD_LIST)


def _grown(inner: st.SearchStrategy[str]) -> st.SearchStrategy[str]:
    several = st.lists(inner, min_size=1, max_size=3)
    return st.one_of(
        several.map("".join),
        several.map(" ".join),
        several.map(lambda each: f"(?:{'|'.join(each)})"),
        inner.map(lambda each: f"(?:{each})?"),
        inner.map(lambda each: f"(?:{each} ){{0,2}}"),
        inner.map(lambda each: f"(?:{each} )+"),
        inner.map(lambda each: f"({each})"),
        inner.map(lambda each: f"{each}(?! low)"),
    )


_SOURCES = st.recursive(
    st.sampled_from([*_WORD_LIST * 4, r"\d+", "[a-z]+", "[as]", " ", "s?", "."]),
    _grown,
    max_leaves=6,
)


@given(source=_SOURCES, words=st.lists(_WORDS, min_size=1, max_size=8))
def test_one_of_the_words_stands_wherever_the_pattern_is_found(
    source: str, words: list[str]
) -> None:
    needed = words_needed(source)
    found = re.search(rf"(?<= )(?:{source})(?= )", f" {' '.join(words)} ")
    assert needed is None or found is None or not needed.isdisjoint(words), found


def _all_patterns() -> list[Pattern]:
    make_ready()
    return [each for each in gc.get_objects() if isinstance(each, Pattern)]


def test_no_pattern_of_the_reader_is_passed_over_where_it_would_be_found() -> None:
    """On every twentieth message that others wrote: searched for all the same."""
    patterns = [each for each in _all_patterns() if each.needs is not None]
    assert len(patterns) > 200
    found = 0
    for part in PARTS.values():
        for _, text, _ in part[::20]:
            kept = shown(text)
            page = Page(kept, cut(plain(kept)))
            words = page.said()
            for each in patterns:
                bordered = each.along.pattern.startswith("(?<= )")
                match = each.along.search(page.line) if bordered else each.along.fullmatch(words)
                if match is not None:
                    found += 1
                    assert not each.needs.isdisjoint(page.held), (text, match)  # type: ignore[union-attr]
    assert found > 1000


def test_a_planted_fault_in_the_words_needed_is_noticed() -> None:
    """A pattern with a wrong word finds nothing: the test above would see it."""
    page = Page("142 before", cut("142 before"))
    sought = pattern("before")
    assert page.find(sought)
    assert not page.find(Pattern(along=sought.along, needs=frozenset({"after"})))
