"""Draws docs/pictures/rooms.svg from the code: the floors, their rooms, and who imports whom.

    python docs/draw_rooms.py            write the picture
    python docs/draw_rooms.py --check    end with 1 if rooms or imports are not what the code has

Floors come from the import contract in pyproject.toml, sizes and imports from the files. A row
imports what its dots stand over. Rooms stand in the order of the floors, so every dot lies right
of the diagonal; one on its left would be an import upwards.
"""

import ast
import re
import sys
import tomllib
from html import escape
from pathlib import Path
from typing import NamedTuple

CHECKOUT = Path(__file__).resolve().parents[1]
PICTURE = CHECKOUT / "docs/pictures/rooms.svg"

CELL, NAMES, BARS, TOP = 21, 104, 96, 118
PURE_FROM = "turns"


class Room(NamedTuple):
    """A module or package of the bot: what it is for, how long it is, what it imports."""

    name: str
    purpose: str
    lines: int
    imports: frozenset[str]


def floors() -> list[list[str]]:
    """The names of the rooms, floor by floor, the highest first."""
    told = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))
    layers = told["tool"]["importlinter"]["contracts"][0]["layers"]
    return [re.findall(r"\w+", layer) for layer in layers]


def files_of(name: str) -> list[Path]:
    """The files of one room."""
    folder = CHECKOUT / "bot" / name
    return sorted(folder.rglob("*.py")) if folder.is_dir() else [folder.with_suffix(".py")]


def room(name: str, names: frozenset[str]) -> Room:
    """Read one room."""
    files = files_of(name)
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in files]
    imported = {part for tree in trees for part in _imported(tree)}
    first = next(tree for path, tree in zip(files, trees, strict=True) if _opens(path, name))
    return Room(
        name=name,
        purpose=(ast.get_docstring(first) or "").split("\n\n")[0].replace("\n", " "),
        lines=sum(len(path.read_text(encoding="utf-8").splitlines()) for path in files),
        imports=frozenset(imported & names - {name}),
    )


def _opens(path: Path, name: str) -> bool:
    return path.stem == name or (path.parent.name == name and path.stem == "__init__")


def _imported(tree: ast.AST) -> set[str]:
    """The rooms that a file's imports name."""
    found = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module:
            parts = node.module.split(".")
            if parts[0] == "bot":
                found |= {parts[1]} if len(parts) > 1 else {alias.name for alias in node.names}
        elif isinstance(node, ast.Import):
            found |= {a.name.split(".")[1] for a in node.names if a.name.startswith("bot.")}
    return found


def picture() -> str:
    """The whole picture as SVG."""
    plan = floors()
    order = [name for floor in plan for name in floor]
    names = frozenset(order)
    rooms = [room(name, names) for name in order]
    left = NAMES + BARS
    width, height = left + CELL * len(order) + 44, TOP + CELL * len(order) + 12
    pure = TOP + CELL * order.index(PURE_FROM)
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" role="img" '
        'font-family="DejaVu Sans, sans-serif" font-size="12">',
        "<title>The rooms of the bot in the order of their floors, and which imports which</title>",
        f'<rect width="{width}" height="{height}" fill="#fdfcf8"/>',
        f'<rect y="{pure}" width="{width}" height="{height - pure}" fill="#e8efe8"/>',
        '<text x="8" y="20" fill="#444">A row imports the rooms that its dots stand under;</text>',
        '<text x="8" y="36" fill="#444">the number is its length in lines.</text>',
        f'<text x="{left + 6}" y="{height - 20}" fill="#3d5a45">'
        "green: no clock, disk, environment or network</text>",
    ]
    parts += _floor_lines(plan, width)
    longest = max(told.lines for told in rooms)
    for place, told in enumerate(rooms):
        parts += _row(told, place, order, longest)
    return "\n".join([*parts, "</svg>", ""])


def _floor_lines(plan: list[list[str]], width: int) -> list[str]:
    """A thin line between floors."""
    lines, rows = [], 0
    for floor in plan:
        rows += len(floor)
        y = TOP + CELL * rows
        lines.append(f'<path d="M0 {y}H{width}" stroke="#cfc9bb" stroke-width=".8"/>')
    return lines


def _row(told: Room, place: int, order: list[str], longest: int) -> list[str]:
    """A room's name, its length, its column's name and a dot for each room that it imports."""
    y, left = TOP + CELL * place, NAMES + BARS
    middle = y + CELL / 2
    x = left + CELL * place + CELL / 2
    bar = (BARS - 52) * (told.lines / longest) ** 0.5
    parts = [
        f"<g><title>{escape(told.purpose)}</title>",
        f'<text x="{NAMES - 6}" y="{middle + 4}" text-anchor="end">{told.name}</text>',
        f'<rect x="{NAMES}" y="{y + 5}" width="{bar:.0f}" height="{CELL - 10}" fill="#b9ab8c"/>',
        f'<text x="{NAMES + bar + 4:.0f}" y="{middle + 4}" font-size="10" fill="#555">'
        f"{_rounded(told.lines)}</text>",
        f'<text transform="translate({x + 4},{TOP - 6}) rotate(-60)">{told.name}</text>',
        f'<rect x="{x - 3}" y="{middle - 3}" width="6" height="6" fill="#cfc9bb"/>',
    ]
    for other in sorted(told.imports, key=order.index):
        dot = left + CELL * order.index(other) + CELL / 2
        parts.append(
            f'<circle cx="{dot}" cy="{middle}" r="5" fill="#2f4b7c">'
            f"<title>{told.name} imports {other}</title></circle>"
        )
    return [*parts, "</g>"]


def _rounded(lines: int) -> str:
    """To one figure or the nearest hundred: the picture need not change with every commit."""
    return f"{round(lines, -2):,}" if lines >= 200 else f"{max(50, round(lines / 50) * 50)}"


def _titles(drawn: str) -> list[str]:
    return re.findall(r"<title>.*?</title>", drawn)


def main() -> int:
    """Write the picture, or compare it."""
    drawn = picture()
    if "--check" in sys.argv[1:]:
        # Lengths change with every commit and may be a little out of date; the rest may not.
        return int(_titles(PICTURE.read_text(encoding="utf-8")) != _titles(drawn))
    PICTURE.write_text(drawn, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
