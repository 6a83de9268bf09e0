"""The resistance of an electrode: worked cases, second routes, every limit, and what it must say."""

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc import EDITIONS, electrode_resistance
from calc.electrodes import shape
from calc.permalink import read, write
from tests.cases.read import cases, named
from tests.independent.electrode_pieces import buried_disc, rod_in_pieces

CASES = "electrodes/electrode_resistance"
FOOT, INCH = 0.3048, 0.0254
ROD = {"soil": "resistivity", "resistivity": "100", "length": "8ft", "diameter": "5/8in"}
WIRE = {"soil": "resistivity", "resistivity": "100", "length": "100ft", "conductor": "2", "depth": "30in"}
FOOTING = WIRE | {"electrode": "concrete-encased", "width": "1ft", "height": "1ft"}


def electrode(edition="2023", **inputs):
    return electrode_resistance(edition=edition, **inputs)


def likely(**inputs):
    return electrode(**inputs).answer.values["ohm_likely"]


def words(result):
    spoken = [*(step.words for step in result.trace.steps), *result.trace.notes, *result.trace.warnings]
    return " ".join(map(str, spoken))


def to_mend(**inputs):
    result = electrode(**inputs)
    assert result.outcome == "fix"
    return [each.field for each in result.fix]


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = electrode(edition, **case["inputs"])
    if "said" in case:
        assert result.answer_code == case["said"], case["reason"]
    else:
        assert result.answer.values["ohm_likely"] == pytest.approx(case["ohm"], rel=case["relative"]), case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize(("length", "diameter"), [(8, 0.5), (8, 0.625), (10, 0.75), (20, 1), (4, 2)])
def test_a_rod_is_a_little_above_the_method_of_moments(length, diameter):
    found = shape.rod(length * FOOT, diameter * INCH / 2)
    assert 1 < found / rod_in_pieces(length * FOOT, diameter * INCH / 2) < 1.035


@pytest.mark.parametrize("depth", [0.5, 0.6, 1, 3])
def test_a_plate_agrees_with_loves_equation(depth):
    assert shape.plate(0.607952, 0.607952, depth) == pytest.approx(buried_disc(0.343, depth), rel=0.003)


@pytest.mark.parametrize(
    ("count", "line", "circle"),
    [(2, 1.13, 1.13), (3, None, 1.27), (8, 1.492, None), (24, 1.82, 2.00)],
)
def test_rods_one_length_apart_agree_with_the_method_of_moments(count, line, circle):
    """C6.F_8 and its note: in a line 1.13, 1.492, 1.82 for 2, 8, 24 rods; on a circle 1.27 and 2.00 for 3 and 24."""
    length, radius = 8 * FOOT, 0.3125 * INCH
    for layout, expected in (("line", line), ("circle", circle)):
        if expected:
            factor = shape.rods(length, radius, length, count, layout) / shape.rod(length, radius) * count
            assert factor == pytest.approx(expected, abs=0.012)


def test_the_published_factor_of_rods_stands_beside_the_computed_one():
    """IEEE 142: 1.68 for 8 rods one length apart."""
    assert "8 rods one rod length apart is 1.68" in words(electrode(**ROD, rods=8, spacing=8))
    assert "published factor" not in words(electrode(**ROD, rods=7, spacing=8))


def test_two_rods_are_never_half_of_one_nor_more_than_one():
    one = likely(**ROD)
    for spacing in ("1ft", "6ft", "20ft", "1000ft"):
        assert one / 2 < likely(**ROD, rods=2, spacing=spacing) < one


def test_two_rods_are_58_57_and_54_percent_of_one_at_6_8_and_16_ft():
    """Method of moments, run apart from this code."""
    one = likely(**ROD)
    shares = [likely(**ROD, rods=2, spacing=feet) / one for feet in (6, 8, 16)]
    assert shares == pytest.approx([0.58, 0.57, 0.54], abs=0.005)


def test_the_diameter_is_no_radius():
    """Taken as a radius, 5/8 in would give 35.4 ohm."""
    assert likely(**ROD) == pytest.approx(39.9, abs=0.1)
    assert likely(**(ROD | {"diameter": "1.25in"})) == pytest.approx(35.4, abs=0.1)


def test_concrete_like_the_soil_leaves_the_bare_metal():
    """C6.ufer_limit: an identity."""
    bare, shell = shape.rod(3, 0.006), shape.rod(3, 0.15)
    assert shape.encased(100, 100, bare, shell) == pytest.approx(100 * bare, rel=1e-12)
    same = likely(**FOOTING, concrete_resistivity="100")
    assert same == pytest.approx(likely(**WIRE, electrode="buried-wire"), rel=1e-12)


def test_a_round_shell_of_concrete_agrees_with_the_published_form_for_a_rod():
    """IEEE 80: (concrete x ln(shell / metal) + soil x (ln(8 L / shell) - 1)) / (2 pi L), diameters in m."""
    published = (60 * math.log(0.3 / 0.016) + 200 * (math.log(8 * 3 / 0.3) - 1)) / (2 * math.pi * 3)
    found = shape.encased(200, 60, shape.rod(3, 0.008), shape.rod(3, 0.15))
    assert found == pytest.approx(published, rel=0.02)


def test_a_buried_wire_agrees_with_the_published_series():
    """H. B. Dwight 1936, a wire of length 2 l at depth s / 2."""
    half, radius, depth = 15, 0.0033, 0.75
    s = 2 * depth
    series = math.log(4 * half / radius) + math.log(4 * half / s) - 2 + s / (2 * half) - s**2 / (16 * half**2)
    assert shape.wire(2 * half, radius, depth) == pytest.approx(series / (4 * math.pi * half), rel=0.001)


def test_damp_concrete_spans_a_range_and_says_it_is_unverified():
    result = electrode(**FOOTING)
    values = result.answer.values
    assert values["ohm_low"] < values["ohm_likely"] < values["ohm_high"]
    assert "40 to 1000 ohm·m" in words(result) and "Not verified" in words(result)


@pytest.mark.parametrize(
    ("soil", "low", "typical", "high"),
    [
        ("fill", 5.9, 23.7, 70),
        ("clay", 3.4, 40.6, 163),
        ("clay-with-gravel", 10.2, 158, 1350),
        ("gravel", 590, 940, 4580),
    ],
)
def test_a_kind_of_soil_gives_its_whole_range(soil, low, typical, high):
    values = electrode(**(ROD | {"soil": soil})).answer.values
    found = [values[f"ohm_{end}"] for end in ("low", "likely", "high")]
    assert found == pytest.approx([each * 0.39915 for each in (low, typical, high)], rel=1e-4)


def test_a_known_soil_is_that_of_one_day_and_season_moves_it_up_to_tenfold():
    result = electrode(**ROD)
    assert str(result.answer.headline) == "About 40 ohm in the soil as entered, up to 400 ohm when it is dry or frozen"
    assert result.answer_code == "39.9-ohm" and result.answer.values["ohm_low"] == result.answer.values["ohm_likely"]
    assert result.answer.values["ohm_high"] == pytest.approx(10 * 39.915, rel=1e-3)


def test_a_kind_of_soil_keeps_the_range_that_was_measured():
    """Clay: 3.4, 40.6 and 163 ohm·m times 0.39915."""
    assert str(electrode(**(ROD | {"soil": "clay"})).answer.headline) == "16 ohm likely, 1.3 to 66 ohm possible"


RING = WIRE | {"electrode": "ring", "length": "200ft", "depth": "2.5ft"}


def test_a_ring_of_unknown_form_spans_a_circle_to_a_line_and_one_with_its_width_is_told_plainly():
    """100 ohm·m: 3.66 ohm as a circle; 98 by 2 ft have 4.63 with free current, 4.67 with an even one."""
    unknown, narrow, square = (electrode(**RING, width=width).answer for width in (None, "2ft", "50ft"))
    assert unknown.values["ohm_likely"] == pytest.approx(3.655, abs=0.005)
    # A wire of half the length, Dwight's series for it by hand: 6.04 ohm, ten times that in a dry or frozen season.
    assert unknown.values["ohm_high"] == pytest.approx(60.4, abs=0.3)
    assert "very narrow one" in str(unknown.detail) and "narrow" not in str(square.detail)
    assert narrow.values["ohm_likely"] == pytest.approx(4.63, rel=0.01)
    assert unknown.values["ohm_likely"] < square.values["ohm_likely"] < narrow.values["ohm_likely"]
    assert electrode(**RING, width="98ft").answer.values == narrow.values


@pytest.mark.parametrize(
    ("width", "outcome"), [("99.9ft", "fix"), ("120ft", "fix"), ("0.1ft", "fix"), ("99ft", "answer")]
)
def test_a_ring_is_no_wider_than_half_of_its_wire(width, outcome):
    """Ten diameters of 2 AWG are 0.215 ft."""
    result = electrode(**RING, width=width)
    assert result.outcome == outcome and (outcome == "answer" or result.fix[0].field == "width")


@pytest.mark.parametrize(
    ("resistivity", "remarked"), [("3.39", True), ("3.4", False), ("100", False), ("4580", False), ("4581", True),
                                  ("1000000", True)],
)  # fmt: skip
def test_a_resistivity_past_all_that_were_measured_is_remarked(resistivity, remarked):
    """US Bureau of Standards Report 108: 340 to 458,000 ohm-cm. 10,000 ohm-cm entered as ohm·m is a hundredfold."""
    assert ("Check the unit" in words(electrode(**(ROD | {"resistivity": resistivity})))) == remarked


@pytest.mark.parametrize(
    ("length", "remarked"), [("8ft", False), ("100ft", False), ("100.1ft", True), ("1000ft", True)]
)
def test_a_rod_longer_than_any_usual_one_is_remarked(length, remarked):
    assert ("Check the length" in words(electrode(**(ROD | {"length": length})))) == remarked
    assert "Check the length" not in words(electrode(**(RING | {"length": "1000ft"})))


def test_rods_in_a_line_are_told_what_a_closed_figure_would_have():
    """24 rods one length apart, IEEE 142 and method of moments: 1.82 of a twenty-fourth in a line, 2.00 around."""
    said = words(electrode(**ROD, rods=24, spacing=8))
    assert "24 rods have 8.3" in said and "closed shape" in said
    for other in ({"rods": 2}, {"rods": 24, "layout": "circle"}):
        assert "closed shape" not in words(electrode(**ROD, spacing=8, **other))


def test_dry_concrete_is_named_beside_the_number_where_its_resistivity_was_not_entered():
    assert "While its concrete stays damp" in str(electrode(**FOOTING).answer.detail)
    assert "damp" not in str(electrode(**FOOTING, concrete_resistivity="300").answer.detail)


@pytest.mark.parametrize(("diameter", "outcome"), [("0.99in", "answer"), ("1in", "answer"), ("1.01in", "not_covered")])
def test_a_rod_10_diameters_long_just_holds(diameter, outcome):
    assert electrode(soil="clay", length="10in", diameter=diameter).outcome == outcome


@pytest.mark.parametrize(("spacing", "outcome"), [("9.9in", "not_covered"), ("10in", "answer"), ("10.1in", "answer")])
def test_rods_10_diameters_apart_just_hold(spacing, outcome):
    assert electrode(soil="clay", length="8ft", diameter="1in", rods=2, spacing=spacing).outcome == outcome


@pytest.mark.parametrize(("depth", "outcome"), [("1.12ft", "not_covered"), ("1.13ft", "answer"), ("2.5ft", "answer")])
def test_a_plate_one_radius_deep_just_holds(depth, outcome):
    """A plate 2 ft square is a disc of radius 1.128 ft."""
    assert electrode(electrode="plate", soil="clay", length=2, width=2, depth=depth).outcome == outcome


@pytest.mark.parametrize(("spacing", "warned"), [("5.9ft", True), ("6ft", False), ("6.1ft", False)])
def test_rods_nearer_than_6_ft_are_warned_of(spacing, warned):
    for edition in EDITIONS:
        assert ("at least 6 ft apart" in words(electrode(edition, **ROD, rods=2, spacing=spacing))) == warned


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"length": 8}, "soil"),
        ({"soil": "clay", "diameter": "5/8"}, "length"),
        ({"soil": "clay", "length": 8}, "diameter"),
        ({"soil": "resistivity", "length": 8, "diameter": "5/8"}, "resistivity"),
        ({"soil": "four-pin", "pin_ohm": 2, "length": 8, "diameter": "5/8"}, "pin_spacing"),
        ({"soil": "four-pin", "pin_spacing": 20, "length": 8, "diameter": "5/8"}, "pin_ohm"),
        (ROD | {"rods": 2}, "spacing"),
        (ROD | {"rods": 25, "spacing": 8}, "rods"),
        (WIRE | {"rods": 2, "electrode": "ring"}, "rods"),
        (ROD | {"resistivity": "-5"}, "resistivity"),
        (ROD | {"resistivity": "100 ft"}, "resistivity"),
        (ROD | {"length": "0"}, "length"),
        (ROD | {"length": "1e9"}, "length"),
        (ROD | {"length": "1000000000ft"}, "length"),
        (ROD | {"diameter": "5/0"}, "diameter"),
        (ROD | {"electrode": "hope"}, "electrode"),
        ({"electrode": "ring", "soil": "clay", "length": 100, "conductor": "2"}, "depth"),
        ({"electrode": "ring", "soil": "clay", "length": 100, "depth": 2.5}, "diameter"),
        (WIRE | {"electrode": "ring", "depth": "0.01ft"}, "depth"),
        ({"electrode": "plate", "soil": "clay", "length": 2, "depth": 3}, "width"),
        (WIRE | {"electrode": "concrete-encased", "width": 1}, "height"),
        (FOOTING | {"depth": "0.4ft"}, "depth"),
        (FOOTING | {"width": "0.05ft", "height": "0.05ft", "conductor": None, "diameter": "1in"}, "width"),
    ],
)
def test_what_is_missing_or_cannot_be_is_named(inputs, field):
    assert to_mend(**inputs) == [field]


@pytest.mark.parametrize("written", ["100", "100 ohm·m", "100ohm-m", "100 Ωm", "10000 ohm-cm", "10,000ohmcm"])
def test_resistivity_is_read_in_any_usual_spelling(written):
    assert electrode(**(ROD | {"resistivity": written})).answer_code == "39.9-ohm"


@pytest.mark.parametrize("written", ["5/8", "5/8 in", "0.625", '5/8"', "15.875mm"])
def test_a_diameter_is_read_in_any_usual_spelling(written):
    assert electrode(**(ROD | {"diameter": written})).answer_code == "39.9-ohm"


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    ("inputs", "said"), [(ROD, True), (ROD | {"rods": 2, "spacing": 8}, False), (WIRE | {"electrode": "ring"}, False)]
)
def test_only_a_single_rod_pipe_or_plate_is_told_of_25_ohm(edition, inputs, said):
    assert ("measures 25 ohm or less" in words(electrode(edition, **inputs))) == said


def test_every_answer_says_that_it_is_a_model_and_clears_no_fault():
    for inputs in (ROD, FOOTING, WIRE | {"electrode": "buried-wire"}, WIRE | {"electrode": "ring"}):
        spoken = words(electrode(**inputs))
        for part in ("model for teaching", "Assumed: the soil", "qualified person", "No electrode clears a fault"):
            assert part in spoken


def test_a_link_restores_the_answer():
    result = electrode(**FOOTING)
    again = electrode_resistance.run(read(write(result).partition("?")[2]))
    assert again.answer_code == result.answer_code == again.linked_answer


METRES = draw.floats(0.5, 50)


@settings(deadline=None)
@given(draw.integers(1, 23), METRES, METRES, draw.sampled_from(["line", "circle"]))
def test_more_rods_and_wider_spacing_never_raise_the_resistance(count, length, spacing, layout):
    radius = 0.008
    few, more = (shape.rods(length, radius, spacing, each, layout) for each in (count, count + 1))
    assert more <= few * (1 + 1e-9)
    assert shape.rods(length, radius, spacing * 1.1, count, layout) <= few * (1 + 1e-9)


@settings(deadline=None)
@given(METRES, draw.floats(1.01, 3), draw.floats(0.2, 5))
def test_longer_thicker_and_deeper_never_raise_the_resistance(length, more, depth):
    radius = 0.008
    assert shape.rod(length * more, radius) < shape.rod(length, radius)
    assert shape.rod(length, radius * more) < shape.rod(length, radius)
    for form in (shape.wire, shape.ring):
        assert form(length * more, radius, depth) < form(length, radius, depth)
        assert form(length, radius * more, depth) < form(length, radius, depth)
        assert form(length, radius, depth * more) < form(length, radius, depth)
    for plate in (shape.plate, shape.strip):
        assert plate(1.5, 1, (0.9 + depth) * more) < plate(1.5, 1, 0.9 + depth)
        assert plate(1.5 * more, 1, 2 + depth) < plate(1.5, 1, 2 + depth)


def test_no_input_crashes():
    rough = {
        "electrode": ["rod", "ring", "buried-wire", "plate", "concrete-encased"],
        "soil": ["clay", "resistivity", "four-pin"],
        "length": ["0.1", "8", "5000"],
        "diameter": ["0.05", "60"],
        "depth": ["0.01", "300"],
        "width": ["0.05", "1000"],
        "spacing": ["0.1", "1000"],
        "rods": ["1", "24"],
    }
    outcomes = set()
    for inputs in itertools.product(*rough.values()):
        result = electrode(
            **dict(zip(rough, inputs, strict=True)),
            resistivity="1000000",
            pin_spacing="1000",
            pin_ohm="0.0001",
            height="0.05",
        )
        outcomes.add(result.outcome)
        if result.answer:
            assert 0 < result.answer.values["ohm_likely"] < math.inf
            assert electrode_resistance.run([("said", result.answer_code), ("soil", "clay")]).fix[0].field != "said"
    assert outcomes == {"answer", "fix", "not_covered"}


@pytest.mark.parametrize(
    ("inputs", "counts"),
    [
        ({"length": "7.99ft", "diameter": "5/8"}, False),
        ({"length": "8ft", "diameter": "5/8"}, True),
        ({"electrode": "ring", "length": "19.9ft", "conductor": "2", "depth": "2.5ft"}, False),
        ({"electrode": "ring", "length": "20ft", "conductor": "2", "depth": "2.5ft"}, True),
        ({"electrode": "plate", "length": "1ft", "width": "0.99ft", "depth": "2.5ft"}, False),
        ({"electrode": "plate", "length": "1ft", "width": "1ft", "depth": "2.5ft"}, True),
        ({**FOOTING, "length": "19.9ft"}, False),
        ({**FOOTING, "length": "20ft"}, True),
    ],
)
def test_metal_too_small_for_the_code_is_not_told_as_an_electrode(inputs, counts):
    """250.52(A): a rod of 8 ft, a ring and a bar in a footing of 20 ft, a plate with 2 ft² in the soil, both sides."""
    detail = str(electrode(**({"soil": "clay"} | inputs)).answer.detail)
    assert ("to qualify as an electrode" in detail and "250.52(A)" in detail) == (not counts)
