"""One figure of a rule in running text, as each edition has it."""

from __future__ import annotations

from calc.rulebook import Rule, rule
from site_assets.build.by_edition import by_edition
from site_assets.build.page_data import PageDataError
from site_assets.render.marks import mark_html
from site_assets.render.text import text

COLUMN_UNITS = {"inches": "in", "feet": "ft", "millimetres": "mm", "ampere": "A", "volt": "V", "ohm": "ohm"}
CONDUCTOR_SIZE = "conductor size"


def figure(key: str, column: str = "", **where: object) -> str:
    """Return the figure of the rule `key` in each edition, with its mark where it is not confirmed.

    column: of a rule that holds rows; `where` then names the row. Raises: PageDataError.
    """

    def shown(edition: str) -> str:
        stated = rule(key, edition)
        return _whole(stated, column, where) + _mark(stated)

    return by_edition(shown)


def figure_with_section(key: str, column: str = "", **where: object) -> str:
    """Return the figure of the rule `key` and, in brackets, where each edition states it: both with one mark.

    column, where: as for `figure`. Raises: PageDataError.
    """

    def shown(edition: str) -> str:
        stated = rule(key, edition)
        return f"{_whole(stated, column, where)} ({text(stated.section)}{_mark(stated)})"

    return by_edition(shown)


def _whole(stated: Rule, column: str, where: dict[str, object]) -> str:
    """Return the figure so that its number never stands apart from its unit."""
    return f'<span class="whole">{text(_figure(stated, column, where))}</span>'


def _mark(stated: Rule) -> str:
    return f"\u00a0{mark_html(stated.mark)}" if stated.mark in ("memory", "practice") else ""


def _figure(stated: Rule, column: str, where: dict[str, object]) -> str:
    if stated.value is not None:
        return _with_unit(str(stated.value), stated.unit)
    rows = [row for row in stated.rows if all(row.get(name) == value for name, value in where.items())]
    if len(rows) != 1 or column not in rows[0]:
        columns = ", ".join(dict.fromkeys(name for row in stated.rows for name in row)) or "no figures"
        raise PageDataError(
            f"{stated.key} in {stated.edition}: {len(rows)} of its rows are as asked, {where or 'all'}; one is wanted, "
            f"with {column!r} among its figures: {columns}"
        )
    return _with_unit(str(rows[0][column]), COLUMN_UNITS.get(column, stated.unit))


def _with_unit(value: str, unit: str) -> str:
    if unit != CONDUCTOR_SIZE:
        return f"{value} {unit}".strip()
    return value.replace("kcmil", " kcmil") if value.endswith("kcmil") else f"{value} AWG"
