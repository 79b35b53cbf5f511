"""Where the words are: inside the installed package, or beside it in a checkout."""

from pathlib import Path


def templates_folder() -> Path:
    """Return the folder of all templates."""
    packed = Path(__file__).parent / "_templates"
    return packed if packed.is_dir() else Path(__file__).parent.parent / "templates"
