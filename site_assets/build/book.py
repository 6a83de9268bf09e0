"""Makes one printable file of the whole built handbook: every page as it prints, in the order of the menu."""

from __future__ import annotations

import argparse
import datetime
import io
import os
from html import escape
from pathlib import Path

from playwright.sync_api import Browser, PdfMargins, sync_playwright
from pypdf import PdfReader, PdfWriter
from pypdf.annotations import Link
from pypdf.generic import Fit

from calc.editions import DEFAULT_EDITION, EDITIONS
from calc.messages import message
from site_assets.build.frame import MENU_LINKS
from site_assets.build.serve import Server

BOOK = "handbook.pdf"
MARGINS: PdfMargins = {"top": "11mm", "right": "11mm", "bottom": "17mm", "left": "11mm"}
SAFETY = message(
    "De-energize, lock out, test for absence of voltage. Qualified persons only. The adopted code and the authority "
    "having jurisdiction decide."
)


def write_book(
    site: Path,
    browser: Browser,
    edition: str,
    paper: str = "Letter",
    only: tuple[str, ...] = (),
    target: Path | None = None,
) -> Path:
    """Write the book of a built site in one edition and give its path, next to the pages unless `target` is given.

    only: some pages instead of the whole menu.
    """
    with Server(site) as server:
        context = browser.new_context(service_workers="block")
        page = context.new_page()
        page.goto(server.address)
        named = page.eval_on_selector_all(
            MENU_LINKS,
            "links => links.map((each) => [each.href, each.textContent.trim()])",
        )
        menu = {address.partition("#")[0]: title for address, title in named}
        wanted = {address: title for address, title in menu.items() if not only or path_of(address, server) in only}
        sheets: dict[str, tuple[str, PdfReader]] = {}
        for address, title in wanted.items():
            page.goto(f"{address}?edition={edition}")
            footer = _footer(edition, path_of(address, server))
            made = page.pdf(
                format=paper,
                margin=MARGINS,
                display_header_footer=True,
                header_template="<span></span>",
                footer_template=footer,
            )
            sheets[address] = (title, PdfReader(io.BytesIO(made)))
        context.close()
    target = target or site / BOOK
    _bound(sheets).write(target)
    return target


def path_of(address: str, server: Server) -> str:
    """Return the path of a page inside the handbook; its start page is index.html."""
    return address.removeprefix(server.address).partition("?")[0] or "index.html"


def _footer(edition: str, path: str) -> str:
    made = message(
        "Bonding field handbook · {edition} edition · {day} · {path} · sheet",
        edition=edition,
        day=datetime.date.today(),
        path=path,
    )
    # The footer is a page of its own: no style sheet of ours reaches it.
    return (
        '<div style="width: 100%; margin: 0 11mm; border-top: 0.5pt solid; font: 7pt sans-serif">'
        f'{escape(str(made))} <span class="pageNumber"></span><br>{escape(str(SAFETY))}</div>'
    )


def _bound(sheets: dict[str, tuple[str, PdfReader]]) -> PdfWriter:
    """Bind the sheets, with an outline, and with links that lead to the sheet of a page; others go."""
    writer = PdfWriter()
    first: dict[str, int] = {}
    for address, (title, reader) in sheets.items():
        first[address] = len(writer.pages)
        writer.append(reader, outline_item=title, import_outline=False)
    for number, sheet in enumerate(writer.pages):
        links = [link.get_object() for link in sheet.pop("/Annots", [])]
        for link in links:
            target = first.get(str(link.get("/A", {}).get("/URI", "")).partition("#")[0].partition("?")[0])
            if target is not None:
                writer.add_annotation(number, Link(rect=link["/Rect"], target_page_index=target, fit=Fit.fit()))
    writer.compress_identical_objects()
    return writer


def main() -> None:
    """Write the book next to the built pages."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("site", type=Path)
    parser.add_argument("--edition", choices=EDITIONS, default=DEFAULT_EDITION)
    parser.add_argument("--paper", choices=("Letter", "A4"), default="Letter")
    chosen = parser.parse_args()
    with sync_playwright() as playwright:
        arguments = os.environ.get("CHROMIUM_ARGS", "").split()
        browser = playwright.chromium.launch(executable_path=os.environ["CHROMIUM"], args=arguments)
        print(write_book(chosen.site, browser, chosen.edition, chosen.paper))
        browser.close()


if __name__ == "__main__":
    main()
