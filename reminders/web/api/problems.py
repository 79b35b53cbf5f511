"""What every route of the API may answer besides its own: problem details, described for the OpenAPI document."""

from typing import Any

from reminders.web.api.shapes import Problem

SCHEMA = Problem.model_json_schema()
WORDS = {
    400: "The request cannot be read.",
    401: "No valid token came along.",
    403: "The token lacks the scope.",
    404: "There is no such thing in this clinic.",
    409: "The rules forbid it.",
    413: "Too much was sent.",
    422: "Something does not fit; the detail names it.",
}


def described(*statuses: int) -> dict[int | str, dict[str, Any]]:
    """Return the descriptions of these answers."""
    return {
        status: {
            "description": WORDS[status],
            "content": {
                "application/problem+json": {
                    "schema": SCHEMA,
                    "example": Problem(title="Not done", status=status, detail=WORDS[status]).model_dump(),
                }
            },
        }
        for status in statuses
    }


ALL = described(400, 401, 403, 404, 409, 422)
