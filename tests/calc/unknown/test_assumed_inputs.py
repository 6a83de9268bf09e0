"""Inputs left out: the answer stays what it was, and says which default decides it, and what it would be otherwise."""

import pytest

from calc import CALCULATORS, main_bonding_jumper, permalink
from calc.json_output import left_out_to_dict
from calc.unknown.assumed import MAX_SHOWN, assumed_words
from tests.cases.read import FOLDER, cases


def deciding(result):
    return {each.field: str(each.words) for each in result.assumed if each.decides}


def test_a_default_that_decides_is_named_with_its_value_and_the_other_outcome():
    """Table 250.102(C)(1): 3/0 copper is 4 AWG; two of them, 335,600 cmil, 2 AWG; of aluminum the jumper is 2 AWG."""
    found = deciding(main_bonding_jumper(edition="2023", conductor="3/0"))
    assert found["sets"] == "Sets in parallel: 1. If you enter 2 instead: 2 AWG copper wire or larger."
    assert found["metal"] == "Jumper material: copper. If you choose “aluminum” instead: 2 AWG aluminum wire or larger."


def test_a_default_that_decides_nothing_is_tested_and_not_named():
    """250.24(D): more enclosures, each with its own jumper: this one's size stays."""
    result = main_bonding_jumper(edition="2023", conductor="3/0")
    assert {each.field: each.decides for each in result.assumed}["enclosures"] is False
    assert "Number of service disconnect enclosures" not in " ".join(map(str, assumed_words(result)))


def test_an_input_that_was_given_is_not_assumed_even_at_its_default():
    result = main_bonding_jumper(edition="2023", conductor="3/0", sets="1", metal="copper")
    assert not {"sets", "metal"} & set(result.left_out) and "conductor_metal" in result.left_out


def test_the_one_that_would_ask_for_more_comes_first_and_few_are_shown():
    words = [str(each) for each in assumed_words(main_bonding_jumper(edition="2023", conductor="3/0"))]
    assert words[0].startswith("Sets in parallel: 1.") and len(words) == MAX_SHOWN + 1
    assert words[-1].startswith("3 more decide: ")


def test_every_field_given_leaves_nothing_assumed():
    full = main_bonding_jumper(edition="2023", conductor="3/0")
    given = {name: value for name, value in full.inputs.items() if value is not None}
    result = main_bonding_jumper(edition="2023", **given)
    assert result.left_out == () and result.assumed == () and "assumed=" not in permalink.write(result)


def test_assumptions_are_no_warnings():
    result = main_bonding_jumper(edition="2023", conductor="3/0")
    assert assumed_words(result) and result.warnings == result.trace.warnings == []


def test_a_new_link_says_what_was_left_out_and_the_linked_page_says_the_same():
    first = main_bonding_jumper(conductor="3/0", metal="aluminum")
    again = main_bonding_jumper.run(permalink.read(permalink.write(first).partition("?")[2]))
    assert again.left_out == first.left_out and "metal" not in first.left_out
    assert again.edition_chosen is first.edition_chosen is False
    assert list(map(str, assumed_words(again))) == list(map(str, assumed_words(first)))


def test_an_old_link_says_nothing_of_assumptions_and_answers_as_before():
    link = (
        "edition=2023&conductor=3/0&sets=1&conductor_metal=copper&metal=copper&place=service-disconnect&"
        "system_grounding=solidly-grounded&enclosures=1&form=wire&conductor_basis=installed&said=4-copper"
    )
    result = main_bonding_jumper.run(permalink.read(link))
    assert (result.outcome, result.answer_code, result.left_out, result.edition_chosen) == (
        "answer", "4-copper", (), True
    )


@pytest.mark.parametrize("assumed", ["sets", "sets,nonsense", "metal,conductor,form", "raceways", ",,", "edition"])
def test_the_names_in_a_link_never_alter_its_answer(assumed):
    pairs = [("edition", "2023"), ("conductor", "3/0"), ("sets", "2"), ("metal", "aluminum")]
    plain, named = main_bonding_jumper.run(pairs), main_bonding_jumper.run([*pairs, ("assumed", assumed)])
    assert (named.outcome, named.answer, named.inputs) == (plain.outcome, plain.answer, plain.inputs)
    assert not {"sets", "metal", "conductor"} & set(named.left_out), "what is not at its default was given by someone"


def test_what_links_do_not_carry_there_is_an_error():
    result = main_bonding_jumper.run([("conductor", "3/0"), ("assumed", "<b>")])
    assert [each.field for each in result.fix] == ["assumed"]


def test_json_lists_each_input_left_out_and_whether_it_decides():
    data = left_out_to_dict(main_bonding_jumper(edition="2023", conductor="3/0"))["assumed"]
    assert [set(each) for each in data] == [{"field", "value", "decides", "otherwise"}] * len(data)
    sets = next(each for each in data if each["field"] == "sets")
    assert (sets["value"], sets["decides"]) == (1, True) and "2 AWG" in sets["otherwise"]
    assert next(each for each in data if each["field"] == "enclosures")["otherwise"] is None


def test_of_a_heavy_calculator_nothing_is_tried_and_it_says_so():
    result = CALCULATORS["surface-voltage"](edition="2023", cover="18in", soil="resistivity", resistivity="100")
    assert result.assumed and {each.decides for each in result.assumed} == {None} and assumed_words(result) == []


def test_a_field_that_says_that_nothing_was_entered_assumes_nothing():
    knockouts = CALCULATORS["knockouts-over-250-volts"]
    result = knockouts(edition="2023", voltage_to_ground="277", raceway="rigid-metal-conduit", fitting="two-locknuts")
    assert "system" in result.left_out and "system" not in {each.field for each in result.assumed}


@pytest.mark.slices(12)
def test_every_worked_case_answers_alike_through_its_new_link_and_through_that_link_without_the_names(slice_number):
    for file in sorted(FOLDER.glob("**/*.toml"))[slice_number::12]:
        calculator = CALCULATORS.get(file.stem.replace("_", "-"))
        for edition, case in cases(file.relative_to(FOLDER).with_suffix("").as_posix())[:40] if calculator else ():
            inputs = {name: value for name, value in case.get("inputs", {}).items() if name in calculator.fields}
            first = calculator(edition=edition, **inputs)
            if first.outcome == "fix":
                continue
            pairs = permalink.read(permalink.write(first).partition("?")[2])
            old = calculator.run([(name, value) for name, value in pairs if name != "assumed"])
            for again in (calculator.run(pairs), old):
                assert (again.outcome, again.answer, again.inputs) == (first.outcome, first.answer, first.inputs)
            assert old.left_out == () and calculator.run(pairs).left_out == first.left_out
