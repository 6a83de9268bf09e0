"""Warnings stay few: an answer that warns of everything warns of nothing."""

from statistics import median

from calc.registry import CALCULATORS
from tests.cases.read import FOLDER, cases

MEDIAN = 1
MOST = 8


def warnings_by_case() -> dict[str, int]:
    """Return the number of warnings of every worked case that a calculator answers, its edition given."""
    counts = {}
    for file in sorted(FOLDER.glob("**/*.toml")):
        calculator = CALCULATORS.get(file.stem.replace("_", "-"))
        for edition, case in cases(file.relative_to(FOLDER).with_suffix("").as_posix()) if calculator else ():
            inputs = {name: value for name, value in case.get("inputs", {}).items() if name in calculator.fields}
            result = calculator(edition=edition, **inputs)
            if result.outcome == "answer":
                counts[f"{calculator.slug} {case['id']} {edition}"] = len(result.trace.warnings)
    return counts


def test_an_answer_has_few_warnings():
    counts = warnings_by_case()
    assert len(counts) > 1000
    assert median(counts.values()) <= MEDIAN
    assert max(counts.values()) <= MOST, [name for name, count in counts.items() if count > MOST]
