"""Chromium takes the handbook for one that can be installed, and its shortcuts lead where they say."""

import pytest
from playwright.sync_api import expect

from site_assets.build.search_page import FIELD, PAGE
from site_assets.build.web_manifest import FILE, ICONS, SHORTCUTS
from tests.site.test_web_manifest import pixels

SMALL = 192
# The mark at this size, as the browser itself draws it: red, green, blue of every pixel.
DRAWN = """async ([address, size]) => {
  const image = new Image(size, size);
  image.src = address;
  await image.decode();
  const canvas = new OffscreenCanvas(size, size).getContext("2d");
  canvas.drawImage(image, 0, 0, size, size);
  return [...canvas.getImageData(0, 0, size, size).data].filter((_, at) => at % 4 < 3);
}"""


def test_the_browser_reads_the_manifest_without_a_complaint(page, site):
    page.goto(f"{site}calculators/main-bonding-jumper.html")
    session = page.context.new_cdp_session(page)
    told = session.send("Page.getAppManifest")
    assert (told["url"], told["errors"]) == (f"{site}{FILE}", [])
    faults = session.send("Page.getInstallabilityErrors")["installabilityErrors"]
    # A window of a test counts as private; nothing else stands in the way.
    assert {fault["errorId"] for fault in faults} <= {"in-incognito"}


def test_the_icon_is_the_mark_as_the_browser_draws_it(page, site, site_folder):
    page.goto(f"{site}index.html")
    mark = page.locator("link[rel=icon]").evaluate("link => link.href")
    expected = page.evaluate(DRAWN, [mark, SMALL])
    rows = pixels((site_folder / ICONS / f"icon-{SMALL}.png").read_bytes())
    drawn = [value for row in rows for pixel in row for value in pixel]
    differences = [abs(one - other) for one, other in zip(expected, drawn, strict=True)]
    assert sum(differences) / len(differences) < 0.5  # of 255; edges are smoothed in another way
    assert sum(difference > 96 for difference in differences) < len(differences) / 2000


@pytest.mark.parametrize("address", [address for _, address in SHORTCUTS])
def test_a_shortcut_leads_to_what_it_names(page, site, address):
    page.goto(f"{site}{address}")
    if address == PAGE:
        expect(page.locator(FIELD)).to_be_focused()
    elif "#" in address:
        expect(page.locator("[id=someone-feels-a-shock]")).to_be_in_viewport()
    else:
        expect(page.locator("form.calculator[data-started]")).to_be_visible()
