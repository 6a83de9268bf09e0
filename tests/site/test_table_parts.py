"""A table that Python answers piece by piece: no piece is large, none takes long, and together they are the table."""

import json
from itertools import count

import pytest

from calc import CALCULATORS
from calc.batch import answer_table
from site_assets.render import table_parts as declared
from site_assets.render.table_parts import MAX_SHOWN, table_parts

SLUG = "main-bonding-jumper"
ROWS = 230
AT_ONCE = 50


def table(rows=ROWS):
    lines = [f"Panel {each},{'5/0' if each % 7 == 0 else '3/0'},{each % 9 + 1}" for each in range(rows)]
    return "\n".join(["label,conductor,sets", *lines]).encode()


def parts(rows=ROWS):
    return [json.loads(part) for part in table_parts(SLUG, table(rows), "", AT_ONCE)]


@pytest.fixture
def quick(monkeypatch):
    """No time passes."""
    monkeypatch.setattr(declared, "monotonic", lambda: 0.0)


def test_a_piece_holds_as_many_rows_as_are_asked_for_at_once_and_all_pieces_are_the_table(quick):
    pieces = parts()
    assert [piece["text"].count("\r\n") for piece in pieces] == [1 + AT_ONCE, *[AT_ONCE] * 3, ROWS % AT_ONCE]
    from io import BytesIO

    whole = answer_table(CALCULATORS[SLUG], BytesIO(table()))
    written = whole.first_line() + "".join(whole.line(row.values()) for row in whole.rows)
    assert "".join(piece["text"] for piece in pieces) == written


def test_rows_that_take_long_come_one_by_one(monkeypatch):
    clock = count()
    monkeypatch.setattr(declared, "monotonic", lambda: float(next(clock)))
    assert [piece["text"].count("\r\n") for piece in parts(4)] == [2, 1, 1, 1, 0]


def test_what_is_shown_stays_small_however_long_the_table_is(quick):
    for piece in parts():
        assert piece["html"].count("<li>") <= MAX_SHOWN and piece["html"].count("<tr>") <= MAX_SHOWN + 1
    last = parts()[-1]
    assert last["part"] == 1 and "in the file to download" in last["html"]
