"""What a device needs to install the handbook: a manifest that holds under any path, and icons of the right sizes."""

from __future__ import annotations

import json
import re
import struct
import zlib
from urllib.parse import unquote, urljoin, urlsplit

import pytest

from site_assets.build.icon_image import IconError, icon_image
from site_assets.build.precache import group_of, saved_paths
from site_assets.build.web_manifest import FILE, ICONS
from tests.site.pages import SITE, Page, html_files, ids_of

BELOW = "https://example.org/deep/down/"


def manifest():
    return json.loads((SITE / FILE).read_text(encoding="utf-8"))


def pixels(data):
    """Return the rows of a PNG without filters, each pixel as red, green and blue."""
    assert data.startswith(b"\x89PNG\r\n\x1a\n")
    chunks, at = {}, 8
    while at < len(data):
        (length,) = struct.unpack(">I", data[at : at + 4])
        name, content = data[at + 4 : at + 8], data[at + 8 : at + 8 + length]
        assert struct.unpack(">I", data[at + 8 + length : at + 12 + length]) == (zlib.crc32(name + content),)
        chunks[name], at = content, at + 12 + length
    width, height, depth, color = struct.unpack(">IIBB", chunks[b"IHDR"][:10])
    assert (depth, color) == (8, 2)
    raw = zlib.decompress(chunks[b"IDAT"])
    rows = [raw[row * (width * 3 + 1) :][: width * 3 + 1] for row in range(height)]
    assert all(row[0] == 0 for row in rows)
    return [[tuple(row[1 + 3 * at : 4 + 3 * at]) for at in range(width)] for row in rows]


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
    assert [red for red, _, _ in drawn[5]] == [0, 0, 0, 128, 255, 255, 128, 0, 0, 0]
    assert [red for red, _, _ in drawn[0]] == [0, 0, 0, 64, 128, 128, 64, 0, 0, 0]


def test_a_circle_has_the_area_of_a_circle():
    drawn = pixels(icon_image(svg(f'{GROUND}<circle cx="5" cy="5" r="4" fill="#ffffff"/>'), 200))
    share = sum(red for row in drawn for red, _, _ in row) / 255 / 200**2
    assert share == pytest.approx(3.14159265 * 16 / 100, rel=0.002)  # pi r^2 of a square of 10


@pytest.mark.parametrize(
    "part",
    [
        '<ellipse cx="1" cy="1"/>',
        '<path d="M0 0Q1 1 2 2" stroke="#fff" stroke-width="1"/>',
        '<path d="M0 0v9" fill="#fff"/>',
    ],
)
def test_a_mark_that_would_be_drawn_wrongly_stops_the_build(part):
    with pytest.raises(IconError):
        icon_image(svg(GROUND + part), 10)
