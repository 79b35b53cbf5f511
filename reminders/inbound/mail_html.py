"""The words of an HTML mail, for mails that have no plain part. Looks, links and pictures are dropped."""

from html.parser import HTMLParser

BLOCKS = frozenset(
    {"address", "article", "aside", "blockquote", "br", "center", "dd", "div", "dl", "dt", "figure", "footer", "form"}
    | {"h1", "h2", "h3", "h4", "h5", "h6", "header", "hr", "li", "main", "ol", "p", "pre", "section", "table", "td"}
    | {"th", "tr", "ul"}
)
UNSEEN = frozenset({"head", "script", "style", "title", "template"})


class Words(HTMLParser):
    """Gathers lines; what stands in a blockquote gets the mark that plain mails quote with."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.lines: list[str] = []
        self.line: list[str] = []
        self.quotes = 0
        self.unseen = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Begin a new line, a quote or something unseen."""
        if tag in BLOCKS:
            self.end_line(keeps_blank=tag in ("br", "p"))
        self.quotes += tag == "blockquote"
        self.unseen += tag in UNSEEN

    def handle_endtag(self, tag: str) -> None:
        """End it."""
        if tag in BLOCKS:
            self.end_line(keeps_blank=False)
        self.quotes = max(0, self.quotes - (tag == "blockquote"))
        self.unseen = max(0, self.unseen - (tag in UNSEEN))

    def handle_data(self, data: str) -> None:
        """Take words."""
        if not self.unseen:
            self.line.append(data)

    def end_line(self, *, keeps_blank: bool) -> None:
        """Put the line away, with its quote marks."""
        text = " ".join("".join(self.line).split())
        self.line = []
        if text or keeps_blank:
            self.lines.append("> " * self.quotes + text)


def html_text(html: str) -> str:
    """Return the lines of an HTML text, quoted ones marked with `>`."""
    words = Words()
    words.feed(html)
    words.close()
    words.end_line(keeps_blank=False)
    return "\n".join(words.lines).strip()
