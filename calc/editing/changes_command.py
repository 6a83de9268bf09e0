"""`python -m calc changes`: every answer of the domain that is not the recorded one, with rows that explain them."""

from __future__ import annotations

import argparse
from datetime import date

from calc.data_file import Data
from calc.editing.answer_record import (
    RECORD,
    changed_since,
    explained,
    has_record,
    read_record,
    record_of,
    record_text,
    unrecorded,
)
from calc.editing.change_rows import TO_BE_WRITTEN, change_rows, listing
from calc.editing.tree import RefusedError, write_whole
from calc.editions import EDITIONS
from calc.rulebook import changes


def changes_command(arguments: list[str]) -> int:
    """Run the command and return its exit code: 0 where nothing changed, 1 where answers changed."""
    parser = argparse.ArgumentParser(prog="python -m calc changes", description=__doc__)
    parser.add_argument("--record", action="store_true", help="keep today's answers as the record")
    parser.add_argument("--edition", action="append", help="ask only this edition (with --answers)")
    parser.add_argument("--answers", action="store_true", help="print the record of today's answers, compare nothing")
    chosen = parser.parse_args(arguments)
    if chosen.answers:
        print(record_text(record_of(editions=chosen.edition or EDITIONS)), end="")
        return 0
    record: Data = read_record() if has_record() else {"answers": {}, "changes": []}
    new = unrecorded(record)
    changed = changed_since(record)
    unexplained = [each for each in changed if not explained(each, record)]
    if changed:
        print(listing(changed))
    print(f"{len(changed)} answers changed, {len(unexplained)} of them without a row in calc/rules/changes.toml.")
    if new:
        print(f"Not recorded yet: {len(new)} pairs of a calculator and an edition, {new[0]} and so on.")
    if unexplained:
        version = changes()["version"]
        rows = change_rows(unexplained, version, date.today().isoformat(), lambda _: TO_BE_WRITTEN)
        print(f"\nRows for calc/rules/changes.toml:\n\n{rows}")
    if chosen.record:
        if unexplained:
            raise RefusedError("Explain every change in calc/rules/changes.toml, then record.")
        without = [row["id"] for row in changes()["change"] if TO_BE_WRITTEN in row["why"]]
        if without:
            raise RefusedError(f"Write in calc/rules/changes.toml why, then record: {', '.join(without)}.")
        write_whole({RECORD: record_text(record_of())})
        print(f"Recorded in {RECORD}.")
        return 0
    return 1 if changed or new else 0
