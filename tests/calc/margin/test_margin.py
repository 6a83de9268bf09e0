"""The margin of an answer: by hand from the tables, then against brute force, which finds no smaller change."""

import random

import pytest

from calc import (
    buried_metal_elbow,
    device_clearing,
    equipment_bonding_jumper,
    equipment_grounding_conductor,
    grounding_electrode_conductor,
    jumper_withstand,
    knockouts_over_250_volts,
    longest_return_path,
    main_bonding_jumper,
)
from calc.calculator import Result
from calc.conductors.area import area, listed_sizes
from calc.editions import EDITIONS
from calc.json_output import result_to_dict
from calc.margin.rows import margins
from calc.margin.search import DOWN, UP, Turn
from calc.registry import CALCULATORS
from calc.written import plain_number
from site_assets.render.answer import result_html
from tests.calc.strategies import texts

BY_CONDUCTOR = [slug for slug, each in CALCULATORS.items() if each.margin and "conductor" in each.margin.fields]
BY_DEVICE = ("equipment-grounding-conductor", "equipment-bonding-jumper", "water-pipe-bonding", "buried-metal-elbow")
HALVED = {
    "ground-fault-loop": ("length",),
    "device-clearing": ("fault_current",),
    "longest-return-path": ("length",),
    "jumper-withstand": ("fault_current", "clearing_time"),
    "buried-metal-elbow": ("cover",),
    "knockouts-over-250-volts": ("voltage_to_ground",),
    "raceway-as-grounding-path": ("device", "length"),
    "earth-only-return": ("electrode_ohm", "source_ohm"),
    "bond-measurement": ("reading",),
    "clamp-reading": ("ampere", "empty", "digit"),
    "shock-limits": ("voltage", "time"),
}
METALS = ("copper", "aluminum")


def turns(calculator, **inputs) -> dict[tuple[str, int], tuple[object, bool, str]]:
    """Return where each field turns a case, up and down: the place, whether it turns there itself, the other answer."""
    result = calculator(**({"edition": "2023"} | inputs))
    return {(each.field if not each.area else "area", each.direction): place(each) for each in result.margin}


def place(turn: Turn) -> tuple[object, bool, str]:
    """Return where a turn is, whether that itself turns, and to what."""
    return turn.turns_at, turn.included, turn.becomes


def code(result: Result) -> str:
    """Return what a margin compares."""
    named = result.calculator.margin.verdict
    return str(result.answer.values[named]) if named and result.answer else result.answer_code


def test_two_3_0_are_335_600_cmil_in_the_row_through_350_kcmil():
    # Table 250.102(C)(1): over 3/0 (167,800 cmil) through 350 kcmil 2 AWG, through 600 kcmil 1/0;
    # 2/0 or 3/0 alone 4 AWG
    found = turns(main_bonding_jumper, conductor="3/0", sets="2")
    assert found["area", UP] == (350_000, False, "1/0-copper")
    assert found["area", DOWN] == (167_800, True, "4-copper")
    assert found["conductor", UP] == ("4/0", True, "1/0-copper")  # 423,200 cmil
    assert found["conductor", DOWN] == ("1", True, "4-copper")  # 167,380 cmil; 1/0 twice is 211,200
    assert found["sets", UP] == (3, True, "1/0-copper") and found["sets", DOWN] == (1, True, "4-copper")


def rows_of(result: Result) -> list[tuple[str, str, bool]]:
    """Return the rows around an answer: for what, the answer, and whether it is the case entered."""
    return [(str(row.inputs), str(row.answer), row.entered) for row in margins(result).rows]


def test_the_rows_for_readers_stand_in_rising_order_around_the_case_entered():
    result = main_bonding_jumper(edition="2023", conductor="3/0", sets="2")
    assert rows_of(result) == [
        ("167.8 kcmil total or less", "4 AWG", False),
        ("3/0 AWG, 335.6 kcmil total", "2 AWG", True),
        ("over 350 kcmil total", "1/0 AWG", False),
    ]
    html = result_html(result).replace('<span class="whole">', "").replace("</span>", "")
    assert all(f"{inputs}</th><td>{answer}</td>" in html for inputs, answer, _ in rows_of(result))
    assert html.count('<tr class="here">') == 1 and "Rows above and below" in html


def test_the_gauge_shows_how_far_the_area_is_through_its_row_and_warns_of_rounding_up_near_its_end():
    # (335,600 - 167,800) / (350,000 - 167,800) = 0.921
    found = margins(main_bonding_jumper(edition="2023", conductor="3/0", sets="2"))
    assert found.gauge.share == pytest.approx(0.921, abs=0.0005)
    assert str(found.close) == "335.6 kcmil. The next row begins above 350 kcmil. Do not round it up."
    # (211,600 - 167,800) / (350,000 - 167,800) = 0.24
    low = margins(main_bonding_jumper(edition="2023", conductor="4/0"))
    assert low.gauge.share == pytest.approx(0.24, abs=0.0005) and low.close is None
    last = margins(main_bonding_jumper(edition="2023", conductor="350kcmil"))
    assert str(last.close) == "350 kcmil is the last of its row. The next row begins above it."


def test_sizes_and_counts_have_rows_and_no_gauge():
    beyond = margins(main_bonding_jumper(edition="2023", conductor="400", sets="3"))
    assert beyond.gauge is None and beyond.close is None and len(beyond.rows) == 3


def test_above_the_end_of_the_table_the_next_conductor_counts_and_below_it_the_row():
    # 12.5 % of 3 x 400 kcmil is 150,000 cmil: 3/0. Of 3 x 500 kcmil 187,500: 4/0. Through 1,100 kcmil: 2/0.
    found = turns(main_bonding_jumper, conductor="400", sets="3")
    assert found["conductor", UP] == ("500kcmil", True, "4/0-copper") and ("area", UP) not in found
    assert found["area", DOWN] == (1_100_000, True, "2/0-copper")


@pytest.mark.parametrize(
    ("device", "up", "down"),
    [(100, (100, False, "6-copper"), (60, True, "10-copper")), (101, (200, False, "4-copper"), (100, True, "8-copper")),
     (60, (60, False, "8-copper"), (20, True, "12-copper")),
     (6000, (6000, False, "not-covered"), (5000, True, "700kcmil-copper"))],
)  # fmt: skip
def test_a_device_turns_the_answer_at_the_ends_of_its_row(device, up, down):
    # Table 250.122: through 20 A 12 AWG, 60 A 10, 100 A 8, 200 A 6, 300 A 4; 5000 A 700 kcmil, 6000 A 800, the end
    found = turns(equipment_grounding_conductor, device=str(device))
    assert (found["device", UP], found["device", DOWN]) == (up, down)


def test_a_device_on_a_common_jumper_turns_it_only_above_the_largest():
    found = turns(equipment_bonding_jumper, device="100", other_devices="225,400")
    assert found == {("device", UP): (400, False, "2-copper")}  # through 400 A 3 AWG, through 500 A 2 AWG


def test_a_wire_to_a_rod_turns_only_where_the_table_asks_for_less():
    # 250.66(A): 6 AWG at most; Table 250.66: through 2 AWG (66,360 cmil) 8 AWG
    found = turns(grounding_electrode_conductor, conductor="500", electrode="rod")
    assert ("conductor", UP) not in found and found["conductor", DOWN] == ("2", True, "8-copper")


def test_limits_that_the_code_states_as_amounts_are_found_exactly():
    assert turns(buried_metal_elbow, circuit="service", cover="10in", conductor="3/0")["cover", UP] == (
        18,
        True,
        "no-bond",
    )
    assert turns(buried_metal_elbow, circuit="service", cover="30in", conductor="3/0")["cover", DOWN][:2] == (18, False)
    entry = {"knockout": "rings", "raceway": "rigid-metal-conduit", "fitting": "two-locknuts"}
    assert turns(knockouts_over_250_volts, voltage_to_ground="277", **entry)["voltage_to_ground", DOWN][0] == 250
    assert turns(knockouts_over_250_volts, voltage_to_ground="120", **entry)["voltage_to_ground", UP][:2] == (
        250,
        False,
    )


def test_a_jumper_survives_up_to_the_current_of_its_formula():
    # ICEA P-32-382: (I / 41,740)^2 * 1 s = 0.0297 * log10((150 + 234) / (75 + 234)), so I = 2,210 A
    case = {"clearing_time": "1 s", "size": "4", "x_over_r": "0", "start_celsius": "75"}
    at, _, becomes = turns(jumper_withstand, fault_current="2000", **case)["fault_current", UP]
    assert at == pytest.approx(2210, rel=1e-3) and becomes == "too-small"
    at, _, becomes = turns(jumper_withstand, fault_current="3000", **case)["fault_current", DOWN]
    assert at == pytest.approx(2210, rel=1e-3) and becomes == "survives"


def test_a_run_is_within_up_to_the_shortest_length():
    case = {"system": "120/240", "device": "20", "conductor": "12", "return_conductor": "12"}
    shortest = longest_return_path(edition="2023", **case).answer.values["shortest_ft"]
    assert turns(longest_return_path, length="50 ft", **case)["length", UP] == (shortest, False, "not-sure")


def test_an_answer_that_nothing_turns_has_no_margin_and_no_line():
    entry = knockouts_over_250_volts(edition="2023", place="service", knockout="rings", raceway="rigid-metal-conduit",
                                     fitting="bonding-bushing")  # fmt: skip
    assert entry.margin == () and margins(entry) is None
    assert main_bonding_jumper(conductor="no size").margin == ()


def test_what_was_found_on_site_has_no_part_in_the_margin():
    case = {"edition": "2023", "conductor": "3/0"}
    assert main_bonding_jumper(**case).margin == main_bonding_jumper(**case, found="8 copper").margin


def test_the_margin_is_in_the_json_of_the_command_line_alone():
    result = main_bonding_jumper(edition="2023", conductor="3/0")
    first, *_ = result_to_dict(result, margin=True)["margin"]
    assert first == {"field": "conductor", "unit": "size", "value": "3/0", "turns_at": "4/0", "direction": "up",
                     "included": True, "becomes": "2-copper"}  # fmt: skip
    assert "margin" not in result_to_dict(result)


def is_at_the_nearest(result: Result, field: str, domain: list[str], value: str) -> None:
    """Assert that the turns of a field are the nearest values of its domain with another answer, both ways."""
    found = {each.direction: str(each.turns_at) for each in result.margin if each.field == field and not each.area}
    typed = {name: value for name, value in result.inputs.items() if value is not None}
    for direction, others in ((UP, domain[domain.index(value) + 1 :]), (DOWN, domain[: domain.index(value)][::-1])):
        ends = ((each, result.calculator(edition=result.edition, **typed | {field: each})) for each in others)
        nearest = next((each for each, end in ends if end.answer and end.answer_code != result.answer_code), None)
        assert found.get(direction) == nearest, (result.inputs, field, direction)


@pytest.mark.slices(40)
def test_no_other_conductor_or_number_of_sets_turns_an_answer_sooner(slice_number):
    chance = random.Random(slice_number)
    sizes, sets = list(listed_sizes("2023")), [str(number) for number in range(1, 31)]
    for slug in BY_CONDUCTOR:
        calculator = CALCULATORS[slug]
        typed = {"conductor": chance.choice(sizes), "sets": chance.choice(sets[:6]), "metal": chance.choice(METALS),
                 "conductor_metal": chance.choice(METALS)}  # fmt: skip
        result = calculator(edition=chance.choice(EDITIONS), **({"cover": "10in"} if "elbow" in slug else {}), **typed)
        if result.answer and "size" in result.answer.values:
            is_at_the_nearest(result, "conductor", sizes, typed["conductor"])
            is_at_the_nearest(result, "sets", sets, typed["sets"])


@pytest.mark.slices(40)
def test_all_conductors_within_the_area_of_the_row_have_one_answer_and_those_past_it_another(slice_number):
    chance = random.Random(slice_number)
    sizes = listed_sizes("2023")
    seen = 0
    for slug in ("main-bonding-jumper", "system-bonding-jumper", "grounding-electrode-conductor"):
        for _ in range(3):
            typed = {"conductor": chance.choice(list(sizes)[5:]), "sets": chance.choice("1234"), "edition": "2023"}
            result = CALCULATORS[slug](**typed)
            for turn in result.margin:
                if turn.area:
                    seen += 1
                    is_the_end_of_the_row(result, turn, int(typed["sets"]), sizes)
    assert seen > 3


SCHEDULES = [
    ("service-schedule", {"electrodes": "water-pipe,rod", "metal_parts": "water-pipe,other-metal",
                          "piping_device": "60"}, ("piping_device",)),
    ("transformer-schedule", {"electrode": "water-pipe", "metal_parts": "other-metal", "kva": "75", "device": "225",
                              "piping_device": "60", "primary_device": "100"},
     ("device", "primary_device", "piping_device")),
    ("generator-schedule", {"neutral": "switched", "breaker": "yes", "device": "200", "electrodes": "rod"},
     ("device",)),
    ("separate-building-schedule", {"electrodes": "rod", "device": "200", "minimum_conductor": "14"}, ("device",)),
]  # fmt: skip


@pytest.mark.slices(60)
def test_no_other_conductor_or_device_changes_a_row_of_a_schedule_sooner(slice_number):
    chance = random.Random(slice_number)
    sizes = list(listed_sizes("2023"))
    slug, typed, devices = SCHEDULES[slice_number % len(SCHEDULES)]
    edition = chance.choice(EDITIONS)
    conductor = {"conductor": chance.choice(sizes[6:30])}
    result = CALCULATORS[slug](edition=edition, **typed, **conductor)
    if result.answer:
        is_at_the_nearest(result, "conductor", sizes, conductor["conductor"])
        for device in devices:
            nothing_turns_within(result, device, 1, 6000, 8, 1e-6, chance)


def test_a_service_tells_how_many_rows_the_next_conductor_changes_and_the_first():
    # Table 250.102(C)(1), row 2/0 or 3/0 copper: 4 AWG; row 1 or 1/0: 6 AWG; over 3/0 through 350: 2 AWG
    result = CALCULATORS["service-schedule"](edition="2023", conductor="3/0", electrodes="rod")
    found = {(each.field, each.direction): each for each in result.margin}
    assert found["conductor", UP].turns_at == "4/0" and found["conductor", DOWN].turns_at == "1/0"
    above = rows_of(result)[-1]
    assert above[0] == "4/0 AWG or larger"
    assert above[1].startswith("3 rows change (first supply-side bonding jumper of each service raceway: 2 AWG")


def is_the_end_of_the_row(result: Result, turn: Turn, sets: int, sizes: dict[str, int]) -> None:
    """Assert that every listed conductor from the one entered to the end of the row keeps the answer, the next not."""
    assert turn.value == sets * area(result.inputs["conductor"], "2023")
    for label, cmil in sizes.items():
        within = turn.value <= sets * cmil <= turn.turns_at if turn.direction == UP else (
            turn.turns_at < sets * cmil <= turn.value)  # fmt: skip
        other = result.calculator(edition="2023", conductor=label, sets=sets)
        if within:
            assert other.answer_code == result.answer_code, (label, turn)
        elif other.answer and (cmil * sets > turn.turns_at) == (turn.direction == UP):
            assert other.answer_code != result.answer_code, (label, turn)


@pytest.mark.slices(40)
def test_no_other_device_turns_an_answer_sooner(slice_number):
    chance = random.Random(slice_number)
    for slug in BY_DEVICE:
        result = drawn(slug, chance, device=str(chance.choice((15, 20, 33, 50, 60, 100, 175, 250, 400, 800, 2500))))
        if result.answer and result.inputs["device"] is not None:
            nothing_turns_within(result, "device", 1, 6000, 12, 1e-6, chance)


@pytest.mark.slices(40)
def test_no_amount_within_the_margin_turns_an_answer_and_those_just_past_it_do(slice_number):
    chance = random.Random(slice_number)
    for slug, fields in list(HALVED.items())[slice_number % 3 :: 3]:
        wanted, tries = (1 if slug == "ground-fault-loop" else 2), 0
        while wanted > 0 and (tries := tries + 1) < 60:
            result = drawn(slug, chance)
            for field in fields:
                asked = result.calculator.fields[field]
                if result.answer and any(each.field == field for each in result.margin):
                    wanted -= 1
                    close = max(2 * result.calculator.margin.close, 1e-6)
                    points = 2 if slug == "ground-fault-loop" else 8
                    nothing_turns_within(result, field, asked.minimum, asked.maximum, points, close, chance)
        assert tries < 60, slug


def drawn(slug: str, chance: random.Random, **typed: str) -> Result:
    """Return the result of the example of a calculator with some of its fields changed at random."""
    calculator = CALCULATORS[slug]
    names = chance.sample([name for name in calculator.fields if name != "found"], 3)
    changed = {name: chance.choice(texts(slug, name)) for name in names}
    return calculator(**(dict(calculator.example) | changed | typed | {"edition": chance.choice(EDITIONS)}))


def nothing_turns_within(result, field, low, high, points, close, chance) -> None:
    """Assert that amounts up to a turn, or to the end where there is none, keep the answer, and just past it do not."""
    value = float(result.inputs[field])
    typed = {name: each for name, each in result.inputs.items() if each is not None}

    def at(amount: float) -> str:
        return code(result.calculator(edition=result.edition, **typed | {field: plain_number(amount)}))

    for direction, end in ((UP, high), (DOWN, low)):
        turn = next((each for each in result.margin if each.field == field and each.direction == direction), None)
        limit = float(turn.turns_at) if turn else float(end)
        for share in (chance.random() for _ in range(points)):
            inside = value + (limit - value) * share * (1 - 1e-9)
            assert at(inside) == code(result), (result.inputs, field, inside, turn)
        if turn:
            past = limit if turn.included else limit * (1 + direction * close)
            assert at(past) != code(result), (result.inputs, field, past, turn)


def test_a_device_clearing_turns_where_its_standard_does():
    # UL 489: a breaker opens at 135 % of its rating within an hour, 27 A for one of 20 A, and carries 20 A for good
    found = turns(device_clearing, device="20", fault_current="30")
    assert found["fault_current", DOWN][:2] == (27, False)
    assert turns(device_clearing, device="20", fault_current="25")["fault_current", UP] == (27, True, "slow")
    assert turns(device_clearing, device="20", fault_current="25")["fault_current", DOWN][:2] == (20, True)
