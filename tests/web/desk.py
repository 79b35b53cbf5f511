"""A web application over a test's clinic, and browsers' cookies for its people."""

import warnings
from dataclasses import dataclass

from fastapi import FastAPI
from sqlmodel import select

from reminders.core.tokens import ALERT_PAGE, CLIENT_PAGE, CLIENT_SHEET, make_token
from reminders.flows.link_marks import alert_mark, client_mark, session_mark
from reminders.settings import Settings
from reminders.store.tables import Alert, ApiToken, Clinic, ExerciseSession, Staff
from reminders.texts import Texts
from reminders.web import auth
from reminders.web.app import create_app
from reminders.wiring import App
from tests.clinic import World

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # it asks for another release of its HTTP client than the one locked here
    from starlette.testclient import TestClient

SECRET = "test-secret-test-secret"
BASE = "http://127.0.0.1:8000"


@dataclass
class Desk:
    """The web application and the clinic behind it."""

    world: World
    web: FastAPI

    def visitor(self) -> TestClient:
        """Return a browser with no session."""
        return TestClient(self.web, base_url=BASE, follow_redirects=False)

    def signed_in(self, email: str) -> "Browser":
        """Return a browser in which a staff member has just signed in."""
        with self.world.db.begin() as tx:
            staff = tx.exec(select(Staff).where(Staff.email == email)).one()
            token = auth.begin_session(tx, staff, self.world.now)
            tx.flush()
            found = auth.find_session(tx, token)
            assert found is not None
        client = self.visitor()
        client.cookies.set("console", token)
        return Browser(client, found[0].csrf)


@dataclass
class Browser:
    """A signed-in browser that fills in the hidden field of every form."""

    client: TestClient
    csrf: str

    def get(self, path: str):  # type: ignore[no-untyped-def]
        """Open a page."""
        return self.client.get(path)

    def post(self, path: str, **fields: object):  # type: ignore[no-untyped-def]
        """Send a form."""
        return self.client.post(path, data={"csrf": self.csrf, **fields})


def a_desk(world: World) -> Desk:
    """Return the web application of a test's clinic."""
    settings = Settings(database_url=world.db.url, secret_keys=(SECRET,), public_url=BASE)
    app = App(settings, world.db, {"sms": world.sms, "email": world.email}, Texts(), world.clock)
    return Desk(world, create_app(app))


def a_token(world: World, scopes: str, clinic_name: str = "Alder Hill Physio") -> dict[str, str]:
    """Return the headers of another program of a clinic."""
    with world.db.begin() as tx:
        clinic = tx.exec(select(Clinic).where(Clinic.name == clinic_name)).one()
        token = f"token-of-{clinic.id}-{scopes}".replace(" ", ".")
        row = ApiToken(clinic_id=clinic.id or 0, token_hash=auth.token_hash(token), scopes=scopes, made_at=world.now)
        tx.add(row)
    return {"authorization": f"Bearer {token}"}


def page_path(world: World, session_id: int) -> str:
    """Return the path of a session's page, as her reminder has it."""
    (session,) = world.rows(ExerciseSession, id=session_id)
    mark = session_mark(session.client_id, world.client(session.client_id).created_at, session.on_date)
    return f"/c/{make_token([SECRET], CLIENT_PAGE, session_id, mark)}"


def sheet_path(world: World, client_id: int) -> str:
    """Return the path that the code on a client's printed sheet leads to."""
    return f"/c/{make_token([SECRET], CLIENT_SHEET, client_id, client_mark(world.client(client_id).created_at))}"


def alert_path(world: World, alert_id: int) -> str:
    """Return the path of an alert's acknowledge page, as the call to staff has it."""
    (alert,) = world.rows(Alert, id=alert_id)
    return f"/a/{make_token([SECRET], ALERT_PAGE, alert_id, alert_mark(alert.opened_at))}"
