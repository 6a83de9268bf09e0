"""What holds for every calculator, whatever is entered."""

import json
import re
from functools import cache
from urllib.parse import urlencode

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import EDITIONS, permalink
from calc.conductors.area import area
from calc.conductors.written_beside import parted
from calc.field import LONGEST_ECHO, read_field, truncate
from calc.json_output import linked_answer, result_to_dict
from calc.link_fields import ANSWER_CODE_FIELD
from calc.registry import CALCULATORS
from tests.calc.strategies import AMPERE, HOSTILE, SIZES, inputs, kind_of, reads, spellings, texts

SLUGS = tuple(CALCULATORS)
NOTATIONS = ("size", "ampere", "length", "whole", "devices", "conductors", "several")
LONGEST_QUESTION = 160  # why a text is unclear, and what to write instead
MIN_ANSWERED = 0.15  # lists of unlike length, and plates that belong to no system, are mostly to be mended
OF_THE_CODE = re.compile(r"\d|Table|Chapter|Article")  # other standards and physics do not change with it
BROKEN = re.compile(r"[{}]|\bNone\b(?!: leave it out)|\d\.(?= (ft|A|in|kVA|V|cmil)\b)|  ")
ORDERED = {"size": SIZES, "ampere": AMPERE, "whole": tuple(str(number) for number in range(1, 31))}

every_calculator = pytest.mark.parametrize("slug", SLUGS)


def drawn(examples):
    """Return the settings of a test: the same `examples` on every machine."""
    return settings(max_examples=examples, derandomize=True, deadline=None, database=None)


def sentences(result):
    """Return every sentence that a result shows."""
    trace, answer, outside = result.trace, result.answer, result.not_covered
    shown = [step.words for step in trace.steps] + trace.notes + trace.warnings
    shown += [each.words for each in result.fix] + ([outside.why, outside.look_in] if outside else [])
    if answer:
        shown += [answer.name, answer.headline, answer.detail]
        if answer.table:
            shown += [
                *answer.table.headings.values(),
                *(cell for row in answer.table.rows for cell in row.cells.values()),
            ]
    return [str(words) for words in shown] + [step.numbers for step in trace.steps]


def opened(slug, link):
    """Return the result of a link, as a page reads it."""
    path, _, query = link.partition("?")
    assert path == slug
    return CALCULATORS[slug].run(permalink.read(query))


@cache
def named(kind):
    """Return every (slug, field) of a kind."""
    return tuple((slug, name) for slug in SLUGS for name in CALCULATORS[slug].fields if kind_of(slug, name) == kind)


@every_calculator
def test_a_run_ends_in_one_of_three_ways_with_words_and_json(slug):
    @drawn(60)
    @given(inputs(slug))
    def check(typed):
        result = CALCULATORS[slug](**typed)
        assert result.outcome in ("answer", "fix", "not_covered")
        assert (result.answer is not None) == (result.outcome == "answer")
        assert bool(result.fix) == (result.outcome == "fix")
        assert (result.not_covered is not None) == (result.outcome == "not_covered")
        for words in sentences(result):
            assert not BROKEN.search(words), words
        if result.answer:
            assert str(result.answer.headline).strip() and str(result.answer.detail).strip()
            assert read_field(ANSWER_CODE_FIELD, result.answer.answer_code) == result.answer.answer_code
            assert result.trace.citations or slug == "compare-editions"
        if result.not_covered:
            assert str(result.not_covered.why).strip() and str(result.not_covered.look_in).strip()
        shown = json.dumps(result_to_dict(result), allow_nan=False)
        assert shown == json.dumps(result_to_dict(CALCULATORS[slug](**typed)), allow_nan=False)

    check()


@every_calculator
def test_enough_of_the_inputs_drawn_are_answered(slug):
    ends = []

    @drawn(60)
    @given(inputs(slug))
    def check(typed):
        ends.append(CALCULATORS[slug](**typed).outcome)

    check()
    assert ends.count("answer") >= MIN_ANSWERED * len(ends)


@every_calculator
def test_a_link_gives_the_same_answer_again(slug):
    @drawn(60)
    @given(inputs(slug))
    def check(typed):
        result = CALCULATORS[slug](**typed)
        if result.outcome == "fix":
            return
        link = permalink.write(result)
        path, _, query = link.partition("?")
        for again in (opened(slug, link), opened(slug, f"{path}?{urlencode(permalink.read(query))}")):
            assert (again.edition, again.inputs, again.outcome) == (result.edition, result.inputs, result.outcome)
            assert again.answer == result.answer and again.linked_answer == result.answer_code
            assert linked_answer(again) is None and permalink.write(again) == link

    check()


@every_calculator
def test_inputs_as_they_were_read_are_read_alike(slug):
    @drawn(40)
    @given(inputs(slug))
    def check(typed):
        result = CALCULATORS[slug](**typed)
        if result.outcome != "fix":
            again = CALCULATORS[slug](edition=result.edition, **result.inputs)
            assert again.inputs == result.inputs and again.answer == result.answer

    check()


@every_calculator
def test_the_newest_edition_says_that_it_is_not_verified_wherever_no_text_on_it_states_a_section(slug):
    @drawn(40)
    @given(inputs(slug))
    def check(typed):
        result = CALCULATORS[slug](**(typed | {"edition": EDITIONS[-1]}))
        if result.outcome != "fix":
            begins = f"Not verified for the {EDITIONS[-1]} edition:"
            said = any(str(words).startswith(begins) for words in result.trace.warnings)
            cited = [each for each in result.trace.citations if OF_THE_CODE.match(each.section)]
            assert said or all(each.mark != "memory" for each in cited)

    check()


def read(asked, text):
    """Return what a field reads, None where it refuses; nothing but that reaches a calculator."""
    try:
        return read_field(asked, text)
    except ValueError:
        return None


@pytest.mark.parametrize("kind", NOTATIONS)
def test_how_a_value_is_written_changes_nothing(kind):
    for slug, name in named(kind):
        calculator = CALCULATORS[slug]
        for text in texts(slug, name):
            plain = read(calculator.fields[name], text)
            assert plain is not None, (slug, name, text)
            for other in spellings(kind, text):
                assert read(calculator.fields[name], other) == plain, (slug, name, text, other)


def test_the_usual_spellings_of_one_size_one_device_and_one_length_are_read_alike():
    one = CALCULATORS["main-bonding-jumper"]
    assert len({str(one(conductor=text).answer) for text in ("3/0", "000", "3/0 AWG", " 3/0awg ", "#3/0")}) == 1
    one = CALCULATORS["equipment-grounding-conductor"]
    assert len({str(one(device=text).answer) for text in ("200A", "200 A", "200", "0.2kA", " 200.0 ")}) == 1
    one = CALCULATORS["equipment-bonding-jumper"]
    lengths = ("6 ft", "72 in", "6", "1.8288 m", "6'", '72"')
    assert {one(device="100", routing="outside", length=text).inputs["length"] for text in lengths} == {6}


def parts(result):
    """Return the area in cmil of each part that a result sizes, by name and metal."""
    if not result.answer:
        return {}
    found = {}
    values, edition = result.answer.values, result.edition
    if values.get("area_cmil"):
        found["part", values["metal"]] = values["area_cmil"]
    for part, said in values.get("sizes", {}).items():
        written = re.fullmatch(r"(?:bond-)?([0-9/]+|[0-9]+kcmil)-([a-z-]+)", said)
        if written:
            found[part, written[2]] = area(written[1], edition)
    return found


# More of these never makes a part smaller; but a larger `minimum_conductor` never makes it larger, because the
# increase to repeat is installed over minimum. What may do either, by the rules themselves, and is not walked:
# - `raceways`: more of them leave fewer conductors in each, and the share of one raceway is what counts;
# - `other_devices`, `other_conductors`, `disconnects`: lists, swept in the tests of their own calculators;
# - `kva`, `length`, `cover`, `circuits`, `enclosures`: no part grows with their number.
LARGER_IS_MORE = ("conductor", "installed_conductor", "load_size", "ring", "device", "motor_current", "primary_device",
                  "piping_device", "sets")  # fmt: skip
BY_CIRCUIT = ("equipment-grounding-conductor", "equipment-bonding-jumper", "buried-metal-elbow")
HOT = ("installed_conductor", "minimum_conductor", "conductor")
SIZING = [slug for slug in SLUGS if parts(CALCULATORS[slug](**CALCULATORS[slug].example))]
WALKS = [
    (slug, name)
    for slug in SIZING
    for name in CALCULATORS[slug].fields
    if name in (*LARGER_IS_MORE, "minimum_conductor") and kind_of(slug, name) in ORDERED
]


@pytest.mark.parametrize(("slug", "name"), WALKS)
def test_a_larger_supply_never_gives_a_smaller_part(slug, name):
    calculator, compared = CALCULATORS[slug], []

    @drawn(20)
    @given(inputs(slug))
    def check(typed):
        if name == "sets" and slug == "transformer-schedule":
            # Left out, the conductor is the smallest that carries the device: more sets then mean smaller ones.
            typed = {"conductor": "3/0"} | typed
        if name == "sets" and slug.endswith("-schedule"):  # which ask how parallel sets run, and why they are so large
            typed = {"raceways": "1"} | typed
            if "minimum_conductor" in calculator.fields:
                typed = typed | {"minimum_conductor": typed["conductor"]}
        if name == "minimum_conductor":
            run = "installed_conductor" if "installed_conductor" in calculator.fields else "conductor"
            typed = typed | {run: "500kcmil"}
        if name in ("device", "motor_current") and slug in BY_CIRCUIT:
            # Behind a larger device the same hot conductors are less of an increase: 250.122(B) then asks for less. So
            # the increase is told, or no hot conductor is entered.
            told = typed.get("installed_conductor") and typed.get("minimum_conductor")
            ahead = slug == "buried-metal-elbow" and typed.get("circuit") != "feeder-or-branch"
            typed = {key: text for key, text in typed.items() if told or ahead or key not in HOT}
        before, walk = {}, ORDERED[kind_of(slug, name)]
        for text in reversed(walk) if name == "minimum_conductor" else walk:
            if reads(calculator.fields[name], text):
                after = parts(calculator(**(typed | {name: text})))
                for part in before.keys() & after.keys():
                    assert before[part] <= after[part], (part, name, text)
                    compared.append(part)
                before |= after

    check()
    assert len(compared) > 50


@pytest.mark.parametrize("slug", ["supply-side-bonding-jumper", "grounded-conductor"])
def test_the_part_of_one_raceway_is_no_larger_than_the_one_for_all(slug):
    compared = []

    @drawn(200)
    @given(inputs(slug), st.sampled_from((2, 3, 5, 6, 10)), st.integers(1, 3))
    def check(typed, raceways, in_each):
        typed = typed | {"raceways": str(raceways), "sets": str(raceways * in_each)}
        if slug == "supply-side-bonding-jumper":
            floor, shared, single = 0, {"arrangement": "one-per-raceway"}, {"arrangement": "single"}
        else:  # in parallel it is 1/0 or larger, also where a single one would be smaller
            floor, shared, single = area("1/0", "2023"), {"load_size": "14"}, {"load_size": "14", "raceways": "1"}
        each, whole = (CALCULATORS[slug](**(typed | how)) for how in (shared, single))
        if each.answer and whole.answer:
            compared.append(typed)
            assert each.answer.values["area_cmil"] <= max(whole.answer.values["area_cmil"], floor)

    check()
    assert len(compared) > 30


@every_calculator
def test_what_no_field_can_read_names_the_field_and_echoes_it_short(slug):
    calculator = CALCULATORS[slug]
    for name, asked in calculator.fields.items():
        for text in HOSTILE:
            if reads(asked, text) or parted(calculator.fields, [(name, text)]) != ([(name, text)], {}):
                continue  # what stands beside a size goes to the fields that ask for it
            blank = not text.strip()
            result = calculator(**(dict(calculator.example) | {name: text}))
            if blank and calculator.defaults.get(name, "") is None:
                assert name not in [each.field for each in result.fix] or result.inputs[name] is None
                continue
            assert [each.field for each in result.fix] == [name], (name, text)
            words = str(result.fix[0].words)
            if blank:
                assert words == str(asked.enter) or (asked.choices and words == "Choose one of those listed.")
                continue
            assert str(asked.enter) in words and truncate(text) in words
            assert len(words) <= LONGEST_ECHO + len(str(asked.enter)) + LONGEST_QUESTION


@every_calculator
def test_any_text_at_all_ends_in_one_of_three_ways(slug):
    names = st.sampled_from(("edition", "said", *CALCULATORS[slug].fields)) | st.text(max_size=20)

    @drawn(80)
    @given(st.lists(st.tuples(names, st.text() | st.sampled_from(HOSTILE)), max_size=8), st.booleans())
    def check(pairs, with_example):
        pairs = [*CALCULATORS[slug].example.items(), *pairs] if with_example else pairs
        result = CALCULATORS[slug].run(pairs)
        assert result.outcome in ("answer", "fix", "not_covered")
        assert len(json.dumps(result_to_dict(result), allow_nan=False)) < 60_000

    check()


@every_calculator
def test_a_name_that_is_no_field_and_a_name_given_twice_are_told(slug):
    calculator = CALCULATORS[slug]
    example = list(calculator.example.items())
    for name in HOSTILE:
        (told,) = calculator.run([*example, (name, "1")]).fix
        assert told.field == truncate(name) and "There is no field with this name." in str(told.words)
    for name, text in example:
        (told,) = calculator.run([*example, (name, text)]).fix
        assert told.field == name and str(told.words) == "This is entered twice. Enter it once."
