"""`python -m calc edition`: adds an edition, lists what an owner of its book must read, takes in what was read."""

from __future__ import annotations

import argparse
import subprocess
import sys
from argparse import Namespace
from datetime import date
from pathlib import Path

from calc.editing import review_shown
from calc.editing.answer_record import Changed
from calc.editing.change_rows import TO_BE_WRITTEN, change_rows, listing
from calc.editing.new_edition import new_edition
from calc.editing.readings_table import Read, read_table
from calc.editing.review import readings
from calc.editing.review_page import review_page
from calc.editing.take_in import changed_by, checks_that_name, taken_in
from calc.editing.tree import ROOT, RULES, RefusedError, write_whole
from calc.editing.weight import keys_read
from calc.rulebook import changes, document, rule_keys, validate

DEFAULT_SOURCE = {
    "source": "the key of the text that was read, for rows that name none",
    "title": "its title; it names the edition",
    "kind": "standard, code adoption, course ...",
    "seen": "what was read in it",
    "date": "the day it was read, as 2029-01-31",
}


def edition_command(arguments: list[str]) -> int:
    """Run the command and return its exit code."""
    parser = argparse.ArgumentParser(prog="python -m calc edition", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    new = commands.add_parser("new", help="state every rule for a new edition, as another one and from memory")
    new.add_argument("edition")
    new.add_argument("--from", dest="taken_from", required=True, help="the edition it is taken as")
    review = commands.add_parser("review", help="list what is to be read in the book, or take in what was read")
    review.add_argument("edition")
    review.add_argument("--all", action="store_true", help="what is confirmed already, too")
    review.add_argument("--in-book-order", action="store_true", help="by section alone, not by what hangs on it")
    review.add_argument("--csv", metavar="FILE", help="write it as a table to tick, correct and read back")
    review.add_argument("--page", metavar="FILE", help="write it as a page to print")
    review.add_argument("--import", dest="table", metavar="FILE", help="read a table back")
    review.add_argument("--dry-run", action="store_true", help="with --import: tell, and write nothing")
    review.add_argument("--rows", metavar="FILE", help="with --import: write the rows for changes.toml there")
    for name, words in DEFAULT_SOURCE.items():
        review.add_argument(f"--{name}", default="", help=f"with --import: {words}")
    commands.add_parser("check", help="hold every rule to the schema")
    chosen = parser.parse_args(arguments)
    return {"new": _new, "review": _review, "check": _check}[chosen.command](chosen)


def _new(chosen: Namespace) -> int:
    texts = new_edition(chosen.edition, chosen.taken_from)
    write_whole(texts)
    rules = sum(path.is_relative_to(RULES) for path in texts) - 1
    print(f"{rules} rules state the {chosen.edition} edition as {chosen.taken_from} states it, none of them confirmed.")
    print("\n".join(f"  {path}" for path in texts if not path.is_relative_to(RULES)), flush=True)
    recorded = [sys.executable, "-m", "calc", "changes", "--record"]
    if subprocess.run(recorded, cwd=ROOT, check=False).returncode:  # another Python: this one knows no new edition
        raise RefusedError("The answers were not recorded: see above.")
    print(f"Now: python -m calc edition review {chosen.edition}")
    return 0


def _check(_chosen: Namespace) -> int:
    for key in rule_keys():
        validate(key, document(key))
    print(f"{len(rule_keys())} rules keep the schema.")
    return 0


def why(case: Changed, corrected: list[Read]) -> str:
    """Return why an answer is another one: the corrected figures that it reads, and the texts they were read in."""
    keys = keys_read(case.calculator, case.edition, case.inputs)
    read = [each for each in corrected if each.figures is not None and each.stated.key in keys]
    return "; ".join(f"{each.section} as {each.source.title} has it" for each in read) or TO_BE_WRITTEN


def _review(chosen: Namespace) -> int:
    if chosen.table:
        return _take_in(chosen)
    asked = readings(chosen.edition, confirmed_too=chosen.all, in_book_order=chosen.in_book_order)
    for file, text in (
        (chosen.csv, review_shown.csv_text(asked)),
        (chosen.page, review_page(chosen.edition, asked)),
    ):
        if file:
            Path(file).write_text(text, encoding="utf-8", newline="")
            print(f"{len(asked)} statements to read are in {file}.")
    if not chosen.csv and not chosen.page:
        print(review_shown.listing(chosen.edition, asked))
    return 0


def _take_in(chosen: Namespace) -> int:
    default = {name if name == "source" else f"source_{name}": getattr(chosen, name) for name in DEFAULT_SOURCE}
    read = read_table(Path(chosen.table).read_bytes(), chosen.edition, default)
    texts = taken_in(read)
    answers = changed_by(texts)
    corrected = [each for each in read if each.corrected]
    print(f"{len(read)} statements read, {len(corrected)} of them corrected.")
    for each in read:
        words = f"{each.stated.section} -> {each.section}" if each.section != each.stated.section else each.section
        figures = ", other figures" if each.figures is not None else ""
        print(f"  {each.stated.key}: {each.stated.mark} -> confirmed by {each.source.key}; {words}{figures}")
    print(f"{len(answers)} answers change.")
    if answers:
        rows = change_rows(answers, changes()["version"], date.today().isoformat(), lambda case: why(case, corrected))
        print(f"{listing(answers)}\n")
        if chosen.rows:
            Path(chosen.rows).write_text(f"\n{rows}", encoding="utf-8")
            print(f"Rows for calc/rules/changes.toml are in {chosen.rows}.")
        else:
            print(f"Rows for calc/rules/changes.toml:\n\n{rows}")
    checks = checks_that_name(each.stated.key for each in corrected if each.figures is not None)
    if checks:
        print(f"Put the book's figures into tests/rules: {', '.join(checks)}.")
    if chosen.dry_run:
        print("Nothing was written.")
        return 0
    write_whole(texts)
    print(f"{len(texts)} files were written.")
    if answers:
        print("Add the rows, then: python -m calc changes --record")
    return 0
