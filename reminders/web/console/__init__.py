"""The console's pages, a module a page. Each handler opens its own transaction; words are in templates."""

from reminders.web.console import (
    client,
    clinic,
    desk,
    details,
    digest,
    enrol,
    home,
    papers,
    program,
    settings,
    sign_in,
    staff,
    today,
)

ROUTERS = tuple(
    page.router
    for page in (
        *(home, sign_in, settings, today, client, program, digest),
        *(desk, enrol, details, staff, clinic, papers),
    )
)
