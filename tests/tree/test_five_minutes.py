import os
import re
import shlex
import subprocess
import sys
from pathlib import Path

from tests.tree.sources import ROOT

README = (ROOT / "README.md").read_text(encoding="utf-8")
SECTION = README[README.index("## Your own clinic") : README.index("### Columns of the file")]


def blocks(kind: str) -> list[str]:
    """The code blocks of one kind in the five minutes, without their indent."""
    found = re.findall(rf"^   ```{kind}\n(.*?)^   ```", SECTION, re.MULTILINE | re.DOTALL)
    return [re.sub(r"^   ", "", block, flags=re.MULTILINE) for block in found]


def test_the_five_minutes_of_the_readme_go_as_written(tmp_path: Path) -> None:
    """Each command as a reader types it, in a folder of its own, with no other setting."""
    env = {name: value for name, value in os.environ.items() if not name.startswith(("REMINDERS_", "TWILIO_"))}
    (clients,) = blocks("csv")
    (tmp_path / "clients.csv").write_text(clients, encoding="utf-8")
    said: dict[str, str] = {}
    for line in "".join(blocks("sh")).splitlines():
        words = shlex.split(line)
        if words[0] == "export":
            name, _, value = words[1].partition("=")
            env[name] = value
        elif words[0] == "reminders":
            ran = [sys.executable, "-m", "reminders", *words[1:]]
            done = subprocess.run(ran, cwd=tmp_path, env=env, capture_output=True, text=True)
            assert done.returncode == 0, f"{line}\n{done.stderr}"
            said[" ".join(words[1:])] = done.stdout

    joined = "\n".join(said.values())
    assert "first session 2027-03-03" in joined
    assert re.search(r"2027-03-03 +done +all +2 +10 +3", joined)
    assert re.search(r"1 +1 +urgent +fall_or_injury +open", joined)
    digest = said["digest --therapist ben@example.org --week 2027-W09"]
    assert "Ana Ruiz (client 1)" in digest
    assert "Di Nash" not in digest
    assert len([line for line in said if line.startswith("tick")]) == 4
