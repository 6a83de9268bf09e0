"""Short-circuit currents of supplies from pandapower, a power-flow program, by IEC 60909.

That standard multiplies: the voltage by c, the utility's impedance by its own c, a transformer's by K_T. Each supply
comes back with what it was in truth, so that these factors can be put into whatever is compared.
"""

import math
import warnings
from dataclasses import dataclass

import pandapower
from pandapower.shortcircuit import calc_sc

PRIMARY_KILOVOLT = 12.47
LOW_VOLTAGE, HIGH_VOLTAGE = 1.05, 1.10  # c for the highest current: up to 1 kV within 6 %, and above
KINDS = {"three_phase": "3ph", "line_to_line": "2ph", "line_to_ground": "1ph"}


@dataclass(frozen=True)
class Supply:
    """A three-phase supply with a run behind it.

    line_voltage: volt of the secondary, or of the utility itself where `kva` is None. utility_kva and
    utility_x_over_r: what the utility is worth. kva, percent_z, percent_r: of a delta-wye transformer.
    line, back: ohm of one line and of the way back of the run.
    """

    line_voltage: float
    utility_kva: float
    utility_x_over_r: float
    kva: float | None
    percent_z: float
    percent_r: float
    line: complex
    back: complex


def transformer_factor(supply: Supply) -> float:
    """Return K_T, by which the standard multiplies a transformer's impedance."""
    reactance = math.sqrt(supply.percent_z**2 - supply.percent_r**2) / 100
    return 0.95 * LOW_VOLTAGE / (1 + 0.6 * reactance)


def short_circuit_currents(supplies):
    """Return, for each supply, ampere by kind of fault at the terminals and at the end of the run."""
    net = pandapower.create_empty_network(f_hz=60)
    places = [connected(net, supply) for supply in supplies]
    found = [{"terminals": {}, "end": {}} for _ in supplies]
    for kind, fault in KINDS.items():
        with warnings.catch_warnings():
            # The program's own use of its tables; no word about the answer.
            warnings.simplefilter("ignore", FutureWarning)
            calc_sc(net, fault=fault, case="max", ip=False, ith=False, tk_s=1, lv_tol_percent=6)
        for answer, (terminals, end) in zip(found, places, strict=True):
            answer["terminals"][kind] = float(1000 * net.res_bus_sc.ikss_ka.at[terminals])
            answer["end"][kind] = float(1000 * net.res_bus_sc.ikss_ka.at[end])
    return found


def connected(net, supply):
    """Put a supply and its run into the net; give the numbers of its terminals and of the end of its run."""
    low = supply.line_voltage / 1000
    terminals = pandapower.create_bus(net, vn_kv=low)
    head = terminals if supply.kva is None else pandapower.create_bus(net, vn_kv=PRIMARY_KILOVOLT)
    ratio = 1 / supply.utility_x_over_r
    pandapower.create_ext_grid(
        net, head, s_sc_max_mva=supply.utility_kva / 1000, rx_max=ratio, x0x_max=1.0, r0x0_max=ratio
    )
    if supply.kva is not None:
        pandapower.create_transformer_from_parameters(
            net, head, terminals, sn_mva=supply.kva / 1000, vn_hv_kv=PRIMARY_KILOVOLT, vn_lv_kv=low,
            vk_percent=supply.percent_z, vkr_percent=supply.percent_r, pfe_kw=0, i0_percent=0, vector_group="Dyn",
            vk0_percent=supply.percent_z, vkr0_percent=supply.percent_r,
            mag0_percent=100, mag0_rx=0, si0_hv_partial=0.9, shift_degree=30,
        )  # fmt: skip
    end = pandapower.create_bus(net, vn_kv=low)
    zero = supply.line + 3 * supply.back
    pandapower.create_line_from_parameters(
        net, terminals, end, length_km=1, max_i_ka=1, r_ohm_per_km=supply.line.real, x_ohm_per_km=supply.line.imag,
        c_nf_per_km=0, r0_ohm_per_km=zero.real, x0_ohm_per_km=zero.imag, c0_nf_per_km=0,
    )  # fmt: skip
    return terminals, end
