"""The figures of metal elbows in nonmetallic runs against texts read apart from the rules.

250.80 exception and 250.86 exception 3: NFPA 70-2017, California 2022 (2020), NFPA 70-2023. A continuing-education
page on 250.80 (sectionID 1006) gives the same 18 in for services, two trade forum threads (35172, 122188) that
concrete counts for other conductors only.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule


def only_row(key, edition):
    (row,) = rule(key, edition).rows
    return row


def test_the_cover_is_18_inches_and_450_millimetres_for_services_and_others():
    for edition in EDITIONS:
        for key in ("raceways/elbow_cover_service", "raceways/elbow_cover_other"):
            assert only_row(key, edition) == {"inches": 18, "millimetres": 450}


def test_the_concrete_is_2_inches_and_50_millimetres():
    for edition in EDITIONS:
        assert only_row("raceways/elbow_concrete_other", edition) == {"inches": 2, "millimetres": 50}
