"""One case of any calculator in two editions: both answers, and every section or figure that is not the same."""

from __future__ import annotations

from typing import Annotated

from calc import permalink
from calc.answer import Answer, Row, Table
from calc.catalogue import CALCULATORS
from calc.comparison.differences import differing_rules, differing_warnings, list_rows, shown_outcome
from calc.declare import Field, Mend, Result, calculator, unverified
from calc.editions import EDITIONS
from calc.link_fields import EDITION_FIELD
from calc.output import Output
from calc.vocabulary import one_of
from calc.words import say
from calc.working import Working

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
    return str(say("{name} ({entered})", name=result.calculator.name, entered=result.entered))


CASE = Field(
    say("Link of an answer"),
    say("Copy the link under any answer and paste it here, or press “Compare editions” under the answer."),
    say("Paste a link of this handbook, for example main-bonding-jumper?conductor=3/0."),
    read=_read_case,
    show=_shown_case,
    longest=LONGEST_LINK,
)
AGAINST = one_of(say("Compare with"), say("The edition chosen at the top is the other one."), EDITION_FIELD.choices)


@calculator(
    "compare-editions",
    name=say("Compare editions"),
    purpose=say("The same case in two editions: whether the answer changes, and which sections and figures do."),
    submit=say("Compare"),
    example={"edition": "2023", "against": "2017", "case": "water-pipe-bonding?conductor=500kcmil&sets=4"},
    outputs=(
        Output("same", say("Whether both editions answer the same"), "yes-no"),
        Output("one", say("Answer in the edition chosen, as links carry it"), "text"),
        Output("other", say("Answer in the edition compared with, as links carry it"), "text"),
        Output("differences", say("Rules that differ between them"), "whole-number"),
    ),
)
def compare_editions(
    *, working: Working, case: Annotated[str, CASE], against: Annotated[str, AGAINST] = "2020"
) -> Answer:
    """Give one case's answers in two editions and what differs between them.

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
    if against == working.edition:
        raise Mend("against", say("Both are the {edition} edition. Choose another one.", edition=against))
    _stay_with_the_edition_of_the_link(case, against, working)
    one, other = (_answered(case, edition) for edition in (working.edition, against))
    for cited in one.working.citations:
        working.cite(cited.key)
    for sentence in unverified(other.working):
        working.warn(sentence)
    same = one.outcome == other.outcome and one.said == other.said
    rules = differing_rules(one.working, other.working, same)
    rows = [
        Row(dict(what=one.calculator.name, one=shown_outcome(one), other=shown_outcome(other)), permalink.write(one)),
        *list_rows(one, other),
        *rules,
        *differing_warnings(one.working, other.working),
    ]
    working.note(_how_many(len(rules)))
    return Answer(
        name=say("{name}: {one} and {other}", name=one.calculator.name, one=working.edition, other=against),
        headline=say("Same answer") if same else say("Not the same answer"),
        detail=say("in the {one} and {other} editions", one=working.edition, other=against),
        basis=None,
        said=f"{one.said}_{other.said}",
        values={"same": same, "one": one.said, "other": other.said, "differences": len(rules)},
        table=Table(
            {
                "what": say("What"),
                "one": say("{edition}", edition=working.edition),
                "other": say("{edition}", edition=against),
            },
            tuple(rows),
        ),
    )


def _stay_with_the_edition_of_the_link(case: str, against: str, working: Working) -> None:
    """Raise Mend where the link is of a third edition: two others may agree where its own does not."""
    own = permalink.edition_of(case)
    if own in (None, working.edition, against):
        return
    raise Mend(
        "against",
        say(
            "The link is of the {own} edition, and {one} and {other} are to be compared. Choose {own} here or as the "
            "edition at the top; or take “edition={own}” out of the link.",
            own=own,
            one=working.edition,
            other=against,
        ),
    )


def _answered(case: str, edition: str) -> Result:
    slug, pairs = permalink.read_case(case)
    result = CALCULATORS[slug].work([*pairs, ("edition", edition)])
    if result.outcome == "fix":
        first = result.fix[0]
        raise Mend("case", say("The link does not compute. {label}: {words}", label=first.label, words=first.words))
    if result.depends:
        label = result.depends.ask.label
        raise Mend("case", say("The link leaves something open: {label}. Settle it first.", label=label))
    return result


def _how_many(rules: int):
    if rules == 0:
        return say("Every section and figure used is the same in both editions.")
    if rules == 1:
        return say("One section or figure used is not the same in both editions.")
    return say("{rules} sections or figures used are not the same in both editions.", rules=rules)
