"""The JSON Schemas in the built site: one for each calculator, as the command line prints it, at a published path."""

import json
import tomllib
from pathlib import Path

import pytest

from calc import CALCULATORS
from calc.json_schema import calculator_schema
from site_assets.build.precache import saved_paths
from site_assets.build.schemas import schema_path
from tests.site.pages import SITE

PUBLISHED = Path(__file__).parents[2] / "site_assets" / "published" / "schemas.toml"


@pytest.mark.parametrize("slug", CALCULATORS)
def test_the_site_holds_the_schema_of_every_calculator(slug):
    text = (SITE / schema_path(slug)).read_text(encoding="utf-8")
    assert json.loads(text) == calculator_schema(CALCULATORS[slug])


def test_every_schema_is_published_and_every_published_schema_still_stands():
    published = tomllib.loads(PUBLISHED.read_text(encoding="utf-8"))["schema"]
    assert published == [schema_path(slug) for slug in CALCULATORS]
    assert {path.relative_to(SITE).as_posix() for path in (SITE / "schema").iterdir()} == set(published)


def test_no_schema_is_saved_for_offline_and_every_page_tells_where_its_own_is():
    assert not [path for path in saved_paths(SITE) if path.startswith("schema/")]
    for slug in CALCULATORS:
        page = (SITE / "calculators" / f"{slug}.html").read_text(encoding="utf-8")
        assert f"<code>{schema_path(slug)}</code>" in page
