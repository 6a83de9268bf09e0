"""What a calculator declares so that what is found on site can be held against its answer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from calc.field import Field

if TYPE_CHECKING:
    from calc.calculator import Result
    from calc.found.verdict import Verdict

FOUND = "found"  # the name of the field


@dataclass(frozen=True)
class SiteCheck:
    """What may be found on site: the field that asks for it, and who judges it beside a result."""

    field: Field
    judge: Callable[[Result], Verdict]
