"""The calls that a page's Markdown can make; each gives HTML."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from urllib.parse import urlencode

from calc.address import page_address
from calc.messages import message
from calc.registry import CALCULATORS
from site_assets.build.at_a_glance import at_a_glance_html
from site_assets.build.book_index import index_of_sections, index_of_spanish, index_of_words
from site_assets.build.by_edition import by_edition, section
from site_assets.build.checks import checks_html, exercise_html, notes_html, worked_answer_html
from site_assets.build.edition_changes import edition_changes_html
from site_assets.build.form import form_html
from site_assets.build.glossary import glossary_html, words_of_form
from site_assets.build.hazard_data import CALCULATOR, CHECKS, DRAWING, hazards_of
from site_assets.build.hazards import hazards_count, hazards_html
from site_assets.build.list_filter import list_filter_html
from site_assets.build.notices import notices_html
from site_assets.build.page_data import ROOMS, PageDataError, page_data, title_of
from site_assets.build.rule_value import figure, figure_with_section
from site_assets.build.rule_values_page import changes_list, figures_table, sources_table
from site_assets.build.runtime_list import runtime_of_page
from site_assets.build.scene_svg import scene_html
from site_assets.build.search_page import search_form
from site_assets.diagrams import drawing
from site_assets.render.answer import result_html
from site_assets.render.marks import mark_html, mark_with_words_html
from site_assets.render.text import text

# Without it no other bond can open a breaker.
FIRST_CHECKED = "parts/main-bonding-jumper"


@dataclass(frozen=True)
class PageParts:
    """The calls of one page, "parts/bonding" or "index"; `menu` is every page in order."""

    page: str
    menu: tuple[str, ...]

    @property
    def to_top(self) -> str:
        """What leads from the page to the top folder."""
        return "../" * self.page.count("/")

    def calls(self) -> dict[str, Callable[..., str]]:
        """Return every call by the name Markdown uses."""
        return {
            "calculator": self.calculator,
            "at_a_glance": self.at_a_glance,
            "calculators_list": calculators_list,
            "pages_list": self.pages_list,
            "every_check": self.every_check,
            "every_exercise": self.every_exercise,
            "case": self.case,
            "example": example,
            "section": section,
            "figure": figure,
            "figure_with_section": figure_with_section,
            "practice": lambda: mark_with_words_html("practice"),
            "unverified": lambda: mark_html("memory"),
            "checks": self.checks,
            "notes": lambda: notes_html(page_data(self.page), self.to_top),
            "exercise": lambda: exercise_html(page_data(self.page), self.to_top),
            "drawing": drawing_with_its_hazards,
            "glossary": glossary_html,
            "index_of_sections": index_of_sections,
            "index_of_spanish": index_of_spanish,
            "index_of_words": index_of_words,
            "edition_changes": edition_changes_html,
            "scene": scene_html,
            "search": search_form,
            "figures_table": figures_table,
            "sources_table": sources_table,
            "changes_list": changes_list,
            "hazards": hazards_html,
            "hazards_count": hazards_count,
            "list_filter": lambda: list_filter_html(self.page),
            "notices": lambda: notices_html(self.to_top),
        }

    def calculator(self, slug: str) -> str:
        """Return the form of a calculator and the place for its answer. Raises: HazardError, when it has no hazards."""
        hazards_of(CALCULATOR, slug)
        asked = CALCULATORS[slug]
        return form_html(asked, runtime_of_page(self.page, self.to_top)) + words_of_form(asked, self.to_top)

    def at_a_glance(self, slug: str) -> str:
        """Return the situations of a calculator with their answers. Raises: PageDataError, when one has none."""
        return at_a_glance_html(slug, self.to_top)

    def checks(self) -> str:
        """Return the checks of the page. Raises: HazardError, when its list has no hazards."""
        hazards_of(CHECKS, self.page)
        return checks_html(page_data(self.page), self.to_top)

    def case(self, slug: str, words: str, **inputs: object) -> str:
        """Return a link to a calculator with these inputs. Raises: PageDataError, when it cannot read them."""
        given = {name: str(value) for name, value in inputs.items()}
        result = CALCULATORS[slug](**given)
        if result.outcome == "fix":
            told = "; ".join(f"{each.field}: {each.words}" for each in result.fix)
            raise PageDataError(f"{self.page}: {slug} cannot read {given}: {told}")
        address = self.to_top + page_address(f"{slug}?{urlencode(given)}")
        return f'<a class="case" href="{text(address)}">{text(words)}</a>'

    def pages_list(self, room: str) -> str:
        """Return a Markdown list of the pages of a room to press, by their names, in the order of the menu."""
        return to_press((f"- [{title_of(page)}]({page}.md)" for page in self.of_room(room)), "to-press names")

    def every_check(self) -> str:
        """Return every check as a link, by page, the main bonding jumper's first."""
        listed = sorted((page for room in ROOMS for page in self.of_room(room)), key=lambda page: page != FIRST_CHECKED)
        return "\n\n".join(
            f'## [{title_of(page)}]({page}.md)\n\n<div class="to-tick" markdown>\n\n'
            + "\n".join(f"1. [{check.name}]({page}.md#check-{check.id})" for check in page_data(page).checks)
            + "\n\n</div>"
            for page in listed
        )

    def every_exercise(self) -> str:
        """Return every exercise with its worked answer, by page; on paper the answers come last."""
        listed = [page for room in ROOMS for page in self.of_room(room) if page_data(page).exercise]
        asked = "\n\n".join(f"## {title_of(page)}\n\n{exercise_html(page_data(page), self.to_top)}" for page in listed)
        answers = "".join(f"<h3>{title_of(page)}</h3>{worked_answer_html(page_data(page))}" for page in listed)
        where = text(message("The worked answers are on the last pages."))
        return (
            f'<p class="on-paper">{where}</p>\n\n{asked}\n\n'
            f'<section class="on-paper answers-last"><h2>{text(message("Worked answers"))}</h2>{answers}</section>'
        )

    def of_room(self, room: str) -> list[str]:
        """Return the pages of a room in the order of the menu."""
        return [page for page in self.menu if page.startswith(f"{room}/")]


def drawing_with_its_hazards(slug: str) -> str:
    """Return a drawing as a figure. Raises: HazardError, when it has no hazards."""
    hazards_of(DRAWING, slug)
    return drawing(slug)


def calculators_list(*slugs: str) -> str:
    """Return a Markdown list of calculators to press: their titles, pages and purposes."""
    named = [CALCULATORS[slug] for slug in slugs]
    return to_press(
        f"- [{title_of(f'calculators/{each.slug}')}](calculators/{each.slug}.md)<br>{each.purpose}" for each in named
    )


def to_press(rows: Iterable[str], kind: str = "to-press") -> str:
    """Return the rows of a Markdown list as a list whose rows are wide enough for a glove."""
    return f'<div class="{kind}" markdown>\n\n{"\n".join(rows)}\n\n</div>'


def example(slug: str) -> str:
    """Return a calculator's worked example, computed now, in every edition."""
    calculator = CALCULATORS[slug]

    def shown(edition: str) -> str:
        return result_html(calculator(**(dict(calculator.example) | {"edition": edition})), actions=False)

    return f'<div class="example">{by_edition(shown, element="div")}</div>'
