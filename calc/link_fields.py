"""What every link carries beside a calculator's own fields: the edition, what was answered, what was left out."""

from __future__ import annotations

from calc.editions import EDITIONS
from calc.field import Choice, Field
from calc.words import say

LONGEST_SAID = 2000


def _said(text: str) -> str:
    if not all(letter.isascii() and (letter.isalnum() or letter in "/.,_-") for letter in text):
        raise ValueError(text)
    return text


EDITION_FIELD = Field(
    label=say("Edition"),
    hint=say("The edition of the code that is enforced where the work is."),
    enter=say("Enter one of {editions}.", editions=", ".join(EDITIONS)),
    read=str,
    choices=tuple(Choice(edition, say("{edition}", edition=edition)) for edition in EDITIONS),
)
ASSUMED_FIELD = Field(
    label=say("Inputs that were left out"),
    hint=say("Links carry their names, so that the answer can say what it assumes."),
    enter=say("Leave it as the link had it, for example sets,metal, or take it away."),
    read=_said,
    longest=LONGEST_SAID,
)
SAID_FIELD = Field(
    label=say("Answer the link was made with"),
    hint=say("Links carry it, so that a changed answer is seen."),
    enter=say("Leave it as the link had it, for example 2/0-copper, or take it away."),
    read=_said,
    longest=LONGEST_SAID,
)
