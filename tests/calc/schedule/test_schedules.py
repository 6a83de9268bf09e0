"""Every row of every schedule is what its own calculator answers."""

import random

import pytest

from calc import permalink
from calc.editions import EDITIONS
from calc.registry import CALCULATORS

SLUGS = ("service-schedule", "transformer-schedule", "generator-schedule", "separate-building-schedule")


def sizes(result):
    return result.answer.values["sizes"]


def single(link):
    slug, pairs = permalink.read_case(link)
    edition = dict(permalink.read(link.partition("?")[2]))["edition"]
    return CALCULATORS[slug].run([*pairs, ("edition", edition)])


def jobs(slug, seed, count):
    """Yield `count` random inputs of a schedule, every choice among them."""
    chance, years = random.Random(seed), random.Random(seed)  # apart: one more edition draws no other jobs
    declared = CALCULATORS[slug]
    texts = {"kva": ["9", "75", "112.5"], "device": ["15", "100", "225", "800", "4000"],
             "conductor": ["12", "8", "2", "3/0", "500kcmil", "1000kcmil"], "piping_device": ["15", "100"],
             "primary_device": ["70", "400"], "ring": ["2", "3/0"], "disconnects": ["3/0,1/0", "2x250kcmil,2,2"],
             "minimum_conductor": ["12", "8"]}  # fmt: skip
    for _ in range(count):
        inputs = {"edition": years.choice(EDITIONS)}
        for name, asked in declared.fields.items():
            if name == "found":  # it changes no row: tests/calc/found
                continue
            if name in declared.defaults and name != "ring" and chance.random() < 0.3:
                continue
            if asked.several:
                values = [choice.value for choice in asked.choices]
                inputs[name] = ",".join(chance.sample(values, chance.randint(1, len(values))))
            elif asked.choices:
                inputs[name] = chance.choice(asked.choices).value
            elif asked.whole_numbers:
                inputs[name] = str(chance.choice((1, 2, 3, 6)))
            else:
                inputs[name] = chance.choice(texts[name])
        yield inputs


@pytest.mark.parametrize("slug", SLUGS)
def test_every_row_is_what_its_own_calculator_answers(slug):
    compared = 0
    for inputs in jobs(slug, seed=7, count=150):
        result = CALCULATORS[slug](**inputs)
        if result.outcome != "answer":
            continue
        for row, said in zip(result.answer.table.rows, sizes(result).values(), strict=True):
            if not row.link:
                assert said == "none" or (said, str(row.cells["size"])) == ("not-judged", "Not determined")
                continue
            alone = single(row.link)
            assert alone.answer_code == said
            if alone.answer and "size" not in alone.answer.values:
                assert str(row.cells["size"]) == str(alone.answer.headline)
                assert str(row.cells["why"]) == str(alone.answer.detail)
            elif alone.answer:
                # The neutral of an old supply has a floor of its own where it runs in parallel.
                assert str(row.cells["size"]).partition("; in parallel")[0] in (
                    f"{alone.answer.headline} {alone.answer.detail}",
                    f"{alone.answer.headline} {alone.answer.values['metal']} wire or larger".replace("d-a", "d a"),
                )
            else:
                assert str(row.cells["size"]) == "Not covered here"
                assert str(row.cells["why"]) == f"{alone.not_covered.why} {alone.not_covered.look_in}"
            compared += 1
    assert compared > 300


@pytest.mark.parametrize("slug", SLUGS)
def test_a_part_says_where_it_starts_and_lands_why_and_by_which_section(slug):
    for inputs in jobs(slug, seed=11, count=60):
        result = CALCULATORS[slug](**inputs)
        for row in result.answer.table.rows if result.answer else ():
            assert all(str(words).strip() for words in row.cells.values())


@pytest.mark.parametrize("slug", SLUGS)
def test_no_part_is_named_twice_in_the_values(slug):
    for inputs in jobs(slug, seed=13, count=60):
        result = CALCULATORS[slug](**inputs)
        if result.answer:
            assert result.answer.values["parts"] == len(sizes(result)) == len(result.answer.table.rows)


@pytest.mark.parametrize("slug", SLUGS)
def test_the_headline_counts_sizes_alone_and_says_how_many_rows_it_leaves_out(slug):
    """A row that needs nothing, is not covered or was not judged is no part to install."""
    left_out = 0
    for inputs in jobs(slug, seed=17, count=60):
        result = CALCULATORS[slug](**inputs)
        if result.answer:
            shown = [str(row.cells["size"]) for row in result.answer.table.rows]
            installed = [size for size in shown if size[0].isdigit()]
            told = str(result.answer.in_one_line)
            assert told.split(maxsplit=1)[0] == str(len(installed))
            for size, words in (("Not covered here", "not covered here"), ("Not determined", "not determined")):
                count = shown.count(size)
                left_out += count
                assert (f"; {count} {words}" in told) is bool(count)
    assert left_out


@pytest.mark.parametrize("slug", SLUGS)
def test_what_nothing_entered_decides_stands_last_as_a_question(slug):
    asked = 0
    for inputs in jobs(slug, seed=19, count=60):
        result = CALCULATORS[slug](**inputs)
        rows = result.answer.table.rows if result.answer else ()
        kinds = [row.status for row in rows]
        assert all(kinds) and sorted(kinds, key="not-judged".__eq__) == kinds
        for row in rows:
            if row.status == "not-judged":
                asked += 1
                assert "?" in str(row.cells["why"]) and str(row.cells["section"])
        if rows:
            assert "not-judged" not in result.answer_code
    assert asked > 50


def rows_of(slug, **inputs):
    """Return the words of each row by its key in the values."""
    result = CALCULATORS[slug](edition="2023", **inputs)
    cells = [[str(cell) for cell in row.cells.values()] for row in result.answer.table.rows]
    return dict(zip(sizes(result), cells, strict=False))  # questions come last and have no size


JOBS = {
    "service-schedule": {"conductor": "2/0"},
    "separate-building-schedule": {"device": "60", "conductor": "6"},
    "generator-schedule": {"neutral": "switched", "breaker": "no", "conductor": "3/0"},
}


@pytest.mark.parametrize("slug", JOBS)
def test_electrodes_and_metal_that_nobody_chose_are_asked_for_until_the_reader_looked(slug):
    """250.50: all that are present are joined. 250.104: piping and structural metal are bonded where they are."""
    asked = rows_of(slug, electrodes="water-pipe,rod", metal_parts="water-pipe", **JOBS[slug])
    assert "concrete-encased" in asked["other-electrodes"][4] and "water pipe" not in asked["other-electrodes"][4]
    assert "structural metal; gas or other metal piping" in asked["other-metal-parts"][0]
    looked = rows_of(slug, electrodes="water-pipe,rod,no-other", metal_parts="water-pipe,no-other", **JOBS[slug])
    assert asked.keys() - looked.keys() == {"other-electrodes", "other-metal-parts"}


@pytest.mark.parametrize("slug", ["service-schedule", "separate-building-schedule"])
def test_communications_and_lightning_protection_are_asked_for(slug):
    """250.94 and 250.106."""
    rows = rows_of(slug, electrodes="rod", **JOBS[slug])
    assert rows["intersystem-termination"][5].startswith("250.94") and "6 AWG" in rows["intersystem-termination"][4]
    assert rows["lightning-protection"][5] == "250.106"


@pytest.mark.parametrize("slug", JOBS)
def test_where_no_electrode_is_there_the_one_to_install_is_asked_for(slug):
    rows = rows_of(slug, electrodes="no-other", **JOBS[slug])
    assert rows["grounding-electrode-conductor"][1] == "Not determined"
    assert [each.field for each in CALCULATORS[slug](edition="2023", **JOBS[slug]).fix] == ["electrodes"]


@pytest.mark.parametrize("slug", JOBS)
def test_in_how_many_raceways_parallel_sets_run_is_asked_and_for_a_single_set_it_is_not(slug):
    job = JOBS[slug] | {"electrodes": "rod"}
    assert CALCULATORS[slug](edition="2023", **job).answer
    job = job | {"conductor": "1/0", "sets": "2"} | ({"minimum_conductor": "1/0"} if "device" in job else {})
    assert [each.field for each in CALCULATORS[slug](edition="2023", **job).fix] == ["raceways"]
    assert CALCULATORS[slug](edition="2023", raceways="2", **job).answer


def test_no_electrode_conductor_starts_at_an_electrode_with_a_smaller_one():
    """250.66: the limit of a rod holds for the wire to rods alone; "other" asks for the whole size of the table."""
    rows = rows_of("service-schedule", conductor="500kcmil", electrodes="concrete-encased,rod,ring,other", ring="2/0")
    keys = [key for key in rows if key.startswith("grounding-electrode-conductor-")]
    # 500 kcmil copper: 1/0 by Table 250.66, also at the larger ring; 4 AWG to concrete; 6 AWG to the rod
    assert [rows[key][1].split()[0] for key in keys] == ["1/0", "1/0", "4", "6"]
    assert [key.rpartition("-")[2] for key in keys][2:] == ["encased", "rod"]
    assert all("listed above" in rows[key][2] for key in keys[1:])


def test_the_taps_of_several_disconnects_stand_once():
    """By Table 250.66, 3 x 167,800 cmil: 1/0; each tap 4 AWG by its 3/0. The wire to the rod is no tap."""
    rows = rows_of("service-schedule", conductor="500kcmil", disconnects="3/0,3/0,3/0", electrodes="water-pipe,rod")
    assert rows["grounding-electrode-conductor-water-pipe"][1] == "1/0 AWG copper wire or larger; taps 4 AWG each"
    assert rows["grounding-electrode-conductor-rod"][1] == "6 AWG copper wire or larger"
