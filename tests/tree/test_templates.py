from pathlib import Path

import pytest

from reminders.core.languages import LANGUAGES
from reminders.core.words import VOCABULARIES
from tests.tree.sources import ROOT

TEMPLATES = ROOT / "templates"
# Folders with a folder, or a file, for each language.
BY_FOLDER = [path for path in sorted(TEMPLATES.iterdir()) if (path / "en").is_dir()]
BY_FILE = [path for path in sorted(TEMPLATES.iterdir()) if list(path.glob("en.*"))]
OTHERS = [language for language in LANGUAGES if language != "en"]


def test_the_reader_has_words_in_every_language() -> None:
    assert tuple(VOCABULARIES) == LANGUAGES


def names(folder: Path) -> set[str]:
    return {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("folder", BY_FOLDER, ids=lambda path: path.name)
def test_every_template_is_written_in_every_language(folder: Path, language: str) -> None:
    assert names(folder / language) == names(folder / "en")


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("folder", BY_FILE, ids=lambda path: path.name)
def test_every_list_of_words_is_written_in_every_language(folder: Path, language: str) -> None:
    assert [path for path in folder.glob("en.*") if not path.with_stem(language).is_file()] == []


def test_texts_and_mails_are_among_what_was_looked_at() -> None:
    assert {"texts", "emails", "exports"} <= {path.name for path in BY_FOLDER}


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_text_of_ours_begins_with_the_bare_word_stop(language: str) -> None:
    """It draws the answer "stop", which ends the reminders."""
    begin = {
        path.name: path.read_text(encoding="utf-8").lstrip().lower()
        for path in TEMPLATES.glob(f"texts/{language}/*.txt")
    }
    assert [
        name for name, text in begin.items() if text.startswith(("stop ", "stop.", "stop,", "stop:", "stop\n"))
    ] == []
    assert len(begin) > 20
