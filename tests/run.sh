#!/bin/sh
# Sets up, then runs all tests. Arguments go to pytest: sh tests/run.sh tests/parser -k comma
set -eu
cd "$(dirname "$0")/.."
sh deploy/setup.sh test

export HYPOTHESIS_PROFILE="${HYPOTHESIS_PROFILE:-ci}"
if [ $# -gt 0 ]; then
    exec .venv/bin/python -m pytest "$@"
fi
exec .venv/bin/python -m pytest -n auto --dist loadfile
