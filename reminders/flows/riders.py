"""What rides in a reminder beside the exercises: the morning question, and the word about a changed dose."""

from datetime import datetime

from reminders.flows import explain, questions
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Outbound


def riding(client: Client | None, session: ExerciseSession | None, language: str) -> dict[str, str]:
    """Return the sentences that a reminder carries: `morning` and `news`, empty where there is none."""
    if client is None or session is None:
        return {"morning": "", "news": ""}
    asks = client.morning_session_id is not None and client.morning_on == session.on_date
    news = client.news
    return {
        "morning": explain.rule_words(language)["riders"]["morning"] if asks else "",
        "news": explain.step_sentence(news["name"], news.get("values", {}), language) if news else "",
    }


def ridden(tx: Tx, row: Outbound, client: Client, session: ExerciseSession, now: datetime) -> None:
    """Note that a reminder which carried them was accepted: the question is open, the news are told."""
    client.news = {}
    if client.morning_session_id is not None and client.morning_on == session.on_date:
        questions.ask(tx, "settling", row.to, client, now, session_id=client.morning_session_id)
        client.morning_on, client.morning_session_id = None, None
