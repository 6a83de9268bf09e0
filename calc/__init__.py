"""Electrical bonding and grounding, computed: pure Python that knows no web page.

Each calculator is here under its name, `from calc import main_bonding_jumper`, and is loaded when it is asked for.
"""

from calc.editions import EDITIONS
from calc.registry import CALCULATORS

__all__ = ["CALCULATORS", "EDITIONS", *sorted(slug.replace("-", "_") for slug in CALCULATORS)]  # noqa: PLE0604


def __getattr__(name: str):
    slug = name.replace("_", "-")
    if slug in CALCULATORS:
        return CALCULATORS[slug]
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
