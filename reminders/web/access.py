"""Who may call which route: one rule a route, and nothing without a rule. The guard stands before every handler.

What a person may see of a page's rows (her clinic, her clients) is decided in `sight`; what a token is, in `api`.
"""

from datetime import datetime

from fastapi import Request
from starlette.concurrency import run_in_threadpool

from reminders.store.tables import WebSession
from reminders.web import auth
from reminders.web.access_rules import RULES, SAFE_METHODS, Rule
from reminders.web.api.tokens import check_token
from reminders.web.cookies import session_token
from reminders.web.deps import app_of
from reminders.web.forms import Form, read_form
from reminders.web.refusals import Forbidden, ForgedForm, NeedsConfirming, NeedsSignIn
from reminders.wiring import App


def rule_of(request: Request) -> Rule:
    """Return the rule of the route that was called; a route without one is for nobody."""
    route = request.scope.get("route")
    method = "GET" if request.method == "HEAD" else request.method
    rule = RULES.get(f"{method} {getattr(route, 'path', '')}")
    if rule is None:
        raise Forbidden
    return rule


async def guard(request: Request) -> None:
    """Let a request through when its route's rule does; put the person or the token on the request."""
    rule = rule_of(request)
    if rule.is_open:
        return
    app = app_of(request)
    if rule.scope:
        await run_in_threadpool(check_token, request, app, rule.scope)
        return
    form = await read_form(request)
    await run_in_threadpool(check_person, request, app, rule, form)


def check_person(request: Request, app: App, rule: Rule, form: Form) -> None:
    """Find the session, its person and role, and that a form is ours; raises what `errors` turns into pages."""
    now = app.clock()
    is_writing = request.method not in SAFE_METHODS
    with app.db.read() as tx:
        found = auth.find_session(tx, session_token(request))
    if found is None:
        raise NeedsSignIn
    session, staff, clinic = found
    is_ours = not is_writing or auth.is_our_form(session, form.exact("csrf"))
    if not auth.is_live(session, staff, now):
        raise NeedsSignIn(form if is_writing and is_ours and staff.is_active else None, session.staff_id)
    if not is_ours:
        raise ForgedForm
    if staff.role not in rule.roles:
        raise Forbidden
    keep_alive(app, session, now)
    request.state.person = auth.person_from(session, staff, clinic, max(session.seen_at, now))
    if rule.confirms and is_writing and not is_confirmed(session.confirmed_at, now):
        raise NeedsConfirming(form, session.staff_id)


def keep_alive(app: App, session: WebSession, now: datetime) -> None:
    """Move the idle end on, at most once in ten seconds."""
    if now - session.seen_at < auth.SEEN_EVERY:
        return
    with app.db.begin() as tx:
        auth.seen(tx, session.id or 0, now)


def is_confirmed(confirmed_at: datetime | None, now: datetime) -> bool:
    """Return whether she proved who she is a short while ago."""
    return confirmed_at is not None and now - confirmed_at <= auth.CONFIRMED_FOR
