"""Writes the JSON Schema of every calculator into a finished site, for programs of others."""

import json
from pathlib import Path

from calc.json_schema import calculator_schema
from calc.registry import CALCULATORS

FOLDER = "schema"


def write_schemas(site: Path) -> None:
    """Write `schema/<slug>.json` for every calculator."""
    (site / FOLDER).mkdir()
    for slug, calculator in CALCULATORS.items():
        text = json.dumps(calculator_schema(calculator), ensure_ascii=False, indent=1)
        (site / schema_path(slug)).write_text(f"{text}\n", encoding="utf-8", newline="\n")


def schema_path(slug: str) -> str:
    """Return where the schema of a calculator is in the site."""
    return f"{FOLDER}/{slug}.json"
