"""Whose signature on the Bot API's certificate is believed?

The machine's own certificates, where it keeps them one by one: its keeper renews them, and may
have added one for a proxy of the clinic's. They are looked up as they are met. A list read whole,
as the HTTP client's own is, takes a megabyte; it serves where the machine keeps no such directory.
"""

import os
import ssl
from pathlib import Path
from typing import cast

import httpx


def trusted() -> ssl.SSLContext:
    """A context that verifies; SSL_CERT_FILE and SSL_CERT_DIR are heeded as OpenSSL does."""
    folder = cast("str | None", ssl.get_default_verify_paths().capath)  # None where there is none
    # `.0` are the links by which OpenSSL looks a certificate up (c_rehash(1)).
    one_by_one = folder is not None and any(Path(folder).glob("*.0"))
    if one_by_one and "SSL_CERT_FILE" not in os.environ:
        return ssl.create_default_context(capath=folder)
    return httpx.create_ssl_context()
