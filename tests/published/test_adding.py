"""`python -m tests.published` adds what the registry lacks, and takes nothing away."""

import json
import shutil
import tomllib

import pytest

from calc import CALCULATORS
from tests.published import __main__ as command
from tests.published import registry

SLUG = "main-bonding-jumper"


@pytest.fixture
def published(tmp_path, monkeypatch):
    """A copy of the registry that may be rewritten; gives the file of one calculator."""
    folder = tmp_path / "published"
    shutil.copytree(registry.FOLDER, folder)
    monkeypatch.setattr(registry, "FOLDER", folder)
    monkeypatch.setattr(command, "FOLDER", folder)
    registry.document.cache_clear()
    yield folder / f"{SLUG}.toml"
    registry.document.cache_clear()


def stated(file):
    """Return the parameters that a file states, by name."""
    (row,) = tomllib.loads(file.read_text(encoding="utf-8"))["calculator"]
    return {each["name"]: each for each in row["parameters"]}


def without_line(file, name):
    lines = file.read_text(encoding="utf-8").splitlines(keepends=True)
    kept = [line for line in lines if not line.startswith(f'    {{ name = "{name}"')]
    assert len(kept) == len(lines) - 1
    file.write_text("".join(kept), encoding="utf-8")


def test_a_registry_that_lacks_nothing_stays_as_it_is(published, capsys):
    before = published.read_bytes()
    command.add_parameters(SLUG)
    assert published.read_bytes() == before and not capsys.readouterr().out


def test_a_field_that_it_lacks_is_added_last_with_its_example_and_told(published, capsys):
    rest = published.read_text(encoding="utf-8").partition("\n\n# What programs")[2]
    without_line(published, "sets")
    command.add_parameters(SLUG)
    assert list(stated(published))[-1] == "sets" and set(stated(published)) == set(CALCULATORS[SLUG].fields)
    preset = str(CALCULATORS[SLUG].defaults["sets"])
    assert stated(published)["sets"] == {
        "name": "sets", "values": [CALCULATORS[SLUG].example.get("sets", preset)], "default": preset
    }
    assert capsys.readouterr().out.startswith(f"{SLUG}.toml: parameters: sets: ")
    assert published.read_text(encoding="utf-8").partition("\n\n# What programs")[2] == rest


def test_a_choice_that_it_lacks_is_added_to_its_field_alone(published):
    values = stated(published)["metal"]["values"]
    text = published.read_text(encoding="utf-8")
    published.write_text(text.replace(json.dumps(values), json.dumps(values[:-1])), encoding="utf-8")
    assert stated(published)["metal"]["values"] == values[:-1]
    command.add_parameters(SLUG)
    assert stated(published)["metal"]["values"] == values


def test_what_the_product_has_no_more_stays_stated(published):
    text = published.read_text(encoding="utf-8")
    gone = '    { name = "gone", values = ["1"] },\n    { name = "sets"'
    published.write_text(text.replace('    { name = "sets"', gone, 1), encoding="utf-8")
    without_line(published, "metal")
    command.add_parameters(SLUG)
    assert {"gone", "metal"} <= set(stated(published))


def test_a_calculator_without_a_file_gets_one_with_every_field(published):
    published.unlink()
    registry.document.cache_clear()
    command.add_parameters(SLUG)
    assert set(stated(published)) == set(CALCULATORS[SLUG].fields)
    assert tomllib.loads(published.read_text(encoding="utf-8"))["page"][0]["path"] == f"calculators/{SLUG}.html"
