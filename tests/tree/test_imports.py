import sys
from pathlib import Path

import pytest

from tests.tree.sources import PACKAGE, imported_names, name_of, python_files

# Layer -> the layers of ours that it may name; a layer that is not here fails the test.
TEXTS = {"texts", "texts_exercises", "texts_said", "texts_folder"}
BELOW_FLOWS = {"core", "clock", "errors", "store"} | TEXTS
BELOW_WIRING = BELOW_FLOWS | {"channels", "inbound", "settings", "flows", "exports", "logs"}
MAY_IMPORT: dict[str, set[str]] = {
    "core": {"errors"},
    "errors": set(),
    "clock": {"errors"},
    "settings": {"errors", "core"},
    "texts": {"core", "errors"} | TEXTS,
    "texts_folder": set(),
    "texts_exercises": {"core", "errors"} | TEXTS,
    "texts_said": {"core", "errors"} | TEXTS,
    "logs": set(),
    "memory": set(),
    "store": {"core", "errors"},
    "channels": {"core", "errors", "settings"},
    "inbound": {"core", "errors", "settings"},
    "exports": {"core", "errors"} | TEXTS,
    "flows": BELOW_FLOWS,
    "wiring": BELOW_WIRING,
    "jobs": BELOW_WIRING | {"wiring"},
    "demo": BELOW_WIRING | {"wiring"},
    "web": BELOW_WIRING | {"wiring", "demo"},
    "commands": BELOW_WIRING | {"wiring", "jobs", "demo", "web", "memory"},
    "__main__": {"errors", "commands"},
    "__init__": set(),
}
# The core is pure: none of these reads a clock, a file of the machine's or the network.
PURE_LIBRARIES = {"phonenumbers", "tzdata"}
IMPURE_STANDARD = {
    "asyncio",
    "http",
    "logging",
    "os",
    "random",
    "secrets",
    "socket",
    "sqlite3",
    "subprocess",
    "threading",
    "urllib",
}


def layer_of(path: Path) -> str:
    return path.relative_to(PACKAGE).parts[0].removesuffix(".py")


@pytest.mark.parametrize("path", python_files(PACKAGE), ids=name_of)
def test_imports_run_one_way(path: Path) -> None:
    layer = layer_of(path)
    for name in imported_names(path):
        top, _, rest = name.partition(".")
        if top == "reminders":
            assert rest.split(".")[0] in MAY_IMPORT[layer] | {layer}, f"{layer} may not name {name}"


@pytest.mark.parametrize("path", python_files(PACKAGE / "core"), ids=name_of)
def test_the_core_names_only_pure_libraries(path: Path) -> None:
    allowed = (set(sys.stdlib_module_names) - IMPURE_STANDARD) | PURE_LIBRARIES | {"reminders"}
    assert {name.partition(".")[0] for name in imported_names(path)} <= allowed


def test_every_layer_of_the_table_exists_or_is_a_file() -> None:
    layers = {path.name.removesuffix(".py") for path in PACKAGE.iterdir()} - {"__pycache__", "_templates"}
    assert layers <= set(MAY_IMPORT), "a new layer needs its row"
