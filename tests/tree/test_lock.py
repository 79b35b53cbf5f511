import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from tests.tree.sources import ROOT

LOCKS = sorted((ROOT / "deploy").glob("requirements*.txt"))
PINNED = re.compile(r"[a-z0-9][a-z0-9.-]*(\[[a-z0-9,-]+\])?==[A-Za-z0-9.!+]+( ; .+)?")


def lines_of(path: Path) -> list[str]:
    return [line for line in path.read_text().splitlines() if line and not line.startswith("#")]


@pytest.mark.parametrize("path", LOCKS, ids=lambda path: path.name)
def test_a_lock_file_holds_pinned_names_and_nothing_else(path: Path) -> None:
    """No option, no index, no address: each machine's own registry is used."""
    assert [line for line in lines_of(path) if not PINNED.fullmatch(line)] == []
    assert "://" not in path.read_text()


@pytest.mark.parametrize(
    ("lock", "extras"),
    [
        ("requirements.txt", []),
        ("requirements-test.txt", ["test"]),
        ("requirements-postgres.txt", ["test", "postgres"]),
    ],
)
def test_what_the_project_asks_for_is_locked_within_its_bounds(lock: str, extras: list[str]) -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    wanted = [*project["dependencies"], *(one for extra in extras for one in project["optional-dependencies"][extra])]
    locked = {canonicalize_name(one.name): one for one in map(Requirement, lines_of(ROOT / "deploy" / lock))}

    for requirement in map(Requirement, wanted):
        pinned = locked[canonicalize_name(requirement.name)]
        (version,) = (spec.version for spec in pinned.specifier)
        assert requirement.specifier.contains(version), requirement


def test_the_locks_agree_with_each_other() -> None:
    base, test, postgres = (
        set(lines_of(ROOT / "deploy" / f"requirements{kind}.txt")) for kind in ("", "-test", "-postgres")
    )
    assert base <= test <= postgres
