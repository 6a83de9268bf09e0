"""The registry only grows: nothing that the last commits stated is missing from it."""

import io
import subprocess
import tarfile
import tomllib
from collections.abc import Iterable

from tests.published.registry import FOLDER

ROOT = FOLDER.parents[1]
PLACE = FOLDER.relative_to(ROOT).as_posix()


def texts(data: object) -> Iterable[str]:
    """Return every text of plain data: paths, anchors, names, values and links."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict | list):
        for each in data.values() if isinstance(data, dict) else data:
            yield from texts(each)


def stated_in(commit: str) -> set[str]:
    """Return every text of the registry of a commit; none where there is no such commit, as outside a checkout."""
    command = ["git", "archive", commit, PLACE]
    archive = subprocess.run(command, cwd=ROOT, capture_output=True, check=False)
    if archive.returncode:
        return set()
    with tarfile.open(fileobj=io.BytesIO(archive.stdout)) as files:
        read = [files.extractfile(each).read().decode() for each in files if each.name.endswith(".toml")]
    return {text for each in read for text in texts(tomllib.loads(each))}


def stated_now() -> set[str]:
    return {text for file in FOLDER.glob("*.toml") for text in texts(tomllib.loads(file.read_text(encoding="utf-8")))}


def test_nothing_is_taken_out_of_the_registry():
    now = stated_now()
    assert len(now) > 1000
    for commit in ("HEAD", "HEAD^"):
        lost = sorted(stated_in(commit) - now)
        assert not lost, f"stated in {commit} and taken out: {lost}; what is published stays stated"


def test_texts_are_found_wherever_they_stand():
    data = {"page": [{"path": "a.html", "anchors": ["b"]}], "calculator": [{"parameters": [{"name": "c"}]}]}
    assert set(texts(data)) == {"a.html", "b", "c"}
