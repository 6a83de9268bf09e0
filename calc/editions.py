"""The editions of NFPA 70, the National Electrical Code, that the rules know. They stand in rules/editions.toml."""

from __future__ import annotations

import tomllib

from calc.data_file import data_text

_STATED = tomllib.loads(data_text("rules/editions.toml"))

EDITIONS: tuple[str, ...] = tuple(_STATED["editions"])
DEFAULT_EDITION: str = _STATED["shown_until_chosen"]


def is_default_edition(edition: str) -> bool:
    """Tell whether an edition is the one that is shown to a reader who has chosen none."""
    return edition == DEFAULT_EDITION
