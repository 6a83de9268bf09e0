"""An edition that nobody chose is unknown: the answer says whether it decides, and in which edition it is another."""

import pytest

from calc import CALCULATORS, EDITIONS
from calc.json_output import left_out_to_dict
from calc.unknown.safe_side import safe_side
from tests.cases.read import FOLDER, cases


def test_the_same_in_all_editions_is_said_plainly_and_is_no_warning():
    """Table 250.102(C)(1) states the row of 3/0 copper alike in every edition from 2017: 4 AWG copper."""
    result = CALCULATORS["main-bonding-jumper"](conductor="3/0")
    check = result.edition_check
    assert (check.same, check.how, check.others) == (True, "worked-out", {})
    assert str(check.words).startswith("The answer is the same in all editions since 2017.")
    assert result.warnings == []


def test_what_is_not_verified_in_an_edition_is_said_beside_it():
    check = CALCULATORS["main-bonding-jumper"](conductor="3/0").edition_check
    assert check.unverified == ("2026",) and str(check.words).endswith("Not every section is verified for 2026.")


def test_an_edition_that_decides_is_named_with_its_answer():
    """250.104(A)(1): the limit of 3/0 copper came in 2020.

    By Table 250.102(C)(1) four times 500 kcmil is over 1100
    kcmil: an eighth of 2,000,000 cmil, 250 kcmil, in 2017.
    """
    result = CALCULATORS["water-pipe-bonding"](conductor="500kcmil", sets=4)
    assert result.answer_code == "3/0-copper" and list(result.edition_check.others) == ["2017"]
    assert str(result.warnings[0]).startswith(
        "No edition picked. Showing 2023. The edition decides. 2017: 250 kcmil copper wire or larger."
    )


def test_an_edition_that_was_chosen_is_not_compared():
    result = CALCULATORS["water-pipe-bonding"](edition="2023", conductor="500kcmil", sets=4)
    assert result.edition_check is None and "editions" not in left_out_to_dict(result)


def test_a_field_to_mend_says_nothing_of_editions():
    assert CALCULATORS["main-bonding-jumper"](conductor="x").edition_check is None


def test_what_depends_is_compared_too():
    result = CALCULATORS["water-pipe-bonding"](conductor="500kcmil", sets=4, metal="unknown")
    assert result.outcome == "depends" and result.edition_check.same is False
    assert list(result.edition_check.others) == ["2017"]


def test_json_says_what_the_others_answer():
    data = left_out_to_dict(CALCULATORS["water-pipe-bonding"](conductor="500kcmil", sets=4))["editions"]
    assert set(data) == {"same", "how", "others", "say"} and data["same"] is False
    assert data["others"] == {"2017": "250 kcmil copper wire or larger"}


def test_reasons_that_name_another_section_are_no_other_answer():
    """The reason names 250.118(5) in one edition, 250.118(A)(5) in another; the wire is the same."""
    path = CALCULATORS["raceway-as-grounding-path"](
        raceway="flexible-metal-conduit", device="30", trade_size="1/2", length="4ft"
    )
    assert path.edition_check.same


HEAVY = [slug for slug in CALCULATORS if safe_side(slug).heavy]


@pytest.mark.slices(20)
def test_a_heavy_calculator_says_the_same_only_where_it_is_the_same(slice_number):
    """Where the rules cited state the same figures, each edition worked out gives the same answer."""
    compared = 0
    for slug in HEAVY:
        file = next(FOLDER.glob(f"**/{slug.replace('-', '_')}.toml"))
        # One case of each in a slice: a run takes up to a tenth of a second, and each is run in four editions.
        found = cases(file.relative_to(FOLDER).with_suffix("").as_posix())
        for _, case in found[slice_number % len(found) :][:1]:
            inputs = {name: value for name, value in case["inputs"].items() if name in CALCULATORS[slug].fields}
            result = CALCULATORS[slug](**inputs)
            if result.edition_check and result.edition_check.same:
                said = {CALCULATORS[slug](edition=edition, **inputs).answer_code for edition in EDITIONS}
                assert said == {result.answer_code}, (slug, inputs)
                compared += 1
    assert compared >= 2
