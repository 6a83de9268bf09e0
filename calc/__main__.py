"""The command line: `python -m calc SLUG name=value ...` prints JSON.

Exit code 0 for an answer, also one that depends, or a case not covered, 2 when a field needs correcting, 1 when the
answer could not be written, 130 when it was stopped. Without a slug it lists every calculator with its fields.
`python -m calc SLUG --table FILE` answers every row of a table and prints a table; `-` stands for standard input;
`--out FILE` puts the answers into a file, which appears only when it is whole. `python -m calc SLUG --schema` prints
the JSON Schema of what goes in and what comes out.

For contributors: `python -m calc edition ...` adds and reviews editions, `python -m calc changes` tells which answers
changed; both print text.
"""

from __future__ import annotations

import json
import os
import sys
from collections import Counter
from collections.abc import Generator
from contextlib import contextmanager
from importlib import import_module
from typing import Any, BinaryIO

from calc.batch import TableError, answer_table, counted
from calc.calculator import Calculator, Correction, truncate
from calc.data_file import Data
from calc.destination import UnwritableError, destination
from calc.editions import EDITIONS
from calc.json_output import SCHEMA, calculator_to_dict, corrections_to_list, left_out_to_dict, result_to_dict
from calc.json_outputs import outputs_to_list
from calc.json_schema import calculator_schema
from calc.messages import Message, message
from calc.registry import CALCULATORS

TABLE, OUT, SCHEMA_OF = "--table", "--out", "--schema"
FOR_CONTRIBUTORS = ("edition", "changes")


def main(arguments: list[str]) -> int:
    """Run one calculator on the arguments, print what it gives, and return the exit code."""
    if not arguments:
        return show(
            {
                "schema": SCHEMA,
                "editions": list(EDITIONS),
                "calculators": [described(each) for each in CALCULATORS.values()],
            },
            0,
        )
    slug, *written = arguments
    if slug in FOR_CONTRIBUTORS:
        return import_module("calc.editing.command").main(slug, written)
    if slug not in CALCULATORS:
        words = message(
            "There is no calculator with this name. The calculators are {slugs}.", slugs=", ".join(CALCULATORS)
        )
        return show(_fix(truncate(slug), words), 2)
    if SCHEMA_OF in written:
        return schema(CALCULATORS[slug], written)
    file, written = _option(TABLE, written)
    out, written = _option(OUT, written)
    if out is not None and (file is None or not out):
        return show(_fix(OUT, message("Use it with --table, and name a file for the answers.")), 2)
    unreadable = [text for text in written if "=" not in text]
    if unreadable:
        return show(_fix(truncate(unreadable[0]), message("Write each input as name=value.")), 2)
    pairs = [(name, value) for name, _, value in (text.partition("=") for text in written)]
    if file is not None:
        return table(CALCULATORS[slug], file, out, pairs)
    result = CALCULATORS[slug].run(pairs)
    plain = result_to_dict(result, margin=True) | left_out_to_dict(result)
    return show(plain, 2 if result.outcome == "fix" else 0)


def described(calculator: Calculator) -> Data:
    """Return what a calculator declares: its fields, and what it answers."""
    return calculator_to_dict(calculator) | {"outputs": outputs_to_list(calculator)}


def schema(calculator: Calculator, written: list[str]) -> int:
    """Print the JSON Schema of a calculator, unless something else was written too; return the exit code."""
    if len(written) > 1:
        return show(_fix(SCHEMA_OF, message("Use it alone, after the name of the calculator.")), 2)
    return show(calculator_schema(calculator), 0)


def _option(name: str, written: list[str]) -> tuple[str | None, list[str]]:
    """Return the text after an option, "" where none is, None without the option, and what else was written."""
    if name not in written:
        return None, written
    place = written.index(name)
    return "".join(written[place + 1 : place + 2]), written[:place] + written[place + 2 :]


def table(calculator: Calculator, file: str, out: str | None, pairs: list[tuple[str, str]]) -> int:
    """Answer every row of the table in `file`, `pairs` for what a row leaves out, into `out`; give the exit code.

    The code is 2 when a row is to fix, and then all other rows are answered nevertheless. Without `out` the rows go
    to standard output one by one; when they end early, the last line on standard error says so.
    """
    counts: Counter[str] = Counter()
    try:
        with _opened(file) as stream, destination(out, stream) as write:
            answered = answer_table(calculator, stream, pairs)
            write(_bytes(answered.first_line()))
            for row in answered.rows:
                write(_bytes(answered.line(row.values())))
                counts[row["outcome"]] += 1
    except TableError as fault:
        return show({"schema": SCHEMA, "outcome": "fix", "fix": corrections_to_list(fault.fix)}, 2)
    except UnwritableError as fault:
        return _stopped(fault.words, 1)
    except KeyboardInterrupt:
        return _stopped(message("Stopped. {counts} The table is not complete.", counts=counted(counts)), 130)
    tell(counted(counts))
    return 2 if counts["fix"] else 0


@contextmanager
def _opened(file: str) -> Generator[BinaryIO]:
    """Yield the bytes of a file, or of standard input for "-". Raises: TableError."""
    try:
        stream = sys.stdin.buffer if file == "-" else open(file, "rb")  # noqa: SIM115 (closed below)
    except (OSError, ValueError, AttributeError):  # what no file, no name and a closed standard input are
        words = message("No file with this name can be read. Name a file that holds a table, or -.")
        raise TableError((Correction(TABLE, TABLE, words),)) from None
    with stream:
        yield stream


def _stopped(words: Message, code: int) -> int:
    """Tell why nothing more is written, throw away what still waits to be, and give the exit code back."""
    tell(words)
    if sys.stdout is not None:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return code


def tell(words: Message) -> None:
    """Say something on standard error, where there is one."""
    if sys.stderr is not None:
        try:
            print(words, file=sys.stderr, flush=True)
        except OSError:  # it is full or closed, and there is no third place to say so
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stderr.fileno())


def _bytes(line: str) -> bytes:
    return line.encode("utf-8", "backslashreplace")


def show(document: Data, code: int) -> int:
    """Print a document as JSON and give the exit code back."""
    if sys.stdout is None:
        return _stopped(message("Standard output is closed. Nothing was written."), 1)
    try:
        print(json.dumps(document, indent=2, ensure_ascii=False), flush=True)
    except BrokenPipeError:
        raise
    except OSError as fault:
        return _stopped(message("The file could not be completed: {reason}.", reason=fault.strerror), 1)
    return code


def _fix(field: str, words: Message) -> Data:
    return {"schema": SCHEMA, "outcome": "fix", "fix": corrections_to_list([Correction(field, field, words)])}


if __name__ == "__main__":
    stdout: Any = sys.stdout  # a text file, which can be told anew how to encode
    if stdout is not None:
        # What cannot be encoded becomes a JSON escape.
        stdout.reconfigure(encoding="utf-8", errors="backslashreplace")
    try:
        sys.exit(main(sys.argv[1:]))
    except BrokenPipeError:
        # Whoever reads wants no more; Python would say so once more when it ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(1)
    except KeyboardInterrupt:
        sys.exit(130)
