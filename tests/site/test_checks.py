"""No field check sends anybody into danger: dead before wires move, neutrals stay on, readings know where to stop."""

import re
from fnmatch import fnmatch

import pytest

from calc.editions import DEFAULT_EDITION
from calc.rulebook import rule
from site_assets.build.page_data import Check, check_at, page_data, pages

CHECKS = [check for page in pages() for check in page_data(page).checks]
# Rules whose wires and parts the main switch leaves live.
OF_A_SERVICE = (
    "jumpers/main_bonding_jumper_re*",
    "jumpers/service_*",
    "jumpers/several_service_enclosures",
    "raceways/service_*",
    "grounding/grounded_conductor_at_service",
    "grounding/grounded_conductor_single_raceway",
    "grounding/electrode_conductor_several_disconnects",
    "grounding/electrode_conductor_landing",
    "grounding/water_pipe_bond",
    "grounding/structural_metal_bond",
    "places/service_*",
)
# Rules whose conductors and pipes can carry a neighbor's neutral current with this building's main off.
OF_ELECTRODES = (
    "grounding/electrode_conductor_*",
    "grounding/derived_electrode*",
    "grounding/structural_metal_bond*",
    "grounding/water_pipe_bond*",
    "naming/around_water_meter",
    "naming/electrode*",
    "places/electrode_clamps",
    "places/service_electrode_connection",
    "places/water_pipe_landing_distance",
)
WET = {"parts/equipotential-plane", "places/pool", "places/dock", "places/farm"}
WITH_A_NUMBER = re.compile(r"\d ?(?:A|mA|V)\b")
PROVED_DEAD = re.compile(r"test(?:ed)? (?:it |them |the frames )?for absence of voltage|prov\w+ (?:it |them )?dead")


# What a check passes at, as its section of the 2023 edition has it, and the rule and figure that say so.
FIGURES = {
    "parts/metal-raceways#flexible-limits": ("Not over 20 A", "raceways/flexible_device_largest", "ampere"),  # 250.118
    "parts/bonding-jumper#short-and-beside": ("6 ft long at most", "raceways/jumper_outside_longest", ""),  # 250.102(E)
    "parts/grounding-electrode#second-electrode": ("25 ohms or less", "grounding/rod_needs_second", ""),  # 250.53(A)(2)
    "places/buried-elbow#cover": ("At least 18 in", "raceways/elbow_cover_service", "inches"),  # 250.80
    "places/communications#length": ("20 ft or shorter", "places/communications_conductor_length", ""),  # 800.100
    "places/dock#ground-fault-protection": (
        "30 mA at shore-power",
        "places/dock_ground_fault_protection",
        "shore_power",
    ),  # 555.35
    "places/dock#shore-plane": ("8 AWG or larger", "places/dock_plane_conductor", ""),  # 682.33(C)
    "places/patient-care#panels-joined": ("10 AWG or larger", "places/patient_panels_conductor", ""),  # 517.14
    "places/pool#deck": ("at four places or more", "planes/pool_perimeter_ties", ""),  # 680.26(B)(2)
    "places/pool#spa-tub-fountain": ("8 AWG or larger", "places/pool_bonding_conductor", ""),  # 680.26(B)
    "places/water-gas-and-steel#near-the-entry": ("within 5 ft", "places/water_pipe_landing_distance", ""),  # 250.68(C)
}
NUMBER_WORDS = {"four": 4}


def cites(check: Check, patterns: tuple[str, ...]) -> bool:
    return any(fnmatch(key, pattern) for key in check.sections for pattern in patterns)


def sentences(*texts: str) -> list[str]:
    return [each for text in texts for each in re.split(r"(?<=[.;:])\s", text)]


def lifts_a_neutral(sentence: str) -> bool:
    """Tell whether a sentence has a neutral taken off its bar; one that forbids it does not."""
    lifted = re.search(
        r"\b(?:lift(?:ed)?|unhook|disconnect (?:the|a|each|every))\b[^.;:]*\bneutral\b"
        r"|\bneutral\b[^.;:]*\b(?:lifted|off the bar)",
        sentence,
        re.I,
    )
    return bool(lifted) and not re.search(r"\b(?:no|not|never)\b", sentence, re.I)


def works_before_it_is_dead(check: Check) -> bool:
    """Tell whether the mend speaks of taking the power away and forgets to prove it."""
    says_off = re.search(r"de-energize|lock(?:ed)? (?:it )?out|shut down", check.make_right, re.I)
    return bool(says_off) and not PROVED_DEAD.search(check.make_right)


def works_on_a_live_service(check: Check) -> bool:
    """Tell whether a mend of service parts leaves out the utility or the proof."""
    told = check.make_right
    return cites(check, OF_A_SERVICE) and not (
        "Nothing energized" in told or ("utility" in told and PROVED_DEAD.search(told))
    )


def opens_a_wire_that_may_carry(check: Check) -> bool:
    """Tell whether a mend at electrodes and pipes leaves out the clamp meter."""
    told = check.make_right
    return cites(check, OF_ELECTRODES) and "clamp meter" not in told.lower() and "Nothing energized" not in told


def reads_on_without_a_stop(check: Check) -> bool:
    """Tell whether a reading of live or wet parts does not say when to stop."""
    live = re.search(r"\blive\b|voltmeter|clamp meter|clamp-type|under load", check.measure, re.I)
    dead = re.search(rf"nothing energized|{PROVED_DEAD.pattern}", check.measure, re.I)
    wet = check.measure and check.page in WET and not dead
    only_forbids = check.measure.startswith(("No ohmmeter", "No continuity test"))
    return bool(live or wet) and not only_forbids and "Stop" not in check.measure


def passes_at_about_nothing(check: Check) -> bool:
    """Tell whether a reading passes at "near zero" or "no current" with no limit in figures."""
    vague = re.search(
        r"near (?:zero|nothing)|no (?:steady )?(?:current|voltage|reading)|follows? (?:the|no) load",
        check.pass_when,
        re.I,
    )
    return bool(vague) and not WITH_A_NUMBER.search(check.pass_when)


def takes_a_joint_out_of_a_broken_neutral(check: Check) -> bool:
    """Tell whether a second joint is taken out before anyone has seen that the neutral is whole."""
    taken = re.search(
        r"\b(?:take|remove)\b[^.;:]*\b(?:screw|strap|second (?:joint|bond)|extra (?:joint|bond|one)|neutral bond)\b",
        check.make_right,
        re.I,
    )
    intact = re.search(r"neutral (?:is|and (?:\w+ ){1,3}are) (?:whole|intact)|keep", check.make_right, re.I)
    return bool(taken) and not intact


def takes_the_only_path_away(check: Check) -> bool:
    """Tell whether a second joint is taken out before anyone has seen that metal has another way back."""
    taken = re.search(
        r"\b(?:take|remove)\b[^.;:]*\b(?:screw|strap|(?:second|extra) (?:joint|bond|one)|neutral bond)\b",
        check.make_right,
        re.I,
    )
    way = re.search(
        r"(?:path|metal way|grounding wire) are (?:whole|intact)|grounding path comes|grounding conductor is there"
        r"|put the bond back|\b(?:run|land) (?:an? |the )?(?:new |four-wire |equipment |fourth )[^.]*",
        check.make_right,
        re.I,
    )
    return bool(taken) and not way


def loads_nothing_past_the_clamp(check: Check) -> bool:
    """Tell whether a load is switched and not said where: ahead of the clamp it shows no second joint."""
    told = re.search(r"Switch a (?:120 V )?load of \d+ A or more(?P<where>.*?)on and off", check.measure)
    return bool(told) and not re.search(r"past|through|far end", told["where"])


def reads_dead_before_live(check: Check) -> bool:
    """Tell whether what is opened dead stands before the live reading that may forbid to open it."""
    dead, live = (check.measure.find(word) for word in ("low-ohm meter", "clamp meter on the bond"))
    return -1 < dead < live


def asks_before_it_sends_away(check: Check) -> bool:
    """Tell whether a check that begins with a shock asks questions first."""
    told = check.look_for.lower()
    return "felt a shock" in told and not -1 < told.find("everyone away") < told.find("ask")


@pytest.mark.parametrize(
    "dangerous",
    [
        works_before_it_is_dead,
        works_on_a_live_service,
        opens_a_wire_that_may_carry,
        reads_on_without_a_stop,
        passes_at_about_nothing,
        takes_a_joint_out_of_a_broken_neutral,
        takes_the_only_path_away,
        loads_nothing_past_the_clamp,
        reads_dead_before_live,
        asks_before_it_sends_away,
    ],
)
def test_no_check_sends_anybody_into_danger(dangerous):
    assert [check.address for check in CHECKS if dangerous(check)] == []


def test_no_check_has_a_neutral_lifted():
    told = {
        check.address: sentences(check.look_for, check.measure, check.pass_when, check.make_right) for check in CHECKS
    }
    assert [(address, each) for address, rows in told.items() for each in rows if lifts_a_neutral(each)] == []


@pytest.mark.parametrize(
    ("sentence", "lifted"),
    [
        ("Dead, with the feeder neutral and every branch neutral off the bar: ohmmeter to the enclosure.", True),
        ("Lift the feeder neutral and read again.", True),
        ("Do not lift the feeder neutral to test.", False),
        ("Lift no neutral.", False),
        ("See that the neutral is whole.", False),
    ],
)
def test_a_lifted_neutral_is_told_from_one_that_stays(sentence, lifted):
    assert lifts_a_neutral(sentence) is lifted


def test_what_is_mended_dead_needs_no_word_of_the_utility():
    ordinary = next(each for each in CHECKS if each.address == "places/boxes-and-receptacles#box-joined")
    assert "utility" not in ordinary.make_right and not works_on_a_live_service(ordinary)


def test_exercises_hold_in_every_edition_unless_they_name_one_and_some_end_undecided():
    asked = [page_data(page).exercise for page in pages()]
    named = [each for each in asked if len(each.editions) == 1]
    assert len({each.editions for each in named}) >= 2 and len(named) <= 4
    assert sum("could not see" in each.answer for each in asked) >= 3
    assert sum("not decided" in each.answer.lower() for each in asked) >= 2


@pytest.mark.parametrize("address", FIGURES)
def test_a_figure_in_a_check_is_that_of_its_rule(address):
    told, key, column = FIGURES[address]
    check = check_at(address)
    assert told in (check.make_right if address.endswith("spa-tub-fountain") else check.pass_when)
    stated = rule(key, DEFAULT_EDITION)
    written = re.search(r"\d+|" + "|".join(NUMBER_WORDS), told).group()
    assert int(NUMBER_WORDS.get(written, written)) == int(stated.rows[0][column] if column else stated.value)
