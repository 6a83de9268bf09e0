"""What a calculator declares so that the margin of its answer can be found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Margin:
    """The inputs that may turn an answer, and what of it is compared.

    verdict: the name of the value compared, "" for the answer as links carry it. Conductor sizes and whole numbers are
    tried one by one. An amount is halved towards its end, as what is compared only rises or only falls with it; else
    `breaks` names the rules whose figures are the only places where it can change. needs: for a field, the other one
    without which it does not count so. close: the share of an amount to which its limit is found.
    """

    fields: tuple[str, ...]
    verdict: str = ""
    breaks: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])
    needs: Mapping[str, str] = field(default_factory=dict[str, str])
    close: float = 1e-8
