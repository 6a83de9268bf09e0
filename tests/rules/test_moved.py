"""A rule whose file is moved keeps its key: answers, JSON, citations, anchors and what goes into the bundle stay."""

import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from calc.rulebook import file_of, moved, rule_keys

ROOT = Path(__file__).parents[2]
# What a page and a program see of the rules, as one JSON. It runs here and in the copy, each with its own `calc`.
SEEN = """
import json
from calc import CALCULATORS
from calc.json_output import result_to_dict
from calc.rulebook import rule_keys
from site_assets.build.rule_values_page import figures_table
from site_assets.build.runtime import own
slugs = ("pool-bonding-plan", "main-bonding-jumper", "raceway-as-grounding-path")
answers = [result_to_dict(CALCULATORS[slug](**CALCULATORS[slug].example)) for slug in slugs]
files = sorted(name for name in own() if name.startswith("calc/rules/"))
seen = json.dumps({"answers": answers, "keys": rule_keys(), "page": figures_table(), "files": files})
"""


def ids(html: str) -> list[str]:
    return re.findall(r'id="([^"]+)"', html)


@pytest.fixture(scope="module")
def before():
    """What is seen as the files lie here."""
    named = {}
    exec(SEEN, named)  # noqa: S102 (the same few lines in both places)
    return json.loads(named["seen"])


@pytest.fixture(scope="module")
def copied(tmp_path_factory):
    """A copy in which a rule stands in a folder of its own, a room was emptied, and each says so in one line."""
    place = tmp_path_factory.mktemp("copy")
    shutil.copytree(ROOT / "calc", place / "calc", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copytree(ROOT / "site_assets", place / "site_assets", ignore=shutil.ignore_patterns("__pycache__"))
    rules = place / "calc" / "rules"
    goes = {"jumpers/screw_identification": "colors/green_screw"}
    goes |= {key: f"water/pool/{Path(key).name}" for key in rule_keys() if key.startswith("planes/")}
    for key, to in goes.items():
        (rules / to).parent.mkdir(parents=True, exist_ok=True)
        (rules / f"{file_of(key)}.toml").rename(rules / f"{to}.toml")
    lines = (f'"{key}" = "{to}"\n' for key, to in {**moved(), **goes}.items())
    (rules / "moved.toml").write_text("".join(lines), encoding="utf-8")
    command = [sys.executable, "-c", f"{SEEN}print(seen)"]
    shown = subprocess.run(command, cwd=place, capture_output=True, text=True, check=True)
    return json.loads(shown.stdout), goes


def test_moving_the_files_of_rules_changes_no_answer_no_citation_and_no_key(copied, before):
    seen, goes = copied
    assert len(goes) > 10 and seen["answers"] == before["answers"]
    cited = {citation["key"] for answer in seen["answers"] for citation in answer["citations"]}
    assert cited & set(goes), "a rule that was moved is cited by its published key"
    assert seen["keys"] == before["keys"]


def test_moving_the_files_of_rules_takes_no_anchor_away(copied, before):
    seen, _ = copied
    assert set(ids(before["page"])) <= set(ids(seen["page"]))
    assert len(ids(seen["page"])) == len(set(ids(seen["page"])))
    assert "room-planes" in ids(seen["page"]), "a room that was emptied keeps its anchor"


def test_a_moved_rule_goes_into_the_bundle_as_before(copied, before):
    seen, goes = copied
    files = {f"calc/rules/{file_of(key)}.toml": f"calc/rules/{to}.toml" for key, to in goes.items()}
    assert set(files) & set(before["files"])
    assert set(seen["files"]) == {files.get(name, name) for name in before["files"]}


def test_a_moved_rule_left_no_file_and_no_other_rule_at_its_old_place():
    keys = rule_keys()
    assert len(keys) == len(set(keys)) and set(moved()) <= set(keys)
    for key, file in moved().items():
        assert not (ROOT / "calc" / "rules" / f"{key}.toml").exists(), key
        assert (ROOT / "calc" / "rules" / f"{file}.toml").is_file(), file
