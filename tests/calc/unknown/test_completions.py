"""An answer that depends is held against all its completions, worked out one by one."""

import random
from itertools import pairwise, product
from statistics import mean

import pytest

from calc import CALCULATORS
from calc.answer import Answer
from calc.grounding.size_for_circuit import BREAKS
from calc.unknown.completions import MAX_WHOLE, NOT_A_STATE, completions
from calc.unknown.conditions import holds, shortest_condition
from calc.unknown.numbers import between
from calc.unknown.outcome_words import mark_of
from calc.unknown.safe_side import on_the_safe_side, safe_side
from calc.unknown.states import UNKNOWN, Open, Range
from calc.unknown.stretches import Stretch
from calc.unknown.turns import starts_of
from tests.cases.read import FOLDER, cases

# Inputs with finite domains left open, so that everything can be gone through twice.
FINITE = [
    ("main-bonding-jumper",
     {"conductor": "500kcmil", "sets": "1..3", "conductor_metal": "unknown", "form": "unknown"}),
    ("main-bonding-jumper", {"conductor": "3/0..500kcmil", "metal": "unknown", "enclosures": "unknown"}),
    ("grounding-electrode-conductor", {"conductor": "3/0", "electrode": "unknown", "ring": "2", "sets": "1..3"}),
    ("structural-metal-bonding", {"conductor": "3/0", "frame": "unknown", "exposed": "unknown", "bonded": "unknown"}),
    ("supply-side-bonding-jumper", {"conductor": "250kcmil", "place": "unknown", "conductor_metal": "unknown"}),
    ("knockouts-over-250-volts", {"system": "unknown", "knockout": "unknown", "enclosure": "unknown",
                                  "raceway": "rigid-metal-conduit", "fitting": "two-locknuts"}),
    ("raceway-as-grounding-path",
     {"raceway": "unknown", "device": "20", "fittings": "unknown", "qualified": "unknown"}),
    ("conductor-name", {"where": "unknown", "from_part": "unknown", "to_part": "enclosure"}),
]  # fmt: skip
# A range whose inside is sampled: the declared direction must hold for the answers found there.
RANGES = [
    ("equipment-grounding-conductor", "device", "15..1000", {}),
    ("equipment-grounding-conductor", "device", "15..400", {"minimum_conductor": "4", "installed_conductor": "1"}),
    ("equipment-grounding-conductor", "device", "30..400", {"sets": "2", "metal": "aluminum", "raceway": "cable-tray"}),
    ("equipment-bonding-jumper", "device", "15..2000", {}),
    ("equipment-bonding-jumper", "length", "0.5..20", {"device": "100", "routing": "outside"}),
    ("supply-side-bonding-jumper", "length", "0.5..20", {"conductor": "3/0", "run": "outside"}),
    ("water-pipe-bonding", "device", "15..4000", {"piping": "other-metal"}),
    ("water-pipe-bonding", "device", "15..4000", {"piping": "water-isolated-unit"}),
    ("raceway-as-grounding-path", "device", "10..100",
     {"raceway": "flexible-metal-conduit", "trade_size": "1/2", "length": "4"}),
    ("raceway-as-grounding-path", "device", "10..100",
     {"raceway": "liquidtight-flexible-metal-conduit", "trade_size": "1", "length": "4"}),
    ("raceway-as-grounding-path", "length", "1..20",
     {"raceway": "flexible-metal-conduit", "trade_size": "1/2", "device": "20"}),
    ("buried-metal-elbow", "cover", "0..40", {"conductor": "3/0"}),
    ("buried-metal-elbow", "cover", "0..40", {"circuit": "feeder-or-branch", "device": "100"}),
    ("buried-metal-elbow", "concrete", "0..10", {"conductor": "3/0", "cover": "12"}),
    ("buried-metal-elbow", "device", "15..1000", {"circuit": "feeder-or-branch", "cover": "6"}),
    ("knockouts-over-250-volts", "voltage_to_ground", "50..1200",
     {"raceway": "rigid-metal-conduit", "fitting": "two-locknuts"}),
    ("device-clearing", "fault_current", "1..4000", {"device": "20"}),
    ("device-clearing", "fault_current", "1..4000", {"device": "100", "device_kind": "fuse-time-delay"}),
    ("device-clearing", "fault_current", "1..4000", {"device": "32", "device_kind": "iec-c"}),
    ("jumper-withstand", "fault_current", "100..40000", {"clearing_time": "0.5"}),
    ("jumper-withstand", "clearing_time", "0.1..4", {"fault_current": "3000", "x_over_r": "5"}),
    ("jumper-withstand", "clearing_time", "0.1..4", {"fault_current": "3000", "size": "6", "x_over_r": "5"}),
    ("deck-voltage", "rise", "1..50", {}),
    ("ground-fault-loop", "length", "20..900",
     {"voltage_to_ground": "120", "device": "20", "conductor": "12", "return_conductor": "12"}),
    ("longest-return-path", "device", "15..60",
     {"voltage_to_ground": "120", "conductor": "10", "return_conductor": "10"}),
    ("electrode-resistance", "resistivity", "10..900", {"soil": "resistivity", "length": "8", "diameter": "5/8 in"}),
    ("electrode-resistance", "length", "4..40", {"soil": "clay", "diameter": "5/8 in"}),
    ("shock-limits", "voltage", "5..600", {}),
    ("shock-limits", "voltage", "5..600", {"path": "hand-hand", "condition": "dry", "clears": "yes", "time": "0.1"}),
]  # fmt: skip

# The same for every other number, a slice of them at a time.
CURRENT = {"system": "208Y/120", "kva": "75", "percent_z": "3", "conductor": "1/0", "length": "100 ft"}
PARTS = {"system": "480Y/277", "kva": "500", "percent_r": "1.2", "percent_x": "4.8"}
UTILITY = {"system": "480Y/277", "kva": "500", "percent_z": "5", "x_over_r": "4", "primary_voltage": "13800",
           "utility_current": "5000"}  # fmt: skip
GENERATOR = {"source": "generator", "system": "208Y/120", "kva": "75", "subtransient": "12", "zero_sequence": "4"}
KNOWN = {"source": "given-current", "system": "208Y/120", "three_phase_current": "10000", "conductor": "1/0",
         "length": "100 ft", "line_to_ground_current": "9000"}  # fmt: skip
RETURN = {"device": "20", "voltage_to_ground": "120", "conductor": "10", "return_conductor": "10", "length": "300 ft",
          "available": "5000", "arc": "10", "spacing": "2 ft"}  # fmt: skip
LOOP = {"voltage_to_ground": "120", "device": "20", "conductor": "12", "return_conductor": "12", "length": "150 ft",
        "available": "5000", "spacing": "1 ft", "instantaneous_multiple": "10",
        "instantaneous_read": "setting"}  # fmt: skip
POOL = {"kind": "above-ground", "parts": "ladder", "surfaces": "paved,unpaved", "way": "ring", "fence": "4",
        "door": "4", "piping": "4", "raceway": "4", "other_metal": "4", "other_height": "11", "height_from": "water",
        "wall_height": "4", "pool_length": "30", "pool_width": "15"}  # fmt: skip
BOND = {"method": "two-wire", "dead": "yes", "conductor": "6", "length": "100ft", "reading": "0.05",
        "lead_spread": "0.005", "lead_ohm": "0.01", "digit": "0.001", "meter_percent": "1", "beside": "no"}  # fmt: skip
DROP = {"method": "voltage-drop", "dead": "yes", "conductor": "10", "length": "10ft", "beside": "no", "current": "10A",
        "drop": "0.02", "drop_off": "0.001", "meter_percent": "1", "limit": "own", "limit_ohm": "0.005"}  # fmt: skip
FOUR = {"method": "four-wire", "dead": "yes", "conductor": "6", "length": "20", "reading": "0.0093",
        "reverse_reading": "0.0095", "beside": "no", "meter_percent": "1"}  # fmt: skip
CLAMP = {"where": "equipment-grounding-conductor", "ampere": "0.5", "empty": "0.05", "digit": "0.01",
         "meter_percent": "2", "off_ampere": "0.2", "appliances": "6"}  # fmt: skip
LEAK = {"leak_ohm": "100", "one_earth_ohm": "50", "one_neutral_ohm": "500", "two_neutral_ohm": "20",
        "two_earth_ohm": "30", "neutral_ohm": "10", "bond_ohm": "1"}  # fmt: skip
STRAY = {"load": "20", "neutral": "4", "length": "100", "grounding_conductor": "8", "pipe": "0.05"}
SCENE = {"fault": "machine", "loose": "feeder-return", "loose_ohm": "2", "touched": "machine"}
PIPE = {"soil": "resistivity", "resistivity": "100", "shape": "pipe", "length": "10", "cover": "18"}
RING = {"rise": "10", "arrangement": "ring", "depth": "4", "ring_distance": "18"}
TRANSFORMER = {"kva": "75", "device": "225", "conductor": "4/0", "electrode": "rod", "primary_device": "100",
               "metal_parts": "other-metal", "piping_device": "60"}  # fmt: skip
BUILDING = {"device": "100", "conductor": "1", "minimum_conductor": "3", "electrodes": "rod",
            "metal_parts": "other-metal", "piping_device": "60"}  # fmt: skip
MORE_RANGES = [
    ("equipment-grounding-conductor", {"device": "20..400", "installed_conductor": "3/0", "sets": "2"}),
    ("equipment-grounding-conductor", {"device": "20", "motor": "motor-instantaneous-trip", "motor_current": "5..300"}),
    ("equipment-bonding-jumper", {"device": "20..400", "installed_conductor": "3/0", "sets": "2"}),
    ("raceway-as-grounding-path", {"raceway": "cable-tray", "device": "200", "tray_area": "0.1..3"}),
    *[("available-fault-current", CURRENT | each) for each in (
        {"kva": "10..1000"}, {"percent_z": "1..8"}, {"tolerance": "0..15"}, {"temperature": "-20..75"},
        {"motor_current": "0..500"}, {"voltage_factor": "0.95..1.1"}, {"utility_kva": "1000..500000"})],
    *[("available-fault-current", PARTS | each) for each in ({"percent_r": "0.5..3"}, {"percent_x": "1..8"})],
    *[("available-fault-current", UTILITY | each) for each in (
        {"utility_current": "500..20000"}, {"primary_voltage": "4160..34500"}, {"x_over_r": "0.5..20"})],
    *[("available-fault-current", GENERATOR | each) for each in (
        {"subtransient": "8..25"}, {"zero_sequence": "1..15"})],
    *[("available-fault-current", KNOWN | each) for each in (
        {"three_phase_current": "1000..40000"}, {"line_to_ground_current": "5000..12000"})],
    *[("longest-return-path", RETURN | each) for each in (
        {"voltage_to_ground": "100..300"}, {"multiple": "3..12"}, {"length": "10..900"}, {"arc": "0..40"},
        {"available": "400..40000"}, {"spacing": "0.2..20"})],
    *[("ground-fault-loop", LOOP | each) for each in (
        {"device": "25..55"}, {"voltage_to_ground": "100..277"}, {"available": "400..20000"}, {"joint": "0..2"},
        {"instantaneous_multiple": "3..20"}, {"arc": "0..60"}, {"spacing": "0.2..20"})],
    *[("stray-neutral-current", STRAY | each) for each in ({"load": "5..80"}, {"pipe": "0.005..5"})],
    ("device-clearing", {"device": "15..400", "fault_current": "160", "device_kind": "fuse", "fuse_class": "c"}),
    ("device-clearing", {"device": "15..400", "fault_current": "275.5"}),
    ("device-clearing", {"device": "20", "fault_current": "250", "instantaneous_multiple": "3..20",
                         "instantaneous_read": "setting"}),
    ("device-clearing", {"device": "20", "fault_current": "100", "voltage_to_ground": "50..600",
                         "interrupting_rating": "10000", "available": "9000"}),
    ("device-clearing", {"device": "20", "fault_current": "100", "available": "1000..50000",
                         "interrupting_rating": "10000"}),
    ("device-clearing", {"device": "20", "fault_current": "100", "interrupting_rating": "5000..22000",
                         "available": "9000"}),
    ("jumper-withstand", {"fault_current": "3000", "clearing_time": "0.5", "size": "6", "start_celsius": "10..80"}),
    ("jumper-withstand", {"fault_current": "3000", "clearing_time": "0.2", "size": "4", "x_over_r": "0..40"}),
    ("jumper-withstand", {"fault_current": "3000", "size": "10", "let_through": "1000..4000000"}),
    *[("earth-only-return", {"device": "20"} | each) for each in (
        {"device": "3..60"}, {"voltage_to_ground": "50..400", "electrode_ohm": "10"}, {"electrode_ohm": "1..100"},
        {"source_ohm": "0..20", "electrode_ohm": "2"})],
    *[("electrode-resistance", {"soil": "four-pin", "pin_spacing": "10", "pin_ohm": "5", "length": "8",
                                "diameter": "5/8 in"} | each) for each in (
        {"pin_spacing": "2..40"}, {"pin_ohm": "0.5..50"}, {"diameter": "0.25..4"},
        {"rods": "3", "spacing": "6..60"})],
    *[("electrode-resistance", {"electrode": "plate", "soil": "clay", "length": "2", "width": "2", "depth": "3"} | each)
      for each in ({"length": "1..6"}, {"width": "1..6"}, {"depth": "2.5..20"})],
    *[("electrode-resistance", {"electrode": "concrete-encased", "soil": "clay", "length": "20", "conductor": "4",
                                "depth": "2", "width": "12in", "height": "12in", "concrete_resistivity": "100"} | each)
      for each in ({"width": "0.7..2"}, {"height": "0.7..2"}, {"depth": "2..6"}, {"concrete_resistivity": "30..300"})],
    ("measured-electrode", {"isolated": "yes", "dimension": "2..40", "probe": "100ft", "distances": "50,61.8,70",
                            "readings": "20,20.5,21"}),
    *[("pool-bonding-plan", POOL | each) for each in (
        {"fence": "0..20"}, {"door": "0..20"}, {"piping": "0..20"}, {"raceway": "0..20"}, {"other_metal": "0..20"},
        {"other_height": "1..20"}, {"wall_height": "1..10"}, {"pool_length": "10..50"}, {"pool_width": "5..30"})],
    ("pool-bonding-plan", {"kind": "in-ground-conductive", "water_contact": "surface", "water_area": "1..20"}),
    ("pool-bonding-plan", {"kind": "spa-outdoors", "listed_spa": "yes", "rim_height": "10..40"}),
    ("livestock-equipotential-plane", {"area": "indoor-concrete", "volt": "0.1..3"}),
    ("livestock-equipotential-plane", {"area": "indoor-concrete", "volt": "0.4", "resistor": "300..2000"}),
    *[("waterside-equipotential-plane", {"water": "body", "equipment": "service", "distance": "8", "reach": "40",
                                         "depth": "3"} | each) for each in (
        {"distance": "1..20"}, {"reach": "10..60"}, {"depth": "0..12"})],
    ("waterside-equipotential-plane", {"water": "dock", "equipment": "service", "distance": "8",
                                       "voltage_to_ground": "100..480"}),
    *[("bond-measurement", BOND | each) for each in (
        {"length": "5..400"}, {"celsius": "-20..60"}, {"joints": "0..199"}, {"reading": "0.02..0.3"},
        {"lead_spread": "0.001..0.05"}, {"lead_ohm": "0..0.04"}, {"digit": "0..0.02"}, {"meter_percent": "0.5..20"})],
    *[("bond-measurement", DROP | each) for each in (
        {"current": "1..50"}, {"drop": "0.005..0.3"}, {"drop_off": "0..0.018"}, {"limit_ohm": "0.001..0.02"})],
    ("bond-measurement", FOUR | {"reading": "0.0093..0.0096"}),
    *[("clamp-reading", CLAMP | each) for each in (
        {"ampere": "0.05..5"}, {"empty": "0..0.6"}, {"off_ampere": "0..0.6"}, {"appliances": "0..400"},
        {"digit": "0..0.6"}, {"meter_percent": "0..40"})],
    *[("voltage-between", LEAK | each) for each in (
        {"leak_ohm": "1..5000"}, {"voltage": "50..480"}, {"one_earth_ohm": "1..5000"}, {"one_neutral_ohm": "0.1..5000"},
        {"two_neutral_ohm": "0.1..5000"}, {"two_earth_ohm": "0.1..5000"}, {"bond_ohm": "0.01..100"},
        {"neutral_ohm": "0..500"})],
    ("voltage-between", {"leak_ampere": "0.005..5", "one_earth_ohm": "100", "two_neutral_ohm": "0.1"}),
    ("voltage-between", {"cause": "utility", "neutral_volt": "1..20", "one_neutral_ohm": "1", "two_earth_ohm": "200"}),
    *[("take-a-bond-away", SCENE | each) for each in (
        {"loose_ohm": "0.1..50"}, {"person_ohm": "300..5000"}, {"electrode_ohm": "1..200"},
        {"supply_length": "10..500"}, {"feeder_length": "10..500"}, {"branch_length": "10..500"})],
    *[("surface-voltage", PIPE | each) for each in (
        {"voltage_to_ground": "50..480"}, {"resistivity": "10..1000"}, {"length": "5..60"}, {"diameter": "1..6"},
        {"cover": "8..60"}, {"distance": "0..20"}, {"device": "15..200"})],
    ("surface-voltage", {"soil": "four-pin", "pin_spacing": "2..20", "pin_ohm": "10", "cover": "18"}),
    ("surface-voltage", {"soil": "four-pin", "pin_spacing": "5", "pin_ohm": "1..50", "cover": "18"}),
    ("surface-voltage", {"soil": "resistivity", "resistivity": "100", "cover": "18", "bend": "6..48"}),
    *[("deck-voltage", RING | each) for each in (
        {"pool_length": "16..60"}, {"pool_width": "8..30"}, {"distance": "0..20"}, {"ring_distance": "6..60"},
        {"depth": "2..24"})],
    ("deck-voltage", {"rise": "10", "arrangement": "shell", "shell_depth": "2..12"}),
    *[("transformer-schedule", TRANSFORMER | each) for each in (
        {"kva": "15..150"}, {"device": "15..400"}, {"primary_device": "15..400"}, {"piping_device": "15..400"})],
    ("service-schedule", {"conductor": "3/0", "electrodes": "rod", "metal_parts": "other-metal",
                          "piping_device": "15..400"}),
    ("generator-schedule", {"neutral": "switched", "breaker": "yes", "device": "15..400", "conductor": "1",
                            "electrodes": "rod"}),
    ("separate-building-schedule", BUILDING | {"device": "60..400"}),
    ("separate-building-schedule", BUILDING | {"piping_device": "15..400"}),
]
NEARLY = {"deck-voltage": 0.01, "surface-voltage": 1e-4}  # how finely a solver of fields tells two answers apart


def by_hand(slug, inputs):
    """Every settled case as (values of the open inputs, mark of the outcome), one call each."""
    calculator = CALCULATORS[slug]
    read = calculator(edition="2023", **inputs).inputs
    opened = [name for name, value in read.items() if isinstance(value, Open)]
    values = {}
    for name in opened:
        field = calculator.fields[name]
        if field.choices:
            values[name] = [each.value for each in field.choices if each.value not in NOT_A_STATE]
        elif field.whole_numbers:
            low, high = (read[name].low, read[name].high) if isinstance(read[name], Range) else field.whole_numbers
            values[name] = list(range(low, high + 1))
        else:
            sizes = "3/0 4/0 250kcmil 300kcmil 350kcmil 400kcmil 500kcmil".split()
            values[name] = sizes[sizes.index(read[name].low) : sizes.index(read[name].high) + 1]
    found = []
    for chosen in product(*values.values()):
        settled = dict(zip(opened, chosen, strict=True))
        result = calculator(edition="2023", **(inputs | settled))
        if not any(fix.field in opened for fix in result.fix):
            found.append((settled, mark_of(result, opened), result))
    return found


@pytest.mark.parametrize(("slug", "inputs"), FINITE, ids=lambda value: str(value)[:60])
def test_no_other_single_question_leaves_fewer_outcomes_and_the_safe_answer_is_safe_in_every_case(slug, inputs):
    found = by_hand(slug, inputs)
    result = CALCULATORS[slug](edition="2023", **inputs)
    outcomes = {mark for _, mark, _ in found}
    assert (result.outcome == "depends") == (len(outcomes) > 1)
    if len(outcomes) == 1:
        return
    depends = result.depends
    assert len(depends.alternatives) + depends.more == len(outcomes)

    def left(name):
        values = {settled[name] for settled, _, _ in found}
        return mean(len({mark for settled, mark, _ in found if settled[name] == value}) for value in values)

    names = list(found[0][0])
    assert left(depends.ask.field) <= min(map(left, names)) + 1e-9
    if depends.safe:
        rank = safe_side(slug).rank
        assert all(on_the_safe_side(rank(depends.safe), rank(each.answer)) for _, _, each in found)
    elif safe_side(slug).rank and all(each.answer for _, _, each in found):
        ranks = [safe_side(slug).rank(each.answer) for _, _, each in found]
        assert not any(all(on_the_safe_side(one, other) for other in ranks) for one in ranks)


@pytest.mark.parametrize(("slug", "inputs"), FINITE, ids=lambda value: str(value)[:60])
def test_each_condition_holds_where_its_outcome_is_and_nowhere_else(slug, inputs):
    calculator = CALCULATORS[slug]
    read = calculator(edition="2023", **inputs).inputs
    opened = [name for name, value in read.items() if isinstance(value, Open)]
    found = completions(calculator, "2023", read, lambda result: mark_of(result, opened))
    marked = [(case.settled, mark_of(case.result, opened)) for case in found.cases]
    for mark in {each for _, each in marked}:
        inside = [settled for settled, each in marked if each == mark]
        outside = [settled for settled, each in marked if each != mark]
        condition = shortest_condition(inside, outside) if outside else ()
        if outside:
            assert all(holds(condition, settled) for settled in inside)
            assert not any(holds(condition, settled) for settled in outside)


def outside_of_order(slug, results, rising):
    """Neighbours whose answers go against the declared direction; what is not answered stands at one end."""
    rank = safe_side(slug).rank
    ordered = results if rising else results[::-1]
    wrong = []
    for before, after in pairwise(ordered):
        if not (before.answer and after.answer and rank):
            continue
        if not on_the_safe_side(rank(after.answer), rank(before.answer)):
            wrong.append((before.inputs, after.inputs))
    return wrong


def beyond_the_cases(slug, inputs, settled):
    """Answers that ask for more, in something, than every case that was worked out; a case not answered has no say."""
    rank = safe_side(slug).rank
    opened = [name for name, value in inputs.items() if isinstance(value, Open)]
    cases = completions(CALCULATORS[slug], "2023", inputs, lambda result: mark_of(result, opened)).cases
    ranks = [rank(case.result.answer) for case in cases if case.result.answer]
    most = {}
    for each in ranks:
        for place, (family, amount) in enumerate(each):
            most[place, family] = max(amount, most.get((place, family), amount))
    return [
        each.inputs
        for each in settled
        if each.answer and len(ranks) == len(cases)
        for place, (family, amount) in enumerate(rank(each.answer))
        if amount > most.get((place, family), float("inf")) + NEARLY.get(slug, 1e-9) * abs(amount)
    ]


@pytest.mark.parametrize(("slug", "field", "written", "beside"), RANGES, ids=lambda value: str(value)[:40])
def test_a_range_encloses_what_lies_in_it(slug, field, written, beside):
    """Every value sampled inside falls under an alternative, or equals the one answer; the safe answer covers it."""
    calculator = CALCULATORS[slug]
    result = calculator(edition="2023", **beside, **{field: written})
    low, high = map(float, written.split(".."))
    chance = random.Random(f"{slug} {field}")
    count = 8 if safe_side(slug).heavy else 40
    values = {round(low + (high - low) * chance.random() ** 2, 1) for _ in range(count)}
    whole = calculator.fields[field].unit == "A"
    values = sorted({int(value) if whole and value >= 1 else value for value in values})
    settled = [calculator(edition="2023", **beside, **{field: str(value)}) for value in values]
    settled = [each for each in settled if not any(fix.field == field for fix in each.fix)]
    declared, rank = safe_side(slug), safe_side(slug).rank
    if field in (*declared.rising, *declared.falling):
        assert not outside_of_order(slug, settled, field in declared.rising)
    if rank:
        assert not beyond_the_cases(slug, calculator(edition="2023", **beside, **{field: written}).inputs, settled)
    safe: Answer | None = result.answer or (result.depends and result.depends.safe)
    if safe and rank:
        assert all(each.answer and on_the_safe_side(rank(safe), rank(each.answer)) for each in settled)
    if result.outcome == "answer":
        assert {mark_of(each, (field,)) for each in settled} == {mark_of(result, (field,))}
    elif not result.depends.only_ends and not result.depends.more:
        assert {each.outcome for each in settled} <= {each.result.outcome for each in result.depends.alternatives}


@pytest.mark.slices(15)
def test_any_other_number_asks_for_no_more_between_the_cases_worked_out_than_in_these(slice_number):
    for slug, written in MORE_RANGES[slice_number::15]:
        calculator = CALCULATORS[slug]
        inputs = calculator(edition="2023", **written).inputs
        (name,) = [each for each, value in inputs.items() if isinstance(value, Open)]
        values = sampled(calculator.fields[name], inputs[name], 6 if safe_side(slug).heavy else 25)
        settled = [calculator.settled("2023", {**inputs, name: value}) for value in values]
        settled = [each for each in settled if not any(fix.field == name for fix in each.fix)]
        assert any(each.answer for each in settled), (slug, written, settled[0].fix)
        assert not beyond_the_cases(slug, inputs, settled), (slug, written)
        declared = safe_side(slug)
        if name in (*declared.rising, *declared.falling) and slug not in NEARLY:
            assert not outside_of_order(slug, settled, name in declared.rising), (slug, written)


def sampled(field, written, count):
    """Values between two ends, as many near the small one as near the large one."""
    low, high = written.low, written.high
    chance = random.Random(f"{field.label} {low}")
    start = low if low > 0 else high / 1000
    values = sorted(start * (high / start) ** chance.random() if start > 0 else low for _ in range(count))
    if field.whole_numbers or (field.unit == "A" and field.ends[0] >= 1):
        return [round(each) for each in values if low <= round(each) <= high]
    return [float(f"{each:.4g}") for each in values if low <= float(f"{each:.4g}") <= high]


def test_every_number_has_a_declared_direction_or_words_for_what_to_enter_instead():
    """With the ends of its field and no other input open; where 0 stands for none, and beside what it needs."""
    missing = []
    for slug, calculator in CALCULATORS.items():
        declared = safe_side(slug)
        known = {*declared.rising, *declared.falling, *declared.at_ends, *declared.turns, *declared.enter}
        numbers = {name for name, field in calculator.fields.items() if field.unit or field.minimum is not None}
        missing += [(slug, name) for name in numbers - known if not listed_whole(calculator.fields[name])]
        assert known <= set(calculator.fields) or slug.endswith("schedule"), slug
    assert not missing


def listed_whole(field):
    whole = field.whole_numbers
    return field.domain or (whole and whole[1] - whole[0] < MAX_WHOLE)


def test_where_a_direction_turns_every_figure_of_the_rule_is_looked_at():
    """Table 250.122 and the ampacities: with 3/0 installed the jumper shrinks from 27 to 35 A and grows at others."""
    assert safe_side("equipment-grounding-conductor").turns["device"] == BREAKS
    wire = CALCULATORS["equipment-grounding-conductor"]
    written = {"installed_conductor": "3/0", "sets": "2", "raceways": "2"}
    found = wire(edition="2023", device="20..400", **written).depends
    every = [wire(edition="2023", device=str(device), **written) for device in range(20, 401)]
    assert found.safe.values["area_cmil"] == max(each.answer.values["area_cmil"] for each in every)
    assert len(found.alternatives) + found.more == len({mark_of(each, ("device",)) for each in every})


def test_with_the_sets_open_too_a_figure_counts_for_each_number_of_them():
    """Table 310.16: 4/0 copper has 230 A at 75 degrees C, so three sets have 690 A, which no conductor alone has."""
    grid = between(15, 1200, integers=True)

    def looked_at(sets):
        found = starts_of("equipment-grounding-conductor", "device", {"sets": sets}, "2023", grid)
        return {grid[start] for start in found}

    assert {230, 231, 690, 691} <= looked_at(UNKNOWN) and {230, 231, 690, 691} <= looked_at(3)
    assert 230 in looked_at(1) and 690 not in looked_at(1)


def test_where_the_purpose_decides_which_end_is_safe_none_is_called_safe():
    """A high current is the worse one for an interrupting rating, a low one for the opening of a device."""
    current = CALCULATORS["available-fault-current"]
    transformer = {"edition": "2023", "system": "208Y/120", "kva": "75", "percent_z": "3", "conductor": "1/0"}
    depends = current(**transformer, length="50..100 ft").depends
    assert depends.safe is None and depends.only_ends == ("length",)
    ends = [each.result.answer.values["available_ampere"] for each in depends.alternatives]
    settled = [current(**transformer, length=f"{feet} ft") for feet in (50, 60, 85, 100)]
    inside = [each.answer.values["available_ampere"] for each in settled]
    assert max(ends) == max(inside) and min(ends) == min(inside)


def test_a_route_that_may_not_be_is_on_the_safe_side_of_one_that_may():
    """250.102(E)(2): at most 6 ft outside. The wire is the same, so its size alone does not tell which is safe."""
    jumper = CALCULATORS["equipment-bonding-jumper"]
    depends = jumper(edition="2023", device="100", routing="outside", length="2..20").depends
    assert str(depends.safe.headline) == "Not permitted outside as entered"
    turns = [str(each.when).partition(": ")[2] for each in depends.alternatives]
    assert turns == ["6.01 ft or more", "up to 6 ft"]
    assert jumper(edition="2023", device="100", routing="outside", length="2..6").answer_code == "8-copper"


def test_a_stretch_of_a_number_is_one_outcome_and_its_neighbour_another():
    """Table 250.122 by hand: rows end at 15, 20, 60, 100, 200 and 300 A: the turning points of 15 to 300 A."""
    wire = CALCULATORS["equipment-grounding-conductor"]
    read = wire(edition="2023", device="15..300A").inputs
    found = completions(wire, "2023", read, lambda result: mark_of(result, ("device",)))
    assert [(case.settled["device"], case.result.answer.values["size"]) for case in found.cases] == [
        (Stretch(15, 15), "14"),
        (Stretch(16, 20), "12"),
        (Stretch(21, 60), "10"),
        (Stretch(61, 100), "8"),
        (Stretch(101, 200), "6"),
        (Stretch(201, 300), "4"),
    ]


def test_stretches_of_two_choices_are_cut_alike():
    """A wire of aluminum and one of copper turn at the same devices; elbows of a feeder and a service at one cover."""
    wire = CALCULATORS["equipment-grounding-conductor"]
    read = wire(edition="2023", device="15..60A", raceway="unknown").inputs
    found = completions(wire, "2023", read, lambda result: mark_of(result, ("device", "raceway")))
    stretches = {}
    for case in found.cases:
        stretches.setdefault(case.settled["raceway"], []).append(case.settled["device"])
    assert len(set(map(tuple, stretches.values()))) == 1


def test_values_to_look_at_are_close_near_zero_and_whole_for_a_rating():
    near = between(0, 1000)
    assert near[0] == 0 and near[-1] == 1000 and near[1] < 0.001
    assert all(after - before <= before * 0.0101 for before, after in pairwise(near[1:]))
    assert between(15, 20, integers=True) == (15, 16, 17, 18, 19, 20)


def test_an_input_that_does_not_count_beside_the_others_is_not_gone_through(monkeypatch):
    jumper = CALCULATORS["main-bonding-jumper"]
    monkeypatch.setitem(jumper.fields["metal"].relevant_when, "form", ("wire", "busbar", "strap"))
    result = jumper(edition="2023", conductor="3/0", form="screw", metal="unknown")
    assert (result.outcome, result.answer_code) == ("answer", "4-copper")
    assert jumper(edition="2023", conductor="3/0", form="wire", metal="unknown").outcome == "depends"


def test_a_condition_names_what_decides_and_not_an_input_that_does_not_count_there():
    """547.44: no plane is required for poultry, so its bonding wire is of no matter there."""
    floor = {"edition": "2023", "area": "indoor-concrete", "plane": "steel", "tied": "yes", "way_out": "plain"}
    depends = CALCULATORS["livestock-equipotential-plane"](**floor, bond_conductor="unknown", animals="unknown").depends
    assert [str(each.when) for each in depends.alternatives][-1] == "Animals: poultry"
    knockout = {"edition": "2023", "system": "480Y/277", "raceway": "electrical-metallic-tubing", "knockout": "unknown"}
    depends = CALCULATORS["knockouts-over-250-volts"](**knockout, fitting="unknown", location="unknown").depends
    assert [str(each.when) for each in depends.alternatives][-1] == "Location: hazardous (classified)"


def test_an_input_that_does_not_count_where_another_decides_too_is_said_not_to_apply():
    """250.118: a rigid conduit is a path whatever its listing; a cable only if it is listed."""
    path = {"edition": "2023", "device": "30A", "trade_size": "2-1/2", "length": "4ft"}
    depends = CALCULATORS["raceway-as-grounding-path"](**path, raceway="unknown", listed="unknown").depends
    (serves,) = [str(each.when) for each in depends.alternatives if str(each.words) == "Yes"]
    assert "Listed or identified for grounding: does not apply" in serves


@pytest.mark.slices(20)
def test_with_every_field_given_no_worked_case_depends(slice_number):
    files = sorted(FOLDER.glob("**/*.toml"))
    outcomes = set()
    for file in files[slice_number::20]:
        calculator = CALCULATORS.get(file.stem.replace("_", "-"))
        for edition, case in cases(file.relative_to(FOLDER).with_suffix("").as_posix()) if calculator else ():
            inputs = {name: value for name, value in case.get("inputs", {}).items() if name in calculator.fields}
            outcomes.add(calculator(edition=edition, **inputs).outcome)
    assert outcomes and "depends" not in outcomes
