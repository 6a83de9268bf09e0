"""A field or a choice that is renamed is read under its old name too: in calls, links, tables and recorded changes."""

from dataclasses import replace
from io import BytesIO

import pytest

from calc import CALCULATORS, main_bonding_jumper, permalink
from calc.batch import answer_table, value_columns
from calc.field import read_field
from calc.json_output import linked_answer
from site_assets.build.form import form_html

# As if `sets` had been called `runs`, and "aluminum" "aluminium".
CONDUCTOR_METAL = main_bonding_jumper.fields["conductor_metal"]
RENAMED = replace(
    main_bonding_jumper,
    fields=main_bonding_jumper.fields
    | {
        "sets": replace(main_bonding_jumper.fields["sets"], formerly=("runs",)),
        "conductor_metal": replace(
            CONDUCTOR_METAL,
            choices=tuple(
                replace(choice, formerly=("aluminium",)) if choice.value == "aluminum" else choice
                for choice in CONDUCTOR_METAL.choices
            ),
        ),
    },
)
OLD = "edition=2023&conductor=500kcmil&runs=2&conductor_metal=aluminium"
NEW = OLD.replace("runs", "sets").replace("aluminium", "aluminum")


def table(text, given=()):
    answered = answer_table(RENAMED, BytesIO(text.encode()), given)
    return answered.columns, list(answered.rows)


def test_an_old_link_is_answered_like_the_new_one_and_written_anew_with_the_new_names():
    """The bare answer of `main_bonding_jumper` to the new names is the outside value."""
    old, new = RENAMED.run(permalink.read(OLD)), main_bonding_jumper.run(permalink.read(NEW))
    assert old.outcome == "answer" and (old.inputs, old.answer) == (new.inputs, new.answer)
    written = permalink.write(old)
    assert "sets=2&conductor_metal=aluminum" in written and "runs" not in written
    assert RENAMED.run(permalink.read(written.partition("?")[2])).inputs == old.inputs


def test_a_call_takes_the_old_names():
    assert RENAMED(conductor="500kcmil", runs=2, conductor_metal="aluminium").inputs["sets"] == 2


@pytest.mark.parametrize("twice", [{"runs": 2, "sets": 2}, {"runs": 2, "sets": 3}])
def test_an_input_under_both_names_is_given_twice(twice):
    (fix,) = RENAMED(conductor="3/0", **twice).fix
    assert (fix.field, str(fix.words)) == ("sets", "This is entered twice. Enter it once.")


def test_what_to_enter_is_told_of_the_field_as_it_is_called_now():
    (fix,) = RENAMED(conductor="3/0", runs="many").fix
    assert fix.field == "sets" and "from 1 to 30" in str(fix.words)


def test_a_name_that_was_never_published_is_still_refused():
    assert main_bonding_jumper(conductor="3/0", runs=2).fix[0].field == "runs"
    assert main_bonding_jumper(conductor="3/0", conductor_metal="aluminium").fix[0].field == "conductor_metal"


def test_a_table_keeps_the_column_names_of_its_owner():
    columns, (row,) = table("label,conductor,runs,conductor_metal\nA,500kcmil,2,aluminium\n")
    assert columns[:4] == ("label", "conductor", "runs", "conductor_metal")
    assert (row["runs"], row["outcome"]) == ("2", "answer") and "sets=2" in row["link"]


def test_a_cell_goes_before_what_is_given_for_every_row_whatever_each_is_called():
    for named, given in (("runs", "sets"), ("sets", "runs")):
        _, rows = table(f"conductor,{named}\n3/0,4\n3/0,\n", [(given, "2")])
        assert ["sets=4" in rows[0]["link"], "sets=2" in rows[1]["link"]] == [True, True]


def test_a_renamed_field_takes_no_column_of_the_answers_away():
    """`size` is a value of the answer; a field that was called so once kept it as `answer_size`, and still does."""
    fields = main_bonding_jumper.fields
    once = replace(
        main_bonding_jumper, fields=fields | {"conductor": replace(fields["conductor"], formerly=("size",))}
    )
    assert value_columns(once)["size"] == "answer_size"
    assert value_columns(main_bonding_jumper)["size"] == "size"


def test_a_table_that_an_earlier_version_answered_with_fewer_columns_is_answered_anew():
    text = "conductor,line,outcome,answer,sections,mark,warnings,fix,link\n3/0,2,answer,,,,,,\n"
    columns, (row,) = table(text)
    assert columns.count("answer") == 1 and row["outcome"] == "answer" and row["size"] == "4"


def test_a_choice_of_several_is_read_under_its_old_value():
    parts = CALCULATORS["service-schedule"].fields["metal_parts"]
    first, second, *others = parts.choices
    renamed = replace(parts, choices=(replace(first, formerly=("steel",)), second, *others))
    assert read_field(renamed, f"{second.value}, steel") == f"{first.value},{second.value}"
    with pytest.raises(ValueError, match="steel"):
        read_field(renamed, f"steel,{first.value}")


def test_a_recorded_change_that_names_the_old_value_still_explains(monkeypatch):
    when = {"runs": ["2"], "conductor_metal": ["aluminium"]}
    row = {"calculator": "main-bonding-jumper", "editions": ["2023"], "when": when}
    monkeypatch.setattr("calc.json_output.changes", lambda: {"version": 2, "change": [row]})
    assert linked_answer(RENAMED.run(permalink.read(f"{OLD}&said=9-copper")))["changes"] == [row]
    other = NEW.replace("sets=2", "sets=3")
    assert linked_answer(RENAMED.run(permalink.read(f"{other}&said=9-copper")))["changes"] == []


def test_the_form_knows_the_old_names_so_that_an_old_link_fills_it():
    html = form_html(RENAMED, {})
    assert 'data-field="sets" data-formerly="runs"' in html
    assert 'value="aluminum" data-formerly="aluminium"' in html
    assert "data-formerly" not in form_html(main_bonding_jumper, {})


@pytest.mark.parametrize("slug", CALCULATORS)
def test_no_name_is_of_two_fields_and_no_value_of_two_choices(slug):
    fields = CALCULATORS[slug].fields
    names = ["edition", "said", "label", *fields, *(old for each in fields.values() for old in each.formerly)]
    assert len(names) == len(set(names))
    for field in fields.values():
        values = [value for choice in field.choices for value in (choice.value, *choice.formerly)]
        assert len(values) == len(set(values))
