"""The calls that a page's Markdown can make; each gives HTML."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from urllib.parse import urlencode

from calc.catalogue import CALCULATORS
from site_assets.build.book_index import index_of_sections, index_of_words
from site_assets.build.by_edition import by_edition, section
from site_assets.build.checks import checks_html, exercise_html, notes_html
from site_assets.build.edition_changes import edition_changes_html
from site_assets.build.figure import figure
from site_assets.build.figures import changes_list, figures_table, sources_table
from site_assets.build.form import form_html
from site_assets.build.glossary import glossary_html, words_of_form
from site_assets.build.kit import Kit
from site_assets.build.page_data import PageDataError, page_data, title_of
from site_assets.build.scene_figure import scene_html
from site_assets.diagrams import drawing
from site_assets.render.answer import mark_html, result_html, text


@dataclass(frozen=True)
class PageParts:
    """The calls of one page, "parts/bonding" or "index"; `kit_url` leads from the page to the kit."""

    page: str
    kit_url: str
    kit: Kit

    @property
    def to_top(self) -> str:
        """What leads from the page to the top folder."""
        return "../" * self.page.count("/")

    def calls(self) -> dict[str, Callable[..., str]]:
        """Give every call by the name Markdown uses."""
        return {
            "calculator": self.calculator,
            "calculators_list": calculators_list,
            "pages_list": pages_list,
            "case": self.case,
            "example": example,
            "section": section,
            "figure": figure,
            "practice": lambda: mark_html("practice"),
            "unverified": lambda: mark_html("memory"),
            "checks": lambda: checks_html(page_data(self.page), self.to_top),
            "notes": lambda: notes_html(page_data(self.page), self.to_top),
            "exercise": lambda: exercise_html(page_data(self.page), self.to_top),
            "drawing": drawing,
            "glossary": glossary_html,
            "index_of_sections": index_of_sections,
            "index_of_words": index_of_words,
            "edition_changes": edition_changes_html,
            "scene": scene_html,
            "figures_table": figures_table,
            "sources_table": sources_table,
            "changes_list": changes_list,
        }

    def calculator(self, slug: str) -> str:
        """Give the form of a calculator and the place for its answer."""
        asked = CALCULATORS[slug]
        return form_html(asked, self.kit.for_scripts(self.kit_url)) + words_of_form(asked, self.to_top)

    def case(self, slug: str, words: str, **inputs: object) -> str:
        """Give a link to a calculator with these inputs. Raises: PageDataError, when it cannot read them."""
        given = {name: str(value) for name, value in inputs.items()}
        result = CALCULATORS[slug](**given)
        if result.outcome == "fix":
            told = "; ".join(f"{each.field}: {each.words}" for each in result.fix)
            raise PageDataError(f"{self.page}: {slug} cannot read {given}: {told}")
        return f'<a href="{text(f"{self.to_top}calculators/{slug}.html?{urlencode(given)}")}">{text(words)}</a>'


def calculators_list(*slugs: str) -> str:
    """Give a Markdown list of calculators to press: their names, pages and purposes."""
    named = [CALCULATORS[slug] for slug in slugs]
    return to_press(f"- [{each.name}](calculators/{each.slug}.md)<br>{each.purpose}" for each in named)


def pages_list(*listed: str) -> str:
    """Give a Markdown list of pages to press, by their names: for a page in the top folder."""
    return to_press((f"- [{title_of(page)}]({page}.md)" for page in listed), "to-press names")


def to_press(rows: Iterable[str], kind: str = "to-press") -> str:
    """Give the rows of a Markdown list as a list whose rows are wide enough for a glove."""
    return f'<div class="{kind}" markdown>\n\n{"\n".join(rows)}\n\n</div>'


def example(slug: str) -> str:
    """Give a calculator's worked example, computed now, in every edition."""
    calculator = CALCULATORS[slug]

    def shown(edition: str) -> str:
        return result_html(calculator(**(dict(calculator.example) | {"edition": edition})), actions=False)

    return f'<div class="example">{by_edition(shown, element="div")}</div>'
