"""What the page's worker asks of Python: a calculator and a query in, HTML and the new link out."""

from __future__ import annotations

import json

from calc import permalink
from calc.catalogue import CALCULATORS
from calc.plain import said_before
from site_assets.render.answer import result_html
from site_assets.render.scene import scene_parts


def reply(slug: str, query: str) -> str:
    """Give JSON for the page: outcome, html, words for each field to fix, the query that restores it, and `scene`.

    scene: what the drawing shows, null where there is no drawing.
    """
    result = CALCULATORS[slug].run(permalink.read(query))
    return json.dumps(
        {
            "outcome": result.outcome,
            "html": result_html(result),
            "fix": {each.field: str(each.words) for each in result.fix},
            "scene": scene_parts(result),
            "differs": said_before(result) is not None,
            "query": permalink.write(result).partition("?")[2] if result.outcome != "fix" else "",
        }
    )
