"""Five files for each slug: code, page, test, cases and link of every calculator."""

import inspect
import tomllib
from pathlib import Path

import pytest

from calc import CALCULATORS

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_calculator_has_its_five_files(slug):
    calculator = CALCULATORS[slug]
    module = slug.replace("-", "_")
    code = Path(inspect.getsourcefile(calculator.function)).relative_to(ROOT)
    assert code.parts[0] == "calc" and code.name == f"{module}.py"
    package = Path(*code.parts[1:-1])
    assert (ROOT / "docs" / "calculators" / f"{slug}.md").is_file()
    assert (ROOT / "tests" / "calc" / package / f"test_{module}.py").is_file()
    assert (ROOT / "tests" / "cases" / package / f"{module}.toml").is_file()
    published = tomllib.loads((ROOT / "site_assets" / "published" / f"{slug}.toml").read_text(encoding="utf-8"))
    assert [row["slug"] for row in published["calculator"]] == [slug]
    assert calculator.function.__name__ == module


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_calculators_page_embeds_its_form_and_its_example(slug):
    page = (ROOT / "docs" / "calculators" / f"{slug}.md").read_text(encoding="utf-8")
    assert f'{{{{ calculator("{slug}") }}}}' in page and f'{{{{ example("{slug}") }}}}' in page
