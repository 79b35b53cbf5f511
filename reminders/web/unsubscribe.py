"""The unsubscribe link of a mail: a page with one button, and the one-click POST of mail programs (RFC 8058).

A GET changes nothing, since mail scanners follow links. The token never expires.
"""

from dataclasses import dataclass

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.tokens import UNSUBSCRIBE, number_in, read_token
from reminders.flows import one_click
from reminders.flows.link_marks import contact_mark
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Contact
from reminders.web.deps import AppDep, FormDep, SecretsDep
from reminders.web.pages import Pages, PagesDep

router = APIRouter(include_in_schema=False)


@dataclass(frozen=True)
class Meant:
    """What a link names: a client's contact, and the address that its mail went to."""

    contact: Contact
    address: str


def meant_by(tx: Tx, secrets: tuple[str, ...], token: str) -> Meant | None:
    """Return the address that a link names, None when we did not make it.

    A link from before addresses stood in the proof means the present one: rather one closed too many than a wish
    to hear no more that goes unheard.
    """
    number = number_in(token)
    contact = tx.get(Contact, number) if number is not None else None
    if contact is None:
        return None
    marked = one_click.address_meant(
        tx, contact, lambda address: read_token(secrets, UNSUBSCRIBE, token, contact_mark(address)) is not None
    )
    if marked is None and read_token(secrets, UNSUBSCRIBE, token) is not None:
        marked = contact.address
    return Meant(contact, marked) if marked is not None else None


def shown(tx: Tx, pages: Pages, meant: Meant | None, token: str) -> Response:
    """Show the button, that it is done, or that the link is not whole."""
    client = tx.get(Client, meant.contact.client_id) if meant else None
    if meant is None or client is None:
        return pages.show("unsubscribe.html", status=404, language="en", state="unknown")
    clinic = clients.the_clinic(tx, client.clinic_id)
    return pages.show(
        "unsubscribe.html",
        language=client.language,
        state="closed" if one_click.is_closed(tx, meant.contact, meant.address) else "open",
        clinic=clinic.name,
        phone=clinic.phone,
        token=token,
    )


@router.get("/unsubscribe/{token}")
def unsubscribe_page(app: AppDep, pages: PagesDep, secrets: SecretsDep, token: str) -> Response:
    """Show one button."""
    with app.db.read() as tx:
        return shown(tx, pages, meant_by(tx, secrets, token), token)


@router.post("/unsubscribe/{token}")
def unsubscribe(app: AppDep, pages: PagesDep, secrets: SecretsDep, form: FormDep, token: str) -> Response:
    """Close the address, by our button or a mail program's; answers 200 with no redirect (RFC 8058, section 3.1).

    The body may be multipart or urlencoded (section 3.2); what stands in it changes nothing.
    """
    now = app.clock()
    with app.db.begin() as tx:
        meant = meant_by(tx, secrets, token)
        if meant is not None:
            one_click.close(tx, meant.contact, meant.address, now)
            tx.flush()
        return shown(tx, pages, meant, token)
