"""Alive, ready, measured: what machines ask about the service. No client's data is in any answer."""

import hmac
from datetime import datetime, timedelta

from fastapi import APIRouter, Request
from prometheus_client import CollectorRegistry, Gauge, generate_latest
from sqlalchemy import func, text
from sqlmodel import col, select
from starlette.responses import JSONResponse, PlainTextResponse, Response

from reminders.errors import DatabaseNotReady
from reminders.settings.servers import is_loopback
from reminders.store import schema
from reminders.store.db import Tx
from reminders.store.tables import Alert, ApiToken, Client, Hold, InboundRow, Mark, Outbound
from reminders.web.auth import token_hash
from reminders.web.deps import AppDep, CallerDep
from reminders.wiring import App

router = APIRouter(include_in_schema=False)

HEARTBEAT = "heartbeat:"


@router.get("/healthz")
def alive() -> Response:
    """Say that the process answers."""
    return PlainTextResponse("alive\n")


@router.get("/readyz")
def ready(app: AppDep) -> Response:
    """Say whether the database answers, its schema is current and the recurring work is being done; 503 when not."""
    now = app.clock()
    states = {"database": "ok", "schema": "ok", "jobs": "ok"}
    try:
        with app.db.read() as tx:
            tx.execute(text("SELECT 1"))
            late = late_jobs(tx, app, now)
        schema.require_ready(app.db)
        if late:
            states["jobs"] = "late: " + ", ".join(late)
    except DatabaseNotReady:
        states["schema"] = "not current"
    except Exception as error:  # noqa: BLE001 - whatever the database says, the answer is "not ready"
        states["database"] = type(error).__name__
    is_ready = all(state == "ok" for state in states.values())
    return JSONResponse({"ready": is_ready, **states}, 200 if is_ready else 503)


def late_jobs(tx: Tx, app: App, now: datetime) -> list[str]:
    """Return the jobs whose heartbeat is older than allowed, or as far ahead; jobs that never ran are told as one.

    A heartbeat ahead of the clock tells nothing of now: the clock that wrote it has been set back since.
    """
    marks = list(tx.exec(select(Mark).where(col(Mark.name).startswith(HEARTBEAT))))
    allowed = timedelta(seconds=app.settings.ready_after_seconds)
    if not marks:
        return ["no job has run yet"]
    return sorted(
        mark.name.removeprefix(HEARTBEAT) for mark in marks if mark.at is None or abs(now - mark.at) > allowed
    )


@router.get("/metrics")
def metrics(request: Request, app: AppDep, caller: CallerDep) -> Response:
    """Give Prometheus its text, to this machine or to a bearer token."""
    with app.db.read() as tx:
        if not (is_loopback(caller) or has_token(tx, request)):
            return PlainTextResponse("A bearer token is needed.\n", 401, {"WWW-Authenticate": "Bearer"})
        body = measured(tx, app.clock())
    return Response(body, media_type="text/plain; version=0.0.4; charset=utf-8")


def has_token(tx: Tx, request: Request) -> bool:
    """Return whether any clinic's API token that was not revoked came along."""
    scheme, _, given = request.headers.get("authorization", "").partition(" ")
    if scheme.lower() != "bearer" or not given:
        return False
    wanted = token_hash(given.strip())
    row = tx.exec(select(ApiToken).where(ApiToken.token_hash == wanted, col(ApiToken.revoked_at).is_(None))).first()
    return row is not None and hmac.compare_digest(row.token_hash, wanted)


def measured(tx: Tx, now: datetime) -> bytes:
    """Return the figures as Prometheus text."""
    registry = CollectorRegistry()
    messages = Gauge("reminders_messages", "Messages by state and channel", ["state", "channel"], registry=registry)
    for state, channel, count in tx.exec(
        select(Outbound.state, Outbound.channel, func.count()).group_by(col(Outbound.state), col(Outbound.channel))
    ):
        messages.labels(state, channel).set(count)
    alerts = Gauge("reminders_alerts", "Alerts not closed, by level and state", ["level", "state"], registry=registry)
    open_alerts = select(Alert.level, Alert.state, func.count()).where(col(Alert.state) != "closed")
    for level, state, count in tx.exec(open_alerts.group_by(col(Alert.level), col(Alert.state))):
        alerts.labels(level, state).set(count)
    clients = Gauge("reminders_clients", "Clients by state", ["state"], registry=registry)
    for state, count in tx.exec(select(Client.state, func.count()).group_by(col(Client.state))):
        clients.labels(state).set(count)
    for name, words, value in single_figures(tx, now):
        Gauge(name, words, registry=registry).set(value)
    jobs = Gauge("reminders_job_age_seconds", "Seconds since a job last finished", ["job"], registry=registry)
    for mark in tx.exec(select(Mark).where(col(Mark.name).startswith(HEARTBEAT))):
        if mark.at is not None:
            jobs.labels(mark.name.removeprefix(HEARTBEAT)).set((now - mark.at).total_seconds())
    return generate_latest(registry)


def single_figures(tx: Tx, now: datetime) -> list[tuple[str, str, float]]:
    """Return the figures that have no labels: name, what it counts, value."""
    due = (
        select(func.count()).select_from(Outbound).where(col(Outbound.state) == "waiting", col(Outbound.due_at) <= now)
    )
    oldest = tx.exec(
        select(func.min(Outbound.due_at)).where(col(Outbound.state) == "waiting", col(Outbound.due_at) <= now)
    ).one()
    unread = select(func.count()).select_from(InboundRow).where(col(InboundRow.handled_at).is_(None))
    held = select(func.count()).select_from(Hold).where(col(Hold.ended_at).is_(None))
    return [
        ("reminders_due_messages", "Messages due and not yet handed over", tx.exec(due).one()),
        ("reminders_oldest_due_seconds", "Age of the oldest of them", (now - oldest).total_seconds() if oldest else 0),
        ("reminders_unread_inbound", "Messages kept and not yet understood", tx.exec(unread).one()),
        ("reminders_open_holds", "Clients held", tx.exec(held).one()),
    ]
