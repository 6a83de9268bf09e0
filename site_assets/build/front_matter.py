"""The settings at the head of a page's Markdown, between two lines of dashes."""

from __future__ import annotations

import yaml

from calc.data_file import Data

DASHES = "---\n"


def parted(page: str) -> tuple[Data, str]:
    """Return the settings of a page, which may be none, and its Markdown."""
    if not page.startswith(DASHES):
        return {}, page
    head, _, markdown = page.removeprefix(DASHES).partition(f"\n{DASHES}")
    return yaml.safe_load(head) or {}, markdown.lstrip("\n")


def joined(settings: Data, markdown: str) -> str:
    """Return a page with its settings at the head."""
    head = yaml.safe_dump(settings, allow_unicode=True, sort_keys=False, width=1000)
    return f"{DASHES}{head}{DASHES}\n{markdown}"
