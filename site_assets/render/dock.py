"""An answer in two lines, for the dock: what it is, and the one thing to know beside it."""

from __future__ import annotations

from calc.calculator import Result
from calc.known import known
from calc.messages import Message, message
from calc.rulebook import rule
from calc.trace import MARK_WORDS


def dock_words(result: Result) -> dict[str, str]:
    """Return the two lines of the dock, `head` and `line`."""
    head, line = _lines(result)
    return {"head": str(head), "line": str(line)}


def _lines(result: Result) -> tuple[Message, Message]:
    if result.outcome == "fix":
        first = result.fix[0]
        return message("Fix this first"), message("{label}: {words}", label=first.label, words=first.words)
    if result.outcome == "not_covered":
        return message("Not covered here"), known(result.not_covered).why
    if result.depends:
        ask = message("One more question: {label}", label=result.depends.ask.label)
        return (result.depends.safe_words if result.depends.safe else message("It depends")), ask
    if result.found:
        return result.found.headline, message("Required: {answer}", answer=result.answered.in_one_line)
    answer = result.answered
    return answer.headline, message("{detail}, {basis}", detail=str(answer.detail).rstrip("."), basis=_basis(result))


def _basis(result: Result) -> Message:
    """Return the edition, and how far its section was checked."""
    edition = message("NEC {edition}", edition=result.edition)
    if result.answered.basis is None:
        return edition
    mark = rule(result.answered.basis, result.edition).mark
    return message("{edition}, {mark}", edition=edition, mark=MARK_WORDS[mark])
