"""What rides in a reminder beside the exercises: the morning question, a new dose, monthly the emergency line."""

from datetime import date, datetime
from typing import Any, Protocol

from reminders.flows import explain, questions
from reminders.store.db import Tx
from reminders.store.slim import ShownClient
from reminders.store.tables import Client, Outbound

# In every message it would stop being read: monthly is common practice, no source.
EMERGENCY_DAYS = 28


class Day(Protocol):
    """A session, as far as it matters here."""

    @property
    def on_date(self) -> date:
        """Return its local date."""


def riding(client: Client | ShownClient | None, session: Day | None, language: str, emergency: str) -> dict[str, str]:
    """Return the sentences that a reminder carries: `morning` and `news`, empty where there is none."""
    if client is None or session is None:
        return {"morning": "", "news": ""}
    words = explain.rule_words(language)["riders"]
    news = []
    if client.news:
        news.append(explain.step_sentence(client.news["name"], client.news.get("values", {}), language))
    if is_emergency_due(client, session):
        news.append(str(words["emergency"]).format(emergency=emergency))
    return {"morning": str(words["morning"]) if asks(client, session) else "", "news": " ".join(news)}


def asks(client: Any, session: Day) -> bool:
    """Return whether a session's reminder carries the morning question about an earlier one."""
    return client.morning_session_id is not None and client.morning_on == session.on_date


def is_emergency_due(client: Any, session: Day) -> bool:
    """Return whether the emergency number was last told four weeks before a session; the welcome tells it first."""
    told_on = client.emergency_told_on or client.active_on
    return told_on is not None and (session.on_date - told_on).days >= EMERGENCY_DAYS


def rides(client: Any, session: Day) -> bool:
    """Return whether a session's reminder carries anything beside the exercises."""
    return bool(client.news) or asks(client, session) or is_emergency_due(client, session)


def ridden(tx: Tx, row: Outbound, client: Client, session: Day, now: datetime) -> None:
    """Note that a reminder which carried them was accepted: the question is open, the news are told."""
    if is_emergency_due(client, session):
        client.emergency_told_on = session.on_date
    client.news = {}
    if asks(client, session):
        questions.ask(tx, "settling", row.to, client, now, session_id=client.morning_session_id)
        client.morning_on, client.morning_session_id = None, None
