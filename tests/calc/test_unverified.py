"""What is unverified follows from the marks of what an answer cites, in any edition, and from nothing else."""

import copy

import pytest

from calc import CALCULATORS, EDITIONS, main_bonding_jumper, rulebook

INPUTS = dict(conductor="500kcmil", sets=2)


def unverified(result) -> list[str]:
    """Return the sections that the answer's warning names, none without such a warning."""
    begins = f"Not verified for the {result.edition} edition: "
    told = [str(words) for words in result.trace.warnings if str(words).startswith(begins)]
    assert len(told) <= 1
    return (
        told[0].removeprefix(begins).removesuffix(". Read the book before you rely on it.").split("; ") if told else []
    )


@pytest.mark.parametrize("slug", CALCULATORS)
def test_an_answer_names_the_sections_from_memory_and_no_others(slug):
    for edition in EDITIONS:
        result = CALCULATORS[slug](**CALCULATORS[slug].example | {"edition": edition})
        cited = [each.section for each in result.trace.citations if each.mark == "memory"]
        assert "; ".join(unverified(result)) == "; ".join(dict.fromkeys(cited)), edition


@pytest.mark.parametrize("edition", EDITIONS)
def test_one_section_from_memory_is_named_in_any_edition_and_none_where_all_are_confirmed(edition, marked):
    cited = [each.key for each in main_bonding_jumper(edition=edition, **INPUTS).trace.citations]
    for key in cited:
        marked(key, edition, "confirmed")
    assert unverified(main_bonding_jumper(edition=edition, **INPUTS)) == []
    marked("jumpers/supply_side_size", edition, "memory")
    assert unverified(main_bonding_jumper(edition=edition, **INPUTS)) == ["Table 250.102(C)(1)"]


def test_a_mark_that_a_test_sets_is_gone_after_it():
    before = copy.deepcopy(rulebook.rule("jumpers/supply_side_size", "2023"))
    assert before.mark == "confirmed"
