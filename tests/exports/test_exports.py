import csv
import io
import json
from datetime import timedelta
from typing import Any

import pytest
from fhir.resources.R4B.bundle import Bundle
from icalendar import Calendar

from reminders.exports import FORMATS
from reminders.store import course
from reminders.store.tables import Client, ExerciseSession, Flag, Hold, Report
from tests.clinic import World

Course = dict[str, Any]


@pytest.fixture
def record(world: World) -> Course:
    """Ana's record: a report and its correction, a morning after, a hold, a formula in her words."""
    client_id = world.enrol(usual_pain="3", birth_year="1950", chart_id="C-17")
    world.plan()
    world.pass_time(days=2)
    inbound = [world.hear(text) for text in ("done 2x10 pain 3", "=2+3")]
    with world.db.begin() as tx:
        rows = list(tx.exec(course.select(ExerciseSession).where(ExerciseSession.client_id == client_id)))
        session = rows[0]
        session.state, session.sets, session.reps, session.pain, session.completed = "done", 2, 10, 5, "all"
        session.items = [
            {"letter": "A", "code": "sit-to-stand", "name": "sit to stand", "dose": "10 times", "short": "1x10"}
        ]
        for report in tx.exec(course.select(Report).where(Report.client_id == client_id)):
            tx.delete(report)
        tx.flush()
        told = Report(client_id=client_id, session_id=session.id, at=world.now, channel="sms", text="done 2x10 pain 3")
        told.reading, told.inbound_id = {"pain": 3}, inbound[0]
        tx.add(told)
        tx.flush()
        fixed = Report(client_id=client_id, session_id=session.id, at=world.now, channel="staff", text="she meant 5")
        fixed.reading, fixed.replaces, fixed.by = {"pain": 5}, told.id, "ben@example.org"
        morning = Report(
            client_id=client_id, session_id=session.id, at=world.now + timedelta(days=1), channel="sms", text="2"
        )
        morning.reading, morning.is_settling = {"pain": 2}, True
        loose = Report(client_id=client_id, at=world.now, channel="sms", text="=2+3", reading={"pain": None})
        tx.add_all([fixed, morning, loose])
        tx.add(Flag(client_id=client_id, kind="fall_or_injury", grade="urgent", at=world.now))
        tx.add(Hold(client_id=client_id, rule="fall_or_injury", opened_at=world.now))
    with world.db.read() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        return course.course_of(tx, client, world.now)


def resources(record: Course, kind: str) -> list[dict[str, Any]]:
    made = json.loads(FORMATS["fhir"](record))
    return [one["resource"] for one in made["entry"] if one["resource"]["resourceType"] == kind]


def pains(record: Course) -> list[dict[str, Any]]:
    return [one for one in resources(record, "Observation") if one["code"]["coding"][0]["code"] == "72514-3"]


def test_the_bundle_is_what_a_library_of_the_standard_accepts(record: Course) -> None:
    """Read by fhir.resources, which holds HL7's own definitions for R4B."""
    read = Bundle.model_validate_json(FORMATS["fhir"](record))

    kinds = {entry.resource.get_resource_type() for entry in read.entry}
    assert kinds >= {"Patient", "CarePlan", "ServiceRequest", "Observation", "Communication", "Flag", "Provenance"}


def test_every_reference_of_the_bundle_leads_to_something_in_it(record: Course) -> None:
    text = FORMATS["fhir"](record)
    inside = {entry["fullUrl"] for entry in json.loads(text)["entry"]}

    def references(value: Any) -> list[str]:
        if isinstance(value, dict):
            own = [value["reference"]] if isinstance(value.get("reference"), str) else []
            return own + [found for one in value.values() for found in references(one)]
        return [found for one in value for found in references(one)] if isinstance(value, list) else []

    assert set(references(json.loads(text))) <= inside


def test_pain_is_kept_as_a_number_under_its_public_code(record: Course) -> None:
    """LOINC 72514-3; unit and UCUM code as the French national measurements guide's pain severity profile has them."""
    session, morning = pains(record)

    assert session["valueQuantity"] == {"value": 5, "unit": "Level", "system": "http://unitsofmeasure.org", "code": "1"}
    assert session["code"]["coding"][0]["system"] == "http://loinc.org"
    assert (morning["valueQuantity"]["value"], morning["method"]["coding"][0]["code"]) == (2, "settling")


def test_a_corrected_value_is_amended_and_an_untouched_one_final(record: Course) -> None:
    session, morning = pains(record)

    assert (session["status"], morning["status"]) == ("amended", "final")


def test_a_value_is_derived_from_the_message_it_was_read_from(record: Course) -> None:
    messages = {f"urn:uuid:{one['id']}": one for one in resources(record, "Communication")}
    (source,) = pains(record)[0]["derivedFrom"]

    assert messages[source["reference"]]["payload"] == [{"contentString": "done 2x10 pain 3"}]


def test_what_is_asked_for_stands_as_weekly_days_and_an_hour(record: Course) -> None:
    (request,) = resources(record, "ServiceRequest")
    repeat = request["occurrenceTiming"]["repeat"]

    assert repeat["dayOfWeek"] == record["client"]["days"].split("+")
    assert repeat["timeOfDay"] == [f"{record['client']['time']}:00"]
    assert request["status"] == "on-hold"


def test_two_exports_name_the_same_things_alike(record: Course) -> None:
    assert FORMATS["fhir"](record) == FORMATS["fhir"](record)


def test_the_spreadsheet_has_a_line_a_session_and_marks_the_morning_after(record: Course) -> None:
    lines = list(csv.DictReader(io.StringIO(FORMATS["csv"](record))))
    done = next(line for line in lines if line["state"] == "done")

    assert (done["pain"], done["morning_after"], done["sets"], done["reps"]) == ("5", "2", "2", "10")
    assert done["corrected_by"] == "ben@example.org"
    assert done["exercises"] == "A sit to stand 1x10"


def test_words_that_a_spreadsheet_would_run_are_made_text(record: Course) -> None:
    lines = list(csv.DictReader(io.StringIO(FORMATS["csv"](record))))

    assert [line["words"] for line in lines if line["kind"] == "report"] == ["'=2+3"]


def test_json_holds_the_whole_record(record: Course) -> None:
    assert json.loads(FORMATS["json"](record)) == record


@pytest.mark.parametrize(("language", "words"), [("en", "worst pain 5 of 10"), ("es", "peor dolor 5 de 10")])
def test_her_own_copy_is_in_her_language_and_has_her_words(record: Course, language: str, words: str) -> None:
    record["client"]["language"] = language
    record["sessions"][0]["reports"][0]["text"] = "done <b>&</b> dusted"
    page = FORMATS["copy"](record)

    assert f'<html lang="{language}">' in page
    assert words in page
    assert "done &lt;b&gt;&amp;&lt;/b&gt; dusted" in page


def test_the_calendar_repeats_weekly_at_her_wall_time(record: Course) -> None:
    """Read back by a general calendar library (RFC 5545); the start is one of the listed days."""
    (event,) = Calendar.from_ical(FORMATS["calendar"](record)).walk("VEVENT")
    start = event.decoded("dtstart")

    assert event["RRULE"]["BYDAY"] == [day[:2].upper() for day in record["client"]["days"].split("+")]
    assert start.strftime("%H:%M") == record["client"]["time"]
    assert start.strftime("%a").lower() in record["client"]["days"]
    assert event["DTSTART"].params["TZID"] == "America/New_York"
    assert "pain" not in FORMATS["calendar"](record)


def test_the_calendars_lines_are_short_enough_and_end_as_the_standard_says(record: Course) -> None:
    """RFC 5545 section 3.1: 75 octets, CRLF."""
    record["client"]["language"] = "es"
    text = FORMATS["calendar"](record)

    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    assert "\n" not in text.replace("\r\n", "")


def test_what_staff_corrected_in_the_console_is_marked_though_it_replaces_no_one_report(record: Course) -> None:
    for report in record["sessions"][0]["reports"]:
        report["replaces"] = None

    line = next(csv.DictReader(io.StringIO(FORMATS["csv"](record))))
    assert line["corrected_by"] == "ben@example.org"
    assert [one["status"] for one in pains(record) if one["valueQuantity"]["value"] == 5] == ["amended"]


def test_what_staff_alone_wrote_down_corrects_nothing(record: Course) -> None:
    session = record["sessions"][0]
    session["reports"] = [{**one, "replaces": None} for one in session["reports"] if one["by"] == "ben@example.org"]

    assert next(csv.DictReader(io.StringIO(FORMATS["csv"](record))))["corrected_by"] == ""
    assert [one["status"] for one in pains(record) if one["valueQuantity"]["value"] == 5] == ["final"]


def test_a_report_without_a_session_stands_on_her_own_day(record: Course) -> None:
    record["loose_reports"][0]["at"] = "2027-03-02T01:30:00Z"  # Monday evening in New York

    lines = list(csv.DictReader(io.StringIO(FORMATS["csv"](record))))
    assert [one["date"] for one in lines if one["kind"] == "report"] == ["2027-03-01"]
