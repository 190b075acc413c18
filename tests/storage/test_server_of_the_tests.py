"""The PostgreSQL of the tests leaves nothing behind."""

import os
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.postgres import Server

pytestmark = [
    pytest.mark.skipif(sys.platform != "linux", reason="looks into /proc"),
    pytest.mark.usefixtures("postgres_server"),  # where there is none, these are skipped too
]

#: Begins a server, says where it is, and is killed.
KILLED = """
import importlib.util, os, signal, sys
spec = importlib.util.spec_from_file_location("postgres", sys.argv[1])
postgres = importlib.util.module_from_spec(spec)
sys.modules["postgres"] = postgres
spec.loader.exec_module(postgres)
with postgres.Server.begun() as server:
    print(server.process.pid, server.folder, flush=True)
    os.kill(os.getpid(), signal.SIGKILL)
"""


def runs(process: int) -> bool:
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    return not Path(f"/proc/{process}/stat").exists() or state(process) != "Z"


def state(process: int) -> str:
    """The letter that the system has for what a process is doing; Z: it has ended."""
    return Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()[0]


def test_it_runs_as_nobody_of_importance_and_ends_with_its_block() -> None:
    with Server.begun() as server:
        assert server.process is not None
        process = server.process
        assert Path(f"/proc/{process.pid}").stat().st_uid != 0
        assert server.sql("SELECT 1") == [(1,)]
        assert server.folder.stat().st_mode & 0o077 == 0
    assert process.poll() is not None
    assert not server.folder.exists()


def test_it_comes_back_after_a_crash_of_its_own() -> None:
    with Server.begun() as server, server.database() as url:
        name = url.partition("@/")[2].partition("?")[0]
        server.sql("CREATE TABLE kept AS SELECT 7 AS number", name)
        server.restart(signal.SIGQUIT)
        assert server.sql("SELECT number FROM kept", name) == [(7,)]


def test_it_ends_where_the_process_that_runs_the_tests_is_killed(checkout: Path) -> None:
    begun = subprocess.run(
        [sys.executable, "-c", KILLED, str(checkout / "tests/postgres.py")],
        cwd=checkout,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert begun.returncode == -signal.SIGKILL, begun.stderr
    process, _, folder = begun.stdout.strip().partition(" ")
    try:
        for _ in range(400):
            if not runs(int(process)):
                break
            time.sleep(0.05)
        assert not runs(int(process))
    finally:
        shutil.rmtree(folder, ignore_errors=True)
