"""One alert's acknowledge page, reached by the link in a text or mail: without sign-in, initials and level only."""

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.tokens import ALERT_PAGE, number_in, read_token
from reminders.flows import alert as alerts
from reminders.flows.link_marks import alert_mark
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client
from reminders.web.deps import AppDep, SecretsDep
from reminders.web.pages import PagesDep

router = APIRouter(include_in_schema=False)


def open_alert(tx: Tx, secrets: tuple[str, ...], token: str) -> Alert | None:
    """Return the alert that a link names, None once it is closed."""
    number = number_in(token)
    found = tx.get(Alert, number) if number is not None else None
    if found is None or found.state == "closed":
        return None
    return found if read_token(secrets, ALERT_PAGE, token, alert_mark(found.opened_at)) is not None else None


def initials_of(tx: Tx, alert: Alert) -> str:
    """Return a client's initials and number, or that the number is unknown to us."""
    client = tx.get(Client, alert.client_id) if alert.client_id is not None else None
    if client is None:
        return "a number nobody knows"
    return f"{''.join(part[0].upper() + '.' for part in client.name.split()[:3])} ({client.id})"


@router.get("/a/{token}")
def alert_page(app: AppDep, pages: PagesDep, secrets: SecretsDep, token: str) -> Response:
    """Show the button; opening the page changes nothing, since mail scanners follow links."""
    with app.db.read() as tx:
        found = open_alert(tx, secrets, token)
        initials = initials_of(tx, found) if found else ""
    return pages.show("alert_link.html", status=200 if found else 410, alert=found, initials=initials, token=token)


@router.post("/a/{token}")
def acknowledge(app: AppDep, pages: PagesDep, secrets: SecretsDep, token: str) -> Response:
    """Acknowledge the alert by its link; the client hears nothing of it."""
    now = app.clock()
    with app.db.begin() as tx:
        found = open_alert(tx, secrets, token)
        if found is not None:
            alerts.acknowledge(tx, found, "link", "link", now)
        initials = initials_of(tx, found) if found else ""
    return pages.show("alert_link.html", status=200 if found else 410, alert=found, initials=initials, token=token)
