"""Every sentence goes through one function and can be said in another language."""

import ast
from pathlib import Path

import pytest

from calc import main_bonding_jumper
from calc.messages import message, use_language

ROOT = Path(__file__).parents[2]
SPEAKING = [
    ROOT / "calc",
    ROOT / "site_assets" / "render",
    ROOT / "site_assets" / "build",
    ROOT / "site_assets" / "diagrams",
]


def calls_of_message():
    for folder in SPEAKING:
        for file in folder.rglob("*.py"):
            for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "message":
                    yield file, node


def test_a_sentence_is_filled_by_named_placeholders():
    assert str(message("{size} is {cmil:,} cmil.", size="4 AWG", cmil=41740)) == "4 AWG is 41,740 cmil."


def test_a_sentence_left_incomplete_is_an_error():
    with pytest.raises(KeyError):
        str(message("{size} is too small."))


def test_what_was_typed_is_never_taken_for_a_placeholder():
    assert str(message("“{typed}” does not fit.", typed="{size}")) == "“{size}” does not fit."


def test_an_answer_is_said_in_the_language_spoken_when_it_is_shown():
    result = main_bonding_jumper(edition="2023", conductor="3/0")
    spanish = {"Area of one {size} conductor.": "Área de un conductor {size}.", "copper": "cobre"}
    with use_language(spanish):
        assert str(result.trace.steps[0].words) == "Área de un conductor 3/0 AWG."
        assert str(result.answer.detail) == "cobre wire or larger"
    assert str(result.trace.steps[0].words) == "Area of one 3/0 AWG conductor."


def test_every_template_but_those_of_rule_files_is_a_literal_so_that_it_can_be_listed_for_translators():
    computed = [
        (file.name, node.lineno)
        for file, node in calls_of_message()
        if not (isinstance(node.args[0], ast.Constant) and isinstance(node.args[0].value, str))
    ]
    assert {name for name, _ in computed} <= {"rulebook.py", "frame.py"}


def test_every_template_is_filled_with_just_the_values_it_names():
    for file, node in calls_of_message():
        if isinstance(node.args[0], ast.Constant) and not any(keyword.arg is None for keyword in node.keywords):
            given = {keyword.arg: "0" for keyword in node.keywords}
            try:
                node.args[0].value.format(**{name: _Anything() for name in given})
            except KeyError as missing:
                pytest.fail(f"{file.name}:{node.lineno} leaves {missing} empty")


class _Anything:
    def __format__(self, specification: str) -> str:
        return "anything"
