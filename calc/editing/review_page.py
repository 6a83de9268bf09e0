"""What is to be read of an edition, as one page to print: a box to tick and room to write beside each statement."""

from __future__ import annotations

from html import escape

from calc.editing.review import Reading
from calc.editing.review_shown import weight_words

_STYLE = """
body { font: 11pt/1.35 Georgia, serif; margin: 1.5cm auto; max-width: 19cm; color: #000; background: #fff; }
h1 { font-size: 16pt; } table { border-collapse: collapse; width: 100%; }
th, td { border-top: 1px solid #000; padding: 4pt 6pt; text-align: left; vertical-align: top; }
thead { display: table-header-group; } tr { break-inside: avoid; }
.box { width: 11pt; height: 11pt; border: 1.2pt solid #000; display: inline-block; }
.write { width: 5cm; } .small { font-size: 9pt; } .figures { font-family: monospace; font-size: 9pt; }
@media print { body { margin: 0; } }
"""
_HOW = (
    "Open the book at the section. Tick the box only where the book says what stands here: same place, same figures. "
    "Where it says otherwise, write the right section or figures beside it. Then carry both into the table and read it "
    "back in."
)


def review_page(edition: str, asked: list[Reading]) -> str:
    """Return the page, whole in one file."""
    title = f"{len(asked)} statements to read in the {edition} edition"
    rows = "".join(_row(number, each) for number, each in enumerate(asked, 1))
    head = "".join(f"<th>{words}</th>" for words in ("Read", "Where", "What it states", "If the book says otherwise"))
    return (
        f'<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{title}</title>'
        f"<style>{_STYLE}</style></head><body><h1>{title}</h1><p>{_HOW}</p>"
        f"<p>Title of the text, print and date: {'_' * 50}</p>"
        f"<table><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></body></html>\n"
    )


def _row(number: int, each: Reading) -> str:
    stated = each.stated
    figures = "<br>".join(escape(line) for line in each.figures.splitlines())
    unit = f" ({escape(stated.unit)})" if stated.unit else ""
    note = f"<br><span class='small'>{escape(str(stated.note))}</span>" if str(stated.note) else ""
    return (
        f'<tr><td><span class="box"></span> {number}</td><td><b>{escape(stated.section)}</b><br>'
        f'<span class="small">{escape(stated.mark)}<br>{escape(weight_words(each))}</span></td>'
        f"<td>{escape(str(stated.title))}{unit}<br><span class='small'>{escape(str(stated.applies))}</span>"
        f"<div class='figures'>{figures}</div>{note}<span class='small'> {escape(stated.key)}</span></td>"
        f'<td class="write"></td></tr>\n'
    )
