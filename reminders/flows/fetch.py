"""Fetching what is not pushed: the provider's list of what came in, and the mailbox. Both are kept raw, then handled.

The list is read at the start and every 5 minutes, from an hour before the newest message seen or the last complete
reading; the mailbox at every turn, from where we stopped. How a list or mailbox is read stands behind the protocols of
the core.
"""

import logging
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlmodel import col, func, select

from reminders.core.channel import Inbound, InboundList, Mailbox, MailProgress
from reminders.core.tokens import number_in
from reminders.errors import CannotSay
from reminders.flows import keeping, say
from reminders.flows.link_marks import message_mark
from reminders.store import marks
from reminders.store.db import Database, Tx
from reminders.store.tables import Clinic, InboundMail, InboundRow, Outbound

LOG = logging.getLogger("reminders.fetch")
LIST_EVERY = timedelta(minutes=5)
LOOK_BACK = timedelta(hours=1)
FIRST_LOOK_BACK = timedelta(days=1)
GIVE_UP_AFTER = timedelta(minutes=30)
CHUNK = 200  # no write transaction holds more rows
LIST_MARK, FAILING_MARK = "fetched list", "fetch failing"


def no_token(_token: str, _mark: str) -> bool:
    """Return no: nobody made reply tokens."""
    return False


@dataclass(frozen=True)
class Fetchers:
    """What can be fetched from; `is_reply_to` tells whether a reply token was made for the mail with this mark."""

    inbound_list: InboundList | None = None
    mailbox: Mailbox | None = None
    mailbox_name: str = "mailbox"
    is_reply_to: Callable[[str, str], bool] = no_token


def run(db: Database, fetchers: Fetchers, now: datetime, back_to: datetime | None = None) -> int:
    """Fetch from wherever it is time; return how many new messages were kept. A failure is logged and tried again.

    `back_to`: the list is read at once, however lately it was, and from an hour before that instant at the latest.
    """
    kept = 0
    if fetchers.inbound_list is not None and (back_to is not None or is_list_time(db, now)):
        kept += guarded(db, "list", now, lambda: from_list(db, fetchers, now, back_to or now))
    if fetchers.mailbox is not None:
        kept += guarded(db, "mailbox", now, lambda: from_mailbox(db, fetchers, now))
    return kept


def guarded(db: Database, name: str, now: datetime, work: Callable[[], int]) -> int:
    """Run one fetch; note since when it has been failing, and when it last came to its end.

    After half an hour of failing whoever runs the service is told, once a day: what is not heard can be a danger sign.
    """
    mark = f"{FAILING_MARK} {name}"
    try:
        kept = work()
    except CannotSay:
        LOG.warning("fetch failed", extra={"source": name})
        with db.begin() as tx:
            found = marks.mark(tx, mark)
            if found is None or found.at is None:
                marks.set_mark(tx, mark, at=now)
            elif now - found.at >= GIVE_UP_AFTER:
                tell_of_failure(tx, name, found.at, now)
        return 0
    with db.begin() as tx:
        if (found := marks.mark(tx, mark)) is not None and found.at is not None:
            marks.set_mark(tx, mark)
        marks.set_mark(tx, f"fetched {name}", at=now)
    return kept


def tell_of_failure(tx: Tx, name: str, since: datetime, now: datetime) -> None:
    """Tell the operator, by the first clinic, that the list or the mailbox cannot be read."""
    clinic = tx.exec(select(Clinic).order_by(col(Clinic.id)).limit(1)).first()
    if clinic is not None:
        say.tell_operator(tx, clinic, f"{name} not read", {"since": since.isoformat()}, now)


def is_list_time(db: Database, now: datetime) -> bool:
    """Return whether the list was last read 5 minutes ago or more, or by a clock that has been set back since."""
    with db.read() as tx:
        found = marks.mark(tx, LIST_MARK)
    return found is None or found.at is None or not timedelta(0) <= now - found.at < LIST_EVERY


def from_list(db: Database, fetchers: Fetchers, now: datetime, back_to: datetime) -> int:
    """Keep what the provider's list has and we have not, from an hour before `back_to` or from earlier on."""
    assert fetchers.inbound_list is not None
    with db.read() as tx:
        since = min(list_since(tx, now), back_to - LOOK_BACK)
    return keep_all(db, fetchers.inbound_list.inbound_since(since), now)


def list_since(tx: Tx, now: datetime) -> datetime:
    """Return from when on the list is read: an hour before the newest text seen, or before the last reading that came
    to its end, if that is longer ago: a text pushed right after a stop must not hide those that came during it.
    """
    newest = tx.exec(select(func.max(InboundRow.received_at)).where(InboundRow.source == "sms")).one()
    known = newest if newest is not None else now - FIRST_LOOK_BACK + LOOK_BACK
    read, failing = marks.mark(tx, LIST_MARK), marks.mark(tx, f"{FAILING_MARK} list")
    moments = [found.at for found in (read, failing) if found is not None and found.at is not None]
    return min(known, now, *moments) - LOOK_BACK


def keep_all(db: Database, found: Sequence[Inbound], now: datetime) -> int:
    """Keep fetched messages, a few in each transaction; return how many were new."""
    kept = 0
    for start in range(0, len(found), CHUNK):
        with db.begin() as tx:
            for inbound in found[start : start + CHUNK]:
                kept += keeping.keep(tx, inbound, now, fetched=True) is not None
    return kept


def from_mailbox(db: Database, fetchers: Fetchers, now: datetime) -> int:
    """Keep every new mail, batch by batch, each batch in one transaction with how far the mailbox has been read."""
    assert fetchers.mailbox is not None
    kept = 0
    while True:
        with db.read() as tx:
            progress = progress_of(tx, fetchers.mailbox_name)
        batch = fetchers.mailbox.fetch(progress)
        if batch.inbound or batch.progress != progress:
            with db.begin() as tx:
                for inbound in batch.inbound:
                    kept += keep_mail(tx, fetchers, inbound, now)
                set_progress(tx, fetchers.mailbox_name, batch.progress)
        if not batch.more:
            return kept


def keep_mail(tx: Tx, fetchers: Fetchers, inbound: Inbound, now: datetime) -> int:
    """Keep one mail, with the row of ours that its reply token names; return 1 when it was new."""
    row_id = keeping.keep(tx, inbound, now, fetched=True)
    if row_id is None:
        return 0
    number = number_in(inbound.reply_token)
    sent = tx.get(Outbound, number) if number is not None else None
    row = tx.get(InboundRow, row_id)
    if row is not None and sent is not None and fetchers.is_reply_to(inbound.reply_token, message_mark(sent.key)):
        row.answers = f"{row.answers} row:{sent.id}".strip()
    return 1


def progress_of(tx: Tx, name: str) -> MailProgress | None:
    """Return how far a mailbox has been read, None when it never was."""
    found = tx.exec(select(InboundMail).where(col(InboundMail.mailbox) == name)).first()
    return MailProgress(found.uid_validity, found.uid) if found else None


def set_progress(tx: Tx, name: str, progress: MailProgress) -> None:
    """Write down how far a mailbox has been read."""
    found = tx.exec(select(InboundMail).where(col(InboundMail.mailbox) == name)).first()
    row = found or InboundMail(mailbox=name)
    row.uid_validity, row.uid = progress.validity, progress.uid
    tx.add(row)


def has_caught_up(tx: Tx, fetchers: Fetchers, since: datetime, now: datetime) -> bool:
    """Return whether list and mailbox have been read since an instant, or have been failing for 30 minutes."""
    sources = [("list", fetchers.inbound_list), ("mailbox", fetchers.mailbox)]
    return all(is_read(tx, name, since, now) for name, source in sources if source is not None)


def is_read(tx: Tx, name: str, since: datetime, now: datetime) -> bool:
    """Return whether one source was read since an instant, or has been failing for half an hour since then."""
    done, failing = marks.mark(tx, f"fetched {name}"), marks.mark(tx, f"{FAILING_MARK} {name}")
    if done is not None and done.at is not None and done.at >= since:
        return True
    return failing is not None and failing.at is not None and now - max(failing.at, since) >= GIVE_UP_AFTER
