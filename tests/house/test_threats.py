"""Every threat of the table has a test, and the test is there."""

import ast
import re
from pathlib import Path


def test_every_row_names_a_test_that_exists(checkout: Path) -> None:
    page = (checkout / "docs/threats.md").read_text(encoding="utf-8")
    rows = [line for line in page.splitlines() if line.startswith("| ")][1:]
    assert len(rows) > 12
    for row in rows:
        if row.startswith("| ---"):
            continue
        named = re.findall(r"`(tests/[\w/]+\.py)::(\w+)`", row)
        assert named, row
        for path, name in named:
            tree = ast.parse((checkout / path).read_text(encoding="utf-8"))
            kinds = (ast.FunctionDef, ast.AsyncFunctionDef)
            assert name in {node.name for node in ast.walk(tree) if isinstance(node, kinds)}, name
