"""One row of the table of budgets."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Row:
    """What was measured, in `unit`, and its budget, at most so much, or None. beside: what is told too."""

    name: str
    value: float
    unit: str = ""
    budget: float | None = None
    beside: str = ""

    @property
    def cells(self) -> tuple[str, str, str, str]:
        """The name, the value, the budget and the verdict, in words."""
        told = f"{shown(self.value)} {self.unit}".strip() + (f" ({self.beside})" if self.beside else "")
        if self.budget is None:
            return self.name, told, "-", "-"
        return self.name, told, f"{shown(self.budget)} {self.unit}".strip(), self.verdict

    @property
    def verdict(self) -> str:
        """Whether it is within its budget."""
        return "pass" if self.budget is None or self.value <= self.budget else "OVER"


def shown(value: float) -> str:
    """Return a number to three digits, from 100 up whole."""
    return f"{value:,.0f}" if abs(value) >= 100 or value == int(value) else f"{value:.3g}"


def printed(rows: list[Row]) -> str:
    """Return rows as a table of text."""
    cells = [("", "measured", "at most", ""), *(row.cells for row in rows)]
    name, value, budget, _ = (max(map(len, column)) for column in zip(*cells, strict=True))
    lines = (f"{row[0]:<{name}}  {row[1]:<{value}}  {row[2]:<{budget}}  {row[3]}".rstrip() for row in cells)
    return "\n".join(lines)
