"""The figures around the equipment grounding conductor against texts read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.rules.by_edition import since, values

# Table 240.6(A) of 2017 and of 2023, and the extra ratings of fuses in the sentence above it (the 2023 table lists 10).
FUSES = "1 3 6 10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 601 700 "
FUSES += "800 1000 1200 1600 2000 2500 3000 4000 5000 6000"


def test_fuses_have_the_standard_ratings_in_every_edition():
    for edition in EDITIONS:
        rows = rule("grounding/standard_fuse_ratings", edition).rows
        assert [row["ampere"] for row in rows] == [int(ampere) for ampere in FUSES.split()]


def test_a_dual_element_fuse_may_have_175_percent_and_150_for_wound_rotors_and_direct_current():
    """Table 430.52 of 2017; ELECTRICAL CONTRACTOR, April 2024, for 175 percent."""
    for edition in EDITIONS:
        rows = rule("grounding/motor_fuse_percent", edition).rows
        assert [(row["motor"], row["percent"]) for row in rows] == [("ac", 175), ("wound-rotor-or-dc", 150)]


def test_the_exception_for_a_qualified_person_came_in_2020():
    """250.122(B) of 2017 has no exception; California 2022 and NFPA 70-2023 print one."""
    expected = since({"2017": "not-stated", "2020": "permitted"})
    assert values("grounding/increase_by_qualified_person") == expected


def test_only_since_2026_the_code_limits_each_parallel_raceway_by_one_conductor():
    """NECA question 2017-05-18 for the whole set; two trade articles on 2026 for the change."""
    assert values("grounding/parallel_raceway_limit") == since({"2017": "whole-set", "2026": "one-conductor"})


def test_aluminum_ends_18_inches_above_earth():
    """250.120(B) of 2017, 2020 (California 2022) and 2023."""
    for edition in EDITIONS:
        assert rule("grounding/aluminum_near_earth", edition).value == 18
