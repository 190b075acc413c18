#!/bin/sh
# The same for PostgreSQL, for a container that does nothing else: a dump now, then one every
# EVERY seconds (a day if it is not told), and the newest COUNT kept.
#   sh backup-postgres.sh FOLDER [COUNT] [EVERY]
# Where the database is, and as whom, pg_dump reads from PGHOST, PGUSER, PGPASSWORD, PGDATABASE.
# EVERY 0 makes one dump and ends.
set -eu
umask 077
folder="${1:-}"
keep="${2:-14}"
every="${3:-86400}"
if [ ! -d "$folder" ]; then
    echo "backup-postgres.sh: there is no folder $folder" >&2
    exit 1
fi
for number in "$keep" "$every"; do
    case "$number" in
        "" | *[!0-9]*) echo "backup-postgres.sh: '$number' is no number" >&2; exit 2 ;;
    esac
done

dump() {
    name="$folder/afterplate-$(date -u +%Y%m%dT%H%M%SZ).dump"
    # Read back before it gets its name: half a dump is worse than none, since nobody knows.
    if ! { pg_dump --format=custom --no-owner --file="$name.part" &&
        pg_restore --list "$name.part" >/dev/null; }; then
        rm -f -- "$name.part"
        return 1
    fi
    mv -- "$name.part" "$name"
    echo "backed up to $name; it holds health data, keep it safe"
    find "$folder" -maxdepth 1 -name 'afterplate-*.dump' | sort -r | tail -n "+$((keep + 1))" |
        while IFS= read -r old; do
            rm -f -- "$old"
        done
}

trap 'exit 0' TERM INT
while :; do
    if ! dump; then
        echo "backup-postgres.sh: no backup was made" >&2
        if [ "$every" -eq 0 ]; then exit 1; fi
    fi
    if [ "$every" -eq 0 ]; then exit 0; fi
    # In the background, so that the end of the container is not waited for.
    sleep "$every" &
    wait "$!"
done
