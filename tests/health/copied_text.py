"""Lists every run of nine words that the handbook shares with the texts of a folder.

The texts of an electrical code are copyrighted: the handbook states their facts in
its own words. Put the texts to compare with, as `.txt` or `.md` files, in a folder
outside the repository, then:

    python tests/health/copied_text.py FOLDER [WORDS]

Compared is what a reader can meet: the pages (`docs`), the strings of the data
(`.toml`) and of the Python (`calc`, `site_assets`). Case and punctuation do not count,
numbers do. A placeholder ends a run. Each run found is shown whole, with its place
here and there. Exit status: 0 when nothing is shared, 1 when something is, 2 when the
folder has no texts. It says nothing of texts that are not in the folder.
"""

import ast
import re
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
FOLDERS = ("docs", "calc", "site_assets")
WORD = re.compile(r"\d+(?:[.,]\d+)*|\w+")
PLACEHOLDER = re.compile(r"\{\{.*?\}\}|\{%.*?%\}|\{[^{}]*\}", re.DOTALL)
UNREAD = re.compile(r"<[a-z/!][^>]*>|\]\([^)]*\)")


def words(text: str) -> list[str]:
    """Return the words of `text`, lower case, a word broken at the end of a line made whole."""
    whole = re.sub(r"(?<=[a-z])-\n(?=[a-z])", "", text)
    return WORD.findall(re.sub(r"['’]", "", whole).lower())


def strings_of_data(value: object) -> Iterator[str]:
    """Yield every string inside what a TOML file holds."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list):
        for each in value.values() if isinstance(value, dict) else value:
            yield from strings_of_data(each)


def texts_of(path: Path) -> Iterator[str]:
    """Yield the texts of one of our files that a reader can meet."""
    text = path.read_text(encoding="utf-8")
    if path.suffix == ".toml":
        yield from strings_of_data(tomllib.loads(text))
    elif path.suffix == ".py":
        for each in ast.walk(ast.parse(text)):
            if isinstance(each, ast.Constant) and isinstance(each.value, str):
                yield each.value
    else:
        yield from re.split(r"\n\s*\n|\n\s*(?:[-*|]|\d+\.)\s", text)


def our_pieces() -> Iterator[tuple[str, list[str]]]:
    """Yield each piece of our text that no placeholder interrupts: its file and its words."""
    for folder in FOLDERS:
        for path in sorted((ROOT / folder).rglob("*")):
            if path.suffix in {".md", ".toml", ".py"}:
                for text in texts_of(path):
                    for piece in PLACEHOLDER.split(UNREAD.sub("", text)):
                        yield str(path.relative_to(ROOT)), words(piece)


def runs(text: list[str], length: int) -> list[tuple[str, ...]]:
    """Return every run of `length` words, each starting one word after the last."""
    return [tuple(text[start : start + length]) for start in range(len(text) - length + 1)]


def compare(folder: Path, length: int) -> int:
    """Print the shared runs and the counts; give the exit status."""
    theirs, size = {}, 0
    files = sorted(path for path in folder.rglob("*") if path.suffix in {".txt", ".md"})
    for path in files:
        text = words(path.read_text(encoding="utf-8", errors="replace"))
        size += len(text)
        for at, run in enumerate(runs(text, length)):
            theirs.setdefault(run, f"{path.relative_to(folder)}, word {at + 1}")
    compared, found = set(), set()
    for place, text in our_pieces():
        ours = runs(text, length)
        compared.update(ours)
        for at, run in enumerate(ours):
            if run in theirs and not (at and ours[at - 1] in theirs):
                end = next((later for later in range(at, len(ours)) if ours[later] not in theirs), len(ours))
                found.add((place, " ".join(text[at : end + length - 1]), theirs[run]))
    for place, shared, there in sorted(found):
        print(f"{place}\n    {shared}\n    {there}")
    print(f"{len(compared)} runs of {length} words, {size} words in {len(files)} texts: {len(found)} shared")
    return 2 if not size else int(bool(found))


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    sys.exit(compare(Path(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 9))
