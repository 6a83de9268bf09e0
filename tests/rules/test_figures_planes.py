"""The figures of planes around pools, under livestock and beside water, against texts read apart from the rules.

2017: NFPA 70-2017. 2020: California Electrical Code 2022 (Chapter 6). No text of Chapters 5 and 6 of 2023 was seen, nor
of 2026; what the press and courses tell of them stands beside it.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.rules import by_edition
from tests.rules.by_edition import since


def rows(name):
    return by_edition.rows(f"planes/{name}")


def test_values_that_stand_in_every_edition():
    expected = {
        "pool_grid_spacing": 12,  # 680.26(B)(1)(b)(3), 300 mm
        "pool_grid_tolerance": 4,  # 680.26(B)(1)(b)(3), 100 mm
        "pool_grid_depth": 6,  # 680.26(B)(1)(b)(4), 150 mm
        "pool_perimeter_ties": 4,  # 680.26(B)(2)
        "pool_perimeter_wall": 5,  # 680.26(B)(2), feet
        "pool_heater_with_instructions": 50,  # 680.26(B)(6)(b), ampere
        "spa_rim_reach": 30,  # 680.42(B)(4), 760 mm
        "spa_indoors_distance": 5,  # 680.43(D)
        "therapeutic_tub_distance": 5,  # 680.62(B)
        "plane_depth": 3,  # 682.2 and 682.33(C)(3), 75 mm
        "service_from_shoreline": 5,  # 682.11, 1.5 m
        "disconnect_from_shoreline": 5,  # 682.14(B), 1.5 m
        "water_equipment_conductor": "12",  # 682.31(A)
        "wire_allowance": 10,  # practice, no text
        "test_resistor_near": 10,  # practice, no text
    }
    for name, figure in expected.items():
        assert {rule(f"planes/{name}", edition).value for edition in EDITIONS} == {figure}, name


def test_rows_that_stand_in_every_edition():
    expected = {
        "pool_ring_distance": [{"least": 18, "most": 24}],  # 450 to 600 mm
        "pool_ring_depth": [{"least": 4, "most": 6}],  # 100 to 150 mm
        "pool_small_fitting": [{"across": 4, "into": 1}],  # 100 mm, 25 mm
        "livestock_places": [{"place": "indoor-concrete"}, {"place": "outdoor-slab"}],
        # A dairy magazine on a lecture of 2014: 2 mA or 1 V; 2.5, 4.8, 8.5 mA; 8 to 16 mA. 1 V / 500 ohm = 2 mA.
        "animal_contact_level": [{"volt": 1, "milliampere": 2, "ohm": 500}],
        "cow_response": [{"five": 2.5, "half": 4.8, "most": 8.5, "avoid_from": 8, "avoid_to": 16}],
        # University of Idaho, 2020: means 254, 236 and 305 ohm by path; lowest of a farm 141 ohm.
        "cow_resistance": [{"resistor": 500, "mean": 254, "lowest": 141}],
        # A state bulletin of 1998: rods 1 ft apart, at 45 degrees.
        "livestock_gradient": [{"feet": 1, "degrees": 45}],
    }
    for name, figures in expected.items():
        assert rows(name) == dict.fromkeys(EDITIONS, figures), name


STEEL, RING, GRID = ({"way": way, "surface": "any"} for way in ("steel", "ring", "grid"))
AMENDED = [
    {"way": "steel", "surface": "paved"},
    {"way": "mesh", "surface": "paved"},
    {"way": "grid", "surface": "paved"},
    {"way": "ring", "surface": "unpaved"},
    {"way": "grid", "surface": "unpaved"},
    {"way": "none", "surface": "off-earth"},
]


def test_ways_around_a_pool_by_edition():
    printed = {"2017": [STEEL, RING], "2020": [STEEL, RING, GRID]}
    assert rows("pool_perimeter_ways") == since(printed | {"2026": AMENDED})
    assert rows("pool_perimeter_ways_amended") == since(printed | {"2023": AMENDED})


def test_anchors_of_a_cover_by_edition():
    """2020: 25 mm across and 51 mm long in concrete or masonry; 51 mm and 51 mm in wood or composite."""
    since_2020 = [
        {"deck": "concrete or masonry", "across": 1, "long": 2},
        {"deck": "wood or composite", "across": 2, "long": 2},
    ]
    assert rows("pool_cover_anchor") == since(
        {"2017": [{"deck": "any", "across": 4, "long": 1}], "2020": since_2020}
    )


def test_metals_of_the_bond_by_edition():
    copper = [{"metal": "solid copper"}]
    both = [*copper, {"metal": "copper-clad steel of 40 percent"}]
    assert rows("pool_conductor_materials") == since({"2017": copper, "2026": both})


def test_parts_of_a_fountain_by_edition():
    """2017: 680.53, piping. 2020: 680.54(B)(1) to (5), metal within 5 ft."""
    since_2020 = [
        *({"part": part, "within": 0} for part in ("piping", "fittings", "equipment")),
        *({"part": part, "within": 5} for part in ("raceways", "surfaces")),
    ]
    assert rows("fountain_parts") == since({"2017": [{"part": "piping", "within": 0}], "2020": since_2020})


def test_how_a_plane_under_livestock_is_built_by_edition():
    before = [{"way": "mesh or steel in the concrete, tied together"}]
    told = [
        {"way": "bare steel bars, tied together"},
        {"way": "grid of bare solid copper, 8 AWG or larger"},
        {"way": "two more ways, not seen"},
    ]
    assert rows("livestock_construction") == since({"2017": before, "2026": told})


def test_planes_at_docks_are_new_in_2023():
    """555.14 as a maker and a course tell it: over 250 V to ground, within 10 ft, out 36 in, solid copper of 8 AWG."""
    asked = [{"asked": "yes", "over_volt": 250, "within_feet": 10, "reach_inch": 36}]
    none, copper = [{"size": "none"}], [{"size": "8"}]
    assert rows("dock_plane_conditions") == since({"2017": [{"asked": "no"}], "2023": asked})
    assert rows("dock_plane_bond") == since({"2017": none, "2023": copper})
    assert rows("dock_solid_copper") == since({"2017": none, "2020": copper})
