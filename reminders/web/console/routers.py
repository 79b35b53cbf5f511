"""The console's routers. A new page: its module here, its line in `access_rules`."""

from reminders.web.console import (
    client,
    clinic,
    desk,
    details,
    digest,
    enrol,
    home,
    levels,
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
        *(home, sign_in, settings, today, client, program, digest, levels),
        *(desk, enrol, details, staff, clinic, papers),
    )
)
