"""How the provider's client reaches its API: kept connections of urllib3, without the layers that we do not use.

The provider's library lets its HTTP client be chosen; the one it ships costs as much processor time as all the rest of
sending a text. What a failed call means is in sms.py.
"""

import socket
import threading
from collections.abc import Mapping
from typing import Any
from urllib.parse import urlencode, urlsplit
from urllib.request import getproxies, proxy_bypass

import certifi
from twilio.http import HttpClient
from twilio.http.response import Response
from urllib3 import PoolManager, ProxyManager
from urllib3.connection import HTTPConnection
from urllib3.response import BaseHTTPResponse
from urllib3.util import Timeout, make_headers

# Hands that may send at once in one process; more would wait for a free connection.
CONNECTIONS = 64


def signs_of_life() -> list[tuple[int, int, int]]:
    """Return socket options that ask for signs of life after half a minute of silence.

    A router that forgets a silent connection would else swallow the first text of the morning.
    """
    wanted = (("TCP_KEEPIDLE", 30), ("TCP_KEEPINTVL", 10), ("TCP_KEEPCNT", 3))
    named = [(getattr(socket, name, None), value) for name, value in wanted]  # macOS lacks the first
    return [
        *HTTPConnection.default_socket_options,
        (socket.SOL_SOCKET, socket.SO_KEEPALIVE, 1),
        *((socket.IPPROTO_TCP, option, value) for option, value in named if option is not None),
    ]


class KeptAlive(HttpClient):  # type: ignore[misc]  # the library has no types
    """The provider's HTTP client over kept connections; the last answer of each thread is kept."""

    def __init__(self, silent: Any, timeout: Timeout, base_url: str, *, is_loopback: bool) -> None:
        super().__init__(silent, False)
        self.limits = timeout
        self.last = threading.local()
        options: dict[str, Any] = {
            "maxsize": CONNECTIONS,
            "block": False,
            "socket_options": signs_of_life(),
            "ca_certs": certifi.where(),
        }
        proxy = None if is_loopback else proxy_for(base_url)  # a proxy of the environment is for the world outside
        self.pool = ProxyManager(proxy, **proxied(proxy), **options) if proxy else PoolManager(**options)

    def request(
        self,
        method: str,
        uri: str,
        params: Mapping[str, object] | None = None,
        data: Mapping[str, object] | None = None,
        headers: dict[str, str] | None = None,
        auth: tuple[str, str] | None = None,
        timeout: float | None = None,
        allow_redirects: bool = False,
    ) -> Response:
        """Make one call, never a second behind our back: one that was cut off may have been heard.

        Raises the errors of urllib3.
        """
        self.last.answer = None
        asked = {name: value for name, value in (params or {}).items() if value is not None}
        if asked:
            uri = f"{uri}{'&' if urlsplit(uri).query else '?'}{urlencode(asked, doseq=True)}"
        sent = dict(headers or {})
        if auth:
            sent |= make_headers(basic_auth=":".join(auth))
        answer = self.pool.urlopen(
            method.upper(),
            uri,
            body=urlencode(data, doseq=True) if data else None,
            headers=sent,
            timeout=self.limits,
            retries=False,
            redirect=allow_redirects,
        )
        self.last.answer = answer
        return Response(answer.status, answer.data.decode("utf-8", "replace"), answer.headers)

    def last_answer(self) -> BaseHTTPResponse | None:
        """Return the answer to this thread's last call, None when there was none."""
        return getattr(self.last, "answer", None)


def proxy_for(url: str) -> str | None:
    """Return the proxy that the environment names for an address, None for none."""
    parts = urlsplit(url)
    if not parts.hostname or proxy_bypass(parts.hostname):
        return None
    found = getproxies().get(parts.scheme) or getproxies().get("all")
    return found if found is None or "://" in found else f"http://{found}"


def proxied(proxy: str) -> dict[str, Any]:
    """Return what a proxy asks to be told: the name and password in its address."""
    parts = urlsplit(proxy)
    if not parts.username:
        return {}
    return {"proxy_headers": make_headers(proxy_basic_auth=f"{parts.username}:{parts.password or ''}")}
