"""One list of parts. Each part is sized by its own calculator; no rule is repeated here."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping

from calc import permalink
from calc.answer import Answer, Row, Table
from calc.calculator import Calculator, FieldError, Result
from calc.known import known
from calc.messages import Message, message
from calc.trace import Trace, marked_section

HEADINGS = {
    "part": message("Part"),
    "size": message("Size"),
    "from": message("From"),
    "to": message("To"),
    "why": message("Why"),
    "section": message("Section"),
}
NONE_THERE = message("None: leave it out")
NOT_JUDGED = message("Not determined")
INSTALL, LEAVE_OUT, NOT_NEEDED = "install", "leave-out", "not-needed"
NOT_COVERED, TO_JUDGE = "not-covered", "not-judged"
ASKED_AS = {"installed_conductor": "conductor", "other_conductors": "disconnects"}  # in a schedule


def in_one_line(answer: Answer) -> Message:
    """Return a size as a row shows it: all that its calculator answers."""
    return answer.in_one_line


class PartList:
    """Collects the rows of one schedule, and of each row's working what the whole must say too.

    What nothing entered decides stands last, as a row that says so and asks the question.
    """

    def __init__(self, trace: Trace):
        self.trace = trace
        self._rows: dict[str, Row] = {}
        self._open: dict[str, Row] = {}
        self._answer_codes: dict[str, str] = {}
        self._warned: dict[str, tuple[Message, list[Message]]] = {}

    def work(self, calculator: Calculator, inputs: Mapping[str, object], conductor: str = "conductor") -> Result:
        """Return what `calculator` answers for `inputs`; conductor: the field of the schedule that its size came from.

        Raises: FieldError for a field that the calculator could not use, under the name that the schedule asks it by.
        """
        given = [(name, str(value)) for name, value in inputs.items() if value is not None]
        result = calculator.work([("edition", self.trace.edition), *given])
        if result.outcome == "fix":
            field = result.fix[0].field
            raise FieldError((ASKED_AS | {"conductor": conductor}).get(field, field), result.fix[0].words)
        return result

    def size(
        self,
        key: str,
        calculator: Calculator,
        inputs: Mapping[str, object],
        *,
        part: Message,
        start: Message,
        end: Message,
        why: Message,
        shown: Callable[[Answer], Message] = in_one_line,
        conductor: str = "conductor",
    ) -> None:
        """Add the part that `calculator` sizes for `inputs`.

        key: the part's name in the schedule's values; shown: the size in the words of the row; conductor: as in `work`.
        Raises: FieldError for a field the calculator could not use.
        """
        result = self.work(calculator, inputs, conductor)
        for cited in result.trace.citations:
            self.trace.cite(cited.key)
        for words in result.trace.warnings:
            self._warned.setdefault(str(words), (words, []))[1].append(part)
        if result.answer and "size" in result.answer.values:
            size, status = shown(result.answer), INSTALL
        elif result.answer:
            size, why, status = result.answer.headline, result.answer.detail, NOT_NEEDED
        else:
            size, status = message("Not covered here"), NOT_COVERED
            outside = known(result.not_covered)
            why = message("{why} {look_in}", why=outside.why, look_in=outside.look_in)
        section = self._shown_section(result)
        cells = {"part": part, "size": size, "from": start, "to": end, "why": why, "section": section}
        self._rows[key] = Row(cells, permalink.write(result), status)
        self._answer_codes[key] = result.answer_code

    def never(self, key: str, rule: str, *, part: Message, start: Message, end: Message, why: Message) -> None:
        """Add a part that must not be there, with the rule that says so."""
        section = marked_section(self.trace.cite(rule))
        cells = {"part": part, "size": NONE_THERE, "from": start, "to": end, "why": why, "section": section}
        self._rows[key] = Row(cells, status=LEAVE_OUT)
        self._answer_codes[key] = "none"

    def ask(
        self, key: str, *rules: str, part: Message, start: Message, end: Message, question: Message
    ) -> None:
        """Add a part that nothing entered decides: the question to answer, and the `rules` that ask it."""
        section = message(
            "{sections}", sections=", ".join(str(marked_section(self.trace.cite(rule))) for rule in rules)
        )
        cells = {"part": part, "size": NOT_JUDGED, "from": start, "to": end, "why": question, "section": section}
        self._open[key] = Row(cells, status=TO_JUDGE)

    def answer(self, name: Message, detail: Message) -> Answer:
        """Return the list as an answer; its `values` hold how many rows of each kind, and sizes: the answer of each.

        What a link carries are the answers alone: a question that the list gains changes no answer.
        """
        for words, parts in self._warned.values():
            self.trace.warn(
                message("{parts}: {words}", parts="; ".join(map(str, dict.fromkeys(map(str, parts)))), words=words)
            )
        rows = (*self._rows.values(), *self._open.values())
        counts = Counter(row.status for row in rows)
        return Answer(
            name=name,
            headline=_how_many(counts[INSTALL]),
            detail=_what_is_left(detail, counts[NOT_COVERED], counts[TO_JUDGE]),
            basis=None,
            answer_code=",".join(self._answer_codes.values()),
            values={
                "parts": len(rows),
                "to_install": counts[INSTALL],
                "not_covered": counts[NOT_COVERED],
                "not_judged": counts[TO_JUDGE],
                "sizes": self._answer_codes | dict.fromkeys(self._open, TO_JUDGE),
            },
            table=Table(HEADINGS, rows),
        )

    def _shown_section(self, result: Result) -> Message:
        if result.answer and result.answer.basis:
            return marked_section(self.trace.cite(result.answer.basis))
        cited = result.trace.citations
        return marked_section(cited[-1]) if cited else message("")


def _how_many(parts: int) -> Message:
    """Return how many parts are sized and to be installed; a row that is not covered or not judged is none of them."""
    if parts == 1:
        return message("1 part to install")
    return message("{count} parts to install", count=parts)


def _what_is_left(detail: Message, not_covered: int, to_judge: int) -> Message:
    """Return what the count stands for, and how many rows it leaves out."""
    if not_covered:
        detail = message("{detail}; {count} not covered here", detail=detail, count=not_covered)
    return message("{detail}; {count} not determined", detail=detail, count=to_judge) if to_judge else detail
