"""The figures of the bonding at knockouts against texts read apart from the rules.

250.92(B), 250.97 and its exception, voltage to ground: NFPA 70-2017, California 2022 (2020), NFPA 70-2023. Listing
of boxes: IAEI magazine 2007-11 and a table of product categories in trade forum thread 93792.
"""

from math import sqrt

from calc.editions import EDITIONS
from calc.rulebook import rule

# Volt between the wires, and what part of it stands to ground. The high leg stands to the midpoint of the far side.
SYSTEMS = {
    "120/240": (240, 1 / 2),
    "208Y/120": (208, 1 / sqrt(3)),
    "240-high-leg-delta": (240, sqrt(3) / 2),
    "240-corner-grounded-delta": (240, 1),
    "240-ungrounded-delta": (240, 1),
    "480Y/277": (480, 1 / sqrt(3)),
    "600Y/347": (600, 1 / sqrt(3)),
    "480-corner-grounded-delta": (480, 1),
    "480-ungrounded-delta": (480, 1),
}


def test_better_bonding_starts_over_250_volts_to_ground():
    for edition in EDITIONS:
        assert rule("raceways/over_250_volts_to_ground", edition).value == 250


def test_the_voltage_to_ground_of_each_system_follows_from_its_wires():
    """A nominal voltage is the computed one to the nearest volt: 346.4 V is called 347, so up to one volt."""
    for edition in EDITIONS:
        rows = rule("raceways/voltage_to_ground_of_system", edition).rows
        assert [row["system"] for row in rows] == list(SYSTEMS)
        for row in rows:
            between, part = SYSTEMS[row["system"]]
            nominal = 347 if between == 600 else round(between * part)
            assert row["volt"] == nominal and abs(row["volt"] - between * part) < 1


def test_the_exception_names_locknuts_on_rigid_conduit_connectors_with_shoulders_and_listed_fittings():
    for edition in EDITIONS:
        rows = [(row["fitting"], row["wiring"]) for row in rule("raceways/over_250_volts_exception", edition).rows]
        assert rows == [("two-locknuts", "rigid"), ("shoulder-connector", "any"), ("listed-fitting", "any")]


def test_only_a_jumper_serves_a_spoiled_hole_at_a_service():
    for edition in EDITIONS:
        rows = {row["fitting"]: row["knockout"] for row in rule("raceways/service_fittings", edition).rows}
        tight = dict.fromkeys(("threaded-hub", "bonding-locknut", "listed-fitting"), "right-size")
        assert rows == tight | {"bonding-bushing-and-jumper": "any"}


def test_outlet_boxes_and_marked_enclosures_bond_through_their_rings_and_cabinets_do_not():
    for edition in EDITIONS:
        rows = {row["enclosure"]: row["rings"] for row in rule("raceways/boxes_listed_for_bonding", edition).rows}
        assert rows == {"outlet-box": "listed", "marked-enclosure": "listed", "cabinet": "not-listed"}
