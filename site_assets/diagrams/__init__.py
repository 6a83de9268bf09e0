"""Drawings, one a file, made at build time. Each has a title, a description and a text twin.

A drawing's file is named like its slug. It holds `svg()`, `CAPTION` and `TEXT_ALTERNATIVE`, the drawing told
in words, one sentence a step. When the steps follow a current, the drawing has a `path_step` for each.
"""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

from calc.messages import message
from site_assets.render.answer import text


def drawing_slugs() -> list[str]:
    """Return the slug of every drawing, sorted."""
    files = [file for file in Path(__file__).parent.glob("*.py") if "\ndef svg()" in file.read_text(encoding="utf-8")]
    return sorted(file.stem.replace("_", "-") for file in files)


def drawing(slug: str) -> str:
    """Return a drawing as a figure: the picture, its caption, and the same told in words."""
    made = import_module(f"site_assets.diagrams.{slug.replace('-', '_')}")
    picture = made.svg()
    twin = "".join(f"<li>{text(words)}</li>" for words in made.TEXT_ALTERNATIVE)
    steps = _stepper() if 'class="path-step"' in picture else ""
    return (
        f'<figure class="drawing" id="drawing-{slug}">{picture}{steps}<figcaption>{text(made.CAPTION)}'
        f'<ol class="drawing-twin">{twin}</ol></figcaption></figure>'
    )


def _stepper() -> str:
    """Return the buttons that follow the current step by step; steps.js shows them, since they need scripts."""
    on, later = text(message("Follow the current")), text(message("Next"))
    buttons = (
        f'<button type="button" class="quiet" data-step-by="-1">{text(message("Back"))}</button>'
        f'<button type="button" class="quiet" data-step-by="1" data-later="{later}">{on}</button>'
    )
    return f'<div class="drawing-steps" hidden>{buttons}<p aria-live="polite"></p></div>'
