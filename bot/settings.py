"""Settings from the environment or a `.env` file, refused by name when wrong."""

import re
from typing import Literal
from urllib.parse import urlsplit

from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.mendable import Mendable

PREFIX = "AFTERPLATE_"
#: What the Bot API allows in the secret header of a webhook (its manual, setWebhook).
SECRET_FORM = r"[A-Za-z0-9_-]{1,256}"  # noqa: S105 - a pattern, no secret
PUBLIC_API = "https://api.telegram.org"


class Settings(BaseSettings):
    """Everything that can be set; each is documented in docs and README."""

    model_config = SettingsConfigDict(
        env_prefix=PREFIX,
        env_file=".env",
        extra="ignore",
        frozen=True,
        hide_input_in_errors=True,
        env_ignore_empty=True,
    )

    telegram_token: SecretStr | None = None
    telegram_api: str = PUBLIC_API
    database: str = "sqlite:///afterplate.db"
    clock_speed: float = Field(default=1, ge=1, le=10_000)
    send_per_second: float = Field(default=30, gt=0, le=1000)
    webhook_secret: SecretStr | None = None
    metrics: str | None = None
    log: Literal["debug", "info", "warning", "error"] = "info"

    @field_validator("telegram_api")
    @classmethod
    def _address(cls, value: str) -> str:
        wrong = ValueError("must be scheme, host and port, as in http://localhost:8081")
        try:
            parts = urlsplit(value.rstrip("/"))
            no_port = parts.port == 0
        except ValueError:  # a port beyond the last
            raise wrong from None
        more = parts.path or parts.query or parts.fragment or any(map(str.isspace, value))
        if parts.scheme not in ("http", "https") or not parts.hostname or no_port or more:
            raise wrong
        return value.rstrip("/")

    @field_validator("database")
    @classmethod
    def _file(cls, value: str) -> str:
        # SQLAlchemy takes these for a database in memory: everything would be gone at the end.
        if value in ("sqlite:", "sqlite://", "sqlite:///", "sqlite:///:memory:"):
            raise ValueError("must name a file, as in sqlite:///afterplate.db")
        return value

    @field_validator("log", mode="before")
    @classmethod
    def _level(cls, value: object) -> object:
        return value.lower() if isinstance(value, str) else value

    @field_validator("telegram_token")
    @classmethod
    def _token(cls, value: SecretStr | None) -> SecretStr | None:
        if value is not None and not _is_token(value.get_secret_value()):
            raise ValueError("does not look like a bot token (digits, a colon, letters)")
        return value

    @field_validator("metrics")
    @classmethod
    def _listener(cls, value: str | None) -> str | None:
        if value is not None:
            host, _, port = value.rpartition(":")
            if not host or not re.fullmatch("[0-9]{1,5}", port) or not 1 <= int(port) <= 65535:
                raise ValueError("must be HOST:PORT, as in 127.0.0.1:9090")
        return value

    @field_validator("webhook_secret")
    @classmethod
    def _secret(cls, value: SecretStr | None) -> SecretStr | None:
        if value is not None and not re.fullmatch(SECRET_FORM, value.get_secret_value()):
            raise ValueError("may hold 1 to 256 letters, digits, _ and -")
        return value

    def token(self) -> str:
        """The bot's token; raises Mendable if none is set."""
        if self.telegram_token is None:
            raise Mendable(f"{PREFIX}TELEGRAM_TOKEN is not set")
        return self.telegram_token.get_secret_value()


def _is_token(text: str) -> bool:
    number, colon, rest = text.partition(":")
    return number.isdigit() and bool(colon) and bool(rest) and not any(c.isspace() for c in rest)


def load() -> Settings:
    """Read the settings; raises Mendable naming the first that is wrong, never its value."""
    try:
        return Settings()
    except UnicodeDecodeError:
        raise Mendable(f"{Settings.model_config['env_file']} is not UTF-8") from None
    except ValidationError as error:
        first = error.errors(include_url=False, include_context=False, include_input=False)[0]
        name = PREFIX + str(first["loc"][0]).upper() if first["loc"] else "a setting"
        reason = first["msg"].removeprefix("Value error, ")
        raise Mendable(f"{name}: {reason}") from None
