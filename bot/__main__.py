"""One program, many commands: the table, the exit codes, one clear line on standard error."""

import argparse
import contextlib
import importlib
import os
import sys
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from types import ModuleType
from typing import Any

from bot import __version__
from bot.mendable import Mendable

PROGRAM = "afterplate"

#: The module of each command; loaded only when named, so that `read` starts without a database.
COMMANDS: Mapping[str, str] = {
    "serve": "serve",
    "invite": "invite",
    "people": "people",
    "read": "read",
    "replay": "replay",
    "try": "trial",
    "export": "export",
    "import": "import_",
    "erase": "erase",
    "migrate": "migrate",
    "copy": "copy",
    "backup": "backup",
    "restore": "restore",
    "check": "check",
}

MENDABLE, WRONG_USAGE, OUR_FAULT, INTERRUPTED = 1, 2, 70, 130

#: One use of each command that takes an argument, shown below its help.
EXAMPLES: Mapping[str, str] = {
    "serve": "serve --webhook https://bot.example.org/hook --listen 127.0.0.1:8443",
    "invite": "invite --zone Europe/Lisbon --unit mg/dL --main-meal 13:00 --may-go-low no",
    "replay": "replay story.jsonl --out played",
    "try": "try --speed 360",
    "export": "export --format pdf --participant K7RMP2XWQH --out visit.pdf",
    "import": "import record.jsonl",
    "erase": "erase K7RMP2XWQH --yes",
    "copy": "copy --from sqlite:///afterplate.db --to postgresql://bot@db.example.org/afterplate",
    "backup": "backup afterplate-monday.db",
    "restore": "restore afterplate-monday.db",
    "check": "check --offline",
}

#: Shells whose completion can be printed (those that shtab knows).
SHELLS = ("bash", "zsh", "tcsh")


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and give the exit status: 0, 1 for what a person can mend, 2 wrong usage."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    named = [arguments[0]] if arguments and arguments[0] in COMMANDS else list(COMMANDS)
    _open_what_is_closed()
    try:
        args = parser_of(named).parse_args(arguments)
        status: int = args.run(args)
        sys.stdout.flush()
    except Mendable as error:
        sys.stderr.write(f"{PROGRAM}: {error}\n")
        return MENDABLE
    except KeyboardInterrupt:
        return INTERRUPTED
    except BrokenPipeError:
        # Who reads our output has had enough of it.
        _let_go_of_output()
        return 0
    except Exception as error:
        if (words := _words_of_the_machine(error)) is not None:
            sys.stderr.write(f"{PROGRAM}: {words}\n")
            _let_go_of_output()
            return MENDABLE
        # A traceback could show what somebody wrote: the class and the place must do.
        from bot.logs import place_of  # noqa: PLC0415 - only when something went wrong

        sys.stderr.write(f"{PROGRAM}: a fault of the program itself: {place_of(error)}\n")
        return OUR_FAULT
    return status


def _words_of_the_machine(error: Exception) -> str | None:
    """What the system says that a person can mend: a full disk, a folder that is read-only, a
    database that another program holds. None for any other error."""
    if isinstance(error, OSError) and error.strerror:
        return f"{error.filename}: {error.strerror}" if error.filename else error.strerror
    cause = getattr(error, "orig", None)  # SQLAlchemy's, which need not be loaded here
    if type(error).__name__ == "OperationalError" and cause is not None:
        return "the database cannot be used: " + " ".join(str(cause).split())
    return None


def _open_what_is_closed() -> None:
    """Without these the next file opened, the database, would be taken for a standard stream."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, mode, encoding="utf-8"))  # noqa: SIM115 - kept open


def _let_go_of_output() -> None:
    """The interpreter must not flush at its end into what does not take it."""
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def parser_of(named: Sequence[str]) -> argparse.ArgumentParser:
    """The parser of these commands; only their modules are loaded."""
    parser = argparse.ArgumentParser(
        prog=PROGRAM,
        description="A text-message bot for glucose tests in pairs.",
        epilog=f"Each command tells more of itself: {PROGRAM} COMMAND --help",
    )
    parser.add_argument("--version", action="version", version=f"{PROGRAM} {__version__}")
    parser.add_argument(
        "--print-completion",
        action=_Completion,
        choices=SHELLS,
        metavar="SHELL",
        help="print what makes this shell complete the commands and options: bash, zsh or tcsh",
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    for name in named:
        module = _load(name)
        example = f"example: {PROGRAM} {EXAMPLES[name]}" if name in EXAMPLES else None
        command = commands.add_parser(
            name, help=module.HELP, description=module.HELP, epilog=example
        )
        module.add_arguments(command)
        command.set_defaults(run=module.run)
    return parser


class _Completion(argparse.Action):
    """Prints the completion of a shell and ends."""

    def __call__(
        self,
        parser: argparse.ArgumentParser,
        _namespace: argparse.Namespace,
        values: Any,
        _option: str | None = None,
    ) -> None:
        import shtab  # noqa: PLC0415 - asked for once in an installation's life

        for action in _all_actions(parser):
            if action.type is Path:
                files = shtab.DIRECTORY if action.metavar == "DIR" else shtab.FILE
                action.complete = files  # type: ignore[attr-defined]
        sys.stdout.write(shtab.complete(parser, values) + "\n")
        parser.exit()


def _all_actions(parser: argparse.ArgumentParser) -> Iterator[argparse.Action]:
    for action in parser._actions:
        yield action
        if isinstance(action, argparse._SubParsersAction):
            for command in action.choices.values():
                yield from _all_actions(command)


def _load(name: str) -> ModuleType:
    return importlib.import_module(f"bot.commands.{COMMANDS[name]}")


if __name__ == "__main__":
    sys.exit(main())
