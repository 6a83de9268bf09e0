"""How a run ends: an answer, fields to correct, a case not covered or, where an open input decides, alternatives."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any

from calc.answer import Answer
from calc.messages import Message, message
from calc.trace import Trace

if TYPE_CHECKING:
    from calc.calculator import Calculator
    from calc.found.verdict import Verdict
    from calc.margin.search import Turn
    from calc.unknown.assumed import Assumption
    from calc.unknown.edition import EditionCheck
    from calc.unknown.outcomes import Depends


@dataclass(frozen=True)
class Correction:
    """A field to correct, and what to enter. `near`: of a name that no field has, the field that it looks most like."""

    field: str
    label: Message | str
    words: Message
    near: str = ""


class NotCovered(Exception):
    """The case is outside the rules here: why, under which name to look, and the calculators that answer it instead."""

    def __init__(self, why: Message, look_in: Message, *calculators: str):
        super().__init__(str(why))
        self.why = why
        self.look_in = look_in
        self.calculators = calculators


class FieldError(Exception):
    """A field that this case cannot use as it is: its name, and what to enter where that is not its usual words."""

    def __init__(self, field: str, words: Message | None = None):
        super().__init__(field)
        self.field = field
        self.words = words


def require[T](value: T | None, field: str) -> T:
    """Return the value of an optional field that this case needs. Raises: FieldError when it was left out."""
    if value is None:
        raise FieldError(field)
    return value


@dataclass(frozen=True)
class Result:
    """One run of a calculator. `outcome` is answer, fix, not_covered or, where an open input decides, depends.

    `inputs` holds an open input as `calc.unknown.states.Open`. `left_out`: the inputs that stand at their default
    because nobody gave them; of an edition that was not chosen `edition_chosen` tells.
    """

    calculator: Calculator
    edition: str
    inputs: Mapping[str, Any]
    outcome: str
    trace: Trace
    edition_chosen: bool = True
    answer: Answer | None = None
    fix: tuple[Correction, ...] = ()
    not_covered: NotCovered | None = None
    depends: Depends | None = None
    linked_answer: str = ""
    left_out: tuple[str, ...] = ()
    found: Verdict | None = None

    @cached_property
    def margin(self) -> tuple[Turn, ...]:
        """The smallest change of each input that turns the answer; the calculator runs again for it."""
        from calc.margin.search import turns_of  # it needs what stands here

        return turns_of(self)

    @property
    def answered(self) -> Answer:
        """The answer of a run whose outcome is known to be one. Raises: ValueError for another outcome."""
        if self.answer is None:
            raise ValueError(self.outcome)
        return self.answer

    @property
    def answer_code(self) -> str:
        """The answer as a link carries it; "fix" where there is none until a field is corrected."""
        if self.depends:
            return self.depends.answer_code
        if self.outcome == "fix":
            return "fix"
        return self.answer.answer_code if self.answer else "not-covered"

    @cached_property
    def assumed(self) -> tuple[Assumption, ...]:
        """The inputs left out, and whether the answer would be another one without their default."""
        from calc.unknown.assumed import assumptions  # most runs are parts of others, and nobody asks

        return assumptions(self)

    @cached_property
    def edition_check(self) -> EditionCheck | None:
        """What the other editions answer, where none was chosen; None where one was, or a field is to be corrected."""
        from calc.unknown.edition import edition_check

        return edition_check(self)

    @property
    def warnings(self) -> list[Message]:
        """What the reader must know: first that the editions differ, where none was chosen."""
        check = self.edition_check
        return [*([check.words] if check and not check.same else []), *self.trace.warnings]

    @property
    def gravest_warnings(self) -> list[Message]:
        """The same for a page: what a life hangs on before all else."""
        return self.trace.gravest_first(self.warnings)

    @property
    def entered(self) -> str:
        """What was entered and is not the default, in the words of the form."""
        fields, defaults = self.calculator.fields, self.calculator.defaults
        given = [name for name, value in self.inputs.items() if name not in defaults or value != defaults[name]]
        shown = [
            message("{label}: {value}", label=fields[name].label, value=fields[name].shown(self.inputs[name]))
            for name in given
        ]
        return "; ".join(map(str, shown))
