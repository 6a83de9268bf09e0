"""Two calculators that answer one question agree: the schedules with the single ones, these with each other."""

import random

import pytest

from calc.editions import EDITIONS
from calc.registry import CALCULATORS

SIZES = ("6", "4", "2", "1/0", "3/0", "250kcmil", "500kcmil", "750kcmil")  # no smaller ones: services lack them
METALS = ("copper", "aluminum")
ELECTRODES = ("water-pipe", "structural-metal", "concrete-encased", "rod", "other")


def supplies(seed, count):
    """Yield `count` random edition and supply: conductor, sets, raceways, conductor_metal, metal."""
    chance = random.Random(seed)
    for _ in range(count):
        raceways = chance.choice((1, 1, 2, 3))
        supply = {
            "conductor": chance.choice(SIZES),
            "sets": raceways * chance.choice((1, 1, 2)),
            "conductor_metal": chance.choice(METALS),
            "metal": chance.choice(METALS),
        }
        yield chance, chance.choice(EDITIONS), supply, {"raceways": raceways}


def single(slug, edition, *inputs):
    """Return what a calculator says, as links carry it, for inputs of which it takes those that it asks for."""
    given = {name: value for each in inputs for name, value in each.items()}
    asked = {name: value for name, value in given.items() if name in CALCULATORS[slug].fields}
    return CALCULATORS[slug](edition=edition, **asked).answer_code


def compare(schedule, edition, inputs, singles):
    """Hold each part of a schedule against the single calculator asked the same; give how many were compared."""
    result = CALCULATORS[schedule](edition=edition, **inputs)
    assert result.answer, (schedule, inputs, result.fix)
    sizes = result.answer.values["sizes"]
    for part, (slug, *given) in singles.items():
        assert sizes[part] == single(slug, edition, *given), (schedule, part, edition, inputs)
    sized = {part for part, said in sizes.items() if said not in ("none", "not-judged")}
    assert sized == set(singles)
    return len(singles)


def electrode_conductors(chosen, *given):
    return {
        f"grounding-electrode-conductor-{each}": ("grounding-electrode-conductor", *given, {"electrode": each})
        for each in chosen
    }


def test_a_service_with_one_disconnect_is_sized_as_its_parts_are():
    compared = 0
    for chance, edition, supply, raceways in supplies(seed=1, count=60):
        chosen = chance.sample(ELECTRODES, 2)
        neutral = {"metal": supply["conductor_metal"]}
        compared += compare(
            "service-schedule",
            edition,
            supply | raceways | {"electrodes": ",".join(chosen), "metal_parts": "water-pipe,structural-metal"},
            {
                "supply-side-bonding-jumper": ("supply-side-bonding-jumper", supply, raceways),
                "grounded-conductor": ("grounded-conductor", supply, raceways, neutral),
                "main-bonding-jumper": ("main-bonding-jumper", supply),
                "water-pipe-bonding": ("water-pipe-bonding", supply),
                "structural-metal-bonding": ("structural-metal-bonding", supply),
                **electrode_conductors(chosen, supply),
            },
        )
    assert compared == 60 * 7


def test_a_service_with_several_disconnects_is_sized_as_its_parts_are():
    for chance, edition, supply, raceways in supplies(seed=2, count=40):
        first, second = chance.choice(SIZES), chance.choice(SIZES)
        neutral = {"metal": supply["conductor_metal"]}
        metals = {"conductor_metal": supply["conductor_metal"], "metal": supply["metal"]}
        singles = {
            "supply-side-bonding-jumper-wireway": ("supply-side-bonding-jumper", supply, {"arrangement": "single"}),
            "supply-side-bonding-jumper": ("supply-side-bonding-jumper", supply, raceways),
            "grounded-conductor-supply": ("grounded-conductor", supply, raceways, neutral),
            **electrode_conductors(["rod"], metals, {"conductor": first, "other_conductors": f"2x{second}"}),
        }
        own = metals | {"conductor": first}
        shared = metals | {"conductor": second, "sets": 2, "raceways": 2}
        for number, each in ((1, own), (2, shared)):
            singles[f"grounded-conductor-{number}"] = ("grounded-conductor", each, neutral)
            singles[f"main-bonding-jumper-{number}"] = ("main-bonding-jumper", each)
        inputs = {"disconnects": f"{first},2x{second}", "disconnect_raceways": "each", "electrodes": "rod"}
        compare("service-schedule", edition, supply | raceways | inputs, singles)


@pytest.mark.parametrize("place", ["source", "first-disconnect"])
def test_a_derived_system_is_sized_as_its_parts_are_by_either_schedule(place):
    for chance, edition, supply, raceways in supplies(seed=3, count=40):
        chosen = chance.choice(("water-pipe", "concrete-encased", "rod", "other"))
        derived, at = {"place": "separately-derived-system"}, {"place": place}
        neutral = at | {"metal": supply["conductor_metal"]}
        electrode = ("grounding-electrode-conductor", supply, derived, {"electrode": chosen})
        singles = {
            "system-bonding-jumper": ("system-bonding-jumper", supply, at),
            "supply-side-bonding-jumper": ("supply-side-bonding-jumper", supply, raceways, derived),
            "water-pipe-bonding": ("water-pipe-bonding", supply, {"piping": "water-derived-system"}),
            "structural-metal-bonding": ("structural-metal-bonding", supply, {"supply": "separately-derived-system"}),
        }
        if place == "first-disconnect":
            singles["grounded-conductor"] = ("grounded-conductor", supply, raceways, neutral)
        inputs = supply | raceways | at | {"metal_parts": "water-pipe,structural-metal"}
        compare(
            "generator-schedule",
            edition,
            inputs | {"neutral": "switched", "breaker": "no", "electrodes": chosen},
            singles | {f"grounding-electrode-conductor-{chosen}": electrode},
        )
        past = ("equipment-grounding-conductor", {"device": 200, "metal": supply["metal"]})
        compare(
            "transformer-schedule",
            edition,
            inputs | {"kva": 75, "device": 200, "electrode": chosen},
            singles | {"grounding-electrode-conductor": electrode, "equipment-grounding-conductor-secondary": past},
        )


def test_a_separate_building_is_sized_as_its_parts_are():
    for chance, edition, supply, raceways in supplies(seed=4, count=60):
        device, minimum = {"device": chance.choice((60, 100, 400))}, chance.choice(SIZES[:4])
        supply |= {"conductor": chance.choice(SIZES[4:])}
        grown = {"installed_conductor": supply["conductor"], "minimum_conductor": minimum}
        compare(
            "separate-building-schedule",
            edition,
            supply
            | raceways
            | device
            | {"minimum_conductor": minimum, "electrodes": "rod", "metal_parts": "water-pipe,structural-metal"},
            {
                "equipment-grounding-conductor": ("equipment-grounding-conductor", supply, raceways, device, grown),
                "water-pipe-bonding": ("water-pipe-bonding", supply, device, {"piping": "water-separate-building"}),
                "structural-metal-bonding": ("structural-metal-bonding", supply, {"supply": "feeder-or-branch"}),
                **electrode_conductors(["rod"], supply, {"place": "separate-building"}),
            },
        )


def test_single_calculators_that_read_one_table_for_one_supply_agree():
    """Table 250.102(C)(1) for jumpers, Table 250.66 for electrode conductors, Table 250.122 behind a device."""
    for chance, edition, supply, _ in supplies(seed=5, count=100):
        main = single("main-bonding-jumper", edition, supply)
        assert main == single("system-bonding-jumper", edition, supply)
        assert main == single("supply-side-bonding-jumper", edition, supply, {"arrangement": "single"})
        assert single("water-pipe-bonding", edition, supply) == single("structural-metal-bonding", edition, supply)
        derived = single("water-pipe-bonding", edition, supply, {"piping": "water-derived-system"})
        assert derived == single(
            "structural-metal-bonding", edition, supply, {"supply": "separately-derived-system"}
        )
        electrode = {"electrode": chance.choice(ELECTRODES)}
        places = ("service-disconnect", "separate-building", "separately-derived-system")
        conductors = {
            single("grounding-electrode-conductor", edition, supply, electrode, {"place": place}) for place in places
        }
        assert len(conductors) == 1
        behind = {"device": chance.choice((15, 60, 225, 1200)), "metal": supply["metal"]}
        sizes = {
            single("equipment-grounding-conductor", edition, behind),
            single("equipment-bonding-jumper", edition, behind),
            single("water-pipe-bonding", edition, behind, {"piping": "other-metal"}),
            single("water-pipe-bonding", edition, behind, {"piping": "water-isolated-unit"}),
        }
        assert len(sizes) == 1
