"""The locks: what stands in them is what pyproject.toml asks for, whole, and by hash."""

import re
import sys
import tomllib
from collections.abc import Iterator
from importlib import metadata
from pathlib import Path
from typing import Any

import pytest
from packaging.markers import Marker, default_environment
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from packaging.version import Version

RUN, TEST = "requirements.lock", "requirements-test.lock"
PINNED = re.compile(
    r"^(?P<name>[\w.-]+)(?:\[[\w,]+\])?==(?P<version>\S+)(?: ; (?P<marker>[^\\]+?))? \\\n"
    r"(?P<hashes>(?: {4}--hash=sha256:[0-9a-f]{64}(?: \\)?\n)+)",
    re.MULTILINE,
)


PYTHONS = ("3.11", "3.12", "3.13")
HERE = f"{sys.version_info.major}.{sys.version_info.minor}"


def pins(checkout: Path, lock: str, on: str = HERE) -> dict[str, Version]:
    """The versions for this system and a Python; a library may have one for each."""
    text = (checkout / lock).read_text(encoding="utf-8")
    there = {**default_environment(), "python_version": on, "python_full_version": f"{on}.0"}
    found = [
        (canonicalize_name(pin["name"]), Version(pin["version"]))
        for pin in PINNED.finditer(text)
        if pin["marker"] is None or Marker(pin["marker"]).evaluate({**there, "extra": ""})
    ]
    assert len(dict(found)) == len(found), "a library stands there twice"
    return dict(found)


@pytest.fixture(scope="module")
def project(checkout: Path) -> dict[str, Any]:
    text = (checkout / "pyproject.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


def wanted(project: dict[str, Any], *extras: str) -> Iterator[Requirement]:
    told = project["project"]
    for line in told["dependencies"]:
        yield Requirement(line)
    for extra in extras:
        for line in told["optional-dependencies"][extra]:
            yield Requirement(line)
    for line in project["build-system"]["requires"]:
        yield Requirement(line)


@pytest.mark.parametrize(
    ("lock", "extras"), [(RUN, ("postgres",)), (TEST, ("postgres", "test"))], ids=["run", "test"]
)
@pytest.mark.parametrize("on", PYTHONS)
def test_every_library_asked_for_is_locked_within_its_range(
    on: str, lock: str, extras: tuple[str, ...], checkout: Path, project: dict[str, Any]
) -> None:
    locked = pins(checkout, lock, on)
    for requirement in wanted(project, *extras):
        name = canonicalize_name(requirement.name)
        assert name in locked, f"{name} is not in {lock}: make the locks anew (DEVELOPERS.md)"
        assert requirement.specifier.contains(locked[name]), f"{name} {locked[name]} in {lock}"


@pytest.mark.parametrize("lock", [RUN, TEST])
def test_every_line_is_a_pin_with_hashes_and_nothing_else(lock: str, checkout: Path) -> None:
    text = (checkout / lock).read_text(encoding="utf-8")
    rest = PINNED.sub("", text)
    left = [
        line for line in rest.splitlines() if line.strip() and not line.lstrip().startswith("#")
    ]
    assert left == []


@pytest.mark.parametrize("on", PYTHONS)
def test_what_is_tested_is_what_runs(on: str, checkout: Path) -> None:
    run, test = pins(checkout, RUN, on), pins(checkout, TEST, on)
    assert {name: test.get(name) for name in run} == run


def test_the_libraries_of_this_environment_are_the_locked_ones(checkout: Path) -> None:
    other = {}
    for name, version in pins(checkout, TEST).items():
        try:
            found = Version(metadata.version(name))
        except metadata.PackageNotFoundError:
            continue  # of another system or Python: its marker keeps it out
        if found != version:
            other[name] = (found, version)
    assert other == {}


def test_whatever_a_locked_library_needs_is_locked_too(checkout: Path) -> None:
    """Then `pip install --require-hashes` asks for nothing that the lock does not know."""
    locked = pins(checkout, TEST)
    missing = []
    for name in locked:
        try:
            needs = metadata.requires(name) or []
        except metadata.PackageNotFoundError:
            continue
        for line in needs:
            need = Requirement(line)
            environment = {**default_environment(), "extra": ""}
            if need.marker is not None and not need.marker.evaluate(environment):
                continue
            version = locked.get(canonicalize_name(need.name))
            if version is None or not need.specifier.contains(version, prereleases=True):
                missing.append(f"{name} needs {need}")
    assert missing == []


def test_the_page_tells_how_both_are_made(checkout: Path) -> None:
    told = (checkout / "DEVELOPERS.md").read_text(encoding="utf-8")
    for lock in (RUN, TEST):
        assert f"-o {lock}" in told
    assert "--generate-hashes" in told
    assert "DEVELOPERS.md" in (checkout / RUN).read_text(encoding="utf-8").splitlines()[0]
