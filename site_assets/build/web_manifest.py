"""Writes what lets a device install the handbook: a web app manifest, and the mark as icons in several sizes.

Every address in it starts from its own, so it holds wherever the site stands.
"""

from __future__ import annotations

import json
import re
from pathlib import Path

from calc.data_file import Data
from calc.messages import message
from site_assets.build.icon_image import icon_image
from site_assets.build.settings import Settings

FILE = "handbook.webmanifest"
ICONS = "icons"  # not in the kit: a device that installed the handbook looks for them at the addresses it was told
ASSETS = Path(__file__).parent.parent
# Name, pixels, how much of the image the mark takes, and what a device may do with it.
SIZES = (
    ("icon-192.png", 192, 1.0, "any"),
    ("icon-512.png", 512, 1.0, "any"),
    ("icon-maskable-192.png", 192, 0.8, "maskable"),  # a device cuts off all but a circle of 0.8 of the width
    ("icon-maskable-512.png", 512, 0.8, "maskable"),
)
TOUCH_ICON = ("icon-180.png", 180, 1.0)  # iPhones read no manifest for it
# Where a press on the installed icon leads, most urgent first.
SHORTCUTS = (
    (message("Someone feels a shock"), "index.html#someone-feels-a-shock"),
    (message("Search"), "index.html?q="),
    (message("Size the main bonding jumper"), "calculators/main-bonding-jumper.html"),
    (message("Size the equipment grounding conductor"), "calculators/equipment-grounding-conductor.html"),
)


def write_manifest(site: Path, settings: Settings) -> None:
    """Write the manifest and its icons into a site."""
    (site / ICONS).mkdir(exist_ok=True)
    mark = (ASSETS / "icons" / "mark.svg").read_text(encoding="utf-8")
    for name, size, share in (TOUCH_ICON, *(told[:3] for told in SIZES)):
        (site / ICONS / name).write_bytes(icon_image(mark, size, share))
    (site / FILE).write_text(json.dumps(manifest(settings), ensure_ascii=False, indent=1) + "\n", encoding="utf-8")


def manifest(settings: Settings) -> Data:
    """Return the manifest. Its addresses start from the folder it stands in."""
    paper = ground_color()
    return {
        "name": settings.name,
        "short_name": str(message("Bonding")),
        "description": settings.description,
        "lang": "en",
        "dir": "ltr",
        "start_url": "index.html",
        "scope": "./",
        "display": "standalone",
        "background_color": paper,
        "theme_color": paper,
        "icons": [
            {"src": f"{ICONS}/{name}", "sizes": f"{size}x{size}", "type": "image/png", "purpose": purpose}
            for name, size, _, purpose in SIZES
        ],
        "shortcuts": [{"name": str(name), "url": url} for name, url in SHORTCUTS],
    }


def ground_color() -> str:
    """Return the color of the header on every page, from the styles."""
    styles = (ASSETS / "styles" / "tokens.css").read_text(encoding="utf-8")
    found = re.search(r"--paper: (#[0-9a-f]{6});", styles)
    if found is None:
        raise ValueError("tokens.css states no --paper")
    return found[1]
