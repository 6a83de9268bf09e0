"""Neutral current on metal: the worked networks, and what a broken neutral hides."""

import pytest

from calc.fault.stray_neutral_current import stray_neutral_current
from tests.cases.read import cases, named

BASE = dict(edition="2023", load=20, neutral="4", length=100, grounding_conductor="8")


@pytest.mark.parametrize("pair", cases("fault/stray_neutral_current"), ids=named)
def test_a_worked_network_has_the_currents_of_the_other_program(pair):
    edition, case = pair
    values = stray_neutral_current(edition=edition, **case["inputs"]).answer.values
    for name, ampere in case["ampere"].items():
        assert values[name] == pytest.approx(ampere, rel=0.02, abs=1e-6)
    if "volt" in case:
        assert values["metal_volt"] == pytest.approx(case["volt"], rel=0.02)


def test_two_houses_share_the_neutral_current_by_their_ways_back():
    """Neutrals z each, main r, two bonds b: the neighbor's way has z + r + 2b, so it carries z / (2z + r + 2b)."""
    values = stray_neutral_current(
        edition="2023", where="shared-water-main", load=20, neutral="2/0", metal="aluminum", length=75, pipe=0.01
    ).answer.values
    z = 75 * complex(0.159, 0.043) / 1000  # 2/0 aluminum in nonmetallic conduit, 0.16 and 0.043 ohm to 1000 ft
    share = abs(z / (2 * z + 0.012))
    assert values["pipe_ampere"] == pytest.approx(share * 20, rel=0.02)


def test_with_the_neutral_broken_all_of_it_is_on_metal():
    values = stray_neutral_current(**BASE, neutral_open="yes").answer.values
    assert values["neutral_ampere"] == 0
    assert values["metal_ampere"] == pytest.approx(20, rel=0.02)


def test_a_better_metal_path_never_takes_less_current():
    taken = [stray_neutral_current(**BASE, pipe=ohm).answer.values["metal_ampere"] for ohm in (10, 1, 0.1, 0.01, 0.001)]
    assert taken == sorted(taken)


def test_the_magnitudes_of_the_paths_add_to_no_less_than_the_load():
    values = stray_neutral_current(**BASE, pipe=0.05).answer.values
    assert values["neutral_ampere"] + values["metal_ampere"] >= 19.7


@pytest.mark.parametrize(
    ("inputs", "field"),
    [(dict(load=0), "load"), (dict(length=0), "length"), (dict(length="1e9"), "length"), (dict(pipe=-1), "pipe"),
     (dict(neutral="5/0"), "neutral"), (dict(where="moon"), "where")],
)  # fmt: skip
def test_bad_input_is_named_to_be_fixed(inputs, field):
    result = stray_neutral_current(**(BASE | inputs))
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


@pytest.mark.parametrize(
    "inputs", [dict(grounding_conductor=None), dict(where="shared-water-main"), dict(neutral="2000kcmil")]
)
def test_a_case_without_a_way_over_metal_says_so(inputs):
    assert stray_neutral_current(**(BASE | inputs)).outcome == "not_covered"


def test_a_broken_neutral_is_warned_of_and_no_other():
    for broken, warned in (("yes", True), ("no", False)):
        said = map(str, stray_neutral_current(**BASE, neutral_open=broken).working.warnings)
        assert any("neutral is broken" in words for words in said) is warned
