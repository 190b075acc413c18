"""What an idle bot costs: `python tests/bench/bench_idle.py`. Linux only.

The real `serve`, polling the stand-in over loopback, with some people enrolled, its word lists
made and nothing to do; run as the units run it (PYTHONOPTIMIZE=2, PYTHONNODEBUGRANGES=1, compiled
before). Resident memory counts pages shared with other programs too; private memory is its own.
"""

import argparse
import asyncio
import os
import subprocess
import sys
import tempfile
import time
from datetime import timedelta
from pathlib import Path

from bot.participants import Participant
from bot.storage.store import Store
from bot.trial.stand_in import TOKEN, StandIn
from bot.units import Unit
from scheduler.clock import real_now

PEOPLE = 100


def memory(pid: int) -> dict[str, float]:
    """Megabytes by the kernel's own sums over a process's mappings."""
    lines = Path(f"/proc/{pid}/smaps_rollup").read_text().splitlines()[1:]
    kilobytes = {line.split(":")[0]: int(line.split()[1]) for line in lines}
    private = kilobytes["Private_Clean"] + kilobytes["Private_Dirty"]
    return {"resident": kilobytes["Rss"] / 1024, "private": private / 1024}


def cpu_seconds(pid: int) -> float:
    """What it has used of a core, of its children nothing."""
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


async def settled(pid: int) -> None:
    """Wait until it serves and has nothing to do: no processor time for three seconds."""
    used = -1.0
    while (now := cpu_seconds(pid)) != used:
        used = now
        await asyncio.sleep(3)


async def measure(folder: Path, seconds: float, optimize: int) -> None:
    """Serve, wait, and print the figures."""
    database = f"sqlite:///{folder / 'bot.db'}"
    store, now = Store.open(database), real_now()
    with store.turn() as work:
        for number in range(PEOPLE):
            who = Participant(id=f"p{number}", unit=Unit.MG_DL, zone="UTC", joined_at=now)
            work.enrol(who, now, now + timedelta(days=7))
    store.close()
    async with StandIn(real_now) as server:
        process = await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "bot", "serve"),
            env={
                **{name: os.environ[name] for name in ("PATH", "PYTHONPATH") if name in os.environ},
                "PYTHONOPTIMIZE": str(optimize),
                "PYTHONNODEBUGRANGES": "1",
                "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
                "AFTERPLATE_TELEGRAM_API": server.url,
                "AFTERPLATE_DATABASE": database,
            },
            stderr=asyncio.subprocess.DEVNULL,
        )
        await settled(process.pid)
        began, used = time.perf_counter(), cpu_seconds(process.pid)
        for name, megabytes in memory(process.pid).items():
            sys.stdout.write(f"{name} memory once all is ready: {megabytes:.1f} MB\n")
        await asyncio.sleep(seconds)
        for name, megabytes in memory(process.pid).items():
            sys.stdout.write(f"{name} memory {seconds:.0f} s later: {megabytes:.1f} MB\n")
        share = (cpu_seconds(process.pid) - used) / (time.perf_counter() - began)
        sys.stdout.write(f"of one core: {share:.2%}\n")
        process.terminate()
        await process.wait()


def main() -> None:
    """Print what it costs."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=float, default=60)
    parser.add_argument("--optimize", type=int, default=2, help="PYTHONOPTIMIZE (default: 2)")
    args = parser.parse_args()
    loaded = "import bot.commands.serve, bot.wiring"  # leaves the compiled files behind
    as_run = {**os.environ, "PYTHONOPTIMIZE": str(args.optimize), "PYTHONDONTWRITEBYTECODE": ""}
    subprocess.run((sys.executable, "-c", loaded), env=as_run, check=True)
    with tempfile.TemporaryDirectory() as name:
        asyncio.run(measure(Path(name), args.seconds, args.optimize))


if __name__ == "__main__":
    main()
