"""The edition is an input like any other: not chosen, it is unknown, and the answer says whether it decides.

The shown answer stays that of one edition. The others are worked out too. For a calculator whose run is heavy the
rules that the run cites are compared instead: where they state the same figures, the answer is the same.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass

from calc.calculator import Result
from calc.editions import EDITIONS
from calc.messages import Message, message
from calc.rulebook import rule
from calc.unknown.outcome_words import mark_of, outcome_words, templates
from calc.unknown.outcomes import resolved
from calc.unknown.safe_side import safe_side
from calc.unknown.states import Open

WITHOUT_CODE = ("compare-editions",)  # it names its two editions itself
COMPARED, CITED, NOT_COMPARED = "worked-out", "rules-compared", "not-compared"


@dataclass(frozen=True)
class EditionCheck:
    """What the other editions answer. `same`: True, False, or None where they were not compared.

    `others`: the outcome in words by edition, where it is another one. `unverified`: the editions of which a rule
    that was used is not verified. `how`: COMPARED, CITED or NOT_COMPARED.
    """

    same: bool | None
    others: dict[str, Message]
    unverified: tuple[str, ...]
    how: str
    shown: str

    @property
    def words(self) -> Message:
        """Return in a sentence or two what the edition decides."""
        if self.same:
            same = message("The answer is the same in all editions since {first}.", first=EDITIONS[0])
            if not self.unverified:
                return same
            return message(
                "{same} Not every section is verified for {list}.", same=same, list=", ".join(self.unverified)
            )
        choose = message("Choose the edition enforced where the work is.")
        if self.same is None:
            return message(
                "No edition picked. Showing {edition}. The others were not compared. {choose}",
                edition=self.shown,
                choose=choose,
            )
        others = " ".join(str(message("{edition}: {answer}.", edition=name, answer=str(words).rstrip(".")))
                          for name, words in self.others.items())  # fmt: skip
        return message(
            "No edition picked. Showing {edition}. The edition decides. {others} {choose}",
            edition=self.shown,
            others=others,
            choose=choose,
        )


def edition_check(result: Result) -> EditionCheck | None:
    """Return what the other editions answer; None where the edition was chosen or a field is to be mended."""
    if result.edition_chosen or result.outcome == "fix" or result.calculator.slug in WITHOUT_CODE:
        return None
    others = [edition for edition in EDITIONS if edition != result.edition]
    if safe_side(result.calculator.slug).heavy:
        same = _same_rules(result, others)
        how = CITED if same else NOT_COMPARED
        return EditionCheck(same, {}, _unverified(result, others), how, result.edition)
    answered = {edition: _answered(result, edition) for edition in others}
    own = _mark(result)
    different = {edition: each for edition, each in answered.items() if _mark(each) != own}
    unverified = tuple(edition for edition, each in answered.items() if each.trace.unverified())
    words = {edition: outcome_of(each) for edition, each in different.items()}
    return EditionCheck(not different, words, unverified, COMPARED, result.edition)


def outcome_of(result: Result) -> Message:
    """Return an outcome in one sentence, also where it depends."""
    if result.depends:
        return message("depends. On the safe side: {answer}", answer=result.depends.safe_words)
    return outcome_words(result)


def _answered(result: Result, edition: str) -> Result:
    if any(isinstance(value, Open) for value in result.inputs.values()):
        return resolved(result.calculator, edition, result.inputs)
    return result.calculator.settled(edition, result.inputs)


def _mark(result: Result) -> Hashable:
    """Return what tells the answers of two editions apart: sections may differ."""
    if result.depends:
        return result.depends.answer_code, tuple(
            (str(each.when), _mark(each.result)) for each in result.depends.alternatives
        )
    if result.answer:
        # Reasons name sections, and these may stand elsewhere.
        values = {name: value for name, value in result.answer.values.items() if name != "reasons"}
        return result.answer_code, str(values)
    return mark_of(result)[:2] if result.fix else templates(result.not_covered and result.not_covered.why)


def _same_rules(result: Result, others: list[str]) -> bool | None:
    """Return True where every rule that a run cites states the same figures in all editions, else None."""
    if result.depends:
        return None
    same = all(
        (cited.value, cited.rows) == (other.value, other.rows)
        for cited in result.trace.citations
        for other in (rule(cited.key, edition) for edition in others)
    )
    return same or None


def _unverified(result: Result, others: list[str]) -> tuple[str, ...]:
    cited = [each.key for each in result.trace.citations]
    return tuple(
        edition for edition in others if any(rule(key, edition).mark == "memory" for key in cited)
    )
