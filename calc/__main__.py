"""The command line: `python -m calc SLUG name=value ...` prints JSON.

Exit code 0 for an answer or a case not covered, 2 when a field needs mending.
Without a slug it lists every calculator with its fields.
"""

from __future__ import annotations

import json
import sys

from calc.catalogue import CALCULATORS
from calc.declare import echo
from calc.editions import EDITIONS
from calc.plain import SCHEMA, plain_calculator, plain_result
from calc.words import say


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
    unreadable = [text for text in written if "=" not in text]
    if unreadable:
        return show(_fix(echo(unreadable[0]), say("Write each input as name=value.")), 2)
    result = CALCULATORS[slug].run(tuple(text.split("=", 1)) for text in written)
    return show(plain_result(result), 2 if result.outcome == "fix" else 0)


def show(document: dict, code: int) -> int:
    """Print a document as JSON and give the exit code back."""
    print(json.dumps(document, indent=2, ensure_ascii=False))
    return code


def _fix(field: str, words: object) -> dict:
    return {"schema": SCHEMA, "outcome": "fix", "fix": [{"field": field, "label": field, "say": str(words)}]}


if __name__ == "__main__":
    # What cannot be encoded becomes a JSON escape.
    sys.stdout.reconfigure(encoding="utf-8", errors="backslashreplace")
    sys.exit(main(sys.argv[1:]))
