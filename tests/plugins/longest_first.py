"""What takes long starts first, so that no worker is left with minutes of work when the others are done.

Tests go to the workers a file at a time; by itself pytest-xdist begins with the files that have most tests, and the
longest proofs have few.
"""

import pytest

LONGEST = (
    "tests/model/",
    "tests/chaos/test_hearing.py",
    "tests/web/test_browser.py",
    "tests/chaos/",
    "tests/tree/test_five_minutes.py",
    "tests/web/test_speed.py",
    "tests/web/test_api_fuzz.py",
    "tests/commands/test_ten_weeks.py",
    "tests/tree/test_wheel.py",
    "tests/web/",
    "tests/flows/",
)


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    items.sort(key=lambda item: place_of(item.nodeid))  # a file's own tests keep their order


def place_of(name: str) -> int:
    """Return where a test stands in the list, those that are not in it last."""
    return next((place for place, start in enumerate(LONGEST) if name.startswith(start)), len(LONGEST))
