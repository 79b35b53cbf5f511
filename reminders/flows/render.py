"""What a message says: the standard values every text may use, the reminder's exercises, and the words in the end.

Called when a row is claimed, so that a text shows the program and the hours as they are then.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache
from typing import Any

from reminders.core.hours import Hours
from reminders.core.program_json import from_json
from reminders.core.programs import SessionItem, easy_items, list_for, program_days, session_items, with_days
from reminders.core.schedule import WEEKDAYS, local_date
from reminders.core.segments import parts, plain
from reminders.core.tokens import ALERT_PAGE, CLIENT_PAGE, REPLY_TO, UNSUBSCRIBE, make_token
from reminders.flows import riders
from reminders.flows.link_marks import alert_mark, contact_mark, message_mark, session_mark
from reminders.store import bulk
from reminders.store.slim import ShownClient, ShownSession
from reminders.store.tables import Client, ClientProgram, Clinic, ExerciseSession, Outbound, Staff
from reminders.texts import Texts
from reminders.texts_exercises import exercise_words
from reminders.texts_said import said_date, said_hours, said_opening

MOST_PARTS = 3  # a reminder longer than this names the first exercises and leads to the page
NAME = "\ue000"  # stands for her name in a text that a crowd shares: no template, name or exercise holds it


@dataclass(frozen=True)
class Links:
    """Makes signed links of the public address."""

    base: str
    keys: tuple[str, ...]

    def page(self, session_id: int, mark: str) -> str:
        """Return the address of a client's page for one session."""
        return f"{self.base}/c/{make_token(self.keys, CLIENT_PAGE, session_id, mark)}"

    def alert(self, alert_id: int, mark: str) -> str:
        """Return the address of one alert's acknowledge page."""
        return f"{self.base}/a/{make_token(self.keys, ALERT_PAGE, alert_id, mark)}"

    def unsubscribe(self, contact_id: int, address: str) -> str:
        """Return the address of the one-click unsubscribe for one contact, at the address that a mail goes to."""
        return f"{self.base}/unsubscribe/{make_token(self.keys, UNSUBSCRIBE, contact_id, contact_mark(address))}"

    def reply_token(self, row_id: int, key: str) -> str:
        """Return the token that the Reply-To of the mail with this key carries, so that an answer finds its message."""
        return make_token(self.keys, REPLY_TO, row_id, message_mark(key))


@dataclass(frozen=True, slots=True)
class Version:
    """A dated version of a client's program as it stands in the record, its body unread."""

    id: int | None
    client_id: int
    number: int
    from_on: date
    rung: int
    body: str


@dataclass(frozen=True)
class Scene:
    """The people and rows that one message speaks of."""

    clinic: Clinic
    hours: Hours
    client: Client | ShownClient | None = None
    therapist: Staff | None = None
    staff: Staff | None = None
    session: ExerciseSession | ShownSession | None = None
    program: ClientProgram | Version | None = None
    days: str = ""
    shares_phone: bool = False
    alert_opened_at: datetime | None = None


def first_name(name: str) -> str:
    """Return the name that a text may use."""
    return name.split()[0] if name.split() else name


def show_session(scene: Scene, language: str) -> None:
    """Put a session's lettered exercises on it, by the program version that counts now; the caller writes them."""
    session, program = scene.session, scene.program
    if program is None or session is None:
        return
    weekday, body = WEEKDAYS[session.on_date.weekday()], body_of(program)
    compact = bool(scene.client and scene.client.compact_doses)
    letter, lines = lines_shown((body, scene.days, weekday, program.rung, session.is_easy), language, compact)
    bulk.put(
        session,
        list_letter=letter,
        program_id=program.id,
        rung=program.rung,
        items=[dict(line) for line in lines],
    )


def body_of(program: ClientProgram | Version) -> str:
    """Return a program version's body as text."""
    return program.body if isinstance(program.body, str) else json.dumps(program.body)


@lru_cache(maxsize=4096)
def lines_shown(
    day: tuple[str, str, str, int, bool], language: str, compact: bool
) -> tuple[str, tuple[dict[str, Any], ...]]:
    """Return the letter and the shown lines of a program's day, as `lines_on` takes it; a crowd shares them."""
    letter, items = lines_on(*day)
    return letter, shown(items, language, compact)


def is_to_show(session: ExerciseSession | ShownSession) -> bool:
    """Return whether a session's exercises are still to be written: once a reminder was accepted they stay."""
    return not session.items or session.state == "planned"


def list_of(scene: Scene) -> tuple[str, tuple[SessionItem, ...]]:
    """Return the letter of a session's list and its lines; ("A", ()) where she has no program."""
    session, program = scene.session, scene.program
    if program is None or session is None:
        return "A", ()
    weekday = WEEKDAYS[session.on_date.weekday()]
    return lines_on(body_of(program), scene.days, weekday, program.rung, session.is_easy)


@lru_cache(maxsize=4096)
def lines_on(body: str, days: str, weekday: str, rung: int, is_easy: bool) -> tuple[str, tuple[SessionItem, ...]]:
    """Return the letter and lines of a program's list on a weekday; many clients share a program, so it is kept."""
    program = from_json(json.loads(body))
    wanted = days.split("+") if days else list(program_days(program))
    if set(wanted) != set(program_days(program)) and len(wanted) >= len(program.lists):
        program = with_days(program, wanted)
    day_list = list_for(program, weekday) or program.lists[0]
    return day_list.name, (easy_items if is_easy else session_items)(day_list, rung)


@lru_cache(maxsize=4096)
def shown(items: tuple[SessionItem, ...], language: str, compact: bool) -> tuple[dict[str, Any], ...]:
    """Return a session's lines as plain values: letter, code, name, dose in words and in short, sets, reps, seconds."""
    words = exercise_words(language)
    return tuple(
        {
            "letter": item.letter,
            "code": item.exercise,
            "name": words.name(item.exercise),
            "dose": words.dose_short(item) if compact else words.dose(item),
            "short": words.dose_short(item),
            "sets": item.dose.sets,
            "reps": item.dose.reps,
            "seconds": item.dose.seconds,
            "side": item.side,
        }
        for item in items
    )


@lru_cache(maxsize=1024)
def said_of(hours: str, parsed: Hours, now: datetime, language: str) -> tuple[str, bool, str]:
    """Return a clinic's hours in words, whether it is open, and when it opens next: the same for a whole claim."""
    return said_hours(hours, language), parsed.is_open(now), said_opening(parsed, now, language)


def values(scene: Scene, row: Outbound, links: Links, now: datetime) -> dict[str, Any]:
    """Return the standard values that every text may use, and the row's own."""
    clinic, client = scene.clinic, scene.client
    language = row.language
    hours_said, is_open, opening = said_of(clinic.hours, scene.hours, now, language)
    made: dict[str, Any] = {
        "clinic": clinic.name,
        "phone": clinic.phone,
        "hours": hours_said,
        "emergency": clinic.emergency_number,
        "crisis": clinic.crisis_line,
        "crisis_outside_us": clinic.crisis_line != "988",
        "is_open": is_open,
        "opening": opening,
        "therapist": scene.therapist.name if scene.therapist else clinic.name,
        "staff": scene.staff.name if scene.staff else "",
        "first_name": first_name(client.name) if client else "",
        "name": first_name(client.name) if client and scene.shares_phone else "",
        "today": said_date(local_date(now, client.time_zone if client else clinic.time_zone), language),
        "channel": row.channel,
        "link": "",
        "home": links.base,
        "language": language,
        "items": [],
    }
    if row.alert_id is not None and scene.alert_opened_at is not None:
        made["link"] = links.alert(row.alert_id, alert_mark(scene.alert_opened_at))
    elif scene.session is not None and client is not None:
        made["link"] = links.page(scene.session.id or 0, mark_of(client, scene.session))
    if scene.session is not None:
        made["items"] = scene.session.items
        made["session_date"] = said_date(scene.session.on_date, language)
        made["is_easy"] = scene.session.is_easy
    if row.kind == "reminder":
        made |= riders.riding(row.details.get(bulk.RIDES, {}), language, clinic.emergency_number)
    made.update(row.details)
    return made


def mark_of(client: Client | ShownClient, session: ExerciseSession | ShownSession) -> str:
    """Return the mark that the link of a client's session covers."""
    return session_mark(client.id or 0, client.created_at, session.on_date)


def reminder_body(texts: Texts, scene: Scene, row: Outbound, made: Mapping[str, Any]) -> str:
    """Return a reminder's text: one part where the program allows, at most three; a longer one names the first few."""
    language = row.language
    full = plain(texts.text("reminder", language, {**made, "more": 0}, scene.clinic.wording))
    if parts(full) <= MOST_PARTS:
        return full
    items = list(made["items"])
    compact = [{**item, "dose": item["short"]} for item in items]
    short = plain(texts.text("reminder", language, {**made, "items": compact, "more": 0}, scene.clinic.wording))
    if parts(short) <= MOST_PARTS:
        return short
    for keep in range(len(items) - 1, 0, -1):
        cut = {**made, "items": compact[:keep], "more": len(items) - keep}
        body = plain(texts.text("reminder", language, cut, scene.clinic.wording))
        if parts(body) <= MOST_PARTS:
            return body
    return body


def shared_body(texts: Texts, scene: Scene, row: Outbound) -> str | None:
    """Return a reminder's text made of what a crowd shares and her name; None where it wants more than that."""
    client, session = scene.client, scene.session
    if client is None or session is None or set(row.details) - {bulk.RIDES} or scene.clinic.wording:
        return None
    items = tuple((item["letter"], item["name"], item["dose"]) for item in session.items)
    riding = riders.riding(row.details.get(bulk.RIDES, {}), row.language, scene.clinic.emergency_number)
    body = frame_of(texts, row.language, items, session.is_easy, riding["news"], riding["morning"])
    body = body.replace(NAME, plain(first_name(client.name)))
    return body if parts(body) <= MOST_PARTS else None


@lru_cache(maxsize=4096)
def frame_of(
    texts: Texts, language: str, items: tuple[tuple[str, str, str], ...], is_easy: bool, news: str, morning: str
) -> str:
    """Return a reminder's text with a mark where the name goes: the same for all who do the same today."""
    lines = [dict(zip(("letter", "name", "dose"), item, strict=True)) for item in items]
    said = {"items": lines, "is_easy": is_easy, "news": news, "morning": morning, "more": 0}
    return plain(texts.text("reminder", language, {**said, "first_name": NAME}))


def render(texts: Texts, scene: Scene, row: Outbound, links: Links, now: datetime) -> None:
    """Fill in a row's words: body and parts for a text; subject, body, HTML and headers for a mail."""
    if row.kind == "reminder":
        riders.note_load(row, scene.client, scene.session)
    if row.channel == "sms" and row.template == row.kind == "reminder":
        body = shared_body(texts, scene, row)
        if body is not None:
            bulk.put(row, body=body, parts=parts(body))
            return
    made = values(scene, row, links, now)
    if row.channel == "sms":
        if row.template == "reminder":
            row.body = reminder_body(texts, scene, row, made)
        else:
            row.body = plain(texts.text(row.template, row.language, made, scene.clinic.wording))
        row.parts = parts(row.body)
        return
    render_mail(texts, scene, row, made)


def render_mail(texts: Texts, scene: Scene, row: Outbound, made: dict[str, Any]) -> None:
    """Fill in a mail: its own templates where they are written, else the text of the same name in the plain frame."""
    if row.template and texts.has_mail(row.template, row.language):
        mail = texts.mail(row.template, row.language, made)
    else:
        words = texts.text(row.template, row.language, made, scene.clinic.wording)
        mail = texts.mail("message", row.language, {**made, "words": words, "kind": row.kind})
    row.subject, row.body, row.html = mail.subject, mail.text, mail.html
    row.parts = 0
    if scene.session is not None:
        root = f"<session-{scene.session.id}@{mail_domain(made)}>"
        row.headers = {"References": root, "In-Reply-To": root}
    row.headers = {**row.headers, "Auto-Submitted": "auto-replied" if row.is_answer else "auto-generated"}


def mail_domain(made: Mapping[str, Any]) -> str:
    """Return the domain part that our thread roots carry; it names no host that must exist."""
    return "reminders.invalid"
