"""The figures of the whole-job schedules against texts read apart from the rules.

Read in NFPA 70-2017, California 2022 (2020) and NFPA 70-2023; the rows of Table 450.3(B) in 2017 and 2023 only.
"""

from calc.editions import EDITIONS
from calc.rulebook import rule
from tests.rules.by_edition import since, values


def test_a_transformer_secondary_has_125_percent_and_167_below_9_ampere():
    """Table 450.3(B): the last two columns where both sides are protected."""
    for edition in EDITIONS:
        assert rule("conductors/transformer_secondary_device", edition).value == 125
        assert rule("conductors/transformer_secondary_device_small", edition).value == 167
        assert rule("conductors/transformer_secondary_small_below", edition).value == 9


def test_the_rows_of_the_transformer_table_were_seen_in_2017_and_2023():
    for key in ("conductors/transformer_secondary_device", "conductors/transformer_secondary_device_small"):
        assert [rule(key, edition).mark for edition in ("2017", "2023")] == ["confirmed", "confirmed"]


def test_a_single_rod_stands_alone_at_25_ohm_and_rods_stand_6_feet_apart():
    """250.53(A)(2) Exception and (A)(3); EC&M on the 2011 changes has the same 25 ohm."""
    for edition in EDITIONS:
        assert rule("grounding/rod_needs_second", edition).value == 25
        assert rule("grounding/rod_spacing", edition).value == 6


def test_the_jumper_to_a_supplemental_rod_stops_at_6_copper_or_4_aluminum():
    """250.53(E)."""
    for edition in EDITIONS:
        assert rule("grounding/supplemental_electrode_jumper", edition).rows == ({"copper": "6", "aluminum": "4"},)


def test_an_intersystem_termination_takes_three_conductors_and_is_bonded_with_6_awg():
    """250.94(A)(2); (A)(4) and (A)(5) of 2017 and 2020, (A)(4) of 2023."""
    for edition in EDITIONS:
        assert rule("grounding/intersystem_terminals", edition).value == 3
        assert rule("grounding/intersystem_termination", edition).value == "6"


def test_service_disconnects_share_an_enclosure_in_2017_and_again_as_existing_equipment_since_2023():
    """230.71: a continuing-education page has the 2017 and 2020 texts side by side."""
    expected = since({"2017": "permitted", "2020": "separate", "2023": "separate-unless-existing"})
    assert values("services/disconnects_in_one_enclosure") == expected


def test_only_the_general_rule_stands_behind_a_generator_with_a_device():
    """250.35(B) names only sets without overcurrent protection of their own."""
    assert {rule("grounding/generator_with_device", edition).mark for edition in EDITIONS} == {"practice"}
