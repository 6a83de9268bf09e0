"""A result as a note to copy: what was entered, the answer, where the code states it and how that was checked."""

from __future__ import annotations

from html import escape

from calc.answer import Row, Table
from calc.calculator import Result
from calc.known import known
from calc.messages import Message, message
from calc.rulebook import rule
from calc.trace import MARK_WORDS
from calc.unknown.assumed import assumed_words
from site_assets.render.unfinished import unfinished_words

COLUMNS = ("part", "size", "section")  # of a list of parts; where each lands and why stands in the answer


def note_html(result: Result) -> str:
    """Return the note as a hidden text; the page's script copies it with the link."""
    return f'<pre class="answer-note" data-answer-note hidden>{escape(note(result))}</pre>'


def note(result: Result) -> str:
    """Return the note of an answer, of one that depends, or of a case that is not covered, line by line."""
    found = result.found.note(result.edition) if result.found else []
    lines = [*found, *_outcome(result), _entered(result), *_assumed(result), *_basis(result), *_editions(result)]
    lines += result.warnings
    return "\n".join(map(str, lines))


def _entered(result: Result) -> Message:
    return message("Entered: {entered}.", entered=result.entered or message("nothing beyond the form's defaults"))


def _assumed(result: Result) -> list[Message]:
    return [message("Assumed: {words}", words=words) for words in assumed_words(result)]


def _editions(result: Result) -> list[Message]:
    check = result.edition_check
    return [check.words] if check and check.same else []


def _depends(result: Result) -> list[Message]:
    depends = known(result.depends)
    safe = message("{name}: it depends. On the safe side: {safe}", name=result.calculator.name, safe=depends.safe_words)
    rows = [message("- {when}. Then: {answer}", when=each.when, answer=each.words) for each in depends.alternatives]
    more = [message("- {count} more answers are possible.", count=depends.more)] if depends.more else []
    return [safe, *rows, *more, message("To settle: {label}. {why}", label=depends.ask.label, why=depends.ask.why)]


def _outcome(result: Result) -> list[Message]:
    outside = result.not_covered
    if result.depends:
        return _depends(result)
    if outside:
        name = result.calculator.name
        return [message("{name}: not covered. {why} {look_in}", name=name, why=outside.why, look_in=outside.look_in)]
    answer = result.answered
    told = message("{name}: {answer}", name=answer.name, answer=answer.in_one_line)
    lacking = [unfinished_words(answer.unfinished)] if answer.unfinished else []
    table = answer.table
    return [told, *lacking, *(_row(table, row) for row in table.rows)] if table else [told, *lacking]


def _row(table: Table, row: Row) -> Message:
    if "size" in table.headings:
        return message("- {cells}", cells="; ".join(str(row.cells[key]) for key in COLUMNS))
    first, *others = table.headings
    cells = (message("{heading}: {cell}", heading=table.headings[key], cell=row.cells[key]) for key in others)
    return message("- {what}; {cells}", what=row.cells[first], cells="; ".join(map(str, cells)))


def _basis(result: Result) -> list[Message]:
    edition = result.edition
    if not result.answer or not result.answer.basis:
        return [message("{edition} edition.", edition=edition)]
    stated = rule(result.answer.basis, edition)
    if stated.mark == "confirmed":
        return [message("{section}, {edition} edition.", section=stated.section, edition=edition)]
    mark = MARK_WORDS[stated.mark]
    return [message("{section}, {edition} edition ({mark}).", section=stated.section, edition=edition, mark=mark)]
