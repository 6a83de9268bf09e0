"""What a host would send, read from the files that the build writes for it: each reader knows one host's own grammar.

A reader is given the text of such a file and a path in the site, and returns the headers, each with every value that
the host would send under that name.
"""

from __future__ import annotations

import re
from fnmatch import fnmatchcase
from pathlib import PurePosixPath

Sent = dict[str, list[str]]


def plain_host(text: str, path: str) -> Sent:
    """Return what a host of plain files sends by `_headers`: all of every rule whose path fits."""
    sent: Sent = {}
    fits = False
    for line in text.splitlines():
        if not line.startswith(" "):
            fits = fnmatchcase(f"/{path}", line)
        elif fits:
            name, _, value = line.strip().partition(": ")
            sent.setdefault(name, []).append(value)
    return sent


def nginx(text: str, path: str) -> Sent:
    """Return what nginx sends by its block: `add_header` with the values of `map`, and the type of the ending."""
    maps = {}
    for name, body in re.findall(r"^map \$uri \$(\w+) \{\n(.*?)^\}", text, re.DOTALL | re.MULTILINE):
        rows = re.findall(r'^\s+(default|"~(?:[^"]+)") "([^"]+)";$', body, re.MULTILINE)
        assert len(rows) == len(body.strip().splitlines())
        fitting = [value for row, value in rows if row != "default" and re.search(row[2:-1], f"/{path}")]
        maps[name] = fitting[0] if fitting else dict(rows)["default"]
    (server,) = re.findall(r"^server \{\n(.*)^\}", text, re.DOTALL | re.MULTILINE)
    locations = re.findall(r"^    location .*?^    \}", server, re.DOTALL | re.MULTILINE)
    assert locations and "add_header" not in "".join(locations), "it would take away those of the server"
    sent: Sent = {}
    for name, value in re.findall(r'^    add_header ([\w-]+) (\$\w+|"[^"]*") always;$', server, re.MULTILINE):
        sent.setdefault(name, []).append(maps[value[1:]] if value.startswith("$") else value.strip('"'))
    (types,) = re.findall(r"types \{(.*?)\}", server, re.DOTALL)
    kinds = {ending: kind for kind, ending in re.findall(r"^\s+(\S+) (\w+);$", types, re.MULTILINE)}
    (otherwise,) = re.findall(r"default_type (\S+);", server)
    kind = kinds.get(PurePosixPath(path).suffix[1:], otherwise)
    # text/html always has the charset; others are listed.
    with_charset = ["text/html", *re.findall(r"charset_types (.*);", server)[0].split()]
    sent["Content-Type"] = [f"{kind}; charset=utf-8" if kind in with_charset else kind]
    return sent


def caddy(text: str, path: str) -> Sent:
    """Return what Caddy sends by its block: `header` lines whose matcher fits, errors aside."""
    block = text.partition("handle_errors")[0]
    fits = {}
    for name, inverse, kind, told in re.findall(r"^\t@(\w+) (not )?(path|path_regexp) (.+)$", block, re.MULTILINE):
        if kind == "path":
            fit = any(fnmatchcase(f"/{path}", each) for each in told.split())
        else:
            fit = bool(re.search(told, f"/{path}"))
        fits[name] = fit != bool(inverse)
    sent: Sent = {}
    for matcher, name, value in re.findall(r'^\theader (?:@(\w+) )?(\??[\w-]+) "([^"]*)"$', block, re.MULTILINE):
        if not matcher or fits[matcher]:
            sent.setdefault(name, []).append(value)
    otherwise = sent.pop("?Content-Type")
    return {"Content-Type": otherwise, **sent}


def apache(text: str, path: str) -> Sent:
    """Return what Apache sends: `Header always set`, where a later one takes the place of an earlier, and `AddType`."""
    sent: Sent = {}
    fits = True
    for line in text.splitlines():
        if opened := re.fullmatch(r'<If "%\{REQUEST_URI\} =~ m#(.+)#">', line):
            fits = bool(re.search(opened[1], f"/{path}"))
        elif line == "</If>":
            fits = True
        elif line.strip().startswith("Header"):
            name, value = re.fullmatch(r'\s*Header always set ([\w-]+) "([^"]*)"', line).groups()
            if fits:
                sent[name] = [value]
    kinds = {ending: kind for kind, ending in re.findall(r'^AddType "([^"]+)" (\.\w+)$', text, re.MULTILINE)}
    kind = kinds.get(PurePosixPath(path).suffix)
    return {**sent, **({"Content-Type": [kind]} if kind else {})}


HOSTS = {
    "_headers": plain_host,
    "hosting/nginx.conf": nginx,
    "hosting/Caddyfile": caddy,
    "hosting/apache.conf": apache,
}
