"""What is asked about a jumper and the fault it must survive."""

from __future__ import annotations

from calc.declare import Choice
from calc.fault.device_fields import KIND_WORDS, MOST_AMPERE
from calc.fault.device_limits import EQUIPMENT_PROTECTION, INTERRUPTER
from calc.vocabulary import TABLE_METALS, conductor_size, device_rating, metal_of, one_of, quantity
from calc.words import say

MOST_SECOND, MOST_ENERGY, MOST_CELSIUS = 100_000, 10**12, 240
DAMAGE_CURVE, FACTOR_K = "damage-curve", "factor-k"
# The code limits the delay of the first, not the time of its switch; short circuits are not for the second.
NO_WHOLE_TIME = (EQUIPMENT_PROTECTION, INTERRUPTER)
FORMULA_WORDS = {
    DAMAGE_CURVE: say("ICEA P-32-382"),
    FACTOR_K: say("Factor k of IEC 60364-5-54"),
}

FAULT_CURRENT = quantity(
    say("Fault current"),
    say("The highest available one through the jumper. Try the lowest one too, with its own time."),
    "A",
    1,
    MOST_AMPERE,
    example="5000",
)
SIZE = conductor_size(
    say("Size of the jumper"),
    say("To check one, for example 6. Leave it empty to get the smallest that survives."),
)
METAL = metal_of(say("Metal of the jumper"), TABLE_METALS)
CLEARING_TIME = quantity(
    say("Time until the device opens"),
    say("From its published curve at this current, for example 0.2 s or 12 cycles. Leave it empty to name the device."),
    "s",
    0.0001,
    MOST_SECOND,
    example=say("0.2 s or 12 cycles"),
    also=say("Or name the device and its rating."),
)
DEVICE_KIND = one_of(
    say("Kind of device"),
    say("It counts where no time is entered."),
    tuple(Choice(kind, words) for kind, words in KIND_WORDS.items() if kind not in NO_WHOLE_TIME),
)
DEVICE = device_rating(
    say("Rating of the device"),
    say("Needed where no time is entered. Its standard then gives the longest time."),
)
LET_THROUGH = quantity(
    say("Energy let through"),
    say("I²t from the maker, in A²s. Needed for devices that open faster than the formulas hold."),
    "A2s",
    1,
    MOST_ENERGY,
    example="50000",
    rare=True,
)
X_OVER_R = quantity(
    say("Reactance over resistance (X/R) at the fault"),
    say("From the study, or of the transformer ahead. Left out, the offset of the first cycles counts at its most."),
    "",
    0,
    100,
    example="6",
    rare=True,
)
LIMIT = one_of(
    say("What must not be overheated"),
    say("The weakest thing that touches the jumper counts."),
    (
        Choice("thermoplastic", say("Thermoplastic insulation, such as THHN")),
        Choice("thermoset", say("Thermoset insulation, such as XHHW")),
        Choice("bolted-joint", say("Bare wire with bolted or pressed joints")),
    ),
)
START = quantity(
    say("Temperature before the fault"),
    say("In °C. Leave it empty for a conductor that is warm from use."),
    "°C",
    0,
    MOST_CELSIUS,
    example="60 °C",
    also=say("It is below the highest one allowed."),
    rare=True,
)
FORMULA = one_of(
    say("Formula that counts"),
    say("Both are shown. Their constants differ a little."),
    tuple(Choice(formula, words) for formula, words in FORMULA_WORDS.items()),
    rare=True,
)
