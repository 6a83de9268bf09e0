"""A plan as a list: each part with what to do, why, and where the edition says so."""

from __future__ import annotations

from calc.answer import Row, Table
from calc.messages import Message, message
from calc.trace import Trace, marked_section

BOND, NEED_NOT, CHANGE, IN_ORDER, ASK, MUST_NOT = "bond", "need-not", "change", "in-order", "ask", "must-not"
BUILD, WISE, LOOK, ACT, BELOW = "build", "wise", "look", "act", "below"
LISTING = "listing"
DECISION_WORDS = {
    BOND: message("Bond it"),
    NEED_NOT: message("Not required"),
    CHANGE: message("Change it"),
    IN_ORDER: message("OK"),
    ASK: message("Ask the AHJ"),
    MUST_NOT: message("Do not bond"),
    BUILD: message("Build it"),
    WISE: message("Recommended, not required"),
    LOOK: message("Inspect or measure"),
    ACT: message("Take action"),
    BELOW: message("Below the limit"),
    LISTING: message("Per its listing"),
}
# The key of what to do is `size`, the column that pages show in bold.
HEADINGS = {
    "part": message("Part"), "size": message("What to do"), "why": message("Why"), "section": message("Section")
}


class Plan:
    """Collects the rows of one plan; `decisions` holds what was decided by part, in order."""

    def __init__(self, trace: Trace):
        self.trace = trace
        self.decisions: dict[str, str] = {}
        self._rows: list[Row] = []
        self._parts: dict[str, Message] = {}

    def add(self, key: str, part: Message, decision: str, why: Message, rule: str) -> None:
        """Add a part: its name in `decisions`, its words, what to do, why, and the rule that says so."""
        cells = {
            "part": part,
            "size": DECISION_WORDS[decision],
            "why": why,
            "section": marked_section(self.trace.cite(rule)),
        }
        self._rows.append(Row(cells))
        self.decisions[key] = decision
        self._parts[key] = part

    def names(self, *keys: str) -> str:
        """Return the names of these parts as the list shows them, in quotation marks.

        >>> plan = Plan(Trace("2023"))
        >>> plan.add("bond", message("Bond of the plane"), CHANGE, message("Too small."),
        ...     "places/livestock_plane_conductor")
        >>> plan.names("bond")
        '“Bond of the plane”'
        """
        return ", ".join(f"“{self._parts[key]}”" for key in keys)

    def count(self, *decisions: str) -> int:
        """Return how many parts were decided so."""
        return sum(decided in decisions for decided in self.decisions.values())

    @property
    def answer_code(self) -> str:
        """What was decided, as links carry it."""
        return ",".join(f"{key}.{decided}" for key, decided in self.decisions.items())

    @property
    def table(self) -> Table:
        """The list, as an answer holds it."""
        return Table(HEADINGS, tuple(self._rows))
