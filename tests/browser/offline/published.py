"""Publishes versions of the built site, breaks and slows them, and looks at what a reader is served."""

import base64
import gzip
import hashlib
import time
from contextlib import contextmanager

from playwright.sync_api import expect

from site_assets.build.precache import TWIN, WORKER, group_of, saved_paths, write_service_worker

SUB_PATH = "/bonding/handbook/"
RUNTIME_LIST = "runtime/files.json"

HASHES_IN_THE_PAGE = """async ([root, paths]) => {
  const hashes = {};
  for (const path of paths) {
    try {
      const content = await (await fetch(new URL(path, root))).arrayBuffer();
      const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
      hashes[path] = btoa(String.fromCharCode(...digest));
    } catch {
      hashes[path] = null;
    }
  }
  return hashes;
}"""
STORED = """async () => {
  const stored = [];
  for (const name of await caches.keys()) {
    for (const { url } of await (await caches.open(name)).keys()) stored.push(url);
  }
  return stored;
}"""
TELL = """async ([worker, kind]) => {
  (await navigator.serviceWorker.ready)[worker].postMessage({ kind });
}"""
EVICT = """async (lost) => {
  let evicted = 0;
  for (const name of await caches.keys()) {
    const store = await caches.open(name);
    for (const request of await store.keys()) {
      const kept = new URL(request.url).searchParams;
      const named = lost.some(([hash, type]) => kept.get("hash") === hash && kept.get("type") === type);
      if (named && await store.delete(request)) evicted += 1;
    }
  }
  return evicted;
}"""
DAMAGE = """async (spoiled) => {
  let damaged = 0;
  for (const name of await caches.keys()) {
    const store = await caches.open(name);
    for (const request of await store.keys()) {
      const kept = new URL(request.url).searchParams;
      if (!spoiled.some(([hash, type]) => kept.get("hash") === hash && kept.get("type") === type)) continue;
      const copy = await store.match(request);
      const bytes = new Uint8Array(await copy.arrayBuffer());
      bytes[bytes.length >> 1] ^= 1;
      await store.put(request, new Response(bytes, { headers: copy.headers }));
      damaged += 1;
    }
  }
  return damaged;
}"""
EVICT_NOTES = """async () => {
  for (const name of await caches.keys()) {
    const store = await caches.open(name);
    for (const request of await store.keys()) if (request.url.includes("whole=")) await store.delete(request);
  }
}"""
EVICT_ALL = "async () => { for (const name of await caches.keys()) await caches.delete(name); }"
KITS_IN_USE = """() => {
  const asked = performance.getEntriesByType("resource").map(({ name }) => name);
  const named = [...asked, document.documentElement.outerHTML];
  return [...new Set(named.flatMap((name) => [...name.matchAll(/kit\\/(\\w+)\\//g)].map(([, id]) => id)))];
}"""
STATUS = """async ([address, options]) => {
  try { return (await fetch(address, options)).status; } catch { return null; }
}"""


class Dying(list):
    """The paths asked for, on a server that answers only so many of them."""

    answers = 0

    def append(self, path):
        if len(self) >= self.answers:
            raise ConnectionAbortedError
        super().append(path)


class Slow(list):
    """The paths asked for, on a server that takes its time."""

    def append(self, path):
        time.sleep(0.05)
        super().append(path)


def hashes(folder):
    return {path: hash_of((folder / path).read_bytes()) for path in saved_paths(folder)}


def hash_of(content):
    return base64.b64encode(hashlib.sha256(content).digest()).decode()


def group(paths, name):
    return {path: paths[path] for path in paths if group_of(path) == name}


def served(page, server, paths):
    return page.evaluate(HASHES_IN_THE_PAGE, [server.address, list(paths)])


def evict(page, folder, *paths):
    """Lose files that are kept, as a browser short of room does."""
    assert page.evaluate(EVICT, named(folder, paths)) == len(paths)


def damage(page, folder, *paths):
    """Change one bit of files that are kept, as a failing memory does."""
    assert page.evaluate(DAMAGE, named(folder, paths)) == len(paths)


def named(folder, paths):
    return [[f"sha256-{hash_of((folder / path).read_bytes())}", path.rpartition(".")[2]] for path in paths]


def wait_for(page, state):
    expect(page.locator("[data-offline]")).to_have_attribute("data-offline-state", state, timeout=60_000)


def press(page, what):
    page.locator(f'[data-offline-do="{what}"]').click()


def tell(page, worker, kind):
    page.evaluate(TELL, [worker, kind])


def save(page):
    press(page, "save")
    wait_for(page, "ready")


def status_line(page):
    return page.locator("[data-offline-status]")


def publish(folder, version, *, changed):
    """Put another version on the server: the changed files differ by their last line."""
    for path in changed:
        with (folder / path).open("ab") as file:
            file.write(b"\n" + remark(path, version).encode())
        twin = folder / f"{path}{TWIN}"
        if twin.exists():
            twin.write_bytes(gzip.compress((folder / path).read_bytes()))
    write_service_worker(folder, version)


def remark(path, words):
    """Words in a file that a browser passes over."""
    return f"/* {words} */" if path.endswith((".js", ".mjs", ".css")) else f"<!-- {words} -->"


def move_kit(folder):
    """Publish the same scripts, styles and runtime in folders of other names, as when the layout changes."""
    kit = next((folder / "kit").iterdir())
    kit.rename(kit.with_name("moved"))
    for path in folder.rglob("*.html"):
        path.write_text(path.read_text().replace(f"kit/{kit.name}/", "kit/moved/"))
    listed = (folder / RUNTIME_LIST).read_text()
    for made in [made for made in (folder / "runtime").iterdir() if made.is_dir()]:
        made.rename(made.with_name(f"moved-{made.name}"))
        listed = listed.replace(f"{made.name}/", f"moved-{made.name}/")
    (folder / RUNTIME_LIST).write_text(listed)
    write_service_worker(folder, "second")


def pages_of(folder):
    return [path for path in saved_paths(folder) if path.endswith(".html") and path != "404.html"]


def some_changes(folder):
    """The first page, another one and a file of the runtime."""
    return ["index.html", pages_of(folder)[0], runtime_file(folder)]


def runtime_file(folder, name="pyodide.mjs"):
    """The path of a file of the runtime; without a name of one that does its work with another last line."""
    (path,) = (path for path in saved_paths(folder) if group_of(path) == "calculating" and path.endswith(f"/{name}"))
    return path


@contextmanager
def broken(folder, path):
    """The file arrives, but not as it was built."""
    whole = (folder / path).read_bytes()
    (folder / path).write_bytes(whole[:-1])
    yield
    (folder / path).write_bytes(whole)


def take_away_network(context, server):
    server.stop()
    context.set_offline(True)


def asked_for(server):
    """Files asked for; the browser's look at the service worker is no content.

    This host does not compress, so for a twin the file itself was asked for just before, and only begun.
    """
    asked = [path.removeprefix(SUB_PATH) for path in server.requested if path != SUB_PATH + WORKER]
    return [path for path in asked if not path.endswith(TWIN)]
