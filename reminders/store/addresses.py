"""Keyed hashes of addresses and clients: what the journal and an erasure may keep of them.

The key is the database's own, made with it, so that a change of the signing secret leaves the hashes as they are.
"""

import hashlib
import hmac
import secrets

from reminders.store import marks
from reminders.store.db import Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Client

KEY_MARK = "address key"
HASHED = "hash:"  # begins what stands in place of an erased address


def make_key(tx: Tx) -> None:
    """Make the key of a fresh database; one that is there stays."""
    if marks.mark(tx, KEY_MARK) is None:
        marks.set_mark(tx, KEY_MARK, value=secrets.token_hex(32))


def keyed(tx: Tx, words: str) -> str:
    """Return the HMAC-SHA-256 of some words (RFC 2104), as 64 hex digits."""
    make_key(tx)
    found = marks.mark(tx, KEY_MARK)
    assert found is not None
    return hmac.new(bytes.fromhex(found.value), words.encode(), hashlib.sha256).hexdigest()


def address_hash(tx: Tx, address: str) -> str:
    """Return what stands for an address when the address itself may not be kept."""
    return HASHED + keyed(tx, f"address:{address}")


def client_hash(tx: Tx, client: Client) -> str:
    """Return a short hash that tells a client from another who was given the same number in a restored database."""
    return keyed(tx, f"client:{client.id}:{stamp(client.created_at)}")[:16]
