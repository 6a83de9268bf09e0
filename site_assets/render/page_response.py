"""What the page's worker asks of Python: a calculator and a query in, HTML and the new link out."""

from __future__ import annotations

import json
from collections.abc import Iterator

from calc import permalink
from calc.calculator import Calculator, Result
from calc.conductors.written_beside import parted
from calc.data_file import Data
from calc.json_output import linked_answer
from calc.messages import Message, message
from calc.registry import CALCULATORS
from site_assets.render.answer import result_html
from site_assets.render.dock import dock_words

DRAWN = "take-a-bond-away"


def answer_request(slug: str, query: str) -> str:
    """Return JSON for the page: outcome, html, words for each field to fix, the query that restores it, and more.

    updated: what to say beside the form when the answer changed out of sight. scene: what the drawing shows, null
    where there is no drawing. unfinished: whether parts of the answer are still to come. dock: two lines. decide: the
    open fields that decide. unsafe: whether it depends and no answer is on the safe side. lacking: the fields without
    which it only says what to enter first. apart: see `read_entries`.
    """
    return _response(CALCULATORS[slug].run(permalink.read(query)), query)


def answer_parts(slug: str, query: str) -> Iterator[str]:
    """Yield JSON as `answer_request` returns it, each time the answer has grown; the last is not `unfinished`."""
    for result in CALCULATORS[slug].run_in_parts(permalink.read(query)):
        yield _response(result, query)


def read_entries(slug: str, query: str) -> str:
    """Return JSON on how entries are read, without an answer: words for each field to fix.

    apart: by field, what a size says of itself and of other fields, as "2-3/0" does of the number in parallel.
    """
    calculator = CALCULATORS[slug]
    fix = calculator.to_fix(permalink.read(query))
    return json.dumps({"fix": {each.field: str(each.words) for each in fix}, "apart": _apart(calculator, query)})


def _response(result: Result, query: str) -> str:
    return json.dumps(
        {
            "outcome": result.outcome,
            "html": result_html(result),
            "fix": {each.field: str(each.words) for each in result.fix},
            "updated": str(_updated(result)),
            "dock": dock_words(result),
            "decide": [result.depends.ask.field, *result.depends.fields] if result.depends else [],
            "lacking": _lacking(result),
            "unsafe": bool(result.depends and not result.depends.safe),
            "apart": _apart(result.calculator, query),
            "scene": _scene(result),
            "differs": linked_answer(result) is not None,
            "unfinished": bool(result.answer and result.answer.unfinished),
            "query": permalink.write(result).partition("?")[2] if result.outcome != "fix" else "",
        }
    )


def _lacking(result: Result) -> list[str]:
    """Return the fields to enter before an answer that depends says more than that, the question first."""
    if not result.depends or result.depends.safe:
        return []
    asked = [fix.field for each in result.depends.alternatives for fix in each.result.fix]
    return list(dict.fromkeys([result.depends.ask.field, *asked])) if asked else []


def _apart(calculator: Calculator, query: str) -> dict[str, str]:
    """Return the entries that a size written with its number or metal settles."""
    pairs = [(calculator.name_now(name), text) for name, text in permalink.read(query)]
    written = dict(parted(calculator.fields, pairs)[0])
    return {name: text for name, text in written.items() if name in calculator.fields and (name, text) not in pairs}


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
