"""A command whose standard error is a terminal: a pseudo-terminal of this machine."""

import contextlib
import os
import pty
import signal
import subprocess
import sys
import termios
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parents[2]


@dataclass(slots=True)
class Seen:
    """What a finished or running command has shown."""

    process: subprocess.Popen[bytes]
    screen: int
    text: str = ""

    def until(self, found: Callable[[str], bool], seconds: float = 30.0) -> str:
        """Read the terminal until that is so; raises TimeoutError if it never is."""
        end = time.monotonic() + seconds  # noqa: TID251 - a test's patience
        os.set_blocking(self.screen, False)
        while not found(self.text):
            if time.monotonic() > end:  # noqa: TID251
                raise TimeoutError(self.text)
            try:
                self.text += os.read(self.screen, 4096).decode()
            except BlockingIOError:
                time.sleep(0.01)
            except OSError:  # the terminal's other end is closed
                break
        return self.text

    def ended(self, seconds: float = 30.0) -> int:
        """Wait for the end, and read what is left."""
        status = self.process.wait(seconds)
        with contextlib.suppress(TimeoutError):
            self.until(lambda _text: False, 0.2)
        return status


@contextlib.contextmanager
def on_a_terminal(folder: Path, *arguments: str, **settings: str) -> Iterator[Seen]:
    """Run a command in a folder with standard error on a terminal."""
    ours, theirs = pty.openpty()
    termios.tcsetwinsize(theirs, (24, 100))
    environment = {name: value for name, value in os.environ.items() if "AFTERPLATE" not in name}
    environment |= {f"AFTERPLATE_{name.upper()}": value for name, value in settings.items()}
    process = subprocess.Popen(
        [sys.executable, "-m", "bot", *arguments],
        cwd=folder,
        env={**environment, "PYTHONPATH": str(CHECKOUT)},
        stdout=subprocess.DEVNULL,
        stderr=theirs,
    )
    os.close(theirs)
    try:
        yield Seen(process, ours)
    finally:
        if process.poll() is None:
            process.send_signal(signal.SIGKILL)
            process.wait()
        os.close(ours)
