"""The solver of circuits: what another program gave, the laws that every answer keeps, and what has no answer."""

import cmath
import math
import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as draw

from calc.fault.circuit.elimination import SingularMatrixError, inverse
from calc.fault.circuit.network import CircuitError, solve
from tests.cases.read import cases, named


@pytest.mark.parametrize("pair", cases("fault/circuit/network"), ids=named)
def test_a_network_is_solved_as_another_program_solves_it(pair):
    _, case = pair
    branches = [(name, start, end, complex(r, x)) for name, start, end, r, x in case["branches"]]
    sources = [(name, start, end, volt, complex(r, x)) for name, start, end, volt, r, x in case["sources"]]
    solved = solve(branches, sources, reference=case["inputs"]["reference"])
    for node, volt in case["volt"].items():
        assert abs(solved.voltages[node]) == pytest.approx(volt, rel=1e-4, abs=1e-3)
    for name, ampere in case["ampere"].items():
        assert abs(solved.currents[name]) == pytest.approx(ampere, rel=1e-4, abs=1e-3)


def resistor_pair(upper, lower):
    return solve([("upper", "a", "b", upper), ("lower", "b", "E", lower)], [("supply", "a", "E", 120, 0)])


def test_a_divider_divides_by_its_resistances():
    for upper, lower in ((1, 1), (1e-6, 1e6), (1e6, 1e-6), (3, 9)):
        assert resistor_pair(upper, lower).voltages["b"] == pytest.approx(120 * lower / (upper + lower), rel=1e-12)


def test_a_source_raises_its_first_node_above_its_second():
    solved = solve([("load", "a", "E", 10)], [("supply", "a", "E", 120, 2)])
    assert solved.voltages["a"] == pytest.approx(100)
    turned = solve([("load", "a", "E", 10)], [("supply", "E", "a", 120, 2)])
    assert turned.voltages["a"] == pytest.approx(-100)


def test_a_source_without_impedance_holds_its_voltage_and_its_current_is_told():
    solved = solve([("load", "a", "E", 10), ("more", "a", "E", 30)], [("supply", "a", "E", 120, 0)])
    assert solved.voltages["a"] == pytest.approx(120)
    assert solved.currents["supply"] == pytest.approx(16)


def test_zero_ohms_make_one_node_and_their_current_is_told():
    branches = [("feed", "a", "b", 5), ("bond", "b", "c", 0), ("load", "c", "E", 10), ("side", "c", "E", 10)]
    solved = solve(branches, [("supply", "a", "E", 120, 2)])
    assert solved.voltages["b"] == solved.voltages["c"] == pytest.approx(50)
    assert solved.currents["bond"] == pytest.approx(10)
    turned = solve(
        [("bond", "c", "b", 0), *(each for each in branches if each[0] != "bond")], [("s", "a", "E", 120, 2)]
    )
    assert turned.currents["bond"] == pytest.approx(-10)


def test_coupled_branches_share_a_current_by_their_own_and_mutual_impedances():
    """Two branches of z each in parallel, coupled by m: together (z + m) / 2; uncoupled they would be z / 2."""
    own, mutual = 0.1 + 0.3j, 0.2j
    branches = [("wire", "a", "E", own), ("pipe", "a", "E", own)]
    solved = solve(branches, [("supply", "a", "E", 10, 0)], [("wire", "pipe", mutual)])
    assert solved.currents["supply"] == pytest.approx(10 / ((own + mutual) / 2))


def test_a_perfect_transformer_of_currents_drives_the_open_winding():
    """1 A through the first winding raises jωM in the second, which carries none."""
    branches = [("first", "a", "E", 2j), ("second", "b", "E", 8j), ("meter", "b", "E", 1e12)]
    solved = solve(branches, [("supply", "a", "E", 2j, 0)], [("first", "second", 3j)])
    assert solved.voltages["b"] == pytest.approx(3j, rel=1e-9)


def random_network(chance, *, reactive):
    """Return a connected network of up to 12 nodes with impedances from 1e-6 to 1e6 ohm."""
    nodes = ["E", *(f"n{number}" for number in range(chance.randint(2, 12)))]

    def impedance():
        size = 10 ** chance.uniform(-6, 6)
        return size * cmath.exp(1j * chance.uniform(0, 1.5)) if reactive else size

    pairs = [(node, chance.choice(nodes[:place])) for place, node in enumerate(nodes) if place]
    pairs += [tuple(chance.sample(nodes, 2)) for _ in range(chance.randint(0, 10))]
    branches = [(f"b{number}", *pair, impedance()) for number, pair in enumerate(pairs)]
    sources = [
        (f"s{number}", *chance.sample(nodes, 2), chance.uniform(1, 500), impedance() if chance.random() < 0.8 else 1e-6)
        for number in range(chance.randint(1, 3))
    ]
    return branches, sources


def left_over(branches, sources, solved):
    """Return, at each node, the current that is not accounted for, and the largest current there."""
    sums, sizes = {}, {}
    for name, start, end, *_ in (*branches, *sources):
        current = solved.currents[name] * (-1 if name.startswith("s") else 1)
        for node, sign in ((start, 1), (end, -1)):
            sums[node] = sums.get(node, 0) + sign * current
            sizes[node] = max(sizes.get(node, 0), abs(current))
    return sums, sizes


@settings(max_examples=150, deadline=None, derandomize=True)
@given(draw.integers(0, 10**9), draw.booleans())
def test_currents_sum_to_zero_at_every_node(seed, reactive):
    branches, sources = random_network(random.Random(seed), reactive=reactive)
    solved = solve(branches, sources)
    largest = max(abs(each[3]) / max(abs(each[4]), 1e-6) for each in sources)
    for node, amount in left_over(branches, sources, solved)[0].items():
        assert abs(amount) <= 1e-6 * largest, node


@settings(max_examples=150, deadline=None, derandomize=True)
@given(draw.integers(0, 10**9), draw.booleans())
def test_what_the_sources_give_is_what_the_impedances_take(seed, reactive):
    branches, sources = random_network(random.Random(seed), reactive=reactive)
    solved = solve(branches, sources)
    given_power = sum(emf * solved.currents[name].conjugate() for name, _, _, emf, _ in sources)
    taken = sum(z * abs(solved.currents[name]) ** 2 for name, _, _, z in branches)
    taken += sum(z * abs(solved.currents[name]) ** 2 for name, _, _, _, z in sources)
    size = sum(abs(emf * solved.currents[name]) for name, _, _, emf, _ in sources) + 1e-9
    assert abs(given_power - taken) <= 1e-6 * size + 1e-6


def fault_circuit(*, jumper, extra, impedance=lambda ohm: ohm):
    branches = [
        ("hot", "source-hot", "case", impedance(0.2)),
        ("grounding conductor", "case", "bar", impedance(0.2)),
        ("neutral", "source-neutral", "service-neutral", impedance(0.012)),
        ("pole electrode", "source-neutral", "E", 10),
        ("service electrode", "bar", "E", 25),
    ]
    if jumper:
        branches.append(("main bonding jumper", "bar", "service-neutral", 0.0005))
    else:
        branches.append(("meter", "service-neutral", "E", 1e9))
    if extra:
        branches.append(("extra return", "case", "service-neutral", extra))
    return solve(branches, [("supply", "source-hot", "source-neutral", 120, impedance(0.01))])


@settings(max_examples=100, deadline=None, derandomize=True)
@given(draw.floats(1e-4, 1e4))
def test_with_resistance_alone_an_added_return_never_lowers_the_fault_current(extra):
    for jumper in (True, False):
        without = abs(fault_circuit(jumper=jumper, extra=None).currents["hot"])
        assert abs(fault_circuit(jumper=jumper, extra=extra).currents["hot"]) >= without * (1 - 1e-12)


def test_taking_the_main_bonding_jumper_away_lowers_the_fault_current_and_raises_the_electrodes_share():
    bonded, missing = (fault_circuit(jumper=jumper, extra=None) for jumper in (True, False))
    assert abs(missing.currents["hot"]) < 0.02 * abs(bonded.currents["hot"])
    assert abs(missing.currents["service electrode"]) > abs(bonded.currents["service electrode"])


def test_with_reactance_an_added_return_can_lower_the_fault_current():
    """A return with capacitance beside one with inductance: in parallel they block the current."""
    plain = solve([("hot", "a", "c", 1), ("return", "c", "E", 10j)], [("s", "a", "E", 120, 0)])
    added = solve(
        [("hot", "a", "c", 1), ("return", "c", "E", 10j), ("extra", "c", "E", -12j)], [("s", "a", "E", 120, 0)]
    )
    assert abs(added.currents["hot"]) < abs(plain.currents["hot"])


def test_magnitudes_of_parallel_currents_do_not_add_up_to_the_whole():
    """A wire that is mostly resistance beside a steel raceway that is mostly reactance."""
    solved = solve([("wire", "a", "E", 0.2), ("raceway", "a", "E", 0.02 + 0.1j)], [("supply", "a", "E", 120, 0.1)])
    wire, raceway, whole = (solved.currents[name] for name in ("wire", "raceway", "supply"))
    assert wire + raceway == pytest.approx(whole)
    assert abs(wire) + abs(raceway) > 1.1 * abs(whole)


SUPPLY = [("supply", "a", "E", 120, 1)]


@pytest.mark.parametrize(
    ("branches", "sources", "couplings", "says"),
    [
        ([("x", "a", "E", 1), ("y", "p", "q", 1)], SUPPLY, [], "p, q"),
        ([("x", "a", "E", 1)], [("supply", "p", "q", 120, 1), ("b", "p", "q", 1, 1)], [], "p, q"),
        ([("x", "a", "E", 1)], [("supply", "p", "E", 120, 1)], [], "supply is open"),
        ([("x", "a", "E", -1)], SUPPLY, [], "x has less than zero ohms"),
        ([("x", "a", "E", math.nan)], SUPPLY, [], "x has a value"),
        ([("x", "a", "E", math.inf)], SUPPLY, [], "x has a value"),
        ([("x", "a", "a", 1)], SUPPLY, [], "both its ends"),
        ([("x", "a", "E", 1), ("x", "a", "E", 2)], SUPPLY, [], "x is there twice"),
        ([("x", "a", "E", 0), ("y", "a", "E", 0)], SUPPLY, [], "loop of zero ohms"),
        ([("x", "a", "E", 0)], [("supply", "a", "E", 120, 0)], [], "loop of zero ohms"),
        ([("x", "a", "E", 1j), ("y", "a", "E", -1j)], [], [], "no single answer at a"),
        ([("x", "a", "E", 1)], SUPPLY, [("x", "y", 1j)], "x and y"),
        ([("x", "a", "E", 1), ("y", "a", "E", 0)], [], [("x", "y", 1j)], "x and y"),
        ([("x", "a", "E", 1j), ("y", "a", "E", 1j)], SUPPLY, [("x", "y", 1j)], "x, y"),
    ],
)  # fmt: skip
def test_a_circuit_without_a_single_answer_names_its_parts(branches, sources, couplings, says):
    with pytest.raises(CircuitError, match=says):
        solve(branches, sources, couplings)


def test_another_reference_only_shifts_the_voltages():
    branches, sources = random_network(random.Random(5), reactive=True)
    one, other = solve(branches, sources), solve(branches, sources, reference="n1")
    for node in one.voltages:
        assert other.voltages[node] == pytest.approx(one.voltages[node] - one.voltages["n1"], rel=1e-9, abs=1e-9)


def test_an_inverse_times_its_matrix_is_one():
    rows = [[2, 1j, 0], [1j, 0, 3], [0, 3, 1]]
    inverted = inverse(rows)
    columns = list(zip(*inverted, strict=True))
    product = [[sum(a * b for a, b in zip(row, column, strict=True)) for column in columns] for row in rows]
    assert all(product[i][j] == pytest.approx(complex(i == j), abs=1e-12) for i in range(3) for j in range(3))
    with pytest.raises(SingularMatrixError):
        inverse([[1, 2], [2, 4]])


def ladder(rungs):
    branches = []
    for number in range(rungs):
        branches.append((f"rail{number}", f"n{number}", f"n{number + 1}", 0.001 + 0.001j))
        branches.append((f"rung{number}", f"n{number + 1}", "E", 1000))
    return branches


def test_a_ladder_of_2000_nodes_is_solved_as_its_closed_form_says():
    """A long line: at its end the source sees the characteristic impedance, (z/2) + sqrt(z²/4 + z y⁻¹)."""
    solved = solve(ladder(20_00), [("supply", "n0", "E", 120, 0)])
    z, rung = 0.001 + 0.001j, 1000
    seen = rung  # from the far end backward
    seen = z + rung
    for _ in range(1999):
        seen = z + 1 / (1 / rung + 1 / seen)
    assert solved.currents["supply"] == pytest.approx(120 / seen, rel=1e-9)
