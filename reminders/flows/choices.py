"""What the answers to our questions lead to: reason, other days, effort, falls, daily items, keep or end, until, who.

Answers about a session's pain and amount are reports and stand in flows/replies.
"""

from collections.abc import Callable
from typing import Any

from sqlmodel import col, select

from reminders.core.attribution import Holder, named_holders
from reminders.core.decide import ABOUT_A_SESSION
from reminders.core.rules.danger import falls_counted, rules_out_a_pause
from reminders.core.schedule import client_day, local_date, week_of
from reminders.flows import alert, consent, pause, questions, say, waiting_words
from reminders.flows.understand import Heard, settle_whose
from reminders.store.db import Tx
from reminders.store.tables import Client, DailyAnswer, Question, Report
from reminders.texts_said import said_date


def answered(tx: Tx, heard: Heard, client: Client, question: Question) -> None:
    """Close a question as answered and act on the answer."""
    choice = heard.reading.choice
    questions.close(question, "answered", heard.now, choice=choice, inbound=heard.row.id)
    heard.outcome = f"answer {question.kind}"
    if question.kind in ("reason", "until") and rules_out_a_pause(heard.reading):
        return  # the hold that her words opened is the answer
    ACTIONS.get(question.kind, noted)(tx, heard, client, choice)


def noted(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Thank her; the answer stands on the question's row."""
    heard.say("said_back", "said_back_noted")


def reason(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Act on why it went quiet: away pauses, busy and forgot offer other days, the rest goes to the clinic."""
    if choice == "away":
        pause.begin(tx, client, None, "client", heard.now, reason="away")
        questions.ask(tx, "until", heard.row.address, client, heard.now, inbound_id=heard.row.id)
        heard.say("ask", "ask_until", slot="ask")
    elif choice in ("busy", "forgot"):
        questions.ask(tx, "offer", heard.row.address, client, heard.now, inbound_id=heard.row.id)
        heard.say("ask", "ask_offer", slot="ask")
    else:
        tell(tx, heard, client, "question", reason=choice)
        heard.say("said_back", "said_back_question")


def offer(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Send a wish for other days to the clinic."""
    if choice == "no":
        heard.say("said_back", "said_back_no_change")
        return
    tell(tx, heard, client, "reschedule")
    heard.say("said_back", "said_back_reschedule")


def falls(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Tell the therapist today of any fall counted; none is only kept."""
    since = str((heard.question.details if heard.question else {}).get("since") or client.active_on or "")
    finding = falls_counted(number_of(choice) or 0, since)
    if finding is not None:
        because = {"form": finding.form, "values": dict(finding.because), "inbound": heard.row.id}
        alert.raise_alert(tx, heard.clinic, client, finding.rule, finding.level, because, heard.now)
    heard.say("said_back", "said_back_noted")


def daily(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Keep on how many days of the week that was asked about the daily items were done, never part of adherence."""
    asked_at = heard.question.asked_at if heard.question else heard.now
    week = str((heard.question.details if heard.question else {}).get("week") or "")
    week = week or week_of(local_date(asked_at, client.time_zone))
    statement = select(DailyAnswer).where(DailyAnswer.client_id == client.id, DailyAnswer.week == week)
    row = tx.exec(statement).first() or DailyAnswer(client_id=client.id or 0, week=week, at=heard.now)
    count = number_of(choice)
    row.days, row.at = None if count is None else min(count, 7), heard.now
    tx.add(row)
    heard.say("said_back", "said_back_noted")


def keep(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """After silence: go on as before, ask for other days, or end the texts."""
    if choice == "end":
        consent.opt_out(tx, heard)
        return
    client.weekly_only = False
    if choice == "change":
        tell(tx, heard, client, "reschedule")
        heard.say("said_back", "said_back_reschedule")
    else:
        heard.say("said_back", "said_back_keep")


def until(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Set the end of the pause that was asked about; without a date it stays at 14 days."""
    today = client_day(heard.row.received_at, client.time_zone)
    named = pause.end_named(choice, today) or pause.end_named(heard.reading.when, today)
    made = pause.begin(tx, client, named, "client", heard.now)
    heard.say("said_back", "said_back_pause", until=said_date(made.until_on, client.language))


def where(tx: Tx, heard: Heard, client: Client, choice: Any) -> None:
    """Keep the body part with the report that was asked about."""
    session_id = heard.question.session_id if heard.question else None
    statement = select(Report).where(Report.client_id == client.id, Report.session_id == session_id)
    report = tx.exec(statement.order_by(col(Report.at).desc(), col(Report.id).desc()).limit(1)).first()
    if report is not None:
        report.body_part = heard.reading.where or str(choice)
    heard.say("said_back", "said_back_noted")


def who(tx: Tx, heard: Heard, question: Question) -> bool:
    """Have the replies that waited for a name read again as hers, or start her reminders; False when none is named."""
    everyone = [Holder(one.id or 0, (one.name, one.name.split()[0])) for _, one in heard.people]
    said = f"{heard.row.text} {heard.reading.choice or ''}"
    found = everyone if heard.reading.choice == "both" else named_holders(said, everyone)
    named = {holder.client_id for holder in found}
    starts = bool(question.details.get("start"))
    if not named or (len(named) > 1 and not starts):
        return False
    questions.close(question, "answered", heard.now, inbound=heard.row.id)
    heard.outcome = "answer who"
    if starts:
        consent.start(tx, heard, [pair for pair in heard.people if pair[1].id in named])
        return True
    waiting_words.is_theirs(tx, question, min(named))
    return True


def says_more(tx: Tx, heard: Heard) -> bool:
    """Return whether a reply that names whose an earlier one was says something of its own, and read it as such."""
    as_answer = heard.reading, heard.why
    heard.question = None
    settle_whose(tx, heard)
    reading = heard.reading
    asks_for = reading.intent not in (*ABOUT_A_SESSION, "unclear", "chat")
    tells = reading.pain is not None or reading.sets is not None or reading.by_exercise or reading.completed == "part"
    if tells or asks_for or reading.red_flags or reading.concerns:
        return True
    heard.reading, heard.why = as_answer
    return False


def number_of(choice: Any) -> int | None:
    """Return a count, None for an answer without one."""
    if isinstance(choice, int):
        return choice
    return {"no": 0}.get(str(choice))


def tell(tx: Tx, heard: Heard, client: Client, kind: str, **details: Any) -> None:
    """Put her words into the clinic's inbox."""
    say.tell_desk(tx, heard.clinic, client, kind, heard.row.text, details, heard.now, inbound_id=heard.row.id)


ACTIONS: dict[str, Callable[[Tx, Heard, Client, Any], None]] = {
    "reason": reason,
    "offer": offer,
    "falls": falls,
    "days": daily,
    "keep": keep,
    "until": until,
    "where": where,
    "effort": noted,
}
