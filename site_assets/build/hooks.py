"""What MkDocs calls while it builds: pages get calculators, sections and drawings; the site gets its kit."""

from __future__ import annotations

import hashlib
import shutil
from pathlib import Path

import jinja2
from mkdocs.exceptions import PluginError
from mkdocs.utils import get_relative_url

from calc.editions import EDITIONS, SHOWN_UNTIL_CHOSEN
from calc.words import say
from site_assets.build.cautions import CAUTIONS
from site_assets.build.glossary import with_first_mentions_explained
from site_assets.build.hazard_data import HazardError
from site_assets.build.kit import Kit, prepare_kit
from site_assets.build.page_data import ROOMS, PageDataError, page_data
from site_assets.build.page_frame import framed
from site_assets.build.page_parts import PageParts
from site_assets.build.policy import PolicyError, apply_policy
from site_assets.build.precache import write_service_worker
from site_assets.build.search_settings import search_settings, with_words_apart

ASSETS = Path(__file__).parent.parent
TEMPLATES = (ASSETS / "templates", ASSETS / "service_worker")

# What the theme and MkDocs bring and no page asks for.
UNUSED = ("assets/javascripts/lunr", "assets/images/favicon.png", "sitemap.xml", "sitemap.xml.gz")

kit: Kit
menu: tuple[str, ...]


def on_config(config):
    """Make the runtime, so that its id is known before any page is written."""
    global kit
    kit = prepare_kit(Path(config.config_file_path).parent)
    config.theme["favicon"] = f"{kit.folder}/icons/mark.svg"
    return config


def on_nav(nav, config, files):
    """Keep the order of the menu, for the pages that list others."""
    global menu
    menu = tuple(page.file.src_uri.removesuffix(".md") for page in nav.pages)
    return nav


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
    name = page.file.src_uri.removesuffix(".md")
    page.meta = search_settings(name, page.meta)
    parts = PageParts(name, get_relative_url(kit.folder, page.url), kit, menu)
    environment = jinja2.Environment(undefined=jinja2.StrictUndefined, autoescape=False)
    try:
        return environment.from_string(framed(name, markdown)).render(parts.calls())
    except (PageDataError, HazardError) as error:
        raise PluginError(str(error)) from error


def on_page_content(html, page, config, files):
    """Explain the first mention of each term, and end every word."""
    return with_words_apart(with_first_mentions_explained(page.file.src_uri.removesuffix(".md"), html))


def on_page_context(context, page, config, nav):
    """Tell the page where the kit is, and which cautions belong to its place."""
    name = page.file.src_uri.removesuffix(".md")
    cautions = page_data(name).cautions if name.partition("/")[0] in ROOMS else page.meta.get("cautions", ())
    return context | {
        "kit": get_relative_url(kit.folder, page.url),
        "cautions": [str(CAUTIONS[caution]) for caution in cautions],
    }


def on_template_context(context, template_name, config):
    """Tell templates that are no page, like 404.html, where the kit is: from the root of the host."""
    return context | {"kit": f"{context['base_url'].rstrip('/')}/{kit.folder}"}


def on_post_template(output_content, template_name, config):
    """Without SITE_URL the root of the host is not ours to name: let 404.html lead from its own folder."""
    if template_name != "404.html" or config.site_url:
        return output_content
    return (
        output_content.replace('="/', '="').replace('"base": "/"', '"base": "."').replace('"search": "/', '"search": "')
    )


def on_post_build(config):
    """Put the kit into the finished site, then its content policy and its service worker."""
    site = Path(config.site_dir)
    kit.copy_to(site)
    try:
        apply_policy(site)
    except PolicyError as error:
        raise PluginError(str(error)) from error
    for unused in UNUSED:
        remove(site / unused)
    write_service_worker(site, version_of(site))


def version_of(site):
    """Give the name of this build, shown to readers: it changes with anything that is served."""
    seen = hashlib.sha256()
    for file in sorted(file for file in site.rglob("*") if file.is_file()):
        seen.update(file.relative_to(site).as_posix().encode() + file.read_bytes())
    return seen.hexdigest()[:8]


def remove(path):
    """Remove a file or a folder with all that is in it."""
    if path.is_dir():
        shutil.rmtree(path)
    else:
        path.unlink(missing_ok=True)
