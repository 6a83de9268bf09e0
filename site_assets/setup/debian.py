"""Packages of Debian and its relatives: what to type for them, and installing them where we may."""

from __future__ import annotations

import shutil

from site_assets.setup.steps import is_root, succeeds


def debian_command(*packages: str) -> str:
    """How to install packages on Debian and its relatives."""
    sudo = "" if is_root() else "sudo "
    return f"{sudo}apt-get update && {sudo}apt-get install -y {' '.join(packages)}"


def installs(*packages: str) -> bool:
    """Whether the packages could be installed here; only the administrator may."""
    if not (is_root() and shutil.which("apt-get")):
        return False
    quiet = {"DEBIAN_FRONTEND": "noninteractive"}
    return succeeds(["apt-get", "-q", "update"], **quiet) and succeeds(
        ["apt-get", "-q", "install", "-y", *packages], **quiet
    )
