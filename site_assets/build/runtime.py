"""Makes the runtime bundle: Pyodide and the archives of everything that Python runs in the page."""

from __future__ import annotations

import ast
import base64
import gzip
import hashlib
import json
import os
import shutil
import subprocess
import sys
import tempfile
import tomllib
import zipfile
from importlib.metadata import PackagePath, distribution
from pathlib import Path, PurePath

from calc.data_file import Data
from calc.known import known
from calc.rulebook import file_of, rule_keys
from site_assets.setup.paths import NODE_MODULES, PINS, ROOT

# The archives that Python is started from, and the one that follows when it has answered.
FIRST, LATER = ["library.zip", "calculators.zip", "rules.zip"], ["later.zip"]
# Of Pyodide's own files only those that no browser takes for a script can come packed.
PACKED = ["pyodide.asm.wasm"]
TWIN = ".gz"
PYODIDE = NODE_MODULES / "pyodide"
STANDARD_LIBRARY = PINS / "standard_library.txt"
FIRST_MODULES = PINS / "first_modules.txt"
RULES = "calc/rules/"
LICENCES = "licences/"
# A rule of this room is named after the raceway that was entered.
NAMED_BY_PARTS = "raceways/"
DATA_SUFFIXES = (".json", ".toml", ".txt")
# The oldest moment an archive can state; any fixed one makes equal archives equal.
MOMENT = (1980, 1, 1, 0, 0, 0)

Files = dict[str, bytes]  # what is in a file, by its path in the archive


def build_runtime(target: Path, cache: Path) -> Data:
    """Put the runtime files into `target`, from `cache` when nothing they are made of has changed.

    Each stands in a folder named by its hash, Pyodide's own in one together, with a gzip twin beside it where that is
    shorter. Returns what `loadPython` in the browser must know: `folder` of Pyodide, `files` (path, size, integrity
    and whether there is a twin, by name), the names of the archives for a `first` answer and for `later`, `lock`,
    and `id`, a hash over all of it.
    """
    sources = archive_sources(kept_modules())
    made = Path(cache) / f"runtime-{fingerprint(sources)}"
    if not made.exists():
        forget_older(made)
        make(made, sources)
    pyodide = contents()["pyodide"]
    folder = f"{hash_of(*(made / name for name in pyodide))}/"
    files: Data = {}
    for name in [*pyodide, *FIRST, *LATER]:
        path = f"{folder if name in pyodide else f'{hash_of(made / name)}/'}{name}"
        twin = made / f"{name}{TWIN}"
        (target / path).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(made / name, target / path)
        if twin.exists():
            shutil.copyfile(twin, target / f"{path}{TWIN}")
        files[name] = {"path": path, **described(made / name), "packed": twin.exists()}
    told = {"folder": folder, "first": FIRST, "later": LATER, "files": files, "lock": empty_lock()}
    return told | {"id": hashlib.sha256(json.dumps(told).encode()).hexdigest()[:16]}


def make(folder: Path, sources: Files) -> None:
    """Make the runtime files in a new folder; it appears only when whole."""
    folder.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=folder.parent) as scratch:
        whole = Path(scratch) / "whole"
        whole.mkdir()
        for name in contents()["pyodide"]:
            shutil.copyfile(PYODIDE / name, whole / name)
        for name, files in parted(compiled(sources, Path(scratch))).items():
            write_archive(whole / name, files)
        for name in (*FIRST, *LATER, *PACKED):
            packed = gzip.compress((whole / name).read_bytes(), 9, mtime=0)
            (whole / f"{name}{TWIN}").write_bytes(packed)
        try:
            whole.rename(folder)
        except OSError:
            # Another build made the same one meanwhile.
            if not folder.exists():
                raise


def parted(files: Files) -> dict[str, Files]:
    """The files of each archive: one changed figure changes the rules alone, one changed word the calculators'."""
    first = set(FIRST_MODULES.read_text(encoding="utf-8").split())
    archives: dict[str, Files] = {name: {} for name in (*FIRST, *LATER)}
    for name, data in files.items():
        archives[archive_of(name, first)][name] = data
    later = [module_name(name) for name in archives["later.zip"] if name.endswith(".pyc")]
    archives["calculators.zip"]["site_assets/render/later.txt"] = "\n".join(later).encode()
    return archives


def archive_of(name: str, first: set[str]) -> str:
    """The archive of a file; `first` are the modules that a first answer needs."""
    if name.startswith(RULES):
        return "rules.zip"
    own = name.startswith(("calc/", "site_assets/"))
    if (name.endswith(".pyc") and module_name(name) not in first) or name.startswith(LICENCES):
        return "later.zip"
    return "calculators.zip" if own else "library.zip"


def forget_older(made: Path) -> None:
    """Remove bundles of earlier states; only the present one can be asked for again."""
    for older in made.parent.glob("runtime-*"):
        shutil.rmtree(older, ignore_errors=True)


def contents() -> Data:
    """The statement of what the bundle is made of."""
    return tomllib.loads((PINS / "bundle.toml").read_text(encoding="utf-8"))


def kept_modules() -> set[str]:
    """The names of the standard library's modules that go in."""
    return set(STANDARD_LIBRARY.read_text(encoding="utf-8").split())


def archive_sources(modules: set[str] | None) -> Files:
    """Every file of the archive before compiling, by its path in it; `modules` None keeps them all."""
    found = {**standard_library(modules), **installed(), **licences(), **own()}
    return dict(sorted(found.items()))


def standard_library(modules: set[str] | None) -> Files:
    """The kept modules of the interpreter's own library."""
    with zipfile.ZipFile(PYODIDE / "python_stdlib.zip") as library:
        names = [name for name in library.namelist() if name.endswith(".py")]
        return {name: library.read(name) for name in names if modules is None or module_name(name) in modules}


def installed() -> Files:
    """The files of the installed packages that go in."""
    left_out = tuple(contents()["left_out"])
    found: Files = {}
    for name in contents()["distributions"]:
        for file in files_of(name):
            path = file.as_posix()
            if goes_in(file) and ".dist-info/" not in path and not path.startswith(("..", *left_out)):
                found[path] = Path(str(file.locate())).read_bytes()
    return found


def files_of(name: str) -> list[PackagePath]:
    """The files that an installed package recorded."""
    files = distribution(name).files
    if files is None:
        raise FileNotFoundError(f"{name} does not say which files it has")
    return files


def licences() -> Files:
    """The licence texts that must go along with the installed packages."""
    return {
        f"{LICENCES}{name}/{file.name}": Path(str(file.locate())).read_bytes()
        for name in contents()["distributions"]
        for file in files_of(name)
        if ".dist-info/" in file.as_posix() and file.name.upper().startswith(("LICENSE", "AUTHORS", "COPYING"))
    }


def own() -> Files:
    """The project's calculators, their data and what renders their answers."""
    found: Files = {}
    not_run = tuple(contents()["not_run"])
    for place in contents()["own"]:
        whole = ROOT / place
        for file in whole.rglob("*") if whole.is_dir() else [whole]:
            name = file.relative_to(ROOT).as_posix()
            if file.is_file() and goes_in(file) and not name.startswith(not_run):
                found[name] = file.read_bytes()
    code = b"\n".join(data for name, data in found.items() if name.endswith(".py"))
    # Sources and changes stand beside the rooms of the rules; every calculator reads them.
    for_pages = {f"{RULES}{file_of(key)}.toml" for key in rule_keys() if not is_computed_with(key, code)}
    return {name: data for name, data in found.items() if name not in for_pages}


def is_computed_with(key: str, code: bytes) -> bool:
    """Whether the calculators, whose `code` is given, name a rule; the others are for the pages alone."""
    return key.startswith(NAMED_BY_PARTS) or f'"{key}"'.encode() in code


def without_docstrings(source: bytes) -> bytes:
    """The same code with its docstrings emptied, every other line where it was: nobody reads them in a page."""
    lines = source.decode("utf-8").split("\n")  # as the parser counts them: a form feed ends no line
    for node in ast.walk(ast.parse(source)):
        documented = isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef))
        if documented and ast.get_docstring(node, clean=False) is not None:
            text = node.body[0]
            end = known(text.end_lineno)
            if lines[text.lineno - 1][: text.col_offset].strip():
                continue  # it stands on the line of its `def` or `class`
            lines[text.lineno - 1] = " " * text.col_offset + '""'
            lines[text.lineno : end] = [""] * (end - text.lineno)
    return "\n".join(lines).encode()


def goes_in(file: PurePath) -> bool:
    """Whether a file is code or data that Python reads; caches and type stubs are not."""
    return "__pycache__" not in file.parts and file.suffix in (".py", *DATA_SUFFIXES)


def module_name(path: str) -> str:
    """The name a path in an archive is imported by."""
    return path.removesuffix(".pyc").removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def fingerprint(sources: Files) -> str:
    """One hash over all that the bundle is made of and made by."""
    state = hashlib.sha256()
    made_by = {"python": sys.version.encode(), "compiler": distribution("pyodide-build").version.encode()}
    this = {"this": Path(__file__).read_bytes()}
    pyodide = {f"pyodide/{name}": (PYODIDE / name).read_bytes() for name in contents()["pyodide"]}
    for name, data in {**made_by, **this, **pyodide, **sources}.items():
        state.update(f"{name}\0{len(data)}\0".encode())
        state.update(data)
    return state.hexdigest()[:16]


def compiled(sources: Files, scratch: Path) -> Files:
    """The same files with each `.py` turned into a `.pyc` that needs no source and has no docstrings."""
    archive = scratch / "sources.zip"
    bare = {name: without_docstrings(data) if name.endswith(".py") else data for name, data in sources.items()}
    write_archive(archive, bare)
    # Hashes instead of times inside the compiled files, and one order of sets: equal sources, equal bytes.
    # The columns of each instruction are a quarter of what goes over the wire, and serve error reports alone.
    settings = {**os.environ, "SOURCE_DATE_EPOCH": "315532800", "PYTHONHASHSEED": "0", "PYTHONNODEBUGRANGES": "1"}
    command = [sys.executable, "-m", "pyodide_cli", "py-compile", "--silent", "--compression-level", "0", archive]
    subprocess.run([str(word) for word in command], check=True, env=settings, stdout=sys.stderr)
    with zipfile.ZipFile(archive) as result:
        return {name: result.read(name) for name in sorted(result.namelist())}


def write_archive(path: Path, files: Files) -> None:
    """A stored archive that depends on nothing but the files; the host compresses it on the way."""
    with zipfile.ZipFile(path, "w", zipfile.ZIP_STORED) as archive:
        for name, data in files.items():
            entry = zipfile.ZipInfo(name, MOMENT)
            # The same on every system, whichever made it.
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, data)


def described(path: Path) -> Data:
    """The size of a file, and its hash as a browser's `integrity` option takes it."""
    data = path.read_bytes()
    digest = base64.b64encode(hashlib.sha256(data).digest()).decode("ascii")
    return {"size": len(data), "integrity": f"sha256-{digest}"}


def hash_of(*paths: Path) -> str:
    """A short hash over files, for the name of their folder."""
    seen = hashlib.sha256()
    for path in paths:
        seen.update(path.read_bytes())
    return seen.hexdigest()[:12]


def empty_lock() -> Data:
    """Pyodide's list of packages, with none in it: every import is answered by the archive."""
    lock = json.loads((PYODIDE / "pyodide-lock.json").read_text(encoding="utf-8"))
    return {"info": lock["info"], "packages": {}}
