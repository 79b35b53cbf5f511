"""The unsubscribe link of a mail: a page with one button, and the one-click POST of mail programs (RFC 8058).

A GET changes nothing, since mail scanners follow links. The token never expires.
"""

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.tokens import UNSUBSCRIBE, read_token
from reminders.flows import consent
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Contact
from reminders.web.deps import AppDep, FormDep, SecretsDep
from reminders.web.pages import Pages, PagesDep

router = APIRouter(include_in_schema=False)


def contact_at(tx: Tx, secrets: tuple[str, ...], token: str) -> Contact | None:
    """Return the address that a link names."""
    contact_id = read_token(secrets, UNSUBSCRIBE, token)
    return tx.get(Contact, contact_id) if contact_id is not None else None


def shown(tx: Tx, pages: Pages, contact: Contact | None, token: str) -> Response:
    """Show the button, that it is done, or that the link is not whole."""
    client = tx.get(Client, contact.client_id) if contact else None
    if contact is None or client is None:
        return pages.show("unsubscribe.html", status=404, language="en", state="unknown")
    clinic = clients.the_clinic(tx, client.clinic_id)
    return pages.show(
        "unsubscribe.html",
        language=client.language,
        state="closed" if contact.consent == "closed" else "open",
        clinic=clinic.name,
        phone=clinic.phone,
        token=token,
    )


@router.get("/unsubscribe/{token}")
def unsubscribe_page(app: AppDep, pages: PagesDep, secrets: SecretsDep, token: str) -> Response:
    """Show one button."""
    with app.db.read() as tx:
        return shown(tx, pages, contact_at(tx, secrets, token), token)


@router.post("/unsubscribe/{token}")
def unsubscribe(app: AppDep, pages: PagesDep, secrets: SecretsDep, form: FormDep, token: str) -> Response:
    """Close the address, by our button or a mail program's; answers 200 with no redirect (RFC 8058, section 3.1).

    The body may be multipart or urlencoded (section 3.2); what stands in it changes nothing.
    """
    now = app.clock()
    with app.db.begin() as tx:
        contact = contact_at(tx, secrets, token)
        if contact is not None:
            consent.unsubscribe(tx, contact, now)
            tx.flush()
        return shown(tx, pages, contact, token)
