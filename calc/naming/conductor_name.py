"""Which name is right for a conductor or jumper, why, and why the near names are not."""

from __future__ import annotations

from typing import Annotated

from calc.declare import Answer, calculator
from calc.naming import name_fields as ask
from calc.naming.form_of_name import check_form
from calc.naming.name_notes import note_place
from calc.naming.names import NAMES
from calc.naming.near_names import note_near_names
from calc.naming.outside_the_names import not_named
from calc.naming.own_rule import CALCULATOR_WORDS, SIZED_BY, note_calculator, own_rule, sized_by_words, where_stated
from calc.naming.side import side_of
from calc.naming.which_name import NO_CONDUCTOR, Outside, name_of, parts_joined
from calc.output import Output
from calc.words import say
from calc.working import Working


@calculator(
    "conductor-name",
    name=say("Name of a conductor"),
    purpose=say("Which name is right for a conductor or jumper, why, and why the near names are not."),
    submit=say("Name it"),
    example={
        "edition": "2023",
        "where": "service-disconnect",
        "from_part": "neutral",
        "to_part": "enclosure",
        "form": "screw",
    },
    outputs=(
        Output("name", say("Which conductor or jumper it is"), "choice", choices=(*NAMES, NO_CONDUCTOR)),
        Output("sized_by", say("What sizes it"), "choice", choices=SIZED_BY),
        Output(
            "calculator",
            say("Calculator that sizes it"),
            "choice",
            choices=tuple(CALCULATOR_WORDS),
            when=say("where this handbook sizes it"),
        ),
    ),
)
def conductor_name(
    *,
    working: Working,
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
    >>> result.said, result.answer.values["sized_by"]
    ('supply-side-bonding-jumper', 'conductors')
    """
    side = side_of(where, generator_neutral, generator_device, working)
    working.step(
        say("One end: {one}. Other end: {other}.", one=ask.PART_WORDS[from_part], other=ask.PART_WORDS[to_part])
    )
    try:
        pair = parts_joined(from_part, to_part, side)
        given = name_of(pair, side)
    except Outside as reason:
        raise not_named(str(reason), working) from None
    own = own_rule(given, pair, side, working.edition)
    values = {"name": given, "sized_by": own.sized_by, "calculator": own.calculator}
    if given == NO_CONDUCTOR:
        working.step(say("Past its bond the neutral stays apart from metal and earth."), cites=(own.asked,))
        headline = say("No conductor belongs here")
        detail = say(
            "Keep the neutral apart from metal and earth at this place ({section}).",
            section=working.section(own.asked),
        )
    else:
        found = NAMES[given]
        working.step(say("So it is this one: {name}.", name=found.label), cites=(found.defined, own.asked))
        sized = sized_by_words(own, working)
        working.step(sized, cites=(own.size,))
        headline, detail = found.label, found.does
        working.note(where_stated(found, own, working))
        working.note(sized)
        note_calculator(own, working)
    note_near_names(given, working)
    note_place(given, pair, side, working)
    check_form(given, form, side, working)
    return Answer(say("Name of a conductor"), headline, detail, own.asked, given, values)
