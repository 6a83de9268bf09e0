"""What a device needs to install the handbook: a manifest that holds under any path, and icons of the right sizes."""

from __future__ import annotations

import json
import re
from io import BytesIO
from urllib.parse import unquote, urljoin, urlsplit

import pytest
from PIL import Image

from site_assets.build.icon_image import icon_image
from site_assets.build.precache import group_of, saved_paths
from site_assets.build.web_manifest import FILE, ICONS
from tests.site.pages import SITE, Page, html_files, ids_of

BELOW = "https://example.org/deep/down/"


def manifest():
    return json.loads((SITE / FILE).read_text(encoding="utf-8"))


def pixels(data):
    """Return the rows of a PNG, each pixel as red, green and blue; none is seen through."""
    with Image.open(BytesIO(data)) as image:
        assert image.format == "PNG"
        assert image.getextrema()[3] == (255, 255)
        seen, width = list(image.convert("RGB").get_flattened_data()), image.width
    return [seen[start : start + width] for start in range(0, len(seen), width)]


def test_every_address_starts_from_its_own_and_leads_to_a_page_or_an_icon():
    told = manifest()
    shortcuts, icons = [each["url"] for each in told["shortcuts"]], [each["src"] for each in told["icons"]]
    for address in (told["start_url"], *shortcuts, *icons):
        assert urljoin(BELOW + FILE, address).startswith(BELOW)
        parts = urlsplit(address)
        file = SITE / unquote(parts.path)
        assert file.is_file(), address
        assert not parts.fragment or parts.fragment in ids_of(file), address
    assert urljoin(BELOW + FILE, told["scope"]) == BELOW


def test_it_says_what_a_device_asks_for_before_it_installs():
    told = manifest()
    assert told["name"] == "Bonding field handbook"
    assert len(told["short_name"]) <= 12
    assert told["display"] == "standalone"
    for color in ("background_color", "theme_color"):
        assert re.fullmatch("#[0-9a-f]{6}", told[color])
    assert {(icon["sizes"], icon["purpose"]) for icon in told["icons"]} >= {
        ("192x192", "any"), ("512x512", "any"), ("512x512", "maskable"),
    }  # fmt: skip
    assert [each["url"] for each in told["shortcuts"]][:2] == ["index.html#someone-feels-a-shock", "search.html"]


def test_every_page_leads_to_it_and_to_the_icon_of_phones_that_read_none():
    for path in html_files():
        links = {each["rel"]: each["href"] for tag, each in Page(path).elements if tag == "link" and "rel" in each}
        to_top = "../" * (len(path.relative_to(SITE).parts) - 1)
        assert links["manifest"] == f"{to_top}{FILE}", path
        assert links["apple-touch-icon"] == f"{to_top}{ICONS}/icon-180.png", path


def test_it_is_saved_with_the_pages():
    saved = [path for path in saved_paths(SITE) if path == FILE or path.startswith(f"{ICONS}/")]
    assert len(saved) == 6
    assert {group_of(path) for path in saved} == {"reading"}


def test_an_icon_has_the_size_that_is_told_and_a_maskable_one_keeps_its_mark_inside_the_circle():
    for icon in manifest()["icons"]:
        drawn = pixels((SITE / icon["src"]).read_bytes())
        size = int(icon["sizes"].partition("x")[0])
        assert [len(drawn), *{len(row) for row in drawn}] == [size, size]
        ground, middle = drawn[0][0], (size - 1) / 2
        farthest = max(
            ((across - middle) ** 2 + (down - middle) ** 2) ** 0.5
            for down, row in enumerate(drawn)
            for across, pixel in enumerate(row)
            if pixel != ground
        )
        assert farthest > 0.3 * size, "there is a mark"
        if icon["purpose"] == "maskable":
            assert farthest <= 0.4 * size  # Web App Manifest: a circle of 40 % of the width is never cut


def svg(content):
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">{content}</svg>'


GROUND = '<rect width="10" height="10" fill="#000000"/>'


def test_a_stroke_covers_what_it_should_and_its_edge_by_how_much_of_a_pixel_it_takes():
    # 3 wide around x = 5: from 3.5 to 6.5. The first row ends the line half way down: y from 0.5 on.
    drawn = pixels(icon_image(svg(f'{GROUND}<path d="M5 .5v9.5" stroke="#fff" stroke-width="3"/>'), 10))
    assert [red for red, _, _ in drawn[5]] == pytest.approx([0, 0, 0, 128, 255, 255, 128, 0, 0, 0], abs=2)
    assert [red for red, _, _ in drawn[0]] == pytest.approx([0, 0, 0, 64, 128, 128, 64, 0, 0, 0], abs=2)


def test_a_smaller_share_leaves_the_color_of_the_ground_around_it():
    drawn = pixels(icon_image(svg(f'{GROUND}<rect x="0" y="0" width="10" height="10" fill="#fff"/>'), 10, 0.8))
    assert [red for red, _, _ in drawn[5]] == [0, *[255] * 8, 0]


@pytest.mark.parametrize("mark", ["no drawing", svg(""), svg(GROUND).replace("0 0 10 10", "0 0 10 20")])
def test_what_is_no_square_drawing_on_a_ground_stops_the_build(mark):
    with pytest.raises(ValueError, match="the mark is"):
        icon_image(mark, 10)
