"""The log and a client's record leaving or being erased: always with a reason."""

import csv
import io
import re

import pytest

from reminders.store.tables import (
    Audit,
)
from tests.web.desk import Desk

FAY = "fay@example.org"


def test_the_log_is_filtered_and_taken_out_with_a_reason(desk: Desk) -> None:
    client_id = desk.world.enrol()
    fay = desk.signed_in(FAY)
    fay.get(f"/clients/{client_id}/details")

    page = fay.get(f"/audit?by=fay&action=details+viewed&client={client_id}&since=2027-03-01&until=2027-03-01").text
    assert page.count("<time") == 1
    assert "Nothing fits" in fay.get("/audit?since=2027-03-02").text
    assert fay.get("/audit?client=x").status_code == 422
    assert fay.get("/audit?since=soon").status_code == 422

    answer = fay.post("/audit/export", reason="yearly review")
    rows = list(csv.reader(io.StringIO(answer.text)))
    assert rows[0][:3] == ["id", "at", "by"]
    assert len(rows) > 3
    assert fay.post("/audit/export").status_code == 422
    assert desk.world.rows(Audit, action="log exported")[0].details["reason"] == "yearly review"


def test_the_log_goes_back_page_by_page(desk: Desk) -> None:
    fay = desk.signed_in(FAY)
    for _ in range(102):
        fay.get("/work")

    first = fay.get("/audit?action=work+list+viewed").text
    before = re.search(r"before=(\d+)", first)
    assert before is not None
    assert fay.get(f"/audit?action=work+list+viewed&before={before[1]}").text.count("<time") == 2


@pytest.mark.parametrize("kind", ["csv", "json", "fhir", "copy", "calendar"])
def test_a_record_leaves_as_a_file_with_reason_and_recipient(desk: Desk, kind: str) -> None:
    client_id = desk.world.enrol()
    fay = desk.signed_in(FAY)
    assert "Record of Ana Ruiz" in fay.get(f"/clients/{client_id}/record").text

    answer = fay.post(f"/clients/{client_id}/export", format=kind, reason="she asked", recipient="Ana Ruiz")

    assert answer.status_code == 200
    assert answer.headers["content-disposition"].startswith(f'attachment; filename="client-{client_id}.')
    assert fay.post(f"/clients/{client_id}/export", format=kind, reason="she asked").status_code == 422


def test_a_record_is_erased_once_its_number_was_typed(desk: Desk) -> None:
    client_id = desk.world.enrol()
    fay = desk.signed_in(FAY)

    assert fay.post(f"/clients/{client_id}/erase", reason="she asked", typed="77").status_code == 422
    assert desk.world.client(client_id).name == "Ana Ruiz"
    assert fay.post(f"/clients/{client_id}/erase", reason="she asked", typed=str(client_id)).status_code == 303
    assert desk.world.client(client_id).name != "Ana Ruiz"
    assert desk.signed_in(FAY).get(f"/clients/{client_id}/details").status_code == 200
