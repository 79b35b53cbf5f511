import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.inbound.mail_html import html_text

PAGES = {
    "paragraphs are lines": ("<p>done</p><p>pain 3</p>", "done\n\npain 3"),
    "line breaks are lines": ("<div>done<br>pain&nbsp;3 &amp; more</div>", "done\npain 3 & more"),
    "what is not shown is not read": (
        "<head><title>x</title><style>p{}</style></head><body>Y3<script>1</script>",
        "Y3",
    ),
    "quotes get their mark": (
        "I fell<blockquote>A sit<br>B push<blockquote>old</blockquote></blockquote>",
        "I fell\n> A sit\n> B push\n> > old",
    ),
    "answers between quotes have none": (
        "<blockquote>A sit</blockquote>did 8<blockquote>B push</blockquote>",
        "> A sit\ndid 8\n> B push",
    ),
    "words in one line stay in one line": ("<b>pain</b> <i>3</i>\n at the end", "pain 3 at the end"),
    "table cells are kept apart": ("<table><tr><td>A</td><td>10</td></tr></table>", "A\n10"),
    "tags that nobody closed": ("<div><p>done<blockquote>ours", "done\n> ours"),
}


@pytest.mark.parametrize(("html", "expected"), PAGES.values(), ids=PAGES)
def test_the_words_of_a_page_are_read_line_by_line(html: str, expected: str) -> None:
    assert html_text(html).lstrip("\n") == expected


@given(st.text(alphabet="<>/abp=\"' &;!-blockquote", max_size=300))
def test_no_page_is_too_broken(html: str) -> None:
    assert isinstance(html_text(html), str)
