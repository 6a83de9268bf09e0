"""What is to be read of an edition, as text and as a table."""

from __future__ import annotations

import csv
import io

from calc.editing.review import Reading

TICK, SECTION, FIGURES, NOTE = "read", "section", "figures", "note"
COLUMNS = (
    *(TICK, SECTION, FIGURES, "unit", "states", "applies", "mark", NOTE, "answers", "calculators", "pages"),
    *("source", "source_title", "source_kind", "source_seen", "source_date", "key", "stamp"),
)
# A spreadsheet takes 250.80 for the number 250.8 and 1/0 for a date: words before them keep them texts.
SECTION_WORD, FIGURE_WORD = "Section ", "figure: "


def listing(edition: str, asked: list[Reading]) -> str:
    """Return what is to be read as text, a box to tick before each statement."""
    blocks = [f"{len(asked)} statements of the {edition} edition to read in its book, the weightiest first."]
    blocks += [_block(number, each) for number, each in enumerate(asked, 1)]
    return "\n\n".join(blocks)


def weight_words(each: Reading) -> str:
    """Return what hangs on a statement: answers, calculators, pages."""
    weight = each.weight
    return f"worked answers: {weight.answers}, calculators: {len(weight.calculators)}, pages: {weight.pages}"


def _block(number: int, each: Reading) -> str:
    stated = each.stated
    unit = f" ({stated.unit})" if stated.unit else ""
    lines = [
        f"[ ] {number}. {stated.section}: {stated.title}",
        f"    for {stated.applies}; {weight_words(each)}",
        *(f"    {line}{unit}" for line in each.figures.splitlines()),
        f"    now: {stated.mark}. {stated.note}".rstrip(),
        f"    {stated.key}",
    ]
    return "\n".join(lines)


def csv_text(asked: list[Reading]) -> str:
    """Return what is to be read as a table: tick `read`, correct `section`, `figures` or `note`, name the source."""
    written = io.StringIO()
    table = csv.writer(written)
    table.writerow(COLUMNS)
    for each in asked:
        stated, weight = each.stated, each.weight
        cells = {
            SECTION: section_cell(stated.section),
            FIGURES: f"{FIGURE_WORD}{each.figures}" if stated.value is not None else each.figures,
            "unit": stated.unit,
            "states": stated.title,
            "applies": stated.applies,
            "mark": stated.mark,
            NOTE: stated.note,
            "answers": weight.answers,
            "calculators": len(weight.calculators),
            "pages": weight.pages,
            "key": stated.key,
            "stamp": each.stamp,
        }
        table.writerow([cells.get(column, "") for column in COLUMNS])
    return "\N{ZERO WIDTH NO-BREAK SPACE}" + written.getvalue()


def section_cell(section: str) -> str:
    """Return a section so that a spreadsheet keeps its last zero."""
    return f"{SECTION_WORD}{section}" if section[0].isdigit() else section
