"""Every page in a real browser: no accessibility violation at WCAG 2.2 AA, no sideways scrolling, no console error."""

import re
from dataclasses import dataclass, field

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import BrowserContext

from tests.web.scene import CHROMIUM, EMAILS, Scene, opened

AA = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"]},
    "resultTypes": ["violations"],
    "preload": False,
}
WIDTH = "document.scrollingElement.scrollWidth"
CUT = """() => [...document.querySelectorAll('main *, header *')].filter(one => {
    const style = getComputedStyle(one);
    const clips = ['hidden', 'clip'].includes(style.overflowX) && !one.matches('.unseen, .unseen *');
    const scrolls = one.closest('svg, input, select, textarea, .wide');
    return clips && one.scrollWidth > one.clientWidth + 1 && !scrolls;
}).length"""
pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="no Chromium at /usr/bin/chromium: apt-get install chromium"),
]


def is_expected(said: str) -> bool:
    """The browser itself reports a 404 or 410 page as a failed resource."""
    return "404" in said or "410" in said


@dataclass
class Seen:
    """What was found wrong on the pages of one width, page by page."""

    count: int = 0
    violations: dict[str, list[str]] = field(default_factory=dict)
    too_wide: dict[str, int] = field(default_factory=dict)
    lost: dict[str, tuple[int, int]] = field(default_factory=dict)


@pytest.fixture(scope="module")
def seen(scene: Scene, request: pytest.FixtureRequest) -> dict[int, Seen]:
    """Open every page once at each width, as whoever sees it; the short form opens it as the first of them, and asks
    the rules, which are the same at both widths, of the narrow one.
    """
    is_long = request.config.getoption("--long")
    with_rules = {360, 1280} if is_long else {360}
    pages = scene.pages() if is_long else list(dict(reversed(scene.pages())).items())
    found = {360: Seen(), 1280: Seen()}
    for width, wrong in found.items():
        windows: dict[str | None, BrowserContext] = {}
        for path, email in pages:
            if email not in windows:
                windows[email] = scene.context(email, width)
            look_at(scene.base, path, windows[email], wrong, with_rules=width in with_rules)
        for window in windows.values():
            window.close()
    return found


def look_at(base: str, path: str, window: BrowserContext, wrong: Seen, *, with_rules: bool) -> None:
    """Note what is wrong with one page: by the rules, at 320 pixels, with letters of twice the size."""
    page, said = opened(window, base + path)
    is_narrow = page.viewport_size is not None and page.viewport_size["width"] < 700
    if is_narrow:
        page.set_viewport_size({"width": 320, "height": 900})
        if (wide := page.evaluate(WIDTH)) > 320:
            wrong.too_wide[path] = wide
        page.set_viewport_size({"width": 360, "height": 900})
    page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true")
    found = Axe().run(page, options=AA).response["violations"] if with_rules else []
    odd = [f"{one['id']}: {one['nodes'][0]['html'][:120]}" for one in found]
    odd += [words for words in said if not is_expected(words)]
    if odd:
        wrong.violations[path] = odd
    if not is_narrow:
        page.evaluate("document.documentElement.style.setProperty('font-size', '225%', 'important')")
        assert page.evaluate("getComputedStyle(document.documentElement).fontSize") == "36px"
        wide, cut = page.evaluate(WIDTH), page.evaluate(CUT)
        if wide > 1280 or cut:
            wrong.lost[path] = (wide, cut)
    wrong.count += 1
    page.close()


@pytest.mark.parametrize("width", [360, 1280])
def test_no_page_has_a_violation_of_wcag_2_2_aa_or_an_error_in_the_console(seen: dict[int, Seen], width: int) -> None:
    assert seen[width].violations == {}
    assert seen[width].count > 25


def test_nothing_scrolls_sideways_at_320_pixels(seen: dict[int, Seen]) -> None:
    assert seen[360].too_wide == {}


def test_text_at_200_percent_loses_nothing(seen: dict[int, Seen]) -> None:
    assert seen[1280].lost == {}


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
