#!/bin/sh
# Makes .venv at the root of the checkout from a lock file; does nothing if it is there already.
#   sh deploy/setup.sh         what the bot needs to run    (requirements.lock)
#   sh deploy/setup.sh test    and what its checks need      (requirements-test.lock)
# Ends with 1 and one clear line when something is missing on the machine.
set -eu
cd "$(dirname "$0")/.."

case "${1:-run}" in
    run) lock=requirements.lock; mark=run ;;
    test) lock=requirements-test.lock; mark=test ;;
    *) echo "setup.sh: say 'run' or 'test', not '$1'" >&2; exit 2 ;;
esac

# The stamp tells which lock .venv was made from. The test lock holds all of the other one.
stamp="$(cat "$lock" pyproject.toml | cksum)"
[ "$(cat ".venv/made-$mark" 2>/dev/null)" = "$stamp" ] && [ -x .venv/bin/python ] && exit 0

python=""
for candidate in python3.11 python3.12 python3.13 python3 python; do
    if "$candidate" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
        python="$candidate"
        break
    fi
done
if [ -z "$python" ]; then
    echo "setup.sh: Python 3.11 or newer is needed; found: $(python3 --version 2>/dev/null || echo none)" >&2
    exit 1
fi
if ! "$python" -c 'import venv, ensurepip' 2>/dev/null; then
    echo "setup.sh: $python has no venv module (on Debian: apt install python3-venv)" >&2
    exit 1
fi

echo "setup.sh: making .venv from $lock, once" >&2
[ -x .venv/bin/python ] || "$python" -m venv .venv
pip() { .venv/bin/python -m pip --disable-pip-version-check "$@"; }
if ! pip install -qq --require-hashes --requirement "$lock"; then
    echo "setup.sh: the libraries of $lock could not be installed (no network, or no package index?)" >&2
    exit 1
fi
pip install -qq --no-deps --no-build-isolation --editable .
echo "$stamp" > ".venv/made-$mark"
if [ "$mark" = test ]; then
    cat requirements.lock pyproject.toml | cksum > .venv/made-run
fi
