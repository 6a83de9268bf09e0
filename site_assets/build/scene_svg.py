"""The drawing whose bonds can be pressed, with cases to start from and its text twin, as static HTML."""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from urllib.parse import urlencode

from calc.known import known
from calc.messages import Message, message
from calc.registry import CALCULATORS
from site_assets.diagrams import take_a_bond_away
from site_assets.render.answer import text
from site_assets.render.scene import SLUG, scene_parts


@dataclass(frozen=True)
class Preset:
    """A case to start from: its name, what to look at, and the fields that differ from an untouched form."""

    name: Message
    look: Message
    inputs: dict[str, str]


RANGES = message(
    "How far this can move: wires between cold and warm, a source at the low end of its voltage, an electrode in wet "
    "or dry soil, good or poor steel."
)
PRESETS = (
    Preset(
        message("All bonds in place"),
        message(
            "Look at the current: it is large. The machine's metal still has about half the voltage until it trips."
        ),
        {"fault": "machine"},
    ),
    Preset(
        message("Main bonding jumper missing"),
        message("Look at the metal: all of it goes to full voltage, and no breaker sees any current."),
        {"fault": "machine", "missing": "main-bonding-jumper"},
    ),
    Preset(
        message("A rod as the only return path"),
        message("Look at the current: a few amps. The breaker carries that forever, and the machine stays live."),
        {"fault": "machine", "missing": "branch-return", "added": "machine-electrode"},
    ),
    Preset(
        message("Neutral bonded twice"),
        message("Look at the grounding path: it carries neutral current all day, with no fault anywhere."),
        {"fault": "none", "added": "neutral-bond-at-panel", "loads": "on"},
    ),
    Preset(
        message("Loose locknut"),
        message("Look at the panel and the machine: two ohms at one fitting keep nearly the full voltage on both."),
        {"fault": "machine", "feeder_path": "raceway", "loose": "feeder-return", "loose_ohm": "2"},
    ),
    Preset(
        message("System bonding jumper missing at a transformer"),
        message("Look at the path back to the transformer: it ends where the jumper should be, just as at a service."),
        {"source": "transformer", "fault": "machine", "missing": "main-bonding-jumper"},
    ),
    Preset(
        message("Supply-side bonding jumper missing"),
        message("Look at the raceway ahead of the disconnect: it alone is live, and no breaker here is ahead of it."),
        {"fault": "supply-raceway", "missing": "supply-side-bonding-jumper"},
    ),
    Preset(
        message("Flexible raceway without a jumper"),
        message(
            "Look at the machine: most of the voltage stays on it, because the flexible raceway is the worst part."
        ),
        {"fault": "machine", "branch_path": "flexible-raceway"},
    ),
    Preset(
        message("Buried elbow"),
        message("Look at the elbow: soil alone brings back an amp or so. Nothing trips, and the soil above is live."),
        {"fault": "buried-elbow"},
    ),
    Preset(
        message("Open neutral"),
        message("Look at the metal: with no fault at all it has voltage to earth, and the lighter leg gets too much."),
        {"fault": "none", "missing": "supply-neutral", "loads": "on"},
    ),
)


def scene_html() -> str:
    """Return the cases to start from, the drawing as the untouched form has it, and its list in words."""
    shown = known(scene_parts(CALCULATORS[SLUG]()))
    return (
        f'<ul class="presets" data-presets>{"".join(_preset(each) for each in PRESETS)}</ul>'
        f'<figure class="drawing scene" id="drawing-{SLUG}" data-scene="{SLUG}">'
        f'<p class="scene-verdict" id="{SLUG}-drawing-verdict" role="status">{text(shown["words"]["verdict"])}</p>'
        f'<p class="scene-look" data-scene-look></p>'
        f"{take_a_bond_away.svg()}<figcaption><p>{text(take_a_bond_away.CAPTION)}</p>"
        f'<div class="scene-twin" data-scene-twin>{shown["twin"]}</div>'
        f'<div class="scene-ranges" data-scene-ranges hidden><p>{text(RANGES)}</p><div></div></div>'
        "</figcaption></figure>"
    )


def _preset(preset: Preset) -> str:
    address = escape(f"{SLUG}.html?{urlencode(preset.inputs)}")
    return f'<li><a class="button" href="{address}">{text(preset.name)}</a> <span>{text(preset.look)}</span></li>'
