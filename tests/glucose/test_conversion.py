"""Published pairs of limits: mg/dL as printed, and the mmol/L printed beside it.

ADA Standards of Care 2024 to 2026, WHO/IDF and NICE tables (reference, section 4); molar mass of
glucose from LOINC group LG7967-5. All are half-up quotients by 18.0156.
"""

from decimal import Decimal

import pytest

from bot.units import MG_DL_PER_MMOL_L, Unit, in_unit, limit_in, to_mg_dl

PUBLISHED = {
    54: "3.0", 63: "3.5", 70: "3.9", 80: "4.4", 90: "5.0", 95: "5.3", 100: "5.6", 110: "6.1",
    120: "6.7", 125: "6.9", 126: "7.0", 130: "7.2", 140: "7.8", 150: "8.3", 155: "8.6",
    180: "10.0", 199: "11.0", 200: "11.1", 250: "13.9", 300: "16.7", 350: "19.4", 600: "33.3",
    240: "13.3",
}  # fmt: skip


@pytest.mark.parametrize(("mg_dl", "mmol"), PUBLISHED.items())
def test_a_published_pair(mg_dl: int, mmol: str) -> None:
    assert str(in_unit(mg_dl, Unit.MMOL_L)) == mmol
    assert limit_in(mg_dl, Unit.MMOL_L) == float(mmol)


def test_plain_eighteen_would_get_one_of_them_wrong() -> None:
    assert Decimal("18.0156") == MG_DL_PER_MMOL_L
    assert round(199 / 18, 1) == 11.1


def test_a_round_trip_changes_258_of_581_values_by_at_most_one() -> None:
    """Counted apart, over the whole numbers 20 to 600 that meters show."""
    changes = [
        abs(
            int(in_unit(to_mg_dl(float(in_unit(value, Unit.MMOL_L)), Unit.MMOL_L), Unit.MG_DL))
            - value
        )
        for value in range(20, 601)
    ]
    assert sum(change > 0 for change in changes) == 258
    assert max(changes) == 1


def test_a_rise_is_converted_itself_and_not_its_rounded_ends() -> None:
    """Day 3 of the constructed week: 105 to 149 rises 44, which is 2.4 though 8.3 - 5.8 is 2.5."""
    assert str(in_unit(44, Unit.MMOL_L)) == "2.4"
    assert in_unit(149, Unit.MMOL_L) - in_unit(105, Unit.MMOL_L) == Decimal("2.5")
