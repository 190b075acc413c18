"""The container and compose files. No engine runs here: linters and the published schema read
them, and whatever of them can run without an engine is run."""

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from http import HTTPStatus
from pathlib import Path
from typing import Any

import pytest
from ruamel.yaml import YAML

from bot.metrics.endpoint import Answer, listening
from bot.settings import PREFIX, Settings
from tests.metrics.asking import free_place

CHECKOUT = Path(__file__).resolve().parents[2]
DEPLOY = CHECKOUT / "deploy"
CONTAINERS = sorted(path for path in DEPLOY.rglob("Containerfile*"))
COMPOSES = sorted(path for path in DEPLOY.rglob("*compose*.y*ml"))
SCRIPTS = sorted(DEPLOY.rglob("*.sh"))
TOOLS = Path(sys.executable).parent
PINNED = r"(?:[\w.-]+/)+[\w-]+:\d+\.\d+[\w.-]*"


def tool(*command: str | Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(command, capture_output=True, text=True, check=False)


@pytest.mark.skipif(not (TOOLS / "hadolint").exists(), reason="hadolint is built for x86_64 only")
@pytest.mark.parametrize("path", CONTAINERS, ids=lambda path: str(path.relative_to(DEPLOY)))
def test_hadolint_finds_nothing(path: Path) -> None:
    found = tool(TOOLS / "hadolint", path)
    assert (found.returncode, found.stdout) == (0, "")


@pytest.mark.skipif(not (TOOLS / "hadolint").exists(), reason="hadolint is built for x86_64 only")
def test_hadolint_does_find_what_is_wrong(tmp_path: Path) -> None:
    wrong = tmp_path / "Containerfile"
    wrong.write_text("FROM python:latest\nRUN cd /tmp\n")
    assert tool(TOOLS / "hadolint", wrong).returncode != 0


@pytest.mark.parametrize("path", COMPOSES, ids=lambda path: str(path.relative_to(DEPLOY)))
def test_compose_file_keeps_to_the_specification(path: Path) -> None:
    """The Compose Specification's own JSON schema, as check-jsonschema brings it."""
    checked = tool(TOOLS / "check-jsonschema", "--builtin-schema", "vendor.compose-spec", path)
    assert checked.returncode == 0, checked.stdout + checked.stderr


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: str(path.relative_to(DEPLOY)))
def test_script_is_plain_shell(path: Path) -> None:
    read = tool("sh", "-n", path)
    assert read.returncode == 0, read.stderr
    assert path.read_text(encoding="utf-8").startswith("#!/bin/sh\n")


# ── The container ────────────────────────────────────────────────────────────


@pytest.fixture(scope="module")
def steps() -> list[str]:
    """The instructions of the container file, a line each."""
    text = (DEPLOY / "Containerfile").read_text(encoding="utf-8")
    text = re.sub(r"^#.*\n", "", text, flags=re.MULTILINE)
    return [line for line in text.replace("\\\n", " ").splitlines() if line.strip()]


def test_the_container_is_built_in_two_stages_from_one_pinned_base(steps: list[str]) -> None:
    bases = [step.split()[1] for step in steps if step.startswith("FROM ")]
    assert len(bases) == 2
    assert len(set(bases)) == 1
    assert re.fullmatch(PINNED, bases[0])
    asked = (CHECKOUT / "pyproject.toml").read_text(encoding="utf-8")
    version = re.search(r"python:(\d+\.\d+)", bases[0])
    assert version is not None
    assert f"Programming Language :: Python :: {version[1]}" in asked


def test_the_container_installs_what_the_lock_says_and_runs_as_nobody(steps: list[str]) -> None:
    built = [step for step in steps if "pip install" in step]
    assert "--require-hashes --requirement requirements.lock" in built[0]
    assert all("--no-deps" in step for step in built[1:])
    last_user = [step for step in steps if step.startswith("USER ")][-1]
    assert re.fullmatch(r"USER [1-9]\d+:[1-9]\d+", last_user)
    assert steps.index(last_user) < steps.index('ENTRYPOINT ["afterplate"]')


def test_what_the_container_copies_is_there_and_holds_no_secret(steps: list[str]) -> None:
    copied = [
        name
        for step in steps
        if step.startswith("COPY ") and "--from" not in step
        for name in step.split()[1:-1]
    ]
    assert set(copied) == {
        *("requirements.lock", "pyproject.toml", "README.md", "LICENSE", "bot", "scheduler")
    }
    assert not [name for name in copied if not (CHECKOUT / name).exists()]


@pytest.fixture
def healthcheck(steps: list[str]) -> list[str]:
    (step,) = (step for step in steps if step.startswith("HEALTHCHECK"))
    command: list[str] = YAML(typ="safe").load(step.split("CMD", 1)[1])
    return command


@pytest.mark.parametrize(("status", "exit_status"), [(200, 0), (503, 1)])
def test_the_healthcheck_asks_the_liveness_endpoint(
    status: int, exit_status: int, healthcheck: list[str]
) -> None:
    place = free_place()
    answer = Answer(status=HTTPStatus(status), content=b"")
    port = place.rpartition(":")[2]
    command = [part.replace(":9108", f":{port}") for part in healthcheck]
    assert command != healthcheck
    with listening(place, {"/alive": lambda _accept: answer}):
        asked = tool(sys.executable, *command[1:])
    assert asked.returncode == exit_status


# ── Compose ──────────────────────────────────────────────────────────────────


@pytest.fixture(scope="module")
def compose() -> dict[str, Any]:
    told: dict[str, Any] = YAML(typ="safe").load(DEPLOY / "compose.yaml")
    return told


@pytest.fixture(scope="module")
def services(compose: dict[str, Any]) -> dict[str, dict[str, Any]]:
    told: dict[str, dict[str, Any]] = compose["services"]
    return told


def test_the_bot_its_database_and_a_backup_run(services: dict[str, dict[str, Any]]) -> None:
    assert set(services) == {"bot", "migrate", "database", "backup"}
    assert services["bot"]["depends_on"]["migrate"] == {
        "condition": "service_completed_successfully"
    }
    assert services["migrate"]["depends_on"]["database"] == {"condition": "service_healthy"}


def test_no_service_may_more_than_it_needs(services: dict[str, dict[str, Any]]) -> None:
    for name, service in services.items():
        assert service["read_only"] is True, name
        assert service["cap_drop"] == ["ALL"], name
        assert service["security_opt"] == ["no-new-privileges:true"], name
        assert "privileged" not in service, name
        assert service["logging"]["options"]["max-size"], name  # lines are rotated
    assert "cap_add" not in services["bot"]
    assert services["database"]["networks"] == ["inside"]
    assert all("ports" not in services[name] for name in ("database", "migrate", "backup"))
    assert all(port.startswith("127.0.0.1:") for port in services["bot"]["ports"])


def test_the_database_reaches_nothing_outside(compose: dict[str, Any]) -> None:
    assert compose["networks"]["inside"]["internal"] is True


def test_images_are_pinned_and_the_two_of_postgres_are_one(
    services: dict[str, dict[str, Any]],
) -> None:
    bought = {service["image"] for service in services.values()} - {"localhost/afterplate:local"}
    assert len(bought) == 1
    assert all(re.fullmatch(PINNED, image) for image in bought)


def texts(found: object) -> Iterator[str]:
    if isinstance(found, dict):
        for key, value in found.items():
            yield from (str(key), *texts(value))
    elif isinstance(found, list):
        for value in found:
            yield from texts(value)
    else:
        yield str(found)


def test_no_secret_stands_in_the_file_and_every_setting_is_one(compose: dict[str, Any]) -> None:
    told = "\n".join(texts(compose))
    known = {PREFIX + name.upper() for name in Settings.model_fields}
    assert set(re.findall(rf"{PREFIX}[A-Z_]+", told)) <= known
    passwords = re.findall(r"(?:PASSWORD(?:: |\n)|afterplate:)(\S+)", told)
    assert passwords
    assert all(word.startswith(("${DATABASE_PASSWORD:?", "local")) for word in passwords)


def test_the_bot_has_longer_to_end_than_it_takes(services: dict[str, dict[str, Any]]) -> None:
    assert services["bot"]["stop_grace_period"] == "20s"


def test_the_files_that_it_mounts_are_there(services: dict[str, dict[str, Any]]) -> None:
    mounted = [
        volume.split(":")[0]
        for service in services.values()
        for volume in service.get("volumes", ())
        if volume.startswith(".")
    ]
    assert mounted == ["./backup-postgres.sh"]
    assert all((DEPLOY / name).is_file() for name in mounted)
    assert os.path.normpath(DEPLOY / services["bot"]["build"]["context"]) == str(CHECKOUT)


@pytest.mark.slow
def test_what_the_container_copies_is_enough_to_install_from(
    steps: list[str], tmp_path: Path
) -> None:
    """The build stage's own last line, without an index, on nothing but what is copied there."""
    source = tmp_path / "src"
    source.mkdir()
    for name in ("pyproject.toml", "README.md", "LICENSE"):
        shutil.copy(CHECKOUT / name, source)
    for name in ("bot", "scheduler"):
        ignored = shutil.ignore_patterns("__pycache__")
        shutil.copytree(CHECKOUT / name, source / name, ignore=ignored)
    (step,) = (step for step in steps if "--no-build-isolation" in step)
    line, compiled = map(str.strip, step.split(" && "))
    assert line == (
        "RUN /opt/afterplate/bin/pip install --no-cache-dir --no-deps --no-build-isolation ."
    )
    # `-OO`, as it runs: what is compiled otherwise would not be used.
    assert compiled == "/opt/afterplate/bin/python -OO -m compileall -q -j 0 /opt/afterplate/lib"
    options = line.partition("pip install ")[2].split()
    installed = subprocess.run(
        [sys.executable, "-m", "pip", "install", "-q", *options, "--no-index", "--target", "there"],
        cwd=source,
        capture_output=True,
        text=True,
        check=False,
    )
    assert installed.returncode == 0, installed.stderr
    assert (source / "there/bin/afterplate").exists()
