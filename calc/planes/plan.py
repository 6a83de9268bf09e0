"""A plan as a list: each part with what to do, why, and where the edition says so."""

from __future__ import annotations

from calc.answer import Row, Table
from calc.words import Sentence, say
from calc.working import Working, marked_section

BOND, NEED_NOT, CHANGE, IN_ORDER, ASK, MUST_NOT = "bond", "need-not", "change", "in-order", "ask", "must-not"
BUILD, WISE, LOOK, ACT, BELOW = "build", "wise", "look", "act", "below"
LISTING = "listing"
DECISION_WORDS = {
    BOND: say("Bond it"),
    NEED_NOT: say("Need not"),
    CHANGE: say("Change it"),
    IN_ORDER: say("In order"),
    ASK: say("Ask the authority"),
    MUST_NOT: say("Do not bond"),
    BUILD: say("Build it"),
    WISE: say("Wise, not asked"),
    LOOK: say("Look or measure"),
    ACT: say("Act"),
    BELOW: say("Below the level"),
    LISTING: say("As its listing says"),
}
# The key of what to do is `size`, the column that pages show in bold.
HEADINGS = {"part": say("Part"), "size": say("What to do"), "why": say("Why"), "section": say("Section")}


class Plan:
    """Collects the rows of one plan; `decisions` holds what was decided by part, in order."""

    def __init__(self, working: Working):
        self.working = working
        self.decisions: dict[str, str] = {}
        self._rows: list[Row] = []
        self._parts: dict[str, Sentence] = {}

    def add(self, key: str, part: Sentence, decision: str, why: Sentence, rule: str) -> None:
        """Add a part: its name in `decisions`, its words, what to do, why, and the rule that says so."""
        cells = {
            "part": part,
            "size": DECISION_WORDS[decision],
            "why": why,
            "section": marked_section(self.working.cite(rule)),
        }
        self._rows.append(Row(cells))
        self.decisions[key] = decision
        self._parts[key] = part

    def names(self, *keys: str) -> str:
        """Give the names of these parts as the list shows them, in quotation marks.

        >>> plan = Plan(Working("2023"))
        >>> plan.add("bond", say("Bond of the plane"), CHANGE, say("Too small."), "places/livestock_plane_conductor")
        >>> plan.names("bond")
        '“Bond of the plane”'
        """
        return ", ".join(f"“{self._parts[key]}”" for key in keys)

    def count(self, *decisions: str) -> int:
        """Give how many parts were decided so."""
        return sum(decided in decisions for decided in self.decisions.values())

    @property
    def said(self) -> str:
        """What was decided, as links carry it."""
        return ",".join(f"{key}.{decided}" for key, decided in self.decisions.items())

    @property
    def table(self) -> Table:
        """The list, as an answer holds it."""
        return Table(HEADINGS, tuple(self._rows))
