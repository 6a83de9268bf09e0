"""The gate: pyright in strict mode over the code, ruff over the code and its tests. Both must find nothing.

What they are asked stands in pyproject.toml, with a reason beside each rule that is left out.
"""

import json
import re
import subprocess
import sys
import tomllib
from collections import Counter
from pathlib import Path

from site_assets.setup.paths import NODE_MODULES, ROOT, node

TYPED = ("calc", "site_assets")
MAX_IGNORED = 10
MAX_SHOWN = 20
IGNORES = re.compile(r"#.*\b(?:pyright|type):\s*ignore|\bcast\(")
OF_ONE_RULE = re.compile(r"# pyright: ignore\[\w+\](?P<reason>.*)")


def settings() -> dict:
    return tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]


def files(*folders: str) -> list[Path]:
    return [path for folder in folders for path in sorted((ROOT / folder).rglob("*.py"))]


def first(findings: list[str]) -> str:
    """Return how many findings there are, and the first of them."""
    return "\n".join([f"{len(findings)} findings", *findings[:MAX_SHOWN]])


def run(*command: object) -> subprocess.CompletedProcess[str]:
    words = [str(word) for word in command]
    return subprocess.run(words, cwd=ROOT, capture_output=True, text=True, timeout=600, check=False)


def test_ruff_finds_nothing():
    done = run(sys.executable, "-m", "ruff", "check", "--output-format", "json", *TYPED, "tests")
    assert done.returncode in (0, 1), done.stderr
    found = [
        f"{Path(each['filename']).relative_to(ROOT)}:{each['location']['row']}: {each['code']} {each['message']}"
        for each in json.loads(done.stdout)
    ]
    assert not found, first(found)


def test_ruff_looks_at_every_file():
    done = run(sys.executable, "-m", "ruff", "check", "--show-files", *TYPED, "tests")
    assert {Path(line) for line in done.stdout.splitlines()} >= set(files(*TYPED, "tests"))


def test_pyright_in_strict_mode_finds_nothing_in_any_file():
    done = run(node(), NODE_MODULES / "pyright" / "index.js", "--outputjson")
    assert done.returncode in (0, 1), done.stdout + done.stderr
    report = json.loads(done.stdout)
    found = [
        f"{Path(each['file']).relative_to(ROOT)}:{each['range']['start']['line'] + 1}: "
        f"{each.get('rule', '')} {each['message']}"
        for each in report["generalDiagnostics"]
    ]
    assert not found, first(found)
    assert report["summary"]["filesAnalyzed"] >= len(files(*TYPED))


def test_strict_is_strict():
    asked = settings()["pyright"]
    assert asked["typeCheckingMode"] == "strict" and set(asked["include"]) == set(TYPED)
    weakened = {name: value for name, value in asked.items() if name.startswith("report") and value is not True}
    assert weakened == {} and {"exclude", "ignore", "executionEnvironments"}.isdisjoint(asked)
    assert asked["enableTypeIgnoreComments"] is False


def test_few_lines_are_exempt_and_each_says_why():
    exempt = []
    for path in files(*TYPED):
        lines = path.read_text(encoding="utf-8").splitlines()
        for before, line in zip(["", *lines], lines, strict=False):
            if IGNORES.search(line):
                of_one_rule = OF_ONE_RULE.search(line)
                assert of_one_rule, f"{path.relative_to(ROOT)}: {line.strip()}"
                assert of_one_rule["reason"].strip() or before.lstrip().startswith("#"), f"no reason: {line.strip()}"
                exempt.append(path.relative_to(ROOT).as_posix())
        assert not re.search(r"^# pyright:", "\n".join(lines), re.M), f"{path}: a file is not exempt as a whole"
    assert len(exempt) <= MAX_IGNORED, Counter(exempt)


def test_each_rule_of_ruff_that_is_left_out_says_why():
    text = (ROOT / "pyproject.toml").read_text(encoding="utf-8")
    left_out = text.partition("ignore = [\n")[2].partition("\n]\n")[0].splitlines()
    of_files = text.partition("[tool.ruff.lint.per-file-ignores]\n")[2].partition("\n[")[0].splitlines()
    assert len(left_out) > 1 and len(of_files) > 1
    under_a_heading = False
    for line in [*left_out, *of_files]:
        if line.startswith("#"):
            under_a_heading = True
        elif " # " in line:
            under_a_heading = False
        else:
            assert under_a_heading or line in ("]", "") or line.endswith("= ["), line
