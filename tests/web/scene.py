"""A served clinic with a browser in front of it, for the tests that look and act as people do."""

import re
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Browser, BrowserContext, Page

from reminders.web.access_rules import CONSOLE
from tests.web.busy import Busy
from tests.web.desk import Desk

CHROMIUM = Path("/usr/bin/chromium")
ARGUMENTS = [
    *("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
]
EMAILS = {
    "therapist": "ben@example.org",
    "admin": "fay@example.org",
    "lead": "dee@example.org",
    "records": "records@example.org",
    "assistant": "assistant@example.org",
}
# What no page of the console shows by itself: a redirect, and what a form leads to.
NOT_PAGES = ("/", "/enrol/{client_id}/status")


@dataclass
class Scene:
    """A served clinic with everything in it, and a browser."""

    base: str
    desk: Desk
    busy: Busy
    browser: Browser

    def context(
        self, email: str | None, width: int = 1280, *, scripts: bool = True, loose: bool = False
    ) -> BrowserContext:
        """Return a fresh browser window of a width, signed in or not; `loose` lets a test add its own style."""
        made = self.browser.new_context(
            viewport={"width": width, "height": 900}, java_script_enabled=scripts, bypass_csp=loose
        )
        made.set_default_timeout(10_000)
        if email is not None:
            token = self.desk.signed_in(email).client.cookies["console"]
            made.add_cookies([{"name": "console", "value": token, "url": self.base}])
        return made

    def pages(self) -> list[tuple[str, str | None]]:
        """Return every page there is with who sees it: (path, e-mail or None)."""
        outside = ["/sign-in", self.busy.sign_in_page, self.busy.alert_page, "/nothing-here"]
        outside += [self.busy.client_page, self.busy.spanish_page, f"{self.busy.client_page}?lang=es"]
        found: list[tuple[str, str | None]] = [(path, None) for path in outside]
        for rule, access in CONSOLE.items():
            method, path = rule.split(" ", 1)
            if method == "GET" and path not in NOT_PAGES:
                filled = re.sub(r"\{(\w+)\}", lambda part: str(self.busy.ids[part[1]]), path)
                found += [(filled, EMAILS[role]) for role in access.roles if role in ("therapist", "admin")]
                if not {"therapist", "admin"} & set(access.roles):
                    found.append((filled, EMAILS[access.roles[0]]))
        return found


def opened(context: BrowserContext, address: str) -> tuple[Page, list[str]]:
    """Open a page; return it with everything that the console complained of."""
    page = context.new_page()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text) if message.type in ("error", "warning") else None)
    page.on("pageerror", lambda error: said.append(str(error)))
    page.goto(address)
    return page, said
