"""Parts found on site, held one by one against the rows of a list: each by the calculator that sized its row."""

from __future__ import annotations

import re
from dataclasses import replace

from calc import permalink
from calc.answer import Row
from calc.calculator import FieldError, Result
from calc.field import Field, UnclearError
from calc.found.declared import FOUND as NAME
from calc.found.declared import SiteCheck
from calc.found.field import read_found, shown_found
from calc.found.verdict import ENOUGH, NOT_PERMITTED, SHORT, UNKNOWN, PartVerdict, Verdict
from calc.known import known
from calc.messages import Message, message

MAX_PARTS = 30
_WORST_FIRST = (SHORT, NOT_PERMITTED, UNKNOWN, ENOUGH)
_LEAVE_OUT = "leave-out"  # the status of a row that says what must not be there


def read_parts(text: str) -> str:
    """Return parts and what was found of each in one spelling, with semicolons between.

    Raises: ValueError when nothing is written so, UnclearError when a part is named twice or its size is missing.

    >>> read_parts("Main bonding jumper: 6 AWG Cu; grounding electrode conductor = listed")
    'main-bonding-jumper=6-copper;grounding-electrode-conductor=listed'
    """
    pairs: dict[str, str] = {}
    for written in re.split(r"[;\n]", text):
        part, between, found = written.replace("=", ":").rpartition(":")  # a part's name may hold a colon
        if not between or not _key(part):
            raise UnclearError(message("Write each part, a colon, and what was found of it."))
        if _key(part) in pairs:
            raise UnclearError(message("Name each part once."))
        pairs[_key(part)] = read_found(found)
    if len(pairs) > MAX_PARTS:
        raise ValueError(text)
    return ";".join(f"{part}={found}" for part, found in pairs.items())


def _key(words: str) -> str:
    return re.sub(r"[^a-z0-9]+", "-", words.lower()).strip("-")


def shown_parts(found: str) -> Message:
    """Return parts and what was found of each as they are read out.

    >>> str(shown_parts("main-bonding-jumper=6-copper"))
    'main bonding jumper: 6 AWG copper'
    """
    each = [(part.replace("-", " "), shown_found(size)) for part, size in _pairs(found)]
    return message("{parts}", parts="; ".join(f"{part}: {size}" for part, size in each))


def _pairs(found: str) -> list[tuple[str, str]]:
    return [(part, size) for part, _, size in (each.partition("=") for each in found.split(";"))]


def check_parts(result: Result) -> Verdict:
    """Return the verdict on every part found, the worst first; rows that nothing was entered for stay unchecked.

    Raises: FieldError for a part that is no row of the list, or that more than one may be.
    """
    found = str(result.inputs[NAME])
    rows = dict(zip(result.answered.values["sizes"], known(result.answered.table).rows, strict=True))
    parts = [_checked(_row(part, rows), size, rows) for part, size in _pairs(found)]
    parts.sort(key=lambda each: _WORST_FIRST.index(each.verdict.verdict))
    worst = parts[0].verdict
    words = [message("{part}: {verdict}. {more}", part=each.part, verdict=each.verdict.headline,
                     more=" ".join(map(str, each.verdict.more))) for each in parts]  # fmt: skip
    checked = {each.key for each in parts}
    left = sum(bool(row.link) and key not in checked for key, row in rows.items())
    if left:
        words.append(message("Not checked, as nothing was entered for them: {count} more of the list.", count=left))
    return Verdict(found, worst.verdict, _headline(parts), worst.section, open=tuple(words), parts=tuple(parts))


def _headline(parts: list[PartVerdict]) -> Message:
    by_verdict = {
        verdict: "; ".join(str(each.part) for each in parts if each.verdict.verdict == verdict)
        for verdict in _WORST_FIRST
    }
    if by_verdict[SHORT] or by_verdict[NOT_PERMITTED]:
        return message("To correct: {parts}", parts="; ".join(filter(None, map(by_verdict.get, _WORST_FIRST[:2]))))
    if by_verdict[UNKNOWN]:
        return message("Not checked: {parts}", parts=by_verdict[UNKNOWN])
    return message("Large enough: {parts}", parts=by_verdict[ENOUGH])


def _row(part: str, rows: dict[str, Row]) -> str:
    """Return the key of the row that `part` names: its key, the words of its part, or how one of them begins."""
    names = {key: (key, _key(str(row.cells["part"]))) for key, row in rows.items()}
    for fits in (str.__eq__, str.startswith):
        keys = [key for key, own in names.items() if any(fits(name, part) for name in own)]
        if len(keys) == 1:
            return keys[0]
        if keys:
            break
    listed = "; ".join(str(row.cells["part"]) for row in rows.values() if row.link)
    raise FieldError(
        NAME, message("“{part}” is not one row of this list. Its rows are: {rows}.", part=part, rows=listed)
    )


def _checked(key: str, size: str, rows: dict[str, Row]) -> PartVerdict:
    from calc.registry import CALCULATORS

    row = rows[key]
    part, section = message("{part}", part=row.cells["part"]), str(row.cells["section"])
    if row.status == _LEAVE_OUT:
        headline = message("Leave it out: {found} found", found=shown_found(size))
        return PartVerdict(key, part, Verdict(size, NOT_PERMITTED, headline, section))
    slug, _, query = row.link.partition("?")
    calculator = CALCULATORS.get(slug)
    if calculator is None or calculator.site_check is None:
        return PartVerdict(key, part, Verdict(size, UNKNOWN, message("The list gives no size to check"), section))
    given = [(name, text) for name, text in permalink.read(query) if name not in ("said", "assumed")]
    judged = calculator.work([*given, (NAME, size)])
    if judged.outcome == "fix":
        raise FieldError(NAME, judged.fix[0].words)
    if judged.found is None:
        return PartVerdict(key, part, Verdict(size, UNKNOWN, message("Not covered here, so not checked"), section))
    asks_more = not str(judged.answered.in_one_line).startswith(str(row.cells["size"]))
    if judged.found.verdict == ENOUGH and "size" in judged.answered.values and asks_more:
        headline = message("Not checked whole, the list says {size}: {found} found", size=row.cells["size"],
                           found=shown_found(size))  # fmt: skip
        return PartVerdict(key, part, replace(judged.found, verdict=UNKNOWN, headline=headline))
    return PartVerdict(key, part, judged.found)


PARTS = SiteCheck(
    Field(
        label=message("Sizes found on site"),
        hint=message(
            "To check installed wires, enter each part, a colon, its size and material; a semicolon before the next. "
            "Leave it empty to get only the list."
        ),
        enter=message(
            "Enter parts of the list with what was found, for example main bonding jumper: 4 copper; grounding "
            "electrode conductor: 6 copper. Enter listed for a part that came with listed equipment, unknown for one "
            "that could not be seen."
        ),
        read=read_parts,
        show=shown_parts,
        longest=600,
    ),
    check_parts,
)
