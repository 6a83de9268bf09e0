"""Drawings, one a file, made at build time. Each has a title, a description and a text twin."""

from __future__ import annotations

from site_assets.diagrams import main_bonding_jumper
from site_assets.render.answer import text

_DRAWINGS = {"main-bonding-jumper": main_bonding_jumper}


def drawing(slug: str) -> str:
    """Give a drawing as a figure: the picture, its caption, and the same told in words."""
    made = _DRAWINGS[slug]
    twin = "".join(f"<li>{text(words)}</li>" for words in made.TWIN)
    return (
        f'<figure class="drawing" id="drawing-{slug}">{made.svg()}<figcaption>{text(made.CAPTION)}'
        f'<ol class="drawing-twin">{twin}</ol></figcaption></figure>'
    )
