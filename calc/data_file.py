"""The files of data that come with this package, also inside the browser's bundle, where they have no path."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pkgutil import get_data
from typing import Any

# A mapping of TOML or JSON. Of which type each of its values is, no type says: what reads or writes it is held to a
# schema when it runs, the rules by `calc.rulebook.validate`, what is published by `calc.json_schema`.
type Data = dict[str, Any]
# One value in it.
type Value = str | float | bool | Mapping[str, Value] | Sequence[Value] | None


def data_text(path: str) -> str:
    """Return the text of the file at `path` below the package. Raises: FileNotFoundError."""
    data = get_data("calc", path)
    if data is None:
        raise FileNotFoundError(path)
    return data.decode()
