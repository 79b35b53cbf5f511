"""Puts the web application together: routers, the guard before them, headers around them. No page is made here."""

from fastapi import Depends, FastAPI

from reminders.web import acknowledge_page, client_page, demo, health, static, unsubscribe, webhooks
from reminders.web.access import guard
from reminders.web.api.description import WORDS
from reminders.web.api.routers import ROUTERS as FOR_PROGRAMS
from reminders.web.backlog import Backlog
from reminders.web.beside import Beside
from reminders.web.console.routers import ROUTERS as CONSOLE
from reminders.web.errors import add_error_pages
from reminders.web.headers import BodyLimit, SafeHeaders
from reminders.web.pages import page_environment
from reminders.wiring import App

LINKS = (client_page.router, acknowledge_page.router, unsubscribe.router)
MACHINES = (health.router, static.router, webhooks.router)


def create_app(app: App, beside: Beside | None = None) -> FastAPI:
    """Return the web application of an App; the framework's own documentation pages are off.

    `beside` is a process that handles the texts of a crowd, where there is one.
    """
    web = FastAPI(
        title="Reminders",
        description=WORDS,
        version="1",
        docs_url=None,
        redoc_url=None,
        openapi_url=None,
        redirect_slashes=False,
        dependencies=[Depends(guard)],
    )
    web.state.app = app
    web.state.backlog = Backlog(app.db, app.clock, beside)
    web.state.jinja = page_environment(app.texts.folder)
    for router in (*MACHINES, *LINKS, *CONSOLE, *FOR_PROGRAMS):
        web.include_router(router)
    if demo.is_demo(app):
        web.include_router(demo.router)
    add_error_pages(web)
    web.add_middleware(BodyLimit)
    web.add_middleware(SafeHeaders, is_https=app.settings.public_url.startswith("https://"))
    return web
