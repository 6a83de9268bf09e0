"""How far the drawn circuit's answer may move: bounds around the answer, the main input first, given up in pieces."""

import pytest

from calc import take_a_bond_away
from calc.fault.scene.scene_ranges import scene_ranges


def told(at_once=50, **inputs):
    *_, last = scene_ranges(take_a_bond_away(edition="2023", **inputs), at_once)
    return [str(words) for words in last]


def test_the_answer_lies_within_its_range_and_is_the_lowest_but_for_the_voltage():
    """The drawn circuit has hot wires; 95 of 100 percent of the voltage takes 5 percent more of the current."""
    answer = take_a_bond_away(edition="2023", fault="machine").answer.values["fault_ampere"]
    low, high = (float(word) for word in told(fault="machine")[0].split() if word.replace(".", "").isdigit())
    assert low == pytest.approx(0.95 * answer, rel=0.01) and low < answer < high


def test_cold_wires_give_the_most_current():
    """Copper at 25 °C has 1/1.2 of the resistance it has at 75 °C: at most a fifth more current."""
    answer = take_a_bond_away(edition="2023", fault="machine").answer.values["fault_ampere"]
    high = float(told(fault="machine")[0].split(" to ")[1].split()[0])
    assert 1.1 * answer < high <= 1.2 * answer


def test_what_moves_the_current_most_comes_first():
    assert told(fault="machine")[1].startswith("What changes it most: temperature of the wires")


def test_the_voltage_on_the_metal_is_told_for_every_part_with_and_without_a_fault():
    for fault, sentences in (("machine", 7), ("none", 5)):
        assert len(told(fault=fault, missing="supply-neutral", loads="on")) == sentences


def test_the_work_can_be_given_up_between_pieces():
    pieces = list(scene_ranges(take_a_bond_away(edition="2023", fault="machine"), 10))
    assert len(pieces) > 20 and all(piece is None for piece in pieces[:-1]) and pieces[-1]
