"""A system, a place or a raceway that two calculators call differently is read by each under both names."""

from io import BytesIO

import pytest

from calc.__main__ import main
from calc.batch import answer_table
from calc.field import read_field
from calc.registry import CALCULATORS
from calc.systems import OTHER_SYSTEMS, SYSTEMS, system_called

BY_SYSTEM = [(slug, each.fields["system"]) for slug, each in CALCULATORS.items() if "system" in each.fields]
LOOP = dict(edition="2023", device="20", conductor="12", return_conductor="12")
TRANSFORMER = dict(CALCULATORS["transformer-schedule"].example)
OTHER_NAMES = [
    ("longest-return-path", "system", "240-high-leg-delta", "240/120-high-leg", LOOP),
    ("longest-return-path", "system", "240-corner-grounded-delta", "240-corner", LOOP),
    ("transformer-schedule", "system", "240/120-high-leg", "240-high-leg-delta", TRANSFORMER),
    ("available-fault-current", "system", "480-ungrounded", "480-ungrounded-delta", {"kva": "75", "percent_z": "3"}),
]


def test_one_system_has_one_label_in_every_calculator():
    assert len(BY_SYSTEM) == 5
    for slug, asked in BY_SYSTEM:
        for choice in asked.choices:
            if choice.value != "not-given":
                label = OTHER_SYSTEMS.get(choice.value) or system_called(choice.value).label
                assert choice.label == label, (slug, choice.value)
    labels = [str(system.label) for system in SYSTEMS.values()]
    assert len(set(labels)) == len(labels)


def test_the_name_of_a_system_tells_its_voltages():
    """Line to line, and to ground from the neutral, by the definition of each connection: 208 / sqrt(3) is 120."""
    to_ground = {"120/240": 120, "208Y/120": 120, "480Y/277": 277, "600Y/347": 346, "240/120-high-leg": 120}
    for name, system in SYSTEMS.items():
        assert str(system.line_voltage) in name and str(system.line_voltage) in str(system.label)
        assert int(system.voltage_to_ground + 0.5) == to_ground.get(name, system.line_voltage), name


@pytest.mark.parametrize(("slug", "name", "own", "other", "rest"), OTHER_NAMES)
def test_the_name_that_another_calculator_has_for_a_system_gives_the_same_answer_everywhere(
    slug, name, own, other, rest, capsys
):
    single = CALCULATORS[slug]
    rest = {key: each for key, each in rest.items() if key != name}
    written, called = single(**rest, **{name: own}), single(**rest, **{name: other})
    assert written.inputs == called.inputs and called.inputs[name] == own
    assert (written.outcome, written.answer_code) == (called.outcome, called.answer_code) and written.outcome != "fix"
    printed = []
    for value in (own, other):
        main([slug, f"{name}={value}", *(f"{key}={each}" for key, each in rest.items())])
        printed.append(capsys.readouterr().out)
        assert f'"{name}": "{own}"' in printed[-1]
    assert printed[0] == printed[1]
    heads = ",".join([*rest, name])
    rows = [",".join([*rest.values(), value]) for value in (own, other)]
    first, second = answer_table(single, BytesIO("\n".join([heads, *rows, ""]).encode()), ()).rows
    assert first["answer"] == second["answer"] and first["link"] == second["link"]


def test_each_calculator_writes_a_system_as_it_always_did():
    written = {slug: [each.value for each in asked.choices if "high-leg" in each.value] for slug, asked in BY_SYSTEM}
    assert written["ground-fault-loop"] == written["knockouts-over-250-volts"] == ["240-high-leg-delta"]
    assert written["available-fault-current"] == written["transformer-schedule"] == ["240/120-high-leg"]


def test_a_derived_system_is_read_under_both_names():
    knockouts, elbow = CALCULATORS["knockouts-over-250-volts"], CALCULATORS["buried-metal-elbow"]
    entry = dict(raceway="rigid-metal-conduit", knockout="rings", fitting="two-locknuts", voltage_to_ground="277")
    assert knockouts(place="separately-derived-system", **entry).inputs["place"] == "derived-system"
    assert elbow(circuit="separately-derived-system", cover="18 in").inputs["circuit"] == "derived-system"


def test_a_nonmetallic_raceway_is_read_under_both_names():
    for slug, each in CALCULATORS.items():
        asked = each.fields.get("raceway")
        own = [choice.value for choice in (asked.choices if asked else ()) if "nonmetallic" in choice.value]
        if own:
            assert {read_field(asked, "nonmetallic"), read_field(asked, "nonmetallic-raceway")} == set(own), slug
