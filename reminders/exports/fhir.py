"""The record as an HL7 FHIR R4 Bundle: who, what was prescribed, what was done, pain 0-10, messages as received.

The codes and which resource carries what are decided here; single resources are made in the sibling `fhir_parts`.
"""

import uuid
from collections.abc import Mapping, Sequence
from typing import Any

from reminders.exports import fhir_parts as parts

Json = dict[str, Any]
COUNTED = ("done", "part", "skipped", "missed")


def bundle(course: Mapping[str, Any]) -> Json:
    """Return the Bundle: Patient, CarePlan, ServiceRequest, Observation, Communication, Flag, Provenance.

    Every resource has a urn:uuid made from the clinic's and its own number, so that a second export names it alike.
    """
    refs = References(course)
    resources = [parts.organization(course, refs), parts.patient(course, refs)]
    if course["therapist"]:
        resources.append(parts.practitioner(course, refs))
    for version in course["programs"]:
        resources += [parts.care_plan(course, version, refs), parts.service_request(course, version, refs)]
    resources += [parts.communication(row, refs) for row in course["messages"] if row["direction"] == "in"]
    for session in course["sessions"]:
        resources += observations(session, refs)
    resources += [parts.loose_pain(report, refs) for report in course["loose_reports"] if has_pain(report)]
    resources += [parts.danger_flag(course, row, refs) for row in course["flags"]]
    resources += [parts.hold_flag(row, refs) for row in course["holds"]]
    resources.append(parts.provenance(course, resources, refs))
    return {
        "resourceType": "Bundle",
        "type": "collection",
        "timestamp": course["made"],
        "entry": [{"fullUrl": f"urn:uuid:{one['id']}", "resource": one} for one in resources],
    }


def observations(session: Mapping[str, Any], refs: "References") -> list[Json]:
    """Return a session's Observations: what became of it, its worst pain, and the ratings of mornings after it."""
    made: list[Json] = []
    if session["state"] in COUNTED:
        made.append(parts.session_done(session, refs))
    if session["pain"] is not None:
        made.append(parts.session_pain(session, refs))
    made += [parts.morning_pain(session, report, refs) for report in settling(session) if has_pain(report)]
    return made


def settling(session: Mapping[str, Any]) -> Sequence[Mapping[str, Any]]:
    """Return the reports of a session that rate a morning after it."""
    return [report for report in session["reports"] if report["settling"]]


def has_pain(report: Mapping[str, Any]) -> bool:
    """Return whether a report states a rating."""
    return report["reading"].get("pain") is not None


class References:
    """Names resources by kind and number; the same record names them the same way every time."""

    def __init__(self, course: Mapping[str, Any]) -> None:
        self.clinic = course["clinic"]
        self.client = course["client"]["id"]
        self.received = {row["id"] for row in course["messages"] if row["direction"] == "in"}

    def id_of(self, kind: str, number: object) -> str:
        """Return the id of a resource."""
        name = f"reminders:{self.clinic['id']}:{self.clinic['name']}:{self.client}:{kind}:{number}"
        return str(uuid.uuid5(uuid.NAMESPACE_OID, name))

    def to(self, kind: str, number: object) -> Json:
        """Return a reference to a resource of the Bundle."""
        return {"reference": f"urn:uuid:{self.id_of(kind, number)}"}

    @property
    def subject(self) -> Json:
        """The reference to the Patient."""
        return self.to("Patient", self.client)

    def replies(self, reports: Sequence[Mapping[str, Any]]) -> list[Json]:
        """Return references to the messages that reports were read from."""
        found = [report["inbound"] for report in reports if report["inbound"] in self.received]
        return [self.to("Communication", one) for one in dict.fromkeys(found)]
