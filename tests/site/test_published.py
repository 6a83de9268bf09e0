"""The whole registry over the built site: each page, anchor, rule, parameter and link that was published opens."""

import pytest

from calc import CALCULATORS, permalink
from calc.address import page_address
from calc.rulebook import aliases, changes
from tests.published.anchors import FIGURES, new_anchors, page, rule_anchor, stated_anchors
from tests.published.registry import answers, document, rows
from tests.site.pages import SITE, html_files


def test_every_published_page_and_anchor_still_stands():
    now = {row["path"]: row["moved_to"] for row in rows("page") if "moved_to" in row}
    ids = {path: page(now.get(path, path)).ids for path in stated_anchors()}
    gone = [f"{path}#{each}" for path, anchors in stated_anchors().items() for each in anchors - ids[path]]
    assert gone == [], "keep a heading's anchor with `{ #anchor }` behind its new words, a term's with `id`"


def test_every_built_page_is_published():
    built = {path.relative_to(SITE).as_posix() for path in html_files()}
    now = {row.get("moved_to", row["path"]) for row in rows("page")}
    assert not built - now, f"add a [[page]] for {sorted(built - now)} to a file of site_assets/published"
    assert not now - built


def test_every_anchor_of_a_built_page_is_published():
    new = {path: sorted(anchors) for path, anchors in new_anchors().items()}
    assert not new, f"add to site_assets/published/anchors.toml, as `python -m tests.published` does: {new}"


def test_every_rule_stands_under_its_key_and_under_every_key_it_had():
    assert {rule_anchor(key) for key in [*document("rules")["keys"], *aliases()]} <= page(FIGURES).ids


def test_every_recorded_change_has_its_anchor():
    assert {f"change-{row['id']}" for row in changes()["change"]} <= page("changes.html").ids


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_published_link_opens_a_page_whose_form_takes_each_of_its_parameters(slug):
    """By its name now or by one it had; a choice by its value now or by one it had."""
    fields = CALCULATORS[slug].fields
    path = page_address(slug).removesuffix("?")
    names, values = named(path, "data-field"), named(path, "value")
    for link in answers(slug)["links"]:
        for name, text in permalink.read(link):
            if name not in ("edition", "said"):
                assert name in names, link
                field = fields[CALCULATORS[slug].name_now(name)]
                assert not field.choices or set(text.split(",")) <= values, f"{name}={text}"


def named(path: str, attribute: str) -> set[str]:
    """Return the names that elements of a page have in an attribute, and those they had."""
    elements = [attributes for _, attributes in page(path).elements if attribute in attributes]
    return {name for each in elements for name in (each[attribute], *each.get("data-formerly", "").split())}
