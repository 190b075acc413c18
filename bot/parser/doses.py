"""Is a number behind a drug its dose, or what the meter showed? `had my tablet 118`."""

# ruff: noqa: SIM905 - word sets read best as one string

from bot.parser.page import Page, Span


def no_dose(page: Page, span: Span) -> bool:
    """`had my tablet 118`, `metformin 7.8 before dinner`: a number without a unit, behind what is
    taken by the piece or before a moment, is more like a reading than a dose."""
    said = span.match.groupdict()
    if said.get("dose") is None or said["counted"]:
        return False
    drug = page.tokens[span.start].word
    if any(part in drug for part in _IN_MICROGRAMS):
        return False
    return is_odd(said["dose"]) and (
        drug in _BY_PIECE or not MOMENTS.isdisjoint(page.words(span.end, span.end + 1))
    )


def is_odd(number: str) -> bool:
    """Whether hardly any tablet has so many milligrams."""
    try:
        amount = float(number)
    except ValueError:  # `7up`
        return False
    return (100 < amount < 500 and amount % 25 != 0) or (amount * 2) % 1 != 0


#: `levothyroxine 112` is a dose as it stands (common practice, no source).
_IN_MICROGRAMS = ("thyro", "synthroid", "euthyrox")
_BY_PIECE = frozenset(
    "tablet tablets tabs pill pills meds med medicine medication pastilla".split()
)
MOMENTS = frozenset("before after fasting bedtime pre post antes despues now".split())
