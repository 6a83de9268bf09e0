"""The figures of wires and raceways as paths of a fault, against texts read apart from the rules.

Resistance and reactance: an engineering data page, column by column; the 2017 print gives the same row by row.
Inside diameters: Chapter 9, Table 4 of 2017. Outside: makers' tables and a textbook. Practice: Soares 1966, a forum.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule

SIZES = "14 12 10 8 6 4 3 2 1 1/0 2/0 3/0 4/0 250kcmil 300kcmil 350kcmil 400kcmil 500kcmil 600kcmil 750kcmil 1000kcmil"
REACTANCE = {
    "nonmetallic": "58 54 50 52 51 48 47 45 46 44 43 42 41 41 41 40 40 39 39 38 37",
    "steel": "73 68 63 65 64 60 59 57 57 55 54 52 51 52 51 50 49 48 48 48 46",
}
COPPER = {
    "nonmetallic": "3100 2000 1200 780 490 310 250 190 150 120 100 77 62 52 44 38 33 27 23 19 15",
    "aluminum": "3100 2000 1200 780 490 310 250 200 160 130 100 82 67 57 49 43 38 32 28 24 19",
    "steel": "3100 2000 1200 780 490 310 250 200 160 120 100 79 63 54 45 39 35 29 25 21 18",
}
ALUMINUM = {
    "nonmetallic": "3200 2000 1300 810 510 400 320 250 200 160 130 100 85 71 61 54 43 36 29 23",
    "aluminum": "3200 2000 1300 810 510 410 320 260 210 160 130 110 90 76 66 59 48 41 34 27",
    "steel": "3200 2000 1300 810 510 400 320 250 200 160 130 100 86 72 63 55 45 38 31 25",
}
TRADE_SIZES = "1/2 3/4 1 1-1/4 1-1/2 2 2-1/2 3 3-1/2 4".split()
OUTSIDE = {
    "electrical-metallic-tubing": [0.706, 0.922, 1.163, 1.510, 1.740, 2.197, 2.875, 3.500, 4.000, 4.500],
    "intermediate-metal-conduit": [0.815, 1.029, 1.290, 1.638, 1.883, 2.360, 2.857, 3.476, 3.971, 4.466],
    "rigid-metal-conduit": [0.840, 1.050, 1.315, 1.660, 1.900, 2.375, 2.875, 3.500, 4.000, 4.500],
}
INSIDE = {
    "electrical-metallic-tubing": [0.622, 0.824, 1.049, 1.380, 1.610, 2.067, 2.731, 3.356, 3.834, 4.334],
    "intermediate-metal-conduit": [0.660, 0.864, 1.105, 1.448, 1.683, 2.150, 2.557, 3.176, 3.671, 4.166],
    "rigid-metal-conduit": [0.632, 0.836, 1.063, 1.394, 1.624, 2.083, 2.489, 3.090, 3.570, 4.050],
}


def thousandths(text: str) -> list[float]:
    return [int(each) / 1000 for each in text.split()]


def test_reactance_is_that_of_the_data_page_and_an_aluminum_raceway_counts_as_nonmetallic():
    for edition in EDITIONS:
        rows = rule("conductors/reactance_in_raceway", edition).rows
        assert [row["size"] for row in rows] == SIZES.split()
        assert [row["nonmetallic"] for row in rows] == thousandths(REACTANCE["nonmetallic"])
        assert [row["aluminum"] for row in rows] == thousandths(REACTANCE["nonmetallic"])
        assert [row["steel"] for row in rows] == thousandths(REACTANCE["steel"])


def test_resistance_is_that_of_the_data_page_in_each_raceway():
    for edition in EDITIONS:
        rows = rule("conductors/resistance_in_raceway", edition).rows
        for metal, sizes, columns in (
            ("copper", SIZES.split(), COPPER),
            ("aluminum", SIZES.split()[1:], ALUMINUM),
        ):
            found = [row for row in rows if row["metal"] == metal]
            assert [row["size"] for row in found] == sizes
            for raceway, column in columns.items():
                assert [row[raceway] for row in found] == thousandths(column)
        assert {row["metal"] for row in rows} == {"copper", "aluminum"}


def test_conductivity_gives_the_changes_at_75_degrees_that_the_2017_table_prints():
    printed = {"copper": (100, 0.00323), "aluminum": (61, 0.00330)}
    for edition in EDITIONS:
        rows = {row["metal"]: row for row in rule("conductors/conductivity", edition).rows}
        assert set(rows) == set(printed)
        for metal, (percent, at_75) in printed.items():
            assert rows[metal]["percent"] == percent
            change = rows[metal]["per_kelvin"]
            assert round(change / (1 + 55 * change), 5) == at_75


def test_the_lay_of_strands_is_two_percent_as_stranded_and_solid_rows_of_the_2017_table_differ():
    """Stranded over solid, ohm per 1000 ft.

    14 AWG 3.14 and 3.07, 12: 1.98 and 1.93, 10: 1.24 and 1.21, 8: .778 and .764.
    """
    for edition in EDITIONS:
        lay = rule("conductors/lay_of_strands", edition).value
        for stranded, solid in ((3.14, 3.07), (1.98, 1.93), (1.24, 1.21), (0.778, 0.764)):
            assert abs(lay - stranded / solid) < 0.006
        assert lay == 1.02


def test_tubes_have_the_diameters_of_the_tables():
    for edition in EDITIONS:
        rows = rule("raceways/tube_dimensions", edition).rows
        assert {row["raceway"] for row in rows} == set(OUTSIDE)
        for raceway, outside in OUTSIDE.items():
            found = [row for row in rows if row["raceway"] == raceway]
            assert [row["trade_size"] for row in found] == TRADE_SIZES
            assert [row["outside"] for row in found] == outside
            assert [row["inside"] for row in found] == INSIDE[raceway]


def test_steel_is_taken_in_the_range_that_the_check_cases_use_and_joints_from_a_tenth_to_five_milliohm():
    """Permeability 100, 300, 800 and 0.17 µΩm: the shared check cases. 0.138: IEC 60364-5-54 at 20 °C."""
    for edition in EDITIONS:
        rows = rule("raceways/steel_as_return", edition).rows
        assert [row["impedance"] for row in rows] == ["low", "likely", "high"]
        assert [row["permeability"] for row in rows] == [100, 300, 800]
        assert [row["microohm_metre"] for row in rows] == [0.138, 0.17, 0.2]
        assert [row["joint_milliohm"] for row in rows] == [0.1, 1, 5]
        assert rule("raceways/length_of_pipe", edition).value == 10


def test_practice_wants_five_times_the_rating_and_takes_fifty_volt_for_the_arc():
    for edition in EDITIONS:
        assert rule("fault/return_path_multiple", edition).value == 5
        assert rule("fault/arc_allowance", edition).value == 50


def test_the_three_lengths_go_from_hot_wires_and_low_voltage_to_cold_wires_and_full_voltage():
    for edition in EDITIONS:
        rows = rule("fault/wire_and_voltage_range", edition).rows
        assert [(row["length"], row["celsius"], row["voltage_share"]) for row in rows] == [
            ("low", 75, 0.95),
            ("likely", 50, 1),
            ("high", 25, 1),
        ]
