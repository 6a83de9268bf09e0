"""`python -m calc`, run as a reader would: JSON out, exit code 2 for bad input, never a traceback."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from calc import CALCULATORS
from calc.json_schema import calculator_schema

ROOT = Path(__file__).parents[2]


def run(*arguments: str) -> tuple[int, dict]:
    command = [sys.executable, "-m", "calc", *arguments]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, encoding="utf-8", check=False)
    assert done.stderr == ""
    return done.returncode, json.loads(done.stdout)


def test_an_answer_has_every_part_that_programs_rely_on():
    code, document = run("main-bonding-jumper", "edition=2023", "conductor=500kcmil", "sets=2")
    assert code == 0
    assert set(document) == {
        "schema",
        "calculator",
        "edition",
        "edition_chosen",
        "rules",
        "inputs",
        "outcome",
        "answer",
        "fix",
        "not_covered",
        "steps",
        "notes",
        "warnings",
        "citations",
        "said",
        "permalink",
        "assumed",
        "margin",
    }
    assert document["outcome"] == "answer"
    assert {name: document["answer"][name] for name in ("size", "metal", "area_cmil")} == {
        "size": "2/0",
        "metal": "copper",
        "area_cmil": 133100,
    }
    assert document["citations"][0] == {
        "key": "jumpers/main_bonding_jumper_required",
        "title": "An unspliced main bonding jumper in each service disconnect enclosure",
        "section": "250.24(C)",
        "edition": "2023",
        "mark": "confirmed",
        "mark_words": "confirmed in published texts",
        "note": "",
        "sources": ["NFPA 70, 2023 edition", "ELECTRICAL CONTRACTOR, 2024-09-11"],
    }


def test_a_case_not_covered_is_no_error():
    code, document = run("main-bonding-jumper", "conductor=3/0", "place=feeder-panel")
    assert code == 0 and document["outcome"] == "not_covered"
    assert "equipment grounding conductor" in document["not_covered"]["look_in"]


@pytest.mark.parametrize(
    ("arguments", "field"),
    [
        (["main-bonding-jumper"], "conductor"),
        (["main-bonding-jumper", "conductor="], "conductor"),
        (["main-bonding-jumper", "conductor=" + "9" * 10_000], "conductor"),
        (["main-bonding-jumper", "conductor=<script>"], "conductor"),
        (["main-bonding-jumper", "conductor=3/0", "sets=-2"], "sets"),
        (["main-bonding-jumper", "conductor=3/0", "metal=coper"], "metal"),
        (["main-bonding-jumper", "conductor=3/0", "edition=1776"], "edition"),
        (["main-bonding-jumper", "conductor=3/0", "conductor=3/0"], "conductor"),
        (["main-bonding-jumper", "conductor=3/0", "weight=3"], "weight"),
        (["main-bonding-jumper", "conductor=\udcff"], "conductor"),
        (["main-bonding-jumper", "\udcff=1"], "conductor"),
        (["main-bonding-jumper", "3/0"], "3/0"),
        (["main-bonding-jumpr", "conductor=3/0"], "main-bonding-jumpr"),
    ],
)
def test_bad_input_ends_with_code_2_and_names_the_field(arguments, field):
    code, document = run(*arguments)
    assert code == 2 and document["outcome"] == "fix"
    assert field in [each["field"] for each in document["fix"]]
    assert all(each["say"] for each in document["fix"])


def test_alone_it_lists_every_calculator_with_its_fields():
    code, document = run()
    assert code == 0
    listed = {each["calculator"]: each for each in document["calculators"]}
    conductor = listed["main-bonding-jumper"]["fields"][0]
    assert conductor["name"] == "conductor" and conductor["required"]


def test_alone_it_tells_what_every_calculator_answers_and_in_which_column():
    _, document = run()
    outputs = {each["calculator"]: each["outputs"] for each in document["calculators"]}
    assert all(outputs.values())
    assert outputs["main-bonding-jumper"][1] == {
        "name": "metal",
        "column": "answer_metal",
        "meaning": "Conductor material",
        "kind": "choice",
        "shape": "one",
        "unit": "",
        "choices": ["copper", "aluminum", "copper-clad-aluminum"],
        "when": None,
        "parts": [],
    }
    assert [part["name"] for part in outputs["measured-electrode"][-1]["parts"]] == ["key", "words", "points"]


def test_the_schema_of_a_calculator_is_printed_and_asked_for_alone():
    code, document = run("water-pipe-bonding", "--schema")
    assert code == 0 and document["title"] == str(CALCULATORS["water-pipe-bonding"].name)
    assert document == calculator_schema(CALCULATORS["water-pipe-bonding"])
    code, document = run("water-pipe-bonding", "--schema", "conductor=3/0")
    assert (code, document["fix"][0]["field"]) == (2, "--schema")
