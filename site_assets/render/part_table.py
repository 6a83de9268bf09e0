"""A list as a table: of a job each part, where it connects and its size first; of figures a column for each."""

from __future__ import annotations

import re
from html import escape

from calc import permalink
from calc.address import page_address
from calc.answer import Row, Table
from calc.known import known
from calc.messages import Message, message
from calc.unknown.conditions import lower
from site_assets.render.marks import with_rings
from site_assets.render.text import text, unbroken

SIZE = re.compile(r"(\S+ (?:AWG|kcmil)(?= ))? ?(.*)", re.DOTALL)  # at the beginning
PAGE_TO_TOP = "../"  # every calculator's page stands in one folder
SHORT_SECTION = 20  # characters that no line needs to break
FEW_COLUMNS, SHORT_CELL = 3, 18  # characters: figures stay in their columns on a phone, words get a card


def table_html(table: Table | None) -> str:
    """Return the list of an answer as a table, "" where it has none."""
    if table is None:
        return ""
    return _parts(table) if "size" in table.headings else _figures(table)


def _parts(table: Table) -> str:
    """Return a list of parts: name, from and to, size; why and the section stand below each."""
    headings = table.headings
    named = [headings["part"], headings["size"]]
    if "from" in headings:
        named.insert(1, message("{start}, {end}", start=headings["from"], end=lower(headings["to"])))
    head = "".join(f'<th scope="col">{text(words)}</th>' for words in named)
    rows = "".join(_part(row, len(named)) for row in table.rows)
    kind = "parts-list" if "from" in headings else "parts-list to-do"
    return f'<table class="{kind}" role="table"><thead><tr>{head}</tr></thead>{rows}</table>'


def _part(row: Row, columns: int) -> str:
    # The roles hold where a narrow screen lays the cells out anew.
    cells = row.cells
    between = ""
    if "from" in cells:
        to = message("to {end}", end=lower(cells["to"]))
        between = f'<td role="cell">{unbroken(text(cells["from"]))} <b class="part-to">{unbroken(text(to))}</b></td>'
    kind = "part-section whole" if len(str(cells["section"])) <= SHORT_SECTION else "part-section"
    section = f'<span class="{kind}">{with_rings(text(cells["section"]))}</span>'
    return (
        f'<tbody data-status="{row.status}"><tr role="row">'
        f'<th scope="rowgroup" role="rowheader">{_name(row, "part")}</th>{between}'
        f'<td class="part-size" role="cell">{_size(cells["size"])}</td></tr>'
        f'<tr class="part-why"><td colspan="{columns}">{unbroken(text(cells["why"]))} {section}</td></tr></tbody>'
    )


def _size(words: Message | str) -> str:
    """Return a size as heavy figures, what stands beside it in regular; other words are heavy as a whole."""
    size, beside = known(SIZE.match(text(words))).groups()
    return f'<b class="whole">{size}</b> {unbroken(beside)}' if size else f"<b>{beside}</b>"


def _figures(table: Table) -> str:
    """Return a list of other kinds: figures in columns, words on a narrow screen as a card for each row."""
    others = list(table.headings)[1:]
    head = "".join(f'<th scope="col">{text(words)}</th>' for words in table.headings.values())
    rows = "".join(_row(table, row) for row in table.rows)
    if all(len(str(row.cells[key])) <= SHORT_CELL for row in table.rows for key in others):
        kind = "list figures"
    else:
        kind = "list" if len(table.headings) <= FEW_COLUMNS else "list wide"
    return f'<table class="{kind}"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def _row(table: Table, row: Row) -> str:
    first, *others = table.headings
    cells = "".join(
        f'<td data-heading="{text(table.headings[key])}" data-column="{key}">{unbroken(text(row.cells[key]))}</td>'
        for key in others
    )
    return f'<tr><th scope="row">{_name(row, first)}</th>{cells}</tr>'


def _name(row: Row, column: str) -> str:
    """Return the name of a row, with a link to its working where it has one of its own."""
    name = text(row.cells[column])
    if not row.link:
        return name
    address = PAGE_TO_TOP + page_address(permalink.without_answer(row.link))
    return f'<a href="{escape(address)}">{name}</a>'
