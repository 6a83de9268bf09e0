"""Save, update and snapshot under faults: never broken, told in words, and whole again without help."""

import pytest

from tests.browser.faults.cases import SLICES, all_cases, run, slice_of

LEAST = 300


@pytest.mark.slices(SLICES)
def test_no_fault_breaks_the_handbook_and_it_recovers_by_itself(stage, versions, slice_number):
    cases = slice_of(all_cases(versions), slice_number, patient=stage.thorough)
    outcomes = [run(stage, case) for case in cases]
    failed = [
        f"{outcome.case.kind}: {outcome.case.name}: {outcome.broken} {outcome.recovered}"
        for outcome in outcomes
        if outcome.broken or (outcome.recovered and not outcome.case.stays)
    ]
    assert not failed, "\n".join(failed)


def test_the_campaign_has_cases_of_every_kind(versions):
    cases = all_cases(versions)
    assert len(cases) >= LEAST
    flipped = {case.name for case in cases if case.kind == "bit flipped on the device"}
    assert flipped == set(versions["first"].hashes), "each file that is saved"
    assert sum(case.kind == "quota" and case.name.startswith("update") for case in cases) == 6
