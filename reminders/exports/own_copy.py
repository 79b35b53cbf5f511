"""The client's own readable copy of her record: one HTML page in her language, which needs no program to open."""

import tomllib
from collections.abc import Mapping
from datetime import date
from typing import Any

from reminders.core.languages import LANGUAGES
from reminders.texts import Texts
from reminders.texts_folder import templates_folder
from reminders.texts_said import said_date, said_days, said_time


def own_copy(course: Mapping[str, Any]) -> str:
    """Return the page: what she was asked to do, what she answered and how it was read, what was sent and agreed to."""
    language = course["client"]["language"] if course["client"]["language"] in LANGUAGES else "en"
    client = course["client"]
    names = rule_names(language)
    shown = {
        **course,
        "language": language,
        "days": said_days(client["days"], language) if client["days"] else "",
        "time": said_time(client["time"], language) if client["time"] else "",
        "said": lambda text: said(text, language),
        "rule_name": lambda rule: names.get(rule, rule),
        "sent": [row for row in course["messages"] if row["direction"] == "out"],
        "exercises": exercises(course),
    }
    return Texts().template(f"exports/{language}/copy.html").render(shown)


def said(text: str | None, language: str) -> str:
    """Return the date of an ISO date or instant as a person says it, with its year; empty for none."""
    if not text:
        return ""
    return f"{said_date(date.fromisoformat(text[:10]), language)} {text[:4]}"


def rule_names(language: str) -> Mapping[str, str]:
    """Return what the rules are called in a language."""
    rules = tomllib.loads((templates_folder() / "rules" / f"{language}.toml").read_text(encoding="utf-8"))
    names: Mapping[str, str] = rules["names"]
    return names


def exercises(course: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """Return the exercises that she was shown last."""
    shown = [session["items"] for session in course["sessions"] if session["items"]]
    return list(shown[-1]) if shown else []
