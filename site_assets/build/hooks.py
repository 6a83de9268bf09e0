"""What MkDocs calls while it builds: pages get calculators, sections and drawings; the site gets its kit."""

from __future__ import annotations

from pathlib import Path

import jinja2
from mkdocs.utils import get_relative_url

from calc.editions import EDITIONS, SHOWN_UNTIL_CHOSEN
from calc.words import say
from site_assets.build.kit import Kit, prepare_kit
from site_assets.build.page_parts import PageParts
from site_assets.build.policy import apply_policy
from site_assets.build.precache import write_service_worker

ASSETS = Path(__file__).parent.parent
TEMPLATES = (ASSETS / "templates", ASSETS / "service_worker")

kit: Kit


def on_config(config):
    """Make the runtime, so that its id is known before any page is written."""
    global kit
    kit = prepare_kit(Path(config.config_file_path).parent)
    return config


def on_env(env, config, files):
    """Give templates their words and editions."""
    env.loader = jinja2.ChoiceLoader([env.loader, *(jinja2.FileSystemLoader(folder) for folder in TEMPLATES)])
    env.globals |= {
        "say": lambda template, **values: str(say(template, **values)),
        "editions": EDITIONS,
        "edition_shown": SHOWN_UNTIL_CHOSEN,
    }
    return env


def on_page_markdown(markdown, page, config, files):
    """Fill the calls in a page's Markdown: `{{ calculator("main-bonding-jumper") }}` and the like."""
    parts = PageParts(get_relative_url(kit.folder, page.url), kit)
    environment = jinja2.Environment(undefined=jinja2.StrictUndefined, autoescape=False)
    return environment.from_string(markdown).render(parts.calls())


def on_page_context(context, page, config, nav):
    """Tell the page where the kit is."""
    return context | {"kit": get_relative_url(kit.folder, page.url)}


def on_template_context(context, template_name, config):
    """Tell templates that are no page, like 404.html, where the kit is."""
    return context | {"kit": get_relative_url(kit.folder, template_name), "root": "."}


def on_post_build(config):
    """Put the kit into the finished site, then its content policy and its service worker."""
    site = Path(config.site_dir)
    kit.copy_to(site)
    apply_policy(site)
    write_service_worker(site, kit.id)
    for leftover in ("sitemap.xml", "sitemap.xml.gz"):
        (site / leftover).unlink(missing_ok=True)
