"""Headers that every answer carries, the limit on what may be sent, and the access line without names or paths.

Pure ASGI, so that nothing is buffered; what a page shows is not decided here.
"""

import logging
import time

from starlette.datastructures import MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

log = logging.getLogger("reminders.web")

MOST_BYTES = 4 * 1024 * 1024
# No inline script or style, nothing from elsewhere, no frames (Content Security Policy Level 3).
POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; "
    "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
ALWAYS = {
    "content-security-policy": POLICY,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "x-frame-options": "DENY",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "camera=(), geolocation=(), microphone=()",
}
FOR_HTTPS = {"strict-transport-security": "max-age=31536000; includeSubDomains"}


class SafeHeaders:
    """Adds the headers; a page is not kept by browsers or proxies unless it says so itself."""

    def __init__(self, app: ASGIApp, is_https: bool) -> None:
        self.app = app
        self.headers = ALWAYS | (FOR_HTTPS if is_https else {})

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer with the headers, and write one line: the route's pattern, never the path."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        began = time.perf_counter()
        status = 500

        async def send_with_headers(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                headers = MutableHeaders(scope=message)
                for name, value in self.headers.items():
                    headers.setdefault(name, value)
                headers.setdefault("cache-control", "no-store")
            await send(message)

        try:
            await self.app(scope, receive, send_with_headers)
        finally:
            route = getattr(scope.get("route"), "path", "-")
            took = round((time.perf_counter() - began) * 1000, 1)
            log.info("request", extra={"method": scope["method"], "route": route, "status": status, "ms": took})


class BodyLimit:
    """Refuses a body over the limit before any of it is read, or while it is."""

    def __init__(self, app: ASGIApp, most: int = MOST_BYTES) -> None:
        self.app = app
        self.most = most

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer 413 for what announces or turns out to be too much."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        announced = dict(scope["headers"]).get(b"content-length", b"0")
        if not announced.isdigit() or int(announced) > self.most:
            await refuse(send, 413 if announced.isdigit() else 400)
            return
        taken = 0

        async def receive_some() -> Message:
            nonlocal taken
            message = await receive()
            taken += len(message.get("body", b""))
            return message if taken <= self.most else {"type": "http.disconnect"}

        await self.app(scope, receive_some, send)


async def refuse(send: Send, status: int) -> None:
    """Answer with a bare status."""
    await send({"type": "http.response.start", "status": status, "headers": [(b"content-length", b"0")]})
    await send({"type": "http.response.body", "body": b""})
