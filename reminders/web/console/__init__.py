"""The console's pages, a module a page. Each handler opens its own transaction; words are in templates."""

from reminders.web.console import client, home, sign_in, today

ROUTERS = (home.router, sign_in.router, today.router, client.router)
