import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests.tree.sources import PACKAGE, ROOT


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel as pyproject builds it, without the network."""
    folder = tmp_path_factory.mktemp("wheel")
    build = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder)]
    subprocess.run(build, cwd=ROOT, check=True, capture_output=True)
    (made,) = folder.glob("*.whl")
    return made


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder into which the wheel was opened."""
    folder = tmp_path_factory.mktemp("installed")
    with zipfile.ZipFile(wheel) as opened:
        opened.extractall(folder)
    return folder


def run(installed: Path, elsewhere: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """Run the wheel's own program from a folder that is not the checkout's."""
    kept = {name: value for name, value in os.environ.items() if not name.startswith(("REMINDERS_", "TWILIO_"))}
    return subprocess.run(
        [sys.executable, *words],
        cwd=elsewhere,
        env=kept | {"PYTHONPATH": str(installed)},
        capture_output=True,
        text=True,
    )


def names_under(folder: Path) -> set[str]:
    return {
        str(path.relative_to(folder))
        for path in folder.rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }


def test_the_wheel_carries_every_template(installed: Path) -> None:
    assert names_under(installed / "reminders" / "_templates") == names_under(ROOT / "templates")


def test_the_wheel_carries_every_module_and_migration(installed: Path) -> None:
    packed = {name for name in names_under(installed / "reminders") if not name.startswith("_templates/")}
    assert packed == names_under(PACKAGE)


def test_the_wheel_leaves_out_tests_and_settings(wheel: Path) -> None:
    tops = {name.partition("/")[0] for name in zipfile.ZipFile(wheel).namelist()}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"reminders"}


def test_the_wheel_runs_from_any_folder(installed: Path, tmp_path: Path) -> None:
    place = run(
        installed, tmp_path, "-c", "import reminders.texts as t; print(t.__file__, len(t.Texts().names('es')) > 5)"
    )
    made = run(installed, tmp_path, "-m", "reminders", "db", "upgrade")
    heard = run(installed, tmp_path, "-m", "reminders", "read", "done 2x10 pain 3")

    assert place.stdout.split() == [str(installed / "reminders" / "texts.py"), "True"]
    assert made.returncode == 0, made.stderr
    assert (tmp_path / "reminders.db").is_file()
    assert '"pain": 3' in heard.stdout, heard.stderr
