"""Turns errors into answers: a short page for people, problem details (RFC 9457) under /api. Status codes live here.

Nothing of a request's content is repeated in an answer but the sentence of our own errors.
"""

import logging
from typing import Any

from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from starlette.exceptions import HTTPException
from starlette.responses import JSONResponse, Response

from reminders.errors import BadInput, DatabaseNotReady, NotFound, Refused, ReminderError
from reminders.web.cookies import drop_session
from reminders.web.kept_work import packed
from reminders.web.pages import pages_of, see
from reminders.web.refusals import Forbidden, ForgedForm, MissingScope, NeedsConfirming, NeedsSignIn, NoToken

log = logging.getLogger("reminders.web")

STATUS: tuple[tuple[type[ReminderError], int], ...] = (
    (NotFound, 404),
    (BadInput, 422),
    (Refused, 409),
    (DatabaseNotReady, 503),
    (ReminderError, 500),
)
TITLES = {
    400: "The request cannot be read",
    401: "A valid token is needed",
    403: "Not allowed",
    404: "Not found",
    405: "Not done this way",
    409: "The rules forbid this",
    413: "Too much was sent",
    422: "Something does not fit",
    429: "Too many tries",
    500: "Something went wrong here",
    503: "Not ready",
}


def add_error_pages(web: FastAPI) -> None:
    """Give every error its answer."""
    web.add_exception_handler(ReminderError, on_our_error)
    web.add_exception_handler(HTTPException, on_http_error)
    web.add_exception_handler(RequestValidationError, on_unreadable)
    web.add_exception_handler(Forbidden, on_forbidden)
    web.add_exception_handler(ForgedForm, on_forged)
    web.add_exception_handler(NeedsSignIn, on_sign_in_needed)
    web.add_exception_handler(NeedsConfirming, on_confirming_needed)
    web.add_exception_handler(NoToken, on_no_token)
    web.add_exception_handler(MissingScope, on_missing_scope)
    web.add_exception_handler(Exception, on_surprise)


def is_api(request: Request) -> bool:
    """Return whether a program is asking."""
    return request.url.path.startswith("/api/")


def answer(request: Request, status: int, sentence: str, headers: dict[str, str] | None = None) -> Response:
    """Return an error as a page, or as problem details for programs."""
    if is_api(request):
        return problem(status, sentence, headers=headers)
    page = pages_of(request).show("error.html", status=status, title=TITLES.get(status, "Not done"), sentence=sentence)
    page.headers.update(headers or {})
    return page


def problem(status: int, detail: str, *, headers: dict[str, str] | None = None, **more: Any) -> Response:
    """Return problem details (RFC 9457)."""
    body = {"type": "about:blank", "title": TITLES.get(status, "Not done"), "status": status, "detail": detail, **more}
    return JSONResponse(body, status, headers, media_type="application/problem+json")


def on_our_error(request: Request, error: Exception) -> Response:
    """Answer one of our own errors with its sentence."""
    status = next(code for kind, code in STATUS if isinstance(error, kind))
    return answer(request, status, str(error))


def on_http_error(request: Request, error: Exception) -> Response:
    """Answer what the framework refused."""
    assert isinstance(error, HTTPException)
    sentences = {404: "There is nothing at this address.", 405: "This address does not take that kind of request."}
    sentence = sentences.get(error.status_code, str(error.detail))
    return answer(request, error.status_code, sentence, dict(error.headers or {}))


def on_unreadable(request: Request, error: Exception) -> Response:
    """Answer fields that do not fit, naming the first."""
    assert isinstance(error, RequestValidationError)
    places = [place for one in error.errors() for place in one["loc"][:1]]
    if not is_api(request) and "path" in places:
        return answer(request, 404, "There is nothing at this address.")
    fields = [{"field": ".".join(map(str, one["loc"][1:])), "reason": one["msg"]} for one in error.errors()]
    if not is_api(request):
        return answer(request, 422, f"{fields[0]['field'] or 'The form'}: {fields[0]['reason']}.")
    first = f"{fields[0]['field'] or 'The body'}: {fields[0]['reason']}."
    return problem(422, first, fields=fields)


def on_forbidden(request: Request, _: Exception) -> Response:
    """Say that the role may not."""
    return answer(request, 403, "Your role may not do this. Ask an admin of the clinic if it should.")


def on_forged(request: Request, _: Exception) -> Response:
    """Refuse a form that is not this session's."""
    return answer(request, 403, "This form is out of date. Go back, load the page again, and send it again.")


def on_sign_in_needed(request: Request, error: Exception) -> Response:
    """Lead to the sign-in page; the work of a form that came too late is carried along."""
    assert isinstance(error, NeedsSignIn)
    if request.method in ("GET", "HEAD"):
        response: Response = see("/sign-in" if request.url.path == "/" else f"/sign-in?next={request.url.path}")
    else:
        kept = packed(error.kept, error.staff_id) if error.kept else ""
        values = {"next": request.url.path if kept else "", "kept": kept, "ended": True, "email": "", "wrong": ""}
        response = pages_of(request).show("sign_in.html", status=401, **values)
    drop_session(request, response)
    return response


def on_confirming_needed(request: Request, error: Exception) -> Response:
    """Ask once more who it is, with the form's work carried along."""
    assert isinstance(error, NeedsConfirming)
    kept = packed(error.kept, error.staff_id) if error.kept else ""
    return pages_of(request).show("confirm.html", status=401, next=request.url.path, kept=kept, wrong="")


def on_no_token(request: Request, _: Exception) -> Response:
    """Ask for a token."""
    return problem(401, "Send a token of this clinic that was not revoked.", headers={"WWW-Authenticate": "Bearer"})


def on_missing_scope(request: Request, error: Exception) -> Response:
    """Name the scope that the token lacks."""
    return problem(403, f"The token needs the scope {error.args[0]}.")


def on_surprise(request: Request, error: Exception) -> Response:
    """Say sorry; the log gets the kind of error and the place, never its words."""
    route = getattr(request.scope.get("route"), "path", "-")
    log.error("request failed", extra={"route": route, "error": type(error).__name__}, exc_info=error)
    return answer(
        request, 500, "Something went wrong here. Nothing was changed. Try again; if it stays, tell whoever runs it."
    )
