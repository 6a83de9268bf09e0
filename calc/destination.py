"""Where an answered table goes: a file that is replaced only by a whole table, or standard output."""

from __future__ import annotations

import os
import shutil
import stat
import sys
from collections.abc import Callable, Generator
from contextlib import contextmanager
from typing import BinaryIO

from calc.messages import Message, message

_NO_FILE = message("The answers need their own file. This is not a file name.")
_SEPARATORS = tuple(filter(None, (os.sep, os.altsep)))
_ANYONE_WRITES = stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH


class UnwritableError(Exception):
    """What was to be written cannot be: why."""

    def __init__(self, words: Message):
        super().__init__(str(words))
        self.words = words


@contextmanager
def destination(path: str | None, read_from: BinaryIO) -> Generator[Callable[[bytes], object]]:
    """Yield what writes bytes to `path`, or to standard output for None.

    A file gets its name only when all is written; until then, and when anything fails, it stays as it was.
    Raises: UnwritableError.
    """
    if path is None:
        if sys.stdout is None:
            raise UnwritableError(message("Standard output is closed. Nothing was written."))
        _differ(read_from, os.fstat(sys.stdout.fileno()))
        with _told():
            yield sys.stdout.buffer.write
            sys.stdout.buffer.flush()
        return
    with _told():
        if path.endswith(_SEPARATORS):
            raise UnwritableError(_NO_FILE)
        path = os.path.realpath(path)
        if older := os.path.exists(path):
            _replaceable(os.stat(path))
            _differ(read_from, os.stat(path))
        part = f"{path}.{os.getpid()}.part"
        try:
            with open(part, "xb") as file:
                if older:
                    shutil.copymode(path, part)  # what only its owner may read stays so
                yield file.write
            os.replace(part, path)
        finally:
            if os.path.exists(part):
                os.unlink(part)


def _replaceable(written: os.stat_result) -> None:
    if not stat.S_ISREG(written.st_mode):
        raise UnwritableError(_NO_FILE)
    if not written.st_mode & _ANYONE_WRITES:
        raise UnwritableError(message("This file is write-protected. Name another one."))


def _differ(read_from: BinaryIO, written: os.stat_result) -> None:
    """Stop where the table read is the file written: a table must not be emptied, or read its own answers."""
    if stat.S_ISREG(written.st_mode) and os.path.samestat(os.fstat(read_from.fileno()), written):
        raise UnwritableError(
            message("The table to read and the table to write are the same file. Write to another one.")
        )


@contextmanager
def _told() -> Generator[None]:
    try:
        yield
    except (BrokenPipeError, UnwritableError):
        raise
    except OSError as fault:
        raise UnwritableError(message("The file could not be completed: {reason}.", reason=fault.strerror)) from None
