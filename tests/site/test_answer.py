"""An answer as HTML: links to other calculators, numbers with their units, each source once, a note to copy."""

import re

import pytest

from calc.catalogue import CALCULATORS
from site_assets.render.answer import result_html


def html_of(slug, edition="2023", **inputs):
    return result_html(CALCULATORS[slug](edition=edition, **inputs))


@pytest.mark.parametrize(
    ("slug", "inputs", "named"),
    [
        (
            "conductor-name",
            {"where": "past-device", "from_part": "enclosure", "to_part": "equipment"},
            "equipment-grounding-conductor",
        ),
        (
            "knockouts-over-250-volts",
            {"system": "480Y/277", "raceway": "rigid-metal-conduit", "fitting": "two-locknuts"},
            "equipment-bonding-jumper",
        ),
        ("equipment-bonding-jumper", {"device": "60", "joins": "flexible-raceway"}, "raceway-as-grounding-path"),
        ("jumper-withstand", {"fault_current": "1000", "device": "1000"}, "device-clearing"),
    ],
)
def test_a_calculator_that_an_answer_names_is_a_link(slug, inputs, named):
    links = re.findall(r'<a href="([a-z-]+)\.html">', html_of(slug, **inputs))
    assert links == [named]
    assert named in CALCULATORS


def test_a_number_in_an_answer_stays_with_its_unit():
    html = html_of("earth-only-return", device="20", voltage_to_ground="277", electrode_ohm="6")
    assert '<span class="whole">46.2 A</span>: do not count on it' in html
    assert '<span class="whole">277 V</span> is on the metal' in html


@pytest.mark.parametrize("slug", list(CALCULATORS))
def test_a_step_names_no_source_twice(slug):
    html = result_html(CALCULATORS[slug](**CALCULATORS[slug].example))
    for step in re.findall(r'<li class="step">.*?</li>', html):
        cites = re.findall(r'<p class="step-cite">.*?</p>', step)
        assert len(cites) == len(set(cites)), step
