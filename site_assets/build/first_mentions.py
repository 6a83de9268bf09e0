"""First mentions: where a page's running text first uses a term, the word leads to its meaning.

It works on the Markdown of a page whose calls are filled, so that no generator has to know of it.
"""

from __future__ import annotations

import re
from functools import cache

from site_assets.build.glossary import Term, terms
from site_assets.render.answer import text

# Words are explained where they stand in running text, never inside these, nor in the folded names of columns.
HEADINGS = {"h1", "h2", "h3", "h4"}
NOT_EXPLAINED_IN = HEADINGS | {"a", "svg", "code", "button", "summary", "label", "legend", "form", "dt", "th"} | {
    "details.columns"
}
NOT_EXPLAINED_CLASS, COLUMNS = "also-called", "columns"
EXPLAINED_IN = {"p", "li", "td", "dd"}
EXPLAINED_ON_A_PAGE = 12
FORM, SCENE = "<form ", "data-scene"
ROOMS_EXPLAINED = ("parts", "places", "calculators")
# Inside these, unless they are marked so, text is HTML already: only what stands in a paragraph runs.
BLOCKS = {"aside", "blockquote", "details", "div", "dl", "figure", "nav", "ol", "p", "section", "table", "ul"}
HOLDS_MARKDOWN = "markdown"
_KINDS = {NOT_EXPLAINED_CLASS: NOT_EXPLAINED_CLASS, f'class="{COLUMNS}"': COLUMNS, HOLDS_MARKDOWN: HOLDS_MARKDOWN}
_PIECES = re.compile(
    r"(</?[a-zA-Z][^>]*>"  # an HTML tag
    r"|`[^`\n]+`"  # code
    r"|\[[^\]]*\]\([^)]*\)"  # a link and its words
    r"|\{[^}\n]*\}"  # attributes
    r"|^\#{1,6} .*$"  # a heading
    r'|^!!! [^"\n]*'  # what begins a note, up to its title
    r"|^.+\n(?=:   |\|[ :|-]+\|$)"  # what a list defines, the head of a table
    r")",
    re.MULTILINE,
)


def with_first_mentions_explained(page: str, markdown: str) -> str:
    """Return a page's Markdown, where the first mention of a term in running text leads to its meaning.

    Ahead of a calculator's form nothing is linked, unless a drawing to press comes first: whoever goes by the keyboard
    is at the first field the sooner.
    """
    room = page.partition("/")[0]
    if room not in ROOMS_EXPLAINED:
        return markdown
    ahead, form, rest = markdown.partition(FORM)
    if room == "calculators" and form and SCENE not in ahead:
        return ahead + _explained_in(page, form + rest)
    return _explained_in(page, markdown)


def _explained_in(page: str, markdown: str) -> str:
    to_top = "../" * page.count("/")
    left = {_lowered(each.term): each for each in terms() if each.page != page}
    inside: list[str] = []
    pieces = _PIECES.split(markdown)
    explained = 0
    # Every second piece is one of those that never run.
    for place, piece in enumerate(pieces):
        if place % 2 == 1:
            _follow(piece, inside)
        elif piece.strip() and _runs(inside):
            pieces[place], found = _explained(piece, left, to_top, EXPLAINED_ON_A_PAGE - explained)
            explained += found
    return "".join(pieces)


def _runs(inside: list[str]) -> bool:
    """Tell whether text inside these elements is running text that may explain itself."""
    blocks = {each.removesuffix(f".{NOT_EXPLAINED_CLASS}") for each in inside} & BLOCKS
    return not NOT_EXPLAINED_IN & set(inside) and (bool(EXPLAINED_IN & set(inside)) or not blocks)


def _explained(words: str, left: dict[str, Term], to_top: str, most: int) -> tuple[str, int]:
    found = 0

    def linked(match: re.Match[str]) -> str:
        nonlocal found
        term = left.get(_lowered(match[0])) or left.get(_lowered(match[0]).removesuffix("s"))
        if term is None or found >= most:
            return match[0]
        left.pop(_lowered(term.term))
        found += 1
        return f'<a class="term" href="{to_top}glossary.html#{term.anchor}" title="{text(term.meaning)}">{match[0]}</a>'

    return _pattern().sub(linked, words), found


def _follow(tag: str, inside: list[str]) -> None:
    name = re.match(r"</?([a-zA-Z0-9]+)", tag)
    if not name or tag.endswith("/>") or name[1].lower() in {"br", "img", "input", "hr", "link", "meta"}:
        return
    if tag.startswith("</"):
        while inside and inside.pop().partition(".")[0] != name[1].lower():
            pass
    else:
        kind = next((kind for written, kind in _KINDS.items() if written in tag), "")
        inside.append(f"{name[1].lower()}.{kind}".removesuffix("."))


@cache
def _pattern() -> re.Pattern[str]:
    longest_first = sorted((each.term for each in terms()), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})s?\b", re.IGNORECASE)


def _lowered(words: str) -> str:
    return " ".join(words.lower().split())


