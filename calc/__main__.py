"""The command line: `python -m calc SLUG name=value ...` prints JSON.

Exit code 0 for an answer or a case not covered, 2 when a field needs mending.
Without a slug it lists every calculator with its fields. `python -m calc SLUG --table FILE`
answers every row of a table and prints a table; `-` stands for standard input.
"""

from __future__ import annotations

import json
import os
import sys
from collections import Counter

from calc.catalogue import CALCULATORS
from calc.declare import Calculator, Fix, echo
from calc.editions import EDITIONS
from calc.plain import SCHEMA, plain_calculator, plain_fix, plain_result
from calc.table import TableFault, answer_table, counted
from calc.words import Sentence, say

TABLE = "--table"


def main(arguments: list[str]) -> int:
    """Run one calculator on the arguments, print what it gives, and return the exit code."""
    if not arguments:
        return show(
            {
                "schema": SCHEMA,
                "editions": list(EDITIONS),
                "calculators": [plain_calculator(each) for each in CALCULATORS.values()],
            },
            0,
        )
    slug, *written = arguments
    if slug not in CALCULATORS:
        words = say("There is no calculator of this name. The calculators are {slugs}.", slugs=", ".join(CALCULATORS))
        return show(_fix(echo(slug), words), 2)
    file = None
    if TABLE in written:
        place = written.index(TABLE)
        file, written = written[place + 1 : place + 2], written[:place] + written[place + 2 :]
    unreadable = [text for text in written if "=" not in text]
    if unreadable:
        return show(_fix(echo(unreadable[0]), say("Write each input as name=value.")), 2)
    pairs = [tuple(text.split("=", 1)) for text in written]
    if file is not None:
        return table(CALCULATORS[slug], *(file or [""]), pairs)
    result = CALCULATORS[slug].run(pairs)
    return show(plain_result(result), 2 if result.outcome == "fix" else 0)


def table(calculator: Calculator, file: str, pairs: list[tuple[str, str]]) -> int:
    """Answer every row of the table in `file` on standard output, `pairs` for what a row leaves out; the exit code.

    The code is 2 when a row is to fix, and then all other rows are answered nevertheless.
    """
    try:
        stream = sys.stdin.buffer if file == "-" else open(file, "rb")
    except (OSError, ValueError):
        return show(_fix(TABLE, say("No file of this name can be read. Write a file that holds a table, or -.")), 2)
    counts = Counter()
    write = sys.stdout.buffer.write
    try:
        answered = answer_table(calculator, stream, pairs)
        write(_bytes(answered.first_line()))
        for row in answered.rows:
            counts[row["outcome"]] += 1
            write(_bytes(answered.line(row.values())))
        sys.stdout.buffer.flush()
    except TableFault as fault:
        return show({"schema": SCHEMA, "outcome": "fix", "fix": plain_fix(fault.fix)}, 2)
    print(counted(counts), file=sys.stderr)
    return 2 if counts["fix"] else 0


def _bytes(line: str) -> bytes:
    return line.encode("utf-8", "backslashreplace")


def show(document: dict, code: int) -> int:
    """Print a document as JSON and give the exit code back."""
    print(json.dumps(document, indent=2, ensure_ascii=False))
    return code


def _fix(field: str, words: Sentence) -> dict:
    return {"schema": SCHEMA, "outcome": "fix", "fix": plain_fix([Fix(field, field, words)])}


if __name__ == "__main__":
    # What cannot be encoded becomes a JSON escape.
    sys.stdout.reconfigure(encoding="utf-8", errors="backslashreplace")
    try:
        code = main(sys.argv[1:])
        sys.stdout.flush()
        sys.exit(code)
    except BrokenPipeError:
        # Whoever reads wants no more; Python would say so once more when it ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(1)
    except KeyboardInterrupt:
        sys.exit(130)
