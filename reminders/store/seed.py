"""What a fresh database holds before anybody has typed a word: one clinic, without a name and a phone.

The exercise library and the starter programs come with the program itself (`core.library_data`, `core.program_data`);
a clinic's own are rows beside them.
"""

from datetime import datetime

from sqlmodel import select

from reminders.store import addresses
from reminders.store.db import Tx
from reminders.store.tables import Clinic


def first_clinic(tx: Tx, now: datetime) -> bool:
    """Make the one clinic of a fresh database; False when there is one already."""
    if tx.exec(select(Clinic.id).limit(1)).first() is not None:
        return False
    addresses.make_key(tx)
    tx.add(Clinic(created_at=now))
    tx.flush()
    return True
