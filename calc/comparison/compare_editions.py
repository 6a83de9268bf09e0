"""One case of any calculator in two editions: both answers, and every section or figure that is not the same."""

from __future__ import annotations

from typing import Annotated

from calc import permalink
from calc.answer import Answer, Row, Table
from calc.calculator import Field, FieldError, Result, calculator, unverified
from calc.comparison.differences import differing_rules, differing_warnings, list_rows, shown_outcome
from calc.editions import EDITIONS
from calc.link_fields import EDITION_FIELD
from calc.messages import message
from calc.output import Output
from calc.registry import CALCULATORS
from calc.shared_fields import one_of
from calc.trace import Trace

LONGEST_CASE = 2500  # two lists as long as their fields take, and the rest
LONGEST_LINK = 3 * LONGEST_CASE  # as it was copied, with its address, its answer and %2C for commas


def _read_case(text: str) -> str:
    slug, pairs = permalink.read_case(text)
    if slug == "compare-editions" or slug not in CALCULATORS:
        raise ValueError(text)
    own = permalink.edition_of(text)
    if own is not None and own not in EDITIONS:
        raise ValueError(text)
    case = permalink.case_of(slug, [("edition", own), *pairs] if own else pairs)
    if len(case) > LONGEST_CASE:  # written out it can be longer than it was typed, and the answer's link carries it
        raise ValueError(text)
    return case


def _shown_case(case: str) -> str:
    slug, pairs = permalink.read_case(case)
    result = CALCULATORS[slug].work(pairs)
    if result.outcome == "fix":
        return case
    return str(message("{name} ({entered})", name=result.calculator.name, entered=result.entered))


CASE = Field(
    message("Link to an answer"),
    message("Copy the link under any answer and paste it here, or press “Compare editions” under the answer."),
    message("Paste a link from this handbook, for example main-bonding-jumper?conductor=3/0."),
    read=_read_case,
    show=_shown_case,
    longest=LONGEST_LINK,
)
AGAINST = one_of(
    message("Compare with"), message("The edition selected at the top is the other one."), EDITION_FIELD.choices
)


@calculator(
    "compare-editions",
    name=message("Compare editions"),
    purpose=message(
        "The same case in two editions: whether the answer changes, and which sections and figures change."
    ),
    submit=message("Compare"),
    example={"edition": "2023", "against": "2017", "case": "water-pipe-bonding?conductor=500kcmil&sets=4"},
    outputs=(
        Output("same", message("Whether both editions give the same answer"), "yes-no"),
        Output("one", message("Answer in the edition selected, in link form"), "text"),
        Output("other", message("Answer in the edition compared with, in link form"), "text"),
        Output("differences", message("Rules that differ between them"), "whole-number"),
    ),
)
def compare_editions(
    *, trace: Trace, case: Annotated[str, CASE], against: Annotated[str, AGAINST] = "2020"
) -> Answer:
    """Return one case's answers in two editions and what differs between them.

    When: any calculator of this handbook, whatever its outcome in either edition.

    Parameters:
        case: "slug?name=value&...", or a link that a calculator gave; its answer is left aside, and its edition, where
            it names one, is one of the two.
        against: the second edition, "2017", "2020", "2023" or "2026".
        edition: the first one (read by every calculator).

    Returns: a Result; its answer's `values` hold same, one and other (each edition's answer as links carry it),
        differences (how many rows of the table are about rules).
    Raises: nothing; bad input ends as `fix`.
    Source: the rules that both answers cite.

    Example:
    >>> result = compare_editions(edition="2023", against="2017", case="main-bonding-jumper?conductor=3/0")
    >>> result.answer.values["same"], result.answer.values["one"]
    (True, '4-copper')
    """
    if against == trace.edition:
        raise FieldError("against", message("Both are the {edition} edition. Choose another one.", edition=against))
    _require_edition_of_the_link(case, against, trace)
    one, other = (_answered(case, edition) for edition in (trace.edition, against))
    for cited in one.trace.citations:
        trace.cite(cited.key)
    for sentence in unverified(other.trace):
        trace.warn(sentence)
    same = one.outcome == other.outcome and one.answer_code == other.answer_code
    rules = differing_rules(one.trace, other.trace, same)
    rows = [
        Row(dict(what=one.calculator.name, one=shown_outcome(one), other=shown_outcome(other)), permalink.write(one)),
        *list_rows(one, other),
        *rules,
        *differing_warnings(one.trace, other.trace),
    ]
    trace.note(_how_many(len(rules)))
    return Answer(
        name=message("{name}: {one} and {other}", name=one.calculator.name, one=trace.edition, other=against),
        headline=message("Same answer") if same else message("Different answer"),
        detail=message("in the {one} and {other} editions", one=trace.edition, other=against),
        basis=None,
        answer_code=f"{one.answer_code}_{other.answer_code}",
        values={"same": same, "one": one.answer_code, "other": other.answer_code, "differences": len(rules)},
        table=Table(
            {
                "what": message("What"),
                "one": message("{edition}", edition=trace.edition),
                "other": message("{edition}", edition=against),
            },
            tuple(rows),
        ),
    )


def _require_edition_of_the_link(case: str, against: str, trace: Trace) -> None:
    """Raise FieldError where the link is of a third edition: two others may agree where its own does not."""
    own = permalink.edition_of(case)
    if own in (None, trace.edition, against):
        return
    raise FieldError(
        "against",
        message(
            "The link is for the {own} edition, but {one} and {other} are being compared. Choose {own} here or as the "
            "edition at the top, or delete “edition={own}” from the link.",
            own=own,
            one=trace.edition,
            other=against,
        ),
    )


def _answered(case: str, edition: str) -> Result:
    slug, pairs = permalink.read_case(case)
    result = CALCULATORS[slug].work([*pairs, ("edition", edition)])
    if result.outcome == "fix":
        first = result.fix[0]
        raise FieldError(
            "case", message("The link cannot be calculated. {label}: {words}", label=first.label, words=first.words)
        )
    if result.depends:
        label = result.depends.ask.label
        raise FieldError("case", message("The link leaves an input open: {label}. Enter it first.", label=label))
    return result


def _how_many(rules: int):
    if rules == 0:
        return message("Every section and figure used is the same in both editions.")
    if rules == 1:
        return message("One section or figure used differs between the editions.")
    return message("{rules} sections or figures used differ between the editions.", rules=rules)
