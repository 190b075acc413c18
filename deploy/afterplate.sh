#!/bin/sh
# `afterplate` for the operator: a command as the bot's own user, with the bot's settings (from
# /var/lib/afterplate/.env, which leads to /etc/afterplate.env). Put it at
# /usr/local/bin/afterplate. Files that a command names are looked for in /var/lib/afterplate,
# and only that user's rights count: for others use standard input and output.
set -eu
cd /var/lib/afterplate
exec sudo -u afterplate /opt/afterplate/.venv/bin/afterplate "$@"
