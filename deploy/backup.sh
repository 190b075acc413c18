#!/bin/sh
# A dated copy of the SQLite database while the bot serves, and the newest ones kept.
#   sh deploy/backup.sh FOLDER [COUNT]    (COUNT is 14 if it is not told)
# The copy is checked before it gets its name. Nothing old is removed unless that went well.
set -eu
folder="${1:-}"
keep="${2:-14}"
case "$folder" in
    "") echo "backup.sh: say which folder" >&2; exit 2 ;;
esac
case "$keep" in
    "" | *[!0-9]* | 0) echo "backup.sh: say how many to keep, not '$keep'" >&2; exit 2 ;;
esac
if [ ! -d "$folder" ]; then
    echo "backup.sh: there is no folder $folder" >&2
    exit 1
fi

program="$(dirname "$0")/../.venv/bin/afterplate"
"$program" backup "$folder/afterplate-$(date -u +%Y%m%dT%H%M%SZ).db"

# The names sort by their dates.
find "$folder" -maxdepth 1 -name 'afterplate-*.db' | sort -r | tail -n "+$((keep + 1))" |
    while IFS= read -r old; do
        rm -f -- "$old"
    done
