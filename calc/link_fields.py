"""What every link carries beside a calculator's own fields: the edition, what was answered, what was left out."""

from __future__ import annotations

from calc.editions import EDITIONS
from calc.field import Choice, Field
from calc.messages import message

MAX_ANSWER_CODE = 2000


def _answer_code(text: str) -> str:
    if not all(letter.isascii() and (letter.isalnum() or letter in "/.,_-") for letter in text):
        raise ValueError(text)
    return text


EDITION_FIELD = Field(
    label=message("Edition"),
    hint=message("The edition of the code that is enforced where the work is."),
    enter=message("Enter one of {editions}.", editions=", ".join(EDITIONS)),
    read=str,
    choices=tuple(Choice(edition, message("{edition}", edition=edition)) for edition in EDITIONS),
)
ASSUMED_FIELD = Field(
    label=message("Inputs that were left out"),
    hint=message("Links carry their names, so that the answer can say what it assumes."),
    enter=message("Leave it as the link had it, for example sets,metal, or take it away."),
    read=_answer_code,
    longest=MAX_ANSWER_CODE,
)
ANSWER_CODE_FIELD = Field(
    label=message("Answer the link was made with"),
    hint=message("Links carry it, so that a changed answer is seen."),
    enter=message("Leave it as the link had it, for example 2/0-copper, or take it away."),
    read=_answer_code,
    longest=MAX_ANSWER_CODE,
)
