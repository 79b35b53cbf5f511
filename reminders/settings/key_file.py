"""The secret key that a SQLite database has beside it, made once. With PostgreSQL the key is a setting."""

import os
import secrets
from pathlib import Path

from reminders.errors import BadInput
from reminders.settings import KEY_AT_LEAST, Settings


def signing_keys(settings: Settings) -> tuple[str, ...]:
    """Return the secret keys, the first of which signs, making `<database>.key` with mode 0600 where there is none."""
    if settings.secret_keys:
        return settings.secret_keys
    path = settings.database_path
    if path is None:
        raise BadInput("REMINDERS_SECRET_KEY must be given with PostgreSQL.")
    return (key_in(path.with_name(f"{path.name}.key")),)


def key_in(path: Path) -> str:
    """Return the key that a file holds, making it first; raises BadInput when it cannot be read or written."""
    try:
        if not path.exists():
            make_key(path)
        key = path.read_text(encoding="ascii").strip()
    except (OSError, UnicodeDecodeError):
        raise BadInput(
            f"The secret key file {path} cannot be read or made; give REMINDERS_SECRET_KEY instead."
        ) from None
    if len(key) < KEY_AT_LEAST:
        raise BadInput(f"The secret key file {path} is damaged; bring it back from a backup.")
    return key


def make_key(path: Path) -> None:
    """Write a new key whole or not at all; of two processes at once the first one's key stands."""
    draft = path.with_name(f".{path.name}.{os.getpid()}.{secrets.token_hex(4)}")
    handle = os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "w", encoding="ascii") as file:
            file.write(secrets.token_urlsafe(48) + "\n")
            file.flush()
            os.fsync(file.fileno())
        os.link(draft, path)
    except FileExistsError:
        return
    finally:
        draft.unlink()
