"""The calls that a page's Markdown can make; each gives HTML."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from calc.catalogue import CALCULATORS
from site_assets.build.by_edition import by_edition, section
from site_assets.build.figures import changes_list, figures_table, sources_table
from site_assets.build.form import form_html
from site_assets.build.kit import Kit
from site_assets.diagrams import drawing
from site_assets.render.answer import result_html


@dataclass(frozen=True)
class PageParts:
    """The calls of one page; `kit_url` leads from the page to the kit."""

    kit_url: str
    kit: Kit

    def calls(self) -> dict[str, Callable[..., str]]:
        """Give every call by the name Markdown uses."""
        return {
            "calculator": self.calculator,
            "calculators_list": calculators_list,
            "example": example,
            "section": section,
            "drawing": drawing,
            "figures_table": figures_table,
            "sources_table": sources_table,
            "changes_list": changes_list,
        }

    def calculator(self, slug: str) -> str:
        """Give the form of a calculator and the place for its answer."""
        return form_html(CALCULATORS[slug], self.kit.for_scripts(self.kit_url))


def calculators_list(*slugs: str) -> str:
    """Give a Markdown list of calculators to press: their names, pages and purposes."""
    named = [CALCULATORS[slug] for slug in slugs]
    rows = "\n".join(f"- [{each.name}](calculators/{each.slug}.md)<br>{each.purpose}" for each in named)
    return f'<div class="to-press" markdown>\n\n{rows}\n\n</div>'


def example(slug: str) -> str:
    """Give a calculator's worked example, computed now, in every edition."""
    calculator = CALCULATORS[slug]

    def shown(edition: str) -> str:
        return result_html(calculator(**(dict(calculator.example) | {"edition": edition})), actions=False)

    return f'<div class="example">{by_edition(shown, element="div")}</div>'
