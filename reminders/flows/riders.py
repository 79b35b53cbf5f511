"""What rides in a reminder beside the exercises: the morning question, a new dose, monthly the emergency line."""

from collections.abc import Mapping
from datetime import date, datetime
from typing import Any, Protocol

from reminders.flows import easy_day, explain, questions
from reminders.store import bulk
from reminders.store.db import Tx
from reminders.store.slim import ShownClient
from reminders.store.tables import Client, Outbound

# In every message it would stop being read: monthly is common practice, no source.
EMERGENCY_DAYS = 28
EVER = date.min.isoformat()
RISES = ("up", "more")


class Day(Protocol):
    """A session, as far as it matters here."""

    @property
    def on_date(self) -> date:
        """Return its local date."""

    @property
    def is_easy(self) -> bool:
        """Return whether it is an easy day."""


def load_of(client: Client | ShownClient | None, session: Day | None) -> dict[str, Any]:
    """Return what a reminder written now carries, as plain values: `news`, `morning` (a session), `emergency`, `easy`.

    It is kept on the row: what changes on the client before the reminder is accepted did not ride in it.
    """
    if client is None or session is None:
        return {}
    load: dict[str, Any] = {"news": client.news} if tells_news(client.news, session) else {}
    if asks(client, session):
        load["morning"] = client.morning_session_id
    if is_emergency_due(client, session):
        load["emergency"] = True
    if session.is_easy:
        load["easy"] = {"next": client.next_session_easy, "left": client.easy_sessions_left > 0}
    return load


def tells_news(news: Mapping[str, Any], session: Day) -> bool:
    """Return whether a session's reminder tells of a new dose: it has it, and is no easy day that hides a rise."""
    if not news or date.fromisoformat(news.get("from_on", EVER)) > session.on_date:
        return False
    return not (session.is_easy and news["name"] in RISES)


def note_load(row: Outbound, client: Client | ShownClient | None, session: Day | None) -> None:
    """Keep on a reminder what rides in it; nothing is kept, or written, where nothing does or did.

    A mail that stands in for a text which failed says all that the text said.
    """
    load = {**load_of(client, session), **row.details.get(bulk.STANDS_IN_FOR, {})}
    if load or bulk.RIDES in row.details:
        bulk.put(row, details={**row.details, bulk.RIDES: load})


def riding(load: Mapping[str, Any], language: str, emergency: str) -> dict[str, str]:
    """Return the sentences that a reminder carries: `morning` and `news`, empty where there is none."""
    words = explain.rule_words(language)["riders"]
    news = []
    if "news" in load:
        news.append(explain.step_sentence(load["news"]["name"], load["news"].get("values", {}), language))
    if "emergency" in load:
        news.append(str(words["emergency"]).format(emergency=emergency))
    return {"morning": str(words["morning"]) if "morning" in load else "", "news": " ".join(news)}


def asks(client: Any, session: Day) -> bool:
    """Return whether a session's reminder carries the morning question about an earlier one."""
    return client.morning_session_id is not None and client.morning_on == session.on_date


def is_emergency_due(client: Any, session: Day) -> bool:
    """Return whether the emergency number was last told four weeks before a session; the welcome tells it first."""
    told_on = client.emergency_told_on or client.active_on
    return told_on is not None and (session.on_date - told_on).days >= EMERGENCY_DAYS


def ridden(tx: Tx, row: Outbound, client: Client, session: Day, now: datetime) -> None:
    """Note that a reminder was accepted: the question that it carried is open, the news in it are told."""
    load = row.details.get(bulk.RIDES, {})
    if "emergency" in load:
        client.emergency_told_on = session.on_date
    if client.news and client.news == load.get("news"):
        client.news = {}
    if "morning" in load:
        questions.ask(tx, "settling", row.to, client, now, session_id=load["morning"])
        if asks(client, session) and client.morning_session_id == load["morning"]:
            client.morning_on, client.morning_session_id = None, None


def not_told(row: Outbound, client: Client, session: Day, rung: int | None) -> None:
    """Give back what rode in a reminder that never arrived: the next one announces it anew.

    Not a step to another `rung` than hers now: it was taken back meanwhile.
    """
    load = row.details.get(bulk.RIDES, {})
    if "easy" in load:
        easy_day.give_back(client, by_wish=load["easy"]["next"], by_count=load["easy"]["left"])
    if "news" in load and not client.news and load["news"].get("rung", rung) == rung:
        client.news = load["news"]
    if "emergency" in load and client.emergency_told_on == session.on_date:
        client.emergency_told_on = None
