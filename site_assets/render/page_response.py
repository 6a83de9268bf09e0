"""What the page's worker asks of Python: a calculator and a query in, HTML and the new link out."""

from __future__ import annotations

import json
from collections.abc import Iterator

from calc import permalink
from calc.calculator import Result
from calc.data_file import Data
from calc.json_output import linked_answer
from calc.messages import Message, message
from calc.registry import CALCULATORS
from site_assets.render.answer import result_html

DRAWN = "take-a-bond-away"


def answer_request(slug: str, query: str) -> str:
    """Return JSON for the page: outcome, html, words for each field to fix, the query that restores it, and more.

    updated: what to say beside the form when the answer changed out of sight. scene: what the drawing shows, null
    where there is no drawing. unfinished: whether parts of the answer are still to come.
    """
    return _response(CALCULATORS[slug].run(permalink.read(query)))


def answer_parts(slug: str, query: str) -> Iterator[str]:
    """Yield JSON as `answer_request` returns it, each time the answer has grown; the last is not `unfinished`."""
    for result in CALCULATORS[slug].run_in_parts(permalink.read(query)):
        yield _response(result)


def _response(result: Result) -> str:
    return json.dumps(
        {
            "outcome": result.outcome,
            "html": result_html(result),
            "fix": {each.field: str(each.words) for each in result.fix},
            "updated": str(_updated(result)),
            "scene": _scene(result),
            "differs": linked_answer(result) is not None,
            "unfinished": bool(result.answer and result.answer.unfinished),
            "query": permalink.write(result).partition("?")[2] if result.outcome != "fix" else "",
        }
    )


def _updated(result: Result) -> Message:
    if result.outcome == "fix":
        return message("Updated: fix an entry first.")
    if result.outcome == "not_covered":
        return message("Updated: not covered here.")
    if result.depends:
        return message("Updated: it depends. {safe}", safe=result.depends.safe_words)
    return message("Updated: {headline}", headline=(result.found or result.answered).headline)


def _scene(result: Result) -> Data | None:
    if result.calculator.slug != DRAWN:
        return None
    from site_assets.render.scene import scene_parts  # no other page needs its circuit

    return scene_parts(result)
