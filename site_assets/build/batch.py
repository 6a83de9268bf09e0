"""The part of a calculator's page that takes a whole table, as static HTML from the declaration."""

from __future__ import annotations

from html import escape

from calc.batch import LABEL, example_table, value_columns
from calc.calculator import Calculator
from calc.editions import EDITIONS
from calc.messages import Message, message
from calc.output import Output, shown_unit
from site_assets.build.schemas import schema_path
from site_assets.build.state_words import START_WORDS
from site_assets.render.answer import text

STATE_WORDS = START_WORDS | {
    "unreadable": message("This file cannot be read. Choose it again."),
    "empty": message("There is nothing to work out. Paste a table or choose a file."),
    "running": message("The rows are being worked out. The form above can be used meanwhile."),
    "stopped": message("Stopped. The rows that are done are below."),
    "refused": message("No row was worked out."),
    "done": message("All rows are worked out."),
    "kept": message("{lines} lines pasted and kept. They are too many to show here.", lines="{lines}"),
    "gone": message(
        "The server no longer has the calculator of this page: it may hold a newer version. Nothing you entered is "
        "lost yet: copy your rows or save them as a file, then load the page again."
    ),
}


def batch_html(calculator: Calculator) -> str:
    """Return the fold-out of `calculator` for a pasted, chosen or dropped table."""
    words = " ".join(f'data-{name}="{text(sentence)}"' for name, sentence in STATE_WORDS.items())
    example = example_table(calculator)
    return (
        f'<details class="many" data-many="{calculator.slug}"><summary>{text(message("Many at once"))}</summary>'
        f"{_paragraph(message('A table goes in and comes back with its answers. The first row names the columns.'))}"
        f"{_columns(calculator)}{_answers(calculator)}"
        f'<label for="many-file">{text(message("A file"))}</label>'
        f'<p id="file-hint" class="hint">{text(_FILE_HINT)}</p>'
        '<input id="many-file" type="file" aria-describedby="file-hint">'
        f'<label for="many-text">{text(message("Or rows, pasted from a spreadsheet"))}</label>'
        f'<p id="many-hint" class="hint">{text(_HINT)}</p>'
        '<textarea id="many-text" rows="6" wrap="off" autocomplete="off" autocapitalize="off" spellcheck="false" '
        'aria-describedby="many-hint"></textarea>'
        f'<p class="many-kept" data-many-kept role="status" hidden><span></span> '
        f'<a class="button quiet" data-many-save download="{calculator.slug}-rows.txt">'
        f"{text(message('Save these lines as a file'))}</a> "
        f'<button type="button" class="quiet" data-many-drop>{text(message("Remove these lines"))}</button></p>'
        '<div class="form-actions">'
        f'<button type="button" class="primary" data-many-run>{text(message("Work out the rows"))}</button>'
        f'<button type="button" class="quiet" data-many-example="{escape(example)}'
        f'">{text(message("Put in an example"))}'
        "</button></div>"
        f'<p class="many-state" role="status" {words}></p>'
        '<div class="many-progress" hidden>'
        f'<progress max="1" value="0" aria-label="{text(message("Part of the rows that is done"))}"></progress>'
        f'<span></span><button type="button" class="quiet" data-many-stop>{text(message("Stop"))}</button></div>'
        f'<p><a class="button" data-many-keep download="{calculator.slug}-answers.csv" hidden>'
        f"{text(message('Keep all answers as a CSV file'))}</a></p>"
        '<div class="many-result" data-many-result></div></details>'
    )


_HINT = message(
    "Blank cells count as left out. In the spreadsheet, make cells text first, so that 1/2 does not become a date."
)
_FILE_HINT = message("A CSV file in UTF-8, chosen here or dropped anywhere on this part. It stays on this device.")


def _paragraph(words: Message) -> str:
    return f"<p>{text(words)}</p>"


def _columns(calculator: Calculator) -> str:
    """Return the names that the first row may hold, and what goes below each."""
    rows = [
        (LABEL, message("Any name for the row, passed through.")),
        (
            "edition",
            message("One of {editions}. Left out: the edition chosen on this page.", editions=", ".join(EDITIONS)),
        ),
    ]
    for name, field in calculator.fields.items():
        default = calculator.defaults.get(name)
        words = {"label": field.label, "enter": field.enter, "default": default}
        if name not in calculator.defaults:
            rows.append((name, message("{label}. {enter} Every row needs it.", **words)))
        elif default is None:
            rows.append((name, message("{label}. {enter}", **words)))
        else:
            rows.append((name, message("{label}. {enter} Left out: {default}.", **words)))
    return _folded(message("Names of the columns"), rows)


def _answers(calculator: Calculator) -> str:
    """Return the columns that come back with the values of the answer, what each means, and where programs look."""
    columns = value_columns(calculator)
    rows = [(columns[output.name], _told(output)) for output in calculator.outputs]
    programs = message(
        "For programs: what goes in and what comes out, as a file on this site, not saved for offline use:"
    )
    path = f"<p>{text(programs)} <code>{schema_path(calculator.slug)}</code></p>"
    return _folded(message("Columns of the answer"), rows, path, searched=False)


def _told(output: Output) -> Message:
    """Return what an output means, its unit or its choices, and when it is there."""
    unit = shown_unit(output.unit)
    words = message("{meaning}, {unit}", meaning=output.meaning, unit=unit) if unit else output.meaning
    if output.choices:
        words = message("{meaning}: {choices}", meaning=words, choices=", ".join(output.choices))
    return (
        message("{words}. Only {when}.", words=words, when=output.when)
        if output.when
        else message("{words}.", words=words)
    )


def _folded(title: Message, rows: list[tuple[str, Message]], after: str = "", *, searched: bool = True) -> str:
    listed = "".join(f"<dt><code>{name}</code></dt><dd>{text(words)}</dd>" for name, words in rows)
    opening = '<details class="columns">' if searched else '<details class="columns" data-search-exclude>'
    return f"{opening}<summary>{text(title)}</summary><dl>{listed}</dl>{after}</details>"
