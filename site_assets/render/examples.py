"""What fills a memory snapshot and what checks it: what every calculator answers on its worked example."""

from __future__ import annotations

import gc
import json
from urllib.parse import urlencode

from calc.batch import example_table
from calc.registry import CALCULATORS
from site_assets.render.page_response import DRAWN, answer_request
from site_assets.render.scene_range_parts import scene_range_parts
from site_assets.render.table_parts import table_parts

AT_ONCE = 50


def example_replies() -> str:
    """Return as JSON what the page gets for each example, each empty form, and one that nobody can answer."""
    asked = [
        (slug, query)
        for slug, calculator in CALCULATORS.items()
        for query in (urlencode(calculator.example), "", "edition=never&no-field=1")
    ]
    return json.dumps([[slug, query, answer_request(slug, query)] for slug, query in asked])


def fill_memory() -> str:
    """Ask all that pages ask for, so that what it imports and reads is in memory, and return the replies."""
    for slug, calculator in CALCULATORS.items():
        for _ in table_parts(slug, example_table(calculator).encode(), "", AT_ONCE):
            pass
    for _ in scene_range_parts(DRAWN, urlencode(CALCULATORS[DRAWN].example), AT_ONCE):
        pass
    replies = example_replies()
    gc.collect()
    return replies
