"""What handlers are given: the App, the secrets that sign links, the signed-in person, the posted form.

Who may call what is decided in `access`; what a session is, in `auth`. Nothing here opens a write transaction.
"""

import ipaddress
from collections.abc import Sequence
from typing import Annotated

from fastapi import Depends, Request

from reminders.settings.key_file import signing_keys
from reminders.web.auth import Person
from reminders.web.backlog import Backlog
from reminders.web.forms import Form, read_form
from reminders.wiring import App


def app_of(request: Request) -> App:
    """Return the App that this web process was made with."""
    found: App = request.app.state.app
    return found


def backlog_of(request: Request) -> Backlog:
    """Return what handles the texts of this web process."""
    found: Backlog = request.app.state.backlog
    return found


def secrets_of(request: Request) -> tuple[str, ...]:
    """Return the secrets that sign links: the first signs, all verify; read at the first use."""
    held = getattr(request.app.state, "secrets", None)
    if held is None:
        held = request.app.state.secrets = signing_keys(app_of(request).settings)
    found: tuple[str, ...] = held
    return found


def person_of(request: Request) -> Person:
    """Return who is signed in; the guard has put it there."""
    found: Person = request.state.person
    return found


def caller_of(request: Request) -> str:
    """Return the caller's network address, believing a proxy's word only where the settings name that proxy."""
    trusted = app_of(request).settings.trusted_proxy
    address = request.client.host if request.client else ""
    hops = [part.strip() for part in request.headers.get("x-forwarded-for", "").split(",") if part.strip()]
    while hops and is_within(address, trusted):
        address = hops.pop()
    return address


def is_within(address: str, networks: Sequence[str]) -> bool:
    """Return whether a network address lies in one of the networks."""
    try:
        place = ipaddress.ip_address(address)
    except ValueError:
        return False
    return any(place in ipaddress.ip_network(network, strict=False) for network in networks)


AppDep = Annotated[App, Depends(app_of)]
SecretsDep = Annotated[tuple[str, ...], Depends(secrets_of)]
PersonDep = Annotated[Person, Depends(person_of)]
FormDep = Annotated[Form, Depends(read_form)]
CallerDep = Annotated[str, Depends(caller_of)]
