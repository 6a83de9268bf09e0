"""The figures of the grounded conductor against texts read apart from the rules.

250.24(C)(2) of 2017 and 2020 (California 2022), 250.24(D)(2) of 2023; 250.30(A)(3) of the three texts.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.rules.by_edition import since, values


def test_a_grounded_conductor_in_parallel_is_1_0_or_larger():
    for edition in EDITIONS:
        for key in ("grounded_conductor_in_each_raceway", "derived_grounded_conductor_in_each_raceway"):
            assert rule(f"grounding/{key}", edition).value == "1/0"


def test_only_since_2020_the_section_on_derived_systems_limits_it_itself():
    assert values("grounding/derived_grounded_conductor") == since({"2017": "not-stated", "2020": "stated"})
