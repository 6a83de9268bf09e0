"""`python -m calc edition`: adds an edition, lists what an owner of its book must read, takes in what was read."""

from __future__ import annotations

import argparse
import subprocess
import sys

from calc.editing.new_edition import new_edition
from calc.editing.tree import ROOT, RULES, Refused, write_whole


def edition_command(arguments: list[str]) -> int:
    """Run the command and return its exit code."""
    parser = argparse.ArgumentParser(prog="python -m calc edition", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    new = commands.add_parser("new", help="state every rule for a new edition, as another one and from memory")
    new.add_argument("edition")
    new.add_argument("--from", dest="taken_from", required=True, help="the edition it is taken as")
    chosen = parser.parse_args(arguments)
    return _new(chosen.edition, chosen.taken_from)


def _new(edition: str, taken_from: str) -> int:
    texts = new_edition(edition, taken_from)
    write_whole(texts)
    done = subprocess.run([sys.executable, "-m", "calc", "changes", "--record"], cwd=ROOT, check=False)
    rules = sum(path.is_relative_to(RULES) for path in texts) - 1
    print(f"{rules} rules state the {edition} edition as {taken_from} states it, none of them confirmed.")
    print("\n".join(f"  {path}" for path in texts if not path.is_relative_to(RULES)))
    print(f"Now: python -m calc edition review {edition}")
    if done.returncode:
        raise Refused("The answers were not recorded: see above.")
    return 0
