"""Twenty questions as people put them, with something left open, and what the code's tables answer.

Expected outcomes are read from the tables of NFPA 70 (2023), not from here: T1 is Table 250.102(C)(1), T2 Table
250.122, T3 Table 250.66 with 250.66(A) and (B). The rows used, hot conductor to copper jumper:
T1: copper 3/0: 4 AWG (2/0 or 3/0); over 3/0 to 350: 2; over 350 to 600: 1/0. Aluminum 3/0: 6 (2/0 or 3/0); over 250
to 500: 2. T2: 20 A: 12; 60: 10; 100: 8; 200: 6. T3: copper over 350 to 600: 1/0; to a rod at most 6, to a
concrete-encased electrode at most 4.
"""

import pytest

from calc import CALCULATORS

# Slug; inputs; the code of a plain answer, or the safe one of an answer that depends (None: there is none); the
# question that settles most; why it is so.
PLAIN = [
    ("equipment-grounding-conductor", {"device": "40"}, "10-copper", "T2: 40 A lies in the row of 60 A"),
    ("equipment-grounding-conductor", {"device": "61..100A"}, "8-copper", "T2: one row, over 60 to 100 A"),
    ("equipment-grounding-conductor", {"device": "200", "conductor_metal": "unknown"}, "6-copper",
     "T2 goes by the device; the hot conductors' metal is not in it"),
    ("main-bonding-jumper", {"conductor": "500kcmil", "enclosures": "unknown"}, "1/0-copper",
     "250.24(D): the conductors that serve this enclosure count; T1"),
    ("main-bonding-jumper", {"conductor": "500kcmil", "conductor_basis": "unknown"}, "1/0-copper",
     "T1, Note 2: without service conductors the size the load needs is used in the same row"),
    ("supply-side-bonding-jumper", {"conductor": "3/0", "length": "2..5ft", "run": "outside"}, "4-copper",
     "250.102(E)(2): up to 6 ft outside; T1"),
    ("supply-side-bonding-jumper", {"conductor": "3/0", "raceways": "unknown"}, "4-copper",
     "one set runs in one raceway; T1"),
    ("raceway-as-grounding-path", {"raceway": "electrical-metallic-tubing", "device": "unknown"}, "may",
     "250.118(A)(4): EMT has no limit of the device's rating"),
    ("raceway-as-grounding-path",
     {"raceway": "flexible-metal-conduit", "device": "20", "trade_size": "1/2", "length": "2..5ft"}, "may",
     "250.118(A)(5): 20 A and 6 ft at most"),
    ("buried-metal-elbow", {"cover": "24in", "conductor": "3/0", "circuit": "unknown"}, "no-bond",
     "250.80 and 250.86 Exception 3: 18 in of cover for either"),
    ("knockouts-over-250-volts",
     {"voltage_to_ground": "120..240", "raceway": "rigid-metal-conduit", "fitting": "two-locknuts"}, "ordinary",
     "250.97 begins over 250 V to ground"),
    ("conductor-name",
     {"where": "service-disconnect", "from_part": "neutral", "to_part": "enclosure", "form": "unknown"},
     "main-bonding-jumper", "100, definition: the connection of neutral and enclosure at the service, of any form"),
]  # fmt: skip
DEPENDS = [
    ("main-bonding-jumper", {"conductor": "500kcmil", "conductor_metal": "unknown"}, "1/0-copper", "conductor_metal",
     "T1: copper 1/0, aluminum 2"),
    ("main-bonding-jumper", {"conductor": "3/0", "sets": "1..2"}, "2-copper", "sets",
     "T1: 167,800 cmil: 4; twice that, 335,600: 2"),
    ("main-bonding-jumper", {"conductor": "500kcmil", "form": "unknown"}, "1/0-copper", "form",
     "250.28(A), (B): wire, bus, screw or strap; the size is T1's for each"),
    ("main-bonding-jumper", {"conductor": "3/0", "system_grounding": "unknown"}, None, "system_grounding",
     "250.24(C) is of grounded systems; an ungrounded one has no such jumper"),
    ("grounding-electrode-conductor", {"conductor": "500kcmil", "electrode": "unknown", "ring": "2"}, "1/0-copper",
     "electrode", "T3: water pipe 1/0, rod 6, concrete-encased 4, ring no larger than the ring"),
    ("raceway-as-grounding-path",
     {"raceway": "flexible-metal-conduit", "device": "15..30", "trade_size": "1/2", "length": "4ft"}, "may-not",
     "device", "250.118(A)(5): over 20 A a wire is needed"),
    ("buried-metal-elbow", {"cover": "12..24in", "conductor": "3/0"}, "bond-4-copper", "cover",
     "250.80 Exception: bonded with less than 18 in of cover; T1: 4"),
    ("structural-metal-bonding", {"conductor": "3/0", "frame": "unknown"}, "4-copper", "frame",
     "250.104(C): metal joined to form a frame is bonded; T1: 4"),
]  # fmt: skip


def test_at_most_half_of_twenty_depend():
    assert len(PLAIN) + len(DEPENDS) == 20 and len(DEPENDS) <= 10


@pytest.mark.parametrize(("slug", "inputs", "said", "why"), PLAIN, ids=lambda value: str(value)[:40])
def test_what_does_not_decide_leaves_a_plain_answer(slug, inputs, said, why):
    result = CALCULATORS[slug](edition="2023", **inputs)
    assert (result.outcome, result.answer_code) == ("answer", said), why


@pytest.mark.parametrize(("slug", "inputs", "safe", "ask", "why"), DEPENDS, ids=lambda value: str(value)[:40])
def test_what_decides_is_told_with_the_safe_answer_and_the_question(slug, inputs, safe, ask, why):
    result = CALCULATORS[slug](edition="2023", **inputs)
    assert result.outcome == "depends", why
    assert (result.depends.safe and result.depends.safe.answer_code, result.depends.ask.field) == (safe, ask), why
    assert str(result.depends.ask.why).startswith("It settles the answer."), "one thing is open, so its answer ends it"


def test_the_alternatives_say_which_metal_leads_to_which_size():
    """Table 250.102(C)(1): 500 kcmil copper 1/0 AWG, aluminum 2 AWG."""
    result = CALCULATORS["main-bonding-jumper"](edition="2023", conductor="500kcmil", conductor_metal="unknown")
    assert [(str(each.when), str(each.words)) for each in result.depends.alternatives] == [
        ("Hot conductor material: copper", "1/0 AWG copper wire or larger"),
        ("Hot conductor material: not copper", "2 AWG copper wire or larger"),
    ]


def turns(depends):
    """The values of the one open input in the condition of each alternative, as they are read out."""
    return [str(each.when).partition(": ")[2] for each in depends.alternatives]


def test_a_turning_point_of_a_range_is_where_the_code_puts_it():
    """Table 250.122: 60 A is the last of 10 AWG, 100 A of 8 AWG. 250.118(A)(5)(b): 20 A."""
    wire = CALCULATORS["equipment-grounding-conductor"](edition="2023", device="50..200A").depends
    assert turns(wire) == ["101 A or more", "61 A to 100 A", "up to 60 A"]
    flexible = CALCULATORS["raceway-as-grounding-path"](
        edition="2023", raceway="flexible-metal-conduit", device="15..30", trade_size="1/2", length="4ft"
    ).depends
    assert turns(flexible) == ["21 A or more", "up to 20 A"]


def test_a_short_stretch_near_zero_is_not_stepped_over():
    """250.118(A)(5): 6 ft of flexible metal conduit; the field takes up to 1000 ft."""
    result = CALCULATORS["raceway-as-grounding-path"](
        edition="2023", raceway="flexible-metal-conduit", device="20", trade_size="1/2", length="unknown"
    )
    assert result.outcome == "depends" and result.depends.safe.answer_code == "may-not"
    assert turns(result.depends) == ["6.01 ft or more", "up to 6 ft"]


def test_what_the_calculator_answers_without_is_left_out_when_it_is_unknown():
    """The equipment grounding conductor's own answer for a hot conductor nobody knows: by the device, with a note."""
    asked = CALCULATORS["equipment-grounding-conductor"]
    unknown = asked(edition="2023", device="40", installed_conductor="unknown")
    without = asked(edition="2023", device="40")
    assert (unknown.answer_code, unknown.inputs) == (without.answer_code, without.inputs)
