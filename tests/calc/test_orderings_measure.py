"""What must never turn around: a worse reading is no better verdict, a coarser meter proves no more.

No value is checked here, only the order of two answers that differ in one input.
"""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import bond_measurement, clamp_reading
from calc.equipotential.livestock_equipotential_plane import livestock_equipotential_plane
from calc.equipotential.pool_bonding_plan import pool_bonding_plan
from calc.equipotential.waterside_equipotential_plane import waterside_equipotential_plane

drawn = settings(max_examples=25, derandomize=True, deadline=None, database=None)
BOND = {"method": "bond-tester", "dead": "yes", "conductor": "10", "length": "10", "current": "25", "beside": "no"}
# From the least to the most of a reading. The first and the last are both headed "Investigate".
BY_READING = ("lower-than-the-wire", "pass", "joined", "cannot-tell", "investigate")
PROVEN = ("pass", "joined")
OHM = draw.floats(0.000001, 0.05)
PERCENT = draw.floats(0.001, 50)
AMPERE = draw.floats(0.0005, 20)
PAST_THE_SERVICE = ("feeder-together", "equipment-grounding-conductor")
CONTACT = ("below", "look", "act")


def written(value: float) -> str:
    return f"{value:.9f}"


def bond(**inputs):
    return bond_measurement(edition="2023", **(BOND | inputs)).answer.values


def clamp(**inputs):
    return clamp_reading(edition="2023", **inputs).answer.values


def two_of(values):
    return draw.tuples(values, values).map(sorted)


@drawn
@given(two_of(OHM), draw.sampled_from(["yes", "no"]), draw.sampled_from(["0", "1"]), draw.sampled_from(["none", "own"]))
def test_a_higher_reading_is_never_a_better_verdict(readings, beside, percent, limit):
    found = [
        bond(reading=written(each), beside=beside, meter_percent=percent, limit=limit, limit_ohm="0.012")["verdict"]
        for each in readings
    ]
    assert BY_READING.index(found[0]) <= BY_READING.index(found[1])


@drawn
@given(OHM, two_of(PERCENT), draw.sampled_from(["yes", "no"]))
def test_a_larger_error_of_the_meter_never_turns_anything_into_a_pass(reading, percents, beside):
    fine, coarse = (
        bond(reading=written(reading), meter_percent=written(each), beside=beside)["verdict"] for each in percents
    )
    assert coarse not in PROVEN or fine in PROVEN
    assert coarse in (fine, "cannot-tell")


@drawn
@given(OHM, two_of(draw.floats(0.00001, 0.02)))
def test_a_coarser_last_digit_never_turns_anything_into_a_pass(reading, digits):
    fine, coarse = (bond(reading=written(reading), digit=written(each))["verdict"] for each in digits)
    assert coarse not in PROVEN or fine in PROVEN


@drawn
@given(OHM, draw.floats(0.001, 5))
def test_an_error_that_is_not_entered_never_passes_what_a_smaller_one_does_not(reading, percent):
    if bond(reading=written(reading))["verdict"] in PROVEN:
        assert bond(reading=written(reading), meter_percent=written(percent))["verdict"] in PROVEN


@drawn
@given(OHM)
def test_other_metal_beside_it_never_makes_a_pass(reading):
    alone, beside = (bond(reading=written(reading), beside=each)["verdict"] for each in ("no", "yes"))
    assert beside == ("joined" if alone == "pass" else alone)


@drawn
@given(OHM, two_of(draw.integers(0, 20)))
def test_a_joint_of_wire_is_never_allowed_more_than_one_of_a_raceway(reading, joints):
    of_wire, of_raceway = (bond(reading=written(reading), joint_kind=each)["verdict"] for each in ("wire", "raceway"))
    assert of_wire not in PROVEN or of_raceway in PROVEN
    few, many = (bond(reading="0.01", joints=str(each))["expected_high"] for each in joints)
    assert few <= many


@drawn
@given(two_of(draw.floats(0.1, 5000)), two_of(draw.floats(-40, 90)))
def test_a_longer_or_warmer_wire_is_never_expected_to_have_less(feet, celsius):
    for name, values in (("length", feet), ("celsius", celsius)):
        short, long = (bond(reading="0.01", **{name: written(each)}) for each in values)
        assert short["expected_low"] <= long["expected_low"] and short["expected_high"] <= long["expected_high"]


def test_a_thicker_wire_is_never_expected_to_have_more():
    found = [
        bond(reading="0.01", conductor=size)["expected_high"] for size in ("14", "12", "8", "4", "1/0", "500kcmil")
    ]
    assert found == sorted(found, reverse=True)


@drawn
@given(OHM, two_of(draw.floats(0.0001, 1)))
def test_a_stricter_limit_never_passes_more(reading, limits):
    strict, mild = (
        bond(reading=written(reading), limit="own", limit_ohm=written(each))["verdict"] for each in limits
    )
    assert strict not in PROVEN or mild in PROVEN


@drawn
@given(two_of(AMPERE), draw.sampled_from(PAST_THE_SERVICE), draw.sampled_from([None, "0", "3", "40"]))
def test_more_current_never_brings_filters_nearer(amperes, where, appliances):
    less, more = (
        clamp(where=where, ampere=written(each), appliances=appliances)["causes"].index("filters") for each in amperes
    )
    assert less <= more


@drawn
@given(AMPERE, draw.sampled_from(PAST_THE_SERVICE), two_of(draw.integers(0, 100)))
def test_more_appliances_never_take_filters_farther(ampere, where, counts):
    few, many = (
        clamp(where=where, ampere=written(ampere), appliances=str(each))["causes"].index("filters") for each in counts
    )
    assert many <= few


@drawn
@given(AMPERE, two_of(draw.floats(0, 5)), two_of(PERCENT))
def test_a_coarser_clamp_never_proves_a_current(ampere, empty, percents):
    for name, values in (("empty", empty), ("meter_percent", percents), ("digit", empty)):
        fine, coarse = (
            clamp(where="water-pipe-bond", ampere=written(ampere), **{name: written(each)})["verdict"]
            for each in values
        )
        assert coarse in (fine, "cannot-tell")


@drawn
@given(draw.floats(0.1, 20), two_of(draw.floats(0, 1)))
def test_what_stays_with_the_main_off_never_takes_the_outside_farther(ampere, shares):
    less, more = (
        clamp(where="water-pipe-bond", ampere=written(ampere), off_ampere=written(each * ampere))["causes"].index(
            "neighbor"
        )
        for each in shares
    )
    assert more <= less


@drawn
@given(
    two_of(draw.floats(0.001, 20)),
    draw.sampled_from(["with-resistor", "open"]),
    draw.sampled_from(["100", "449", "500", "551", "10000"]),
)
def test_more_voltage_at_an_animal_is_never_a_better_verdict(volts, meter, ohm):
    less, more = (
        livestock_equipotential_plane(
            edition="2023", area="indoor-concrete", volt=written(each), meter=meter, resistor=ohm
        ).answer.values
        for each in volts
    )
    assert CONTACT.index(less["verdict"]) <= CONTACT.index(more["verdict"])
    assert less["lowest_cow_milliampere"] <= more["lowest_cow_milliampere"]


@drawn
@given(draw.floats(0.001, 20), draw.sampled_from(["100", "449", "551", "10000"]))
def test_another_resistor_is_never_below_the_level(volt, ohm):
    found = livestock_equipotential_plane(
        edition="2023", area="indoor-concrete", volt=written(volt), resistor=ohm
    ).answer.values
    assert found["verdict"] != "below" and found["milliampere"] is None


@drawn
@given(two_of(draw.floats(0, 20)), two_of(draw.floats(0, 20)), draw.sampled_from(["water", "structure"]))
def test_metal_nearer_or_lower_is_never_spared_where_metal_farther_or_higher_is_not(feet, heights, origin):
    def spared(distance, height):
        plan = pool_bonding_plan(
            edition="2020",
            kind="in-ground-conductive",
            other_metal=f"{distance:.4f}ft",
            other_height=f"{height:.4f}ft",
            height_from=origin,
        )
        return plan.answer.values["decisions"]["other_metal"] == "need-not"

    assert spared(feet[0], heights[0]) <= min(spared(feet[1], heights[0]), spared(feet[0], heights[1]))


@pytest.mark.parametrize("equipment", ["service", "disconnect"])
@drawn
@given(two_of(draw.floats(0.01, 20)), two_of(draw.floats(1, 60)), two_of(draw.floats(0.01, 10)))
def test_nearer_the_shore_shorter_or_deeper_is_never_better(equipment, feet, reaches, depths):
    def good(distance, reach, depth):
        found = waterside_equipotential_plane(
            edition="2020", water="body", equipment=equipment, distance=f"{distance:.4f}ft", reach=f"{reach:.4f}in",
            depth=f"{depth:.4f}in",
        ).answer.values["decisions"]  # fmt: skip
        return [found[each] == "in-order" for each in ("shoreline", "plane", "reach", "depth")]

    (near, far), (short, long), (shallow, deep) = feet, reaches, depths
    worse, better = good(near, short, deep), good(far, long, shallow)
    assert all(one <= other for one, other in zip(worse, better, strict=True))
