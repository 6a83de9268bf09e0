"""What the answer of every schedule holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("parts", message("Rows of the list"), "whole-number"),
    Output("to_install", message("Parts to install"), "whole-number"),
    Output("not_covered", message("Parts that are not covered here"), "whole-number"),
    Output("not_judged", message("Parts that nothing entered decides"), "whole-number"),
    Output(
        "sizes", message("What each part was answered: size and metal, none, or not-judged"), "text", shape="by-name"
    ),
)
