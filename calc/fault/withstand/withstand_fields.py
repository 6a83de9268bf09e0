"""What is asked about a jumper and the fault it must survive."""

from __future__ import annotations

from calc.calculator import Choice
from calc.fault.device.device_fields import KIND_WORDS, MAX_AMPERE
from calc.fault.device.device_limits import EQUIPMENT_PROTECTION, INTERRUPTER
from calc.messages import message
from calc.shared_fields import TABLE_METALS, conductor_size, device_rating, metal_of, one_of, quantity

MAX_SECOND, MAX_ENERGY, MAX_CELSIUS = 100_000, 10**12, 240
DAMAGE_CURVE, FACTOR_K = "damage-curve", "factor-k"
# The code limits the delay of the first, not the time of its switch; short circuits are not for the second.
NO_WHOLE_TIME = (EQUIPMENT_PROTECTION, INTERRUPTER)
FORMULA_WORDS = {
    DAMAGE_CURVE: message("ICEA P-32-382"),
    FACTOR_K: message("Factor k of IEC 60364-5-54"),
}

FAULT_CURRENT = quantity(
    message("Fault current"),
    message("The highest available through the jumper. Try the lowest too, with its own time."),
    "A",
    1,
    MAX_AMPERE,
    example="5000",
)
SIZE = conductor_size(
    message("Jumper size"),
    message("To check one, for example 6. Leave it empty to get the smallest that survives."),
)
METAL = metal_of(message("Jumper material"), TABLE_METALS)
CLEARING_TIME = quantity(
    message("Time until the device opens"),
    message(
        "From its published curve at this current, for example 0.2 s or 12 cycles. Leave it empty to name the device."
    ),
    "s",
    0.0001,
    MAX_SECOND,
    example=message("0.2 s or 12 cycles"),
    also=message("Or name the device and its rating."),
)
DEVICE_KIND = one_of(
    message("Type of device"),
    message("Only where no time is entered."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items() if kind not in NO_WHOLE_TIME),
)
DEVICE = device_rating(
    message("Rating of the device"),
    message("Needed if no time is entered. Its standard then gives the longest time."),
)
LET_THROUGH = quantity(
    message("Let-through energy (I²t)"),
    message("From the manufacturer, in A²s. Needed for devices that open faster than the formulas cover."),
    "A2s",
    1,
    MAX_ENERGY,
    example="50000",
    rare=True,
)
X_OVER_R = quantity(
    message("Reactance over resistance (X/R) at the fault"),
    message(
        "From the study, or of the upstream transformer. If left empty, the first-cycle offset is taken at its most."
    ),
    "",
    0,
    100,
    example="6",
    rare=True,
)
LIMIT = one_of(
    message("What must not be overheated"),
    message("Pick the weakest thing that touches the jumper."),
    (
        Choice("thermoplastic", message("Thermoplastic insulation, such as THHN")),
        Choice("thermoset", message("Thermoset insulation, such as XHHW")),
        Choice("bolted-joint", message("Bare wire with bolted or pressed joints")),
    ),
)
START = quantity(
    message("Temperature before the fault"),
    message("In °C. Leave empty for a conductor warm from load."),
    "°C",
    0,
    MAX_CELSIUS,
    example="60 °C",
    also=message("It is below the highest one allowed."),
    rare=True,
)
FORMULA = one_of(
    message("Formula to use"),
    message("Both are shown. Their constants differ a little."),
    tuple(Choice(formula, words) for formula, words in FORMULA_WORDS.items()),
    rare=True,
)
