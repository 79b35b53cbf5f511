"""The record as a table for a spreadsheet: one line a session, and one for each report that belongs to none."""

import csv
import io
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from reminders.core.schedule import client_day
from reminders.exports.corrected import corrections

COLUMNS = (
    "date",
    "kind",
    "state",
    "due",
    "reminded",
    "completed",
    "sets",
    "reps",
    "pain",
    "pain_before",
    "pain_after",
    "morning_after",
    "easy",
    "list",
    "exercises",
    "words",
    "corrected_by",
)
# A cell that begins with one of these is run as a formula by spreadsheets (OWASP, CSV Injection).
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r")


def spreadsheet(course: Mapping[str, Any]) -> str:
    """Return the sessions as CSV (RFC 4180), oldest first; `words` holds every reply as it was written."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(COLUMNS)
    lines = [session_line(session) for session in course["sessions"]]
    zone = course["client"]["time_zone"]
    lines += [session_line(loose_session(report, zone)) for report in course["loose_reports"]]
    for line in sorted(lines, key=lambda one: str(one["date"])):
        writer.writerow([safe(line.get(name)) for name in COLUMNS])
    return out.getvalue()


def session_line(session: Mapping[str, Any]) -> dict[str, Any]:
    """Return one session's cells; a morning rating stands in a column of its own, outside the session's pain."""
    reports: Sequence[Mapping[str, Any]] = session["reports"]
    mornings = [str(one["reading"].get("pain")) for one in reports if one["settling"]]
    return {
        **{name: session.get(name) for name in COLUMNS},
        "easy": "yes" if session.get("easy") else "",
        "morning_after": "; ".join(mornings),
        "exercises": "; ".join(exercise(item) for item in session.get("items", ())),
        "words": " | ".join(one["text"] for one in reports if one["text"]),
        "corrected_by": "; ".join(dict.fromkeys(one["by"] for one in corrections(reports))),
    }


def loose_session(report: Mapping[str, Any], zone: str) -> dict[str, Any]:
    """Return a report without a session in the shape of one, on her own day, so that no word of hers is left out."""
    on = client_day(datetime.fromisoformat(report["at"]), zone).isoformat()
    return {"date": on, "kind": "report", "pain": report["reading"].get("pain"), "reports": [report]}


def exercise(item: Mapping[str, Any]) -> str:
    """Return an exercise with its dose, as she was shown it."""
    return f"{item.get('letter', '')} {item.get('name', item.get('code', ''))} {item.get('short', '')}".strip()


def safe(value: Any) -> str:
    """Return a cell's text; one that a spreadsheet would run is made a text by a mark before it."""
    text = "" if value is None else str(value)
    return f"'{text}" if text.startswith(FORMULA_SIGNS) else text
