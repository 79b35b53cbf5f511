"""Backups for the holder of a key alone: a file in sealed pieces, none of which can be changed, moved or left out.

AES-256-GCM (NIST SP 800-38D) with a key from scrypt (RFC 7914); each piece's number is its nonce, and the last piece
is marked as such, so that a file cut short is found.
"""

import os
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from cryptography.hazmat.primitives.kdf.scrypt import Scrypt

from reminders.errors import BadInput

MAGIC = b"reminders sealed 1\n"
SALT_BYTES, PIECE, TAG_BYTES = 16, 1 << 20, 16
COST, BLOCK, LANES = 2**15, 8, 1  # scrypt's parameters: 32 MB, about a tenth of a second


def is_sealed(path: Path) -> bool:
    """Return whether a file is a sealed backup; raises BadInput when it cannot be read."""
    try:
        with path.open("rb") as file:
            return file.read(len(MAGIC)) == MAGIC
    except OSError as error:
        raise BadInput(f"{path} cannot be read: {error.strerror}.") from None


def cipher(key: str, salt: bytes) -> AESGCM:
    """Return the cipher that a key and a file's salt make."""
    return AESGCM(Scrypt(salt=salt, length=32, n=COST, r=BLOCK, p=LANES).derive(key.encode()))


def seal(source: Path, target: Path, key: str) -> None:
    """Write a sealed form of a file, readable by its owner alone."""
    salt = os.urandom(SALT_BYTES)
    made = cipher(key, salt)
    handle = os.open(target, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with source.open("rb") as plain, os.fdopen(handle, "wb") as file:
        file.write(MAGIC + salt)
        for number, (piece, is_last) in enumerate(pieces(plain, PIECE)):
            file.write(made.encrypt(number.to_bytes(12, "big"), piece, b"last" if is_last else b""))
        file.flush()
        os.fsync(file.fileno())


def unseal(source: Path, target: Path, key: str) -> None:
    """Write the plain form of a sealed file; raises BadInput when the key is another or the file was changed."""
    with source.open("rb") as file:
        file.read(len(MAGIC))
        made = cipher(key, file.read(SALT_BYTES))
        handle = os.open(target, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        with os.fdopen(handle, "wb") as plain:
            for number, (piece, is_last) in enumerate(pieces(file, PIECE + TAG_BYTES)):
                try:
                    plain.write(made.decrypt(number.to_bytes(12, "big"), piece, b"last" if is_last else b""))
                except InvalidTag:
                    raise BadInput(
                        f"{source} cannot be opened: REMINDERS_BACKUP_KEY is not the one it was made with, "
                        "or the file was changed or cut short."
                    ) from None


def pieces(file: BinaryIO, size: int) -> Iterator[tuple[bytes, bool]]:
    """Yield a file in pieces, each with whether it is the last; an empty file is one empty piece."""
    piece = file.read(size)
    while True:
        following = file.read(size)
        yield piece, not following
        if not following:
            return
        piece = following
