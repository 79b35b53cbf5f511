"""The demo's own pages: a phone on which a visitor plays a client, and sign-ins by one click. Only a demo has them.

A text typed here goes the way of any other: kept, read, judged; the sender of the demo hands the answer over.
"""

from datetime import datetime, timedelta
from typing import Any

from fastapi import APIRouter, Depends, HTTPException, Request
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.channel import Inbound
from reminders.demo.people import LINE
from reminders.flows import alert, keeping, receive
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, Contact, ExerciseSession, InboundRow, Outbound, Staff
from reminders.web.console.reading_words import in_words
from reminders.web.console.sign_in import let_in, refuse_foreign
from reminders.web.deps import AppDep, CallerDep, FormDep, SecretsDep
from reminders.web.pages import PagesDep, see
from reminders.wiring import App

ON_THE_PHONE = 40  # messages shown, the newest
SOON = timedelta(seconds=5)  # what is due within this is said to be on its way
LOOK_AGAIN_SECONDS = "1"
SENT = ("accepted", "delivered")
HOSTS = ("127.0.0.1", "localhost")


def only_in_a_demo(request: Request) -> None:
    """Raise 404 unless this is a demo's database, called by this machine's own name."""
    app: App = request.app.state.app
    with app.db.read() as tx:
        known = clients.has_demo(tx)
    if not known or (request.url.hostname or "") not in HOSTS:
        raise HTTPException(404)


def is_demo(app: App) -> bool:
    """Return whether an App's database is a demo's, so that these pages exist."""
    with app.db.read() as tx:
        return clients.has_demo(tx)


router = APIRouter(include_in_schema=False, dependencies=[Depends(only_in_a_demo)])


@router.get("/demo")
def start(app: AppDep, pages: PagesDep) -> Response:
    """Show who can be played and who can be signed in as."""
    with app.db.read() as tx:
        clinic = tx.exec(select(Clinic).order_by(col(Clinic.id)).limit(1)).one()
        staff = list(tx.exec(select(Staff).where(col(Staff.is_active).is_(True)).order_by(col(Staff.id))))
        people = list(tx.exec(select(Client).order_by(col(Client.name))))
    return pages.show("demo_start.html", clinic=clinic, staff=staff, clients=people)


@router.get("/demo/sign-in/{staff_id}")
def sign_in_page(staff_id: int, app: AppDep, pages: PagesDep) -> Response:
    """Show the one button that signs in."""
    with app.db.read() as tx:
        member = tx.get(Staff, staff_id)
        if member is None or not member.is_active:
            raise HTTPException(404)
        return pages.show("demo_sign_in.html", member=member)


@router.post("/demo/sign-in/{staff_id}")
def sign_in(
    staff_id: int,
    request: Request,
    app: AppDep,
    pages: PagesDep,
    form: FormDep,
    secrets: SecretsDep,
    caller: CallerDep,
) -> Response:
    """Sign in as a member of the fictional staff."""
    refuse_foreign(request)
    with app.db.read() as tx:
        member = tx.get(Staff, staff_id)
    if member is None or not member.is_active:
        raise HTTPException(404)
    return let_in(request, app, pages, form, staff_id, "demo", app.clock(), secrets, caller)


@router.get("/demo/phone/{client_id}")
def phone(client_id: int, app: AppDep, pages: PagesDep) -> Response:
    """Show a client's phone, and beside it what her therapist sees."""
    now = app.clock()
    with app.db.read() as tx:
        client = tx.get(Client, client_id)
        if client is None:
            raise HTTPException(404)
        addresses = clients.contacts_of(tx, client_id)
        values: dict[str, Any] = {
            "client": client,
            "addresses": addresses,
            "messages": messages(tx, addresses),
            "alerts": alerts_of(tx, client_id),
            "hold": clients.open_hold(tx, client_id),
            "sessions": sessions_of(tx, client_id),
            "therapist": clients.therapist_of(tx, client),
            "coming": on_their_way(tx, addresses, now),
        }
        answer = pages.show("demo_phone.html", **values)
    if values["coming"]:
        # By its address, since looking again at an address with a place in it loads nothing.
        answer.headers["refresh"] = f"{LOOK_AGAIN_SECONDS}; url=/demo/phone/{client_id}"
    return answer


@router.post("/demo/phone/{client_id}")
def write(client_id: int, request: Request, app: AppDep, form: FormDep) -> Response:
    """Let a text or mail of hers come in."""
    refuse_foreign(request)
    now, words = app.clock(), form.text("words", most=1_600)
    address = form.text("from", most=320)
    with app.db.read() as tx:
        contact = next((one for one in clients.contacts_of(tx, client_id) if one.address == address), None)
    if contact is None:
        raise HTTPException(404)
    if words:
        with app.db.begin() as tx:
            keeping.keep(tx, inbound(tx, contact, words, now), now)
        receive.handle_waiting(app.db, now)
    return see(f"/demo/phone/{client_id}", anchor="talk")


def inbound(tx: Tx, contact: Contact, words: str, now: datetime) -> Inbound:
    """Return what the visitor typed as it comes in; a mail answers the newest mail of ours."""
    is_mail = contact.kind == "email"
    count = len(tx.exec(select(InboundRow.id)).all()) + 1
    newest = select(Outbound.id).where(Outbound.contact_id == contact.id, col(Outbound.state).in_(SENT))
    answered = tx.exec(newest.order_by(col(Outbound.id).desc()).limit(1)).first() if is_mail else None
    return Inbound(
        source="email" if is_mail else "sms",
        provider_id=f"<played-{count}@example.org>" if is_mail else f"SM{count:031x}d",
        address=contact.address,
        to="clinic@example.org" if is_mail else LINE,
        text=words,
        raw=words.encode(),
        received_at=now,
        answers=(f"row:{answered}",) if answered else (),
        whole_text=words if is_mail else "",
    )


def messages(tx: Tx, addresses: list[Contact]) -> list[dict[str, Any]]:
    """Return what is on the phone, newest first: whose, when, the words, and what was read in hers."""
    places = [one.address for one in addresses]
    out = select(Outbound).where(col(Outbound.to).in_(places), col(Outbound.state).in_(SENT))
    came = select(InboundRow).where(col(InboundRow.address).in_(places))
    shown = [
        {"at": row.accepted_at, "is_hers": False, "words": row.body, "subject": row.subject, "read": ""}
        for row in tx.exec(out.order_by(col(Outbound.id).desc()).limit(ON_THE_PHONE))
    ]
    shown += [
        {"at": row.received_at, "is_hers": True, "words": row.text, "subject": "", "read": in_words(row.reading)}
        for row in tx.exec(came.order_by(col(InboundRow.id).desc()).limit(ON_THE_PHONE))
    ]
    return sorted(shown, key=lambda one: (one["at"], not one["is_hers"]), reverse=True)[:ON_THE_PHONE]


def alerts_of(tx: Tx, client_id: int) -> list[dict[str, Any]]:
    """Return her alerts that are not closed, newest first, each with why it fired."""
    statement = select(Alert).where(Alert.client_id == client_id, Alert.state != "closed")
    return [
        {"number": one.number, "level": one.level, "state": one.state, "why": alert.sentences(one)}
        for one in tx.exec(statement.order_by(col(Alert.id).desc()))
    ]


def sessions_of(tx: Tx, client_id: int) -> list[ExerciseSession]:
    """Return her newest sessions."""
    statement = select(ExerciseSession).where(ExerciseSession.client_id == client_id)
    return list(tx.exec(statement.order_by(col(ExerciseSession.on_date).desc()).limit(6)))


def on_their_way(tx: Tx, addresses: list[Contact], now: datetime) -> bool:
    """Return whether a message to her is about to be handed over."""
    waiting = select(Outbound.id).where(
        col(Outbound.to).in_([one.address for one in addresses]),
        col(Outbound.state).in_(("waiting", "claimed")),
        col(Outbound.due_at) <= now + SOON,
    )
    return tx.exec(waiting.limit(1)).first() is not None
