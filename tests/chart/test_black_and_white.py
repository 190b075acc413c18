"""Meaning is never in colour alone: it is still there when the picture is printed in two tones."""

from dataclasses import replace
from io import BytesIO

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from bot.chart import draw
from bot.picture import Alert, Joint, Judged, Legend, Mark, Off, Picture, Role, Row, to_mapping

LEGEND = Legend(
    before="before", after="after", outside="outside", lone="lone", activity="activity",
    uncounted="uncounted",
)  # fmt: skip
HEAD = 200  # the legend names what the picture shows: it is left out of the comparison
SEEN = 60  # pixels of 1,080 across: seen on a phone


def printed(mark: Mark, joint: Joint = Joint.COUNTED) -> NDArray[np.bool_]:
    """One row with a start and this mark, in black and white, from the head down."""
    start = Mark(at=110, word="110", role=Role.BEFORE, judged=Judged.WITHIN)
    row = Row(day="Mon", name="Lunch", detail="rice", joint=joint, marks=(start, mark))
    picture = Picture(title="Week", unit="mg/dL", legend=LEGEND, rows=(row,))
    image = Image.open(BytesIO(draw(to_mapping(picture)))).convert("L")
    return np.asarray(image)[HEAD:] < 150


AFTER = Mark(at=160, word="160", role=Role.AFTER, judged=Judged.WITHIN)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (AFTER, replace(AFTER, judged=Judged.OUTSIDE)),
        (AFTER, replace(AFTER, role=Role.BEFORE)),
        (AFTER, replace(AFTER, alert=Alert.HIGH)),
        (replace(AFTER, alert=Alert.LOW), replace(AFTER, alert=Alert.HIGH)),
        (
            replace(AFTER, at=None, off=Off.HIGH, word="?"),
            replace(AFTER, at=None, off=Off.LOW, word="?"),
        ),
    ],
)
def test_marks_of_another_meaning_have_another_shape(one: Mark, other: Mark) -> None:
    assert np.count_nonzero(printed(one) != printed(other)) > SEEN


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (Joint.COUNTED, Joint.UNCOUNTED),
        (Joint.COUNTED, Joint.ACTIVITY),
        (Joint.UNCOUNTED, Joint.ACTIVITY),
        (Joint.COUNTED, Joint.NONE),
    ],
)
def test_strokes_of_another_meaning_look_another_way(one: Joint, other: Joint) -> None:
    assert np.count_nonzero(printed(AFTER, one) != printed(AFTER, other)) > SEEN
