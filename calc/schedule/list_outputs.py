"""What the answer of every schedule holds."""

from __future__ import annotations

from calc.output import Output
from calc.words import say

OUTPUTS = (
    Output("parts", say("Rows of the list"), "whole-number"),
    Output("to_install", say("Parts to install"), "whole-number"),
    Output("not_covered", say("Parts that are not covered here"), "whole-number"),
    Output("not_judged", say("Parts that nothing entered decides"), "whole-number"),
    Output("sizes", say("What each part was answered: size and metal, none, or not-judged"), "text", shape="by-name"),
)
