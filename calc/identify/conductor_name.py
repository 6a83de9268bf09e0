"""The code name for a conductor or jumper, why it is that one, and why the similar names are not."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.identify import name_fields as ask
from calc.identify.classify import NO_CONDUCTOR, UnclassifiedError, name_of, parts_joined
from calc.identify.governing_rule import (
    CALCULATOR_WORDS,
    SIZED_BY,
    note_calculator,
    own_rule,
    sized_by_words,
    where_stated,
)
from calc.identify.name_notes import note_place
from calc.identify.names import NAMES
from calc.identify.permitted_forms import check_form
from calc.identify.similar_terms import note_near_names
from calc.identify.supply_or_load_side import side_of
from calc.identify.unclassified import not_named
from calc.messages import message
from calc.output import Output
from calc.trace import Trace


@calculator(
    "conductor-name",
    name=message("Identify a conductor or jumper"),
    purpose=message("The code name for a conductor or jumper, why it is that one, and why the similar names are not."),
    submit=message("Identify it"),
    example={
        "edition": "2023",
        "where": "service-disconnect",
        "from_part": "neutral",
        "to_part": "enclosure",
        "form": "screw",
    },
    outputs=(
        Output("name", message("Which conductor or jumper it is"), "choice", choices=(*NAMES, NO_CONDUCTOR)),
        Output("sized_by", message("What it is sized from"), "choice", choices=SIZED_BY),
        Output(
            "calculator",
            message("Calculator to size it"),
            "choice",
            choices=tuple(CALCULATOR_WORDS),
            when=message("where this handbook has a calculator for it"),
        ),
    ),
)
def conductor_name(
    *,
    trace: Trace,
    where: Annotated[str, ask.PLACE],
    from_part: Annotated[str, ask.FROM_PART],
    to_part: Annotated[str, ask.TO_PART],
    form: Annotated[str, ask.FORM] = "wire",
    generator_neutral: Annotated[str, ask.GENERATOR_NEUTRAL] = ask.NOT_GIVEN,
    generator_device: Annotated[str, ask.GENERATOR_DEVICE] = ask.NOT_GIVEN,
) -> Answer:
    """Name a conductor or jumper from where it is and what it joins; the direction never counts.

    When: grounded systems up to 1000 V ac: services, feeders, branch circuits, transformers, permanently
    installed generators. Where no conductor belongs, the answer says so. Parts that take none of the
    names end as not covered, with the name to look under.

    Parameters:
        where: "ahead-of-service-disconnect", "service-disconnect", "past-device", "separate-building",
            "transformer-primary", "transformer-secondary" or "generator".
        from_part, to_part: what it joins, such as "neutral", "enclosure", "raceway", "electrode".
        form: "wire", "busbar", "strap", "screw" or "raceway"; never changes the name.
        generator_neutral: "switched" or "unswitched", needed at a generator.
        generator_device: "yes" or "no", an overcurrent device at the set; needed at a generator.

    Returns: a Result; its answer's `values` hold name, sized_by and calculator (a slug or None).
    Raises: nothing; bad input ends as `fix`, other cases as `not_covered`.
    Source: Article 100 (and 250.2 in 2017), 250.24, 250.30, 250.35, 250.92, 250.102, 250.118, 250.142.

    Example:
    >>> result = conductor_name(
    ...     edition="2023", where="transformer-secondary", from_part="enclosure", to_part="enclosure")
    >>> result.answer_code, result.answer.values["sized_by"]
    ('supply-side-bonding-jumper', 'conductors')
    """
    side = side_of(where, generator_neutral, generator_device, trace)
    trace.step(
        message(
            "Connects from: {one}. Connects to: {other}.", one=ask.PART_WORDS[from_part], other=ask.PART_WORDS[to_part]
        )
    )
    try:
        pair = parts_joined(from_part, to_part, side)
        name_key = name_of(pair, side)
    except UnclassifiedError as reason:
        raise not_named(str(reason), trace) from None
    own = own_rule(name_key, pair, side, trace.edition)
    values = {"name": name_key, "sized_by": own.sized_by, "calculator": own.calculator}
    if name_key == NO_CONDUCTOR:
        trace.step(
            message("Downstream of its bonding jumper, the neutral must stay isolated from metal and ground."),
            cites=(own.requiring_rule,),
        )
        headline = message("No conductor belongs here")
        detail = message(
            "Keep the neutral isolated from metal and ground here ({section}).",
            section=trace.section(own.requiring_rule),
        )
    else:
        entry = NAMES[name_key]
        trace.step(message("So it is: {name}.", name=entry.label), cites=(entry.defined, own.requiring_rule))
        sized = sized_by_words(own, trace)
        trace.step(sized, cites=(own.size,))
        headline, detail = entry.label, entry.does
        trace.note(where_stated(entry, own, trace))
        trace.note(sized)
        note_calculator(own, trace)
    note_near_names(name_key, trace)
    note_place(name_key, pair, side, trace)
    check_form(name_key, form, side, trace)
    return Answer(message("Identify a conductor or jumper"), headline, detail, own.requiring_rule, name_key, values)
