"""What lets `mkdocs build` alone make the handbook: it expands first and finishes last; MkDocs generates between."""

from __future__ import annotations

from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError

from site_assets.build.csp import CspError
from site_assets.build.expand import PAGES, expand
from site_assets.build.finish import finish
from site_assets.build.frame import FrameError
from site_assets.build.hazard_data import HazardError
from site_assets.build.page_data import PageDataError


def on_config(config: MkDocsConfig) -> MkDocsConfig:
    """Expand the handbook, and let MkDocs read what came out."""
    try:
        config.docs_dir = str(expand(root_of(config)) / PAGES)
    except (PageDataError, HazardError) as error:
        raise PluginError(str(error)) from error
    return config


def on_post_build(config: MkDocsConfig) -> None:
    """Finish the folder that MkDocs made."""
    try:
        finish(Path(config.site_dir), root_of(config))
    except (FrameError, CspError) as error:
        raise PluginError(str(error)) from error


def root_of(config: MkDocsConfig) -> Path:
    """Return the folder of the project."""
    return Path(config.config_file_path).parent
