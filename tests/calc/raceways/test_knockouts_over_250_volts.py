"""The bonding at a knockout: worked cases, every mix of its fields against a second route, 250 V from both sides."""

import itertools

import pytest

from calc import EDITIONS, knockouts_over_250_volts
from calc.permalink import read, write
from tests.cases.read import cases, named

CASES = "raceways/knockouts_over_250_volts"
RMC, IMC, EMT = "rigid-metal-conduit", "intermediate-metal-conduit", "electrical-metallic-tubing"
RACEWAYS = [RMC, IMC, EMT, "flexible-metal-conduit", "liquidtight-flexible-metal-conduit", "flexible-metallic-tubing"]
RACEWAYS += ["armored-cable", "metal-clad-cable", "mineral-insulated-copper", "mineral-insulated-steel"]
BUSHING = "bonding-bushing-and-jumper"
BONDING = ["threaded-hub", "bonding-locknut", "listed-fitting", BUSHING]
FITTINGS = ["two-locknuts", "one-locknut", "shoulder-connector", *BONDING]
KNOCKOUTS = ["right-size", "rings", "oversized"]
ENCLOSURES = ["cabinet", "outlet-box", "marked-enclosure"]
EVERY_ENTRY = list(itertools.product(RACEWAYS, FITTINGS, KNOCKOUTS, ENCLOSURES))


def check(edition="2023", **inputs):
    return knockouts_over_250_volts(edition=edition, **inputs)


def entry(**changed):
    return {"raceway": RMC, "fitting": "two-locknuts", "knockout": "rings", "voltage_to_ground": 277} | changed


def expected(place, over, raceway, fitting, knockout, enclosure):
    """Return the answer by 250.92(B), 250.97 and its exception as read, written a second time.

    A raceway that may be the supply-side bonding jumper (250.30(A)(2)) is bridged at any voltage: common practice.
    """
    service = place == "service"
    if not service and not over:
        spoiled = knockout == "oversized" or (knockout == "rings" and enclosure == "cabinet")
        if place == "derived-system" and spoiled and raceway in (RMC, IMC, "electrical-metallic-tubing"):
            return "enough" if fitting == BUSHING else "jumper-if-path"
        return "ordinary"
    if fitting == BUSHING:
        return "enough"
    listed = knockout == "rings" and enclosure != "cabinet" and not service
    if knockout != "right-size" and not listed:
        return "jumper"
    by_exception = fitting == "shoulder-connector" or (fitting == "two-locknuts" and raceway in (RMC, IMC))
    return "enough" if fitting in BONDING or (by_exception and not service) else "bonding-fitting"


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
@pytest.mark.parametrize("place", ["load-side", "service", "derived-system"])
@pytest.mark.parametrize("volt", ["249.9", "250", "250.1"])
def test_every_mix_just_below_at_and_just_above_250_volts_equals_the_second_route(edition, place, volt):
    for raceway, fitting, knockout, enclosure in EVERY_ENTRY:
        mixed = dict(raceway=raceway, fitting=fitting, knockout=knockout, enclosure=enclosure)
        result = check(edition, place=place, voltage_to_ground=volt, **mixed)
        over = volt == "250.1"
        assert result.answer_code == expected(place, over, **mixed), mixed
        assert result.answer.values["enough"] == ("yes" if result.answer_code in ("ordinary", "enough") else "no")


@pytest.mark.parametrize(
    ("system", "volt"),
    [
        ("120/240", 120),
        ("208Y/120", 120),
        ("240-high-leg-delta", 208),
        ("240-corner-grounded-delta", 240),
        ("240-ungrounded-delta", 240),
        ("480Y/277", 277),
        ("600Y/347", 347),
        ("480-corner-grounded-delta", 480),
        ("480-ungrounded-delta", 480),
    ],
)
def test_a_system_gives_its_voltage_to_ground(system, volt):
    """To the grounded point of a wye or midpoint; to the grounded corner or, ungrounded, to another wire: full."""
    result = check(**entry(voltage_to_ground=None, system=system))
    assert result.answer.values["voltage_to_ground"] == volt
    assert result.answer_code == ("jumper" if volt > 250 else "ordinary")


def test_a_voltage_that_differs_from_the_system_counts_and_is_told():
    result = check(**entry(voltage_to_ground=120, system="480Y/277"))
    assert result.answer_code == "ordinary"
    assert any("480Y/277 V 3Ø 4W has 277 V to ground" in str(words) for words in result.trace.warnings)
    assert check(**entry(system="480Y/277")).trace.warnings == []


@pytest.mark.parametrize(("written", "said"), [("0.25kV", "ordinary"), ("251 V", "jumper"), ("1,000", "jumper")])
def test_the_voltage_is_read_in_any_usual_spelling(written, said):
    assert check(**entry(voltage_to_ground=written)).answer_code == said


def test_a_higher_voltage_never_asks_for_less():
    order = ["ordinary", "tight-fitting", "bonding-fitting", "jumper"]
    for knockout, enclosure in itertools.product(KNOCKOUTS, ENCLOSURES):
        asked = [
            order.index(
                check(**entry(voltage_to_ground=volt, knockout=knockout, enclosure=enclosure)).answer.values["need"]
            )
            for volt in (1, 120, 250, 251, 277, 480, 1000)
        ]
        assert asked == sorted(asked)


def test_the_voltage_is_asked_for_except_at_a_service():
    left_out = check(**entry(voltage_to_ground=None))
    assert left_out.outcome == "fix" and [each.field for each in left_out.fix] == ["voltage_to_ground"]
    assert check(**entry(voltage_to_ground=None, place="service")).answer_code == "jumper"


@pytest.mark.parametrize("place", ["load-side", "service"])
@pytest.mark.parametrize(("volt", "outcome"), [("999.9", "answer"), ("1000", "answer"), ("1000.1", "not_covered")])
def test_over_1000_volts_is_not_covered(place, volt, outcome):
    result = check(**entry(voltage_to_ground=volt, place=place))
    assert result.outcome == outcome
    assert outcome == "answer" or "Part X" in str(result.not_covered.look_in)


def test_a_nonmetallic_raceway_is_sent_to_the_wire():
    result = check(**entry(raceway="nonmetallic-raceway"))
    assert "equipment grounding conductor (250.122)" in str(result.not_covered.look_in)


@pytest.mark.parametrize(
    ("inputs", "says"),
    [
        ({}, "from the upstream overcurrent device: look under equipment bonding jumper (250.102(D))"),
        (
            {"place": "service"},
            "from the hot conductors in the raceway: look under supply-side bonding jumper (250.102(C))",
        ),
        ({"place": "derived-system"}, "look under supply-side bonding jumper (250.102(C))"),
        ({"place": "service"}, "to the grounded service conductor is also permitted (250.92(B))"),
        (
            {},
            (
                "An equipment grounding conductor in the raceway does not replace this bonding: "
                "250.97 has no such exception."
            ),
        ),
        ({"voltage_to_ground": 120}, "paint removed at contact surfaces (250.96(A))"),
        (
            {"voltage_to_ground": 120, "place": "derived-system", "knockout": "right-size"},
            "it must not be flexible (250.30(A)(2))",
        ),
    ],
)
def test_each_answer_says_what_goes_with_it(inputs, says):
    for edition in ("2017", "2020", "2023"):
        result = check(edition, **entry(**inputs))
        assert any(says in str(words) for words in result.trace.notes)
        assert result.trace.warnings == []


def test_a_connector_with_an_ordinary_locknut_at_a_service_is_read_both_ways():
    result = check(**entry(raceway=EMT, fitting="shoulder-connector", knockout="right-size", place="service"))
    assert result.answer_code == "bonding-fitting"
    assert "stricter reading. Ask the authority having jurisdiction." in str(result.trace.warnings[0])


@pytest.mark.parametrize(
    ("inputs", "headline", "detail"),
    [
        ({}, "Jumper required", "around the rings"),
        ({"knockout": "oversized"}, "Jumper required", "around the oversized knockout"),
        ({"knockout": "right-size", "place": "service"}, "Bonding fitting required", "Bonding locknut, threaded hub"),
        ({"knockout": "right-size", "fitting": "one-locknut"}, "Better fitting required", "Two locknuts, one inside"),
        ({"knockout": "right-size", "raceway": EMT}, "Better fitting required", "Connector with a shoulder"),
        ({"knockout": "right-size"}, "Nothing more required", "Two standard locknuts"),
        ({"voltage_to_ground": 120}, "No jumper required", "all tight, paint removed"),
    ],
)
def test_the_headline_is_what_to_do(inputs, headline, detail):
    answer = check(**entry(**inputs)).answer
    assert str(answer.headline) == headline and detail in str(answer.detail)


@pytest.mark.parametrize(
    ("field", "value"),
    [("voltage_to_ground", "0"), ("voltage_to_ground", "high"), ("knockout", "round"), ("system", "400Y/230")],
)
def test_bad_input_names_the_field_to_mend(field, value):
    result = check(**entry(**{field: value}))
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def test_the_link_of_an_answer_gives_it_again():
    result = check(**entry(voltage_to_ground=None, system="480Y/277"))
    link = write(result)
    assert "None" not in link
    assert knockouts_over_250_volts.run(read(link.partition("?")[2])).answer_code == "jumper"


@pytest.mark.parametrize(
    ("inputs", "says"),
    [
        ({}, "Rings are left, and the box is not listed for bonding through them: a bonding jumper is required."),
        ({"knockout": "oversized", "enclosure": "outlet-box"}, "A listing for rings does not cover it."),
        ({"enclosure": "outlet-box"}, "The box is listed for bonding through its rings"),
        ({"place": "service"}, "install a bonding jumper around the rings, whatever the box is listed for"),
        ({"voltage_to_ground": 250}, "250 V to ground is not over 250 V."),
    ],
)
def test_the_steps_say_why(inputs, says):
    assert any(says in str(step.words) for step in check(**entry(**inputs)).trace.steps)


@pytest.mark.parametrize(
    ("inputs", "said"),
    [
        ({"knockout": "rings"}, "jumper"),
        ({"knockout": "oversized"}, "jumper"),
        ({"knockout": "rings", "place": "service"}, "jumper"),
        ({"knockout": "right-size", "place": "service"}, "bonding-fitting"),
        ({"knockout": "right-size", "voltage_to_ground": 120}, "ordinary"),
    ],
)
def test_what_holds_it_need_not_be_told_where_the_entry_decides(inputs, said):
    assert check(**entry(**inputs, fitting=None)).answer_code == said


@pytest.mark.parametrize("inputs", [{"knockout": "right-size"}, {"enclosure": "outlet-box"}])
def test_what_holds_it_is_asked_for_where_ordinary_fittings_may_do(inputs):
    assert [each.field for each in check(**entry(**inputs, fitting=None)).fix] == ["fitting"]
