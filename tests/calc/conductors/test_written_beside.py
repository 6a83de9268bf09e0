"""Sizes as they are written on a sheet and as a phone takes them down, with what stands beside them.

The sizes are the trade's own words for the American wire gauge: "aught" is a zero, three aught 3/0 (000); MCM and
thousand circular mils are kcmil.
"""

import pytest

from calc import CALCULATORS, main_bonding_jumper
from calc.conductors.size import read_conductors, read_size
from calc.field import UnclearError


@pytest.mark.parametrize(
    ("spoken", "label"),
    [
        ("three aught", "3/0"),
        ("3 ought", "3/0"),
        ("four-aught", "4/0"),
        ("for ought", "4/0"),
        ("to aught", "2/0"),
        ("double aught", "2/0"),
        ("one ought AWG", "1/0"),
        ("3/O", "3/0"),
        ("three slash zero", "3/0"),
        ("number six", "6"),
        ("Number 4", "4"),
        ("six gauge", "6"),
        ("four", "4"),
        ("eight", "8"),
        ("fourteen", "14"),
        ("two fifty", "250kcmil"),
        ("two hundred fifty kcmil", "250kcmil"),
        ("three hundred and fifty MCM", "350kcmil"),
        ("five hundred", "500kcmil"),
        ("500 KC mil", "500kcmil"),
        ("500 K C M", "500kcmil"),
        ("five hundred thousand circular mils", "500kcmil"),
        ("seven fifty", "750kcmil"),
        ("one thousand", "1000kcmil"),
        ("twelve fifty", "1250kcmil"),
        ("fifteen hundred", "1500kcmil"),
        ("two thousand kcmil", "2000kcmil"),
    ],
)
def test_a_size_that_was_dictated_is_read(spoken, label):
    assert read_size(spoken) == label


@pytest.mark.parametrize("spoken", ["five aught", "one fifty", "four zero", "number", "two five hundred", "oh"])
def test_what_was_misheard_is_refused_and_not_guessed(spoken):
    """Nothing is larger than 4/0 but in kcmil, and the least of these is 250; "four zero" may be 4/0 or 40."""
    with pytest.raises(ValueError):
        read_size(spoken)


@pytest.mark.parametrize(
    ("written", "size", "sets", "metal"),
    [
        ("2-3/0", "3/0", 2, None),
        ("2x3/0", "3/0", 2, None),
        ("(2) 500 kcmil", "500kcmil", 2, None),
        ("3 sets of 500", "500kcmil", 3, None),
        ("two sets of three aught aluminum", "3/0", 2, "aluminum"),
        ("2 parallel 3/0", "3/0", 2, None),
        ("4 x 600 kcmil", "600kcmil", 4, None),
        ("3/0 AL", "3/0", None, "aluminum"),
        ("3/0 cu", "3/0", None, "copper"),
        ("aluminum 3/0", "3/0", None, "aluminum"),
        ("500 MCM, CCA", "500kcmil", None, "copper-clad-aluminum"),
        ("3/0 copper-clad aluminum", "3/0", None, "copper-clad-aluminum"),
        ("3/0", "3/0", None, None),
    ],
)
def test_what_stands_beside_a_size_is_read(written, size, sets, metal):
    read = read_conductors(written)
    assert (read.size, read.sets, read.metal) == (size, sets, metal)


@pytest.mark.parametrize("written", ["12-2", "6-3", "2-0", "4-0", "2-00", "3-500", "(4) 3/0", "4-4/0", "1-1"])
def test_a_number_that_may_count_wires_is_asked_for_and_never_taken_for_sets(written):
    """12-2 and 6-3 are cables of two and three wires, 4-0 is 4/0 to many; 3-500 stands for three wires in a conduit."""
    with pytest.raises(UnclearError, match="may count wires in one conduit or cable"):
        read_conductors(written)


def test_sets_and_metal_written_beside_the_size_answer_as_in_their_own_fields():
    """Table 250.102(C)(1): 2 x 3/0 copper, 335,600 cmil, 2 AWG; 3/0 aluminum, 167,800 cmil, 6 AWG."""
    assert main_bonding_jumper(edition="2023", conductor="2-3/0").answer_code == "2-copper"
    assert main_bonding_jumper(edition="2023", conductor="3/0 AL").answer_code == "6-copper"
    written = main_bonding_jumper(edition="2023", conductor="two sets of three aught", sets="unknown")
    assert (written.inputs["conductor"], written.inputs["sets"], written.answer_code) == ("3/0", 2, "2-copper")
    apart = main_bonding_jumper(edition="2023", conductor="3/0", sets=2)
    assert written.answer == apart.answer


def test_a_size_that_says_something_else_than_the_field_beside_it_is_asked_about():
    for beside in ({"sets": "1"}, {"sets": "3"}):
        (fix,) = main_bonding_jumper(conductor="2-3/0", **beside).fix
        assert fix.field == "conductor" and "2 in parallel" in str(fix.words) and "Sets in parallel" in str(fix.words)
    (fix,) = main_bonding_jumper(conductor="3/0 AL", conductor_metal="copper").fix
    assert fix.field == "conductor" and "“3/0 AL” says aluminum" in str(fix.words)
    assert main_bonding_jumper(conductor="3/0 AL", conductor_metal="aluminum").outcome == "answer"


@pytest.mark.parametrize(
    ("slug", "field", "written"),
    [
        ("main-bonding-jumper", "conductor", "12-2"),
        ("jumper-withstand", "size", "2-3/0"),
        ("ground-fault-loop", "return_conductor", "2-3/0"),
        ("electrode-resistance", "conductor", "3/0 AL"),
    ],
)
def test_what_has_no_field_of_its_own_is_still_refused(slug, field, written):
    calculator = CALCULATORS[slug]
    fix = calculator(**{**calculator.example, field: written}).fix
    assert [each.field for each in fix] == [field]


def test_a_size_entered_twice_is_told_so_whatever_stands_beside_it():
    result = main_bonding_jumper.run([("conductor", "2-3/0"), ("conductor", "2-3/0")])
    assert [str(each.words) for each in result.fix] == ["This is entered twice. Enter it once."]
