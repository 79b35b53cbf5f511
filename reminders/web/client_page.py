"""The client's own page for one session: her exercises, and a form for how it went. No sign-in; the link proves itself.

What a report means is decided where every reply is read (flows); here it is kept, and what is answered is shown.
"""

import secrets as random
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import Response

from reminders.core.drawings import drawing
from reminders.core.languages import LANGUAGES
from reminders.core.schedule import client_day
from reminders.core.tokens import CLIENT_PAGE, CLIENT_SHEET, make_token, number_in, read_token
from reminders.errors import BadInput
from reminders.flows import page, render
from reminders.flows.link_marks import client_mark
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.page_view import PageView, Sent, current_session_id, page_view, sent_before, urgent_answer
from reminders.store.tables import Client, ExerciseSession, Outbound
from reminders.texts_exercises import exercise_words
from reminders.texts_said import said_date, said_hours, said_opening
from reminders.web.deps import AppDep, FormDep, SecretsDep
from reminders.web.forms import Form
from reminders.web.pages import Pages, PagesDep, safe, see
from reminders.wiring import App

router = APIRouter(include_in_schema=False)

LIVES = timedelta(days=14)
SURE_FROM = 8  # from here on she is asked whether the number is right
MOST_WORDS = 1600


@router.get("/c/{token}")
def client_page(request: Request, app: AppDep, pages: PagesDep, secrets: SecretsDep, token: str) -> Response:
    """Show one session; a link past its days leads on to the current one."""
    with app.db.read() as tx:
        view, elsewhere = found(tx, app, secrets, token)
        if elsewhere:
            return see(elsewhere)
        if view is None or not is_shown(app, view):
            return over(app, pages, request, view)
        return session_page(app, pages, request, view, token, sent_before(tx, view.session.id or 0))


def found(tx: Tx, app: App, secrets: tuple[str, ...], token: str) -> tuple[PageView | None, str]:
    """Return the session that a link shows, or the address of the one that it leads on to."""
    number = number_in(token)
    holder = tx.get(Client, number) if number is not None else None
    if holder is not None and read_token(secrets, CLIENT_SHEET, token, client_mark(holder.created_at)) is not None:
        return None, sheet_target(tx, app, secrets, holder)
    view = page_view(tx, number) if number is not None else None
    if view is None or read_token(secrets, CLIENT_PAGE, token, render.mark_of(view.client, view.session)) is None:
        return None, ""
    today = client_day(app.clock(), view.client.time_zone)
    if view.session.on_date + LIVES >= today:
        return view, ""
    current = current_session_id(tx, view.client.id or 0, today)
    session = tx.get(ExerciseSession, current) if current is not None else None
    if session is None or session.on_date + LIVES < today:
        return view, ""
    return view, page_of(secrets, view.client, session)


def sheet_target(tx: Tx, app: App, secrets: tuple[str, ...], client: Client) -> str:
    """Return the address that a printed code leads to: the current session's, empty while there is none."""
    if client.state == "closed":
        return ""
    current = current_session_id(tx, client.id or 0, client_day(app.clock(), client.time_zone))
    session = tx.get(ExerciseSession, current) if current is not None else None
    return page_of(secrets, client, session) if session is not None else ""


def page_of(secrets: tuple[str, ...], client: Client, session: ExerciseSession) -> str:
    """Return the address of one session's page."""
    return f"/c/{make_token(secrets, CLIENT_PAGE, session.id or 0, render.mark_of(client, session))}"


def is_shown(app: App, view: PageView) -> bool:
    """Return whether a session may still be shown and reported."""
    today: date = client_day(app.clock(), view.client.time_zone)
    return view.session.on_date + LIVES >= today and view.client.state != "closed"


def language_of(request: Request, view: PageView | None, form: Form | None = None) -> str:
    """Return the language to show: the one asked for, else hers."""
    asked = request.query_params.get("lang", "") or (form.text("lang") if form else "")
    if asked in LANGUAGES:
        return asked
    return view.client.language if view and view.client.language in LANGUAGES else "en"


def clinic_values(app: App, view: PageView, language: str) -> dict[str, Any]:
    """Return what the help box and the closing lines say of the clinic."""
    hours, clinic, now = clients.hours_of(view.clinic), view.clinic, app.clock()
    return {
        "clinic": clinic.name,
        "phone": clinic.phone,
        "hours": said_hours(clinic.hours, language),
        "emergency": clinic.emergency_number,
        "crisis": clinic.crisis_line,
        "crisis_outside_us": clinic.crisis_line != "988",
        "is_open": hours.is_open(now),
        "opening": said_opening(hours, now, language),
    }


def over(app: App, pages: Pages, request: Request, view: PageView | None) -> Response:
    """Say that a link has ended, with the clinic's phone where we know whose it was."""
    language = language_of(request, view)
    values = clinic_values(app, view, language) if view else None
    return pages.show("client/over.html", status=410 if view else 404, language=language, v=values)


def session_page(
    app: App,
    pages: Pages,
    request: Request,
    view: PageView,
    token: str,
    sent: Sent | None,
    *,
    given: Form | None = None,
    wrong: str = "",
) -> Response:
    """Show the exercises and the form, with what was sent before first."""
    language = language_of(request, view, given)
    values = {
        "language": language,
        "token": token,
        "once": given.text("once") if given else random.token_urlsafe(9),
        "first_name": render.first_name(view.client.name),
        "session_date": said_date(view.session.on_date, language),
        "is_easy": view.session.is_easy,
        "is_held": view.hold is not None,
        "items": [] if view.hold else items_of(view, language),
        "sent": sent,
        "given": {name: given.exact(name)[:MOST_WORDS] for name in ("done", "pain", "words")}
        if given
        else as_given(sent),
        "wrong": wrong,
        "v": clinic_values(app, view, language),
    }
    return pages.show("client/session.html", status=422 if wrong else 200, **values)


def as_given(sent: Sent | None) -> dict[str, str]:
    """Return the form filled in with what was sent before."""
    if sent is None:
        return {"done": "", "pain": "none marked", "words": ""}
    return {"done": sent.done, "pain": "" if sent.pain is None else str(sent.pain), "words": sent.words}


def items_of(view: PageView, language: str) -> list[dict[str, Any]]:
    """Return the session's exercises with cues, safety line and drawing; doses as her reminder showed them."""
    words = exercise_words(language)
    scene = render.Scene(
        clinic=view.clinic,
        hours=clients.hours_of(view.clinic),
        client=view.client,
        session=view.session,
        program=view.program,
        days=view.schedule.days if view.schedule else "",
    )
    shown_before = (
        {item["code"]: item["dose"] for item in view.session.items} if language == view.client.language else {}
    )
    lines = view.session.items or list(render.shown(render.list_of(scene)[1], language, view.client.compact_doses))
    spoken = {item.exercise: words.dose(item) for item in render.list_of(scene)[1]}
    return [
        {
            "letter": item["letter"],
            "name": words.name(item["code"]),
            "dose": shown_before.get(item["code"]) or spoken.get(item["code"]) or item["dose"],
            "cues": words.exercises[item["code"]].cues,
            "safety": words.exercises[item["code"]].safety,
            "drawing": safe(drawing(item["code"], words.name(item["code"]))),
        }
        for item in lines
    ]


@router.post("/c/{token}")
def client_report(
    request: Request, app: AppDep, pages: PagesDep, secrets: SecretsDep, form: FormDep, token: str
) -> Response:
    """Keep what she sends, read and judge it at once, and show what is answered."""
    now = app.clock()
    with app.db.read() as tx:
        view, elsewhere = found(tx, app, secrets, token)
        if view is None or elsewhere or not is_shown(app, view):
            return see(elsewhere) if elsewhere else over(app, pages, request, view)
        sent = sent_before(tx, view.session.id or 0)
    try:
        done = form.choice("done", ("all", "some", "no", ""), "done")
        pain = form.whole("pain", "pain", most=10)
        words = form.text("words", "words", most=MOST_WORDS)
    except BadInput as error:
        return session_page(app, pages, request, view, token, sent, given=form, wrong=str(error))
    if not done and pain is None and not words:
        return session_page(app, pages, request, view, token, sent, given=form, wrong="nothing")
    once = form.text("once", most=40) or random.token_urlsafe(9)
    with app.db.begin() as tx:
        session = tx.get(ExerciseSession, view.session.id)
        assert session is not None
        answer = page.submit(tx, session, done, pain, words, once, now)
    with app.db.read() as tx:
        earlier = urgent_answer(tx, view.session.id or 0, once) if not answer.kind else None
    if earlier is not None:  # the same form once more, by a reload: the warning stands
        answer = replace(answer, kind=earlier.kind, template=earlier.template, details=earlier.details)
    return after_page(app, pages, request, view, token, form, answer, Sent(done, pain, words))


def after_page(
    app: App,
    pages: Pages,
    request: Request,
    view: PageView,
    token: str,
    form: Form,
    answer: page.PageAnswer,
    sent: Sent,
) -> Response:
    """Show what was written down, a danger or stop-level answer first, and ask whether a high number is right."""
    language = language_of(request, view, form)
    values: dict[str, Any] = {
        "language": language,
        "token": token,
        "once": random.token_urlsafe(9),
        "sent": sent,
        "urgent": urgent_words(app, view, answer, language) if answer.template else "",
        # Beside the answer to crisis words nothing stands about exercises.
        "is_crisis": "crisis" in (answer.template, (answer.details or {}).get("first")),
        "sure": sent.pain if sent.pain is not None and sent.pain >= SURE_FROM else None,
        "v": clinic_values(app, view, language),
    }
    return pages.show("client/after.html", **values)


def urgent_words(app: App, view: PageView, answer: page.PageAnswer, language: str) -> str:
    """Return the danger or stop-level answer as the page shows it: the same words as in the message."""
    row = Outbound(
        key="",
        clinic_id=view.clinic.id or 0,
        client_id=view.client.id,
        kind=answer.kind,
        channel="page",
        to="",
        language=language,
        template=answer.template,
        details=answer.details or {},
        due_at=app.clock(),
        created_at=app.clock(),
    )
    scene = render.Scene(view.clinic, clients.hours_of(view.clinic), client=view.client, therapist=view.therapist)
    made = render.values(scene, row, render.Links(app.settings.public_url, ()), app.clock())
    return app.texts.text(answer.template, language, made, view.clinic.wording)
