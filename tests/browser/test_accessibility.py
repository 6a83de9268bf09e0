"""Every built page is accessible: axe finds nothing, in light, dark and sun, on a phone and a desktop.

Each run looks at half of the pages in one of the six ways, in each way at others; `--long` at all in all.
"""

import pytest
from playwright.sync_api import expect

from site_assets.setup.paths import NODE_MODULES
from tests.browser.conftest import PHONE, context_for_reading
from tests.browser.test_every_page import LINKED, PATHS

WIDTHS = {"phone": PHONE, "desktop": {"width": 1280, "height": 800}}
WAYS = [(width, scheme) for width in WIDTHS for scheme in ("light", "dark", "sun")]
SLICES = 2 * len(WAYS)
AXE = NODE_MODULES / "axe-core" / "axe.min.js"


@pytest.mark.slices(SLICES)
@pytest.mark.parametrize(("width", "scheme"), WAYS)
def test_axe_finds_nothing_on_any_page(browser, site, width, scheme, slice_number):
    context = context_for_reading(
        browser, viewport=WIDTHS[width], color_scheme="dark" if scheme == "dark" else "light", bypass_csp=True
    )
    page = context.new_page()
    if scheme == "sun":
        page.goto(site + "index.html")
        page.click(".bar-sun")
    found = []
    for path in [*PATHS, LINKED][(slice_number + 2 * WAYS.index((width, scheme))) % SLICES :: SLICES]:
        page.goto(site + path)
        if path == LINKED:
            expect(page.locator("[data-result] .answer")).to_be_visible(timeout=60_000)
        page.add_script_tag(path=AXE)
        report = page.evaluate("axe.run(document, { resultTypes: ['violations'] })")
        found += [(path, each["id"], node["target"]) for each in report["violations"] for node in each["nodes"]]
    context.close()
    assert found == []
