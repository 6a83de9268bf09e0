"""An answer that depends is held against all its completions, worked out one by one."""

import random
from itertools import pairwise, product
from statistics import mean

import pytest

from calc import CALCULATORS
from calc.answer import Answer
from calc.unknown.completions import NOT_A_STATE, completions
from calc.unknown.conditions import holds, shortest_condition
from calc.unknown.numbers import between
from calc.unknown.outcome_words import mark_of
from calc.unknown.safe_side import on_the_safe_side, safe_side
from calc.unknown.states import Open, Range
from calc.unknown.stretches import Stretch
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
    assert not outside_of_order(slug, settled, field in safe_side(slug).rising)
    rank = safe_side(slug).rank
    safe: Answer | None = result.answer or (result.depends and result.depends.safe)
    if safe and rank:
        assert all(each.answer and on_the_safe_side(rank(safe), rank(each.answer)) for each in settled)
    if result.outcome == "answer":
        assert {mark_of(each, (field,)) for each in settled} == {mark_of(result, (field,))}
    elif not result.depends.only_ends and not result.depends.more:
        assert {each.outcome for each in settled} <= {each.result.outcome for each in result.depends.alternatives}


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
