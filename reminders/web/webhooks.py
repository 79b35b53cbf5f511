"""The SMS provider's webhooks: kept, then answered; what follows leaves through the outbox, never here.

The signature covers the public address of the settings. Without an auth token these routes do not exist.
"""

from datetime import datetime

from fastapi import APIRouter, Request
from starlette.concurrency import run_in_threadpool
from starlette.requests import ClientDisconnect
from starlette.responses import Response

from reminders.core.scope import is_keyword
from reminders.flows import delivery_status
from reminders.inbound import twilio
from reminders.web.backlog import Backlog
from reminders.web.deps import AppDep, backlog_of
from reminders.wiring import App

MOST_BYTES = 64 * 1024

router = APIRouter(include_in_schema=False)


@router.post("/sms/inbound")
async def receive_sms(request: Request, app: AppDep) -> Response:
    """Keep what the provider hands over, then answer; it hears 2xx only once the text is stored."""
    found = await signed(request, app)
    if isinstance(found, Response):
        return found
    form, raw = found
    await run_in_threadpool(keep_text, app, backlog_of(request), form, raw)
    return Response("<Response/>", media_type="text/xml")


@router.post("/sms/status")
async def receive_status(request: Request, app: AppDep) -> Response:
    """Keep what became of a text that the provider had accepted."""
    found = await signed(request, app)
    if isinstance(found, Response):
        return found
    form, raw = found
    await run_in_threadpool(keep_status, app, form, raw, target_of(request))
    return Response(status_code=204)


async def signed(request: Request, app: App) -> tuple[twilio.Form, bytes] | Response:
    """Return the signed form of a call and its bytes, or the answer that refuses it; nothing is stored then."""
    settings = app.settings
    if not settings.twilio_auth_tokens:
        return Response(status_code=404)
    raw = await limited_body(request)
    if raw is None:
        return Response(status_code=413)
    signatures = request.headers.getlist("x-twilio-signature")
    form = twilio.signed_form(settings, target_of(request), raw, signatures, request.headers.get("content-type", ""))
    return (form, raw) if form is not None else Response(status_code=403)


async def limited_body(request: Request) -> bytes | None:
    """Return the body, None when it is over 64 KB; no more than that is read."""
    taken = bytearray()
    try:
        async for chunk in request.stream():
            taken += chunk
            if len(taken) > MOST_BYTES:
                return None
    except ClientDisconnect:
        return None
    return bytes(taken)


def target_of(request: Request) -> str:
    """Return the path and query of a call as they were sent."""
    path: bytes = request.scope.get("raw_path") or request.scope["path"].encode()
    query: bytes = request.scope.get("query_string", b"")
    return (path.partition(b"?")[0] + (b"?" + query if query else b"")).decode("latin-1")


def keep_text(app: App, backlog: Backlog, form: twilio.Form, raw: bytes) -> None:
    """Keep a text, then handle it as another thing that happens; a failure there waits for the next round."""
    now: datetime = app.clock()
    inbound = twilio.inbound_of(form, raw, now)
    # After the carriers' bare words the provider itself expects no more texts from us.
    backlog.hear(inbound, now, at_once=is_keyword(inbound.text) or bool(inbound.opt_out_type))


def keep_status(app: App, form: twilio.Form, raw: bytes, target: str) -> None:
    """Record a status callback."""
    now: datetime = app.clock()
    with app.db.begin() as tx:
        delivery_status.record(tx, twilio.status_of(form, raw, target), now)
