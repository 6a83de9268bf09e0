"""Reads the worked cases: each with inputs, what is expected, its source and mark."""

import tomllib
from pathlib import Path

FOLDER = Path(__file__).parent


def cases(name: str) -> list[tuple[str, dict]]:
    """Return (edition, case) for every case of a file and every edition it speaks for."""
    read = tomllib.loads((FOLDER / f"{name}.toml").read_text(encoding="utf-8"))["case"]
    return [(edition, case) for case in read for edition in case["editions"]]


def named(pair: tuple[str, dict]) -> str:
    """Return the name of a case in test reports."""
    edition, case = pair
    return f"{case['id']}-{edition}"
