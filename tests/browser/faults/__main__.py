"""Runs the campaign, or some of it, and prints how it went.

`python -m tests.browser.faults [--from 0] [--to 40] [WORD ...]`: slices, each mixed of all kinds.
Words choose the cases whose kind or name holds one of them. CHROMIUM names the browser, as for the tests.
"""

import argparse
import os
import statistics
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.browser.conftest import SITE
from tests.browser.faults.cases import SLICES, Outcome, all_cases, run, slice_of
from tests.browser.faults.stage import Stage
from tests.browser.faults.versions import make_versions


def main(first: int, last: int, words: list[str], *, quick: bool) -> int:
    """Run the slices from `first` up to `last`; give the number of cases that broke or did not recover."""
    outcomes: list[Outcome] = []
    with tempfile.TemporaryDirectory(dir=SITE.parent / ".cache") as folder, sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=os.environ["CHROMIUM"], args=os.environ.get("CHROMIUM_ARGS", "").split()
        )
        versions = make_versions(SITE, Path(folder))
        stage = Stage(browser, versions, Path(folder), thorough=not quick)
        cases = all_cases(versions)
        for number in range(first, last):
            for case in slice_of(cases, number):
                if words and not any(word in f"{case.kind}: {case.name}" for word in words):
                    continue
                outcome = run(stage, case)
                outcomes.append(outcome)
                faults = [f"BROKEN {outcome.broken}"] * bool(outcome.broken)
                faults += [f"NOT RECOVERED {outcome.recovered}"] * bool(outcome.recovered)
                faults += ["told"] * outcome.told
                print(f"{number:3} {outcome.seconds:6.1f} s  {case.kind}: {case.name} {'; '.join(faults)}", flush=True)
        stage.close()
        browser.close()
    print(table(outcomes))
    return sum(bool(outcome.broken or (outcome.recovered and not outcome.case.stays)) for outcome in outcomes)


def table(outcomes: list[Outcome]) -> str:
    """Return one line for each kind, and one for all."""
    kinds = sorted({outcome.case.kind for outcome in outcomes})
    lines = [f"{'kind':<32}{'cases':>7}{'broken':>8}{'recovered':>11}{'told':>6}{'median s':>10}"]
    for kind in [*kinds, "all"]:
        of_kind = [outcome for outcome in outcomes if kind in (outcome.case.kind, "all")]
        broken = sum(bool(outcome.broken) for outcome in of_kind)
        recovered = sum(not outcome.recovered for outcome in of_kind)
        told = sum(outcome.told for outcome in of_kind)
        middle = statistics.median(outcome.seconds for outcome in of_kind) if of_kind else 0
        lines.append(f"{kind:<32}{len(of_kind):>7}{broken:>8}{recovered:>11}{told:>6}{middle:>10.1f}")
    return "\n".join(lines)


if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--from", type=int, default=0, dest="first", help="the first slice")
    asked.add_argument("--to", type=int, default=SLICES, dest="last", help="the slice before which it ends")
    asked.add_argument("words", nargs="*", metavar="WORD")
    asked.add_argument("--quick", action="store_true", help="ask for an answer only where a fault may change it")
    chosen = asked.parse_args()
    sys.exit(1 if main(chosen.first, chosen.last, chosen.words, quick=chosen.quick) else 0)
