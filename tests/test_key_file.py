import stat
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from reminders.errors import BadInput
from reminders.settings import Settings
from reminders.settings.key_file import signing_keys

KEY, NEW_KEY = "kq0Zr7wV2mXc9LbT4nPd8sHg", "Jt5Yh1uQe6AoRf3iWz7xCv0N"


def test_the_key_of_a_database_is_made_once_for_its_owner_alone(tmp_path: Path) -> None:
    settings = Settings.from_env({"REMINDERS_DATABASE_URL": f"sqlite:///{tmp_path}/clinic.db"})
    first = signing_keys(settings)
    file = tmp_path / "clinic.db.key"
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert signing_keys(settings) == first
    assert len(first) == 1
    assert len(first[0]) >= 32
    assert [path.name for path in tmp_path.iterdir()] == ["clinic.db.key"]


def test_many_that_start_at_once_share_one_key(tmp_path: Path) -> None:
    settings = Settings(database_url=f"sqlite:///{tmp_path}/clinic.db")
    with ThreadPoolExecutor(8) as hands:
        keys = set(hands.map(lambda _: signing_keys(settings), range(32)))
    assert len(keys) == 1
    assert [path.name for path in tmp_path.iterdir()] == ["clinic.db.key"]


def test_a_damaged_or_unreachable_key_file_is_named(tmp_path: Path) -> None:
    settings = Settings(database_url=f"sqlite:///{tmp_path}/clinic.db")
    (tmp_path / "clinic.db.key").write_text("short\n")
    with pytest.raises(BadInput, match=r"clinic\.db\.key"):
        signing_keys(settings)
    with pytest.raises(BadInput, match="REMINDERS_SECRET_KEY"):
        signing_keys(Settings(database_url=f"sqlite:///{tmp_path}/no/folder.db"))


def test_a_given_key_needs_no_file(tmp_path: Path) -> None:
    settings = Settings(database_url=f"sqlite:///{tmp_path}/clinic.db", secret_keys=(NEW_KEY, KEY))
    assert signing_keys(settings) == (NEW_KEY, KEY)
    assert list(tmp_path.iterdir()) == []
