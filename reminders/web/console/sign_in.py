"""Signing in and out: password, one-time link, second factor, staying signed in, proving once more who it is.

An unknown e-mail and a wrong password get the same answer after the same time (OWASP ASVS 5.0, 6.3.8).
"""

from datetime import datetime, timedelta
from typing import Any
from urllib.parse import urlsplit

from fastapi import APIRouter, Request
from starlette.responses import Response

from reminders.core.tokens import SIGN_IN_STEP, is_proof, proof
from reminders.flows import audit, sign_in
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Staff
from reminders.web import auth, guessing, passwords
from reminders.web.cookies import drop_session, session_token, set_session
from reminders.web.deps import AppDep, CallerDep, FormDep, PersonDep, SecretsDep
from reminders.web.forms import Form
from reminders.web.kept_work import unpacked
from reminders.web.pages import PagesDep, see
from reminders.web.refusals import ForgedForm

router = APIRouter(include_in_schema=False)

STEP_LIVES = timedelta(minutes=5)


def refuse_foreign(request: Request) -> None:
    """Raise ForgedForm when a browser says that another site sent this form."""
    origin = request.headers.get("origin", "")
    is_foreign = origin not in ("", "null") and urlsplit(origin).netloc != request.headers.get("host", "")
    if is_foreign or request.headers.get("sec-fetch-site", "") == "cross-site":
        raise ForgedForm


def safe_next(address: str) -> str:
    """Return an address of this console, the start page for anything else."""
    is_ours = address.startswith("/") and not address.startswith(("//", "/\\")) and address.isprintable()
    return address if is_ours else "/"


@router.get("/sign-in")
def sign_in_page(request: Request, pages: PagesDep, next: str = "") -> Response:
    """Show the sign-in page."""
    values: dict[str, Any] = {
        "next": safe_next(next),
        "kept": "",
        "ended": bool(session_token(request)),
        "email": "",
        "wrong": "",
    }
    return pages.show("sign_in.html", **values)


@router.post("/sign-in")
def sign_in_by_password(
    request: Request, app: AppDep, pages: PagesDep, form: FormDep, secrets: SecretsDep, caller: CallerDep
) -> Response:
    """Sign in by e-mail and password."""
    refuse_foreign(request)
    now, email = app.clock(), form.text("email", most=320).lower()
    with app.db.read() as tx:
        wait = guessing.wait_for(tx, secrets, email, caller, now)
        staff = clients.staff_by_email(tx, email)
    if wait:
        return again(pages, form, email, "wait", 429, seconds=int(wait.total_seconds()) + 1)
    is_right = passwords.is_right(staff.password_hash if staff and staff.is_active else "", form.exact("password"))
    if not is_right or staff is None:
        with app.db.begin() as tx:
            guessing.failed(tx, secrets, email, caller, now)
            if staff is not None:
                audit.record(tx, staff.clinic_id, staff.email, "sign-in refused", None, {"how": "password"}, now)
        return again(pages, form, email, "wrong", 401)
    if staff.totp_secret:
        return ask_code(pages, form, secrets, staff, "password", now)
    return let_in(request, app, pages, form, staff.id or 0, "password", now, secrets, caller)


def again(pages: PagesDep, form: Form, email: str, wrong: str, status: int, **more: object) -> Response:
    """Show the sign-in page once more with what was wrong."""
    return pages.show("sign_in.html", status=status, email=email, wrong=wrong, ended=False, **carried(form), **more)


def carried(form: Form) -> dict[str, str]:
    """Return where she was going and the work she was about to save, as the next page carries them on."""
    return {"next": safe_next(form.text("next")), "kept": form.text("kept", most=80_000)}


def ask_code(
    pages: PagesDep, form: Form, secrets: tuple[str, ...], staff: Staff, how: str, now: datetime, wrong: str = ""
) -> Response:
    """Ask for the second factor; the page carries a proof that the first one was given."""
    step = f"{staff.id} {int(now.timestamp())} {how}"
    values = {
        "step": f"{step}.{proof(secrets[0], SIGN_IN_STEP, step)}",
        **carried(form),
        "wrong": wrong,
    }
    return pages.show("sign_in_code.html", status=401 if wrong else 200, **values)


@router.post("/sign-in/code")
def sign_in_by_code(
    request: Request, app: AppDep, pages: PagesDep, form: FormDep, secrets: SecretsDep, caller: CallerDep
) -> Response:
    """Finish a sign-in with the second factor's code."""
    refuse_foreign(request)
    now = app.clock()
    words, _, given = form.text("step").rpartition(".")
    parts = words.split(" ")
    if len(parts) != 3 or not is_proof(secrets, SIGN_IN_STEP, words, given):
        return see("/sign-in")
    if now.timestamp() - int(parts[1]) > STEP_LIVES.total_seconds():
        return see("/sign-in")
    with app.db.begin() as tx:
        staff = tx.get(Staff, int(parts[0]))
        if staff is None or not staff.is_active:
            return see("/sign-in")
        if wait := guessing.wait_for(tx, secrets, staff.email, caller, now):
            return again(pages, form, staff.email, "wait", 429, seconds=int(wait.total_seconds()) + 1)
        step = passwords.code_step(staff.totp_secret, form.text("code"), now, staff.totp_step)
        if step is None:
            guessing.failed(tx, secrets, staff.email, caller, now)
            audit.record(tx, staff.clinic_id, staff.email, "sign-in refused", None, {"how": "code"}, now)
        else:
            staff.totp_step = step
    if step is None:
        return ask_code(pages, form, secrets, staff, parts[2], now, wrong="code")
    return let_in(request, app, pages, form, staff.id or 0, f"{parts[2]} and code", now, secrets, caller)


def let_in(
    request: Request,
    app: AppDep,
    pages: PagesDep,
    form: Form,
    staff_id: int,
    how: str,
    now: datetime,
    secrets: tuple[str, ...],
    caller: str,
) -> Response:
    """Begin a session; lead on to where she was going, or to the work she was about to save."""
    with app.db.begin() as tx:
        staff = tx.get(Staff, staff_id)
        assert staff is not None
        guessing.succeeded(tx, secrets, staff.email, caller)
        end_earlier(tx, request, now)
        token = auth.begin_session(tx, staff, now)
        tx.flush()
        found = auth.find_session(tx, token)
        assert found is not None
        audit.record(tx, staff.clinic_id, staff.email, "signed in", None, {"how": how}, now)
    fields = unpacked(form.text("kept", most=80_000), staff_id)
    target = safe_next(form.text("next"))
    if fields:
        request.state.person = auth.person_from(*found, now)
        response: Response = pages.show("carry_on.html", next=target, fields=fields)
    else:
        response = see(target)
    set_session(request, response, token)
    return response


def end_earlier(tx: Tx, request: Request, now: datetime) -> None:
    """End the session that this browser had before."""
    if found := auth.find_session(tx, session_token(request)):
        auth.end_session(tx, found[0].id or 0, now)


@router.post("/sign-in/link")
def ask_for_link(
    request: Request, app: AppDep, pages: PagesDep, form: FormDep, secrets: SecretsDep, caller: CallerDep
) -> Response:
    """Mail a one-time link; the answer is the same whether or not the e-mail is known."""
    refuse_foreign(request)
    now, email = app.clock(), form.text("email", most=320).lower()
    with app.db.begin() as tx:
        wait = guessing.wait_for(tx, secrets, f"link {email}", caller, now)
        staff = clients.staff_by_email(tx, email)
        if not wait:
            guessing.failed(tx, secrets, f"link {email}", caller, now)
        if staff and staff.is_active and not wait:
            clinic = clients.the_clinic(tx, staff.clinic_id)
            sign_in.mail_link(tx, clinic, staff, app.settings.public_url, now)
            audit.record(tx, staff.clinic_id, staff.email, "sign-in link mailed", None, {}, now)
    return pages.show("link_sent.html", is_early=False, work=carried(form))


@router.post("/sign-in/carry-on")
def carry_on(request: Request, app: AppDep, pages: PagesDep, form: FormDep) -> Response:
    """Offer kept work again once a link that was opened beside it has signed her in."""
    refuse_foreign(request)
    now = app.clock()
    with app.db.read() as tx:
        found = auth.find_session(tx, session_token(request))
    if found is None or not auth.is_live(found[0], found[1], now):
        return pages.show("link_sent.html", status=401, is_early=True, work=carried(form))
    fields = unpacked(form.text("kept", most=80_000), found[1].id or 0)
    request.state.person = auth.person_from(*found, now)
    target = safe_next(form.text("next"))
    return pages.show("carry_on.html", next=target, fields=fields) if fields else see("/")


@router.get("/sign-in/{token}")
def link_page(app: AppDep, pages: PagesDep, token: str) -> Response:
    """Show the button that uses a one-time link; opening the link uses nothing up."""
    with app.db.read() as tx:
        staff = sign_in.holder_of(tx, token, app.clock())
    return pages.show("sign_in_link.html", status=200 if staff else 410, works=staff is not None, token=token)


@router.post("/sign-in/{token}")
def sign_in_by_link(
    request: Request,
    app: AppDep,
    pages: PagesDep,
    form: FormDep,
    secrets: SecretsDep,
    caller: CallerDep,
    token: str,
) -> Response:
    """Use a one-time link."""
    refuse_foreign(request)
    now = app.clock()
    with app.db.begin() as tx:
        staff = sign_in.use_link(tx, token, now)
    if staff is None:
        return pages.show("sign_in_link.html", status=410, works=False, token=token)
    if staff.totp_secret:
        return ask_code(pages, form, secrets, staff, "link", now)
    return let_in(request, app, pages, form, staff.id or 0, "link", now, secrets, caller)


@router.post("/sign-out")
def sign_out(request: Request, app: AppDep, person: PersonDep) -> Response:
    """End the session on the server and forget it in the browser."""
    now = app.clock()
    with app.db.begin() as tx:
        auth.end_session(tx, person.session_id, now)
        audit.record(tx, person.clinic_id, person.email, "signed out", None, {}, now)
    response = see("/sign-in")
    drop_session(request, response)
    return response


@router.post("/stay")
def stay(person: PersonDep) -> Response:
    """Stay signed in; the guard has moved the idle end on."""
    return Response(status_code=204)


@router.get("/confirm")
def confirm_page(pages: PagesDep) -> Response:
    """Ask once more who it is, before what cannot be taken back."""
    return pages.show("confirm.html", next="/", kept="", wrong="")


@router.post("/confirm")
def confirm(
    app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep, secrets: SecretsDep, caller: CallerDep
) -> Response:
    """Take the password, and a code where she has one, as proof; then go on with the work."""
    now = app.clock()
    target, kept = safe_next(form.text("next")), form.text("kept", most=80_000)
    with app.db.begin() as tx:
        staff = tx.get(Staff, person.staff_id)
        assert staff is not None
        wait = guessing.wait_for(tx, secrets, staff.email, caller, now)
        is_right = not wait and passwords.is_right(staff.password_hash, form.exact("password"))
        if is_right:
            auth.confirmed(tx, person.session_id, now)
        elif not wait:
            guessing.failed(tx, secrets, staff.email, caller, now)
    if not is_right:
        return pages.show("confirm.html", status=401, next=target, kept=kept, wrong="wait" if wait else "wrong")
    fields = unpacked(kept, person.staff_id)
    return pages.show("carry_on.html", next=target, fields=fields) if fields else see(target)
