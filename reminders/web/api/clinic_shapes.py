"""The shapes of bodies about the clinic itself: staff, details, wording, levels. Values only."""

from datetime import date
from typing import Annotated, Literal

from pydantic import AfterValidator, ConfigDict, Field

from reminders.core.languages import LANGUAGES
from reminders.web.api.shapes import Short, Strict, Words


class StaffIn(Strict):
    """Somebody new on the staff; her first sign-in link is mailed."""

    role: Literal["admin", "therapist", "assistant", "lead", "records"]
    name: Short
    email: Short
    mobile: Short = ""


class StaffChange(Strict):
    """What changes for a staff member; what is left out stays."""

    role: Literal["admin", "therapist", "assistant", "lead", "records"] | None = None
    mobile: Short | None = None
    is_active: bool | None = None
    cover: Short | None = Field(default=None, description="The e-mail of who covers; empty for nobody.")
    cover_from: date | None = None
    cover_until: date | None = None


class MoveIn(Strict):
    """Who takes over a therapist's clients."""

    to: Short


class ClinicIn(Strict):
    """Details of the clinic to change, each as the console takes it; what is left out stays."""

    name: Short | None = None
    phone: Short | None = None
    time_zone: Short | None = None
    hours: Short | None = None
    closed_days: list[date] | None = None
    emergency_number: Short | None = None
    crisis_line: Short | None = None
    window: Short | None = None
    note_hours: Short | None = None
    on_call_email: Short | None = None
    lead_email: Short | None = None
    retain_days: int | None = Field(default=None, ge=365, le=36500)
    words_in_mail: bool | None = None


def known(language: str) -> str:
    """Return a language that we have; raises ValueError naming those."""
    if language not in LANGUAGES:
        raise ValueError(f"one of {', '.join(LANGUAGES)}")
    return language


Language = Annotated[str, AfterValidator(known), Field(json_schema_extra={"enum": list(LANGUAGES)})]


class WordingIn(Strict):
    """A clinic's own wording of one text; empty brings ours back."""

    language: Language
    name: Short
    words: Words


class LevelsIn(Strict):
    """Changed levels by name; they take the place of all changed before."""

    levels: dict[str, int]

    model_config = ConfigDict(extra="forbid", json_schema_extra={"examples": [{"levels": {"stop_floor": 5}}]})
