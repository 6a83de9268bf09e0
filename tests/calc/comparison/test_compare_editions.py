"""One case in two editions: the differences named are those of the texts, and no other."""

from urllib.parse import quote

import pytest

from calc import permalink
from calc.address import page_address
from calc.comparison.compare_editions import compare_editions
from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from calc.rulebook import rule
from tests.cases.read import cases, named


def rows(result):
    return [{key: str(words) for key, words in row.cells.items()} for row in result.answer.table.rows]


@pytest.mark.parametrize("pair", cases("comparison/compare_editions"), ids=named)
def test_a_worked_case_names_what_changed(pair):
    edition, case = pair
    result = compare_editions(edition=edition, **case["inputs"])
    assert result.answer.values["same"] is case["same"]
    if case["sections"]:
        one, other = case["sections"]
        assert any(one in row["one"] and other in row["other"] for row in rows(result))


@pytest.mark.parametrize("slug", sorted(set(CALCULATORS) - {"compare-editions"}))
def test_each_side_is_what_the_calculator_itself_answers(slug):
    inputs = {name: text for name, text in CALCULATORS[slug].example.items() if name != "edition"}
    case = slug + "?" + "&".join(f"{name}={text}" for name, text in inputs.items())
    for edition in EDITIONS:
        for against in set(EDITIONS) - {edition}:
            values = compare_editions(edition=edition, against=against, case=case).answer.values
            one, other = (CALCULATORS[slug](edition=each, **inputs) for each in (edition, against))
            assert (values["one"], values["other"]) == (one.answer_code, other.answer_code)
            assert values["same"] == (one.answer_code == other.answer_code)


def test_turning_the_editions_round_turns_the_columns_round():
    case = "water-pipe-bonding?conductor=500kcmil&sets=4"
    there = compare_editions(edition="2023", against="2017", case=case)
    back = compare_editions(edition="2017", against="2023", case=case)
    turned = [{"what": row["what"], "one": row["other"], "other": row["one"]} for row in rows(back)]
    assert rows(there) == turned


def test_a_section_that_moved_is_named_with_both_places():
    result = compare_editions(edition="2023", against="2017", case="main-bonding-jumper?conductor=3/0")
    key = "jumpers/main_bonding_jumper_required"
    moved = {"what": str(rule(key, "2023").title), "one": "250.24(C)", "other": "250.24(B)"}
    assert moved in rows(result)


def test_what_stayed_is_not_in_the_list():
    result = compare_editions(edition="2023", against="2020", case="main-bonding-jumper?conductor=3/0")
    assert not any("Chapter 9" in row["one"] for row in rows(result))


def test_a_case_that_is_not_covered_says_so_in_both_columns():
    case = "main-bonding-jumper?conductor=3/0&place=feeder-panel"
    first = rows(compare_editions(edition="2023", against="2017", case=case))[0]
    assert first["one"].startswith("Not covered.") and "250.24(B)" in first["one"]
    assert first["other"].startswith("Not covered.") and "250.24(A)(5)" in first["other"]


def test_an_edition_from_memory_is_warned_of_on_either_side(marked):
    case = "main-bonding-jumper?conductor=3/0"
    marked("jumpers/supply_side_size", "2026", "memory")
    for edition, against in (("2026", "2023"), ("2023", "2026")):
        warnings = map(str, compare_editions(edition=edition, against=against, case=case).trace.warnings)
        assert any(words.startswith("Not verified for the 2026 edition") for words in warnings)


LINK = "https://example.org/b/calculators/main-bonding-jumper.html?edition=2017&conductor=3%2F0&said=1-copper#working"


def test_a_whole_link_is_read_with_its_edition_and_its_answer_is_left_aside():
    for edition, against in (("2017", "2020"), ("2023", "2017")):
        result = compare_editions(edition=edition, against=against, case=LINK)
        assert result.inputs["case"] == "main-bonding-jumper?edition=2017&conductor=3/0"
        assert str(result.answer.in_one_line) == f"Same answer in the {edition} and {against} editions"
        again = compare_editions.run(permalink.read(permalink.write(result).partition("?")[2]))
        assert again.answer == result.answer


def test_a_link_of_a_third_edition_is_never_called_the_same():
    """Four 500 kcmil: 250 kcmil in 2017, at most 3/0 from 2020 on (250.104(A)(1)): 2023 and 2020 agree without it."""
    link = "calculators/water-pipe-bonding.html?edition=2017&conductor=500kcmil&sets=4&said=250kcmil-copper"
    (fix,) = compare_editions(edition="2023", against="2020", case=link).fix
    assert fix.field == "against" and "The link is for the 2017 edition" in str(fix.words)
    assert compare_editions(edition="2023", against="2017", case=link).answer.values["same"] is False
    without = link.replace("edition=2017&", "")
    assert compare_editions(edition="2023", against="2020", case=without).answer.values["same"] is True


def test_a_link_of_two_editions_or_of_none_that_there_is_is_not_taken():
    for query in ("edition=2017&edition=2020", "edition=1999"):
        case = f"main-bonding-jumper?{query}&conductor=3/0"
        assert [each.field for each in compare_editions(edition="2017", against="2020", case=case).fix] == ["case"]


@pytest.mark.parametrize(
    ("case", "says"),
    [
        ("", "Paste a link"),
        ("nothing", "Paste a link"),
        ("compare-editions?case=main-bonding-jumper", "Paste a link"),
        ("no-such-calculator?conductor=3/0", "Paste a link"),
        ("main-bonding-jumper", "Enter a size"),
        ("main-bonding-jumper?conductor=5/0", "Enter a size"),
        ("main-bonding-jumper?conductor=3/0&conductor=3/0", "twice"),
        ("main-bonding-jumper?conductor%3D3/0%26metal=copper", "Enter a size"),
    ],
)
def test_a_link_that_does_not_compute_says_why(case, says):
    result = compare_editions(edition="2023", against="2020", case=case)
    assert [each.field for each in result.fix] == ["case"] and says in str(result.fix[0].words)


def test_the_same_edition_twice_is_to_be_fixed():
    result = compare_editions(edition="2020", against="2020", case="main-bonding-jumper?conductor=3/0")
    assert [each.field for each in result.fix] == ["against"]


def test_a_link_that_grows_too_long_for_a_link_of_its_own_is_not_taken():
    spaces = "+" * 490  # each is written as %20
    long = f"main-bonding-jumper?conductor=3/0{spaces}&sets={spaces}1"
    assert len(long) < 1100
    assert [each.field for each in compare_editions(edition="2023", against="2017", case=long).fix] == ["case"]


def test_the_link_of_the_longest_list_is_read_back():
    case = (
        "service-schedule?conductor=1000kcmil&sets=8&raceways=8&raceway=nonmetallic&conductor_metal=aluminum"
        "&metal=copper-clad-aluminum&electrodes=water-pipe,structural-metal,concrete-encased,ring,rod,pipe,plate,other"
        "&metal_parts=water-pipe,structural-metal,other-metal&disconnects=1000,1000,1000,1000,1000,1000"
        "&piping_device=1000&ring=250"
    )
    result = compare_editions(edition="2017", against="2020", case=case)
    assert len(result.answer_code) > 1000
    again = compare_editions.run(permalink.read(permalink.write(result).partition("?")[2]))
    assert again.answer == result.answer and again.linked_answer == result.answer_code


def test_the_longest_link_of_the_handbook_can_be_compared():
    distances = ",".join(f"{50 + each}.37" for each in range(50)) + " m"
    readings = ",".join(f"31.{10 + each}5" for each in range(50))
    measured = CALCULATORS["measured-electrode"]
    typed = {**measured.example, "probe": "120 m", "distances": distances, "readings": readings}
    result = measured.run(typed.items())
    address = f"https://example.org/bonding/handbook/{page_address(permalink.write(result))}"
    assert result.outcome == "answer" and len(permalink.case(result)) > 1000
    for case in (address, quote(address, safe=":/?=&"), permalink.case(result)):
        assert compare_editions(edition="2023", against="2020", case=case).outcome == "answer"


def test_the_case_is_shown_in_the_words_of_its_form():
    result = compare_editions(edition="2023", against="2020", case="main-bonding-jumper?conductor=3/0&sets=2")
    inputs = "(Largest ungrounded (hot) conductor: 3/0 AWG; Sets in parallel: 2)"
    assert f"Link to an answer: Main bonding jumper {inputs}" in (
        result.entered
    )


def test_rows_of_a_table_that_the_case_does_not_use_are_not_listed():
    """Table 250.122 changed at 5000 A and 6000 A from 2017 to 2020; a 60 A device has the same size in both."""
    result = compare_editions(edition="2020", against="2017", case="equipment-grounding-conductor?device=60A")
    assert not any("5000" in row["one"] for row in rows(result))
    changed = compare_editions(
        edition="2020", against="2017", case="equipment-grounding-conductor?device=5000A&metal=aluminum"
    )
    assert any("5000" in row["one"] for row in rows(changed))
