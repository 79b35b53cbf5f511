"""Logging: one line an event, with ids; no name, number or text of anybody. The libraries' own lines are off."""

import json
import logging
import sys

FIELDS = ("job", "row", "client", "kind", "code", "route", "status", "milliseconds", "inbound", "alert")
QUIET = ("twilio", "twilio.http_client", "uvicorn.access", "apscheduler", "sqlalchemy.engine", "alembic", "imapclient")


class Lines(logging.Formatter):
    """Writes a record as one JSON line: time, level, event, ids. An error's kind is told, never its words."""

    def format(self, record: logging.LogRecord) -> str:
        """Return the line; an exception gives its type and the places in our code, not its message."""
        line = {"at": self.formatTime(record, "%Y-%m-%dT%H:%M:%S"), "level": record.levelname.lower()}
        line["event"] = record.msg if isinstance(record.msg, str) else type(record.msg).__name__
        line |= {name: getattr(record, name) for name in FIELDS if hasattr(record, name)}
        if record.exc_info and record.exc_info[0] is not None:
            line["error"] = record.exc_info[0].__name__
            line["where"] = places(record.exc_info[2])
        return json.dumps(line, default=str)


def places(trace: object) -> str:
    """Return the files and lines of a trace, innermost last."""
    found = []
    while trace is not None:
        frame = trace.tb_frame  # type: ignore[attr-defined]
        found.append(f"{frame.f_code.co_filename.rsplit('/', 1)[-1]}:{trace.tb_lineno}")  # type: ignore[attr-defined]
        trace = trace.tb_next  # type: ignore[attr-defined]
    return " ".join(found[-8:])


def set_up(level: str) -> None:
    """Send our lines to standard error."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(Lines())
    root = logging.getLogger()
    root.handlers[:] = [handler]
    root.setLevel(logging.WARNING)
    logging.getLogger("reminders").setLevel(level.upper())
    logging.getLogger("uvicorn.error").setLevel(logging.WARNING)
    for name in QUIET:
        logging.getLogger(name).setLevel(logging.CRITICAL)
