"""The figures of the bonds of piping against texts read apart from the rules.

250.104(A)(1) and (D)(1): no upper size in 2017; 3/0 copper or 250 kcmil aluminum in 2020 (California 2022) and 2023,
the latter also on a continuing-education page. 250.104(A)(3): conductors in 2017, 250.102(D) in 2020 and 2023.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_the_bond_of_water_piping_has_an_upper_size_from_2020_on():
    for edition in EDITIONS:
        for key in ("grounding/water_pipe_bond_cap", "grounding/water_pipe_bond_derived_cap"):
            expected = ("none", "none") if edition == "2017" else ("3/0", "250kcmil")
            assert [(row["copper"], row["aluminum"]) for row in rule(key, edition).rows] == [expected]


def test_a_separate_building_goes_by_its_conductors_in_2017_only():
    for edition in EDITIONS:
        rows = rule("grounding/water_pipe_bond_separate_building", edition).rows
        assert [row["goes_by"] for row in rows] == ["conductors" if edition == "2017" else "device"]
