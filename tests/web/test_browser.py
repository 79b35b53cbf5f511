"""Every page in a real browser: no accessibility violation at WCAG 2.2 AA, no sideways scrolling, no console error."""

import re
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from reminders.store.db import Database
from reminders.web.access_rules import CONSOLE
from tests.clinic import World, a_world
from tests.conftest import NOW
from tests.web.busy import Busy, a_busy_clinic
from tests.web.desk import Desk, a_desk
from tests.web.live import a_port, served

CHROMIUM = Path("/usr/bin/chromium")
ARGUMENTS = [
    *("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
]
AA = {"runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"]}}
EMAILS = {
    "therapist": "ben@example.org",
    "admin": "fay@example.org",
    "lead": "dee@example.org",
    "records": "records@example.org",
    "assistant": "assistant@example.org",
}
# What no page of the console shows by itself: a redirect, and what a form leads to.
NOT_PAGES = ("/", "/enrol/{client_id}/status")

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="no Chromium at /usr/bin/chromium: apt-get install chromium"),
]


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


@pytest.fixture(scope="module")
def scene(sqlite_template: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Scene]:
    """Serve a busy clinic and open a browser."""
    path = tmp_path_factory.mktemp("browser") / "reminders.db"
    shutil.copy(sqlite_template, path)
    db = Database(f"sqlite:///{path}")
    world = a_world(db, NOW)
    busy = a_busy_clinic(world)
    desk = a_desk(world)
    with served(desk.web, a_port()) as base, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        yield Scene(base, desk, busy, browser)
        browser.close()
    db.close()


def world_of(scene: Scene) -> World:
    return scene.desk.world


def opened(context: BrowserContext, address: str) -> tuple[Page, list[str]]:
    """Open a page; return it with everything that the console complained of."""
    page = context.new_page()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text) if message.type in ("error", "warning") else None)
    page.on("pageerror", lambda error: said.append(str(error)))
    page.goto(address)
    return page, said


def is_expected(said: str) -> bool:
    """The browser itself reports a 404 or 410 page as a failed resource."""
    return "404" in said or "410" in said


def each_as(scene: Scene, width: int, *, loose: bool = False) -> Iterator[tuple[str, BrowserContext]]:
    """Yield every page's path with a window of whoever sees it."""
    windows: dict[str | None, BrowserContext] = {}
    for path, email in scene.pages():
        if email not in windows:
            windows[email] = scene.context(email, width, loose=loose)
        yield path, windows[email]
    for window in windows.values():
        window.close()


@pytest.mark.parametrize("width", [360, 1280])
def test_no_page_has_a_violation_of_wcag_2_2_aa_or_an_error_in_the_console(scene: Scene, width: int) -> None:
    odd: dict[str, list[str]] = {}
    count = 0
    for path, window in each_as(scene, width):
        page, said = opened(window, scene.base + path)
        for fold in page.locator("details:not([open]) > summary").all():
            fold.evaluate("one => { one.parentElement.open = true; }")
        found = Axe().run(page, options=AA).response["violations"]
        wrong = [f"{one['id']}: {one['nodes'][0]['html'][:120]}" for one in found]
        wrong += [words for words in said if not is_expected(words)]
        if wrong:
            odd[path] = wrong
        count += 1
        page.close()
    assert odd == {}
    assert count > 35


def test_nothing_scrolls_sideways_at_320_pixels(scene: Scene) -> None:
    odd = {}
    for path, window in each_as(scene, 320):
        page, _ = opened(window, scene.base + path)
        wide = page.evaluate("document.scrollingElement.scrollWidth")
        if wide > 320:
            odd[path] = wide
        page.close()
    assert odd == {}


def test_text_at_200_percent_loses_nothing(scene: Scene) -> None:
    odd = {}
    for path, window in each_as(scene, 1280, loose=True):
        page, _ = opened(window, scene.base + path)
        page.add_style_tag(content="html { font-size: 225% !important; }")
        wide = page.evaluate("document.scrollingElement.scrollWidth")
        cut = page.evaluate(
            """() => [...document.querySelectorAll('main *, header *')].filter(one => {
                const style = getComputedStyle(one);
                const clips = ['hidden', 'clip'].includes(style.overflowX) && !one.matches('.unseen, .unseen *');
                return clips && one.scrollWidth > one.clientWidth + 1 && !one.closest('svg, select, .wide');
            }).length"""
        )
        if wide > 1280 or cut:
            odd[path] = (wide, cut)
        page.close()
    assert odd == {}


def test_every_target_of_the_clients_page_is_44_pixels_high(scene: Scene) -> None:
    window = scene.context(None, 360)
    page, _ = opened(window, scene.base + scene.busy.client_page)
    small = page.evaluate(
        """() => [...document.querySelectorAll('label.choice, button, a:not(.skip), textarea')]
            .map(one => [one.textContent.trim().slice(0, 30), one.getBoundingClientRect().height])
            .filter(([, height]) => height < 44)"""
    )
    window.close()
    assert small == []


@pytest.mark.parametrize("width", [360, 1280])
def test_colour_is_never_alone_and_focus_is_seen(scene: Scene, width: int) -> None:
    window = scene.context(EMAILS["therapist"], width)
    page, _ = opened(window, f"{scene.base}/today")
    for level in page.locator(".level").all():
        assert re.fullmatch(r"[▲●○]\s*(urgent|today|routine)", level.inner_text().strip())
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the page"
    outline = page.evaluate("getComputedStyle(document.activeElement).outlineWidth")
    window.close()
    assert outline == "3px"
