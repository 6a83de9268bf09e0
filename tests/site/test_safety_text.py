"""The safety text as its templates and styles have it, before any page is built: nothing is missing, on paper too."""

import re
from pathlib import Path

import jinja2
import pytest

ASSETS = Path(__file__).parents[2] / "site_assets"
CAUTIONS = ["Water makes small voltages dangerous.", "Only the utility can make it dead."]
COMMANDS = (
    "qualified persons",
    "treat every part as live",
    "test for absence of voltage",
    "de-energize, lock out and tag out",
    "known live source before and again after",
    "never open a grounding or bonding connection on an energized system",
    "authority having jurisdiction decide",
    "check it against the book",
)


def rendered(name: str) -> str:
    environment = jinja2.Environment(loader=jinja2.FileSystemLoader(ASSETS / "frame"))
    return environment.get_template(name).render(message=lambda words, **_: words, cautions=CAUTIONS)


def test_the_safety_text_gives_every_command():
    told = " ".join(re.sub(r"<[^>]+>", " ", rendered("safety.html")).lower().split())
    assert [command for command in COMMANDS if command not in told] == []


def test_the_line_at_the_top_says_the_three_steps_and_what_never_to_do():
    told = rendered("safety_line.html")
    assert "De-energize, lock out, test for absence of voltage." in told
    assert "Never open a live bond." in told


@pytest.mark.parametrize("name", ["safety.html", "safety_line.html"])
def test_line_and_text_list_the_cautions_of_the_page(name):
    assert [caution for caution in CAUTIONS if caution not in rendered(name)] == []


def test_paper_keeps_the_safety_line_and_the_safety_text():
    hidden = [
        selector.strip()
        for file in sorted((ASSETS / "styles").glob("*.css"))
        for selectors in re.findall(r"([^{}]+)\{[^{}]*display:\s*none[^{}]*\}", file.read_text(encoding="utf-8"))
        for selector in re.sub(r"/\*.*?\*/", "", selectors, flags=re.DOTALL).split(",")
    ]
    assert [each for each in hidden if re.fullmatch(r".*\.(?:safety|safety-line|page-foot)", each)] == []
    assert len(hidden) > 20  # the styles were read
