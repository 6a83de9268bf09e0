"""How an open input is written: `unknown`, or a range; in Python, a link, a table and on the command line."""

import io

import pytest

from calc import CALCULATORS, main_bonding_jumper, permalink
from calc.batch import answer_table
from calc.json_output import left_out_to_dict, result_to_dict

PUBLISHED = (
    ("livestock-equipotential-plane", "plane"),
    ("livestock-equipotential-plane", "tied"),
    ("clamp-reading", "follows_load"),
    ("clamp-reading", "water_main"),
    ("surface-voltage", "lies"),
)


def fix_of(slug, **inputs):
    result = CALCULATORS[slug](**inputs)
    assert result.outcome == "fix", result.outcome
    return {each.field: str(each.words) for each in result.fix}


@pytest.mark.parametrize(("slug", "field"), PUBLISHED)
def test_the_five_published_choices_of_this_name_keep_their_meaning(slug, field):
    """Left out, each stands at this choice: the same inputs and the same answer, and nothing is open."""
    example = {name: value for name, value in CALCULATORS[slug].example.items() if name != field}
    written, left_out = CALCULATORS[slug](**example, **{field: "unknown"}), CALCULATORS[slug](**example)
    assert (written.inputs, written.answer_code, written.outcome) == (
        left_out.inputs, left_out.answer_code, left_out.outcome
    )
    assert type(written.inputs[field]) is str and written.depends is None


def test_no_other_field_has_a_choice_of_this_name():
    named = [
        (slug, name)
        for slug, calculator in CALCULATORS.items()
        for name, field in calculator.fields.items()
        if "unknown" in {choice.value for choice in field.choices}
    ]
    assert sorted(named) == sorted(PUBLISHED)


@pytest.mark.parametrize(
    ("written", "low", "high"),
    [("50..100 ft", 50, 100), ("50 ft..100 ft", 50, 100), ("600 in .. 100ft", 50, 100), ("1.5..2", 1.5, 2)],
)
def test_each_end_of_a_range_is_read_by_the_field_and_a_bare_low_end_has_the_unit_of_the_high_one(written, low, high):
    loop = CALCULATORS["ground-fault-loop"](voltage_to_ground=120, device=20, conductor="12", length=written)
    assert (loop.inputs["length"].low, loop.inputs["length"].high) == (low, high)


@pytest.mark.parametrize(
    ("written", "says"),
    [
        ("100..50", "The first end of a range is the smaller one."),
        ("0.5..1 ft 8 in", "Write the unit after both ends of the range."),
        ("50..", "Enter"),
        ("..50", "Enter"),
        ("50..100..150", "Enter"),
        ("50..100000000", "Enter"),
        ("5 s..10 ft", "Enter"),
    ],
)
def test_a_range_that_cannot_be_read_says_what_to_enter(written, says):
    words = fix_of("ground-fault-loop", voltage_to_ground=120, device=20, conductor="12", length=written)["length"]
    assert says in words


def test_a_range_in_a_choice_is_no_range():
    assert "Choose one of" in fix_of("main-bonding-jumper", conductor="3/0", metal="copper..aluminum")["metal"]


def test_a_size_and_a_whole_number_take_a_range_too():
    result = main_bonding_jumper(conductor="2..1/0", sets="1..1")
    assert result.outcome in {"depends", "answer"}
    assert (result.inputs["conductor"].low, result.inputs["conductor"].high) == ("2", "1/0")
    assert fix_of("main-bonding-jumper", conductor="1/0..2")["conductor"].count("smaller one") == 1


def test_a_link_carries_what_is_open_and_opens_the_same_again():
    for inputs in ({"conductor": "500kcmil", "conductor_metal": "unknown"}, {"conductor": "3/0", "sets": "1..2"}):
        first = main_bonding_jumper(edition="2023", **inputs)
        link = permalink.write(first)
        again = main_bonding_jumper.run(permalink.read(link.partition("?")[2]))
        assert again.outcome == "depends" and again.linked_answer == first.answer_code == again.answer_code
        assert again.inputs == first.inputs and again.left_out == first.left_out and permalink.write(again) == link


def test_a_table_takes_unknown_in_a_cell_and_leaves_an_empty_one_as_it_was():
    table = b"conductor,conductor_metal\n500kcmil,unknown\n500kcmil,\n500kcmil,steel\n"
    rows = list(answer_table(main_bonding_jumper, io.BytesIO(table)).rows)
    assert [row["outcome"] for row in rows] == ["depends", "answer", "fix"]
    assert (rows[0]["depends_on"], rows[0]["safe"]) == ("conductor_metal", "1/0 AWG copper wire or larger")
    assert rows[0]["ask"].startswith("conductor_metal: ") and rows[0]["answer"] == rows[0]["size"] == ""
    assert rows[1]["size"] == "1/0" and rows[1]["depends_on"] == ""


def test_a_table_that_was_answered_before_open_inputs_is_still_read():
    """Its added columns are those of then; the four that came later are not among them."""
    first = answer_table(main_bonding_jumper, io.BytesIO(b"conductor\n3/0\n"))
    row = next(first.rows)
    columns = [name for name in first.columns if name not in ("depends_on", "safe", "ask", "assumed")]
    older = ",".join(columns) + "\n" + ",".join('"' + row[name].replace('"', '""') + '"' for name in columns) + "\n"
    (again,) = answer_table(main_bonding_jumper, io.BytesIO(older.encode())).rows
    assert again["size"] == "4"


def test_json_keeps_its_keys_and_adds_those_of_an_answer_that_depends():
    plain = result_to_dict(main_bonding_jumper(edition="2023", conductor="500kcmil"))
    result = main_bonding_jumper(conductor="500kcmil", conductor_metal="unknown")
    depends = result_to_dict(result)
    assert set(depends) - set(plain) == {"safe", "alternatives", "more_alternatives", "ask", "depends_on"}
    assert depends["answer"] is None and depends["safe"]["size"] == "1/0" and depends["outcome"] == "depends"
    assert [set(each) for each in depends["alternatives"]] == [{"when", "answer", "outcome", "say"}] * 2
    assert set(depends["ask"]) == {"field", "label", "why"} and depends["inputs"]["conductor_metal"] == "unknown"
    assert set(left_out_to_dict(result)) == {"assumed", "editions"}


def test_an_edition_that_is_unknown_is_one_that_was_not_chosen():
    result = main_bonding_jumper(edition="unknown", conductor="3/0")
    assert (result.edition, result.edition_chosen, result.answer_code) == ("2023", False, "4-copper")


def test_a_field_that_cannot_be_bounded_is_asked_for_by_name():
    mesh = {"rise": "10", "arrangement": "mesh", "depth": "4", "spacing": "6..12"}
    assert fix_of("deck-voltage", **mesh)["spacing"].startswith(
        "No bounds can be given for an unknown or a range here. Where its wires fall beside the wall moves the result "
        "up and down."
    )


def test_a_range_that_begins_at_the_zero_for_none_is_refused_and_one_above_it_is_not():
    """Without a pipe no current flows on it; with one of hardly any resistance all does."""
    stray = {"load": "20", "neutral": "4", "length": "100", "grounding_conductor": "8"}
    assert "0 stands for none here" in fix_of("stray-neutral-current", **stray, pipe="0..1 ohm")["pipe"]
    assert CALCULATORS["stray-neutral-current"](**stray, pipe="0.01..1 ohm").outcome == "depends"


def test_a_depth_that_bounds_nothing_beside_the_metal_bounds_what_is_right_over_it():
    metal = {"soil": "resistivity", "resistivity": "100", "cover": "12..24 in"}
    assert "For the worst, enter the least cover" in fix_of("surface-voltage", **metal, distance="3 ft")["cover"]
    assert CALCULATORS["surface-voltage"](**metal).depends.safe.values["volt_over_high"] > 50


def test_more_cases_than_are_gone_through_ask_for_a_choice_first_and_say_that_none_was():
    words = fix_of("main-bonding-jumper", conductor="unknown", sets="unknown", metal="unknown", place="unknown",
                   form="unknown", conductor_metal="unknown")  # fmt: skip
    ((field, said),) = words.items()
    assert field in {"sets", "conductor"}
    assert "at most 4,096 are worked out. None was." in said and "Jumper material" in said


def test_a_case_that_leaves_something_open_is_not_compared_between_editions():
    words = fix_of("compare-editions", case="main-bonding-jumper?conductor=500kcmil&conductor_metal=unknown")["case"]
    assert "Hot conductor material" in words
    assert CALCULATORS["compare-editions"](case="main-bonding-jumper?conductor=500kcmil").outcome == "answer"


def test_a_range_past_the_sizes_of_a_calculator_is_asked_for_like_one_size_past_them():
    """Table 9 of Chapter 9 goes to 1000 kcmil, other tables to 2000 kcmil."""
    fault = {"system": "208Y/120", "kva": "75", "percent_z": "3", "length": "50 ft"}
    one = fix_of("available-fault-current", **fault, conductor="2000kcmil")["conductor"]
    between = fix_of("available-fault-current", **fault, conductor="500kcmil..2000kcmil")["conductor"]
    assert "Enter a size from 14 AWG to 1000 kcmil" in one and "Enter a size from 14 AWG to 1000 kcmil" in between
    assert "Between two ends stand sizes" not in between
    known = CALCULATORS["available-fault-current"](**fault, conductor="500kcmil..1000kcmil")
    assert known.outcome == "depends"


def test_trade_sizes_may_lie_between_two_as_conductor_sizes_do():
    """250.118(A)(6): liquidtight flexible metal conduit is a path at 20 A to size 1/2, at 60 A from 3/4 to 1-1/4."""
    path = {"edition": "2023", "raceway": "liquidtight-flexible-metal-conduit", "length": "4ft"}
    calculator = CALCULATORS["raceway-as-grounding-path"]
    assert calculator(**path, device="20", trade_size="3/8..1").answer.answer_code == "may"
    depends = calculator(**path, device="30", trade_size="3/8..1")
    whens = [str(each.when) for each in depends.depends.alternatives]
    assert depends.outcome == "depends" and whens == ["Trade size: 3/8 or 1/2", "Trade size: 3/4 or 1"]


def test_a_range_of_trade_sizes_runs_upward_between_sizes():
    path = {"raceway": "flexible-metal-conduit", "device": "20", "length": "4ft"}
    assert "The first end of a range" in fix_of("raceway-as-grounding-path", **path, trade_size="1..1/2")["trade_size"]
    assert "Between two ends" in fix_of("raceway-as-grounding-path", **path, trade_size="not-given..1")["trade_size"]
