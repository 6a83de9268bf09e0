"""How far the drawn circuit's answer may move, told piece by piece: the page gives it up at the next press."""

from __future__ import annotations

import json
from collections.abc import Iterator

from calc import permalink
from calc.fault.scene.scene_ranges import scene_ranges
from calc.registry import CALCULATORS
from site_assets.render.answer import text


def scene_range_parts(slug: str, query: str, at_once: int) -> Iterator[str]:
    """Yield JSON {"html": ""} after each `at_once` circuits, and the list of ranges last; nothing where none is due."""
    result = CALCULATORS[slug].run(permalink.read(query))
    if result.outcome != "answer":
        return
    for told in scene_ranges(result, at_once):
        rows = "".join(f"<li>{text(words)}</li>" for words in told or ())
        yield json.dumps({"html": f"<ul>{rows}</ul>" if rows else ""})
