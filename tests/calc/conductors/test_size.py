"""Sizes in any usual spelling, and none that is not listed."""

import pytest

from calc.conductors.size import read_size, shown_size
from calc.field import UnclearError
from tests.independent.wire_gauge import listed_areas


@pytest.mark.parametrize(
    ("written", "label"),
    [
        ("3/0", "3/0"),
        ("3/0 AWG", "3/0"),
        ("3/0awg", "3/0"),
        ("000", "3/0"),
        ("#3/0", "3/0"),
        (" 3 / 0 ", "3/0"),
        ("3⁄0", "3/0"),
        ("0", "1/0"),
        ("00", "2/0"),
        ("0000", "4/0"),
        ("4", "4"),
        ("#4", "4"),
        ("No. 4", "4"),
        ("4 AWG", "4"),
        ("500 kcmil", "500kcmil"),
        ("500kcmil", "500kcmil"),
        ("500 MCM", "500kcmil"),
        ("500KCMIL", "500kcmil"),
        ("500", "500kcmil"),
        ("250", "250kcmil"),
        ("2000 kcmil", "2000kcmil"),
        ("1,000 kcmil", "1000kcmil"),
        ("AWG #4", "4"),
        ("3/0\u00a0AWG", "3/0"),
        ("18", "18"),
        ("18 AWG", "18"),
    ],
)
def test_usual_spellings_give_the_label(written, label):
    assert read_size(written) == label


@pytest.mark.parametrize(
    "written",
    [
        "",
        " ",
        "5/0",
        "1/1",
        "0/0",
        "00000",
        "5",
        "7",
        "9",
        "20",
        "-4",
        "4.0",
        "3/0 kcmil",
        "500 AWG",
        "550",
        "2001",
        "249",
        "10000",
        "1 0",
        "1 2",
        "2 50",
        "5 00",
        "2 3/0",
        "6 solid",
        "<script>alert(1)</script>",
        "３/0x",
        "²",
        "1" * 10_000,
        "٣/0",
    ],
)
def test_what_is_no_listed_size_is_refused(written):
    with pytest.raises(ValueError):
        read_size(written)


@pytest.mark.parametrize(
    "written",
    ["3/0 AL", "3/0 CU", "3/0 copper", "500 MCM, AL", "4 AWG aluminum", "2-3/0", "2x3/0", "2 × 500 kcmil", "(2) #3/0",
     "2 sets of 3/0", "1-1/0", "2-0", "12-2"],
)  # fmt: skip
def test_a_size_with_its_metal_or_number_is_asked_for_alone(written):
    """No metal beside one that a default chose, no number that another field has as 1; 12-2 is a cable."""
    with pytest.raises(UnclearError, match="size of one conductor only, such as 3/0"):
        read_size(written)


def test_every_listed_size_reads_back_from_its_label_and_from_how_it_is_shown():
    for label in listed_areas():
        assert read_size(label) == label
        assert read_size(shown_size(label)) == label
