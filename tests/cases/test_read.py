"""A malformed file of cases is refused by its name, the case and what to write; a whole one is read."""

import pytest

from tests.cases.read import FOLDER, CaseError, cases, read

WHOLE = """
[[case]]
id = "W1"
editions = ["2020", "2023"]
inputs = { conductor = "4/0" }
size = "4"
reason = "row of the table"
source = "the book"
mark = "published"
"""


def test_a_whole_case_is_read():
    (case,) = read("one", WHOLE)
    assert (case["id"], case["inputs"], case["size"]) == ("W1", {"conductor": "4/0"}, "4")


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("[[case]]", "[[cases]]", "write [[case]] rows"),
        ("[[case]]", "[case", "at line 2"),
        ('source = "the book"\n', "", "case W1: it lacks source"),
        ('id = "W1"\n', "", "case 1: it lacks id"),
        ('"2020"', '"2021"', "2026 as text, not 2021"),
        ('["2020", "2023"]', "[]", "2026 as text, not none"),
        ('{ conductor = "4/0" }', '"4/0"', "inputs are a table"),
        ('"published"', '"sure"', "not 'sure'"),
        ('"the book"', '" "', "source is empty"),
    ],
)
def test_a_malformed_case_is_told_by_file_and_case_and_what_to_write(old, new, words):
    assert WHOLE.count(old) == 1
    with pytest.raises(CaseError) as refused:
        read("one", WHOLE.replace(old, new))
    assert str(refused.value).startswith("one.toml") and words in str(refused.value)


def test_two_cases_of_one_id_are_refused():
    with pytest.raises(CaseError, match="case W1: the id is there twice"):
        read("one", WHOLE + WHOLE)


def test_a_file_that_is_not_there_is_told():
    with pytest.raises(CaseError, match=r"jumpers/none.toml: there is no such file"):
        cases("jumpers/none")


def test_every_file_of_cases_is_whole():
    for file in sorted(FOLDER.glob("**/*.toml")):
        assert cases(file.relative_to(FOLDER).with_suffix("").as_posix())
