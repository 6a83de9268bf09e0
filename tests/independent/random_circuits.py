"""Circuits made by chance: impedances over twelve decades, several sources, coupled branches."""

import cmath
import math

MAX_COUPLED = 0.98


def random_circuit(chance):
    """Return (branches, sources, couplings) of a connected circuit with reference E, from a `random.Random`."""
    nodes = ["E", *(f"p{number}" for number in range(chance.choice((2, 3, 5, 8, 12, 30))))]
    pairs = [(node, chance.choice(nodes[:place])) for place, node in enumerate(nodes) if place]
    pairs += [tuple(chance.sample(nodes, 2)) for _ in range(chance.randint(0, len(nodes)))]
    branches = [(f"b{number}", *pair, impedance(chance)) for number, pair in enumerate(pairs)]
    sources = [
        (
            f"s{number}",
            *chance.sample(nodes, 2),
            cmath.rect(chance.uniform(1, 500), chance.uniform(-math.pi, math.pi)),
            impedance(chance, capacitive=False),
        )
        for number in range(chance.randint(1, 4))
    ]
    return branches, sources, couplings(chance, branches)


def impedance(chance, *, capacitive=True):
    """Return an impedance of 1e-6 to 1e6 ohm: resistance, resistance and reactance, or now and then a capacitor's."""
    size = 10 ** chance.uniform(-6, 6)
    kind = chance.random()
    if kind < 0.35:
        return complex(size)
    if capacitive and kind < 0.42:
        return cmath.rect(size, -chance.uniform(0.1, 1.5))
    return cmath.rect(size, chance.uniform(0.1, 1.55))


def couplings(chance, branches):
    """Return couplings within groups of two to four branches with inductance, so that each group could be built."""
    with_inductance = [branch for branch in branches if branch[3].imag > 0]
    chance.shuffle(with_inductance)
    found = []
    for _ in range(chance.randint(0, 3)):
        group = [with_inductance.pop() for _ in range(min(chance.randint(2, 4), len(with_inductance)))]
        # Shares of one common flux: whatever they are, such a group stores no less than no energy.
        share = {name: chance.choice((-1, 1)) * math.sqrt(chance.uniform(0, MAX_COUPLED)) for name, *_ in group}
        if chance.random() < 0.3:
            share = {name: math.copysign(math.sqrt(MAX_COUPLED), each) for name, each in share.items()}
        for place, (first, _, _, own) in enumerate(group):
            for second, _, _, other in group[:place]:
                reactance = share[first] * share[second] * math.sqrt(own.imag * other.imag)
                found.append((first, second, complex(0, reactance)))
    return found
