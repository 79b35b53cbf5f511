"""The demo's pages in a real browser: accessible, no wider than a phone, and a text is written and answered there."""

import warnings
from collections.abc import Iterator
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, sync_playwright

from reminders.demo import building
from reminders.demo.people import PEOPLE
from reminders.flows import deliver
from reminders.web.app import create_app
from reminders.wiring import App, sender_of
from tests.web.live import a_port, served
from tests.web.scene import CHROMIUM
from tests.web.test_browser import AA

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="no Chromium at /usr/bin/chromium: apt-get install chromium"),
]
PATHS = ("/demo", "/demo/sign-in/1", "/demo/phone/1", "/demo/phone/14")


@pytest.fixture
def demo(tmp_path: Path) -> Iterator[App]:
    """A demo clinic on its first morning, its welcomes sent."""
    app = building.build(tmp_path / "demo.db", 8000, PEOPLE[:14], 3, building.begins_at)
    deliver.send_due(sender_of(app, own_clock=True))
    yield app
    app.db.close()


@pytest.fixture
def base(demo: App) -> Iterator[str]:
    """The address at which it is served."""
    with served(create_app(demo), a_port()) as address:
        yield address


@pytest.fixture
def page(base: str) -> Iterator[Page]:
    """A phone's browser without JavaScript of ours; the address is where it starts."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        with sync_playwright() as player:
            browser = player.chromium.launch(executable_path=str(CHROMIUM), args=["--no-sandbox"])
            yield browser.new_context(base_url=base, viewport={"width": 320, "height": 700}).new_page()
            browser.close()


def test_the_demos_pages_are_accessible_and_fit_a_phone(page: Page) -> None:
    odd: dict[str, object] = {}
    for path in PATHS:
        page.goto(path)
        found = [one["id"] for one in Axe().run(page, options=AA).response["violations"]]
        wide = page.evaluate("document.scrollingElement.scrollWidth")
        if found or wide > 320:
            odd[path] = (found, wide)

    assert odd == {}


def test_a_visitor_writes_a_text_and_reads_the_answer(demo: App, page: Page) -> None:
    page.goto("/demo")
    page.get_by_role("link", name="Alma Whitcombe").click()
    page.get_by_label("A text from").fill("All done, pain 2")
    page.get_by_role("button", name="Send").click()
    # A click returns once the page it leads to is asked for, not once it is shown.
    page.get_by_text("An answer is on its way").wait_for(timeout=15000)

    deliver.send_due(sender_of(demo, own_clock=True))
    page.get_by_text("Not right? Reply with the right answer.").wait_for(timeout=15000)

    page.get_by_role("button", name="Go in as Mara Ellingsen").click()
    page.wait_for_url("**/clients/1", timeout=15000)
    assert page.url.endswith("/clients/1")
