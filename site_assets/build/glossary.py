"""The one vocabulary: the glossary page, the terms of pages, words of forms, first mentions that explain themselves."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache

from calc.declare import Calculator
from calc.words import say
from site_assets.build.page_data import DOCS, PageDataError, title_of
from site_assets.render.answer import text

# Words are explained where they stand in running text, never inside these, nor in the folded names of columns.
HEADINGS = {"h1", "h2", "h3", "h4"}
NOT_EXPLAINED_IN = HEADINGS | {"a", "svg", "code", "button", "summary", "label", "legend", "form", "dt", "th"} | {
    "details.columns"
}
NOT_EXPLAINED_CLASSES = re.compile(r"""class="?(also-called|columns)\b""")
EXPLAINED_IN = {"p", "li", "td", "dd"}
EXPLAINED_ON_A_PAGE = 12
ROOMS_EXPLAINED = ("parts", "places", "calculators")


@dataclass(frozen=True)
class Term:
    """One term of the trade: what it means, its Spanish, what people say instead, what it is not.

    `id` is its anchor where the term was called otherwise when links to it were first made.
    """

    term: str
    meaning: str
    spanish: str = ""
    spanish_seen: bool = False
    also: tuple[str, ...] = ()
    not_same_as: tuple[tuple[str, str], ...] = ()
    page: str = ""
    id: str = ""

    @property
    def anchor(self) -> str:
        """Its anchor on the glossary page."""
        return self.id or re.sub(r"[^a-z0-9]+", "-", self.term.lower()).strip("-")


@cache
def terms() -> tuple[Term, ...]:
    """Give every term, sorted. Raises: PageDataError, when one leaves out its meaning or names what is not there."""
    rows = tomllib.loads((DOCS / "glossary.toml").read_text(encoding="utf-8"))["term"]
    try:
        given = [_term(row) for row in rows]
    except (TypeError, KeyError) as error:
        raise PageDataError(f"glossary.toml: {error}") from error
    names = {each.term for each in given}
    for each in given:
        if each.page:
            title_of(each.page)
        for other, _ in each.not_same_as:
            if other not in names:
                raise PageDataError(f"glossary.toml: {each.term} is not the same as {other!r}, which has no entry")
    return tuple(sorted(given, key=lambda each: each.term.lower()))


def terms_of(page: str) -> list[Term]:
    """Give the terms that a page explains: what people call its subject, and its Spanish."""
    return [each for each in terms() if each.page == page]


def spanish_html(given: list[Term]) -> str:
    """Give the Spanish of terms, those that were seen in print first; the others are marked as unverified."""
    seen = ", ".join(each.spanish for each in given if each.spanish and each.spanish_seen)
    unseen = ", ".join(each.spanish for each in given if each.spanish and not each.spanish_seen)
    shown = [f'<span lang="es">{text(names)}</span>' for names in (seen, unseen) if names]
    if unseen:
        shown[-1] += f" {text(say('(unverified: have a bilingual electrician look)'))}"
    return "; ".join(shown)


def glossary_html() -> str:
    """Give every term with its meaning, Spanish, slang and what it is not; each can be linked to."""
    letters = sorted({each.term[0].upper() for each in terms()})
    first = {letter: next(each.anchor for each in terms() if each.term[0].upper() == letter) for letter in letters}
    jump = " ".join(f'<a href="#{anchor}">{letter}</a>' for letter, anchor in first.items())
    return f'<p class="letters">{jump}</p><div class="glossary">{"".join(map(_entry, terms()))}</div>'


def words_of_form(calculator: Calculator, to_top: str) -> str:
    """Give links to the terms that the labels and hints of a form use."""
    asked = calculator.fields.values()
    said = " ".join(str(words) for each in asked for words in (each.label, each.hint))
    used = [each for each in terms() if _mention(each.term).search(said)]
    if not used:
        return ""
    links = ", ".join(f'<a href="{to_top}glossary.html#{each.anchor}">{text(each.term)}</a>' for each in used)
    return f'<p class="words-used">{text(say("Words used here:"))} {links}</p>'


def with_first_mentions_explained(page: str, html: str) -> str:
    """Give a page's HTML, where the first mention of a term in running text leads to its meaning."""
    if page.partition("/")[0] not in ROOMS_EXPLAINED:
        return html
    to_top = "../" * page.count("/")
    left = {_lowered(each.term): each for each in terms() if each.page != page}
    inside: list[str] = []
    pieces = re.split(r"(<[^>]*>)", html)
    explained = 0
    for place, piece in enumerate(pieces):
        if piece.startswith("<"):
            _follow(piece, inside)
        elif piece.strip() and not NOT_EXPLAINED_IN & set(inside) and EXPLAINED_IN & set(inside):
            pieces[place], found = _explained(piece, left, to_top, EXPLAINED_ON_A_PAGE - explained)
            explained += found
    return "".join(pieces)


def _explained(words: str, left: dict[str, Term], to_top: str, most: int) -> tuple[str, int]:
    found = 0

    def linked(match: re.Match) -> str:
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
        marked = NOT_EXPLAINED_CLASSES.search(tag)
        inside.append(f"{name[1].lower()}.{marked[1]}" if marked else name[1].lower())


@cache
def _pattern() -> re.Pattern:
    longest_first = sorted((each.term for each in terms()), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})s?\b", re.IGNORECASE)


@cache
def _mention(term: str) -> re.Pattern:
    return re.compile(rf"\b{re.escape(term)}s?\b", re.IGNORECASE)


def _lowered(words: str) -> str:
    return " ".join(words.lower().split())


def _term(row: dict) -> Term:
    others = tuple((each["term"], each["why"]) for each in row.get("not_same_as", ()))
    return Term(**row | {"also": tuple(row.get("also", ())), "not_same_as": others})


def _entry(each: Term) -> str:
    lines = [f"<p>{text(each.meaning)}</p>"]
    if each.also:
        lines.append(f"<p>{text(say('People also say: {names}.', names=', '.join(each.also)))}</p>")
    if each.spanish:
        lines.append(f"<p>{text(say('Spanish:'))} {spanish_html([each])}</p>")
    lines += [
        f'<p>{text(say("Not the same as"))} <a href="#{_anchor(other)}">{text(other)}</a>: {text(why)}</p>'
        for other, why in each.not_same_as
    ]
    if each.page:
        lines.append(f'<p><a href="{each.page}.html">{text(say("Page: {title}", title=title_of(each.page)))}</a></p>')
    return f'<h3 id="{each.anchor}">{text(each.term)}</h3>{"".join(lines)}'


def _anchor(term: str) -> str:
    return next(each.anchor for each in terms() if each.term == term)
