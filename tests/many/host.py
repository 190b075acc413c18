"""One host: `serve` in a process of its own, whose clock is wrong by so many seconds.

Run as a program: `python tests/many/host.py SECONDS serve --only work`.
"""

import sys
from datetime import timedelta

import scheduler.clock

right = scheduler.clock.real_now
wrong_by = timedelta(seconds=float(sys.argv[1]))
# Before anything else is loaded: whoever asks for the time gets this host's.
scheduler.clock.real_now = lambda: right() + wrong_by

if __name__ == "__main__":
    from bot.__main__ import main

    sys.exit(main(sys.argv[2:]))
