"""The safety case is whole, each of its mutants still fits the code, and a seeded few are brought back and caught."""

import ast
import itertools
import random
import re
import subprocess
import sys
from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from site_assets.build import hazard_data
from site_assets.build.hazard_data import CALCULATOR, CHECKS, DRAWING, HazardError, hazards, hazards_of
from site_assets.build.hazards import hazards_html, subjects
from site_assets.build.page_parts import PageParts, drawing_with_its_hazards

ROOT = Path(__file__).parents[2]
ALL = hazards()
SLICES, SEED = 110, 1
MUTATED = ("calc/", "docs/", "site_assets/")
PROVE = """
import dataclasses, sys
from site_assets.build.hazard_data import hazards
from tests.health.hazards import prove
chosen = [each for each in hazards() if (each.kind, each.key) in {keys}]
named = "tests/calc/jumpers/test_main_bonding_jumper.py::test_a_bus_has_the_area_of_the_wire_rounded_up"
edit = dict(file="calc/jumpers/bus_area.py", old="import annotations", new="import  annotations")
harmless = dataclasses.replace(chosen[0], of="nothing", id="harmless", test=named, **edit)
left = prove([*chosen, harmless])
sys.exit(left != [f"nothing/harmless: {{named}} passes with it back"])
"""
WORD = re.compile(r"[a-z]+(?:'[a-z]+)?")


def words(text: str) -> list[str]:
    return WORD.findall(text.lower().replace("’", "'"))


@cache
def functions_of(file: str) -> dict[str, bool]:
    """Return the tests of a file, each with whether it takes parameters."""
    tree = ast.parse((ROOT / file).read_text(encoding="utf-8"))
    return {each.name: bool(each.decorator_list) for each in tree.body if isinstance(each, ast.FunctionDef)}


@pytest.mark.parametrize("kind", [CALCULATOR, CHECKS, DRAWING])
def test_everything_that_could_harm_has_its_hazards_and_nothing_else_has(kind):
    listed = {each.of for each in ALL if each.kind == kind}
    assert listed == set(subjects(kind))


def test_every_calculator_has_two_hazards_at_least_and_one_that_is_grave():
    for slug in subjects(CALCULATOR):
        grave = [each.grave for each in hazards_of(CALCULATOR, slug)]
        assert len(grave) >= 2, slug
        assert slug == "compare-editions" or set(grave) & {"death", "injury"}, slug


def test_a_calculator_without_its_hazards_does_not_build(monkeypatch):
    kept = tuple(each for each in ALL if each.of != "clamp-reading")
    monkeypatch.setattr(hazard_data, "hazards", lambda: kept)
    page = PageParts("calculators/clamp-reading", ())
    with pytest.raises(HazardError, match="clamp-reading"):
        page.calculator("clamp-reading")
    with pytest.raises(HazardError, match="clamp-reading"):
        hazards_html(CALCULATOR)


def test_a_check_list_and_a_drawing_without_their_hazards_do_not_build(monkeypatch):
    monkeypatch.setattr(hazard_data, "hazards", lambda: ())
    with pytest.raises(HazardError, match="places/dock"):
        PageParts("places/dock", ()).checks()
    with pytest.raises(HazardError, match="dock"):
        drawing_with_its_hazards("dock")


def test_no_two_hazards_share_a_name_or_their_mutant_and_test():
    assert [key for key, count in Counter((each.kind, each.key) for each in ALL).items() if count > 1] == []
    edits = Counter((each.file, each.old, each.new, each.test) for each in ALL)
    assert [edit for edit, count in edits.items() if count > 1] == []
    for each in ALL:
        assert re.fullmatch(r"[a-z0-9]+(?:-[a-z0-9]+)*", each.id), each.key


@pytest.mark.parametrize("part", ["harm", "stop"])
def test_every_hazard_is_told_in_its_own_words(part):
    told = {f"{each.kind} {each.key}": getattr(each, part) for each in ALL}
    sentences = Counter(sentence for text in told.values() for sentence in re.split(r"(?<=[.?!])\s+", text))
    assert [sentence for sentence, count in sentences.items() if count > 1] == []
    for key, text in told.items():
        assert len(words(text)) >= 6 and text.endswith("."), key
    seen = {key: set(words(text)) for key, text in told.items()}
    alike = [
        (one, other)
        for one, other in itertools.combinations(seen, 2)
        if len(seen[one] & seen[other]) > 0.7 * len(seen[one] | seen[other])
    ]
    assert alike == []


def test_harm_says_more_than_the_stop_and_neither_is_long():
    for each in ALL:
        assert 8 <= len(words(each.harm)) <= 45, each.key
        assert 5 <= len(words(each.stop)) <= 45, each.key
        assert not set(words(each.harm)) <= set(words(each.stop)), each.key


def test_each_mutant_still_fits_its_file_in_one_place():
    rotten = []
    for each in ALL:
        file = ROOT / each.file
        found = file.read_text(encoding="utf-8").count(each.old) if file.is_file() else 0
        if found != 1 or not each.file.startswith(MUTATED) or each.old == each.new:
            rotten.append(f"{each.key}: {found} times in {each.file}")
    assert rotten == []


def test_each_mutant_leaves_code_that_can_be_read():
    for each in ALL:
        if each.file.endswith(".py"):
            written = (ROOT / each.file).read_text(encoding="utf-8")
            ast.parse(written.replace(each.old, each.new))


def test_each_named_test_is_there():
    missing = []
    for each in ALL:
        file, _, name = each.test.partition("::")
        name, bracket, _ = name.partition("[")
        parameters = functions_of(file).get(name) if (ROOT / file).is_file() else None
        if parameters is None or (bracket and not parameters):
            missing.append(each.test)
    assert missing == []


@pytest.mark.slices(SLICES)
def test_hazards_brought_back_make_their_tests_fail_and_a_harmless_edit_is_told(slice_number):
    """All slices together bring every hazard back. The harmless edit shows that the command can fail."""
    chosen = random.Random(SEED).sample(ALL, len(ALL))[slice_number::SLICES]
    script = PROVE.format(keys=[(each.kind, each.key) for each in chosen])
    done = subprocess.run([sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
