"""Every boundary on both sides, in both units.

Sources: below 70 (3.9) and below 54 (3.0): ADA Standards of Care 2026, section 6, p. 145. From
250 (13.9): the same, section 13, p. 297 (care homes). From 300 (16.7): the same place, and
hospital leaflets. The pairs of units: published pairs of section 4 of the glucose reference
(54 = 3.0, 70 = 3.9, 250 = 13.9, 300 = 16.7), each half-up of mg/dL by 18.0156.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.caution import Level, level_of
from bot.participants import Limits
from bot.units import Unit
from tests.caution.talk import person, reading

USUAL = Limits()


@pytest.mark.parametrize(
    ("value", "level"),
    [
        ("LO", "very_low"),
        (20, "very_low"),
        (53, "very_low"),
        (54, "low"),
        (69, "low"),
        (70, None),
        (79, None),
        (180, None),
        (249, None),
        (250, "high"),
        (299, "high"),
        (300, "very_high"),
        (600, "very_high"),
        ("HI", "very_high"),
    ],
)
def test_levels_in_mg_dl(value: float | str, level: str | None) -> None:
    assert level_of(reading(value), USUAL) == level


@pytest.mark.parametrize(
    ("value", "level"),
    [
        ("LO", "very_low"),
        (1.1, "very_low"),
        (2.9, "very_low"),
        (3.0, "low"),
        (3.8, "low"),
        (3.9, None),
        (4.4, None),
        (13.8, None),
        (13.9, "high"),
        (16.6, "high"),
        (16.7, "very_high"),
        (33.3, "very_high"),
        ("HI", "very_high"),
    ],
)
def test_levels_in_mmol_l(value: float | str, level: str | None) -> None:
    assert level_of(reading(value, unit=Unit.MMOL_L), USUAL) == level


@pytest.mark.parametrize(
    ("limits", "value", "level"),
    [
        (Limits(low=80), 79, "low"),
        (Limits(low=80), 80, None),
        (Limits(high=200), 199, None),
        (Limits(high=200), 200, "high"),
        (Limits(high=200), 299, "high"),
        (Limits(low=80), 53, "very_low"),
        (Limits(high=200), 300, "very_high"),
    ],
)
def test_limits_that_a_care_team_narrowed(limits: Limits, value: float, level: str | None) -> None:
    """Project rule: `low` up to 80, `high` down to 200; no other level moves."""
    assert level_of(reading(value), limits) == level


@pytest.mark.parametrize(
    ("limits", "value", "level"),
    [
        (Limits(low=80), 4.3, "low"),
        (Limits(low=80), 4.4, None),
        (Limits(high=200), 11.0, None),
        (Limits(high=200), 11.1, "high"),
    ],
)
def test_narrowed_limits_in_mmol_l(limits: Limits, value: float, level: str | None) -> None:
    """80 = 4.4 and 200 = 11.1: published pairs."""
    assert level_of(reading(value, unit=Unit.MMOL_L), limits) == level


@pytest.mark.parametrize("wrong", [{"low": 69}, {"low": 81}, {"high": 199}, {"high": 251}])
def test_limits_cannot_be_widened(wrong: dict[str, float]) -> None:
    with pytest.raises(ValueError, match="must be from"):
        Limits(**wrong)


@given(tenths=st.integers(11, 333))
def test_a_typed_mmol_l_value_is_judged_as_a_meter_of_that_unit_would(tenths: int) -> None:
    """Against whole tenths, with no floating point: 30, 39, 139 and 167 tenths."""
    expected = (
        "very_low" if tenths < 30 else
        "low" if tenths < 39 else
        None if tenths < 139 else
        "high" if tenths < 167 else
        "very_high"
    )  # fmt: skip
    typed = float(Fraction(tenths, 10))
    assert level_of(reading(typed, unit=Unit.MMOL_L), USUAL) == expected


def test_the_order_of_levels_is_the_order_of_sending() -> None:
    assert [level.value for level in Level] == [
        "emergency",
        "very_low",
        "low",
        "very_high",
        "high",
        "two_days_very_high",
        "repeated_high",
        "repeated_low",
        "symptoms",
    ]


def test_a_person_is_assumed_to_be_at_risk_unless_known_otherwise() -> None:
    assert person().can_go_low
    assert person().can_make_ketones
    assert not person(may_go_low=False).can_go_low
