"""What the answer of every schedule holds."""

from __future__ import annotations

from calc.messages import message
from calc.output import Output

OUTPUTS = (
    Output("parts", message("Rows of the schedule"), "whole-number"),
    Output("to_install", message("Parts to install"), "whole-number"),
    Output("not_covered", message("Parts not covered here"), "whole-number"),
    Output("not_judged", message("Parts the entries do not determine"), "whole-number"),
    Output("sizes", message("Answer for each part: size and material, none, or not-judged"), "text", shape="by-name"),
)
