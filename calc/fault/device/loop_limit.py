"""The largest impedance of the whole fault loop at which a device surely opens at once."""

from __future__ import annotations

from calc.fault.device.device_limits import value
from calc.messages import Message
from calc.trace import Trace

VOLTAGE_FACTOR = "fault/loop_voltage_factor"


def largest_loop_impedance(voltage_to_ground: float, multiple: float, rating: float) -> float:
    """Return the largest loop impedance, ohm, that drives `multiple` times `rating` ampere on a low-voltage day.

    voltage_to_ground: nominal, volt. multiple: from which the device opens at once. Source: rule
    fault/loop_voltage_factor.

    >>> round(largest_loop_impedance(230, 5, 32), 2)
    1.37
    """
    return value(VOLTAGE_FACTOR) * voltage_to_ground / (multiple * rating)


def loop_limit_step(
    voltage_to_ground: float, multiple: float, rating: float, words: Message, trace: Trace
) -> float:
    """Record and give the largest loop impedance, ohm."""
    return trace.compute(
        words,
        "voltage_factor * voltage / (multiple * rating)",
        "ohm",
        (VOLTAGE_FACTOR,),
        voltage_factor=value(VOLTAGE_FACTOR),
        voltage=voltage_to_ground,
        multiple=multiple,
        rating=rating,
    )
