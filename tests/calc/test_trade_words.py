"""What calculators say is what a US electrician says: the phrases declared here never appear."""

import ast
import re
import tomllib
from pathlib import Path

import pytest

from calc.registry import CALCULATORS

CALC = Path(__file__).parents[2] / "calc"
FOLDERS = sorted(
    {""} | {folder.name for where in (CALC, CALC / "rules") for folder in where.iterdir() if folder.is_dir()}
    - {"__pycache__", "editing", "rules"}
)  # of calc and of calc/rules; "" is the modules beside the folders; contributors alone read editing
SHOWN = ("title", "applies")  # of a rule; its notes tell where a text was seen
NEVER = re.compile(
    r"""\b(
    prov(?:e|ed|en)\ dead|dead\ work                            # test for absence of voltage
    |side\ by\ side                                             # in parallel
    |(?:is|are)\ asked(?!\ for\b)|asks\ (?:for|of)|asked\ for    # is required
    |go(?:es)?\ by|need(?:s)?\ not                              # is sized from, is not required to be
    |for\ good|mostly|way\ back                                 # indefinitely, usually, ground-fault return path
    |(?:source|transformer|system|rule|rules|electrode)\ of\ (?:its|their)\ own  # separately derived system, its own
    |land(?:s)?\ (?:it\ )?on                                    # connects to
    |would\ do|will\ do(?:\ too)?|the\ way\ of                  # is permitted
    |nobody\ said|reckon(?:ed)?                                 # was not entered, calculated
    |metal\ of\ (?:the\ hot|that\ conductor|those\ conductors|the\ jumper)      # hot conductor material
    |breaker\ or\ fuse\ ahead|overcurrent\ device\ ahead(?=$)   # upstream breaker or fuse
    |tied\ to\ earth|stands?\ apart|stays?\ apart|kept?\ apart  # grounded, isolated
    |cellar|earthing|earthed|maker
    )\b""",
    re.IGNORECASE | re.VERBOSE,
)
ORDINARY = (
    "De-energize, lock out/tag out and test for absence of voltage.",
    "Number of conductors in parallel per phase.",
    "Size the jumper from the upstream overcurrent device.",
    "It is not required to be larger than the ungrounded conductors.",
    "Connect it to the grounded conductor at the service.",
    "Service conductors (no overcurrent device ahead)",
    "A smaller one is usually the ground-fault return path of a motor circuit.",
    "Ask the authority having jurisdiction before you leave it unbonded.",
)
UNSAID = (
    "Taking it out is dead work: supply off, locked out, proven dead.",
    "Conductors side by side in each phase.",
    "No plane is asked here.",
    "Ahead of the first one it goes by the conductors.",
    "The jumper need not be larger.",
    "Mostly the neutral.",
    "A transformer of its own",
    "Breaker or fuse ahead",
    "Land it on the neutral bar.",
    "Metal of the hot conductors",
)


def sentences_of_code(file):
    """Return each template that `message` gets in a file."""
    calls = (node for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))) if isinstance(node, ast.Call))
    given = [call.args[0] for call in calls if getattr(call.func, "id", "") == "message" and call.args]
    return [template.value for template in given if isinstance(template, ast.Constant)]


def sentences_of_rules(file):
    """Return what a rule file shows: its title and to what it applies."""
    rule = tomllib.loads(file.read_text(encoding="utf-8"))
    return [rule[key] for key in SHOWN]


def files_of(folder):
    """Return the files of a folder, each with the function that gives its sentences."""
    code = CALC.glob("*.py") if not folder else (CALC / folder).rglob("*.py")
    rules = (CALC / "rules" / folder).rglob("*.toml") if folder else ()
    return [(sentences_of_code, file) for file in code] + [(sentences_of_rules, file) for file in rules]


@pytest.mark.parametrize("folder", FOLDERS)
def test_no_sentence_says_what_no_electrician_says(folder):
    read = [(file, sentence) for sentences, file in files_of(folder) for sentence in sentences(file)]
    assert read
    assert [(file.name, said[0], text) for file, text in read if (said := NEVER.search(text))] == []


def test_ordinary_sentences_of_the_trade_pass():
    assert [sentence for sentence in ORDINARY if NEVER.search(sentence)] == []


@pytest.mark.parametrize("sentence", UNSAID)
def test_each_phrase_that_is_not_said_is_found(sentence):
    assert NEVER.search(sentence)


ONE_LABEL = {  # what each input of these names is called, in every calculator that has it
    "sets": {"Sets in parallel"},
    "conductor_metal": {"Hot conductor material", "Conductor material"},  # the latter where no other kind is entered
    "minimum_conductor": {"Minimum hot conductor size (before upsizing)"},
    "installed_conductor": {"Installed hot conductor size"},
    "ring": {"Ground ring conductor size"},
    "device": {  # the schedules of a source name the device by where it is
        "Upstream breaker or fuse",
        "First secondary breaker or fuse",
        "Rating of the breaker or fuse at the generator",
        "Rating of the device",  # where the device itself is what is checked
    },
}


@pytest.mark.parametrize("name", ONE_LABEL)
def test_one_thing_has_one_label_in_every_calculator(name):
    having = [each for each in CALCULATORS.values() if name in each.fields]
    assert having
    assert {str(each.fields[name].label) for each in having} == ONE_LABEL[name]
