"""`python -m bot read`: JSON lines in, JSON lines out, as the reader's contract describes them."""

import argparse
import json
import sys
from collections.abc import Iterable, Mapping
from datetime import datetime
from io import TextIOWrapper
from typing import Any, TextIO

from bot.entries import Asked, By, Understood
from bot.entry_lines import entry_line
from bot.json_lines import NotALine, instant_of, object_of
from bot.mendable import Mendable
from bot.parser import read
from bot.units import Unit

NAME = "read"
HELP = "read messages (JSON lines) and print what they mean"

_REQUIRED = ("id", "text", "at", "unit")
_KNOWN = {*_REQUIRED, "language", "by", "asked"}


class BadLine(ValueError):
    """A line that is no message of the contract; says why."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare none: messages come from standard input."""
    parser.description = HELP


def run(args: argparse.Namespace) -> int:
    """Read standard input, print to standard output."""
    del args
    # JSON lines are UTF-8 whatever the machine's language; half a surrogate pair, which JSON can
    # spell, goes out spelt as it came in.
    if isinstance(sys.stdout, TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8", errors="backslashreplace")
    answer_lines(getattr(sys.stdin, "buffer", sys.stdin), sys.stdout)
    return 0


def answer_lines(lines_in: Iterable[str | bytes], lines_out: TextIO) -> None:
    """Answer each line in order. Raises Mendable, naming the line, at the first bad one; the
    answers to those before it are out then."""
    try:
        for number, given in enumerate(lines_in, 1):
            line = given if isinstance(given, str) else _text(number, given)
            if line.strip():
                answer = json.dumps(_answered(number, line), ensure_ascii=False)
                lines_out.write(f"{answer}\n")
    finally:
        lines_out.flush()


def _text(number: int, line: bytes) -> str:
    try:
        return line.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise Mendable(f"line {number}: not UTF-8") from None


def _answered(number: int, line: str) -> dict[str, Any]:
    try:
        return answered(line)
    except BadLine as bad:
        raise Mendable(f"line {number}: {bad}") from bad


def answered(line: str) -> dict[str, Any]:
    """Read one line. Raises BadLine where it is not one of the contract's."""
    given = _object(line)
    understood = read(
        given["text"],
        at=_instant(given["at"]),
        unit=_one_of(Unit, given, "unit"),
        language=given.get("language") or "en",
        by=_one_of(By, given, "by", default=By.SELF),
        asked=_one_of(Asked, given, "asked", default=None),
    )
    return {"id": given["id"], **printed(understood)}


def printed(understood: Understood) -> dict[str, Any]:
    """What was understood in its printed form."""
    return {
        "entries": [entry_line(entry) for entry in understood.entries],
        "ask": understood.ask.value if understood.ask is not None else None,
    }


def _object(line: str) -> Mapping[str, Any]:
    try:
        given = object_of(line)
    except NotALine as fault:
        raise BadLine(str(fault)) from fault
    for name in _REQUIRED:
        if name not in given:
            raise BadLine(f"`{name}` is missing")
    for name in sorted(given.keys() - _KNOWN):
        raise BadLine(f"unknown field `{name}`")
    for name in (*_REQUIRED, "language"):
        left_out = name == "language" and given.get(name) is None
        if not left_out and not isinstance(given[name], str):
            raise BadLine(f"`{name}` must be a string")
    return given


def _instant(written: str) -> datetime:
    try:
        return instant_of(written)
    except NotALine as fault:
        raise BadLine(f"`at` {fault}: {written}") from fault


def _one_of(kind: Any, given: Mapping[str, Any], name: str, *, default: Any = ...) -> Any:
    written = given.get(name)
    if written is None and default is not ...:
        return default
    try:
        return kind(written)
    except ValueError as error:
        known = ", ".join(f"`{member.value}`" for member in kind)
        raise BadLine(f"`{name}` must be one of {known}, not {written!r}") from error
