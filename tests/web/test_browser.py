"""Every page in a real browser: no accessibility violation at WCAG 2.2 AA, no sideways scrolling, no console error."""

import re
from collections.abc import Iterator

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import BrowserContext

from tests.web.scene import CHROMIUM, EMAILS, Scene, opened

AA = {"runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"]}}
pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="no Chromium at /usr/bin/chromium: apt-get install chromium"),
]


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
        page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true")
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
                const scrolls = one.closest('svg, input, select, textarea, .wide');
                return clips && one.scrollWidth > one.clientWidth + 1 && !scrolls;
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
