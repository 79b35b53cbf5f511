"""Puts the web application together: routers, the guard before them, headers around them. No page is made here."""

from fastapi import Depends, FastAPI

from reminders.web import acknowledge_page, client_page, health, static, unsubscribe, webhooks
from reminders.web.access import guard
from reminders.web.console import ROUTERS
from reminders.web.errors import add_error_pages
from reminders.web.headers import BodyLimit, SafeHeaders
from reminders.web.pages import page_environment
from reminders.wiring import App


def create_app(app: App) -> FastAPI:
    """Return the web application of an App; the framework's own documentation pages are off."""
    web = FastAPI(
        title="Reminders",
        docs_url=None,
        redoc_url=None,
        openapi_url=None,
        redirect_slashes=False,
        dependencies=[Depends(guard)],
    )
    web.state.app = app
    web.state.jinja = page_environment(app.texts.folder)
    links = (client_page.router, acknowledge_page.router, unsubscribe.router)
    for router in (health.router, static.router, webhooks.router, *links, *ROUTERS):
        web.include_router(router)
    add_error_pages(web)
    web.add_middleware(BodyLimit)
    web.add_middleware(SafeHeaders, is_https=app.settings.public_url.startswith("https://"))
    return web
