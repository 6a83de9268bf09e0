"""A verdict on what was found as plain data, and as the two cells that it adds to a row of a table."""

from __future__ import annotations

from calc.calculator import Result
from calc.data_file import Data
from calc.found.field import size_and_metal
from calc.found.verdict import SHORT, Verdict

COLUMNS = ("found_verdict", "found_short_by")


def found_to_dict(result: Result, verdict: Verdict) -> Data:
    """Return a verdict as plain data: what was found and required, by how much they differ, and the note to copy."""
    size, metal = (None, None) if verdict.parts else size_and_metal(verdict.found) or (None, None)
    required, required_metal = verdict.required or (None, None)
    difference = None
    if verdict.sizes is not None and verdict.cmil is not None:
        difference = {"sizes": abs(verdict.sizes), "cmil": abs(verdict.cmil)}
    short = verdict.verdict == SHORT
    return {
        "found": verdict.found,
        "size": size,
        "metal": metal,
        "verdict": verdict.verdict,
        "headline": str(verdict.headline),
        "required_size": required,
        "required_metal": required_metal,
        "short_by": difference if short else None,
        "spare": None if short else difference,
        "only_if": None if verdict.only_if is None else str(verdict.only_if),
        "open": [str(words) for words in verdict.open],
        "section": verdict.section,
        "note": [str(words) for words in verdict.note(result.edition)],
        "parts": [{"part": each.key, **found_to_dict(result, each.verdict)} for each in verdict.parts],
    }


def found_cells(verdict: Verdict | None) -> dict[str, str]:
    """Return the cells by column: the verdict, and by how much it is short; blank where nothing was found."""
    more = verdict.more if verdict and verdict.verdict == SHORT else []
    return {
        "found_verdict": verdict.verdict if verdict else "",
        "found_short_by": " ".join(map(str, more)),
    }
