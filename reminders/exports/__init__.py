"""A client's record values -> the text of a file: spreadsheet, JSON, FHIR, her own copy, calendar.

Nothing here reads a database or a clock; `store.course` makes the values, the command writes the file.
"""

from collections.abc import Callable, Mapping
from typing import Any

from reminders.exports.calendar import calendar
from reminders.exports.fhir import bundle
from reminders.exports.own_copy import own_copy
from reminders.exports.plain import as_json
from reminders.exports.spreadsheet import spreadsheet

Course = Mapping[str, Any]

FORMATS: Mapping[str, Callable[[Course], str]] = {
    "csv": spreadsheet,
    "json": as_json,
    "fhir": lambda course: as_json(bundle(course)),
    "copy": own_copy,
    "calendar": calendar,
}
