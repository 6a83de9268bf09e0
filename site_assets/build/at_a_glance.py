"""Common situations with their answers, made at build: right in the page, in each edition, before any script runs.

`docs/calculators/main-bonding-jumper.toml` holds those of the page beside it: situations of our own choosing. What they
are answered comes from `calc`; no figure stands in the data.
"""

from __future__ import annotations

import tomllib
from collections import Counter
from dataclasses import dataclass
from functools import cache
from html import escape
from urllib.parse import urlencode

from calc import permalink
from calc.address import page_address
from calc.answer import Answer
from calc.calculator import Result
from calc.editions import EDITIONS
from calc.found.declared import FOUND
from calc.known import known
from calc.messages import message
from calc.registry import CALCULATORS
from site_assets.build.by_edition import by_edition
from site_assets.build.page_data import DOCS, PageDataError
from site_assets.render.marks import key_html, mark_html
from site_assets.render.text import text, unbroken

MAX_SITUATIONS = 10
# What a link says beside a case: which of two links are the same case does not hang on it.
BESIDE_THE_CASE = ("edition", "said", "assumed", FOUND)


@dataclass(frozen=True)
class Situation:
    """One situation: its words, and the inputs of the calculator."""

    words: str
    inputs: dict[str, str]


@dataclass(frozen=True)
class Glance:
    """The situations of a page, and what the column of their words is called."""

    slug: str
    heading: str
    situations: tuple[Situation, ...]

    def results(self, edition: str) -> tuple[Result, ...]:
        """Return what each situation is answered in an edition. Raises: PageDataError for one without an answer."""
        calculator = CALCULATORS[self.slug]
        results = tuple(calculator(edition=edition, **each.inputs) for each in self.situations)
        for situation, result in zip(self.situations, results, strict=True):
            if result.outcome != "answer":
                raise PageDataError(f"{self.slug}: “{situation.words}” has no answer in {edition}: {result.outcome}")
        return results


@cache
def glance_of(slug: str) -> Glance:
    """Return the situations beside a calculator's page. Raises: PageDataError."""
    data = tomllib.loads((DOCS / "calculators" / f"{slug}.toml").read_text(encoding="utf-8"))
    situations = tuple(Situation(**each) for each in data["situation"])
    if not 0 < len(situations) <= MAX_SITUATIONS:
        raise PageDataError(f"{slug}: {len(situations)} situations, from 1 to {MAX_SITUATIONS} are wanted")
    return Glance(slug, data["heading"], situations)


def at_a_glance_html(slug: str, to_top: str) -> str:
    """Return the situations of a page with their answers in each edition; each opens in the form.

    to_top: leads from the page to the top folder. Raises: PageDataError.
    """
    glance = glance_of(slug)
    results = {edition: glance.results(edition) for edition in EDITIONS}
    usual = _usual_detail(results)
    rows = "".join(
        _row(glance, place, {edition: each[place] for edition, each in results.items()}, usual, to_top)
        for place in range(len(glance.situations))
    )
    caption = by_edition(lambda edition: text(message("NEC {edition}", edition=edition)))
    caption = f"{text(message('Unless its row says otherwise: {detail}.', detail=usual))} {caption}"
    answer = CALCULATORS[slug].name
    key = by_edition(
        lambda edition: key_html("memory" for each in results[edition] if each.trace.unverified()), element="div"
    )
    heads = f'<th scope="col">{text(glance.heading)}</th><th scope="col">{text(answer)}</th>'
    return (
        f'<div class="at-a-glance" data-glance="{" ".join(BESIDE_THE_CASE)}"><table class="glance">'
        f"<caption>{caption}</caption><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>{key}</div>"
    )


def _usual_detail(results: dict[str, tuple[Result, ...]]) -> str:
    """Return what stands beside most sizes: "copper wire or larger"."""
    details = Counter(str(each.answered.detail) for of_edition in results.values() for each in of_edition)
    return details.most_common(1)[0][0]


def _row(glance: Glance, place: int, results: dict[str, Result], usual: str, to_top: str) -> str:
    situation = glance.situations[place]
    case = permalink.case(next(iter(results.values()))).partition("?")[2]
    address = to_top + page_address(f"{glance.slug}?{urlencode(situation.inputs)}")
    cell = by_edition(lambda edition: _cell(results[edition], usual))
    return (
        f'<tr data-case="{escape(case)}"><th scope="row"><a href="{escape(address)}">{unbroken(text(situation.words))}'
        f"</a></th><td>{cell}</td></tr>"
    )


def _cell(result: Result, usual: str) -> str:
    answer: Answer = known(result.answer)
    detail = "" if str(answer.detail) == usual else f" <small>{unbroken(text(answer.detail))}</small>"
    mark = f"\u00a0{mark_html('memory')}" if result.trace.unverified() else ""
    return f"<b>{unbroken(text(answer.headline))}</b>{mark}{detail}"
