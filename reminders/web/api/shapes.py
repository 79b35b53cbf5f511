"""The shapes of bodies and answers of the API, with examples. What they may hold is checked in core and flows."""

from datetime import date
from typing import Annotated, Any, Literal

from fastapi import Path, Query
from pydantic import AfterValidator, BaseModel, ConfigDict, Field, StringConstraints


def storable(text: str) -> str:
    """Return a text that every database takes; raises ValueError for NUL and lone surrogates."""
    if "\x00" in text or any(0xD800 <= ord(sign) <= 0xDFFF for sign in text):
        raise ValueError("holds a sign that cannot be kept")
    return text


Words = Annotated[str, StringConstraints(max_length=2000), AfterValidator(storable)]
Short = Annotated[str, StringConstraints(max_length=320), AfterValidator(storable)]
Id = Annotated[int, Path(ge=1, le=2**63 - 1)]
After = Annotated[int, Query(ge=0, le=2**63 - 1, description="The last id of the page before.")]
Limit = Annotated[int, Query(ge=1, le=200, description="How many at most.")]
By = Annotated[Short, Field(description="The e-mail of the staff member in whose name this is done.")]

ANA: Any = {
    "id": 7,
    "name": "Ana Ruiz",
    "state": "active",
    "therapist": "ben@example.org",
    "program": "spine-strength",
    "days": "mon+wed+fri",
    "time": "08:30",
    "contacts": [{"channel": "sms", "address": "+12025550101", "consent": "open"}],
}


class Strict(BaseModel):
    """A body whose unknown fields are refused."""

    model_config = ConfigDict(extra="forbid")


class Problem(BaseModel):
    """Problem details (RFC 9457)."""

    type: str = "about:blank"
    title: str
    status: int
    detail: str


class Row(BaseModel):
    """One row of the record in its JSON shape."""

    model_config = ConfigDict(extra="allow")


class Page(BaseModel):
    """A page of rows; `next` is the `after` of the next page, null on the last."""

    items: list[dict[str, Any]]
    next: int | None = None

    model_config = ConfigDict(json_schema_extra={"examples": [{"items": [ANA], "next": None}]})


class Done(BaseModel):
    """That it was done, and what came of it."""

    done: str
    id: int | None = None

    model_config = ConfigDict(json_schema_extra={"examples": [{"done": "hold cleared", "id": 7}]})


class EnrolIn(Strict):
    """A client to enrol; the names and meanings are those of the enrolment file's columns."""

    name: Short
    mobile: Short = ""
    email: Short = ""
    language: Short = ""
    time_zone: Short = ""
    days: Short = ""
    time: Short = ""
    channel: Short = ""
    therapist: Short
    program: Short
    usual_pain: int | None = Field(default=None, ge=0, le=10)
    precautions: Short = ""
    holder: Short = ""
    emergency_note: Short = ""
    chart_id: Short = ""
    birth_year: int | None = Field(default=None, ge=1900, le=2100)
    consent_on: date | None = None
    consent_how: Short = ""

    model_config = ConfigDict(
        extra="forbid",
        json_schema_extra={
            "examples": [
                {
                    "name": "Ana Ruiz",
                    "mobile": "+12025550101",
                    "therapist": "ben@example.org",
                    "program": "spine-strength",
                    "precautions": "none known",
                    "consent_on": "2027-03-01",
                    "consent_how": "signed form",
                }
            ]
        },
    )


class DetailsIn(Strict):
    """Details to change; what is left out stays."""

    name: Short | None = None
    language: Short | None = None
    channel: Short | None = None
    holder: Short | None = None
    window: Short | None = None
    emergency_note: Short | None = None
    chart_id: Short | None = None
    birth_year: int | None = Field(default=None, ge=1900, le=2100)
    compact_doses: bool | None = None
    days: Short | None = None
    time: Short | None = None
    time_zone: Short | None = None
    therapist: Short | None = Field(default=None, description="The e-mail of another therapist of the clinic.")
    mobile: Short | None = Field(default=None, description="Another number; empty takes it away.")
    email: Short | None = Field(default=None, description="Another address; empty takes it away.")


class ConsentIn(Strict):
    """A consent that the desk took, or her wish for no more messages."""

    change: Literal["given", "withdrawn"]
    how: Short = ""
    on: date | None = None

    model_config = ConfigDict(
        extra="forbid",
        json_schema_extra={"examples": [{"change": "given", "how": "signed form", "on": "2027-03-01"}]},
    )


class PauseIn(Strict):
    """A pause until its last day; without one, 14 days."""

    until: date | None = None
    reason: Short = ""


class ReasonIn(Strict):
    """Why a client's care ends."""

    reason: Literal["goals met", "moved", "referred", "lost", "died"]


class ByIn(Strict):
    """In whose name something is done."""

    by: By

    model_config = ConfigDict(extra="forbid")


class WriteIn(ByIn):
    """Words to a client, or a note for the record."""

    words: Words

    model_config = ConfigDict(
        extra="forbid", json_schema_extra={"examples": [{"by": "ben@example.org", "words": "Rest today. I call at 3."}]}
    )


class HoldIn(ByIn):
    """A hold, with a word for colleagues."""

    note: Short = ""


class DoseIn(ByIn):
    """A step along her ladder."""

    step: Literal["back", "up", "first"]


class CorrectionIn(ByIn):
    """What stands for a session; null is "not stated", what is left out stays as it is."""

    completed: Literal["all", "part", "none"] | None = None
    sets: int | None = Field(default=None, ge=0, le=20)
    reps: int | None = Field(default=None, ge=0, le=100)
    pain: int | None = Field(default=None, ge=0, le=10)
    why: Words = ""


class AcknowledgeIn(ByIn):
    """Who has an alert, and whether she has read the client's words in the program that says so."""

    words_read: bool = Field(default=False, description="Vouched for: the client is then told who has read her words.")


class CloseIn(ByIn):
    """What was done about an alert; an urgent one needs a note."""

    outcome: Literal["called", "changed dose", "saw her", "expected", "nothing"]
    note: Short = ""


class AnswerIn(ByIn):
    """The answer to a proposed step."""

    answer: Literal["approve", "decline"]


class ProgramIn(ByIn):
    """A program in its JSON shape, with the step she is on (from 1), her precautions and hour."""

    program: dict[str, Any]
    step: int = Field(default=1, ge=1, le=20)
    precautions: list[Short] | None = None
    time: Short = "08:30"
    by_itself: bool = False


class ExtendIn(ByIn):
    """By how many weeks a program ends later."""

    weeks: int = Field(default=6, ge=1, le=52)


class ExportIn(Strict):
    """How a record leaves, why and to whom."""

    format: Literal["csv", "json", "fhir", "copy", "calendar"] = "json"
    reason: Short
    recipient: Short


class EraseIn(Strict):
    """Why a record is erased."""

    reason: Short
