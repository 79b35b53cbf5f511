"""A posted form and its fields, each read with one clear sentence for what does not fit.

What a field means is decided by the page that reads it. Nothing is kept from here but values.
"""

import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from fastapi import Request
from starlette.datastructures import UploadFile

from reminders.errors import BadInput

MOST_FIELDS = 2_000
MOST_LETTERS = 4_000


@dataclass(frozen=True)
class Form:
    """What a browser sent: every field's values in order, and files as bytes."""

    values: Mapping[str, Sequence[str]] = field(default_factory=dict)
    files: Mapping[str, bytes] = field(default_factory=dict)

    def text(self, name: str, label: str = "", *, needed: bool = False, most: int = MOST_LETTERS) -> str:
        """Return a field's text without outer blanks; raises BadInput when it is needed and empty, or too long."""
        found = self.exact(name).replace("\x00", " ").replace("\r\n", "\n").strip()
        if needed and not found:
            raise BadInput(f"{label or name} is empty; fill it in.")
        if len(found) > most:
            raise BadInput(f"{label or name} is longer than {most} letters; shorten it.")
        return found

    def exact(self, name: str) -> str:
        """Return a field's text exactly as typed, as a password needs it."""
        return (self.values.get(name) or [""])[-1]

    def whole(
        self, name: str, label: str = "", *, least: int = 0, most: int = 10**12, default: int | None = None
    ) -> int | None:
        """Return a whole number within bounds, the default for an empty field; raises BadInput."""
        words = self.text(name, label)
        if not words:
            return default
        if not (words.isascii() and words.isdigit() and len(words) < 16) or not least <= int(words) <= most:
            raise BadInput(f"{label or name} must be a whole number from {least} to {most}: {words[:20]!r}.")
        return int(words)

    def number(self, name: str, label: str, *, least: float, most: float) -> float | None:
        """Return a number within bounds, None for an empty field; raises BadInput."""
        words = self.text(name, label)
        if not words:
            return None
        try:
            found = float(words)
        except ValueError:
            found = float("nan")
        if not least <= found <= most:
            raise BadInput(f"{label} must be a number from {least:g} to {most:g}: {words[:20]!r}.")
        return found

    def choice(self, name: str, choices: Sequence[str], label: str = "", default: str | None = None) -> str:
        """Return one of the choices; raises BadInput naming them."""
        found = self.text(name, label) or (default if default is not None else "")
        if found not in choices:
            named = ", ".join(choice or "nothing" for choice in choices)
            raise BadInput(f"{label or name} must be one of: {named}.")
        return found

    def checked(self, name: str) -> bool:
        """Return whether a box is ticked."""
        return bool(self.text(name))

    def many(self, name: str) -> list[str]:
        """Return every value of a field that may come more than once."""
        return [value.strip() for value in self.values.get(name, ()) if value.strip()]

    def day(self, name: str, label: str = "", *, needed: bool = False) -> date | None:
        """Return an ISO date, None for an empty field; raises BadInput."""
        words = self.text(name, label, needed=needed)
        if not words:
            return None
        try:
            return date.fromisoformat(words)
        except ValueError:
            raise BadInput(f"{label or name} must be a date such as 2027-03-01: {words[:20]!r}.") from None


async def read_form(request: Request) -> Form:
    """Return the form that came with a request, an empty one for anything that carries none."""
    held: Form | None = getattr(request.state, "form", None)
    if held is not None:
        return held
    kind = request.headers.get("content-type", "").partition(";")[0].strip().lower()
    form = Form()
    if request.method == "POST" and kind in ("application/x-www-form-urlencoded", "multipart/form-data"):
        form = await parsed(request)
    request.state.form = form
    return form


async def parsed(request: Request) -> Form:
    """Return the fields and files of a form-encoded body."""
    values: dict[str, list[str]] = {}
    files: dict[str, bytes] = {}
    async with request.form(max_files=3, max_fields=MOST_FIELDS) as sent:
        for name, value in sent.multi_items():
            if isinstance(value, UploadFile):
                files[name] = await value.read()
            else:
                values.setdefault(name, []).append(without_lone_surrogates(value))
    return Form(values, files)


def without_lone_surrogates(value: Any) -> str:
    """Return a text that every database takes."""
    return str(value).encode("utf-8", "replace").decode("utf-8", "replace")


def as_csv(row: Mapping[str, str]) -> bytes:
    """Return one row, with its column names, as an enrolment file: both ways in are checked alike."""
    made = io.StringIO(newline="")
    writer = csv.writer(made)
    writer.writerow(row)
    writer.writerow(row.values())
    return made.getvalue().encode()
