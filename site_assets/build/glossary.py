"""The one vocabulary: the glossary page, the terms of pages, words of forms."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache

from calc.calculator import Calculator
from calc.data_file import Data
from calc.messages import message
from site_assets.build.page_data import DOCS, PageDataError, in_words, title_of
from site_assets.render.answer import text


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
    """Return every term, sorted. Raises: PageDataError, when one leaves out its meaning or names what is not there."""
    rows = tomllib.loads((DOCS / "glossary.toml").read_text(encoding="utf-8"))["term"]
    given = [_term(row) for row in rows]
    names = {each.term for each in given}
    for each in given:
        if each.page:
            title_of(each.page)
        for other, _ in each.not_same_as:
            if other not in names:
                raise PageDataError(f"glossary.toml: {each.term} is not the same as {other!r}, which has no entry")
    return tuple(sorted(given, key=lambda each: each.term.lower()))


def terms_of(page: str) -> list[Term]:
    """Return the terms that a page explains: what people call its subject, and its Spanish."""
    return [each for each in terms() if each.page == page]


def spanish_html(given: list[Term]) -> str:
    """Return the Spanish of terms, those that were seen in print first; the others are marked as unverified."""
    seen = ", ".join(each.spanish for each in given if each.spanish and each.spanish_seen)
    unseen = ", ".join(each.spanish for each in given if each.spanish and not each.spanish_seen)
    shown = [f'<span lang="es">{text(names)}</span>' for names in (seen, unseen) if names]
    if unseen:
        shown[-1] += f" {text(message('(unverified: have a bilingual electrician look)'))}"
    return "; ".join(shown)


def glossary_html() -> str:
    """Return every term with its meaning, Spanish, slang and what it is not; each can be linked to."""
    letters = sorted({each.term[0].upper() for each in terms()})
    first = {letter: next(each.anchor for each in terms() if each.term[0].upper() == letter) for letter in letters}
    jump = " ".join(f'<a href="#{anchor}">{letter}</a>' for letter, anchor in first.items())
    return f'<p class="letters">{jump}</p><div class="glossary">{"".join(map(_entry, terms()))}</div>'


def words_of_form(calculator: Calculator, to_top: str) -> str:
    """Return links to the terms that the labels and hints of a form use."""
    asked = calculator.fields.values()
    said = " ".join(str(words) for each in asked for words in (each.label, each.hint))
    used = [each for each in terms() if _mention(each.term).search(said)]
    if not used:
        return ""
    links = ", ".join(f'<a href="{to_top}glossary.html#{each.anchor}">{text(each.term)}</a>' for each in used)
    return f'<p class="words-used">{text(message("Terms used here:"))} {links}</p>'


@cache
def _mention(term: str) -> re.Pattern[str]:
    return re.compile(rf"\b{re.escape(term)}s?\b", re.IGNORECASE)


def _term(row: Data) -> Term:
    try:
        others = tuple((each["term"], each["why"]) for each in row.get("not_same_as", ()))
        stated: Data = {**row, "also": tuple(row.get("also", ())), "not_same_as": others}
        return Term(**stated)
    except (TypeError, KeyError) as error:
        named = row.get("term") or row.get("meaning") or row
        raise PageDataError(f"glossary.toml, {named}: {in_words(error)}") from error


def _entry(each: Term) -> str:
    lines = [f"<p>{text(each.meaning)}</p>"]
    if each.also:
        lines.append(f"<p>{text(message('People also say: {names}.', names=', '.join(each.also)))}</p>")
    if each.spanish:
        lines.append(f"<p>{text(message('Spanish:'))} {spanish_html([each])}</p>")
    lines += [
        f'<p>{text(message("Not the same as"))} <a href="#{_anchor(other)}">{text(other)}</a>: {text(why)}</p>'
        for other, why in each.not_same_as
    ]
    if each.page:
        lines.append(
            f'<p class="to-page"><a href="{each.page}.html">'
            f"{text(message('Page: {title}', title=title_of(each.page)))}</a></p>"
        )
    return f'<section><h3 id="{each.anchor}">{text(each.term)}</h3>{"".join(lines)}</section>'


def _anchor(term: str) -> str:
    return next(each.anchor for each in terms() if each.term == term)
