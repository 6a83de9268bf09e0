"""Raceways as grounding path: worked cases, every limit just below, at and just above, each condition alone."""

import itertools

import pytest

from calc import EDITIONS, permalink, raceway_as_grounding_path
from tests.cases.read import cases, named
from tests.rules.by_edition import since

CASES = "raceways/raceway_as_grounding_path"
FMC, LFMC, FMT = "flexible-metal-conduit", "liquidtight-flexible-metal-conduit", "flexible-metallic-tubing"
SIZES = ["3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"]
# The largest device by kind and trade size, 250.118 as read in three editions.
LARGEST = {(FMC, size): 20 for size in SIZES[:5]} | {(LFMC, size): 20 for size in SIZES[:2]}
LARGEST |= {(LFMC, size): 60 for size in SIZES[2:5]} | {(FMT, size): 20 for size in SIZES}
# Device, then the size by Table 250.122 in copper and aluminum, around each row's end to 100 A.
WIRES = [("15", "14", "12"), ("15.1", "12", "10"), ("20", "12", "10"), ("20.1", "10", "8"), ("60", "10", "8")]
WIRES += [("60.1", "8", "6"), ("100", "8", "6"), ("100.1", "6", "4")]
RIGID = ["rigid-metal-conduit", "intermediate-metal-conduit", "electrical-metallic-tubing"]
TRAY = dict(raceway="cable-tray", qualified="yes")


def check(edition="2023", **inputs):
    return raceway_as_grounding_path(edition=edition, **inputs)


def flexible(**changed):
    return {"raceway": FMC, "device": "20", "trade_size": "1/2", "length": "3ft"} | changed


@pytest.mark.parametrize("pair", cases(CASES), ids=named)
def test_worked_cases_give_the_answer_of_their_source(pair):
    edition, case = pair
    result = check(edition, **case["inputs"])
    if "said" in case:
        assert result.answer_code == case["said"], case["reason"]
    else:
        assert case["not_covered"] in str(result.not_covered.look_in)


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases(CASES):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_flexible_kind_and_size_at_each_device_limit(edition):
    for raceway, size, device in itertools.product(
        (FMC, LFMC, FMT), SIZES, ("19.9", "20", "20.1", "59.9", "60", "60.1")
    ):
        if raceway == FMT and size not in SIZES[:3]:
            continue
        result = check(edition, **flexible(raceway=raceway, trade_size=size, device=device))
        assert result.answer_code == ("may" if float(device) <= LARGEST.get((raceway, size), 0) else "may-not")


@pytest.mark.parametrize("edition", EDITIONS)
def test_flexible_metallic_tubing_has_three_trade_sizes_and_the_smallest_by_exception(edition):
    """360.20 of 2023, and of a page of 2021."""
    for size in SIZES[3:]:
        (fix,) = check(edition, **flexible(raceway=FMT, trade_size=size)).fix
        assert fix.field == "trade_size" and "3/8, 1/2, 3/4 (360.20)" in str(fix.words)
    small = [str(words) for words in check(edition, **flexible(raceway=FMT, trade_size="3/8")).trace.notes]
    plain = [str(words) for words in check(edition, **flexible(raceway=FMT, trade_size="1/2")).trace.notes]
    assert any("to a luminaire (360.20)" in words for words in small)
    assert not any("360.20" in words for words in plain)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("raceway", [FMC, LFMC, FMT])
@pytest.mark.parametrize(
    ("length", "said"),
    [("5.99ft", "may"), ("6ft", "may"), ("72in", "may"), ("1.8m", "may"), ("6.01ft", "may-not"), ("1.83m", "may-not")],
)
def test_the_flexible_length_just_below_at_and_just_above_six_feet(edition, raceway, length, said):
    assert check(edition, **flexible(raceway=raceway, length=length)).answer_code == said


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(
    "broken",
    [
        dict(device="20.1"),
        dict(trade_size="1-1/2"),
        dict(length="6.1ft"),
        dict(flexibility="needed"),
        dict(fittings="not-listed"),
        dict(listed="no"),
    ],
)
def test_any_one_condition_of_flexible_metal_conduit_that_fails_makes_it_a_no(edition, broken):
    assert check(edition, **flexible()).answer_code == "may"
    result = check(edition, **flexible(**broken))
    assert result.answer_code == "may-not" and len(result.answer.values["reasons"]) == 1


def test_every_reason_against_is_told_at_once():
    broken = flexible(device="30", length="7ft", flexibility="needed", fittings="not-listed")
    assert len(check(**broken).answer.values["reasons"]) == 4


@pytest.mark.parametrize(("size", "said"), [("1/2", "may"), ("3/4", "may-not"), ("1-1/4", "may-not")])
def test_a_small_flexible_piece_in_the_path_counts_for_larger_liquidtight_conduit_only(size, said):
    assert check(**flexible(raceway=LFMC, trade_size=size, small_flexible="yes")).answer_code == said
    assert check(**flexible(small_flexible="yes")).answer_code == "may"


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("raceway", [FMC, LFMC])
def test_stainless_steel_fails_from_2023_and_warns_before(edition, raceway):
    result = check(edition, **flexible(raceway=raceway, stainless="yes"))
    early = edition in ("2017", "2020")
    assert result.answer_code == ("may" if early else "may-not")
    assert any("does not mention stainless" in str(words) for words in result.trace.warnings) == early


@pytest.mark.parametrize("edition", EDITIONS)
def test_where_it_moves_the_jumper_outside_is_offered_from_2023_only(edition):
    notes = " ".join(map(str, check(edition, **flexible(flexibility="needed")).trace.notes))
    early = edition in ("2017", "2020")
    assert ("calls for a wire, not a jumper" in notes) == early
    assert ("no longer than 6 ft (250.102(E)(2))" in notes) == (not early)


def test_tubing_that_moves_is_warned_of():
    result = check(**flexible(raceway=FMT, flexibility="needed"))
    assert result.answer_code == "may" and any("Install a wire anyway" in str(words) for words in result.trace.warnings)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("raceway", [*RIGID, "mineral-insulated-copper", "cablebus"])
@pytest.mark.parametrize("device", ["1", "20", "60.1", "6000", "10000"])
def test_rigid_kinds_have_no_limit_on_the_device_but_need_their_fittings(edition, raceway, device):
    assert check(edition, raceway=raceway, device=device, length="50ft", flexibility="needed").answer_code == "may"
    if device != "10000":
        assert check(edition, raceway=raceway, device=device, fittings="not-listed").answer_code == "may-not"


@pytest.mark.parametrize(
    "raceway", ["armored-cable", "metal-clad-cable", "metal-wireway", "auxiliary-gutter", "surface-metal-raceway"]
)
def test_kinds_that_need_a_listing_or_strip_fail_without_it(raceway):
    assert check(raceway=raceway, device="20", listed="yes").answer_code == "may"
    assert check(raceway=raceway, device="20", listed="no").answer_code == "may-not"


def test_metal_clad_cable_is_never_taken_as_identified_and_other_kinds_say_that_they_are():
    for edition in EDITIONS:
        (fix,) = check(edition, raceway="metal-clad-cable", device="20").fix
        assert fix.field == "listed" and "interlocked armor is not identified" in str(fix.words)
    for inputs, noted in ((dict(), True), (dict(listed="yes"), False)):
        notes = check(raceway="surface-metal-raceway", device="20", **inputs).trace.notes
        assert any("Assumed: listed" in str(words) for words in notes) == noted


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        (flexible(trade_size="not-given"), "trade_size"),
        (flexible(length="0"), "length"),
        (flexible(length=""), "length"),
        (dict(TRAY, device="60"), "tray_area"),
        (dict(TRAY, device="60", tray_area="0"), "tray_area"),
    ],
)
def test_what_decides_and_was_left_out_is_asked_for(inputs, field):
    for edition in EDITIONS:
        result = check(edition, **inputs)
        assert result.outcome == "fix" and [fix.field for fix in result.fix] == [field]
        assert "The answer depends on it." in str(result.fix[0].words)


def test_a_no_opens_with_the_wire_that_is_needed():
    assert str(check(**flexible(device="30")).answer.detail).startswith("Wire required: 10 AWG copper. ")
    cable = check(raceway="armored-cable", device="20", listed="no").answer
    assert str(cable.detail).startswith("Use a cable with an equipment grounding conductor in it: 12 AWG copper. ")


@pytest.mark.parametrize("raceway", ["nonmetallic-raceway", "mineral-insulated-steel"])
def test_kinds_that_are_never_the_path(raceway):
    assert check(raceway=raceway, device="20").answer_code == "may-not"


@pytest.mark.parametrize(("device", "copper", "aluminum"), WIRES)
@pytest.mark.parametrize("edition", EDITIONS)
def test_the_wire_goes_by_the_device_in_both_metals(edition, device, copper, aluminum):
    for metal, size in (("copper", copper), ("aluminum", aluminum), ("copper-clad-aluminum", aluminum)):
        values = check(edition, raceway="nonmetallic-raceway", device=device, metal=metal).answer.values
        assert (values["size"], values["metal"]) == (size, metal) and values["area_cmil"] > 0


# Device, metal, then the smallest area, in²: the rows of the manual named in the rule.
AREAS = [("60", "steel", 0.2), ("60.1", "steel", 0.4), ("100.1", "steel", 0.7), ("200.1", "steel", 1.0)]
AREAS += [("400.1", "steel", 1.5), ("600", "steel", 1.5), ("200", "aluminum", 0.2), ("200.1", "aluminum", 0.4)]
AREAS += [("600.1", "aluminum", 0.6), ("1000.1", "aluminum", 1.0), ("1200.1", "aluminum", 1.5)]
AREAS += [("1600.1", "aluminum", 2.0), ("2000", "aluminum", 2.0)]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("device", "metal", "least"), AREAS)
def test_a_tray_needs_its_metal_area(edition, device, metal, least):
    for tray_area, said in ((least - 0.01, "may-not"), (least, "may"), (least + 0.01, "may")):
        result = check(edition, **TRAY, device=device, tray_metal=metal, tray_area=f"{tray_area:.2f}")
        assert result.answer_code == said


def test_a_tray_above_its_table_or_without_supervision_or_marks_fails():
    assert check(**TRAY, device="600.1", tray_area="9").answer_code == "may-not"
    assert check(**TRAY, device="2000.1", tray_metal="aluminum", tray_area="9").answer_code == "may-not"
    for changed in (dict(qualified="no"), dict(listed="no"), dict(fittings="not-listed")):
        assert check(**(TRAY | dict(device="60", tray_area="1") | changed)).answer_code == "may-not"


def test_a_wire_laid_in_a_tray_is_4_awg_at_least():
    """392.10(B)(1)(c): a single conductor; in a multiconductor cable Table 250.122 gives 10 AWG behind 60 A."""
    result = check(raceway="cable-tray", device="60", tray_area="1")
    shown = str(result.answer.detail)
    assert "4 AWG copper as a single conductor in the tray, 10 AWG in a multiconductor cable" in shown
    assert result.answer.values["size"] == "4"
    assert "392.10(B)(1)(c)" in [rule.section for rule in result.trace.citations]
    large = check(raceway="cable-tray", device="400", tray_area="2")
    assert "Wire required: 3 AWG copper. " in str(large.answer.detail)


@pytest.mark.parametrize(
    ("inputs", "why"),
    [
        (dict(raceway="electrical-metallic-tubing", device="20", side="supply-side"), "Ahead of the first"),
        (dict(raceway="electrical-metallic-tubing", device="20", location="hazardous"), "hazardous location"),
        (dict(raceway="electrical-metallic-tubing", device="20", location="patient-care"), "patient care space"),
        (dict(raceway="nonmetallic-raceway", device="6000.1"), "The table ends at 6,000 A"),
    ],
)
def test_what_is_outside_is_not_covered_and_says_where_to_look(inputs, why):
    for edition in EDITIONS:
        result = check(edition, **inputs)
        assert result.outcome == "not_covered" and why in str(result.not_covered.why)
        assert str(result.not_covered.look_in)


@pytest.mark.parametrize(
    "broken",
    [
        dict(raceway="pipe"),
        dict(device="0"),
        dict(device="20ft"),
        dict(trade_size="7/8"),
        dict(length="-1"),
        dict(length="6A"),
        dict(length="1001"),
        dict(tray_area="101"),
        dict(tray_area="1ft"),
        dict(listed="perhaps"),
    ],
)
def test_bad_input_is_sent_back_with_its_field(broken):
    result = check(**flexible(**broken))
    assert result.outcome == "fix" and [fix.field for fix in result.fix] == list(broken)


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_yes_notes_the_ordinance_and_from_2026_on_it_warns_of_voltage_limits_where_they_are_told(edition):
    for inputs in (flexible(), flexible(device="30"), dict(raceway="electrical-metallic-tubing", device="20")):
        result = check(edition, **inputs)
        trace = result.trace
        assert any("ordinance may prohibit" in str(words) for words in trace.notes) == (result.answer_code == "may")
        # A course page on 250.118(A) of 2026 lists the kinds they touch and begins at (7), flexible metallic tubing.
        assert not any("voltage limits" in str(words) for words in trace.warnings)
    tubing = check(edition, **flexible(raceway=FMT)).trace.warnings
    assert any("voltage limits" in str(words) for words in tubing) == since({"2017": False, "2026": True})[edition]


def test_the_list_gains_its_letter_in_2023():
    for edition, section in (("2017", "250.118(5)"), ("2020", "250.118(5)"), ("2023", "250.118(A)(5)")):
        assert check(edition, **flexible()).trace.steps[0].citations[0].section == section


def test_a_larger_device_or_length_never_turns_a_no_into_a_yes_or_the_wire_smaller():
    devices = ["10", "15", "20", "30", "60", "100", "200", "1000", "6000"]
    for edition, raceway, size in itertools.product(EDITIONS, (FMC, LFMC, FMT), ("1/2", "3/4")):
        answers = [check(edition, **flexible(raceway=raceway, trade_size=size, device=each)).answer for each in devices]
        may = [each.values["may"] for each in answers]
        wires = [each.values["area_cmil"] for each in answers if not each.values["may"]]
        assert may == sorted(may, reverse=True) and wires == sorted(wires)


@pytest.mark.parametrize("length", ["0.0000001 ft", "0.00004", "0.001 in"])
def test_a_link_restores_a_tiny_length(length):
    result = check(**flexible(length=length))
    again = raceway_as_grounding_path.run(permalink.read(permalink.write(result).partition("?")[2]))
    assert result.answer and again.inputs == result.inputs and again.answer == result.answer


def test_a_length_a_hair_over_the_limit_is_shown_without_a_bare_point():
    detail = str(check(**flexible(length="6.00001ft")).answer.detail)
    assert "more than 6 ft" in detail and ". ft" not in detail
