"""The keys of JSON and the columns of tables that every calculator has: none is gone, none is new and not stated."""

import json
from io import BytesIO

import pytest

from calc import CALCULATORS
from calc.__main__ import main
from calc.batch import ANSWERED, LABEL, answer_table, example_table, value_columns
from calc.found.shown import COLUMNS
from calc.found.verdict import ENOUGH, NOT_PERMITTED, SHORT, UNKNOWN
from calc.json_output import result_to_dict
from calc.permalink import RESERVED
from calc.rulebook import MARKS, changes
from tests.published.registry import document

JSON, TABLE = document("formats")["json"], document("formats")["table"]
SIZE, JOB = CALCULATORS["main-bonding-jumper"], CALCULATORS["service-schedule"]
RESULTS = [
    result_to_dict(result)
    for result in (
        SIZE(**SIZE.example, said="1-copper"),
        JOB(**JOB.example),
        SIZE(),
        SIZE(conductor="3/0", place="feeder-panel"),
    )
]
OPEN = result_to_dict(SIZE(conductor="3/0", sets="unknown"))


def union(documents) -> set[str]:
    return set().union(*(set(each) for each in documents))


def parts(name: str) -> list[dict]:
    """Return one part of every result that has it; of a list, each member."""
    found = [result[name] for result in RESULTS if result[name]]
    return [each for part in found for each in (part if isinstance(part, list) else [part])]


def printed(capsys, *arguments) -> dict:
    main(list(arguments))
    return json.loads(capsys.readouterr().out)


def hold(kind: str, seen: set[str], stated: list[str]) -> None:
    """Compare names both ways."""
    assert not set(stated) - seen, f"{kind}: {sorted(set(stated) - seen)} was published and is gone"
    assert not seen - set(stated), f"{kind}: add {sorted(seen - set(stated))} to site_assets/published/formats.toml"


def test_a_result_has_the_published_keys_and_its_parts_have_theirs():
    hold("result", union(RESULTS), JSON["result"])
    assert all(list(result) == JSON["result"] for result in RESULTS), "every result has all of them, in their order"
    for kind, name in (("step", "steps"), ("citation", "citations"), ("fix", "fix"), ("not_covered", "not_covered")):
        hold(kind, union(parts(name)), JSON[kind])
    hold("said", union(parts("said")), JSON["said"])
    hold("change", union(changes()["change"]), JSON["change"])


def test_an_answer_has_the_keys_that_all_have_and_its_rows_have_theirs():
    """The other keys are the calculator's own: the values of its answer and the cells of its rows."""
    sized, listed = parts("answer")
    hold("answer", (set(sized) - set(SIZE(**SIZE.example).answer.values)) | {"rows"}, JSON["answer"])
    cells = set(JOB(**JOB.example).answer.table.headings)
    hold("row", union(listed["rows"]) - cells, JSON["row"])


def test_the_list_of_calculators_has_the_published_keys(capsys):
    listing = printed(capsys)
    hold("listing", set(listing), JSON["listing"])
    hold("calculator", union(listing["calculators"]), JSON["calculator"])
    hold("field", union(field for each in listing["calculators"] for field in each["fields"]), JSON["field"])


def test_what_depends_has_keys_of_its_own_beside_those_of_every_result():
    hold("depends", set(OPEN) - set(JSON["result"]), JSON["depends"])
    hold("alternative", union(OPEN["alternatives"]), JSON["alternative"])
    hold("ask", set(OPEN["ask"]), JSON["ask"])


def test_the_command_adds_the_published_keys(capsys):
    """The margin of 3/0 is the next row of the table; without an edition the others are compared."""
    answered = printed(capsys, "main-bonding-jumper", "conductor=3/0")
    hold("added", set(answered) - set(JSON["result"]), JSON["added"])
    hold("margin", union(answered["margin"]), JSON["margin"])
    hold("assumed", union(answered["assumed"]), JSON["assumed"])
    hold("editions", set(answered["editions"]), JSON["editions"])


def test_what_was_found_on_site_has_the_published_keys_and_columns():
    checked = result_to_dict(SIZE(conductor="3/0", found="6 copper"))["answer"]
    hold("found", set(checked["found"]), JSON["found"])
    hold("columns of what was found", set(COLUMNS), TABLE["found"])


def test_links_have_the_published_names_beside_the_fields():
    link = document("formats")["link"]
    hold("reserved", set(RESERVED), link["reserved"])
    for written in link["open"]:
        assert CALCULATORS["buried-metal-elbow"](cover=written).outcome != "fix", written


@pytest.mark.parametrize("arguments", [["no-such-thing"], ["main-bonding-jumper", "conductor"]])
def test_a_command_that_cannot_be_run_has_the_published_keys(capsys, arguments):
    hold("refusal", set(printed(capsys, *arguments)), JSON["refusal"])


def test_outcomes_and_marks_are_the_published_ones():
    hold("outcomes", {result["outcome"] for result in (*RESULTS, OPEN)}, JSON["outcomes"])
    hold("verdicts", {ENOUGH, SHORT, UNKNOWN, NOT_PERMITTED}, JSON["verdicts"])
    hold("marks", set(MARKS), JSON["marks"])


def test_an_answered_table_has_the_published_columns_beside_its_own():
    table = answer_table(SIZE, BytesIO(example_table(SIZE).encode()))
    common = set(table.columns) - set(value_columns(SIZE).values()) - set(SIZE.fields) - {LABEL, "edition"}
    hold("table", common, TABLE["written"])
    assert set(TABLE["read"]) <= set(table.columns)
    assert set(ANSWERED) <= set(TABLE["written"]), "an answered table of any version is known by these"
