"""Another program does a clinic's whole day through the API: desk, therapist, papers."""

from typing import Any

import pytest

from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import to_json
from reminders.core.scopes import SCOPES
from reminders.store.tables import (
    Alert,
    Client,
    ClientProgram,
    ClinicNote,
    Hold,
    IdempotentAnswer,
    Proposal,
    Schedule,
    Staff,
)
from tests.clinic import ANA
from tests.web.desk import Desk, a_token

BEN = "ben@example.org"


class Program:
    """Another program of the clinic."""

    def __init__(self, desk: Desk) -> None:
        self.headers = a_token(desk.world, " ".join(SCOPES))
        self.visitor = desk.visitor()

    def ask(self, method: str, path: str, status: int = 200, **body: Any) -> Any:
        """Call the API; the answer must have this status."""
        answer = self.visitor.request(method, f"/api/v1{path}", headers=self.headers, json=body or None)
        assert answer.status_code == status, (path, answer.text)
        return answer.json()


@pytest.fixture
def program(desk: Desk) -> Program:
    return Program(desk)


@pytest.fixture
def ana(desk: Desk) -> int:
    client_id = desk.world.enrol()
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    desk.world.hear("done pain 9", ANA)
    return client_id


def test_the_desks_work(desk: Desk, program: Program) -> None:
    client_id = desk.world.enrol(consent_on="", consent_how="")
    path = f"/clients/{client_id}"

    assert program.ask("GET", "/clients?q=ruiz")["items"][0]["state"] == "invited"
    given = program.ask("POST", f"{path}/consents", change="given", how="signed form", on="2027-03-01")
    assert given["state"] == "active"
    assert program.ask("GET", f"{path}/consents")["items"][0]["change"] == "given"
    changed = program.ask(
        "PATCH", path, name="Ana Vega", days="tue+thu", therapist="dee@example.org", email="a@example.org"
    )
    assert (changed["name"], changed["therapist"]) == ("Ana Vega", "dee@example.org")
    assert desk.world.rows(Schedule)[-1].days == "tue+thu"
    assert program.ask("POST", f"{path}/pause", until="2027-03-09")["pauses"][0]["until"] == "2027-03-09"
    assert program.ask("POST", f"{path}/resume")["pauses"] == []
    program.ask("POST", f"{path}/resume", 409)
    program.ask("POST", f"{path}/pause", 422, until="2027-02-01")
    program.ask("PATCH", path, 422, therapist="nobody@example.org")
    program.ask("POST", f"{path}/consents", 422, change="given", how="signed form", on="2028-03-01")
    assert program.ask("POST", f"{path}/consents", change="withdrawn")["state"] == "opted_out"
    assert program.ask("POST", f"{path}/close", reason="moved")["closed_reason"] == "moved"
    assert program.ask("POST", f"{path}/reopen")["state"] == "invited"


def test_a_program_that_vouches_for_the_reading_has_the_client_told_who_read(
    desk: Desk, program: Program, ana: int
) -> None:
    alert = desk.world.alerts(ana)[0]

    program.ask("POST", f"/alerts/{alert.id}/acknowledge", by=BEN, words_read=True)

    assert [row.details["reader"] for row in desk.world.queued("read_by")] == ["Ben Ames"]


def test_whose_a_sign_was_is_said_by_another_program_too(desk: Desk, program: Program) -> None:
    ana, eva = (desk.world.enrol(name, "+12025550131", holder="shared") for name in ("Ana Ruiz", "Eva Ruiz"))
    desk.world.hear("fell down the stairs, cannot get up", "+12025550131")
    alert = desk.world.alerts(ana)[0]

    program.ask("POST", f"/alerts/{alert.id}/hers", by=BEN)

    assert [row.state for row in desk.world.alerts(eva)] == ["closed"]
    program.ask("POST", f"/alerts/{alert.id}/hers", 409, by=BEN)


def test_the_therapists_work(desk: Desk, program: Program, ana: int) -> None:
    path, alert = f"/clients/{ana}", desk.world.alerts(ana)[0]

    assert program.ask("GET", "/alerts?state=open")["items"][0]["rule"] == "severe_pain"
    program.ask("POST", f"/alerts/{alert.id}/acknowledge", by=BEN)
    program.ask("POST", f"/alerts/{alert.id}/close", 422, by=BEN, outcome="called")
    program.ask("POST", f"/alerts/{alert.id}/close", by=BEN, outcome="called", note="rang her")
    assert desk.world.rows(Alert)[0].outcome == "called"
    assert desk.world.queued("read_by") == [], "nobody has read her words behind sign-in"
    assert program.ask("POST", f"{path}/clear", by=BEN)["holds"] == []
    assert program.ask("POST", f"{path}/hold", by=BEN, note="wait")["holds"][0]["rule"] == "by_hand"
    program.ask("POST", f"{path}/easy-day", by=BEN)
    assert program.ask("POST", f"{path}/dose", by=BEN, step="up")["step"] == 2
    program.ask("POST", f"{path}/dose", 422, by="fay@example.org", step="up")
    program.ask("POST", f"{path}/notes", 201, by=BEN, words="likes mornings")
    session = program.ask("GET", f"{path}/sessions")["items"][0]
    program.ask("POST", f"/sessions/{session['id']}/correction", 201, by=BEN, completed="all", pain=4)
    assert program.ask("GET", f"{path}/sessions")["items"][0]["pain"] == 4
    program.ask("POST", f"/sessions/{session['id']}/correction", 201, by=BEN, completed="part")
    assert program.ask("GET", f"{path}/sessions")["items"][0]["pain"] == 4, "what is left out stays"
    program.ask("POST", f"/sessions/{session['id']}/correction", 201, by=BEN, pain=None)
    kept = program.ask("GET", f"{path}/sessions")["items"][0]
    assert (kept["completed"], kept["pain"]) == ("part", None)
    planned = next(one for one in desk.world.sessions(ana) if one.state == "planned")
    program.ask("POST", f"/sessions/{planned.id}/correction", 409, by=BEN, completed="all")
    assert [row.ended_at is None for row in desk.world.rows(Hold, client_id=ana)] == [False, True]
    assert "done pain 9" in [one["body"] for one in program.ask("GET", f"{path}/messages")["items"]]
    assert program.ask("GET", f"{path}/reports")["items"] == []


def test_programs_proposals_and_the_inbox(desk: Desk, program: Program, ana: int) -> None:
    path = f"/clients/{ana}"
    with desk.world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        tx.add(Proposal(client_id=ana, made_at=desk.world.now, direction="up", to_rung=1, because=["5 of 6"]))
        tx.add(
            ClinicNote(clinic_id=client.clinic_id, client_id=ana, kind="question", words="may I?", at=desk.world.now)
        )

    proposal = program.ask("GET", "/proposals")["items"][0]
    assert (proposal["step"], proposal["because"]) == (2, ["5 of 6"])
    held = program.ask("POST", f"/proposals/{proposal['id']}", 409, by=BEN, answer="approve")
    assert held["detail"] == "She is on hold: clear the hold before her dose goes up."
    program.ask("POST", f"{path}/clear", by=BEN)
    assert program.ask("POST", f"/proposals/{proposal['id']}", by=BEN, answer="approve")["done"] == "approved"
    program.ask("POST", f"/proposals/{proposal['id']}", 409, by=BEN, answer="decline")
    note = next(one for one in program.ask("GET", "/inbox")["items"] if one["kind"] == "question")
    program.ask("POST", f"/inbox/{note['id']}/settle")
    assert note["id"] not in [one["id"] for one in program.ask("GET", "/inbox")["items"]]

    whole = to_json(STARTER_PROGRAMS["whole-body"])
    kept = program.ask("PUT", f"{path}/program", by=BEN, program=whole, precautions=["vertigo"], time="09:00")
    assert (kept["program"]["code"], kept["step"]) == ("whole-body", 1)
    program.ask("PUT", f"{path}/program", 422, by=BEN, program={"code": "x"})
    assert program.ask("GET", f"{path}/program")["version"] == kept["version"]
    end_on = program.ask("POST", f"{path}/program/extend", by=BEN, weeks=2)["end_on"]
    assert end_on == desk.world.rows(ClientProgram)[-1].end_on.isoformat()
    program.ask("POST", f"{path}/program/rechecked", by=BEN)


def test_the_clinics_own_settings(desk: Desk, program: Program) -> None:
    assert program.ask("PATCH", "/clinic", closed_days=["2027-12-24"], words_in_mail=True)["closed_days"] == [
        "2027-12-24"
    ]
    assert program.ask("GET", "/clinic")["words_in_mail"] is True
    program.ask("PATCH", "/clinic", 422, hours="always")
    added = program.ask("POST", "/staff", 201, role="therapist", name="Pia Lott", email="pia@example.org")
    changed = program.ask("PATCH", f"/staff/{added['id']}", role="lead", cover=BEN, cover_from="2027-03-01")
    assert (changed["role"], changed["cover"]) == ("lead", "Ben Ames")
    assert program.ask("PATCH", f"/staff/{added['id']}", cover="")["cover"] == ""
    program.ask("PATCH", f"/staff/{added['id']}", 422, cover="cleo@example.org")
    program.ask("POST", f"/staff/{added['id']}/link")
    desk.world.enrol()
    ben = desk.world.rows(Staff, email=BEN)[0].id
    assert program.ask("POST", f"/staff/{ben}/move", to="pia@example.org") == {"moved": 1}
    program.ask("POST", f"/staff/{ben}/move", 422, to="nobody@example.org")
    assert len(program.ask("GET", "/staff")["items"]) == 4
    assert program.ask("PUT", "/levels", levels={"stop_floor": 5}) == {"changed": {"stop_floor": 5}}
    program.ask("PUT", "/levels", 422, levels={"stop_floor": 50})
    assert program.ask("GET", "/levels")["levels"]["stop_floor"]["default"] == 6
    own = "{{ writer }}: {{ words }}"
    assert program.ask("PUT", "/wording", language="en", name="therapist_note", words=own)["wording"]
    assert program.ask("GET", "/delivery")["items"][0]["count"] >= 1
    assert program.ask("GET", f"/digests/2027-W09?therapist={BEN}")["week"] == "2027-W09"
    program.ask("GET", f"/digests/soon?therapist={BEN}", 422)
    program.ask("GET", "/digests/2027-W09", 422)
    assert program.ask("GET", "/audit?action=staff+added")["items"][0]["by"].startswith("token ")


def test_a_record_leaves_and_goes(desk: Desk, program: Program, ana: int) -> None:
    path = f"/clients/{ana}"
    program.ask("POST", f"{path}/export", 422, reason=" ", recipient="x")
    assert (
        "Ana Ruiz"
        in program.ask("POST", f"{path}/export", format="copy", reason="she asked", recipient="Ana")["content"]
    )
    program.ask("POST", f"{path}/erase", 422, reason=" ")
    assert program.ask("POST", f"{path}/erase", reason="she asked")["rows"] > 0
    program.ask("POST", f"{path}/export", 409, reason="x", recipient="x")


def test_no_kept_answer_shows_an_erased_client_whatever_her_name_was(desk: Desk, program: Program) -> None:
    person = {"name": "Ana Muñoz", "mobile": ANA, "therapist": BEN, "program": "spine-strength"}
    others = person | {"name": "Bo Lund", "mobile": "+12025550102"}
    bo = program.ask("POST", "/clients", 201, **others)["id"]
    program.headers["Idempotency-Key"] = "enrol"
    client_id = program.ask("POST", "/clients", 201, **person)["id"]
    path = f"/clients/{client_id}"
    program.headers["Idempotency-Key"] = "file"
    program.ask("POST", f"{path}/export", format="copy", reason="she asked", recipient="Ana")
    program.headers["Idempotency-Key"] = "bos-pause"
    program.ask("POST", f"/clients/{bo}/pause", until="2027-03-09")
    del program.headers["Idempotency-Key"]
    program.ask("PATCH", path, name="Ana Vega")
    program.ask("POST", f"{path}/erase", reason="she asked")

    assert [row.key for row in desk.world.rows(IdempotentAnswer)] == ["bos-pause"]
