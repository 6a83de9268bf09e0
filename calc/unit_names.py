"""What people call the units that calculators read. Each spelling has one meaning, or the reader is asked.

The case of a letter before a unit counts: m is milli, M is mega. The case of whole words does not: "200 AMPS".
"""

from __future__ import annotations

from functools import cache

from calc.field import UnclearError
from calc.messages import message

# Unit of units.txt to what it is called, in any case; blanks, points, hyphens and the like are taken out before.
_CALLED = {
    "ft": "ft foot feet",
    "in": "in inch inches",
    "mil": "mil mils",
    "m": "m meter meters metre metres",
    "cm": "cm centimeter centimeters centimetre centimetres",
    "mm": "mm millimeter millimeters millimetre millimetres",
    "km": "km kilometer kilometers kilometre kilometres",
    "s": "s sec secs second seconds",
    "ms": "ms msec millisecond milliseconds",
    "min": "min mins minute minutes",
    "h": "h hr hrs hour hours",
    "cycle": "cycle cycles",
    "A": "a amp amps ampere amperes",
    "V": "v volt volts vac",
    "VA": "va",
    "kVA": "kva",
    "MVA": "mva",  # nobody rates anything in thousandths of a voltampere
    "ohm": "ohm ohms",
    "ohmm": "ohmm ohmmeter ohmmeters ohmmetre ohmmetres",
    "ohmcm": "ohmcm ohmcentimeter ohmcentimeters ohmcentimetre ohmcentimetres",
    "in2": "in2 sqin sqinch sqinches squareinch squareinches",
    "mm2": "mm2 sqmm squaremillimeter squaremillimeters squaremillimetre squaremillimetres",
    "cmil": "cmil cmils",
    "kcmil": "kcmil mcm",
    "A2s": "a2s",
    "%": "% percent pct",
    "°C": "c degc degreec degreesc celsius degcelsius degreescelsius",
    "°F": "f degf degreef degreesf fahrenheit degfahrenheit degreesfahrenheit",
    "x": "x times",
}
SHOWN = {"ohmm": "ohm·m", "in2": "in²", "A2s": "A²s", "x": "×"}
_WITH_PREFIX = {"A": "ampere", "V": "volt", "ohm": "ohm"}
_PREFIX_WORDS = {"m": ("milli",), "u": ("micro", "micr"), "k": ("kilo", "kil"), "M": ("mega", "meg")}


@cache
def _names() -> dict[str, str]:
    names = {name: unit for unit, called in _CALLED.items() for name in called.split()}
    for unit in _WITH_PREFIX:
        for name in _CALLED[unit].split():
            names["k" + name] = "k" + unit  # capital K means nothing else
            names |= {word + name: p + unit for p, words in _PREFIX_WORDS.items() for word in words}
    return names | {"kohmm": "kohmm", "kohmcm": "kohmcm", "meg": "Mohm", "megs": "Mohm"}


def meanings(written: str) -> tuple[str, ...]:
    """Return the units that a spelling can mean, the one it says first. Raises: UnclearError; ValueError for none.

    >>> meanings("AMPS"), meanings("MOhm"), meanings("mOhm"), meanings("mohm")
    (('A',), ('Mohm',), ('mohm',), ('mohm', 'Mohm'))
    """
    folded = written.lower()
    if folded in _names():
        return (_names()[folded],)
    if folded == "ka2s":
        raise UnclearError(message("kA²s can mean a thousand A²s or a million. Enter the number in A²s."))
    letter, name = written[:1], written[1:]
    unit = _names().get(name.lower())
    if unit not in _WITH_PREFIX or letter not in tuple("mMu"):
        raise ValueError(written)
    if letter == "M" and (len(name) == 1 or name.isupper()):
        raise unclear_prefix(unit)
    if letter == "m" and unit == "ohm" and name.islower():
        return "mohm", "Mohm"  # all in small letters: megohms may be meant
    return (letter + unit,)


def unclear_prefix(unit: str) -> UnclearError:
    """Return the question whether thousandths or millions are meant."""
    word = _WITH_PREFIX[unit]
    mega = "megohm" if unit == "ohm" else f"mega{word}"
    return UnclearError(message("It can mean {milli} or {mega}. Write out the word.", milli=f"milli{word}", mega=mega))
