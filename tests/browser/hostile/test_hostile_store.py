"""A saved handbook whose store was filled with pages of someone else, and a service worker that is sent nonsense."""

import pytest

from tests.browser.hostile.inputs import CODE, ODD, RUNS
from tests.browser.offline.conftest import context, folder, page, server  # noqa: F401 (fixtures)
from tests.browser.offline.published import save

POISON = """async (html) => {
  let spoiled = 0;
  for (const name of await caches.keys()) {
    const store = await caches.open(name);
    for (const request of await store.keys()) {
      const { searchParams } = new URL(request.url);
      if (searchParams.get("type") !== "html") continue;
      await store.put(request, new Response(html, { headers: { "content-type": "text/html" } }));
      spoiled += 1;
    }
    await store.put("./parts/bonding.html", new Response(html, { headers: { "content-type": "text/html" } }));
  }
  return spoiled;
}"""
SEND = """async (words) => {
  const { active } = await navigator.serviceWorker.ready;
  const nonsense = [null, undefined, 1, [], { kind: null }, { kind: "__proto__" }, { kind: "constructor" }];
  for (const data of [...nonsense, ...words, ...words.map((kind) => ({ kind, file: kind }))]) active.postMessage(data);
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    active.postMessage({ kind: "state" }, [port2]);
  });
}"""


@pytest.mark.long
def test_a_page_of_someone_else_in_the_store_is_never_shown(page, server):  # noqa: F811
    save(page)
    spoiled = page.evaluate(POISON, f"<!doctype html><h1>Taken over</h1><script>{RUNS}</script>")
    assert spoiled > 80
    for path in ("index.html", "parts/bonding.html", "calculators/main-bonding-jumper.html", "404.html"):
        page.goto(f"{server.address}{path}")
        assert "Taken over" not in page.content(), path
        assert page.evaluate("self.ran ?? 0") == 0, path
    server.stop()
    page.goto(f"{server.address}index.html")  # mended while the host was there
    assert "Taken over" not in page.content()


@pytest.mark.long
def test_nonsense_sent_to_the_service_worker_leaves_what_is_saved(page, server):  # noqa: F811
    save(page)
    state = page.evaluate(SEND, [*CODE, *(text for text in ODD if text.isprintable())])
    assert state["reading"] and state["calculating"] and not state["missing"]
