"""What the answer about the voltage on a pool deck holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output
from calc.touch.deck.deck_fields import ARRANGEMENTS
from calc.touch.deck.deck_profile import CORNER, SIDE
from calc.touch.shock.people_outputs import people_outputs

_STEP_INSIDE = message("Largest step voltage inside the deck")
_STEP_ACROSS = message("Largest step voltage across the edge of the deck")

OUTPUTS = (
    Output("touch_volt", message("Highest touch voltage on the deck, corners too"), "number", "V"),
    Output("touch_volt_most", message("Highest touch voltage, with what the solution may be off"), "number", "V"),
    Output("touch_percent", message("Highest touch voltage as a share of the rise"), "number", "%"),
    Output("worst_ft", message("Distance from the wall where it is highest"), "number", "ft"),
    Output("worst_line", message("Where it is highest: off a side or off a corner"), "choice", choices=(SIDE, CORNER)),
    Output("volt_at_distance", message("Touch voltage at the distance entered"), "number", "V"),
    Output("at_ft", message("Distances from the wall that are looked at"), "number", "ft", shape="list"),
    Output("side_volts", message("Touch voltage at these distances off a side"), "number", "V", shape="list"),
    Output("corner_volts", message("Touch voltage at these distances off a corner"), "number", "V", shape="list"),
    Output("step_inside_volt", _STEP_INSIDE, "number", "V"),
    Output("step_across_volt", _STEP_ACROSS, "number", "V"),
    Output("step_raised", message("Whether the metal makes a step worse than with nothing in the deck"), "yes-no"),
    Output("step_milliampere_most", message("Most current through wet legs in a step"), "number", "mA"),
    *people_outputs(),
    Output(
        "compared",
        message("The same for each kind of metal in the deck"),
        "record",
        shape="list",
        parts=(
            Output("arrangement", message("Metal in the deck"), "choice", choices=ARRANGEMENTS),
            Output("touch_volt", message("Highest touch voltage"), "number", "V"),
            Output("step_inside_volt", _STEP_INSIDE, "number", "V"),
            Output("step_across_volt", _STEP_ACROSS, "number", "V"),
        ),
    ),
)
