"""Each drawing joins the metal that must be joined and keeps apart what must be apart, as drawn and not as told."""

from dataclasses import dataclass

import pytest

from site_assets.diagrams import drawing_slugs
from tests.site.drawn_circuit import circuits, pieces

Pairs = tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class Fact:
    """What holds in a drawing once some parts are left out."""

    joined: Pairs = ()
    apart: Pairs = ()
    without: tuple[str, ...] = ()


MAIN = ("main-bonding-jumper",)
NO_WAY_BACK = Fact(apart=(("machine", "neutral-bar"),), without=MAIN)
WHOLE = Fact(joined=(("machine", "neutral-bar"),))

# From what the parts are for: past its one bond a neutral stays apart from metal; a way back ends at the source.
FACTS: dict[str, tuple[Fact, ...]] = {
    "bonding": (Fact((("joined-first-part", "joined-second-part"),), (("apart-first-part", "apart-second-part"),)),),
    "bonding-bushing": (Fact((("bushing-lug", "bar"),)),),
    "bonding-jumper": (Fact((("wire-left-lug", "wire-right-lug"), ("strap-left-bolt", "strap-right-bolt"))),),
    "boxes-and-receptacles": (
        Fact((("on-from-panel", "green-screw-on"), ("on-from-panel", "on-box-screw"))),
        Fact((("off-from-panel", "off-cable-out"), ("off-from-panel", "off-box-screw"))),
    ),
    "buried-elbow": (Fact((("right-elbow", "right-bar"),), (("left-elbow", "right-bar"),)),),
    "communications": (
        Fact((("dish-clamp", "neutral-bar"), ("mast-clamp", "neutral-bar"), ("own-rod", "ground-rod"))),
        Fact((("telephone-protector", "neutral-bar"), ("cable-block", "neutral-bar"))),
    ),
    "dock": (Fact((("mesh", "grounding-bar"), ("frame-clamp", "grounding-bar"), ("outlet", "grounding-bar"))),),
    "effective-ground-fault-current-path": (WHOLE, NO_WAY_BACK),
    "equipment-bonding-jumper": (
        Fact((("upper-fitting", "machine"), ("grounding-bar", "panel")), (("neutral-bar", "grounding-bar"),)),
    ),
    "equipment-grounding-conductor": (WHOLE, NO_WAY_BACK),
    "equipotential-plane": (Fact((("post-clamp", "mesh"), ("pump-lug", "mesh"))),),
    "farm": (Fact((("bowl-pipe", "mesh"), ("left-post", "mesh"), ("right-post", "mesh"), ("mesh", "grounding-bar"))),),
    "feeder-and-branch-raceways": (
        Fact((("service-neutral-bar", "service-panel"), ("second-grounding-bar", "second-panel"))),
        Fact((("feeder-neutral", "second-neutral-bar"),), (("second-neutral-bar", "second-panel"),)),
    ),
    "flexible-raceway": (
        Fact((("motor-case", "neutral-bar"), ("box", "neutral-bar"))),
        Fact(apart=(("motor-case", "neutral-bar"),), without=MAIN),
    ),
    "generator": (
        Fact(
            (("switched-generator-neutral-bar", "switched-generator-grounding-bar"),),
            without=("switched-main-bonding-jumper",),
        ),
        Fact(
            (("solid-generator-neutral-bar", "solid-service-neutral-bar"), ("solid-generator", "solid-service")),
            (
                ("solid-generator-neutral-bar", "solid-generator-grounding-bar"),
                ("solid-service-neutral-bar", "solid-generator"),
            ),
            without=("solid-main-bonding-jumper",),
        ),
    ),
    "grounded-conductor": (WHOLE, NO_WAY_BACK, Fact((("winding-middle", "neutral-bar"),))),
    "grounding-electrode": (
        Fact(tuple((part, "neutral-bar") for part in ("first-rod", "second-rod", "footing-bar", "to-ring"))),
        Fact((("column-clamp", "neutral-bar"), ("water-pipe", "neutral-bar"))),
    ),
    "intersystem-bonding-termination": (
        Fact(tuple((f"{each}-box", "neutral-bar") for each in ("telephone", "cable", "antenna"))),
        Fact((("rod", "neutral-bar"),), (("other-rod", "neutral-bar"),)),
    ),
    "knockouts": (Fact((("bushing-lug", "wall-lug"),)),),
    "lightning-protection": (Fact((("lightning-electrode", "building-rod-50"), ("building-rod-90", "neutral-bar"))),),
    "main-bonding-jumper": (WHOLE, NO_WAY_BACK),
    "metal-raceways": (
        Fact((("machine", "box"),), without=("jumper-outside",)),
        Fact((("machine", "box"),), without=("wire-inside",)),
        Fact((("service-panel", "neutral-bar"),)),
    ),
    "meter-and-wireway": (
        Fact(tuple((f"neutral-bar-{place}", f"disconnect-{place}") for place in (8, 128, 248))),
        Fact((("meter-enclosure", "neutral-bus"), ("wireway", "neutral-bus"))),
    ),
    "objectionable-current": (
        Fact(apart=(("panel-neutral-bar", "panel"),), without=("second-joint", *MAIN)),
        Fact((("panel", "service-neutral-bar"),), without=("second-joint",)),
    ),
    "panel": (
        Fact((("grounding-bar", "panel"), ("feeder-neutral", "neutral-bar"), ("machine", "grounding-bar"))),
        Fact(apart=(("neutral-bar", "panel"), ("neutral-bar", "grounding-bar"))),
    ),
    "patient-care": (Fact((("box-screw", "grounding-bar"),), (("neutral-bar", "grounding-bar"),)),),
    "pool": (
        Fact((("pump", "panel"),)),
        Fact(
            tuple((part, "shell-steel") for part in ("ladder", "pump", "niche-bond", "mesh-left", "mesh-right")),
            (("panel", "shell-steel"),),
            without=("pump-grounding",),
        ),
    ),
    "separate-building": (
        Fact((("second-disconnect", "service-neutral-bar"), ("second-electrode", "second-grounding-bar"))),
        Fact(
            (("second-disconnect", "service"), ("second-neutral-bar", "service-neutral-bar")),
            (("second-neutral-bar", "second-disconnect"), ("second-neutral-bar", "second-electrode")),
            without=MAIN,
        ),
    ),
    "separately-derived-system": (
        Fact((("neutral-bar", "transformer-enclosure"), ("first-disconnect", "transformer-enclosure")), without=MAIN),
        Fact(
            (("disconnect-neutral-bar", "neutral-bar"),),
            (("neutral-bar", "transformer-enclosure"), ("disconnect-neutral-bar", "first-disconnect")),
            without=("system-bonding-jumper",),
        ),
    ),
    "service": (
        Fact((("neutral-bar", "service-disconnect"), ("meter-enclosure", "neutral-bar"))),
        Fact((("ground-rod", "neutral-bar"), ("pipe-clamp", "neutral-bar"), ("phone-bond", "neutral-bar"))),
        Fact(apart=(("neutral-bar", "service-disconnect"),), without=MAIN),
    ),
    "service-disconnect": (
        Fact((("neutral-bar", "service-disconnect"), ("equipment-grounding-conductor", "service-disconnect"))),
        Fact(apart=(("feeder-neutral", "service-disconnect"),), without=MAIN),
    ),
    "solar": (
        Fact((("inverter", "grounding-bar"), ("disconnect", "grounding-bar"), ("rail-jumper", "grounding-bar"))),
        Fact((("neutral-bar", "building-electrode"),), (("neutral-bar", "grounding-bar"),), without=MAIN),
    ),
    "supply-side-bonding-jumper": (
        Fact((("wireway", "neutral-bus"), ("bushing-jumper", "neutral-bus"))),
        Fact(
            (("wireway", "disconnect-1"),),
            (("wireway", "neutral-bus"),),
            without=("main-bonding-jumper-1", "main-bonding-jumper-2"),
        ),
    ),
    "system-bonding-jumper": (
        WHOLE,
        Fact((("first-disconnect", "transformer-enclosure"),)),
        Fact(
            (("disconnect-neutral-bar", "neutral-point"),),
            (("machine", "neutral-bar"), ("disconnect-neutral-bar", "first-disconnect")),
            without=("system-bonding-jumper",),
        ),
    ),
    "take-a-bond-away": (
        Fact(
            (("service-neutral-bar", "panel-neutral-bar"), ("machine", "service")),
            (("service-neutral-bar", "service"), ("panel-neutral-bar", "panel")),
            without=(
                *MAIN,
                "neutral-bond-at-panel",
                "source-electrode",
                "service-electrode",
                "electrode-on-enclosure",
                "machine-electrode",
            ),
        ),
    ),
    "transformer": (
        Fact((("panel", "transformer-enclosure"), ("building-steel", "neutral-bar"), ("water-pipe-joint", "neutral"))),
        Fact(
            (("panel-neutral-bar", "neutral-bar"),),
            (("neutral-bar", "transformer-enclosure"), ("panel-neutral-bar", "panel")),
            without=("system-bonding-jumper",),
        ),
    ),
    "water-gas-and-steel": (
        Fact((("water-pipe", "neutral-bar"), ("furnace", "neutral-bar"), ("column-clamp", "neutral-bar"))),
        Fact((("meter-clamp-in", "meter-clamp-out"),), without=("water-pipe",)),
    ),
}
NEVER_THERE = {"objectionable-current": ("second-joint",)}


def test_every_drawing_has_its_facts():
    assert sorted(FACTS) == drawing_slugs()


@pytest.mark.parametrize("slug", FACTS)
def test_a_drawing_joins_what_must_be_joined_and_keeps_apart_what_must_be_apart(slug):
    for fact in FACTS[slug]:
        metal = circuits(slug, fact.without)
        assert [pair for pair in fact.joined if pair[0] not in metal[pair[1]]] == []
        assert [pair for pair in fact.apart if pair[0] in metal[pair[1]]] == []


def test_a_joint_that_must_not_be_there_is_drawn_as_wrong():
    for slug, names in NEVER_THERE.items():
        drawn = {piece.name: piece.kinds for piece in pieces(slug)}
        assert all("wrong" in drawn[name] for name in names)
        assert [name for name, kinds in drawn.items() if "wrong" in kinds] == list(names)
