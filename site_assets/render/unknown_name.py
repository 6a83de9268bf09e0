"""A name in a link that no field has: the button that reads it as the field that it looks most like."""

from __future__ import annotations

from calc.calculator import Correction, Result
from calc.messages import message
from site_assets.render.text import text


def nearest_html(result: Result, unknown: Correction) -> str:
    """Return the button, "" where no field is near."""
    if not unknown.near:
        return ""
    words = message("Read it as “{label}”", label=result.calculator.fields[unknown.near].label)
    renames = f'data-rename="{text(unknown.field)}" data-to="{unknown.near}"'
    return f' <button type="button" class="quiet" {renames}>{text(words)}</button>'
