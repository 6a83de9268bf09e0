"""One list of parts. Each part is sized by its own calculator; no rule is repeated here."""

from __future__ import annotations

from collections.abc import Mapping

from calc import permalink
from calc.answer import Answer, Row, Table
from calc.declare import Calculator, Mend, Result
from calc.words import Sentence, say
from calc.working import Working, marked_section

HEADINGS = {
    "part": say("Part"),
    "size": say("Size"),
    "from": say("From"),
    "to": say("To"),
    "why": say("Why"),
    "section": say("Section"),
}
NONE_THERE = say("None: leave it out")


class PartList:
    """Collects the rows of one schedule, and of each row's working what the whole must say too."""

    def __init__(self, working: Working):
        self.working = working
        self.rows: list[Row] = []
        self.said: dict[str, str] = {}
        self._to_install = 0
        self._warned: dict[str, tuple[Sentence, list[Sentence]]] = {}

    def size(
        self,
        key: str,
        calculator: Calculator,
        inputs: Mapping[str, object],
        *,
        part: Sentence,
        start: Sentence,
        end: Sentence,
        why: Sentence,
    ) -> Result:
        """Add the part that `calculator` sizes for `inputs`, and give its result.

        key: the part's name in the schedule's values. Raises: Mend for a field the calculator could not use.
        """
        given = [(name, str(value)) for name, value in inputs.items() if value is not None]
        result = calculator.work([("edition", self.working.edition), *given])
        if result.outcome == "fix":
            raise Mend(result.fix[0].field, result.fix[0].words)
        for cited in result.working.citations:
            self.working.cite(cited.key)
        for words in result.working.warnings:
            self._warned.setdefault(str(words), (words, []))[1].append(part)
        section = self._shown_section(result)
        size = say("Not covered here")
        # What another calculator does not cover is not spared: it counts, and its row says where to look.
        self._to_install += not result.answer or "size" in result.answer.values
        if result.answer and "size" in result.answer.values:
            size = result.answer.in_one_line
        elif result.answer:
            size, why = result.answer.headline, result.answer.detail
        else:
            why = say("{why} {look_in}", why=result.not_covered.why, look_in=result.not_covered.look_in)
        cells = {"part": part, "size": size, "from": start, "to": end, "why": why, "section": section}
        self.rows.append(Row(cells, permalink.write(result)))
        self.said[key] = result.said
        return result

    def never(self, key: str, rule: str, *, part: Sentence, start: Sentence, end: Sentence, why: Sentence) -> None:
        """Add a part that must not be there, with the rule that says so."""
        cells = {
            "part": part,
            "size": NONE_THERE,
            "from": start,
            "to": end,
            "why": why,
            "section": marked_section(self.working.cite(rule)),
        }
        self.rows.append(Row(cells))
        self.said[key] = "none"

    def answer(self, name: Sentence, detail: Sentence) -> Answer:
        """Give the list as an answer; its `values` hold parts (how many rows) and sizes (what each was answered)."""
        for words, parts in self._warned.values():
            self.working.warn(
                say("{parts}: {words}", parts="; ".join(map(str, dict.fromkeys(map(str, parts)))), words=words)
            )
        return Answer(
            name=name,
            headline=_how_many(self._to_install),
            detail=detail,
            basis=None,
            said=",".join(self.said.values()),
            values={"parts": len(self.rows), "sizes": dict(self.said)},
            table=Table(HEADINGS, tuple(self.rows)),
        )

    def _shown_section(self, result: Result) -> Sentence:
        if result.answer and result.answer.basis:
            return marked_section(self.working.cite(result.answer.basis))
        cited = result.working.citations
        return marked_section(cited[-1]) if cited else say("")


def _how_many(parts: int) -> Sentence:
    """Give how many parts are to be installed, without those that are not needed or must not be there."""
    if parts == 1:
        return say("1 part to install")
    return say("{count} parts to install", count=parts)
