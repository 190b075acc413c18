#!/bin/sh
# Plays demo/story.jsonl, two weeks of three invented people, through the real bot: the real chat
# client, a real SQLite file, the real alarm clock and delivery. Only the chat service is ours and
# runs on this machine. Needs Python 3.11 and a shell; no account, no network once set up.
#   sh demo/run.sh          play, print the conversations, leave everything in demo/out
#   sh demo/run.sh --chat   open the chat page instead and write yourself
set -eu
cd "$(dirname "$0")/.."
sh deploy/setup.sh run

case "${1:-}" in
    --chat) shift; exec .venv/bin/python -m bot try "$@" ;;
    "") ;;
    *) echo "demo/run.sh: nothing, or --chat; not '$1'" >&2; exit 2 ;;
esac

rm -rf demo/out
.venv/bin/python -m bot try --headless demo/story.jsonl --out demo/out
echo
echo "Left in demo/out:"
echo "  conversation.txt   what you just read"
echo "  record.jsonl       everything that was told, in order, with its pairs"
for chart in demo/out/*.png; do
    [ -e "$chart" ] && echo "  $(basename "$chart")"
done
