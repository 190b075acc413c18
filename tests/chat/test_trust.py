"""Which certificates the client believes, over real TLS on loopback."""

import asyncio
import shutil
import ssl
import subprocess
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import httpx
import pytest

from bot.chat.trust import trusted

OPENSSL = shutil.which("openssl")
pytestmark = pytest.mark.skipif(OPENSSL is None, reason="no openssl to make a certificate with")


def openssl(*arguments: str | Path) -> str:
    done = subprocess.run((OPENSSL or "", *arguments), check=True, capture_output=True, text=True)
    return done.stdout.strip()


@pytest.fixture
def signed(tmp_path: Path) -> tuple[Path, Path]:
    """A key and a certificate that nobody but the machine's keeper believes."""
    key, certificate = tmp_path / "key.pem", tmp_path / "certificate.pem"
    openssl(
        *("req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes"),
        *("-days", "2", "-subj", "/CN=loopback", "-addext", "subjectAltName=IP:127.0.0.1"),
        *("-keyout", key, "-out", certificate),
    )
    return key, certificate


@asynccontextmanager
async def answering(key: Path, certificate: Path) -> AsyncIterator[str]:
    async def answer(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        await reader.readuntil(b"\r\n\r\n")
        writer.write(b"HTTP/1.1 200 OK\r\nContent-Length: 2\r\nConnection: close\r\n\r\nok")
        await writer.drain()
        writer.close()

    own = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    own.load_cert_chain(certificate, key)
    server = await asyncio.start_server(answer, "127.0.0.1", 0, ssl=own)
    async with server:
        yield f"https://127.0.0.1:{server.sockets[0].getsockname()[1]}/"


async def asked(address: str) -> str:
    async with httpx.AsyncClient(verify=trusted(), trust_env=False) as client:
        return (await client.get(address)).text


async def test_a_certificate_of_the_machines_directory_is_looked_up_and_believed(
    tmp_path: Path, signed: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    kept = tmp_path / "kept"
    kept.mkdir()
    name = openssl("x509", "-hash", "-noout", "-in", signed[1])
    (kept / f"{name}.0").symlink_to(signed[1])
    monkeypatch.setenv("SSL_CERT_DIR", str(kept))
    monkeypatch.delenv("SSL_CERT_FILE", raising=False)
    async with answering(*signed) as address:
        assert await asked(address) == "ok"


async def test_a_stranger_is_not_believed_by_either_list(
    tmp_path: Path, signed: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("SSL_CERT_FILE", raising=False)
    async with answering(*signed) as address:
        for kept in (tmp_path / "empty", None):  # no directory of certificates, then the machine's
            if kept is None:
                monkeypatch.delenv("SSL_CERT_DIR")
            else:
                kept.mkdir()
                monkeypatch.setenv("SSL_CERT_DIR", str(kept))
            with pytest.raises(httpx.ConnectError, match=r"self-signed|unable to get local issuer"):
                await asked(address)


def test_a_file_that_is_named_is_the_only_list(
    signed: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SSL_CERT_FILE", str(signed[1]))
    names = [dict(part[0] for part in one["subject"]) for one in trusted().get_ca_certs()]
    assert names == [{"commonName": "loopback"}]


def test_where_no_certificates_are_kept_one_by_one_the_clients_own_list_serves(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("SSL_CERT_FILE", raising=False)
    monkeypatch.delenv("SSL_CERT_DIR", raising=False)
    where = ssl.get_default_verify_paths()._replace(capath=str(tmp_path))
    monkeypatch.setattr(ssl, "get_default_verify_paths", lambda: where)
    assert len(trusted().get_ca_certs()) > 50
