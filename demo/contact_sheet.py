"""Draw all invented weeks, and one sheet with each as small as a phone shows it.

    python -m demo.contact_sheet [FOLDER]    (default: demo/out/weeks)

The charts stand in the folder by name, the digests beside them as text, and `sheet.png` shows
every chart 360 pixels wide.
"""

import sys
from collections.abc import Sequence
from io import BytesIO
from pathlib import Path

from PIL import Image

from bot.chart import draw
from bot.entries import Answer
from bot.glucose.height import height
from bot.glucose.week import Week
from bot.picture import to_mapping
from bot.programme.compare import compare_steps
from bot.programme.suggest import suggest
from bot.words.digest import digest_words
from bot.words.english.digest import DIGEST
from bot.words.picture import week_picture
from demo.weeks import WEEKS

PHONE = 360
COLUMNS = 8
GAP = 16


def main(folder: Path) -> None:
    """Write everything into the folder."""
    folder.mkdir(parents=True, exist_ok=True)
    small: list[Image.Image] = []
    for name, (make, so_far) in WEEKS.items():
        week = make()
        png = draw(to_mapping(week_picture(week, DIGEST.picture, so_far=so_far)))
        text = told(week, so_far=so_far)
        (folder / f"{name}.png").write_bytes(png)
        (folder / f"{name}.txt").write_text(text + "\n", encoding="utf-8")
        image = Image.open(BytesIO(png)).convert("RGB")
        size = (PHONE, round(image.height * PHONE / image.width))
        small.append(image.resize(size, Image.Resampling.LANCZOS))
        print(f"{name:16} {len(png) / 1000:5.1f} kB  {len(text.split()):3} words")
    sheet(small).save(folder / "sheet.png")


def told(week: Week, *, so_far: bool = False, answers: Sequence[Answer] = ()) -> str:
    """The words of a week, put together as a digest's are."""
    where = height(week.complete, week.participant)
    compared = compare_steps(week.steps)
    last = compared[-1] if compared else None
    more = last.all_meals.more_pairs if last is not None else None
    return digest_words(
        week,
        suggestion=suggest(week, height=where, more_pairs=more),
        sentences=DIGEST,
        comparison=last,
        height=where,
        answers=answers,
        so_far=so_far,
    )


def sheet(images: Sequence[Image.Image]) -> Image.Image:
    """The images side by side, in rows as high as their highest."""
    rows = [images[start : start + COLUMNS] for start in range(0, len(images), COLUMNS)]
    heights = [max(image.height for image in row) for row in rows]
    width = COLUMNS * (PHONE + GAP) + GAP
    paper = Image.new("RGB", (width, sum(heights) + GAP * (len(rows) + 1)), "#9AA0A6")
    top = GAP
    for row, height_of_row in zip(rows, heights, strict=True):
        for column, image in enumerate(row):
            paper.paste(image, (GAP + column * (PHONE + GAP), top))
        top += height_of_row + GAP
    return paper


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path("demo/out/weeks"))
