"""Electrical bonding and grounding, computed: pure Python that knows no web page.

Each calculator is here under its name, `from calc import main_bonding_jumper`, and is loaded when it is asked for.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from calc.editions import EDITIONS
from calc.registry import CALCULATORS

if TYPE_CHECKING:
    from calc.calculator import Calculator

# No checker can know these names: they are those of the calculators.
__all__ = [  # noqa: PLE0604  # pyright: ignore[reportUnsupportedDunderAll]
    "CALCULATORS", "EDITIONS", *sorted(slug.replace("-", "_") for slug in CALCULATORS),
]  # fmt: skip


def __getattr__(name: str) -> Calculator:
    slug = name.replace("_", "-")
    if slug in CALCULATORS:
        return CALCULATORS[slug]
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
