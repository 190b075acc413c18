"""One program, many commands: the table, the exit codes, one clear line on standard error."""

import argparse
import importlib
import os
import sys
from collections.abc import Mapping, Sequence
from types import ModuleType

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


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and give the exit status: 0, 1 for what a person can mend, 2 wrong usage."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    named = [arguments[0]] if arguments and arguments[0] in COMMANDS else list(COMMANDS)
    try:
        args = _parser(named).parse_args(arguments)
        status: int = args.run(args)
    except Mendable as error:
        sys.stderr.write(f"{PROGRAM}: {error}\n")
        return MENDABLE
    except KeyboardInterrupt:
        return INTERRUPTED
    except BrokenPipeError:
        # Who reads our output has had enough of it; the interpreter must not flush into it.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except Exception as error:
        # A traceback could show what somebody wrote: the class and the place must do.
        from bot.logs import place_of  # noqa: PLC0415 - only when something went wrong

        sys.stderr.write(f"{PROGRAM}: a fault of the program itself: {place_of(error)}\n")
        return OUR_FAULT
    return status


def _parser(named: Sequence[str]) -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog=PROGRAM, description="A text-message bot for glucose tests in pairs."
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    for name in named:
        module = _load(name)
        command = commands.add_parser(name, help=module.HELP, description=module.HELP)
        module.add_arguments(command)
        command.set_defaults(run=module.run)
    return parser


def _load(name: str) -> ModuleType:
    return importlib.import_module(f"bot.commands.{COMMANDS[name]}")


if __name__ == "__main__":
    sys.exit(main())
