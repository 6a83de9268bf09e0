"""Voltages of circuits from ngspice, a circuit simulator, at one frequency.

Resistance becomes a resistor, reactance an inductor or a capacitor in series with it, mutual reactance a coupling
of two inductors. All circuits go into one netlist: they share nothing but the node of zero volt.
"""

import cmath
import math
import os
import struct
import subprocess
import tempfile
from pathlib import Path

from site_assets.setup.simulator import ngspice

HERTZ = 60
OMEGA = 2 * math.pi * HERTZ
# A linear circuit needs no operating point.
HEAD = ["* circuits", ".options noopac"]
TAIL = [".control", "set filetype=binary", f"ac lin 1 {HERTZ} {HERTZ}", "write answer.raw", "quit", ".endc", ".end"]


def simulated_voltages(circuits, reference="E"):
    """Return, for each (branches, sources, couplings) as `calc.fault.circuit.network.solve` does, volt by node."""
    lines = [line for number, circuit in enumerate(circuits) for line in netlist(number, circuit, reference)]
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "circuits.cir"
        file.write_text("\n".join([*HEAD, *lines, *TAIL]), encoding="ascii")
        program = os.environ.get("NGSPICE") or ngspice()
        command = [program, "-b", file.name]
        done = subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=300, check=False)
        answer = Path(folder) / "answer.raw"
        assert answer.exists(), done.stdout[-2000:] + done.stderr[-2000:]
        found = read_raw(answer.read_bytes())
    return [
        {node: 0j if node == reference else found[f"n{number}_{node.lower()}"] for node in nodes(circuit)}
        for number, circuit in enumerate(circuits)
    ]


def nodes(circuit):
    """Return the name of each node, in the order of their first use."""
    branches, sources, _ = circuit
    return list(dict.fromkeys(node for _, start, end, *_ in (*branches, *sources) for node in (start, end)))


def netlist(number, circuit, reference):
    """Yield the lines of one circuit; `number` keeps its names apart from those of the others."""
    branches, sources, couplings = circuit

    def node(name):
        return "0" if name == reference else f"n{number}_{name}"

    henry = {}
    assert all(impedance for *_, impedance in branches), "zero ohms are no resistor here"
    for name, start, end, impedance in branches:
        lines, henry[name] = in_series(f"{number}_{name}", node(start), node(end), complex(impedance))
        yield from lines
    for name, start, end, emf, impedance in sources:
        # A resistor of zero ohms would be taken for one of a thousandth.
        inner = f"i{number}_{name}" if impedance else node(start)
        size, angle = cmath.polar(emf)
        yield f"v{number}_{name} {inner} {node(end)} dc 0 ac {size!r} {math.degrees(angle)!r}"
        if impedance:
            yield from in_series(f"{number}_{name}", inner, node(start), complex(impedance))[0]
    for place, (first, second, mutual) in enumerate(couplings):
        assert complex(mutual).real == 0, "an inductor couples by reactance alone"
        share = complex(mutual).imag / OMEGA / math.sqrt(henry[first] * henry[second])
        yield f"k{number}_{place} l{number}_{first} l{number}_{second} {share!r}"


def in_series(name, start, end, impedance):
    """Return the lines of a resistor and what makes the reactance, and the inductance in henry."""
    middle = f"m{name}"
    reactance = impedance.imag
    if not reactance:
        return [f"r{name} {start} {end} {impedance.real!r}"], 0.0
    if not impedance.real:
        middle, lines = start, []
    else:
        lines = [f"r{name} {start} {middle} {impedance.real!r}"]
    if reactance < 0:
        return [*lines, f"c{name} {middle} {end} {-1 / (OMEGA * reactance)!r}"], 0.0
    return [*lines, f"l{name} {middle} {end} {reactance / OMEGA!r}"], reactance / OMEGA


def read_raw(data):
    """Return the phasor of each node from the simulator's file of one point."""
    head, _, numbers = data.partition(b"Binary:\n")
    words = head.decode("ascii")
    count = int(words.split("No. Variables:")[1].split()[0])
    names = [line.split()[1] for line in words.split("Variables:\n")[1].splitlines()[:count]]
    values = struct.unpack(f"<{2 * count}d", numbers[: 16 * count])
    return {
        name.removeprefix("v(").removesuffix(")"): complex(*values[2 * place : 2 * place + 2])
        for place, name in enumerate(names)
    }
