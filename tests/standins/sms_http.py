"""The HTTP side of the SMS provider's stand-in: its Messages API and the stand-in's own control routes.

Requests are read by hand: the header parser of http.server would be the slowest part of a benchmark.
"""

import base64
import json
import re
import socket
import socketserver
import struct
import time
from datetime import UTC, datetime
from email.utils import format_datetime
from typing import TYPE_CHECKING, Any, ClassVar
from urllib.parse import parse_qsl, urlencode, urlsplit

if TYPE_CHECKING:
    from tests.standins.sms_provider import Act, SmsProvider

MESSAGES = re.compile(r"/2010-04-01/Accounts/(?P<account>[^/]+)/Messages(/(?P<sid>[^/]+))?\.json")
WORDS = {200: "OK", 201: "Created", 400: "Bad Request", 401: "Unauthorized", 404: "Not Found", 429: "Too Many Requests"}
REASONS = {"21610": "Attempt to send to unsubscribed recipient", "21211": "Invalid 'To' Phone Number"}


class Server(socketserver.ThreadingTCPServer):
    """A thread a connection, connections kept open."""

    daemon_threads = True
    allow_reuse_address = True
    request_queue_size = 256

    def __init__(self, port: int, provider: "SmsProvider") -> None:
        self.provider = provider
        super().__init__(("127.0.0.1", port), Handler)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """Say nothing about a caller that was killed in the middle of a call."""


class Handler(socketserver.StreamRequestHandler):
    """Answers the calls of one connection."""

    disable_nagle_algorithm = True
    server: Server
    routes: ClassVar[dict[tuple[str, str], str]] = {
        ("POST", "/_control"): "control",
        ("POST", "/_hear"): "hear",
        ("GET", "/_accepted"): "accepted",
    }

    def handle(self) -> None:
        """Answer call after call until the other side has no more."""
        while (line := self.rfile.readline(65_537)) and line.strip():
            method, target, _ = line.decode("latin-1").split(" ", 2)
            headers: dict[str, str] = {}
            while (row := self.rfile.readline(65_537)) and row.strip():
                name, _, value = row.decode("latin-1").partition(":")
                headers[name.strip().lower()] = value.strip()
            body = self.rfile.read(int(headers.get("content-length", 0)))
            if not self.answer_call(method, target, headers, body):
                return

    def answer_call(self, method: str, target: str, headers: dict[str, str], body: bytes) -> bool:
        """Answer one call; False when the connection is at its end."""
        parts = urlsplit(target)
        own = self.routes.get((method, parts.path))
        if own:
            return self.reply(200, getattr(self, f"own_{own}")(body))
        found = MESSAGES.fullmatch(parts.path)
        provider = self.server.provider
        if not found or found["account"] != provider.account:
            return self.refuse(404, "20404", "The requested resource was not found")
        if headers.get("authorization") not in provider.passes:
            return self.refuse(401, "20003", "Authenticate")
        query = dict(parse_qsl(parts.query, keep_blank_values=True))
        if method == "POST":
            return self.create(dict(parse_qsl(body.decode("utf-8"), keep_blank_values=True)))
        if found["sid"]:
            return self.fetch(found["sid"])
        return self.list(parts.path, query)

    def create(self, asked: dict[str, str]) -> bool:
        """Take a text, or not, as the play says."""
        provider = self.server.provider
        act = provider.next_act()
        text = provider.take(asked) if act.takes else None
        if act.delay:
            time.sleep(act.delay)
        if text and act.kind == "ok":
            return self.reply(201, {**text.row(provider.account), "status": "queued", "date_sent": None})
        return self.misbehave(act)

    def misbehave(self, act: "Act") -> bool:
        """Answer with anything but an accepted text."""
        if act.kind.startswith("drop"):
            # A reset, not an orderly end: what a cut line looks like.
            self.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
            self.connection.close()
            return False
        if act.kind == "throttle":
            return self.refuse(429, "20429", "Too Many Requests", {"Retry-After": act.retry_after})
        if act.kind == "unready":
            return self.refuse(503, "20503", "Service Unavailable", {"Retry-After": act.retry_after})
        if act.kind.startswith("broken"):
            return self.refuse(500, "20500", "Internal Server Error")
        return self.refuse(act.status, act.code, REASONS.get(act.code, "Refused"))

    def fetch(self, sid: str) -> bool:
        """Answer with one text."""
        provider = self.server.provider
        for text in provider.texts:
            if text.sid == sid:
                return self.reply(200, text.row(provider.account))
        return self.refuse(404, "20404", "The requested resource was not found")

    def list(self, path: str, query: dict[str, str]) -> bool:
        """Answer with one page, and where the next one is."""
        provider = self.server.provider
        provider.lists_asked.append(query)
        if provider.play.list_breaks:
            provider.play.list_breaks -= 1
            return self.refuse(500, "20500", "Internal Server Error")
        if 0 < provider.play.list_breaks_from <= int(query.get("Page", "0")) + 1:
            return self.refuse(500, "20500", "Internal Server Error")
        size = min(int(query.get("PageSize", "50")), provider.play.max_page)
        page = int(query.get("Page", "0"))
        rows = provider.listed(query)
        shown = rows[page * size : (page + 1) * size]
        following = {**query, "PageSize": str(size), "Page": str(page + 1), "PageToken": f"PA{page + 1}"}
        return self.reply(
            200,
            {
                "messages": [text.row(provider.account) for text in shown],
                "page": page,
                "page_size": size,
                "start": page * size,
                "end": page * size + len(shown) - 1,
                "uri": f"{path}?{urlencode(query)}",
                "first_page_uri": f"{path}?{urlencode({**query, 'Page': '0'})}",
                "previous_page_uri": None,
                "next_page_uri": f"{path}?{urlencode(following)}" if len(rows) > (page + 1) * size else None,
            },
        )

    def own_control(self, body: bytes) -> dict[str, Any]:
        """Change the play."""
        self.server.provider.change(json.loads(body))
        return {}

    def own_hear(self, body: bytes) -> dict[str, Any]:
        """Let a text come in."""
        heard = json.loads(body)
        sent = self.server.provider.hear(heard["from"], heard["body"], post=heard.get("post"))
        return {"sid": sent.sid}

    def own_accepted(self, body: bytes) -> dict[str, Any]:
        """List what was taken."""
        provider = self.server.provider
        rows = [
            {"sid": t.sid, "to": t.to, "body": t.body, "created": t.created_at.isoformat(), "asked": t.asked}
            for t in provider.accepted
        ]
        return {"accepted": rows, "asked": provider.asked}

    def refuse(self, status: int, code: str, words: str, more: dict[str, str] | None = None) -> bool:
        """Answer with an error in the provider's form."""
        address = f"https://www.twilio.com/docs/errors/{code}"
        return self.reply(status, {"code": int(code), "message": words, "more_info": address, "status": status}, more)

    def reply(self, status: int, document: dict[str, Any], more: dict[str, str] | None = None) -> bool:
        """Send one JSON document in one write; True, since the connection stays open."""
        body = json.dumps(document).encode("ascii")
        lines = [
            f"HTTP/1.1 {status} {WORDS.get(status, 'Answer')}",
            f"Date: {format_datetime(datetime.now(UTC), usegmt=True)}",
            "Content-Type: application/json",
            f"Content-Length: {len(body)}",
            *(f"{name}: {value}" for name, value in (more or {}).items()),
        ]
        self.wfile.write("\r\n".join(lines).encode("latin-1") + b"\r\n\r\n" + body)
        return True


def passes(account: str, tokens: tuple[str, ...]) -> frozenset[str]:
    """Return the Authorization headers that are right (RFC 7617)."""
    return frozenset("Basic " + base64.b64encode(f"{account}:{token}".encode()).decode("ascii") for token in tokens)
