"""A chart as a figure: its series for the page's script, and the same told as a list."""

from __future__ import annotations

import json
from html import escape

from calc.answer import Chart, Line
from calc.messages import Message, message
from calc.trace import shown_number

# How lines differ without colour: the words that name a line begin with its stroke.
STROKES: tuple[tuple[Message, list[int]], ...] = (
    (message("Solid line: {words}.", words="{words}"), []),
    (message("Dashed line: {words}.", words="{words}"), [8, 5]),
    (message("Dotted line: {words}.", words="{words}"), [2, 4]),
    (message("Dashes and dots: {words}.", words="{words}"), [10, 4, 2, 4]),
)


def charts_html(charts: tuple[Chart, ...]) -> str:
    """Return every chart of an answer as a figure with its text twin."""
    return "".join(_chart(chart) for chart in charts)


def _text(words: Message | str) -> str:
    return escape(str(words))


def _chart(chart: Chart) -> str:
    data = {
        "kind": chart.kind,
        "across": str(chart.across),
        "up": str(chart.up),
        "names": [str(words) for words in chart.names],
        "lines": [
            {"words": str(line.words), "dash": STROKES[place % len(STROKES)][1], "points": line.points}
            for place, line in enumerate(chart.lines)
        ],
    }
    return (
        f'<figure class="chart" data-chart="{escape(json.dumps(data))}"><figcaption>{_text(chart.title)}</figcaption>'
        f'<div class="chart-canvas"></div><ul class="chart-twin">{_twin(chart)}</ul></figure>'
    )


def _twin(chart: Chart) -> str:
    if chart.kind == "bars":
        rows = [_point(chart, name, up) for name, (_, up) in zip(chart.names, chart.lines[0].points, strict=True)]
    else:
        rows = [_line(chart, place, line) for place, line in enumerate(chart.lines)]
    return "".join(f"<li>{_text(words)}</li>" for words in rows)


def _line(chart: Chart, place: int, line: Line) -> Message:
    stroke = STROKES[place % len(STROKES)][0]
    points = "; ".join(str(_point(chart, _number(across), up)) for across, up in line.points)
    return message("{stroke} {points}.", stroke=Message(stroke.template, {"words": line.words}), points=points)


def _point(chart: Chart, across: object, up: float) -> Message:
    return Message(chart.point.template, {"across": across, "up": _number(up)})


def _number(value: float) -> str:
    return shown_number(float(f"{value:.3g}"))
