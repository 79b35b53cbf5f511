"""Fills page templates and answers with them. Words and order of a page are in templates/pages, never here.

Times are shown in the clinic's zone; whoever needs another zone converts before.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from hashlib import sha256
from pathlib import Path
from typing import Annotated, Any

from fastapi import Depends, Request
from jinja2 import Environment
from markupsafe import Markup
from starlette.responses import HTMLResponse, RedirectResponse

from reminders.core.schedule import zone_of
from reminders.texts import environment
from reminders.texts_folder import templates_folder
from reminders.web.access_rules import RULES
from reminders.web.auth import WARN_SECONDS, Person
from reminders.web.deps import app_of
from reminders.web.state_words import state_word, why_word

Values = Mapping[str, Any]


@dataclass(frozen=True)
class Pages:
    """The pages of one request."""

    request: Request
    jinja: Environment

    def show(self, name: str, *, status: int = 200, **values: Any) -> HTMLResponse:
        """Answer with a page."""
        return HTMLResponse(self.text(name, **values), status_code=status)

    def text(self, name: str, **values: Any) -> str:
        """Return a filled page."""
        person: Person | None = getattr(self.request.state, "person", None)
        now = app_of(self.request).clock()
        common = {
            "person": person,
            "now": now,
            "here": self.request.url.path,
            "may": lambda rule: person is not None and person.role in RULES[rule].roles,
            "idle_seconds": int((person.idle_until - now).total_seconds()) if person else 0,
            "warn_seconds": WARN_SECONDS,
            "done": self.request.query_params.get("done", ""),
        }
        return self.jinja.get_template(f"pages/{name}").render(common | values)


def see(address: str, done: str = "", anchor: str = "") -> RedirectResponse:
    """Answer a form by showing a page (303); `done` names the sentence that says what was done."""
    mark = f"?done={done}" if done and "?" not in address else ""
    return RedirectResponse(address + mark + (f"#{anchor}" if anchor else ""), status_code=303)


def page_environment(folder: Path | None = None) -> Environment:
    """Return the templates with the filters that pages use."""
    folder = folder or templates_folder()
    jinja = environment(folder)
    jinja.filters |= {"moment": moment, "day": day_words, "hour": hour, "figure": figure, "iso": iso, "gone": gone}
    jinja.filters |= {"state_word": state_word, "why_word": why_word}
    jinja.globals["asset"] = asset_address(folder / "static")
    return jinja


def asset_address(folder: Path) -> Any:
    """Return a function from a static file's name to its address, which changes with its content."""
    marks = {path.name: sha256(path.read_bytes()).hexdigest()[:12] for path in sorted(folder.glob("*"))}
    return lambda name: f"/static/{name}?v={marks[name]}"


def pages_of(request: Request) -> Pages:
    """Return the pages of a request."""
    return Pages(request, request.app.state.jinja)


PagesDep = Annotated[Pages, Depends(pages_of)]


def moment(at: datetime | None, zone: str) -> str:
    """Return an instant in words: "Tue Mar 9, 8:30 am", in a zone."""
    if at is None:
        return ""
    local = at.astimezone(zone_of(zone))
    return f"{day_words(local.date())}, {hour(at, zone)}"


def hour(at: datetime | None, zone: str) -> str:
    """Return an instant's local time: "8:30 am"."""
    if at is None:
        return ""
    local = at.astimezone(zone_of(zone))
    return f"{local.hour % 12 or 12}:{local.minute:02d} {'am' if local.hour < 12 else 'pm'}"


def day_words(day: date | str | None) -> str:
    """Return a date in words: "Tue Mar 9"."""
    if not day:
        return ""
    found = date.fromisoformat(day) if isinstance(day, str) else day
    return f"{found:%a %b} {found.day}"


def figure(value: float | None) -> str:
    """Return a rating or median without needless decimals, a dash for none."""
    return "–" if value is None else f"{value:g}"


def iso(at: datetime | date | None) -> str:
    """Return an instant or date for machines."""
    return at.isoformat() if at else ""


def gone(at: datetime | None, now: datetime) -> str:
    """Return how long ago an instant was, in one round figure."""
    if at is None:
        return ""
    minutes = int((now - at).total_seconds() // 60)
    for size, word in ((1440, "day"), (60, "hour"), (1, "minute")):
        count = minutes // size
        if count >= 1:
            return f"{count} {word}{'s' if count > 1 else ''} ago"
    return "just now"


def safe(markup: str) -> Markup:
    """Return markup that our own code drew, to be shown as it is."""
    return Markup(markup)  # noqa: S704 - only drawings and QR codes made here, with their texts escaped there
