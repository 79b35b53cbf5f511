import ast
import re
from pathlib import Path

import pytest

from tests.tree.sources import MIGRATIONS, PACKAGE, ROOT, name_of, parsed, python_files

MOST_LINES_A_FILE = 300
MOST_LINES_A_FUNCTION = 40
BANNED_MODULES = {"utils", "helpers", "manager", "service"}
# Words and exercises are data: a list of them is as long as it needs to be.
DATA = re.compile(r"core/(words/.*|.*_data|.*_words)\.py$")
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "reminders", "templates", "tests", "deploy"}
MADE_BY_TOOLS = re.compile(r"\.|__pycache__$|.*\.egg-info$|.*\.(db|db-wal|db-shm|key|journal)$|dist$|build$")
OURS = python_files(PACKAGE)
ALL = OURS + python_files(ROOT / "tests")


@pytest.mark.parametrize("path", [path for path in ALL if not DATA.search(str(path))], ids=name_of)
def test_a_file_is_short_enough_to_be_read_at_once(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= MOST_LINES_A_FILE


@pytest.mark.parametrize("path", OURS, ids=name_of)
def test_a_function_is_short_enough_to_be_read_at_once(path: Path) -> None:
    long = {
        node.name: node.end_lineno - node.lineno + 1
        for node in ast.walk(parsed(path))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
        and node.end_lineno is not None
        and node.end_lineno - node.lineno >= MOST_LINES_A_FUNCTION
    }
    assert long == {}


@pytest.mark.parametrize("path", OURS, ids=name_of)
def test_a_module_is_named_for_what_it_knows(path: Path) -> None:
    assert path.stem not in BANNED_MODULES


@pytest.mark.parametrize("path", OURS, ids=name_of)
def test_only_the_door_to_the_database_commits(path: Path) -> None:
    if name_of(path) != "reminders/store/db.py":
        commits = [
            node.lineno for node in ast.walk(parsed(path)) if isinstance(node, ast.Attribute) and node.attr == "commit"
        ]
        assert commits == []


@pytest.mark.parametrize("path", [path for path in OURS if path.name != "__init__.py"], ids=name_of)
def test_a_module_says_what_belongs_in_it(path: Path) -> None:
    assert ast.get_docstring(parsed(path)), "a module docstring says what belongs here and what does not"


def test_the_top_level_is_what_it_is_meant_to_be() -> None:
    found = {path.name for path in ROOT.iterdir()}
    assert {name for name in found if not MADE_BY_TOOLS.match(name)} == TOP_LEVEL


def test_there_are_migrations_to_leave_out() -> None:
    assert list(MIGRATIONS.glob("*.py"))
