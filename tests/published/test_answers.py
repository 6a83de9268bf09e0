"""Every published link is answered as it says, and shows the names that programs, tables and links use."""

from functools import cache

import pytest

from calc import CALCULATORS, EDITIONS
from calc.batch import column_of, value_columns
from calc.calculator import Result
from calc.json_output import linked_answer
from tests.published.registry import LISTS, answers, names_in, opened, swept

PAIRS = [(slug, edition) for slug in CALCULATORS for edition in EDITIONS]


def not_stated(slug: str, found: dict[str, set[str]]) -> str:
    """Say which names the registry lacks, "" when it lacks none."""
    lacking = {kind: sorted(found[kind] - set(answers(slug)[kind])) for kind in LISTS}
    return "; ".join(
        f"add {names} to `{kind}` in site_assets/published/{slug}.toml, as `python -m tests.published {slug}` does"
        for kind, names in lacking.items()
        if names
    )


@cache
def opened_links(slug: str) -> dict[str, Result]:
    """Return what each published link of a calculator is answered now."""
    return {link: opened(slug, link) for link in answers(slug)["links"]}


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_published_link_is_answered_as_it_says_or_a_recorded_change_explains_it(slug):
    assert len(opened_links(slug)) >= len(EDITIONS)
    for link, result in opened_links(slug).items():
        earlier = linked_answer(result)
        assert earlier is None or earlier["changes"], (
            f"{slug}?{link}: answered {earlier['now']!r} now; state the change in calc/rules/changes.toml"
        )


@pytest.mark.parametrize("slug", CALCULATORS)
def test_the_published_links_show_every_published_name_and_no_other(slug):
    """A name that is gone is kept: under `formerly` in its declaration, or as it was in the answer's values."""
    found = names_in(opened_links(slug).values())
    gone = {kind: sorted(set(answers(slug)[kind]) - found[kind]) for kind in LISTS}
    assert not any(gone.values()), f"published and gone: {gone}"
    assert not not_stated(slug, found)


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_published_column_is_that_of_a_value_of_the_answer(slug):
    columns = {column_of(CALCULATORS[slug], value) for value in answers(slug)["values"]}
    gone = set(answers(slug)["columns"]) - columns
    assert not gone, f"published and gone: {sorted(gone)}"


@pytest.mark.slices(40)
def test_many_inputs_show_no_name_that_is_not_published(slice_number):
    for slug, edition in PAIRS[slice_number::40]:
        assert not not_stated(slug, names_in(swept(slug, [edition])))


@pytest.mark.slices(12)
def test_a_table_has_the_published_columns(slice_number):
    for slug in list(CALCULATORS)[slice_number::12]:
        columns, stated = set(value_columns(CALCULATORS[slug]).values()), set(answers(slug)["columns"])
        assert not stated - columns, f"{slug}: published and gone: {sorted(stated - columns)}"
        assert not columns - stated, f"add {sorted(columns - stated)} to `columns` in site_assets/published/{slug}.toml"
