"""The words `edition` and `changes` of the command line."""

from __future__ import annotations

import sys

from calc.editing.changes_command import changes_command
from calc.editing.edition_command import edition_command
from calc.editing.tree import RefusedError
from calc.rulebook import RuleError


def main(word: str, arguments: list[str]) -> int:
    """Run a contributor's command and return its exit code; 1 with the reason where it was refused."""
    command = {"edition": edition_command, "changes": changes_command}[word]
    try:
        return command(arguments)
    except (RefusedError, RuleError, OSError) as fault:
        print(fault, file=sys.stderr)
        return 1
