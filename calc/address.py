"""Where the handbook's pages stand. Only what writes a format with whole addresses in it, or a page, asks for this.

A calculator, its answer and its links know no page: a link is "slug?name=value&...", see `permalink.write`.
"""

from __future__ import annotations


def page_address(link: str) -> str:
    """Return the address, inside the handbook, of a calculator's page on the inputs of a link.

    >>> page_address("main-bonding-jumper?edition=2023&conductor=3/0")
    'calculators/main-bonding-jumper.html?edition=2023&conductor=3/0'
    """
    slug, _, query = link.partition("?")
    return f"calculators/{slug}.html?{query}"
