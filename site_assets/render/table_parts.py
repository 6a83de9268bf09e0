"""What the page's worker asks of Python for a table: bytes in, the answered table out, part by part."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from io import BytesIO
from time import monotonic

from calc.batch import TableError, answer_table, counted
from calc.messages import message
from calc.permalink import without_answer
from calc.registry import CALCULATORS
from calc.trace import shown_number
from site_assets.render.marks import key_html, mark_html
from site_assets.render.text import text

MAX_SHOWN = 10
SECONDS_AT_ONCE = 0.2  # a row of some calculators takes as long by itself


def table_parts(slug: str, data: bytes, edition: str, rows_at_once: int) -> Iterator[str]:
    """Yield JSON for the page, once every `rows_at_once` rows, sooner where they take long, and at the end.

    edition: for rows that name none, "" for no choice. Each part: `text`, the next piece of the
    written table; `rows` in words; `part` of the table that is done, 0 to 1; `html`, what is shown
    if this is the last part. A table whose first row cannot be used has one part, with no `text`.
    """
    try:
        table = answer_table(CALCULATORS[slug], BytesIO(data), [("edition", edition)] if edition else [])
    except TableError as fault:
        yield json.dumps({"text": "", "rows": "", "part": 1, "html": _refused(fault)})
        return
    lines = bytes(data).count(b"\n") + 1
    counts: Counter[str] = Counter()
    first: list[dict[str, str]] = []
    to_fix: list[dict[str, str]] = []
    pieces = [table.first_line()]
    line = 0

    def part() -> str:
        done = message("Rows done: {rows}", rows=shown_number(counts.total()))
        shown = {"text": "".join(pieces), "rows": str(done), "part": min(1, line / lines)}
        pieces.clear()
        return json.dumps(shown | {"html": _shown(counts, first, to_fix)})

    since = monotonic()
    for row in table.rows:
        pieces.append(table.line(row.values()))
        counts[row["outcome"]] += 1
        line = int(row["line"])
        for kept, wanted in ((first, row["outcome"] != "fix"), (to_fix, row["outcome"] == "fix")):
            if wanted and len(kept) < MAX_SHOWN:
                kept.append(row)
        if counts.total() % rows_at_once == 0 or monotonic() - since > SECONDS_AT_ONCE:
            yield part()
            since = monotonic()
    line = lines
    yield part()


def _refused(fault: TableError) -> str:
    rows = "".join(f"<li>{text(each.label)}: {text(each.words)}</li>" for each in fault.fix)
    heading = text(message("Fix the first row, then try again"))
    return f'<section class="fix" data-outcome="fix" tabindex="-1"><h2>{heading}</h2><ul>{rows}</ul></section>'


def _shown(counts: Counter[str], first: list[dict[str, str]], to_fix: list[dict[str, str]]) -> str:
    summary = f'<p class="counts">{text(counted(counts))}</p>'
    return f"{summary}{_to_fix(counts, to_fix)}{_first_rows(counts, first)}"


def _to_fix(counts: Counter[str], rows: list[dict[str, str]]) -> str:
    if not rows:
        return ""
    listed = "".join(f"<li><b>{text(_name(row))}</b> {text(row['fix'])}</li>" for row in rows)
    more = _more(counts["fix"] - len(rows))
    heading = text(message("Rows to fix"))
    return f'<section class="fix"><h2>{heading}</h2><ul>{listed}</ul>{more}</section>'


def _first_rows(counts: Counter[str], rows: list[dict[str, str]]) -> str:
    if not rows:
        return ""
    names = (message("Row"), message("Answer"), message("Sections"))
    head = "".join(f"<th>{text(name)}</th>" for name in names)
    body = "".join(_row(row) for row in rows)
    more = _more(counts["answer"] + counts["not_covered"] + counts["depends"] - len(rows))
    return (
        f'<h2>{text(message("First rows"))}</h2><table class="facts"><thead><tr>{head}</tr></thead>'
        f"<tbody>{body}</tbody></table>{key_html(row['mark'] for row in rows)}{more}"
    )


def _row(row: dict[str, str]) -> str:
    answer = (
        f"<b>{text(row['answer'])}</b>" if row["answer"] else text(
            message("Not covered: {why}", why=row["not_covered"])
        )
    )
    if row["outcome"] == "depends":
        answer = f"{text(message('It depends. {ask}', ask=row['ask']))} <b>{text(row['safe'])}</b>"
    warnings = f'<p class="warning">{text(row["warnings"])}</p>' if row["warnings"] else ""
    # The page stands in the folder that the link names.
    address = text("?" + without_answer(row["link"]).partition("?")[2])
    opened = f'<a href="{address}" target="_blank" rel="noopener">{text(message("Working of this row"))}</a>'
    mark = mark_html(row["mark"]) if row["mark"] else ""
    sections = f"{text(row['sections'])} {mark}<br>{opened}"
    return f"<tr><td>{text(_name(row))}</td><td>{answer}{warnings}</td><td>{sections}</td></tr>"


def _name(row: dict[str, str]) -> str:
    label = row.get("label", "").strip()
    line = message("Line {line}", line=row["line"])
    return str(message("{line}, {label}", line=line, label=label) if label else line)


def _more(count: int) -> str:
    if count <= 0:
        return ""
    return f"<p>{text(message('And {count} more, in the file to download.', count=shown_number(count)))}</p>"
