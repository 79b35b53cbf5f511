"""`reminders read` as it is called: one text, many rows, what it says to bad input, and how little it needs."""

import json
import subprocess
import sys
import time
from pathlib import Path

import pytest

from reminders.__main__ import main

SESSION = "sit to stand 2x10; tandem stance 2x20 sec each side"


def test_a_text_gives_the_contracts_fields_in_order(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["read", "--session", SESSION, "--json", "done 2x10 pain 3"]) == 0

    reading = json.loads(capsys.readouterr().out)
    assert list(reading) == [
        "intent", "completed", "sets", "reps", "by_exercise", "pain", "red_flags", "danger", "concerns", "correction",
        "when", "choice", "before", "after", "where", "about", "ask",
    ]  # fmt: skip
    assert (reading["intent"], reading["sets"], reading["reps"], reading["pain"]) == ("report", 2, 10, 3)


def test_why_tells_the_words_behind_each_field(capsys: pytest.CaptureFixture[str]) -> None:
    main(["read", "--why", "--json", "I fell yesterday, knee is a 4"])

    assert "fell" in json.loads(capsys.readouterr().out)["why"]["fall_or_injury"]


def test_why_tells_the_words_behind_a_sign_that_no_rule_names(capsys: pytest.CaptureFixture[str]) -> None:
    main(["read", "--why", "--json", "my sight closed in like a tunnel and I had to grab the counter"])

    assert "tunnel" in json.loads(capsys.readouterr().out)["why"]["faint_or_dizzy"]


def test_rows_are_read_one_a_line_and_a_bad_one_says_why(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rows = tmp_path / "rows.jsonl"
    rows.write_text(
        '{"id": 1, "text": "done", "lang": "en", "session": "sit to stand 2x10", "asked": null}\n'
        '\n{"id": 2, "text": "3", "asked": "pain"}\nnot json\n{"id": 3, "text": "done", "lang": "fr"}\n{"id": 4}\n',
        encoding="utf-8",
    )

    assert main(["read", "--jsonl", str(rows)]) == 0

    first, second, third, fourth, fifth = (json.loads(line) for line in capsys.readouterr().out.splitlines())
    assert first["reading"]["completed"] == "all"
    assert second["reading"]["pain"] == 3
    assert third["error"].startswith("row:")
    assert fourth["error"].startswith("lang:")
    assert fifth["error"].startswith("text:")


BAD = {
    "an unknown language": (["--lang", "fr", "done"], "lang:"),
    "an unknown question": (["--asked", "weather", "done"], "asked:"),
    "an unknown holder": (["--holder", "dog", "done"], "holder:"),
    "a session without a dose": (["--session", "sit to stand", "done"], "session:"),
    "a date that is none": (["--today", "soon", "done"], "today:"),
    "no text": ([], "text:"),
    "a file that is not there": (["--jsonl", "nowhere.jsonl"], "jsonl:"),
    "text and file": (["--jsonl", "-", "done"], "text:"),
}


@pytest.mark.parametrize(("words", "begins"), BAD.values(), ids=BAD)
def test_bad_input_names_the_field(words: list[str], begins: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["read", *words]) == 2

    said = capsys.readouterr().err.strip()
    assert said.startswith(begins)
    assert "\n" not in said


def test_it_starts_in_under_a_second_without_database_or_web() -> None:
    code = (
        "import sys; from reminders.__main__ import main; main(['read', 'Y3']);"
        "print([name for name in ('sqlmodel', 'sqlalchemy', 'fastapi', 'uvicorn') if name in sys.modules])"
    )
    started = time.perf_counter()
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)

    assert done.stdout.splitlines()[-1] == "[]"
    assert time.perf_counter() - started < 5  # under one on a free machine; tests share this one
