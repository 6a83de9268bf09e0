"""The name of a conductor: cases with their sources, every combination, and what each answer must say."""

import itertools

import pytest

from calc import CALCULATORS, EDITIONS, conductor_name
from calc.identify.governing_rule import CALCULATOR_WORDS
from calc.identify.name_fields import FORM_WORDS, PART_WORDS, PLACE_WORDS
from tests.cases.read import cases, named

GENERATORS = [
    {"generator_neutral": neutral, "generator_device": device}
    for neutral in ("switched", "unswitched")
    for device in ("yes", "no")
]
PLACES = [{"where": where} for where in PLACE_WORDS if where != "generator"]
PLACES += [{"where": "generator", **generator} for generator in GENERATORS]
PAIRS = list(itertools.combinations_with_replacement(PART_WORDS, 2))


def name(place: dict, one: str, other: str, edition: str = "2023", form: str = "wire"):
    return conductor_name(edition=edition, **place, from_part=one, to_part=other, form=form)


def words(result) -> list[str]:
    return [str(each) for each in (*result.trace.notes, *result.trace.warnings)]


@pytest.mark.parametrize("pair", cases("identify/conductor_name"), ids=named)
def test_worked_cases_give_the_name_of_their_source(pair):
    edition, case = pair
    result = conductor_name(edition=edition, **case["inputs"])
    if "name" in case:
        assert result.answer_code == result.answer.values["name"] == case["name"], case["reason"]
    else:
        assert result.outcome == "not_covered"
        assert case["not_covered"] in str(result.not_covered.look_in), case["reason"]


def test_every_worked_case_names_its_source_and_mark():
    for _, case in cases("identify/conductor_name"):
        assert case["source"] and case["mark"] in ("published", "memory")


@pytest.mark.parametrize("place", PLACES, ids=lambda place: "-".join(place.values()))
def test_swapping_the_ends_never_changes_anything(place):
    for (one, other), edition in itertools.product(PAIRS, EDITIONS):
        there, back = name(place, one, other, edition), name(place, other, one, edition)
        assert there.answer_code == back.answer_code, (one, other, edition)
        assert words(there) == words(back)
        if there.answer:
            assert there.answer.values == back.answer.values
            assert str(there.answer.detail) == str(back.answer.detail)
        else:
            assert str(there.not_covered.why) == str(back.not_covered.why)


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("place", PLACES, ids=lambda place: "-".join(place.values()))
def test_every_combination_ends_in_a_name_or_in_why_not_with_a_section_to_look_in(place, edition):
    for (one, other), form in itertools.product(PAIRS, FORM_WORDS):
        result = name(place, one, other, edition, form)
        if result.answer:
            near = [line for line in words(result) if line.startswith("Not “")]
            assert near, (one, other)
            assert f"Not “{result.answer.headline}”" not in " ".join(near)
        else:
            assert result.outcome == "not_covered"
            assert str(result.not_covered.why) and "(250." in str(result.not_covered.look_in)


@pytest.mark.parametrize("place", PLACES, ids=lambda place: "-".join(place.values()))
def test_the_form_never_changes_the_name(place):
    for one, other in PAIRS:
        assert len({name(place, one, other, form=form).answer_code for form in FORM_WORDS}) == 1, (one, other)


@pytest.mark.parametrize("place", PLACES, ids=lambda place: "-".join(place.values()))
def test_the_edition_never_changes_the_name(place):
    for one, other in PAIRS:
        assert len({name(place, one, other, edition).answer_code for edition in EDITIONS}) == 1, (one, other)


def test_a_neutral_is_joined_to_metal_or_earth_only_at_a_service_or_a_derived_source():
    """250.24(A)(5) or (B), 250.30(A), 250.32(B)(1), 250.142: everywhere else the answer is that nothing belongs."""
    may = {"ahead-of-service-disconnect", "service-disconnect", "transformer-secondary"}
    for place, neutral, other in itertools.product(PLACES, ("neutral", "source-neutral"), PART_WORDS):
        if other in ("neutral", "source-neutral", "communications") or place["where"] in may:
            continue
        if place.get("generator_neutral") == "switched":
            continue
        result = name(place, neutral, other)
        assert result.answer_code in ("no-conductor", "not-covered"), (place, neutral, other)
        if result.answer_code == "not-covered":
            assert other == "receptacle" and place.get("generator_device") == "no"


def test_without_a_device_ahead_nothing_goes_by_a_device():
    """A jumper ahead of the first device goes by the conductors; gas piping alone goes by the circuit near it."""
    ahead = [{"where": "ahead-of-service-disconnect"}, {"where": "transformer-secondary"}]
    ahead += [{"where": "generator", **generator} for generator in GENERATORS if generator["generator_device"] == "no"]
    for place, (one, other) in itertools.product(ahead, PAIRS):
        result = name(place, one, other)
        if result.answer and result.answer.values["sized_by"] == "device":
            assert "other-piping" in (one, other)
        assert result.answer_code not in ("equipment-grounding-conductor", "equipment-bonding-jumper")


def test_past_a_device_nothing_is_a_jumper_of_the_supply_side():
    for where in ("past-device", "separate-building", "transformer-primary"):
        for one, other in PAIRS:
            said = name({"where": where}, one, other).answer_code
            assert said not in ("main-bonding-jumper", "system-bonding-jumper", "supply-side-bonding-jumper")


def test_no_conductor_names_objectionable_current_and_the_section_of_its_edition():
    for edition, section in (("2017", "250.24(A)(5)"), ("2020", "250.24(A)(5)"), ("2023", "250.24(B)")):
        result = name({"where": "past-device"}, "neutral", "enclosure", edition)
        assert str(result.answer.headline) == "No conductor belongs here"
        assert section in str(result.answer.detail)
        assert any("250.6(A)" in line for line in words(result))
        assert any("250.142(B) Exceptions No. 1 and No. 2" in line for line in words(result))


def test_a_joint_that_does_not_belong_comes_out_dead_and_after_the_neutral_is_seen_whole():
    for where, told in (("past-device", True), ("service-disconnect", False)):
        said = " ".join(words(name({"where": where}, "neutral", "enclosure")))
        assert ("neutral and the grounding path are intact" in said and "test for absence of voltage" in said) == told


def test_the_supply_side_jumper_is_defined_elsewhere_in_2017():
    for edition, section in (("2017", "250.2;"), ("2020", "Article 100;"), ("2023", "Article 100;")):
        notes = words(name({"where": "transformer-secondary"}, "enclosure", "enclosure", edition))
        assert f"Defined in {section} its rule is 250.30(A)(2)." in notes


def test_a_generator_asks_for_its_neutral_and_its_device():
    lacking = conductor_name(edition="2023", where="generator", from_part="enclosure", to_part="enclosure")
    assert [each.field for each in lacking.fix] == ["generator_neutral"]
    half = conductor_name(
        edition="2023", where="generator", from_part="enclosure", to_part="enclosure", generator_neutral="switched"
    )
    assert [(each.field, str(each.words)) for each in half.fix] == [
        ("generator_device", "At a generator, choose yes or no.")
    ]


def test_away_from_a_generator_its_fields_change_nothing():
    for place, generator in itertools.product(PLACES[:6], GENERATORS):
        with_generator = conductor_name(edition="2023", **place, **generator, from_part="neutral", to_part="enclosure")
        assert with_generator.answer_code == name(place, "neutral", "enclosure").answer_code


def test_a_form_that_will_not_do_is_warned_of():
    service = {"where": "service-disconnect"}
    assert not name(service, "neutral", "enclosure", form="screw").trace.warnings
    assert any("250.28(B)" in line for line in words(name(service, "neutral", "enclosure", form="screw")))
    for one, other, form, section in (
        ("neutral", "enclosure", "raceway", "250.28(A)"),
        ("neutral", "electrode", "raceway", "250.62"),
        ("neutral", "neutral", "raceway", "Article 100"),
        ("electrode", "electrode", "raceway", "250.102(A)"),
        ("neutral", "electrode", "screw", "only parts that touch"),
    ):
        warned = [str(line) for line in name(service, one, other, form=form).trace.warnings]
        assert any(section in line for line in warned), (one, other, form)


def test_a_raceway_that_is_the_path_is_sent_to_its_own_rule():
    derived = words(name({"where": "transformer-secondary"}, "enclosure", "enclosure", form="raceway"))
    assert any("flexible one may not (250.30(A)(2))" in line for line in derived)
    load = words(name({"where": "past-device"}, "enclosure", "equipment", "2020", "raceway"))
    assert any("(250.118)" in line for line in load)
    generator = {"where": "generator", "generator_neutral": "unswitched", "generator_device": "no"}
    assert name(generator, "enclosure", "enclosure", form="raceway").trace.warnings


def test_a_wire_from_the_neutral_bar_to_equipment_is_warned_of():
    result = name({"where": "service-disconnect"}, "neutral", "equipment")
    assert result.answer_code == "equipment-grounding-conductor"
    assert any("250.142(A)" in str(line) for line in result.trace.warnings)


def test_each_name_says_what_sizes_it():
    """Table 250.102(C)(1): conductors. 250.102(D), 250.122: device. 250.53(C), 250.66: electrode. 250.104(A)(3)."""
    service, load = {"where": "service-disconnect"}, {"where": "past-device"}
    for place, one, other, edition, sized_by, calculator in (
        (service, "neutral", "enclosure", "2023", "conductors", "main-bonding-jumper"),
        (service, "enclosure", "raceway", "2023", "conductors", "supply-side-bonding-jumper"),
        (service, "neutral", "electrode", "2023", "electrode-table", "grounding-electrode-conductor"),
        (service, "electrode", "electrode", "2023", "electrode-table", "grounding-electrode-conductor"),
        (service, "neutral", "neutral", "2023", "conductors", "grounded-conductor"),
        (service, "enclosure", "water-pipe", "2023", "conductors", "water-pipe-bonding"),
        (service, "enclosure", "other-piping", "2023", "device", "water-pipe-bonding"),
        (service, "enclosure", "structural-metal", "2023", "conductors", "structural-metal-bonding"),
        (service, "enclosure", "communications", "2023", "communications-article", None),
        (service, "water-pipe", "water-pipe", "2023", "conductor-on-the-pipe", None),
        ({"where": "separate-building"}, "enclosure", "water-pipe", "2017", "conductors", "water-pipe-bonding"),
        ({"where": "separate-building"}, "enclosure", "water-pipe", "2020", "device", "water-pipe-bonding"),
        ({"where": "transformer-secondary"}, "neutral", "enclosure", "2023", "conductors", "system-bonding-jumper"),
        (load, "enclosure", "water-pipe", "2023", "device", "water-pipe-bonding"),
        (load, "raceway", "enclosure", "2023", "device", "equipment-bonding-jumper"),
        (load, "enclosure", "equipment", "2023", "device", "equipment-grounding-conductor"),
        (load, "neutral", "neutral", "2023", "load", None),
        (load, "neutral", "enclosure", "2023", "nothing", None),
    ):
        values = name(place, one, other, edition).answer.values
        assert (values["sized_by"], values["calculator"]) == (sized_by, calculator), (place, one, other, edition)


# For each name: where, what it joins, the inputs of its calculator, and a change of what is said to size it. By hand:
# each table has another row there.
SERVICE, LOAD, DERIVED = ({"where": where} for where in ("service-disconnect", "past-device", "transformer-secondary"))
HOT, DEVICE = {"conductor": ("3/0", "500kcmil")}, {"device": ("20", "400")}
SIZED = [
    (SERVICE, "neutral", "enclosure", {}, HOT),
    (DERIVED, "neutral", "enclosure", {}, HOT),
    (SERVICE, "enclosure", "raceway", {}, HOT),
    (SERVICE, "neutral", "neutral", {}, HOT),
    (SERVICE, "neutral", "neutral", {"conductor": "3/0"}, {"load_size": ("4", "2/0")}),
    (SERVICE, "neutral", "electrode", {}, HOT),
    (SERVICE, "neutral", "electrode", {"conductor": "500kcmil"}, {"electrode": ("rod", "water-pipe")}),
    (SERVICE, "electrode", "electrode", {"conductor": "500kcmil"}, {"electrode": ("rod", "water-pipe")}),
    (SERVICE, "enclosure", "water-pipe", {}, HOT),
    (SERVICE, "enclosure", "structural-metal", {}, HOT),
    (SERVICE, "enclosure", "other-piping", {"piping": "other-metal"}, DEVICE),
    (DERIVED, "enclosure", "water-pipe", {"piping": "water-derived-system"}, HOT),
    (LOAD, "enclosure", "water-pipe", {"piping": "water-isolated-unit"}, DEVICE),
    (LOAD, "enclosure", "equipment", {}, DEVICE),
    (LOAD, "receptacle", "box", {"joins": "receptacle"}, DEVICE),
    (LOAD, "raceway", "box", {}, DEVICE),
]
SAYS = {"conductor": "conductors", "device": "overcurrent device", "electrode": "electrode", "load_size": "load"}


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize(("place", "one", "other", "given", "changed"), SIZED)
def test_what_is_said_to_size_a_part_changes_its_size_in_its_calculator(place, one, other, given, changed, edition):
    found = name(place, one, other, edition)
    calculator = CALCULATORS[found.answer.values["calculator"]]
    ((field, (small, large)),) = changed.items()
    sizes = [calculator(edition=edition, **(given | {field: value})) for value in (small, large)]
    assert [each.outcome for each in sizes] == ["answer", "answer"]
    assert sizes[0].answer_code != sizes[1].answer_code
    assert any(SAYS[field] in line and "size" in line for line in words(found)), words(found)


def test_every_calculator_it_names_is_one_of_the_handbook():
    assert set(CALCULATOR_WORDS) <= set(CALCULATORS)


def test_unknown_words_are_to_be_mended():
    result = conductor_name(edition="2023", where="attic", from_part="neutral", to_part="cat", form="wire")
    assert [each.field for each in result.fix] == ["where", "to_part"]
    assert [each.field for each in conductor_name(edition="2023").fix] == ["where", "from_part", "to_part"]


@pytest.mark.parametrize("edition", ["2017", "2020", "2023"])
def test_an_ordinary_answer_of_an_edition_that_was_read_warns_of_nothing(edition):
    for place in PLACES:
        for one, other in PAIRS:
            warned = name(place, one, other, edition).trace.warnings
            assert all("Not verified" not in str(line) for line in warned), (place, one, other)
