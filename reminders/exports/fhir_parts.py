"""Single FHIR R4 resources from the record's values; which of them stand in a Bundle is decided in `fhir`."""

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from reminders.exports.corrected import corrections

if TYPE_CHECKING:
    from reminders.exports.fhir import References

Json = dict[str, Any]
Row = Mapping[str, Any]

LOINC = "http://loinc.org"
UCUM = "http://unitsofmeasure.org"
OURS = "urn:x-reminders:code"  # for what has no public code: no LOINC code for "prescribed session done" was found
TERMS = "http://terminology.hl7.org/CodeSystem"
# LOINC 72514-3. Its answer LA6113-0 displays as "2 or more", so the number is stored and no answer code.
PAIN = {"system": LOINC, "code": "72514-3", "display": "Pain severity - 0-10 verbal numeric rating [Score] - Reported"}


def organization(course: Row, refs: "References") -> Json:
    """Return the clinic."""
    clinic = course["clinic"]
    made: Json = {
        "resourceType": "Organization",
        "id": refs.id_of("Organization", clinic["id"]),
        "name": clinic["name"],
    }
    if clinic["phone"]:
        made["telecom"] = [{"system": "phone", "value": clinic["phone"]}]
    return made


def patient(course: Row, refs: "References") -> Json:
    """Return the client; only her year of birth is known."""
    client = course["client"]
    made: Json = {
        "resourceType": "Patient",
        "id": refs.id_of("Patient", client["id"]),
        "identifier": [{"system": f"{OURS}:client", "value": str(client["id"])}],
        "active": client["state"] != "closed",
        "name": [{"text": client["name"]}],
        "telecom": [
            {"system": "email" if one["channel"] == "email" else "phone", "value": one["address"]}
            for one in client["contacts"]
        ],
        "communication": [{"language": {"coding": [{"system": "urn:ietf:bcp:47", "code": client["language"]}]}}],
        "managingOrganization": refs.to("Organization", course["clinic"]["id"]),
    }
    if client["chart_id"]:
        made["identifier"].append({"system": f"{OURS}:chart", "value": client["chart_id"]})
    if client["birth_year"]:
        made["birthDate"] = str(client["birth_year"])
    if client["died_on"]:
        made["deceasedDateTime"] = client["died_on"]
    if course["therapist"]:
        made["generalPractitioner"] = [refs.to("Practitioner", course["therapist"]["id"])]
    return {name: value for name, value in made.items() if value != []}


def practitioner(course: Row, refs: "References") -> Json:
    """Return the therapist."""
    therapist = course["therapist"]
    return {
        "resourceType": "Practitioner",
        "id": refs.id_of("Practitioner", therapist["id"]),
        "name": [{"text": therapist["name"]}],
        "telecom": [{"system": "email", "value": therapist["email"]}],
    }


def period(course: Row, version: Row) -> Json:
    """Return from when to when a program version counts: until the next one begins, or its end."""
    later = [one["from_on"] for one in course["programs"] if one["number"] > version["number"]]
    ends = min(later) if later else version["end_on"]
    return {"start": version["from_on"], **({"end": max(ends, version["from_on"])} if ends else {})}


def status_of(course: Row, version: Row) -> str:
    """Return whether a version is the one in force."""
    newest = version["number"] == max(one["number"] for one in course["programs"])
    if not newest or course["client"]["state"] == "closed":
        return "completed"
    return "on-hold" if course["client"]["holds"] else "active"


def care_plan(course: Row, version: Row, refs: "References") -> Json:
    """Return one version of the program as a plan (status, intent and subject are each required: R4 CarePlan)."""
    status = status_of(course, version)
    made: Json = {
        "resourceType": "CarePlan",
        "id": refs.id_of("CarePlan", version["id"]),
        "status": status,
        "intent": "plan",
        "title": f"Home exercise program {course['client']['program']}, version {version['number']}",
        "subject": refs.subject,
        "period": period(course, version),
        "activity": [{"reference": refs.to("ServiceRequest", version["id"])}],
    }
    if version["number"] > 1:
        before = [one["id"] for one in course["programs"] if one["number"] == version["number"] - 1]
        made["replaces"] = [refs.to("CarePlan", number) for number in before]
    return {name: value for name, value in made.items() if value != []}


def service_request(course: Row, version: Row, refs: "References") -> Json:
    """Return what is asked for: the weekly days and hour as a Timing, the exercises as a note."""
    client = course["client"]
    repeat: Json = {"boundsPeriod": period(course, version), "frequency": 1, "period": 1, "periodUnit": "wk"}
    if client["days"]:
        repeat |= {"dayOfWeek": client["days"].split("+"), "timeOfDay": [f"{client['time']}:00"]}
    note = "; ".join(listed(one, version["rung"]) for one in version["body"].get("lists", ()))
    return {
        "resourceType": "ServiceRequest",
        "id": refs.id_of("ServiceRequest", version["id"]),
        "status": status_of(course, version),
        "intent": "order",
        "code": {"text": "Home exercise session"},
        "subject": refs.subject,
        "occurrenceTiming": {"repeat": repeat},
        **({"note": [{"text": note}]} if note else {}),
        **({"requester": refs.to("Practitioner", course["therapist"]["id"])} if course["therapist"] else {}),
    }


def listed(day_list: Row, rung: int) -> str:
    """Return one list of exercises with the doses of a rung, in words."""
    lines = []
    for item in day_list["items"]:
        ladder = item["ladder"]
        lines.append(f"{item['exercise']} {ladder[min(rung, len(ladder) - 1)]['dose']}")
    return f"List {day_list['name']}: {', '.join(lines)}"


def communication(row: Row, refs: "References") -> Json:
    """Return one message as it came in, untouched."""
    medium = {"sms": "SMSWRIT", "email": "EMAILWRIT"}.get(row["channel"], "WRITTEN")
    return {
        "resourceType": "Communication",
        "id": refs.id_of("Communication", row["id"]),
        "status": "completed",
        "medium": [{"coding": [{"system": f"{TERMS}/v3-ParticipationMode", "code": medium}]}],
        "subject": refs.subject,
        "sender": refs.subject,
        "recipient": [refs.to("Organization", refs.clinic["id"])],
        "received": row["at"],
        **({"payload": [{"contentString": row["body"]}]} if row["body"] else {}),
    }


def amended(reports: Sequence[Row]) -> str:
    """Return the status of a value: amended once a report corrected it."""
    return "amended" if corrections(reports) else "final"


def observation(kind: str, number: object, code: Json, on: str, reports: Sequence[Row], refs: "References") -> Json:
    """Return the frame of an Observation; the value is added by the caller."""
    made: Json = {
        "resourceType": "Observation",
        "id": refs.id_of(kind, number),
        "status": amended(reports),
        "code": {"coding": [code]},
        "subject": refs.subject,
        "effectiveDateTime": on,
    }
    replies = refs.replies(reports)
    if replies:
        made["derivedFrom"] = replies
    return made


def quantity(pain: int) -> Json:
    """Return a rating 0-10, as the French national measurements guide records it: unit Level, UCUM code 1."""
    return {"value": pain, "unit": "Level", "system": UCUM, "code": "1"}


def session_done(session: Row, refs: "References") -> Json:
    """Return what became of a session, with the amounts told, under a code of our own."""
    code = {"system": OURS, "code": "session", "display": "Prescribed home exercise session"}
    reports = [report for report in session["reports"] if not report["settling"]]
    made = observation("Session", session["id"], code, session["date"], reports, refs)
    made["valueCodeableConcept"] = {"coding": [{"system": f"{OURS}:state", "code": session["state"]}]}
    amounts = [
        {"code": {"coding": [{"system": OURS, "code": name}]}, "valueInteger": session[name]}
        for name in ("sets", "reps")
        if session[name] is not None
    ]
    if amounts:
        made["component"] = amounts
    return made


def session_pain(session: Row, refs: "References") -> Json:
    """Return the worst pain during a session."""
    reports = [report for report in session["reports"] if not report["settling"]]
    made = observation("Pain", session["id"], PAIN, session["date"], reports, refs)
    made["category"] = vital_signs()
    made["valueQuantity"] = quantity(session["pain"])
    return made


def morning_pain(session: Row, report: Row, refs: "References") -> Json:
    """Return a rating of the morning after a session, marked as such: it is not the pain of a session."""
    made = observation("Morning", report["id"], PAIN, report["at"], [report], refs)
    made["category"] = vital_signs()
    made["valueQuantity"] = quantity(report["reading"]["pain"])
    made["method"] = {"coding": [{"system": OURS, "code": "settling"}], "text": f"morning after {session['date']}"}
    return made


def loose_pain(report: Row, refs: "References") -> Json:
    """Return a rating that belongs to no session."""
    made = observation("Loose", report["id"], PAIN, report["at"], [report], refs)
    made["category"] = vital_signs()
    made["valueQuantity"] = quantity(report["reading"]["pain"])
    return made


def vital_signs() -> list[Json]:
    """Return the category of a pain rating."""
    return [{"coding": [{"system": f"{TERMS}/observation-category", "code": "vital-signs"}]}]


def danger_flag(course: Row, row: Row, refs: "References") -> Json:
    """Return a danger sign that was read; active while its alert is open."""
    open_rules = {alert["rule"] for alert in course["alerts"] if alert["state"] != "closed"}
    code = {"coding": [{"system": f"{OURS}:danger", "code": row["kind"]}], "text": f"{row['kind']} ({row['grade']})"}
    return flag("Danger", row["id"], row["kind"] in open_rules, code, {"start": row["at"]}, refs)


def hold_flag(row: Row, refs: "References") -> Json:
    """Return a hold: reminders stopped until a therapist says otherwise."""
    code = {"coding": [{"system": f"{OURS}:hold", "code": row["rule"]}], "text": f"Exercises on hold: {row['rule']}"}
    ends = {"end": row["ended_at"]} if row["ended_at"] else {}
    return flag("Hold", row["id"], not row["ended_at"], code, {"start": row["opened_at"], **ends}, refs)


def flag(kind: str, number: object, active: bool, code: Json, span: Json, refs: "References") -> Json:
    """Return a Flag (status, code and subject are each required: R4B Flag)."""
    return {
        "resourceType": "Flag",
        "id": refs.id_of(kind, number),
        "status": "active" if active else "inactive",
        "category": [{"coding": [{"system": f"{TERMS}/flag-category", "code": "safety"}]}],
        "code": code,
        "subject": refs.subject,
        "period": span,
    }


def provenance(course: Row, resources: Sequence[Row], refs: "References") -> Json:
    """Return where all this comes from: told by the client, read by a computer, kept by the clinic."""
    return {
        "resourceType": "Provenance",
        "id": refs.id_of("Provenance", course["made"]),
        "target": [{"reference": f"urn:uuid:{one['id']}"} for one in resources],
        "recorded": course["made"],
        "agent": [
            {
                "type": {"text": "read from the client's replies by a computer, corrected by staff"},
                "who": refs.to("Organization", course["clinic"]["id"]),
            }
        ],
    }
