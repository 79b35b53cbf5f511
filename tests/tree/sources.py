"""What the tests of the tree look at: the project's files, and what a Python file imports."""

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
PACKAGE = ROOT / "reminders"
MIGRATIONS = PACKAGE / "store" / "migrations" / "versions"


def python_files(folder: Path) -> list[Path]:
    """Return the Python files under a folder, written by hand."""
    return sorted(path for path in folder.rglob("*.py") if MIGRATIONS not in path.parents)


def name_of(path: Path) -> str:
    """Return a file's path from the top of the project."""
    return str(path.relative_to(ROOT))


def parsed(path: Path) -> ast.Module:
    """Return a Python file's tree."""
    return ast.parse(path.read_text(encoding="utf-8"))


def imported_names(path: Path) -> Iterator[str]:
    """Yield the dotted names that a file imports anywhere, functions included."""
    for node in ast.walk(parsed(path)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.module, f"{path}: imports are absolute"
            yield from (f"{node.module}.{alias.name}" for alias in node.names)
