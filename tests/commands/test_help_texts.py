"""Every command, argument and option says what it is for, and what holds where it is left out."""

import argparse
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from bot import __version__
from bot.__main__ import COMMANDS, EXAMPLES, SHELLS, main, parser_of

PARSER = parser_of(list(COMMANDS))
(SUBPARSERS,) = (one for one in PARSER._actions if isinstance(one, argparse._SubParsersAction))


def options() -> Iterator[tuple[str, argparse.ArgumentParser, argparse.Action]]:
    for name, command in SUBPARSERS.choices.items():
        for action in command._actions:
            yield name, command, action


@pytest.mark.parametrize(
    ("command", "parser", "action"),
    [pytest.param(*one, id=f"{one[0]} {one[2].dest}") for one in options()],
)
def test_option_says_what_it_is_for_and_its_default(
    command: str, parser: argparse.ArgumentParser, action: argparse.Action
) -> None:
    assert action.help, command
    told = action.help % vars(action)
    needless = action.required or action.nargs == 0  # a switch is off unless it is given
    if action.option_strings and not needless:
        assert "default" in told, f"{command} {action.option_strings[0]}: what if it is left out?"
    if action.default not in (None, False, argparse.SUPPRESS) and isinstance(
        action.default, (str, int, float)
    ):
        assert (
            f"{action.default:g}"
            if isinstance(action.default, float)
            else str(action.default) in told
        )
    assert parser.format_help()


@pytest.mark.parametrize("command", COMMANDS)
def test_command_says_what_it_does(command: str) -> None:
    parser = SUBPARSERS.choices[command]
    assert parser.description
    (told,) = (one.help for one in SUBPARSERS._choices_actions if one.dest == command)
    assert told
    if len(parser._actions) > 1:
        assert PARSER.parse_args(EXAMPLES[command].split())
        assert EXAMPLES[command] in (parser.epilog or "")


def test_the_version_stands_in_one_place(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--version"])
    assert ended.value.code == 0
    assert capsys.readouterr().out == f"afterplate {__version__}\n"


@pytest.mark.parametrize(
    "arguments", [[], ["dance"], ["serve", "--dance"], ["erase"], ["try", "x"]]
)
def test_wrong_usage_is_told_on_standard_error_and_ends_with_two(
    arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as ended:
        main(arguments)
    assert ended.value.code == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith("usage: afterplate")


# ── Completion ───────────────────────────────────────────────────────────────

ASK_BASH = """
source "$1"
shift
COMP_WORDS=(afterplate "$@")
COMP_CWORD=$#
COMP_LINE="${COMP_WORDS[*]}"
COMP_POINT=${#COMP_LINE}
_shtab_afterplate
printf '%s\\n' "${COMPREPLY[@]}"
"""


@pytest.fixture(scope="module")
def completion(tmp_path_factory: pytest.TempPathFactory) -> Path:
    printed = subprocess.run(
        [sys.executable, "-m", "bot", "--print-completion", "bash"],
        cwd=Path(__file__).resolve().parents[2],
        capture_output=True,
        text=True,
        check=True,
    )
    assert printed.stderr == ""
    path = tmp_path_factory.mktemp("completion") / "afterplate"
    path.write_text(printed.stdout, encoding="utf-8")
    return path


@pytest.mark.parametrize(
    ("typed", "offered"),
    [
        (["re"], {"read", "replay", "restore"}),
        (["export", "--for"], {"--format"}),
        (["export", "--format", ""], {"jsonl", "csv", "fhir", "pdf"}),
        (["invite", "--may-go-low", "un"], {"unknown"}),
        (["--print-completion", ""], set(SHELLS)),
    ],
    ids=lambda words: " ".join(words) if isinstance(words, list) else "",
)
def test_bash_itself_completes(completion: Path, typed: list[str], offered: set[str]) -> None:
    asked = subprocess.run(
        ["bash", "--norc", "-c", ASK_BASH, "bash", completion, *typed],
        capture_output=True,
        text=True,
        check=False,
    )
    assert set(asked.stdout.split()) == offered, asked.stderr


def test_bash_offers_files_where_a_file_is_wanted(completion: Path, tmp_path: Path) -> None:
    (tmp_path / "copy.db").touch()
    asked = subprocess.run(
        ["bash", "--norc", "-c", ASK_BASH, "bash", completion, "restore", "co"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert asked.stdout.split() == ["copy.db"], asked.stderr


@pytest.mark.parametrize("shell", SHELLS)
def test_every_shell_gets_a_completion_of_all_commands(
    shell: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--print-completion", shell])
    assert ended.value.code == 0
    printed = capsys.readouterr().out
    assert not [command for command in COMMANDS if command not in printed]
