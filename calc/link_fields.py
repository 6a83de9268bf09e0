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
    hint=message("The code edition adopted where the work is."),
    enter=message("Enter one of {editions}.", editions=", ".join(EDITIONS)),
    read=str,
    choices=tuple(Choice(edition, message("{edition}", edition=edition)) for edition in EDITIONS),
)
ASSUMED_FIELD = Field(
    label=message("Inputs that were left out"),
    hint=message("A link carries their names, so the answer can say what it assumes."),
    enter=message("Leave it as it was in the link, for example sets,metal, or delete it."),
    read=_answer_code,
    longest=MAX_ANSWER_CODE,
)
ANSWER_CODE_FIELD = Field(
    label=message("Answer when the link was made"),
    hint=message("A link carries it, so a changed answer shows."),
    enter=message("Leave it as it was in the link, for example 2/0-copper, or delete it."),
    read=_answer_code,
    longest=MAX_ANSWER_CODE,
)
