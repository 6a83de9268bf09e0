"""Two metal parts joined, and the same two not joined, with a hand on each."""

from __future__ import annotations

from calc.messages import message
from site_assets.diagrams.scenery import dimension, never, standing
from site_assets.diagrams.symbols import (
    breaker,
    canvas,
    conductor,
    enclosure,
    fault,
    finished,
    label,
    path_step,
    step_mark,
    winding,
)

SLUG = "bonding"
CAPTION = message(
    "Bonded, two metal parts stay at one voltage and the fault current gets through. Not bonded, the fault voltage "
    "is between them. A drawing only: never open a real bond to see."
)
TEXT_ALTERNATIVE = (
    message("Source: it pushes current out on the hot conductor, through the breaker, to the first metal part."),
    message("Fault: inside the first part the hot conductor touches the metal."),
    message(
        "The bonding jumper carries the current from the first part to the second. Both are at nearly one voltage."
    ),
    message("Return: from the second part the current goes back to the source. It is large, and the breaker trips."),
    message(
        "Not bonded: below, the jumper is left out. The first part stays live, and the breaker stays closed. Whoever "
        "touches both parts is now the only path, with the fault voltage from hand to hand."
    ),
)


def svg() -> str:
    """Return the drawing as SVG."""
    picture = canvas(
        SLUG,
        360,
        500,
        message("Two metal parts with a bonding jumper, and without"),
        message(
            "Above, a jumper bonds two metal parts, and a fault in one of them gets back to the source. Below, the "
            "jumper is missing, and the fault voltage is between the hands of whoever touches both."
        ),
    )
    picture.extend(
        [
            *circuit("joined", 0),
            label(message("Joined"), 8, 20, kind="strong"),
            label(message("source"), 40, 102),
            label(message("breaker\nopens"), 122, 62),
            conductor("bonding-jumper", "bonding", (172, 166), (172, 186), (292, 186), (292, 166)),
            standing("person-joined", 232, 172, (190, 128), (274, 128)),
            label(message("one voltage"), 240, 82, "middle"),
            label(message("bonding jumper"), 232, 208, "middle", "strong"),
            label(message("return"), 36, 212),
            *circuit("apart", 250),
            label(message("Not bonded"), 8, 270, kind="strong"),
            label(message("breaker\nstays closed"), 122, 306),
            never("no-jumper", 232, 436, (172, 418), (172, 436), (292, 436), (292, 418)),
            standing("person-apart", 232, 422, (190, 378), (274, 378), kind="hurt"),
            dimension("fault-voltage", (193, 336), (271, 336)),
            label(message("fault voltage"), 352, 328, "end", "warning"),
            label(message("no jumper"), 232, 460, "middle", "warning"),
            *steps(),
        ]
    )
    return finished(picture, SLUG)


def circuit(name: str, top: float):
    """Return the source, its breaker, both metal parts and the way back, `top` down the drawing."""
    return [
        winding(f"{name}-source", 24, top + 66, 4),
        conductor(f"{name}-hot", "ungrounded", (24, top + 66), (24, top + 40), (108, top + 40), (108, top + 50)),
        breaker(f"{name}-breaker", 108, top + 50),
        conductor(f"{name}-hot-to-part", "ungrounded", (108, top + 90), (108, top + 154), (152, top + 154)),
        enclosure(f"{name}-first-part", 122, top + 112, 68, 54),
        enclosure(f"{name}-second-part", 274, top + 112, 68, 54),
        label(message("metal part"), 156, top + 106, "middle"),
        label(message("metal part"), 308, top + 106, "middle"),
        fault(f"{name}-fault", 152, top + 154, 38),
        conductor(
            f"{name}-way-back",
            "equipment-grounding",
            (326, top + 166),
            (326, top + 220),
            (24, top + 220),
            (24, top + 130),
        ),
    ]


def steps():
    """Return the marks and stretches of the way round."""
    return [
        path_step(1, (24, 66), (24, 40), (108, 40), (108, 154), (152, 154)),
        path_step(2, (152, 154), (190, 148), (190, 166), (172, 166)),
        path_step(3, (172, 166), (172, 186), (292, 186), (292, 166)),
        path_step(4, (292, 166), (326, 166), (326, 220), (24, 220), (24, 130)),
        path_step(
            5,
            *((24, 316), (24, 290), (108, 290), (108, 404), (152, 404), (190, 398), (190, 378)),
            *((232, 369), (274, 378), (274, 416), (326, 416), (326, 470), (24, 470), (24, 380)),
        ),
        step_mark(1, 66, 40),
        step_mark(2, 140, 132),
        step_mark(3, 206, 186),
        step_mark(4, 150, 220),
        step_mark(5, 206, 400),
    ]
