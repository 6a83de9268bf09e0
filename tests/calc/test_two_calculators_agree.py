"""Where two calculators answer one question, they answer it alike."""

import random
from itertools import product

import pytest

from calc import EDITIONS
from calc.registry import CALCULATORS
from tests.independent.jumper_size import hot_sizes

METALS = ("copper", "aluminum")
DEVICES = (15, 20, 30, 50, 60, 100, 110, 200, 225, 400, 800, 1200, 2000)
CASES = 60


def run(slug, **inputs):
    return CALCULATORS[slug](**inputs)


def size(slug, **inputs):
    result = run(slug, **inputs)
    return result.answer.values["size"] if result.answer else result.outcome


def drawn(seed):
    """Yield the same random circuits on every machine."""
    pick = random.Random(seed)
    for _ in range(CASES):
        metal = pick.choice(METALS)
        yield dict(
            edition=pick.choice(EDITIONS),
            conductor=pick.choice(hot_sizes(metal)),
            sets=pick.choice((1, 1, 1, 2, 3, 6)),
            conductor_metal=metal,
            metal=pick.choice(METALS),
        ), pick.choice(DEVICES)


SYSTEMS = [choice.value for choice in CALCULATORS["knockouts-over-250-volts"].fields["system"].choices][1:]
HOLES = [
    (knockout, enclosure)
    for knockout in ("right-size", "rings", "oversized")
    for enclosure in ("cabinet", "outlet-box", "marked-enclosure")
]
ENTERING = ("rigid-metal-conduit", "electrical-metallic-tubing", "flexible-metal-conduit", "flexible-metallic-tubing")


@pytest.mark.parametrize("raceway", ENTERING)
def test_an_entry_and_a_raceway_that_is_the_jumper_agree_on_bridging(raceway):
    """A derived system: bridged wherever the raceway may be the jumper, the hole is spoiled and the box not listed."""
    derived = dict(conductor="3/0", place="separately-derived-system", form="raceway")
    for edition in EDITIONS:
        jumper = run("supply-side-bonding-jumper", edition=edition, raceway=raceway, **derived)
        is_jumper = not jumper.answer.values["wire_needed"]
        notes = " ".join(map(str, jumper.trace.notes))
        assert is_jumper == ("install bonding jumpers around oversized knockouts, and around rings unless" in notes)
        for system, (knockout, enclosure) in product(SYSTEMS, HOLES):
            entry = run(
                "knockouts-over-250-volts",
                edition=edition,
                place="derived-system",
                system=system,
                raceway=raceway,
                knockout=knockout,
                enclosure=enclosure,
                fitting="two-locknuts",
            )
            need, low = entry.answer.values["need"], entry.answer.values["voltage_to_ground"] <= 250
            spoiled = knockout == "oversized" or (knockout == "rings" and enclosure == "cabinet")
            bridged = "jumper-if-path" if low and is_jumper else "ordinary" if low else "jumper"
            whole = "ordinary" if low else "tight-fitting"
            assert need == (bridged if spoiled else whole), (system, knockout, enclosure)


def test_ordinary_work_past_a_breaker_stays_plain_at_120_volts():
    entry = run("knockouts-over-250-volts", edition="2023", system="208Y/120", raceway="electrical-metallic-tubing")
    assert str(entry.answer.headline) == "No jumper required"


def test_at_a_service_no_entry_is_ordinary_and_the_jumper_says_so_too():
    for knockout, enclosure in HOLES:
        hole = dict(knockout=knockout, enclosure=enclosure, raceway="electrical-metallic-tubing")
        entry = run("knockouts-over-250-volts", edition="2023", place="service", fitting="two-locknuts", **hole)
        assert entry.answer.values["need"] != "ordinary" and entry.answer.values["enough"] == "no"
    notes = " ".join(map(str, run("supply-side-bonding-jumper", edition="2023", conductor="3/0").trace.notes))
    assert "Standard locknuts and bushings alone are not enough" in notes


def test_past_a_device_one_circuit_has_one_size():
    """Equipment grounding conductor, equipment bonding jumper and the bond of an elbow in its raceway."""
    for circuit, device in drawn(1):
        alike = {key: circuit[key] for key in ("edition", "sets", "conductor_metal", "metal")} | {"device": device}
        conductor = run(
            "equipment-grounding-conductor", installed_conductor=circuit["conductor"], raceways=1, **alike
        )
        jumper = run("equipment-bonding-jumper", installed_conductor=circuit["conductor"], **alike)
        elbow = run("buried-metal-elbow", circuit="feeder-or-branch", cover=10, device=device, **circuit)
        answers = [each.answer and each.answer.values["size"] for each in (conductor, jumper, elbow)]
        assert len(set(answers)) == 1, (circuit, device, answers)
        both = [each.answer and each.answer.values["size_unless_increased"] for each in (conductor, jumper)]
        assert both[0] == both[1]
        if conductor.answer and both[0] != answers[0]:
            assert "is the minimum size" in str(elbow.answer.in_one_line)


def test_a_raceway_that_fails_as_the_path_gets_the_wire_that_the_device_asks_for():
    for device, metal, edition in product(DEVICES, METALS, EDITIONS):
        alike = dict(edition=edition, device=device, metal=metal)
        wire = size("raceway-as-grounding-path", raceway="nonmetallic-raceway", **alike)
        assert wire == size("equipment-grounding-conductor", **alike)


def test_ahead_of_the_first_device_the_same_conductors_give_the_same_jumper():
    for circuit, _ in drawn(2):
        main = size("main-bonding-jumper", **circuit)
        assert main == size("supply-side-bonding-jumper", raceways=1, **circuit)
        assert main == size("buried-metal-elbow", circuit="service", cover=10, **circuit)
        assert main == size("system-bonding-jumper", **circuit)
        derived = size("supply-side-bonding-jumper", raceways=1, place="separately-derived-system", **circuit)
        assert derived == size("buried-metal-elbow", circuit="derived-system", cover=10, **circuit)


def test_water_piping_and_the_building_frame_get_the_same_bond():
    for circuit, _ in drawn(3):
        for piping, supply in (("water", "service"), ("water-derived-system", "separately-derived-system")):
            assert size("water-pipe-bonding", piping=piping, **circuit) == size(
                "structural-metal-bonding", supply=supply, **circuit
            ), circuit


# What a named part is sized by, and inputs of the calculator named for it that leave only that open.
NAMED = [
    ("service-disconnect", "neutral", "enclosure", {}),
    ("transformer-secondary", "source-neutral", "enclosure", {}),
    ("transformer-secondary", "enclosure", "enclosure", {"place": "separately-derived-system"}),
    ("ahead-of-service-disconnect", "raceway", "enclosure", {}),
    ("past-device", "raceway", "enclosure", {}),
    ("past-device", "equipment", "enclosure", {}),
    ("separate-building", "enclosure", "enclosure", {}),
    ("service-disconnect", "enclosure", "electrode", {}),
    ("service-disconnect", "water-pipe", "enclosure", {"piping": "water"}),
    ("transformer-secondary", "water-pipe", "enclosure", {"piping": "water-derived-system"}),
    ("separate-building", "water-pipe", "enclosure", {"piping": "water-separate-building"}),
    ("past-device", "water-pipe", "enclosure", {"piping": "water-isolated-unit"}),
    ("service-disconnect", "other-piping", "enclosure", {"piping": "other-metal"}),
    ("service-disconnect", "structural-metal", "enclosure", {"supply": "service"}),
    ("transformer-secondary", "structural-metal", "enclosure", {"supply": "separately-derived-system"}),
]


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("where", "one", "other", "case"), NAMED)
def test_what_sizes_a_named_part_is_what_its_calculator_goes_by(where, one, other, case, edition):
    named = run("conductor-name", edition=edition, where=where, from_part=one, to_part=other).answer.values
    calculator = CALCULATORS[named["calculator"]]

    def sized(conductor, device):
        given = {"conductor": conductor, "device": device} | case
        known = {name: value for name, value in given.items() if name in calculator.fields}
        return size(calculator.slug, edition=edition, **known)

    by_conductor = sized("1/0", 100) != sized("500kcmil", 100)
    by_device = sized("500kcmil", 100) != sized("500kcmil", 400)
    assert by_conductor == (named["sized_by"] in ("conductors", "electrode-table")), named
    assert by_device == (named["sized_by"] == "device"), named
