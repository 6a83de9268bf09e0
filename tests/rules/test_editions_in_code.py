"""What differs by edition is data: no condition of the code names an edition, and no rule is read before it is needed."""

import ast
import json
import subprocess
import sys
from pathlib import Path

from calc.editions import DEFAULT_EDITION, EDITIONS

ROOT = Path(__file__).parents[2]
READ = "import json\nfrom calc import CALCULATORS, rulebook\nread, document = [], rulebook._document\n" + (
    "rulebook._document = lambda key: (read.append(key), document(key))[1]\n"
    "listed = (list(CALCULATORS), len(read))\nCALCULATORS['jumper-withstand']\nfirst = set(read)\n"
    "print(json.dumps([listed[1], sorted(first)]))"
)


def conditions_on_an_edition(source: str) -> list[int]:
    """Return the lines whose comparison names an edition or the one shown until one is chosen."""
    return [
        node.lineno
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Compare | ast.MatchValue)
        for part in ast.walk(node)
        if (isinstance(part, ast.Constant) and part.value in EDITIONS)
        or (isinstance(part, ast.Name) and part.id == "DEFAULT_EDITION")
    ]


def reads_of_the_edition_shown(source: str) -> list[int]:
    """Return the lines that read a rule as the edition shown until one is chosen has it."""
    return [
        node.lineno
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Call)
        and any(isinstance(each, ast.Name) and each.id == "DEFAULT_EDITION" for each in node.args)
        and ast.unparse(node.func) != "values.pop"  # what is shown until one is chosen
    ]


def test_no_condition_names_an_edition():
    assert conditions_on_an_edition('if edition in ("2017", "2020"): pass') == [1, 1]
    assert reads_of_the_edition_shown("rule(key, DEFAULT_EDITION)") == [1]
    for folder in ("calc", "site_assets"):
        for path in sorted(set((ROOT / folder).rglob("*.py")) - {ROOT / "calc" / "editions.py"}):
            source = path.read_text(encoding="utf-8")
            assert not conditions_on_an_edition(source) + reads_of_the_edition_shown(source), path


def test_no_rule_is_read_until_a_calculator_is_asked_for_and_then_few():
    done = subprocess.run([sys.executable, "-c", READ], cwd=ROOT, capture_output=True, text=True, check=True)
    before, after = json.loads(done.stdout)
    assert before == 0
    assert "fault/conductor_heating" not in after and len(after) < 30, after


def test_the_edition_shown_is_one_of_those_known_and_they_stand_in_order():
    assert DEFAULT_EDITION in EDITIONS and list(EDITIONS) == sorted(set(EDITIONS))
