"""The figures of overcurrent and ground-fault devices against texts read apart from the rules.

Seen: a protector maker's page on UL 489 (1.35 and 2 times, the first rows); UL 248-9:2015 and UL 248-2:2019 in
excerpts; a maker's sheet of household breakers with the tests of IEC 60898-1; a maker's questions and answers on
UL 943; two magazines on the scope of UL 943; a lesson on 240.83(C) and a quiz on the 2023 edition for devices without a
mark; NFPA 70E Table 130.7(C)(15)(a), note; 230.95(A) in NFPA 70-2017, California 2022 and NFPA 70-2023.
The other rows are those of the reference list of devices, from memory, and marked so.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule

FIGURES = {
    "breaker_holds": 1,
    "breaker_at_135_percent_small": [{"multiple": 1.35, "through_ampere": 50, "second": 3600}],
    "breaker_at_135_percent": [{"multiple": 1.35, "second": 7200}],
    "breaker_at_200_percent_small": [{"multiple": 2, "through_ampere": 30, "second": 120}],
    "breaker_instantaneous_time": [{"breaker": "molded-case", "cycle": 1.5}, {"breaker": "insulated-case", "cycle": 3}],
    "instantaneous_tolerance": [{"low": -30, "high": 40}],
    "fast_region": [{"opens": "in-seconds", "multiple": 5}, {"opens": "at-once", "multiple": 10}],
    "fuse_holds": 1.1,
    "fuse_class_c": [
        {"multiple": 1.6, "over_ampere": 60, "through_ampere": 200, "second": 120 * 60},
        {"multiple": 1.6, "over_ampere": 200, "through_ampere": 1200, "second": 240 * 60},
    ],
    "fuse_class_largest": [{"fuse_class": "c", "ampere": 1200}, {"fuse_class": "k", "ampere": 600}],
    "fuse_class_cc_largest": 30,
    "fuse_delay_hold": [{"multiple": 5, "second": 10}],
    "fuse_delay_hold_class_k": [{"multiple": 5, "through_ampere": 30, "second": 8}],
    "fuse_delay_hold_class_cc": [{"multiple": 2, "second": 12}],
    "household_breaker_holds": 1.13,
    "household_breaker_at_255_percent": [
        {"multiple": 2.55, "through_ampere": 32, "least_second": 1, "second": 60},
        {"multiple": 2.55, "through_ampere": 125, "least_second": 1, "second": 120},
    ],
    "household_breaker_magnetic": [
        {"type": "iec-b", "holds": 3, "opens": 5, "second": 0.1},
        {"type": "iec-c", "holds": 5, "opens": 10, "second": 0.1},
        {"type": "iec-d", "holds": 10, "opens": 20, "second": 0.1},
    ],
    "loop_voltage_factor": 0.95,
    "equipment_ground_fault_setting": 1200,
    "equipment_ground_fault_delay": [{"ampere": 3000, "second": 1}],
    "interrupter_class_a": [{"holds": 4, "opens": 6, "curve": 20, "exponent": 1.43, "through": 264}],
    "interrupter_class_a_voltage": 240,
    "interrupter_smallest_rating": 15,
    "breaker_unmarked_interrupting": 5000,
    "fuse_unmarked_interrupting": 10_000,
    "household_breaker_least_interrupting": 1500,
    "largest_x_over_r": 20,
    "device_over_ampacity": 4,
}
# Multiple, then pairs of the largest rating of a row, ampere, and its longest time, second.
TIMES = {
    "breaker_at_200_percent": (2, (50, 240), (100, 360), (150, 480), (225, 600), (400, 720), (600, 840)),
    "breaker_field_test": (3, (30, 50), (50, 80), (100, 140), (150, 200), (225, 230), (400, 300)),
    "fuse_at_135_percent": (1.35, (60, 3600), (600, 7200)),
    "fuse_at_200_percent": (2, (30, 120), (60, 240), (100, 360), (200, 480), (400, 600), (600, 720)),
    "household_breaker_opens": (1.45, (63, 3600), (125, 7200)),
}


def test_the_figures_of_devices_are_those_of_the_texts_and_the_same_in_every_edition():
    for name, figures in FIGURES.items():
        for edition in EDITIONS:
            stated = rule(f"fault/{name}", edition)
            assert (list(stated.rows) or stated.value) == figures, name


def test_the_times_by_rating_are_those_of_the_reference_list():
    for name, (multiple, *pairs) in TIMES.items():
        for edition in EDITIONS:
            rows = rule(f"fault/{name}", edition).rows
            assert [(row["multiple"], row["through_ampere"], row["second"]) for row in rows] == [
                (multiple, *pair) for pair in pairs
            ], name


def test_final_circuits_under_iec_rules_have_the_times_of_the_reference_list():
    """IEC 60364-4-41, TN: 0.8 s to 120 V, 0.4 s at 230 V, 0.2 s at 400 V."""
    for edition in EDITIONS:
        rows = rule("fault/disconnection_time", edition).rows
        assert [(row["through_volt"], row["second"]) for row in rows] == [(120, 0.8), (230, 0.4), (400, 0.2)]


def test_what_no_text_shows_is_marked_so():
    unseen = ("breaker_at_200_percent", "breaker_field_test", "fuse_at_135_percent")
    unseen += ("fuse_at_200_percent", "household_breaker_opens", "disconnection_time")
    for edition in EDITIONS:
        assert {rule(f"fault/{name}", edition).mark for name in unseen} == {"memory"}
    assert rule("fault/fast_region", "2023").mark == "practice"
