"""Our own style sheet, script and icon. Their addresses change with their content, so browsers may keep them."""

from fastapi import APIRouter
from starlette.responses import FileResponse, Response

from reminders.errors import NotFound
from reminders.texts_folder import templates_folder

router = APIRouter(include_in_schema=False)

KINDS = {"css": "text/css; charset=utf-8", "js": "text/javascript; charset=utf-8", "svg": "image/svg+xml"}
FILES = {path.name: path for path in sorted((templates_folder() / "static").glob("*")) if path.suffix[1:] in KINDS}


@router.get("/static/{name}")
def static_file(name: str) -> Response:
    """Give one of our files."""
    path = FILES.get(name)
    if path is None:
        raise NotFound("There is no such file.")
    return FileResponse(
        path, media_type=KINDS[path.suffix[1:]], headers={"cache-control": "public, max-age=31536000, immutable"}
    )


@router.get("/favicon.ico")
def icon() -> Response:
    """Give the icon to browsers that ask for it by its old name."""
    return static_file("icon.svg")
