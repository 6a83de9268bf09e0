"""Every published parameter, value and default is read as ever, under its old name too."""

import pytest

from calc import CALCULATORS
from calc.field import read_field
from tests.published.registry import rows

STATED = {row["slug"]: row["parameters"] for row in rows("calculator")}


def test_every_calculator_is_published():
    assert set(STATED) == set(CALCULATORS)


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_field_and_every_choice_is_published(slug):
    """A renamed one is a row more: what was published stays stated and is read, see `formerly` of Field and Choice."""
    stated = {each["name"]: each["values"] for each in STATED[slug]}
    for name, field in CALCULATORS[slug].fields.items():
        assert name in stated, f"add {{ name = {name!r}, values = [...] }} to site_assets/published/{slug}.toml"
        new = [choice.value for choice in field.choices if choice.value not in stated[name]]
        assert not new, f"add {new} to the values of {name} in site_assets/published/{slug}.toml"
        if field.several:
            assert read_field(field, ",".join(choice.value for choice in field.choices))


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_published_parameter_is_still_read_with_the_same_default(slug):
    calculator = CALCULATORS[slug]
    for parameter in STATED[slug]:
        name = calculator.name_now(parameter["name"])
        assert name in calculator.fields, f"{parameter['name']} was published: put it in `formerly` of what it is now"
        field, preset = calculator.fields[name], calculator.defaults.get(name)
        default = parameter.get("default", "")
        assert ("" if preset is None else str(preset)) == (default and field.value_now(default)), parameter["name"]
        for value in parameter["values"]:
            result = calculator(**({"conductor": "3/0"} | {parameter["name"]: value}))
            assert name not in [each.field for each in result.fix], f"{value!r} of {name} was published"


def test_a_published_value_that_is_refused_now_says_what_to_enter():
    for slug, parameters in STATED.items():
        calculator = CALCULATORS[slug]
        example = {name: text for name, text in calculator.example.items() if name != "minimum_conductor"}
        for parameter in parameters:
            for value in parameter.get("refused", ()):
                given = {"conductor": "3/0", "installed_conductor": "3/0"} | example | {parameter["name"]: value}
                known = {name: text for name, text in given.items() if name in (*calculator.fields, "edition")}
                if slug == "buried-metal-elbow":
                    known["cover"] = "10"
                (fix,) = calculator(**known).fix
                assert fix.field == parameter["name"] and "or larger" in str(fix.words)
