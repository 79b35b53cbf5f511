"""The API's description held against its answers by a general fuzzer: no 5xx, no undocumented answer."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
import schemathesis
from hypothesis import HealthCheck, given, settings
from hypothesis.errors import Unsatisfiable
from hypothesis.strategies import SearchStrategy
from schemathesis import GenerationMode
from schemathesis.checks import (
    not_a_server_error,
)
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    response_headers_conformance,
    response_schema_conformance,
    status_code_conformance,
)

from reminders.core.scopes import SCOPES
from reminders.store.db import Database
from tests.clinic import ANA, a_world
from tests.conftest import NOW
from tests.web.desk import a_desk, a_token
from tests.web.live import a_port, served

HEADERS: dict[str, str] = {}
CHECKS = [
    not_a_server_error,
    status_code_conformance,
    content_type_conformance,
    response_headers_conformance,
    response_schema_conformance,
]


@pytest.fixture(scope="module")
def described(sqlite_template: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[schemathesis.BaseSchema]:
    """The description of a served clinic with one client in it."""
    path = tmp_path_factory.mktemp("fuzz") / "reminders.db"
    shutil.copy(sqlite_template, path)
    db = Database(f"sqlite:///{path}")
    world = a_world(db, NOW)
    world.enrol()
    world.pass_time(days=2)
    world.plan()
    world.send()
    world.hear("done pain 9", ANA)
    headers = a_token(world, " ".join(SCOPES))
    with served(a_desk(world).web, a_port()) as base:
        HEADERS.update(headers)
        yield schemathesis.openapi.from_url(f"{base}/api/v1/openapi.json")
    db.close()


QUIET = settings(
    max_examples=8,
    deadline=None,
    derandomize=True,
    database=None,
    suppress_health_check=list(HealthCheck),
)


def test_every_answer_is_as_described(described: schemathesis.BaseSchema) -> None:
    tried = 0
    for result in described.get_all_operations():
        operation = result.ok()
        for mode in (GenerationMode.POSITIVE, GenerationMode.NEGATIVE):
            tried += asked(operation.as_strategy(generation_mode=mode))

    assert tried > 500


# What is really there, so that requests get past "no such client" and "nobody by that e-mail".
REAL = {
    "by": "ben@example.org",
    "therapist": "ben@example.org",
    "program": "spine-strength",
    "mobile": "+12025550107",
    "email": "",
    "how": "signed form",
    "to": "dee@example.org",
    "week": "2027-W09",
}


def let_in(case: schemathesis.Case) -> None:
    """Put what is really there in place of some of what was made up."""
    for name in case.path_parameters:
        case.path_parameters[name] = REAL.get(name, 1)
    for part in (case.body, case.query):
        if isinstance(part, dict):
            part.update({name: value for name, value in REAL.items() if isinstance(part.get(name), str)})


def asked(cases: SearchStrategy[schemathesis.Case]) -> int:
    """Send the requests that a strategy makes, and hold each answer against the description; how many."""
    count = 0

    @QUIET
    @given(case=cases)
    def one(case: schemathesis.Case) -> None:
        nonlocal count
        count += 1
        if count % 3:
            let_in(case)
        case.call_and_validate(checks=CHECKS, headers=HEADERS)

    try:
        one()
    except Unsatisfiable:  # nothing about a request without parameters can be wrong
        return count
    return count
