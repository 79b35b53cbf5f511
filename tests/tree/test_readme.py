import re

import pytest

from reminders.__main__ import COMMANDS
from reminders.core.enrolment import COLUMNS
from reminders.core.library_limits import PRECAUTIONS
from reminders.core.scope import STOP_WORDS
from reminders.exports import FORMATS
from reminders.settings import NAMES
from tests.tree.sources import ROOT

README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_is_named(name: str) -> None:
    assert re.search(rf"^\| `reminders {name}\b", README, re.MULTILINE)


@pytest.mark.parametrize("name", NAMES)
def test_every_setting_is_named(name: str) -> None:
    assert f"`{name}`" in README


@pytest.mark.parametrize("word", sorted(STOP_WORDS))
def test_every_word_that_ends_the_texts_is_named(word: str) -> None:
    assert f"`{word.upper()}`" in README


def test_every_column_precaution_and_export_format_is_named() -> None:
    assert ",".join(COLUMNS) in README
    assert [name for name in PRECAUTIONS if name not in README.replace("\n", " ")] == []
    assert [name for name in FORMATS if f"`{name}`" not in README and f"`--format {name}`" not in README] == []


def test_no_command_is_named_that_does_not_exist() -> None:
    assert set(re.findall(r"`reminders ([a-z]+)", README)) <= set(COMMANDS)


def test_the_readme_opens_with_the_job_then_what_it_is_not_then_two_commands() -> None:
    headings = re.findall(r"^#+ (.+)$", README, re.MULTILINE)
    assert headings[:3] == ["Reminders", "What it is not", "Two commands"]


def test_every_decision_has_a_number_of_its_own() -> None:
    numbers = [int(number) for number in re.findall(r"^### D-(\d+) ", DEVELOPERS, re.MULTILINE)]
    assert numbers == list(range(1, len(numbers) + 1))
    assert numbers
