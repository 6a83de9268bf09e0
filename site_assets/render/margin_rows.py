"""The rows above and below an answer, and a gauge of how far through its row the case is."""

from __future__ import annotations

from calc.calculator import Result
from calc.margin.rows import Gauge, MarginRow, Margins, margins
from calc.messages import message
from site_assets.render.text import text, unbroken

FULL, WIDTH = 204, 330  # of the drawing: where its row ends, and where the drawing does
SHORT = 9  # characters of an answer that fits beside the end of the row


def margins_html(result: Result) -> str:
    """Return where an answer changes: a row below, its own and one above, the gauge, and the trap; "" without any."""
    found = margins(result)
    if found is None:
        return ""
    heading = message("Rows above and below") if found.by_area else message("Where the answer changes")
    close = f'<p class="margin-close">{unbroken(text(found.close))}</p>' if found.close else ""
    return (
        f'<section class="margins"><h3>{text(heading)}</h3>{_table(found)}'
        f"{_gauge(found.gauge) if found.gauge else ''}{close}</section>"
    )


def _table(found: Margins) -> str:
    head = f'<th scope="col">{text(found.label)}</th><th scope="col">{text(message("Answer"))}</th>'
    rows = "".join(map(_row, found.rows))
    return f'<table class="margin-rows"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def _row(row: MarginRow) -> str:
    yours = f'<span class="unseen">{text(message("Yours:"))} </span>' if row.entered else ""
    kind = ' class="here"' if row.entered else ""
    return (
        f'<tr{kind}><th scope="row">{yours}{unbroken(text(row.inputs))}</th>'
        f"<td>{unbroken(text(row.answer))}</td></tr>"
    )


def _gauge(gauge: Gauge) -> str:
    """Return the drawing of the row from its lower to its upper end; the table beside it says the same in words."""
    at = round(FULL * min(max(gauge.share, 0), 1))
    short = len(str(gauge.next)) <= SHORT
    follows = text(message("next: {answer}", answer=gauge.next) if short else message("then it changes"))
    return (
        f'<svg class="gauge" viewBox="0 0 {WIDTH} 60" aria-hidden="true" focusable="false">'
        f'<rect class="gauge-row" x="1" y="22" width="{FULL}" height="14"/>'
        f'<rect class="gauge-yours" x="1" y="22" width="{at}" height="14"/>'
        f'<path class="gauge-end" d="M{FULL + 1} 14v30"/><path class="gauge-next" d="M{FULL + 1} 29H{WIDTH - 1}"/>'
        f'<text class="strong" x="1" y="14">{text(gauge.entered)}</text>'
        f'<text x="1" y="55">{text(gauge.low)}</text>'
        f'<text x="{FULL + 1}" y="55" text-anchor="end">{text(gauge.high)}</text>'
        f'<text class="strong" x="{FULL + 8}" y="20">{follows}</text></svg>'
    )
