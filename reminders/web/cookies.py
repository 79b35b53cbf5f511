"""The session cookie: its name, and the flags that keep it from scripts, other sites and plain HTTP."""

from fastapi import Request, Response

from reminders.web.deps import app_of


def is_https(request: Request) -> bool:
    """Return whether the console is reached over HTTPS, as its public address says."""
    return app_of(request).settings.public_url.startswith("https://")


def cookie_name(request: Request) -> str:
    """Return the cookie's name; with HTTPS its prefix makes browsers refuse it from any other host or path."""
    return "__Host-console" if is_https(request) else "console"


def session_token(request: Request) -> str:
    """Return the token that the browser sent, empty when it sent none."""
    return request.cookies.get(cookie_name(request), "")


def set_session(request: Request, response: Response, token: str) -> None:
    """Give the browser a session's token; it is forgotten when the browser closes."""
    response.set_cookie(cookie_name(request), token, path="/", secure=is_https(request), httponly=True, samesite="lax")


def drop_session(request: Request, response: Response) -> None:
    """Take the token away again."""
    response.delete_cookie(cookie_name(request), path="/", secure=is_https(request), httponly=True, samesite="lax")
