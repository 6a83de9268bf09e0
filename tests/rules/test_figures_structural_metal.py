"""The figures of the bond of a metal building frame against texts read apart from the rules.

250.104(C) and (D)(2): no upper size in NFPA 70-2017; 3/0 copper or 250 kcmil aluminum in California 2022 (2020) and
NFPA 70-2023. The exceptions of (D)(2) name an electrode in 2017 and 2020, also the conductor to it in 2023.
250.104(C)(4) asks for a sufficient conductor in 2017 and 2020, for one of the table's size in 2023.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_the_bond_of_a_frame_has_an_upper_size_from_2020_on():
    for edition in EDITIONS:
        for key in ("grounding/structural_metal_bond_cap", "grounding/structural_metal_bond_derived_cap"):
            expected = ("none", "none") if edition == "2017" else ("3/0", "250kcmil")
            assert [(row["copper"], row["aluminum"]) for row in rule(key, edition).rows] == [expected]


def test_from_2023_the_conductor_to_the_electrode_spares_the_bond_too():
    for edition in EDITIONS:
        expected = "electrode" if edition in ("2017", "2020") else "electrode-or-conductor"
        for key in ("grounding/structural_metal_spared_by_frame", "grounding/structural_metal_spared_by_piping"):
            assert [row["used_as"] for row in rule(key, edition).rows] == [expected]


def test_from_2023_an_existing_conductor_is_measured_by_the_table():
    for edition in EDITIONS:
        expected = "sufficient" if edition in ("2017", "2020") else "table"
        rows = rule("grounding/structural_metal_existing_conductor", edition).rows
        assert [row["measure"] for row in rows] == [expected]
