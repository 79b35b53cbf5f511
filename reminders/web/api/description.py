"""The OpenAPI description of the API, for anybody to read; it holds nothing of any clinic."""

from typing import Any

from fastapi import APIRouter, Request

router = APIRouter(include_in_schema=False)

WORDS = """The same actions as the console, for other programs of one clinic.

Send a token as `Authorization: Bearer …`; it carries scopes and belongs to one clinic. Writes take an
`Idempotency-Key`. Lists come in pages: ask again with `after` set to the `next` of the page before. Errors are problem
details (RFC 9457). What a clinician decides is done in a staff member's name, given as `by`."""


@router.get("/api/v1/openapi.json")
def openapi(request: Request) -> dict[str, Any]:
    """Give the description."""
    held: dict[str, Any] | None = getattr(request.app.state, "description", None)
    if held is None:
        held = request.app.openapi()
        held["components"].setdefault("securitySchemes", {})["token"] = {"type": "http", "scheme": "bearer"}
        held["security"] = [{"token": []}]
        request.app.state.description = held
    return held
