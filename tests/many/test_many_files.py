"""The files for several machines say what the program takes."""

import re
import shlex
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from dotenv import dotenv_values
from ruamel.yaml import YAML

from bot.__main__ import parser_of
from bot.chat.webhook import LARGEST_BODY, place_to_listen
from bot.settings import PREFIX, Settings

MANY = Path(__file__).resolve().parents[2] / "deploy" / "many"


@pytest.fixture(scope="module")
def services() -> dict[str, dict[str, Any]]:
    told: dict[str, dict[str, Any]] = YAML(typ="safe").load(MANY / "compose.yaml")["services"]
    return told


def parsed(command: list[str]) -> Any:
    return parser_of(["serve"]).parse_args(command)


def test_two_receive_and_two_work_and_none_of_them_may_more_than_it_needs(
    services: dict[str, dict[str, Any]],
) -> None:
    roles = [
        parsed(service["command"]).only
        for service in services.values()
        if service.get("command", [""])[0] == "serve"
    ]
    assert sorted(roles) == ["receive", "receive", "work", "work"]
    for name, service in services.items():
        assert service["read_only"] is True, name
        assert service["cap_drop"] == ["ALL"], name
        assert service["security_opt"] == ["no-new-privileges:true"], name
    assert [name for name, service in services.items() if "ports" in service] == ["balancer"]
    assert services["database"]["networks"] == ["inside"]
    assert all("front" not in services[name]["networks"] for name in ("worker-1", "worker-2"))


def test_the_balancer_hands_on_to_where_the_receivers_listen(
    services: dict[str, dict[str, Any]],
) -> None:
    caddy = (MANY / "Caddyfile").read_text(encoding="utf-8")
    (line,) = re.findall(r"reverse_proxy (.*) \{", caddy)
    for place in line.split():
        name, _, port = place.partition(":")
        told = parsed(services[name]["command"])
        assert place_to_listen(told.webhook, told.listen)[1] == int(port)
        assert told.webhook.endswith("/hook")
    assert re.search(r"max_size 1MB", caddy)
    assert LARGEST_BODY == 1_000_000


def test_the_example_of_settings_names_only_settings_and_options_that_there_are() -> None:
    text = (MANY / "afterplate.env.example").read_text(encoding="utf-8")
    told = dotenv_values(stream=StringIO(re.sub(r"^#([A-Z_]+=)", r"\1", text, flags=re.MULTILINE)))
    known = {PREFIX + name.upper() for name in Settings.model_fields}
    assert set(told) - {"SERVE_OPTIONS"} <= known
    options = shlex.split(told["SERVE_OPTIONS"] or "")
    assert parsed(["serve", "--only", "receive", *options]).listen == "10.0.0.11:8080"
    assert (told["AFTERPLATE_DATABASE"] or "").startswith("postgresql://afterplate_bot:")


def test_the_unit_of_a_role_gives_the_role_by_its_name() -> None:
    unit = (MANY / "afterplate@.service").read_text(encoding="utf-8")
    assert "serve --only %i $SERVE_OPTIONS" in unit
    assert "EnvironmentFile=/etc/afterplate-%i.env" in unit
