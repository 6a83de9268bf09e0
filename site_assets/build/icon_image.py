"""Draws our mark as PNG images: phones take no SVG for the icon of an installed page."""

from __future__ import annotations

from xml.etree import ElementTree

from resvg_py import svg_to_bytes

SPACE = "http://www.w3.org/2000/svg"


def icon_image(svg: str, size: int, share: float = 1.0) -> bytes:
    """Return a square PNG of a drawing, `size` pixels wide.

    `share` is how much of it the drawing takes, around the middle; the color of its first shape, the ground, fills the
    rest. Raises: ValueError for what is no drawing, or none that is square.
    """
    try:
        root = ElementTree.fromstring(svg)  # noqa: S314 (our own file)
        left, top, width, height = map(float, root.attrib["viewBox"].split())
        ground = root[0].attrib["fill"]
    except (ElementTree.ParseError, LookupError) as error:
        raise ValueError(f"the mark is no drawing on a ground: {error}") from None
    if width != height:
        raise ValueError("the mark is not square")
    whole = width / share
    margin = (whole - width) / 2
    root.set("viewBox", f"{left - margin} {top - margin} {whole} {whole}")
    root.attrib |= {"width": str(size), "height": str(size)}
    ElementTree.register_namespace("", SPACE)
    drawing = ElementTree.tostring(root, encoding="unicode")
    return svg_to_bytes(svg_string=drawing, background=ground, skip_system_fonts=True)
